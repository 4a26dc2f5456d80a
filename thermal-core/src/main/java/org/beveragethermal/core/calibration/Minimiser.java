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
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Levenberg–Marquardt (Commons Math's, after MINPACK) within bounds.
 *
 * <p>Trial points are projected onto the bounds. Where a search ends, parameters at a bound that they push against are held there and
 * the rest is searched again, until the set of held parameters no longer changes (Karush–Kuhn–Tucker conditions).
 *
 * <p>Theory manual, equation (8.3).
 */
final class Minimiser {

    /** When a search ends: change of cost, change of parameters, cosine of residuals with slopes. */
    enum Precision {
        /** As many digits as there are, polished. */
        FULL(1e-15, 1e-12, 1e-14),
        /** Well within standard errors: for models that are not exact, and for the many searches of profiles, repeated fits and validations. */
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
    private static final int MOST_DESCENTS = 5;
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
        bestRows.slopes();
    }

    /** Searches from a start; parameters that are held stay there. */
    static Minimum from(Problem problem, Noise noise, double[] start, boolean[] held, Precision precision) {
        int most = problem.settings().mostEvaluations();
        Minimiser fresh =
                new Minimiser(problem, noise, start, problem.rows(start, noise, false), held, precision, most);
        fresh.evaluations = 1;
        return fresh.search();
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
            double[][] triangle = Triangle.of(bestRows.slopes(), free, bestRows.residuals);
            double[] step = Triangle.solved(triangle);
            double size = step.length == 0 ? Double.NaN : part(triangle);
            double[] next = best.clone();
            boolean inside = true;
            for (int j = 0; j < step.length; j++) {
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
                nextRows.slopes();
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

    /** How long the part of the last column is that the others explain, as a part of the whole. */
    private static double part(double[][] triangle) {
        int last = triangle.length - 1;
        double explained = 0;
        for (int i = 0; i < last; i++) {
            explained += triangle[i][last] * triangle[i][last];
        }
        double rest = triangle[last][last] * triangle[last][last];
        return Math.sqrt(explained / Math.max(explained + rest, Double.MIN_NORMAL));
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
                gradient += bestRows.slopes()[k][i] * bestRows.residuals[i];
            }
            pushing[k] = low ? gradient > 0 : gradient < 0;
        }
        return pushing;
    }

    /** Searches over the free parameters; whether it converged. */
    private boolean descend(int[] free) {
        for (int again = 0; again < MOST_DESCENTS; again++) {
            double[] from = best;
            double reached;
            try {
                reached = descent(free);
            } catch (ConvergenceException smallerIsNotNear) {
                // Tolerances beyond rounding: the best point so far is the minimum to rounding.
                return true;
            } catch (TooManyEvaluationsException | TooManyIterationsException outOfBudget) {
                return false;
            }
            // A point that was better than where the search went on from had its slopes; the search goes on from there.
            if (reached <= bestCost * (1 + ROUNDING) || Arrays.equals(from, best)) {
                return true;
            }
        }
        return false;
    }

    /** One search from the best point so far; the cost where it ended. */
    private double descent(int[] free) {
        double[] origin = best.clone();
        double[] start = new double[free.length];
        for (int j = 0; j < free.length; j++) {
            start[j] = best[free[j]];
        }
        double root = new LevenbergMarquardtOptimizer(
                        FIRST_STEP_FACTOR,
                        precision.cost,
                        precision.parameter,
                        precision.orthogonality,
                        Double.MIN_NORMAL)
                .optimize(new LeastSquaresBuilder()
                        .model(point -> evaluate(origin, free, point))
                        .target(new double[free.length + 1])
                        .start(start)
                        .parameterValidator(point -> projected(free, point))
                        // The first is known.
                        .maxEvaluations(Math.max(1, most - evaluations) + 1)
                        .maxIterations(Integer.MAX_VALUE)
                        .build())
                .getCost();
        return root * root;
    }

    private RealVector projected(int[] free, RealVector point) {
        RealVector inside = point.copy();
        for (int j = 0; j < free.length; j++) {
            Parameter parameter = problem.slots().get(free[j]).parameter();
            inside.setEntry(j, Math.max(parameter.low(), Math.min(parameter.high(), point.getEntry(j))));
        }
        return inside;
    }

    /**
     * Residuals and slopes at a point, turned so that all but one residual per parameter, and one for the rest, are 0: a search needs no
     * more, as it only asks for lengths and products. Where the cost has not fallen there are no slopes, for the search will not go
     * there.
     */
    private Pair<RealVector, RealMatrix> evaluate(double[] origin, int[] free, RealVector point) {
        double[] theta = origin.clone();
        for (int j = 0; j < free.length; j++) {
            theta[free[j]] = point.getEntry(j);
        }
        boolean known = Arrays.equals(theta, best);
        Rows rows = bestRows;
        double cost = bestCost;
        if (!known) {
            evaluations++;
            try {
                rows = problem.rows(theta, noise, false);
                cost = rows.cost();
                if (cost < bestCost) {
                    rows.slopes();
                }
            } catch (Problem.Infeasible noAnswer) {
                // Not a number never counts as smaller: the search tries a shorter step.
                return withoutSlopes(free.length, Double.NaN);
            }
            if (!(cost < bestCost)) {
                return withoutSlopes(free.length, Math.sqrt(cost));
            }
            bestCost = cost;
            bestRows = rows;
            best = theta;
        }
        double[][] triangle = Triangle.of(rows.slopes(), free, rows.residuals);
        double[] residuals = new double[free.length + 1];
        double[][] slopes = new double[free.length + 1][];
        for (int i = 0; i <= free.length; i++) {
            residuals[i] = triangle[i][free.length];
            slopes[i] = Arrays.copyOf(triangle[i], free.length);
        }
        return new Pair<>(new ArrayRealVector(residuals, false), new Array2DRowRealMatrix(slopes, false));
    }

    private static Pair<RealVector, RealMatrix> withoutSlopes(int free, double length) {
        double[] residuals = new double[free + 1];
        residuals[free] = length;
        return new Pair<>(
                new ArrayRealVector(residuals, false), new Array2DRowRealMatrix(new double[free + 1][free], false));
    }
}
