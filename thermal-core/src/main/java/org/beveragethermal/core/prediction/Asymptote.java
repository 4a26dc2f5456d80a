/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.time.Duration;

/**
 * Where the mean temperature of a run tends to, as far as the run shows: what "it never gets there" is to be held against.
 *
 * <p>It is read off the last stay alone (the whole run, if the prediction does not know its stays): what the temperature does in the last
 * quarter of it, and whether it did the same in the quarter before. A short run shows little, and then it {@linkplain StillMoving is still
 * moving}; the question "and if it went on?" is answered by running longer and asking again. Nothing is said about what comes after the
 * run: a bath of ice holds a bottle near 0 °C for as long as there is ice, and a run that ends before the ice does cannot know that.
 */
public sealed interface Asymptote {

    /** The most that a temperature changes in the last quarter if it is said to level off [K]. */
    double LEVEL_K = 0.05;

    /** The fastest that it then changes [K/h], which short runs must keep too. */
    double LEVEL_K_PER_H = 0.05;

    /** Swings repeat if their ends do to this part of the swing [-]. */
    double SAME_SWING_PART = 0.1;

    /**
     * How long it was looked.
     *
     * @return end of the run, time since its start
     */
    Duration lookedFor();

    /**
     * The temperature towards a target that it ends at or keeps coming back to.
     *
     * @param targetK a target [K]
     * @return temperature [K]; of one that swings the nearest within the swing
     */
    double nearestK(double targetK);

    /**
     * The temperature levels off: it changes by less than {@value #LEVEL_K} K in the last quarter, and by less than {@value
     * #LEVEL_K_PER_H} K/h, and nothing freezes or thaws meanwhile.
     *
     * @param temperatureK temperature at the end [K]
     * @param lookedFor end of the run
     */
    record LevelsOff(double temperatureK, Duration lookedFor) implements Asymptote {

        @Override
        public double nearestK(double targetK) {
            return temperatureK;
        }
    }

    /**
     * It swings between two temperatures, the same in the last quarter as in the one before to a tenth of the swing, as under a thermostat
     * that cycles or by day and night.
     *
     * @param lowK lowest temperature in the last quarter [K]
     * @param highK highest [K]
     * @param lookedFor end of the run
     */
    record Swings(double lowK, double highK, Duration lookedFor) implements Asymptote {

        @Override
        public double nearestK(double targetK) {
            return Math.max(lowK, Math.min(highK, targetK));
        }
    }

    /**
     * It still moves, or still freezes or thaws: where it settles this run does not show.
     *
     * @param temperatureK temperature at the end [K]
     * @param kelvinPerHour mean rate in the last quarter [K/h], positive while it warms
     * @param lookedFor end of the run
     */
    record StillMoving(double temperatureK, double kelvinPerHour, Duration lookedFor) implements Asymptote {

        @Override
        public double nearestK(double targetK) {
            return temperatureK;
        }
    }
}
