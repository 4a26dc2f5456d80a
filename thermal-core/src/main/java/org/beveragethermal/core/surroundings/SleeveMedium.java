/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.network.JunctionPath.Link;

/** A sleeve in one run. */
final class SleeveMedium extends ShellMedium {

    private static final double ZERO_CELSIUS_K = 273.15;

    private final Sleeve gear;

    SleeveMedium(String id, Sleeve gear, Medium outside) {
        super(id, outside, sections(id, gear));
        this.gear = gear;
    }

    private static List<Section> sections(String id, Sleeve gear) {
        double diameter = 2 * (gear.vessel().profile().maxOuterRadiusM() + gear.thicknessM());
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < SECTIONS; i++) {
            Span span = new Span(gear.heightM() * i / SECTIONS, gear.heightM() * (i + 1) / SECTIONS);
            sections.add(Section.of(
                    id + " " + (i + 1),
                    span.lowM(),
                    span.highM(),
                    span.areaM2(gear.vessel().profile()),
                    diameter,
                    gear.layers(),
                    gear.startK()));
        }
        return sections;
    }

    @Override
    String kind() {
        return "sleeve";
    }

    @Override
    Occupant seenFromOutside(List<Occupant> occupants) {
        return occupants.isEmpty() ? new Occupant(id(), gear.vessel()) : occupants.get(0);
    }

    @Override
    void requireFits(Occupant vessel) {
        if (!gear.fits(vessel.vessel())) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "vessel %s in sleeve %s: it is %.0f mm wide and %.0f mm high; expected %.0f mm wide within a tenth, and at"
                            + " least %.0f mm high",
                    vessel.id(),
                    id(),
                    2000 * vessel.vessel().profile().maxOuterRadiusM(),
                    1000 * vessel.lengthM(),
                    2000 * gear.vessel().profile().maxOuterRadiusM(),
                    1000 * gear.heightM()));
        }
    }

    @Override
    Span covered(Section section, Occupant vessel) {
        return new Span(section.lowM(), section.highM());
    }

    @Override
    List<Link> inner(Section section, Span span, WallPatch part, Occupant vessel) {
        Link whole = section.stack().innerSurface(gear.layers().get(0).contactResistance());
        double share = part.outerAreaM2() / section.stack().innerAreaM2();
        return List.of(Link.of(whole.end(), whole.mechanism(), whole.law().times(share))
                .scaledBy(Multipliers.SLEEVE_CONTACT));
    }

    @Override
    List<Face> end(WallPatch patch, Occupant vessel) {
        return outside().faces(patch, vessel, List.of(vessel));
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        List<String> notes = new ArrayList<>(super.notes(occupants));
        if (gear.startK() < ZERO_CELSIUS_K) {
            notes.add("the sleeve " + id()
                    + " is colder than 0 °C at the start: do not hold it against bare skin for long");
        }
        return notes;
    }
}
