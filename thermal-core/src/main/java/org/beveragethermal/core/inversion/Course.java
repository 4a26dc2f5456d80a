/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.beveragethermal.core.prediction.Asymptote;
import org.beveragethermal.core.prediction.Prediction;

/** What inversions read off the course of one prediction. */
final class Course {

    /** Rounding of the map from enthalpy to temperature [K]. */
    static final double ROUNDING_K = 1e-6;

    /** A boundary is looked at again this much later [s]; roots are good to a millionth of a step. */
    private static final double LATER_S = 0.2;
    /** Ice that counts, as a part of the drink; less is rounding. */
    static final double SOME_ICE = 1e-6;
    /** Windows at most; a temperature that swings about an end of the range for thirty days stays below it. */
    private static final int MOST_WINDOWS = 10_000;

    /** A run continued so many times longer than was looked tells what it tends to. */
    private static final double LONGER = 2;

    private static final double DAY_S = 86_400;
    /** A quarter of it is a day, so that swings by day and night are seen to repeat. */
    private static final double LEAST_CONTINUED_S = 4 * DAY_S;

    private static final double LONGEST_S = 30 * DAY_S;
    /** A target this near to what is tended to is close to it: common thermometers are off by as much [K]. */
    private static final double NEAR_K = 0.5;
    /** Times that an error of the target moves by more than this part of themselves are worth little. */
    private static final double ILL_PART = 0.5;

    private Course() {}

    /**
     * When the mean temperature is wanted, from a time to the end of the run; what is shorter than a fifth of a second is an instant, and so
     * is each passage through a single temperature that is not kept.
     */
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
            lookS = leftS(prediction, targetK, fromS);
            all.add(new double[] {fromS, lookS});
            lookS += LATER_S;
        }
        while (lookS < endS && all.size() < MOST_WINDOWS) {
            OptionalDouble next =
                    prediction.trajectory().firstCrossing(lookS, timeS -> prediction.meanTemperatureK(timeS) - targetK);
            if (next.isEmpty()) {
                break;
            }
            double leftS = leftS(prediction, targetK, next.getAsDouble());
            all.add(new double[] {next.getAsDouble(), leftS});
            lookS = leftS + LATER_S;
        }
        return all;
    }

    /** Until when a temperature is kept to rounding: at once where it is only passed, later on a plateau of freezing. */
    private static double leftS(Prediction prediction, double targetK, double atS) {
        double endS = prediction.trajectory().endS();
        double soonS = Math.min(endS, atS + LATER_S);
        if (soonS == atS || Math.abs(prediction.meanTemperatureK(soonS) - targetK) > ROUNDING_K) {
            return atS;
        }
        return prediction
                .trajectory()
                .firstCrossing(soonS, timeS -> Math.abs(prediction.meanTemperatureK(timeS) - targetK) - 2 * ROUNDING_K)
                .orElse(endS);
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

    /** When the mean temperature is nearest to what is wanted, from a time to the end of the run. */
    static double closestS(Prediction prediction, Wanted wanted, double fromS) {
        return closestS(prediction, wanted, fromS, prediction.trajectory().endS());
    }

    /** When the mean temperature is nearest to what is wanted, between two times. */
    static double closestS(Prediction prediction, Wanted wanted, double fromS, double toS) {
        double foundS = prediction
                .trajectory()
                .timeOfLargest(fromS, timeS -> timeS <= toS ? -outsideK(prediction, wanted, timeS) : -Double.MAX_VALUE);
        return Math.min(toS, foundS);
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

    /** How long a run must be that tells what a temperature tends to: twice as long as was looked, at least four days. */
    static double continuedS(double lookedS) {
        return Math.max(lookedS, Math.min(LONGEST_S, Math.max(LONGER * lookedS, LEAST_CONTINUED_S)));
    }

    /** How much later it would be for a target a kelvin further [s/K]: one over the slope, finite. */
    static double secondsPerKelvin(double kelvinPerS) {
        return Math.min(Double.MAX_VALUE, 1 / Math.max(Double.MIN_NORMAL, Math.abs(kelvinPerS)));
    }

    /**
     * Why a time to a temperature is worth little.
     *
     * @param targetK the temperature that is met [K]
     * @param ageS how long it took [s]; 0 if it was there
     * @param secondsPerKelvin how much longer a kelvin further would take [s/K]
     * @param asymptote what it tends to, where that is known
     */
    static List<String> condition(double targetK, double ageS, double secondsPerKelvin, Optional<Asymptote> asymptote) {
        if (ageS <= 0) {
            return List.of();
        }
        if (asymptote.isPresent() && isNear(asymptote.get(), targetK)) {
            return List.of(Text.format(
                    "It %s, and %s lies close to that: the time is worth little.",
                    Text.tends(asymptote.get()), Text.celsius(targetK)));
        }
        return NEAR_K * secondsPerKelvin > ILL_PART * ageS
                ? List.of("Half a kelvin more or less moves that time by more than half: it is worth little.")
                : List.of();
    }

    /** Whether a temperature lies so close to what is tended to that a small error decides whether it is reached. */
    static boolean isNear(Asymptote asymptote, double targetK) {
        if (asymptote instanceof Asymptote.LevelsOff level) {
            return Math.abs(level.temperatureK() - targetK) < NEAR_K;
        }
        return asymptote instanceof Asymptote.Swings swings
                && Math.min(Math.abs(swings.lowK() - targetK), Math.abs(swings.highK() - targetK)) < NEAR_K;
    }

    /**
     * What would help where a temperature is not reached by a time: more time, as a longer run shows, or other surroundings.
     *
     * @param longer a run that begins as the one looked at and goes on longer
     * @param lookedS how long was looked [s]
     */
    static String help(Prediction longer, Wanted wanted, double lookedS) {
        for (double[] window : within(longer, wanted, 0)) {
            if (window[1] > lookedS) {
                return Text.format("%s more would do.", Text.time(Math.max(0, window[0] - lookedS)));
            }
        }
        Asymptote asymptote = longer.asymptote();
        double nearestK = asymptote.nearestK(wanted.nearestK(longer.meanTemperatureK(lookedS)));
        String needed = nearestK > wanted.highK() ? "colder" : nearestK < wanted.lowK() ? "warmer" : "other";
        return Text.format(
                "Put in at once and left there it %s: %s surroundings are needed.", Text.tends(asymptote), needed);
    }
}
