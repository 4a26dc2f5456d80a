/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.layered.Slice;
import org.beveragethermal.core.layered.StratifiedLiquid;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;
import org.jspecify.annotations.Nullable;

/**
 * A vessel whose contents are slices along its real profile, each beside its own band of wall.
 *
 * <p>Above the liquid the wall is dry inside. Turned over, the slices keep their places in the glass and gravity turns round:
 * the headspace, which then lies under the base, is neglected.
 *
 * <p>Laid down, the slices become layers from below upwards, each of the volume of its slice; see {@link LyingLayers}.
 */
final class AxialVessel extends ModelledVessel {

    private final StratifiedLiquid upright;
    private final StratifiedLiquid inverted;
    private final Node base;
    private final double baseCoefficient;
    private final List<Path> basePaths;
    private final List<Path> turnedBasePaths;
    private final Contents contents;
    /** Worked out when the vessel first lies, which most never do. */
    private @Nullable LyingLayers layers;

    AxialVessel(String id, FilledVessel filled, int slices, List<Double> waterlines) {
        super(id, filled);
        Profile profile = filled.vessel().profile();
        double bottom = profile.baseThicknessM();
        double surface = filled.liquidHeightM();
        double[] lines = waterlines.stream().mapToDouble(Double::doubleValue).toArray();
        double[] faces = StratifiedLiquid.faces(bottom, surface, slices, lines);
        List<Slice> parts = new ArrayList<>();
        for (int i = 0; i + 1 < faces.length; i++) {
            Band band = addBand(i == 0 ? 0 : faces[i], faces[i + 1], 0, "", i);
            parts.add(slice(profile, faces[i], faces[i + 1], band));
        }
        if (surface < profile.heightM()) {
            addBand(surface, profile.heightM(), 0, "", -1);
        }
        double density = filled.liquidMassKg()
                / parts.stream().mapToDouble(Slice::volumeM3).sum();
        upright = StratifiedLiquid.of(id, filled.liquid(), density, filled.temperatureK(), parts);
        inverted = upright.turnedOver(id + " turned", filled.liquid());
        Solid wall = filled.vessel().wall();
        base = Node.sensible(
                id + " base",
                filled.vessel().baseMassKg() * wall.specificHeatCapacity().value(),
                filled.temperatureK());
        double area = Math.PI * Math.pow(profile.innerRadiusM(bottom), 2);
        baseCoefficient = wall.thermalConductivity().value() / (0.5 * bottom);
        double half = wall.thermalConductivity().value() * area / (0.5 * bottom);
        Path heel = heel();
        basePaths = List.of(
                upright.bottom(
                        id + " bottom",
                        filled.liquid(),
                        area,
                        List.of(Link.of(base, "conduction", HeatLaw.conductance(half)))),
                heel);
        double still =
                filled.liquid().thermalConductivity(filled.temperatureK()) * area / (0.5 * (faces[1] - faces[0]));
        turnedBasePaths = List.of(
                DirectPath.of(
                        id + " base above",
                        upright.nodes().get(0),
                        base,
                        "conduction",
                        HeatLaw.conductance(1 / (1 / still + 1 / half))),
                heel);
        double volume = parts.stream().mapToDouble(Slice::volumeM3).sum();
        contents = new Contents(
                upright.nodes(),
                parts.stream().map(part -> part.volumeM3() / volume).toList());
    }

    private static Slice slice(Profile profile, double low, double high, Band band) {
        double radius = profile.innerRadiusM(high);
        return new Slice(
                low,
                high,
                profile.innerVolumeM3(high) - profile.innerVolumeM3(low),
                profile.innerSideAreaM2(low, high),
                Math.PI * radius * radius,
                band.band().wall(),
                band.halfCoefficient());
    }

    /** From the base to the lowest band of the side. */
    private Path heel() {
        return DirectPath.of(
                id() + " heel",
                base,
                wall().get(0).band().wall(),
                "conduction",
                HeatLaw.conductance(heelConductance()));
    }

    /** Through half the radius of base glass, of the base's thickness [W/K]. */
    private double heelConductance() {
        return filled().vessel().wall().thermalConductivity().value()
                * 4
                * Math.PI
                * filled().vessel().profile().baseThicknessM();
    }

    @Override
    List<Node> nodes() {
        List<Node> nodes = new ArrayList<>(upright.nodes());
        wall().forEach(band -> nodes.add(band.band().wall()));
        nodes.add(base);
        return nodes;
    }

    @Override
    Contents contents() {
        return contents;
    }

    @Override
    List<Path> innerPaths(Posture posture) {
        List<Path> paths = new ArrayList<>();
        if (posture == Posture.UPRIGHT) {
            paths.addAll(upright.paths());
            paths.addAll(basePaths);
        } else if (posture == Posture.INVERTED) {
            paths.addAll(inverted.paths());
            paths.addAll(turnedBasePaths);
        } else {
            paths.addAll(layers().inside(id(), upright, base, baseCoefficient));
            paths.addAll(layers().heel(id(), base, wall(), heelConductance()));
        }
        return paths;
    }

    private LyingLayers layers() {
        LyingLayers known = layers;
        if (known == null) {
            known = LyingLayers.of(filled(), lying(), upright.slices(), wall().size());
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
        return notesOfUnfrozenContents(run);
    }
}
