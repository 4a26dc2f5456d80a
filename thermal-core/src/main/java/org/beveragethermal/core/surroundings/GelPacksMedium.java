/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.film.RadiativeFilm;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.store.LatentConduction;
import org.beveragethermal.core.store.LatentStore;
import org.beveragethermal.materials.air.DryAir;

/** Gel packs in one run: one node, a path to the room, and contact with a part of each wall. */
final class GelPacksMedium implements Medium {

    private static final double ZERO_CELSIUS_K = 273.15;
    /** The air of the gaps is taken at this temperature, and radiation across them is linear there [K]. */
    private static final double GAP_K = 278.15;
    /** A face of a patch smaller than this part of it is left out. */
    private static final double LEAST_PART = 1e-9;

    private final String id;
    private final GelPacks gear;
    private final AirMedium air;
    private final Node packs;

    GelPacksMedium(String id, GelPacks gear, double originS) {
        this.id = id;
        this.gear = gear;
        air = new AirMedium(id + " room", gear.room(), originS);
        packs = Node.of(id + " packs", LatentStore.ofMass(gear.material(), gear.massKg()), gear.startK());
    }

    @Override
    public List<Node> nodes() {
        return List.of(packs);
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        return 0;
    }

    /** From the mean of the packs through half their thickness, and resistances per area, over an area. */
    private LatentConduction from(double areaM2, double resistance) {
        return LatentConduction.of(gear.material(), areaM2 / (0.5 * gear.thicknessM()), resistance / areaM2);
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        double area = gear.faceAreaM2();
        List<Link> links = new ArrayList<>();
        links.add(Link.of(packs, "conduction", from(area, GelPacks.BAG.value() + 1 / gear.cover())));
        links.addAll(air.upright(
                area,
                gear.sideM(),
                Math.max(gear.sideM(), gear.girthM() / Math.PI),
                gear.material().thawed().emissivity().value()));
        return List.of(JunctionPath.of(id + " outer faces", links));
    }

    private static double sideAreaM2(List<Occupant> occupants) {
        return occupants.stream()
                .mapToDouble(occupant -> occupant.vessel().profile().outerSideAreaM2(0, occupant.lengthM()))
                .sum();
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        if (EndFaces.isEnd(patch)) {
            return air.faces(patch, vessel, occupants);
        }
        double touched = gear.touchedShare(sideAreaM2(occupants));
        List<Face> faces = new ArrayList<>();
        if (touched > LEAST_PART) {
            faces.add(Face.whole("gel packs", List.of(touching(touched * patch.outerAreaM2(), patch.emissivity())))
                    .as(touched));
        }
        if (1 - touched > LEAST_PART) {
            double rest = 1 - touched;
            air.faces(patch.part(rest), vessel, occupants).forEach(face -> faces.add(face.as(rest)));
        }
        return faces;
    }

    private Link touching(double areaM2, double emissivity) {
        double bag = gear.material().thawed().emissivity().value();
        double radiation = new RadiativeFilm(1, RadiativeFilm.facing(emissivity, bag))
                .describe(GAP_K, GAP_K)
                .coefficient();
        double gap = DryAir.thermalConductivity(GAP_K) / gear.gapM() + radiation;
        return Link.of(packs, "conduction", from(areaM2, GelPacks.BAG.value() + 1 / gap))
                .scaledBy(Multipliers.PACK_CONTACT);
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        List<String> notes = new ArrayList<>();
        if (!occupants.isEmpty()) {
            double area = sideAreaM2(occupants);
            notes.add(String.format(
                    Locale.ROOT,
                    "in %s the gel packs are taken to touch %.0f %% of the side of each vessel, with a gap of %.1f mm; times are"
                            + " good to a factor of two",
                    id,
                    100 * gear.touchedShare(area),
                    1000 * gear.gapM()));
            if (gear.asksTooMuch(area)) {
                notes.add("in " + id
                        + " the faces of the gel packs do not reach the part of the wall that was given: they"
                        + " touch no more than their own area");
            }
        }
        if (gear.startK() < ZERO_CELSIUS_K) {
            notes.add(
                    "in " + id
                            + " the gel packs are colder than 0 °C at the start: a drink may freeze at the wall, it swells by up to"
                            + " a tenth, and a full closed vessel may burst; a bag that leaks must not touch drinks or mouths of bottles");
        }
        return notes;
    }
}
