/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.Optional;

/**
 * A number that a fit looks for, or that it is given. Immutable.
 *
 * @param name its name, as the models know it, not blank
 * @param start where the search begins, finite, within the bounds
 * @param low lower bound, −∞ if there is none
 * @param high upper bound, above the lower one, +∞ if there is none
 * @param prior what is known of it beforehand
 * @param fixed whether it stays at its start
 * @param perRun whether each run has a value of its own; then its estimates are named {@code name@run}
 * @param scale how far off the start may be, &gt; 0: where further starts are drawn if neither bounds nor prior say so
 */
public record Parameter(
        String name,
        double start,
        double low,
        double high,
        Optional<Prior> prior,
        boolean fixed,
        boolean perRun,
        double scale) {

    /**
     * What is known of a parameter beforehand: a normal distribution.
     *
     * @param mean best value, finite
     * @param standardDeviation its standard uncertainty, finite, &gt; 0
     */
    public record Prior(double mean, double standardDeviation) {

        /**
         * Checks the parts.
         *
         * @param mean best value, finite
         * @param standardDeviation its standard uncertainty, finite, &gt; 0
         * @throws IllegalArgumentException if a part is outside its range
         */
        public Prior {
            if (!Double.isFinite(mean) || !(standardDeviation > 0) || Double.isInfinite(standardDeviation)) {
                throw new IllegalArgumentException("prior " + mean + " ± " + standardDeviation
                        + ": expected a finite mean and a finite width above 0");
            }
        }
    }

    /**
     * Checks the parts.
     *
     * @param name its name, as the models know it, not blank
     * @param start where the search begins, finite, within the bounds
     * @param low lower bound, −∞ if there is none
     * @param high upper bound, above the lower one, +∞ if there is none
     * @param prior what is known of it beforehand
     * @param fixed whether it stays at its start
     * @param perRun whether each run has a value of its own
     * @param scale how far off the start may be, finite, &gt; 0
     * @throws IllegalArgumentException if a part is outside its range
     */
    public Parameter {
        if (name.isBlank() || name.contains("@")) {
            throw new IllegalArgumentException(
                    "parameter '" + name + "': expected a name that is not blank, without @");
        }
        if (!Double.isFinite(start) || !(low < high) || !(start >= low && start <= high)) {
            throw new IllegalArgumentException("parameter " + name + ": start " + start + " in " + low + " to " + high
                    + ": expected a finite start within bounds that are in order");
        }
        if (!(scale > 0) || Double.isInfinite(scale)) {
            throw new IllegalArgumentException(
                    "parameter " + name + ": scale " + scale + ": expected a finite number above 0");
        }
    }

    /**
     * A parameter without bounds, shared by all runs.
     *
     * @param name its name, as the models know it
     * @param start where the search begins, finite
     * @return the parameter
     */
    public static Parameter of(String name, double start) {
        return new Parameter(
                name,
                start,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                Optional.empty(),
                false,
                false,
                start == 0 || !Double.isFinite(start) ? 1 : Math.abs(start));
    }

    /**
     * The same parameter within bounds.
     *
     * @param newLow lower bound, may be −∞
     * @param newHigh upper bound, may be +∞
     * @return a new parameter
     */
    public Parameter between(double newLow, double newHigh) {
        return new Parameter(name, start, newLow, newHigh, prior, fixed, perRun, scale);
    }

    /**
     * The same parameter with knowledge beforehand.
     *
     * @param mean best value
     * @param standardDeviation its standard uncertainty, &gt; 0
     * @return a new parameter
     */
    public Parameter withPrior(double mean, double standardDeviation) {
        return new Parameter(
                name, start, low, high, Optional.of(new Prior(mean, standardDeviation)), fixed, perRun, scale);
    }

    /**
     * The same parameter, kept at its start.
     *
     * @return a new parameter
     */
    public Parameter kept() {
        return new Parameter(name, start, low, high, prior, true, perRun, scale);
    }

    /**
     * The same parameter with a value of its own in each run.
     *
     * @return a new parameter
     */
    public Parameter forEachRun() {
        return new Parameter(name, start, low, high, prior, fixed, true, scale);
    }

    /**
     * The same parameter with another scale.
     *
     * @param newScale how far off the start may be, finite, &gt; 0
     * @return a new parameter
     */
    public Parameter withScale(double newScale) {
        return new Parameter(name, start, low, high, prior, fixed, perRun, newScale);
    }
}
