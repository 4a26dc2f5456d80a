/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.beveragethermal.service.tracking.Estimate;
import org.beveragethermal.service.tracking.TrackedVessel;

/**
 * Says of a bottle once that it is too warm, or so cold that it may freeze, and again only after it was not.
 *
 * <p>Warmth can wait until the tracker believes in it. Cold cannot: the tracker foresees ice from the medium that it knows of, and takes
 * the first readings of a bottle that was put elsewhere for errors. So two readings in a row are enough, whatever else is believed.
 */
final class LimitWatch {

    private static final int IN_A_ROW = 2;
    /** What is below it is no reading of a bottle. */
    private static final double COLDEST_READING_K = 213;

    private final double coldestK;
    private final double warmestK;
    private final Set<String> warm = new HashSet<>();
    private final Map<String, Integer> coldInARow = new HashMap<>();

    LimitWatch(double coldestK, double warmestK) {
        this.coldestK = coldestK;
        this.warmestK = warmestK;
    }

    /** Too warm is whose interval of 90 % lies above the limit; no longer so, whose middle is below it. */
    Optional<CellarAlert> warm(TrackedVessel vessel) {
        Estimate now = vessel.estimate();
        if (now.temperatureK() < warmestK) {
            warm.remove(vessel.id());
        }
        if (!(now.lowK() > warmestK) || !warm.add(vessel.id())) {
            return Optional.empty();
        }
        String text = String.format(
                Locale.ROOT,
                "%s is too warm: %.1f °C (90 %% interval %.1f to %.1f), allowed are at most %.1f °C.",
                vessel.id(),
                celsius(now.temperatureK()),
                celsius(now.lowK()),
                celsius(now.highK()),
                celsius(warmestK));
        return Optional.of(new CellarAlert(vessel.id(), now.at(), CellarAlert.Kind.TOO_WARM, text));
    }

    /** Too cold is who reads below the limit twice in a row; what is no reading changes nothing. */
    Optional<CellarAlert> cold(CellarRow.Good reading) {
        if (reading.kelvins() >= coldestK) {
            coldInARow.remove(reading.bottle());
        }
        if (!(reading.kelvins() < coldestK && reading.kelvins() > COLDEST_READING_K)
                || coldInARow.merge(reading.bottle(), 1, Integer::sum) != IN_A_ROW) {
            return Optional.empty();
        }
        String text = String.format(
                Locale.ROOT,
                "%s may freeze: its last two readings are below %.1f °C, this one is %.1f °C.",
                reading.bottle(),
                celsius(coldestK),
                celsius(reading.kelvins()));
        return Optional.of(new CellarAlert(reading.bottle(), reading.at(), CellarAlert.Kind.FREEZING_RISK, text));
    }

    private static double celsius(double kelvins) {
        return kelvins - EventFields.ZERO_CELSIUS_K;
    }
}
