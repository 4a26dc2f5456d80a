/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Figures of how a drink is kept: what a history of temperatures amounts to, how contents follow their room, and what that does under
 * the closure.
 *
 * <p><b>Problem.</b> A logger in a cellar, a van or a shop tells the temperature of its air. What counts is the drink: it follows late and
 * damped. Whoever keeps drinks asks for the time above a limit, the degree-hours, the mean kinetic temperature, the daily swing and what the
 * swing of pressure does to closures.
 *
 * <p><b>Use.</b> A {@link org.beveragethermal.core.storage.TemperatureHistory} is made of readings with their instants, or of a
 * prediction. {@link org.beveragethermal.core.storage.RoomResponse} compares contents with their room; {@link
 * org.beveragethermal.core.storage.LumpedSwing} is the closed form of a lumped body. {@link
 * org.beveragethermal.core.storage.StoragePressure} looks under the closure, {@link org.beveragethermal.core.storage.StorageFigures} gathers
 * the usual figures as plain numbers.
 *
 * <pre>{@code
 * TemperatureHistory room = TemperatureHistory.logged(readings);
 * Prediction bottle = Lumped.of(wine).expose(in(Air.varying(room.byDuration()), room.length()));
 * TemperatureHistory contents = TemperatureHistory.of(bottle);
 * Duration tooWarm = contents.timeAbove(celsius(18));
 * Quantity<Temperature> kinetic = contents.meanKineticTemperature();
 * RoomResponse.Swing daily = RoomResponse.of(room, contents).swing(Duration.ofDays(1));
 * StoragePressure pressure = StoragePressure.of(ClosedVessel.of(wine), contents);
 * }</pre>
 *
 * <p><b>Between readings</b> the temperature is taken to follow straight lines, over gaps as well: {@code longestGap} and {@code
 * gapsLongerThan} tell how much rests on that. All integrals are those of the lines: a reading added on a line changes nothing. Days are
 * stretches of 24 hours from the first reading, not days of a calendar; no time zone enters.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  readings, or a Prediction → TemperatureHistory ┬→ times above, degree-hours, mean kinetic temperature
 *                                                 ├→ RoomResponse: contents against room
 *                                                 ├→ StoragePressure: swing under the closure
 *                                                 └→ StorageFigures: all of it as numbers
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.storage;

import org.jspecify.annotations.NullMarked;
