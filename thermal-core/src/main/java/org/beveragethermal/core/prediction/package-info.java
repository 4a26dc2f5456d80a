/* SPDX-License-Identifier: Apache-2.0 */
/**
 * What was predicted for one vessel, and the answers that follow from it.
 *
 * <p><b>Problem.</b> A run of the network solver knows nodes and paths; a user asks for the temperature of a drink at a time,
 * for the time at which it reaches a temperature, and why it takes that long.
 *
 * <p><b>Use.</b> A scene, or its short form for one vessel, returns a {@link
 * org.beveragethermal.core.prediction.Prediction}: {@code meanTemperatureAt}, {@code timeTo}, {@code explainAt}, {@code
 * notes}. A question whose answer can be "no" returns a sealed {@link
 * org.beveragethermal.core.prediction.TimeToTemperature}: reached, reached and then lost, or never reached.
 *
 * <p><b>Too far.</b> A drink left in something warmer or colder than it should become is ready and later spoiled. {@code timeInRange}
 * answers with a sealed {@link org.beveragethermal.core.prediction.TimeInRange}: it never enters the range, enters and stays, or leaves it, with
 * the time between and the rate at which it leaves. It may be asked of the mean or of the warmest or coldest {@link
 * org.beveragethermal.core.prediction.Part}.
 *
 * <pre>{@code
 * if (prediction.timeInRange(celsius(16), celsius(18)) instanceof TimeInRange.Leaves leaves) {
 *     Duration takeOutBy = leaves.leftAfter();
 * }
 * }</pre>
 *
 * <p>{@code explainAt} takes a moment apart: resistances in series band by band with their films (for slices which way the film
 * runs, for shells what conducts inside), Biot numbers, the time constant, heat that comes whatever the temperatures, and a {@link
 * org.beveragethermal.core.prediction.HeatAccount} up to then. {@code advice} says which description of the contents is warranted,
 * {@code stayAdvice} says it for each stay; {@code notes} tells where it is another than the one used. {@code meanTemperaturesK},
 * {@code topTemperaturesK}, {@code bottomTemperaturesK}, {@code wallTemperaturesK}, {@code temperaturesK} and {@code profilesK}
 * give arrays for plotting.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Trajectory + what its nodes mean → Prediction ┬→ temperatures, ice fraction, profiles
 *                                                ├→ timeTo, timeInRange (sealed: or never)
 *                                                ├→ explainAt → resistances, films, HeatAccount
 *                                                └→ advice, notes
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.prediction;

import org.jspecify.annotations.NullMarked;
