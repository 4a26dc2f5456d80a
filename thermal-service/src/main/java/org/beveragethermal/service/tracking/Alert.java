/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Instant;
import org.beveragethermal.service.caution.SignalWord;

/**
 * Something that someone should know. It is said once, and again only after it had passed.
 *
 * @param vesselId which vessel
 * @param at when it was seen
 * @param code what
 * @param facts its figures
 */
public record Alert(String vesselId, Instant at, Code code, Facts facts) {

    /** What may be said. */
    public enum Code {
        /** It will be in the wanted range soon. */
        SOON_AT_TARGET(SignalWord.NOTICE, 0),
        /** It is in the wanted range. */
        AT_TARGET(SignalWord.NOTICE, 1),
        /** It will leave the wanted range soon. */
        LEAVING_RANGE(SignalWord.NOTICE, 2),
        /** It was in the wanted range and is no longer. */
        OUT_OF_RANGE(SignalWord.NOTICE, 3),
        /** Where it is it will never be in the wanted range. */
        WILL_NOT_REACH(SignalWord.NOTICE, 4),
        /** It will be in the wanted range too late. */
        NOT_IN_TIME(SignalWord.NOTICE, 5),
        /** Ice may form soon, on the cold side of what is believed. */
        FREEZING_AHEAD(SignalWord.CAUTION, 6),
        /** Ice may have formed; a closed vessel that is full may burst. */
        FREEZING(SignalWord.WARNING, 7),
        /** It is warmer than can be explained: taken out, or a door left open. */
        UNEXPECTEDLY_WARM(SignalWord.NOTICE, 8),
        /** It is colder than can be explained: put into something colder. */
        UNEXPECTEDLY_COLD(SignalWord.NOTICE, 9),
        /** No reading has come for long. */
        SENSOR_SILENT(SignalWord.NOTICE, 10),
        /** Several readings in a row were no temperatures. */
        SENSOR_FAULTY(SignalWord.NOTICE, 11),
        /** It is to be poured and may be very hot to drink, judged on the warm side of what is believed. */
        VERY_HOT(SignalWord.WARNING, 12);

        private final SignalWord signal;
        private final int bit;

        Code(SignalWord signal, int number) {
            this.signal = signal;
            this.bit = 1 << number;
        }

        /** Stands for it in what has been said; stored in snapshots, so never to be changed. */
        int bit() {
            return bit;
        }

        /**
         * How much it matters.
         *
         * @return signal word, never DANGER
         */
        public SignalWord signal() {
            return signal;
        }
    }
}
