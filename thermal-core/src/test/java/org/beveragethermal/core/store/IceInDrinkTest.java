/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.util.List;
import java.util.Random;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.surroundings.PathDerivatives;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Ice in a drink that exchanges heat with nothing else: where both end, how fast, and what is conserved. */
class IceInDrinkTest {

    private static final double ZERO = 273.15;
    private static final double SIDE = 0.02;

    private final Node drink;
    private final Node ice;
    private final IceInDrinkPath path;

    IceInDrinkTest() {
        drink = drink(Water.liquid(), 0.25, ZERO + 20);
        ice = ice(0.02, ZERO);
        path = path(drink, ice, 400);
    }

    private static Node drink(Liquid liquid, double massKg, double temperatureK) {
        return Node.of("drink", DilutedStore.ofMass(liquid, massKg), temperatureK, massKg);
    }

    private static Node ice(double massKg, double temperatureK) {
        return Node.of("ice", IceStore.of(massKg, SIDE, 4000), temperatureK, massKg, SIDE);
    }

    private static double blocks(Node ice) {
        return ice.amounts()[IceStore.MASS] / (Ice.density(ZERO) * SIDE * SIDE * SIDE);
    }

    /** Cubes with a constant coefficient while they keep their size. */
    private static IceInDrinkPath path(Node drink, Node ice, double coefficient) {
        double area = 6 * SIDE * SIDE * blocks(ice);
        return IceInDrinkPath.of(
                "melting", drink, ice, blocks(ice), HeatLaw.conductance(coefficient * area), "insert film");
    }

    private static Trajectory run(Node drink, Node ice, double hours) {
        return NetworkSolver.standard()
                .withToleranceK(1e-5)
                .solve(Network.of(List.of(drink, ice), List.of(path(drink, ice, 400))), 3600 * hours);
    }

    @Test
    void threeCubesCoolASodaAsInTheTextbook() {
        Node soda = drink(Water.liquid(), 0.25, ZERO + 20);
        Trajectory run = run(soda, ice(0.018, ZERO), 1);
        OutsideChecks.published(
                        "ice-in-soda",
                        "OpenStax, College Physics, section 14.3 Phase Change and Latent Heat, example on cooling soda with"
                                + " ice cubes (printed as 13 °C; 14,918 J over 1122 J/K from its figures)")
                .what("0.25 kg of soda of 20 °C with three ice cubes of 6.0 g, all melted")
                .unit("°C")
                .expected(13.3)
                .within(0.1)
                .check(run.temperatureK(soda, 3600) - ZERO);
        assertThat(run.amount(soda, DilutedStore.MASS, 3600)).isCloseTo(0.268, within(1e-6));
    }

    @Test
    void iceFromAFreezerJustCoolsASodaToZero() {
        Node soda = drink(Water.liquid(), 0.25, ZERO + 25);
        Node cubes = ice(0.0696, ZERO - 20);
        Trajectory run = run(soda, cubes, 24);
        OutsideChecks.fromMemory(
                        "freezer-ice-in-soda",
                        "H. D. Young and R. A. Freedman, University Physics, calorimetry: 0.25 kg of cola of 25 °C, ice of"
                                + " −20 °C, how much ice for 0 °C and no ice left: 70 g (0.0696 kg from its figures)")
                .what("ice left of 69.6 g, part of the mass")
                .unit("1")
                .expected(0)
                .within(0.02)
                .check(run.amount(cubes, IceStore.MASS, 24 * 3600) / 0.0696);
        assertThat(run.temperatureK(soda, 24 * 3600) - ZERO).isBetween(-0.01, 0.5);
    }

    /** Limit: what is left over of the ice ends with the drink at the freezing point of what the drink has become. */
    @Test
    void wineAndSpiritEndAtTheirFreezingPointWhileIceIsLeft() {
        for (Beverage beverage :
                List.of(Beverage.wine(percentByVolume(12.5)), Beverage.spirit(percentByVolume(40)), Beverage.water())) {
            Node wine = drink(beverage, 0.2, ZERO + 15);
            Node cubes = ice(0.4, ZERO - 18);
            Trajectory run = run(wine, cubes, 100);
            double end = 100 * 3600;
            DilutedStore store = (DilutedStore) wine.store();
            double added = store.addedKg(run.amount(wine, DilutedStore.MASS, end));
            double freezingK = store.diluted(added).orElseThrow().freezingOnsetK();
            assertThat(run.amount(cubes, IceStore.MASS, end)).isGreaterThan(0.1);
            assertThat(run.temperatureK(wine, end)).isCloseTo(ZERO - store.freezingDepressionK(added), within(0.02));
            // The depression goes with the water as in an ideal solution; the published curves bend.
            assertThat(run.temperatureK(wine, end)).isCloseTo(freezingK, within(0.1 * (ZERO - freezingK) + 0.05));
            assertThat(run.temperatureK(cubes, end)).isCloseTo(run.temperatureK(wine, end), within(0.05));
            assertThat(run.ledger(end).closure()).isLessThan(1e-9);
            assertThat(added + run.amount(cubes, IceStore.MASS, end)).isCloseTo(0.4, within(1e-12));
        }
    }

    @Test
    void enthalpyIsThatOfTheStart() {
        Node wine = drink(Beverage.wine(percentByVolume(12.5)), 0.2, ZERO + 15);
        Node cubes = ice(0.05, ZERO - 18);
        Trajectory run = run(wine, cubes, 2);
        double start = wine.enthalpyJ() + cubes.enthalpyJ();
        for (double t : new double[] {10, 100, 1000, 7200}) {
            assertThat(run.enthalpyJ(wine, t) + run.enthalpyJ(cubes, t)).isCloseTo(start, within(1e-9 * 1e5));
        }
    }

    /** Own arithmetic: with q = q₀ (s/s₀)^1.75 the side falls as s^(1/4) ds = const dt, so that t = 2.4 m L/q₀. */
    @Test
    void cubesInMuchWaterAreGoneAfterTheTimeOfTheirLaw() {
        Node much = drink(Water.liquid(), 1e4, ZERO + 10);
        Node cubes = ice(0.02, ZERO);
        Trajectory run = run(much, cubes, 1);
        double watts = 400 * 6 * SIDE * SIDE * blocks(cubes) * 10;
        double expected = 2.4 * 0.02 * 333_430 / watts;
        double gone = run.firstCrossing(0, t -> run.amount(cubes, IceStore.SIDE, t) - 1e-3 * SIDE)
                .orElseThrow();
        assertThat(gone).isCloseTo(expected, within(3e-3 * expected));
    }

    @Test
    void theSurfaceLiesBetweenZeroAndTheFreezingPoint() {
        double gamma = 333_430 / (4000 * Math.pow(200, 2.0 / 3));
        for (double depression : new double[] {0.01, 1, 5, 23}) {
            double before = Double.POSITIVE_INFINITY;
            for (double t = -60; t <= 90; t += 0.7) {
                double x = path.surfaceDepressionK(t, depression);
                assertThat(x).isPositive().isLessThan(before);
                // The equation itself: T − T_s = Γ ln(b/b_s).
                assertThat(t + x).isCloseTo(gamma * Math.log(depression / x), within(0.01));
                before = x;
            }
            assertThat(path.surfaceDepressionK(-depression, depression)).isCloseTo(depression, within(1e-9));
        }
        assertThat(path.surfaceDepressionK(20, 5)).isLessThan(0.01);
        assertThat(path.surfaceDepressionK(-3, 0)).isZero();
    }

    @Test
    void thePathStatesTheSlopesOfItsFlows() {
        Random random = new Random(20261126);
        for (Liquid liquid :
                List.of(Water.liquid(), Beverage.wine(percentByVolume(12.5)), Beverage.spirit(percentByVolume(40)))) {
            Node wine = drink(liquid, 0.2, ZERO + 15);
            Node cubes = ice(0.05, ZERO - 5);
            IceInDrinkPath melting = path(wine, cubes, 400);
            for (int i = 0; i < 40; i++) {
                double side = 0.004 + 0.018 * random.nextDouble();
                PathDerivatives.check(
                        melting,
                        new double[] {ZERO - 12 + 40 * random.nextDouble(), ZERO - 18 * random.nextDouble()},
                        new double[] {0.21 + 0.05 * random.nextDouble(), 0.05 * Math.pow(side / SIDE, 3), side},
                        2e-3);
            }
        }
    }

    @Test
    void aThinnedDrinkHasTheEnthalpyOfItsParts() {
        Beverage wine = Beverage.wine(percentByVolume(12.5));
        DilutedStore store = DilutedStore.ofMass(wine, 0.2);
        StoreState state = new StoreState(1);
        StoreState other = new StoreState(1);
        LiquidStore liquid = LiquidStore.ofMass(wine, 0.2);
        for (double t = 262; t < 350; t += 3.1) {
            for (double added : new double[] {-0.01, 0, 0.05, 0.3}) {
                double h = store.enthalpyJ(t, 0.2 + added);
                store.evaluate(h, new double[] {0.2 + added}, 0, state);
                assertThat(state.temperatureK).isCloseTo(t, within(1e-7));
                store.evaluate(h + 1, new double[] {0.2 + added}, 0, other);
                assertThat(other.temperatureK - state.temperatureK)
                        .isCloseTo(state.temperaturePerJoule, within(1e-3 * state.temperaturePerJoule));
                store.evaluate(h, new double[] {0.2 + added + 1e-6}, 0, other);
                assertThat((other.temperatureK - state.temperatureK) / 1e-6)
                        .isCloseTo(
                                state.temperaturePerAmount[0],
                                within(1e-3 * (1 + Math.abs(state.temperaturePerAmount[0]))));
            }
            StoreState alone = new StoreState(0);
            liquid.evaluate(liquid.enthalpyJ(t), new double[0], 0, alone);
            store.evaluate(liquid.enthalpyJ(t), new double[] {0.2}, 0, state);
            assertThat(state.temperatureK).isEqualTo(alone.temperatureK);
        }
        double step = 1e-6;
        assertThat(store.freezingDepressionSlope(0.1))
                .isCloseTo(
                        (store.freezingDepressionK(0.1 + step) - store.freezingDepressionK(0.1 - step)) / (2 * step),
                        within(1e-5));
    }

    /** 0.7 L of 40 % vol and 0.3 kg of water, with contraction: a little more than 28 % vol (by volumes without it). */
    @Test
    void strengthFollowsTheBalanceOfMass() {
        Beverage spirit = Beverage.spirit(percentByVolume(40));
        double massKg = 0.7e-3 * spirit.density(293.15);
        double strength =
                DilutedStore.ofMass(spirit, massKg).diluted(0.3).orElseThrow().strengthByVolume();
        assertThat(100 * strength).isBetween(28.0, 28.5);
        assertThat(DilutedStore.ofMass(Water.liquid(), 1).diluted(0.3)).isEmpty();
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> DilutedStore.ofMass(Water.liquid(), -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DilutedStore.ofMass(Water.liquid(), 1).diluted(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IceInDrinkPath.of("melting", ice, drink, 1, HeatLaw.conductance(1), "x"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IceInDrinkPath.of("melting", drink, ice, 0, HeatLaw.conductance(1), "x"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
