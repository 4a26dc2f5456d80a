/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.junit.jupiter.api.Test;

/** Ice below, at and past its melting point; what melting must conserve. */
class IceStoreTest {

    private static final double ZERO = 273.15;

    @Test
    void ofTheMeltingPlateauOnlyItsLowerEndIsBelowZero() {
        IceStore store = IceStore.of(2, 0.025, 16_000);
        StoreState out = new StoreState(2);
        double melting = store.enthalpyJ(ZERO, 2, 0.025);
        for (double part = 0; part <= 1; part += 0.1) {
            store.evaluate(melting * (1 - part), new double[] {2, 0.025}, 0, out);
            assertThat(out.temperatureK).isEqualTo(ZERO);
            assertThat(out.temperaturePerAmount).containsOnly(0);
        }
        store.evaluate(melting - 4200, new double[] {2, 0.025}, 0, out);
        // 4.2 kJ out of 2 kg of ice of about 2.1 kJ/(kg K) (from memory, any handbook): one kelvin colder.
        assertThat(out.temperatureK - ZERO).isCloseTo(-1, within(0.02));
    }

    @Test
    void coldIceHasTheSlopesOfItsMap() {
        IceStore store = IceStore.of(2, 0.025, 16_000);
        StoreState at = new StoreState(2);
        StoreState up = new StoreState(2);
        StoreState down = new StoreState(2);
        for (double celsius = -28; celsius < -0.5; celsius += 2.3) {
            double h = store.enthalpyJ(ZERO + celsius, 1.3, 0.02);
            store.evaluate(h, new double[] {1.3, 0.02}, 0, at);
            assertThat(at.temperatureK - ZERO).isCloseTo(celsius, within(1e-6));
            store.evaluate(h, new double[] {1.3 + 1e-7, 0.02}, 0, up);
            store.evaluate(h, new double[] {1.3 - 1e-7, 0.02}, 0, down);
            double byMass = (up.temperatureK - down.temperatureK) / 2e-7;
            assertThat(at.temperaturePerAmount[IceStore.MASS]).isCloseTo(byMass, within(1e-4 * Math.abs(byMass)));
            store.evaluate(h + 1, new double[] {1.3, 0.02}, 0, up);
            store.evaluate(h - 1, new double[] {1.3, 0.02}, 0, down);
            double byJoule = (up.temperatureK - down.temperatureK) / 2;
            assertThat(at.temperaturePerJoule).isCloseTo(byJoule, within(1e-4 * byJoule));
            assertThat(at.temperaturePerAmount[IceStore.SIDE]).isZero();
        }
    }

    @Test
    void iceThatIsGoneKeepsItsTemperature() {
        IceStore store = IceStore.of(2, 0.025, 16_000);
        StoreState out = new StoreState(2);
        for (double mass : new double[] {0, -1e-10, 1e-12}) {
            store.evaluate(0, new double[] {mass, 0}, 0, out);
            assertThat(out.temperatureK).isEqualTo(ZERO);
            assertThat(out.kelvinPerJoule).isPositive().isFinite();
        }
    }

    @Test
    void waterFindsItsTemperatureAgainFromFreezingToHot() {
        LiquidStore store = LiquidStore.ofVaryingMass(Water.liquid());
        StoreState out = new StoreState(1);
        for (double celsius = 0.01; celsius < 95; celsius += 1.7) {
            store.evaluate(store.enthalpyJ(ZERO + celsius, 3.0), new double[] {3.0}, 0, out);
            assertThat(out.temperatureK - ZERO).isCloseTo(celsius, within(1e-6));
        }
    }

    @Test
    void meltingConservesMassAndEnthalpyUntilItIsOver() {
        // Adiabatic: what the water loses melts ice. By hand: 4186 J/(kg K), 2100 J/(kg K), 333.4 kJ/kg (from memory).
        double ice = 0.5;
        double water = 3;
        Node block = Node.of("ice", IceStore.of(ice, 0.03, 4186 * water), ZERO - 10, ice, 0.03);
        Node bath = Node.of("bath", LiquidStore.ofVaryingMass(Water.liquid()), ZERO + 20, water);
        double density = Ice.density(ZERO);
        MeltingBlocks law = new MeltingBlocks(
                ice / (density * Math.pow(0.03, 3)),
                0.03,
                1,
                1.75,
                density,
                Ice.thermalConductivity(ZERO),
                Ice.latentHeatOfFusion().value(),
                HeatLaw.conductance(600),
                MeltingBlocks.ALL_WET);
        Trajectory run = NetworkSolver.standard()
                .solve(
                        Network.of(List.of(block, bath), List.of(MeltingPath.of("melting", bath, block, law, "film"))),
                        3600);
        double before = run.enthalpyJ(block, 0) + run.enthalpyJ(bath, 0);
        for (double t = 0; t <= 3600; t += 300) {
            double enthalpy = run.enthalpyJ(block, t) + run.enthalpyJ(bath, t);
            assertThat(enthalpy).isCloseTo(before, within(1e-9 * 333_400 * ice));
            double left = run.amount(block, IceStore.MASS, t);
            if (left > 1e-3) {
                assertThat(left + run.amount(bath, 0, t)).isCloseTo(ice + water, within(1e-9));
            }
        }
        double meeting = (4186 * water * 20 - ice * (333_400 + 2100 * 10)) / (4186 * (water + ice));
        assertThat(run.temperatureK(bath, 3600) - ZERO).isCloseTo(meeting, within(0.1));
    }

    @Test
    void nonsenseIsRefused() {
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> IceStore.of(bad, 0.03, 1)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> IceStore.of(1, bad, 1)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> IceStore.of(1, 0.03, bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> IceStore.ofConstants(bad, 2000, 1, 0.03, 1))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> IceStore.ofConstants(3e5, bad, 1, 0.03, 1))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> LiquidStore.ofMass(Water.liquid(), bad))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> LiquidStore.ofVaryingMass(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new MeltingBlocks(
                            bad, 0.03, 1, 2, 917, 2, 3e5, HeatLaw.conductance(1), MeltingBlocks.ALL_WET))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new MeltingBlocks(
                            1, 0.03, 1, 2, 917, 2, bad, HeatLaw.conductance(1), MeltingBlocks.ALL_WET))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> IceStore.of(1, 0.03, 1).enthalpyJ(ZERO + 0.01, 1, 0.03))
                .isInstanceOf(IllegalArgumentException.class);
        Node ice = Node.of("ice", IceStore.of(1, 0.03, 1), ZERO, 1, 0.03);
        MeltingBlocks law =
                new MeltingBlocks(1, 0.03, 1, 2, 917, 2, 3e5, HeatLaw.conductance(1), MeltingBlocks.ALL_WET);
        Node fixed = Node.of("fixed", LiquidStore.ofMass(Water.liquid(), 1), ZERO + 5);
        Node bath = Node.of("bath", LiquidStore.ofVaryingMass(Water.liquid()), ZERO + 5, 1.0);
        assertThatThrownBy(() -> MeltingPath.of("m", fixed, ice, law, "f"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MeltingPath.of("m", bath, bath, law, "f"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
