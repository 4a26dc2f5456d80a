/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import java.time.Duration;
import java.util.Locale;
import org.beveragethermal.core.internal.Figures;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;

/** Answer to "how much time is left before the closed vessel is full?". */
public sealed interface TimeLeft extends Answer {

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

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "left",
                    Figures.with("durationS", duration.toMillis() / 1000.0).map());
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

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "tooLate",
                    Figures.with("agoS", ago.toMillis() / 1000.0).map());
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

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "notInThisRun",
                    Figures.with("untilEndS", untilEnd.toMillis() / 1000.0).map());
        }
    }
}
