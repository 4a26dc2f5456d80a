/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.SmoothFunction;

/**
 * The film at the wall beside one slice: from what arrives along the wall, the temperature of the core and what lies behind the
 * wall surface, to the heat it takes and the deficit it carries on.
 *
 * <p>With the profile (1 − y/δ)² and velocity after Squire and Eckert, the volume flow per length of wall is M = g (Δρ/ρ) δ³/(4
 * ν) and the deficit of heat it carries D = ρ c M ΔT/4; the flux at the wall is q = k ΔT/δ. So δ³ = 16 ν D/(ρ c ΔT g Δρ/ρ), and
 * in a core of one temperature dD/dx = q integrates to D^(4/3) = D₀^(4/3) + (4/3) c x, with c = k^(4/3) ΔT^(4/3) (g (Δρ/ρ)/(16 ν
 * α))^(1/3). A core that is stratified gives back ρ c M dT/dx. The film never grows thicker than a third of the radius, where
 * conduction takes over. ΔT is counted from the core between the films, which differs from the slice's mean by what the film
 * holds: T_core = T + ΔT δ/R. Along an inclined wall x is
 * the length of the run and g the part of gravity along it; see {@link FilmRun}.
 *
 * <p>Where the liquid is densest between core and wall, Δρ/ρ is what {@link WallBuoyancy} says. The heat of the film never falls
 * as ΔT grows, so that there is one ΔT at which film and wall carry the same.
 *
 * <p>A mutable workspace, owned by one evaluation; heats are per length of circumference [W/m], counted positive from liquid to
 * wall.
 *
 * <p>Theory manual, equations (5.1), (5.2), (5.3).
 */
final class WallFilm {

    /** The thickest film, as a part of the radius [-]. */
    static final double THICKEST_PART = 1.0 / 3;

    private static final double SMALLEST_BUOYANCY = 1e-12;
    private static final double SMALLEST_DIFFERENCE_K = 1e-9;
    private static final int MAX_ITERATIONS = 60;
    private static final double ACCURACY = 1e-12;
    /**
     * Rounds the corner where a core stops giving back heat [-]: what rounding takes from the film, summed over a column,
     * vanishes with the slices because it goes with the square of their height over the radius.
     */
    private static final double CORNER = 0.01;

    /**
     * The difference between core and wall surface that a core's stratification is compared with is never less than half of this
     * [K]. A film that meets a wall which works against it, or none, gives back to a stratified core as much as if this half were
     * left, so that what it carries does not jump where the difference changes its sign. Own assumption.
     */
    private static final double TURN_K = 0.02;

    private final SmoothFunction conductivity;
    private final WallBuoyancy buoyancy;
    private final SmoothFunction inverseDiffusion;

    /** Heat to the wall over the slice [W/m] and its slopes in core, backing, arriving deficit and the factor. */
    double heat;

    double heatByCore;
    double heatByBacking;
    double heatByArriving;
    double heatByFactor;

    /** Deficit carried on [W/m] and its slopes, also in the core of the slice ahead. */
    double deficit;

    double deficitByCore;
    double deficitByAhead;
    double deficitByBacking;
    double deficitByArriving;
    double deficitByFactor;

    private double gravity;
    private double factor;
    private double layerHeat;
    private double layerHeatByX;
    private double layerHeatByCore;
    private double layerHeatByArriving;
    private double layerHeatByFactor;

    WallFilm(SmoothFunction conductivity, WallBuoyancy buoyancy, SmoothFunction inverseDiffusion) {
        this.conductivity = conductivity;
        this.buoyancy = buoyancy;
        this.inverseDiffusion = inverseDiffusion;
    }

    /**
     * Evaluates one slice.
     *
     * @param coreK mean temperature of the slice
     * @param aheadK mean temperature of the slice the film runs to
     * @param backingK temperature behind the wall surface
     * @param backingCoefficient conductance from the wall surface to there [W/(m² K)]
     * @param heightM length of the wall along which the film runs, in an upright vessel the height of the slice
     * @param gravityPart part of gravity that acts along the wall, 1 in an upright vessel
     * @param radiusM its inner radius
     * @param arriving deficit that arrives along the wall [W/m], signed like the heat to the wall
     * @param lawFactor on the heat that a film takes which starts at this slice in a core of one temperature
     */
    void evaluate(
            double coreK,
            double aheadK,
            double backingK,
            double backingCoefficient,
            double heightM,
            double gravityPart,
            double radiusM,
            double arriving,
            double lawFactor) {
        factor = lawFactor;
        gravity = ConvectiveFilm.GRAVITY * gravityPart;
        double sign = coreK >= backingK ? 1 : -1;
        double drop = Math.abs(coreK - backingK);
        // A deficit of the wrong sign meets a wall that works against it, and takes no part in this wall's film.
        double came = Math.max(0, sign * arriving);
        double backing = backingCoefficient * heightM;
        double x = solve(coreK, sign, drop, came, backing, heightM, radiusM);
        layer(coreK, sign, x, came, heightM, radiusM);
        double storage = conductivity.at(coreK) * heightM / radiusM;
        // F(x) = drop − Q/backing − x + storage x²/Q = 0
        double q = layerHeat;
        double byQ = -1 / backing - storage * x * x / (q * q);
        double byX = byQ * layerHeatByX - 1 + 2 * storage * x / q;
        double storageByCore = conductivity.slope(coreK) * heightM / radiusM * x * x / q;
        double xByCore = -(sign + byQ * layerHeatByCore + storageByCore) / byX;
        double xByBacking = sign / byX;
        double xByCame = -byQ * layerHeatByArriving / byX;
        double xByFactor = -byQ * layerHeatByFactor / byX;
        boolean counts = sign * arriving > 0;
        double cameByArriving = counts ? sign : 0;
        heat = sign * q;
        heatByCore = sign * (layerHeatByCore + layerHeatByX * xByCore);
        heatByBacking = sign * layerHeatByX * xByBacking;
        heatByArriving = sign * (layerHeatByArriving + layerHeatByX * xByCame) * cameByArriving;
        heatByFactor = sign * (layerHeatByFactor + layerHeatByX * xByFactor);
        carryOn(
                coreK,
                aheadK,
                sign,
                drop,
                x,
                came,
                xByCore,
                xByBacking,
                xByCame,
                xByFactor,
                cameByArriving,
                arriving,
                heightM / radiusM);
    }

    private void carryOn(
            double coreK,
            double aheadK,
            double sign,
            double drop,
            double x,
            double came,
            double xByCore,
            double xByBacking,
            double xByCame,
            double xByFactor,
            double cameByArriving,
            double arriving,
            double slenderness) {
        double t = Math.min(1, x / TURN_K);
        double thinned = x + 0.5 * TURN_K * (1 - t) * (1 - t);
        double thinnedByX = t;
        double ratio = sign * (coreK - aheadK) / thinned;
        double corner = CORNER * slenderness * slenderness;
        double root = Math.sqrt(ratio * ratio + corner * corner);
        double positiveSlope = 0.5 * (1 + ratio / root);
        double divisor = 1 + 2 * (ratio + root);
        // Of what the slice itself adds a core gives back nothing where no difference is left, whichever sign it has.
        double gives = SmoothMath.fade(drop / TURN_K);
        double byDrop = SmoothMath.fadeSlope(drop / TURN_K) / TURN_K * layerHeat * (1 / divisor - 1);
        double part = gives / divisor + 1 - gives;
        double given = came + gives * layerHeat;
        double byRatio = -4 * positiveSlope * given / (divisor * divisor);
        double byX = part * layerHeatByX - byRatio * ratio / thinned * thinnedByX;
        deficit = sign * (came / divisor + part * layerHeat);
        deficitByCore = sign * (part * layerHeatByCore + byRatio * sign / thinned + byX * xByCore) + byDrop;
        deficitByAhead = -byRatio / thinned;
        deficitByBacking = sign * byX * xByBacking - byDrop;
        deficitByArriving = sign * (1 / divisor + part * layerHeatByArriving + byX * xByCame) * cameByArriving;
        deficitByFactor = sign * (part * layerHeatByFactor + byX * xByFactor);
        if (sign * arriving < 0) {
            carryAgainst(coreK, aheadK, -sign, corner, arriving);
        }
    }

    /** A deficit against which the wall works: the same law where no difference is left. */
    private void carryAgainst(double coreK, double aheadK, double sign, double corner, double arriving) {
        double ratio = sign * (coreK - aheadK) / (0.5 * TURN_K);
        double root = Math.sqrt(ratio * ratio + corner * corner);
        double divisor = 1 + 2 * (ratio + root);
        double value = arriving / divisor;
        double byCore = -2 * (1 + ratio / root) * value / divisor * sign / (0.5 * TURN_K);
        deficit += value;
        deficitByCore += byCore;
        deficitByAhead -= byCore;
        deficitByArriving += 1 / divisor;
    }

    /** The temperature difference between core and wall surface that carries the same heat through the film and behind it. */
    private double solve(
            double coreK, double sign, double drop, double came, double backing, double heightM, double radiusM) {
        if (drop < SMALLEST_DIFFERENCE_K) {
            return SMALLEST_DIFFERENCE_K;
        }
        double storage = conductivity.at(coreK) * heightM / radiusM;
        double low = 0;
        double high = drop / (1 - THICKEST_PART);
        double x = 0.5 * drop;
        for (int i = 0; i < MAX_ITERATIONS; i++) {
            layer(coreK, sign, x, came, heightM, radiusM);
            double q = layerHeat;
            double f = drop - q / backing - x + storage * x * x / q;
            double slope = -layerHeatByX / backing - 1 + storage * (2 * x / q - x * x / (q * q) * layerHeatByX);
            if (f > 0) {
                low = x;
            } else {
                high = x;
            }
            double next = x - f / slope;
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            double change = Math.abs(next - x);
            x = next;
            if (change <= ACCURACY * drop) {
                break;
            }
        }
        return x;
    }

    /** Heat taken by the film over the slice at a temperature difference, and its slopes. */
    private void layer(double coreK, double sign, double x, double came, double heightM, double radiusM) {
        double wallK = coreK - sign * x;
        double filmK = coreK - 0.5 * sign * x;
        double k = conductivity.at(filmK);
        double kSlope = conductivity.slope(filmK);
        double inverse = inverseDiffusion.at(filmK);
        double inverseSlope = inverseDiffusion.slope(filmK);
        buoyancy.evaluateDrive(coreK, wallK);
        double b = Math.max(buoyancy.drive, SMALLEST_BUOYANCY);
        double bByWall = buoyancy.driveBySurface;
        double bByCore = bByWall + buoyancy.driveByCore;
        double c = Math.pow(factor * k * x, 4.0 / 3) * Math.cbrt(gravity * b * inverse / 16);
        double filmRelative = (4.0 / 3) * kSlope / k + inverseSlope / inverse / 3;
        double cByX = c * (4.0 / 3 / x - sign * bByWall / (3 * b) - 0.5 * sign * filmRelative);
        double cByCore = c * (bByCore / (3 * b) + filmRelative);
        double cameRoot = Math.cbrt(came);
        double reached = Math.pow(cameRoot * came + 4.0 / 3 * c * heightM, 0.75);
        double reachedRoot = Math.cbrt(reached);
        double flow = reached - came;
        double flowByC = heightM / reachedRoot;
        double flowByCame = cameRoot / reachedRoot - 1;
        double conduction = k * x * heightM / (THICKEST_PART * radiusM);
        double conductionByX = (k - 0.5 * sign * kSlope * x) * heightM / (THICKEST_PART * radiusM);
        double conductionByCore = kSlope * x * heightM / (THICKEST_PART * radiusM);
        double total =
                Math.sqrt(Math.sqrt(flow * flow * flow * flow + conduction * conduction * conduction * conduction));
        double flowShare = cube(flow / total);
        double conductionShare = cube(conduction / total);
        layerHeat = total;
        layerHeatByX = flowShare * flowByC * cByX + conductionShare * conductionByX;
        layerHeatByCore = flowShare * flowByC * cByCore + conductionShare * conductionByCore;
        layerHeatByArriving = flowShare * flowByCame;
        layerHeatByFactor = flowShare * flowByC * c * (4.0 / 3) / factor;
    }

    private static double cube(double x) {
        return x * x * x;
    }
}
