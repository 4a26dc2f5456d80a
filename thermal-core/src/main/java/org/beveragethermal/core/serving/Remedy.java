/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

/**
 * What a change of the serving would do, as three runs tell it.
 *
 * @param change what is changed
 * @param holds whether there is a pouring temperature whose mean lies in the range then
 * @param pouringK that pouring temperature, or else the one with the longest time in the range [K]
 * @param partInRange part of the drinking time in the range with it, 0 to 1
 */
public record Remedy(Change change, boolean holds, double pouringK, double partInRange) {

    /** A change of the serving. */
    public enum Change {
        /** Half as much, drunk in half the time. */
        SMALLER_PORTIONS("smallerPortions", "half as much at a time, drunk in half the time"),
        /** The glass at the end of the range that the surroundings pull away from. */
        GLASS_PREPARED("glassPrepared", "a glass chilled or warmed to the end of the range"),
        /** No sun on the glass. */
        SHADE("shade", "shade"),
        /** No hand around the glass. */
        HELD_BY_THE_STEM("noHand", "no hand around the glass");

        private final String key;
        private final String words;

        Change(String key, String words) {
            this.key = key;
            this.words = words;
        }

        /** Beginning of the names of its figures. */
        String key() {
            return key;
        }

        /**
         * The change in words.
         *
         * @return a few words of English
         */
        public String words() {
            return words;
        }
    }

    String text() {
        return Words.format(
                "%s %s (%.0f %% of the time in the range, poured at %s)",
                change.words(), holds ? "would do" : "is not enough", 100 * partInRange, Words.celsius(pouringK));
    }
}
