/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.surroundings.Face;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Occupant;
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

    VesselEnd {
        inside = List.copyOf(inside);
    }

    /** An end behind which nothing depends on what is outside. */
    static VesselEnd of(String name, WallPatch patch, Link behind) {
        return new VesselEnd(name, patch, behind, List.of());
    }

    /** One path for each of its faces; none where it stands on something that insulates. */
    List<Path> paths(Medium medium, Occupant occupant, List<Occupant> occupants) {
        List<Path> paths = new ArrayList<>();
        for (Face face : medium.faces(patch, occupant, occupants)) {
            List<Link> links = new ArrayList<>();
            links.add(behind);
            links.addAll(face.links());
            AmountWeight share = face.share();
            paths.add(JunctionPath.of(
                    name + ", " + face.name(),
                    share == null
                            ? links
                            : links.stream().map(link -> link.weightedBy(share)).toList()));
        }
        if (!paths.isEmpty()) {
            paths.addAll(inside);
        }
        return paths;
    }
}
