/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.FreezingCurve;
import org.beveragethermal.materials.units.Measures;

/** What holds for the freezing of any drink. */
final class FreezingStoreProperties {

    private static Beverage wine(double percent, double gramsPerLitre) {
        return Beverage.wine(Measures.percentByVolume(percent), Measures.gramsPerLitre(gramsPerLitre));
    }

    private static StoreState at(FreezingStore store, double enthalpyJ) {
        StoreState out = new StoreState(0);
        store.evaluate(enthalpyJ, new double[0], 0, out);
        return out;
    }

    @Property(seed = "20260205")
    @Label("Inverse ∘ forward = identity: temperature of a freezing drink from its heat, along the freezing curve")
    void temperatureIsFoundAgainAndFollowsTheCurve(
            @ForAll @DoubleRange(min = 6, max = 18) double percent,
            @ForAll @DoubleRange(min = 0, max = 150) double sugar,
            @ForAll @DoubleRange(min = 248.15, max = 305) double temperatureK,
            @ForAll @DoubleRange(min = 0.05, max = 15) double massKg) {
        FreezingStore store = FreezingStore.ofMass(wine(percent, sugar), massKg);
        FreezingCurve curve = FreezingCurve.of(wine(percent, sugar));
        assertThat(at(store, store.enthalpyJ(temperatureK)).temperatureK).isCloseTo(temperatureK, within(2e-7));
        assertThat(at(store, massKg * curve.specificEnthalpyWithIce(temperatureK)).temperatureK)
                .isCloseTo(temperatureK, within(FreezingStore.ACCURACY_K));
        assertThat(store.iceFraction(temperatureK)).isCloseTo(curve.iceFraction(temperatureK), within(1e-4));
    }

    @Property(seed = "20260206")
    @Label("Freezing drinks: less heat is never warmer and never less ice")
    void lessHeatIsNeverWarmerAndNeverLessIce(
            @ForAll @DoubleRange(min = 6, max = 18) double percent,
            @ForAll @DoubleRange(min = 0, max = 150) double sugar,
            @ForAll @DoubleRange(min = -400_000, max = 60_000) double first,
            @ForAll @DoubleRange(min = -400_000, max = 60_000) double second) {
        FreezingStore store = FreezingStore.ofMass(wine(percent, sugar), 1);
        double cold = Math.min(first, second);
        double warm = Math.max(first, second);
        assertThat(at(store, cold).temperatureK).isLessThanOrEqualTo(at(store, warm).temperatureK);
        assertThat(store.iceFractionAtEnthalpy(cold)).isGreaterThanOrEqualTo(store.iceFractionAtEnthalpy(warm));
        assertThat(store.iceFractionAtEnthalpy(cold)).isBetween(0.0, 1.0);
    }

    @Property(seed = "20260207")
    @Label("Freezing drinks: twice the drink holds twice the heat")
    void twiceTheDrinkHoldsTwiceTheHeat(
            @ForAll @DoubleRange(min = 6, max = 18) double percent,
            @ForAll @DoubleRange(min = 240, max = 305) double temperatureK) {
        double one = FreezingStore.ofMass(wine(percent, 0), 1).enthalpyJ(temperatureK);
        double two = FreezingStore.ofMass(wine(percent, 0), 2).enthalpyJ(temperatureK);
        assertThat(two).isCloseTo(2 * one, within(1e-9 * Math.abs(one)));
    }
}
