/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Surroundings that are not in the library, written as a user would write them.
 *
 * <p><b>Problem.</b> A house has a means of cooling of its own, and wants to predict with it as with any other.
 *
 * <p><b>Use.</b> {@link org.beveragethermal.examples.surroundings.StoneTrough} is the example: read {@code open} of the value, then
 * {@code nodes}, {@code paths} and {@code faces} of what it opens. It uses nothing but the published interface, and stands in a scene
 * beside the library's own kinds. That interface is not settled: it may change in the next version.
 *
 * <pre>{@code
 * StoneTrough trough = StoneTrough.of(Solids.granite(), millimetres(110), millimetres(180), millimetres(60), room)
 *         .startingAt(celsius(4));
 * Prediction kept = Lumped.of(bottle).expose(in(trough, Duration.ofHours(2)));
 * }</pre>
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  StoneTrough (description) → Medium → links at the wall → any Scene
 * </pre>
 */
@NullMarked
package org.beveragethermal.examples.surroundings;

import org.jspecify.annotations.NullMarked;
