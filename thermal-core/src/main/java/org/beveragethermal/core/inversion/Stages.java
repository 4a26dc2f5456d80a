/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * How long a vessel must be in each of several places, one after the other, to end as wanted: first the freezer, then the bucket.
 *
 * <p>The answer is a region. The times in all places but the last lie on a grid, refined by halving where a way of doing it ends or begins
 * along the last of them; for each of these one run as long as allowed gives all times in the last place. Gear is made ready when the
 * vessel first goes into it. Times by which any part of the drink would hold ice are never offered.
 *
 * <pre>{@code
 * StagesAnswer answer = Stages.of(bottle, in(freezer, Duration.ofMinutes(40)), in(bucketOfIce, Duration.ofMinutes(30)))
 *         .endingAt(Wanted.between(celsius(7), celsius(9)));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Stages {

    private static final int USUAL_STEPS = 8;
    private static final int MOST_STEPS = 60;
    private static final int MOST_STAGES = 4;
    private static final int MOST_RUNS = 20_000;
    /** Halvings of a step at the edge of the region. */
    private static final int HALVINGS = 5;

    private final Runs runs;
    private final Duration origin;
    private final List<Exposure> stages;
    private final int steps;

    private Stages(Runs runs, Duration origin, List<Exposure> stages, int steps) {
        this.runs = runs;
        this.origin = origin;
        this.stages = List.copyOf(stages);
        this.steps = steps;
    }

    /**
     * Asks about a vessel with lumped contents.
     *
     * @param vessel the vessel with its contents at their temperature at the start
     * @param longestStages places in order, each with the longest time in it that is allowed; two to four
     * @return the question
     * @throws IllegalArgumentException if there are fewer or more places
     */
    public static Stages of(FilledVessel vessel, Exposure... longestStages) {
        if (longestStages.length < 2 || longestStages.length > MOST_STAGES) {
            throw new IllegalArgumentException(longestStages.length + " stages: expected 2 to " + MOST_STAGES);
        }
        return new Stages(Runs.of(vessel), Duration.ZERO, List.of(longestStages), USUAL_STEPS);
    }

    /**
     * The same question with contents described otherwise; their mean temperature is what is asked for, and ice counts in any part.
     *
     * @param model how finely the contents are described
     * @return a new question
     */
    public Stages with(VesselModel model) {
        return new Stages(runs.with(model), origin, stages, steps);
    }

    /**
     * The same question run by another solver.
     *
     * @param solver tolerance and multipliers
     * @return a new question
     */
    public Stages with(NetworkSolver solver) {
        return new Stages(runs.with(solver), origin, stages, steps);
    }

    /**
     * The same question begun later on the clock of the surroundings' weather.
     *
     * @param newOrigin time on that clock at which it begins, ≥ 0
     * @return a new question
     * @throws IllegalArgumentException if the time is negative
     */
    public Stages startingAfter(Duration newOrigin) {
        if (newOrigin.isNegative()) {
            throw new IllegalArgumentException("start after " + newOrigin + ": expected at least 0");
        }
        return new Stages(runs, newOrigin, stages, steps);
    }

    /**
     * The same question on another grid.
     *
     * @param newSteps steps into which the longest time in each place but the last is divided, 2 to 60; 8 unless said otherwise
     * @return a new question
     * @throws IllegalArgumentException if the number is outside its range, or needs more than 20 000 runs
     */
    public Stages withSteps(int newSteps) {
        if (newSteps < 2 || newSteps > MOST_STEPS || Math.pow(newSteps + 1.0, stages.size() - 1.0) > MOST_RUNS) {
            throw new IllegalArgumentException("steps " + newSteps + " for " + stages.size() + " stages: expected 2 to "
                    + MOST_STEPS + ", and at most " + MOST_RUNS + " runs");
        }
        return new Stages(runs, origin, stages, newSteps);
    }

    /**
     * All times in the places that end as wanted, as far as the grid shows them.
     *
     * @param wanted what is wanted at the end
     * @return the region, with the way that is done first and the one with least handling, or that there is none
     */
    public StagesAnswer endingAt(Wanted wanted) {
        Search search = new Search(Objects.requireNonNull(wanted, "wanted"));
        search.grid(new ArrayList<>());
        if (search.columns.isEmpty()) {
            return new StagesAnswer.None(wanted, search.closestK, search.ice, search.runs);
        }
        StagesAnswer.Schedule earliest = search.columns.stream()
                .map(column -> beginning(column, column.last().get(0)))
                .min(Comparator.comparing(StagesAnswer.Schedule::total)
                        .thenComparing(StagesAnswer.Schedule::handlings)
                        .thenComparing(StagesAnswer.Schedule::leeway, Comparator.reverseOrder()))
                .orElseThrow();
        StagesAnswer.Schedule least = search.columns.stream()
                .flatMap(column -> column.last().stream().map(window -> easiest(column, window)))
                .min(Comparator.comparing(StagesAnswer.Schedule::handlings)
                        .thenComparing(StagesAnswer.Schedule::leeway, Comparator.reverseOrder())
                        .thenComparing(StagesAnswer.Schedule::total))
                .orElseThrow();
        return new StagesAnswer.Region(wanted, search.columns, earliest, least, search.ice, search.runs);
    }

    private static StagesAnswer.Schedule beginning(StagesAnswer.Column column, Window window) {
        return schedule(column, window.from(), window.length());
    }

    /** Without the last place where that will do, else in the middle of the window, with most room for error. */
    private static StagesAnswer.Schedule easiest(StagesAnswer.Column column, Window window) {
        return window.from().isZero()
                ? beginning(column, window)
                : schedule(column, window.from().plus(window.length().dividedBy(2)), window.length());
    }

    private static StagesAnswer.Schedule schedule(StagesAnswer.Column column, Duration last, Duration leeway) {
        List<Duration> stages = new ArrayList<>(column.first());
        stages.add(last);
        return new StagesAnswer.Schedule(stages, leeway);
    }

    /** One walk over the grid; confined to one call. */
    private final class Search {

        private final Wanted wanted;
        private final List<StagesAnswer.Column> columns = new ArrayList<>();
        private double closestK;
        private int ice;
        private int runs;

        Search(Wanted wanted) {
            this.wanted = wanted;
            this.closestK = Stages.this.runs.vessel().temperatureK();
        }

        void grid(List<Duration> chosen) {
            if (chosen.size() == stages.size() - 2) {
                line(chosen);
                return;
            }
            for (int i = 0; i <= steps; i++) {
                List<Duration> more = new ArrayList<>(chosen);
                more.add(part(stages.get(chosen.size()).duration(), i));
                grid(more);
            }
        }

        /** Along the last of the first places, refined where the region begins or ends. */
        private void line(List<Duration> chosen) {
            Duration longest = stages.get(chosen.size()).duration();
            Duration before = Duration.ZERO;
            boolean wasIn = false;
            for (int i = 0; i <= steps; i++) {
                Duration here = part(longest, i);
                List<Window> windows = windows(chosen, here);
                boolean isIn = !windows.isEmpty();
                if (i > 0 && wasIn != isIn) {
                    edge(chosen, before, here, wasIn);
                }
                if (isIn) {
                    add(chosen, here, windows);
                }
                before = here;
                wasIn = isIn;
            }
        }

        private void edge(List<Duration> chosen, Duration low, Duration high, boolean lowIsIn) {
            List<StagesAnswer.Column> found = new ArrayList<>();
            Duration from = low;
            Duration to = high;
            for (int n = 0; n < HALVINGS; n++) {
                Duration middle = from.plus(to.minus(from).dividedBy(2));
                List<Window> windows = windows(chosen, middle);
                boolean isIn = !windows.isEmpty();
                if (isIn) {
                    found.add(new StagesAnswer.Column(with(chosen, middle), windows));
                }
                if (isIn == lowIsIn) {
                    from = middle;
                } else {
                    to = middle;
                }
            }
            found.sort(Comparator.comparing(column -> column.first().get(chosen.size())));
            columns.addAll(found);
        }

        private void add(List<Duration> chosen, Duration here, List<Window> windows) {
            columns.add(new StagesAnswer.Column(with(chosen, here), windows));
        }

        private List<Window> windows(List<Duration> chosen, Duration here) {
            List<Exposure> exposures = new ArrayList<>();
            double beforeS = 0;
            List<Duration> first = with(chosen, here);
            for (int i = 0; i < first.size(); i++) {
                Exposure stage = stages.get(i);
                if (!first.get(i).isZero()) {
                    exposures.add(new Exposure(stage.surroundings(), first.get(i), stage.placement()));
                    beforeS += Times.seconds(first.get(i));
                }
            }
            exposures.add(stages.get(stages.size() - 1));
            Prediction run = Stages.this.runs.run(origin, exposures);
            runs++;
            double endS = run.trajectory().endS();
            OptionalDouble frozen = Course.iceS(run, endS);
            double clearS = frozen.orElse(endS);
            ice += frozen.isPresent() ? 1 : 0;
            if (clearS < beforeS) {
                return List.of();
            }
            closest(run, beforeS, clearS);
            List<Window> windows = new ArrayList<>();
            for (double[] stretch : Course.within(run, wanted, beforeS)) {
                if (stretch[0] < clearS || frozen.isEmpty()) {
                    windows.add(Window.ofSeconds(stretch[0] - beforeS, Math.min(stretch[1], clearS) - beforeS));
                }
            }
            return windows;
        }

        private void closest(Prediction run, double beforeS, double clearS) {
            double nearestS = Math.min(clearS, Course.closestS(run, wanted, beforeS));
            double nearestK = run.meanTemperatureK(nearestS);
            if (wanted.outsideK(nearestK) < wanted.outsideK(closestK)) {
                closestK = nearestK;
            }
        }

        private Duration part(Duration longest, int i) {
            return Duration.ofMillis(Math.round(longest.toMillis() * (double) i / steps));
        }

        private List<Duration> with(List<Duration> chosen, Duration here) {
            List<Duration> all = new ArrayList<>(chosen);
            all.add(here);
            return all;
        }
    }
}
