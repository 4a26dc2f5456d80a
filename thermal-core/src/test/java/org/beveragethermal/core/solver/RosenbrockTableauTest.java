/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Holds the tableau to the order conditions of Rosenbrock methods.
 *
 * <p>The tableau is first turned back into the classical coefficients: with Γ the lower triangular matrix of γ_ij, its
 * diagonal included, C = I/γ − Γ⁻¹, A = α Γ⁻¹ and m = b Γ⁻¹ (Hairer and Wanner, section IV.7, implementation).
 */
final class RosenbrockTableauTest {

    private static final String BOOK =
            "E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd ed., Springer 1996, section IV.7";
    private static final Tableau RODAS = Tableau.RODAS;
    private static final int STAGES = RODAS.stages;
    /** The tableau has 16 digits and entries up to 35: what is left is rounding. */
    private static final double ROUNDING = 2e-13;

    private final RealMatrix gamma = inverse(MatrixUtils.createRealIdentityMatrix(STAGES)
            .scalarMultiply(1 / RODAS.gamma)
            .subtract(square(RODAS.c)));
    private final RealMatrix alpha = square(RODAS.a).multiply(gamma);
    private final RealMatrix beta = alpha.add(gamma);
    private final RealVector one = new ArrayRealVector(STAGES, 1.0);
    private final RealVector alphaSums = alpha.operate(one);
    private final RealVector betaSums = beta.operate(one);
    private final RealVector lastRow = new ArrayRealVector(square(RODAS.a).getRow(STAGES - 1));
    /** y₁ adds the last U to the argument of the last stage; the embedded solution does not. */
    private final RealVector weights = gamma.preMultiply(lastRow.add(unit(STAGES - 1)));

    private final RealVector embeddedWeights = gamma.preMultiply(lastRow);

    private record Condition(String tree, double value, double expected) {}

    /** Conditions up to order 3 with right hand sides for a step that goes to θh. */
    private Condition[] upToThree(RealVector b, double theta) {
        RealVector alphaSquared = alphaSums.ebeMultiply(alphaSums);
        return new Condition[] {
            new Condition("1", b.dotProduct(one), theta),
            new Condition("2", b.dotProduct(betaSums), theta * theta / 2),
            new Condition("3a", b.dotProduct(alphaSquared), Math.pow(theta, 3) / 3),
            new Condition("3b", b.dotProduct(beta.operate(betaSums)), Math.pow(theta, 3) / 6),
        };
    }

    private Condition[] four(RealVector b) {
        RealVector alphaSquared = alphaSums.ebeMultiply(alphaSums);
        return new Condition[] {
            new Condition("4a", b.dotProduct(alphaSquared.ebeMultiply(alphaSums)), 1.0 / 4),
            new Condition("4b", b.dotProduct(alphaSums.ebeMultiply(alpha.operate(betaSums))), 1.0 / 8),
            new Condition("4c", b.dotProduct(beta.operate(alphaSquared)), 1.0 / 12),
            new Condition("4d", b.dotProduct(beta.operate(beta.operate(betaSums))), 1.0 / 24),
        };
    }

    @Test
    void coefficientsHaveTheShapeOfARosenbrockMethod() {
        for (int i = 0; i < STAGES; i++) {
            assertThat(gamma.getEntry(i, i)).isCloseTo(RODAS.gamma, within(ROUNDING));
            for (int j = i; j < STAGES; j++) {
                assertThat(alpha.getEntry(i, j)).isCloseTo(0, within(ROUNDING));
            }
        }
    }

    @Test
    void solutionHasOrderFour() {
        for (Condition condition : upToThree(weights, 1)) {
            check("rosenbrock-order-", "order condition ", "(7.11)", condition);
        }
        for (Condition condition : four(weights)) {
            check("rosenbrock-order-", "order condition ", "(7.11)", condition);
        }
    }

    @Test
    void embeddedSolutionHasOrderThreeAndNoMore() {
        for (Condition condition : upToThree(embeddedWeights, 1)) {
            check("rosenbrock-embedded-order-", "order condition of the embedded solution ", "(7.11)", condition);
        }
        // Were the embedded solution of order 4 too, the difference would not estimate the error of order 3.
        assertThat(four(embeddedWeights))
                .anySatisfy(c -> assertThat(Math.abs(c.value() - c.expected())).isGreaterThan(1e-3));
    }

    @Test
    void timeIsTreatedAsAComponentOfTheState() {
        // Non-autonomous form: stage i is evaluated at t + α_i h and receives γ_i h ∂f/∂t.
        RealVector gammaSums = gamma.operate(one);
        for (int i = 0; i < STAGES; i++) {
            OutsideChecks.fromMemory("rosenbrock-abscissa-" + (i + 1), BOOK + ", non-autonomous problems")
                    .what("abscissa of stage " + (i + 1) + " is the sum of its coefficients α")
                    .unit("1")
                    .expected(RODAS.time[i])
                    .within(ROUNDING)
                    .check(alphaSums.getEntry(i));
            OutsideChecks.fromMemory("rosenbrock-time-weight-" + (i + 1), BOOK + ", non-autonomous problems")
                    .what("weight of the time derivative in stage " + (i + 1) + " is the sum of its coefficients γ")
                    .unit("1")
                    .expected(RODAS.timeDerivative[i])
                    .within(ROUNDING)
                    .check(gammaSums.getEntry(i));
        }
    }

    @Test
    void solutionIsStifflyAccurate() {
        // b_j = β_sj and α_s = 1, for the embedded solution with stage s − 1.
        for (int j = 0; j < STAGES; j++) {
            assertThat(weights.getEntry(j)).isCloseTo(beta.getEntry(STAGES - 1, j), within(ROUNDING));
            assertThat(embeddedWeights.getEntry(j)).isCloseTo(beta.getEntry(STAGES - 2, j), within(ROUNDING));
        }
        assertThat(alphaSums.getEntry(STAGES - 1)).isCloseTo(1, within(ROUNDING));
        assertThat(alphaSums.getEntry(STAGES - 2)).isCloseTo(1, within(ROUNDING));
    }

    @Test
    void stabilityFunctionVanishesAtInfinity() {
        for (RealVector b : new RealVector[] {weights, embeddedWeights}) {
            double atInfinity = 1 - b.dotProduct(inverse(beta).operate(one));
            assertThat(atInfinity).isCloseTo(0, within(1e-11));
        }
    }

    @Test
    void stabilityFunctionIsBoundedOnTheImaginaryAxis() {
        // With its only pole at 1/γ > 0, |R| ≤ 1 on the axis means A-stability (maximum principle).
        for (int k = -200; k <= 250; k++) {
            double y = Math.pow(10, k / 50.0);
            assertThat(stability(new Complex(0, y)).abs())
                    .as(String.format(Locale.ROOT, "|R(%.4g i)|", y))
                    .isLessThanOrEqualTo(1 + ROUNDING);
        }
    }

    @Test
    void stabilityFunctionFollowsTheExponentialToOrderFour() {
        // The error constant of order 4 multiplies z⁵: halving z divides the deviation by about 32.
        double coarse = stability(new Complex(-0.2, 0)).subtract(Math.exp(-0.2)).abs();
        double fine = stability(new Complex(-0.1, 0)).subtract(Math.exp(-0.1)).abs();
        assertThat(Math.log(coarse / fine) / Math.log(2)).isBetween(4.8, 5.3);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.25, 0.5, 0.75, 0.9})
    void denseOutputHasOrderThree(double theta) {
        RealVector bend =
                new ArrayRealVector(RODAS.dense[0]).add(new ArrayRealVector(RODAS.dense[1]).mapMultiply(theta));
        RealVector transformed =
                lastRow.add(unit(STAGES - 1)).add(bend.mapMultiply(1 - theta)).mapMultiply(theta);
        RealVector continuousWeights = gamma.preMultiply(transformed);
        for (Condition condition : upToThree(continuousWeights, theta)) {
            assertThat(condition.value())
                    .as("condition %s at θ = %s", condition.tree(), theta)
                    .isCloseTo(condition.expected(), within(ROUNDING));
        }
    }

    private static void check(String id, String what, String equation, Condition condition) {
        OutsideChecks.fromMemory(id + condition.tree(), BOOK + ", eq. " + equation)
                .what(what + condition.tree())
                .unit("1")
                .expected(condition.expected())
                .within(ROUNDING)
                .check(condition.value());
    }

    /** R(z) = 1 + z bᵀ (I − z B)⁻¹ 1, by forward substitution because B is lower triangular. */
    private Complex stability(Complex z) {
        Complex[] x = new Complex[STAGES];
        Complex sum = Complex.ZERO;
        for (int i = 0; i < STAGES; i++) {
            Complex right = Complex.ONE;
            for (int j = 0; j < i; j++) {
                right = right.add(z.multiply(beta.getEntry(i, j)).multiply(x[j]));
            }
            x[i] = right.divide(Complex.ONE.subtract(z.multiply(beta.getEntry(i, i))));
            sum = sum.add(x[i].multiply(weights.getEntry(i)));
        }
        return Complex.ONE.add(z.multiply(sum));
    }

    private static RealMatrix square(double[][] rows) {
        RealMatrix matrix = MatrixUtils.createRealMatrix(STAGES, STAGES);
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < rows[i].length; j++) {
                matrix.setEntry(i, j, rows[i][j]);
            }
        }
        return matrix;
    }

    private static RealMatrix inverse(RealMatrix matrix) {
        return new LUDecomposition(matrix).getSolver().getInverse();
    }

    private static RealVector unit(int index) {
        RealVector vector = new ArrayRealVector(STAGES);
        vector.setEntry(index, 1);
        return vector;
    }
}
