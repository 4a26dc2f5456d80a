/* SPDX-License-Identifier: Apache-2.0 */
/**
 * What a vessel can be put into: still air, a refrigerator, a water bath, ice and water, ice
 * alone, salted ice.
 *
 * <p><b>Problem.</b> Each means of cooling or warming touches some part of a vessel's wall, has a state of its own (a bath
 * warms up, ice melts) and exchanges heat with its room whether or not a vessel is in it.
 *
 * <p><b>Use.</b> Make a value with its factory, give it an id in a {@code Scene}, and put vessels in it; two vessels in
 * the same gear share it.
 *
 * <pre>{@code
 * StillAir terrace = StillAir.at(celsius(27));
 * IceWaterBath ice = IceWaterBath.in(Bucket.of(millimetres(200), millimetres(240)), terrace)
 *         .ice(kilograms(2), millimetres(25), celsius(-10))
 *         .water(kilograms(2.5), celsius(14))
 *         .build();
 * }</pre>
 *
 * <p><b>Ice.</b> {@link org.beveragethermal.core.surroundings.IceWaterBath} has ice that floats and water that stalls under it. {@link
 * org.beveragethermal.core.surroundings.BareIce} has no water but what melts: its heat passes where blocks touch, which is known to a
 * factor of two. {@link org.beveragethermal.core.surroundings.SaltedIce} is given in two limits, salt mixed in or ineffective.
 *
 * <pre>{@code
 * BareIce crushed = BareIce.crushed(bucket, kilograms(3), terrace);
 * SaltedIce cold = SaltedIce.in(bucket, terrace)
 *         .ice(kilograms(3), millimetres(25), celsius(-5))
 *         .water(kilograms(2), celsius(14))
 *         .salt(kilograms(0.5))
 *         .build();
 * SaltedIce unstirred = cold.with(SaltedIce.SaltEffect.INEFFECTIVE);
 * }</pre>
 *
 * <p><b>What a vessel stands on.</b> Each is used {@code on} a {@link org.beveragethermal.core.surroundings.Footing}: insulating unless
 * said otherwise, open as a wire shelf, or in contact with a plate. Ends that look up, and those that look down on an open footing, have
 * the films of level discs (McAdams) where the sides have those of upright cylinders; below the waterline density decides which
 * way the water turns over, and a punt holds air.
 *
 * <p><b>How they attach.</b> A surroundings value opens a {@link org.beveragethermal.core.surroundings.Medium} for one run:
 * nodes of its own, paths to its room, and links for each patch of wall that touches it. This interface is unsettled and is
 * not meant to be implemented outside the library yet.
 *
 * <p><b>Not in here yet.</b> Condensation and evaporation, door openings and cycling of appliances, sun, wet wraps, soil.
 */
@NullMarked
package org.beveragethermal.core.surroundings;

import org.jspecify.annotations.NullMarked;
