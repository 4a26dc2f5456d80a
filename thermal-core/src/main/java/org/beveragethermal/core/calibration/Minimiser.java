/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.Arrays;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Levenberg–Marquardt (Commons Math's, after MINPACK) within bounds.
 *
 * <p>Trial points are projected onto the bounds. Where a search ends, parameters at a bound that they push against are held there and
 * the rest is searched again, until the set of held parameters no longer changes (Karush–Kuhn–Tucker conditions).
 */
final class Minimiser {

    /** When a search ends: change of cost, change of parameters, cosine of residuals with slopes. */
    enum Precision {
        /** As many digits as there are, polished. */
        FULL(1e-15, 1e-12, 1e-14),
        /** Well within standard errors: for the many searches of profiles, repeated fits and validations. */
        QUICK(1e-8, 1e-6, 1e-8);

        private final double cost;
        private final double parameter;
        private final double orthogonality;

        Precision(double cost, double parameter, double orthogonality) {
            this.cost = cost;
            this.parameter = parameter;
            this.orthogonality = orthogonality;
        }
    }

    private static final double FIRST_STEP_FACTOR = 100;
    /** Steps that change the residuals by less than twice this part of their size are polishing. */
    private static final double POLISH_FROM = 1e-3;

    private static final int POLISHES = 6;
    private static final double RANK_TOLERANCE = 1e-300;
    private static final double ROUNDING = 1e-12;

    private final Problem problem;
    private final Noise noise;
    private final boolean[] held;
    private final Precision precision;
    private final int most;
    private double[] best;
    /** Those of the best point, so that it is not predicted again. */
    private Rows bestRows;

    private double bestCost;
    private int evaluations;

    private Minimiser(
            Problem problem,
            Noise noise,
            double[] start,
            Rows startRows,
            boolean[] held,
            Precision precision,
            int most) {
        this.most = most;
        this.precision = precision;
        this.problem = problem;
        this.noise = noise;
        this.held = held;
        best = start.clone();
        bestRows = startRows;
        bestCost = bestRows.cost();
    }

    /** Searches from a start; parameters that are held stay there. */
    static Minimum from(Problem problem, Noise noise, double[] start, boolean[] held, Precision precision) {
        int most = problem.settings().mostEvaluations();
        return new Minimiser(problem, noise, start, problem.rows(start, noise, false), held, precision, most).search();
    }

    /** Searches on from where a search under other errors ended, with so many evaluations at most. */
    static Minimum from(Problem problem, Noise noise, Minimum before, boolean[] held, Precision precision, int most) {
        Rows rows = problem.rows(before.theta(), before.predicted(), noise, false);
        return new Minimiser(problem, noise, before.theta(), rows, held, precision, most).search();
    }

    private Minimum search() {
        boolean[] atBound = new boolean[held.length];
        boolean converged = true;
        for (int round = 0; round <= 2 * held.length + 2; round++) {
            int[] free = free(atBound);
            converged = free.length == 0 || descend(free);
            boolean[] pushing = pushing();
            if (Arrays.equals(pushing, atBound)) {
                break;
            }
            atBound = pushing;
        }
        if (converged && precision == Precision.FULL) {
            polish(free(atBound));
        }
        return new Minimum(best, bestRows.predicted, bestCost, atBound, evaluations, converged);
    }

    /**
     * Gauss–Newton steps for the last digits, where differences of the cost are lost in rounding: taken as long as each is less than
     * half of the one before and stays within bounds.
     */
    private void polish(int[] free) {
        double before = POLISH_FROM;
        for (int i = 0; i < POLISHES && free.length > 0; i++) {
            Rows rows = bestRows;
            double[][] slopes = new double[rows.residuals.length][];
            for (int row = 0; row < slopes.length; row++) {
                slopes[row] = columns(rows.slopes[row], free);
            }
            QRDecomposition decomposition =
                    new QRDecomposition(new Array2DRowRealMatrix(slopes, false), RANK_TOLERANCE);
            if (slopes.length < free.length || !decomposition.getSolver().isNonSingular()) {
                return;
            }
            double[] step = decomposition
                    .getSolver()
                    .solve(new ArrayRealVector(rows.residuals, false))
                    .toArray();
            double size = relative(new Array2DRowRealMatrix(slopes, false).operate(step), rows.residuals);
            double[] next = best.clone();
            boolean inside = true;
            for (int j = 0; j < free.length; j++) {
                Parameter parameter = problem.slots().get(free[j]).parameter();
                next[free[j]] -= step[j];
                inside &= next[free[j]] >= parameter.low() && next[free[j]] <= parameter.high();
            }
            if (!inside || !(size < 0.5 * before)) {
                return;
            }
            evaluations++;
            Rows nextRows;
            try {
                nextRows = problem.rows(next, noise, false);
            } catch (Problem.Infeasible noAnswer) {
                return;
            }
            double cost = nextRows.cost();
            if (!(cost <= bestCost * (1 + ROUNDING))) {
                return;
            }
            best = next;
            bestRows = nextRows;
            bestCost = cost;
            before = size;
        }
    }

    private static double relative(double[] change, double[] residuals) {
        double changes = 0;
        double squares = 0;
        for (int i = 0; i < residuals.length; i++) {
            changes += change[i] * change[i];
            squares += residuals[i] * residuals[i];
        }
        return Math.sqrt(changes / Math.max(squares, Double.MIN_NORMAL));
    }

    private static double[] columns(double[] row, int[] free) {
        double[] columns = new double[free.length];
        for (int j = 0; j < free.length; j++) {
            columns[j] = row[free[j]];
        }
        return columns;
    }

    private int[] free(boolean[] atBound) {
        int[] free = new int[held.length];
        int size = 0;
        for (int k = 0; k < held.length; k++) {
            if (!held[k] && !atBound[k]) {
                free[size++] = k;
            }
        }
        return Arrays.copyOf(free, size);
    }

    /** Which parameters lie at a bound with the cost falling beyond it. */
    private boolean[] pushing() {
        boolean[] pushing = new boolean[held.length];
        for (int k = 0; k < held.length; k++) {
            Parameter parameter = problem.slots().get(k).parameter();
            boolean low = best[k] <= parameter.low();
            boolean high = best[k] >= parameter.high();
            if (held[k] || (!low && !high)) {
                continue;
            }
            double gradient = 0;
            for (int i = 0; i < bestRows.residuals.length; i++) {
                gradient += bestRows.slopes[i][k] * bestRows.residuals[i];
            }
            pushing[k] = low ? gradient > 0 : gradient < 0;
        }
        return pushing;
    }

    /** One search over the free parameters; whether it converged. */
    private boolean descend(int[] free) {
        double[] origin = best.clone();
        double[] start = new double[free.length];
        for (int j = 0; j < free.length; j++) {
            start[j] = best[free[j]];
        }
        int rows = problem.readings() + problem.priors();
        try {
            new LevenbergMarquardtOptimizer(
                            FIRST_STEP_FACTOR,
                            precision.cost,
                            precision.parameter,
                            precision.orthogonality,
                            Double.MIN_NORMAL)
                    .optimize(new LeastSquaresBuilder()
                            .model(point -> evaluate(origin, free, point, rows))
                            .target(new double[rows])
                            .start(start)
                            .parameterValidator(point -> projected(free, point))
                            .maxEvaluations(Math.max(1, most - evaluations))
                            .maxIterations(Integer.MAX_VALUE)
                            .build());
            return true;
        } catch (ConvergenceException smallerIsNotNear) {
            // Tolerances beyond rounding: the best point so far is the minimum to rounding.
            return true;
        } catch (TooManyEvaluationsException | TooManyIterationsException outOfBudget) {
            return false;
        }
    }

    private RealVector projected(int[] free, RealVector point) {
        RealVector inside = point.copy();
        for (int j = 0; j < free.length; j++) {
            Parameter parameter = problem.slots().get(free[j]).parameter();
            inside.setEntry(j, Math.max(parameter.low(), Math.min(parameter.high(), point.getEntry(j))));
        }
        return inside;
    }

    private Rows rows(double[] theta) {
        evaluations++;
        return Arrays.equals(theta, best) ? bestRows : problem.rows(theta, noise, false);
    }

    private Pair<RealVector, RealMatrix> evaluate(double[] origin, int[] free, RealVector point, int size) {
        double[] theta = origin.clone();
        for (int j = 0; j < free.length; j++) {
            theta[free[j]] = point.getEntry(j);
        }
        double[][] slopes = new double[size][free.length];
        Rows rows;
        try {
            rows = rows(theta);
        } catch (Problem.Infeasible noAnswer) {
            // Not a number never counts as smaller: the search tries a shorter step.
            double[] none = new double[size];
            Arrays.fill(none, Double.NaN);
            return new Pair<>(new ArrayRealVector(none, false), new Array2DRowRealMatrix(slopes, false));
        }
        double cost = rows.cost();
        if (cost < bestCost) {
            bestCost = cost;
            bestRows = rows;
            best = theta;
        }
        for (int i = 0; i < size; i++) {
            slopes[i] = columns(rows.slopes[i], free);
        }
        return new Pair<>(new ArrayRealVector(rows.residuals, false), new Array2DRowRealMatrix(slopes, false));
    }
}
