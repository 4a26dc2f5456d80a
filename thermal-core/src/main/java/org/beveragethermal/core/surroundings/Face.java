/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.GivenHeat;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.jspecify.annotations.Nullable;

/**
 * A part of a patch of wall that has one surface temperature: what touches it, and how much of the patch it is.
 *
 * <p>A share changes with an amount during the run, and what touches the whole area is then scaled with it; a fixed part has
 * links for that part only.
 *
 * @param name what touches it, such as {@code water among ice}
 * @param links from media to the surface, for the whole area of the patch that is not fixed to be less
 * @param share part of the patch that varies with an amount, or null for all of it
 * @param part fixed part of the patch [-], above 0, at most 1; the links are for that part alone
 * @param light sunlight that passes through the patch into what lies behind the wall, for the same area as the links, or null
 */
public record Face(
        String name,
        List<Link> links,
        @Nullable AmountWeight share,
        double part,
        @Nullable PassingLight light) {

    /**
     * Copies the links.
     *
     * @param name what touches it
     * @param links from media to the surface, not modified
     * @param share part of the patch that varies with an amount, or null for all of it
     * @param part fixed part of the patch [-]
     * @param light sunlight that passes through the patch, or null
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
     * A face through which no light passes.
     *
     * @param name what touches it
     * @param links from media to the surface, not modified
     * @param share part of the patch that varies with an amount, or null for all of it
     * @param part fixed part of the patch [-]
     * @throws IllegalArgumentException if the part is not above 0 and at most 1
     */
    public Face(String name, List<Link> links, @Nullable AmountWeight share, double part) {
        this(name, links, share, part, null);
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
     * The same face as a fixed part of a patch, for gear that touches the rest otherwise.
     *
     * @param fixedPart part of the patch [-], above 0, at most 1; the links are for that part already
     * @return a new face
     * @throws IllegalArgumentException if the part is not above 0 and at most 1
     */
    public Face as(double fixedPart) {
        return new Face(name, links, share, fixedPart, light);
    }

    /** The same face as a part of a patch that varies with an amount. */
    Face weightedBy(AmountWeight newShare) {
        return new Face(name, links, newShare, part, light);
    }

    /** The same face with light that passes through it. */
    Face passing(PassingLight newLight) {
        return new Face(name, links, share, part, newLight);
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

    /**
     * What joins the inside of a wall to what touches it, through one surface temperature.
     *
     * @param behind from the inside to the surface, for the whole area of the patch
     * @param patchName how the path's name begins
     * @return the path, weighted by the share if there is one
     */
    public Path joinedTo(Link behind, String patchName) {
        AmountWeight weight = share;
        List<Link> all = Stream.concat(Stream.of(part(behind)), links.stream())
                .map(link -> weight == null ? link : link.weightedBy(weight))
                .toList();
        return JunctionPath.of(patchName + ", " + name, all);
    }

    /**
     * What brings sunlight that passes through the wall to a node behind it.
     *
     * @param behind who takes it up
     * @param portion portion of the light that this node takes up [-], 0 to 1
     * @param pathName how the path's name begins
     * @return the path, weighted by the share if there is one; empty if no light passes
     * @throws IllegalArgumentException if the portion is outside its range
     */
    public Optional<Path> lightTo(Node behind, double portion, String pathName) {
        if (!(portion >= 0 && portion <= 1)) {
            throw new IllegalArgumentException(
                    "portion of light into " + behind.name() + " " + portion + ": expected 0 to 1");
        }
        PassingLight passing = light;
        if (passing == null) {
            return Optional.empty();
        }
        GivenHeat path = GivenHeat.of(
                        pathName + " light into " + behind.name() + ", " + name,
                        passing.sun(),
                        behind,
                        PassingLight.MECHANISM,
                        passing.watts().times(portion))
                .scaledBy(Multipliers.SUN);
        AmountWeight weight = share;
        return Optional.of(weight == null ? path : path.weightedBy(weight));
    }

    /** The same link for the fixed part of the patch that this face is. */
    private Link part(Link whole) {
        return part == 1
                ? whole
                : new Link(
                        whole.end(),
                        whole.mechanism(),
                        whole.law().times(part),
                        whole.multiplier(),
                        whole.weight(),
                        whole.strength());
    }
}
