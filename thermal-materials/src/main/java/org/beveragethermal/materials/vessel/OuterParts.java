/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * What belongs to a vessel but is no part of its thermal wall, because the contents do not touch it: the stem and foot of a
 * glass, the chimes of a keg, the handle of a cup. The profile of such a vessel leaves it out and begins at the underside of the
 * bowl or body.
 *
 * @param name what it is; not blank
 * @param massKg its mass, kg, greater than 0, at most 1000
 * @param heightBelowM how high it holds the underside of the profile above the plane the vessel stands on, m, 0 to 10; 0 for a
 *     handle
 */
public record OuterParts(String name, double massKg, double heightBelowM) {
    private static final double LARGEST_MASS_KG = 1000;
    private static final double LARGEST_HEIGHT_M = 10;

    /**
     * Checks the numbers.
     *
     * @param name what it is; not blank
     * @param massKg mass, kg, greater than 0, at most 1000
     * @param heightBelowM height below the profile, m, 0 to 10
     * @throws OutOfRangeException if a number is outside its range
     * @throws IllegalArgumentException if the name is blank or a number is NaN or infinite
     */
    public OuterParts {
        if (name.isBlank()) {
            throw new IllegalArgumentException("outer parts: expected a name, got a blank one");
        }
        if (!(massKg > 0 && massKg <= LARGEST_MASS_KG)) {
            throw OutOfRangeException.refusal("mass of " + name, massKg, Double.MIN_VALUE, LARGEST_MASS_KG, "kg", "");
        }
        if (!(heightBelowM >= 0 && heightBelowM <= LARGEST_HEIGHT_M)) {
            throw OutOfRangeException.refusal("height of " + name, heightBelowM, 0, LARGEST_HEIGHT_M, "m", "");
        }
    }
}
