/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Ice that is left just before gear is tended, as an earlier run of the scene found it. Where ice stands on the floor it decides how
 * high the water stands afterwards, and with it how walls are divided, so it must be known before a run.
 *
 * @param kilograms mass [kg] by gear and time
 */
record IceLeft(Map<String, Map<Duration, Double>> kilograms) {

    /** Nothing is known. */
    static final IceLeft UNKNOWN = new IceLeft(Map.of());

    /** What is known of times before a time. */
    IceLeft before(Duration time) {
        Map<String, Map<Duration, Double>> earlier = new LinkedHashMap<>();
        kilograms.forEach((id, timed) -> timed.forEach((when, kg) -> {
            if (when.compareTo(time) < 0) {
                earlier.computeIfAbsent(id, gearId -> new LinkedHashMap<>()).put(when, kg);
            }
        }));
        return new IceLeft(earlier);
    }

    /** The same with one more mass. */
    IceLeft with(String gearId, Duration time, double kg) {
        Map<String, Map<Duration, Double>> all = new LinkedHashMap<>(kilograms);
        Map<Duration, Double> timed = new LinkedHashMap<>(all.getOrDefault(gearId, Map.of()));
        timed.put(time, kg);
        all.put(gearId, timed);
        return new IceLeft(all);
    }

    OptionalDouble at(String gearId, Duration time) {
        Double left = kilograms.getOrDefault(gearId, Map.of()).get(time);
        return left == null ? OptionalDouble.empty() : OptionalDouble.of(left);
    }
}
