/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.time.Instant;
import org.beveragethermal.service.tracking.Alert;

/**
 * What a cellar's logger says; once, and again only after it had passed.
 *
 * @param bottle of which bottle
 * @param at when it was seen
 * @param kind what
 * @param text the same as a sentence
 */
record CellarAlert(String bottle, Instant at, Kind kind, String text) {

    /** What may be said. */
    enum Kind {
        /** It is warmer than allowed, on the cold side of what is believed. */
        TOO_WARM,
        /** It is so cold that ice may form, or has ice already. */
        FREEZING_RISK,
        /** It gets warmer or colder than its cellar explains: taken out, a door left open, or a sensor that wanders. */
        DRIFT,
        /** No reading has come for long. */
        SENSOR_SILENT,
        /** Several readings in a row were none. */
        SENSOR_FAULTY,
        /** What else the tracker says. */
        OTHER
    }

    static Kind kind(Alert.Code code) {
        return switch (code) {
            case FREEZING_AHEAD, FREEZING -> Kind.FREEZING_RISK;
            case UNEXPECTEDLY_WARM, UNEXPECTEDLY_COLD -> Kind.DRIFT;
            case SENSOR_SILENT -> Kind.SENSOR_SILENT;
            case SENSOR_FAULTY -> Kind.SENSOR_FAULTY;
            case SOON_AT_TARGET, AT_TARGET, LEAVING_RANGE, OUT_OF_RANGE, WILL_NOT_REACH, NOT_IN_TIME, VERY_HOT ->
                Kind.OTHER;
        };
    }
}
