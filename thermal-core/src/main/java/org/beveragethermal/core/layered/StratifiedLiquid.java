/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.IntFunction;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.beveragethermal.core.internal.FilmFit;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.SensibleStore;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;

/**
 * A column of liquid in slices, with the film along its wall, conduction and mixing between slices, and a bottom.
 *
 * <p>The top passes no heat unless it is joined to something. Where a slice freezes, ice stays in it, spread evenly; films and
 * mixing go on as if all of it were liquid of its temperature, and carry heat but no ice. Immutable.
 */
public final class StratifiedLiquid {

    private final List<Slice> slices;
    private final List<Node> nodes;
    private final List<Path> paths;
    private final double totalVolume;

    private StratifiedLiquid(List<Slice> slices, List<Node> nodes, List<Path> paths) {
        this.slices = List.copyOf(slices);
        this.nodes = List.copyOf(nodes);
        this.paths = List.copyOf(paths);
        this.totalVolume = slices.stream().mapToDouble(Slice::volumeM3).sum();
    }

    /**
     * A column with the liquid's own heat capacity. A drink freezes and thaws, slice by slice, as {@link FreezingStore} says; of
     * other liquids no freezing curve is known, they stay liquid.
     *
     * @param name what names of nodes and paths begin with
     * @param liquid the liquid
     * @param densityForMass density by which volumes become masses [kg/m³], > 0
     * @param temperatureK temperature at the start [K]
     * @param slices slices from the bottom upwards, each beginning where the one below ends; at least two; not modified
     * @return the column
     * @throws IllegalArgumentException if the slices do not join
     */
    public static StratifiedLiquid of(
            String name, Liquid liquid, double densityForMass, double temperatureK, List<Slice> slices) {
        return build(name, liquid, temperatureK, slices, stores(liquid, densityForMass, slices));
    }

    private static IntFunction<Store> stores(Liquid liquid, double densityForMass, List<Slice> slices) {
        if (liquid instanceof Beverage drink) {
            FreezingStore kilogram = FreezingStore.ofMass(drink, 1);
            return i -> kilogram.withMass(densityForMass * slices.get(i).volumeM3());
        }
        return i -> LiquidStore.ofMass(liquid, densityForMass * slices.get(i).volumeM3());
    }

    /**
     * A column with a constant heat capacity per volume.
     *
     * @param name what names of nodes and paths begin with
     * @param liquid the liquid, for its density curve, conductivity and viscosity
     * @param volumetricHeatCapacity density times specific heat capacity [J/(m³ K)], > 0
     * @param temperatureK temperature at the start [K]
     * @param slices slices from the bottom upwards, each beginning where the one below ends; at least two; not modified
     * @return the column
     * @throws IllegalArgumentException if the slices do not join
     */
    public static StratifiedLiquid ofConstantHeatCapacity(
            String name, Liquid liquid, double volumetricHeatCapacity, double temperatureK, List<Slice> slices) {
        return build(
                name,
                liquid,
                temperatureK,
                slices,
                i -> new SensibleStore(volumetricHeatCapacity * slices.get(i).volumeM3()));
    }

    /**
     * Slices of an upright plain cylinder.
     *
     * @param radiusM inner radius [m], > 0
     * @param faces heights of the faces between slices [m], ascending, the bottom first and the surface last; not modified
     * @param walls what lies behind the wall beside each slice, by the slice's index from the bottom
     * @param wallCoefficients conductance to there per inner area [W/(m² K)], by the slice's index
     * @return slices from the bottom upwards
     */
    public static List<Slice> cylinder(
            double radiusM, double[] faces, IntFunction<? extends End> walls, IntFunction<Double> wallCoefficients) {
        List<Slice> slices = new ArrayList<>();
        double area = Math.PI * radiusM * radiusM;
        for (int i = 0; i + 1 < faces.length; i++) {
            double height = faces[i + 1] - faces[i];
            slices.add(new Slice(
                    faces[i],
                    faces[i + 1],
                    area * height,
                    2 * Math.PI * radiusM * height,
                    area,
                    walls.apply(i),
                    wallCoefficients.apply(i)));
        }
        return slices;
    }

    /**
     * Faces of slices: about equal, but finer towards each waterline, where a cold and a warm part meet in a layer that only
     * conduction widens.
     *
     * @param lowM bottom of the liquid [m]
     * @param highM surface of the liquid [m], above {@code lowM}
     * @param count number of slices if there were no waterline, at least 2
     * @param waterlines heights at which what touches the wall changes [m]; those outside the liquid are ignored
     * @return ascending faces, the bottom first and the surface last, every waterline among them
     * @throws IllegalArgumentException if the heights do not ascend or the count is below 2
     */
    public static double[] faces(double lowM, double highM, int count, double... waterlines) {
        if (!(highM > lowM) || Double.isInfinite(highM - lowM) || count < 2) {
            throw new IllegalArgumentException("slices from " + lowM + " m to " + highM + " m, count " + count
                    + ": expected an ascending column and at least 2 slices");
        }
        double coarse = (highM - lowM) / count;
        TreeSet<Double> lines = new TreeSet<>();
        for (double line : waterlines) {
            if (line > lowM + FINEST_PART * coarse && line < highM - FINEST_PART * coarse) {
                lines.add(line);
            }
        }
        List<Double> faces = new ArrayList<>();
        faces.add(lowM);
        double from = lowM;
        List<Double> ends = new ArrayList<>(lines);
        ends.add(highM);
        for (double to : ends) {
            stretch(faces, from, to, coarse, lines.contains(from), lines.contains(to));
            from = to;
        }
        return faces.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Size of the slice beside a waterline as a part of the others, and how much each is thicker than its neighbour. */
    private static final double FINEST_PART = 0.15;

    private static final double GROWTH = 1.5;

    /** Adds the faces of a stretch after its first, fine where it meets a waterline. */
    private static void stretch(
            List<Double> faces, double from, double to, double coarse, boolean fineLow, boolean fineHigh) {
        List<Double> low = fineLow ? growing(coarse) : List.of();
        List<Double> high = fineHigh ? growing(coarse) : List.of();
        double graded = sum(low) + sum(high);
        int middle = (int) Math.max(graded > 0 ? 0 : 1, Math.round((to - from - graded) / coarse));
        List<Double> sizes = new ArrayList<>(low);
        for (int i = 0; i < middle; i++) {
            sizes.add(coarse);
        }
        for (int i = high.size() - 1; i >= 0; i--) {
            sizes.add(high.get(i));
        }
        double scale = (to - from) / sum(sizes);
        double reached = from;
        for (int i = 0; i < sizes.size(); i++) {
            reached += scale * sizes.get(i);
            faces.add(i == sizes.size() - 1 ? to : reached);
        }
    }

    private static List<Double> growing(double coarse) {
        List<Double> sizes = new ArrayList<>();
        for (double size = FINEST_PART * coarse; size < coarse; size *= GROWTH) {
            sizes.add(size);
        }
        return sizes;
    }

    private static double sum(List<Double> sizes) {
        return sizes.stream().mapToDouble(Double::doubleValue).sum();
    }

    private static StratifiedLiquid build(
            String name, Liquid liquid, double temperatureK, List<Slice> slices, IntFunction<Store> stores) {
        if (slices.size() < 2) {
            throw new IllegalArgumentException("column of " + slices.size() + " slices: expected at least 2");
        }
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < slices.size(); i++) {
            nodes.add(Node.of(name + " slice " + (i + 1), stores.apply(i), temperatureK));
        }
        return join(name, liquid, nodes, slices, nodes, slices);
    }

    /** The paths between given nodes that stand one on the other, and the film along the pieces of wall beside them. */
    private static StratifiedLiquid join(
            String name,
            Liquid liquid,
            List<Node> nodes,
            List<Slice> slices,
            List<Node> besidePieces,
            List<Slice> pieces) {
        FilmFit fit = FilmFit.of(liquid);
        double column = slices.get(slices.size() - 1).highM() - slices.get(0).lowM();
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i + 1 < slices.size(); i++) {
            Slice below = slices.get(i);
            Slice above = slices.get(i + 1);
            if (Math.abs(below.highM() - above.lowM()) > 1e-9 * column) {
                throw new IllegalArgumentException("slice " + (i + 2) + " begins at " + above.lowM() + " m: expected "
                        + below.highM() + " m, where the one below ends");
            }
            double distance = 0.5 * (below.heightM() + above.heightM());
            paths.add(DirectPath.of(
                    name + " mixing " + (i + 1),
                    nodes.get(i),
                    nodes.get(i + 1),
                    "conduction and mixing",
                    new UnstableMixing(below.faceAreaM2(), distance, below.run().eddyM(), fit)));
        }
        paths.add(new WallFilmPath(name + " wall film", besidePieces, pieces, fit, densestK(liquid)));
        return new StratifiedLiquid(slices, nodes, paths);
    }

    /**
     * The same contents in a vessel that lies otherwise: the same nodes in the same order, beside other slices of the same
     * volumes.
     *
     * @param name what names of paths begin with; not the name of this column
     * @param liquid the column's liquid
     * @param newSlices slices from the bottom upwards, one for each node, each beginning where the one below ends; not modified
     * @return the column with these slices
     * @throws IllegalArgumentException if the slices do not join, or their number or a volume differs
     */
    public StratifiedLiquid rearranged(String name, Liquid liquid, List<Slice> newSlices) {
        if (newSlices.size() != slices.size()) {
            throw new IllegalArgumentException(
                    "column of " + newSlices.size() + " slices: expected " + slices.size() + ", one for each node");
        }
        for (int i = 0; i < slices.size(); i++) {
            double volume = slices.get(i).volumeM3();
            if (Math.abs(newSlices.get(i).volumeM3() - volume) > 1e-6 * totalVolume) {
                throw new IllegalArgumentException("slice " + (i + 1) + " of "
                        + newSlices.get(i).volumeM3() + " m³: expected " + volume + " m³, as its node holds");
            }
        }
        return join(name, liquid, nodes, newSlices, nodes, newSlices);
    }

    /**
     * The same column upside down: the same nodes, the highest slice lowest.
     *
     * @param name what names of paths begin with; not the name of this column
     * @param liquid the column's liquid
     * @return the column turned over
     */
    public StratifiedLiquid turnedOver(String name, Liquid liquid) {
        double top = slices.get(slices.size() - 1).highM();
        List<Slice> turned = new ArrayList<>();
        List<Node> turnedNodes = new ArrayList<>();
        for (int i = slices.size() - 1; i >= 0; i--) {
            Slice slice = slices.get(i);
            double face = i == 0 ? slice.faceAreaM2() : slices.get(i - 1).faceAreaM2();
            turned.add(new Slice(
                    top - slice.highM(),
                    top - slice.lowM(),
                    slice.volumeM3(),
                    slice.sideAreaM2(),
                    face,
                    slice.wall(),
                    slice.wallCoefficient(),
                    slice.run()));
            turnedNodes.add(nodes.get(i));
        }
        return join(name, liquid, turnedNodes, turned, turnedNodes, turned);
    }

    /**
     * The same column upside down in another part of the vessel: the same nodes, the highest slice lowest.
     *
     * @param name what names of paths begin with; not the name of this column
     * @param liquid the column's liquid
     * @param turned where each slice lies then, by its index from the bottom of this column, heights counted from the bottom of the
     *     turned one; the last lowest; not modified
     * @param beside for each of {@code turned} the pieces of it that lie beside one piece of wall each, the lowest first; not modified
     * @return the column turned over
     * @throws IllegalArgumentException if there are not as many slices as in this column, or the slices do not join
     */
    public StratifiedLiquid turnedOver(String name, Liquid liquid, List<Slice> turned, List<List<Slice>> beside) {
        if (turned.size() != slices.size() || beside.size() != slices.size()) {
            throw new IllegalArgumentException(
                    turned.size() + " turned slices, pieces of " + beside.size() + ": expected " + slices.size());
        }
        List<Slice> fromBelow = new ArrayList<>();
        List<Node> nodesFromBelow = new ArrayList<>();
        List<Slice> pieces = new ArrayList<>();
        List<Node> besidePieces = new ArrayList<>();
        for (int i = slices.size() - 1; i >= 0; i--) {
            fromBelow.add(turned.get(i));
            nodesFromBelow.add(nodes.get(i));
            for (Slice piece : beside.get(i)) {
                pieces.add(piece);
                besidePieces.add(nodes.get(i));
            }
        }
        return join(name, liquid, nodesFromBelow, fromBelow, besidePieces, pieces);
    }

    /**
     * Joins the bottom of the column to something.
     *
     * <p>A cold bottom under its own cold liquid conducts over half the lowest slice; under a warm one the liquid overturns and
     * resists with a film whose thickness does not depend on the slice (McAdams, warm face up). Density decides which.
     *
     * @param name name of the path
     * @param liquid the column's liquid
     * @param areaM2 area of the bottom [m²], > 0
     * @param links from what lies below the bottom to its inner surface
     * @return the path
     */
    public Path bottom(String name, Liquid liquid, double areaM2, List<Link> links) {
        BottomFilm film = new BottomFilm(areaM2, 0.5 * slices.get(0).heightM(), densestK(liquid), FilmFit.of(liquid));
        List<Link> all = new ArrayList<>();
        all.add(Link.of(nodes.get(0), "convection", film));
        all.addAll(links);
        return JunctionPath.of(name, all);
    }

    /** The temperature at which a liquid is densest, the lower end of its range if its density only falls. */
    private static double densestK(Liquid liquid) {
        double low = liquid.temperatureRange().low();
        double high = liquid.temperatureRange().high();
        return new BrentOptimizer(1e-9, 1e-6)
                .optimize(
                        GoalType.MAXIMIZE,
                        new UnivariateObjectiveFunction(liquid::density),
                        new SearchInterval(low, high),
                        new MaxEval(1000))
                .getPoint();
    }

    /**
     * Joins the bottom of the column to something by a constant coefficient.
     *
     * @param name name of the path
     * @param liquid the column's liquid
     * @param areaM2 area of the bottom [m²], > 0
     * @param end what lies below
     * @param coefficient conductance from the inner surface to there per area [W/(m² K)], > 0
     * @return the path
     */
    public Path bottom(String name, Liquid liquid, double areaM2, End end, double coefficient) {
        return bottom(
                name, liquid, areaM2, List.of(Link.of(end, "conduction", HeatLaw.conductance(coefficient * areaM2))));
    }

    /**
     * The slices' nodes.
     *
     * @return nodes from the bottom upwards
     */
    public List<Node> nodes() {
        return nodes;
    }

    /**
     * The column's own paths: between slices, and to what lies beside them.
     *
     * @return paths
     */
    public List<Path> paths() {
        return paths;
    }

    /**
     * The slices.
     *
     * @return slices from the bottom upwards
     */
    public List<Slice> slices() {
        return slices;
    }

    /**
     * Mean temperature, weighted by volume.
     *
     * @param run the run
     * @param timeS time [s]
     * @return temperature [K]
     */
    public double meanK(Trajectory run, double timeS) {
        double sum = 0;
        for (int i = 0; i < nodes.size(); i++) {
            sum += slices.get(i).volumeM3() * run.temperatureK(nodes.get(i), timeS);
        }
        return sum / totalVolume;
    }

    /**
     * Temperatures of all slices.
     *
     * @param run the run
     * @param timeS time [s]
     * @return temperature [K] of each slice from the bottom upwards
     */
    public double[] profileK(Trajectory run, double timeS) {
        return nodes.stream().mapToDouble(node -> run.temperatureK(node, timeS)).toArray();
    }
}
