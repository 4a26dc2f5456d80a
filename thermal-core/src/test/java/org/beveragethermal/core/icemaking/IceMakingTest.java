/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.icemaking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.squareMetres;
import static org.beveragethermal.materials.units.Measures.watts;
import static org.beveragethermal.materials.units.Measures.wattsPerKelvin;
import static org.beveragethermal.materials.units.Measures.wattsPerMetreKelvin;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.Locale;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Erf;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Freezing times against Plank, Neumann and Nagaoka, the swelling of ice, batches, and what ice is worth. */
class IceMakingTest {

    private static final double ZERO = 273.15;
    private static final FreezerAir STILL = FreezerAir.at(celsius(-18));

    private static IceMould cube(double mm) {
        return IceMould.of(IceBlock.cube(millimetres(mm)));
    }

    private static IceMould sheet(double mm, int faces) {
        return IceMould.sheet(millimetres(mm), squareMetres(0.01), faces);
    }

    private static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }

    @Test
    void planksFactorsOfItsShapes() {
        double d = 0.07;
        IceMould[] moulds = {
            sheet(70, 2),
            IceMould.rod(millimetres(70), millimetres(300)),
            IceMould.of(IceBlock.sphere(millimetres(70))),
            cube(70)
        };
        String[] names = {"slab", "cylinder", "sphere", "cube"};
        double[] p = {1.0 / 2, 1.0 / 4, 1.0 / 6, 1.0 / 6};
        double[] r = {1.0 / 8, 1.0 / 16, 1.0 / 24, 1.0 / 24};
        String source =
                "R. Plank, P and R; B. Caballero (ed.), Encyclopedia of Food Sciences and Nutrition, 2003, freezing times;"
                        + " the cube is the limit of his bricks";
        for (int i = 0; i < 4; i++) {
            OutsideChecks.published("icemaking-plank-p-" + names[i], source)
                    .what("Plank's P of a " + names[i])
                    .unit("1")
                    .expected(p[i])
                    .withinRelative(1e-9)
                    .check(IceMaking.outsideM(moulds[i]) / d);
            OutsideChecks.published("icemaking-plank-r-" + names[i], source)
                    .what("Plank's R of a " + names[i])
                    .unit("1")
                    .expected(r[i])
                    .withinRelative(1e-6)
                    .check(IceMaking.insideM2(moulds[i]) / (d * d));
        }
    }

    @Test
    void bricksHavePlanksClosedForm() {
        // Sides d, β₁ d and β₂ d.
        double[][] bricks = {{1.5, 1.2}, {2, 1.5}, {4, 3}, {10, 5}};
        for (double[] beta : bricks) {
            double big = beta[0];
            double small = beta[1];
            double root = Math.sqrt((big - small) * (big - 1) + (small - 1) * (small - 1));
            double high = (big + small + 1 + root) / 3;
            double low = (big + small + 1 - root) / 3;
            double r = (term(high, big, small) - term(low, big, small)) / (8 * root) + (2 * big + 2 * small - 1) / 72;
            IceMould brick =
                    IceMould.of(IceBlock.brick(millimetres(20), millimetres(20 * big), millimetres(20 * small)));
            OutsideChecks.fromMemory(
                            "icemaking-plank-brick-" + big + "-" + small,
                            "R. Plank, R of bricks, as given in the ASHRAE Handbook, Refrigeration, freezing times")
                    .what("Plank's R of a brick of 1 by " + small + " by " + big)
                    .unit("1")
                    .expected(r)
                    .withinRelative(1e-5)
                    .check(IceMaking.insideM2(brick) / (0.02 * 0.02));
        }
    }

    private static double term(double at, double big, double small) {
        return (at - 1) * (big - at) * (small - at) * Math.log(at / (at - 1));
    }

    @Test
    void workedExamplesOfTextbooks() {
        // 1000 kg/m³, 250 kJ/kg, −1.25 °C in air of −15 °C, 50 W/(m² K), 1.2 W/(m K).
        OutsideChecks.fromMemory(
                        "icemaking-plank-sphere",
                        "R. P. Singh and D. R. Heldman, Introduction to Food Engineering, worked example of Plank's equation")
                .what("time to freeze a sphere of 70 mm")
                .unit("h")
                .expected(2.04)
                .within(0.01)
                .check(IceMaking.plankS(IceMould.of(IceBlock.sphere(millimetres(70))), 1000, 250_000, 13.75, 50, 1.2)
                        / 3600);
        OutsideChecks.fromMemory(
                        "icemaking-plank-slab",
                        "C. J. Geankoplis, Transport Processes and Unit Operations, slabs of meat")
                .what("time to freeze a slab of 63.5 mm from both sides")
                .unit("h")
                .expected(6.65)
                .within(0.02)
                .check(IceMaking.plankS(sheet(63.5, 2), 1057, 251_200, 26.1, 17, 1.038) / 3600);
    }

    @Test
    void waterAtZeroOnAColdPlateFreezesInNeumannsTime() {
        double d = 0.03;
        for (double below : new double[] {5, 10, 20}) {
            double capacity = Ice.specificHeatCapacity(ZERO - 0.5 * below);
            double diffusivity = Ice.thermalConductivity(ZERO - 0.5 * below) / (Ice.density(ZERO) * capacity);
            double stefan = capacity * below / Ice.latentHeatOfFusion().value();
            double lambda = new BrentSolver(1e-14)
                    .solve(200, l -> Math.sqrt(Math.PI) * l * Math.exp(l * l) * Erf.erf(l) - stefan, 1e-6, 3);
            double exact = d * d / (4 * lambda * lambda * diffusivity);
            IceMaking making =
                    IceMaking.under(sheet(1000 * d, 1), celsius(-below), wattsPerSquareMetreKelvin(1e6), celsius(0));
            OutsideChecks.published(
                            "icemaking-neumann-" + below, "closed form: one-phase solution of Stefan and Neumann")
                    .what("time until water of 0 °C is 30 mm of ice on a plate of −" + below + " °C, 32 cells")
                    .unit("s")
                    .expected(exact)
                    .withinRelative(0.01)
                    .check(seconds(making.predicted()));
            // Plank leaves the cooling of the ice out: short by a third of the Stefan number.
            assertThat(exact / seconds(making.plank()) - 1).isBetween(0.0, 0.4 * stefan);
        }
    }

    @Test
    void runAndPlankAgreeButForTheHeatThatPlankLeavesOut() {
        IceMould[] moulds = {
            cube(30),
            IceMould.of(IceBlock.cylinder(millimetres(30), millimetres(60))),
            IceMould.of(IceBlock.sphere(millimetres(50))),
            IceMould.of(IceBlock.brick(millimetres(40), millimetres(100), millimetres(200))),
            IceMould.cell(millimetres(35), millimetres(35), millimetres(35), IceMould.Faces.TOP_AND_FLOOR)
                    .withWall(millimetres(1.5), wattsPerMetreKelvin(0.2))
        };
        String[] names = {"cube", "cylinder", "sphere", "brick", "cell"};
        for (int i = 0; i < moulds.length; i++) {
            IceMould mould = moulds[i];
            IceMaking iced = IceMaking.of(mould, STILL, celsius(0));
            assertThat(seconds(iced.predicted()) / seconds(iced.plank())).isBetween(0.99, 1.06);
            IceMaking tap = IceMaking.of(mould, STILL, celsius(15));
            double latent = Ice.latentHeatOfFusion().value();
            double all = Water.liquid().specificEnthalpy(ZERO + 15) - Ice.specificEnthalpy(ZERO - 18);
            double ratio = seconds(tap.predicted()) / seconds(tap.plank());
            assertThat(ratio).isBetween(1.05, all / latent);
            OutsideChecks.fromMemory(
                            "icemaking-plank-shortfall-" + names[i],
                            "textbooks of food engineering: Plank's formula, without the heat of cooling, is short by some 10 % to 20 %")
                    .what("time to freeze water of 15 °C in air of −18 °C over Plank's time, " + mould)
                    .unit("1")
                    .between(1.05, 1.25)
                    .check(ratio);
        }
    }

    @Test
    void traysInAFreezerTakeHours() {
        IceMould cell = IceMould.cell(millimetres(35), millimetres(35), millimetres(35), IceMould.Faces.TOP_AND_FLOOR)
                .withWall(millimetres(1.5), wattsPerMetreKelvin(0.2))
                .withFilmLength(millimetres(150));
        IceMaking making = IceMaking.of(cell, STILL, celsius(15));
        double hours = seconds(making.predicted()) / 3600;
        IceMould small = IceMould.cell(millimetres(30), millimetres(30), millimetres(25), IceMould.Faces.ALL);
        double free = seconds(IceMaking.of(small, STILL, celsius(15)).predicted()) / 3600;
        OutsideChecks.ruleOfThumb(
                "icemaking-tray",
                "time to freeze a tray of cubes of 35 mm in the still air of a freezer of −18 °C",
                4,
                hours,
                "h",
                "common practice, no source: 3 to 4 hours; cold on top and floor alone it takes longer, in shallow cells that stand free "
                        + String.format(Locale.ROOT, "%.1f h", free));
        // Heat over film: 35 mm of water from two faces of 10 W/(m² K) at 18 K take half a day, whatever the model.
        assertThat(hours).isBetween(8.0, 14.0);
        assertThat(free).isBetween(2.0, 5.0);
        assertThat(making.coefficient()).isBetween(6.0, 14.0);
    }

    @Test
    void whatSlowsItAndWhatSpeedsIt() {
        IceMaking plain = IceMaking.of(cube(30), STILL, celsius(15));
        IceMaking fan = IceMaking.of(cube(30), STILL.withFan(metresPerSecond(2)), celsius(15));
        IceMaking colder = IceMaking.of(cube(30), FreezerAir.at(celsius(-25)), celsius(15));
        IceMaking warm = IceMaking.of(cube(30), STILL, celsius(60));
        IceMaking walled =
                IceMaking.of(cube(30).withWall(millimetres(2), wattsPerMetreKelvin(0.2)), STILL, celsius(15));
        assertThat(fan.predicted()).isLessThan(plain.predicted());
        assertThat(colder.predicted()).isLessThan(plain.predicted());
        assertThat(warm.predicted()).isGreaterThan(plain.predicted());
        assertThat(walled.predicted()).isGreaterThan(plain.predicted());
        Duration last = Duration.ofDays(100);
        for (IceMould.Faces faces : IceMould.Faces.values()) {
            IceMould cell = IceMould.cell(millimetres(30), millimetres(30), millimetres(30), faces);
            Duration time = IceMaking.of(cell, STILL, celsius(15)).predicted();
            assertThat(time).isLessThan(last);
            last = time;
        }
    }

    @Test
    void iceSwells() {
        IceFill fill = IceFill.of(litres(1), celsius(0));
        OutsideChecks.fromMemory(
                        "icemaking-swells",
                        "IAPWS R10-06 (ice, 916.72 kg/m³) and IAPWS-95 (water, 999.84 kg/m³), at 0 °C and 101325 Pa")
                .what("volume of ice over that of the water it is made of, less 1")
                .unit("1")
                .expected(999.84 / 916.72 - 1)
                .withinRelative(1e-3)
                .check(fill.swellsBy());
        OutsideChecks.commonPractice("icemaking-highest-fill")
                .what("part of a bag or mould that may be filled with water: leave about a tenth free")
                .unit("1")
                .between(0.88, 0.93)
                .check(fill.highestPart());
        assertThat(fill.highestKg()).isCloseTo(0.9167, within(1e-4));
        assertThat(fill.cautions()).anyMatch(caution -> caution.contains("glass"));
        // Warm water fills more of it when it is poured.
        assertThat(IceFill.of(litres(1), celsius(90)).highestPart()).isGreaterThan(fill.highestPart());
    }

    @Test
    void batchesFollowOneAnother() {
        IceMaking making = IceMaking.of(cube(30), STILL, celsius(15));
        double kg = making.mould().iceKg();
        IceBatches three = IceBatches.of(kilograms(2.5 * 20 * kg), making, 20, watts(10_000));
        assertThat(three.batches()).isEqualTo(3);
        assertThat(three.freezerDecides()).isFalse();
        assertThat(three.perBatch()).isEqualTo(making.predicted());
        assertThat(three.inAll()).isEqualTo(making.predicted().multipliedBy(3));
        assertThat(IceBatches.of(kilograms(20 * kg), making, 20, watts(10_000)).batches())
                .isEqualTo(1);
        assertThat(three.explain())
                .startsWith("Begin ")
                .contains("3 fillings of " + String.format(Locale.ROOT, "%.2f kg", 20 * kg))
                .doesNotContain("power");
        // 2 kg from 15 °C to ice of −18 °C: 0.86 MJ; a freezer of 20 W takes 12 hours.
        IceBatches slow = IceBatches.of(kilograms(2), making, (int) Math.ceil(2 / kg), watts(20));
        assertThat(slow.freezerDecides()).isTrue();
        assertThat(slow.explain()).contains("1 filling of", "the freezer's power decides");
        OutsideChecks.published(
                        "icemaking-freezer-power",
                        "IAPWS latent heat of ice, 333.5 kJ/kg; 4.19 and 2.03 kJ/(kg K) for water and ice")
                .what("hours for a freezer of 20 W to make 2 kg of ice of −18 °C from water of 15 °C")
                .unit("h")
                .expected(2 * (333.5 + 4.19 * 15 + 2.03 * 18) / 20 / 3.6)
                .withinRelative(0.02)
                .check(seconds(slow.inAll()) / 3600);
    }

    @Test
    void whatIceIsWorth() {
        var bottle = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
        OutsideChecks.published(
                        "icemaking-energy-bound-bottle",
                        "own arithmetic: (0.74 kg · 4.2 kJ/(kg K) + 0.5 kg · 0.8 kJ/(kg K)) · 14 K over 333.5 kJ/kg (IAPWS)")
                .what("ice to cool a bottle of wine of 750 mL with its glass from 22 °C to 8 °C, by energy alone")
                .unit("kg")
                .expected(0.15)
                .within(0.01)
                .check(IceBalance.heatJ(bottle, ZERO + 8) / IceBalance.perKilogramJ(ZERO, ZERO));
        assertThat(IceBalance.heatJ(bottle, ZERO + 25)).isZero();
        OutsideChecks.published("icemaking-carried", "UA ΔT t/L with the IAPWS latent heat, 333.5 kJ/kg")
                .what("ice of 0 °C that melts in a box of 1 W/K in a day at 30 °C")
                .unit("kg")
                .expected(30 * 86_400 / 333_500.0)
                .withinRelative(1e-3)
                .check(20
                        - IceBalance.leftKg(
                                kilograms(20), celsius(0), wattsPerKelvin(1), celsius(30), Duration.ofDays(1)));
        assertThat(IceBalance.leftKg(kilograms(5), celsius(-18), wattsPerKelvin(1), celsius(30), Duration.ofHours(1)))
                .isEqualTo(5);
        assertThat(IceBalance.leftKg(kilograms(5), celsius(0), wattsPerKelvin(1), celsius(30), Duration.ofDays(9)))
                .isZero();
    }

    @Test
    void refusals() {
        assertThatThrownBy(() -> FreezerAir.at(celsius(1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new FreezerAir(Double.NaN, 0)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new FreezerAir(255, -1)).hasMessageContaining("m/s");
        assertThatThrownBy(() -> STILL.coefficient(0.1, Double.NaN)).hasMessageContaining("surface");
        assertThatThrownBy(() -> STILL.coefficient(0, 260)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IceMould.sheet(millimetres(20), squareMetres(0.01), 3))
                .hasMessageContaining("1 or 2");
        assertThatThrownBy(() -> cube(1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> IceMaking.of(cube(30), STILL, celsius(-1))).isInstanceOf(OutOfRangeException.class);
        IceMaking making = IceMaking.of(cube(30), STILL, celsius(100));
        assertThat(making.predicted()).isPositive();
        assertThatThrownBy(() -> IceBatches.of(kilograms(-1), making, 1, watts(50)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> IceBatches.of(kilograms(1), making, 0, watts(50)))
                .hasMessageContaining("moulds");
        assertThatThrownBy(() -> IceBatches.of(kilograms(2000), making, 1, watts(50)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> IceFill.of(litres(0), celsius(10))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> IceBalance.leftKg(
                        kilograms(1), celsius(0), wattsPerKelvin(1), celsius(20), Duration.ofHours(-1)))
                .hasMessageContaining("time");
    }
}
