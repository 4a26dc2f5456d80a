/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.beveragethermal.core.prediction.Asymptote;

/** Answer to "how long in each of several places?". */
public sealed interface StagesAnswer extends Answer {

    /**
     * For given times in all places but the last, the times in the last that end as wanted.
     *
     * @param first time in each place but the last, in order
     * @param last times in the last place, counted from the move into it; at least one
     */
    record Column(List<Duration> first, List<Window> last) {

        /**
         * Copies the lists.
         *
         * @param first times in the first places, not modified
         * @param last windows in the last place, at least one, not modified
         * @throws IllegalArgumentException if there is no window
         */
        public Column {
            if (last.isEmpty()) {
                throw new IllegalArgumentException("no windows: expected at least one");
            }
            first = List.copyOf(first);
            last = List.copyOf(last);
        }
    }

    /**
     * One way to do it.
     *
     * @param stages time in each place, in order; zero for a place that is left out
     * @param leeway how long the temperature stays as wanted in the last place
     * @param iceMeltedKg ice that has melted by then in all gear that the vessel was in, from when that was made ready [kg]; 0 without ice
     */
    record Schedule(List<Duration> stages, Duration leeway, double iceMeltedKg) {

        /**
         * Copies the list.
         *
         * @param stages time in each place, not modified
         * @param leeway how long the temperature stays as wanted
         * @param iceMeltedKg ice that has melted [kg]
         */
        public Schedule {
            stages = List.copyOf(stages);
        }

        /**
         * All of it.
         *
         * @return sum of the stages
         */
        public Duration total() {
            return stages.stream().reduce(Duration.ZERO, Duration::plus);
        }

        /**
         * How many places it needs.
         *
         * @return stages that are not left out
         */
        public int handlings() {
            return (int) stages.stream().filter(stage -> !stage.isZero()).count();
        }

        private String text() {
            return stages.stream()
                    .map(stage -> stage.isZero() ? "no time" : Text.time(stage))
                    .collect(Collectors.joining(", then "));
        }

        private List<Double> seconds() {
            return stages.stream().map(Times::seconds).toList();
        }
    }

    /**
     * There are ways to do it, none of which lets the drink begin to freeze.
     *
     * @param wanted what is wanted at the end
     * @param columns the region of times that end as wanted, by the times in the first places, ascending; at least one
     * @param earliest the way that is done first
     * @param leastHandling the way with fewest places, of these the one with most leeway
     * @param leastIce the way by which least ice has melted, of these the one with fewest places; empty if no place holds ice. A way without
     *     the ice melts none
     * @param leftOutForIce how many columns were left out or cut because the drink would begin to freeze
     * @param runs predictions that were run for it
     */
    record Region(
            Wanted wanted,
            List<Column> columns,
            Schedule earliest,
            Schedule leastHandling,
            Optional<Schedule> leastIce,
            int leftOutForIce,
            int runs)
            implements StagesAnswer {

        /**
         * Copies the list.
         *
         * @param wanted what is wanted at the end
         * @param columns the region, at least one, not modified
         * @param earliest the way that is done first
         * @param leastHandling the way with fewest places
         * @param leastIce the way by which least ice has melted
         * @param leftOutForIce columns left out or cut
         * @param runs predictions that were run
         * @throws IllegalArgumentException if the region is empty
         */
        public Region {
            if (columns.isEmpty()) {
                throw new IllegalArgumentException("no columns: expected at least one");
            }
            columns = List.copyOf(columns);
        }

        @Override
        public String explain() {
            String ice = leftOutForIce > 0 ? " Times by which it would begin to freeze are left out." : "";
            String melted = leastIce.map(way -> Text.format(
                            " Least ice: %s, by which %s kg have melted; %s kg in the earliest way.",
                            way.text(), Text.fixed(way.iceMeltedKg(), 2), Text.fixed(earliest.iceMeltedKg(), 2)))
                    .orElse("");
            return Text.format(
                    "Earliest at %s: %s, with %s to spare. Least handling: %s, with %s to spare.%s%s",
                    wanted.text(),
                    earliest.text(),
                    Text.time(earliest.leeway()),
                    leastHandling.text(),
                    Text.time(leastHandling.leeway()),
                    melted,
                    ice);
        }

        @Override
        public Snapshot snapshot() {
            Snapshot.Figures figures = Snapshot.of("region")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("earliestS", earliest.seconds())
                    .with("leastHandlingS", leastHandling.seconds())
                    .with("iceMeltedKg", List.of(earliest.iceMeltedKg(), leastHandling.iceMeltedKg()))
                    .with("runs", runs);
            leastIce.ifPresent(
                    way -> figures.with("leastIceS", way.seconds()).with("leastIceMeltedKg", way.iceMeltedKg()));
            for (int i = 0; i < columns.size(); i++) {
                Column column = columns.get(i);
                figures.with(
                        "column" + i + "FirstS",
                        column.first().stream().map(Times::seconds).toList());
                figures.withWindows("column" + i + "LastS", column.last());
            }
            return figures.done();
        }
    }

    /**
     * There is no way to do it in the times allowed.
     *
     * @param wanted what is wanted at the end
     * @param closestK temperature nearest to it that occurs in the last place, without ice [K]
     * @param asymptote what it tends to if it is in the last place alone and stays there, for twice as long as was allowed and at least four
     *     days; ice that is there may be gone by then
     * @param leftOutForIce how many columns were left out or cut because the drink would begin to freeze
     * @param runs predictions that were run for it
     */
    record None(Wanted wanted, double closestK, Asymptote asymptote, int leftOutForIce, int runs)
            implements StagesAnswer {

        @Override
        public String explain() {
            String ice = leftOutForIce > 0
                    ? " Times by which it would begin to freeze are left out; less time there, or milder places, may help."
                    : " Longer times, or other places, may help.";
            return Text.format(
                    "No times in these places end at %s; the nearest is %s. Left in the last place for good it %s.%s",
                    wanted.text(), Text.celsius(closestK), Text.tends(asymptote), ice);
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("none")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("closestK", closestK)
                    .with(asymptote)
                    .with("leftOutForIce", leftOutForIce)
                    .with("runs", runs)
                    .done();
        }
    }
}
