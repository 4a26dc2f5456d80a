/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/** Banded LU against the dense LU decomposition of Apache Commons Math 3.6.1. */
final class BandedMatrixProperties {

    private static final double WELL_CONDITIONED = 1e6;

    private record Pair(BandedMatrix banded, RealMatrix dense) {}

    private static Pair random(int size, int lower, int upper, SplittableRandom random) {
        BandedMatrix banded = new BandedMatrix(size, lower, upper);
        RealMatrix dense = MatrixUtils.createRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            for (int j = Math.max(0, i - lower); j <= Math.min(size - 1, i + upper); j++) {
                double value = 2 * random.nextDouble() - 1;
                // In two parts, because contributions to one place add up.
                banded.add(i, j, 0.25 * value);
                banded.add(i, j, 0.75 * value);
                dense.setEntry(i, j, value);
            }
        }
        return new Pair(banded, dense);
    }

    private static double[] randomVector(int size, SplittableRandom random) {
        return random.doubles(size, -1, 1).toArray();
    }

    private static void assertSolves(Pair pair, double[] right) {
        Assume.that(new SingularValueDecomposition(pair.dense()).getConditionNumber() < WELL_CONDITIONED);
        double[] expected = new LUDecomposition(pair.dense())
                .getSolver()
                .solve(new ArrayRealVector(right))
                .toArray();
        assertThat(pair.banded().factorise()).isTrue();
        double[] actual = right.clone();
        pair.banded().solve(actual);
        double scale = new ArrayRealVector(expected).getLInfNorm();
        for (int i = 0; i < right.length; i++) {
            assertThat(actual[i]).isCloseTo(expected[i], within(1e-9 * scale));
        }
    }

    // A random matrix is not diagonally dominant, so rows are exchanged.
    @Property(seed = "20260101")
    @Label("Banded matrix: it solves like a dense decomposition")
    void solvesLikeTheDenseDecomposition(
            @ForAll @IntRange(min = 1, max = 14) int size,
            @ForAll @IntRange(max = 4) int lower,
            @ForAll @IntRange(max = 4) int upper,
            @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        assertSolves(random(size, lower, upper, random), randomVector(size, random));
    }

    @Property(seed = "20260102")
    @Label("Banded matrix: the shifted negative is the shift times the unit matrix less the other")
    void shiftedNegativeIsTheShiftTimesTheUnitMatrixLessTheOther(
            @ForAll @IntRange(min = 1, max = 10) int size, @ForAll @IntRange(max = 3) int band, @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Pair other = random(size, band, band, random);
        BandedMatrix shifted = new BandedMatrix(size, band, band);
        double shift = 3 * random.nextDouble();
        // Factors left by an earlier use must not shine through.
        shifted.setShiftedNegative(7, other.banded());
        assertThat(shifted.factorise()).isTrue();
        shifted.setShiftedNegative(shift, other.banded());
        RealMatrix dense =
                MatrixUtils.createRealIdentityMatrix(size).scalarMultiply(shift).subtract(other.dense());
        assertSolves(new Pair(shifted, dense), randomVector(size, random));
    }

    @Property(seed = "20260103")
    @Label("Banded matrix: cleared, it is like new")
    void clearedMatrixIsLikeNew(@ForAll @IntRange(min = 1, max = 8) int size, @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Pair used = random(size, 2, 1, random);
        used.banded().factorise();
        used.banded().clear();
        for (int i = 0; i < size; i++) {
            used.banded().add(i, i, 2);
        }
        double[] right = randomVector(size, random);
        double[] solution = right.clone();
        assertThat(used.banded().factorise()).isTrue();
        used.banded().solve(solution);
        for (int i = 0; i < size; i++) {
            assertThat(solution[i]).isEqualTo(right[i] / 2);
        }
    }

    @Example
    void rowsAreExchangedWhereThePivotIsSmall() {
        // Without exchange 1/1e-20 swamps the second row; G. H. Golub and C. F. Van Loan, Matrix Computations,
        // section 3.4 (from memory).
        for (double corner : new double[] {0, 1e-20}) {
            BandedMatrix matrix = new BandedMatrix(2, 1, 1);
            matrix.add(0, 0, corner);
            matrix.add(0, 1, 1);
            matrix.add(1, 0, 1);
            matrix.add(1, 1, 1);
            double[] solution = {1, 2};
            assertThat(matrix.factorise()).isTrue();
            matrix.solve(solution);
            assertThat(solution[0]).isCloseTo(1, within(1e-15));
            assertThat(solution[1]).isCloseTo(1, within(1e-15));
        }
    }

    @Property(seed = "20260119")
    @Label("Banded matrix: it solves with an empty diagonal")
    void solvesWithAnEmptyDiagonal(@ForAll @IntRange(min = 2, max = 12) int size, @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Pair pair = random(size, 2, 2, random);
        for (int i = 0; i < size; i++) {
            pair.banded().add(i, i, -pair.dense().getEntry(i, i));
            pair.dense().setEntry(i, i, 0);
        }
        assertSolves(pair, randomVector(size, random));
    }

    @Example
    void singularMatrixIsRefused() {
        BandedMatrix matrix = new BandedMatrix(3, 1, 1);
        matrix.add(0, 0, 1);
        matrix.add(1, 0, 2);
        matrix.add(2, 2, 1);
        assertThat(matrix.factorise()).isFalse();
    }

    @Example
    void matrixWithNaNIsRefused() {
        BandedMatrix matrix = new BandedMatrix(2, 1, 1);
        matrix.add(0, 0, Double.NaN);
        matrix.add(1, 1, 1);
        assertThat(matrix.factorise()).isFalse();
    }
}
