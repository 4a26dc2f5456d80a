/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.uncertainty.PredictionEnsemble;

/**
 * How probable it is that a temperature is as wanted, and when to start so that it is so with a stated probability.
 *
 * <p>The draws are those of a {@link PredictionEnsemble}: what is uncertain, and how, is said there. Each draw is a run from the moment the
 * vessel goes in; all starts are read off the same runs, so that this is for surroundings that do not change with the clock.
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
        if (!(probability > 0 && probability <= 1)) {
            throw new IllegalArgumentException("probability " + probability + ": expected above 0 and at most 1");
        }
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
        return sweep(
                new Asked(wanted, at, atS, (int) Math.ceil(probability * draws.size() - 1e-9)), opens, closes, latest);
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
                asked.wanted(), asked.at(), windows, Chance.of(atYoungest, draws.size()), spread(latest));
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

    private static void requireRange(Wanted wanted) {
        if (Objects.requireNonNull(wanted, "wanted").isTarget()) {
            throw new IllegalArgumentException("wanted " + wanted.lowK()
                    + " K: a single temperature has no probability; expected a range with a lower and an upper end");
        }
    }
}
