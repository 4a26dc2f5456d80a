/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;

/**
 * How the fit gets worse as one parameter is moved and the others follow.
 *
 * @param name the parameter
 * @param interval the values that the readings do not refuse; an end is empty where the profile stays flat, up to ten times the
 *     distance that linearisation gives, or to the parameter's bound
 * @param points what was looked at, in ascending order
 */
public record Profile(String name, ConfidenceInterval interval, List<Point> points) {

    /**
     * A point of a profile.
     *
     * @param value value of the parameter
     * @param signedRoot root of the increase of the cost over the variance of readings, negative below the estimate; it would be a
     *     straight line through 0 with the inverse of the standard error as slope if the model were linear
     */
    public record Point(double value, double signedRoot) {}

    /**
     * Checks the parts.
     *
     * @param name the parameter
     * @param interval the values that the readings do not refuse
     * @param points what was looked at, in ascending order, not modified
     */
    public Profile {
        points = List.copyOf(points);
    }

    /**
     * Whether the parameter can be moved far, in one direction at least, without the fit getting worse.
     *
     * @return true if the interval is open
     */
    public boolean isFlat() {
        return interval.isOpen();
    }
}
