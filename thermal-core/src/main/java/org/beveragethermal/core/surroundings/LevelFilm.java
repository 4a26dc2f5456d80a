/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.correlation.HorizontalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Film;
import org.beveragethermal.core.film.FilmState;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.SmoothFunction;

/**
 * Film of a liquid on a level disc. Whether it overturns follows from density, because water near 0 °C is lighter than at 4 °C: light
 * liquid above the disc rises, heavy liquid below it sinks.
 *
 * <p>Where the two have about one density a part of the disc overturns and the rest does not, so that the turn is smooth; a film at
 * the density maximum is driven by what lies between the two, also where the two weigh the same.
 *
 * @param overturning the film of a layer that overturns
 * @param resting the film of a layer that is stable
 * @param density density of the liquid [kg/m³] against temperature [K]
 * @param facesUp whether the liquid lies above the disc
 */
record LevelFilm(ConvectiveFilm overturning, ConvectiveFilm resting, SmoothFunction density, boolean facesUp)
        implements Film {

    /**
     * Conduction from one side of a disc into what surrounds it, on a quarter of the diameter, which is its area over its perimeter: a
     * shape factor 2 D gives h = 8 k/(π D). Source: Incropera, table 4.1, disc on a semi-infinite medium (from memory).
     */
    static final double CONDUCTION = 2 / Math.PI;

    /** Relative density difference over which the layer turns over: that of 0.1 K in water at 20 °C. */
    private static final double TURN = 2e-5;

    /** A disc in a liquid, with a stream along it. */
    static LevelFilm of(WallPatch disc, boolean facesUp, Fluid liquid, SmoothFunction density, Agitation agitation) {
        return of(disc, facesUp, liquid, density, agitation.speedMPerS());
    }

    /** A disc in a liquid, with a stream of a speed [m/s] along it. */
    static LevelFilm of(WallPatch disc, boolean facesUp, Fluid liquid, SmoothFunction density, double speedMPerS) {
        double length = disc.diameterM() / 4;
        ConvectiveFilm overturning = ConvectiveFilm.free(
                        disc.outerAreaM2(), length, liquid, HorizontalPlate.UNSTABLE_MCADAMS_BOTH)
                .atLeast(CONDUCTION);
        ConvectiveFilm resting = ConvectiveFilm.free(disc.outerAreaM2(), length, liquid, HorizontalPlate.STABLE_MCADAMS)
                .atLeast(CONDUCTION);
        return new LevelFilm(
                EndFaces.stirred(overturning, disc, speedMPerS),
                EndFaces.stirred(resting, disc, speedMPerS),
                density,
                facesUp);
    }

    /** Where between at rest (0) and overturning (1), before rounding. */
    private double turn(double bulkK, double surfaceK) {
        double heavier = density.at(surfaceK) / density.at(bulkK) - 1;
        return 0.5 * (1 + (facesUp ? -heavier : heavier) / TURN);
    }

    @Override
    public void evaluate(double bulkK, double surfaceK, HeatFlow out) {
        double x = turn(bulkK, surfaceK);
        double part = SmoothMath.fade(x);
        if (part == 0 || part == 1) {
            (part == 1 ? overturning : resting).evaluate(bulkK, surfaceK, out);
            return;
        }
        HeatFlow other = new HeatFlow();
        overturning.evaluate(bulkK, surfaceK, other);
        resting.evaluate(bulkK, surfaceK, out);
        double bulkDensity = density.at(bulkK);
        double sign = facesUp ? -1 : 1;
        double byHeavier = SmoothMath.fadeSlope(x) * 0.5 * sign / TURN * (other.watts - out.watts);
        double bySurface = density.slope(surfaceK) / bulkDensity;
        double byBulk = -density.at(surfaceK) / bulkDensity * density.slope(bulkK) / bulkDensity;
        out.watts += part * (other.watts - out.watts);
        out.perFromKelvin += part * (other.perFromKelvin - out.perFromKelvin) + byHeavier * byBulk;
        out.perToKelvin += part * (other.perToKelvin - out.perToKelvin) + byHeavier * bySurface;
    }

    @Override
    public FilmState describe(double bulkK, double surfaceK) {
        return (turn(bulkK, surfaceK) > 0.5 ? overturning : resting).describe(bulkK, surfaceK);
    }
}
