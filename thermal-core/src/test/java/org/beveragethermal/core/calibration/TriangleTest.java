/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** The triangle of a QR decomposition against that of Commons Math; the signs of its rows are free. */
class TriangleTest {

    @Test
    void triangleIsThatOfTheLibrary() {
        SplittableRandom random = new SplittableRandom(3);
        double[][] columns = new double[4][30];
        for (double[] column : columns) {
            for (int i = 0; i < column.length; i++) {
                column[i] = random.nextDouble(-1, 1) * 1e-3;
            }
        }
        RealMatrix expected = new QRDecomposition(new Array2DRowRealMatrix(columns).transpose()).getR();
        double[][] triangle = Triangle.of(columns);
        for (int i = 0; i < 4; i++) {
            double sign = Math.signum(triangle[i][i] * expected.getEntry(i, i));
            for (int j = 0; j < 4; j++) {
                assertThat(sign * triangle[i][j]).isCloseTo(expected.getEntry(i, j), within(1e-15));
            }
        }
    }

    @Test
    void lengthsBeyondTheSquaresOfNumbersStand() {
        double[][] triangle = Triangle.of(new double[][] {{3e200, 4e200}, {1, 1}});
        assertThat(Math.abs(triangle[0][0])).isCloseTo(5e200, within(1e186));
        assertThat(Triangle.of(new double[][] {{3e-200, 4e-200}})[0][0]).isEqualTo(-5e-200);
    }

    @Test
    void solutionIsThatOfLeastSquares() {
        // A line through (0, 1), (1, 2), (2, 4): intercept 5/6, slope 3/2, by the normal equations.
        double[][] columns = {{1, 1, 1}, {0, 1, 2}};
        double[] solution = Triangle.solved(Triangle.of(columns, new int[] {0, 1}, 1, 2, 4));
        assertThat(solution[0]).isCloseTo(5.0 / 6, within(1e-14));
        assertThat(solution[1]).isCloseTo(1.5, within(1e-14));
        assertThat(columns[1]).containsExactly(0, 1, 2);
        assertThat(Triangle.solved(Triangle.of(new double[][] {{1, 1}, {1, 1}}, new int[] {0, 1}, 1, 2)))
                .isEmpty();
    }
}
