/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

/** A sub-command with its options read. */
interface Question {
    OutputOptions output();

    /** Finds the answer; ends with a {@link Refusal} where there is none. */
    Answer answer(Session session);

    /** A whole number of an option. */
    static int whole(String where, String given, int low, int high) {
        if (!given.matches("[0-9]{1,9}") || Integer.parseInt(given) < low || Integer.parseInt(given) > high) {
            throw Refusal.usage(where, given, "a whole number from " + low + " to " + high);
        }
        return Integer.parseInt(given);
    }
}
