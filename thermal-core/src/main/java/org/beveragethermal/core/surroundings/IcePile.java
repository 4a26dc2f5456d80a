/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.film.RadiativeFilm;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.store.IceStore;
import org.jspecify.annotations.Nullable;

/**
 * A pile of ice with or without liquid at its foot: what it does to the vessels in it and to its bucket.
 *
 * @param id the gear's id
 * @param bucket what holds it
 * @param air the room
 * @param ice node with an {@link IceStore}
 * @param liquid the liquid at its foot, or null where melt water drains away
 * @param contact how the ice touches walls
 */
record IcePile(
        String id,
        Bucket bucket,
        AirMedium air,
        Node ice,
        @Nullable PileLiquid liquid,
        IceContact contact) {

    /** Radiation across the gaps at the bucket's wall is linear at this temperature [K]. */
    private static final double GAP_K = 278.15;

    /**
     * The liquid at the foot of a pile.
     *
     * @param node its node
     * @param name what a user calls it
     * @param fluid what films need to know of it
     * @param agitation how it is moved
     */
    record PileLiquid(Node node, String name, Fluid fluid, Agitation agitation) {}

    private AmountWeight weight(SmoothFunction bySide) {
        return new AmountWeight(ice, IceStore.SIDE, bySide);
    }

    /** What touches a patch of a vessel. */
    List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants, PileGeometry geometry) {
        double depth = geometry.level().depthM();
        Footing footing = EndFaces.footing(vessel, depth, Footing.insulating());
        if (EndFaces.isCovered(patch, footing)) {
            return List.of();
        }
        double wetted = vessel.wettedM(depth);
        if (patch.middleM() > wetted) {
            return air.faces(patch, vessel, occupants);
        }
        double low = vessel.heldAtM(depth) + patch.lowM();
        double high = vessel.heldAtM(depth) + Math.min(patch.highM(), wetted);
        double radius = EndFaces.isEnd(patch) ? Double.POSITIVE_INFINITY : 0.5 * patch.diameterM();
        double touched = contact.fraction(radius);
        SmoothFunction beside = geometry.besideIce(low, high);
        List<Face> faces = new ArrayList<>();
        faces.add(new Face("ice, touching", List.of(touching(patch.outerAreaM2())), weight(times(touched, beside))));
        faces.add(new Face(
                "gaps among ice", gaps(patch.outerAreaM2(), patch.emissivity()), weight(times(1 - touched, beside))));
        if (liquid != null) {
            HeatLaw film = BathWalls.film(patch, wetted, liquid.fluid(), liquid.agitation());
            Link link = EndFaces.isEnd(patch)
                    ? EndFaces.inWater(liquid.node(), patch, vessel, footing, liquid.fluid(), liquid.agitation())
                    : Link.of(liquid.node(), "convection", film).scaledBy(Multipliers.WATER_FILM);
            faces.add(new Face(liquid.name(), List.of(link), weight(geometry.besideLiquid(low, high))));
        }
        for (Face face : air.faces(patch, vessel, occupants)) {
            faces.add(face.weightedBy(weight(geometry.besideAir(low, high))));
        }
        return faces;
    }

    private static SmoothFunction times(double factor, SmoothFunction f) {
        return new SmoothFunction() {
            @Override
            public double at(double x) {
                return factor * f.at(x);
            }

            @Override
            public double slope(double x) {
                return factor * f.slope(x);
            }
        };
    }

    private Link touching(double areaM2) {
        return Link.of(ice, "contact", HeatLaw.conductance(contact.filmCoefficient() * areaM2))
                .scaledBy(Multipliers.ICE_CONTACT);
    }

    private List<Link> gaps(double areaM2, double emissivity) {
        return List.of(
                Link.of(ice, "conduction across gaps", HeatLaw.conductance(contact.gapCoefficient() * areaM2)),
                Link.of(ice, "radiation", new RadiativeFilm(areaM2, IceContact.exchangeEmissivity(emissivity)))
                        .scaledBy(Multipliers.RADIATION));
    }

    /** Room heat through wall and top; the bottom of a bucket passes none. */
    List<Path> roomPaths(PileGeometry geometry) {
        FillLevel level = geometry.level();
        double depth = level.depthM();
        List<Path> paths = new ArrayList<>();
        paths.add(sideAtIce(geometry));
        paths.add(BathWalls.surface(id + " top of ice", ice, bucket, level, air, weight(geometry.open())));
        if (liquid != null) {
            paths.add(BathWalls.side(
                    id + " side wall at " + liquid.name(),
                    liquid.node(),
                    bucket,
                    level,
                    air,
                    weight(geometry.besideLiquid(0, depth))));
            paths.add(BathWalls.surface(
                    id + " surface of " + liquid.name(),
                    liquid.node(),
                    bucket,
                    level,
                    air,
                    weight(geometry.uncovered())));
        }
        return paths;
    }

    private Path sideAtIce(PileGeometry geometry) {
        double depth = geometry.level().depthM();
        double area = bucket.circumferenceM() * depth;
        double touched = contact.fraction(0.5 * bucket.innerDiameterM());
        double radiation = new RadiativeFilm(1, IceContact.exchangeEmissivity(bucket.emissivity()))
                .describe(GAP_K, GAP_K)
                .coefficient();
        double inside = touched * contact.filmCoefficient() + (1 - touched) * (contact.gapCoefficient() + radiation);
        double coefficient = 1 / (1 / inside + 1 / bucket.wallCoefficient());
        AmountWeight share = weight(geometry.besideIce(0, depth));
        List<Link> links = new ArrayList<>();
        links.add(Link.of(ice, "conduction", HeatLaw.conductance(coefficient * area)));
        links.addAll(air.upright(area, depth, bucket.innerDiameterM(), bucket.emissivity()));
        return JunctionPath.of(
                id + " side wall at ice",
                links.stream().map(link -> link.weightedBy(share)).toList());
    }

    /** Heat from the liquid into the ice that lies in it: film and inside of the blocks, both shrinking with them. */
    Path liquidToIce(PileGeometry geometry, ConvectiveFilm film, double innerWattsPerKelvin, double areaExponent) {
        PileLiquid around = Objects.requireNonNull(liquid);
        return JunctionPath.of(
                id + " " + around.name() + " to ice",
                Link.of(around.node(), "convection", film)
                        .scaledBy(Multipliers.ICE_FILM)
                        .weightedBy(weight(geometry.wetPower(areaExponent))),
                Link.of(ice, "conduction", HeatLaw.conductance(innerWattsPerKelvin))
                        .weightedBy(weight(geometry.wetPower(1))));
    }
}
