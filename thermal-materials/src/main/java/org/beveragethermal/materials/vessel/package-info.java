/* SPDX-License-Identifier: Apache-2.0 */

/**
 * Vessels: their shape, wall and contents.
 *
 * <p>Problem solved: how much glass, how much liquid, how much wall area lies between two heights. A
 * {@link org.beveragethermal.materials.vessel.Profile} is an axisymmetric shape of straight-sided pieces, evaluated by
 * the exact formulas for frustums; a {@link org.beveragethermal.materials.vessel.Vessel} is a profile with a wall
 * material and a nominal volume; a {@link org.beveragethermal.materials.vessel.FilledVessel} also knows what is in it
 * and how warm it is, and when its headspace is used up. {@link org.beveragethermal.materials.vessel.LyingProfile} and {@link
 * org.beveragethermal.materials.vessel.InvertedProfile} are a profile on its side and on its mouth. A {@link
 * org.beveragethermal.materials.vessel.Closure} closes a vessel.
 *
 * <p>Use: {@code Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(18))}. Typical
 * vessels are in {@link org.beveragethermal.materials.vessel.Vessels}, by shape and nominal volume:
 * {@code Vessels.of(VesselShape.CAN, millilitres(330))}; a user's own is made with
 * {@link org.beveragethermal.materials.vessel.Profile#builder()} and
 * {@link org.beveragethermal.materials.vessel.Vessel#builder(String)}.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Profile (frustums) + wall Solid + Closure → Vessel → filledWith(liquid, T) → FilledVessel
 *     └→ LyingProfile, InvertedProfile           ↑                                ├→ masses, areas between heights
 *                              Vessels (typical shapes and sizes)                 └→ headspace, when it is used up
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.materials.vessel;

import org.jspecify.annotations.NullMarked;
