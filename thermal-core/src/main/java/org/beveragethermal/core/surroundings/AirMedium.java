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
import org.beveragethermal.core.network.GivenHeat;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.TimeFunction;
import org.jspecify.annotations.Nullable;

/**
 * Air with walls around it, in one run.
 *
 * <p>Theory manual, equations (3.10), (4.1).
 */
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
    /** Activity of the water on all surfaces; 0 where they are dry until dew settles. */
    private final double waterActivity;

    private final Above above;

    /**
     * What comes from above.
     *
     * @param sky what radiates in place of the walls where the sky is seen, or null for none
     * @param sunlight the sun, or null for none
     * @param sun whom the ledger names as giver of sunlight; its temperature, the air's, does not matter
     * @param originS time on the sun's clock at the start of this medium's [s]
     */
    private record Above(@Nullable Boundary sky, @Nullable Sunlight sunlight, End sun, double originS) {

        static Above of(String id, Air room, double originS) {
            TimeFunction sky = room.openAir().over(room.airK(), room.relativeHumidity());
            return new Above(
                    sky == null ? null : Boundary.varying(id + " sky", sky.startingAt(originS)),
                    room.openAir().sunlight(),
                    Boundary.varying(id + " sun", room.airK().startingAt(originS)),
                    originS);
        }
    }

    /**
     * What vessels exchange heat with.
     *
     * @param air what convects
     * @param walls what radiates
     * @param vapour what brings latent heat; its temperature and the relative humidity make the vapour pressure
     */
    record Ends(End air, End walls, End vapour) {}

    AirMedium(String id, Air room, double originS) {
        this(
                ends(id, room, originS),
                Above.of(id, room, originS),
                room.state(),
                room.footing(),
                List.of(),
                List.of(),
                room.openAir().sunlight() == null ? List.of() : List.of(sunNote(id)));
    }

    private static String sunNote(String id) {
        return "the sun in " + id
                + " falls on vessels as if each stood alone: shade that they cast on each other and on the ground is"
                + " left out; a vessel that lies gets the mean over all directions; colours of glass and drink that nobody stated are"
                + " taken as usual";
    }

    private static Ends ends(String id, Air room, double originS) {
        Boundary air = Boundary.varying(id + " air", room.airK().startingAt(originS));
        Boundary walls = Boundary.varying(id + " walls", room.wallsK().startingAt(originS));
        return new Ends(air, walls, air);
    }

    /** Air with a state of its own. */
    AirMedium(Ends ends, Air.AirState state, Footing footing, List<Node> nodes, List<Path> paths, List<String> notes) {
        this(ends, new Above(null, null, ends.vapour(), 0), state, footing, nodes, paths, notes);
    }

    private AirMedium(
            Ends ends,
            Above above,
            Air.AirState state,
            Footing footing,
            List<Node> nodes,
            List<Path> paths,
            List<String> notes) {
        this(ends, above, state, Fluid.air(state.pressurePa()), footing, nodes, paths, notes, 0);
    }

    private AirMedium(
            Ends ends,
            Above above,
            Air.AirState state,
            Fluid fluid,
            Footing footing,
            List<Node> nodes,
            List<Path> paths,
            List<String> notes,
            double waterActivity) {
        this.ends = ends;
        this.above = above;
        this.state = state;
        this.fluid = fluid;
        this.footing = footing;
        this.nodes = List.copyOf(nodes);
        this.paths = List.copyOf(paths);
        this.notes = List.copyOf(notes);
        this.waterActivity = waterActivity;
    }

    /** The same air with something to say to the user. */
    AirMedium saying(List<String> newNotes) {
        return new AirMedium(ends, above, state, fluid, footing, nodes, paths, newNotes, waterActivity);
    }

    /**
     * The same air at surfaces that are kept wet, as far as its humidity is stated: what they are linked by evaporates or takes up vapour,
     * and feels that moist air is lighter.
     */
    AirMedium atWetSurfaces(double activity) {
        Fluid moist = Fluid.moistAir(state.pressurePa(), state.relativeHumidity(), activity);
        return new AirMedium(
                ends,
                above,
                state,
                state.relativeHumidity() > 0 ? moist : fluid,
                footing,
                nodes,
                paths,
                notes,
                activity);
    }

    Air.AirState state() {
        return state;
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
            return end(patch, vessel);
        }
        if (patch.orientation() == Orientation.LYING_WALL) {
            return List.of(sunlit(lying(patch.outerAreaM2(), patch.diameterM(), patch.emissivity()), patch, vessel));
        }
        return List.of(sunlit(
                upright(patch.outerAreaM2(), vessel.heightM(), patch.diameterM(), patch.emissivity()), patch, vessel));
    }

    /** A face of air, with what the sun brings to it and through it. */
    private Face sunlit(List<Link> links, WallPatch patch, Occupant vessel) {
        Sunlight sunlight = above.sunlight();
        if (sunlight == null) {
            return Face.whole("air", links);
        }
        TimeFunction falling = sunlight.on(SunlitSurface.of(patch, vessel), above.originS());
        List<Link> all = new ArrayList<>(links);
        all.add(Link.bringing(
                        above.sun(),
                        PassingLight.MECHANISM,
                        falling.times(patch.optics().absorbed()))
                .scaledBy(Multipliers.SUN));
        Face face = Face.whole("air", all);
        double transmitted = patch.optics().transmitted();
        return transmitted > 0 ? face.passing(new PassingLight(above.sun(), falling.times(transmitted))) : face;
    }

    /** What an opaque body whose node is its surface takes up of the sun; nothing if there is none. */
    List<Path> sunOn(String name, Node body, WallPatch patch, Occupant vessel) {
        Sunlight sunlight = above.sunlight();
        if (sunlight == null) {
            return List.of();
        }
        TimeFunction falling = sunlight.on(SunlitSurface.of(patch, vessel), above.originS());
        return List.of(GivenHeat.of(
                        name + " in the sun",
                        above.sun(),
                        body,
                        PassingLight.MECHANISM,
                        falling.times(patch.optics().absorbed()))
                .scaledBy(Multipliers.SUN));
    }

    private List<Face> end(WallPatch patch, Occupant vessel) {
        if (EndFaces.isCovered(patch, footing)) {
            return List.of();
        }
        if (patch.orientation() == Orientation.END_FACING_DOWN && footing.support() == Footing.Support.CONTACT) {
            HeatLaw contact = HeatLaw.conductance(footing.coefficient() * patch.outerAreaM2());
            return List.of(Face.whole("support", List.of(Link.of(ends.air(), "conduction", contact))));
        }
        if (patch.isLiquid()) {
            return List.of(sunlit(liquid(patch), patch, vessel));
        }
        ConvectiveFilm film = patch.orientation() == Orientation.END_FACING_SIDEWAYS
                ? ConvectiveFilm.free(patch.outerAreaM2(), patch.diameterM(), fluid, VerticalPlate.CHURCHILL_CHU)
                : disc(patch, fluid);
        double sky = SunlitSurface.skyPart(patch.orientation());
        return List.of(sunlit(
                links(along(film, patch.diameterM()), patch.outerAreaM2(), patch.emissivity(), sky), patch, vessel));
    }

    /** Convection, radiation and evaporation at the free surface of a drink; moist air is lighter, and a hot drink makes it so. */
    private List<Link> liquid(WallPatch patch) {
        double humidity = state.relativeHumidity() > 0 ? state.relativeHumidity() : ASSUMED_HUMIDITY;
        Fluid moist = Fluid.moistAir(state.pressurePa(), humidity, patch.waterActivity());
        ConvectiveFilm film = along(disc(patch, moist), patch.diameterM());
        List<Link> links = new ArrayList<>();
        links.add(Link.of(ends.air(), "convection", film).scaledBy(Multipliers.AIR_FILM));
        addRadiation(links, patch.outerAreaM2(), patch.emissivity(), SunlitSurface.skyPart(patch.orientation()));
        links.add(Link.of(
                        ends.vapour(),
                        EvaporatingFilm.MECHANISM,
                        EvaporatingFilm.of(film, humidity, state.pressurePa(), patch.waterActivity()))
                .scaledBy(Multipliers.AIR_FILM));
        return links;
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
        return links(across(film, diameterM), areaM2, emissivity, 0.5);
    }

    /** Convection and radiation to a strip of a lying cylinder: the mean of its circumference, on its diameter. */
    List<Link> lying(double areaM2, double diameterM, double emissivity) {
        ConvectiveFilm film = ConvectiveFilm.free(areaM2, diameterM, fluid, HorizontalCylinder.CHURCHILL_CHU);
        return links(across(film, diameterM), areaM2, emissivity, 0.5);
    }

    /** Convection and radiation to a level surface that faces up. */
    List<Link> level(double areaM2, double perimeterM, double emissivity) {
        double length = areaM2 / perimeterM;
        ConvectiveFilm film = ConvectiveFilm.free(areaM2, length, fluid, HorizontalPlate.STABLE_MCADAMS)
                .whenColder(HorizontalPlate.UNSTABLE_MCADAMS);
        return links(along(film, 4 * length), areaM2, emissivity, 1);
    }

    /** A film with the stream across the axis of a cylinder. */
    private ConvectiveFilm across(ConvectiveFilm film, double diameterM) {
        return film.withStream(state.speedMPerS(), diameterM, CrossflowCylinder.CHURCHILL_BERNSTEIN);
    }

    /** A film with the stream along a disc. */
    private ConvectiveFilm along(ConvectiveFilm film, double diameterM) {
        return film.withStream(state.speedMPerS(), PLATE_PER_DIAMETER * diameterM, FlatPlate.LAMINAR);
    }

    /** Convection, radiation to the walls and, of the part of what is seen that is sky if there is one [-], to the sky. */
    private List<Link> links(ConvectiveFilm film, double areaM2, double emissivity, double skyPart) {
        List<Link> links = new ArrayList<>();
        links.add(Link.of(ends.air(), "convection", film).scaledBy(Multipliers.AIR_FILM));
        addRadiation(links, areaM2, emissivity, skyPart);
        if (state.relativeHumidity() > 0) {
            links.add(vapour(film).scaledBy(Multipliers.AIR_FILM));
        }
        return links;
    }

    private void addRadiation(List<Link> links, double areaM2, double emissivity, double skyPart) {
        Boundary sky = above.sky();
        double toSky = sky == null ? 0 : skyPart;
        if (toSky < 1) {
            links.add(Link.of(ends.walls(), "radiation", new RadiativeFilm((1 - toSky) * areaM2, emissivity))
                    .scaledBy(Multipliers.RADIATION));
        }
        if (sky != null && toSky > 0) {
            links.add(Link.of(sky, "radiation", new RadiativeFilm(toSky * areaM2, emissivity))
                    .scaledBy(Multipliers.SKY));
        }
    }

    private Link vapour(ConvectiveFilm film) {
        return waterActivity > 0
                ? Link.of(
                        ends.vapour(),
                        EvaporatingFilm.MECHANISM,
                        EvaporatingFilm.of(film, state.relativeHumidity(), state.pressurePa(), waterActivity))
                : Link.of(
                        ends.vapour(),
                        CondensingFilm.MECHANISM,
                        CondensingFilm.of(film, state.relativeHumidity(), state.pressurePa()));
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
