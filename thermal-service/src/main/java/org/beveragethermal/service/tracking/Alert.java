/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Instant;

/**
 * Something that someone should know. It is said once, and again only after it had passed.
 *
 * @param vesselId which vessel
 * @param at when it was seen
 * @param code what
 * @param facts its figures
 */
public record Alert(String vesselId, Instant at, Code code, Facts facts) {

    /** How much it matters; the words are those of the open standards for safety signs. */
    public enum Level {
        /** Good to know. */
        NOTICE,
        /** The drink or the equipment may suffer. */
        CAUTION,
        /** Someone may be hurt. */
        WARNING
    }

    /** What may be said. */
    public enum Code {
        /** It will be in the wanted range soon. */
        SOON_AT_TARGET(Level.NOTICE),
        /** It is in the wanted range. */
        AT_TARGET(Level.NOTICE),
        /** It will leave the wanted range soon. */
        LEAVING_RANGE(Level.NOTICE),
        /** It was in the wanted range and is no longer. */
        OUT_OF_RANGE(Level.NOTICE),
        /** Where it is it will never be in the wanted range. */
        WILL_NOT_REACH(Level.NOTICE),
        /** It will be in the wanted range too late. */
        NOT_IN_TIME(Level.NOTICE),
        /** Ice may form soon, on the cold side of what is believed. */
        FREEZING_AHEAD(Level.CAUTION),
        /** Ice may have formed; a closed vessel that is full may burst. */
        FREEZING(Level.WARNING),
        /** It is warmer than can be explained: taken out, or a door left open. */
        UNEXPECTEDLY_WARM(Level.CAUTION),
        /** It is colder than can be explained: put into something colder. */
        UNEXPECTEDLY_COLD(Level.CAUTION),
        /** No reading has come for long. */
        SENSOR_SILENT(Level.CAUTION),
        /** Several readings in a row were no temperatures. */
        SENSOR_FAULTY(Level.CAUTION);

        private final Level level;

        Code(Level level) {
            this.level = level;
        }

        /**
         * How much it matters.
         *
         * @return level
         */
        public Level level() {
            return level;
        }
    }
}
