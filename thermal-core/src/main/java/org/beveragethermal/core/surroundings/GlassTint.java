/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

/**
 * Colour of a bottle's glass: what one wall, about 3 mm, lets through of each of the five bands of {@link SunOptics}, reflection not
 * counted.
 *
 * <p>The figures are remembered from spectra of container glass (iron takes up near infrared around 1.05 µm in all of them, chromium
 * red and blue, the amber chromophore everything below 0.5 µm); those of the mean are good to 0.05 for colourless and to 0.15 for coloured
 * glass. Weighted with the sun they make a colourless wall take up 0.10, which is the table's value of window glass.
 */
public enum GlassTint {
    /** Flint: clear bottles and most drinking glasses. */
    COLOURLESS(0.95, 0.94, 0.90, 0.86, 0.85),
    /** Green of wine and beer bottles, pale to dark. */
    GREEN(0.30, 0.45, 0.50, 0.35, 0.60),
    /** Amber or brown. */
    AMBER(0.10, 0.40, 0.50, 0.45, 0.65);

    private final double violetToOrange;
    private final double red;
    private final double nearest;
    private final double near;
    private final double rest;

    GlassTint(double violetToOrange, double red, double nearest, double near, double rest) {
        this.violetToOrange = violetToOrange;
        this.red = red;
        this.nearest = nearest;
        this.near = near;
        this.rest = rest;
    }

    /** What a wall lets through of a band [-]. */
    double through(int band) {
        return switch (band) {
            case 0 -> violetToOrange;
            case 1 -> red;
            case 2 -> nearest;
            case 3 -> near;
            default -> rest;
        };
    }
}
