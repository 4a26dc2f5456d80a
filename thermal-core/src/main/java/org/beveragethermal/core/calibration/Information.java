/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * What rows of slopes tell of parameters: singular values of the slopes with columns of unit length, and covariances.
 *
 * <p>From the slopes themselves, by orthogonal transformations; the normal equations, which square the condition number, are never
 * formed. Immutable.
 */
final class Information {

    /** Singular values below this part of the largest count as zero. */
    private static final double ZERO = 1e-11;
    /** A parameter takes part in a direction that is not determined if its share there is above this. */
    private static final double SHARE = 1e-3;

    /** Slots that are free. */
    final int[] free;

    final int rank;
    /** Largest over smallest singular value; infinite if the rank is short. */
    final double condition;
    /** Over all slots; 0 where not free; directions that are not determined are left out. */
    final double[][] covariance;
    /** For each slot, whether it takes part in a direction that is not determined. */
    final boolean[] undetermined;

    private Information(int[] free, int rank, double condition, double[][] covariance, boolean[] undetermined) {
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
            return new Information(free, 0, 1, covariance, undetermined);
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
                for (int a = 0; a < p; a++) {
                    undetermined[free[a]] |= Math.abs(v.getEntry(a, d)) > SHARE;
                }
            }
        }
        double condition = rank < p ? Double.POSITIVE_INFINITY : singular[0] / singular[p - 1];
        return new Information(free, rank, condition, covariance, undetermined);
    }

    private static double unit(double length) {
        return length == 0 ? 1 : length;
    }

    /** The same where every residual is so many times smaller. */
    Information scattered(double scatter) {
        double[][] scaled = Arrays.stream(covariance)
                .map(row -> Arrays.stream(row).map(c -> c * scatter * scatter).toArray())
                .toArray(double[][]::new);
        return new Information(free, rank, condition, scaled, undetermined);
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
