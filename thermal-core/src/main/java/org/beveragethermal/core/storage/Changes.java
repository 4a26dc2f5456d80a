/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Extremes and changes of lines. */
final class Changes {

    private static final double DAY_S = 86_400;

    private Changes() {}

    /** The point of the highest temperature for sign 1, of the lowest for sign −1, the first of several. */
    static int extreme(Lines lines, int sign) {
        int best = 0;
        for (int i = 1; i < lines.points(); i++) {
            if (sign * lines.temperatureK(i) > sign * lines.temperatureK(best)) {
                best = i;
            }
        }
        return best;
    }

    /** The point at which the steepest line ends. */
    static int steepest(Lines lines) {
        int best = 1;
        for (int i = 2; i < lines.points(); i++) {
            if (Math.abs(lines.rise(i) / lines.spanS(i)) > Math.abs(lines.rise(best) / lines.spanS(best))) {
                best = i;
            }
        }
        return best;
    }

    /** When the greatest change between two moments so far apart begins [s]: at or a window before a point, as lines have it. */
    static double greatestFromS(Lines lines, double windowS) {
        double lastS = lines.endS() - windowS;
        TreeSet<Double> begins = new TreeSet<>();
        for (int i = 0; i < lines.points(); i++) {
            begins.add(Math.min(lines.timeS(i), lastS));
            begins.add(Math.max(0, lines.timeS(i) - windowS));
        }
        double best = begins.first();
        for (double t : begins) {
            if (Math.abs(over(lines, t, windowS)) > Math.abs(over(lines, best, windowS))) {
                best = t;
            }
        }
        return best;
    }

    /** Change from a moment to the end of a window after it [K]. */
    static double over(Lines lines, double fromS, double windowS) {
        return lines.at(Math.min(lines.endS(), fromS + windowS)) - lines.at(fromS);
    }

    /** Differences between highest and lowest in whole days from the beginning [K]. */
    static List<Double> dailySwingsK(Lines lines) {
        List<Double> swings = new ArrayList<>();
        for (int day = 0; (day + 1) * DAY_S <= lines.endS(); day++) {
            Lines part = lines.part(day * DAY_S, (day + 1) * DAY_S);
            swings.add(part.temperatureK(extreme(part, 1)) - part.temperatureK(extreme(part, -1)));
        }
        return List.copyOf(swings);
    }
}
