/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.jspecify.annotations.Nullable;

/**
 * When a vessel must go into given surroundings.
 *
 * <p>The clock of a question is that of the surroundings' weather: a start after two hours meets the air as it is then. Until it goes in
 * the vessel keeps its temperature, or {@linkplain #waitingIn waits} somewhere. Gear is made ready when the vessel goes in: a bucket is
 * filled with ice then, and does not melt before.
 *
 * <p>In surroundings that do not change with the clock one run answers for all starts; a second one, begun later, tells whether they do.
 * Otherwise each start is a run: starts are scanned, and the ends of what does are searched by bracketing, within a {@linkplain
 * #withMostRuns bound on runs}. A window of starts shorter than two steps of the scan may then be missed if the temperature at the
 * instant turns twice within it.
 *
 * <pre>{@code
 * StartAnswer answer = StartSearch.of(bottle, refrigerator)
 *         .latestStart(Wanted.between(celsius(8), celsius(10)), Duration.ofHours(5));
 * if (answer instanceof StartAnswer.Starts starts) {
 *     Duration goesIn = starts.latest();
 * }
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class StartSearch {

    private static final int USUAL_RUNS = 80;
    private static final int LEAST_RUNS = 10;
    private static final int MOST_RUNS = 10_000;
    private static final int SCAN_STEPS = 24;
    private static final Duration LONGEST = Duration.ofDays(30);
    /** How closely an end of a window is searched where each start is a run [s]. */
    private static final double ACCURACY_S = 1;
    /** The later run that tells whether surroundings change starts at this part of the time, which no swing is likely to fit. */
    private static final double LATER_PART = 0.381966011250105;

    /** Where there is no start, a run so many times longer tells whether more time would help. */
    private static final double LONGER = 8;

    private static final int LOOKS = 32;
    /** Equal runs differ by rounding only [K]. */
    private static final double SAME_K = 1e-5;

    private static final String MAY_HELP = "More time, or other surroundings, may help.";
    private static final String FREEZES = "By then a part of it has begun to freeze.";

    private final Runs runs;
    private final Surroundings surroundings;
    private final Placement placement;
    private final @Nullable Surroundings before;
    private final int mostRuns;

    private StartSearch(
            Runs runs, Surroundings surroundings, Placement placement, @Nullable Surroundings before, int mostRuns) {
        this.runs = runs;
        this.surroundings = surroundings;
        this.placement = placement;
        this.before = before;
        this.mostRuns = mostRuns;
    }

    /**
     * Asks about an upright vessel with lumped contents.
     *
     * @param vessel the vessel with its contents at the temperature with which it goes in
     * @param surroundings what it goes into
     * @return the question
     */
    public static StartSearch of(FilledVessel vessel, Surroundings surroundings) {
        return new StartSearch(
                Runs.of(vessel),
                Objects.requireNonNull(surroundings, "surroundings"),
                Placement.upright(),
                null,
                USUAL_RUNS);
    }

    /**
     * The same question with contents described otherwise; their mean temperature is what is asked for.
     *
     * @param model how finely the contents are described
     * @return a new question
     */
    public StartSearch with(VesselModel model) {
        return new StartSearch(runs.with(model), surroundings, placement, before, mostRuns);
    }

    /**
     * The same question run by another solver.
     *
     * @param solver tolerance and multipliers
     * @return a new question
     */
    public StartSearch with(NetworkSolver solver) {
        return new StartSearch(runs.with(solver), surroundings, placement, before, mostRuns);
    }

    /**
     * The same question with the vessel in another posture or at another depth.
     *
     * @param newPlacement how it stands or lies
     * @return a new question
     */
    public StartSearch placed(Placement newPlacement) {
        return new StartSearch(runs, surroundings, Objects.requireNonNull(newPlacement, "placement"), before, mostRuns);
    }

    /**
     * The same question about a vessel that stands upright somewhere from time 0 of the clock until it goes in.
     *
     * @param waitingPlace where it is until then; its temperature is that of time 0
     * @return a new question
     */
    public StartSearch waitingIn(Surroundings waitingPlace) {
        return new StartSearch(
                runs, surroundings, placement, Objects.requireNonNull(waitingPlace, "waiting place"), mostRuns);
    }

    /**
     * The same question with another bound on what it may cost.
     *
     * @param newMostRuns predictions at most, 10 to 10 000; 80 unless said otherwise; fewer than 30 scan more coarsely
     * @return a new question
     * @throws IllegalArgumentException if the number is outside its range
     */
    public StartSearch withMostRuns(int newMostRuns) {
        if (newMostRuns < LEAST_RUNS || newMostRuns > MOST_RUNS) {
            throw new IllegalArgumentException("runs " + newMostRuns + ": expected " + LEAST_RUNS + " to " + MOST_RUNS);
        }
        return new StartSearch(runs, surroundings, placement, before, newMostRuns);
    }

    /**
     * All starts from time 0 of the clock on with which the temperature is as wanted at an instant; the latest of them is what is
     * mostly asked for.
     *
     * @param wanted what is wanted
     * @param at the instant on the clock, later than 0, at most 30 days
     * @return the starts, or that there is none
     * @throws IllegalArgumentException if the instant is outside its range
     */
    public StartAnswer latestStart(Wanted wanted, Duration at) {
        double atS = requireHorizon(at);
        Objects.requireNonNull(wanted, "wanted");
        if (before == null) {
            Prediction run = runFrom(0, atS);
            if (isConstant(run, atS)) {
                return fromOneRun(run, wanted, atS);
            }
        }
        return fromManyRuns(wanted, atS);
    }

    /**
     * How early the temperature can be as wanted, if the vessel goes in at time 0 of the clock or later. In surroundings that change,
     * waiting may be of use; of the starts on a grid the one that is ready first is taken.
     *
     * @param wanted what is wanted
     * @param horizon how long the clock is looked at, more than nothing, at most 30 days
     * @return when it goes in and is ready, or that it is not
     * @throws IllegalArgumentException if the horizon is outside its range
     */
    public ReadyAnswer earliestReady(Wanted wanted, Duration horizon) {
        double endS = requireHorizon(horizon);
        Objects.requireNonNull(wanted, "wanted");
        Prediction atOnce = runFrom(0, endS);
        ReadyAnswer best = ready(atOnce, wanted, 0, 1);
        if (before == null && isConstant(atOnce, endS)) {
            return best instanceof ReadyAnswer.Never never
                    ? new ReadyAnswer.Never(wanted, never.closestK(), never.closestAt(), 3, help(wanted, endS))
                    : withRuns(best, 2);
        }
        int steps = Math.min(SCAN_STEPS, mostRuns - 2);
        int count = 2;
        for (int i = 1; i < steps; i++) {
            double startS = endS * i / steps;
            if (best instanceof ReadyAnswer.Ready r && startS >= Times.seconds(r.ready())) {
                break;
            }
            best = earlier(best, ready(runFrom(startS, endS), wanted, startS, 1), wanted);
            count++;
        }
        return withRuns(best, count);
    }

    private static ReadyAnswer earlier(ReadyAnswer one, ReadyAnswer other, Wanted wanted) {
        if (one instanceof ReadyAnswer.Ready first) {
            return other instanceof ReadyAnswer.Ready second && second.ready().compareTo(first.ready()) < 0
                    ? second
                    : one;
        }
        if (other instanceof ReadyAnswer.Never second && one instanceof ReadyAnswer.Never first) {
            return wanted.outsideK(second.closestK()) < wanted.outsideK(first.closestK()) ? other : one;
        }
        return other;
    }

    private static ReadyAnswer withRuns(ReadyAnswer answer, int count) {
        if (answer instanceof ReadyAnswer.Ready r) {
            return new ReadyAnswer.Ready(r.wanted(), r.start(), r.ready(), r.until(), count, r.warnings());
        }
        ReadyAnswer.Never n = (ReadyAnswer.Never) answer;
        return new ReadyAnswer.Never(n.wanted(), n.closestK(), n.closestAt(), count, n.help());
    }

    /** Reads when it is ready off a run that goes in at a start; times of the run count from there, or from 0 if it waits. */
    private ReadyAnswer ready(Prediction run, Wanted wanted, double startS, int count) {
        double originS = before == null ? startS : 0;
        double fromS = before == null ? 0 : startS;
        List<double[]> windows = Course.within(run, wanted, fromS);
        if (windows.isEmpty()) {
            double closestS = Course.closestS(run, wanted, fromS);
            return new ReadyAnswer.Never(
                    wanted, run.meanTemperatureK(closestS), Times.duration(originS + closestS), count, MAY_HELP);
        }
        double[] first = windows.get(0);
        Optional<Duration> until =
                first[1] < run.trajectory().endS() ? Optional.of(Times.duration(originS + first[1])) : Optional.empty();
        return new ReadyAnswer.Ready(
                wanted,
                Times.duration(startS),
                Times.duration(originS + first[0]),
                until,
                count,
                freezing(run, first[0]));
    }

    private StartAnswer fromOneRun(Prediction run, Wanted wanted, double atS) {
        List<double[]> ages = Course.within(run, wanted, 0);
        if (ages.isEmpty()) {
            double closestS = Course.closestS(run, wanted, 0);
            return new StartAnswer.Never(
                    wanted,
                    Times.duration(atS),
                    run.meanTemperatureK(closestS),
                    Times.duration(atS - closestS),
                    3,
                    help(wanted, atS));
        }
        List<Window> windows = new ArrayList<>();
        for (double[] age : ages) {
            windows.add(Window.ofSeconds(atS - age[1], atS - age[0]));
        }
        Collections.reverse(windows);
        return new StartAnswer.Starts(
                wanted, Times.duration(atS), windows, 2, Duration.ofMillis(1), freezing(run, ages.get(0)[0]));
    }

    private StartAnswer fromManyRuns(Wanted wanted, double atS) {
        int steps = Math.min(SCAN_STEPS, mostRuns / 2);
        LevelSearch search = search(atS, steps);
        List<double[]> starts = search.within(wanted.lowK() - rounding(wanted), wanted.highK() + rounding(wanted));
        if (starts.isEmpty()) {
            double closest = 0;
            for (int i = 0; i <= steps; i++) {
                double startS = i == steps ? atS : atS * i / steps;
                if (wanted.outsideK(search.at(startS)) < wanted.outsideK(search.at(closest))) {
                    closest = startS;
                }
            }
            return new StartAnswer.Never(
                    wanted,
                    Times.duration(atS),
                    search.at(closest),
                    Times.duration(closest),
                    search.evaluations(),
                    closest > 0 ? "Going in earlier or later is worse: other surroundings are needed." : MAY_HELP);
        }
        double latestS = starts.get(starts.size() - 1)[1];
        return new StartAnswer.Starts(
                wanted,
                Times.duration(atS),
                starts.stream().map(s -> Window.ofSeconds(s[0], s[1])).toList(),
                search.evaluations(),
                Times.duration(search.accuracyReached()),
                latestS < atS ? freezing(runFrom(latestS, atS), before == null ? atS - latestS : atS) : List.of());
    }

    private String help(Wanted wanted, double lookedS) {
        return Course.help(runFrom(0, Math.min(LONGER * lookedS, Times.seconds(LONGEST))), wanted, lookedS);
    }

    /** The temperature at an instant against the start. */
    private LevelSearch search(double atS, int steps) {
        return new LevelSearch(startS -> temperatureK(startS, atS), 0, atS, steps, mostRuns, ACCURACY_S);
    }

    private static double rounding(Wanted wanted) {
        return wanted.isTarget() ? 0 : Course.ROUNDING_K;
    }

    private static List<String> freezing(Prediction run, double byS) {
        OptionalDouble ice = Course.iceS(run, byS);
        return ice.isPresent() ? List.of(FREEZES) : List.of();
    }

    private double temperatureK(double startS, double atS) {
        if (atS - startS < 1e-3 && before == null) {
            return runs.vessel().temperatureK();
        }
        Prediction run = runFrom(startS, atS);
        return run.meanTemperatureK(run.trajectory().endS());
    }

    /** From its start, or from time 0 if it waits, to a time on the clock. */
    private Prediction runFrom(double startS, double endS) {
        Duration start = Times.duration(startS);
        Duration stay = Times.duration(endS).minus(start);
        List<Exposure> exposures = new ArrayList<>();
        if (before != null && !start.isZero()) {
            exposures.add(new Exposure(before, start));
        }
        if (!stay.isZero()) {
            exposures.add(new Exposure(surroundings, stay, placement));
        }
        return runs.run(before == null ? start : Duration.ZERO, exposures);
    }

    /** Whether a run that begins later on the clock takes the same course. */
    private boolean isConstant(Prediction run, double endS) {
        double laterS = endS * LATER_PART;
        Prediction later = runFrom(laterS, laterS + endS);
        double commonS = Math.min(run.trajectory().endS(), later.trajectory().endS());
        for (int i = 0; i <= LOOKS; i++) {
            double timeS = Math.min(commonS, commonS * i / LOOKS);
            if (Math.abs(run.meanTemperatureK(timeS) - later.meanTemperatureK(timeS)) > SAME_K) {
                return false;
            }
        }
        return true;
    }

    private static double requireHorizon(Duration time) {
        if (time.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException("time " + time + ": expected more than nothing and at most " + LONGEST);
        }
        return Times.positiveS(time, "time");
    }
}
