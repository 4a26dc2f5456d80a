/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.prediction.WallBand;
import org.beveragethermal.core.solver.EventAnswer;
import org.beveragethermal.core.solver.RunEvent;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.store.PouredStore;
import org.beveragethermal.core.surroundings.Face;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Orientation;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.SunOptics;
import org.beveragethermal.core.surroundings.WallPatch;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.LyingProfile;
import org.beveragethermal.materials.vessel.Profile;

/**
 * A vessel as nodes and paths: what the descriptions of its contents have in common, which is the wall and what lies around it.
 *
 * <p>The wall is one node per band. Heat passes from its middle to the outer surface, through the layers around it if there are
 * any, to where it meets what touches the band, and along wall and layers to the neighbouring bands. What base and
 * closure pass is up to the description.
 *
 * <p>A vessel that lies keeps its nodes. Each band is divided at the waterline into a wet and a dry patch; layers around it
 * keep the areas that they have when it stands.
 */
abstract class ModelledVessel {

    /** A patch smaller than this part of its band is left out. */
    private static final double NEGLIGIBLE_PART = 1e-9;

    /** A drink this far below its onset freezes: half of what water falls by while it does. */
    private static final double FREEZING_K = 0.5 * FreezingStore.PLATEAU_K;

    private final String id;
    private final FilledVessel filled;
    private final List<Layer> layers;
    private final Tints tints;
    private final LyingProfile lying;
    private final double wallK;
    private final List<Band> bands;

    /**
     * A band of wall, its outer surface, the conductances from mid-wall to its surfaces per area, the link to the outer
     * surface, the layers around it if there are any, and the part of its outer surface that follows the wall behind the contents.
     */
    record Band(
            WallBand band,
            WallPatch patch,
            WallHalves halves,
            Link outermost,
            Optional<Wrapping> wrapping,
            double followingPart) {

        /** The outer surface that follows the wall behind the contents. */
        private WallPatch following() {
            return patch.part(followingPart);
        }

        /** From the wall to that surface. */
        private Link toFollowing() {
            return followingPart == 1
                    ? outermost
                    : Link.of(
                            outermost.end(),
                            outermost.mechanism(),
                            outermost.law().times(followingPart));
        }
    }

    /** A vessel with layers around its wall, from the wall outwards; none if the list is empty. */
    ModelledVessel(String id, FilledVessel filled, List<Layer> layers, Tints tints) {
        this(id, filled, layers, tints, filled.temperatureK());
    }

    /** A vessel whose wall starts at another temperature than its contents, as one that is filled later. */
    ModelledVessel(String id, FilledVessel filled, List<Layer> layers, Tints tints, double wallK) {
        this.id = id;
        this.filled = filled;
        this.layers = List.copyOf(layers);
        this.tints = tints;
        this.lying = LyingProfile.of(filled.vessel().profile());
        this.wallK = wallK;
        this.bands = new ArrayList<>();
    }

    /** The same nodes, for other connections. */
    ModelledVessel(ModelledVessel that) {
        this.id = that.id;
        this.filled = that.filled;
        this.layers = that.layers;
        this.tints = that.tints;
        this.lying = that.lying;
        this.wallK = that.wallK;
        this.bands = that.bands;
    }

    /** The vessel as it is from a time on: its nodes stay, its connections may change. */
    ModelledVessel at(Duration time) {
        return this;
    }

    /**
     * Adds the band of wall between two heights; {@code extraMassKg} of glass counts with it. Above a level it is dry inside and
     * follows the wall below only as a fin does; with its upper edge as the level it follows as a whole.
     */
    final Band addBand(double lowM, double highM, double extraMassKg, String insidePath, int slice, double levelM) {
        Profile profile = filled.vessel().profile();
        Solid wall = filled.vessel().wall();
        double outerArea = profile.outerSideAreaM2(lowM, highM);
        double following = DryWall.followingPart(filled.vessel(), lowM, highM, levelM);
        double mass = following * filled.vessel().wallMassKg(lowM, highM) + extraMassKg;
        String name = bandName(bands.size());
        Node node = Node.sensible(name, mass * wall.specificHeatCapacity().value(), wallK);
        WallHalves halves = WallHalves.of(profile, wall, lowM, highM);
        double half = halves.outer() * outerArea;
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
                        halves,
                        Link.of(node, "conduction", HeatLaw.conductance(half)),
                        Optional.empty(),
                        following)
                : wrapped(bare, outerArea, diameter, halves, following);
        bands.add(band);
        return band;
    }

    private Band wrapped(WallBand bare, double wallAreaM2, double wallDiameterM, WallHalves halves, double following) {
        double half = halves.outer() * wallAreaM2;
        Wrapping wrapping =
                new Wrapping(bare.name(), layers, bare.wall(), half, wallAreaM2, bare.highM() - bare.lowM(), wallK);
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
                halves,
                wrapping.outermost(),
                Optional.of(wrapping),
                following);
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

    final LyingProfile lying() {
        return lying;
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
        boolean freezes = node.store() instanceof PouredStore store
                ? freezes(run, node, store.freezingOnsetK())
                : node.store() instanceof FreezingStore
                        && run.first(RunEvent.freezingStarts(node), 0) instanceof EventAnswer.Reached;
        return freezes
                ? List.of(
                        "the drink begins to freeze; its ice is taken as spread evenly, as slush, and supercooling, by which a"
                                + " drink left alone may stay liquid some kelvins below its freezing point, is not modelled")
                : List.of();
    }

    private static boolean freezes(Trajectory run, Node node, double onsetK) {
        return run.firstCrossing(0, timeS -> run.temperatureK(node, timeS) - onsetK + FREEZING_K)
                .isPresent();
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
            paths.add(alongWall(i, occupant.posture()));
            Optional<Wrapping> above = bands.get(i + 1).wrapping();
            bands.get(i).wrapping().ifPresent(here -> paths.addAll(here.pathsTo(above.orElseThrow())));
        }
        boolean lies = occupant.posture() == Posture.LYING;
        double waterline = lies ? medium.wettedHeightM(occupant, occupants) : 0;
        for (int i = 0; i < bands.size(); i++) {
            Band band = bands.get(i);
            band.wrapping().ifPresent(wrapping -> paths.addAll(wrapping.paths()));
            List<LightTaker> behind = lightTakers(i, occupant.posture());
            SunOptics optics = optics(i, behind);
            if (!lies) {
                WallPatch patch = occupant.standing(band.following()).withOptics(optics);
                addOutside(paths, band, band.toFollowing(), behind, patch, medium, occupant, occupants);
                continue;
            }
            for (WallPatch patch : lyingPatches(i, waterline)) {
                Link outermost = lyingOutermost(i, patch.outerAreaM2());
                addOutside(paths, band, outermost, behind, patch.withOptics(optics), medium, occupant, occupants);
            }
        }
        for (VesselEnd end : ends(occupant.posture(), waterline)) {
            paths.addAll(end.paths(medium, occupant, occupants));
        }
        paths.addAll(surfacePaths(medium, occupant, occupants));
        return paths;
    }

    /** What the free surface of the contents passes, for descriptions that do not count it with the ends. */
    List<Path> surfacePaths(Medium medium, Occupant occupant, List<Occupant> occupants) {
        return List.of();
    }

    /** The ends that pass heat outwards while the vessel stands so; none unless the description has them. */
    List<VesselEnd> ends(Posture posture, double waterlineM) {
        return List.of();
    }

    private static void addOutside(
            List<Path> paths,
            Band band,
            Link outermost,
            List<LightTaker> behind,
            WallPatch patch,
            Medium medium,
            Occupant occupant,
            List<Occupant> occupants) {
        double taken = behind.stream().mapToDouble(LightTaker::portion).sum();
        for (Face face : medium.faces(patch, occupant, occupants)) {
            paths.add(face.joinedTo(outermost, band.band().outsidePath()));
            for (LightTaker taker : behind) {
                face.lightTo(taker.node(), taker.portion() / taken, band.band().outsidePath())
                        .ifPresent(paths::add);
            }
        }
    }

    /** What of the contents lies behind a band of wall; none behind a dry one. */
    abstract List<LightTaker> lightTakers(int index, Posture posture);

    /** What becomes of sunlight on a band behind which these lie. */
    private SunOptics optics(int index, List<LightTaker> behind) {
        if (!layers.isEmpty()) {
            return SunOptics.opaque(layers.get(layers.size() - 1).solarAbsorptance());
        }
        WallBand band = bands.get(index).band();
        double wet =
                Math.min(1, behind.stream().mapToDouble(LightTaker::portion).sum());
        double chord = meanChordM(0.5 * (band.lowM() + band.highM()));
        return wall(chord).mixedWith(wall(0), wet);
    }

    /** Mean chord of the inside at a height [m], π/4 of its diameter: the mean way of light across it. */
    private double meanChordM(double heightM) {
        Profile profile = filled.vessel().profile();
        return 0.5 * Math.PI * profile.innerRadiusM(Math.max(profile.baseThicknessM(), heightM));
    }

    private SunOptics wall(double pathM) {
        return tints.wall(filled.vessel().wall(), filled.liquid(), pathM);
    }

    /** What becomes of sunlight on the base. */
    final SunOptics baseOptics() {
        return wall(meanChordM(filled.vessel().profile().baseThicknessM()));
    }

    /** What becomes of sunlight on the open surface of what is in it now. */
    final SunOptics surfaceOptics(FilledVessel now) {
        return tints.surface(now.liquid(), now.liquidHeightM());
    }

    /** All behind a band that is wetted inside up to a height of the standing vessel, given to one node. */
    final List<LightTaker> wettedBelow(int index, double liquidHeightM, Node node) {
        WallBand band = bands.get(index).band();
        double high = Math.min(band.highM(), liquidHeightM);
        if (high <= band.lowM()) {
            return List.of();
        }
        Profile profile = filled.vessel().profile();
        double portion = profile.outerSideAreaM2(band.lowM(), high)
                / (bands.get(index).followingPart() * profile.outerSideAreaM2(band.lowM(), band.highM()));
        return List.of(new LightTaker(node, Math.min(1, portion)));
    }

    /** What lies below and what lies above the waterline of a band, of a vessel that lies; empty parts are left out. */
    private List<WallPatch> lyingPatches(int index, double waterlineM) {
        WallPatch all = bands.get(index).patch();
        double top = 2 * lying.axisM();
        double line = Math.min(waterlineM, top);
        double swell = all.outerAreaM2() / bareAreaM2(index);
        double total = swell * lyingOuterAreaM2(index, top);
        double wet = line > 0 ? swell * lyingOuterAreaM2(index, line) : 0;
        List<WallPatch> patches = new ArrayList<>();
        if (wet > NEGLIGIBLE_PART * total) {
            patches.add(lyingPatch(0, line, wet, all));
        }
        if (total - wet > NEGLIGIBLE_PART * total) {
            patches.add(lyingPatch(line, top, total - wet, all));
        }
        return patches;
    }

    private static WallPatch lyingPatch(double lowM, double highM, double areaM2, WallPatch like) {
        return new WallPatch(lowM, highM, areaM2, like.diameterM(), like.emissivity(), Orientation.LYING_WALL);
    }

    /** Outer area of the bare wall of a band [m²]. */
    private double bareAreaM2(int index) {
        WallBand band = bands.get(index).band();
        return filled.vessel().profile().outerSideAreaM2(band.lowM(), band.highM());
    }

    /** From a band to the outer surface of a part of it, of a vessel that lies. */
    private Link lyingOutermost(int index, double areaM2) {
        Band band = bands.get(index);
        if (band.wrapping().isEmpty()) {
            return Link.of(band.band().wall(), "conduction", HeatLaw.conductance(lyingHalfCoefficient(index) * areaM2));
        }
        double swell = band.patch().outerAreaM2() / bareAreaM2(index);
        double part = areaM2 / (swell * lyingOuterAreaM2(index, 2 * lying.axisM()));
        Link whole = band.outermost();
        return Link.of(whole.end(), whole.mechanism(), whole.law().times(part));
    }

    /** Outer area below a level that belongs to a band when the vessel lies: its bands go round the axis. */
    double lyingOuterAreaM2(int index, double levelM) {
        WallBand band = bands.get(index).band();
        return lying.outerSideAreaM2(band.lowM(), band.highM(), levelM);
    }

    /** Conductance from mid-wall to the outer surface per area of a band when the vessel lies [W/(m² K)]. */
    double lyingHalfCoefficient(int index) {
        return bands.get(index).halves().outer();
    }

    /** Conduction along the wall to the next band; a vessel that lies has the same bands unless it says otherwise. */
    Path alongWall(int lower, Posture posture) {
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

    /** Part of the liquid's height that is wetted outside, at a waterline above the lowest point of the vessel. */
    final double wettedPart(double wettedHeightM, Posture posture) {
        double surface = posture == Posture.LYING ? filled.lyingSurfaceHeightM() : filled.liquidHeightM();
        return Math.min(1, wettedHeightM / surface);
    }
}
