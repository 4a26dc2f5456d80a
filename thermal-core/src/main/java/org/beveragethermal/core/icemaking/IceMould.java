/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.icemaking;

import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.ThermalConductivity;

/**
 * Water that is to become a block of ice: its shape when frozen, which faces give heat away, and what wall lies before them.
 *
 * <p>The front of the ice is taken to stand everywhere at the same depth x under the faces that give heat away; so a shape is told by
 * what is still unfrozen, V(x), and by the front, A(x) = −dV/dx, for x from 0 to the depth at which nothing is left. Immutable.
 *
 * <p>Theory manual, equation (6.6).
 */
public final class IceMould {

    private static final double SMALLEST_M = 0.003;
    private static final double LARGEST_M = 0.6;
    private static final double THICKEST_WALL_M = 0.05;
    private static final double ZERO_CELSIUS_K = 273.15;

    /** Faces of a cell of a tray through which heat leaves; through the others it does not. */
    public enum Faces {
        /** The open top alone: a tray on something that insulates, cells side by side. */
        TOP,
        /** The open top, and the floor through the wall; cells side by side. */
        TOP_AND_FLOOR,
        /** The open top, and floor and sides through the wall: a cell that stands free. */
        ALL
    }

    private final String name;
    private final DoubleUnaryOperator volumeM3;
    private final DoubleUnaryOperator areaM2;
    private final double depthM;
    private final double filmLengthM;
    private final double openPart;
    private final double wallResistance;

    private IceMould(
            String name,
            DoubleUnaryOperator volumeM3,
            DoubleUnaryOperator areaM2,
            double depthM,
            double filmLengthM,
            double openPart,
            double wallResistance) {
        this.name = name;
        this.volumeM3 = volumeM3;
        this.areaM2 = areaM2;
        this.depthM = depthM;
        this.filmLengthM = filmLengthM;
        this.openPart = openPart;
        this.wallResistance = wallResistance;
    }

    /**
     * A block that freezes from all sides, as in a mould that hangs in the air or a bag of that shape.
     *
     * @param block shape of the ice
     * @return the mould, without a wall
     */
    public static IceMould of(IceBlock block) {
        double shortest = block.shortestM();
        return new IceMould(
                block.toString(),
                x -> block.volumeM3(Math.max(0, shortest - 2 * x)),
                x -> block.surfaceM2(Math.max(0, shortest - 2 * x)),
                0.5 * shortest,
                block.filmLengthM(shortest),
                0,
                0);
    }

    /**
     * A sheet whose edges pass no heat.
     *
     * @param thickness thickness of the ice, 3 mm to 600 mm
     * @param area area of one face
     * @param coldFaces faces that give heat away, 1 or 2
     * @return the mould, without a wall
     * @throws IllegalArgumentException if the number of faces is neither 1 nor 2
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static IceMould sheet(Quantity<Length> thickness, Quantity<Area> area, int coldFaces) {
        if (coldFaces < 1 || coldFaces > 2) {
            throw new IllegalArgumentException("cold faces of a sheet of ice " + coldFaces + ": expected 1 or 2");
        }
        double d = extentM("thickness of a sheet of ice", thickness);
        double a = SiValues.areaM2(area, "area of a sheet of ice", 1e-6, 100);
        return new IceMould(
                String.format(Locale.ROOT, "sheet of %.3g m, cold on %d", d, coldFaces),
                x -> a * Math.max(0, d - coldFaces * x),
                x -> a * coldFaces,
                d / coldFaces,
                Math.sqrt(a),
                0,
                0);
    }

    /**
     * A long rod whose ends pass no heat.
     *
     * @param diameter diameter of the ice, 3 mm to 600 mm
     * @param length its length, 3 mm to 600 mm
     * @return the mould, without a wall
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a length is outside its range
     */
    public static IceMould rod(Quantity<Length> diameter, Quantity<Length> length) {
        double d = extentM("diameter of a rod of ice", diameter);
        double l = extentM("length of a rod of ice", length);
        return new IceMould(
                String.format(Locale.ROOT, "rod of %.3g m", d),
                x -> Math.PI / 4 * l * square(Math.max(0, d - 2 * x)),
                x -> Math.PI * l * Math.max(0, d - 2 * x),
                0.5 * d,
                d,
                0,
                0);
    }

    /**
     * A cell of a tray, open at the top.
     *
     * @param width one extent of the ice from wall to wall, 3 mm to 600 mm
     * @param length the other, 3 mm to 600 mm
     * @param depth height of the ice, 3 mm to 600 mm
     * @param faces through which heat leaves
     * @return the mould, without a wall
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a length is outside its range
     */
    public static IceMould cell(Quantity<Length> width, Quantity<Length> length, Quantity<Length> depth, Faces faces) {
        double w = extentM("width of a cell of ice", width);
        double l = extentM("length of a cell of ice", length);
        double h = extentM("depth of a cell of ice", depth);
        int sides = Objects.requireNonNull(faces, "faces") == Faces.ALL ? 2 : 0;
        int ends = faces == Faces.TOP ? 1 : 2;
        double end = sides == 0 ? h / ends : 0.5 * Math.min(h, Math.min(w, l));
        DoubleUnaryOperator area = x -> {
            double across = Math.max(0, w - sides * x);
            double along = Math.max(0, l - sides * x);
            double up = Math.max(0, h - ends * x);
            return sides * (along * up + across * up) + ends * across * along;
        };
        return new IceMould(
                String.format(Locale.ROOT, "cell of %.3g m by %.3g m by %.3g m, cold at %s", w, l, h, faces),
                x -> Math.max(0, w - sides * x) * Math.max(0, l - sides * x) * Math.max(0, h - ends * x),
                area,
                end,
                (w + l + h) / 3,
                w * l / area.applyAsDouble(0),
                0);
    }

    /**
     * The same mould with a wall before every face but an open top.
     *
     * @param thickness thickness of the wall, 0 to 50 mm
     * @param conductivity its thermal conductivity, 0.01 to 500 W/(m K)
     * @return a new mould
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public IceMould withWall(Quantity<Length> thickness, Quantity<ThermalConductivity> conductivity) {
        double resistance = SiValues.lengthM(thickness, "thickness of the wall of a mould", 0, THICKEST_WALL_M)
                / SiValues.thermalConductivity(conductivity, "conductivity of the wall of a mould", 0.01, 500);
        return new IceMould(name, volumeM3, areaM2, depthM, filmLengthM, openPart, resistance);
    }

    /**
     * The same mould as a part of something larger, such as a tray, over which the air flows.
     *
     * @param length length that decides the film of air, 3 mm to 2 m
     * @return a new mould
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the length is outside its range
     */
    public IceMould withFilmLength(Quantity<Length> length) {
        return new IceMould(
                name,
                volumeM3,
                areaM2,
                depthM,
                SiValues.lengthM(length, "length of the film on a mould", SMALLEST_M, 2),
                openPart,
                wallResistance);
    }

    private static double extentM(String what, Quantity<Length> extent) {
        return SiValues.lengthM(extent, what, SMALLEST_M, LARGEST_M);
    }

    private static double square(double x) {
        return x * x;
    }

    /**
     * Volume of the ice.
     *
     * @return volume [m³]
     */
    public double volumeM3() {
        return unfrozenM3(0);
    }

    /**
     * Mass of the ice, and of the water that it is made of.
     *
     * @return mass [kg], of ice at 0 °C without air in it
     */
    public double iceKg() {
        return Ice.density(ZERO_CELSIUS_K) * volumeM3();
    }

    /** Volume under the front [m³]. */
    double unfrozenM3(double frontDepthM) {
        return volumeM3.applyAsDouble(frontDepthM);
    }

    /** Area of the front [m²]; at 0 all that gives heat away. */
    double frontM2(double frontDepthM) {
        return areaM2.applyAsDouble(frontDepthM);
    }

    /** Depth of the front when all is frozen [m]. */
    double depthM() {
        return depthM;
    }

    double filmLengthM() {
        return filmLengthM;
    }

    /** Coefficient of film and wall over all that gives heat away [W/(m² K)]. */
    double coefficient(double film) {
        return openPart * film + (1 - openPart) / (1 / film + wallResistance);
    }

    @Override
    public String toString() {
        return name;
    }
}
