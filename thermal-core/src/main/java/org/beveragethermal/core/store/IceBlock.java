/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import java.util.Arrays;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.materials.units.SiValues;

/**
 * The shape of a block of ice that melts evenly on all sides: cube, brick, cylinder or sphere.
 *
 * <p>If every surface recedes by δ, each extent of the block falls by 2 δ, whatever its shape: of a brick V(δ) = (a − 2δ)(b − 2δ)(c
 * − 2δ), of a cylinder and a sphere the same with two, and with three, equal extents and a factor π/4 or π/6. So what is left of a
 * block is told by its shortest extent alone, and the block is gone when that is 0. Volume, surface and conductance are functions of
 * it, smooth with their slopes, and the surface is twice the slope of the volume.
 *
 * <p>Real edges and corners round off, because water reaches them from more sides, and hollows form around vessels: both are left
 * out. Immutable.
 *
 * <p>Theory manual, equation (2.4).
 */
public final class IceBlock {

    private static final double SMALLEST_M = 0.003;
    private static final double LARGEST_M = 0.6;
    /** First zero of the Bessel function J₀: slowest mode of a round rod. */
    private static final double FIRST_ZERO = 2.404825557695773;

    private static final double FLAT_MODE = Math.PI * Math.PI;
    /** A round rod of diameter D has (2 j/D)², shared out over two extents. */
    private static final double ROUND_MODE = 2 * FIRST_ZERO * FIRST_ZERO;
    /** A sphere of diameter D has (2 π/D)², shared out over three extents. */
    private static final double BALL_MODE = 4 * FLAT_MODE / 3;
    /** Conductance inside of a slab does not grow beyond that of this part of its first thickness. */
    private static final double THINNEST_PART = 0.02;

    /** Freezing may make a cold block larger than it was, but not by much. */
    private static final double MOST_GROWTH = 2;

    private static final double ACCURACY = 1e-14;
    private static final int MOST_ITERATIONS = 200;

    private final String name;
    private final double fill;
    private final double shortestM;
    private final double middleExcessM;
    private final double longestExcessM;
    private final double shortestMode;
    private final double middleMode;
    private final double longestMode;
    private final double passesM;

    private IceBlock(
            String name,
            double fill,
            double shortestM,
            double middleM,
            double longestM,
            double shortestMode,
            double middleMode,
            double longestMode,
            double passesM) {
        this.name = name;
        this.fill = fill;
        this.shortestM = shortestM;
        this.middleExcessM = middleM - shortestM;
        this.longestExcessM = longestM - shortestM;
        this.shortestMode = shortestMode;
        this.middleMode = middleMode;
        this.longestMode = longestMode;
        this.passesM = passesM;
    }

    /**
     * A cube.
     *
     * @param side side, 3 mm to 600 mm
     * @return the shape
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the side is outside its range
     */
    public static IceBlock cube(Quantity<Length> side) {
        return cubeOf(extentM("side of an ice cube", side));
    }

    static IceBlock cubeOf(double sideM) {
        if (!(sideM > 0) || Double.isInfinite(sideM)) {
            throw new IllegalArgumentException("side of a block " + sideM + " m: expected a finite value above 0");
        }
        return brickOf(sideM, sideM, sideM);
    }

    /**
     * A brick or a slab.
     *
     * @param first one side, 3 mm to 600 mm
     * @param second another side, 3 mm to 600 mm
     * @param third the third side, 3 mm to 600 mm
     * @return the shape
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a side is outside its range
     */
    public static IceBlock brick(Quantity<Length> first, Quantity<Length> second, Quantity<Length> third) {
        String what = "side of a brick of ice";
        return brickOf(extentM(what, first), extentM(what, second), extentM(what, third));
    }

    private static IceBlock brickOf(double firstM, double secondM, double thirdM) {
        double[] sides = {firstM, secondM, thirdM};
        Arrays.sort(sides);
        String name = sides[0] == sides[2]
                ? String.format(Locale.ROOT, "cube of %s", millimetres(firstM))
                : String.format(
                        Locale.ROOT,
                        "brick of %s by %s by %s",
                        millimetres(firstM),
                        millimetres(secondM),
                        millimetres(thirdM));
        return new IceBlock(
                name, 1, sides[0], sides[1], sides[2], FLAT_MODE, FLAT_MODE, FLAT_MODE, Math.hypot(sides[0], sides[1]));
    }

    /** A length to a tenth of a millimetre, without a decimal that says nothing. */
    private static String millimetres(double lengthM) {
        double tenths = Math.rint(lengthM * 1e4);
        return tenths % 10 == 0
                ? String.format(Locale.ROOT, "%.0f mm", tenths / 10)
                : String.format(Locale.ROOT, "%.1f mm", tenths / 10);
    }

    /**
     * A cylinder: a rod or a disc.
     *
     * @param diameter diameter, 3 mm to 600 mm
     * @param length length along the axis, 3 mm to 600 mm
     * @return the shape
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a length is outside its range
     */
    public static IceBlock cylinder(Quantity<Length> diameter, Quantity<Length> length) {
        double d = extentM("diameter of a cylinder of ice", diameter);
        double l = extentM("length of a cylinder of ice", length);
        String name =
                String.format(Locale.ROOT, "cylinder of diameter %s and length %s", millimetres(d), millimetres(l));
        return l < d
                ? new IceBlock(name, Math.PI / 4, l, d, d, FLAT_MODE, ROUND_MODE, ROUND_MODE, d)
                : new IceBlock(name, Math.PI / 4, d, d, l, ROUND_MODE, ROUND_MODE, FLAT_MODE, d);
    }

    /**
     * A sphere.
     *
     * @param diameter diameter, 3 mm to 600 mm
     * @return the shape
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the diameter is outside its range
     */
    public static IceBlock sphere(Quantity<Length> diameter) {
        double d = extentM("diameter of a sphere of ice", diameter);
        return new IceBlock(
                String.format(Locale.ROOT, "sphere of %s", millimetres(d)),
                Math.PI / 6,
                d,
                d,
                d,
                BALL_MODE,
                BALL_MODE,
                BALL_MODE,
                d);
    }

    private static double extentM(String what, Quantity<Length> extent) {
        return SiValues.lengthM(extent, what, SMALLEST_M, LARGEST_M);
    }

    /**
     * The shortest extent of the whole block.
     *
     * @return length [m]
     */
    public double shortestM() {
        return shortestM;
    }

    /**
     * Diameter of the narrowest round opening through which the block passes, end first.
     *
     * @return diameter [m]; of a brick the diagonal of its smallest face
     */
    public double passesM() {
        return passesM;
    }

    /**
     * Volume of the whole block.
     *
     * @return volume [m³]
     */
    public double volumeM3() {
        return volumeM3(shortestM);
    }

    /**
     * Volume of what is left.
     *
     * @param leftM shortest extent left [m], ≥ 0
     * @return volume [m³]
     */
    public double volumeM3(double leftM) {
        return fill * leftM * (leftM + middleExcessM) * (leftM + longestExcessM);
    }

    /**
     * Surface of what is left.
     *
     * @param leftM shortest extent left [m], ≥ 0
     * @return area [m²]; of a slab or a disc not 0 when it is gone
     */
    public double surfaceM2(double leftM) {
        double middle = leftM + middleExcessM;
        double longest = leftM + longestExcessM;
        return 2 * fill * (leftM * middle + leftM * longest + middle * longest);
    }

    /**
     * Slope of the surface in the shortest extent.
     *
     * @param leftM shortest extent left [m], ≥ 0
     * @return slope [m]
     */
    public double surfaceSlope(double leftM) {
        return 4 * fill * (3 * leftM + middleExcessM + longestExcessM);
    }

    /**
     * The shortest extent of what is left of a block, from the ratio of its volume to its surface.
     *
     * @param volumePerSurfaceM ratio [m], finite, > 0
     * @return shortest extent left [m]
     * @throws IllegalArgumentException if the ratio is not finite and positive, or more than a block of this shape can have
     */
    public double leftOf(double volumePerSurfaceM) {
        double most = MOST_GROWTH * shortestM;
        double largest = volumeM3(most) / surfaceM2(most);
        if (!(volumePerSurfaceM > 0 && volumePerSurfaceM <= largest)) {
            throw new IllegalArgumentException("volume per surface " + volumePerSurfaceM + " m of a " + this
                    + ": expected above 0, at most " + largest + " m");
        }
        return new BrentSolver(ACCURACY, ACCURACY * shortestM)
                .solve(
                        MOST_ITERATIONS,
                        left -> left > 0 ? volumeM3(left) / surfaceM2(left) - volumePerSurfaceM : -volumePerSurfaceM,
                        0,
                        most);
    }

    /**
     * Length that decides the film: the mean of the three extents, as if each stood upright equally often; our choice. The side of a
     * cube, the diameter of a sphere.
     *
     * @param leftM shortest extent left [m], ≥ 0
     * @return length [m]; its slope in the shortest extent is 1
     */
    public double filmLengthM(double leftM) {
        return leftM + (middleExcessM + longestExcessM) / 3;
    }

    /**
     * Conductance between the surface and the mean temperature per conductivity, in the slowest mode of a block whose surface is held at
     * one temperature: volume times the sum of (π/a)² over the sides of a brick, (2 j/D)² + (π/L)² of a cylinder with j the first zero
     * of J₀, (2 π/D)² of a sphere (H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 1959, chapters VI, VIII, IX; from
     * memory). It stays bounded while a slab thins out.
     *
     * @param leftM shortest extent left [m], ≥ 0
     * @return conductance per conductivity [m]
     */
    public double innerConductanceM(double leftM) {
        double middle = leftM + middleExcessM;
        double longest = leftM + longestExcessM;
        double across = leftM + middleExcessM + longestExcessM + middleExcessM * longestExcessM / thickness(leftM);
        return fill
                * (shortestMode * across
                        + middleMode * ratio(leftM, longest, middle)
                        + longestMode * ratio(leftM, middle, longest));
    }

    /**
     * Slope of {@link #innerConductanceM} in the shortest extent.
     *
     * @param leftM shortest extent left [m], ≥ 0
     * @return slope [-]
     */
    public double innerConductanceSlope(double leftM) {
        double middle = leftM + middleExcessM;
        double longest = leftM + longestExcessM;
        double thickness = thickness(leftM);
        double across = 1 - middleExcessM * longestExcessM * leftM / (thickness * thickness * thickness);
        return fill
                * (shortestMode * across
                        + middleMode * ratioSlope(leftM, longest, middle)
                        + longestMode * ratioSlope(leftM, middle, longest));
    }

    private double thickness(double leftM) {
        return Math.hypot(leftM, THINNEST_PART * shortestM);
    }

    /** x y / z, where all three fall together and x is at most z. */
    private static double ratio(double x, double y, double z) {
        return z > 0 ? x / z * y : y;
    }

    private static double ratioSlope(double x, double y, double z) {
        return z > 0 ? (x + y - x / z * y) / z : 1;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof IceBlock that
                && fill == that.fill
                && shortestM == that.shortestM
                && middleExcessM == that.middleExcessM
                && longestExcessM == that.longestExcessM;
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(new double[] {fill, shortestM, middleExcessM, longestExcessM});
    }

    @Override
    public String toString() {
        return name;
    }
}
