/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.correlation.VerticalLayer;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.film.RadiativeFilm;
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
    /** A vessel leaves at least as much air beside it [m]. */
    private static final double NARROWEST_GAP_M = 1e-4;

    private static final double BOTH = 0.5;

    private final WalledCooler gear;
    private final Boundary roomAir;
    private final Fluid fluid;

    WalledCoolerMedium(String id, WalledCooler gear, double originS) {
        super(id, new AirMedium(id + " room", gear.room(), originS), sections(id, gear));
        this.gear = gear;
        roomAir = Boundary.varying(id + " opening", gear.room().airK().startingAt(originS));
        fluid = Fluid.air(gear.room().pressurePa());
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
    Occupant seenFromOutside(List<Occupant> occupants) {
        return Body.standing(id(), gear.heightM(), gear.outerDiameterM());
    }

    @Override
    void requireFits(Occupant vessel) {
        if (vessel.posture() == Posture.LYING) {
            throw new IllegalArgumentException("vessel " + vessel.id() + " lying in cooler " + id()
                    + ": expected one that stands upright or on its neck");
        }
        double width = 2 * vessel.vessel().profile().maxOuterRadiusM();
        if (width > gear.innerDiameterM() - 2 * NARROWEST_GAP_M) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "vessel %s in cooler %s: it is %.1f mm wide; expected less than the cooler's %.1f mm",
                    vessel.id(),
                    id(),
                    1000 * width,
                    1000 * gear.innerDiameterM()));
        }
    }

    @Override
    Span covered(Section section, Occupant vessel) {
        return vessel.posture() == Posture.INVERTED
                ? new Span(vessel.lengthM() - section.highM(), vessel.lengthM() - section.lowM())
                : new Span(section.lowM(), section.highM());
    }

    /** Height of the vessel that stands in the cooler [m]. */
    private double depthM(Occupant vessel) {
        return Math.min(gear.heightM(), vessel.lengthM());
    }

    /** Area of the opening around the vessel [m²]. */
    private double openingM2(Occupant vessel) {
        double depth = depthM(vessel);
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
        double height = span.highM() - span.lowM();
        double radius = span.areaM2(vessel.vessel().profile()) / (2 * Math.PI * height);
        double inner = 0.5 * gear.innerDiameterM();
        double gap = Math.max(NARROWEST_GAP_M, inner - radius);
        double area = part.outerAreaM2();
        // Conduction through an annulus, on the area of the vessel, over that through a plane layer.
        double curved = gap / (radius * Math.log1p(gap / radius));
        Node wall = section.stack().nodes().get(0);
        double emissivity =
                RadiativeFilm.facing(part.emissivity(), gear.layers().get(0).emissivity(), Math.min(1, radius / inner));
        ConvectiveFilm air =
                ConvectiveFilm.free(area * curved, gap, fluid, VerticalLayer.elSherbiny(depthM(vessel) / gap));
        return List.of(
                Link.of(wall, "convection", air).scaledBy(Multipliers.GAP_FILM),
                Link.of(wall, "radiation", new RadiativeFilm(area, emissivity)).scaledBy(Multipliers.RADIATION),
                Link.of(roomAir, "open top", openTop(vessel, height / depthM(vessel)))
                        .scaledBy(Multipliers.OPEN_TOP));
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
            double depth = depthM(vessel);
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
}
