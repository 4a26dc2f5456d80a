/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.beveragethermal.core.prediction.Asymptote;

/** Answer to "how early can it be ready?". Times are on the clock of the question. */
public sealed interface ReadyAnswer extends Answer {

    /**
     * It can be ready.
     *
     * @param wanted what is wanted
     * @param start when it goes in for that
     * @param windows all times at which it is as wanted if it is left there, ascending, at least one; instants where one temperature is wanted
     * @param until when it first goes too far if it is left there; empty if it stays within in the time looked at
     * @param secondsPerKelvin how much later it is ready for an end of the range that lies a kelvin further [s/K], ≥ 0, from the slope there;
     *     0 if it is as wanted when it goes in, very large where the temperature has levelled off
     * @param accuracy how closely the best start is known; zero where one run tells of all starts
     * @param runs predictions that were run for it
     * @param warnings what a user should know, possibly nothing
     */
    record Ready(
            Wanted wanted,
            Duration start,
            List<Window> windows,
            Optional<Duration> until,
            double secondsPerKelvin,
            Duration accuracy,
            int runs,
            List<String> warnings)
            implements ReadyAnswer {

        /**
         * Copies the lists.
         *
         * @param wanted what is wanted
         * @param start when it goes in
         * @param windows times at which it is as wanted, at least one, not modified
         * @param until when it goes too far, if it does
         * @param secondsPerKelvin how much later for a kelvin further
         * @param accuracy how closely the start is known
         * @param runs predictions that were run
         * @param warnings what a user should know, not modified
         * @throws IllegalArgumentException if there is no window
         */
        public Ready {
            if (windows.isEmpty()) {
                throw new IllegalArgumentException("no windows: expected at least one");
            }
            windows = List.copyOf(windows);
            warnings = List.copyOf(warnings);
        }

        /**
         * When it is first as wanted.
         *
         * @return beginning of the first window
         */
        public Duration ready() {
            return windows.get(0).from();
        }

        @Override
        public String explain() {
            String again = windows.size() > 1
                    ? Text.format(
                            " It is so %d times in all, last %s.",
                            windows.size(), Text.window(windows.get(windows.size() - 1)))
                    : "";
            String left = wanted.isTarget()
                    ? ""
                    : " on"
                            + until.map(time -> ", and goes too far at " + Text.time(time) + " if it is left there")
                                    .orElse("");
            return Text.sentences(
                    Text.format(
                            "Put in %s it is at %s %s %s%s.%s",
                            Text.start(start),
                            wanted.text(),
                            wanted.isTarget() ? "at" : "from",
                            Text.time(ready()),
                            left,
                            again),
                    warnings);
        }

        @Override
        public Snapshot snapshot() {
            Snapshot.Figures figures = Snapshot.of("ready")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("startS", Times.seconds(start))
                    .with("readyS", Times.seconds(ready()))
                    .withWindows("windowsS", windows)
                    .with("secondsPerKelvin", secondsPerKelvin)
                    .with("accuracyS", Times.seconds(accuracy))
                    .with("runs", runs);
            until.ifPresent(time -> figures.with("untilS", Times.seconds(time)));
            return figures.done();
        }
    }

    /**
     * It is not ready in the time looked at.
     *
     * @param wanted what is wanted
     * @param closestK temperature nearest to what is wanted that occurs [K]
     * @param closestAt when it occurs
     * @param asymptote what the temperature tends to if it goes in at time 0 and is left there, for twice as long as was looked and
     *     at least four days
     * @param runs predictions that were run for it
     * @param help a sentence on what would help
     */
    record Never(Wanted wanted, double closestK, Duration closestAt, Asymptote asymptote, int runs, String help)
            implements ReadyAnswer {

        @Override
        public String explain() {
            return Text.format(
                    "It never is at %s in the time looked at; the nearest is %s at %s. %s",
                    wanted.text(), Text.celsius(closestK), Text.time(closestAt), help);
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("never")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("closestK", closestK)
                    .with("closestAtS", Times.seconds(closestAt))
                    .with(asymptote)
                    .with("runs", runs)
                    .done();
        }
    }
}
