/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.internal.ConvectiveFilm;
import org.beveragethermal.core.internal.FluidFit;
import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.WallBand;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.core.surroundings.Face;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.WallPatch;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;

/**
 * A vessel as a few nodes: its contents, and one node per band of its wall.
 *
 * <p>Heat passes from the contents through the inside film and half the wall to the wall's node, and through the other half to
 * the outer surface, where it meets what touches the band. The base stands on something and passes no heat; its glass counts
 * with the lowest band.
 */
final class LumpedVessel {

    /** Bands thinner than this are joined with their neighbour [m]. */
    private static final double THINNEST_BAND_M = 0.003;

    private final FilledVessel filled;
    private final Occupant occupant;
    private final Node contents;
    private final List<Band> bands;
    private final List<Path> innerPaths;

    /** A band of wall with its node and the conductance from mid-wall to the outer surface. */
    private record Band(WallBand band, WallPatch patch, double outerHalfWPerK) {}

    LumpedVessel(String id, FilledVessel filled, List<Double> waterlines) {
        this.filled = filled;
        this.occupant = new Occupant(id, filled.vessel());
        this.contents = Node.of(
                id + " contents", LiquidStore.ofMass(filled.liquid(), filled.liquidMassKg()), filled.temperatureK());
        this.bands = new ArrayList<>();
        this.innerPaths = new ArrayList<>();
        List<Double> edges = edges(waterlines);
        for (int i = 0; i + 1 < edges.size(); i++) {
            addBand(id, i, edges.get(i), edges.get(i + 1));
        }
        for (int i = 0; i + 1 < bands.size(); i++) {
            innerPaths.add(alongWall(id, i));
        }
    }

    private List<Double> edges(List<Double> waterlines) {
        double height = occupant.heightM();
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

    private void addBand(String id, int index, double low, double high) {
        Profile profile = filled.vessel().profile();
        Solid wall = filled.vessel().wall();
        double liquidHeight = filled.liquidHeightM();
        double wetHigh = Math.min(high, liquidHeight);
        double innerArea = wetHigh > low ? profile.innerSideAreaM2(low, wetHigh) : 0;
        double outerArea = profile.outerSideAreaM2(low, high);
        double mass = filled.vessel().wallMassKg(low, high)
                + (index == 0 ? filled.vessel().baseMassKg() : 0);
        double halfThickness = 0.5 * profile.wallVolumeM3(low, high) / outerArea;
        String name = id + " wall " + (index + 1);
        Node node = Node.sensible(name, mass * wall.specificHeatCapacity().value(), filled.temperatureK());
        String inside = "";
        if (innerArea > 0) {
            inside = name + " inside";
            innerPaths.add(JunctionPath.of(
                    inside,
                    Link.of(contents, "convection", insideFilm(innerArea)).scaledBy(Multipliers.INSIDE_FILM),
                    Link.of(
                            node,
                            "conduction",
                            HeatLaw.conductance(wall.thermalConductivity().value() * innerArea / halfThickness))));
        }
        WallPatch patch = new WallPatch(
                low,
                high,
                outerArea,
                2 * profile.maxOuterRadiusM(),
                wall.emissivity().value());
        bands.add(new Band(
                new WallBand(name, node, inside, name + " outside", low, high),
                patch,
                wall.thermalConductivity().value() * outerArea / halfThickness));
    }

    private HeatLaw insideFilm(double areaM2) {
        double height = filled.liquidHeightM();
        double radius = Math.sqrt(filled.liquidVolumeM3() / (Math.PI * height));
        return ConvectiveFilm.free(areaM2, height, FluidFit.of(LiquidFit.of(filled.liquid())), EnclosedLiquid.COOLING)
                .whenColder(EnclosedLiquid.WARMING)
                .atLeast(EnclosedLiquid.conduction(height / radius));
    }

    private Path alongWall(String id, int lower) {
        WallBand a = bands.get(lower).band();
        WallBand b = bands.get(lower + 1).band();
        double resistance = halfLength(a) + halfLength(b);
        return DirectPath.of(
                id + " along wall " + (lower + 1),
                a.wall(),
                b.wall(),
                "conduction",
                HeatLaw.conductance(filled.vessel().wall().thermalConductivity().value() / resistance));
    }

    /** Half the height of a band over its mean wall section [1/m]. */
    private double halfLength(WallBand band) {
        double height = band.highM() - band.lowM();
        return 0.5 * height * height / filled.vessel().profile().wallVolumeM3(band.lowM(), band.highM());
    }

    Occupant occupant() {
        return occupant;
    }

    Node contents() {
        return contents;
    }

    List<WallBand> bands() {
        return bands.stream().map(Band::band).toList();
    }

    List<Node> nodes() {
        List<Node> nodes = new ArrayList<>();
        nodes.add(contents);
        bands.forEach(band -> nodes.add(band.band().wall()));
        return nodes;
    }

    double heatCapacityJPerK() {
        return filled.liquidMassKg() * filled.liquid().specificHeatCapacity(filled.temperatureK())
                + filled.vessel().emptyMassKg()
                        * filled.vessel().wall().specificHeatCapacity().value();
    }

    /** All paths of this vessel while it is in a medium. */
    List<Path> paths(Medium medium, List<Occupant> occupants) {
        List<Path> paths = new ArrayList<>(innerPaths);
        for (Band band : bands) {
            for (Face face : medium.faces(band.patch(), occupant, occupants)) {
                List<Link> links = new ArrayList<>();
                links.add(Link.of(band.band().wall(), "conduction", HeatLaw.conductance(band.outerHalfWPerK())));
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
        return paths;
    }

    /** Part of the liquid's height that is wetted outside. */
    double wettedPart(double wettedHeightM) {
        return Math.min(1, wettedHeightM / filled.liquidHeightM());
    }
}
