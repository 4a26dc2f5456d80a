/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.time.Duration;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.solver.Trajectory;

/**
 * Looks for when a temperature of a run is within a range.
 *
 * @param run the run
 * @param temperatureK temperature [K] against time [s]
 * @param lowK lower end of the range [K]
 * @param highK upper end of the range [K]
 */
record RangeSearch(Trajectory run, DoubleUnaryOperator temperatureK, double lowK, double highK) {

    /** The end by which a range was entered is looked at again this much later [s]; roots are good to a millionth of a step. */
    private static final double LATER_S = 1;
    /** Rounding of the map from enthalpy to temperature [K]. */
    private static final double ROUNDING_K = 1e-6;

    TimeInRange from(double fromS) {
        double start = at(fromS);
        boolean below = start < lowK - ROUNDING_K;
        boolean above = start > highK + ROUNDING_K;
        OptionalDouble entered =
                below ? crossing(fromS, lowK) : above ? crossing(fromS, highK) : OptionalDouble.of(fromS);
        if (entered.isEmpty()) {
            double closest = extreme(fromS, below);
            return new TimeInRange.NeverEntered(at(closest), duration(closest));
        }
        double enteredS = entered.getAsDouble();
        double againS = Math.min(run.endS(), enteredS + LATER_S);
        double tooWarmS = leaves(above ? againS : enteredS, true);
        double tooColdS = leaves(below ? againS : enteredS, false);
        double leftS = Math.min(tooWarmS, tooColdS);
        if (leftS > run.endS()) {
            return stays(enteredS);
        }
        boolean tooWarm = tooWarmS < tooColdS;
        double furthest = extreme(leftS, tooWarm);
        return new TimeInRange.Leaves(
                duration(enteredS), duration(leftS), tooWarm, rate(leftS), at(furthest), duration(furthest));
    }

    private TimeInRange stays(double enteredS) {
        double lowest = extreme(enteredS, false);
        double highest = extreme(enteredS, true);
        return new TimeInRange.Stays(duration(enteredS), at(lowest), duration(lowest), at(highest), duration(highest));
    }

    /** When it first is beyond an end by more than rounding; infinity if it never is. */
    private double leaves(double fromS, boolean upper) {
        double limit = upper ? highK + ROUNDING_K : lowK - ROUNDING_K;
        double here = at(fromS);
        return (upper ? here > limit : here < limit)
                ? fromS
                : crossing(fromS, limit).orElse(Double.POSITIVE_INFINITY);
    }

    private double at(double timeS) {
        return temperatureK.applyAsDouble(timeS);
    }

    private OptionalDouble crossing(double fromS, double limitK) {
        return run.firstCrossing(fromS, t -> at(t) - limitK);
    }

    private double extreme(double fromS, boolean highest) {
        return run.timeOfLargest(fromS, t -> highest ? at(t) : -at(t));
    }

    /** By a difference over two seconds, or what is left of the run. */
    private double rate(double timeS) {
        double before = Math.max(0, timeS - 1);
        double after = Math.min(run.endS(), timeS + 1);
        return (at(after) - at(before)) / (after - before);
    }

    private static Duration duration(double timeS) {
        return Duration.ofMillis(Math.round(timeS * 1000));
    }
}
