/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

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
}
