/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import java.util.Locale;

/** Answer to "does the wall bear this difference of temperature?". */
public sealed interface WallMargin {

    /**
     * The difference that was judged.
     *
     * @return difference [K], at least 0
     */
    double differenceK();

    /**
     * The answer in a sentence.
     *
     * @return a sentence with its numbers
     */
    String explain();

    /**
     * Less than the least that such walls are known to bear.
     *
     * @param differenceK difference [K]
     * @param marginK how much more it would bear [K], above 0
     */
    record Within(double differenceK, double marginK) implements WallMargin {

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "A difference of %.0f K stays %.0f K below the least that breaks such a wall.",
                    differenceK,
                    marginK);
        }
    }

    /**
     * Some walls bear it, some break: scratched ones first.
     *
     * @param differenceK difference [K]
     * @param leastK the least that breaks one [K], at most the difference
     * @param mostK the most that one bears [K], above the difference
     */
    record Doubtful(double differenceK, double leastK, double mostK) implements WallMargin {

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "A difference of %.0f K breaks some such walls and not others: they bear from %.0f K to %.0f K.",
                    differenceK,
                    leastK,
                    mostK);
        }
    }

    /**
     * More than such walls bear.
     *
     * @param differenceK difference [K]
     * @param mostK the most that one bears [K], at most the difference
     */
    record Beyond(double differenceK, double mostK) implements WallMargin {

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "A difference of %.0f K is more than such a wall bears, %.0f K at most.",
                    differenceK,
                    mostK);
        }
    }

    /**
     * Nothing is known of the wall.
     *
     * @param differenceK difference [K]
     * @param why what is not known
     */
    record NotJudged(double differenceK, String why) implements WallMargin {

        @Override
        public String explain() {
            return String.format(Locale.ROOT, "A difference of %.0f K is not judged: %s.", differenceK, why);
        }
    }
}
