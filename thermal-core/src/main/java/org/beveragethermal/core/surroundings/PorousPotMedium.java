/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.beveragethermal.core.correlation.VerticalLayer;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.film.RadiativeFilm;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.solid.Solids;

/** A porous pot in one run: a node for its inside, and one for its outside, which holds the water. */
final class PorousPotMedium implements Medium {

    private static final double LEAST_PART = 1e-9;
    private static final double PURE = 1;
    /** A vessel needs this much air on each side [m]. */
    private static final double NARROWEST_GAP_M = 0.0005;
    /** The air under the base is taken at this temperature [K]. */
    private static final double UNDER_K = 290;

    private final String id;
    private final PorousPot gear;
    private final AirMedium around;
    private final AirMedium atPot;
    private final Fluid air;
    private final Node inside;
    private final Node outside;
    private final PorousLayer wall;

    PorousPotMedium(String id, PorousPot gear, AirMedium around) {
        this.id = id;
        this.gear = gear;
        this.around = around;
        this.atPot = around.atWetSurfaces(PURE);
        this.air = Fluid.air(around.state().pressurePa());
        double bottom = 0.25 * Math.PI * gear.outerDiameterM() * gear.outerDiameterM() * gear.wallM();
        double perVolume = PorousPot.clay().density().value()
                * PorousPot.clay().specificHeatCapacity().value();
        double half = 0.5 * gear.wallVolumeM3() * perVolume;
        inside = Node.sensible(id + " inside", half + bottom * perVolume, gear.startK());
        outside = Node.of(id + " pot", new WetStore(half, gear.waterKg()), gear.startK(), gear.waterKg());
        wall = new PorousLayer(PorousPot.clay().thermalConductivity().value(), gear.wallM(), 0, gear.middleAreaM2());
    }

    @Override
    public List<Node> nodes() {
        List<Node> nodes = new ArrayList<>(around.nodes());
        nodes.add(outside);
        nodes.add(inside);
        return nodes;
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        return 0;
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        requireOne(occupants);
        List<Path> paths = new ArrayList<>(around.paths(occupants));
        AmountWeight wet = new AmountWeight(outside, WetStore.WATER, wall);
        HeatLaw halfWall = HeatLaw.conductance(2 * gear.middleAreaM2() / wall.resistance(0));
        paths.add(JunctionPath.of(
                id + " wall",
                Link.of(inside, "conduction", halfWall).weightedBy(wet),
                Link.of(outside, "conduction", halfWall).weightedBy(wet)));
        paths.add(WetSurfacePath.drying(
                id + " outside",
                outside,
                atPot.upright(
                        gear.outerAreaM2(),
                        gear.heightM(),
                        gear.outerDiameterM(),
                        Solids.wetTerracotta().emissivity().value()),
                PorousPot.DRYING.value() * gear.mostWaterKg()));
        WallPatch side = new WallPatch(
                        0,
                        gear.heightM(),
                        gear.outerAreaM2(),
                        gear.outerDiameterM(),
                        Solids.wetTerracotta().emissivity().value())
                .withOptics(SunOptics.of(Solids.wetTerracotta()));
        paths.addAll(atPot.sunOn(id, outside, side, Body.standing(id, gear.heightM(), gear.outerDiameterM())));
        return paths;
    }

    /** One vessel that stands and fits, or nothing. */
    private void requireOne(List<Occupant> occupants) {
        if (occupants.size() > 1) {
            throw new IllegalArgumentException("porous pot " + id + " with vessels "
                    + occupants.stream().map(Occupant::id).toList() + ": expected one vessel at a time");
        }
        for (Occupant vessel : occupants) {
            double diameter = 2 * vessel.vessel().profile().maxOuterRadiusM();
            if (vessel.posture() == Posture.LYING || gapM(diameter) < NARROWEST_GAP_M) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "vessel %s, %s, %.0f mm wide, in porous pot %s of %.0f mm: expected one that stands and is at least 1 mm"
                                + " narrower",
                        vessel.id(),
                        vessel.posture(),
                        1000 * diameter,
                        id,
                        1000 * gear.innerDiameterM()));
            }
        }
    }

    private double gapM(double diameterM) {
        return 0.5 * (gear.innerDiameterM() - diameterM);
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        requireOne(occupants);
        if (patch.orientation() == Orientation.END_FACING_DOWN) {
            return List.of(Face.whole("pot's bottom", List.of(bottom(patch))));
        }
        if (EndFaces.isEnd(patch)) {
            return around.faces(patch, vessel, occupants);
        }
        double below = Math.min(gear.heightM(), patch.highM()) - patch.lowM();
        double part = Math.min(1, Math.max(0, below) / (patch.highM() - patch.lowM()));
        List<Face> faces = new ArrayList<>();
        if (part > LEAST_PART) {
            faces.add(Face.whole("pot", gap(patch.part(part), vessel)).as(part));
        }
        if (1 - part > LEAST_PART) {
            double rest = 1 - part;
            around.faces(patch.part(rest), vessel, occupants).forEach(face -> faces.add(face.as(rest)));
        }
        return faces;
    }

    /** Across the ring of air: the law of an upright slot, at least conduction through a ring, and radiation between close faces. */
    private List<Link> gap(WallPatch patch, Occupant vessel) {
        double width = gapM(patch.diameterM());
        double height = Math.min(gear.heightM(), vessel.heightM());
        double ring = 2 * width / (patch.diameterM() * Math.log(gear.innerDiameterM() / patch.diameterM()));
        ConvectiveFilm film =
                ConvectiveFilm.free(patch.outerAreaM2() * ring, width, air, VerticalLayer.elSherbiny(height / width));
        double emissivity = RadiativeFilm.facing(
                patch.emissivity(), PorousPot.clay().emissivity().value());
        return List.of(
                Link.of(inside, "convection", film).scaledBy(Multipliers.GAP_FILM),
                Link.of(inside, "radiation", new RadiativeFilm(patch.outerAreaM2(), emissivity))
                        .scaledBy(Multipliers.RADIATION));
    }

    /** A thin layer of air and half the bottom. */
    private Link bottom(WallPatch patch) {
        double radiation = new RadiativeFilm(
                        1,
                        RadiativeFilm.facing(
                                patch.emissivity(),
                                PorousPot.clay().emissivity().value()))
                .describe(UNDER_K, UNDER_K)
                .coefficient();
        double gap = DryAir.thermalConductivity(UNDER_K) / PorousPot.UNDER.value() + radiation;
        double clay = PorousPot.clay().thermalConductivity().value() / (0.5 * gear.wallM());
        return Link.of(inside, "conduction", HeatLaw.conductance(patch.outerAreaM2() / (1 / gap + 1 / clay)));
    }

    @Override
    public Tended tended(String when, List<Tending> tendings, List<Occupant> occupants, OptionalDouble iceLeftKg) {
        requireOne(occupants);
        return WaterPoured.over(this, id, outside, gear.mostWaterKg(), when, tendings);
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        requireOne(occupants);
        List<String> notes = new ArrayList<>(around.notes(occupants));
        if (gear.waterKg() > 0 && !occupants.isEmpty()) {
            notes.add(String.format(
                    Locale.ROOT,
                    "in %s the pot is taken to hold %.0f g of water in its side at the start",
                    id,
                    1000 * gear.waterKg()));
        }
        return notes;
    }
}
