/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import java.time.Duration;
import java.util.Locale;

/** Answer to "how much time is left before the closed vessel is full?". */
public sealed interface TimeLeft {

    /**
     * The answer in a sentence.
     *
     * @return a sentence with its numbers
     */
    String explain();

    /**
     * There is time left.
     *
     * @param duration from now until the vessel is full
     */
    record Left(Duration duration) implements TimeLeft {

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT, "%.0f min are left until the vessel is full.", duration.toMillis() / 60_000.0);
        }
    }

    /**
     * It is too late.
     *
     * @param ago how long ago the vessel became full
     */
    record TooLate(Duration ago) implements TimeLeft {

        @Override
        public String explain() {
            return String.format(Locale.ROOT, "The vessel became full %.0f min ago.", ago.toMillis() / 60_000.0);
        }
    }

    /**
     * The vessel does not become full in this run; what comes after is not known.
     *
     * @param untilEnd from now to the end of the run
     */
    record NotInThisRun(Duration untilEnd) implements TimeLeft {

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "The vessel does not become full in the %.0f min that were looked at.",
                    untilEnd.toMillis() / 60_000.0);
        }
    }
}
