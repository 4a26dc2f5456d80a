/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.conduction.AxisymmetricBlock;
import org.beveragethermal.core.conduction.AxisymmetricBlock.Facet;
import org.beveragethermal.core.conduction.AxisymmetricBlock.Side;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.materials.vessel.Profile;

/** A hole in the ground in one run. */
final class EarthMedium implements Medium {

    private static final double ZERO_CELSIUS_K = 273.15;

    private final String id;
    private final Earth earth;
    private final AirMedium air;
    private final List<Node> nodes;
    private final List<Path> paths = new ArrayList<>();
    private final List<Facet> hole;

    EarthMedium(String id, Earth earth, double originS) {
        this.id = id;
        this.earth = earth;
        air = new AirMedium(id + " above", earth.above(), originS);
        if (earth.model() == Earth.Model.RADIAL) {
            EarthShells shells = new EarthShells(id, earth, originS);
            nodes = shells.nodes();
            paths.addAll(shells.paths());
            hole = shells.facets();
        } else {
            AxisymmetricBlock block = EarthBlock.of(id, earth, originS, EarthBlock.Grid.of(earth.model()));
            nodes = block.nodes();
            paths.addAll(block.pathsScaledBy(Multipliers.EARTH_CONDUCTION));
            block.topFacets().forEach(facet -> paths.add(surface(facet)));
            hole = block.holeFacets();
        }
    }

    /** A ring of the surface, with the film of a level plate. */
    private Path surface(Facet facet) {
        List<Link> links = new ArrayList<>();
        links.add(Link.of(facet.ring(), "conduction", HeatLaw.conductance(1 / facet.kelvinPerWatt())));
        links.addAll(air.level(
                facet.areaM2(),
                4 * facet.areaM2() / Earth.SURFACE_M,
                earth.solid().emissivity().value()));
        return JunctionPath.of(facet.ring().name() + " surface", links);
    }

    @Override
    public List<Node> nodes() {
        return nodes;
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        earth.requireFits(id, vessel, 2 * vessel.vessel().profile().maxOuterRadiusM());
        Occupant.requireAlone(occupants, "hole " + id);
        return 0;
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        return paths;
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        earth.requireFits(id, vessel, patch.diameterM());
        return switch (patch.orientation()) {
            case UPRIGHT_WALL -> side(patch, vessel, occupants);
            case END_FACING_DOWN -> end(patch, Side.HOLE_BOTTOM, 0);
            case END_FACING_UP ->
                earth.topM() > 0
                        ? end(patch, Side.HOLE_TOP, earth.bottomM() - earth.topM() - patch.highM())
                        : air.faces(patch, vessel, occupants);
            case LYING_WALL, END_FACING_SIDEWAYS ->
                throw new IllegalStateException("hole " + id + ": a vessel that lies has been refused");
        };
    }

    private List<Face> side(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        Profile profile = vessel.vessel().profile();
        Span all = Span.of(patch, vessel);
        List<Face> faces = new ArrayList<>();
        for (Facet facet : hole) {
            if (facet.side() == Side.HOLE_WALL) {
                Span beside =
                        all.and(Span.standing(earth.bottomM() - facet.toM(), earth.bottomM() - facet.fromM(), vessel));
                double part = beside.partOf(all, profile);
                if (part > Span.LEAST_PART) {
                    double area = part * patch.outerAreaM2();
                    faces.add(face(facet, faces.size(), behindWall(area, beside.heightM(), facet), part));
                }
            }
        }
        Span above = Span.standing(earth.bottomM(), Math.max(earth.bottomM(), vessel.lengthM()), vessel);
        double dry = above.partOf(all, profile);
        if (dry > Span.LEAST_PART) {
            air.faces(patch.part(dry), vessel, occupants).forEach(face -> faces.add(face.as(dry)));
        }
        return faces;
    }

    /** Contact, backfill between wall and hole, and half a ring, in series [K/W]. */
    private double behindWall(double areaM2, double heightM, Facet facet) {
        double radius = Math.min(earth.radiusM(), areaM2 / (2 * Math.PI * heightM));
        double backfill = Math.log(earth.radiusM() / radius) / (2 * Math.PI * earth.backfill() * heightM);
        double ring = facet.kelvinPerWatt() * (facet.toM() - facet.fromM()) / heightM;
        return 1 / (earth.contact() * areaM2) + backfill + ring;
    }

    /** An end and the ground across from it, over a thickness of backfill; rings share the end as they share the hole. */
    private List<Face> end(WallPatch patch, Side side, double backfillM) {
        double section = Math.PI * earth.radiusM() * earth.radiusM();
        List<Face> faces = new ArrayList<>();
        for (Facet facet : hole) {
            if (facet.side() == side) {
                double part = Math.min(1, facet.areaM2() / section);
                double area = part * patch.outerAreaM2();
                double resistance = (1 / earth.contact() + Math.max(0, backfillM) / earth.backfill()) / area
                        + facet.kelvinPerWatt();
                faces.add(face(facet, faces.size(), resistance, part));
            }
        }
        return faces;
    }

    private static Face face(Facet facet, int index, double kelvinPerWatt, double part) {
        Link link = Link.of(facet.ring(), "conduction", HeatLaw.conductance(1 / kelvinPerWatt))
                .scaledBy(Multipliers.EARTH_CONTACT);
        return Face.whole("earth " + (index + 1), List.of(link)).as(part);
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        List<String> notes = new ArrayList<>();
        for (Occupant vessel : occupants) {
            notes.add(String.format(
                    Locale.ROOT,
                    "in %s earth is taken to lie against %s with a contact of %.0f W/(m² K) and loosely round it; both, and how"
                            + " the earth conducts, are known roughly",
                    id,
                    vessel.id(),
                    earth.contact()));
            notes.add("in " + id + " sun on the ground and water that dries from it are left out; wash " + vessel.id()
                    + " before it is opened");
        }
        if (earth.model() == Earth.Model.RADIAL) {
            notes.add("in " + id + " the ground does not feel the air above it in the radial model");
        }
        if (earth.start().coldestK() < ZERO_CELSIUS_K) {
            notes.add("in " + id + " the ground may be frozen; freezing and thawing of its water are left out");
        }
        return notes;
    }
}
