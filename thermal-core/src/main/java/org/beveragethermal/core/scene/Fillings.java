/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.beveragethermal.core.prediction.FilledInterval;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * What a vessel that is poured into or from holds from when on.
 *
 * @param byTime the vessel with what is in it by time, the first at 0; empty while nothing is in it
 * @param first what describes the vessel: its contents at the start, or those that come into it first
 * @param fullAtStart whether it holds these at the start
 * @param wallK temperature of the wall at the start [K]
 */
record Fillings(
        TreeMap<Duration, Optional<FilledVessel>> byTime, FilledVessel first, boolean fullAtStart, double wallK) {

    Fillings {
        byTime = new TreeMap<>(byTime);
    }

    Optional<FilledVessel> at(Duration time) {
        return Objects.requireNonNull(byTime.floorEntry(time)).getValue();
    }

    double massAtStartKg() {
        return fullAtStart ? first.liquidMassKg() : 0;
    }

    /** When there is something in it in a run that ends at a time [s]; what is poured at its very end or later does not count. */
    List<FilledInterval> held(double endS) {
        List<FilledInterval> times = new ArrayList<>();
        double from = Double.NaN;
        for (Map.Entry<Duration, Optional<FilledVessel>> entry : byTime.entrySet()) {
            double time = entry.getKey().toMillis() / 1000.0;
            boolean filled = entry.getValue().isPresent();
            if (filled && Double.isNaN(from)) {
                from = time;
            } else if (!filled && !Double.isNaN(from)) {
                times.add(new FilledInterval(from, time));
                from = Double.NaN;
            }
        }
        if (!Double.isNaN(from)) {
            times.add(new FilledInterval(from, Double.POSITIVE_INFINITY));
        }
        return times.stream().filter(held -> held.fromS() < endS).toList();
    }

    /** The highest level that occurs [m]. */
    double highestM() {
        return byTime.values().stream()
                .flatMap(Optional::stream)
                .mapToDouble(FilledVessel::liquidHeightM)
                .max()
                .orElse(0);
    }
}
