/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.OutOfRangeException;

/** What must hold for every drink, liquid or partly frozen. */
class FreezingProperties {
    private static final double ZERO = 273.15;
    private static final int LAST_KIND = 19;

    private static Beverage drink(int kind) {
        return BeverageTest.all().get(kind);
    }

    @Property(seed = "321")
    void colderMeansMoreIceAndLessHeat(
            @ForAll @IntRange(max = LAST_KIND) int kind,
            @ForAll @Scale(6) @DoubleRange(min = 248.15, max = 280) double temperatureK,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 3) double more) {
        FreezingCurve curve = FreezingCurve.of(drink(kind));
        double warmer = temperatureK + more;
        double ice = curve.iceFraction(temperatureK);
        assertThat(ice).isBetween(0.0, drink(kind).composition().water());
        if (temperatureK < curve.onset().temperatureK() && curve.iceFraction(warmer) < 1) {
            assertThat(ice).isGreaterThan(curve.iceFraction(warmer));
        }
        assertThat(curve.specificEnthalpyWithIce(temperatureK)).isLessThan(curve.specificEnthalpyWithIce(warmer));
        assertThat(curve.remainingStrength(temperatureK)).isGreaterThanOrEqualTo(curve.remainingStrength(warmer));
    }

    @Property(seed = "322")
    void apparentHeatCapacityIsTheDerivativeOfTheEnthalpy(
            @ForAll @IntRange(max = LAST_KIND) int kind,
            @ForAll @Scale(6) @DoubleRange(min = 248.2, max = 300) double temperatureK) {
        FreezingCurve curve = FreezingCurve.of(drink(kind));
        double h = 2e-4;
        double onset = curve.onset().temperatureK();
        if (Math.abs(temperatureK - onset) > 0.05 && Math.abs(temperatureK - 253.15) > 1e-3) {
            double slope =
                    (curve.specificEnthalpyWithIce(temperatureK + h) - curve.specificEnthalpyWithIce(temperatureK - h))
                            / (2 * h);
            // Rounding of the enthalpy leaves 1e-6 of it; the curvature near the onset is the steepest.
            assertThat(curve.apparentHeatCapacity(temperatureK)).isCloseTo(slope, within(2e-4 * slope));
        }
    }

    /** Ice and the liquid between it, made as a drink of its own, must freeze at the temperature they are at. */
    @Property(seed = "323")
    void theRemainingLiquidBeginsToFreezeThere(
            @ForAll @Scale(6) @DoubleRange(min = 4, max = 25) double strength,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 10) double below) {
        Beverage wine = Beverage.spirit(percentByVolume(strength));
        FreezingCurve curve = FreezingCurve.of(wine);
        double t = curve.onset().temperatureK() - below;
        double remaining = EthanolWater.massFractionFromStrength(curve.remainingStrength(t));
        // The curve is Melinder's, shifted to begin at the onset; the onset is the warmer of his and Lange's.
        assertThat(EthanolWater.freezingTemperatureK(remaining)).isCloseTo(t, within(1.2));
        // Mass balance: no ethanol is lost.
        double ice = curve.iceFraction(t);
        assertThat(remaining * (1 - ice)).isCloseTo(wine.composition().ethanol(), within(1e-12));
    }

    /** The same for sugar: water and sugar left over, as a solution of their own, begin to freeze at that temperature. */
    @Property(seed = "329")
    void theRemainingSyrupBeginsToFreezeThere(
            @ForAll @Scale(6) @DoubleRange(min = 5, max = 200) double sugar,
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 40) double solids,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 12) double below) {
        for (Beverage drink :
                new Beverage[] {Beverage.softDrink(gramsPerLitre(sugar)), Beverage.juice(percent(solids))}) {
            FreezingCurve curve = FreezingCurve.of(drink);
            double t = curve.onset().temperatureK() - below;
            if (t > 258) {
                double water = drink.composition().water() - curve.iceFraction(t);
                assertThat(SucroseSolution.freezingTemperatureK(
                                drink.composition().sucrose() / water,
                                drink.composition().invertSugar() / water))
                        .isCloseTo(t, within(1e-9));
            }
        }
    }

    /** Volumes add up: ice, and what is left, each at its own density. */
    @Property(seed = "330")
    void volumesOfIceAndRemainingLiquidAddUp(
            @ForAll @Scale(6) @DoubleRange(min = 3, max = 25) double strength,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 8) double below) {
        FreezingCurve curve = FreezingCurve.of(Beverage.spirit(percentByVolume(strength)));
        double t = curve.onset().temperatureK() - below;
        double ice = curve.iceFraction(t);
        Liquid left = EthanolWater.ofMassFraction(EthanolWater.massFractionFromStrength(curve.remainingStrength(t)));
        if (t > 253.15) {
            double volume = ice / Ice.density(t) + (1 - ice) / left.density(t);
            assertThat(curve.specificVolume(t)).isCloseTo(volume, within(1e-12));
        }
    }

    /** Without freezing, ice and liquid hold less heat than with it. */
    @Property(seed = "331")
    void freezingOnlyAddsToTheHeatCapacity(
            @ForAll @IntRange(max = LAST_KIND) int kind,
            @ForAll @Scale(6) @DoubleRange(min = 248.15, max = 280) double temperatureK) {
        FreezingCurve curve = FreezingCurve.of(drink(kind));
        assertThat(curve.sensibleHeatCapacity(temperatureK))
                .isPositive()
                .isLessThanOrEqualTo(curve.apparentHeatCapacity(temperatureK));
    }

    @Property(seed = "324")
    void nothingJumpsAtTheOnset(@ForAll @IntRange(min = 1, max = LAST_KIND) int kind) {
        Beverage drink = drink(kind);
        FreezingCurve curve = FreezingCurve.of(drink);
        double onset = curve.onset().temperatureK();
        if (drink.composition().water() < 1 && onset > 248.2) {
            double e = 1e-7;
            assertThat(curve.iceFraction(onset)).isZero();
            assertThat(curve.iceFraction(onset - e)).isBetween(0.0, 1e-5);
            assertThat(curve.specificEnthalpyWithIce(onset - e))
                    .isCloseTo(curve.specificEnthalpyWithIce(onset + e), within(1.0));
            assertThat(curve.specificVolume(onset - e)).isCloseTo(curve.specificVolume(onset + e), within(1e-9));
            assertThat(curve.apparentHeatCapacity(onset - e)).isGreaterThan(curve.apparentHeatCapacity(onset));
        }
    }

    @Property(seed = "325")
    void aboveTheOnsetItIsTheLiquid(
            @ForAll @IntRange(max = LAST_KIND) int kind,
            @ForAll @Scale(6) @DoubleRange(min = 273.16, max = 353) double temperatureK) {
        Beverage drink = drink(kind);
        FreezingCurve curve = FreezingCurve.of(drink);
        assertThat(curve.iceFraction(temperatureK)).isZero();
        assertThat(curve.specificEnthalpyWithIce(temperatureK)).isEqualTo(drink.specificEnthalpy(temperatureK));
        assertThat(curve.apparentHeatCapacity(temperatureK)).isEqualTo(drink.specificHeatCapacity(temperatureK));
        assertThat(curve.specificVolume(temperatureK)).isEqualTo(1 / drink.density(temperatureK));
    }

    @Property(seed = "326")
    void heatExpansionAndDensityAreConsistentForEveryDrink(
            @ForAll @IntRange(max = LAST_KIND) int kind,
            @ForAll @Scale(6) @DoubleRange(min = 253.3, max = 353) double temperatureK) {
        Beverage drink = drink(kind);
        double h = 0.05;
        double cp = (drink.specificEnthalpy(temperatureK + h) - drink.specificEnthalpy(temperatureK - h)) / (2 * h);
        // The corner of the continuation at 40 °C leaves this much.
        assertThat(drink.specificHeatCapacity(temperatureK)).isCloseTo(cp, within(0.2));
        double slope = Math.log(drink.density(temperatureK - h) / drink.density(temperatureK + h)) / (2 * h);
        assertThat(drink.thermalExpansion(temperatureK)).isCloseTo(slope, within(2e-7));
        assertThat(drink.specificEnthalpy(ZERO)).isCloseTo(0, within(1e-8));
    }

    @Property(seed = "327")
    void moreSugarIsDenserHoldsLessHeatAndFreezesLater(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double strength,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 280) double sugar,
            @ForAll @Scale(6) @DoubleRange(min = 273.15, max = 350) double temperatureK) {
        Beverage less = Beverage.sweetWine(percentByVolume(strength), gramsPerLitre(sugar));
        Beverage more = Beverage.sweetWine(percentByVolume(strength), gramsPerLitre(sugar + 20));
        assertThat(more.density(temperatureK)).isGreaterThan(less.density(temperatureK));
        assertThat(more.specificHeatCapacity(temperatureK)).isLessThan(less.specificHeatCapacity(temperatureK));
        assertThat(more.thermalConductivity(temperatureK)).isLessThan(less.thermalConductivity(temperatureK));
        assertThat(more.dynamicViscosity(temperatureK)).isGreaterThan(less.dynamicViscosity(temperatureK));
        assertThat(more.freezingOnsetK()).isLessThan(less.freezingOnsetK());
        assertThat(less.strengthByVolume()).isCloseTo(strength / 100, within(1e-12));
        assertThat(Beverage.of(less.kind(), less.composition()).strengthByVolume())
                .isCloseTo(strength / 100, within(1e-10));
    }

    /** The steps where two formulas meet: continuation at 40 °C, straight on below -20 °C. */
    @Example
    void nothingJumpsWhereFormulasMeet() {
        for (Beverage drink : BeverageTest.all()) {
            FreezingCurve curve = FreezingCurve.of(drink);
            double e = 1e-7;
            double at40 = ZERO + 40;
            assertThat(drink.density(at40 + e)).isCloseTo(drink.density(at40 - e), within(1e-6));
            assertThat(drink.thermalConductivity(at40 + e))
                    .isCloseTo(drink.thermalConductivity(at40 - e), within(1e-9));
            double at = 253.15;
            assertThat(curve.specificEnthalpyWithIce(at + e))
                    .isCloseTo(curve.specificEnthalpyWithIce(at - e), within(0.05));
            assertThat(curve.specificVolume(at + e)).isCloseTo(curve.specificVolume(at - e), within(1e-11));
        }
    }

    @Example
    void waterFreezesAtOneTemperature() {
        FreezingCurve water = FreezingCurve.of(Beverage.tea());
        assertThat(water.iceFraction(ZERO)).isZero();
        assertThat(water.iceFraction(ZERO - 1e-9)).isEqualTo(1);
        for (double t = 253.15; t < ZERO; t += 1) {
            assertThat(water.specificEnthalpyWithIce(t)).isCloseTo(Ice.specificEnthalpy(t), within(1e-6));
            assertThat(water.apparentHeatCapacity(t)).isCloseTo(Ice.specificHeatCapacity(t), within(1e-9));
            assertThat(water.specificVolume(t)).isCloseTo(1 / Ice.density(t), within(1e-15));
        }
    }

    @Example
    void refusesTemperaturesOutsideItsRange() {
        FreezingCurve curve = FreezingCurve.of(Beverage.beer(percentByVolume(5)));
        assertThatThrownBy(() -> curve.iceFraction(240))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("248.15");
        assertThatThrownBy(() -> curve.specificEnthalpyWithIce(400)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> curve.expansion(293, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThat(curve).isEqualTo(FreezingCurve.of(Beverage.beer(percentByVolume(5))));
        assertThat(curve).hasSameHashCodeAs(FreezingCurve.of(Beverage.beer(percentByVolume(5))));
        assertThat(curve.properties()).hasSize(4);
        assertThat(curve).hasToString("freezing of beer, 5 % vol");
    }

    @Property(seed = "328")
    void theMonotoneCubicKeepsToItsTable(@ForAll @Scale(6) @DoubleRange(min = -1, max = 5) double at) {
        double[] x = {0, 1, 2, 4};
        double[] y = {0, 1, 1.5, 5};
        MonotoneCubic curve = MonotoneCubic.through(x, y);
        for (int i = 0; i < x.length; i++) {
            assertThat(curve.value(x[i])).isCloseTo(y[i], within(1e-12));
        }
        double h = 1e-6;
        double slope = (curve.value(at + h) - curve.value(at - h)) / (2 * h);
        assertThat(slope).isPositive();
        assertThat(curve.derivative(at)).isCloseTo(slope, within(1e-4));
    }
}
