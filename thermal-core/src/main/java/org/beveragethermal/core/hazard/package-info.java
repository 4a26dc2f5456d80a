/* SPDX-License-Identifier: Apache-2.0 */
/**
 * What can go wrong with a closed vessel: freezing, bursting, pressure, thermal shock. Physics only; what people should be told is for
 * others to word.
 *
 * <p><b>Problem.</b> A bottle forgotten in a freezer bursts, a warm sparkling bottle stands under seven bar, hot glass cracks in cold
 * water. Each has a limit and a time or a margin, and "never" is an answer.
 *
 * <p><b>Use.</b> A {@link org.beveragethermal.core.hazard.ClosedVessel} knows the room under its closure, what fills it and what
 * pressure that makes. With a prediction of the same vessel a {@link org.beveragethermal.core.hazard.FreezingHazard} tells when ice
 * begins to form, how much of it there is, when the contents fill the vessel and how much time is left.
 *
 * <pre>{@code
 * FilledVessel bottle = Vessels.sparkling750().filledWith(Beverage.sparklingWine(percentByVolume(12.5)), celsius(20));
 * ClosedVessel closed = ClosedVessel.of(bottle);
 * HeadspacePressure warm = closed.pressureAt(celsius(30));
 *
 * Prediction forgotten = Lumped.of(bottle).expose(in(Refrigerator.at(celsius(-18)), Duration.ofHours(12)));
 * FreezingHazard hazard = FreezingHazard.of(forgotten, closed);
 * if (hazard.timeLeft(Duration.ofHours(1)) instanceof TimeLeft.Left left) {
 *     Duration takeOutWithin = left.duration();
 * }
 * }</pre>
 *
 * <p>{@link org.beveragethermal.core.hazard.ThermalShock} judges a plunge before it is made, by the difference between wall and water and
 * by what of it stands through the wall, and a prediction afterwards. The difference that soda-lime glass bears is known to no better than
 * {@linkplain org.beveragethermal.core.hazard.ThermalShock#ALLOWABLE_QUENCH a third either way}.
 *
 * <p><b>Left out.</b> Supercooling, by which a drink stays liquid below its freezing point and then freezes in a moment; carbon dioxide
 * that ice drives out of the drink; air that dissolves in the drink or leaves it; the give of walls and closures under pressure.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  FilledVessel → ClosedVessel ┬→ pressureAt(T) → HeadspacePressure
 *                              └→ with a Prediction → FreezingHazard → onset, fullness, TimeLeft
 *  wall and water, or a Prediction → ThermalShock → margin
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.hazard;

import org.jspecify.annotations.NullMarked;
