/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * A profile that lies on its side, closed at the brim, its axis level: how high a liquid stands in it and what it wets.
 *
 * <p>Every cross-section is a circle, the liquid in it a segment; segments are integrated along the axis, apart on each side of
 * the places where the surface leaves a circle, to about ten digits. Levels are counted from the plane on which the widest part
 * lies; the axis is {@link #axisM()} above it. Immutable.
 */
public final class LyingProfile {
    private static final int MAX_LEVEL_STEPS = 200;
    private static final double LEVEL_ACCURACY = 1e-14;

    private final Profile upright;
    private final double axisM;
    private final double floorM;
    private final double floorRadiusM;

    private LyingProfile(Profile upright) {
        this.upright = upright;
        this.axisM = upright.maxOuterRadiusM();
        this.floorM = upright.baseThicknessM();
        this.floorRadiusM = upright.innerRadiusM(floorM);
    }

    /**
     * A profile laid on its side.
     *
     * @param upright the profile as it stands
     * @return the same, lying
     */
    public static LyingProfile of(Profile upright) {
        return new LyingProfile(upright);
    }

    /**
     * Height of the axis.
     *
     * @return height above the plane it lies on, m
     */
    public double axisM() {
        return axisM;
    }

    /**
     * Volume of liquid up to a level.
     *
     * @param levelM height of the surface, m, 0 to twice {@link #axisM()}
     * @return volume in m³
     * @throws OutOfRangeException if the level is outside the vessel
     * @throws IllegalArgumentException if the level is NaN or infinite
     */
    public double innerVolumeM3(double levelM) {
        double above = aboveAxis(levelM);
        return alongAxis(
                above,
                floorM,
                upright.heightM(),
                upright::innerRadiusM,
                (h, slope) -> segmentArea(upright.innerRadiusM(h), above) - segmentArea(puntRadius(h), above));
    }

    /**
     * Level of a volume of liquid; the inverse of {@link #innerVolumeM3(double)}.
     *
     * @param volumeM3 volume in m³, 0 to the brimful volume
     * @return height of the surface above the plane it lies on, m; for no liquid the lowest point of the inside
     * @throws OutOfRangeException if the volume is negative or larger than the vessel
     * @throws IllegalArgumentException if the volume is NaN or infinite
     */
    public double levelM(double volumeM3) {
        new ValidityRange("volume of liquid", 0, upright.brimfulVolumeM3(), "m³").require(volumeM3, "brimful volume");
        double widest = widestInsideM();
        double low = axisM - widest;
        double high = axisM + widest;
        if (volumeM3 == 0) {
            return low;
        }
        // Newton's method on a monotone function, kept inside a bracket that only shrinks.
        double level = low + (high - low) * (volumeM3 / upright.brimfulVolumeM3());
        for (int i = 0; i < MAX_LEVEL_STEPS && high - low > LEVEL_ACCURACY * axisM; i++) {
            double excess = innerVolumeM3(level) - volumeM3;
            if (excess < 0) {
                low = level;
            } else {
                high = level;
            }
            double newton = level - excess / surfaceAreaM2(level);
            double next = newton > low && newton < high ? newton : low + (high - low) / 2;
            if (Math.abs(next - level) <= LEVEL_ACCURACY * axisM) {
                return next;
            }
            level = next;
        }
        return level;
    }

    /**
     * Area of the liquid's surface at a level: the slope of {@link #innerVolumeM3(double)}.
     *
     * @param levelM height of the surface, m, 0 to twice {@link #axisM()}
     * @return area in m², 0 below and above the inside
     * @throws OutOfRangeException if the level is outside the vessel
     * @throws IllegalArgumentException if the level is NaN or infinite
     */
    public double surfaceAreaM2(double levelM) {
        double above = aboveAxis(levelM);
        return alongAxis(
                above,
                floorM,
                upright.heightM(),
                upright::innerRadiusM,
                (h, slope) -> chord(upright.innerRadiusM(h), above) - chord(puntRadius(h), above));
    }

    /**
     * Length of the liquid's surface along the axis at a level; the surface meets the side wall along twice that length.
     *
     * @param levelM height of the surface, m, 0 to twice {@link #axisM()}
     * @return length in m, 0 below and above the inside
     * @throws OutOfRangeException if the level is outside the vessel
     * @throws IllegalArgumentException if the level is NaN or infinite
     */
    public double surfaceLengthM(double levelM) {
        double above = aboveAxis(levelM);
        return alongAxis(
                above,
                floorM,
                upright.heightM(),
                upright::innerRadiusM,
                (h, slope) -> upright.innerRadiusM(h) > Math.abs(above) ? 1 : 0);
    }

    /**
     * Volume that the vessel displaces when it lies in a liquid up to a level; the hollow under a punt counts as vessel, as in
     * {@link Profile#outerVolumeM3}, though some of it fills.
     *
     * @param levelM height, m, 0 to twice {@link #axisM()}
     * @return volume in m³
     * @throws OutOfRangeException if the level is outside the vessel
     * @throws IllegalArgumentException if the level is NaN or infinite
     */
    public double outerVolumeM3(double levelM) {
        double above = aboveAxis(levelM);
        return alongAxis(
                above,
                0,
                upright.heightM(),
                upright::outerRadiusM,
                (h, slope) -> segmentArea(upright.outerRadiusM(h), above));
    }

    /**
     * Area of the inside that is wetted below a level: side wall and floor.
     *
     * @param levelM height of the surface, m, 0 to twice {@link #axisM()}
     * @return area in m², without the closure
     * @throws OutOfRangeException if the level is outside the vessel
     * @throws IllegalArgumentException if the level is NaN or infinite
     */
    public double wettedAreaM2(double levelM) {
        return innerSideAreaM2(0, upright.heightM(), levelM) + floorAreaM2(levelM);
    }

    /**
     * Area of the floor that is wetted below a level.
     *
     * @param levelM height of the surface, m, 0 to twice {@link #axisM()}
     * @return area in m²
     * @throws OutOfRangeException if the level is outside the vessel
     * @throws IllegalArgumentException if the level is NaN or infinite
     */
    public double floorAreaM2(double levelM) {
        double slope = upright.puntDepthM() / floorRadiusM;
        return Math.sqrt(1 + slope * slope) * segmentArea(floorRadiusM, aboveAxis(levelM));
    }

    /**
     * Area of the side wall's inside that is wetted below a level, of the part of the vessel between two places on its axis.
     *
     * @param fromM place on the axis, m, counted as the height of the upright vessel, 0 to its height
     * @param toM another one, m, not less
     * @param levelM height of the surface, m, 0 to twice {@link #axisM()}
     * @return area in m²
     * @throws OutOfRangeException if a place or the level is outside the vessel or the places are out of order
     * @throws IllegalArgumentException if a number is NaN or infinite
     */
    public double innerSideAreaM2(double fromM, double toM, double levelM) {
        requirePlaces(fromM, toM);
        return sideArea(aboveAxis(levelM), Math.max(floorM, fromM), Math.max(floorM, toM), upright::innerRadiusM);
    }

    /**
     * Area of the side wall's outside below a level, such as that of the water in which the vessel lies.
     *
     * @param levelM height, m, 0 to twice {@link #axisM()}
     * @return area in m², without base and closure
     * @throws OutOfRangeException if the level is outside the vessel
     * @throws IllegalArgumentException if the level is NaN or infinite
     */
    public double outerSideAreaM2(double levelM) {
        return outerSideAreaM2(0, upright.heightM(), levelM);
    }

    /**
     * Area of the side wall's outside below a level, of the part of the vessel between two places on its axis.
     *
     * @param fromM place on the axis, m, counted as the height of the upright vessel, 0 to its height
     * @param toM another one, m, not less
     * @param levelM height, m, 0 to twice {@link #axisM()}
     * @return area in m²
     * @throws OutOfRangeException if a place or the level is outside the vessel or the places are out of order
     * @throws IllegalArgumentException if a number is NaN or infinite
     */
    public double outerSideAreaM2(double fromM, double toM, double levelM) {
        requirePlaces(fromM, toM);
        return sideArea(aboveAxis(levelM), fromM, toM, upright::outerRadiusM);
    }

    private void requirePlaces(double fromM, double toM) {
        new ValidityRange("place on the axis", 0, upright.heightM(), "m")
                .require(fromM, "height of the upright vessel");
        new ValidityRange("place on the axis", fromM, upright.heightM(), "m")
                .require(toM, "above the first place, within the vessel");
    }

    private double sideArea(double above, double from, double to, DoubleUnaryOperator radius) {
        return alongAxis(
                above,
                from,
                to,
                radius,
                (h, slope) -> 2
                        * halfAngle(radius.applyAsDouble(h), above)
                        * radius.applyAsDouble(h)
                        * Math.sqrt(1 + slope * slope));
    }

    private double aboveAxis(double levelM) {
        return new ValidityRange("level", 0, 2 * axisM, "m").require(levelM, "height of the lying vessel") - axisM;
    }

    private double widestInsideM() {
        double widest = floorRadiusM;
        for (Station station : upright.stations()) {
            widest = Math.max(widest, station.heightM() > floorM ? station.innerRadiusM() : 0);
        }
        return widest;
    }

    private double puntRadius(double h) {
        double depth = upright.puntDepthM();
        return h < floorM || h - floorM >= depth ? 0 : floorRadiusM * (1 - (h - floorM) / depth);
    }

    /** Angle from straight down to where the surface meets a circle, 0 if it is dry, π if it is full. */
    private static double halfAngle(double radius, double above) {
        return above >= radius ? Math.PI : above <= -radius ? 0 : Math.acos(-above / radius);
    }

    private static double segmentArea(double radius, double above) {
        double angle = halfAngle(radius, above);
        return radius * radius * (angle - Math.sin(angle) * Math.cos(angle));
    }

    private static double chord(double radius, double above) {
        return radius > Math.abs(above) ? 2 * Math.sqrt((radius - above) * (radius + above)) : 0;
    }

    private interface WithSlope {
        double at(double heightM, double slope);
    }

    /** Piece by piece between places where the shape or the liquid's outline has a corner. */
    private double alongAxis(double above, double from, double to, DoubleUnaryOperator radius, WithSlope integrand) {
        TreeSet<Double> corners = new TreeSet<>();
        corners.add(from);
        corners.add(to);
        for (Station station : upright.stations()) {
            corners.add(Math.min(to, Math.max(from, station.heightM())));
        }
        corners.add(Math.min(to, Math.max(from, floorM)));
        corners.add(Math.min(to, Math.max(from, floorM + upright.puntDepthM())));
        TreeSet<Double> all = new TreeSet<>(corners);
        Double low = null;
        for (double high : corners) {
            if (low != null) {
                addCrossing(all, low, high, radius, Math.abs(above));
                addCrossing(all, low, high, this::puntRadius, Math.abs(above));
            }
            low = high;
        }
        double sum = 0;
        low = null;
        for (double high : all) {
            if (low != null) {
                double slope = (radius.applyAsDouble(high) - radius.applyAsDouble(low)) / (high - low);
                sum += DoubleExponential.integral(h -> integrand.at(h, slope), low, high);
            }
            low = high;
        }
        return sum;
    }

    /** Where a radius, linear in between, equals a distance from the axis. */
    private static void addCrossing(
            Set<Double> corners, double low, double high, DoubleUnaryOperator radius, double distance) {
        double a = radius.applyAsDouble(low) - distance;
        double b = radius.applyAsDouble(high) - distance;
        if (a * b < 0) {
            corners.add(low + (high - low) * a / (a - b));
        }
    }
}
