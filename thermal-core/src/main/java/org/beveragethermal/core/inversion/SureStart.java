/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Answer to "when must it go in to be as wanted at an instant with at least this probability?". */
public sealed interface SureStart extends Answer {

    /**
     * There are starts that are sure enough.
     *
     * @param wanted what is wanted
     * @param at the instant, counted from the earliest start
     * @param windows all starts that are sure enough, ascending, at least one
     * @param chance the chance of the latest of them
     * @param spread from when to when the latest start of single draws lies, the middle 90 % of those that have one; empty where each
     *     start is an ensemble of its own
     */
    record Starts(Wanted wanted, Duration at, List<Window> windows, Chance chance, Optional<Window> spread)
            implements SureStart {

        /**
         * Copies the list.
         *
         * @param wanted what is wanted
         * @param at the instant
         * @param windows starts that are sure enough, at least one, not modified
         * @param chance the chance of the latest of them
         * @param spread where the latest starts of single draws lie
         * @throws IllegalArgumentException if there is no window
         */
        public Starts {
            if (windows.isEmpty()) {
                throw new IllegalArgumentException("no windows: expected at least one");
            }
            windows = List.copyOf(windows);
        }

        /**
         * The latest start that is sure enough.
         *
         * @return end of the last window
         */
        public Duration latest() {
            return windows.get(windows.size() - 1).to();
        }

        @Override
        public String explain() {
            String single = spread.map(window -> " The latest starts of single draws lie " + Text.window(window) + ".")
                    .orElse("");
            return Text.format(
                    "To be at %s at %s it goes in at %s at the latest: %s%s",
                    wanted.text(), Text.time(at), Text.time(latest()), chance.explain(), single);
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("starts")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("atS", Times.seconds(at))
                    .with("latestS", Times.seconds(latest()))
                    .withWindows("windowsS", windows)
                    .with("probability", chance.probability())
                    .with("standardError", chance.standardError())
                    .withWindows("spreadS", spread.stream().toList())
                    .done();
        }
    }

    /**
     * No start is sure enough.
     *
     * @param wanted what is wanted
     * @param at the instant, counted from the earliest start
     * @param best the best chance that any start has
     * @param bestStart that start
     */
    record NeverSure(Wanted wanted, Duration at, Chance best, Duration bestStart) implements SureStart {

        @Override
        public String explain() {
            return Text.format(
                    "No start is sure enough of %s at %s; best is %s: %s",
                    wanted.text(), Text.time(at), Text.time(bestStart), best.explain());
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("neverSure")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("atS", Times.seconds(at))
                    .with("probability", best.probability())
                    .with("standardError", best.standardError())
                    .with("bestStartS", Times.seconds(bestStart))
                    .done();
        }
    }
}
