/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import java.time.Duration;
import java.util.Locale;
import org.beveragethermal.core.internal.Figures;
import org.beveragethermal.core.internal.Shown;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;

/** Answer to "when does ice begin to form in it?". */
public sealed interface FreezingOnset extends Answer {

    /**
     * Ice begins to form, in the part of the contents that gets there first.
     *
     * @param after time since the start of the run
     * @param freezingPointK temperature at which ice begins to form at equilibrium [K]
     * @param meanK mean temperature of the contents then [K]
     */
    record Freezes(Duration after, double freezingPointK, double meanK) implements FreezingOnset {

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "Ice begins to form after %.0f min, at %.1f °C, when the drink is at %.1f °C on average; undisturbed it may stay liquid"
                            + " some kelvins colder and then freeze in a moment.",
                    after.toMillis() / 60_000.0,
                    Shown.celsius(freezingPointK, 1),
                    Shown.celsius(meanK, 1));
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "freezes",
                    Figures.with("afterS", after.toMillis() / 1000.0)
                            .and("freezingPointK", freezingPointK)
                            .and("meanK", meanK)
                            .map());
        }
    }

    /**
     * No ice forms in this run.
     *
     * @param freezingPointK temperature at which ice would begin to form [K]
     * @param coldestK the lowest temperature that a part of the contents came to [K]
     */
    record NeverFreezes(double freezingPointK, double coldestK) implements FreezingOnset {

        /**
         * How far the coldest part stayed from freezing.
         *
         * @return difference [K], at least 0
         */
        public double marginK() {
            return Math.max(0, coldestK - freezingPointK);
        }

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "No ice forms: the drink freezes at %.1f °C and its coldest part comes to %.1f °C.",
                    Shown.celsius(freezingPointK, 1),
                    Shown.celsius(coldestK, 1));
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "neverFreezes",
                    Figures.with("freezingPointK", freezingPointK)
                            .and("coldestK", coldestK)
                            .map());
        }
    }
}
