/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.vessel.Profile;

/** A cooler with a gap of air in one run. */
final class WalledCoolerMedium extends ShellMedium {

    /** The heat capacity of the air that is exchanged is taken at this temperature [K]; ±20 K change it by ±7 %. */
    private static final double EXCHANGED_K = 293.15;

    private static final double BOTH = 0.5;

    private final WalledCooler gear;
    private final Boundary roomAir;
    private final AnnularGap gap;

    WalledCoolerMedium(String id, WalledCooler gear, double originS) {
        super(id, new AirMedium(id + " room", gear.room(), originS), sections(id, gear));
        this.gear = gear;
        roomAir = Boundary.varying(id + " opening", gear.room().airK().startingAt(originS));
        gap = new AnnularGap(
                id,
                0.5 * gear.innerDiameterM(),
                gear.heightM(),
                gear.layers().get(0).emissivity(),
                Fluid.air(gear.room().pressurePa()));
    }

    private static List<Section> sections(String id, WalledCooler gear) {
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < SECTIONS; i++) {
            double low = gear.heightM() * i / SECTIONS;
            double high = gear.heightM() * (i + 1) / SECTIONS;
            sections.add(Section.of(
                    id + " " + (i + 1),
                    low,
                    high,
                    Math.PI * gear.innerDiameterM() * (high - low),
                    gear.outerDiameterM(),
                    gear.layers(),
                    gear.startK()));
        }
        return sections;
    }

    @Override
    String kind() {
        return "cooler";
    }

    @Override
    Occupant seenFromOutside(List<Occupant> occupants) {
        return Body.standing(id(), gear.heightM(), gear.outerDiameterM());
    }

    @Override
    void requireFits(Occupant vessel) {
        gap.requireFits(vessel, kind());
    }

    @Override
    Span covered(Section section, Occupant vessel) {
        return Span.standing(section.lowM(), section.highM(), vessel);
    }

    /** Area of the opening around the vessel [m²]. */
    private double openingM2(Occupant vessel) {
        double depth = gap.depthM(vessel);
        double neck = vessel.vessel()
                .profile()
                .outerRadiusM(vessel.posture() == Posture.INVERTED ? vessel.lengthM() - depth : depth);
        double inner = 0.5 * gear.innerDiameterM();
        return Math.PI * (inner * inner - neck * neck);
    }

    /** What the room gives through the opening to one side of a part of the gap. */
    private HeatLaw openTop(Occupant vessel, double part) {
        Profile profile = vessel.vessel().profile();
        double width = gear.innerDiameterM() - 2 * profile.maxOuterRadiusM();
        double capacity =
                DryAir.density(EXCHANGED_K, gear.room().pressurePa()) * DryAir.specificHeatCapacity(EXCHANGED_K);
        return new OpenTop(BOTH * part * openingM2(vessel), width, WalledCooler.STABLE_TOP.value(), capacity);
    }

    @Override
    List<Link> inner(Section section, Span span, WallPatch part, Occupant vessel) {
        double share = span.heightM() / gap.depthM(vessel);
        List<Link> links = new ArrayList<>(gap.links(section.stack().nodes().get(0), span, part, vessel));
        links.add(Link.of(roomAir, "open top", openTop(vessel, share)).scaledBy(Multipliers.OPEN_TOP));
        return links;
    }

    @Override
    List<Face> end(WallPatch patch, Occupant vessel) {
        if (patch.orientation() != Orientation.END_FACING_DOWN) {
            return outside().faces(patch, vessel, List.of(vessel));
        }
        Node floor = sections().get(0).stack().nodes().get(0);
        return List.of(Face.whole(
                "floor",
                List.of(Link.of(
                        floor, "conduction", HeatLaw.conductance(WalledCooler.FLOOR.value() * patch.outerAreaM2())))));
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        List<Path> paths = new ArrayList<>(super.paths(occupants));
        for (Occupant vessel : occupants) {
            double depth = gap.depthM(vessel);
            for (int i = 0; i < sections().size(); i++) {
                Section section = sections().get(i);
                double height = Math.min(section.highM(), depth) - section.lowM();
                if (height > 0) {
                    paths.add(DirectPath.of(
                                    id() + " open top " + (i + 1),
                                    roomAir,
                                    section.stack().nodes().get(0),
                                    "open top",
                                    openTop(vessel, height / depth))
                            .scaledBy(Multipliers.OPEN_TOP));
                }
            }
        }
        return paths;
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        List<String> notes = new ArrayList<>(super.notes(occupants));
        occupants.forEach(vessel -> notes.addAll(gap.notes(vessel)));
        return notes;
    }
}
