/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import java.util.Locale;
import org.beveragethermal.core.internal.Figures;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;

/** Answer to "does the wall bear this difference of temperature?". */
public sealed interface WallMargin extends Answer {

    /**
     * The difference that was judged.
     *
     * @return difference [K], at least 0
     */
    double differenceK();

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

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "within",
                    Figures.with("differenceK", differenceK)
                            .and("marginK", marginK)
                            .map());
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

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "doubtful",
                    Figures.with("differenceK", differenceK)
                            .and("leastK", leastK)
                            .and("mostK", mostK)
                            .map());
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

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "beyond",
                    Figures.with("differenceK", differenceK).and("mostK", mostK).map());
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

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "notJudged",
                    Figures.with("differenceK", differenceK).map());
        }
    }
}
