/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.fahrenheit;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.util.Locale;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers and texts must not depend on where the program runs. */
class LocaleIndependenceTest {

    private static String everything() {
        FilledVessel bottle = Vessels.sparkling750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(8.5));
        return String.join(
                "|",
                bottle.toString(),
                bottle.liquid().name(),
                Double.toString(bottle.liquidHeightM()),
                Double.toString(bottle.liquid().dynamicViscosity(281.65)),
                Double.toString(Ice.specificEnthalpy(263.15)),
                Double.toString(SiValues.temperatureK(fahrenheit(50.5), "t")),
                Double.toString(SiValues.volumeM3(millilitres(187.5), "v")),
                SiValues.celsiusOf(281.65).toString(),
                Uncertainty.normalRelative(0.125).toString(),
                refusal());
    }

    private static String refusal() {
        try {
            SiValues.lengthM(metres(1234.5), "wall thickness", 0.0001, 0.02);
            return "";
        } catch (IllegalArgumentException e) {
            return String.valueOf(e.getMessage());
        }
    }

    @Test
    void theReferenceReadsAsExpected() {
        assertThat(everything())
                .contains("wall thickness 1234.5 m: expected 0.0001 m to 0.02 m")
                .contains("8.5 ℃");
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG"})
    void nothingDependsOnTheDefaultLocale(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.ROOT);
            String reference = everything();
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(everything()).isEqualTo(reference);
        } finally {
            Locale.setDefault(before);
        }
    }
}
