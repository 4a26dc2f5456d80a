/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.GivenHeat;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.junit.jupiter.api.Test;

/** Times without preparation: closed forms, a reference, the engine, and what is refused. */
class CoolingRateTest {

    private static final double ZERO = 273.15;
    private static final double AIR_K = 277.15;

    /** Newton's law of cooling: T − Te falls as exp(−t/τ). */
    static CoolingRate newton(double timeConstantS) {
        return CoolingRate.of(t -> -(t - AIR_K) / timeConstantS, AIR_K);
    }

    /** Radiation of a lumped body to large surroundings, dT/dt = −c (T⁴ − Te⁴). */
    private static CoolingRate radiation(double c) {
        return CoolingRate.of(t -> -c * (Math.pow(t, 4) - Math.pow(AIR_K, 4)), AIR_K);
    }

    /**
     * The integral of dT/(T⁴ − Te⁴), an elementary one: Incropera et al., Fundamentals of Heat and Mass Transfer, section 5.3
     * (radiation only; from memory, re-derived by partial fractions).
     */
    private static double radiationTimeS(double c, double startK, double targetK) {
        DoubleUnaryOperator primitive = t -> Math.log(Math.abs((t - AIR_K) / (t + AIR_K))) / (4 * Math.pow(AIR_K, 3))
                - Math.atan(t / AIR_K) / (2 * Math.pow(AIR_K, 3));
        return (primitive.applyAsDouble(startK) - primitive.applyAsDouble(targetK)) / c;
    }

    /** The film and the radiation of a bottle of one node, by the formula of Churchill and Chu for an upright plate. */
    static double bottleKPerS(double temperatureK) {
        double surface = temperatureK - ZERO;
        double film = 0.5 * (surface + 4);
        double k = 0.02436 + 7.2e-5 * film;
        double viscosity = 1.335e-5 + 9e-8 * film;
        double ra = 9.81 / (ZERO + film) * Math.abs(surface - 4) * Math.pow(0.24, 3) / (viscosity * viscosity / 0.711);
        double root = 0.825 + 0.387 * Math.pow(ra, 1.0 / 6) / Math.pow(1 + Math.pow(0.492 / 0.711, 9.0 / 16), 8.0 / 27);
        double watts = k * root * root / 0.24 * 0.062 * (surface - 4)
                + 0.9 * 5.670374419e-8 * 0.062 * (Math.pow(temperatureK, 4) - Math.pow(AIR_K, 4));
        return -watts / 3520;
    }

    @Test
    void newtonsLawIsExact() {
        for (double target : new double[] {295, 290, 280, 277.2, 277.15 + 1e-6}) {
            double exact = 5000 * Math.log((298.15 - AIR_K) / (target - AIR_K));
            assertThat(newton(5000).timeS(298.15, target)).isCloseTo(exact, within(1e-9 * exact));
        }
    }

    @Test
    void radiationAloneFollowsItsClosedForm() {
        double c = 2e-12;
        double[][] pairs = {{360, 280}, {300, 277.2}, {250, 277}, {295, 294.9}, {1200, 277.3}};
        for (double[] pair : pairs) {
            assertThat(radiation(c).timeS(pair[0], pair[1]))
                    .isCloseTo(radiationTimeS(c, pair[0], pair[1]), within(CoolingRate.DEFAULT_TOLERANCE_S));
            assertThat(radiation(c).timeS(pair[0], pair[1], 1e-7))
                    .isCloseTo(radiationTimeS(c, pair[0], pair[1]), within(1e-6));
        }
    }

    /** 8744.415114 s: SciPy, quad and DOP853 on the same formula, synthetic body of 3520 J/K. */
    @Test
    void aBottleOfOneNodeAgreesWithAnotherIntegrator() {
        CoolingRate bottle = CoolingRate.of(CoolingRateTest::bottleKPerS, AIR_K);
        assertThat(bottle.timeS(22 + ZERO, 9 + ZERO)).isCloseTo(8744.415114, within(1e-4));
        assertThat(bottle.timeS(22 + ZERO, 9 + ZERO, 1e-7)).isCloseTo(8744.415114, within(2e-6));
    }

    @Test
    void aKinkCostsHalvingsNotAccuracy() {
        DoubleUnaryOperator kinked = t -> -(t - AIR_K) * (t > 285 ? 1e-3 : 2e-4);
        double exact = Math.log((300 - AIR_K) / (285 - AIR_K)) / 1e-3 + Math.log((285 - AIR_K) / (280 - AIR_K)) / 2e-4;
        assertThat(CoolingRate.of(kinked, AIR_K).timeS(300, 280)).isCloseTo(exact, within(0.01));
    }

    @Test
    void whatLiesBeyondTheEquilibriumOrBehindTheStartIsNeverReached() {
        CoolingRate rate = newton(5000);
        assertThat(rate.timeS(290, AIR_K)).isInfinite();
        assertThat(rate.timeS(290, 270)).isInfinite();
        assertThat(rate.timeS(290, 291)).isInfinite();
        assertThat(rate.timeS(270, 269)).isInfinite();
        assertThat(rate.timeS(AIR_K, 290)).isInfinite();
        assertThat(rate.timeS(290, 290)).isZero();
        assertThat(rate.timeTo(celsius(20), celsius(3)))
                .isInstanceOfSatisfying(
                        CurveTime.Never.class,
                        never -> assertThat(never.tendsTo().getValue().doubleValue())
                                .isEqualTo(4));
        assertThat(rate.timeTo(celsius(20), celsius(12)))
                .isInstanceOfSatisfying(
                        CurveTime.Reached.class,
                        reached -> assertThat(reached.after())
                                .isEqualTo(Duration.ofMillis(Math.round(5e6 * Math.log(2)))));
    }

    @Test
    void aNetworkOfOneNodeGivesTheEnginesTimes() {
        Node drink = Node.sensible("drink", 3100, 295.15);
        Boundary air = Boundary.constant("air", AIR_K);
        HeatLaw film = HeatLaw.of((from, to) -> 0.3 * Math.pow(Math.abs(from - to), 0.25) * (from - to));
        Network network = Network.of(
                List.of(drink),
                List.of(
                        DirectPath.of("film", drink, air, "convection", film).scaledBy("film"),
                        GivenHeat.of("light", air, drink, "light", TimeFunction.constant(1.5))));
        CoolingRate rate = CoolingRate.of(network, Map.of("film", 1.2));
        // 1.5 W balance 1.2 × 0.3 W/K^(5/4).
        assertThat(rate.equilibriumK()).isCloseTo(AIR_K + Math.pow(1.5 / 0.36, 0.8), within(1e-6));
        Trajectory run = NetworkSolver.standard()
                .withToleranceK(1e-8)
                .withMultipliers(Map.of("film", 1.2))
                .solve(network, 20_000);
        for (double target : new double[] {294, 290, 284}) {
            double engine = run.firstCrossing(0, t -> run.temperatureK(drink, t) - target)
                    .getAsDouble();
            assertThat(rate.timeS(295.15, target)).isCloseTo(engine, within(0.02));
        }
    }

    @Test
    void whatVariesOrHasMoreThanOneNodeIsRefused() {
        Node drink = Node.sensible("drink", 3100, 295.15);
        Node glass = Node.sensible("glass", 400, 295.15);
        Boundary steady = Boundary.constant("air", AIR_K);
        Boundary swinging = Boundary.varying("air", TimeFunction.smooth(t -> AIR_K + Math.sin(t / 500)));
        HeatLaw law = HeatLaw.conductance(0.5);
        assertThatThrownBy(() -> CoolingRate.of(
                        Network.of(List.of(drink), List.of(DirectPath.of("film", drink, swinging, "heat", law))),
                        Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("air")
                .hasMessageContaining("varies in time");
        assertThatThrownBy(() -> CoolingRate.of(
                        Network.of(
                                List.of(drink),
                                List.of(
                                        DirectPath.of("film", drink, steady, "heat", law),
                                        GivenHeat.of("sun", steady, drink, "sun", TimeFunction.smooth(Math::cos)))),
                        Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("sun");
        assertThatThrownBy(() -> CoolingRate.of(
                        Network.of(List.of(drink, glass), List.of(DirectPath.of("film", drink, glass, "heat", law))),
                        Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 nodes");
        assertThatThrownBy(() -> CoolingRate.of(Network.of(List.of(drink), List.of()), Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("boundaries");
    }

    @Test
    void badNumbersAndBadLawsAreRefused() {
        assertThatThrownBy(() -> newton(1).timeS(Double.NaN, 280)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> newton(1).timeS(290, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> newton(1).timeS(290, 280, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CoolingRate.of(t -> 0, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CoolingRate.of(t -> 1e-3, AIR_K).timeS(290, 280))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("towards the equilibrium");
        assertThatThrownBy(() -> CoolingRate.of(t -> Double.NaN, AIR_K).timeS(290, 280))
                .isInstanceOf(IllegalStateException.class);
    }
}
