/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.OptionalDouble;

/**
 * A parameter as a fit left it.
 *
 * @param name its name; {@code name@run} if each run has its own
 * @param value its value
 * @param standardError its standard error; empty if it was not estimated or the readings do not determine it
 * @param status how it came to its value
 */
public record Estimate(String name, double value, OptionalDouble standardError, Status status) {

    /** How a parameter came to its value. */
    public enum Status {
        /** Estimated from the readings, and from its prior if it has one. */
        ESTIMATED("estimated"),
        /** Kept at its start, as asked. */
        KEPT("kept"),
        /** Held at its lower bound: the readings ask for less. */
        AT_LOWER_BOUND("at its lower bound: the readings ask for less"),
        /** Held at its upper bound: the readings ask for more. */
        AT_UPPER_BOUND("at its upper bound: the readings ask for more"),
        /** The readings fit as well with other values. */
        NOT_DETERMINED("not determined by the readings");

        private final String text;

        Status(String text) {
            this.text = text;
        }

        @Override
        public String toString() {
            return text;
        }
    }
}
