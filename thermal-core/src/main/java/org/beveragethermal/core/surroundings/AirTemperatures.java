/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.time.Duration;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.TemperatureDifference;

/**
 * Temperatures of air as functions of time, checked where users hand them in.
 *
 * @param parameter what messages call the temperature
 * @param lowK lowest temperature allowed [K]
 * @param highK highest temperature allowed [K]
 */
record AirTemperatures(String parameter, double lowK, double highK) {

    private static final double LONGEST_PERIOD_S = 10 * 366 * 86_400.0;

    /** One temperature [K]. */
    double temperatureK(Quantity<Temperature> temperature) {
        return SiValues.temperatureK(temperature, parameter, lowK, highK);
    }

    /** One temperature that never changes. */
    TimeFunction constant(Quantity<Temperature> temperature) {
        return TimeFunction.constant(temperatureK(temperature));
    }

    /** Straight lines between given points. */
    TimeFunction line(Map<Duration, Quantity<Temperature>> temperatures) {
        SortedMap<Double, Double> points = new TreeMap<>();
        temperatures.forEach((time, temperature) -> {
            if (points.put(seconds(time), temperatureK(temperature)) != null) {
                throw new IllegalArgumentException(parameter + " after " + time
                        + ": there is another less than a millisecond away; expected one temperature for each time");
            }
        });
        return TimeFunction.linear(
                points.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                points.values().stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** A cosine about a mean, whose ends are within the range too. */
    TimeFunction periodic(
            Quantity<Temperature> mean,
            Quantity<TemperatureDifference> amplitude,
            Duration period,
            Duration warmestAt) {
        double meanK = temperatureK(mean);
        double widest = Math.min(meanK - lowK, highK - meanK);
        double amplitudeK = SiValues.temperatureDifferenceK(amplitude, "amplitude of the " + parameter, 0, widest);
        double periodS = new ValidityRange("period of the " + parameter, 1, LONGEST_PERIOD_S, "s")
                .require(seconds(period), "periodic air");
        return new Periodic(meanK, amplitudeK, periodS, seconds(warmestAt));
    }

    static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }
}
