/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.core.hazard.HeadspacePressure.Gas;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;

/** What must hold of any closed vessel. */
final class HazardProperties {

    private static final double ZERO = 273.15;

    private static ClosedVessel bottle(double strength, double gas, double headspaceMl) {
        Beverage drink = Beverage.sparklingWine(percentByVolume(strength), gramsPerLitre(5), gramsPerLitre(gas));
        return ClosedVessel.of(Vessels.sparkling750().filledWith(drink, celsius(15)))
                .withHeadspace(millilitres(headspaceMl));
    }

    @Property(seed = "20261126")
    @Label("Pressure under a closure rises with temperature, with gas in the drink or without, where the drink expands")
    void pressureRisesWithTemperature(
            @ForAll @DoubleRange(min = 8, max = 15) double strength,
            @ForAll @DoubleRange(min = 0, max = 12) double gas,
            @ForAll @DoubleRange(min = 8, max = 40) double headspaceMl,
            @ForAll @DoubleRange(min = 4, max = 34) double celsius,
            @ForAll @DoubleRange(min = 0.01, max = 5) double kelvins) {
        ClosedVessel bottle = bottle(strength, gas, headspaceMl);
        if (bottle.pressureAtK(ZERO + celsius) instanceof Gas colder
                && bottle.pressureAtK(ZERO + celsius + kelvins) instanceof Gas warmer) {
            assertThat(warmer.absolutePa()).isGreaterThan(colder.absolutePa());
            assertThat(warmer.headspaceM3()).isLessThan(colder.headspaceM3());
        } else {
            assertThat(bottle.fullAtK().orElseThrow()).isLessThanOrEqualTo(ZERO + celsius + kelvins);
        }
    }

    @Property(seed = "20261127")
    @Label("Pressure rises with the gas that is in the drink and falls with the room for it")
    void pressureRisesWithGasAndFallsWithRoom(
            @ForAll @DoubleRange(min = 4, max = 11) double gas,
            @ForAll @DoubleRange(min = 8, max = 30) double headspaceMl,
            @ForAll @DoubleRange(min = 0, max = 25) double celsius) {
        Gas here = (Gas) bottle(12, gas, headspaceMl).pressureAtK(ZERO + celsius);
        Gas more = (Gas) bottle(12, gas + 0.5, headspaceMl).pressureAtK(ZERO + celsius);
        Gas roomier = (Gas) bottle(12, gas, headspaceMl + 5).pressureAtK(ZERO + celsius);
        assertThat(more.carbonDioxidePa()).isGreaterThan(here.carbonDioxidePa());
        assertThat(roomier.carbonDioxidePa()).isLessThan(here.carbonDioxidePa());
    }

    @Property(seed = "20261128", tries = 20)
    @Label("Unit and locale change no figure and no sentence")
    void unitsAndLocaleChangeNothing(@ForAll @DoubleRange(min = 0, max = 30) double celsius) {
        ClosedVessel bottle = bottle(12, 8, 20);
        Locale before = Locale.getDefault();
        HeadspacePressure plain = bottle.pressureAt(celsius(celsius));
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            HeadspacePressure inKelvins = bottle.pressureAt(kelvins(celsius + ZERO));
            assertThat(((Gas) inKelvins).absolutePa() / ((Gas) plain).absolutePa())
                    .isBetween(1 - 1e-12, 1 + 1e-12);
            assertThat(inKelvins.explain()).isEqualTo(plain.explain());
        } finally {
            Locale.setDefault(before);
        }
    }
}
