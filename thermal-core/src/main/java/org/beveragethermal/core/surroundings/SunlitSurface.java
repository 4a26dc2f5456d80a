/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.materials.vessel.Profile;

/**
 * What a patch of a vessel shows to sun, sky and ground.
 *
 * <p>The side of an upright vessel is taken apart into cones of its outline. A cone that leans back by s from upright, lit by a sun at
 * elevation β, shows the beam 2 r dz cos β (√(1 − κ²) + κ arccos(−κ)) with κ = tan s tan β: what is seen of it from the sun's direction,
 * all round it from κ = 1 on and nothing of it below −1. For a cylinder that is its outline times the cosine of the elevation. Self-shading
 * of hollow outlines (neck on shoulder) is left out.
 *
 * <p>A cylinder that lies in an unknown direction shows the mean over all directions, (2/π) E(cos β) of its diameter times its length, E
 * being the complete elliptic integral of the second kind; an upright disc that looks in an unknown direction, cos β/π of its area.
 *
 * <p>Theory manual, equation (4.4).
 */
final class SunlitSurface {

    /** Cones into which a band is cut. */
    private static final int PIECES = 24;
    /** Step of the slope in the elevation [rad]. */
    private static final double STEP_RAD = 1e-6;

    private final DoubleUnaryOperator beam;
    private final double skyAreaM2;
    private final double groundAreaM2;

    private SunlitSurface(DoubleUnaryOperator beam, double areaM2, double skyPart) {
        this.beam = beam;
        this.skyAreaM2 = areaM2 * skyPart;
        this.groundAreaM2 = areaM2 * (1 - skyPart);
    }

    static SunlitSurface of(WallPatch patch, Occupant vessel) {
        double area = patch.outerAreaM2();
        return switch (patch.orientation()) {
            case UPRIGHT_WALL -> upright(patch, vessel);
            case LYING_WALL ->
                new SunlitSurface(e -> area * 2 / (Math.PI * Math.PI) * secondKind(Math.cos(e)), area, 0.5);
            case END_FACING_SIDEWAYS -> new SunlitSurface(e -> area * Math.cos(e) / Math.PI, area, 0.5);
            case END_FACING_UP -> new SunlitSurface(e -> area * Math.sin(e), area, 1);
            case END_FACING_DOWN -> new SunlitSurface(e -> 0, area, 0);
        };
    }

    /** The part of what a patch sees that is sky [-], without the outline of sloping walls. */
    static double skyPart(Orientation orientation) {
        return switch (orientation) {
            case UPRIGHT_WALL, LYING_WALL, END_FACING_SIDEWAYS -> 0.5;
            case END_FACING_UP -> 1;
            case END_FACING_DOWN -> 0;
        };
    }

    private static SunlitSurface upright(WallPatch patch, Occupant vessel) {
        Profile profile = vessel.vessel().profile();
        boolean inverted = vessel.posture() == Posture.INVERTED;
        double height = profile.heightM();
        double low = Math.max(0, inverted ? height - patch.highM() : patch.lowM());
        double high = Math.min(height, inverted ? height - patch.lowM() : patch.highM());
        double area = patch.outerAreaM2();
        if (!(high > low)) {
            return new SunlitSurface(e -> area * Math.cos(e) / Math.PI, area, 0.5);
        }
        double[] outline = new double[PIECES];
        double[] leaning = new double[PIECES];
        double length = (high - low) / PIECES;
        double side = 0;
        double seenFromAbove = 0;
        for (int i = 0; i < PIECES; i++) {
            double below = profile.outerRadiusM(low + i * length);
            double above = profile.outerRadiusM(Math.min(high, low + (i + 1) * length));
            double back = inverted ? above - below : below - above;
            outline[i] = (below + above) * length;
            leaning[i] = back / length;
            side += Math.PI * (below + above) * Math.hypot(length, back);
            seenFromAbove += Math.PI * (below + above) * back;
        }
        double scale = area / side;
        return new SunlitSurface(e -> scale * lit(outline, leaning, e), area, 0.5 * (1 + seenFromAbove / side));
    }

    private static double lit(double[] outline, double[] leaning, double elevationRad) {
        double cosine = Math.cos(elevationRad);
        double tangent = Math.tan(elevationRad);
        double sum = 0;
        for (int i = 0; i < outline.length; i++) {
            double k = leaning[i] * tangent;
            if (k >= 1) {
                sum += outline[i] * Math.PI * leaning[i] * Math.sin(elevationRad);
            } else if (k > -1) {
                sum += outline[i] * cosine * (Math.sqrt(1 - k * k) + k * Math.acos(-k));
            }
        }
        return sum;
    }

    /** Complete elliptic integral of the second kind E(k) by the arithmetic-geometric mean (Abramowitz and Stegun, 17.6). */
    static double secondKind(double modulus) {
        double a = 1;
        double b = Math.sqrt(Math.max(0, 1 - modulus * modulus));
        double power = 0.5;
        double sum = power * modulus * modulus;
        if (b < 1e-12) {
            return 1;
        }
        while (a - b > 1e-15 * a) {
            double c = 0.5 * (a - b);
            double mean = 0.5 * (a + b);
            b = Math.sqrt(a * b);
            a = mean;
            power *= 2;
            sum += power * c * c;
        }
        return Math.PI / (2 * a) * (1 - sum);
    }

    /** Area that, facing the sun, would get the same of the beam [m²]; 0 if the sun is not above the horizon. */
    double beamAreaM2(double elevationRad) {
        return elevationRad > 0 ? beam.applyAsDouble(elevationRad) : 0;
    }

    /** How that area changes with the elevation [m²/rad]. */
    double beamAreaPerRadian(double elevationRad) {
        return (beamAreaM2(elevationRad + STEP_RAD) - beamAreaM2(elevationRad - STEP_RAD)) / (2 * STEP_RAD);
    }

    /** Area that gets all of the diffuse light of the sky, as level ground does [m²]. */
    double skyAreaM2() {
        return skyAreaM2;
    }

    /** Area that gets all that the ground sends back [m²]. */
    double groundAreaM2() {
        return groundAreaM2;
    }
}
