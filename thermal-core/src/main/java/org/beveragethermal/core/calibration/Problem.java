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
 * <p>Theory manual, equation (8.3).
 *
 * @param slots entries of the vector of parameters
 * @param runs models with their readings
 * @param settings how errors are understood
 * @param spacing usual spacing of readings, the unit in which errors that follow each other are counted; 1 if they do not
 * @param leftOut for each run, which readings are left out; empty if none is
 */
record Problem(List<Slot> slots, List<Run> runs, Settings settings, double spacing, List<boolean[]> leftOut) {

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
        return new Problem(slots, runs, settings, spacing, which);
    }

    Problem withRuns(List<Run> newRuns) {
        return new Problem(slots, newRuns, settings, spacing, leftOut);
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
        Rows rows = new Rows(predicted, readings(), priors(), made -> slopes(made, noise, information));
        int first = 0;
        for (int r = 0; r < runs.size(); r++) {
            fill(rows, r, first, predicted.get(r), noise, information);
            first += runs.get(r).observations().size();
        }
        if (settings.following()) {
            Following.whiten(this, rows.residuals, noise.following());
        }
        System.arraycopy(rows.residuals, 0, rows.innovations, 0, rows.readings);
        if (!settings.loss().isSquares()) {
            for (int i = 0; i < rows.readings; i++) {
                rows.residuals[i] = settings.loss().root(rows.innovations[i]);
            }
        }
        int row = first;
        for (int k = 0; k < slots.size(); k++) {
            Parameter parameter = slots.get(k).parameter();
            if (parameter.prior().isPresent() && !parameter.fixed()) {
                Parameter.Prior prior = parameter.prior().get();
                rows.residuals[row++] = (theta[k] - prior.mean()) / prior.standardDeviation();
            }
        }
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
        for (int i = 0; i < seen.size(); i++) {
            int row = first + i;
            rows.deviations[row] = Double.NaN;
            if (isLeftOut(r, i)) {
                continue;
            }
            double deviation = deviation(seen, i, noise.scatter());
            double e = (predicted.value(i) - seen.value(i)) / deviation;
            rows.factors[row] = 1 / deviation;
            if (seen.kind(i) == Kind.EXACT) {
                rows.residuals[row] = e;
                rows.deviations[row] = (predicted.value(i) - seen.value(i)) / seen.deviation(i);
            } else if (Double.isInfinite(e) && e > 0 == (seen.kind(i) == Kind.ABOVE)) {
                rows.factors[row] = 0;
            } else {
                double z = seen.kind(i) == Kind.BELOW ? -e : e;
                rows.residuals[row] = Math.sqrt(-2 * Tail.logProbability(z));
                rows.factors[row] *= censoredSlope(rows.residuals[row], z, seen.kind(i), information);
            }
            if (!Double.isFinite(rows.residuals[row])) {
                throw new Infeasible(
                        "run " + run.id() + ": the model predicts " + predicted.value(i) + " for reading " + i, null);
            }
        }
    }

    private double[][] slopes(Rows rows, Noise noise, boolean information) {
        double[][] slopes = new double[slots.size()][rows.residuals.length];
        int first = 0;
        for (int r = 0; r < runs.size(); r++) {
            double[][] columns = columns(runs.get(r), rows.predicted.get(r));
            int[] places = runs.get(r).places();
            for (int k = 0; k < places.length; k++) {
                add(columns[k], rows.factors, first, slopes[places[k]], runs.get(r), k);
            }
            first += runs.get(r).observations().size();
        }
        for (double[] column : slopes) {
            if (settings.following()) {
                Following.whiten(this, column, noise.following());
            }
            if (!settings.loss().isSquares() && !information) {
                for (int i = 0; i < rows.readings; i++) {
                    column[i] *= settings.loss().rootSlope(rows.innovations[i]);
                }
            }
        }
        int row = first;
        for (int k = 0; k < slots.size(); k++) {
            Parameter parameter = slots.get(k).parameter();
            if (parameter.prior().isPresent() && !parameter.fixed()) {
                slopes[k][row++] = 1 / parameter.prior().get().standardDeviation();
            }
        }
        return slopes;
    }

    private static double[][] columns(Run run, Predicted predicted) {
        try {
            return predicted.columns();
        } catch (SolverException | IllegalArgumentException refusal) {
            throw new Infeasible("run " + run.id() + ": " + refusal.getMessage(), refusal);
        }
    }

    private void add(double[] column, double[] factors, int first, double[] slopes, Run run, int k) {
        for (int i = 0; i < column.length; i++) {
            double factor = factors[first + i];
            double slope = factor == 0 ? 0 : column[i] * factor;
            if (!Double.isFinite(slope)) {
                throw new Infeasible(
                        "run " + run.id() + ": slope " + column[i] + " of reading " + i + " in "
                                + slots.get(run.places()[k]).name(),
                        null);
            }
            slopes[first + i] += slope;
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

    /** A place where a model has no finite answer. */
    @SuppressWarnings("serial")
    static final class Infeasible extends RuntimeException {

        Infeasible(String message, @org.jspecify.annotations.Nullable Throwable cause) {
            super(message, cause);
        }
    }
}
