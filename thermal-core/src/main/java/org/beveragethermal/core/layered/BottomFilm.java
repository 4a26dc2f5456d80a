/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import java.util.Optional;
import org.beveragethermal.core.correlation.HorizontalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Film;
import org.beveragethermal.core.film.FilmState;
import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.internal.SmoothMath;
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
 * 4 °C), the part from the surface to the densest overturns and the rest conducts; both count side by side.
 *
 * <p>The slope is continuous. A layer that overturns conducts its first {@value #TURN_K} K, which is what rounds the corner at
 * equal temperatures, and loses that again before {@value #FORGOTTEN_K} K more: farther from the corner the law is exactly the
 * one above, however thin the slice. The parts that meet at the densest temperature are rounded alike.
 *
 * <p>Theory manual, equation (5.6).
 *
 * @param areaM2 area of the surface [m²], > 0
 * @param halfHeightM half the height of the lowest slice [m], > 0
 * @param densestK temperature at which the liquid is densest [K]; the lower end of its range if it has no maximum
 * @param liquid the liquid
 */
record BottomFilm(double areaM2, double halfHeightM, double densestK, LiquidFit liquid) implements Film {

    private static final double THIRD = 1.0 / 3;

    /** Difference over which a regime gives way to the other: the tolerance of a run, so that it does not matter [K]. */
    static final double TURN_K = 1e-3;
    /** Difference over which what rounding added is taken back [K]. */
    static final double FORGOTTEN_K = 0.5;

    @Override
    public void evaluate(double sliceK, double surfaceK, HeatFlow out) {
        double sign = sliceK >= surfaceK ? 1 : -1;
        double x = sign * (sliceK - densestK);
        double y = sign * (surfaceK - densestK);
        double d = sign * (sliceK - surfaceK);
        double first = d - rise(d);
        double conducts = sign * (rise(x) - rise(y) + riseSlope(-x) * first);
        double firstPart = riseSlope(-x) * (1 - riseSlope(d));
        double bySlice = riseSlope(x) - riseCurvature(-x) * first + firstPart;
        double bySurface = -riseSlope(y) - firstPart;
        conduct(sliceK, conducts, bySlice, bySurface, out);
        overturn(sliceK - conducts, surfaceK, 1 - bySlice, -bySurface, out);
    }

    /** About the positive part of a difference: 0 below 0, with a level start, and the difference itself from 0.501 K on. */
    private static double rise(double x) {
        if (x <= 0) {
            return 0;
        }
        double t = Math.min(1, x / TURN_K);
        double level = TURN_K * t * t * t * (1 - 0.5 * t);
        return t < 1 ? level : x - 0.5 * TURN_K * (1 - SmoothMath.fade((x - TURN_K) / FORGOTTEN_K));
    }

    private static double riseSlope(double x) {
        return SmoothMath.fade(x / TURN_K)
                + 0.5 * TURN_K / FORGOTTEN_K * SmoothMath.fadeSlope((x - TURN_K) / FORGOTTEN_K);
    }

    /** Without the little that forgetting adds. */
    private static double riseCurvature(double x) {
        return SmoothMath.fadeSlope(x / TURN_K) / TURN_K;
    }

    /** The temperature between two at which the liquid is densest. */
    private double densestBetween(double oneK, double otherK) {
        return Math.min(Math.max(densestK, Math.min(oneK, otherK)), Math.max(oneK, otherK));
    }

    /** Through half the slice, over a difference with its slopes in slice and surface. */
    private void conduct(double sliceK, double difference, double bySlice, double bySurface, HeatFlow out) {
        double middle = sliceK - 0.5 * difference;
        double k = liquid.conductivity().at(middle);
        double kSlope = liquid.conductivity().slope(middle);
        double scale = areaM2 / halfHeightM;
        out.watts = scale * k * difference;
        out.perFromKelvin = scale * (k * bySlice + kSlope * (1 - 0.5 * bySlice) * difference);
        out.perToKelvin = scale * (k * bySurface - kSlope * 0.5 * bySurface * difference);
    }

    /** From an upper temperature, with its slopes in slice and surface, to the surface. */
    private void overturn(double upperK, double surfaceK, double upperBySlice, double upperBySurface, HeatFlow out) {
        double surfaceDensity = liquid.density().at(surfaceK);
        double excess = liquid.density().at(upperK) / surfaceDensity - 1;
        double difference = upperK - surfaceK;
        if (excess <= 0 || Math.abs(difference) < NOTHING_K) {
            return;
        }
        double film = 0.5 * (upperK + surfaceK);
        double k = liquid.conductivity().at(film);
        double group = liquid.inverseDiffusion().at(film);
        double h = HorizontalPlate.UNSTABLE_MCADAMS.law().nusselt(ConvectiveFilm.GRAVITY * excess * group, 1) * k;
        double common = 0.5
                * (liquid.conductivity().slope(film) / k
                        + THIRD * liquid.inverseDiffusion().slope(film) / group);
        double byUpper = common + THIRD * liquid.density().slope(upperK) / surfaceDensity / excess;
        double bySurface =
                common - THIRD * (1 + excess) / excess * liquid.density().slope(surfaceK) / surfaceDensity;
        double wattsByUpper = areaM2 * h * (1 + byUpper * difference);
        out.watts += areaM2 * h * difference;
        out.perFromKelvin += wattsByUpper * upperBySlice;
        out.perToKelvin += areaM2 * h * (bySurface * difference - 1) + wattsByUpper * upperBySurface;
    }

    /** What rounding leaves of a layer that does not overturn [K]. */
    private static final double NOTHING_K = 1e-11;

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
