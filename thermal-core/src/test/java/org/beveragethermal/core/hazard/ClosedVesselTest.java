/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.kilopascals;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import org.beveragethermal.core.hazard.HeadspacePressure.Full;
import org.beveragethermal.core.hazard.HeadspacePressure.Gas;
import org.beveragethermal.core.hazard.HeadspacePressure.NotKnown;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Composition;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.Closure;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Pressure under closures against publications and the gas law. */
final class ClosedVesselTest {

    private static final double ZERO = 273.15;
    private static final double BAR = 1e5;
    private static final String SEALED_BOTTLES =
            "G. Liger-Belair, D. Cordier, J. Honvault, C. Cilindre, Unveiling CO2 heterogeneous freezing plumes during champagne cork"
                    + " popping, Scientific Reports 7 (2017) 10938, doi 10.1038/s41598-017-10702-6, table 1";

    private static final Beverage DRY_SPARKLING = Beverage.sparklingWine(percentByVolume(12.5), gramsPerLitre(10));
    /** 25 mL of gas to 750 mL of wine are assumed. */
    private static final ClosedVessel SPARKLING = ClosedVessel.of(
                    Vessels.sparkling750().filledWith(DRY_SPARKLING, celsius(20)))
            .withHeadspace(millilitres(25));

    private static final Beverage WINE = Beverage.dryWine(percentByVolume(12.5));
    private static final FilledVessel BOTTLE = Vessels.highShouldered750().filledWith(WINE, celsius(20));

    private static Gas gas(ClosedVessel vessel, double celsius) {
        return (Gas) vessel.pressureAtK(ZERO + celsius);
    }

    @Test
    void sparklingWineAtThreeTemperatures() {
        assertThat(SPARKLING.ullage()).isCloseTo(1.0 / 30, within(1e-9));
        double at20 = gas(SPARKLING, 19.85).carbonDioxidePa();
        OutsideChecks.published("sealed-sparkling-pressure-279K", SEALED_BOTTLES)
                .what("partial pressure of CO2 at 279 K over that at 293 K, 750 mL, ullage 25 mL assumed")
                .unit("1")
                .expected(4.7 / 7.5)
                .withinRelative(0.05)
                .check(gas(SPARKLING, 5.85).carbonDioxidePa() / at20);
        OutsideChecks.published("sealed-sparkling-pressure-285K", SEALED_BOTTLES)
                .what("partial pressure of CO2 at 285 K over that at 293 K, 750 mL, ullage 25 mL assumed")
                .unit("1")
                .expected(5.8 / 7.5)
                .withinRelative(0.05)
                .check(gas(SPARKLING, 11.85).carbonDioxidePa() / at20);
        OutsideChecks.published("sealed-sparkling-pressure-293K", SEALED_BOTTLES)
                .what("partial pressure of CO2 at 293 K with 11.4 g/L, 750 mL, ullage 25 mL assumed")
                .unit("bar")
                .expected(7.5)
                .withinRelative(0.1)
                .check(at20 / BAR);
    }

    @Test
    void whatMovesBetweenLiquidAndHeadspaceIsKept() {
        double density = DRY_SPARKLING.density(ZERO + 20);
        double content = DRY_SPARKLING.composition().carbonDioxideKgPerM3();
        double mass = SPARKLING.filled().liquidMassKg();
        for (double t : new double[] {0, 8, 20, 35}) {
            Gas gas = gas(SPARKLING, t);
            double dissolved = DRY_SPARKLING.carbonDioxide().orElseThrow().solubility(ZERO + t)
                    * gas.carbonDioxidePa()
                    * mass
                    / DRY_SPARKLING.density(ZERO + t);
            double inGas = gas.carbonDioxidePa() * gas.headspaceM3() * 0.04401 / (8.314462618 * (ZERO + t));
            assertThat(dissolved + inGas).isCloseTo(content * mass / density, within(1e-9));
            assertThat(gas.airPa()).as("no air beside so much gas").isZero();
        }
    }

    @Test
    void headspaceLostOnWarming() {
        ClosedVessel bottle = ClosedVessel.of(BOTTLE);
        double lost = bottle.headspaceM3(ZERO + 10) - bottle.headspaceM3(ZERO + 20);
        OutsideChecks.published(
                        "headspace-lost-10-to-20C",
                        "Cork Quality Council, Headspace Calculations: about 2 mL of a 750 mL bottle from 50 to 68 °F")
                .what("headspace that a dry wine takes on warming from 10 to 20 °C in a 750 mL bottle")
                .unit("mL")
                .between(1.0, 2.5)
                .check(1e6 * lost);
        Beverage strong = Beverage.dryWine(percentByVolume(14));
        OutsideChecks.published(
                        "wine-expands-20-to-40C",
                        "Cork Quality Council, Calculating Headspace, after R. B. Boulton et al., Principles and Practices of"
                                + " Winemaking: printed .08 %, which is 0.8 % by the 0.166 mL per degree Fahrenheit beside it; one digit,"
                                + " strength not stated")
                .what("growth of the volume of dry wine of 14 % vol from 20 to 40 °C")
                .unit("1")
                .expected(0.008)
                .within(0.0008)
                .check(strong.density(ZERO + 20) / strong.density(ZERO + 40) - 1);
    }

    @Test
    void headspaceMayBeStated() {
        ClosedVessel usual = ClosedVessel.of(BOTTLE);
        assertThat(usual.headspaceM3(ZERO + 20)).isCloseTo(6.5e-6, within(1e-12));
        ClosedVessel roomy = usual.withHeadspace(millilitres(12));
        assertThat(roomy.headspaceM3(ZERO + 20)).isCloseTo(12e-6, within(1e-12));
        assertThat(gas(roomy, 30).gaugePa()).isLessThan(gas(usual, 30).gaugePa());
        assertThatThrownBy(() -> usual.withHeadspace(millilitres(0))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void airUnderACorkObeysTheGasLaw() {
        ClosedVessel bottle = ClosedVessel.of(BOTTLE);
        Gas cold = gas(bottle, 12);
        Gas warm = gas(bottle, 24);
        assertThat(cold.airPa() * cold.headspaceM3() / (ZERO + 12))
                .isCloseTo(warm.airPa() * warm.headspaceM3() / (ZERO + 24), within(1e-12));
        assertThat(gas(bottle, 20).gaugePa()).isCloseTo(0, within(1e-6));
        assertThat(cold.gaugePa()).isNegative();
        assertThat(warm.carbonDioxidePa()).isZero();
    }

    @Test
    void bottledColdUnderAVacuum() {
        ClosedVessel bottle = ClosedVessel.of(BOTTLE).closedAt(celsius(15), kilopascals(80));
        assertThat(gas(bottle, 15).absolutePa()).isCloseTo(80_000, within(1e-6));
        assertThat(gas(bottle, 20).absolutePa()).isGreaterThan(80_000);
    }

    @Test
    void vapourOfWaterIsThatOfWaterAndEthanolAddsToIt() {
        double water = MoistAir.saturationPressure(ZERO + 20);
        assertThat(Vapour.pressurePa(Beverage.tea(), ZERO + 20)).isCloseTo(water, within(1e-9));
        boils("ethanol-water-boils-x0072", 0.0721, 89.0);
        boils("ethanol-water-boils-x0327", 0.3273, 81.5);
        assertThat(Vapour.pressurePa(WINE, ZERO + 20)).isBetween(1.05 * water, 1.6 * water);
    }

    private static void boils(String id, double moleFraction, double celsius) {
        double ethanol = moleFraction * 46.068;
        double massFraction = ethanol / (ethanol + (1 - moleFraction) * 18.015);
        Beverage mixture = Beverage.of(Beverage.Kind.SPIRIT, Composition.ofEthanolAndWater(massFraction));
        OutsideChecks.fromMemory(
                        id,
                        "Perry's Chemical Engineers' Handbook, vapour-liquid equilibrium of ethanol and water at 101.3 kPa, after J. S."
                                + " Carey and W. K. Lewis, Ind. Eng. Chem. 24 (1932) 882")
                .what("vapour pressure at a mole fraction of ethanol of " + moleFraction + " where it boils, " + celsius
                        + " °C")
                .unit("kPa")
                .expected(101.325)
                .withinRelative(0.03)
                .check(Vapour.pressurePa(mixture, ZERO + celsius) / 1000);
    }

    @Test
    void liquidThatHasNoRoomLeft() {
        Vessel vessel = Vessels.highShouldered750();
        double room = ClosedVessel.of(BOTTLE).roomM3(ZERO + 20);
        ClosedVessel brimming = ClosedVessel.of(vessel.filledWith(WINE, millilitres(1e6 * room - 1.5), celsius(20)));
        double full = brimming.fullAtK().orElseThrow();
        assertThat(full).isBetween(ZERO + 22, ZERO + 35);
        assertThat(brimming.headspaceM3(full)).isCloseTo(0, within(1e-12));
        assertThat(brimming.pressureAtK(full - 0.01)).isInstanceOf(Gas.class);
        assertThat(brimming.pressureAtK(full + 1)).isInstanceOfSatisfying(Full.class, at -> {
            assertThat(at.excessM3()).isPositive();
            assertThat(at.explain()).contains("forces");
        });
    }

    @Test
    void whatIsNotKnownIsSaid() {
        assertThat(SPARKLING.pressureAt(celsius(-8))).isInstanceOf(NotKnown.class);
        assertThat(SPARKLING.pressureAt(celsius(45)))
                .isInstanceOfSatisfying(
                        NotKnown.class, answer -> assertThat(answer.explain()).contains("solubility"));
        assertThat(gas(SPARKLING, 12).explain()).contains("gauge pressure");
    }

    @Test
    void answersHaveSnapshotsAndNoMinusZero() {
        Gas gas = gas(SPARKLING, 12);
        assertThat(gas.snapshot().formatVersion()).isEqualTo(1);
        assertThat(gas.snapshot().valuesSi().keySet())
                .containsExactly("temperatureK", "headspaceM3", "airPa", "carbonDioxidePa", "vapourPa");
        assertThat(gas.snapshot().valuesSi().get("carbonDioxidePa")).containsExactly(gas.carbonDioxidePa());
        assertThat(SPARKLING.pressureAt(celsius(45)).snapshot().answer()).isEqualTo("notKnown");
        assertThat(gas(ClosedVessel.of(BOTTLE), 19.99).explain())
                .contains("gauge pressure is 0.00 bar")
                .doesNotContain("-0.0");
        assertThat(new FreezingOnset.NeverFreezes(ZERO - 0.04, ZERO - 0.01).explain())
                .contains("freezes at 0.0 °C")
                .contains("comes to 0.0 °C");
        assertThat(new Fullness.Fills(Duration.ofHours(1), ZERO + 35, 0).explain())
                .contains("at 35.0 °C, the contents");
    }

    @Test
    void openAndOverfullVesselsAreRefused() {
        FilledVessel glass = Vessels.tastingGlass().filledWith(WINE, celsius(12));
        assertThatThrownBy(() -> ClosedVessel.of(glass))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("stands open");
        Vessel vessel = Vessels.highShouldered750();
        double brimfulMl = 1e6 * vessel.brimfulVolumeM3();
        FilledVessel brimful = vessel.filledWith(WINE, millilitres(brimfulMl), celsius(20));
        assertThatThrownBy(() -> ClosedVessel.of(brimful))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("headspace under the closure");
        assertThatThrownBy(() -> ClosedVessel.of(BOTTLE).closedAt(celsius(20), kilopascals(0.5)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> ClosedVessel.of(BOTTLE).pressureAt(celsius(200)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void aClosureTakesRoom() {
        Vessel capped = Vessels.highShouldered750().closedBy(Closure.screwCap());
        double underCap = ClosedVessel.of(capped.filledWith(WINE, celsius(20))).headspaceM3(ZERO + 20);
        double underCork = ClosedVessel.of(BOTTLE).headspaceM3(ZERO + 20);
        assertThat(underCap).isCloseTo(BOTTLE.headspaceM3(), within(1e-12));
        assertThat(underCork).isLessThan(underCap).isPositive();
    }

    /** 5 K per 0.1 mm on a can, by the library's own can, water and latent heat. */
    @Test
    void dewOnACan() {
        Vessel can = Vessels.all(VesselShape.CAN).stream()
                .filter(vessel -> Math.abs(vessel.nominalVolumeM3() - 355e-6) < 30e-6)
                .findFirst()
                .orElseThrow();
        Beverage beer = Beverage.beer(percentByVolume(5));
        double height = can.profile().heightM();
        double lid = Math.PI * Math.pow(can.profile().outerRadiusM(height), 2);
        double area = can.profile().outerSideAreaM2(0, height) + can.profile().baseAreaM2() + lid;
        double heat = area * 1e-4 * 1000 * MoistAir.latentHeatOfEvaporation(ZERO + 5);
        double kelvins = heat / (355e-6 * beer.density(ZERO + 5) * beer.specificHeatCapacity(ZERO + 5));
        OutsideChecks.published(
                        "dew-film-on-a-can",
                        "D. R. Durran and D. M. W. Frierson, Condensation, atmospheric motion, and cold beer, Physics Today 66 (2013)"
                                + " no. 4, 74: a film of 0.1 mm covering a can warms it by 5 K")
                .what("latent heat of 0.1 mm of water all over a can over the heat capacity of 355 mL of beer")
                .unit("K")
                .expected(5)
                .withinRelative(0.15)
                .check(kelvins);
    }
}
