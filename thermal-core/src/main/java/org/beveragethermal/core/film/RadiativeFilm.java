/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import java.util.Optional;
import org.beveragethermal.core.correlation.Radiation;
import org.beveragethermal.core.network.HeatFlow;

/**
 * Radiation from large surroundings to a small grey surface.
 *
 * @param areaM2 area [m²], ≥ 0
 * @param emissivity emissivity [-], 0 to 1
 */
public record RadiativeFilm(double areaM2, double emissivity) implements Film {

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
