/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import org.beveragethermal.core.film.FilmState;

/**
 * The film at the wall beside one slice at one moment, for explaining it.
 *
 * <p>The coefficient is counted from the slice's mean temperature, so that heat is coefficient times area times the difference
 * between slice and wall surface; Nusselt and Rayleigh number are on the height of the whole column.
 *
 * @param direction which way the film runs
 * @param heatW heat from the slice to the wall [W], negative if the wall warms the slice
 * @param surfaceK temperature of the wall's inner surface [K]
 * @param thicknessM thickness of liquid at rest that would resist as much [m], > 0
 * @param kelvinPerWatt resistance of the film, from the slice's mean to the wall surface [K/W], > 0
 * @param wallKelvinPerWatt resistance from the wall surface to what lies behind it, the inner half of the wall [K/W], > 0
 * @param state coefficient, numbers and law
 */
public record SliceFilm(
        Direction direction,
        double heatW,
        double surfaceK,
        double thicknessM,
        double kelvinPerWatt,
        double wallKelvinPerWatt,
        FilmState state) {

    /** Which way a film runs along the wall. */
    public enum Direction {
        /** Heavier than its slice. */
        DOWN,
        /** Lighter than its slice. */
        UP,
        /** About as heavy as its slice: part of the circumference runs down and part up. */
        TURNING,
        /** Slice and wall are of one temperature; no heat passes. */
        NONE
    }
}
