/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
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
import org.beveragethermal.materials.vessel.Profile;

/** A porous pot in one run: a node for its inside, and one for its outside, which holds the water. */
final class PorousPotMedium implements Medium {

    private static final double PURE = 1;
    /** The air under the base is taken at this temperature [K]. */
    private static final double UNDER_K = 290;

    private final String id;
    private final PorousPot gear;
    private final AirMedium around;
    private final AirMedium atPot;
    private final AnnularGap gap;
    private final Node inside;
    private final Node outside;
    private final PorousLayer wall;

    PorousPotMedium(String id, PorousPot gear, AirMedium around) {
        this.id = id;
        this.gear = gear;
        this.around = around;
        this.atPot = around.atWetSurfaces(PURE);
        this.gap = new AnnularGap(
                id,
                0.5 * gear.innerDiameterM(),
                gear.heightM(),
                PorousPot.clay().emissivity().value(),
                Fluid.air(around.state().pressurePa()));
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
        Occupant.requireAlone(occupants, "porous pot " + id);
        occupants.forEach(vessel -> gap.requireFits(vessel, "porous pot"));
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
        Profile profile = vessel.vessel().profile();
        Span all = Span.of(patch, vessel);
        Span beside = all.and(Span.standing(0, gear.heightM(), vessel));
        double part = beside.partOf(all, profile);
        List<Face> faces = new ArrayList<>();
        if (part > Span.LEAST_PART) {
            faces.add(Face.whole("pot", gap.links(inside, beside, patch.part(part), vessel))
                    .as(part));
        }
        double rest = 1 - part;
        if (rest > Span.LEAST_PART) {
            around.faces(patch.part(rest), vessel, occupants).forEach(face -> faces.add(face.as(rest)));
        }
        return faces;
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
        occupants.forEach(vessel -> notes.addAll(gap.notes(vessel)));
        return notes;
    }
}
