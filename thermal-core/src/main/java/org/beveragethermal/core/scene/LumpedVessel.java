/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.solver.EventAnswer;
import org.beveragethermal.core.solver.RunEvent;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * A vessel whose contents are one node; its wall is divided at every waterline that occurs in the run.
 *
 * <p>A beverage freezes and thaws at its liquidus, its ice spread evenly; other liquids stay liquid.
 *
 * <p>Heat passes from the contents through the inside film and half the wall to the wall's node. The glass of the base counts
 * with the lowest band.
 *
 * <p>In a vessel that lies the film inside has the depth of the liquid for its length and the law of {@link
 * EnclosedLiquid#LYING_COOLING}, which is our own assumption.
 */
final class LumpedVessel extends ModelledVessel {

    /** Bands thinner than this are joined with their neighbour [m]. */
    private static final double THINNEST_BAND_M = 0.003;

    private final Node contents;
    private final List<Path> innerPaths = new ArrayList<>();

    LumpedVessel(String id, FilledVessel filled, List<Double> waterlines) {
        super(id, filled);
        contents = Node.of(id + " contents", store(filled), filled.temperatureK());
        List<Double> edges = edges(filled.vessel().profile().heightM(), waterlines);
        for (int i = 0; i + 1 < edges.size(); i++) {
            band(i, edges.get(i), edges.get(i + 1));
        }
    }

    /** A drink may freeze; of other liquids no freezing curve is known. */
    private static Store store(FilledVessel filled) {
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
                    Link.of(contents, "convection", insideFilm(innerArea)).scaledBy(Multipliers.INSIDE_FILM),
                    Link.of(
                            band.band().wall(),
                            "conduction",
                            HeatLaw.conductance(band.halfCoefficient() * innerArea))));
        }
    }

    private HeatLaw insideFilm(double areaM2) {
        double height = filled().liquidHeightM();
        double radius = Math.sqrt(filled().liquidVolumeM3() / (Math.PI * height));
        return ConvectiveFilm.free(areaM2, height, Fluid.of(filled().liquid()), EnclosedLiquid.COOLING)
                .whenColder(EnclosedLiquid.WARMING)
                .atLeast(EnclosedLiquid.conduction(height / radius));
    }

    @Override
    List<Node> nodes() {
        List<Node> nodes = new ArrayList<>();
        nodes.add(contents);
        wall().forEach(band -> nodes.add(band.band().wall()));
        return nodes;
    }

    @Override
    Contents contents() {
        return Contents.of(contents);
    }

    @Override
    List<Path> innerPaths(Posture posture) {
        return posture == Posture.LYING ? lyingInnerPaths() : innerPaths;
    }

    /** Each band is wetted inside below the level of the liquid, as far as its own circle reaches there. */
    private List<Path> lyingInnerPaths() {
        double level = filled().lyingSurfaceHeightM();
        double depth = level - lying().levelM(0);
        double radius = Math.sqrt(filled().liquidVolumeM3() / (Math.PI * filled().liquidHeightM()));
        List<Path> paths = new ArrayList<>();
        for (Band band : wall()) {
            double area =
                    lying().innerSideAreaM2(band.band().lowM(), band.band().highM(), level);
            if (area > 0) {
                HeatLaw film = ConvectiveFilm.free(
                                area, depth, Fluid.of(filled().liquid()), EnclosedLiquid.LYING_COOLING)
                        .whenColder(EnclosedLiquid.LYING_WARMING)
                        .atLeast(EnclosedLiquid.conduction(depth / radius));
                paths.add(JunctionPath.of(
                        band.band().name() + " inside",
                        Link.of(contents, "convection", film).scaledBy(Multipliers.INSIDE_FILM),
                        Link.of(band.band().wall(), "conduction", HeatLaw.conductance(band.halfCoefficient() * area))));
            }
        }
        return paths;
    }

    @Override
    List<String> notes(Trajectory run) {
        boolean freezes = contents.store() instanceof FreezingStore
                && run.first(RunEvent.freezingStarts(contents), 0) instanceof EventAnswer.Reached;
        return freezes
                ? List.of(
                        "the drink begins to freeze; its ice is taken as spread evenly, as slush, and supercooling, by which a"
                                + " drink left alone may stay liquid some kelvins below its freezing point, is not modelled")
                : List.of();
    }
}
