/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.beveragethermal.core.uncertainty.Ensemble;

/**
 * What a fit found, and how far it is to be believed. Immutable; thread-safe if the models are.
 *
 * <p>{@link #explain} says all of it. Standard errors, bands and {@link #interval} linearise the model at the estimates; {@link
 * #profile} and {@link #bootstrap} do not.
 *
 * <p>Theory manual, equation (8.4).
 */
public final class FitResult {

    /** Probability of intervals where none is asked for. */
    public static final double USUAL_PROBABILITY = 0.95;

    private final Problem problem;
    private final Search search;

    private FitResult(Problem problem, Search search) {
        this.problem = problem;
        this.search = search;
    }

    /** The same result of models that count how often they are asked. */
    FitResult counting(AtomicInteger asked) {
        return new FitResult(
                problem.withRuns(problem.runs().stream()
                        .map(run -> new Problem.Run(
                                run.id(), new CountedModel(run.model(), asked), run.observations(), run.places()))
                        .toList()),
                search);
    }

    static FitResult of(Problem problem, Search search) {
        return new FitResult(problem, search);
    }

    /**
     * Whether the search ended at a minimum.
     *
     * @return false if it used up its evaluations
     */
    public boolean converged() {
        return search.minimum().converged();
    }

    /**
     * Evaluations of all models in the search that won, over all its rounds.
     *
     * @return number
     */
    public int evaluations() {
        return search.minimum().evaluations();
    }

    /**
     * Number of starts that could be tried.
     *
     * @return number, at least 1
     */
    public int starts() {
        return search.starts();
    }

    /**
     * Number of starts that ended at the same minimum as the best.
     *
     * @return number, at least 1
     */
    public int agreeingStarts() {
        return search.agreeing();
    }

    /**
     * All parameters.
     *
     * @return estimates, those of parameters with a value per run named {@code name@run}
     */
    public List<Estimate> estimates() {
        List<Estimate> estimates = new ArrayList<>();
        for (int k = 0; k < problem.slots().size(); k++) {
            estimates.add(estimate(k));
        }
        return List.copyOf(estimates);
    }

    /**
     * A parameter.
     *
     * @param name its name
     * @return its estimate
     * @throws IllegalArgumentException if there is no such parameter
     */
    public Estimate estimate(String name) {
        return estimate(slot(name));
    }

    private Estimate estimate(int k) {
        double value = search.minimum().theta()[k];
        Parameter parameter = problem.slots().get(k).parameter();
        Estimate.Status status = Estimate.Status.ESTIMATED;
        if (parameter.fixed()) {
            status = Estimate.Status.KEPT;
        } else if (search.minimum().atBound()[k]) {
            status = value <= parameter.low() ? Estimate.Status.AT_LOWER_BOUND : Estimate.Status.AT_UPPER_BOUND;
        } else if (search.solution().information().undetermined[k]) {
            status = Estimate.Status.NOT_DETERMINED;
        }
        return new Estimate(
                problem.slots().get(k).name(),
                value,
                status == Estimate.Status.ESTIMATED
                        ? OptionalDouble.of(Math.sqrt(covariance(k, k)))
                        : OptionalDouble.empty(),
                status);
    }

    /**
     * Covariance of two estimates.
     *
     * @param first name of one
     * @param second name of the other, or the same
     * @return covariance, 0 if one of them was not estimated or the readings do not determine it
     * @throws IllegalArgumentException if there is no such parameter
     */
    public double covariance(String first, String second) {
        return covariance(slot(first), slot(second));
    }

    private double covariance(int a, int b) {
        Information information = search.solution().information();
        return information.undetermined[a] || information.undetermined[b]
                ? 0
                : information.covariance[a][b] * search.solution().spread();
    }

    /**
     * Correlation of two estimates.
     *
     * @param first name of one
     * @param second name of the other
     * @return correlation, −1 to 1; 0 if one of them was not estimated or the readings do not determine it
     * @throws IllegalArgumentException if there is no such parameter
     */
    public double correlation(String first, String second) {
        int a = slot(first);
        int b = slot(second);
        double scale = Math.sqrt(covariance(a, a) * covariance(b, b));
        return scale > 0 ? Math.max(-1, Math.min(1, covariance(a, b) / scale)) : 0;
    }

    /**
     * Sum of squares of readings off predictions, in units of the readings' deviations as they were given.
     *
     * @return sum over exact readings
     */
    public double residualSumOfSquares() {
        double sum = 0;
        for (double deviation : search.solution().rows().deviations) {
            sum += Double.isNaN(deviation) ? 0 : deviation * deviation;
        }
        return sum;
    }

    /**
     * Scatter of readings: the residual standard deviation, as a factor on the readings' deviations.
     *
     * @return the factor; 1 where deviations are known
     */
    public double residualStandardDeviation() {
        return search.noise().scatter();
    }

    /**
     * Correlation of errors one usual spacing of readings apart.
     *
     * @return the estimate; 0 where errors are taken as independent
     */
    public double errorCorrelation() {
        return search.noise().following();
    }

    /**
     * Effective number of parameters: how many the readings, not priors, determine.
     *
     * @return the sum of the readings' leverages
     */
    public double effectiveParameters() {
        return search.solution().effective();
    }

    /**
     * Degrees of freedom of the residual standard deviation: readings less effective parameters.
     *
     * @return degrees of freedom, a fraction where there are priors
     */
    public double degreesOfFreedom() {
        return search.solution().used() - search.solution().effective();
    }

    /** Two-sided quantile of estimates over their standard errors. */
    private double quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("probability " + probability + ": expected between 0 and 1");
        }
        double upper = 0.5 + 0.5 * probability;
        return problem.settings().scatterKnown()
                ? new NormalDistribution(null, 0, 1).inverseCumulativeProbability(upper)
                : new TDistribution(null, Math.max(degreesOfFreedom(), 1e-3)).inverseCumulativeProbability(upper);
    }

    /**
     * Confidence interval by linearisation.
     *
     * @param name the parameter
     * @param probability between 0 and 1
     * @return the interval; open if the readings do not determine the parameter, of no width if it was not estimated
     * @throws IllegalArgumentException if there is no such parameter or the probability is outside its range
     */
    public ConfidenceInterval interval(String name, double probability) {
        Estimate estimate = estimate(name);
        double quantile = quantile(probability);
        if (estimate.status() == Estimate.Status.NOT_DETERMINED) {
            return new ConfidenceInterval(
                    OptionalDouble.empty(), estimate.value(), OptionalDouble.empty(), probability);
        }
        double half = quantile * estimate.standardError().orElse(0);
        return new ConfidenceInterval(
                OptionalDouble.of(estimate.value() - half),
                estimate.value(),
                OptionalDouble.of(estimate.value() + half),
                probability);
    }

    /**
     * Profile of the likelihood of a parameter: the interval without linearisation. Each point is a search of the other parameters.
     *
     * @param name the parameter
     * @param probability between 0 and 1
     * @return the profile
     * @throws IllegalArgumentException if there is no such parameter, it was kept, or the probability is outside its range
     */
    public Profile profile(String name, double probability) {
        return profile(name, probability, Profiling.SURE);
    }

    private Profile profile(String name, double probability, double tolerance) {
        int k = slot(name);
        Parameter parameter = problem.slots().get(k).parameter();
        if (parameter.fixed()) {
            throw new IllegalArgumentException("parameter " + name + ": kept at its start, it has no profile");
        }
        double error = estimate(k).standardError().orElse(0);
        return Profiling.of(
                problem,
                search,
                k,
                quantile(probability),
                probability,
                error > 0 ? error : 0.1 * parameter.scale(),
                tolerance);
    }

    /**
     * Repeats the fit on redrawn readings; priors stay as they are.
     *
     * @param kind how readings are redrawn
     * @param ensemble how many fits, from which seed, on which threads; the result does not depend on the threads
     * @return the repeated estimates
     * @throws IllegalArgumentException if fits are to be repeated on the tangent and readings lie below or above a value
     */
    public Bootstrap bootstrap(Bootstrap.Kind kind, Ensemble ensemble) {
        return Redrawing.of(problem, search, kind, ensemble);
    }

    /**
     * Predictions of a run with bands.
     *
     * @param run name of the run
     * @param probability between 0 and 1
     * @return a point per reading
     * @throws IllegalArgumentException if there is no such run or the probability is outside its range
     */
    public Band band(String run, double probability) {
        for (Problem.Run one : problem.runs()) {
            if (one.id().equals(run)) {
                return band(one.model(), one.places(), i -> problem.deviation(one.observations(), i, 1), probability);
            }
        }
        throw new IllegalArgumentException("run " + run + ": expected one of "
                + problem.runs().stream().map(Problem.Run::id).toList());
    }

    /**
     * Predictions of any model of the same parameters with bands, such as the same run at other times.
     *
     * @param model a model whose parameters are among the estimates, by the names of those
     * @param deviation deviation of a new reading, relative as those of the fit where their scatter is estimated, finite, ≥ 0
     * @param probability between 0 and 1
     * @return a point per value of the model
     * @throws IllegalArgumentException if the model knows a parameter that was not fitted or a number is outside its range
     */
    public Band band(Model model, double deviation, double probability) {
        if (!(deviation >= 0) || Double.isInfinite(deviation)) {
            throw new IllegalArgumentException(
                    "deviation of a new reading " + deviation + ": expected a finite number ≥ 0");
        }
        int[] places = model.parameters().stream().mapToInt(this::slot).toArray();
        return band(model, places, i -> deviation, probability);
    }

    private Band band(Model model, int[] places, IntToDoubleFunction deviations, double probability) {
        double quantile = quantile(probability);
        double[] values = new double[places.length];
        for (int k = 0; k < places.length; k++) {
            values[k] = search.minimum().theta()[places[k]];
        }
        Predicted predicted = model.at(values);
        List<Band.Point> points = new ArrayList<>();
        Set<String> undetermined = new LinkedHashSet<>();
        for (int i = 0; i < predicted.size(); i++) {
            double[] gradient = new double[problem.slots().size()];
            for (int k = 0; k < places.length; k++) {
                gradient[places[k]] += predicted.slope(i, k);
            }
            Information information = search.solution().information();
            if (information.isLost(gradient)) {
                for (int place : places) {
                    if (information.undetermined[place] && gradient[place] != 0) {
                        undetermined.add(problem.slots().get(place).name());
                    }
                }
            }
            double variance = information.variance(gradient) * search.solution().spread();
            double reading = deviations.applyAsDouble(i) * search.noise().scatter();
            double confidence = quantile * Math.sqrt(variance);
            double prediction = quantile * Math.sqrt(variance + reading * reading);
            double value = predicted.value(i);
            points.add(new Band.Point(
                    value,
                    Math.sqrt(variance),
                    value - confidence,
                    value + confidence,
                    value - prediction,
                    value + prediction));
        }
        return new Band(probability, points, List.copyOf(undetermined));
    }

    /**
     * Whether the residuals look like the errors that the fit supposes.
     *
     * @return the examination
     */
    public ResidualDiagnostics residuals() {
        return Examination.of(problem, search);
    }

    /**
     * Whether the readings tell the parameters apart. Profiles every parameter.
     *
     * @return the report
     */
    public Identifiability identifiability() {
        return identifiability(profiles());
    }

    Identifiability identifiability(Map<String, Profile> profiles) {
        return Identifying.of(this, problem, search, profiles);
    }

    /** Profiles of all parameters that were searched for, at the usual probability, at a glance. */
    Map<String, Profile> profiles() {
        Map<String, Profile> profiles = new LinkedHashMap<>();
        for (Problem.Slot slot : problem.slots()) {
            if (!slot.parameter().fixed()) {
                profiles.put(slot.name(), profile(slot.name(), USUAL_PROBABILITY, Profiling.GLANCE));
            }
        }
        return profiles;
    }

    /**
     * Criteria for choosing among models.
     *
     * @return the criteria; of a robust loss only comparable among fits with that loss
     */
    public Criteria criteria() {
        double parameters = effectiveParameters()
                + (problem.settings().scatterKnown() ? 0 : 1)
                + (problem.settings().following() ? 1 : 0);
        return Criteria.of(
                -0.5 * search.solution().deviance(),
                parameters,
                search.solution().used());
    }

    /**
     * Whether a larger model, of which this one is a special case, fits the same readings better than chance would have it.
     *
     * @param larger fit of the larger model to the same readings
     * @return the F test
     * @throws IllegalArgumentException if the other has no more parameters or another number of readings, or one of the fits has a robust loss,
     *     errors that follow each other or readings below or above a value: their sums of squares have no F distribution, compare
     *     {@link #criteria}
     */
    public NestedTest testAgainst(FitResult larger) {
        if (larger.search.solution().used() != search.solution().used()) {
            throw new IllegalArgumentException("fits of " + search.solution().used() + " and "
                    + larger.search.solution().used() + " readings: expected as many, and the same");
        }
        for (FitResult fit : List.of(this, larger)) {
            Problem.Settings settings = fit.problem.settings();
            if (!settings.loss().isSquares() || settings.following() || fit.problem.censored()) {
                throw new IllegalArgumentException(
                        "F test with a robust loss, errors that follow each other or readings below or above a value:"
                                + " expected least squares of independent exact readings; compare criteria");
            }
        }
        return NestedTest.of(
                residualSumOfSquares(), degreesOfFreedom(), larger.residualSumOfSquares(), larger.degreesOfFreedom());
    }

    /**
     * Leaves out parts of the readings in turn and predicts them; stretches of neighbours where errors follow each other.
     *
     * @param parts number of parts, 2 to the number of readings
     * @param seed seed of the draw of the parts
     * @return how well they are predicted
     * @throws IllegalArgumentException if the number is outside its range
     */
    public CrossValidation crossValidation(int parts, long seed) {
        if (parts < 2 || parts > problem.readings()) {
            throw new IllegalArgumentException(
                    "parts " + parts + ": expected 2 to " + problem.readings() + ", the number of readings");
        }
        return Validation.parts(problem, search, parts, seed);
    }

    /**
     * Leaves out runs in turn and predicts them from what the runs share; parameters of their own take their start, or their prior.
     *
     * @return how well they are predicted
     * @throws IllegalArgumentException if there is but one run
     */
    public CrossValidation crossValidationByRun() {
        if (problem.runs().size() < 2) {
            throw new IllegalArgumentException("one run: expected at least two to leave one out");
        }
        return Validation.runs(problem, search);
    }

    /**
     * Everything in words and figures: estimates with three kinds of intervals, correlations, residuals, whether the readings tell the
     * parameters apart and what would, criteria and cross-validation.
     *
     * <p>Asks the models some 40 times for each parameter and 30 times more; the last line says how often it was. Repeated fits
     * are on the tangent of the models ({@link Bootstrap.Kind#TANGENT}), but if readings lie below or above a value, 49 whole ones. {@link
     * #explain(Ensemble)} repeats whole fits.
     *
     * @return lines of text
     */
    public String explain() {
        return Report.of(this, Optional.empty());
    }

    /**
     * The same with whole fits repeated on redrawn readings, each of which asks the models two to five times.
     *
     * @param repeats how many, from which seed, on which threads
     * @return lines of text
     */
    public String explain(Ensemble repeats) {
        return Report.of(this, Optional.of(repeats));
    }

    /**
     * Plain figures of the result, for storing and for other programs.
     *
     * @return the snapshot
     */
    public FitSnapshot snapshot() {
        return FitSnapshot.of(this);
    }

    /**
     * The estimates as a value that can be stored and applied to other vessels in the same gear.
     *
     * @param name what they are of, such as "refrigerator in the pantry", not blank
     * @param version counts up with each new fit of the same, ≥ 1
     * @param fittedAt when it was fitted
     * @return the set: parameters shared by all runs
     * @throws IllegalArgumentException if a part is outside its range or the runs share no parameter
     */
    public FittedSet fittedSet(String name, int version, Instant fittedAt) {
        Map<String, Double> values = new LinkedHashMap<>();
        for (int k = 0; k < problem.slots().size(); k++) {
            Estimate estimate = estimate(k);
            if (!problem.slots().get(k).parameter().perRun() && estimate.status() != Estimate.Status.NOT_DETERMINED) {
                values.put(estimate.name(), estimate.value());
            }
        }
        List<String> names = List.copyOf(values.keySet());
        List<List<Double>> covariances = names.stream()
                .map(a -> names.stream().map(b -> covariance(a, b)).toList())
                .toList();
        return new FittedSet(
                name, version, fittedAt, values, covariances, residualStandardDeviation(), degreesOfFreedom());
    }

    Problem problem() {
        return problem;
    }

    private int slot(String name) {
        for (int k = 0; k < problem.slots().size(); k++) {
            if (problem.slots().get(k).name().equals(name)) {
                return k;
            }
        }
        throw new IllegalArgumentException("parameter " + name + ": expected one of "
                + problem.slots().stream().map(Problem.Slot::name).toList());
    }
}
