/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.Arrays;

/**
 * A square banded matrix with LU factorisation by partial pivoting, in the storage of LAPACK's general band routines,
 * turned to rows: row i holds columns i − lower … i + upper + lower (pivoting widens the upper band).
 */
final class BandedMatrix {

    private final int size;
    private final int lower;
    private final int upper;
    private final int width;
    private final double[] rows;
    private final int[] pivot;

    BandedMatrix(int size, int lower, int upper) {
        this.size = size;
        this.lower = lower;
        this.upper = upper;
        this.width = 2 * lower + upper + 1;
        this.rows = new double[size * width];
        this.pivot = new int[size];
    }

    void clear() {
        Arrays.fill(rows, 0);
    }

    void add(int row, int column, double value) {
        rows[index(row, column)] += value;
    }

    /** Becomes shift · I − other, for a matrix of the same shape. */
    void setShiftedNegative(double shift, BandedMatrix other) {
        for (int i = 0; i < rows.length; i++) {
            rows[i] = -other.rows[i];
        }
        for (int i = 0; i < size; i++) {
            rows[index(i, i)] += shift;
        }
    }

    private int index(int row, int column) {
        return row * width + column - row + lower;
    }

    /**
     * Factorises in place.
     *
     * @return false if a pivot is zero or not finite
     */
    boolean factorise() {
        for (int k = 0; k < size; k++) {
            int lastRow = Math.min(size - 1, k + lower);
            int lastColumn = Math.min(size - 1, k + lower + upper);
            int best = k;
            for (int i = k + 1; i <= lastRow; i++) {
                if (Math.abs(rows[index(i, k)]) > Math.abs(rows[index(best, k)])) {
                    best = i;
                }
            }
            pivot[k] = best;
            double pivotValue = rows[index(best, k)];
            if (pivotValue == 0 || !Double.isFinite(pivotValue)) {
                return false;
            }
            if (best != k) {
                for (int j = k; j <= lastColumn; j++) {
                    double swap = rows[index(k, j)];
                    rows[index(k, j)] = rows[index(best, j)];
                    rows[index(best, j)] = swap;
                }
            }
            for (int i = k + 1; i <= lastRow; i++) {
                int ik = index(i, k);
                double factor = rows[ik] / pivotValue;
                rows[ik] = factor;
                if (factor != 0) {
                    int kk = index(k, k);
                    for (int j = 1; j <= lastColumn - k; j++) {
                        rows[ik + j] -= factor * rows[kk + j];
                    }
                }
            }
        }
        return true;
    }

    /** Solves in place with the factors. */
    void solve(double[] b) {
        for (int k = 0; k < size; k++) {
            int best = pivot[k];
            if (best != k) {
                double swap = b[k];
                b[k] = b[best];
                b[best] = swap;
            }
            int lastRow = Math.min(size - 1, k + lower);
            for (int i = k + 1; i <= lastRow; i++) {
                b[i] -= rows[index(i, k)] * b[k];
            }
        }
        for (int k = size - 1; k >= 0; k--) {
            int lastColumn = Math.min(size - 1, k + lower + upper);
            double sum = b[k];
            int kk = index(k, k);
            for (int j = 1; j <= lastColumn - k; j++) {
                sum -= rows[kk + j] * b[k + j];
            }
            b[k] = sum / rows[kk];
        }
    }
}
