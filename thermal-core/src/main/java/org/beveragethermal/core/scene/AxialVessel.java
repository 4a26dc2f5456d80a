/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.film.RadiativeFilm;
import org.beveragethermal.core.layered.Slice;
import org.beveragethermal.core.layered.StratifiedLiquid;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.surroundings.Orientation;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.SunOptics;
import org.beveragethermal.core.surroundings.WallPatch;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.Closure;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;
import org.jspecify.annotations.Nullable;

/**
 * A vessel whose contents are slices along its real profile, each beside its own band of wall, with a base, a closure, and gas
 * between the liquid and the end above it.
 *
 * <p>A beverage freezes and thaws slice by slice; its ice stays in the slice where it forms. Turning over mixes ice and drink
 * alike, since what is shared out is enthalpy.
 *
 * <p><b>Turned over</b>, the liquid lies on the closure and the gas under the base. The slices keep their nodes and volumes and move
 * towards the mouth by the volume of the gas; a slice then lies beside parts of several bands, and each part has the film of its own
 * wall. A punt that reaches through the gas still dips into the liquid. The gas is taken as flat, of its mean height.
 *
 * <p><b>Laid down</b>, the slices become layers from below upwards, each of the volume of its slice; see {@link LyingLayers}.
 *
 * <p><b>Open vessels</b> give their surface to the surroundings as if it lay at the rim; the dry wall above it passes no heat inwards.
 */
final class AxialVessel extends ModelledVessel {

    /** Less gas than this is no gas: the liquid touches the end [m³]. */
    private static final double LEAST_GAS_M3 = 1e-8;
    /** Pieces of a slice thinner than this are left out [m]. */
    private static final double THINNEST_M = 1e-6;
    /** A dry band is not divided below this height [m]. */
    private static final double THINNEST_BAND_M = 0.003;

    private final Profile profile;
    private final Solid glass;
    private final StratifiedLiquid upright;
    private final Node base;
    private final @Nullable Plug plug;
    private final @Nullable Node gas;
    private final List<Path> uprightPaths = new ArrayList<>();
    private final List<Path> invertedPaths = new ArrayList<>();
    private final List<Slice> turnedPieces = new ArrayList<>();
    /** Where the faces of the slices come to lie on its mouth, counted from the base [m]; empty if it never does. */
    private double[] turnedFaces = {};

    private final Contents contents;
    private final LyingLayers.Ends lyingEnds;
    /** Worked out when the vessel first lies, which most never do. */
    private @Nullable LyingLayers layers;

    AxialVessel(
            String id, FilledVessel filled, int slices, List<Double> waterlines, List<Layer> layers, boolean inverts) {
        this(id, filled, slices, waterlines, layers, Tints.UNSTATED, inverts);
    }

    AxialVessel(
            String id,
            FilledVessel filled,
            int slices,
            List<Double> waterlines,
            List<Layer> layers,
            Tints tints,
            boolean inverts) {
        super(id, filled, layers, tints);
        profile = filled.vessel().profile();
        glass = filled.vessel().wall();
        double bottom = profile.baseThicknessM();
        double surface = filled.liquidHeightM();
        double[] lines = waterlines.stream().mapToDouble(Double::doubleValue).toArray();
        double[] faces = StratifiedLiquid.faces(bottom, surface, slices, lines);
        List<Slice> parts = new ArrayList<>();
        for (int i = 0; i + 1 < faces.length; i++) {
            Band band = addBand(i == 0 ? 0 : faces[i], faces[i + 1], 0, "", i, faces[i + 1]);
            parts.add(slice(faces[i], faces[i + 1], band));
        }
        addDryBands(surface, inverts ? (surface - bottom) / slices : Double.POSITIVE_INFINITY, lines);
        double volume = parts.stream().mapToDouble(Slice::volumeM3).sum();
        upright =
                StratifiedLiquid.of(id, filled.liquid(), filled.liquidMassKg() / volume, filled.temperatureK(), parts);
        contents = new Contents(
                upright.nodes(),
                parts.stream().map(part -> part.volumeM3() / volume).toList());
        base = Node.sensible(
                id + " base",
                filled.vessel().baseMassKg() * glass.specificHeatCapacity().value(),
                filled.temperatureK());
        Closure closure = filled.vessel().closure().orElse(null);
        plug = closure == null ? null : Plug.of(id, profile, closure, surface, filled.temperatureK());
        double gasM3 = plug == null ? 0 : profile.innerVolumeM3(plug.lowM()) - profile.innerVolumeM3(surface);
        gas = gasM3 < LEAST_GAS_M3
                ? null
                : Node.sensible(
                        id + " headspace",
                        GasSpace.heatCapacityJPerK(gasM3, filled.temperatureK()),
                        filled.temperatureK());
        lyingEnds = new LyingLayers.Ends(base, heelWPerK(), plug, gas, gas == null ? 0 : gasM3);
        uprightPaths.addAll(upright.paths());
        uprightPaths.add(upright.bottom(
                id + " bottom",
                filled.liquid(),
                floorAreaM2(),
                List.of(Link.of(base, "conduction", HeatLaw.conductance(halfBaseWPerK(floorAreaM2()))))));
        uprightPaths.add(heel());
        if (plug != null) {
            uprightPaths.addAll(neck(plug));
            underClosure(plug, faces);
            if (inverts) {
                turnOver(plug, faces, lyingEnds.gasM3());
            }
        }
    }

    private Slice slice(double low, double high, Band band) {
        double radius = profile.innerRadiusM(high);
        return new Slice(
                low,
                high,
                profile.innerVolumeM3(high) - profile.innerVolumeM3(low),
                profile.innerSideAreaM2(low, high),
                Math.PI * radius * radius,
                band.band().wall(),
                band.halves().inner());
    }

    /** Wall above the liquid, divided at waterlines and, where liquid comes to lie beside it, about as finely as the liquid. */
    private void addDryBands(double surface, double coarseM, double[] lines) {
        double height = profile.heightM() - surface;
        if (height <= 0) {
            return;
        }
        List<Double> edges = new ArrayList<>();
        if (height < 2 * coarseM) {
            edges.add(surface);
            for (double line : lines) {
                if (line > edges.get(edges.size() - 1) + THINNEST_BAND_M
                        && line < profile.heightM() - THINNEST_BAND_M) {
                    edges.add(line);
                }
            }
            edges.add(profile.heightM());
        } else {
            int count = (int) Math.max(2, Math.round(height / coarseM));
            for (double face : StratifiedLiquid.faces(surface, profile.heightM(), count, lines)) {
                edges.add(face);
            }
        }
        for (int i = 0; i + 1 < edges.size(); i++) {
            addBand(edges.get(i), edges.get(i + 1), 0, "", -1, edges.get(i + 1));
        }
    }

    private double floorAreaM2() {
        return Math.PI * Math.pow(profile.innerRadiusM(profile.baseThicknessM()), 2);
    }

    /** From the middle of the base to either surface. */
    private double halfBaseWPerK(double areaM2) {
        return glass.thermalConductivity().value() * areaM2 / (0.5 * profile.baseThicknessM());
    }

    /** From the base to the lowest band of the side. */
    private Path heel() {
        return DirectPath.of(
                id() + " heel", base, wall().get(0).band().wall(), "conduction", HeatLaw.conductance(heelWPerK()));
    }

    /** Through half the radius of base glass, of the base's thickness [W/K]. */
    private double heelWPerK() {
        return glass.thermalConductivity().value() * 4 * Math.PI * profile.baseThicknessM();
    }

    /** From the closure to the neck round it, or to the rim under a cap. */
    private List<Path> neck(Plug plug) {
        List<Path> paths = new ArrayList<>();
        for (Band band : wall()) {
            double beside =
                    band.band().highM() - Math.max(plug.lowM(), band.band().lowM());
            if (beside > THINNEST_M) {
                paths.add(toClosure(plug, band, plug.toNeckWPerK(beside)));
            }
        }
        if (paths.isEmpty()) {
            paths.add(toClosure(plug, wall().get(wall().size() - 1), plug.toRimWPerK()));
        }
        return paths;
    }

    private Path toClosure(Plug plug, Band band, double wattsPerKelvin) {
        return DirectPath.of(
                band.band().name() + " to closure",
                band.band().wall(),
                plug.node(),
                "conduction",
                HeatLaw.conductance(wattsPerKelvin));
    }

    /** Upright: gas between liquid and closure, or liquid that touches it. */
    private void underClosure(Plug plug, double[] faces) {
        int last = upright.nodes().size() - 1;
        Node top = upright.nodes().get(last);
        double surface = faces[faces.length - 1];
        if (gas == null) {
            uprightPaths.add(still(
                    id() + " closure above",
                    top,
                    faces[last + 1] - faces[last],
                    plug.areaM2(),
                    plug.node(),
                    plug.halfWPerK()));
            return;
        }
        double surfaceArea = Math.PI * Math.pow(profile.innerRadiusM(surface), 2);
        GasSpace space = new GasSpace(surfaceArea, plug.areaM2(), plug.lowM() - surface);
        uprightPaths.addAll(gasPaths(
                id() + " headspace",
                gas,
                space,
                top,
                plug.half(),
                plug.solid().emissivity().value(),
                surface,
                plug.lowM()));
    }

    /** A film of gas on the liquid, on the end and on each band beside the gas, and radiation from the liquid to these. */
    private List<Path> gasPaths(
            String name,
            Node gasNode,
            GasSpace space,
            Node top,
            Link behindEnd,
            double endEmissivity,
            double lowM,
            double highM) {
        List<Path> paths = new ArrayList<>();
        paths.add(DirectPath.of(name + " on liquid", gasNode, top, "convection", space.onLiquid()));
        double view = space.viewOfEnd();
        paths.add(JunctionPath.of(
                name + " on end",
                behindEnd,
                Link.of(gasNode, "convection", space.onEnd()),
                Link.of(
                        top,
                        "radiation",
                        new RadiativeFilm(view * space.liquidAreaM2(), GasSpace.emissivity(endEmissivity)))));
        double side = profile.innerSideAreaM2(lowM, highM);
        for (Band band : wall()) {
            double low = Math.max(lowM, band.band().lowM());
            double high = Math.min(highM, band.band().highM());
            if (high - low > THINNEST_M) {
                double area = profile.innerSideAreaM2(low, high);
                paths.add(JunctionPath.of(
                        name + " on " + band.band().name(),
                        Link.of(
                                band.band().wall(),
                                "conduction",
                                HeatLaw.conductance(band.halves().inner() * area)),
                        Link.of(gasNode, "convection", space.onWall(area)),
                        Link.of(
                                top,
                                "radiation",
                                new RadiativeFilm(
                                        (1 - view) * space.liquidAreaM2() * area / side,
                                        GasSpace.emissivity(glass.emissivity().value())))));
            }
        }
        return paths;
    }

    /** From a slice at rest, over half its height, to an end above it. */
    private Path still(String name, Node slice, double heightM, double areaM2, Node end, double halfEndWPerK) {
        double half = filled().liquid().thermalConductivity(filled().temperatureK()) * areaM2 / (0.5 * heightM);
        return DirectPath.of(name, slice, end, "conduction", HeatLaw.conductance(1 / (1 / half + 1 / halfEndWPerK)));
    }

    /** On its mouth: liquid on the closure, gas under the base. */
    private void turnOver(Plug plug, double[] faces, double gasM3) {
        double[] moved = new double[faces.length];
        double bottom = profile.baseThicknessM();
        for (int i = 0; i < faces.length; i++) {
            double below = gasM3 + profile.innerVolumeM3(faces[i]);
            moved[i] = gasM3 == 0 ? faces[i] : profile.fillHeightM(Math.min(below, profile.brimfulVolumeM3()));
        }
        turnedFaces = moved;
        StratifiedLiquid inverted = turned(moved);
        Node top = upright.nodes().get(0);
        invertedPaths.addAll(inverted.paths());
        invertedPaths.add(heel());
        invertedPaths.addAll(neck(plug));
        invertedPaths.add(
                inverted.bottom(id() + " on closure", filled().liquid(), plug.areaM2(), List.of(plug.half())));
        double level = moved[0];
        double punt = profile.puntDepthM();
        double left = punt == 0 ? 0 : Math.max(0, 1 - (level - bottom) / punt);
        double dipping = gas == null ? 1 : left * left;
        double floor = floorAreaM2();
        if (dipping > 0) {
            invertedPaths.add(still(
                    id() + " base above",
                    top,
                    moved[1] - moved[0],
                    dipping * floor,
                    base,
                    halfBaseWPerK(dipping * floor)));
        }
        if (gas != null && dipping < 1) {
            double area = Math.PI * Math.pow(profile.innerRadiusM(level), 2) - dipping * floor;
            invertedPaths.addAll(gasPaths(
                    id() + " headspace",
                    gas,
                    new GasSpace(area, (1 - dipping) * floor, gasM3 / area),
                    top,
                    Link.of(base, "conduction", HeatLaw.conductance(halfBaseWPerK((1 - dipping) * floor))),
                    glass.emissivity().value(),
                    bottom,
                    level));
        }
    }

    /** The column on its mouth, given where the faces of its slices come to lie, counted from the base. */
    private StratifiedLiquid turned(double[] faces) {
        List<Slice> slices = new ArrayList<>();
        List<List<Slice>> beside = new ArrayList<>();
        for (int i = 0; i + 1 < faces.length; i++) {
            List<Slice> pieces = new ArrayList<>();
            for (int b = wall().size() - 1; b >= 0; b--) {
                Band band = wall().get(b);
                double low = Math.max(faces[i], band.band().lowM());
                double high = Math.min(faces[i + 1], band.band().highM());
                if (high - low > THINNEST_M) {
                    pieces.add(turnedSlice(low, high, band));
                }
            }
            beside.add(pieces);
            turnedPieces.addAll(pieces);
            slices.add(turnedSlice(faces[i], faces[i + 1], wall().get(0)));
        }
        return upright.turnedOver(id() + " turned", filled().liquid(), slices, beside);
    }

    private Slice turnedSlice(double low, double high, Band band) {
        double height = profile.heightM();
        return new Slice(
                height - high,
                height - low,
                profile.innerVolumeM3(high) - profile.innerVolumeM3(low),
                profile.innerSideAreaM2(low, high),
                Math.PI * Math.pow(profile.innerRadiusM(low), 2),
                band.band().wall(),
                band.halves().inner());
    }

    /** The parts of slices that lie beside one band each when the vessel stands on its mouth; none if it never does. */
    List<Slice> turnedPieces() {
        return List.copyOf(turnedPieces);
    }

    @Override
    List<VesselEnd> ends(Posture posture, double waterlineM) {
        if (posture == Posture.LYING) {
            return lyingEnds(waterlineM);
        }
        boolean stands = posture == Posture.UPRIGHT;
        Orientation baseLooks = stands ? Orientation.END_FACING_DOWN : Orientation.END_FACING_UP;
        Orientation mouthLooks = stands ? Orientation.END_FACING_UP : Orientation.END_FACING_DOWN;
        double height = profile.heightM();
        double baseArea = profile.baseAreaM2();
        VesselEnd baseEnd = VesselEnd.of(
                        id() + " base outside",
                        new WallPatch(
                                stands ? 0 : height,
                                stands ? 0 : height,
                                baseArea,
                                2 * profile.outerRadiusM(0),
                                glass.emissivity().value(),
                                baseLooks),
                        Link.of(base, "conduction", HeatLaw.conductance(halfBaseWPerK(baseArea))))
                .with(baseOptics());
        if (plug == null) {
            return List.of(baseEnd, mouth());
        }
        double mouthRadius = profile.outerRadiusM(height);
        return List.of(
                baseEnd,
                VesselEnd.of(
                                id() + " closure outside",
                                new WallPatch(
                                        stands ? height : 0,
                                        stands ? height : 0,
                                        Math.PI * mouthRadius * mouthRadius,
                                        2 * mouthRadius,
                                        plug.solid().emissivity().value(),
                                        mouthLooks),
                                plug.half())
                        .with(SunOptics.of(plug.solid())));
    }

    /** Base and closure stand upright beside each other's air or water, each divided at the waterline. */
    private List<VesselEnd> lyingEnds(double waterlineM) {
        double radius = profile.outerRadiusM(0);
        List<VesselEnd> ends = new ArrayList<>(VesselEnd.lying(
                id() + " base outside",
                new LyingDisc(radius, lying().axisM()),
                glass.emissivity().value(),
                Link.of(base, "conduction", HeatLaw.conductance(halfBaseWPerK(profile.baseAreaM2()))),
                waterlineM));
        ends.replaceAll(end -> end.with(baseOptics()));
        if (plug != null) {
            List<VesselEnd> closure = VesselEnd.lying(
                    id() + " closure outside",
                    new LyingDisc(profile.outerRadiusM(profile.heightM()), lying().axisM()),
                    plug.solid().emissivity().value(),
                    plug.half(),
                    waterlineM);
            closure.forEach(end -> ends.add(end.with(SunOptics.of(plug.solid()))));
        }
        return ends;
    }

    /** The surface of the liquid in an open vessel, at the rim for what is around it. */
    private VesselEnd mouth() {
        List<Slice> slices = upright.slices();
        Slice top = slices.get(slices.size() - 1);
        WallPatch patch = DrinkSurface.patch(filled(), surfaceOptics(filled()));
        double half = filled().liquid().thermalConductivity(filled().temperatureK())
                * patch.outerAreaM2()
                / (0.5 * (top.highM() - top.lowM()));
        return VesselEnd.of(
                id() + " surface",
                patch,
                Link.of(upright.nodes().get(slices.size() - 1), "conduction", HeatLaw.conductance(half)));
    }

    /** The slice beside a band of wall; on its mouth perhaps several. A layer of a lying vessel has the band of its slice. */
    @Override
    List<LightTaker> lightTakers(int index, Posture posture) {
        List<Node> slices = upright.nodes();
        if (posture != Posture.INVERTED) {
            return index < slices.size() ? List.of(new LightTaker(slices.get(index), 1)) : List.of();
        }
        double low = wall().get(index).band().lowM();
        double high = wall().get(index).band().highM();
        List<LightTaker> takers = new ArrayList<>();
        for (int i = 0; i + 1 < turnedFaces.length; i++) {
            double beside = Math.min(high, turnedFaces[i + 1]) - Math.max(low, turnedFaces[i]);
            if (beside > THINNEST_M) {
                takers.add(new LightTaker(slices.get(i), beside / (high - low)));
            }
        }
        return takers;
    }

    @Override
    List<Node> nodes() {
        List<Node> nodes = new ArrayList<>(upright.nodes());
        nodes.addAll(wallNodes());
        nodes.add(base);
        if (plug != null) {
            nodes.add(plug.node());
        }
        if (gas != null) {
            nodes.add(gas);
        }
        return nodes;
    }

    @Override
    Contents contents() {
        return contents;
    }

    @Override
    List<Path> innerPaths(Posture posture) {
        return switch (posture) {
            case UPRIGHT -> List.copyOf(uprightPaths);
            case INVERTED -> List.copyOf(invertedPaths);
            case LYING -> layers().inside(id(), upright, wall());
        };
    }

    private LyingLayers layers() {
        LyingLayers known = layers;
        if (known == null) {
            known = LyingLayers.of(filled(), lying(), upright.slices(), wall().size(), lyingEnds);
            layers = known;
        }
        return known;
    }

    @Override
    double lyingOuterAreaM2(int index, double levelM) {
        return layers().outerAreaM2(index, levelM);
    }

    @Override
    double lyingHalfCoefficient(int index) {
        return layers().halfCoefficient();
    }

    @Override
    Path alongWall(int lower, Posture posture) {
        return posture == Posture.LYING
                ? DirectPath.of(
                        id() + " along wall " + (lower + 1),
                        wall().get(lower).band().wall(),
                        wall().get(lower + 1).band().wall(),
                        "conduction",
                        HeatLaw.conductance(layers().alongWallWPerK(lower)))
                : super.alongWall(lower, posture);
    }

    @Override
    List<String> notes(Trajectory run) {
        List<String> notes = new ArrayList<>();
        if (plug == null) {
            notes.add(
                    "the surface of an open vessel passes heat and vapour to the air; what evaporation takes from the mass of the drink, some"
                            + " percent of a hot one, is left out");
        }
        notes.addAll(notesOfFreezingParts(
                run,
                "slice",
                "from the base",
                "; the unfrozen drink is taken to flow and mix as before, at the density of the liquid, and to carry heat only,"
                        + " though ice rises and slush hardly flows"));
        return notes;
    }
}
