/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

/**
 * How the film runs along the wall beside a slice.
 *
 * <p>The law of the film is derived for an upright wall. Along an inclined wall it runs further for the same height and only the
 * part height/length of gravity drives it. That the same law holds there, under an overhang as well as over a slope, is our
 * assumption; in a thin laminar layer it is the usual one.
 *
 * <p>Theory manual, equation (5.1).
 *
 * @param lengthM length of the wall along which it runs past the slice [m], at least the slice's height
 * @param radiusM radius of a round vessel with as much liquid per area of wall [m], > 0
 * @param eddyM size of the largest eddy that fits the vessel [m], > 0
 */
public record FilmRun(double lengthM, double radiusM, double eddyM) {

    /** Rounding that a length may fall short of a height by. */
    private static final double ROUNDING = 1e-9;

    /** Along an upright wall: the radius is that of a cylinder of the slice's volume and height. */
    static FilmRun upright(double heightM, double volumeM3) {
        double radius = Math.sqrt(volumeM3 / (Math.PI * heightM));
        return new FilmRun(heightM, radius, radius);
    }

    void requireBeside(double heightM) {
        if (!(lengthM >= heightM * (1 - ROUNDING) && radiusM > 0 && eddyM > 0)
                || Double.isInfinite(lengthM + radiusM + eddyM)) {
            throw new IllegalArgumentException(
                    "film of length " + lengthM + " m, radius " + radiusM + " m, eddy " + eddyM + " m beside a slice "
                            + heightM + " m high: expected at least that length and finite values above 0");
        }
    }
}
