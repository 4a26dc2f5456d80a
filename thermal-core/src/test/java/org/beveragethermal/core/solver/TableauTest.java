/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Holds the coefficients of every {@link Method} to the order conditions of Rosenbrock methods: E. Hairer and G. Wanner, Solving Ordinary
 * Differential Equations II, 2nd ed., Springer 1996, section IV.7, eq. (7.11) (from memory), and to L-stability. {@link RosenbrockTableauTest}
 * looks closer at the standard one.
 */
final class TableauTest {

    private static final double ROUNDING = 2e-13;

    /** Back in classical coefficients: Γ from C, α = A Γ, weights from sums of the U. */
    private record Classical(Tableau tableau, RealMatrix gamma, RealMatrix alpha, RealMatrix beta) {

        static Classical of(Method method) {
            Tableau tableau = Tableau.of(method);
            RealMatrix gamma = new LUDecomposition(MatrixUtils.createRealIdentityMatrix(tableau.stages)
                            .scalarMultiply(1 / tableau.gamma)
                            .subtract(square(tableau.c)))
                    .getSolver()
                    .getInverse();
            RealMatrix alpha = square(tableau.a).multiply(gamma);
            return new Classical(tableau, gamma, alpha, alpha.add(gamma));
        }

        RealVector ones() {
            return new ArrayRealVector(tableau.stages, 1.0);
        }

        /** What is left of each condition of an order for a step to θ, with weights of the U. */
        double[] left(RealVector weightsOfU, int order, double theta) {
            RealVector b = gamma.preMultiply(weightsOfU);
            RealVector a = alpha.operate(ones());
            RealVector g = beta.operate(ones());
            RealVector a2 = a.ebeMultiply(a);
            return switch (order) {
                case 1 -> new double[] {b.dotProduct(ones()) - theta};
                case 2 -> new double[] {b.dotProduct(g) - theta * theta / 2};
                case 3 ->
                    new double[] {
                        b.dotProduct(a2) - Math.pow(theta, 3) / 3,
                        b.dotProduct(beta.operate(g)) - Math.pow(theta, 3) / 6
                    };
                default ->
                    new double[] {
                        b.dotProduct(a2.ebeMultiply(a)) - 1.0 / 4,
                        b.dotProduct(a.ebeMultiply(alpha.operate(g))) - 1.0 / 8,
                        b.dotProduct(beta.operate(a2)) - 1.0 / 12,
                        b.dotProduct(beta.operate(beta.operate(g))) - 1.0 / 24
                    };
            };
        }
    }

    private static RealMatrix square(double[][] rows) {
        RealMatrix matrix = MatrixUtils.createRealMatrix(rows.length, rows.length);
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < rows[i].length; j++) {
                matrix.setEntry(i, j, rows[i][j]);
            }
        }
        return matrix;
    }

    @ParameterizedTest
    @CsvSource({"ORDER_4, 4", "ORDER_4_LIGHT, 4", "ORDER_3, 3"})
    void solutionHasItsOrderAndTheEstimateOneLess(Method method, int order) {
        Classical classical = Classical.of(method);
        Tableau tableau = Tableau.of(method);
        RealVector solution = new ArrayRealVector(tableau.solution);
        RealVector embedded = solution.subtract(new ArrayRealVector(tableau.error));
        for (int p = 1; p <= order; p++) {
            for (double left : classical.left(solution, p, 1)) {
                assertThat(left).as("order %d", p).isCloseTo(0, within(ROUNDING));
            }
        }
        assertThat(tableau.errorOrder).isEqualTo(order - 1);
        for (int p = 1; p < order; p++) {
            for (double left : classical.left(embedded, p, 1)) {
                assertThat(left).as("estimate, order %d", p).isCloseTo(0, within(ROUNDING));
            }
        }
        // Were it of the same order, the difference would not estimate the error.
        assertThat(new ArrayRealVector(classical.left(embedded, order, 1)).getLInfNorm())
                .isGreaterThan(1e-3);
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "EXPONENTIAL")
    void denseOutputHasItsOrderAndStaysBounded(Method method) {
        Classical classical = Classical.of(method);
        Tableau tableau = Tableau.of(method);
        for (double theta : new double[] {0.1, 0.25, 0.5, 0.75, 0.9}) {
            RealVector bend =
                    new ArrayRealVector(tableau.dense[0]).add(new ArrayRealVector(tableau.dense[1]).mapMultiply(theta));
            RealVector weights = new ArrayRealVector(tableau.solution)
                    .add(bend.mapMultiply(1 - theta))
                    .mapMultiply(theta);
            for (int p = 1; p <= tableau.denseOrder; p++) {
                for (double left : classical.left(weights, p, theta)) {
                    assertThat(left).as("θ %s, order %d", theta, p).isCloseTo(0, within(ROUNDING));
                }
            }
            // What is left of an infinitely fast part of the state within a step.
            assertThat(Math.abs(atInfinity(classical, weights))).isLessThan(1);
        }
    }

    private static double atInfinity(Classical classical, RealVector weightsOfU) {
        RealMatrix inverse = new LUDecomposition(classical.beta()).getSolver().getInverse();
        return 1 - classical.gamma().preMultiply(weightsOfU).dotProduct(inverse.operate(classical.ones()));
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "EXPONENTIAL")
    void timeIsTreatedAsAComponentOfTheState(Method method) {
        Classical classical = Classical.of(method);
        Tableau tableau = Tableau.of(method);
        RealVector abscissae = classical.alpha().operate(classical.ones());
        RealVector weights = classical.gamma().operate(classical.ones());
        for (int i = 0; i < tableau.stages; i++) {
            assertThat(tableau.time[i]).isCloseTo(abscissae.getEntry(i), within(ROUNDING));
            assertThat(tableau.timeDerivative[i]).isCloseTo(weights.getEntry(i), within(1e-12));
        }
    }

    /** The γ of the light method is published with five digits, which leave 2e-5 of an infinitely fast part. */
    @ParameterizedTest
    @CsvSource({"ORDER_4, 1e-11", "ORDER_4_LIGHT, 2e-5", "ORDER_3, 1e-14"})
    void methodIsStableAndForgetsWhatIsFast(Method method, double left) {
        Classical classical = Classical.of(method);
        RealVector weights = classical.gamma().preMultiply(new ArrayRealVector(Tableau.of(method).solution));
        assertThat(atInfinity(classical, new ArrayRealVector(Tableau.of(method).solution)))
                .isCloseTo(0, within(left));
        for (int k = -150; k <= 200; k++) {
            Complex z = new Complex(0, Math.pow(10, k / 50.0));
            assertThat(stability(classical, weights, z).abs()).as("|R(%s)|", z).isLessThanOrEqualTo(1 + 1e-12);
        }
    }

    /** R(z) = 1 + z bᵀ (I − z B)⁻¹ 1, by forward substitution because B is lower triangular. */
    private static Complex stability(Classical classical, RealVector weights, Complex z) {
        int stages = weights.getDimension();
        Complex[] x = new Complex[stages];
        Complex sum = Complex.ZERO;
        for (int i = 0; i < stages; i++) {
            Complex right = Complex.ONE;
            for (int j = 0; j < i; j++) {
                right = right.add(z.multiply(classical.beta().getEntry(i, j)).multiply(x[j]));
            }
            x[i] = right.divide(Complex.ONE.subtract(z.multiply(classical.beta().getEntry(i, i))));
            sum = sum.add(x[i].multiply(weights.getEntry(i)));
        }
        return Complex.ONE.add(z.multiply(sum));
    }
}
