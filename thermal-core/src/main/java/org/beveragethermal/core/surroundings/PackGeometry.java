/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.SmoothFunction;

/**
 * How a pack of floating ice lies in a bath, as smooth functions of the mass of ice left.
 *
 * <p>The submerged depth of a pack is its mass over (density of water × solid fraction × free cross-section); where that
 * exceeds the depth of the water, the pack stands on the floor and some of its ice is dry.
 *
 * <p>Theory manual, equation (4.12).
 *
 * @param depthM depth of the water [m]
 * @param freeAreaM2 free cross-section [m²]
 * @param solidFraction part of the pack that is ice [-]
 */
record PackGeometry(double depthM, double freeAreaM2, double solidFraction) {

    private static final double WATER_DENSITY = 1000;
    /** Width of the rounded corner where the pack reaches the floor, as a part of the depth; keeps the solver's steps long. */
    private static final double CORNER = 0.05;

    private static final double OFFSET = SmoothMath.min(0, 1, CORNER);

    /** Submerged depth of the pack over depth of the water if nothing stopped it. */
    private double relativeDepth(double iceKg) {
        return iceKg * relativeDepthPerKg();
    }

    private double relativeDepthPerKg() {
        return 1 / (WATER_DENSITY * solidFraction * freeAreaM2 * depthM);
    }

    private double packPart(double iceKg) {
        return (SmoothMath.min(relativeDepth(iceKg), 1, CORNER) - OFFSET) / (1 - OFFSET);
    }

    private double packPartSlope(double iceKg) {
        return SmoothMath.minSlope(relativeDepth(iceKg), 1, CORNER) * relativeDepthPerKg() / (1 - OFFSET);
    }

    /** Part of the depth that the pack takes, 0 to 1. */
    SmoothFunction packPart() {
        return of(this::packPart, this::packPartSlope);
    }

    /** Part of the depth that is clear water below the pack, 0 to 1. */
    SmoothFunction clearPart() {
        return of(m -> 1 - packPart(m), m -> -packPartSlope(m));
    }

    /**
     * Part of a vessel's wetted height that the pack touches; a vessel that ends below the surface is touched later, one that is held
     * above the floor wholly by a pack that need not reach the floor.
     */
    SmoothFunction packPartOf(double heldAtM, double wettedHeightM) {
        if (heldAtM > 0) {
            double perWetted = depthM / wettedHeightM;
            return of(
                    m -> (SmoothMath.min(packPart(m) * perWetted, 1, CORNER) - OFFSET) / (1 - OFFSET),
                    m -> SmoothMath.minSlope(packPart(m) * perWetted, 1, CORNER)
                            * packPartSlope(m)
                            * perWetted
                            / (1 - OFFSET));
        }
        double covered = depthM - wettedHeightM;
        if (covered <= CORNER * depthM) {
            return packPart();
        }
        double corner = CORNER * depthM;
        double scale = depthM / wettedHeightM;
        return of(
                m -> -SmoothMath.min(covered - packPart(m) * depthM, 0, corner) / wettedHeightM,
                m -> SmoothMath.minSlope(covered - packPart(m) * depthM, 0, corner) * packPartSlope(m) * scale);
    }

    /** One minus {@link #packPartOf}. */
    SmoothFunction clearPartOf(double heldAtM, double wettedHeightM) {
        SmoothFunction pack = packPartOf(heldAtM, wettedHeightM);
        return of(m -> 1 - pack.at(m), m -> -pack.slope(m));
    }

    /**
     * Whether the pack reaches down to a height, as a number that rises from 0 to 1 while it passes it: for a level surface in the
     * bath. None of it without ice, all of it where the pack stands on the floor.
     */
    SmoothFunction packAt(double heightM) {
        double width = 2 * CORNER;
        double begins = (1 - width) * (1 - Math.min(1, heightM / depthM));
        return of(
                m -> SmoothMath.fade((packPart(m) - begins) / width),
                m -> SmoothMath.fadeSlope((packPart(m) - begins) / width) * packPartSlope(m) / width);
    }

    /** One minus {@link #packAt}. */
    SmoothFunction clearAt(double heightM) {
        SmoothFunction pack = packAt(heightM);
        return of(m -> 1 - pack.at(m), m -> -pack.slope(m));
    }

    /** Part of the open surface that is pack rather than clear water: all of it until little ice is left. */
    SmoothFunction packPartOfSurface() {
        double half = CORNER;
        return of(m -> packPart(m) / (packPart(m) + half), m -> {
            double sum = packPart(m) + half;
            return packPartSlope(m) * half / (sum * sum);
        });
    }

    /** One minus {@link #packPartOfSurface}. */
    SmoothFunction clearPartOfSurface() {
        SmoothFunction pack = packPartOfSurface();
        return of(m -> 1 - pack.at(m), m -> -pack.slope(m));
    }

    /** Part of the ice that lies below the water level, 1 unless the pack stands on the floor. */
    SmoothFunction wetPart() {
        double small = 1e-6 / relativeDepthPerKg();
        return of(m -> packPart(Math.max(m, small)) / relativeDepth(Math.max(m, small)), m -> {
            if (m < small) {
                return 0;
            }
            double x = relativeDepth(m);
            return (packPartSlope(m) - packPart(m) * relativeDepthPerKg() / x) / x;
        });
    }

    private static SmoothFunction of(
            java.util.function.DoubleUnaryOperator value, java.util.function.DoubleUnaryOperator slope) {
        return new SmoothFunction() {
            @Override
            public double at(double x) {
                return value.applyAsDouble(Math.max(x, 0));
            }

            @Override
            public double slope(double x) {
                return x < 0 ? 0 : slope.applyAsDouble(x);
            }
        };
    }
}
