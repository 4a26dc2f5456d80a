/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.IntFunction;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.SensibleStore;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.solver.Trajectory;

/**
 * Layers of conducting material, one on the other, cut into cells.
 *
 * <p>Distances are counted from the middle of the geometry (the axis of a cylinder, the centre of a sphere, any plane). Where
 * the stack begins at 0 its inner side is the middle and passes no heat. Immutable.
 *
 * <p>Theory manual, equation (1.5).
 */
public final class LayerStack {

    private final Geometry geometry;
    private final double size;
    private final List<Cell> cells;
    private final List<Node> nodes;
    private final List<Path> paths;

    /** One cell: the layer it belongs to, its ends and middle, conductivity, and the contact resistance at its outer end. */
    private record Cell(String layer, double innerM, double outerM, double conductivity, double contact) {
        double middleM() {
            return 0.5 * (innerM + outerM);
        }
    }

    private LayerStack(Builder builder, String name, double temperatureK, IntFunction<DoubleFunction<Store>> stores) {
        this.geometry = builder.geometry;
        this.size = builder.size;
        this.cells = List.copyOf(builder.cells);
        List<Node> allNodes = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            double volume = geometry.volume(size, cell.innerM(), cell.outerM());
            allNodes.add(Node.of(
                    name + " " + cell.layer() + " " + (i + 1), stores.apply(i).apply(volume), temperatureK));
        }
        this.nodes = List.copyOf(allNodes);
        List<Path> allPaths = new ArrayList<>();
        for (int i = 0; i + 1 < cells.size(); i++) {
            allPaths.add(DirectPath.of(
                    name + " conduction " + (i + 1),
                    nodes.get(i),
                    nodes.get(i + 1),
                    "conduction",
                    HeatLaw.conductance(1 / (outerHalf(i) + contact(i) + innerHalf(i + 1)))));
        }
        this.paths = List.copyOf(allPaths);
    }

    /**
     * Begins a plane stack.
     *
     * @param areaM2 area [m²], > 0
     * @param innerM where the stack begins [m], ≥ 0
     * @return a builder
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Builder plane(double areaM2, double innerM) {
        return new Builder(Geometry.PLANE, areaM2, innerM);
    }

    /**
     * Begins a cylindrical stack without end faces.
     *
     * @param lengthM length [m], > 0
     * @param innerRadiusM where the stack begins [m], ≥ 0
     * @return a builder
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Builder cylinder(double lengthM, double innerRadiusM) {
        return new Builder(Geometry.CYLINDER, lengthM, innerRadiusM);
    }

    /**
     * Begins a spherical stack.
     *
     * @param innerRadiusM where the stack begins [m], ≥ 0
     * @return a builder
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Builder sphere(double innerRadiusM) {
        return new Builder(Geometry.SPHERE, 1, innerRadiusM);
    }

    /**
     * Cells that keep the error of a layer below a part of the temperature steps put on it.
     *
     * <p>The error of the scheme is about (cell/diffusion depth)²/24 of a step, with the diffusion depth √(α t) at the shortest
     * time of interest.
     *
     * @param thicknessM thickness of the layer [m], > 0
     * @param diffusivity α [m²/s], > 0
     * @param shortestTimeS shortest time of interest [s], > 0
     * @param relativeError wanted error as a part of a temperature step, > 0
     * @return number of cells, at least 2
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static int cellsFor(double thicknessM, double diffusivity, double shortestTimeS, double relativeError) {
        requirePositive("thickness", thicknessM);
        requirePositive("diffusivity", diffusivity);
        requirePositive("shortest time", shortestTimeS);
        requirePositive("relative error", relativeError);
        double cell = Math.sqrt(24 * relativeError * diffusivity * shortestTimeS);
        return Math.max(2, (int) Math.min(100_000, Math.ceil(thicknessM / cell)));
    }

    /** Collects layers from the inside outwards; each is checked when it is added. */
    public static final class Builder {

        private final Geometry geometry;
        private final double size;
        private final List<Cell> cells = new ArrayList<>();
        private final List<Double> volumetric = new ArrayList<>();
        private double reachedM;

        private Builder(Geometry geometry, double size, double innerM) {
            this.geometry = geometry;
            this.size = requirePositive("size", size);
            if (!(innerM >= 0) || Double.isInfinite(innerM)) {
                throw new IllegalArgumentException("inner distance " + innerM + " m: expected a finite value ≥ 0");
            }
            this.reachedM = innerM;
        }

        /**
         * Adds a layer of equal cells.
         *
         * @param name name of the layer
         * @param thicknessM thickness [m], > 0
         * @param conductivity thermal conductivity [W/(m K)], > 0
         * @param volumetricHeatCapacity density times specific heat capacity [J/(m³ K)], > 0
         * @param count number of cells, ≥ 1
         * @return this builder
         * @throws IllegalArgumentException if an argument is outside its range
         */
        public Builder layer(
                String name, double thicknessM, double conductivity, double volumetricHeatCapacity, int count) {
            return layer(name, thicknessM, conductivity, volumetricHeatCapacity, count, 1);
        }

        /**
         * Adds a layer whose cells grow outwards.
         *
         * @param name name of the layer
         * @param thicknessM thickness [m], > 0
         * @param conductivity thermal conductivity [W/(m K)], > 0
         * @param volumetricHeatCapacity density times specific heat capacity [J/(m³ K)], > 0
         * @param count number of cells, ≥ 1
         * @param growth thickness of a cell over that of the one before it, > 0; 1 for equal cells
         * @return this builder
         * @throws IllegalArgumentException if an argument is outside its range
         */
        public Builder layer(
                String name,
                double thicknessM,
                double conductivity,
                double volumetricHeatCapacity,
                int count,
                double growth) {
            requirePositive("thickness of " + name, thicknessM);
            requirePositive("conductivity of " + name, conductivity);
            requirePositive("volumetric heat capacity of " + name, volumetricHeatCapacity);
            requirePositive("growth of cells of " + name, growth);
            if (count < 1) {
                throw new IllegalArgumentException("cells of " + name + " " + count + ": expected at least 1");
            }
            double start = reachedM;
            double sum = growth == 1 ? count : (Math.pow(growth, count) - 1) / (growth - 1);
            for (int i = 1; i <= count; i++) {
                double part = growth == 1 ? i : (Math.pow(growth, i) - 1) / (growth - 1);
                double outer = i == count ? start + thicknessM : start + thicknessM * part / sum;
                cells.add(new Cell(name, reachedM, outer, conductivity, 0));
                volumetric.add(volumetricHeatCapacity);
                reachedM = outer;
            }
            return this;
        }

        /**
         * Adds layers as they lie on one another, each with its contact resistance to the one before it. That of the first layer to what
         * is inside the stack is left out: see {@link LayerStack#innerSurface(double)}.
         *
         * @param layers layers from the inside outwards, not modified
         * @return this builder
         */
        public Builder layers(List<Layer> layers) {
            for (int i = 0; i < layers.size(); i++) {
                Layer layer = layers.get(i);
                if (i > 0) {
                    contact(layer.contactResistance());
                }
                layer(
                        layer.name(),
                        layer.thicknessM(),
                        layer.conductivity(),
                        layer.volumetricHeatCapacity(),
                        layer.cells());
            }
            return this;
        }

        /**
         * Puts a contact resistance on the outer side of the layer added last.
         *
         * @param resistance resistance [m² K/W], ≥ 0
         * @return this builder
         * @throws IllegalArgumentException if the resistance is negative or not finite
         * @throws IllegalStateException if there is no layer yet
         */
        public Builder contact(double resistance) {
            if (!(resistance >= 0) || Double.isInfinite(resistance)) {
                throw new IllegalArgumentException(
                        "contact resistance " + resistance + " m² K/W: expected a finite value ≥ 0");
            }
            if (cells.isEmpty()) {
                throw new IllegalStateException("a contact resistance lies on a layer: call layer(…) first");
            }
            Cell last = cells.remove(cells.size() - 1);
            cells.add(new Cell(last.layer(), last.innerM(), last.outerM(), last.conductivity(), resistance));
            return this;
        }

        /**
         * Adds a medium without an outer end, cut off where nothing arrives in the time of the run.
         *
         * <p>The cut lies at six diffusion depths, where a step at the inner side has fallen to 2e-5; cells grow by a twentieth
         * each from a first of a fiftieth of a diffusion depth.
         *
         * @param name name of the medium
         * @param conductivity thermal conductivity [W/(m K)], > 0
         * @param volumetricHeatCapacity density times specific heat capacity [J/(m³ K)], > 0
         * @param durationS duration of the run [s], > 0
         * @return this builder
         * @throws IllegalArgumentException if an argument is outside its range
         */
        public Builder farMedium(String name, double conductivity, double volumetricHeatCapacity, double durationS) {
            requirePositive("duration", durationS);
            requirePositive("conductivity of " + name, conductivity);
            requirePositive("volumetric heat capacity of " + name, volumetricHeatCapacity);
            double depth = Math.sqrt(conductivity / volumetricHeatCapacity * durationS);
            double growth = 1.05;
            int count = (int) Math.ceil(Math.log(1 + FAR * (growth - 1) / FIRST_CELL) / Math.log(growth));
            return layer(name, FAR * depth, conductivity, volumetricHeatCapacity, count, growth);
        }

        private static final double FAR = 6;
        private static final double FIRST_CELL = 0.02;

        /**
         * Makes the stack.
         *
         * @param name what the nodes' names begin with
         * @param temperatureK temperature at the start [K], > 0
         * @return the stack
         * @throws IllegalArgumentException if the name is blank or the temperature is not finite and positive
         * @throws IllegalStateException if there is no layer
         */
        public LayerStack build(String name, double temperatureK) {
            return stack(name, temperatureK, i -> volume -> new SensibleStore(volumetric.get(i) * volume));
        }

        /**
         * Makes the stack of something whose heat capacity is not constant, such as a drink that freezes.
         *
         * @param name what the nodes' names begin with
         * @param temperatureK temperature at the start [K], > 0
         * @param storeOfVolume how much enthalpy a cell holds at which temperature, from the cell's volume [m³]; in all layers, in
         *     place of their volumetric heat capacities
         * @return the stack
         * @throws IllegalArgumentException if the name is blank or the temperature is not finite and positive
         * @throws IllegalStateException if there is no layer
         */
        public LayerStack build(String name, double temperatureK, DoubleFunction<Store> storeOfVolume) {
            return stack(name, temperatureK, i -> storeOfVolume);
        }

        private LayerStack stack(String name, double temperatureK, IntFunction<DoubleFunction<Store>> stores) {
            if (cells.isEmpty()) {
                throw new IllegalStateException("a stack needs at least one layer: call layer(…)");
            }
            return new LayerStack(this, name, temperatureK, stores);
        }
    }

    private double innerHalf(int i) {
        Cell cell = cells.get(i);
        return 1 / (cell.conductivity() * geometry.shape(size, cell.innerM(), cell.middleM()));
    }

    private double outerHalf(int i) {
        Cell cell = cells.get(i);
        return 1 / (cell.conductivity() * geometry.shape(size, cell.middleM(), cell.outerM()));
    }

    private double contact(int i) {
        Cell cell = cells.get(i);
        return cell.contact() / geometry.area(size, cell.outerM());
    }

    /**
     * The cells' nodes.
     *
     * @return nodes from the inside outwards
     */
    public List<Node> nodes() {
        return nodes;
    }

    /**
     * The paths between the cells.
     *
     * @return paths from the inside outwards
     */
    public List<Path> paths() {
        return paths;
    }

    /**
     * The link from the outermost cell to the outer surface, to be joined with what touches the surface.
     *
     * @return a link with the conductance of the outer half cell and a contact resistance on it
     */
    public Link outerSurface() {
        int last = cells.size() - 1;
        return Link.of(nodes.get(last), "conduction", HeatLaw.conductance(1 / (outerHalf(last) + contact(last))));
    }

    /**
     * The link from the innermost cell to the inner surface.
     *
     * @return a link with the conductance of the inner half cell
     * @throws IllegalStateException if the stack begins in the middle and has no inner surface
     */
    public Link innerSurface() {
        if (cells.get(0).innerM() == 0 && geometry != Geometry.PLANE) {
            throw new IllegalStateException("a stack that begins in the middle has no inner surface");
        }
        return Link.of(nodes.get(0), "conduction", HeatLaw.conductance(1 / innerHalf(0)));
    }

    /**
     * The link from the innermost cell to the surface of what is inside the stack, across a contact.
     *
     * @param contactResistance resistance on the area of the inner surface [m² K/W], finite, ≥ 0
     * @return a link with the conductance of the inner half cell and the contact
     * @throws IllegalArgumentException if the resistance is negative or not finite
     * @throws IllegalStateException if the stack begins in the middle and has no inner surface
     */
    public Link innerSurface(double contactResistance) {
        if (!(contactResistance >= 0) || Double.isInfinite(contactResistance)) {
            throw new IllegalArgumentException(
                    "contact resistance " + contactResistance + " m² K/W: expected a finite value ≥ 0");
        }
        Link bare = innerSurface();
        double resistance = innerHalf(0) + contactResistance / innerAreaM2();
        return Link.of(bare.end(), bare.mechanism(), HeatLaw.conductance(1 / resistance));
    }

    /**
     * Conduction along the axis to a stack that stands on this one, cell by cell.
     *
     * @param name what the paths' names begin with
     * @param above a cylindrical stack of as many cells of the same layers; its radii may differ
     * @return paths from this stack to the one above, from the inside outwards
     * @throws IllegalArgumentException if one of the stacks is not a cylinder or they differ in number of cells
     */
    public List<Path> endToEnd(String name, LayerStack above) {
        if (geometry != Geometry.CYLINDER
                || above.geometry != Geometry.CYLINDER
                || nodes.size() != above.nodes.size()) {
            throw new IllegalArgumentException("stacks of " + nodes.size() + " and " + above.nodes.size()
                    + " cells: expected two cylinders with as many cells");
        }
        List<Path> along = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            along.add(DirectPath.of(
                    name + " " + (i + 1),
                    nodes.get(i),
                    above.nodes.get(i),
                    "conduction",
                    HeatLaw.conductance(1 / (halfLength(i) + above.halfLength(i)))));
        }
        return along;
    }

    /** Resistance from the middle of a cell's length to its end. */
    private double halfLength(int i) {
        Cell cell = cells.get(i);
        double volume = geometry.volume(size, cell.innerM(), cell.outerM());
        return 0.5 * size * size / (cell.conductivity() * volume);
    }

    /**
     * Area of the outer surface.
     *
     * @return area [m²]
     */
    public double outerAreaM2() {
        return geometry.area(size, cells.get(cells.size() - 1).outerM());
    }

    /**
     * Area of the inner surface.
     *
     * @return area [m²], 0 if the stack begins in the middle of a cylinder or sphere
     */
    public double innerAreaM2() {
        return geometry.area(size, cells.get(0).innerM());
    }

    /**
     * Mean temperature of a layer, weighted by volume.
     *
     * @param layer name of the layer
     * @param run the run
     * @param timeS time [s]
     * @return temperature [K]
     * @throws IllegalArgumentException if there is no such layer
     */
    public double meanK(String layer, Trajectory run, double timeS) {
        double sum = 0;
        double volume = 0;
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).layer().equals(layer)) {
                double cell = geometry.volume(
                        size, cells.get(i).innerM(), cells.get(i).outerM());
                sum += cell * run.temperatureK(nodes.get(i), timeS);
                volume += cell;
            }
        }
        if (volume == 0) {
            throw new IllegalArgumentException("layer " + layer + ": not in this stack");
        }
        return sum / volume;
    }

    /**
     * Temperature on the inner side of the boundary between a layer and the next.
     *
     * @param layer name of a layer that is not the last
     * @param run the run
     * @param timeS time [s]
     * @return temperature [K] of the layer's outer edge, before a contact resistance
     * @throws IllegalArgumentException if there is no such layer or nothing follows it
     */
    public double outerEdgeK(String layer, Trajectory run, double timeS) {
        int last = lastCell(layer);
        double inner = run.temperatureK(nodes.get(last), timeS);
        return inner - flow(last, run, timeS) * outerHalf(last);
    }

    /**
     * Temperature on the outer side of the boundary between a layer and the one before it.
     *
     * @param layer name of the layer on the inner side of the boundary
     * @param run the run
     * @param timeS time [s]
     * @return temperature [K] of the next layer's inner edge, behind a contact resistance
     * @throws IllegalArgumentException if there is no such layer or nothing follows it
     */
    public double nextInnerEdgeK(String layer, Trajectory run, double timeS) {
        int last = lastCell(layer);
        return run.temperatureK(nodes.get(last + 1), timeS) + flow(last, run, timeS) * innerHalf(last + 1);
    }

    /**
     * Temperature in the middle of a stack that begins there, by the parabola that is level in the middle and meets the first
     * two cells.
     *
     * @param run the run
     * @param timeS time [s]
     * @return temperature [K]
     */
    public double middleK(Trajectory run, double timeS) {
        double first = run.temperatureK(nodes.get(0), timeS);
        if (nodes.size() == 1) {
            return first;
        }
        double a = cells.get(0).middleM();
        double b = cells.get(1).middleM();
        double second = run.temperatureK(nodes.get(1), timeS);
        return first - (second - first) * a * a / (b * b - a * a);
    }

    private int lastCell(String layer) {
        for (int i = cells.size() - 2; i >= 0; i--) {
            if (cells.get(i).layer().equals(layer) && !cells.get(i + 1).layer().equals(layer)) {
                return i;
            }
        }
        throw new IllegalArgumentException("layer " + layer + ": not in this stack, or nothing follows it");
    }

    private double flow(int inner, Trajectory run, double timeS) {
        double difference = run.temperatureK(nodes.get(inner), timeS) - run.temperatureK(nodes.get(inner + 1), timeS);
        return difference / (outerHalf(inner) + contact(inner) + innerHalf(inner + 1));
    }

    private static double requirePositive(String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " " + value + ": expected a finite value above 0");
        }
        return value;
    }
}
