/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;

/**
 * The shape of an upright vessel that is a solid of revolution: outer radius and wall thickness at
 * {@link Station stations} of increasing height, straight lines between them, a base of given thickness and a punt.
 *
 * <p>Heights are counted from the plane the vessel stands on. The base fills the inside up to the base thickness. The
 * punt is a cone: it rises by its depth over the whole inner floor, inside the vessel and, by the same shape, under it,
 * so that it takes room from the contents but adds no glass. All volumes and areas are those of frustums, exact for
 * this shape; none is sampled.
 *
 * <p>Heights given to the methods may be from 0 to {@link #heightM()}; a nanometre beyond either end is taken for the
 * end. Immutable; equal by parts.
 */
public final class Profile {
    private static final double HEIGHT_TOLERANCE_M = 1e-9;
    private static final double LARGEST_LENGTH_M = 10;
    /** Stations closer than this make slopes that overflow [m]. */
    private static final double LEAST_STEP_M = 1e-9;

    private static final int MAX_FILL_STEPS = 200;

    private final List<Station> stations;
    private final double baseThicknessM;
    private final double puntDepthM;
    private final double[] heights;
    private final double[] outerRadii;
    private final double[] innerRadii;
    private final double brimfulVolumeM3;

    private Profile(List<Station> stations, double baseThicknessM, double puntDepthM) {
        this.stations = List.copyOf(stations);
        this.baseThicknessM = baseThicknessM;
        // Turns -0 into 0, so that flat bases are equal.
        this.puntDepthM = puntDepthM + 0.0;
        this.heights = stations.stream().mapToDouble(Station::heightM).toArray();
        this.outerRadii = stations.stream().mapToDouble(Station::outerRadiusM).toArray();
        this.innerRadii = stations.stream().mapToDouble(Station::innerRadiusM).toArray();
        this.brimfulVolumeM3 = contentsBelow(heightM());
    }

    /**
     * The shape through given stations.
     *
     * @param stations at least two, of strictly increasing height, by at least 1 nm, the first at height 0, none above 10 m; not modified
     * @param baseThicknessM thickness of the base, m, greater than 0
     * @param puntDepthM how far the punt rises, m, at least 0; base thickness plus punt depth less than the height, and
     *     the punt must fit into the inside at every height
     * @return the profile
     * @throws OutOfRangeException if a length is outside its range
     * @throws IllegalArgumentException if there are fewer than two stations, their heights do not increase, the first is
     *     not at height 0, the punt does not fit, or a number is NaN or infinite
     */
    public static Profile of(List<Station> stations, double baseThicknessM, double puntDepthM) {
        requireIncreasing(stations);
        double height = stations.get(stations.size() - 1).heightM();
        require("height of the vessel", height, Double.MIN_VALUE, LARGEST_LENGTH_M);
        require("base thickness", baseThicknessM, Double.MIN_VALUE, Math.nextDown(height));
        require("punt depth", puntDepthM, 0, Math.nextDown(height - baseThicknessM));
        Profile profile = new Profile(stations, baseThicknessM, puntDepthM);
        profile.requirePuntFits();
        return profile;
    }

    private static void requireIncreasing(List<Station> stations) {
        if (stations.size() < 2) {
            throw new IllegalArgumentException("stations: expected at least 2, got " + stations.size());
        }
        if (stations.get(0).heightM() != 0) {
            throw new IllegalArgumentException("first station: expected at height 0 m, got "
                    + stations.get(0).heightM() + " m");
        }
        for (int i = 1; i < stations.size(); i++) {
            double below = stations.get(i - 1).heightM();
            double here = stations.get(i).heightM();
            if (here < below + LEAST_STEP_M) {
                throw OutOfRangeException.refusal(
                        "height of station " + (i + 1),
                        here,
                        below + LEAST_STEP_M,
                        LARGEST_LENGTH_M,
                        "m",
                        "strictly increasing heights, by at least 1 nm");
            }
        }
    }

    private static void require(String parameter, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw OutOfRangeException.refusal(parameter, value, low, high, "m", "");
        }
    }

    private void requirePuntFits() {
        for (double h : heights) {
            if (h > baseThicknessM && puntRadius(h) > innerRadiusM(h)) {
                throw new IllegalArgumentException("punt depth " + puntDepthM + " m: the punt is " + puntRadius(h)
                        + " m wide at height " + h + " m, where the inside is only " + innerRadiusM(h) + " m");
            }
        }
    }

    /**
     * An empty builder.
     *
     * @return the builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /** Collects the parts of a profile as quantities; a punt depth of 0 is assumed. Not thread-safe. */
    public static final class Builder {
        private final List<Station> stations = new ArrayList<>();
        private double baseThicknessM;
        private double puntDepthM;

        private Builder() {}

        /**
         * Adds a station above the previous one.
         *
         * @param height height above the plane the vessel stands on, at least 0, at most 10 m
         * @param outerDiameter outer diameter, greater than 0, at most 10 m
         * @param wallThickness wall thickness measured along the radius, greater than 0 and less than the radius
         * @return this builder
         * @throws OutOfRangeException if a length is outside its range
         * @throws IllegalArgumentException if a quantity is null, not a length or not finite
         */
        public Builder station(
                Quantity<Length> height, Quantity<Length> outerDiameter, Quantity<Length> wallThickness) {
            stations.add(new Station(
                    SiValues.lengthM(height, "station height", 0, LARGEST_LENGTH_M),
                    SiValues.lengthM(outerDiameter, "outer diameter", Double.MIN_VALUE, LARGEST_LENGTH_M) / 2,
                    SiValues.lengthM(wallThickness, "wall thickness", Double.MIN_VALUE, LARGEST_LENGTH_M)));
            return this;
        }

        /**
         * Sets the thickness of the base.
         *
         * @param thickness thickness, greater than 0, at most 10 m
         * @return this builder
         * @throws OutOfRangeException if the length is outside its range
         * @throws IllegalArgumentException if the quantity is null, not a length or not finite
         */
        public Builder baseThickness(Quantity<Length> thickness) {
            baseThicknessM = SiValues.lengthM(thickness, "base thickness", Double.MIN_VALUE, LARGEST_LENGTH_M);
            return this;
        }

        /**
         * Sets how far the punt rises.
         *
         * @param depth depth, at least 0, at most 10 m
         * @return this builder
         * @throws OutOfRangeException if the length is outside its range
         * @throws IllegalArgumentException if the quantity is null, not a length or not finite
         */
        public Builder puntDepth(Quantity<Length> depth) {
            puntDepthM = SiValues.lengthM(depth, "punt depth", 0, LARGEST_LENGTH_M);
            return this;
        }

        /**
         * Makes the profile.
         *
         * @return the profile
         * @throws OutOfRangeException as {@link Profile#of}; also if no base thickness was set
         * @throws IllegalArgumentException as {@link Profile#of}
         */
        public Profile build() {
            return of(stations, baseThicknessM, puntDepthM);
        }
    }

    /**
     * The stations, from the bottom upwards.
     *
     * @return the stations, unmodifiable, at least two
     */
    public List<Station> stations() {
        return stations;
    }

    /**
     * Thickness of the base.
     *
     * @return thickness in m
     */
    public double baseThicknessM() {
        return baseThicknessM;
    }

    /**
     * How far the punt rises.
     *
     * @return depth in m, 0 for a flat base
     */
    public double puntDepthM() {
        return puntDepthM;
    }

    /**
     * Height of the vessel, up to the brim.
     *
     * @return height in m
     */
    public double heightM() {
        return heights[heights.length - 1];
    }

    /**
     * Greatest outer radius.
     *
     * @return radius in m
     */
    public double maxOuterRadiusM() {
        double largest = 0;
        for (double radius : outerRadii) {
            largest = Math.max(largest, radius);
        }
        return largest;
    }

    /**
     * Outer radius at a height.
     *
     * @param heightM height in m, 0 to {@link #heightM()}
     * @return radius in m
     * @throws OutOfRangeException if the height is outside the vessel
     */
    public double outerRadiusM(double heightM) {
        return interpolate(outerRadii, inside(heightM));
    }

    /**
     * Inner radius at a height; below the base thickness, of the wall's inner line continued through the base.
     *
     * @param heightM height in m, 0 to {@link #heightM()}
     * @return radius in m
     * @throws OutOfRangeException if the height is outside the vessel
     */
    public double innerRadiusM(double heightM) {
        return interpolate(innerRadii, inside(heightM));
    }

    /**
     * Wall thickness along the radius at a height.
     *
     * @param heightM height in m, 0 to {@link #heightM()}
     * @return thickness in m
     * @throws OutOfRangeException if the height is outside the vessel
     */
    public double wallThicknessM(double heightM) {
        return outerRadiusM(heightM) - innerRadiusM(heightM);
    }

    /**
     * Volume of liquid when filled to a height.
     *
     * @param heightM height of the surface above the plane the vessel stands on, m, 0 to {@link #heightM()}
     * @return volume in m³, 0 up to the base thickness
     * @throws OutOfRangeException if the height is outside the vessel
     */
    public double innerVolumeM3(double heightM) {
        return contentsBelow(inside(heightM));
    }

    private double contentsBelow(double h) {
        if (h <= baseThicknessM) {
            return 0;
        }
        return volume(innerRadii, baseThicknessM, h) - puntVolumeBelow(h);
    }

    /** Volume of the punt, a cone on the inner floor, below a height; h above the base thickness. */
    private double puntVolumeBelow(double h) {
        if (puntDepthM == 0) {
            return 0;
        }
        double floorRadius = interpolate(innerRadii, baseThicknessM);
        double left = 1 - Math.min(1, (h - baseThicknessM) / puntDepthM);
        return Math.PI * floorRadius * floorRadius * puntDepthM / 3 * (1 - left * left * left);
    }

    private double puntRadius(double h) {
        double rise = h - baseThicknessM;
        return rise >= puntDepthM ? 0 : interpolate(innerRadii, baseThicknessM) * (1 - rise / puntDepthM);
    }

    /**
     * Volume of liquid that fills the vessel to the brim.
     *
     * @return volume in m³
     */
    public double brimfulVolumeM3() {
        return brimfulVolumeM3;
    }

    /**
     * Height of the liquid's surface for a volume of liquid; the inverse of {@link #innerVolumeM3(double)}.
     *
     * @param volumeM3 volume in m³, 0 to {@link #brimfulVolumeM3()}
     * @return height above the plane the vessel stands on, m; the base thickness for no liquid
     * @throws OutOfRangeException if the volume is negative or larger than the vessel
     * @throws IllegalArgumentException if the volume is NaN or infinite
     */
    public double fillHeightM(double volumeM3) {
        if (!(volumeM3 >= 0 && volumeM3 <= brimfulVolumeM3)) {
            throw OutOfRangeException.refusal("volume of liquid", volumeM3, 0, brimfulVolumeM3, "m³", "brimful volume");
        }
        // Newton's method on a monotone function, kept inside a bracket that only shrinks.
        double low = baseThicknessM;
        double high = heightM();
        double h = low + (high - low) * (volumeM3 / brimfulVolumeM3);
        for (int i = 0; i < MAX_FILL_STEPS; i++) {
            double excess = contentsBelow(h) - volumeM3;
            if (excess > 0) {
                high = h;
            } else {
                low = h;
            }
            double newton = h - excess / surfaceArea(h);
            double next = newton > low && newton < high ? newton : low + (high - low) / 2;
            if (next == h || excess == 0) {
                return h;
            }
            h = next;
        }
        return h;
    }

    /** Area of the liquid's surface at a height above the base, which is also the derivative of the volume. */
    private double surfaceArea(double h) {
        double inner = interpolate(innerRadii, h);
        double punt = puntRadius(h);
        return Math.PI * (inner * inner - punt * punt);
    }

    /**
     * Lateral area of the outside between two heights, along the slope; base and brim are not in it.
     *
     * @param fromM lower height in m
     * @param toM upper height in m, at least {@code fromM}
     * @return area in m²
     * @throws OutOfRangeException if a height is outside the vessel or the two are out of order
     */
    public double outerSideAreaM2(double fromM, double toM) {
        return area(outerRadii, inside(fromM), insideAbove(fromM, toM));
    }

    /**
     * Lateral area of the inside between two heights, along the slope. Only what can be wetted counts: nothing below
     * the base thickness; the floor and the punt are not in it.
     *
     * @param fromM lower height in m
     * @param toM upper height in m, at least {@code fromM}
     * @return area in m²
     * @throws OutOfRangeException if a height is outside the vessel or the two are out of order
     */
    public double innerSideAreaM2(double fromM, double toM) {
        double from = Math.max(baseThicknessM, inside(fromM));
        double to = Math.max(from, insideAbove(fromM, toM));
        return area(innerRadii, from, to);
    }

    /**
     * Volume the vessel takes up between two heights, contents included. The hollow under the punt counts as part of
     * the vessel, because it traps air when the vessel is lowered upright into water.
     *
     * @param fromM lower height in m
     * @param toM upper height in m, at least {@code fromM}
     * @return volume in m³
     * @throws OutOfRangeException if a height is outside the vessel or the two are out of order
     */
    public double outerVolumeM3(double fromM, double toM) {
        return volume(outerRadii, inside(fromM), insideAbove(fromM, toM));
    }

    /**
     * Volume of the side wall between two heights; the base inside the wall's inner line is not in it.
     *
     * @param fromM lower height in m
     * @param toM upper height in m, at least {@code fromM}
     * @return volume in m³
     * @throws OutOfRangeException if a height is outside the vessel or the two are out of order
     */
    public double wallVolumeM3(double fromM, double toM) {
        double from = inside(fromM);
        double to = insideAbove(fromM, toM);
        return volume(outerRadii, from, to) - volume(innerRadii, from, to);
    }

    /**
     * Volume of the base inside the wall's inner line. The punt lifts it without changing its volume.
     *
     * @return volume in m³
     */
    public double baseWallVolumeM3() {
        return volume(innerRadii, 0, baseThicknessM);
    }

    /**
     * Area of the outer disc the vessel stands on; the hollow of the punt is not unrolled.
     *
     * @return area in m²
     */
    public double baseAreaM2() {
        return Math.PI * outerRadii[0] * outerRadii[0];
    }

    private double inside(double heightM) {
        double top = heightM();
        if (!(heightM >= -HEIGHT_TOLERANCE_M && heightM <= top + HEIGHT_TOLERANCE_M)) {
            throw OutOfRangeException.refusal("height", heightM, 0, top, "m", "height of the vessel");
        }
        return Math.min(top, Math.max(0, heightM));
    }

    private double insideAbove(double fromM, double toM) {
        double from = inside(fromM);
        double to = inside(toM);
        if (to < from) {
            throw OutOfRangeException.refusal("upper height", toM, from, heightM(), "m", "not below the lower height");
        }
        return to;
    }

    private int segment(double h) {
        int i = 0;
        while (i < heights.length - 2 && h > heights[i + 1]) {
            i++;
        }
        return i;
    }

    private double interpolate(double[] radii, double h) {
        int i = segment(h);
        return radii[i] + (radii[i + 1] - radii[i]) * ((h - heights[i]) / (heights[i + 1] - heights[i]));
    }

    /** Sum of the frustums between two heights. */
    private double volume(double[] radii, double from, double to) {
        double sum = 0;
        double low = from;
        double lowRadius = interpolate(radii, from);
        for (int i = segment(from); i < heights.length - 1 && heights[i] < to; i++) {
            double high = Math.min(heights[i + 1], to);
            double highRadius = interpolate(radii, high);
            sum += Math.PI
                    * (high - low)
                    * (lowRadius * lowRadius + lowRadius * highRadius + highRadius * highRadius)
                    / 3;
            low = high;
            lowRadius = highRadius;
        }
        return sum;
    }

    /** Sum of the lateral areas of the frustums between two heights. */
    private double area(double[] radii, double from, double to) {
        double sum = 0;
        double low = from;
        double lowRadius = interpolate(radii, from);
        for (int i = segment(from); i < heights.length - 1 && heights[i] < to; i++) {
            double high = Math.min(heights[i + 1], to);
            double highRadius = interpolate(radii, high);
            sum += Math.PI * (lowRadius + highRadius) * Math.hypot(high - low, highRadius - lowRadius);
            low = high;
            lowRadius = highRadius;
        }
        return sum;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Profile that
                && stations.equals(that.stations)
                && Double.compare(baseThicknessM, that.baseThicknessM) == 0
                && Double.compare(puntDepthM, that.puntDepthM) == 0;
    }

    @Override
    public int hashCode() {
        return (stations.hashCode() * 31 + Double.hashCode(baseThicknessM)) * 31 + Double.hashCode(puntDepthM);
    }
}
