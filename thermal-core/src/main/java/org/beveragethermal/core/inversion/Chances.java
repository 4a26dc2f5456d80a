/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.uncertainty.PredictionEnsemble;

/**
 * How probable it is that a temperature is as wanted, and when to start so that it is so with a stated probability.
 *
 * <p>The draws are those of a {@link PredictionEnsemble}: what is uncertain, and how, is said there. Each draw is a run from the moment the
 * vessel goes in; all starts are read off the same runs, which is for surroundings that do not change with the clock. Where they do, {@link
 * #latestStart(Function, Wanted, Duration, double)} makes an ensemble for each start that it looks at.
 *
 * <pre>{@code
 * Chances chances = Chances.of(PredictionEnsemble.of(Ensemble.of(400, 20260101L), LawScatter.all(), draw -> Lumped.of(bottle)
 *         .with(NetworkSolver.standard().withMultipliers(draw.values()))
 *         .expose(in(refrigerator, Duration.ofHours(5)))));
 * Chance ready = chances.inRange(Wanted.between(celsius(8), celsius(10)), Duration.ofHours(3));
 * SureStart start = chances.latestStart(Wanted.between(celsius(6), celsius(10)), Duration.ofHours(5), 0.95);
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Chances {

    private static final double SPREAD_TAIL = 0.05;
    private static final int SCAN_STEPS = 12;
    private static final int MOST_ENSEMBLES = 60;
    private static final double ACCURACY_S = 1;

    private final PredictionEnsemble ensemble;
    private final List<Prediction> draws;

    private Chances(PredictionEnsemble ensemble) {
        this.ensemble = ensemble;
        this.draws = ensemble.predictions();
    }

    /**
     * Asks about draws.
     *
     * @param ensemble one prediction per draw, each from the moment the vessel goes in
     * @return the questions
     */
    public static Chances of(PredictionEnsemble ensemble) {
        return new Chances(ensemble);
    }

    /**
     * The probability that the mean temperature is as wanted a while after the vessel went in.
     *
     * @param wanted a range
     * @param after time since it went in
     * @return the probability, its standard error and its interval
     * @throws IllegalArgumentException if the time is not in the runs, or what is wanted is one temperature, which has no probability
     */
    public Chance inRange(Wanted wanted, Duration after) {
        requireRange(wanted);
        double part = ensemble.probabilityInRange(
                after, wanted.lowK() - Course.ROUNDING_K, wanted.highK() + Course.ROUNDING_K);
        return Chance.of((int) Math.round(part * draws.size()), draws.size());
    }

    /**
     * The starts, from time 0 on, with which the mean temperature is as wanted at an instant in at least a stated part of the draws.
     *
     * @param wanted a range
     * @param at the instant, counted from the earliest start, more than nothing, at most as long as the runs
     * @param probability probability that is sure enough, above 0 and at most 1
     * @return the starts and the chance of the latest, or that none is sure enough
     * @throws IllegalArgumentException if the instant or the probability is outside its range, or what is wanted is one temperature
     */
    public SureStart latestStart(Wanted wanted, Duration at, double probability) {
        requireRange(wanted);
        double atS = Times.positiveS(at, "instant");
        requireProbability(probability);
        Map<Double, Integer> opens = new HashMap<>();
        Map<Double, Integer> closes = new HashMap<>();
        List<Double> latest = new ArrayList<>();
        for (Prediction draw : draws) {
            requireLongEnough(draw, at);
            List<double[]> ages = Course.within(draw, wanted, 0).stream()
                    .filter(age -> age[0] <= atS)
                    .toList();
            ages.forEach(age -> {
                opens.merge(age[0], 1, Integer::sum);
                closes.merge(Math.min(atS, age[1]), 1, Integer::sum);
            });
            if (!ages.isEmpty()) {
                latest.add(atS - ages.get(0)[0]);
            }
        }
        return sweep(new Asked(wanted, at, atS, enough(probability, draws.size())), opens, closes, latest);
    }

    /**
     * The same question in surroundings that change with the clock: each start that is looked at is a new ensemble. Starts are scanned in
     * twelve steps, and the ends of what is sure enough searched, with at most sixty ensembles; windows shorter than two steps may be
     * missed. Starts lie at least a second before the instant.
     *
     * @param fromStart from a start on the clock to an ensemble that lasts from then to the instant at least
     * @param wanted a range
     * @param at the instant on the clock, more than two seconds
     * @param probability probability that is sure enough, above 0 and at most 1
     * @return the starts and the chance of the latest, or that none is sure enough
     * @throws IllegalArgumentException if the instant or the probability is outside its range, or what is wanted is one temperature
     */
    public static SureStart latestStart(
            Function<Duration, PredictionEnsemble> fromStart, Wanted wanted, Duration at, double probability) {
        requireRange(wanted);
        requireProbability(probability);
        double lastS = Times.positiveS(at.minusSeconds(1), "instant less a second");
        DoubleFunction<Chance> chance = startS -> {
            Duration start = Times.duration(startS);
            return Chances.of(fromStart.apply(start)).inRange(wanted, at.minus(start));
        };
        LevelSearch search = new LevelSearch(
                startS -> chance.apply(startS).probability(), 0, lastS, SCAN_STEPS, MOST_ENSEMBLES, ACCURACY_S);
        int draws = fromStart.apply(Duration.ZERO).predictions().size();
        // Half a draw below the number that is sure enough.
        double level = (enough(probability, draws) - 0.5) / draws;
        List<Window> windows = new ArrayList<>();
        for (double[] stretch : search.within(level, 2)) {
            // An end may lie on either side of where a draw drops out; the sure side is that far inside.
            double insideS = search.accuracyReached();
            double fromS = stretch[0] == 0 ? 0 : stretch[0] + insideS;
            double toS = stretch[1] == lastS ? lastS : stretch[1] - insideS;
            if (fromS <= toS) {
                windows.add(Window.ofSeconds(fromS, toS));
            }
        }
        if (!windows.isEmpty()) {
            double latestS = Times.seconds(windows.get(windows.size() - 1).to());
            return new SureStart.Starts(wanted, at, windows, chance.apply(latestS), Optional.empty());
        }
        double bestS = 0;
        for (int i = 0; i <= SCAN_STEPS; i++) {
            double startS = i == SCAN_STEPS ? lastS : lastS * i / SCAN_STEPS;
            bestS = search.at(startS) > search.at(bestS) ? startS : bestS;
        }
        return new SureStart.NeverSure(wanted, at, chance.apply(bestS), Times.duration(bestS));
    }

    /** How many draws, one at least, are at least a part of them; rounding of the product does not ask for one more. */
    private static int enough(double probability, int draws) {
        return Math.max(1, (int) Math.ceil(probability * draws - 1e-9));
    }

    /** What is asked, and how many draws are sure enough. */
    private record Asked(Wanted wanted, Duration at, double atS, int enough) {}

    /** Counts, from the youngest age to the oldest, how many draws are as wanted. */
    private SureStart sweep(Asked asked, Map<Double, Integer> opens, Map<Double, Integer> closes, List<Double> latest) {
        TreeMap<Double, int[]> changes = new TreeMap<>();
        opens.forEach((age, count) -> changes.computeIfAbsent(age, key -> new int[2])[0] += count);
        closes.forEach((age, count) -> changes.computeIfAbsent(age, key -> new int[2])[1] += count);
        List<Window> windows = new ArrayList<>();
        int inside = 0;
        int most = 0;
        int atYoungest = 0;
        double mostS = 0;
        double sinceS = Double.NaN;
        for (var change : changes.entrySet()) {
            inside += change.getValue()[0];
            if (inside > most) {
                most = inside;
                mostS = change.getKey();
            }
            if (inside >= asked.enough() && Double.isNaN(sinceS)) {
                sinceS = change.getKey();
                atYoungest = windows.isEmpty() ? inside : atYoungest;
            }
            // A window holds its own end: those that close here count up to here.
            inside -= change.getValue()[1];
            if (inside < asked.enough() && !Double.isNaN(sinceS)) {
                windows.add(Window.ofSeconds(asked.atS() - change.getKey(), asked.atS() - sinceS));
                sinceS = Double.NaN;
            }
        }
        if (windows.isEmpty()) {
            return new SureStart.NeverSure(
                    asked.wanted(), asked.at(), Chance.of(most, draws.size()), Times.duration(asked.atS() - mostS));
        }
        Collections.reverse(windows);
        return new SureStart.Starts(
                asked.wanted(), asked.at(), windows, Chance.of(atYoungest, draws.size()), Optional.of(spread(latest)));
    }

    private static Window spread(List<Double> latest) {
        Collections.sort(latest);
        int tail = (int) Math.floor(SPREAD_TAIL * latest.size());
        return Window.ofSeconds(latest.get(tail), latest.get(latest.size() - 1 - tail));
    }

    private static void requireLongEnough(Prediction draw, Duration at) {
        if (draw.end().compareTo(at) < 0) {
            throw new IllegalArgumentException(
                    "instant after " + at + ": expected at most " + draw.end() + ", the length of the runs");
        }
    }

    private static void requireProbability(double probability) {
        if (!(probability > 0 && probability <= 1)) {
            throw new IllegalArgumentException("probability " + probability + ": expected above 0 and at most 1");
        }
    }

    private static void requireRange(Wanted wanted) {
        if (Objects.requireNonNull(wanted, "wanted").isTarget()) {
            throw new IllegalArgumentException("wanted " + wanted.lowK()
                    + " K: a single temperature has no probability; expected a range with a lower and an upper end");
        }
    }
}
