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
            Layer outermost = layers.get(layers.size() - 1);
            WallPatch outer = new WallPatch(lowM, highM, stack.outerAreaM2(), outerDiameterM, outermost.emissivity())
                    .withOptics(SunOptics.opaque(outermost.solarAbsorptance()));
            return new Section(lowM, highM, stack, outer);
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

    /** What it is called. */
    abstract String kind();

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

    /** The only one. */
    final void requireAlone(List<Occupant> occupants) {
        Occupant.requireAlone(occupants, kind() + " " + id);
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

    @Override
    public final List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        requireAlone(occupants);
        if (EndFaces.isEnd(patch)) {
            return end(patch, vessel);
        }
        Profile profile = vessel.vessel().profile();
        Span all = Span.of(patch, vessel);
        List<Face> faces = new ArrayList<>();
        double rest = 1;
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            Span span = all.and(covered(section, vessel));
            double part = span.partOf(all, profile);
            if (part > Span.LEAST_PART) {
                faces.add(Face.whole(id + " " + (i + 1), inner(section, span, patch.part(part), vessel))
                        .as(part));
                rest -= part;
            }
        }
        if (rest > Span.LEAST_PART) {
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
