/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Phase;
import org.beveragethermal.core.solver.Sensitivity;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.FreezingCurve;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Drinks that freeze: the map from enthalpy to temperature, and runs through it. */
class FreezingStoreTest {

    private static final double ZERO = 273.15;
    private static final double MASS_KG = 0.74;
    private static final double[] NO_AMOUNTS = {};
    private static final Beverage WINE = Beverage.wine(Measures.percentByVolume(12.5));
    private static final List<Beverage> WITH_SOLUTES = List.of(
            WINE,
            Beverage.wine(Measures.percentByVolume(9), Measures.gramsPerLitre(150)),
            Beverage.spirit(Measures.percentByVolume(40)),
            Beverage.milk(Measures.percent(3.6)),
            Beverage.softDrink(Measures.gramsPerLitre(100)),
            Beverage.softDrink(Measures.gramsPerLitre(1)));

    private static StoreState at(FreezingStore store, double enthalpyJ) {
        StoreState out = new StoreState(0);
        store.evaluate(enthalpyJ, NO_AMOUNTS, 0, out);
        return out;
    }

    @Test
    void temperatureAndIceFollowTheCurve() {
        for (Beverage drink : WITH_SOLUTES) {
            FreezingStore store = FreezingStore.ofMass(drink, MASS_KG);
            FreezingCurve curve = FreezingCurve.of(drink);
            assertThat(store.freezingOnsetK()).isEqualTo(drink.freezingOnsetK());
            for (double t = 248.15; t < drink.freezingOnsetK(); t += 0.0137) {
                double enthalpy = MASS_KG * curve.specificEnthalpyWithIce(t);
                assertThat(at(store, enthalpy).temperatureK)
                        .as("%s at %s K", drink, t)
                        .isCloseTo(t, within(FreezingStore.ACCURACY_K));
                assertThat(store.iceFractionAtEnthalpy(enthalpy)).isCloseTo(curve.iceFraction(t), within(1e-4));
            }
        }
    }

    @Test
    void aboveTheOnsetItIsTheLiquidToTheLastDigit() {
        for (Beverage drink : List.of(WINE, Beverage.water(), Beverage.milk(Measures.percent(3.6)))) {
            FreezingStore store = FreezingStore.ofMass(drink, MASS_KG);
            LiquidStore liquid = LiquidStore.ofMass(drink, MASS_KG);
            StoreState expected = new StoreState(0);
            for (double t = drink.freezingOnsetK() + 1e-6; t < 340; t += 0.71) {
                double enthalpy = liquid.enthalpyJ(t);
                assertThat(store.enthalpyJ(t)).isEqualTo(enthalpy);
                liquid.evaluate(enthalpy, NO_AMOUNTS, 0, expected);
                StoreState out = at(store, enthalpy);
                assertThat(out.temperatureK).isEqualTo(expected.temperatureK);
                assertThat(out.temperaturePerJoule).isEqualTo(expected.temperaturePerJoule);
                assertThat(out.kelvinPerJoule).isEqualTo(expected.kelvinPerJoule);
                assertThat(store.iceFraction(t)).isZero();
            }
        }
    }

    @Test
    void temperatureIsFoundAgainFromItsEnthalpy() {
        List<FreezingStore> stores = List.of(
                FreezingStore.ofMass(WINE, MASS_KG),
                FreezingStore.ofMass(Beverage.water(), MASS_KG),
                FreezingStore.ofMass(Beverage.softDrink(Measures.gramsPerLitre(100)), MASS_KG),
                FreezingStore.ofConstants(271, 280_000, 3500, 1900, MASS_KG));
        for (FreezingStore store : stores) {
            for (double t = 235; t < 290; t += 0.0173) {
                assertThat(at(store, store.enthalpyJ(t)).temperatureK).isCloseTo(t, within(2e-7));
            }
            double onset = store.freezingOnsetK();
            assertThat(at(store, store.enthalpyJ(onset)).temperatureK).isCloseTo(onset, within(2e-7));
        }
    }

    @Test
    void slopesAreThoseOfTheMapAndItOnlyRises() {
        for (Beverage drink : WITH_SOLUTES) {
            FreezingStore store = FreezingStore.ofMass(drink, MASS_KG);
            double onset = store.enthalpyJ(drink.freezingOnsetK());
            double before = 0;
            for (double h = store.enthalpyJ(246); h < onset + 4000; h += 37) {
                StoreState here = at(store, h);
                assertThat(here.temperatureK).isGreaterThan(before);
                before = here.temperatureK;
                if (Math.abs(h - onset) > 1) {
                    double difference = (at(store, h + 0.5).temperatureK - at(store, h - 0.5).temperatureK);
                    assertThat(here.temperaturePerJoule)
                            .as("%s at %s K", drink, here.temperatureK)
                            .isPositive()
                            .isCloseTo(difference, within(2e-3 * difference + 1e-10));
                }
            }
        }
    }

    @Test
    void errorsAreWeighedBySensibleHeatAlone() {
        FreezingStore store = FreezingStore.ofMass(WINE, MASS_KG);
        for (double t = 249; t < 300; t += 0.9) {
            StoreState out = at(store, store.enthalpyJ(t));
            // Between ice, 1.9 kJ/(kg K), and the liquid, 4.5 kJ/(kg K); what freezing takes is ten times that.
            assertThat(1 / (out.kelvinPerJoule * MASS_KG)).isBetween(1900.0, 4600.0);
            assertThat(out.temperaturePerJoule).isLessThanOrEqualTo(out.kelvinPerJoule * (1 + 1e-12));
        }
    }

    @Test
    void waterFreezesAtOneTemperatureAndThenCoolsAsIce() {
        FreezingStore store = FreezingStore.ofMass(Beverage.water(), 1);
        for (double frozen = 0.01; frozen < 1; frozen += 0.07) {
            StoreState out = at(store, -333_426.5 * frozen);
            assertThat(out.temperatureK).isBetween(ZERO - FreezingStore.PLATEAU_K, ZERO);
            assertThat(store.iceFraction(out.temperatureK)).isCloseTo(frozen, within(1e-4));
        }
        OutsideChecks.published(
                        "freezing-store-water-to-minus-18",
                        "IAPWS R10-06 and IAPWS-95 (heat of fusion 333.4265 kJ/kg; ice 2.097 kJ/(kg K) at 0 °C, 1.964 at"
                                + " -18 °C)")
                .what("heat to freeze a kilogram of water of 0 °C and cool the ice to -18 °C")
                .unit("J")
                .expected(333_426.5 + 18 * 0.5 * (2096.7 + 1964.4))
                .within(100)
                .check(-store.enthalpyJ(ZERO - 18));
        assertThat(store.iceFraction(ZERO - 18)).isEqualTo(1);
    }

    @Test
    void outsideTheCurveTheMapGoesOnStraight() {
        for (Beverage drink : WITH_SOLUTES) {
            FreezingStore store = FreezingStore.ofMass(drink, MASS_KG);
            double slope = at(store, store.enthalpyJ(248.15)).temperaturePerJoule;
            double ice = store.iceFraction(248.15);
            for (double t : new double[] {248, 240, 150, 20}) {
                StoreState out = at(store, store.enthalpyJ(t));
                assertThat(out.temperatureK).isCloseTo(t, within(1e-7));
                assertThat(out.temperaturePerJoule).isCloseTo(slope, within(1e-12));
                assertThat(store.iceFraction(t)).isCloseTo(ice, within(1e-12));
            }
        }
    }

    @Test
    void spiritsStayLiquid() {
        Beverage spirit = Beverage.spirit(Measures.percentByVolume(45));
        FreezingStore store = FreezingStore.ofMass(spirit, MASS_KG);
        assertThat(spirit.freezingOnsetK()).isLessThan(248.15);
        for (double t = 235; t < 300; t += 1.3) {
            assertThat(store.iceFraction(t)).isZero();
            assertThat(at(store, store.enthalpyJ(t)).temperatureK).isCloseTo(t, within(2e-7));
        }
    }

    @Test
    void threadsThatShareAStoreSeeTheSame() {
        double[] expected = sweep(FreezingStore.ofMass(WINE, MASS_KG));
        FreezingStore shared = FreezingStore.ofMass(WINE, MASS_KG);
        IntStream.range(0, 64).parallel().forEach(i -> assertThat(sweep(shared)).containsExactly(expected));
    }

    private static double[] sweep(FreezingStore store) {
        return DoubleStream.iterate(-250_000, h -> h < 60_000, h -> h + 997)
                .map(h -> at(store, h).temperatureK)
                .toArray();
    }

    @Test
    void evaluatingAllocatesNothing() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        FreezingStore store = FreezingStore.ofMass(WINE, MASS_KG);
        StoreState out = new StoreState(0);
        double first = store.enthalpyJ(249);
        double last = store.enthalpyJ(300);
        store.evaluate(first, NO_AMOUNTS, 0, out);
        long before = threads.getCurrentThreadAllocatedBytes();
        for (int i = 0; i <= 20_000; i++) {
            store.evaluate(first + (last - first) * i / 20_000, NO_AMOUNTS, 0, out);
        }
        assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(20_000);
    }

    @Test
    void freezingAndThawingConserveEnergy() {
        for (Beverage drink : List.of(WINE, Beverage.water())) {
            FreezingStore store = FreezingStore.ofMass(drink, MASS_KG);
            Node wine = Node.of("drink", store, ZERO + 15);
            Node glass = Node.sensible("glass", 420, ZERO + 15);
            Boundary freezer = Boundary.constant("freezer", ZERO - 18);
            Boundary room = Boundary.constant("room", ZERO + 20);
            Network cold = Network.of(
                    List.of(wine, glass),
                    List.of(
                            DirectPath.of("inside", wine, glass, "convection", HeatLaw.conductance(4)),
                            DirectPath.of("outside", glass, freezer, "convection", HeatLaw.conductance(0.9))));
            Network warm = cold.withPaths(List.of(
                    DirectPath.of("inside", wine, glass, "convection", HeatLaw.conductance(4)),
                    DirectPath.of("outside", glass, room, "convection", HeatLaw.conductance(0.9))));
            Trajectory run =
                    NetworkSolver.standard().solve(List.of(new Phase(0, cold), new Phase(36_000, warm)), 400_000);
            assertThat(store.iceFraction(run.temperatureK(wine, 36_000))).isGreaterThan(0.5);
            assertThat(store.iceFraction(run.temperatureK(wine, 400_000))).isZero();
            assertThat(run.temperatureK(wine, 400_000)).isCloseTo(ZERO + 20, within(0.01));
            assertThat(run.ledger(36_000).closure()).isLessThan(1e-9);
            assertThat(run.ledger(400_000).closure()).isLessThan(1e-9);
            double gained = run.enthalpyJ(wine, 400_000) - run.enthalpyJ(wine, 0);
            assertThat(gained).isCloseTo(store.enthalpyJ(ZERO + 20) - store.enthalpyJ(ZERO + 15), within(30.0));
        }
    }

    @Test
    void slopesOfARunThatStartsPartlyFrozenAreItsDifferences() {
        FreezingStore store = FreezingStore.ofMass(WINE, MASS_KG);
        double step = 0.02;
        for (double celsius : new double[] {-9, -5, 2}) {
            Node drink = Node.of("drink", store, ZERO + celsius);
            Sensitivity slopes = Sensitivity.of(inFreezer(drink), List.of(), List.of(drink));
            Node warmer = Node.of("drink", store, ZERO + celsius + step);
            Node colder = Node.of("drink", store, ZERO + celsius - step);
            Trajectory warm = inFreezer(warmer);
            Trajectory cold = inFreezer(colder);
            for (double t : new double[] {0, 3600, 14_400}) {
                double difference = (warm.temperatureK(warmer, t) - cold.temperatureK(colder, t)) / (2 * step);
                // Documented as good to about a hundredth; the runs are good to a millikelvin.
                assertThat(slopes.temperatureSlope("drink", drink, t))
                        .as("from %s °C after %s s", celsius, t)
                        .isCloseTo(difference, within(0.02 * difference + 0.03));
            }
        }
    }

    @Test
    void freezingCostsFewSteps() {
        Node wine = Node.of("drink", FreezingStore.ofMass(WINE, MASS_KG), ZERO + 20);
        Node liquid = Node.of("drink", LiquidStore.ofMass(WINE, MASS_KG), ZERO + 20);
        Trajectory freezing = inFreezer(wine);
        Trajectory staying = inFreezer(liquid);
        // A kink met unawares costs a handful of rejected steps, not a crawl.
        assertThat(freezing.stepsTried()).isLessThan(staying.stepsTried() + 30);
        assertThat(freezing.temperatureK(wine, 20_000)).isGreaterThan(staying.temperatureK(liquid, 20_000) + 3);
    }

    private static Trajectory inFreezer(Node drink) {
        Boundary freezer = Boundary.constant("freezer", ZERO - 18);
        return NetworkSolver.standard()
                .solve(
                        Network.of(
                                List.of(drink),
                                List.of(DirectPath.of("film", drink, freezer, "convection", HeatLaw.conductance(0.9)))),
                        86_400);
    }

    @Test
    void nonsenseIsRefused() {
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            refused("mass of", () -> FreezingStore.ofMass(WINE, bad));
            refused("freezing temperature", () -> FreezingStore.ofConstants(bad, 3e5, 4e3, 2e3, 1));
            refused("heat of fusion", () -> FreezingStore.ofConstants(273, bad, 4e3, 2e3, 1));
            refused("of the liquid", () -> FreezingStore.ofConstants(273, 3e5, bad, 2e3, 1));
            refused("when frozen", () -> FreezingStore.ofConstants(273, 3e5, 4e3, bad, 1));
            refused("mass", () -> FreezingStore.ofConstants(273, 3e5, 4e3, 2e3, bad));
        }
        FreezingStore store = FreezingStore.ofMass(WINE, 1);
        refused("temperature NaN", () -> store.iceFraction(Double.NaN));
        refused("enthalpy Infinity", () -> store.iceFractionAtEnthalpy(Double.POSITIVE_INFINITY));
        assertThat(at(store, Double.NaN).temperatureK).isNaN();
    }

    /** Less ethanol than rounding keeps: it froze like nothing, with slopes that were no numbers and a table without end. */
    @Test
    void aTraceOfEthanolFreezesLikeWater() {
        Beverage water = Beverage.wine(Measures.percentByVolume(0));
        FreezingStore pure = FreezingStore.ofMass(water, 1);
        for (double percent : new double[] {1e-300, 1e-30, 1e-15, 1e-12, 1e-9, 1e-6}) {
            Beverage trace = Beverage.wine(Measures.percentByVolume(percent));
            FreezingCurve curve = FreezingCurve.of(trace);
            for (double t = 250; t < 273; t += 0.7) {
                assertThat(curve.iceFraction(t)).isCloseTo(1, within(1e-5));
                assertThat(curve.apparentHeatCapacity(t)).isBetween(1600.0, 2200.0);
                assertThat(curve.specificVolume(t))
                        .isCloseTo(FreezingCurve.of(water).specificVolume(t), within(1e-6));
            }
            FreezingStore store = FreezingStore.ofMass(trace, 1);
            assertThat(store.iceFraction(268)).isCloseTo(1, within(1e-5));
            // The heat of fusion of water is released within a millikelvin; the two liquids differ by parts in 10⁴.
            assertThat(store.enthalpyJ(268)).isCloseTo(pure.enthalpyJ(268), within(100.0));
        }
    }

    private static void refused(String part, ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(part);
    }
}
