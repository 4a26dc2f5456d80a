/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.conduction.LayerStack;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.materials.vessel.Profile;

/**
 * Walls all round a part of a vessel's side, open at the top, in other surroundings, in one run: stacks of layers one on the other. How
 * their inner surface meets the vessel is up to the gear; their outer surface is a wall in the surroundings outside.
 */
abstract class ShellMedium implements Medium {

    /** Shells are cut into as many sections along their height, so that they do not carry heat from end to end. */
    static final int SECTIONS = 6;
    /** A face of a patch smaller than this part of it is left out. */
    private static final double LEAST_PART = 1e-9;

    private final String id;
    private final Medium outside;
    private final List<Section> sections;

    /**
     * A part of the height of a shell.
     *
     * @param lowM lower edge above the shell's lower end [m]
     * @param highM upper edge [m]
     * @param stack its layers
     * @param outer its outer surface
     */
    record Section(double lowM, double highM, LayerStack stack, WallPatch outer) {

        /** Layers around something of an inner area, counted from a height above the shell's lower end. */
        static Section of(
                String name,
                double lowM,
                double highM,
                double innerAreaM2,
                double outerDiameterM,
                List<Layer> layers,
                double startK) {
            double height = highM - lowM;
            LayerStack stack = LayerStack.cylinder(height, innerAreaM2 / (2 * Math.PI * height))
                    .layers(layers)
                    .build(name, startK);
            double emissivity = layers.get(layers.size() - 1).emissivity();
            return new Section(
                    lowM, highM, stack, new WallPatch(lowM, highM, stack.outerAreaM2(), outerDiameterM, emissivity));
        }
    }

    ShellMedium(String id, Medium outside, List<Section> sections) {
        this.id = id;
        this.outside = outside;
        this.sections = List.copyOf(sections);
    }

    final String id() {
        return id;
    }

    final Medium outside() {
        return outside;
    }

    final List<Section> sections() {
        return sections;
    }

    @Override
    public final List<Node> nodes() {
        return Stream.concat(
                        outside.nodes().stream(),
                        sections.stream().flatMap(section -> section.stack().nodes().stream()))
                .toList();
    }

    @Override
    public final double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        return 0;
    }

    /** What stands in the surroundings outside, as they see it. */
    abstract Occupant seenFromOutside(List<Occupant> occupants);

    /** Refuses a vessel that does not fit. */
    abstract void requireFits(Occupant vessel);

    /** Which part of a vessel's height, above its own base, a section covers: from and to [m]. */
    abstract Span covered(Section section, Occupant vessel);

    /** From what touches a part of a patch that a section covers; the patch has the area of the part. */
    abstract List<Link> inner(Section section, Span span, WallPatch part, Occupant vessel);

    /** What touches an end. */
    abstract List<Face> end(WallPatch patch, Occupant vessel);

    /**
     * A part of a vessel's height.
     *
     * @param lowM from [m]
     * @param highM to [m]
     */
    record Span(double lowM, double highM) {

        static final Span NONE = new Span(0, 0);

        Span and(Span other) {
            double low = Math.max(lowM, other.lowM);
            double high = Math.min(highM, other.highM);
            return high > low ? new Span(low, high) : NONE;
        }

        double areaM2(Profile profile) {
            return highM > lowM ? profile.outerSideAreaM2(lowM, highM) : 0;
        }
    }

    /** The only one. */
    final void requireAlone(List<Occupant> occupants) {
        if (occupants.size() > 1) {
            throw new IllegalArgumentException("vessels "
                    + occupants.stream().map(Occupant::id).toList() + " in " + id
                    + ": it goes around one vessel at a time; expected a piece of gear for each");
        }
        occupants.forEach(this::requireFits);
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        requireAlone(occupants);
        Occupant seen = seenFromOutside(occupants);
        List<Path> paths = new ArrayList<>(outside.paths(List.of(seen)));
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            paths.addAll(section.stack().paths());
            if (i + 1 < sections.size()) {
                paths.addAll(section.stack()
                        .endToEnd(id + " along " + (i + 1), sections.get(i + 1).stack()));
            }
            String name = id + " outside " + (i + 1);
            outside.faces(seen.standing(section.outer()), seen, List.of(seen))
                    .forEach(face -> paths.add(face.joinedTo(section.stack().outerSurface(), name)));
        }
        return paths;
    }

    /** Where a patch of the side lies on the vessel itself. */
    static Span onVessel(WallPatch patch, Occupant vessel) {
        return switch (vessel.posture()) {
            case UPRIGHT -> new Span(patch.lowM(), patch.highM());
            case INVERTED -> new Span(vessel.lengthM() - patch.highM(), vessel.lengthM() - patch.lowM());
            // Bands go round the axis, and a patch does not say where along it: each has the mean of all.
            case LYING -> new Span(0, vessel.lengthM());
        };
    }

    @Override
    public final List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        requireAlone(occupants);
        if (EndFaces.isEnd(patch)) {
            return end(patch, vessel);
        }
        Profile profile = vessel.vessel().profile();
        Span all = onVessel(patch, vessel);
        double whole = all.areaM2(profile);
        List<Face> faces = new ArrayList<>();
        double rest = 1;
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            Span span = all.and(covered(section, vessel));
            double part = Math.min(1, span.areaM2(profile) / whole);
            if (part > LEAST_PART) {
                faces.add(Face.whole(id + " " + (i + 1), inner(section, span, patch.part(part), vessel))
                        .as(part));
                rest -= part;
            }
        }
        if (rest > LEAST_PART) {
            double bare = rest;
            outside.faces(patch.part(bare), vessel, occupants).forEach(face -> faces.add(face.as(bare * face.part())));
        }
        return faces;
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        return outside.notes(List.of(seenFromOutside(occupants)));
    }
}
