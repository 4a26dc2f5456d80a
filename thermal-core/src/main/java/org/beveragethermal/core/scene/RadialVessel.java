/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.conduction.LayerStack;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;

/**
 * A vessel whose contents are at rest and only conduct: shells about the axis of a cylinder of the contents' volume and height.
 *
 * <p>Conductivity and heat capacity are those of the contents at the start. The outermost shell meets each band of wall in
 * proportion to the band's part of the wetted inner side; bottom and surface pass no heat. What is thick
 * or set keeps its place in the glass when the vessel is turned or laid down: only the outside then changes.
 */
final class RadialVessel extends ModelledVessel {

    private final LayerStack stack;
    private final Contents contents;
    private final List<Path> innerPaths = new ArrayList<>();

    /** The contents' conductivity is multiplied by a factor, 1 for contents at rest; a large one stands for a mixed core. */
    RadialVessel(String id, FilledVessel filled, int shells, List<Double> waterlines, double conductivityFactor) {
        super(id, filled);
        Profile profile = filled.vessel().profile();
        double height = filled.liquidHeightM();
        double radius = Math.sqrt(filled.liquidVolumeM3() / (Math.PI * height));
        double start = filled.temperatureK();
        double conductivity = conductivityFactor * filled.liquid().thermalConductivity(start);
        double volumetric = filled.liquid().density(start) * filled.liquid().specificHeatCapacity(start);
        stack = LayerStack.cylinder(height, 0)
                .layer("contents", radius, conductivity, volumetric, shells)
                .build(id, start);
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i < shells; i++) {
            shares.add((2.0 * i + 1) / ((double) shells * shells));
        }
        contents = new Contents(stack.nodes(), shares);
        double outermost = (shells - 0.5) / shells;
        double toSurface = 2 * Math.PI * height * conductivity / Math.log(1 / outermost);
        double side = profile.innerSideAreaM2(0, height);
        List<Double> edges = LumpedVessel.edges(profile.heightM(), waterlines);
        for (int i = 0; i + 1 < edges.size(); i++) {
            band(i, edges.get(i), edges.get(i + 1), toSurface / side);
        }
    }

    private void band(int index, double low, double high, double surfaceCoefficient) {
        double wetHigh = Math.min(high, filled().liquidHeightM());
        double innerArea = wetHigh > low ? filled().vessel().profile().innerSideAreaM2(low, wetHigh) : 0;
        String inside = innerArea > 0 ? bandName(index) + " inside" : "";
        Band band = addBand(low, high, index == 0 ? filled().vessel().baseMassKg() : 0, inside, -1);
        if (innerArea > 0) {
            innerPaths.add(JunctionPath.of(
                    inside,
                    Link.of(
                            stack.nodes().get(stack.nodes().size() - 1),
                            "conduction",
                            HeatLaw.conductance(surfaceCoefficient * innerArea)),
                    Link.of(
                            band.band().wall(),
                            "conduction",
                            HeatLaw.conductance(band.halfCoefficient() * innerArea))));
        }
    }

    @Override
    List<Node> nodes() {
        List<Node> nodes = new ArrayList<>(stack.nodes());
        wall().forEach(band -> nodes.add(band.band().wall()));
        return nodes;
    }

    @Override
    Contents contents() {
        return contents;
    }

    @Override
    List<Path> innerPaths(Posture posture) {
        List<Path> paths = new ArrayList<>(stack.paths());
        paths.addAll(innerPaths);
        return paths;
    }

    @Override
    List<String> notes(Trajectory run) {
        List<String> notes = new ArrayList<>();
        notes.add("contents at rest: they only conduct; a drink that can flow cools and warms faster");
        notes.addAll(notesOfUnfrozenContents(run));
        return notes;
    }
}
