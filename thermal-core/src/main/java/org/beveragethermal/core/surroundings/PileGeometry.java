/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.solid.Ice;

/**
 * How a pile of ice and the liquid at its foot lie in a bucket, as smooth functions of the side of a block that is left.
 *
 * <p>The pile stands on the floor and sinks as it melts, its blocks equally dense. Liquid fills its gaps from below; once it
 * carries the ice, its depth is that of ice and liquid together, which no longer changes.
 *
 * @param iceKg ice while all blocks are whole [kg]
 * @param sideM side of a whole block [m]
 * @param liquidKg liquid while all blocks are whole [kg]; negative where that is more ice than there is water in all
 * @param liquidDensity density of the liquid [kg/m³]
 * @param solidFraction part of the pile that is ice [-]
 * @param keepsMelt whether melt water stays in the bucket
 * @param level how high ice and liquid reach at most, beside the vessels
 */
record PileGeometry(
        double iceKg,
        double sideM,
        double liquidKg,
        double liquidDensity,
        double solidFraction,
        boolean keepsMelt,
        FillLevel level) {

    private static final double ICE_DENSITY = Ice.density(273.15);
    /** Width of rounded corners, as a part of what they bound; keeps the solver's steps long. */
    private static final double CORNER = 0.05;
    /** Half the step of the differences that give slopes, as a part of a block's side. */
    private static final double STEP_PART = 1e-5;
    /** Height over which a level passes a level surface, as a part of the depth. */
    private static final double PASSING_PART = 0.05;
    /** Sides of a block that stands by itself. */
    private static final int SIDES = 4;

    /** Geometry in a bucket with vessels in it, all blocks whole. */
    static PileGeometry of(
            Bucket bucket,
            double iceKg,
            double sideM,
            double liquidKg,
            double liquidDensity,
            double solidFraction,
            boolean keepsMelt,
            List<Occupant> occupants) {
        return ofLeft(bucket, iceKg, sideM, iceKg, liquidKg, liquidDensity, solidFraction, keepsMelt, occupants);
    }

    /** The same where some ice has melted: pile and liquid reach as high as what is left of the whole. */
    static PileGeometry ofLeft(
            Bucket bucket,
            double wholeKg,
            double sideM,
            double leftKg,
            double liquidKg,
            double liquidDensity,
            double solidFraction,
            boolean keepsMelt,
            List<Occupant> occupants) {
        double volume = volumeM3(leftKg, liquidKg, liquidDensity, solidFraction, keepsMelt);
        return new PileGeometry(
                wholeKg,
                sideM,
                leftKg + liquidKg - wholeKg,
                liquidDensity,
                solidFraction,
                keepsMelt,
                FillLevel.of(bucket, volume, occupants));
    }

    /** The most room that pile and liquid ever take [m³]. */
    static double volumeM3(
            double iceKg, double liquidKg, double liquidDensity, double solidFraction, boolean keepsMelt) {
        double heaped = iceKg / (ICE_DENSITY * solidFraction);
        double afloat = keepsMelt ? (iceKg + liquidKg) / liquidDensity : 0;
        return Math.max(heaped, afloat);
    }

    private double part(double side) {
        return Math.max(0, side / sideM);
    }

    private double leftKg(double side) {
        double part = part(side);
        return iceKg * part * part * part;
    }

    double blocks() {
        return iceKg / (ICE_DENSITY * sideM * sideM * sideM);
    }

    double pileM(double side) {
        return leftKg(side) / (ICE_DENSITY * solidFraction * level.freeAreaM2());
    }

    double liquidM(double side) {
        if (!keepsMelt) {
            return 0;
        }
        double total = iceKg + liquidKg;
        double perDepth = liquidDensity * level.freeAreaM2();
        double afloat = total / perDepth;
        double amongIce = Math.max(0, total - leftKg(side)) / (perDepth * (1 - solidFraction));
        double corner = CORNER * afloat;
        return SmoothMath.min(amongIce, afloat, corner) - SmoothMath.min(0, afloat, corner);
    }

    /** Part of the ice that lies in the liquid, 0 to 1. */
    SmoothFunction wetPart() {
        return of(side -> {
            double whole = Math.max(leftKg(side), STEP_PART * iceKg);
            double carried = liquidM(side) * liquidDensity * solidFraction * level.freeAreaM2() / whole;
            return SmoothMath.min(carried, 1, CORNER) - SmoothMath.min(0, 1, CORNER);
        });
    }

    /** Part of a surface between two heights above the floor beside which liquid stands. */
    SmoothFunction besideLiquid(double lowM, double highM) {
        return of(side -> below(liquidM(side), lowM, highM));
    }

    /** Part of that surface beside which there is ice above the liquid. */
    SmoothFunction besideIce(double lowM, double highM) {
        return of(side -> besideIce(side, lowM, highM));
    }

    /** Part of that surface beside which there is nothing but air. */
    SmoothFunction besideAir(double lowM, double highM) {
        return of(side -> Math.max(0, 1 - besideIce(side, lowM, highM) - below(liquidM(side), lowM, highM)));
    }

    private double besideIce(double side, double lowM, double highM) {
        double above = below(pileM(side), lowM, highM) - below(liquidM(side), lowM, highM);
        return SmoothMath.rising(above, CORNER) / (1 - 0.5 * CORNER);
    }

    /**
     * Surface of the ice that the air above sees, over the free cross-section: what is covered, and, where no liquid hides
     * them, the four sides of blocks that lie apart.
     */
    SmoothFunction open() {
        return of(side -> covered(side) * (keepsMelt ? 1 : 1 + SIDES * (1 - covered(side))));
    }

    /** Part of the free cross-section that no block covers. */
    SmoothFunction uncovered() {
        return of(side -> 1 - covered(side));
    }

    /** Part of the free cross-section that blocks cover, seen from above, if they lie at random: 1 − exp(−n a²/A). */
    private double covered(double side) {
        double part = part(side);
        return -Math.expm1(-blocks() * sideM * sideM * part * part / level.freeAreaM2());
    }

    /** A power of the part of its side that a block has left. */
    SmoothFunction power(double exponent) {
        return of(side -> Math.pow(part(side), exponent));
    }

    /** The product of that power and the part of the ice that lies in the liquid. */
    SmoothFunction wetPower(double exponent) {
        SmoothFunction wet = wetPart();
        return of(side -> Math.pow(part(side), exponent) * wet.at(side));
    }

    /** How much of a band lies below a level, 0 to 1, with rounded corners inside the band. */
    private double below(double levelM, double lowM, double highM) {
        double height = Math.max(highM - lowM, PASSING_PART * level.depthM());
        double x = Math.min(1, Math.max(0, (levelM - lowM) / height));
        return (SmoothMath.rising(x, CORNER) - SmoothMath.rising(x - (1 - CORNER), CORNER)) / (1 - CORNER);
    }

    /** Slopes are differences: they decide the length of steps, never a balance. */
    private SmoothFunction of(DoubleUnaryOperator value) {
        double step = STEP_PART * sideM;
        return new SmoothFunction() {
            @Override
            public double at(double x) {
                return value.applyAsDouble(x);
            }

            @Override
            public double slope(double x) {
                return (value.applyAsDouble(x + step) - value.applyAsDouble(x - step)) / (2 * step);
            }
        };
    }
}
