/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import java.util.ArrayList;
import java.util.List;
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
 */
public final class AxisymmetricBlock {

    private final double[] radii;
    private final double[] depths;
    private final double conductivity;
    private final @Nullable Node[][] grid;
    private final List<Node> nodes;
    private final List<Path> paths;
    private final String name;

    private AxisymmetricBlock(
            String name,
            double[] radii,
            double[] depths,
            double conductivity,
            double volumetricHeatCapacity,
            double temperatureK,
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
                            name + " " + (i + 1) + "/" + (j + 1), volumetricHeatCapacity * volume, temperatureK);
                    all.add(grid[i][j]);
                }
            }
        }
        this.nodes = List.copyOf(all);
        this.paths = List.copyOf(innerPaths());
    }

    /**
     * A block of one material with a cylindrical hole on its axis.
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

    private List<Path> innerPaths() {
        List<Path> all = new ArrayList<>();
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

    private static void join(List<Path> all, @Nullable Node a, @Nullable Node b, double conductance) {
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
        return paths;
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
        return flat(end, coefficient, 0, "top");
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
        return flat(end, coefficient, depths.length - 2, "bottom");
    }

    private List<Path> flat(End end, double coefficient, int j, String what) {
        requireCoefficient(coefficient);
        double half = 0.5 * (depths[j + 1] - depths[j]) / conductivity;
        List<Path> all = new ArrayList<>();
        for (int i = 0; i < grid.length; i++) {
            outside(all, grid[i][j], end, ring(i) / (half + 1 / coefficient), what);
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
        for (int i = 0; i < grid.length; i++) {
            for (int j = 0; j < grid[i].length; j++) {
                Node node = grid[i][j];
                if (node == null) {
                    continue;
                }
                if (i > 0 && grid[i - 1][j] == null) {
                    double area = 2 * Math.PI * radii[i] * (depths[j + 1] - depths[j]);
                    face(
                            all,
                            node,
                            end,
                            radialHalf(radii[i], middleRadius(i), j) + 1 / (coefficient * area),
                            "side of hole");
                }
                double half =
                        0.5 * (depths[j + 1] - depths[j]) / (conductivity * ring(i)) + 1 / (coefficient * ring(i));
                if (j + 1 < grid[i].length && grid[i][j + 1] == null) {
                    face(all, node, end, half, "top of hole");
                }
                if (j > 0 && grid[i][j - 1] == null) {
                    face(all, node, end, half, "bottom of hole");
                }
            }
        }
        return all;
    }

    private static void face(List<Path> all, Node node, End end, double resistance, String what) {
        all.add(DirectPath.of(node.name() + " " + what, end, node, "conduction", HeatLaw.conductance(1 / resistance)));
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
