/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * What rows of slopes tell of parameters: singular values of the slopes with columns of unit length, and covariances.
 *
 * <p>From the slopes themselves, by orthogonal transformations; the normal equations, which square the condition number, are never
 * formed. Immutable.
 *
 * <p>Theory manual, equation (8.4).
 */
final class Information {

    /** Singular values below this part of the largest count as zero. */
    private static final double ZERO = 1e-11;
    /** A parameter takes part in a direction that is not determined if its share there is above this. */
    private static final double SHARE = 1e-3;
    /** What is left of a change in a direction beyond this part of its terms is no rounding. */
    private static final double MATTERS = 1e-6;

    /** Slots that are free. */
    final int[] free;

    final int rank;
    /** Largest over smallest singular value; infinite if the rank is short. */
    final double condition;
    /** Over all slots; 0 where not free; directions that are not determined are left out. */
    final double[][] covariance;
    /** For each slot, whether it takes part in a direction that is not determined. */
    final boolean[] undetermined;
    /** The directions that are not determined, over all slots. */
    private final List<double[]> lost;

    private Information(
            int[] free,
            int rank,
            double condition,
            double[][] covariance,
            boolean[] undetermined,
            List<double[]> lost) {
        this.lost = lost;
        this.free = free;
        this.rank = rank;
        this.condition = condition;
        this.covariance = covariance;
        this.undetermined = undetermined;
    }

    /** For each slot a column of slopes; of those that are free. */
    static Information of(double[][] slopes, int[] free, int slots) {
        int p = free.length;
        double[][] covariance = new double[slots][slots];
        boolean[] undetermined = new boolean[slots];
        if (p == 0) {
            return new Information(free, 0, 1, covariance, undetermined, List.of());
        }
        double[] length = new double[p];
        double[][] triangle = Triangle.of(slopes, free);
        for (int j = 0; j < p; j++) {
            for (int i = 0; i <= j; i++) {
                length[j] = Math.hypot(length[j], triangle[i][j]);
            }
            for (int i = 0; i <= j; i++) {
                triangle[i][j] /= unit(length[j]);
            }
        }
        SingularValueDecomposition svd = new SingularValueDecomposition(new Array2DRowRealMatrix(triangle, false));
        double[] singular = svd.getSingularValues();
        RealMatrix v = svd.getV();
        int rank = 0;
        List<double[]> lost = new ArrayList<>();
        for (int d = 0; d < p; d++) {
            if (singular[d] > ZERO * singular[0]) {
                rank++;
                for (int a = 0; a < p; a++) {
                    for (int b = 0; b < p; b++) {
                        covariance[free[a]][free[b]] += v.getEntry(a, d)
                                * v.getEntry(b, d)
                                / (singular[d] * singular[d])
                                / (unit(length[a]) * unit(length[b]));
                    }
                }
            } else {
                double[] direction = new double[slots];
                lost.add(direction);
                for (int a = 0; a < p; a++) {
                    direction[free[a]] = v.getEntry(a, d) / unit(length[a]);
                    undetermined[free[a]] |= Math.abs(v.getEntry(a, d)) > SHARE;
                }
            }
        }
        double condition = rank < p ? Double.POSITIVE_INFINITY : singular[0] / singular[p - 1];
        return new Information(free, rank, condition, covariance, undetermined, lost);
    }

    private static double unit(double length) {
        return length == 0 ? 1 : length;
    }

    /** Whether a linear function of the parameters changes in a direction that is not determined, beyond rounding. */
    boolean isLost(double[] gradient) {
        for (double[] direction : lost) {
            double change = 0;
            double size = 0;
            for (int k : free) {
                change += gradient[k] * direction[k];
                size += Math.abs(gradient[k] * direction[k]);
            }
            if (Math.abs(change) > MATTERS * size) {
                return true;
            }
        }
        return false;
    }

    /** The same where every residual is so many times smaller. */
    Information scattered(double scatter) {
        double[][] scaled = Arrays.stream(covariance)
                .map(row -> Arrays.stream(row).map(c -> c * scatter * scatter).toArray())
                .toArray(double[][]::new);
        return new Information(free, rank, condition, scaled, undetermined, lost);
    }

    /** Variance of a linear function of the parameters. */
    double variance(double[] gradient) {
        double sum = 0;
        for (int a : free) {
            for (int b : free) {
                sum += gradient[a] * covariance[a][b] * gradient[b];
            }
        }
        return sum;
    }
}
