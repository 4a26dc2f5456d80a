/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.prediction.WallBand;
import org.beveragethermal.core.solver.EventAnswer;
import org.beveragethermal.core.solver.RunEvent;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.surroundings.Face;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.WallPatch;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;

/**
 * A vessel as nodes and paths: what the descriptions of its contents have in common, which is the wall and what lies around it.
 *
 * <p>The wall is one node per band. Heat passes from its middle to the outer surface, through the layers around it if there are
 * any, to where it meets what touches the band, and along wall and layers to the neighbouring bands. What base and
 * closure pass is up to the description.
 */
abstract class ModelledVessel {

    private final String id;
    private final FilledVessel filled;
    private final List<Layer> layers;
    private final List<Band> bands = new ArrayList<>();

    /**
     * A band of wall, its outer surface, the conductance from mid-wall to the inner surface per area, the link to the outer
     * surface, and the layers around it if there are any.
     */
    record Band(WallBand band, WallPatch patch, double halfCoefficient, Link outermost, Optional<Wrapping> wrapping) {}

    /** A vessel with layers around its wall, from the wall outwards; none if the list is empty. */
    ModelledVessel(String id, FilledVessel filled, List<Layer> layers) {
        this.id = id;
        this.filled = filled;
        this.layers = List.copyOf(layers);
    }

    /** Adds the band of wall between two heights; {@code extraMassKg} of glass counts with it. */
    final Band addBand(double lowM, double highM, double extraMassKg, String insidePath, int slice) {
        Profile profile = filled.vessel().profile();
        Solid wall = filled.vessel().wall();
        double outerArea = profile.outerSideAreaM2(lowM, highM);
        double mass = filled.vessel().wallMassKg(lowM, highM) + extraMassKg;
        double halfThickness = 0.5 * profile.wallVolumeM3(lowM, highM) / outerArea;
        String name = bandName(bands.size());
        Node node = Node.sensible(name, mass * wall.specificHeatCapacity().value(), filled.temperatureK());
        double halfCoefficient = wall.thermalConductivity().value() / halfThickness;
        double half = halfCoefficient * outerArea;
        WallBand bare = new WallBand(name, node, insidePath, name + " outside", lowM, highM, slice);
        double diameter = 2 * profile.maxOuterRadiusM();
        Band band = layers.isEmpty()
                ? new Band(
                        bare,
                        new WallPatch(
                                lowM,
                                highM,
                                outerArea,
                                diameter,
                                wall.emissivity().value()),
                        halfCoefficient,
                        Link.of(node, "conduction", HeatLaw.conductance(half)),
                        Optional.empty())
                : wrapped(bare, outerArea, diameter, halfCoefficient);
        bands.add(band);
        return band;
    }

    private Band wrapped(WallBand bare, double wallAreaM2, double wallDiameterM, double halfCoefficient) {
        double half = halfCoefficient * wallAreaM2;
        Wrapping wrapping = new Wrapping(
                bare.name(), layers, bare.wall(), half, wallAreaM2, bare.highM() - bare.lowM(), filled.temperatureK());
        double thickness = layers.stream().mapToDouble(Layer::thicknessM).sum();
        return new Band(
                new WallBand(
                        bare.name(),
                        bare.wall(),
                        bare.insidePath(),
                        bare.outsidePath(),
                        bare.lowM(),
                        bare.highM(),
                        bare.slice(),
                        1 / half,
                        wrapping.resistances()),
                new WallPatch(
                        bare.lowM(),
                        bare.highM(),
                        wrapping.outerAreaM2(),
                        wallDiameterM + 2 * thickness,
                        layers.get(layers.size() - 1).emissivity()),
                halfCoefficient,
                wrapping.outermost(),
                Optional.of(wrapping));
    }

    final String bandName(int index) {
        return id + " wall " + (index + 1);
    }

    final String id() {
        return id;
    }

    final FilledVessel filled() {
        return filled;
    }

    final List<Band> wall() {
        return bands;
    }

    final List<WallBand> bands() {
        return bands.stream().map(Band::band).toList();
    }

    /** Nodes of contents, wall and layers. */
    abstract List<Node> nodes();

    /** Nodes of the bands of wall, then those of the layers around each. */
    final List<Node> wallNodes() {
        List<Node> nodes = new ArrayList<>();
        bands.forEach(band -> nodes.add(band.band().wall()));
        bands.forEach(band -> band.wrapping().ifPresent(wrapping -> nodes.addAll(wrapping.nodes())));
        return nodes;
    }

    final boolean isWrapped() {
        return !layers.isEmpty();
    }

    abstract Contents contents();

    /** Paths inside the vessel. */
    abstract List<Path> innerPaths(Posture posture);

    /** What a user should know of what happened to the contents in a run. */
    abstract List<String> notes(Trajectory run);

    /** For contents in one node. */
    final List<String> notesOfFreezing(Trajectory run) {
        Node node = contents().nodes().get(0);
        boolean freezes = node.store() instanceof FreezingStore
                && run.first(RunEvent.freezingStarts(node), 0) instanceof EventAnswer.Reached;
        return freezes
                ? List.of(
                        "the drink begins to freeze; its ice is taken as spread evenly, as slush, and supercooling, by which a"
                                + " drink left alone may stay liquid some kelvins below its freezing point, is not modelled")
                : List.of();
    }

    /** For contents in parts; the further sentence says what is assumed of their ice. */
    final List<String> notesOfFreezingParts(Trajectory run, String part, String from, String further) {
        List<Node> parts = contents().nodes();
        int first = -1;
        double firstS = Double.POSITIVE_INFINITY;
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).store() instanceof FreezingStore
                    && run.first(RunEvent.freezingStarts(parts.get(i)), 0) instanceof EventAnswer.Reached reached
                    && reached.timeS() < firstS) {
                first = i;
                firstS = reached.timeS();
            }
        }
        return first < 0
                ? List.of()
                : List.of(String.format(
                        Locale.ROOT,
                        "the drink begins to freeze after %.0f min, first in %s %d of %d %s; its ice is taken to stay in the %s"
                                + " where it forms, spread evenly%s; supercooling, by which a drink left alone may stay liquid"
                                + " some kelvins below its freezing point, is not modelled",
                        firstS / 60,
                        part,
                        first + 1,
                        parts.size(),
                        from,
                        part,
                        further));
    }

    /** Heat capacity of contents, wall and layers at the start [J/K]. */
    final double heatCapacityJPerK() {
        double around = bands.stream()
                .flatMap(band -> band.wrapping().stream())
                .mapToDouble(Wrapping::heatCapacityJPerK)
                .sum();
        return filled.liquidMassKg() * filled.liquid().specificHeatCapacity(filled.temperatureK())
                + filled.vessel().emptyMassKg()
                        * filled.vessel().wall().specificHeatCapacity().value()
                + around;
    }

    /** All paths of this vessel while it is in a medium. */
    final List<Path> paths(Medium medium, Occupant occupant, List<Occupant> occupants) {
        List<Path> paths = new ArrayList<>(innerPaths(occupant.posture()));
        for (int i = 0; i + 1 < bands.size(); i++) {
            paths.add(alongWall(i));
            Optional<Wrapping> above = bands.get(i + 1).wrapping();
            bands.get(i).wrapping().ifPresent(here -> paths.addAll(here.pathsTo(above.orElseThrow())));
        }
        for (Band band : bands) {
            WallPatch patch = occupant.standing(band.patch());
            band.wrapping().ifPresent(wrapping -> paths.addAll(wrapping.paths()));
            for (Face face : medium.faces(patch, occupant, occupants)) {
                List<Link> links = new ArrayList<>();
                links.add(band.outermost());
                links.addAll(face.links());
                AmountWeight share = face.share();
                paths.add(JunctionPath.of(
                        band.band().outsidePath() + ", " + face.name(),
                        share == null
                                ? links
                                : links.stream()
                                        .map(link -> link.weightedBy(share))
                                        .toList()));
            }
        }
        for (VesselEnd end : ends(occupant.posture())) {
            paths.addAll(end.paths(medium, occupant, occupants));
        }
        return paths;
    }

    /** The ends that pass heat outwards while the vessel stands so; none unless the description has them. */
    List<VesselEnd> ends(Posture posture) {
        return List.of();
    }

    private Path alongWall(int lower) {
        WallBand a = bands.get(lower).band();
        WallBand b = bands.get(lower + 1).band();
        return DirectPath.of(
                id + " along wall " + (lower + 1),
                a.wall(),
                b.wall(),
                "conduction",
                HeatLaw.conductance(
                        filled.vessel().wall().thermalConductivity().value() / (halfLength(a) + halfLength(b))));
    }

    /** Half the height of a band over its mean wall section [1/m]. */
    private double halfLength(WallBand band) {
        double height = band.highM() - band.lowM();
        return 0.5 * height * height / filled.vessel().profile().wallVolumeM3(band.lowM(), band.highM());
    }

    /** Part of the liquid's height that is wetted outside, at a waterline above the end on which the vessel stands. */
    final double wettedPart(double wettedHeightM) {
        return Math.min(1, wettedHeightM / filled.liquidHeightM());
    }
}
