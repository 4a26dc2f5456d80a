/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.beveragethermal.core.prediction.Asymptote;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * How long a vessel must be in each of several places, one after the other, to end as wanted: first the freezer, then the bucket.
 *
 * <p>The answer is a region. The times in all places but the last lie on a grid, refined by halving where a way of doing it ends or begins
 * along the last of them; for each of these one run as long as allowed gives all times in the last place. Ways that end before the last place
 * are read off runs of their own, so that the grid cannot step over them. Gear is made ready when the
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
    /** Just within a window is so small a part of it after its beginning. */
    private static final int EDGE_PARTS = 50;
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
     * @return the region, with the way that is done first, the one with least handling and the one with least ice, or that there is none
     */
    public StagesAnswer endingAt(Wanted wanted) {
        Search search = new Search(Objects.requireNonNull(wanted, "wanted"));
        search.grid(new ArrayList<>());
        if (search.columns.isEmpty()) {
            Asymptote left = search.leftInTheLast();
            return new StagesAnswer.None(wanted, search.closestK, left, search.ice, search.runs);
        }
        search.columns.sort(Comparator.comparing(StagesAnswer.Column::first, Stages::compare));
        StagesAnswer.Schedule earliest = search.earliest.stream()
                .min(Comparator.comparing(StagesAnswer.Schedule::total)
                        .thenComparing(StagesAnswer.Schedule::handlings)
                        .thenComparing(StagesAnswer.Schedule::leeway, Comparator.reverseOrder()))
                .orElseThrow();
        StagesAnswer.Schedule least = search.easiest.stream()
                .min(Comparator.comparing(StagesAnswer.Schedule::handlings)
                        .thenComparing(StagesAnswer.Schedule::leeway, Comparator.reverseOrder())
                        .thenComparing(StagesAnswer.Schedule::total))
                .orElseThrow();
        Optional<StagesAnswer.Schedule> leastIce = search.earliest.stream()
                .min(Comparator.comparing(StagesAnswer.Schedule::iceMeltedKg)
                        .thenComparing(StagesAnswer.Schedule::handlings)
                        .thenComparing(StagesAnswer.Schedule::total))
                .filter(schedule -> search.anyIce);
        return new StagesAnswer.Region(wanted, search.columns, earliest, least, leastIce, search.ice, search.runs);
    }

    private static int compare(List<Duration> one, List<Duration> other) {
        for (int i = 0; i < one.size(); i++) {
            int order = one.get(i).compareTo(other.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    /** One walk over the grid; confined to one call. */
    private final class Search {

        private final Wanted wanted;
        private final List<StagesAnswer.Column> columns = new ArrayList<>();
        /** Of each window its beginning, and a time with most room for error. */
        private final List<StagesAnswer.Schedule> earliest = new ArrayList<>();

        private final List<StagesAnswer.Schedule> easiest = new ArrayList<>();
        private boolean anyIce;
        private double closestK;
        private int ice;
        private int runs;

        Search(Wanted wanted) {
            this.wanted = wanted;
            this.closestK = Stages.this.runs.vessel().temperatureK();
        }

        void grid(List<Duration> chosen) {
            endingHere(chosen);
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

        /**
         * Ways that end in the place after those chosen, and leave the rest out. One run finds them, where the grid may step over them: just
         * after the first moment at which it is as wanted there, and the middle of the window, with most room for error.
         */
        private void endingHere(List<Duration> chosen) {
            Duration longest = stages.get(chosen.size()).duration();
            List<Duration> all = new ArrayList<>(chosen);
            all.add(longest);
            Runs.SceneRun scene = run(exposures(all));
            double beforeS = totalS(chosen);
            double clearS = Course.iceS(
                            scene.vessel(), scene.vessel().trajectory().endS())
                    .orElse(Double.MAX_VALUE);
            for (double[] stretch : Course.within(scene.vessel(), wanted, beforeS)) {
                if (stretch[0] < clearS) {
                    Window window = Window.ofSeconds(stretch[0] - beforeS, Math.min(stretch[1], clearS) - beforeS);
                    // Not at the very edge, where the errors of two runs may disagree.
                    addEndingHere(chosen, window.from().plus(window.length().dividedBy(EDGE_PARTS)));
                    addEndingHere(chosen, window.from().plus(window.length().dividedBy(2)));
                }
            }
        }

        private void addEndingHere(List<Duration> chosen, Duration here) {
            List<Duration> first = with(chosen, here);
            while (first.size() < stages.size() - 1) {
                first.add(Duration.ZERO);
            }
            if (columns.stream().noneMatch(column -> column.first().equals(first))) {
                List<Window> windows = windows(first);
                if (!windows.isEmpty()) {
                    columns.add(new StagesAnswer.Column(first, windows));
                }
            }
        }

        /** Along the last of the first places, refined where the region begins or ends. */
        private void line(List<Duration> chosen) {
            Duration longest = stages.get(chosen.size()).duration();
            Duration before = Duration.ZERO;
            boolean wasIn = false;
            for (int i = 0; i <= steps; i++) {
                Duration here = part(longest, i);
                List<Window> windows = windows(with(chosen, here));
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
            Duration from = low;
            Duration to = high;
            for (int n = 0; n < HALVINGS; n++) {
                Duration middle = from.plus(to.minus(from).dividedBy(2));
                List<Window> windows = windows(with(chosen, middle));
                boolean isIn = !windows.isEmpty();
                if (isIn) {
                    add(chosen, middle, windows);
                }
                if (isIn == lowIsIn) {
                    from = middle;
                } else {
                    to = middle;
                }
            }
        }

        private void add(List<Duration> chosen, Duration here, List<Window> windows) {
            columns.add(new StagesAnswer.Column(with(chosen, here), windows));
        }

        private List<Exposure> exposures(List<Duration> times) {
            List<Exposure> exposures = new ArrayList<>();
            for (int i = 0; i < times.size(); i++) {
                Exposure stage = stages.get(i);
                if (!times.get(i).isZero()) {
                    exposures.add(new Exposure(stage.surroundings(), times.get(i), stage.placement()));
                }
            }
            return exposures;
        }

        private Runs.SceneRun run(List<Exposure> exposures) {
            runs++;
            Runs.SceneRun scene = Stages.this.runs.runScene(origin, exposures);
            anyIce |= scene.iceKg() > 0;
            return scene;
        }

        /** What it tends to if it is in the last place from the beginning and stays there. */
        private Asymptote leftInTheLast() {
            Exposure last = stages.get(stages.size() - 1);
            Duration continued = Times.duration(Course.continuedS(Times.seconds(last.duration())));
            return run(List.of(new Exposure(last.surroundings(), continued, last.placement())))
                    .vessel()
                    .asymptote();
        }

        private double totalS(List<Duration> times) {
            return times.stream().mapToDouble(Times::seconds).sum();
        }

        /** When it is as wanted in the last place, after times in the first ones. */
        private List<Window> windows(List<Duration> first) {
            List<Exposure> exposures = exposures(first);
            exposures.add(stages.get(stages.size() - 1));
            double beforeS = totalS(first);
            Runs.SceneRun scene = run(exposures);
            Prediction run = scene.vessel();
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
                    Window window = Window.ofSeconds(stretch[0] - beforeS, Math.min(stretch[1], clearS) - beforeS);
                    windows.add(window);
                    // Without the last place where that will do, else in the middle of the window.
                    Duration middle = window.from().isZero()
                            ? window.from()
                            : window.from().plus(window.length().dividedBy(2));
                    earliest.add(schedule(first, window.from(), window, scene, beforeS));
                    easiest.add(schedule(first, middle, window, scene, beforeS));
                }
            }
            return windows;
        }

        private StagesAnswer.Schedule schedule(
                List<Duration> first, Duration last, Window window, Runs.SceneRun scene, double beforeS) {
            double byS = Math.min(scene.vessel().trajectory().endS(), beforeS + Times.seconds(last));
            return new StagesAnswer.Schedule(with(first, last), window.length(), scene.iceMeltedKg(byS));
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
