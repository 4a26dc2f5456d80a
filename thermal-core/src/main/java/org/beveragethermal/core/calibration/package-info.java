/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Corrects predictions with measurement: fits parameters to readings, and says how far the result is to be believed.
 *
 * <p><b>Problem.</b> Films, contacts and rooms are known roughly; a thermometer in one bottle can tell them for this refrigerator. But
 * a fit always returns numbers. Whether the model is right, whether the readings tell the parameters apart, and what a prediction
 * with them is worth, has to be answered too, without being asked.
 *
 * <p><b>Use.</b> A {@link org.beveragethermal.core.calibration.Model} predicts readings from parameters with exact slopes; {@link
 * org.beveragethermal.core.calibration.TemperatureModel} is one for any thermal prediction, read by a {@link
 * org.beveragethermal.core.calibration.Sensor} that may lag and be off:
 *
 * <pre>{@code
 * TemperatureModel model = TemperatureModel.of(timesS, (values, solver) -> Sensed.in(
 *                 Lumped.of(bottle(values.get("start"))).with(solver).expose(in(refrigerator, Duration.ofHours(6)))))
 *         .multipliers(Multipliers.AIR_FILM, Multipliers.INSIDE_FILM)
 *         .throughLawsAlone() // the setting hands its solver on and uses the multipliers in no other way
 *         .inputs("start")
 *         .readBy(Sensor.IDEAL.lagging("lag"));
 * FitResult result = Fit.builder()
 *         .parameter(Parameter.of(Multipliers.AIR_FILM, 1).between(0.1, 10))
 *         .parameter(Parameter.of(Multipliers.INSIDE_FILM, 1).between(0.1, 10).withPrior(1, 0.2))
 *         .parameter(Parameter.of("start", 295).forEachRun())
 *         .parameter(Parameter.of("lag", 30).between(1, 600))
 *         .run("Tuesday", model, Observations.of(timesS, readingsK).quantised(0.1))
 *         .build()
 *         .run();
 * System.out.println(result.explain());
 * FittedSet set = result.fittedSet("our refrigerator", 1, now);
 * NetworkSolver fitted = NetworkSolver.standard().withMultipliers(Map.of(
 *         Multipliers.AIR_FILM, set.values().get(Multipliers.AIR_FILM)));
 * }</pre>
 *
 * <p>{@link org.beveragethermal.core.calibration.FitResult#explain} says everything at once: estimates with intervals by linearisation,
 * by profile and by repeated fits; correlations; whether the residuals are chance (if not, the model is rejected); whether the
 * readings tell the parameters apart, and which further reading would; criteria and cross-validation. Several runs are fitted together,
 * with parameters that they share and others of their own. Parameters may have bounds, priors or a kept value; readings may have
 * weights, outliers ({@link org.beveragethermal.core.calibration.Loss}), errors that follow each other, or be no more than "below",
 * "above" and "not while it was watched".
 *
 * <p><b>Method.</b> Levenberg–Marquardt (Commons Math, after MINPACK) on residuals and slopes; where models are exact, Gauss–Newton
 * steps for the last digits; bounds by projection and a set of held parameters that satisfies the conditions of Karush, Kuhn and Tucker;
 * covariances by orthogonal transformations of the slopes. Censored readings enter with their probability, a robust loss as the square of
 * its root, correlated errors by whitening with a correlation that is most likely; scatter, correlation and parameters are estimated in
 * turn. Slopes of thermal predictions in multipliers come with the run, from the variational equations along its steps; in inputs they
 * are differences along one frozen sequence of steps; never differences between runs that choose their own.
 *
 * <p><b>Limits.</b> Standard errors suppose that the model is right and nearly linear over them; where it is not, profiles and repeated
 * fits tell. Priors of the true width make intervals right on average over what the priors describe. A biweight loss and any model
 * that oscillates may have several minima: {@link org.beveragethermal.core.calibration.Fit.Builder#starts}.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Observations (readings) ┐                                    ┌→ estimates, intervals, correlations
 *  Model (slopes) + Sensor ├→ Fit → least squares → FitResult ──┼→ is the model rejected? are factors told apart?
 *  Parameters, priors      ┘                                    └→ FittedSet → multipliers of the next prediction
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.calibration;

import org.jspecify.annotations.NullMarked;
