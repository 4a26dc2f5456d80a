/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.jspecify.annotations.Nullable;

/**
 * A part of a patch of wall that has one surface temperature: what touches it, and how much of the patch it is.
 *
 * <p>A share changes with an amount during the run, and what touches the whole area is then scaled with it; a fixed part has
 * links for that part only.
 *
 * @param name what touches it, such as {@code water among ice}
 * @param links from media to the surface, for the area of the part
 * @param share part of the part that changes during the run, or null for all of it
 * @param part fixed part of the patch, above 0 to 1
 */
public record Face(String name, List<Link> links, @Nullable AmountWeight share, double part) {

    /**
     * Copies the links.
     *
     * @param name what touches it
     * @param links from media to the surface, for the area of the part, not modified
     * @param share part that changes during the run, or null for all of it
     * @param part fixed part of the patch, above 0 to 1
     * @throws IllegalArgumentException if the part is not above 0 and at most 1
     */
    public Face {
        links = List.copyOf(links);
        if (!(part > 0 && part <= 1)) {
            throw new IllegalArgumentException("part " + part + " of a patch: expected above 0 to 1");
        }
    }

    /**
     * A face whose share of the patch changes during the run, or that is all of it.
     *
     * @param name what touches it
     * @param links from media to the surface, for the whole area of the patch
     * @param share part of the patch, or null for all of it
     */
    public Face(String name, List<Link> links, @Nullable AmountWeight share) {
        this(name, links, share, 1);
    }

    /** The same face as a fixed part of a patch; its links are for that part already. */
    Face as(double fixedPart) {
        return new Face(name, links, share, fixedPart);
    }

    /**
     * What lies behind this face, of what lies behind the whole patch.
     *
     * @param behindPatch from what lies behind the patch to its surface
     * @return the link for this face's part
     */
    public Link behind(Link behindPatch) {
        return part == 1
                ? behindPatch
                : new Link(
                        behindPatch.end(),
                        behindPatch.mechanism(),
                        behindPatch.law().times(part),
                        behindPatch.multiplier(),
                        behindPatch.weight());
    }

    /**
     * A face that is the whole patch.
     *
     * @param name what touches it
     * @param links from media to the surface
     * @return the face
     */
    public static Face whole(String name, List<Link> links) {
        return new Face(name, links, null);
    }
}
