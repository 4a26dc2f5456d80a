/* SPDX-License-Identifier: Apache-2.0 */
/**
 * How sure a prediction is.
 *
 * <p><b>Problem.</b> Correlations scatter, dimensions and temperatures are known roughly. A prediction without an interval
 * says less than it seems to.
 *
 * <p><b>Use.</b> Name what is uncertain, each with an {@code Uncertainty}; {@link
 * org.beveragethermal.core.uncertainty.LawScatter#all} lists the laws of this library with their published or judged scatter.
 * Then either sample: {@link org.beveragethermal.core.uncertainty.Ensemble} draws values and runs a prediction for each, and
 * {@link org.beveragethermal.core.uncertainty.PredictionEnsemble} reads intervals off; or propagate to first order with the
 * derivatives that the paths state: {@link org.beveragethermal.core.uncertainty.LinearSpread}. Sampling is right for any
 * spread and for times to a temperature; propagation is cheap and says which input matters.
 *
 * <pre>{@code
 * Ensemble ensemble = Ensemble.of(400, 20260101L);
 * PredictionEnsemble runs = PredictionEnsemble.of(ensemble, LawScatter.all(), draw -> Lumped.of(bottle)
 *         .with(NetworkSolver.standard().withMultipliers(draw.values()))
 *         .expose(in(refrigerator, Duration.ofHours(3))));
 * Interval band = runs.temperatureK(Duration.ofHours(1), 0.90);
 * }</pre>
 *
 * <p>Where little is known of a room or an appliance but its temperature, {@link
 * org.beveragethermal.core.uncertainty.UnstatedConditions} draws the rest: draught, fan, shelf, load, door, stirring.
 *
 * <pre>{@code
 * Ensemble draws = Ensemble.of(400, 20260101L);
 * PredictionEnsemble inUse = PredictionEnsemble.of(draws, UnstatedConditions.withLaws(), draw -> Lumped.of(bottle)
 *         .with(NetworkSolver.standard().withMultipliers(draw.values()))
 *         .expose(in(UnstatedConditions.appliance(celsius(5), Duration.ZERO, draw), Duration.ofHours(3))));
 * }</pre>
 *
 * <p>What predictions and other answers tell beside temperatures has intervals by the same draws: {@link
 * org.beveragethermal.core.uncertainty.PredictionEnsemble#spread} for any figure read off a prediction, {@link
 * org.beveragethermal.core.uncertainty.Spread#of} for answers of any kind; {@code AnswerEnsemble} of core.inversion for those that have
 * a snapshot, which are nearly all.
 *
 * <pre>{@code
 * Spread goesTooFar = runs.spread(
 *         prediction -> prediction.timeInRange(celsius(8), celsius(10)) instanceof TimeInRange.Leaves leaves
 *                 ? OptionalDouble.of(leaves.leftAfter().toMillis() / 1000.0)
 *                 : OptionalDouble.empty(),
 *         0.90);
 * }</pre>
 *
 * <p>For a single figure, {@link org.beveragethermal.core.uncertainty.AdaptiveMonteCarlo} adds draws until the wanted digits are sure
 * (JCGM 101:2008), {@link org.beveragethermal.core.uncertainty.UncertaintyBudget} combines contributions to first order with effective
 * degrees of freedom (JCGM 100:2008), {@link org.beveragethermal.core.uncertainty.Tornado} moves each input alone, and {@link
 * org.beveragethermal.core.uncertainty.SobolIndices} says what part of the variance each input causes, alone and together with others.
 *
 * <p>{@link org.beveragethermal.core.uncertainty.Ensemble#withMonitor} tells how many draws are finished and may cancel.
 *
 * <p>Draws depend on the seed and on the number of the draw only, never on threads; the generator is {@link
 * java.util.SplittableRandom}.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  UncertainInputs, LawScatter ┬→ Ensemble: draws → runs → PredictionEnsemble → Interval, Spread
 *                              ├→ LinearSpread: slopes of one run → budget by input
 *                              └→ AdaptiveMonteCarlo, Tornado, SobolIndices: one figure
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.uncertainty;

import org.jspecify.annotations.NullMarked;
