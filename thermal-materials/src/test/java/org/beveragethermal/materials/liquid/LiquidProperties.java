/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;

/** What must hold for any composition and temperature. */
class LiquidProperties {

    @Property(seed = "301")
    void strengthConversionsInvert(@ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double strength) {
        double massFraction = EthanolWater.massFractionFromStrength(strength);
        assertThat(EthanolWater.strengthFromMassFraction(massFraction)).isCloseTo(strength, within(1e-10));
    }

    @Property(seed = "302")
    void massFractionConversionsInvert(@ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double massFraction) {
        double strength = EthanolWater.strengthFromMassFraction(massFraction);
        assertThat(EthanolWater.massFractionFromStrength(strength)).isCloseTo(massFraction, within(1e-10));
    }

    @Property(seed = "303")
    void heatCapacityOfWaterIsTheDerivativeOfItsEnthalpy(
            @ForAll @Scale(6) @DoubleRange(min = 253.3, max = 383) double temperatureK) {
        assertDerivative(Water.liquid(), temperatureK);
    }

    @Property(seed = "304")
    void heatCapacityOfTheMixtureIsTheDerivativeOfItsEnthalpy(
            @ForAll @Scale(6) @DoubleRange(min = 253.3, max = 343) double temperatureK,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.6) double massFraction) {
        assertDerivative(EthanolWater.ofMassFraction(massFraction), temperatureK);
    }

    private static void assertDerivative(Liquid liquid, double temperatureK) {
        double h = 0.05;
        double slope =
                (liquid.specificEnthalpy(temperatureK + h) - liquid.specificEnthalpy(temperatureK - h)) / (2 * h);
        // Rounding of the enthalpy (1e-10 of 4e5 J/kg) and the third derivative leave this much.
        assertThat(slope).isCloseTo(liquid.specificHeatCapacity(temperatureK), within(0.02));
    }

    @Property(seed = "305")
    void expansionIsTheLogarithmicSlopeOfDensity(
            @ForAll @Scale(6) @DoubleRange(min = 253.3, max = 343) double temperatureK,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.6) double massFraction) {
        for (Liquid liquid : new Liquid[] {Water.liquid(), EthanolWater.ofMassFraction(massFraction)}) {
            double h = 0.05;
            double slope = Math.log(liquid.density(temperatureK - h) / liquid.density(temperatureK + h)) / (2 * h);
            assertThat(liquid.thermalExpansion(temperatureK)).isCloseTo(slope, within(2e-8));
        }
    }

    @Property(seed = "306")
    void propertiesArePositiveAndOrderedAcrossTheRange(
            @ForAll @Scale(6) @DoubleRange(min = 253.15, max = 343.15) double temperatureK,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.6) double massFraction) {
        Liquid liquid = EthanolWater.ofMassFraction(massFraction);
        assertThat(liquid.density(temperatureK)).isBetween(800.0, 1000.0);
        assertThat(liquid.specificHeatCapacity(temperatureK)).isBetween(3000.0, 4600.0);
        assertThat(liquid.thermalConductivity(temperatureK)).isBetween(0.2, 0.7);
        assertThat(liquid.dynamicViscosity(temperatureK)).isBetween(2e-4, 0.05);
        assertThat(liquid.prandtlNumber(temperatureK)).isBetween(2.0, 400.0);
        assertThat(liquid.kinematicViscosity(temperatureK))
                .isCloseTo(liquid.dynamicViscosity(temperatureK) / liquid.density(temperatureK), within(1e-18));
        assertThat(liquid.prandtlNumber(temperatureK))
                .isCloseTo(
                        liquid.kinematicViscosity(temperatureK) / liquid.thermalDiffusivity(temperatureK),
                        within(1e-10));
    }

    @Property(seed = "307")
    void moreEthanolFreezesLater(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.59) double massFraction,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.01) double more) {
        assertThat(EthanolWater.freezingTemperatureK(massFraction + more))
                .isLessThan(EthanolWater.freezingTemperatureK(massFraction));
    }

    @Property(seed = "308")
    void theContinuationBeginsWithoutAJump(@ForAll @Scale(6) @DoubleRange(min = 0, max = 0.6) double massFraction) {
        Liquid liquid = EthanolWater.ofMassFraction(massFraction);
        double below = 313.15 - 1e-6;
        double above = 313.15 + 1e-6;
        assertThat(liquid.density(above)).isCloseTo(liquid.density(below), within(1e-5));
        assertThat(liquid.thermalExpansion(above)).isCloseTo(liquid.thermalExpansion(below), within(1e-10));
        assertThat(liquid.specificHeatCapacity(above)).isCloseTo(liquid.specificHeatCapacity(below), within(1e-4));
        assertThat(liquid.specificEnthalpy(above)).isCloseTo(liquid.specificEnthalpy(below), within(0.02));
        assertThat(liquid.thermalConductivity(above)).isCloseTo(liquid.thermalConductivity(below), within(1e-8));
        assertThat(liquid.dynamicViscosity(above)).isCloseTo(liquid.dynamicViscosity(below), within(1e-9));
    }

    @Property(seed = "309")
    void solutionsKeepHeatAndExpansionConsistent(
            @ForAll @Scale(6) @DoubleRange(min = 253.3, max = 313) double temperatureK,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double part) {
        for (Liquid liquid : new Liquid[] {
            Brine.ofMassFraction(part * Brine.EUTECTIC_MASS_FRACTION), SucroseSolution.ofMassFraction(part * 0.65)
        }) {
            assertDerivative(liquid, temperatureK);
            double h = 0.05;
            double slope = Math.log(liquid.density(temperatureK - h) / liquid.density(temperatureK + h)) / (2 * h);
            assertThat(liquid.thermalExpansion(temperatureK)).isCloseTo(slope, within(2e-8));
        }
    }

    @Property(seed = "310")
    void moreInSolutionIsDenserMoreViscousAndFreezesLater(
            @ForAll @Scale(6) @DoubleRange(min = 273.15, max = 313) double temperatureK,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.95) double part) {
        double more = part + 0.05;
        double salt = Brine.EUTECTIC_MASS_FRACTION;
        assertDenserAndMoreViscous(Brine.ofMassFraction(part * salt), Brine.ofMassFraction(more * salt), temperatureK);
        assertDenserAndMoreViscous(
                SucroseSolution.ofMassFraction(part * 0.65), SucroseSolution.ofMassFraction(more * 0.65), temperatureK);
        assertThat(Brine.freezingTemperatureK(more * salt)).isLessThan(Brine.freezingTemperatureK(part * salt));
        assertThat(SucroseSolution.freezingTemperatureK(more / 2, part / 2))
                .isLessThan(SucroseSolution.freezingTemperatureK(part / 2, part / 2));
    }

    private static void assertDenserAndMoreViscous(Liquid less, Liquid more, double temperatureK) {
        assertThat(more.density(temperatureK)).isGreaterThan(less.density(temperatureK));
        assertThat(more.dynamicViscosity(temperatureK)).isGreaterThan(less.dynamicViscosity(temperatureK));
    }

    private static List<Liquid> liquids(double part) {
        List<Liquid> liquids = new ArrayList<>(BeverageTest.all());
        liquids.add(Water.liquid());
        liquids.add(EthanolWater.ofMassFraction(0.6 * part));
        liquids.add(SucroseSolution.ofMassFraction(0.65 * part));
        liquids.add(Brine.ofMassFraction(Brine.EUTECTIC_MASS_FRACTION * part));
        return liquids;
    }

    private static final List<ToDoubleBiFunction<Liquid, Double>> ALL = List.of(
            Liquid::density,
            Liquid::specificHeatCapacity,
            Liquid::thermalConductivity,
            Liquid::dynamicViscosity,
            Liquid::thermalExpansion);

    /** Nowhere does a property jump: over a hundredth of a millikelvin it changes by no more than its slope allows. */
    @Property(seed = "311", tries = 100)
    void nothingJumpsAnywhere(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double part,
            @ForAll @Scale(6) @DoubleRange(min = 253.15, max = 313.1) double anywhereK) {
        for (Liquid liquid : liquids(part)) {
            for (double t : new double[] {anywhereK, 273.15, 283.15, 293.15, 313.15, 323.15, 333.15}) {
                if (liquid.temperatureRange().contains(t + 1e-5)) {
                    for (ToDoubleBiFunction<Liquid, Double> property : ALL.subList(0, 4)) {
                        double below = property.applyAsDouble(liquid, t - (t > 253.2 ? 1e-5 : 0));
                        double above = property.applyAsDouble(liquid, t + 1e-5);
                        // No property of these changes faster than by 20 % per kelvin.
                        assertThat(above)
                                .as(liquid.name() + " at " + t)
                                .isCloseTo(below, within(4e-6 * Math.abs(below)));
                    }
                    // Expansion has slopes to meet as well, also where it vanishes.
                    double below = liquid.thermalExpansion(t - (t > 253.2 ? 1e-5 : 0));
                    assertThat(liquid.thermalExpansion(t + 1e-5)).isCloseTo(below, within(2e-9));
                }
            }
        }
    }

    /** Nor does it where a formula changes with the composition. */
    @Property(seed = "312", tries = 100)
    void nothingJumpsFromOneCompositionToTheNext(
            @ForAll @Scale(6) @DoubleRange(min = 253.15, max = 353.15) double temperatureK,
            @ForAll @Scale(6) @DoubleRange(min = 1e-6, max = 0.599) double anywhere) {
        double e = 1e-8;
        for (double w : new double[] {anywhere, 0.1, 0.2, 0.3, 0.39, 0.4, 0.5}) {
            for (ToDoubleBiFunction<Liquid, Double> property : ALL.subList(0, 4)) {
                assertThat(property.applyAsDouble(EthanolWater.ofMassFraction(w + e), temperatureK))
                        .isCloseTo(
                                property.applyAsDouble(EthanolWater.ofMassFraction(w - e), temperatureK),
                                withinPercentage(1e-4));
                assertThat(property.applyAsDouble(SucroseSolution.ofMassFraction(w + e), temperatureK))
                        .isCloseTo(
                                property.applyAsDouble(SucroseSolution.ofMassFraction(w - e), temperatureK),
                                withinPercentage(1e-4));
            }
            assertThat(EthanolWater.ofMassFraction(w + e).thermalExpansion(temperatureK))
                    .isCloseTo(EthanolWater.ofMassFraction(w - e).thermalExpansion(temperatureK), within(1e-9));
            assertThat(EthanolWater.freezingTemperatureK(w + e))
                    .isCloseTo(EthanolWater.freezingTemperatureK(w - e), within(1e-5));
            assertThat(SucroseSolution.freezingTemperatureK(w + e, w))
                    .isCloseTo(SucroseSolution.freezingTemperatureK(w - e, w), within(1e-5));
        }
        double salt = Math.min(anywhere, Brine.EUTECTIC_MASS_FRACTION - e);
        assertThat(Brine.freezingTemperatureK(salt + e)).isCloseTo(Brine.freezingTemperatureK(salt - e), within(1e-4));
    }

    @Property(seed = "313", tries = 200)
    void warmthThinsEveryLiquid(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double part,
            @ForAll @Scale(6) @DoubleRange(min = 253.15, max = 380) double temperatureK,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 5) double more) {
        for (Liquid liquid : liquids(part)) {
            if (liquid.temperatureRange().contains(temperatureK + more)) {
                assertThat(liquid.dynamicViscosity(temperatureK + more))
                        .as(liquid.name())
                        .isLessThan(liquid.dynamicViscosity(temperatureK));
                assertThat(liquid.specificEnthalpy(temperatureK + more))
                        .isGreaterThan(liquid.specificEnthalpy(temperatureK));
                if (temperatureK > 278) {
                    assertThat(liquid.density(temperatureK + more))
                            .as(liquid.name())
                            .isLessThan(liquid.density(temperatureK));
                }
            }
        }
    }

    @Property(seed = "314")
    void moreEthanolIsLighterAndConductsLess(
            @ForAll @Scale(6) @DoubleRange(min = 273.15, max = 353.15) double temperatureK,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.59) double massFraction) {
        Liquid less = EthanolWater.ofMassFraction(massFraction);
        Liquid more = EthanolWater.ofMassFraction(massFraction + 0.01);
        assertThat(more.density(temperatureK)).isLessThan(less.density(temperatureK));
        assertThat(more.thermalConductivity(temperatureK)).isLessThan(less.thermalConductivity(temperatureK));
    }

    /** A temperature read in °F is the temperature read in °C, whatever is asked of a drink. */
    @Property(seed = "315", tries = 100)
    void fahrenheitAndCelsiusGiveTheSameAnswer(@ForAll @Scale(6) @DoubleRange(min = -19.9, max = 79.9) double celsius) {
        double fromCelsius = SiValues.temperatureK(Measures.celsius(celsius), "temperature");
        double fromFahrenheit = SiValues.temperatureK(Measures.fahrenheit(celsius * 1.8 + 32), "temperature");
        for (Beverage drink : BeverageTest.all()) {
            for (ToDoubleBiFunction<Liquid, Double> property : ALL.subList(0, 4)) {
                assertThat(property.applyAsDouble(drink, fromFahrenheit))
                        .isCloseTo(property.applyAsDouble(drink, fromCelsius), withinPercentage(1e-9));
            }
            FreezingCurve curve = FreezingCurve.of(drink);
            double onset = curve.onset().temperatureK();
            if (Math.abs(fromCelsius - onset) > 1e-6) {
                assertThat(curve.iceFraction(fromFahrenheit)).isCloseTo(curve.iceFraction(fromCelsius), within(1e-9));
                assertThat(curve.specificEnthalpyWithIce(fromFahrenheit))
                        .isCloseTo(curve.specificEnthalpyWithIce(fromCelsius), within(1e-4));
            }
        }
    }

    /** Gas in a closed bottle: what goes in comes out, and warmth raises the pressure. */
    @Property(seed = "316")
    void pressureAndContentOfGasInvert(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 25) double strength,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 300) double sugar,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 30) double content,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 2) double headspace,
            @ForAll @Scale(6) @DoubleRange(min = 268.15, max = 312) double temperatureK) {
        CarbonDioxide wine = CarbonDioxide.inWine(Measures.percentByVolume(strength), Measures.gramsPerLitre(sugar));
        double pressure = wine.pressure(content, headspace, temperatureK);
        if (pressure <= 2e6) {
            assertThat(wine.content(pressure, headspace, temperatureK)).isCloseTo(content, within(1e-10));
        }
        assertThat(wine.pressure(content, headspace, temperatureK + 1)).isGreaterThanOrEqualTo(pressure);
    }
}
