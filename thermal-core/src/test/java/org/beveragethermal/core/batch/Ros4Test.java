/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/**
 * The coefficients against the conditions that define order and stability: E. Hairer and G. Wanner, Solving Ordinary Differential
 * Equations II, section IV.7, table 7.1 (conditions from memory; they are those of Rosenbrock methods in any text), and the order
 * seen in use.
 */
class Ros4Test {

    private static final double ROUNDING = 1e-13;
    private static final double[][] A = {
        {0, 0, 0, 0}, {Ros4.A21, 0, 0, 0}, {Ros4.A31, Ros4.A32, 0, 0}, {Ros4.A31, Ros4.A32, 0, 0}
    };
    private static final double[][] C = {
        {0, 0, 0, 0}, {Ros4.C21, 0, 0, 0}, {Ros4.C31, Ros4.C32, 0, 0}, {Ros4.C41, Ros4.C42, Ros4.C43, 0}
    };
    private static final double[] B = {Ros4.B1, Ros4.B2, Ros4.B3, Ros4.B4};
    private static final double[] E = {Ros4.E1, Ros4.E2, Ros4.E3, Ros4.E4};

    /** From the transformed coefficients back: Γ = (I/γ − C)⁻¹, α = A Γ, b = B Γ, β = α + Γ. */
    private final RealMatrix gamma = new LUDecomposition(MatrixUtils.createRealIdentityMatrix(4)
                    .scalarMultiply(1 / Ros4.GAMMA)
                    .subtract(new Array2DRowRealMatrix(C)))
            .getSolver()
            .getInverse();

    private final RealMatrix alpha = new Array2DRowRealMatrix(A).multiply(gamma);
    private final RealMatrix beta = alpha.add(gamma);
    private final double[] sumAlpha = alpha.operate(new double[] {1, 1, 1, 1});
    private final double[] sumBeta = beta.operate(new double[] {1, 1, 1, 1});

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double[] times(double[] a, double[] b) {
        double[] product = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            product[i] = a[i] * b[i];
        }
        return product;
    }

    private void assertOrder(double[] weights, int order) {
        double[] b = gamma.preMultiply(weights);
        assertThat(dot(b, new double[] {1, 1, 1, 1})).isCloseTo(1, within(ROUNDING));
        assertThat(dot(b, sumBeta)).isCloseTo(1.0 / 2, within(ROUNDING));
        assertThat(dot(b, times(sumAlpha, sumAlpha))).isCloseTo(1.0 / 3, within(ROUNDING));
        assertThat(dot(b, beta.operate(sumBeta))).isCloseTo(1.0 / 6, within(ROUNDING));
        if (order == 4) {
            assertThat(dot(b, times(sumAlpha, times(sumAlpha, sumAlpha)))).isCloseTo(1.0 / 4, within(ROUNDING));
            assertThat(dot(b, times(sumAlpha, alpha.operate(sumBeta)))).isCloseTo(1.0 / 8, within(ROUNDING));
            assertThat(dot(b, beta.operate(times(sumAlpha, sumAlpha)))).isCloseTo(1.0 / 12, within(ROUNDING));
            assertThat(dot(b, beta.operate(beta.operate(sumBeta)))).isCloseTo(1.0 / 24, within(ROUNDING));
        }
    }

    @Test
    void theMethodIsOfOrderFour() {
        assertOrder(B, 4);
    }

    @Test
    void theEstimateIsOfOrderThree() {
        double[] embedded = new double[4];
        for (int i = 0; i < 4; i++) {
            embedded[i] = B[i] + E[i];
        }
        assertOrder(embedded, 3);
    }

    @Test
    void itIsLStable() {
        // R(∞) = 1 − bᵀ β⁻¹ 1.
        double[] solved = new LUDecomposition(beta)
                .getSolver()
                .solve(MatrixUtils.createRealVector(new double[] {1, 1, 1, 1}))
                .toArray();
        assertThat(1 - dot(gamma.preMultiply(B), solved)).isCloseTo(0, within(1e-12));
        // |R| ≤ 1 along the imaginary axis, with which that and no pole on the left makes A-stability.
        for (double y = 0.01; y < 1e4; y *= 1.1) {
            assertThat(modulus(y)).isLessThanOrEqualTo(1 + 1e-12);
        }
    }

    /** |1 + z bᵀ (I − z β)⁻¹ 1| at z = iy, as a real system of twice the size. */
    private double modulus(double y) {
        RealMatrix system = new Array2DRowRealMatrix(8, 8);
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                double one = i == j ? 1 : 0;
                system.setEntry(i, j, one);
                system.setEntry(i + 4, j + 4, one);
                system.setEntry(i, j + 4, y * beta.getEntry(i, j));
                system.setEntry(i + 4, j, -y * beta.getEntry(i, j));
            }
        }
        double[] x = new LUDecomposition(system)
                .getSolver()
                .solve(MatrixUtils.createRealVector(new double[] {1, 1, 1, 1, 0, 0, 0, 0}))
                .toArray();
        double[] b = gamma.preMultiply(B);
        double real = 0;
        double imaginary = 0;
        for (int i = 0; i < 4; i++) {
            real += b[i] * x[i];
            imaginary += b[i] * x[i + 4];
        }
        return Math.hypot(1 - y * imaginary, y * real);
    }

    /** Halving fixed steps of a non-linear problem of two nodes divides the error by about sixteen. */
    @Test
    void halvedStepsShowTheOrder() {
        BatchNetwork network = BatchNetwork.builder()
                .node("a")
                .node("b")
                .boundary("air")
                .link("ab", "a", "b", BatchLaw.of(TwoNodes.cubic(0.02)))
                .link("out", "b", "air", BatchLaw.of(TwoNodes.radiation(1e-9)))
                .build();
        BatchSamples samples = network.samples(1)
                .capacityJPerK("a", 300)
                .capacityJPerK("b", 100)
                .startK("a", 330)
                .startK("b", 310)
                .boundaryK("air", 280)
                .build();
        double exact = after(samples, 1024);
        double coarse = Math.abs(after(samples, 16) - exact);
        double fine = Math.abs(after(samples, 32) - exact);
        assertThat(Math.log(coarse / fine) / Math.log(2)).isBetween(3.7, 4.6);
    }

    private static double after(BatchSamples samples, int steps) {
        Lanes lanes = new Lanes(samples, 1);
        lanes.load(0, 0);
        for (int i = 0; i < steps; i++) {
            lanes.begin(1);
            lanes.length[0] = 400.0 / steps;
            lanes.attempt(1);
            lanes.accept(0);
        }
        return lanes.state[0][0];
    }
}
