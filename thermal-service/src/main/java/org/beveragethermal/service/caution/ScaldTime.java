/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * How long hot water must touch skin to burn it through, by its temperature.
 *
 * <p>Between the rows of a published table, {@linkplain CautionRule#SCALD second-hand}, the logarithm of the time is taken to follow straight
 * lines. Statements differ by a factor of two either way, at 49 °C by somewhat more; those of children and the old are shorter.
 */
public final class ScaldTime {

    private static final NavigableMap<Double, Double> SECONDS_BY_CELSIUS = new TreeMap<>(Map.of(
            45.0, 10_800.0, 47.0, 2700.0, 48.0, 1200.0, 49.0, 600.0, 51.0, 252.0, 55.0, 30.0, 60.0, 5.0, 65.0, 2.0,
            69.0, 1.0));

    private static final double ZERO_CELSIUS_K = 273.15;

    private ScaldTime() {}

    /**
     * The time of contact that burns through the whole skin of an adult.
     *
     * @param temperatureK temperature of the liquid [K], finite, above 0
     * @return time [s], 1 s from 69 °C on; empty below 45 °C, where three hours do not
     * @throws IllegalArgumentException if the temperature is not finite or not above 0
     */
    public static OptionalDouble deepBurnS(double temperatureK) {
        if (!(temperatureK > 0) || !Double.isFinite(temperatureK)) {
            throw new IllegalArgumentException("temperature of the liquid " + temperatureK
                    + " K: expected a finite temperature above absolute zero");
        }
        double celsius = temperatureK - ZERO_CELSIUS_K;
        Map.Entry<Double, Double> below = SECONDS_BY_CELSIUS.floorEntry(celsius);
        Map.Entry<Double, Double> above = SECONDS_BY_CELSIUS.higherEntry(celsius);
        if (below == null) {
            return OptionalDouble.empty();
        }
        if (above == null) {
            return OptionalDouble.of(below.getValue());
        }
        double part = (celsius - below.getKey()) / (above.getKey() - below.getKey());
        return OptionalDouble.of(Math.exp((1 - part) * Math.log(below.getValue()) + part * Math.log(above.getValue())));
    }
}
