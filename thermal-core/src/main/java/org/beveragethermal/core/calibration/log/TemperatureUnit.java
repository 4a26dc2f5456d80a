/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

/** What the numbers of a log stand for. */
public enum TemperatureUnit {
    /** Degrees Celsius. */
    CELSIUS("°C"),
    /** Degrees Fahrenheit. */
    FAHRENHEIT("°F"),
    /** Kelvin. */
    KELVIN("K");

    private static final double ICE_POINT_K = 273.15;
    private static final double ICE_POINT_F = 32;

    private final String symbol;

    TemperatureUnit(String symbol) {
        this.symbol = symbol;
    }

    /**
     * Its symbol.
     *
     * @return the symbol, such as {@code °C}
     */
    public String symbol() {
        return symbol;
    }

    /**
     * A reading in kelvin. Not checked against absolute zero.
     *
     * @param value reading in this unit
     * @return the same temperature [K]
     */
    public double toKelvin(double value) {
        return switch (this) {
            case CELSIUS -> value + ICE_POINT_K;
            case FAHRENHEIT -> (value - ICE_POINT_F) * 5 / 9 + ICE_POINT_K;
            case KELVIN -> value;
        };
    }

    /**
     * A temperature in this unit.
     *
     * @param temperatureK temperature [K]
     * @return the same temperature in this unit
     */
    public double fromKelvin(double temperatureK) {
        return switch (this) {
            case CELSIUS -> temperatureK - ICE_POINT_K;
            case FAHRENHEIT -> (temperatureK - ICE_POINT_K) * 9 / 5 + ICE_POINT_F;
            case KELVIN -> temperatureK;
        };
    }

    /** A difference of readings in kelvin. */
    double differenceK(double difference) {
        return this == FAHRENHEIT ? difference * 5 / 9 : difference;
    }
}
