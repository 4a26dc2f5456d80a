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
 */
final class Minimiser {

    private static final double COST_TOLERANCE = 1e-15;
    private static final double PARAMETER_TOLERANCE = 1e-12;
    private static final double ORTHOGONALITY_TOLERANCE = 1e-14;
    private static final double FIRST_STEP_FACTOR = 100;

    private final Problem problem;
    private final Noise noise;
    private final boolean[] held;
    private double[] best;
    private double bestCost = Double.POSITIVE_INFINITY;
    private int evaluations;

    private Minimiser(Problem problem, Noise noise, double[] start, boolean[] held) {
        this.problem = problem;
        this.noise = noise;
        this.held = held;
        best = start.clone();
    }

    /** Searches from a start; parameters that are held stay there. */
    static Minimum from(Problem problem, Noise noise, double[] start, boolean[] held) {
        return new Minimiser(problem, noise, start, held).search();
    }

    private Minimum search() {
        Rows atStart = problem.rows(best, noise, false);
        bestCost = atStart.cost();
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
        return new Minimum(best, bestCost, atBound, evaluations, converged);
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
        Rows rows = null;
        for (int k = 0; k < held.length; k++) {
            Parameter parameter = problem.slots().get(k).parameter();
            boolean low = best[k] <= parameter.low();
            boolean high = best[k] >= parameter.high();
            if (held[k] || (!low && !high)) {
                continue;
            }
            rows = rows == null ? problem.rows(best, noise, false) : rows;
            double gradient = 0;
            for (int i = 0; i < rows.residuals.length; i++) {
                gradient += rows.slopes[i][k] * rows.residuals[i];
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
                            COST_TOLERANCE,
                            PARAMETER_TOLERANCE,
                            ORTHOGONALITY_TOLERANCE,
                            Double.MIN_NORMAL)
                    .optimize(new LeastSquaresBuilder()
                            .model(point -> evaluate(origin, free, point, rows))
                            .target(new double[rows])
                            .start(start)
                            .parameterValidator(point -> projected(free, point))
                            .maxEvaluations(Math.max(1, problem.settings().mostEvaluations() - evaluations))
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

    private Pair<RealVector, RealMatrix> evaluate(double[] origin, int[] free, RealVector point, int size) {
        evaluations++;
        double[] theta = origin.clone();
        for (int j = 0; j < free.length; j++) {
            theta[free[j]] = point.getEntry(j);
        }
        double[][] slopes = new double[size][free.length];
        Rows rows;
        try {
            rows = problem.rows(theta, noise, false);
        } catch (Problem.Infeasible noAnswer) {
            // Not a number never counts as smaller: the search tries a shorter step.
            double[] none = new double[size];
            Arrays.fill(none, Double.NaN);
            return new Pair<>(new ArrayRealVector(none, false), new Array2DRowRealMatrix(slopes, false));
        }
        double cost = rows.cost();
        if (cost < bestCost) {
            bestCost = cost;
            best = theta;
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < free.length; j++) {
                slopes[i][j] = rows.slopes[i][free[j]];
            }
        }
        return new Pair<>(new ArrayRealVector(rows.residuals, false), new Array2DRowRealMatrix(slopes, false));
    }
}
