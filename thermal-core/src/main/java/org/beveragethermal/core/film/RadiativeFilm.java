/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import java.util.Optional;
import org.beveragethermal.core.correlation.Radiation;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * Radiation from large surroundings to a small grey surface.
 *
 * <p>Theory manual, equation (3.18).
 *
 * @param areaM2 area [m²], ≥ 0
 * @param emissivity emissivity [-], 0 to 1
 */
public record RadiativeFilm(double areaM2, double emissivity) implements Film {

    private static final String FACING = "surfaces that face each other";
    private static final ValidityRange EMISSIVITY = new ValidityRange("emissivity", 0, 1, "1");
    private static final ValidityRange AREA_RATIO =
            new ValidityRange("area of the inner surface over that of the outer", 0, 1, "1");

    /**
     * Checks the numbers.
     *
     * @param areaM2 area [m²], ≥ 0
     * @param emissivity emissivity [-], 0 to 1
     * @throws IllegalArgumentException if a number is outside its range
     */
    public RadiativeFilm {
        if (!(areaM2 >= 0 && emissivity >= 0 && emissivity <= 1) || Double.isInfinite(areaM2)) {
            throw new IllegalArgumentException("radiation to " + areaM2 + " m² of emissivity " + emissivity
                    + ": expected a finite area ≥ 0 and an emissivity of 0 to 1");
        }
    }

    /**
     * Emissivity that stands for two grey surfaces that face each other closely: 1/(1/ε₁ + 1/ε₂ − 1), large parallel planes.
     *
     * @param one emissivity of one [-], 0 to 1
     * @param other emissivity of the other [-], 0 to 1
     * @return emissivity of the pair [-], 0 if either is 0
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an emissivity is outside its range
     */
    public static double facing(double one, double other) {
        EMISSIVITY.require(one, FACING);
        EMISSIVITY.require(other, FACING);
        return one == 0 || other == 0 ? 0 : 1 / (1 / one + 1 / other - 1);
    }

    /**
     * Emissivity, on the area of the inner one, that stands for two grey surfaces of which one surrounds the other as a concentric
     * cylinder or sphere does: 1/(1/ε₁ + (A₁/A₂)(1/ε₂ − 1)). Source: any textbook of radiation, such as Cengel and Ghajar, table 13-3.
     *
     * @param inner emissivity of the inner surface [-], 0 to 1
     * @param outer emissivity of the outer surface [-], 0 to 1
     * @param innerOverOuterArea A₁/A₂ [-], 0 to 1; at 1 they are planes that face each other
     * @return emissivity of the pair [-], 0 if either is 0
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a number is outside its range
     */
    public static double facing(double inner, double outer, double innerOverOuterArea) {
        EMISSIVITY.require(inner, FACING);
        EMISSIVITY.require(outer, FACING);
        AREA_RATIO.require(innerOverOuterArea, FACING);
        return inner == 0 || outer == 0 ? 0 : 1 / (1 / inner + innerOverOuterArea * (1 / outer - 1));
    }

    @Override
    public void evaluate(double surroundingsK, double wallK, HeatFlow out) {
        double c = areaM2 * emissivity * Radiation.STEFAN_BOLTZMANN;
        double a3 = surroundingsK * surroundingsK * surroundingsK;
        double b3 = wallK * wallK * wallK;
        out.watts = c * (a3 * surroundingsK - b3 * wallK);
        out.perFromKelvin = 4 * c * a3;
        out.perToKelvin = -4 * c * b3;
    }

    @Override
    public FilmState describe(double surroundingsK, double wallK) {
        double h = emissivity
                * Radiation.STEFAN_BOLTZMANN
                * (surroundingsK * surroundingsK + wallK * wallK)
                * (surroundingsK + wallK);
        return new FilmState(h, 0, 0, 0, "radiation, grey surface in large surroundings", Optional.empty());
    }
}
