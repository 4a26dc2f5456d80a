/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.time.Duration;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A room or another place where drinks stand. Between the times given its temperatures change linearly; before the
 * first and after the last they stay as there.
 *
 * @param id identifier, unique in the scenario
 * @param name name for people
 * @param temperatures temperatures in order of time, at least one; no two at one time
 */
public record Place(String id, String name, List<PlaceTemperature> temperatures) {
    /**
     * A place from its parts.
     *
     * @param id identifier, unique in the scenario
     * @param name name for people
     * @param temperatures temperatures in order of time, at least one; no two at one time
     * @throws IllegalArgumentException if there is no temperature or the times do not increase
     */
    public Place {
        temperatures = List.copyOf(temperatures);
        if (temperatures.isEmpty()) {
            throw new IllegalArgumentException("place " + id + ": expected at least one temperature");
        }
        for (int i = 1; i < temperatures.size(); i++) {
            if (temperatures
                            .get(i)
                            .afterStart()
                            .compareTo(temperatures.get(i - 1).afterStart())
                    <= 0) {
                throw new IllegalArgumentException("place " + id + ": expected times in increasing order");
            }
        }
    }

    /**
     * Air temperature at a time.
     *
     * @param afterStart time since the start of the scenario; any
     * @return the temperature [K]
     */
    public double airTemperatureK(Duration afterStart) {
        return at(afterStart, PlaceTemperature::airTemperatureK);
    }

    /**
     * Mean radiant temperature at a time.
     *
     * @param afterStart time since the start of the scenario; any
     * @return the temperature [K]
     */
    public double radiantTemperatureK(Duration afterStart) {
        return at(afterStart, PlaceTemperature::radiantTemperatureK);
    }

    private double at(Duration time, ToDoubleFunction<PlaceTemperature> which) {
        PlaceTemperature before = temperatures.get(0);
        for (PlaceTemperature next : temperatures) {
            if (next.afterStart().compareTo(time) > 0) {
                return between(before, next, time, which);
            }
            before = next;
        }
        return which.applyAsDouble(before);
    }

    private static double between(
            PlaceTemperature before, PlaceTemperature next, Duration time, ToDoubleFunction<PlaceTemperature> which) {
        double from = which.applyAsDouble(before);
        if (time.compareTo(before.afterStart()) <= 0) {
            return from;
        }
        double passed = time.minus(before.afterStart()).toMillis();
        double whole = next.afterStart().minus(before.afterStart()).toMillis();
        return from + (which.applyAsDouble(next) - from) * (passed / whole);
    }
}
