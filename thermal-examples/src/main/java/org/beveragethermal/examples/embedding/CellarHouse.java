/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.tracking.Sensor;
import org.beveragethermal.service.tracking.TrackedModel;
import org.beveragethermal.service.tracking.Tracker;
import org.beveragethermal.service.tracking.TrackingEvent;
import org.beveragethermal.service.tracking.TrackingRules;

/**
 * What is known of a cellar beforehand.
 *
 * @param tracker its one kind of bottle, its one medium, and when something is said
 * @param usualK its temperature [K], in which every bottle is taken to be at first
 * @param coldestK coldest that a bottle may be, above its freezing point by a margin [K]
 * @param warmestK warmest that a bottle may be [K]
 */
record CellarHouse(Tracker tracker, double usualK, double coldestK, double warmestK) {

    private static final String BOTTLE = "bottle";
    private static final String CELLAR = "cellar";
    private static final double USUAL_C = 12;
    private static final double COLDEST_C = 2;
    private static final double WARMEST_C = 16;
    private static final double FIRST_SD_K = 1.5;
    private static final double AIR_SD_K = 0.7;
    private static final double FILM_LOG_SD = 0.4;
    private static final double READING_SD_K = 0.15;
    private static final double READING_STEP_K = 0.1;
    private static final double BIAS_SD_K = 0.15;

    /**
     * An invented cellar at 12 °C, of bottles of 750 mL that shall be at 2 to 16 °C; loggers read every hour or more often.
     * Silent is who has not read for three hours. The sums of small deviations have twice the usual limit: of a thousand bottles one is
     * always unlucky.
     */
    static CellarHouse invented() {
        TrackedModel model = TrackedModel.from(
                        BOTTLE,
                        Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(USUAL_C)))
                .medium(CELLAR, Air.at(celsius(USUAL_C)), AIR_SD_K, FILM_LOG_SD)
                .sensor(Sensor.inDrink(READING_SD_K, READING_STEP_K).withBias(BIAS_SD_K))
                .build();
        TrackingRules usual = TrackingRules.usual();
        TrackingRules rules = new TrackingRules(
                usual.gateSd(),
                usual.straysForChange(),
                usual.driftSd(),
                2 * usual.alarmSd(),
                usual.kept(),
                usual.lead(),
                Duration.ofHours(3),
                usual.backK(),
                Duration.ofHours(3),
                usual.refusedForFaulty(),
                usual.mostAhead());
        return new CellarHouse(
                Tracker.of(List.of(model), rules),
                EventFields.ZERO_CELSIUS_K + USUAL_C,
                EventFields.ZERO_CELSIUS_K + COLDEST_C,
                EventFields.ZERO_CELSIUS_K + WARMEST_C);
    }

    TrackingEvent placed(String bottle, Instant at) {
        return new TrackingEvent.Placed("first of " + bottle, at, bottle, BOTTLE, CELLAR, usualK, FIRST_SD_K);
    }
}
