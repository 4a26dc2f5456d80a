/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.correlation.Correlation;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.FlatPlate;
import org.beveragethermal.core.correlation.HorizontalCylinder;
import org.beveragethermal.core.correlation.HorizontalPlate;
import org.beveragethermal.core.correlation.VerticalCylinder;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.CondensingFilm;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.EvaporatingFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.film.RadiativeFilm;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;

/** Air with walls around it, in one run. */
final class AirMedium implements Medium {

    /**
     * Length of a flat plate that has the mean coefficient of a disc along a laminar stream, per diameter. A strip of the disc along the
     * stream has the length D √(1 − s²); the mean of L^(−1/2) over the area is D^(−1/2) · 0.8740/0.7854, the integrals of (1 − s²)^(1/4) and
     * of (1 − s²)^(1/2) from 0 to 1.
     */
    private static final double PLATE_PER_DIAMETER = (0.7854 / 0.8740) * (0.7854 / 0.8740);

    /**
     * Relative humidity over a drink where none is given: that of a room, 30 to 70 % (own assumption). Dry air, which is what no humidity
     * means elsewhere, would have the drink evaporate as in a desert.
     */
    static final double ASSUMED_HUMIDITY = 0.5;

    private static final String ASSUMED_NOTE =
            "no humidity is given: the air over an open vessel is taken at 50 %, from which its drink evaporates";

    private final Ends ends;
    private final Air.AirState state;
    private final Fluid fluid;
    private final Footing footing;
    private final List<Node> nodes;
    private final List<Path> paths;
    private final List<String> notes;

    /**
     * What vessels exchange heat with.
     *
     * @param air what convects
     * @param walls what radiates
     * @param vapour what brings latent heat; its temperature and the relative humidity make the vapour pressure
     */
    record Ends(End air, End walls, Boundary vapour) {}

    AirMedium(String id, Air room, double originS) {
        this(ends(id, room, originS), room.state(), room.footing(), List.of(), List.of(), List.of());
    }

    private static Ends ends(String id, Air room, double originS) {
        Boundary air = Boundary.varying(id + " air", room.airK().startingAt(originS));
        Boundary walls = Boundary.varying(id + " walls", room.wallsK().startingAt(originS));
        return new Ends(air, walls, air);
    }

    /** Air with a state of its own. */
    AirMedium(Ends ends, Air.AirState state, Footing footing, List<Node> nodes, List<Path> paths, List<String> notes) {
        this.ends = ends;
        this.state = state;
        this.fluid = Fluid.air(state.pressurePa());
        this.footing = footing;
        this.nodes = List.copyOf(nodes);
        this.paths = List.copyOf(paths);
        this.notes = List.copyOf(notes);
    }

    /** The same air with something to say to the user. */
    AirMedium saying(List<String> newNotes) {
        return new AirMedium(ends, state, footing, nodes, paths, newNotes);
    }

    @Override
    public List<Node> nodes() {
        return nodes;
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        return 0;
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        return paths;
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        if (EndFaces.isEnd(patch)) {
            return end(patch);
        }
        if (patch.orientation() == Orientation.LYING_WALL) {
            return List.of(Face.whole("air", lying(patch)));
        }
        return List.of(Face.whole(
                "air", upright(patch.outerAreaM2(), vessel.heightM(), patch.diameterM(), patch.emissivity())));
    }

    private List<Face> end(WallPatch patch) {
        if (EndFaces.isCovered(patch, footing)) {
            return List.of();
        }
        if (patch.orientation() == Orientation.END_FACING_DOWN && footing.support() == Footing.Support.CONTACT) {
            HeatLaw contact = HeatLaw.conductance(footing.coefficient() * patch.outerAreaM2());
            return List.of(Face.whole("support", List.of(Link.of(ends.air(), "conduction", contact))));
        }
        if (patch.isLiquid()) {
            return List.of(Face.whole("air", liquid(patch)));
        }
        ConvectiveFilm film = patch.orientation() == Orientation.END_FACING_SIDEWAYS
                ? ConvectiveFilm.free(patch.outerAreaM2(), patch.diameterM(), fluid, VerticalPlate.CHURCHILL_CHU)
                : disc(patch, fluid);
        return List.of(
                Face.whole("air", links(along(film, patch.diameterM()), patch.outerAreaM2(), patch.emissivity())));
    }

    /** Convection, radiation and evaporation at the free surface of a drink; moist air is lighter, and a hot drink makes it so. */
    private List<Link> liquid(WallPatch patch) {
        double humidity = state.relativeHumidity() > 0 ? state.relativeHumidity() : ASSUMED_HUMIDITY;
        Fluid moist = Fluid.moistAir(state.pressurePa(), humidity, patch.waterActivity());
        ConvectiveFilm film = along(disc(patch, moist), patch.diameterM());
        return List.of(
                Link.of(ends.air(), "convection", film).scaledBy(Multipliers.AIR_FILM),
                Link.of(ends.walls(), "radiation", new RadiativeFilm(patch.outerAreaM2(), patch.emissivity()))
                        .scaledBy(Multipliers.RADIATION),
                Link.of(
                                ends.vapour(),
                                EvaporatingFilm.MECHANISM,
                                EvaporatingFilm.of(film, humidity, state.pressurePa(), patch.waterActivity()))
                        .scaledBy(Multipliers.AIR_FILM));
    }

    /** Free convection at a level disc: air colder than a face that looks up, or warmer than one that looks down, overturns. */
    private static ConvectiveFilm disc(WallPatch patch, Fluid fluid) {
        boolean up = patch.orientation() == Orientation.END_FACING_UP;
        Correlation airWarmer = up ? HorizontalPlate.STABLE_MCADAMS : HorizontalPlate.UNSTABLE_MCADAMS_BOTH;
        Correlation airColder = up ? HorizontalPlate.UNSTABLE_MCADAMS_BOTH : HorizontalPlate.STABLE_MCADAMS;
        return ConvectiveFilm.free(patch.outerAreaM2(), patch.diameterM() / 4, fluid, airWarmer)
                .whenColder(airColder)
                .atLeast(LevelFilm.CONDUCTION);
    }

    /** Convection and radiation to an upright surface of a round body of given height and diameter. */
    List<Link> upright(double areaM2, double heightM, double diameterM, double emissivity) {
        ConvectiveFilm film = ConvectiveFilm.free(areaM2, heightM, fluid, VerticalCylinder.popiel(heightM / diameterM));
        return links(across(film, diameterM), areaM2, emissivity);
    }

    /** Convection and radiation to a strip of a lying cylinder: the mean of its circumference, on its diameter. */
    private List<Link> lying(WallPatch patch) {
        ConvectiveFilm film =
                ConvectiveFilm.free(patch.outerAreaM2(), patch.diameterM(), fluid, HorizontalCylinder.CHURCHILL_CHU);
        return links(across(film, patch.diameterM()), patch.outerAreaM2(), patch.emissivity());
    }

    /** Convection and radiation to a level surface that faces up. */
    List<Link> level(double areaM2, double perimeterM, double emissivity) {
        double length = areaM2 / perimeterM;
        ConvectiveFilm film = ConvectiveFilm.free(areaM2, length, fluid, HorizontalPlate.STABLE_MCADAMS)
                .whenColder(HorizontalPlate.UNSTABLE_MCADAMS);
        return links(along(film, 4 * length), areaM2, emissivity);
    }

    /** A film with the stream across the axis of a cylinder. */
    private ConvectiveFilm across(ConvectiveFilm film, double diameterM) {
        return film.withStream(state.speedMPerS(), diameterM, CrossflowCylinder.CHURCHILL_BERNSTEIN);
    }

    /** A film with the stream along a disc. */
    private ConvectiveFilm along(ConvectiveFilm film, double diameterM) {
        return film.withStream(state.speedMPerS(), PLATE_PER_DIAMETER * diameterM, FlatPlate.LAMINAR);
    }

    private List<Link> links(ConvectiveFilm film, double areaM2, double emissivity) {
        List<Link> links = new ArrayList<>();
        links.add(Link.of(ends.air(), "convection", film).scaledBy(Multipliers.AIR_FILM));
        links.add(Link.of(ends.walls(), "radiation", new RadiativeFilm(areaM2, emissivity))
                .scaledBy(Multipliers.RADIATION));
        if (state.relativeHumidity() > 0) {
            CondensingFilm condensing = CondensingFilm.of(film, state.relativeHumidity(), state.pressurePa());
            links.add(
                    Link.of(ends.vapour(), CondensingFilm.MECHANISM, condensing).scaledBy(Multipliers.AIR_FILM));
        }
        return links;
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        boolean open = occupants.stream().anyMatch(occupant -> occupant.vessel().isOpen());
        if (!open || state.relativeHumidity() > 0) {
            return notes;
        }
        List<String> all = new ArrayList<>(notes);
        all.add(ASSUMED_NOTE);
        return all;
    }
}
