/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.beveragethermal.core.prediction.Asymptote;
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
 * <p>In surroundings that do not change with the clock one run answers for all starts; a second one, begun later and continued for
 * twice as long, at least four days, tells whether they do, and what the temperature tends to. An answer warns where what is wanted lies
 * within half a kelvin of that: then the time is worth little. Where there is no start a run as long tells whether more time would help.
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
    /** The slope of a start is a difference over this [s]. */
    private static final double SLOPE_S = 60;
    /** Golden section narrows two steps of the scan to a hundredth. */
    private static final int REFINEMENTS = 10;

    private static final double GOLDEN = 0.381966011250105;

    private static final int LOOKS = 32;
    /** Runs of equal course and unequal length end on other steps, and agree to so many times their tolerance. */
    private static final double SAME_TOLERANCES = 2;

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
     * @param newMostRuns predictions at most, 10 to 10 000; 80 unless said otherwise; fewer than 52 scan more coarsely
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
        return new Search(Objects.requireNonNull(wanted, "wanted"), requireHorizon(at)).latestStart();
    }

    /**
     * How early the temperature can be as wanted, if the vessel goes in at time 0 of the clock or later. In surroundings that change,
     * waiting may be of use: starts are scanned in up to 24 steps, and around the one that is ready first the best is searched by golden
     * section, to the accuracy that the answer states; a better start may hide between two others of the scan that are worse.
     *
     * @param wanted what is wanted
     * @param horizon how long the clock is looked at, more than nothing, at most 30 days
     * @return when it goes in and is ready, or that it is not
     * @throws IllegalArgumentException if the horizon is outside its range
     */
    public ReadyAnswer earliestReady(Wanted wanted, Duration horizon) {
        return new Search(Objects.requireNonNull(wanted, "wanted"), requireHorizon(horizon)).earliestReady();
    }

    /** One question, which counts its runs; confined to one call. */
    private final class Search {

        private final Wanted wanted;
        private final double endS;
        private int count;

        Search(Wanted wanted, double endS) {
            this.wanted = wanted;
            this.endS = endS;
        }

        StartAnswer latestStart() {
            if (before == null) {
                Prediction run = runFrom(0, endS);
                Optional<Prediction> later = sameLater(run);
                if (later.isPresent()) {
                    return startsOf(run, later.get());
                }
            }
            return scannedStarts();
        }

        private StartAnswer startsOf(Prediction run, Prediction later) {
            List<double[]> ages = Course.within(run, wanted, 0);
            if (ages.isEmpty()) {
                double closestS = Course.closestS(run, wanted, 0);
                return never(run.meanTemperatureK(closestS), endS - closestS);
            }
            List<Window> windows = new ArrayList<>();
            for (double[] age : ages) {
                windows.add(Window.ofSeconds(endS - age[1], endS - age[0]));
            }
            Collections.reverse(windows);
            double ageS = ages.get(0)[0];
            double perKelvin = secondsPerKelvin(run, ageS);
            return new StartAnswer.Starts(
                    wanted,
                    Times.duration(endS),
                    windows,
                    perKelvin,
                    count,
                    Duration.ofMillis(1),
                    warnings(run, ageS, ageS, perKelvin, Optional.of(later.asymptote())));
        }

        private StartAnswer scannedStarts() {
            // What is run besides the scan: two that told whether the clock matters, and two at the end.
            int left = mostRuns - count - 2;
            int steps = Math.min(SCAN_STEPS, left / 2);
            LevelSearch search = new LevelSearch(this::temperatureK, 0, endS, steps, left, ACCURACY_S);
            double rounding = wanted.isTarget() ? 0 : Course.ROUNDING_K;
            List<double[]> starts = search.within(wanted.lowK() - rounding, wanted.highK() + rounding);
            if (starts.isEmpty()) {
                double closest = 0;
                for (int i = 0; i <= steps; i++) {
                    double startS = i == steps ? endS : endS * i / steps;
                    if (wanted.outsideK(search.at(startS)) < wanted.outsideK(search.at(closest))) {
                        closest = startS;
                    }
                }
                return never(search.at(closest), closest);
            }
            double latestS = starts.get(starts.size() - 1)[1];
            double perKelvin = 0;
            List<String> warnings = List.of();
            if (latestS < endS) {
                Prediction run = runFrom(latestS, endS);
                double besideS = latestS < SLOPE_S ? latestS + SLOPE_S : latestS - SLOPE_S;
                double slope = (endK(run) - temperatureK(besideS)) / SLOPE_S;
                double ageS = endS - latestS;
                perKelvin = Course.secondsPerKelvin(slope);
                warnings = warnings(run, run.trajectory().endS(), ageS, perKelvin, Optional.empty());
            }
            return new StartAnswer.Starts(
                    wanted,
                    Times.duration(endS),
                    starts.stream().map(s -> Window.ofSeconds(s[0], s[1])).toList(),
                    perKelvin,
                    count,
                    Times.duration(search.accuracyReached()),
                    warnings);
        }

        private StartAnswer.Never never(double closestK, double closestStartS) {
            Prediction longer = continued();
            return new StartAnswer.Never(
                    wanted,
                    Times.duration(endS),
                    closestK,
                    Times.duration(closestStartS),
                    longer.asymptote(),
                    count,
                    Course.help(longer, wanted, endS));
        }

        ReadyAnswer earliestReady() {
            Prediction atOnce = runFrom(0, endS);
            Optional<Prediction> later = before == null ? sameLater(atOnce) : Optional.empty();
            Closest closest = new Closest(atOnce);
            ReadyAnswer.Ready best = ready(atOnce, 0, later.map(Prediction::asymptote));
            if (later.isEmpty()) {
                int left = mostRuns - count - 1;
                int steps = Math.min(SCAN_STEPS, left);
                for (int i = 1; i < steps && !isLater(endS * i / steps, best); i++) {
                    double startS = endS * i / steps;
                    Prediction run = runFrom(startS, endS);
                    closest.look(run, startS);
                    best = earlier(best, ready(run, startS, Optional.empty()));
                }
                if (best != null) {
                    best = refined(best, endS / steps);
                }
            }
            if (best != null) {
                return counted(best, later.isPresent() ? Duration.ZERO : best.accuracy());
            }
            Prediction longer = continued();
            return new ReadyAnswer.Never(
                    wanted,
                    closest.temperatureK,
                    Times.duration(closest.atS),
                    longer.asymptote(),
                    count,
                    Course.help(longer, wanted, endS));
        }

        /** A start can only be of use before what it would be better than is ready. */
        private boolean isLater(double startS, ReadyAnswer.@Nullable Ready best) {
            return best != null && startS >= Times.seconds(best.ready());
        }

        /** Golden section around the best start of the scan, for the time at which it is ready. */
        private ReadyAnswer.Ready refined(ReadyAnswer.Ready scanned, double stepS) {
            ReadyAnswer.Ready best = scanned;
            double middle = Times.seconds(scanned.start());
            double low = Math.max(0, middle - stepS);
            double high = Math.min(middle + stepS, Times.seconds(scanned.ready()));
            for (int n = 0; n < REFINEMENTS && high - low > ACCURACY_S && count < mostRuns; n++) {
                double probe = high - middle > middle - low
                        ? middle + GOLDEN * (high - middle)
                        : middle - GOLDEN * (middle - low);
                ReadyAnswer.Ready there = ready(runFrom(probe, endS), probe, Optional.empty());
                boolean better = false;
                if (there != null && there.ready().compareTo(best.ready()) < 0) {
                    best = there;
                    better = true;
                }
                double worse = better ? middle : probe;
                middle = better ? probe : middle;
                low = worse < middle ? worse : low;
                high = worse > middle ? worse : high;
            }
            return new ReadyAnswer.Ready(
                    wanted,
                    best.start(),
                    best.windows(),
                    best.until(),
                    best.secondsPerKelvin(),
                    Times.duration(Math.max(ACCURACY_S, high - low)),
                    count,
                    best.warnings());
        }

        private ReadyAnswer.@Nullable Ready earlier(
                ReadyAnswer.@Nullable Ready one, ReadyAnswer.@Nullable Ready other) {
            if (one == null || other == null) {
                return one == null ? other : one;
            }
            return other.ready().compareTo(one.ready()) < 0 ? other : one;
        }

        private ReadyAnswer.Ready counted(ReadyAnswer.Ready r, Duration accuracy) {
            return new ReadyAnswer.Ready(
                    wanted, r.start(), r.windows(), r.until(), r.secondsPerKelvin(), accuracy, count, r.warnings());
        }

        /** Reads when it is ready off a run that goes in at a start; times of the run count from there, or from 0 if it waits. */
        private ReadyAnswer.@Nullable Ready ready(Prediction run, double startS, Optional<Asymptote> asymptote) {
            double originS = before == null ? startS : 0;
            double fromS = before == null ? 0 : startS;
            List<double[]> found = Course.within(run, wanted, fromS);
            if (found.isEmpty()) {
                return null;
            }
            double readyS = found.get(0)[0];
            double leftS = found.get(0)[1];
            double ageS = readyS - fromS;
            double perKelvin = ageS > 0 ? secondsPerKelvin(run, readyS) : 0;
            return new ReadyAnswer.Ready(
                    wanted,
                    Times.duration(startS),
                    found.stream()
                            .map(w -> Window.ofSeconds(originS + w[0], originS + w[1]))
                            .toList(),
                    leftS < run.trajectory().endS() ? Optional.of(Times.duration(originS + leftS)) : Optional.empty(),
                    perKelvin,
                    Duration.ZERO,
                    count,
                    warnings(run, readyS, ageS, perKelvin, asymptote));
        }

        private double secondsPerKelvin(Prediction run, double timeS) {
            return timeS > 0 ? Course.secondsPerKelvin(Course.rateKPerS(run, timeS)) : 0;
        }

        /** What is to be said of a run that is as wanted at a time of it. */
        private List<String> warnings(
                Prediction run, double timeS, double ageS, double perKelvin, Optional<Asymptote> asymptote) {
            List<String> all = new ArrayList<>(
                    Course.condition(wanted.nearestK(run.meanTemperatureK(timeS)), ageS, perKelvin, asymptote));
            if (Course.iceS(run, timeS).isPresent()) {
                all.add(FREEZES);
            }
            return all;
        }

        /** A run from time 0 that goes on much longer than was looked. */
        private Prediction continued() {
            count++;
            return runs.run(
                    Duration.ZERO,
                    List.of(new Exposure(surroundings, Times.duration(Course.continuedS(endS)), placement)));
        }

        /** A run that begins later on the clock and goes on longer, if as far as both go it takes the same course. */
        private Optional<Prediction> sameLater(Prediction run) {
            double laterS = endS * LATER_PART;
            double sameK = SAME_TOLERANCES * runs.solver().toleranceK();
            Prediction later = runFrom(laterS, laterS + Course.continuedS(endS));
            double commonS =
                    Math.min(run.trajectory().endS(), later.trajectory().endS());
            for (int i = 0; i <= LOOKS; i++) {
                double timeS = Math.min(commonS, commonS * i / LOOKS);
                if (Math.abs(run.meanTemperatureK(timeS) - later.meanTemperatureK(timeS)) > sameK) {
                    return Optional.empty();
                }
            }
            return Optional.of(later);
        }

        private double temperatureK(double startS) {
            return endS - startS < 1e-3 && before == null ? runs.vessel().temperatureK() : endK(runFrom(startS, endS));
        }

        private double endK(Prediction run) {
            return run.meanTemperatureK(run.trajectory().endS());
        }

        /** From its start, or from time 0 if it waits, to a time on the clock. */
        private Prediction runFrom(double startS, double untilS) {
            count++;
            Duration start = Times.duration(startS);
            Duration stay = Times.duration(untilS).minus(start);
            List<Exposure> exposures = new ArrayList<>();
            if (before != null && !start.isZero()) {
                exposures.add(new Exposure(before, start));
            }
            if (!stay.isZero()) {
                exposures.add(new Exposure(surroundings, stay, placement));
            }
            return runs.run(before == null ? start : Duration.ZERO, exposures);
        }

        /** The temperature nearest to what is wanted of all runs looked at. */
        private final class Closest {

            private double temperatureK;
            private double atS;

            Closest(Prediction first) {
                atS = Course.closestS(first, wanted, 0);
                temperatureK = first.meanTemperatureK(atS);
            }

            void look(Prediction run, double startS) {
                double fromS = before == null ? 0 : startS;
                double nearS = Course.closestS(run, wanted, fromS);
                double nearK = run.meanTemperatureK(nearS);
                if (wanted.outsideK(nearK) < wanted.outsideK(temperatureK)) {
                    temperatureK = nearK;
                    atS = nearS + (before == null ? startS : 0);
                }
            }
        }
    }

    private static double requireHorizon(Duration time) {
        if (time.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException("time " + time + ": expected more than nothing and at most " + LONGEST);
        }
        return Times.positiveS(time, "time");
    }
}
