/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import org.beveragethermal.core.inversion.Wanted;

/**
 * The best pouring temperature between two limits. How the course changes with the pouring temperature is smooth, so few runs and parabolas
 * between them tell all courses; the best is run and looked at again. Confined to one search and one thread; the number of runs is bounded.
 */
final class AimSearch {

    /** A minute on the side that waiting cures counts as half a minute; own judgement. */
    static final double WEIGHT_CURED = 0.5;

    private static final double STEP_K = 0.01;
    private static final int MOST_LOOKS = 1500;
    private static final int MOST_ROUNDS = 4;
    /** Runs of one parabola lie at least this part of the distance of the first runs apart, except for the two about its place. */
    private static final double APART = 0.25;
    /** Costs closer than this part of the drinking time are equal. */
    private static final double EQUAL = 1e-9;
    /** The mean may be outside by this, the error of straight lines between looks [K]. */
    private static final double MEAN_ROUNDING_K = 1e-3;

    private final Wanted wanted;
    private final double lowK;
    private final double highK;
    private final CuredByWaiting cured;
    private final DoubleFunction<GlassCourse> run;
    private final double apartK;
    private final TreeMap<Double, GlassCourse> known = new TreeMap<>();

    /**
     * A pouring temperature and what comes of it.
     *
     * @param pouringK pouring temperature [K]
     * @param course what comes of it
     */
    record Choice(double pouringK, GlassCourse course) {}

    /** Begins with runs spread evenly between the limits, at least three. */
    AimSearch(
            Wanted wanted,
            double lowK,
            double highK,
            CuredByWaiting cured,
            int firstRuns,
            DoubleFunction<GlassCourse> run) {
        this.wanted = wanted;
        this.lowK = lowK;
        this.highK = highK;
        this.cured = cured;
        this.run = run;
        this.apartK = APART * (highK - lowK) / (firstRuns - 1);
        for (int i = 0; i < firstRuns; i++) {
            double pouringK = i == firstRuns - 1 ? highK : lowK + (highK - lowK) * i / (firstRuns - 1);
            known.put(pouringK, run.apply(pouringK));
        }
    }

    int runs() {
        return known.size();
    }

    /** The best whose mean lies in the range; empty if there is none. */
    Optional<Choice> aim() {
        return refined(true);
    }

    /** The one with the longest time in the range, whatever its mean. */
    Choice longest() {
        return refined(false).orElseThrow();
    }

    /** As {@link #aim}, from the runs there are. */
    Optional<Choice> aimAsKnown() {
        return best(true);
    }

    /** As {@link #longest}, from the runs there are. */
    Choice longestAsKnown() {
        return best(false).orElseThrow();
    }

    private Optional<Choice> refined(boolean meanInside) {
        Optional<Choice> best = best(meanInside);
        for (int round = 0; round < MOST_ROUNDS && best.isPresent(); round++) {
            double pouringK = best.get().pouringK();
            if (known.containsKey(pouringK)) {
                break;
            }
            known.put(pouringK, run.apply(pouringK));
            best = best(meanInside);
        }
        // What is answered was run, not interpolated.
        return best.map(choice -> {
            GlassCourse course = known.computeIfAbsent(choice.pouringK(), run::apply);
            return new Choice(choice.pouringK(), course);
        });
    }

    private Optional<Choice> best(boolean meanInside) {
        int steps = (int) Math.max(2, Math.min(MOST_LOOKS, Math.ceil((highK - lowK) / STEP_K)));
        Set<Double> looks = new HashSet<>(known.keySet());
        for (int i = 0; i <= steps; i++) {
            looks.add(i == steps ? highK : lowK + (highK - lowK) * i / steps);
        }
        // The ends of the range are where time in it begins or ends at once.
        for (double end : new double[] {wanted.lowK(), wanted.highK()}) {
            if (end >= lowK && end <= highK) {
                looks.add(end);
            }
        }
        List<Choice> equal = new ArrayList<>();
        double least = Double.MAX_VALUE;
        for (double pouringK : looks.stream().sorted().toList()) {
            GlassCourse course = at(pouringK);
            if (meanInside && !meanIsInside(course)) {
                continue;
            }
            double cost = meanInside ? cost(course) : outsideS(course);
            double equalS = EQUAL * course.lengthS();
            if (cost < least - equalS) {
                equal.clear();
            }
            if (cost <= least + equalS) {
                least = Math.min(least, cost);
                equal.add(new Choice(pouringK, course));
            }
        }
        return equal.isEmpty() ? Optional.empty() : Optional.of(ofEqual(equal));
    }

    /** Of equal ones the one with most reserve against what is not cured. */
    private Choice ofEqual(List<Choice> equal) {
        return switch (cured) {
            case TOO_COLD -> equal.get(0);
            case TOO_WARM -> equal.get(equal.size() - 1);
            case NEITHER -> equal.get(equal.size() / 2);
        };
    }

    private boolean meanIsInside(GlassCourse course) {
        double meanK = course.meanK();
        return meanK >= wanted.lowK() - MEAN_ROUNDING_K && meanK <= wanted.highK() + MEAN_ROUNDING_K;
    }

    private double cost(GlassCourse course) {
        return cured.weightBelow(WEIGHT_CURED) * course.belowS(wanted.lowK())
                + cured.weightAbove(WEIGHT_CURED) * course.aboveS(wanted.highK());
    }

    private double outsideS(GlassCourse course) {
        return course.belowS(wanted.lowK()) + course.aboveS(wanted.highK());
    }

    /**
     * The course for a pouring temperature by the parabola through the runs on either side of it and a third that is far enough from both:
     * runs that lie close together, as those of a refined search do, would tell their rounding from afar.
     */
    GlassCourse at(double pouringK) {
        GlassCourse there = known.get(pouringK);
        if (there != null) {
            return there;
        }
        double below = known.lowerKey(pouringK);
        double above = known.higherKey(pouringK);
        double third = known.keySet().stream()
                .filter(other -> Math.abs(other - below) >= apartK && Math.abs(other - above) >= apartK)
                .min((one, other) -> Double.compare(Math.abs(one - pouringK), Math.abs(other - pouringK)))
                .orElseThrow();
        double[] arguments = {below, above, third};
        GlassCourse[] courses = Arrays.stream(arguments).mapToObj(known::get).toArray(GlassCourse[]::new);
        return GlassCourse.between(pouringK, arguments, courses);
    }
}
