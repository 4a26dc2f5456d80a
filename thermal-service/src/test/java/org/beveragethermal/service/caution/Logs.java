/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.storage.TemperatureHistory;

/** Invented logs. */
final class Logs {

    private Logs() {}

    /** Straight lines between minutes and degrees Celsius in pairs, read every ten minutes. */
    static TemperatureHistory everyTenMinutes(double... minutesAndCelsius) {
        List<Double> times = new ArrayList<>();
        List<Double> kelvins = new ArrayList<>();
        for (int i = 0; i + 2 < minutesAndCelsius.length; i += 2) {
            double span = minutesAndCelsius[i + 2] - minutesAndCelsius[i];
            double rise = minutesAndCelsius[i + 3] - minutesAndCelsius[i + 1];
            for (double minute = 0; minute < span; minute += 10) {
                times.add(60 * (minutesAndCelsius[i] + minute));
                kelvins.add(273.15 + minutesAndCelsius[i + 1] + minute / span * rise);
            }
        }
        times.add(60 * minutesAndCelsius[minutesAndCelsius.length - 2]);
        kelvins.add(273.15 + minutesAndCelsius[minutesAndCelsius.length - 1]);
        return TemperatureHistory.of(array(times), array(kelvins));
    }

    /** Minutes and degrees Celsius in pairs, as they are. */
    static TemperatureHistory asTheyAre(double... minutesAndCelsius) {
        List<Double> times = new ArrayList<>();
        List<Double> kelvins = new ArrayList<>();
        for (int i = 0; i < minutesAndCelsius.length; i += 2) {
            times.add(60 * minutesAndCelsius[i]);
            kelvins.add(273.15 + minutesAndCelsius[i + 1]);
        }
        return TemperatureHistory.of(array(times), array(kelvins));
    }

    private static double[] array(List<Double> numbers) {
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
