/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;

/**
 * Colour of a drink: what it takes up of visible light beside what its water takes up of near infrared.
 *
 * <p>Coefficients are Naperian [1/m] for the bands 0.2–0.6 µm, 0.6–0.75 µm and 0.75–0.9 µm, and remembered from absorbances of drinks in
 * cells of 1 cm: red wine 2 or more at 520 nm and about 0.5 at 620 nm, white wine about 0.1 at 420 nm and 0.02 at 520 nm, pale beer 0.3 at
 * 430 nm. In a bottle a factor of two on them moves what is taken up by 0.06 of the sunlight.
 */
public enum DrinkTint {
    /** Water and clear spirits. */
    CLEAR(0, 0, 0),
    /** White wine, pale beer, cider, tea; also what is cloudy, whose light sent back is left out. */
    PALE(8, 0.5, 0),
    /** Red wine, dark beer, coffee, cola. */
    DARK(500, 30, 2);

    private final double violetToOrange;
    private final double red;
    private final double nearest;

    DrinkTint(double violetToOrange, double red, double nearest) {
        this.violetToOrange = violetToOrange;
        this.red = red;
        this.nearest = nearest;
    }

    /**
     * What is usual for a drink whose colour nobody stated: clear water and spirits, dark coffee and mulled wine, everything else pale.
     *
     * @param liquid the drink; a liquid that is no beverage is clear
     * @return the tint
     */
    public static DrinkTint usual(Liquid liquid) {
        if (!(liquid instanceof Beverage drink)) {
            return CLEAR;
        }
        return switch (drink.kind()) {
            case WATER, SPIRIT -> CLEAR;
            case COFFEE, MULLED_WINE -> DARK;
            default -> PALE;
        };
    }

    /** Beside water, in a band [1/m]. */
    double perMetre(int band) {
        return switch (band) {
            case 0 -> violetToOrange;
            case 1 -> red;
            case 2 -> nearest;
            default -> 0;
        };
    }
}
