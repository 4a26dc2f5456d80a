/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.surroundings.Face;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Orientation;
import org.beveragethermal.core.surroundings.SunOptics;
import org.beveragethermal.core.surroundings.WallPatch;

/**
 * An end of a vessel as it stands: its outer surface, and what lies behind that.
 *
 * @param name how the names of its paths begin
 * @param patch its outer surface, heights counted from the end on which the vessel stands
 * @param behind from what lies behind to the outer surface
 * @param inside paths inside the vessel that are there only where the end passes heat
 */
record VesselEnd(String name, WallPatch patch, Link behind, List<Path> inside) {

    /** A part of an end that lies, smaller than this part of the whole, is left out. */
    private static final double LEAST_PART = 1e-9;

    VesselEnd {
        inside = List.copyOf(inside);
    }

    /** An end behind which nothing depends on what is outside. */
    static VesselEnd of(String name, WallPatch patch, Link behind) {
        return new VesselEnd(name, patch, behind, List.of());
    }

    /** An end of a vessel that lies, divided at a waterline above the vessel's lowest point into what is below and above it. */
    static List<VesselEnd> lying(String name, LyingDisc disc, double emissivity, Link behind, double waterlineM) {
        List<VesselEnd> parts = new ArrayList<>();
        double line = Math.max(disc.bottomM(), Math.min(disc.topM(), waterlineM));
        addPart(parts, name, disc, disc.bottomM(), line, emissivity, behind);
        addPart(parts, name, disc, line, disc.topM(), emissivity, behind);
        return parts;
    }

    private static void addPart(
            List<VesselEnd> parts,
            String name,
            LyingDisc disc,
            double lowM,
            double highM,
            double emissivity,
            Link behind) {
        double part = disc.part(lowM, highM);
        if (part > LEAST_PART) {
            double area = part * disc.areaM2();
            double diameter = 2 * disc.radiusM();
            parts.add(of(
                    name,
                    new WallPatch(lowM, highM, area, diameter, emissivity, Orientation.END_FACING_SIDEWAYS),
                    Link.of(behind.end(), behind.mechanism(), behind.law().times(part))));
        }
    }

    /** The same end with another answer to sunlight; what passes through an end of glass is given to its surface. */
    VesselEnd with(SunOptics optics) {
        return new VesselEnd(name, patch.withOptics(optics.asOpaque()), behind, inside);
    }

    /** The same end with paths inside the vessel that are there only where it passes heat. */
    VesselEnd with(List<Path> more) {
        return new VesselEnd(name, patch, behind, more);
    }

    /** One path for each of its faces; none where it stands on something that insulates. */
    List<Path> paths(Medium medium, Occupant occupant, List<Occupant> occupants) {
        List<Path> paths = new ArrayList<>();
        for (Face face : medium.faces(patch, occupant, occupants)) {
            paths.add(face.joinedTo(behind, name));
        }
        if (!paths.isEmpty()) {
            paths.addAll(inside);
        }
        return paths;
    }
}
