/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.film.RadiativeFilm;
import org.beveragethermal.core.layered.FilmRun;
import org.beveragethermal.core.layered.Slice;
import org.beveragethermal.core.layered.StratifiedLiquid;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.LyingProfile;
import org.beveragethermal.materials.vessel.Profile;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of the slices of an upright vessel when it is laid down: level layers from below upwards, one for each slice and
 * of its volume, so that each node keeps its mass.
 *
 * <p>The wall beside a layer has that layer's true inner and outer area; the wall above the liquid belongs to the band that is
 * dry when the vessel stands, or to the highest layer if there is none. The mass of glass of each node stays that of its
 * band of the standing vessel, and the wall is as thick as its mean: glass has about a tenth of the heat capacity of the
 * contents, and how it is spread over the layers hardly shows.
 *
 * <p>The film runs down or up the round wall over the true length of its run, with the part of gravity that acts along it,
 * averaged over the layer; see {@link FilmRun}. The floor of the vessel stands upright beside all layers and has the law of an
 * upright wall on the depth of the liquid; the closure likewise, on its diameter.
 *
 * <p>The gas lies under the roof of the round wall as a flat layer of its mean height: roof and liquid face each other, so that all
 * radiation of the liquid falls on the roof. What the gas passes to base and closure is left out.
 */
final class LyingLayers {

    /** A part of the floor or the wall smaller than this part of the whole is left out. */
    private static final double NEGLIGIBLE_PART = 1e-9;

    /** What lies at the ends: the base, its conductance to the side wall all round, and closure and gas if there are any, and
     *  how much gas that is. */
    record Ends(
            Node base,
            double heelWPerK,
            @Nullable Plug plug,
            @Nullable Node gas,
            double gasM3) {}

    private final FilledVessel filled;
    private final Fluid drink;
    private final LyingProfile lying;
    private final Ends ends;
    /** Faces of the layers, from the lowest point of the inside to the surface of the liquid [m]. */
    private final double[] levels;

    private final List<Slice> slices;
    /** Edges of the wall that belongs to each node, from the lowest to the highest point of the outside [m]. */
    private final double[] edges;

    private final double[] outerBelow;
    private final double halfCoefficient;

    private LyingLayers(
            FilledVessel filled, LyingProfile lying, double[] levels, List<Slice> upright, int bands, Ends ends) {
        this.filled = filled;
        this.drink = Fluid.of(filled.liquid());
        this.lying = lying;
        this.ends = ends;
        this.levels = levels;
        Profile profile = filled.vessel().profile();
        Solid wall = filled.vessel().wall();
        double between =
                0.5 * (profile.outerSideAreaM2(0, profile.heightM()) + profile.innerSideAreaM2(0, profile.heightM()));
        double halfThickness = 0.5 * profile.wallVolumeM3(0, profile.heightM()) / between;
        this.halfCoefficient = wall.thermalConductivity().value() / halfThickness;
        this.slices = slices(upright);
        this.edges = new double[bands + 1];
        double top = 2 * lying.axisM();
        int wet = upright.size();
        double dryHeight = (top - levels[wet]) / Math.max(1, bands - wet);
        for (int i = 1; i < bands; i++) {
            edges[i] = i <= wet ? levels[i] : levels[wet] + (i - wet) * dryHeight;
        }
        edges[bands] = top;
        this.outerBelow = new double[bands + 1];
        for (int i = 1; i <= bands; i++) {
            outerBelow[i] = lying.outerSideAreaM2(edges[i]);
        }
    }

    /**
     * Layers of the volumes of given slices.
     *
     * @param bands number of wall nodes: one for each slice, and more above them if the vessel is not full to the brim; these share
     *     the height of the wall above the liquid equally
     */
    static LyingLayers of(FilledVessel filled, LyingProfile lying, List<Slice> upright, int bands, Ends ends) {
        double[] levels = new double[upright.size() + 1];
        levels[0] = lying.levelM(0);
        double volume = 0;
        for (int i = 0; i < upright.size(); i++) {
            volume += upright.get(i).volumeM3();
            levels[i + 1] = lying.levelM(Math.min(volume, filled.vessel().brimfulVolumeM3()));
        }
        return new LyingLayers(filled, lying, levels, upright, bands, ends);
    }

    private List<Slice> slices(List<Slice> upright) {
        double depth = levels[levels.length - 1] - levels[0];
        double length = filled.vessel().profile().heightM();
        List<Slice> layers = new ArrayList<>();
        double below = 0;
        for (int i = 0; i < upright.size(); i++) {
            Slice slice = upright.get(i);
            double height = levels[i + 1] - levels[i];
            double reached = lying.innerSideAreaM2(0, length, levels[i + 1]);
            double side = reached - below;
            below = reached;
            double width = 2 * lying.surfaceLengthM(0.5 * (levels[i] + levels[i + 1]));
            boolean highest = i + 1 == upright.size();
            layers.add(new Slice(
                    levels[i],
                    levels[i + 1],
                    slice.volumeM3(),
                    side,
                    highest ? slice.volumeM3() / height : lying.surfaceAreaM2(levels[i + 1]),
                    slice.wall(),
                    halfCoefficient,
                    new FilmRun(Math.max(height, side / width), 2 * slice.volumeM3() / side, 0.5 * depth)));
        }
        return layers;
    }

    List<Slice> slices() {
        return slices;
    }

    /** Conductance from mid-wall to a surface per area [W/(m² K)]. */
    double halfCoefficient() {
        return halfCoefficient;
    }

    /** Outer area of the wall that belongs to a node and lies below a level [m²]. */
    double outerAreaM2(int node, double levelM) {
        if (levelM <= edges[node]) {
            return 0;
        }
        double reached = levelM >= edges[node + 1] ? outerBelow[node + 1] : lying.outerSideAreaM2(levelM);
        return reached - outerBelow[node];
    }

    /** Conductance along the wall from a node to the next one above it [W/K], through both sides of the vessel. */
    double alongWallWPerK(int lower) {
        double width = 2 * filled.vessel().profile().heightM();
        double thickness = 2 * filled.vessel().wall().thermalConductivity().value() / halfCoefficient;
        double distance = 0.5 * (outerBelow[lower + 2] - outerBelow[lower]) / width;
        return filled.vessel().wall().thermalConductivity().value() * thickness * width / distance;
    }

    /** Paths of the contents: of the layers, between them and the ends, and of the gas. */
    List<Path> inside(String id, StratifiedLiquid upright, List<ModelledVessel.Band> wall) {
        List<Path> paths = new ArrayList<>(
                upright.rearranged(id + " lying", filled.liquid(), slices).paths());
        floor(paths, id, upright.nodes());
        heel(paths, id, wall);
        Plug plug = ends.plug();
        if (plug != null) {
            closure(paths, id, plug, upright.nodes(), wall);
        }
        Node gas = ends.gas();
        if (gas != null) {
            gas(paths, id, gas, upright.nodes().get(slices.size() - 1), wall);
        }
        return paths;
    }

    private void floor(List<Path> paths, String id, List<Node> contents) {
        double coefficient = filled.vessel().wall().thermalConductivity().value()
                / (0.5 * filled.vessel().profile().baseThicknessM());
        double depth = levels[levels.length - 1] - levels[0];
        double total = lying.floorAreaM2(2 * lying.axisM());
        for (int i = 0; i < slices.size(); i++) {
            double area = lying.floorAreaM2(levels[i + 1]) - lying.floorAreaM2(levels[i]);
            if (area > NEGLIGIBLE_PART * total) {
                paths.add(JunctionPath.of(
                        id + " floor beside " + (i + 1),
                        Link.of(contents.get(i), "convection", film(area, depth))
                                .scaledBy(Multipliers.INSIDE_FILM),
                        Link.of(ends.base(), "conduction", HeatLaw.conductance(coefficient * area))));
            }
        }
    }

    private HeatLaw film(double areaM2, double heightM) {
        return ConvectiveFilm.free(areaM2, heightM, drink, EnclosedLiquid.COOLING)
                .whenColder(EnclosedLiquid.WARMING)
                .atLeast(1);
    }

    /** From the base to the side wall all round, in proportion to the area that each node has of it. */
    private void heel(List<Path> paths, String id, List<ModelledVessel.Band> wall) {
        double total = outerBelow[wall.size()];
        for (int i = 0; i < wall.size(); i++) {
            double part = (outerBelow[i + 1] - outerBelow[i]) / total;
            if (part > NEGLIGIBLE_PART) {
                paths.add(DirectPath.of(
                        id + " heel " + (i + 1),
                        ends.base(),
                        wall.get(i).band().wall(),
                        "conduction",
                        HeatLaw.conductance(ends.heelWPerK() * part)));
            }
        }
    }

    /** Between the closure and the layers it dips into, and to the neck round it beside each of them. */
    private void closure(List<Path> paths, String id, Plug plug, List<Node> contents, List<ModelledVessel.Band> wall) {
        LyingDisc disc = new LyingDisc(Math.sqrt(plug.areaM2() / Math.PI), lying.axisM());
        for (int i = 0; i < slices.size(); i++) {
            double part = disc.part(levels[i], levels[i + 1]);
            if (part > NEGLIGIBLE_PART) {
                paths.add(JunctionPath.of(
                        id + " closure beside " + (i + 1),
                        Link.of(contents.get(i), "convection", film(part * plug.areaM2(), 2 * disc.radiusM()))
                                .scaledBy(Multipliers.INSIDE_FILM),
                        Link.of(plug.node(), "conduction", HeatLaw.conductance(plug.halfWPerK() * part))));
            }
        }
        double neck = plug.toNeck(filled.vessel().profile().heightM());
        for (int i = 0; i < wall.size(); i++) {
            double part = disc.part(edges[i], edges[i + 1]);
            if (part > NEGLIGIBLE_PART) {
                paths.add(DirectPath.of(
                        wall.get(i).band().name() + " to closure",
                        wall.get(i).band().wall(),
                        plug.node(),
                        "conduction",
                        HeatLaw.conductance(neck * part)));
            }
        }
    }

    /** Between the highest layer and the wall above it: a film on the liquid, one on the roof, and radiation. */
    private void gas(List<Path> paths, String id, Node gas, Node top, List<ModelledVessel.Band> wall) {
        Profile profile = filled.vessel().profile();
        double surface = levels[slices.size()];
        double liquidArea = lying.surfaceAreaM2(surface);
        double roof = lying.innerSideAreaM2(0, profile.heightM(), 2 * lying.axisM())
                - lying.innerSideAreaM2(0, profile.heightM(), surface);
        double outside = outerBelow[wall.size()] - outerBelow[slices.size()];
        if (liquidArea <= 0 || roof <= 0 || outside <= 0) {
            return;
        }
        double height = ends.gasM3() / liquidArea;
        paths.add(DirectPath.of(
                id + " headspace on liquid",
                gas,
                top,
                "convection",
                new GasSpace(liquidArea, roof, height).onLiquid()));
        double emissivity =
                GasSpace.emissivity(filled.vessel().wall().emissivity().value());
        for (int i = slices.size(); i < wall.size(); i++) {
            double part = (outerBelow[i + 1] - outerBelow[i]) / outside;
            double area = part * roof;
            paths.add(JunctionPath.of(
                    id + " headspace on " + wall.get(i).band().name(),
                    Link.of(wall.get(i).band().wall(), "conduction", HeatLaw.conductance(halfCoefficient * area)),
                    Link.of(gas, "convection", new GasSpace(liquidArea, area, height).onEnd()),
                    Link.of(top, "radiation", new RadiativeFilm(part * liquidArea, emissivity))));
        }
    }
}
