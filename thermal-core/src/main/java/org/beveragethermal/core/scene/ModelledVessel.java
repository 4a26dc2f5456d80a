/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
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
import org.beveragethermal.core.surroundings.Face;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Orientation;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.WallPatch;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.LyingProfile;
import org.beveragethermal.materials.vessel.Profile;

/**
 * A vessel as nodes and paths: what the descriptions of its contents have in common, which is the wall.
 *
 * <p>The wall is one node per band. Heat passes from its middle to the outer surface, where it meets what touches the band, and
 * along the wall to the neighbouring bands. The base stands on something and passes no heat outwards.
 *
 * <p>A vessel that lies keeps its nodes. Each band is divided at the waterline into a wet and a dry patch.
 */
abstract class ModelledVessel {

    /** A patch smaller than this part of its band is left out. */
    private static final double NEGLIGIBLE_PART = 1e-9;

    private final String id;
    private final FilledVessel filled;
    private final LyingProfile lying;
    private final List<Band> bands = new ArrayList<>();

    /** A band of wall, its patch, and the conductances from mid-wall to the inner and the outer surface per area. */
    record Band(WallBand band, WallPatch patch, double halfCoefficient) {}

    ModelledVessel(String id, FilledVessel filled) {
        this.id = id;
        this.filled = filled;
        this.lying = LyingProfile.of(filled.vessel().profile());
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
        WallPatch patch = new WallPatch(
                lowM,
                highM,
                outerArea,
                2 * profile.maxOuterRadiusM(),
                wall.emissivity().value());
        Band band = new Band(
                new WallBand(name, node, insidePath, name + " outside", lowM, highM, slice),
                patch,
                wall.thermalConductivity().value() / halfThickness);
        bands.add(band);
        return band;
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

    /** Nodes of contents and wall. */
    abstract List<Node> nodes();

    abstract Contents contents();

    /** Paths inside the vessel. */
    abstract List<Path> innerPaths(Posture posture);

    /** What a user should know of what happened to the contents in a run. */
    abstract List<String> notes(Trajectory run);

    /** For contents in parts, which do not freeze. */
    final List<String> notesOfUnfrozenContents(Trajectory run) {
        boolean freezes = filled.liquid() instanceof Beverage drink
                && contents().nodes().stream()
                        .anyMatch(node -> run.first(RunEvent.temperatureFallsTo(node, drink.freezingOnsetK()), 0)
                                instanceof EventAnswer.Reached);
        return freezes
                ? List.of(
                        "a part of the drink becomes colder than it begins to freeze; contents in slices or shells stay"
                                + " liquid, ice is modelled in lumped contents only")
                : List.of();
    }

    /** Heat capacity of contents and wall at the start [J/K]. */
    final double heatCapacityJPerK() {
        return filled.liquidMassKg() * filled.liquid().specificHeatCapacity(filled.temperatureK())
                + filled.vessel().emptyMassKg()
                        * filled.vessel().wall().specificHeatCapacity().value();
    }

    /** All paths of this vessel while it is in a medium. */
    final List<Path> paths(Medium medium, Occupant occupant, List<Occupant> occupants) {
        List<Path> paths = new ArrayList<>(innerPaths(occupant.posture()));
        for (int i = 0; i + 1 < bands.size(); i++) {
            paths.add(alongWall(i, occupant.posture()));
        }
        boolean lies = occupant.posture() == Posture.LYING;
        double waterline = lies ? medium.wettedHeightM(occupant, occupants) : 0;
        for (int i = 0; i < bands.size(); i++) {
            for (WallPatch patch : lies
                    ? lyingPatches(i, waterline)
                    : List.of(occupant.standing(bands.get(i).patch()))) {
                addOutside(
                        paths,
                        bands.get(i),
                        lies ? lyingHalfCoefficient(i) : bands.get(i).halfCoefficient(),
                        patch,
                        medium,
                        occupant,
                        occupants);
            }
        }
        return paths;
    }

    private static void addOutside(
            List<Path> paths,
            Band band,
            double halfCoefficient,
            WallPatch patch,
            Medium medium,
            Occupant occupant,
            List<Occupant> occupants) {
        double half = halfCoefficient * patch.outerAreaM2();
        for (Face face : medium.faces(patch, occupant, occupants)) {
            List<Link> links = new ArrayList<>();
            links.add(Link.of(band.band().wall(), "conduction", HeatLaw.conductance(half)));
            links.addAll(face.links());
            AmountWeight share = face.share();
            paths.add(JunctionPath.of(
                    band.band().outsidePath() + ", " + face.name(),
                    share == null
                            ? links
                            : links.stream().map(link -> link.weightedBy(share)).toList()));
        }
    }

    /** What lies below and what lies above the waterline of a band of the wall, of a vessel that lies; empty parts are left out. */
    private List<WallPatch> lyingPatches(int index, double waterlineM) {
        WallPatch all = bands.get(index).patch();
        double top = 2 * lying.axisM();
        double total = lyingOuterAreaM2(index, top);
        double wet = waterlineM > 0 ? lyingOuterAreaM2(index, waterlineM) : 0;
        List<WallPatch> patches = new ArrayList<>();
        if (wet > NEGLIGIBLE_PART * total) {
            patches.add(lyingPatch(0, waterlineM, wet, all));
        }
        if (total - wet > NEGLIGIBLE_PART * total) {
            patches.add(lyingPatch(waterlineM, top, total - wet, all));
        }
        return patches;
    }

    private static WallPatch lyingPatch(double lowM, double highM, double areaM2, WallPatch like) {
        return new WallPatch(lowM, highM, areaM2, like.diameterM(), like.emissivity(), Orientation.LYING_WALL);
    }

    /** Outer area below a level that belongs to a band when the vessel lies: its bands go round the axis. */
    double lyingOuterAreaM2(int index, double levelM) {
        WallBand band = bands.get(index).band();
        return lying.outerSideAreaM2(band.lowM(), band.highM(), levelM);
    }

    /** Conductance from mid-wall to the surface per area of a band when the vessel lies [W/(m² K)]. */
    double lyingHalfCoefficient(int index) {
        return bands.get(index).halfCoefficient();
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
