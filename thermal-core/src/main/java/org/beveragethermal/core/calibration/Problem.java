/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;
import org.beveragethermal.core.calibration.Observations.Kind;
import org.beveragethermal.core.solver.SolverException;

/**
 * A fit as a problem of least squares: runs with their models, and the slots of the vector of parameters.
 *
 * <p>Immutable and thread-safe if its models are.
 *
 * @param slots entries of the vector of parameters
 * @param runs models with their readings
 * @param settings how errors are understood
 * @param leftOut for each run, which readings are left out; empty if none is
 */
record Problem(List<Slot> slots, List<Run> runs, Settings settings, List<boolean[]> leftOut) {

    /** One entry of the vector of parameters. */
    record Slot(String name, Parameter parameter) {}

    /**
     * A model with its readings.
     *
     * @param id name of the run
     * @param model the model
     * @param observations the readings
     * @param places slot of each parameter of the model
     */
    @SuppressWarnings("ArrayRecordComponent") // internal, never compared
    record Run(String id, Model model, Observations observations, int[] places) {

        double[] pick(double[] theta) {
            double[] values = new double[places.length];
            for (int k = 0; k < values.length; k++) {
                values[k] = theta[places[k]];
            }
            return values;
        }
    }

    /**
     * How errors are understood and how long to search.
     *
     * @param loss what a residual costs
     * @param scatterKnown whether deviations of readings are standard deviations
     * @param following whether errors follow each other
     * @param starts number of starts
     * @param seed seed of the starts
     * @param mostEvaluations most evaluations of the models for one search
     */
    record Settings(Loss loss, boolean scatterKnown, boolean following, int starts, long seed, int mostEvaluations) {}

    int readings() {
        return runs.stream().mapToInt(run -> run.observations().size()).sum();
    }

    boolean isLeftOut(int run, int i) {
        return !leftOut.isEmpty() && leftOut.get(run)[i];
    }

    Problem leavingOut(List<boolean[]> which) {
        return new Problem(slots, runs, settings, which);
    }

    Problem withRuns(List<Run> newRuns) {
        return new Problem(slots, newRuns, settings, leftOut);
    }

    boolean censored() {
        return censoredReadings() > 0;
    }

    /** Number of readings that are only known to lie below or above a value. */
    int censoredReadings() {
        int number = 0;
        for (Run run : runs) {
            for (int i = 0; i < run.observations().size(); i++) {
                number += run.observations().kind(i) == Kind.EXACT ? 0 : 1;
            }
        }
        return number;
    }

    int priors() {
        return (int) slots.stream()
                .filter(s -> s.parameter().prior().isPresent() && !s.parameter().fixed())
                .count();
    }

    /** The standard deviation of a reading under a scatter: where it is known, with the rounding of the display. */
    double deviation(Observations observations, int i, double scatter) {
        double deviation = observations.deviation(i) * scatter;
        if (!settings.scatterKnown()) {
            return deviation;
        }
        double rounding = observations.quantum() / Math.sqrt(12);
        return Math.sqrt(deviation * deviation + rounding * rounding);
    }

    /**
     * Everything at a set of parameters.
     *
     * @param theta the parameters
     * @param noise the errors
     * @param information whether slopes are those of the information (for covariances) instead of those of the residuals
     * @throws Infeasible if a model has no finite answer there
     */
    Rows rows(double[] theta, Noise noise, boolean information) {
        return rows(theta, predict(theta), noise, information);
    }

    /** The same where the predictions are known. */
    Rows rows(double[] theta, List<Predicted> predicted, Noise noise, boolean information) {
        Rows rows = new Rows(predicted, readings(), priors(), slots.size());
        int first = 0;
        for (int r = 0; r < runs.size(); r++) {
            Run run = runs.get(r);
            fill(rows, r, first, predicted.get(r), noise, information);
            if (settings.following()) {
                Following.whiten(
                        rows, run.observations(), first, noise.following(), leftOut.isEmpty() ? null : leftOut.get(r));
            }
            first += run.observations().size();
        }
        System.arraycopy(rows.residuals, 0, rows.innovations, 0, rows.readings);
        if (!settings.loss().isSquares()) {
            bend(rows, information);
        }
        priorRows(rows, theta, first);
        return rows;
    }

    /** What the model of each run says. */
    private List<Predicted> predict(double[] theta) {
        return runs.stream().map(run -> predict(run, theta)).toList();
    }

    private static Predicted predict(Run run, double[] theta) {
        Predicted predicted;
        try {
            predicted = run.model().at(run.pick(theta));
        } catch (SolverException | IllegalArgumentException refusal) {
            throw new Infeasible("run " + run.id() + ": " + refusal.getMessage(), refusal);
        }
        if (predicted.size() != run.observations().size()) {
            throw new FitException("run " + run.id() + ": the model predicts " + predicted.size() + " values for "
                    + run.observations().size() + " readings");
        }
        return predicted;
    }

    private void fill(Rows rows, int r, int first, Predicted predicted, Noise noise, boolean information) {
        Run run = runs.get(r);
        Observations seen = run.observations();
        int[] places = run.places();
        for (int i = 0; i < seen.size(); i++) {
            int row = first + i;
            rows.deviations[row] = Double.NaN;
            if (isLeftOut(r, i)) {
                continue;
            }
            double deviation = deviation(seen, i, noise.scatter());
            double e = (predicted.value(i) - seen.value(i)) / deviation;
            double factor = 1 / deviation;
            if (seen.kind(i) == Kind.EXACT) {
                rows.residuals[row] = e;
                rows.deviations[row] = (predicted.value(i) - seen.value(i)) / seen.deviation(i);
            } else if (Double.isInfinite(e) && e > 0 == (seen.kind(i) == Kind.ABOVE)) {
                continue;
            } else {
                double z = seen.kind(i) == Kind.BELOW ? -e : e;
                rows.residuals[row] = Math.sqrt(-2 * Tail.logProbability(z));
                factor *= censoredSlope(rows.residuals[row], z, seen.kind(i), information);
            }
            if (!Double.isFinite(rows.residuals[row])) {
                throw new Infeasible(
                        "run " + run.id() + ": the model predicts " + predicted.value(i) + " for reading " + i, null);
            }
            for (int k = 0; k < places.length; k++) {
                double slope = predicted.slope(i, k) * factor;
                if (!Double.isFinite(slope)) {
                    throw new Infeasible(
                            "run " + run.id() + ": slope " + predicted.slope(i, k) + " of reading " + i + " in "
                                    + slots.get(places[k]).name(),
                            null);
                }
                rows.slopes[row][places[k]] += slope;
            }
        }
    }

    /** Slope of √(−2 log Φ(z)) in the standardised prediction, or the root of the curvature of −log Φ. */
    private static double censoredSlope(double residual, double z, Kind kind, boolean information) {
        double hazard = Tail.hazard(z);
        if (information) {
            return Math.sqrt(Math.max(0, hazard * (z + hazard)));
        }
        double byZ = residual < 1e-150 ? 0 : -hazard / residual;
        return kind == Kind.BELOW ? -byZ : byZ;
    }

    private void bend(Rows rows, boolean information) {
        for (int i = 0; i < rows.readings; i++) {
            double r = rows.residuals[i];
            if (!information) {
                double slope = settings.loss().rootSlope(r);
                for (int k = 0; k < slots.size(); k++) {
                    rows.slopes[i][k] *= slope;
                }
            }
            rows.residuals[i] = settings.loss().root(r);
        }
    }

    private void priorRows(Rows rows, double[] theta, int first) {
        int row = first;
        for (int k = 0; k < slots.size(); k++) {
            Parameter parameter = slots.get(k).parameter();
            if (parameter.prior().isPresent() && !parameter.fixed()) {
                Parameter.Prior prior = parameter.prior().get();
                rows.residuals[row] = (theta[k] - prior.mean()) / prior.standardDeviation();
                rows.slopes[row][k] = 1 / prior.standardDeviation();
                row++;
            }
        }
    }

    /** A place where a model has no finite answer. */
    @SuppressWarnings("serial")
    static final class Infeasible extends RuntimeException {

        Infeasible(String message, @org.jspecify.annotations.Nullable Throwable cause) {
            super(message, cause);
        }
    }
}
