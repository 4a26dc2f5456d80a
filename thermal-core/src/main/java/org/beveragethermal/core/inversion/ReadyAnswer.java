/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Answer to "how early can it be ready?". Times are on the clock of the question. */
public sealed interface ReadyAnswer extends Answer {

    /**
     * It can be ready.
     *
     * @param wanted what is wanted
     * @param start when it goes in for that
     * @param ready when its temperature is first wanted
     * @param until when it goes too far if it is left there; empty if it stays within in the time looked at
     * @param runs predictions that were run for it
     * @param warnings what a user should know, possibly nothing
     */
    record Ready(
            Wanted wanted, Duration start, Duration ready, Optional<Duration> until, int runs, List<String> warnings)
            implements ReadyAnswer {

        /**
         * Copies the list.
         *
         * @param wanted what is wanted
         * @param start when it goes in
         * @param ready when it is first as wanted
         * @param until when it goes too far, if it does
         * @param runs predictions that were run
         * @param warnings what a user should know, not modified
         */
        public Ready {
            warnings = List.copyOf(warnings);
        }

        @Override
        public String explain() {
            String left = until.map(time -> ", and goes too far at " + Text.time(time) + " if it is left there")
                    .orElse("");
            return Text.sentences(
                    Text.format(
                            "Put in at %s it is at %s from %s on%s.",
                            Text.time(start), wanted.text(), Text.time(ready), left),
                    warnings);
        }

        @Override
        public Snapshot snapshot() {
            Snapshot.Figures figures = Snapshot.of("ready")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("startS", Times.seconds(start))
                    .with("readyS", Times.seconds(ready))
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
     * @param runs predictions that were run for it
     * @param help a sentence on what would help
     */
    record Never(Wanted wanted, double closestK, Duration closestAt, int runs, String help) implements ReadyAnswer {

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
                    .with("runs", runs)
                    .done();
        }
    }
}
