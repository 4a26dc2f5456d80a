/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.Arrays;

/**
 * The triangle of a QR decomposition by Householder's reflections, without the orthogonal factor: as much as columns of any length tell
 * of least squares.
 */
final class Triangle {

    private Triangle() {}

    /**
     * Decomposes columns.
     *
     * @param columns columns of equal length, destroyed
     * @return the upper triangle, one row per column
     */
    static double[][] of(double[][] columns) {
        int p = columns.length;
        double[][] triangle = new double[p][p];
        for (int k = 0; k < p; k++) {
            double[] column = columns[k];
            int rows = column.length;
            for (int i = 0; i < k && i < rows; i++) {
                triangle[i][k] = column[i];
            }
            if (k >= rows) {
                continue;
            }
            double norm = norm(column, k);
            if (norm == 0) {
                continue;
            }
            double diagonal = column[k] > 0 ? -norm : norm;
            triangle[k][k] = diagonal;
            // The reflection is I − v vᵀ/(−diagonal·v_k) with v = column − diagonal·e_k.
            column[k] -= diagonal;
            double divisor = -diagonal * column[k];
            for (int j = k + 1; j < p; j++) {
                double[] other = columns[j];
                double product = 0;
                for (int i = k; i < rows; i++) {
                    product += column[i] * other[i];
                }
                double factor = product / divisor;
                for (int i = k; i < rows; i++) {
                    other[i] -= factor * column[i];
                }
            }
        }
        return triangle;
    }

    /** The triangle of some of the columns, and of a right side beside them if there is one. */
    static double[][] of(double[][] columns, int[] chosen, double... right) {
        int more = right.length > 0 ? 1 : 0;
        double[][] copies = new double[chosen.length + more][];
        for (int j = 0; j < chosen.length; j++) {
            copies[j] = columns[chosen[j]].clone();
        }
        if (more > 0) {
            copies[chosen.length] = right.clone();
        }
        return of(copies);
    }

    /** Length of a column from a row on, safe from overflow and underflow. */
    private static double norm(double[] column, int from) {
        double squares = 0;
        for (int i = from; i < column.length; i++) {
            squares += column[i] * column[i];
        }
        if (squares > 1e-280 && squares < 1e280) {
            return Math.sqrt(squares);
        }
        double largest = 0;
        for (int i = from; i < column.length; i++) {
            largest = Math.max(largest, Math.abs(column[i]));
        }
        if (largest == 0 || Double.isInfinite(largest)) {
            return largest;
        }
        double scaled = 0;
        for (int i = from; i < column.length; i++) {
            scaled += column[i] / largest * (column[i] / largest);
        }
        return largest * Math.sqrt(scaled);
    }

    /**
     * Solves the triangle for its last column.
     *
     * @return the solution, empty if the triangle is singular
     */
    static double[] solved(double[][] triangle) {
        int p = triangle.length - 1;
        double[] solution = new double[p];
        for (int i = p - 1; i >= 0; i--) {
            double sum = triangle[i][p];
            for (int j = i + 1; j < p; j++) {
                sum -= triangle[i][j] * solution[j];
            }
            solution[i] = sum / triangle[i][i];
        }
        return Arrays.stream(solution).allMatch(Double::isFinite) ? solution : new double[0];
    }
}
