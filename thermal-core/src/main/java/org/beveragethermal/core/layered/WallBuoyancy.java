/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.SmoothFunction;

/**
 * What drives the film at a wall, and which way it runs, where the liquid may be densest between its core and the wall surface.
 *
 * <p>Without such a maximum the drive is the relative difference of density between core and wall surface, and its sign is the
 * direction. Water between a core and a wall on both sides of 4 °C has two layers that pull against each other: an outer one,
 * heavier than the core by u, from the core to the densest water, and an inner one from there to the wall, whose surface is
 * lighter than the densest by v. With the inversion parameter R = (T_m − T_core)/(T_wall − T_core) of Gebhart and Mollendorf
 * (Buoyancy-induced flows in water under conditions in which density extrema may arise, J. Fluid Mech. 89, 1978, 673–707) and a
 * density parabolic about its maximum, u : v = R² : (1 − R)².
 *
 * <p><b>Drive.</b> The integral of buoyancy over the profile (1 − y/δ)² of a film goes as 2 R/3 − 1/5 and vanishes at R = 3/10,
 * where v/u = 49/9 = a; the wall's own density, which equals the core's at R = 1/2, would stop the film too early. So up to
 * there the drive is u, from there v − (a − 1) u. The two are joined smoothly from R = 1/2 on, where the wall becomes lighter
 * than the core. Nothing is left of that on either side of the maximum (u or v = 0). That the drive stays at u while the inner
 * layer grows, instead of falling to 0 with the integral, is our own assumption: it never falls as the wall surface draws away
 * from the core, which is what gives each pair of temperatures on both sides of a resisting wall one heat and not several. The
 * coefficient so falls to 0.64 of what it is at R = 0 and R = 1; it is least at R = 0.35.
 *
 * <p><b>Direction.</b> From R = 1 to 1/2 all of the film runs with the outer layer, at R = 3/10 as much of it with either, below
 * R = 0.23 all of it with the inner one. Similarity solutions of a wall in an unbounded core at Pr = 11.6 end at R = 0.29 and
 * begin again at 0.15 (Gebhart and Mollendorf 1978, the two figures from memory); between them neither direction prevails.
 *
 * <p>A mutable workspace, owned by one evaluation.
 *
 * <p>Theory manual, equation (5.4).
 */
final class WallBuoyancy {

    /** Relative density difference over which the direction turns: a hundredth of a kelvin in wine. */
    private static final double TURN = 2e-6;

    /** Inner over outer difference of density where the layer's buoyancy balances: ((1 − R)/R)² at R = 3/10. */
    private static final double BALANCED = 49.0 / 9;

    private static final double SHARED = BALANCED - 1 / BALANCED;

    private final SmoothFunction density;
    private final double densestK;

    private double outer;
    private double outerByCore;
    private double outerBySurface;
    private double inner;
    private double innerByCore;
    private double innerBySurface;

    /** Relative density difference that drives the film [-], ≥ 0, and its slopes [1/K]. */
    double drive;

    double driveByCore;
    double driveBySurface;

    /** Part of the circumference on which the film runs down, and its slopes [1/K]. */
    double downPart;

    double downPartByCore;
    double downPartBySurface;

    /**
     * Makes a workspace.
     *
     * @param density density of the liquid by temperature
     * @param densestK temperature at which it is densest; the lower end of its range if it has no maximum
     */
    WallBuoyancy(SmoothFunction density, double densestK) {
        this.density = density;
        this.densestK = densestK;
    }

    /** Finds the drive. */
    void evaluateDrive(double coreK, double surfaceK) {
        layers(coreK, surfaceK);
        double byOuter;
        double byInner;
        double against = inner - outer;
        double width = 2 * (BALANCED - 1) * outer;
        if (against <= 0) {
            drive = outer;
            byOuter = 1;
            byInner = 0;
        } else if (against >= width) {
            drive = inner - (BALANCED - 1) * outer;
            byOuter = 1 - BALANCED;
            byInner = 1;
        } else {
            double rounded = 0.5 * against * against / width;
            drive = outer + rounded;
            byInner = against / width;
            byOuter = 1 - byInner - rounded / outer;
        }
        driveByCore = byOuter * outerByCore + byInner * innerByCore;
        driveBySurface = byOuter * outerBySurface + byInner * innerBySurface;
    }

    /** Finds the direction. */
    void evaluateDirection(double coreK, double surfaceK) {
        layers(coreK, surfaceK);
        double sum = outer + inner;
        double outerPart = sum > 0 ? outer / sum : 0;
        double innerPart = sum > 0 ? inner / sum : 0;
        double shared = SHARED * outerPart * inner;
        double sharedByOuter = SHARED * innerPart * innerPart;
        double sharedByInner = SHARED * outerPart * outerPart;
        double lean = outer - inner + shared;
        double width = TURN + shared;
        double x = 0.5 * (1 + lean / width);
        double byLean = 0.5 * SmoothMath.fadeSlope(x) / width;
        double byOuter = byLean * (1 + sharedByOuter * (1 - lean / width));
        double byInner = byLean * (-1 + sharedByInner * (1 - lean / width));
        downPart = SmoothMath.fade(x);
        downPartByCore = byOuter * outerByCore + byInner * innerByCore;
        downPartBySurface = byOuter * outerBySurface + byInner * innerBySurface;
    }

    private void layers(double coreK, double surfaceK) {
        double core = density.at(coreK);
        double coreRelative = density.slope(coreK) / core;
        double ratio = density.at(surfaceK) / core;
        double excess = ratio - 1;
        double excessByCore = -ratio * coreRelative;
        double excessBySurface = density.slope(surfaceK) / core;
        boolean between = Math.min(coreK, surfaceK) < densestK && densestK < Math.max(coreK, surfaceK);
        double densest = density.at(densestK) / core;
        if (between && densest >= Math.max(1, ratio)) {
            outer = densest - 1;
            outerByCore = -densest * coreRelative;
            outerBySurface = 0;
        } else {
            boolean heavier = excess >= 0;
            outer = heavier ? excess : 0;
            outerByCore = heavier ? excessByCore : 0;
            outerBySurface = heavier ? excessBySurface : 0;
        }
        inner = outer - excess;
        innerByCore = outerByCore - excessByCore;
        innerBySurface = outerBySurface - excessBySurface;
    }
}
