/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.core.correlation.Correlation;
import org.beveragethermal.core.correlation.HorizontalPlate;
import org.beveragethermal.core.correlation.VerticalCylinder;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.film.RadiativeFilm;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.jspecify.annotations.Nullable;

/** Still air with walls around it, in one run. */
final class AirMedium implements Medium {

    private final Boundary air;
    private final Boundary walls;
    private final Fluid fluid;
    private final Footing footing;

    AirMedium(String id, StillAir room, double originS) {
        air = Boundary.varying(id + " air", room.airK().startingAt(originS));
        walls = Boundary.varying(id + " walls", room.wallsK().startingAt(originS));
        fluid = Fluid.air(room.pressurePa());
        footing = room.footing();
    }

    @Override
    public List<Node> nodes() {
        return List.of();
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        return 0;
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        return List.of();
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        if (EndFaces.isEnd(patch)) {
            return end(patch);
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
            return List.of(Face.whole("support", List.of(Link.of(air, "conduction", contact))));
        }
        ConvectiveFilm film = patch.orientation() == Orientation.END_FACING_SIDEWAYS
                ? ConvectiveFilm.free(patch.outerAreaM2(), patch.diameterM(), fluid, VerticalPlate.CHURCHILL_CHU)
                : disc(patch);
        return List.of(Face.whole(
                "air",
                List.of(
                        Link.of(air, "convection", film).scaledBy(Multipliers.AIR_FILM),
                        radiation(patch.outerAreaM2(), patch.emissivity()))));
    }

    /** Free convection at a level disc: air colder than a face that looks up, or warmer than one that looks down, overturns. */
    private ConvectiveFilm disc(WallPatch patch) {
        boolean up = patch.orientation() == Orientation.END_FACING_UP;
        Correlation airWarmer = up ? HorizontalPlate.STABLE_MCADAMS : HorizontalPlate.UNSTABLE_MCADAMS_BOTH;
        Correlation airColder = up ? HorizontalPlate.UNSTABLE_MCADAMS_BOTH : HorizontalPlate.STABLE_MCADAMS;
        return ConvectiveFilm.free(patch.outerAreaM2(), patch.diameterM() / 4, fluid, airWarmer)
                .whenColder(airColder)
                .atLeast(LevelFilm.CONDUCTION);
    }

    private Link radiation(double areaM2, double emissivity) {
        return Link.of(walls, "radiation", new RadiativeFilm(areaM2, emissivity))
                .scaledBy(Multipliers.RADIATION);
    }

    /** Convection and radiation to an upright surface of a round body of given height and diameter. */
    List<Link> upright(double areaM2, double heightM, double diameterM, double emissivity) {
        return surface(areaM2, heightM, emissivity, VerticalCylinder.popiel(heightM / diameterM), null);
    }

    /** Convection and radiation to a level surface that faces up. */
    List<Link> level(double areaM2, double perimeterM, double emissivity) {
        return surface(
                areaM2,
                areaM2 / perimeterM,
                emissivity,
                HorizontalPlate.STABLE_MCADAMS,
                HorizontalPlate.UNSTABLE_MCADAMS);
    }

    private List<Link> surface(
            double areaM2, double lengthM, double emissivity, Correlation airWarmer, @Nullable Correlation airColder) {
        ConvectiveFilm film = ConvectiveFilm.free(areaM2, lengthM, fluid, airWarmer);
        return List.of(
                Link.of(air, "convection", airColder == null ? film : film.whenColder(airColder))
                        .scaledBy(Multipliers.AIR_FILM),
                radiation(areaM2, emissivity));
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        return List.of();
    }
}
