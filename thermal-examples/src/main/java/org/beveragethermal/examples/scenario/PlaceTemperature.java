/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.time.Duration;

/**
 * How warm a place is at one time.
 *
 * @param afterStart time since the start of the scenario, not negative
 * @param airTemperatureK air temperature [K]; within -30 °C to 50 °C
 * @param radiantTemperatureK mean radiant temperature of what surrounds the drink [K]; within -30 °C to 80 °C
 */
public record PlaceTemperature(Duration afterStart, double airTemperatureK, double radiantTemperatureK) {
    /**
     * A temperature from its parts.
     *
     * @param afterStart time since the start of the scenario, not negative
     * @param airTemperatureK air temperature [K]; within -30 °C to 50 °C
     * @param radiantTemperatureK mean radiant temperature of what surrounds the drink [K]; within -30 °C to 80 °C
     * @throws IllegalArgumentException if the time is negative or a temperature lies outside its range
     */
    public PlaceTemperature {
        if (afterStart.isNegative()) {
            throw new IllegalArgumentException("time after the start " + afterStart + ": expected none before it");
        }
        Limit.AIR.requireSi(airTemperatureK);
        Limit.RADIANT.requireSi(radiantTemperatureK);
    }
}
