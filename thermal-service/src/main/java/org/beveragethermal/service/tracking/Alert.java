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
        SOON_AT_TARGET(Level.NOTICE, 0),
        /** It is in the wanted range. */
        AT_TARGET(Level.NOTICE, 1),
        /** It will leave the wanted range soon. */
        LEAVING_RANGE(Level.NOTICE, 2),
        /** It was in the wanted range and is no longer. */
        OUT_OF_RANGE(Level.NOTICE, 3),
        /** Where it is it will never be in the wanted range. */
        WILL_NOT_REACH(Level.NOTICE, 4),
        /** It will be in the wanted range too late. */
        NOT_IN_TIME(Level.NOTICE, 5),
        /** Ice may form soon, on the cold side of what is believed. */
        FREEZING_AHEAD(Level.CAUTION, 6),
        /** Ice may have formed; a closed vessel that is full may burst. */
        FREEZING(Level.WARNING, 7),
        /** It is warmer than can be explained: taken out, or a door left open. */
        UNEXPECTEDLY_WARM(Level.CAUTION, 8),
        /** It is colder than can be explained: put into something colder. */
        UNEXPECTEDLY_COLD(Level.CAUTION, 9),
        /** No reading has come for long. */
        SENSOR_SILENT(Level.CAUTION, 10),
        /** Several readings in a row were no temperatures. */
        SENSOR_FAULTY(Level.CAUTION, 11),
        /** It is to be poured and may be very hot to drink, judged on the warm side of what is believed. */
        VERY_HOT(Level.WARNING, 12);

        private final Level level;
        private final int bit;

        Code(Level level, int number) {
            this.level = level;
            this.bit = 1 << number;
        }

        /** Stands for it in what has been said; stored in snapshots, so never to be changed. */
        int bit() {
            return bit;
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
