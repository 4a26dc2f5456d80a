/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Film;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Orientation;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.WallPatch;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;

/**
 * A vessel whose contents are one node; its wall is divided at every waterline that occurs in the run.
 *
 * <p>A beverage freezes and thaws at its liquidus, its ice spread evenly; other liquids stay liquid.
 *
 * <p>Heat passes from the contents through the inside film and half the wall to the wall's node. The glass of the base counts
 * with the lowest band. Base and closure pass no heat outwards, but for the base of an upright vessel whose surroundings have a footing
 * that lets them reach it.
 */
final class LumpedVessel extends ModelledVessel {

    /** Bands thinner than this are joined with their neighbour [m]. */
    private static final double THINNEST_BAND_M = 0.003;

    private final Node contents;
    private final List<Path> innerPaths = new ArrayList<>();

    LumpedVessel(String id, FilledVessel filled, List<Double> waterlines, List<Layer> layers) {
        super(id, filled, layers);
        contents = Node.of(id + " contents", store(filled), filled.temperatureK());
        List<Double> edges = edges(filled.vessel().profile().heightM(), waterlines);
        for (int i = 0; i + 1 < edges.size(); i++) {
            band(i, edges.get(i), edges.get(i + 1));
        }
    }

    /** A drink may freeze; of other liquids no freezing curve is known. */
    static Store store(FilledVessel filled) {
        return filled.liquid() instanceof Beverage drink
                ? FreezingStore.ofMass(drink, filled.liquidMassKg())
                : LiquidStore.ofMass(filled.liquid(), filled.liquidMassKg());
    }

    static List<Double> edges(double height, List<Double> waterlines) {
        TreeSet<Double> edges = new TreeSet<>();
        edges.add(0.0);
        for (double line : new TreeSet<>(waterlines)) {
            if (line > edges.last() + THINNEST_BAND_M && line < height - THINNEST_BAND_M) {
                edges.add(line);
            }
        }
        edges.add(height);
        return new ArrayList<>(edges);
    }

    private void band(int index, double low, double high) {
        double wetHigh = Math.min(high, filled().liquidHeightM());
        double innerArea = wetHigh > low ? filled().vessel().profile().innerSideAreaM2(low, wetHigh) : 0;
        String inside = innerArea > 0 ? bandName(index) + " inside" : "";
        Band band = addBand(low, high, index == 0 ? filled().vessel().baseMassKg() : 0, inside, -1);
        if (innerArea > 0) {
            innerPaths.add(JunctionPath.of(
                    inside,
                    Link.of(contents, "convection", insideFilm(filled(), innerArea))
                            .scaledBy(Multipliers.INSIDE_FILM),
                    Link.of(
                            band.band().wall(),
                            "conduction",
                            HeatLaw.conductance(band.halfCoefficient() * innerArea))));
        }
    }

    /**
     * The base of an upright vessel, joined to the lowest band, whose glass it shares. From the contents to it leads the film of the
     * side: in air and on a plate it resists by a tenth or less.
     */
    @Override
    List<VesselEnd> ends(Posture posture) {
        if (posture != Posture.UPRIGHT) {
            return List.of();
        }
        Profile profile = filled().vessel().profile();
        Solid glass = filled().vessel().wall();
        Node lowest = wall().get(0).band().wall();
        double perArea = glass.thermalConductivity().value() / (0.5 * profile.baseThicknessM());
        double floor = Math.PI * Math.pow(profile.innerRadiusM(profile.baseThicknessM()), 2);
        double area = profile.baseAreaM2();
        WallPatch patch = new WallPatch(
                0, 0, area, 2 * profile.outerRadiusM(0), glass.emissivity().value(), Orientation.END_FACING_DOWN);
        Path inside = JunctionPath.of(
                id() + " base inside",
                Link.of(contents, "convection", insideFilm(filled(), floor)).scaledBy(Multipliers.INSIDE_FILM),
                Link.of(lowest, "conduction", HeatLaw.conductance(perArea * floor)));
        return List.of(new VesselEnd(
                id() + " base outside",
                patch,
                Link.of(lowest, "conduction", HeatLaw.conductance(perArea * area)),
                List.of(inside)));
    }

    /** The film inside, of an area of wetted side. */
    static Film insideFilm(FilledVessel filled, double areaM2) {
        double height = filled.liquidHeightM();
        double radius = Math.sqrt(filled.liquidVolumeM3() / (Math.PI * height));
        return ConvectiveFilm.free(areaM2, height, Fluid.of(filled.liquid()), EnclosedLiquid.COOLING)
                .whenColder(EnclosedLiquid.WARMING)
                .atLeast(EnclosedLiquid.conduction(height / radius));
    }

    @Override
    List<Node> nodes() {
        List<Node> nodes = new ArrayList<>();
        nodes.add(contents);
        nodes.addAll(wallNodes());
        return nodes;
    }

    @Override
    Contents contents() {
        return Contents.of(contents);
    }

    @Override
    List<Path> innerPaths(Posture posture) {
        return innerPaths;
    }

    @Override
    List<String> notes(Trajectory run) {
        return notesOfFreezing(run);
    }
}
