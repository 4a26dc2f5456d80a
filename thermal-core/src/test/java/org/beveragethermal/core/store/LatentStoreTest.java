/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.LatentSolid;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** A body that melts over a range: its map, its inside, and the time it takes to thaw. */
class LatentStoreTest {

    private static final double MASS = 0.5;

    private static double temperatureK(LatentStore store, double enthalpyJ) {
        StoreState state = new StoreState(0);
        store.evaluate(enthalpyJ, new double[0], 0, state);
        return state.temperatureK;
    }

    @Test
    void followsTheSolidsOwnMap() {
        LatentSolid gel = Solids.gelPack();
        LatentStore store = LatentStore.ofMass(gel, MASS);
        for (double t = 244; t <= 320; t += 0.25) {
            assertThat(temperatureK(store, MASS * gel.specificEnthalpy(t)))
                    .isCloseTo(t, within(LatentStore.ACCURACY_K));
        }
        double heat = store.enthalpyJ(293.15) - store.enthalpyJ(253.15);
        assertThat(heat)
                .isCloseTo(MASS * (gel.specificEnthalpy(293.15) - gel.specificEnthalpy(253.15)), within(1e-4 * heat));
    }

    @Test
    void enthalpyAndTemperatureAreInverseAndTheSlopeIsThatOfTheMap() {
        LatentStore store = LatentStore.ofMass(Solids.gelPack(), MASS);
        StoreState state = new StoreState(0);
        for (double t = 230; t <= 340; t += 0.37) {
            double h = store.enthalpyJ(t);
            store.evaluate(h, new double[0], 0, state);
            assertThat(state.temperatureK).isCloseTo(t, within(1e-6));
            double step = 0.5;
            double numeric = (temperatureK(store, h + step) - temperatureK(store, h - step)) / (2 * step);
            assertThat(state.temperaturePerJoule).isPositive().isCloseTo(numeric, within(1e-4 * numeric));
            assertThat(state.kelvinPerJoule).isBetween(1 / (MASS * 4000), 1 / (MASS * 2000));
        }
        assertThat(store.meltedFraction(250)).isZero();
        assertThat(store.meltedFraction(300)).isEqualTo(1);
    }

    @Test
    void slopesOfTheConductionAreThoseOfItsFlow() {
        LatentConduction law = LatentConduction.of(Solids.gelPack(), 2, 0.05);
        HeatFlow out = new HeatFlow();
        HeatFlow other = new HeatFlow();
        for (double from = 265; from < 280; from += 0.513) {
            for (double to : new double[] {260, 275, 295}) {
                law.evaluate(from, to, out);
                law.evaluate(from + 1e-5, to, other);
                assertThat((other.watts - out.watts) / 1e-5)
                        .isCloseTo(out.perFromKelvin, within(1e-3 * Math.abs(out.perFromKelvin)));
                law.evaluate(from, to + 1e-5, other);
                assertThat((other.watts - out.watts) / 1e-5)
                        .isCloseTo(out.perToKelvin, within(1e-4 * Math.abs(out.perToKelvin)));
            }
        }
    }

    private static Constant constant(String name, double value, String unit) {
        return new Constant(
                name,
                value,
                unit,
                Uncertainty.exact(),
                new Source("case", "figures of the case", Source.Kind.OWN_ASSUMPTION));
    }

    private static Solid solid(String name, double conductivity) {
        return new Solid(
                name,
                constant("density", 1000, "kg/m³"),
                constant("conductivity", conductivity, "W/(m K)"),
                constant("specific heat capacity", 20, "J/(kg K)"),
                constant("emissivity", 0.9, "1"),
                Optional.empty(),
                new ValidityRange("temperature", 243.15, 333.15, "K"));
    }

    /** Melting goes inwards from both faces and the rest is at its melting point: Plank's equation, read for thawing. */
    @Test
    void aSlabThawsInPlanksTime() {
        LatentSolid stuff = new LatentSolid(
                "stuff",
                solid("frozen", 1e4),
                solid("thawed", 1.6),
                constant("start", 273.14, "K"),
                constant("end", 273.16, "K"),
                constant("latent heat", 280_000, "J/kg"));
        double area = 2;
        double half = 0.035;
        Node body = Node.of("body", LatentStore.ofMass(stuff, 1000 * area * half), 273.13);
        Boundary around = Boundary.constant("around", 273.15 + 18);
        Trajectory run = NetworkSolver.standard()
                .withToleranceK(1e-5)
                .solve(
                        Network.of(
                                List.of(body),
                                List.of(DirectPath.of(
                                        "surface",
                                        body,
                                        around,
                                        "conduction",
                                        LatentConduction.of(stuff, area / half, 1 / (10 * area))))),
                        80_000);
        double thawedS =
                run.firstCrossing(0, t -> 273.16 - run.temperatureK(body, t)).orElseThrow();
        OutsideChecks.published(
                        "plank-thawing-slab",
                        "R. Plank: freezing time of a slab, read for thawing, as given by R. P. Singh and D. R. Heldman,"
                                + " Introduction to Food Engineering")
                .what("time to thaw a slab of 70 mm from both sides, 10 W/(m² K), 18 K above melting")
                .unit("s")
                .expected(60_399.3056)
                .withinRelative(5e-3)
                .check(thawedS);
    }

    @Test
    void nonsenseIsRefused() {
        LatentSolid gel = Solids.gelPack();
        assertThatThrownBy(() -> LatentStore.ofMass(gel, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LatentStore.ofMass(gel, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LatentStore.ofMass(gel, 1).meltedFraction(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LatentConduction.of(gel, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LatentConduction.of(gel, 1, -1)).isInstanceOf(IllegalArgumentException.class);
    }
}
