/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.internal.SmoothMath;

/**
 * How much of a bath's water lies among its ice, as a smooth function of the ice left: the gaps of the pack, but never more
 * than there is, and always a little, so that the node that holds it never vanishes.
 *
 * @param totalKg ice and water together [kg]
 * @param gapsPerIce water in the gaps per ice [kg/kg]
 */
record PackWater(double totalKg, double gapsPerIce) {

    /** Least water in either zone as a part of the bath; small enough not to matter, large enough not to be stiff. */
    private static final double LEAST_PART = 0.01;

    private static final double CORNER_PART = 0.02;

    private double leastKg() {
        return LEAST_PART * totalKg;
    }

    private double corner() {
        return CORNER_PART * totalKg;
    }

    private double available(double iceKg) {
        return totalKg - iceKg - 2 * leastKg();
    }

    /** Water in the pack [kg]. */
    double at(double iceKg) {
        return leastKg()
                + SmoothMath.min(gapsPerIce * iceKg, available(iceKg), corner())
                - SmoothMath.min(0, available(0), corner());
    }

    double slope(double iceKg) {
        double s = SmoothMath.minSlope(gapsPerIce * iceKg, available(iceKg), corner());
        return gapsPerIce * s - (1 - s);
    }

    double curvature(double iceKg) {
        double grow = gapsPerIce + 1;
        return SmoothMath.minCurvature(gapsPerIce * iceKg, available(iceKg), corner()) * grow * grow;
    }
}
