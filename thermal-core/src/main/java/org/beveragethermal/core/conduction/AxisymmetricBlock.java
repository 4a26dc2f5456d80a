/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.Trajectory;
import org.jspecify.annotations.Nullable;

/**
 * A round block round an axis, cut into rings: conduction along radius and depth, with a hole in which a body may sit.
 *
 * <p>The block reaches from the axis to its last radius and from depth 0 to its last depth; faces that nothing is joined to pass
 * no heat. Immutable.
 *
 * <p>Theory manual, equation (1.5).
 */
public final class AxisymmetricBlock {

    private final double[] radii;
    private final double[] depths;
    private final double conductivity;
    private final @Nullable Node[][] grid;
    private final List<Node> nodes;
    private final List<DirectPath> paths;
    private final String name;

    /** Where a face of the block looks. */
    public enum Side {
        /** Up, at depth 0. */
        TOP("top"),
        /** Down, at the last depth. */
        BOTTOM("bottom"),
        /** Inwards, at the round wall of the hole. */
        HOLE_WALL("side of hole"),
        /** Down, at the upper end of the hole. */
        HOLE_TOP("top of hole"),
        /** Up, at the bottom of the hole. */
        HOLE_BOTTOM("bottom of hole");

        private final String words;

        Side(String words) {
            this.words = words;
        }
    }

    /**
     * A face of one ring, to be joined with what touches it.
     *
     * @param side where it looks
     * @param ring the ring behind it
     * @param areaM2 area [m²]
     * @param kelvinPerWatt resistance from the middle of the ring to the face [K/W]
     * @param fromM where it begins [m]: a depth at the wall of the hole, a radius elsewhere
     * @param toM where it ends [m], counted alike
     */
    public record Facet(Side side, Node ring, double areaM2, double kelvinPerWatt, double fromM, double toM) {}

    private AxisymmetricBlock(
            String name,
            double[] radii,
            double[] depths,
            double conductivity,
            double volumetricHeatCapacity,
            DoubleUnaryOperator temperatureK,
            double holeRadiusM,
            double holeTopM,
            double holeBottomM) {
        this.name = name;
        this.radii = radii.clone();
        this.depths = depths.clone();
        this.conductivity = conductivity;
        this.grid = new Node[radii.length - 1][depths.length - 1];
        List<Node> all = new ArrayList<>();
        for (int i = 0; i < grid.length; i++) {
            for (int j = 0; j < grid[i].length; j++) {
                boolean hole =
                        middleRadius(i) < holeRadiusM && middleDepth(j) > holeTopM && middleDepth(j) < holeBottomM;
                if (!hole) {
                    double volume = ring(i) * (depths[j + 1] - depths[j]);
                    grid[i][j] = Node.sensible(
                            name + " " + (i + 1) + "/" + (j + 1),
                            volumetricHeatCapacity * volume,
                            temperatureK.applyAsDouble(middleDepth(j)));
                    all.add(grid[i][j]);
                }
            }
        }
        this.nodes = List.copyOf(all);
        this.paths = List.copyOf(innerPaths());
    }

    /**
     * A block of one material with a cylindrical hole on its axis, at one temperature.
     *
     * @param name what the nodes' names begin with
     * @param radii radii of the rings' boundaries [m], ascending from 0; one must be the hole's radius; not modified
     * @param depths depths of the layers' boundaries [m], ascending from 0; the hole's top and bottom must be among them; not
     *     modified
     * @param conductivity thermal conductivity [W/(m K)], > 0
     * @param volumetricHeatCapacity density times specific heat capacity [J/(m³ K)], > 0
     * @param temperatureK temperature at the start [K], > 0
     * @param holeRadiusM radius of the hole [m], ≥ 0; 0 for none
     * @param holeTopM depth of its top [m]
     * @param holeBottomM depth of its bottom [m]
     * @return the block
     * @throws IllegalArgumentException if an argument is outside its range or the hole does not fit the boundaries
     */
    public static AxisymmetricBlock of(
            String name,
            double[] radii,
            double[] depths,
            double conductivity,
            double volumetricHeatCapacity,
            double temperatureK,
            double holeRadiusM,
            double holeTopM,
            double holeBottomM) {
        return of(
                name,
                radii,
                depths,
                conductivity,
                volumetricHeatCapacity,
                depthM -> temperatureK,
                holeRadiusM,
                holeTopM,
                holeBottomM);
    }

    /**
     * A block whose temperature at the start depends on the depth, as that of the ground does.
     *
     * @param name what the nodes' names begin with
     * @param radii radii of the rings' boundaries [m], ascending from 0; one must be the hole's radius; not modified
     * @param depths depths of the layers' boundaries [m], ascending from 0; the hole's top and bottom must be among them; not
     *     modified
     * @param conductivity thermal conductivity [W/(m K)], > 0
     * @param volumetricHeatCapacity density times specific heat capacity [J/(m³ K)], > 0
     * @param temperatureK temperature at the start [K], > 0, by depth [m]; asked at the middle of each layer
     * @param holeRadiusM radius of the hole [m], ≥ 0; 0 for none
     * @param holeTopM depth of its top [m]
     * @param holeBottomM depth of its bottom [m]
     * @return the block
     * @throws IllegalArgumentException if an argument is outside its range or the hole does not fit the boundaries
     */
    public static AxisymmetricBlock of(
            String name,
            double[] radii,
            double[] depths,
            double conductivity,
            double volumetricHeatCapacity,
            DoubleUnaryOperator temperatureK,
            double holeRadiusM,
            double holeTopM,
            double holeBottomM) {
        requireAscending("radii", radii);
        requireAscending("depths", depths);
        if (!(conductivity > 0 && volumetricHeatCapacity > 0)
                || Double.isInfinite(conductivity + volumetricHeatCapacity)) {
            throw new IllegalArgumentException("conductivity " + conductivity + " W/(m K), volumetric heat capacity "
                    + volumetricHeatCapacity + " J/(m³ K): expected finite values above 0");
        }
        if (!(holeRadiusM >= 0)) {
            throw new IllegalArgumentException(
                    "radius of the hole " + holeRadiusM + " m: expected 0 for none, or above");
        }
        if (holeRadiusM > 0) {
            requireAmong("radius of the hole", holeRadiusM, radii);
            requireAmong("top of the hole", holeTopM, depths);
            requireAmong("bottom of the hole", holeBottomM, depths);
            if (!(holeBottomM > holeTopM)) {
                throw new IllegalArgumentException("hole from depth " + holeTopM + " m to " + holeBottomM
                        + " m: expected the bottom below the top");
            }
        }
        return new AxisymmetricBlock(
                name,
                radii,
                depths,
                conductivity,
                volumetricHeatCapacity,
                temperatureK,
                holeRadiusM,
                holeTopM,
                holeBottomM);
    }

    /**
     * Boundaries of cells that are fine at both ends of a stretch or at its start and grow from there.
     *
     * @param from first boundary [m]
     * @param to last boundary [m], above {@code from}
     * @param first size of the first cell [m], > 0
     * @param growth size of a cell over that of the one before it, ≥ 1
     * @return ascending boundaries, the last exactly {@code to}
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double[] graded(double from, double to, double first, double growth) {
        if (!(to > from && first > 0 && growth >= 1) || Double.isInfinite(to - from + growth)) {
            throw new IllegalArgumentException(
                    "cells from " + from + " m to " + to + " m, first " + first + " m, growth " + growth
                            + ": expected an ascending stretch, a first cell above 0 and growth of at least 1");
        }
        List<Double> sizes = new ArrayList<>();
        double sum = 0;
        double size = Math.min(first, to - from);
        while (sum < to - from) {
            sizes.add(size);
            sum += size;
            size *= growth;
        }
        double scale = (to - from) / sum;
        double[] edges = new double[sizes.size() + 1];
        edges[0] = from;
        for (int i = 0; i < sizes.size(); i++) {
            edges[i + 1] = i == sizes.size() - 1 ? to : edges[i] + sizes.get(i) * scale;
        }
        return edges;
    }

    private List<DirectPath> innerPaths() {
        List<DirectPath> all = new ArrayList<>();
        for (int i = 0; i < grid.length; i++) {
            for (int j = 0; j < grid[i].length; j++) {
                if (i + 1 < grid.length) {
                    join(all, grid[i][j], grid[i + 1][j], outwards(i, j));
                }
                if (j + 1 < grid[i].length) {
                    join(all, grid[i][j], grid[i][j + 1], downwards(i, j));
                }
            }
        }
        return all;
    }

    private static void join(List<DirectPath> all, @Nullable Node a, @Nullable Node b, double conductance) {
        if (a != null && b != null) {
            all.add(DirectPath.of(a.name() + " to " + b.name(), a, b, "conduction", HeatLaw.conductance(conductance)));
        }
    }

    private double outwards(int i, int j) {
        return 1 / (radialHalf(middleRadius(i), radii[i + 1], j) + radialHalf(radii[i + 1], middleRadius(i + 1), j));
    }

    private double radialHalf(double inner, double outer, int j) {
        return Math.log(outer / inner) / (2 * Math.PI * conductivity * (depths[j + 1] - depths[j]));
    }

    private double downwards(int i, int j) {
        return conductivity * ring(i) / (middleDepth(j + 1) - middleDepth(j));
    }

    private double middleRadius(int i) {
        return 0.5 * (radii[i] + radii[i + 1]);
    }

    private double middleDepth(int j) {
        return 0.5 * (depths[j] + depths[j + 1]);
    }

    private double ring(int i) {
        return Math.PI * (radii[i + 1] * radii[i + 1] - radii[i] * radii[i]);
    }

    /**
     * The rings' nodes.
     *
     * @return nodes of all rings outside the hole
     */
    public List<Node> nodes() {
        return nodes;
    }

    /**
     * The paths between the rings.
     *
     * @return paths
     */
    public List<Path> paths() {
        return List.copyOf(paths);
    }

    /**
     * The paths between the rings, each with its conduction scaled by a named factor: what an uncertain conductivity does.
     *
     * @param multiplier name of the factor
     * @return paths
     */
    public List<Path> pathsScaledBy(String multiplier) {
        return paths.stream().<Path>map(path -> path.scaledBy(multiplier)).toList();
    }

    /**
     * The faces at depth 0, from the axis outwards.
     *
     * @return one face per ring that reaches the top
     */
    public List<Facet> topFacets() {
        return flatFacets(Side.TOP, 0);
    }

    /**
     * The faces of the hole: its wall from above, its upper end and its bottom from the axis outwards.
     *
     * @return faces, none without a hole
     */
    public List<Facet> holeFacets() {
        List<Facet> all = new ArrayList<>();
        for (int i = 0; i < grid.length; i++) {
            for (int j = 0; j < grid[i].length; j++) {
                Node node = grid[i][j];
                if (node == null) {
                    continue;
                }
                if (i > 0 && grid[i - 1][j] == null) {
                    double area = 2 * Math.PI * radii[i] * (depths[j + 1] - depths[j]);
                    double half = radialHalf(radii[i], middleRadius(i), j);
                    all.add(new Facet(Side.HOLE_WALL, node, area, half, depths[j], depths[j + 1]));
                }
                if (j + 1 < grid[i].length && grid[i][j + 1] == null) {
                    all.add(flatFacet(Side.HOLE_TOP, node, i, j));
                }
                if (j > 0 && grid[i][j - 1] == null) {
                    all.add(flatFacet(Side.HOLE_BOTTOM, node, i, j));
                }
            }
        }
        return all;
    }

    private List<Facet> flatFacets(Side side, int j) {
        List<Facet> all = new ArrayList<>();
        for (int i = 0; i < grid.length; i++) {
            Node node = grid[i][j];
            if (node != null) {
                all.add(flatFacet(side, node, i, j));
            }
        }
        return all;
    }

    private Facet flatFacet(Side side, Node node, int i, int j) {
        double half = 0.5 * (depths[j + 1] - depths[j]) / (conductivity * ring(i));
        return new Facet(side, node, ring(i), half, radii[i], radii[i + 1]);
    }

    /**
     * Joins the top face, depth 0, to something by a constant coefficient.
     *
     * @param end what touches the top
     * @param coefficient heat transfer coefficient [W/(m² K)], > 0
     * @return one path per ring
     * @throws IllegalArgumentException if the coefficient is not finite and positive
     */
    public List<Path> top(End end, double coefficient) {
        return flat(end, coefficient, Side.TOP, 0);
    }

    /**
     * Joins the bottom face, at the last depth, to something by a constant coefficient.
     *
     * @param end what touches the bottom
     * @param coefficient heat transfer coefficient [W/(m² K)], > 0
     * @return one path per ring
     * @throws IllegalArgumentException if the coefficient is not finite and positive
     */
    public List<Path> bottom(End end, double coefficient) {
        return flat(end, coefficient, Side.BOTTOM, depths.length - 2);
    }

    private List<Path> flat(End end, double coefficient, Side side, int j) {
        requireCoefficient(coefficient);
        List<Path> all = new ArrayList<>();
        for (Facet facet : flatFacets(side, j)) {
            double conductance = 1 / (facet.kelvinPerWatt() + 1 / (coefficient * facet.areaM2()));
            outside(all, facet.ring(), end, conductance, side.words);
        }
        return all;
    }

    /**
     * Joins the round outer face, at the last radius, to something by a constant coefficient.
     *
     * @param end what touches the side
     * @param coefficient heat transfer coefficient [W/(m² K)], > 0
     * @return one path per layer
     * @throws IllegalArgumentException if the coefficient is not finite and positive
     */
    public List<Path> side(End end, double coefficient) {
        requireCoefficient(coefficient);
        int i = grid.length - 1;
        List<Path> all = new ArrayList<>();
        for (int j = 0; j < grid[i].length; j++) {
            double area = 2 * Math.PI * radii[i + 1] * (depths[j + 1] - depths[j]);
            double half = radialHalf(middleRadius(i), radii[i + 1], j);
            outside(all, grid[i][j], end, 1 / (half + 1 / (coefficient * area)), "side");
        }
        return all;
    }

    private static void outside(List<Path> all, @Nullable Node node, End end, double conductance, String what) {
        if (node != null) {
            all.add(DirectPath.of(node.name() + " " + what, node, end, "convection", HeatLaw.conductance(conductance)));
        }
    }

    /**
     * Joins the walls of the hole, side, top and bottom, to what sits in it by a constant coefficient.
     *
     * @param end what sits in the hole
     * @param coefficient heat transfer coefficient [W/(m² K)], > 0
     * @return one path per face
     * @throws IllegalArgumentException if the coefficient is not finite and positive
     */
    public List<Path> hole(End end, double coefficient) {
        requireCoefficient(coefficient);
        List<Path> all = new ArrayList<>();
        for (Facet facet : holeFacets()) {
            double conductance = 1 / (facet.kelvinPerWatt() + 1 / (coefficient * facet.areaM2()));
            all.add(DirectPath.of(
                    facet.ring().name() + " " + facet.side().words,
                    end,
                    facet.ring(),
                    "conduction",
                    HeatLaw.conductance(conductance)));
        }
        return all;
    }

    /**
     * Temperature at a point, by straight lines between the middles of the rings; nearer to a face than the middle of its ring,
     * that of the ring.
     *
     * @param radiusM radius [m], 0 to the last radius
     * @param depthM depth [m], 0 to the last depth, outside the hole
     * @param run the run
     * @param timeS time [s]
     * @return temperature [K]
     * @throws IllegalArgumentException if the point lies outside the block or beside the hole's wall
     */
    public double atK(double radiusM, double depthM, Trajectory run, double timeS) {
        requireInside("radius", radiusM, radii);
        requireInside("depth", depthM, depths);
        int i = interval(radii.length - 1, this::middleRadius, radiusM);
        int j = interval(depths.length - 1, this::middleDepth, depthM);
        double u = part(middleRadius(i), middleRadius(i + 1), radiusM);
        double v = part(middleDepth(j), middleDepth(j + 1), depthM);
        return (1 - u) * (1 - v) * at(i, j, run, timeS)
                + u * (1 - v) * at(i + 1, j, run, timeS)
                + (1 - u) * v * at(i, j + 1, run, timeS)
                + u * v * at(i + 1, j + 1, run, timeS);
    }

    private double at(int i, int j, Trajectory run, double timeS) {
        Node node = grid[i][j];
        if (node == null) {
            throw new IllegalArgumentException(
                    "point of " + name + " beside ring " + (i + 1) + "/" + (j + 1) + ": it lies in the hole");
        }
        return run.temperatureK(node, timeS);
    }

    private static int interval(int cells, java.util.function.IntToDoubleFunction middle, double x) {
        int i = 0;
        while (i + 2 < cells && middle.applyAsDouble(i + 1) < x) {
            i++;
        }
        return i;
    }

    /** Where a point lies between two middles; beyond the first middle the value there is kept. */
    private static double part(double a, double b, double x) {
        return Math.min(1, Math.max(0, (x - a) / (b - a)));
    }

    private static void requireInside(String what, double value, double[] edges) {
        double last = edges[edges.length - 1];
        if (!(value >= 0 && value <= last)) {
            throw new IllegalArgumentException(what + " " + value + " m: expected 0 m to " + last + " m");
        }
    }

    private static void requireCoefficient(double coefficient) {
        if (!(coefficient > 0) || Double.isInfinite(coefficient)) {
            throw new IllegalArgumentException(
                    "heat transfer coefficient " + coefficient + " W/(m² K): expected a finite value above 0");
        }
    }

    private static void requireAscending(String what, double[] edges) {
        if (edges.length < 3 || edges[0] != 0) {
            throw new IllegalArgumentException(what + ": expected at least three boundaries, the first at 0");
        }
        for (int i = 1; i < edges.length; i++) {
            if (!(edges[i] > edges[i - 1]) || Double.isInfinite(edges[i])) {
                throw new IllegalArgumentException(
                        what + " " + edges[i] + " m after " + edges[i - 1] + " m: expected ascending");
            }
        }
    }

    private static void requireAmong(String what, double value, double[] edges) {
        for (double edge : edges) {
            if (edge == value) {
                return;
            }
        }
        throw new IllegalArgumentException(what + " " + value + " m: expected one of the boundaries");
    }
}
