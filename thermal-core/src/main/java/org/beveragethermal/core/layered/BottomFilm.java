/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import java.util.Optional;
import org.beveragethermal.core.correlation.HorizontalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Film;
import org.beveragethermal.core.film.FilmState;
import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.network.HeatFlow;

/**
 * Heat between the lowest slice of a column and the level surface below it.
 *
 * <p><b>Heavy liquid below.</b> A cold bottom holds its cold liquid: between walls it cannot run off as from the plate of the
 * handbooks, so heat only conducts, over half the height of the slice. As slices get thinner that resistance vanishes and
 * conduction between slices takes its place.
 *
 * <p><b>Light liquid below.</b> It rises and mixes with what is above it; only the film on the surface resists, at whose edge
 * the liquid has its mixed temperature already. Its coefficient h = 0.15 k (g (Δρ/ρ)/(ν α))^(1/3) (McAdams, warm face up,
 * turbulent) has no length in it and so no height of a slice; conduction over half a slice is not added to it, because that
 * would be a second way round the film, the shorter the thinner the slice.
 *
 * <p>Which of the two it is follows from density. Where the densest temperature of the liquid lies between the two (water near
 * 4 °C), the part from the surface to the densest overturns and the rest conducts; both count side by side. The law is
 * continuous and grows with the temperature difference; its slope has a corner where it turns from the one to the other.
 *
 * @param areaM2 area of the surface [m²], > 0
 * @param halfHeightM half the height of the lowest slice [m], > 0
 * @param densestK temperature at which the liquid is densest [K]; the lower end of its range if it has no maximum
 * @param liquid the liquid
 */
record BottomFilm(double areaM2, double halfHeightM, double densestK, LiquidFit liquid) implements Film {

    private static final double THIRD = 1.0 / 3;

    @Override
    public void evaluate(double sliceK, double surfaceK, HeatFlow out) {
        double between = densestBetween(sliceK, surfaceK);
        out.watts = 0;
        out.perFromKelvin = 0;
        out.perToKelvin = 0;
        if (between != sliceK) {
            conduct(sliceK, between, between == surfaceK, out);
        }
        if (between != surfaceK) {
            overturn(between, surfaceK, between == sliceK, out);
        }
    }

    /** The temperature between two at which the liquid is densest. */
    private double densestBetween(double oneK, double otherK) {
        return Math.min(Math.max(densestK, Math.min(oneK, otherK)), Math.max(oneK, otherK));
    }

    private void conduct(double sliceK, double lowerK, boolean lowerIsSurface, HeatFlow out) {
        double middle = 0.5 * (sliceK + lowerK);
        double k = liquid.conductivity().at(middle);
        double byEach = 0.5 * liquid.conductivity().slope(middle) * (sliceK - lowerK);
        double scale = areaM2 / halfHeightM;
        out.watts += scale * k * (sliceK - lowerK);
        out.perFromKelvin += scale * (byEach + k);
        out.perToKelvin += lowerIsSurface ? scale * (byEach - k) : 0;
    }

    private void overturn(double upperK, double surfaceK, boolean upperIsSlice, HeatFlow out) {
        double surfaceDensity = liquid.density().at(surfaceK);
        double excess = liquid.density().at(upperK) / surfaceDensity - 1;
        if (excess <= 0) {
            return;
        }
        double film = 0.5 * (upperK + surfaceK);
        double difference = upperK - surfaceK;
        double k = liquid.conductivity().at(film);
        double group = liquid.inverseDiffusion().at(film);
        double h = HorizontalPlate.UNSTABLE_MCADAMS.law().nusselt(ConvectiveFilm.GRAVITY * excess * group, 1) * k;
        double common = 0.5
                * (liquid.conductivity().slope(film) / k
                        + THIRD * liquid.inverseDiffusion().slope(film) / group);
        double byUpper = common + THIRD * liquid.density().slope(upperK) / surfaceDensity / excess;
        double bySurface =
                common - THIRD * (1 + excess) / excess * liquid.density().slope(surfaceK) / surfaceDensity;
        out.watts += areaM2 * h * difference;
        out.perFromKelvin += upperIsSlice ? areaM2 * h * (1 + byUpper * difference) : 0;
        out.perToKelvin += areaM2 * h * (bySurface * difference - 1);
    }

    @Override
    public FilmState describe(double sliceK, double surfaceK) {
        HeatFlow flow = new HeatFlow();
        evaluate(sliceK, surfaceK, flow);
        double difference = sliceK - surfaceK;
        double film = 0.5 * (sliceK + surfaceK);
        double k = liquid.conductivity().at(film);
        boolean overturns = densestBetween(sliceK, surfaceK) != surfaceK;
        double h = difference == 0 ? k / halfHeightM : flow.watts / (areaM2 * difference);
        double excess = liquid.density().at(sliceK) / liquid.density().at(surfaceK) - 1;
        double length = overturns ? Math.sqrt(areaM2 / Math.PI) / 2 : halfHeightM;
        double ra = overturns
                ? ConvectiveFilm.GRAVITY
                        * Math.abs(excess)
                        * length
                        * length
                        * length
                        * liquid.inverseDiffusion().at(film)
                : 0;
        double pr = liquid.prandtl().at(film);
        return new FilmState(
                h,
                h * length / k,
                ra,
                overturns ? pr : 0,
                overturns ? HorizontalPlate.UNSTABLE_MCADAMS.name() : "conduction through a layer at rest",
                overturns ? HorizontalPlate.UNSTABLE_MCADAMS.outside(ra, pr) : Optional.empty());
    }
}
