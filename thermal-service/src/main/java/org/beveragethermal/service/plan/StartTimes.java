/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Moments at which a bottle could be put somewhere, whole minutes: close to one another near the end, further apart the longer before. */
final class StartTimes {

    static final double MINUTE_S = 60;

    /** Distances before the end [min], up to so many: steps of 5 to an hour, 15 to four, 60 to a day, 240 to a week. */
    private static final int[][] STEPS = {{5, 60}, {15, 240}, {60, 1440}, {240, 10_080}};

    private StartTimes() {}

    /**
     * Moments in a span of time.
     *
     * @param earliestS first moment [s]; it is taken at the next whole minute
     * @param endS when it must be as wanted [s]
     * @return moments, earliest first, the earliest that is allowed among them
     */
    static List<Double> upTo(double earliestS, double endS) {
        TreeSet<Double> starts = new TreeSet<>();
        double first = wholeAfter(earliestS);
        if (first >= endS) {
            return List.of();
        }
        starts.add(first);
        int before = 0;
        for (int[] step : STEPS) {
            while (before < step[1]) {
                before += step[0];
                double start = whole(endS - before * MINUTE_S);
                if (start >= first) {
                    starts.add(start);
                }
            }
        }
        return new ArrayList<>(starts);
    }

    /** Whole minutes strictly between two moments, at most so many of them, evenly. */
    static List<Double> between(double fromS, double toS, int most) {
        int minutes = (int) Math.round((toS - fromS) / MINUTE_S);
        int step = Math.max(1, (minutes + most - 1) / most);
        List<Double> between = new ArrayList<>();
        for (int i = step; i < minutes; i += step) {
            between.add(fromS + i * MINUTE_S);
        }
        return between;
    }

    /** The whole minute at or before a moment; ∞ stays. */
    static double whole(double seconds) {
        return MINUTE_S * Math.floor(seconds / MINUTE_S);
    }

    static double wholeAfter(double seconds) {
        return MINUTE_S * Math.ceil(seconds / MINUTE_S);
    }
}
