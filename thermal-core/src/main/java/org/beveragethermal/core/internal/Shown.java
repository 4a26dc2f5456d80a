/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

/** Numbers as sentences show them. */
public final class Shown {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double HALF = 0.5;

    private Shown() {}

    /**
     * A number that does not show as minus zero.
     *
     * @param value the number
     * @param decimals how many decimals are shown
     * @return zero where that many decimals show nothing else, otherwise the number as it is
     */
    public static double number(double value, int decimals) {
        return Math.abs(value) < HALF * Math.pow(10, -decimals) ? 0.0 : value;
    }

    /**
     * A temperature in °C that does not show as minus zero.
     *
     * @param temperatureK temperature [K]
     * @param decimals how many decimals are shown
     * @return temperature [°C]
     */
    public static double celsius(double temperatureK, int decimals) {
        return number(temperatureK - ZERO_CELSIUS_K, decimals);
    }
}
