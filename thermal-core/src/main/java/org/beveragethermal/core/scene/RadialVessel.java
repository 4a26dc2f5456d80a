/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.conduction.LayerStack;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * A vessel whose contents do not stratify: shells about the axis of a cylinder of the contents' volume and height, which only
 * conduct, or one node that is mixed up to the wall.
 *
 * <p>Conductivity and heat capacity of shells are those of the contents at the start, the conductivity times the model's factor.
 * The outermost shell meets each band of wall in proportion to the band's part of the wetted inner side; bottom and surface pass
 * no heat. A drink freezes shell by shell, as {@link FreezingStore} says. A mixed core has its own heat capacity and freezes as
 * lumped contents do; nothing but the wall resists. What is thick or set keeps its place in the glass when the vessel is turned
 * or laid down: only the outside then changes.
 */
final class RadialVessel extends ModelledVessel {

    /** Stands for no resistance between a mixed core and the wall's inner surface: a thousand times a wall's [W/(m² K)]. */
    private static final double NO_RESISTANCE = 1e6;

    private final VesselModel model;
    private final Contents contents;
    private final List<Path> innerPaths = new ArrayList<>();

    RadialVessel(String id, FilledVessel filled, DrinkFit drink, List<Double> waterlines, VesselModel model) {
        super(id, filled, model.layers(), model.tints());
        this.model = model;
        double coefficient;
        if (model.isMixed()) {
            contents =
                    Contents.of(Node.of(id + " contents", drink.store(filled.liquidMassKg()), filled.temperatureK()));
            coefficient = NO_RESISTANCE;
        } else {
            LayerStack stack = shells();
            contents = new Contents(stack.nodes(), shares(model.shells()));
            innerPaths.addAll(stack.paths());
            coefficient = toSurface();
        }
        List<Double> edges = LumpedVessel.edges(filled.vessel().profile().heightM(), waterlines);
        for (int i = 0; i + 1 < edges.size(); i++) {
            band(i, edges.get(i), edges.get(i + 1), coefficient);
        }
    }

    private LayerStack shells() {
        double start = filled().temperatureK();
        double radius = Math.sqrt(filled().liquidVolumeM3() / (Math.PI * filled().liquidHeightM()));
        double density = filled().liquid().density(start);
        double capacity = filled().liquid().specificHeatCapacity(start);
        LayerStack.Builder builder = LayerStack.cylinder(filled().liquidHeightM(), 0)
                .layer("contents", radius, conductivity(), density * capacity, model.shells());
        if (filled().liquid() instanceof Beverage drink) {
            FreezingStore kilogram = FreezingStore.ofMass(drink, 1, capacity);
            return builder.build(id(), start, volume -> kilogram.withMass(density * volume));
        }
        return builder.build(id(), start);
    }

    private double conductivity() {
        return model.conductivityFactor() * filled().liquid().thermalConductivity(filled().temperatureK());
    }

    private static List<Double> shares(int shells) {
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i < shells; i++) {
            shares.add((2.0 * i + 1) / ((double) shells * shells));
        }
        return shares;
    }

    /** From the middle of the outermost shell to its edge, per wetted inner side of the vessel [W/(m² K)]. */
    private double toSurface() {
        double height = filled().liquidHeightM();
        double outermost = (model.shells() - 0.5) / model.shells();
        double half = 2 * Math.PI * height * conductivity() / Math.log(1 / outermost);
        return half / filled().vessel().profile().innerSideAreaM2(0, height);
    }

    private void band(int index, double low, double high, double surfaceCoefficient) {
        double wetHigh = Math.min(high, filled().liquidHeightM());
        double innerArea = wetHigh > low ? filled().vessel().profile().innerSideAreaM2(low, wetHigh) : 0;
        String inside = innerArea > 0 ? bandName(index) + " inside" : "";
        double base = index == 0 ? filled().vessel().baseMassKg() : 0;
        Band band = addBand(low, high, base, inside, -1, filled().liquidHeightM());
        if (innerArea > 0) {
            innerPaths.add(JunctionPath.of(
                    inside,
                    Link.of(
                            contents.nodes().get(contents.nodes().size() - 1),
                            "conduction",
                            HeatLaw.conductance(surfaceCoefficient * innerArea)),
                    Link.of(
                            band.band().wall(),
                            "conduction",
                            HeatLaw.conductance(band.halves().inner() * innerArea))));
        }
    }

    @Override
    List<Node> nodes() {
        List<Node> nodes = new ArrayList<>(contents.nodes());
        nodes.addAll(wallNodes());
        return nodes;
    }

    @Override
    Contents contents() {
        return contents;
    }

    /** The outermost shell takes up all light; what passes on to others is left to conduction. */
    @Override
    List<LightTaker> lightTakers(int index, Posture posture) {
        List<Node> shells = contents.nodes();
        return wettedBelow(index, filled().liquidHeightM(), shells.get(shells.size() - 1));
    }

    @Override
    List<Path> innerPaths(Posture posture) {
        return innerPaths;
    }

    @Override
    List<String> notes(Trajectory run) {
        if (model.isMixed()) {
            List<String> notes = new ArrayList<>();
            notes.add(
                    "contents mixed up to the wall: no film inside; a drink that nobody stirs cools and warms slower");
            notes.addAll(notesOfFreezing(run));
            return notes;
        }
        List<String> notes = new ArrayList<>();
        notes.add(
                model.conductivityFactor() == 1
                        ? "contents at rest: they only conduct; a drink that can flow cools and warms faster"
                        : String.format(
                                Locale.ROOT,
                                "contents conduct %.3g times as well as the liquid at rest, as the model says",
                                model.conductivityFactor()));
        notes.addAll(notesOfFreezingParts(
                run,
                "shell",
                "from the axis",
                "; it conducts like the liquid, though ice conducts four times as well as water"));
        return notes;
    }
}
