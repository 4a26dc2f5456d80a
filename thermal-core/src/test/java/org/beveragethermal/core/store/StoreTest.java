/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Liquids and ice as stores, and blocks that melt in a bath. */
class StoreTest {

    private static final double ZERO = 273.15;

    @Test
    void liquidFindsItsTemperatureAgain() {
        LiquidStore store = LiquidStore.ofMass(Beverage.wine(Measures.percentByVolume(12.5)), 0.74);
        StoreState out = new StoreState(0);
        for (double t = 270; t < 310; t += 3.3) {
            store.evaluate(store.enthalpyJ(t), new double[0], 0, out);
            assertThat(out.temperatureK).isCloseTo(t, within(1e-6));
        }
    }

    @Test
    void liquidOfVaryingMassHasTheSlopesOfItsMap() {
        for (LiquidStore store : List.of(LiquidStore.ofVaryingMass(Water.liquid()), LiquidStore.ofVaryingMass(4200))) {
            StoreState out = new StoreState(1);
            double h = store.enthalpyJ(285, 2.0);
            store.evaluate(h, new double[] {2.0}, 0, out);
            double slope = out.temperaturePerAmount[0];
            double perJoule = out.temperaturePerJoule;
            store.evaluate(h, new double[] {2.0 + 1e-6}, 0, out);
            double up = out.temperatureK;
            store.evaluate(h, new double[] {2.0 - 1e-6}, 0, out);
            assertThat(slope).isCloseTo((up - out.temperatureK) / 2e-6, within(1e-3));
            store.evaluate(h + 100, new double[] {2.0}, 0, out);
            assertThat(out.temperatureK).isCloseTo(285 + 100 * perJoule, within(1e-5));
        }
    }

    @Test
    void iceWarmsAndThenStaysAtItsMeltingPoint() {
        IceStore store = IceStore.of(1, 0.03, 8000);
        StoreState out = new StoreState(2);
        store.evaluate(store.enthalpyJ(ZERO - 10, 1, 0.03), new double[] {1, 0.03}, 0, out);
        assertThat(out.temperatureK).isCloseTo(ZERO - 10, within(1e-6));
        assertThat(out.temperaturePerJoule).isCloseTo(1 / Ice.specificHeatCapacity(ZERO - 10), within(1e-8));
        store.evaluate(store.enthalpyJ(ZERO, 1, 0.03) + 5000, new double[] {1, 0.03}, 0, out);
        assertThat(out.temperatureK).isEqualTo(ZERO);
        assertThat(out.temperaturePerJoule).isZero();
        assertThat(out.kelvinPerJoule).isPositive();
        assertThat(store.latentHeatJPerKg()).isCloseTo(Ice.latentHeatOfFusion().value(), within(1.0));
    }

    @Test
    void cubesMeltInTheTimeOfTheClosedForm() {
        // Constant coefficient on all faces: the side recedes evenly and is gone after ρ L a/(2 h ΔT).
        double density = 917;
        double latent = 333_550;
        double side = 0.03;
        double blocks = 10;
        double mass = blocks * density * side * side * side;
        Node ice = Node.of("ice", IceStore.ofConstants(latent, 2050, mass, side, 1e5), ZERO, mass, side);
        Node bath = Node.of("bath", LiquidStore.ofVaryingMass(4200), ZERO + 8, 20_000.0);
        MeltingBlocks law = new MeltingBlocks(
                blocks, side, 1, 2, density, 0, latent, HeatLaw.conductance(400), MeltingBlocks.ALL_WET);
        Trajectory run = NetworkSolver.standard()
                .withToleranceK(1e-6)
                .solve(
                        Network.of(List.of(ice, bath), List.of(MeltingPath.of("melting", bath, ice, law, "film"))),
                        2000);
        double gone = run.firstCrossing(0, t -> run.amount(ice, IceStore.SIDE, t) - 1e-3 * side)
                .orElseThrow();
        OutsideChecks.published(
                        "melting-cube-time", "closed form: t = ρ L a/(2 h ΔT), cube with a constant coefficient")
                .what("time to vanish of cubes of 30 mm, 400 W/(m² K), 8 K")
                .unit("s")
                .expected(1433.743828125)
                .within(3)
                .check(gone);
        // Half-way in time the side is half, the mass an eighth.
        assertThat(run.amount(ice, IceStore.MASS, 1433.74 / 2) / mass).isCloseTo(0.125, within(1e-3));
        double water = run.amount(bath, 0, 1900) - 20_000 + run.amount(ice, IceStore.MASS, 1900);
        // A residue of ice below zero, smaller than the tolerance, is reported as none.
        assertThat(water).isCloseTo(mass, within(1e-7));
        assertThat(run.ledger(2000).closure()).isLessThan(1e-9);
    }

    @Test
    void coldIceFreezesWaterOntoItself() {
        double mass = 0.1;
        Node ice = Node.of("ice", IceStore.of(mass, 0.03, 4000), ZERO - 20, mass, 0.03);
        Node bath = Node.of("bath", LiquidStore.ofVaryingMass(Water.liquid()), ZERO + 0.01, 1.0);
        double density = Ice.density(ZERO);
        MeltingBlocks law = new MeltingBlocks(
                mass / (density * Math.pow(0.03, 3)),
                0.03,
                1,
                1.75,
                density,
                2.2,
                Ice.latentHeatOfFusion().value(),
                HeatLaw.conductance(300),
                MeltingBlocks.ALL_WET);
        Trajectory run = NetworkSolver.standard()
                .solve(Network.of(List.of(ice, bath), List.of(MeltingPath.of("melting", bath, ice, law, "film"))), 600);
        assertThat(run.amount(ice, IceStore.MASS, 600)).isGreaterThan(mass);
        assertThat(run.temperatureK(ice, 600)).isCloseTo(ZERO, within(0.2));
    }

    @Test
    void waterHeatedByAConstantFlowWarmsByItsHeatCapacity() {
        Node water = Node.of("water", LiquidStore.ofMass(Water.liquid(), 1), ZERO + 10);
        Boundary hot = Boundary.constant("hot", ZERO + 1000);
        Trajectory run = NetworkSolver.standard()
                .solve(
                        Network.of(
                                List.of(water),
                                List.of(DirectPath.of(
                                        "heater", hot, water, "conduction", HeatLaw.of((from, to) -> 100)))),
                        418);
        // 41.8 kJ into a kilogram of water of about 4.19 kJ/(kg K).
        assertThat(run.temperatureK(water, 418)).isCloseTo(ZERO + 10 + 41_800 / 4188.0, within(0.02));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> LiquidStore.ofMass(Water.liquid(), 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LiquidStore.ofVaryingMass(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IceStore.of(0, 0.03, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IceStore.ofConstants(1, 1, 1, 1, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        IceStore store = IceStore.of(1, 0.03, 1);
        assertThatThrownBy(() -> store.enthalpyJ(ZERO + 1, 1, 0.03)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() ->
                        new MeltingBlocks(1, 0.03, 2, 2, 917, 2, 3e5, HeatLaw.conductance(1), MeltingBlocks.ALL_WET))
                .isInstanceOf(IllegalArgumentException.class);
        Node plain = Node.sensible("plain", 1, 280);
        MeltingBlocks law =
                new MeltingBlocks(1, 0.03, 1, 2, 917, 2, 3e5, HeatLaw.conductance(1), MeltingBlocks.ALL_WET);
        assertThatThrownBy(() -> MeltingPath.of("m", plain, plain, law, "f"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
