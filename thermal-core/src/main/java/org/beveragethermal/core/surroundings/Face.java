/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.jspecify.annotations.Nullable;

/**
 * A part of a patch of wall that has one surface temperature: what touches it, and how much of the patch it is.
 *
 * @param name what touches it, such as {@code water among ice}
 * @param links from media to the surface, for the whole area of the patch that is not fixed to be less
 * @param share part of the patch that varies with an amount, or null for all of it
 * @param part fixed part of the patch [-], above 0, at most 1; the links are for that part alone
 */
public record Face(String name, List<Link> links, @Nullable AmountWeight share, double part) {

    /**
     * Copies the links.
     *
     * @param name what touches it
     * @param links from media to the surface, not modified
     * @param share part of the patch that varies with an amount, or null for all of it
     * @param part fixed part of the patch [-]
     * @throws IllegalArgumentException if the part is not above 0 and at most 1
     */
    public Face {
        links = List.copyOf(links);
        if (!(part > 0 && part <= 1)) {
            throw new IllegalArgumentException(
                    "face " + name + " is " + part + " of its patch: expected more than 0 and at most 1");
        }
    }

    /**
     * A face that may vary with an amount.
     *
     * @param name what touches it
     * @param links from media to the surface, for the whole area of the patch, not modified
     * @param share part of the patch, or null for all of it
     */
    public Face(String name, List<Link> links, @Nullable AmountWeight share) {
        this(name, links, share, 1);
    }

    /**
     * What lies behind this face of a patch.
     *
     * @param whole from what lies behind to the outer surface of the whole patch
     * @return the same link for the fixed part of the patch that this face is
     */
    public Link behind(Link whole) {
        return part == 1
                ? whole
                : Link.of(whole.end(), whole.mechanism(), whole.law().times(part));
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
