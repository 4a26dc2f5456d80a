/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
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
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.DilutedStore;
import org.beveragethermal.core.store.PouredStore;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Orientation;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.WallPatch;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;

/**
 * A vessel whose contents are one node; its wall is divided at every waterline that occurs in the run.
 *
 * <p>A beverage freezes and thaws at its liquidus, its ice spread evenly; other liquids stay liquid.
 *
 * <p>Heat passes from the contents through the inside film and half the wall to the wall's node. The glass of the base counts
 * with the lowest band. Of an open vessel the wall above the
 * highest level of the run counts only as a fin, {@link DryWall}. The base passes heat outwards where the surroundings reach it: of a vessel that lies, and of an upright one
 * whose surroundings have a footing that lets them. The closure passes none.
 *
 * <p>In a vessel that lies the film inside has the depth of the liquid for its length and the law of {@link
 * EnclosedLiquid#LYING_COOLING}, which is our own assumption.
 */
final class LumpedVessel extends ModelledVessel {

    /** Bands thinner than this are joined with their neighbour [m]. */
    private static final double THINNEST_BAND_M = 0.003;

    private final Node contents;
    /** Shared by all vessels that hold the drink. */
    private final DrinkFit drink;

    private final Optional<Fillings> fillings;
    /** The vessel with what is in it now. */
    private final Optional<FilledVessel> present;

    LumpedVessel(String id, FilledVessel filled, List<Double> waterlines, List<Layer> layers) {
        this(id, filled, DrinkFit.of(filled.liquid()), waterlines, layers, Tints.UNSTATED, false);
    }

    /** A vessel whose contents may take up melt water of ice that is put into them. */
    LumpedVessel(
            String id,
            FilledVessel filled,
            DrinkFit drink,
            List<Double> waterlines,
            List<Layer> layers,
            Tints tints,
            boolean dilutes) {
        super(id, filled, layers, tints);
        contents = dilutes
                ? Node.of(
                        id + " contents",
                        DilutedStore.ofMass(filled.liquid(), filled.liquidMassKg()),
                        filled.temperatureK(),
                        filled.liquidMassKg())
                : filled.vessel().isOpen()
                        ? Node.of(
                                id + " contents",
                                PouredStore.of(filled.liquid()),
                                filled.temperatureK(),
                                filled.liquidMassKg())
                        : Node.of(id + " contents", drink.store(filled.liquidMassKg()), filled.temperatureK());
        this.drink = drink;
        fillings = Optional.empty();
        present = Optional.of(filled);
        addBands(waterlines, filled.liquidHeightM());
    }

    /** A vessel that is poured into or from: the mass of its contents is an amount, and it may be empty. */
    LumpedVessel(
            String id, Fillings fillings, DrinkFit drink, List<Double> waterlines, List<Layer> layers, Tints tints) {
        super(id, fillings.first(), layers, tints, fillings.wallK());
        contents = Node.of(
                id + " contents",
                PouredStore.of(fillings.first().liquid()),
                fillings.first().temperatureK(),
                fillings.massAtStartKg());
        this.drink = drink;
        this.fillings = Optional.of(fillings);
        present = fillings.at(Duration.ZERO);
        addBands(waterlines, fillings.highestM());
    }

    private LumpedVessel(LumpedVessel that, Optional<FilledVessel> present) {
        super(that);
        contents = that.contents;
        drink = that.drink;
        fillings = that.fillings;
        this.present = present;
    }

    @Override
    LumpedVessel at(Duration time) {
        return fillings.map(known -> new LumpedVessel(this, known.at(time))).orElse(this);
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

    private void addBands(List<Double> waterlines, double highestM) {
        List<Double> edges = edges(filled().vessel().profile().heightM(), waterlines);
        for (int i = 0; i + 1 < edges.size(); i++) {
            String inside = wettedM2(edges.get(i), edges.get(i + 1), highestM) > 0 ? bandName(i) + " inside" : "";
            double base = i == 0 ? filled().vessel().baseMassKg() : 0;
            addBand(edges.get(i), edges.get(i + 1), base, inside, -1, highestM);
        }
    }

    /** Inner side area of a band below a level [m²]. */
    private double wettedM2(double lowM, double highM, double levelM) {
        double wetHigh = Math.min(highM, levelM);
        return wetHigh > lowM ? filled().vessel().profile().innerSideAreaM2(lowM, wetHigh) : 0;
    }

    private List<Path> standingInnerPaths(FilledVessel now) {
        List<Path> paths = new ArrayList<>();
        for (Band band : wall()) {
            double area = wettedM2(band.band().lowM(), band.band().highM(), now.liquidHeightM());
            if (area > 0) {
                paths.add(JunctionPath.of(
                        band.band().insidePath(),
                        Link.of(contents, "convection", insideFilm(now, area, drink.fluid()))
                                .scaledBy(Multipliers.INSIDE_FILM),
                        Link.of(
                                band.band().wall(),
                                "conduction",
                                HeatLaw.conductance(band.halves().inner() * area))));
            }
        }
        return paths;
    }

    /**
     * The base, joined to the lowest band, whose glass it shares. From the contents to it leads the film of the side: in air and on a
     * plate it resists by a tenth or less. Of a vessel that lies it is wetted as far as the liquid reaches.
     */
    @Override
    List<VesselEnd> ends(Posture posture, double waterlineM) {
        if (posture == Posture.INVERTED) {
            return List.of();
        }
        Profile profile = filled().vessel().profile();
        Solid glass = filled().vessel().wall();
        Node lowest = wall().get(0).band().wall();
        double perArea = glass.thermalConductivity().value() / (0.5 * profile.baseThicknessM());
        boolean lies = posture == Posture.LYING;
        double floor = lies
                ? lying().floorAreaM2(filled().lyingSurfaceHeightM())
                : Math.PI * Math.pow(profile.innerRadiusM(profile.baseThicknessM()), 2);
        double area = profile.baseAreaM2();
        double radius = profile.outerRadiusM(0);
        List<Path> inside = present
                .map(now -> JunctionPath.of(
                        id() + " base inside",
                        Link.of(contents, "convection", lies ? lyingFilm(floor) : insideFilm(now, floor, drink.fluid()))
                                .scaledBy(Multipliers.INSIDE_FILM),
                        Link.of(lowest, "conduction", HeatLaw.conductance(perArea * floor))))
                .stream()
                .collect(Collectors.<Path>toList());
        String name = id() + " base outside";
        double emissivity = glass.emissivity().value();
        Link behind = Link.of(lowest, "conduction", HeatLaw.conductance(perArea * area));
        if (lies) {
            List<VesselEnd> parts = new ArrayList<>(
                    VesselEnd.lying(name, new LyingDisc(radius, lying().axisM()), emissivity, behind, waterlineM));
            parts.replaceAll(part -> part.with(baseOptics()));
            parts.set(0, parts.get(0).with(inside));
            return parts;
        }
        WallPatch patch = new WallPatch(0, 0, area, 2 * radius, emissivity, Orientation.END_FACING_DOWN);
        return List.of(new VesselEnd(name, patch, behind, inside).with(baseOptics()));
    }

    /** All light goes to the one node, as far as drink lies behind the wall. */
    @Override
    List<LightTaker> lightTakers(int index, Posture posture) {
        if (posture != Posture.LYING) {
            return present.map(now -> wettedBelow(index, now.liquidHeightM(), contents))
                    .orElse(List.of());
        }
        double low = wall().get(index).band().lowM();
        double high = wall().get(index).band().highM();
        double wet = lying().innerSideAreaM2(low, high, filled().lyingSurfaceHeightM());
        double all = lying().innerSideAreaM2(low, high, 2 * lying().axisM());
        return wet > 0 ? List.of(new LightTaker(contents, wet / all)) : List.of();
    }

    /** The surface of what is in an open vessel. */
    @Override
    List<Path> surfacePaths(Medium medium, Occupant occupant, List<Occupant> occupants) {
        return present.filter(now -> now.vessel().isOpen())
                .map(now -> {
                    WallPatch patch = DrinkSurface.patch(now, surfaceOptics(now));
                    return DrinkSurface.of(
                            id() + " surface", contents, patch, now, drink, medium.faces(patch, occupant, occupants));
                })
                .orElse(List.of());
    }

    /** The film inside, of an area of wetted side. */
    static Film insideFilm(FilledVessel filled, double areaM2, Fluid drink) {
        double height = filled.liquidHeightM();
        double radius = Math.sqrt(filled.liquidVolumeM3() / (Math.PI * height));
        return ConvectiveFilm.free(areaM2, height, drink, EnclosedLiquid.COOLING)
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
        return posture == Posture.LYING
                ? lyingInnerPaths()
                : present.map(this::standingInnerPaths).orElse(List.of());
    }

    /** Each band is wetted inside below the level of the liquid, as far as its own circle reaches there. */
    private List<Path> lyingInnerPaths() {
        double level = filled().lyingSurfaceHeightM();
        List<Path> paths = new ArrayList<>();
        for (Band band : wall()) {
            double area =
                    lying().innerSideAreaM2(band.band().lowM(), band.band().highM(), level);
            if (area > 0) {
                paths.add(JunctionPath.of(
                        band.band().name() + " inside",
                        Link.of(contents, "convection", lyingFilm(area)).scaledBy(Multipliers.INSIDE_FILM),
                        Link.of(
                                band.band().wall(),
                                "conduction",
                                HeatLaw.conductance(band.halves().inner() * area))));
            }
        }
        return paths;
    }

    private Film lyingFilm(double areaM2) {
        double depth = filled().lyingSurfaceHeightM() - lying().levelM(0);
        double radius = Math.sqrt(filled().liquidVolumeM3() / (Math.PI * filled().liquidHeightM()));
        return ConvectiveFilm.free(areaM2, depth, drink.fluid(), EnclosedLiquid.LYING_COOLING)
                .whenColder(EnclosedLiquid.LYING_WARMING)
                .atLeast(EnclosedLiquid.conduction(depth / radius));
    }

    @Override
    List<String> notes(Trajectory run) {
        return notesOfFreezing(run);
    }
}
