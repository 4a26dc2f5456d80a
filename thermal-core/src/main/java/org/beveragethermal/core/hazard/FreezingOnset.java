/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import java.time.Duration;
import java.util.Locale;

/** Answer to "when does ice begin to form in it?". */
public sealed interface FreezingOnset {

    /**
     * The answer in a sentence.
     *
     * @return a sentence with its numbers
     */
    String explain();

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
                    freezingPointK - ClosedVessel.ZERO_CELSIUS_K,
                    meanK - ClosedVessel.ZERO_CELSIUS_K);
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
                    freezingPointK - ClosedVessel.ZERO_CELSIUS_K,
                    coldestK - ClosedVessel.ZERO_CELSIUS_K);
        }
    }
}
