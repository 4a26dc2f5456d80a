/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.List;
import org.beveragethermal.core.prediction.Asymptote;

/** Answer to "when must it go in so that its temperature is wanted at an instant?". Times are on the clock of the question. */
public sealed interface StartAnswer extends Answer {

    /**
     * There are starts that do.
     *
     * @param wanted what is wanted
     * @param at the instant
     * @param windows all starts that do, ascending; at least one
     * @param secondsPerKelvin how much earlier than the latest start it must go in for an end of the range that lies a kelvin further [s/K],
     *     ≥ 0, from the slope there; 0 if it need not go in at all, very large where the temperature has levelled off
     * @param runs predictions that were run for it
     * @param accuracy how closely the ends of the windows are known
     * @param warnings what a user should know, possibly nothing
     */
    record Starts(
            Wanted wanted,
            Duration at,
            List<Window> windows,
            double secondsPerKelvin,
            int runs,
            Duration accuracy,
            List<String> warnings)
            implements StartAnswer {

        /**
         * Copies the lists.
         *
         * @param wanted what is wanted
         * @param at the instant
         * @param windows starts that do, at least one, not modified
         * @param secondsPerKelvin how much earlier for a kelvin further
         * @param runs predictions that were run
         * @param accuracy how closely the ends are known
         * @param warnings what a user should know, not modified
         * @throws IllegalArgumentException if there is no window
         */
        public Starts {
            if (windows.isEmpty()) {
                throw new IllegalArgumentException("no windows: expected at least one");
            }
            windows = List.copyOf(windows);
            warnings = List.copyOf(warnings);
        }

        /**
         * The latest start.
         *
         * @return end of the last window
         */
        public Duration latest() {
            return windows.get(windows.size() - 1).to();
        }

        /**
         * The earliest start that was looked at and does.
         *
         * @return beginning of the first window
         */
        public Duration earliest() {
            return windows.get(0).from();
        }

        /**
         * Whether any start does, from the beginning of the clock to the instant itself.
         *
         * @return true if one window covers all
         */
        public boolean anyTime() {
            return windows.size() == 1 && earliest().isZero() && latest().equals(at);
        }

        @Override
        public String explain() {
            String first = anyTime()
                    ? Text.format(
                            "It is at %s at %s whenever it goes in, or if it does not.", wanted.text(), Text.time(at))
                    : Text.format(
                            "To be at %s at %s, it goes in at %s at the latest, %s before that; starts that do: %s.",
                            wanted.text(),
                            Text.time(at),
                            Text.time(latest()),
                            Text.time(at.minus(latest())),
                            Text.windows(windows));
            return Text.sentences(first, warnings);
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("starts")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("atS", Times.seconds(at))
                    .with("latestS", Times.seconds(latest()))
                    .withWindows("windowsS", windows)
                    .with("secondsPerKelvin", secondsPerKelvin)
                    .with("runs", runs)
                    .with("accuracyS", Times.seconds(accuracy))
                    .done();
        }
    }

    /**
     * No start in the time looked at does.
     *
     * @param wanted what is wanted
     * @param at the instant
     * @param closestK of all starts looked at, the temperature at the instant nearest to what is wanted [K]
     * @param closestStart the start that gives it
     * @param asymptote what the temperature tends to if it goes in at time 0 and is left there, for twice as long as was looked and
     *     at least four days
     * @param runs predictions that were run for it
     * @param help a sentence on what would help
     */
    record Never(
            Wanted wanted,
            Duration at,
            double closestK,
            Duration closestStart,
            Asymptote asymptote,
            int runs,
            String help)
            implements StartAnswer {

        @Override
        public String explain() {
            return Text.format(
                    "No start makes it %s at %s; the nearest is %s, if it goes in %s. %s",
                    wanted.text(), Text.time(at), Text.celsius(closestK), Text.start(closestStart), help);
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("never")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("atS", Times.seconds(at))
                    .with("closestK", closestK)
                    .with("closestStartS", Times.seconds(closestStart))
                    .with(asymptote)
                    .with("runs", runs)
                    .done();
        }
    }
}
