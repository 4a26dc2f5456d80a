/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.time.Duration;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.solver.Trajectory;

/**
 * Reads off where a temperature tends to.
 *
 * @param run the run
 * @param temperatureK temperature [K] against time [s]
 * @param iceFraction ice per mass [-] against time [s]
 * @param fromS beginning of the last stay [s]
 */
record AsymptoteSearch(
        Trajectory run, DoubleUnaryOperator temperatureK, DoubleUnaryOperator iceFraction, double fromS) {

    /** More ice than this comes or goes while a drink freezes or thaws [-]; less is rounding. */
    private static final double SOME_ICE = 1e-4;

    private static final double S_PER_H = 3600;

    Asymptote found() {
        double endS = run.endS();
        double quarterS = (endS - fromS) / 4;
        double lastS = endS - quarterS;
        double low = extreme(lastS, endS, -1);
        double high = extreme(lastS, endS, 1);
        double swing = high - low;
        double endK = temperatureK.applyAsDouble(endS);
        Duration looked = Duration.ofMillis(Math.round(endS * 1000));
        double hours = quarterS / S_PER_H;
        boolean slow = swing <= Asymptote.LEVEL_K && swing <= Asymptote.LEVEL_K_PER_H * hours;
        if (slow && Math.abs(iceFraction.applyAsDouble(endS) - iceFraction.applyAsDouble(lastS)) <= SOME_ICE) {
            return new Asymptote.LevelsOff(endK, looked);
        }
        double beforeS = endS - 2 * quarterS;
        // A course that goes one way ends the quarter before where it begins the last, and shares neither end with it.
        boolean again = Math.abs(extreme(beforeS, lastS, -1) - low) <= Asymptote.SAME_SWING_PART * swing
                && Math.abs(extreme(beforeS, lastS, 1) - high) <= Asymptote.SAME_SWING_PART * swing;
        if (swing > Asymptote.LEVEL_K && again) {
            return new Asymptote.Swings(low, high, looked);
        }
        double rate = hours > 0 ? (endK - temperatureK.applyAsDouble(lastS)) / hours : 0;
        return new Asymptote.StillMoving(endK, rate, looked);
    }

    /** Largest (sign 1) or least (sign −1) temperature between two times. */
    private double extreme(double beginS, double stopS, int sign) {
        DoubleUnaryOperator height =
                timeS -> timeS <= stopS ? sign * temperatureK.applyAsDouble(timeS) : -Double.MAX_VALUE;
        return temperatureK.applyAsDouble(Math.min(stopS, run.timeOfLargest(beginS, height)));
    }
}
