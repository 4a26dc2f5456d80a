/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Solutions against the dense LU decomposition of Apache Commons Math. */
final class StepMatrixTest {

    private static final double SHIFT = 0.7;

    /** A Jacobian of a passive network: what a node loses is at least what its neighbours gain. */
    private static double[][] passive(int size, int band, SplittableRandom random) {
        double[][] jacobian = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = i + 1; j <= Math.min(size - 1, i + band); j++) {
                double g = Math.pow(10, -3 + 4 * random.nextDouble());
                double one = Math.pow(10, -1 + 2 * random.nextDouble());
                jacobian[i][i] -= g * one;
                jacobian[j][i] += g * one;
                jacobian[j][j] -= g;
                jacobian[i][j] += g;
            }
        }
        return jacobian;
    }

    private static double[][] any(int size, int band, SplittableRandom random) {
        double[][] jacobian = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = Math.max(0, i - band); j <= Math.min(size - 1, i + band); j++) {
                jacobian[i][j] = random.nextDouble(-1, 1);
            }
        }
        return jacobian;
    }

    @ParameterizedTest
    @CsvSource({"0, true", "1, true", "2, true", "3, true", "1, false", "2, false", "3, false"})
    void solvesAsTheDenseDecompositionDoes(int band, boolean isPassive) {
        SplittableRandom random = new SplittableRandom(20260126 + band);
        for (int size = Math.max(1, band + 1); size <= 25; size++) {
            double[][] jacobian = isPassive ? passive(size, band, random) : any(size, band, random);
            StepMatrix matrix = new StepMatrix(size, band);
            RealMatrix dense = new Array2DRowRealMatrix(size, size);
            for (int i = 0; i < size; i++) {
                for (int j = Math.max(0, i - band); j <= Math.min(size - 1, i + band); j++) {
                    matrix.jacobian()[matrix.index(i, j)] = jacobian[i][j];
                }
                for (int j = 0; j < size; j++) {
                    dense.setEntry(i, j, (i == j ? SHIFT : 0) - jacobian[i][j]);
                }
            }
            double[] right = random.doubles(size, -1, 1).toArray();
            RealVector expected = new LUDecomposition(dense).getSolver().solve(new ArrayRealVector(right));
            assertThat(matrix.factorise(SHIFT)).isTrue();
            matrix.solve(right);
            double scale = 1 + expected.getLInfNorm();
            for (int i = 0; i < size; i++) {
                // Drawn matrices are ill-conditioned now and then.
                assertThat(Math.abs(right[i] - expected.getEntry(i)) / scale)
                        .as("size %d, band %d, unknown %d", size, band, i)
                        .isLessThan(1e-10);
            }
        }
    }

    /** A pivot that is nothing beside its column: elimination without an exchange would lose every digit, or divide by zero. */
    @ParameterizedTest
    @CsvSource({"1, 0", "1, 1e-18", "2, 0", "2, 1e-18", "3, 1e-18"})
    void exchangesRowsWhereAPivotIsSmall(int band, double pivot) {
        SplittableRandom random = new SplittableRandom(20260127 + band);
        for (int size = band + 2; size <= 9; size++) {
            for (int small = 0; small < size; small++) {
                for (int from = 1; from <= band; from++) {
                    for (int side : new int[] {-1, 1}) {
                        int far = small + side * from;
                        if (far < 0 || far >= size) {
                            continue;
                        }
                        // Elimination comes to the row from the other side and leaves its pivot alone.
                        double[][] jacobian = any(size, band, random);
                        for (int j = 1; j <= band; j++) {
                            for (int other : new int[] {small - j, small + j}) {
                                if (other >= 0 && other < size && other != far) {
                                    jacobian[small][other] = 0;
                                    jacobian[other][small] = 0;
                                }
                            }
                        }
                        jacobian[small][small] = SHIFT - pivot;
                        jacobian[small][far] = 0.8;
                        jacobian[far][small] = 0.9;
                        solvesAsDense(jacobian, band, random);
                    }
                }
            }
        }
    }

    private static void solvesAsDense(double[][] jacobian, int band, SplittableRandom random) {
        int size = jacobian.length;
        StepMatrix matrix = new StepMatrix(size, band);
        RealMatrix dense = new Array2DRowRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                dense.setEntry(i, j, (i == j ? SHIFT : 0) - jacobian[i][j]);
                if (Math.abs(i - j) <= band) {
                    matrix.jacobian()[matrix.index(i, j)] = jacobian[i][j];
                }
            }
        }
        LUDecomposition decomposition = new LUDecomposition(dense);
        if (Math.abs(decomposition.getDeterminant()) < 1e-6) {
            return;
        }
        double[] right = random.doubles(size, -1, 1).toArray();
        RealVector expected = decomposition.getSolver().solve(new ArrayRealVector(right));
        assertThat(matrix.factorise(SHIFT)).isTrue();
        matrix.solve(right);
        for (int i = 0; i < size; i++) {
            assertThat(Math.abs(right[i] - expected.getEntry(i)) / (1 + expected.getLInfNorm()))
                    .as("size %d, band %d, unknown %d", size, band, i)
                    .isLessThan(1e-8);
        }
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "3"})
    void singularMatrixIsToldOf(int band) {
        StepMatrix matrix = new StepMatrix(7, band);
        assertThat(matrix.factorise(0)).isFalse();
        assertThat(matrix.factorise(Double.NaN)).isFalse();
        assertThat(matrix.factorise(1)).isTrue();
    }
}
