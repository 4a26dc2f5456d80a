/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Turns predictions round: not "how warm will it be?" but "when must it go in?", "how cold must the air be?", "when was it taken out?".
 *
 * <p><b>Problem.</b> A prediction goes forward from causes to temperatures. Whoever serves a drink asks backward, and the answer may be
 * one value, several, any, or none at all; it may also be worthless, where the temperature has all but levelled off.
 *
 * <p><b>Use.</b> Each question is one call and has a sealed answer, so that "never" is an answer and not an exception. Every {@link
 * org.beveragethermal.core.inversion.Answer} explains itself in a sentence or two and has a plain {@link
 * org.beveragethermal.core.inversion.Snapshot} of its figures.
 *
 * <pre>{@code
 * Wanted white = Wanted.between(celsius(8), celsius(10));
 * StartAnswer start = StartSearch.of(bottle, refrigerator).latestStart(white, Duration.ofHours(5));
 * ReadyAnswer ready = StartSearch.of(bottle, refrigerator).earliestReady(white, Duration.ofHours(5));
 * Holding keeps = Holding.until(prediction, white, Duration.ofHours(1));
 * Passing passes = Passing.of(prediction, celsius(5), kelvinDifference(0.05));
 * ValueAnswer cold = RequiredValues.of(bottle)
 *         .refrigeratorTemperature(celsius(0), celsius(12))
 *         .temperatureAt(Duration.ofHours(3), celsius(9));
 * PastAnswer when = Past.of(bottle, terrace).takenOut(celsius(6), celsius(9), Duration.ofHours(6));
 * StagesAnswer both = Stages.of(bottle, in(freezer, Duration.ofMinutes(40)), in(bucket, Duration.ofMinutes(30)))
 *         .endingAt(white);
 * SureStart sure = Chances.of(draws).latestStart(white, Duration.ofHours(5), 0.95);
 * System.out.println(start.explain());
 * }</pre>
 *
 * <table>
 * <caption>Questions</caption>
 * <tr><th>Asked</th><th>Class</th><th>Runs</th></tr>
 * <tr><td>when it must go in, how early it can be ready</td><td>{@code StartSearch}</td><td>2 in surroundings that do not change with the
 * clock, 3 if the answer is never; else one per start looked at, at most 80 unless said otherwise</td></tr>
 * <tr><td>until when it keeps; all times at a temperature</td><td>{@code Holding}, {@code Passing}</td><td>none</td></tr>
 * <tr><td>which value makes it so</td><td>{@code ValueSearch}, {@code RequiredValues}</td><td>13 and some 8 per value found</td></tr>
 * <tr><td>when it was taken out, how warm it was</td><td>{@code Past}</td><td>4; some 30</td></tr>
 * <tr><td>how long in each of several places, and with how little ice</td><td>{@code Stages}</td><td>some 12 and 5 per edge, for two places</td></tr>
 * <tr><td>with what probability</td><td>{@code Chances}</td><td>none beside the draws</td></tr>
 * <tr><td>how sure any of these answers is</td><td>{@code AnswerEnsemble}</td><td>those of the question, once per draw</td></tr>
 * </table>
 *
 * <p><b>Intervals.</b> {@link org.beveragethermal.core.inversion.AnswerEnsemble} asks any question anew for each draw of what is uncertain,
 * and gives the interval of each figure of the answer and the chance of each kind of answer; answers of core.hazard, core.serving,
 * core.storage and core.icemaking too, as all of them are {@link org.beveragethermal.core.inversion.Answer}s.
 *
 * <p><b>Never.</b> An answer "never" says how near it comes, {@linkplain org.beveragethermal.core.prediction.Asymptote what the temperature
 * tends to}, and what would help. Questions that run predictions go on for twice as long as was asked, at least four days, to see that, and
 * count the run; those that are put to a run, such as {@code Holding} and {@code Passing}, say what that run shows. Times and values warn
 * where what is wanted lies within half a kelvin of what is tended to, or half a kelvin more or less moves the time by more than half.
 *
 * <p>What a prediction itself answers, such as the time to a temperature, is asked there; these questions are built on it. All searches
 * are bounded. Questions are about the mean temperature of the contents.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Wanted + how to predict → question (StartSearch, RequiredValues, Past, Stages, …) → runs → sealed Answer
 *                                                                                       ├→ explain(): words
 *                                AnswerEnsemble: the same, once per draw → intervals    └→ snapshot(): figures
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.inversion;

import org.jspecify.annotations.NullMarked;
