/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class TemperatureProperties {

    @Property(seed = "101")
    void celsiusAndFahrenheitAgree(@ForAll @Scale(6) @DoubleRange(min = -200, max = 500) double celsius) {
        double fahrenheit = celsius * 1.8 + 32;
        assertThat(SiValues.temperatureK(Measures.fahrenheit(fahrenheit), "x"))
                .isCloseTo(SiValues.temperatureK(Measures.celsius(celsius), "x"), within(1e-9));
    }

    @Property(seed = "102")
    void celsiusOutputInvertsInput(@ForAll @Scale(6) @DoubleRange(min = 1, max = 1000) double kelvins) {
        assertThat(SiValues.temperatureK(SiValues.celsiusOf(kelvins), "x")).isCloseTo(kelvins, within(1e-9));
    }

    @Property(seed = "103")
    void differencesDoNotDependOnTheUnit(@ForAll @Scale(6) @DoubleRange(min = -100, max = 100) double kelvins) {
        assertThat(SiValues.temperatureDifferenceK(Measures.fahrenheitDifference(kelvins * 1.8), "x"))
                .isCloseTo(SiValues.temperatureDifferenceK(Measures.kelvinDifference(kelvins), "x"), within(1e-9));
    }
}
