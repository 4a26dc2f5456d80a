/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.beveragethermal.core.prediction.Prediction;

/** What inversions read off the course of one prediction. */
final class Course {

    /** Rounding of the map from enthalpy to temperature [K]. */
    static final double ROUNDING_K = 1e-6;

    /** A boundary is looked at again this much later [s]; roots are good to a millionth of a step. */
    private static final double LATER_S = 0.2;
    /** Ice that counts, as a part of the drink; less is rounding. */
    private static final double SOME_ICE = 1e-6;
    /** Windows at most; a temperature that swings about an end of the range for thirty days stays below it. */
    private static final int MOST_WINDOWS = 10_000;

    private Course() {}

    /** When the mean temperature is wanted, from a time to the end of the run; what is shorter than a fifth of a second is an
     * instant. */
    static List<double[]> within(Prediction prediction, Wanted wanted, double fromS) {
        return wanted.isTarget()
                ? instants(prediction, wanted.lowK(), fromS)
                : stretches(prediction, new Wanted(wanted.lowK() - ROUNDING_K, wanted.highK() + ROUNDING_K), fromS);
    }

    private static List<double[]> instants(Prediction prediction, double targetK, double fromS) {
        List<double[]> all = new ArrayList<>();
        double endS = prediction.trajectory().endS();
        double lookS = fromS;
        if (Math.abs(prediction.meanTemperatureK(fromS) - targetK) <= ROUNDING_K) {
            all.add(new double[] {fromS, fromS});
            lookS += LATER_S;
        }
        while (lookS < endS && all.size() < MOST_WINDOWS) {
            OptionalDouble next =
                    prediction.trajectory().firstCrossing(lookS, timeS -> prediction.meanTemperatureK(timeS) - targetK);
            if (next.isEmpty()) {
                break;
            }
            all.add(new double[] {next.getAsDouble(), next.getAsDouble()});
            lookS = next.getAsDouble() + LATER_S;
        }
        return all;
    }

    private static List<double[]> stretches(Prediction prediction, Wanted wanted, double fromS) {
        List<double[]> all = new ArrayList<>();
        double endS = prediction.trajectory().endS();
        boolean inside = outsideK(prediction, wanted, fromS) <= 0;
        double sinceS = fromS;
        double lookS = fromS;
        while (lookS < endS && all.size() < MOST_WINDOWS) {
            OptionalDouble next =
                    prediction.trajectory().firstCrossing(lookS, timeS -> outsideK(prediction, wanted, timeS));
            if (next.isEmpty()) {
                break;
            }
            double changeS = next.getAsDouble();
            lookS = Math.min(endS, changeS + LATER_S);
            boolean insideThen = outsideK(prediction, wanted, lookS) <= 0;
            if (inside && !insideThen) {
                all.add(new double[] {sinceS, changeS});
            } else if (!inside && insideThen) {
                sinceS = changeS;
            } else if (!inside) {
                all.add(new double[] {changeS, changeS});
            }
            inside = insideThen;
        }
        if (inside) {
            all.add(new double[] {sinceS, endS});
        }
        return all;
    }

    private static double outsideK(Prediction prediction, Wanted wanted, double timeS) {
        return wanted.outsideK(prediction.meanTemperatureK(timeS));
    }

    /** When the mean temperature is nearest to what is wanted. */
    static double closestS(Prediction prediction, Wanted wanted, double fromS) {
        return prediction.trajectory().timeOfLargest(fromS, timeS -> -outsideK(prediction, wanted, timeS));
    }

    /** When any part of the drink first holds ice; empty if none does by a time. */
    static OptionalDouble iceS(Prediction prediction, double byS) {
        if (mostIce(prediction, 0) > SOME_ICE) {
            return OptionalDouble.of(0);
        }
        OptionalDouble first = prediction.trajectory().firstCrossing(0, timeS -> mostIce(prediction, timeS) - SOME_ICE);
        return first.isPresent() && first.getAsDouble() <= byS ? first : OptionalDouble.empty();
    }

    private static double mostIce(Prediction prediction, double timeS) {
        return Arrays.stream(prediction.iceProfile(timeS)).max().orElse(0);
    }

    /** Slope of the mean temperature [K/s], by a difference over at most two seconds. */
    static double rateKPerS(Prediction prediction, double timeS) {
        double before = Math.max(0, timeS - 1);
        double after = Math.min(prediction.trajectory().endS(), timeS + 1);
        return (prediction.meanTemperatureK(after) - prediction.meanTemperatureK(before)) / (after - before);
    }

    /**
     * What would help where a temperature is not reached by a time: more time, as a longer run shows, or other surroundings.
     *
     * @param longer a run that begins as the one looked at and lasts some times longer
     * @param lookedS how long was looked [s]
     */
    static String help(Prediction longer, Wanted wanted, double lookedS) {
        double endS = longer.trajectory().endS();
        for (double[] window : within(longer, wanted, 0)) {
            if (window[1] > lookedS) {
                return Text.format("%s more would do.", Text.time(Math.max(0, window[0] - lookedS)));
            }
        }
        double lastK = longer.meanTemperatureK(endS);
        return Text.format(
                "After %s it is at %s and moves by %.2f K/h: %s surroundings are needed.",
                Text.time(endS),
                Text.celsius(lastK),
                Math.abs(rateKPerS(longer, endS)) * 3600,
                lastK > wanted.highK() ? "colder" : "warmer");
    }
}
