/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.materials.vessel.Profile;

/** A wet wrap in one run: one node, or one below and one above the height to which a dish feeds it. */
final class WetWrapMedium implements Medium {

    private static final double PURE = 1;

    private final String id;
    private final WetWrap gear;
    private final AirMedium around;
    private final AirMedium atWrap;
    private final List<Band> bands = new ArrayList<>();

    /** A part of the wrap, from one height to another above the end on which the vessel stands. */
    private record Band(Node node, double lowM, double highM, double dryKg, boolean fed) {

        /** Where it lies on a vessel. */
        Span on(Occupant vessel) {
            double length = vessel.lengthM();
            return Span.standing(Math.min(lowM, length), Math.min(highM, length), vessel);
        }

        /** How much of all of a vessel's side lies in it. */
        double areaM2(Occupant vessel) {
            return on(vessel).areaM2(vessel.vessel().profile());
        }
    }

    WetWrapMedium(String id, WetWrap gear, AirMedium around) {
        this.id = id;
        this.gear = gear;
        this.around = around;
        this.atWrap = around.atWetSurfaces(PURE);
        double fed = gear.fedM();
        double covered = gear.coveredM();
        if (fed > 0) {
            addBand("wrap in the dish", 0, fed, fed / covered, true);
        }
        if (fed < covered) {
            addBand("wrap", fed, covered, fed == 0 ? 1 : 1 - fed / covered, false);
        }
    }

    private void addBand(String name, double lowM, double highM, double part, boolean fed) {
        double capacity =
                part * gear.dryKg() * gear.material().specificHeatCapacity().value();
        double water = part * gear.waterKg();
        Node node = Node.of(id + " " + name, new WetStore(capacity, water), gear.startK(), water);
        bands.add(new Band(node, lowM, highM, part * gear.dryKg(), fed));
    }

    @Override
    public List<Node> nodes() {
        List<Node> nodes = new ArrayList<>(around.nodes());
        bands.forEach(band -> nodes.add(band.node()));
        return nodes;
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        return 0;
    }

    /** One vessel, or nothing. */
    private void requireOne(List<Occupant> occupants) {
        Occupant.requireAlone(occupants, "wet wrap " + id);
        if (gear.fedM() > 0 && occupants.stream().anyMatch(vessel -> vessel.posture() == Posture.LYING)) {
            throw new IllegalArgumentException("wet wrap " + id + " stands in a dish around vessel "
                    + occupants.get(0).id() + ", which lies: expected one that stands");
        }
        for (Occupant vessel : occupants) {
            if (gear.fedM() > 0 && gear.coveredM() > vessel.lengthM() * (1 + Span.LEAST_PART)) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "wet wrap %s in a dish covers %.3f m of vessel %s, %.3f m high: expected at most its height, for the water is"
                                + " shared out by it",
                        id,
                        gear.coveredM(),
                        vessel.id(),
                        vessel.lengthM()));
            }
        }
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        requireOne(occupants);
        List<Path> paths = new ArrayList<>(around.paths(occupants));
        for (Occupant vessel : occupants) {
            for (Band band : bands) {
                double area = band.areaM2(vessel);
                if (area > 0) {
                    paths.add(outside(band, vessel, area));
                    paths.addAll(sun(band, vessel, area));
                }
            }
        }
        return paths;
    }

    private List<Path> sun(Band band, Occupant vessel, double wallAreaM2) {
        Orientation orientation = vessel.posture() == Posture.LYING ? Orientation.LYING_WALL : Orientation.UPRIGHT_WALL;
        double outer = outerDiameterM(vessel);
        double area = wallAreaM2 * outer / diameterM(vessel);
        double high = Math.min(band.highM(), vessel.lengthM());
        WallPatch patch = new WallPatch(band.lowM(), high, area, outer, gear.emissivity(), orientation)
                .withOptics(SunOptics.of(gear.material()));
        return atWrap.sunOn(band.node().name(), band.node(), patch, vessel);
    }

    private static double diameterM(Occupant vessel) {
        return 2 * vessel.vessel().profile().maxOuterRadiusM();
    }

    private double outerDiameterM(Occupant vessel) {
        return diameterM(vessel) + 2 * gear.thicknessM();
    }

    private Path outside(Band band, Occupant vessel, double wallAreaM2) {
        double outer = outerDiameterM(vessel);
        double area = wallAreaM2 * outer / diameterM(vessel);
        List<Link> links = vessel.posture() == Posture.LYING
                ? atWrap.lying(area, outer, gear.emissivity())
                : atWrap.upright(area, vessel.heightM(), outer, gear.emissivity());
        String name = band.node().name() + " outside";
        return band.fed()
                ? WetSurfacePath.fed(name, band.node(), links)
                : WetSurfacePath.drying(name, band.node(), links, WetWrap.DRYING.value() * band.dryKg());
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        requireOne(occupants);
        if (EndFaces.isEnd(patch)) {
            return around.faces(patch, vessel, occupants);
        }
        Profile profile = vessel.vessel().profile();
        Span all = Span.of(patch, vessel);
        List<Face> faces = new ArrayList<>();
        double bare = 1;
        for (Band band : bands) {
            double part = band.on(vessel).partOf(all, profile);
            if (part > Span.LEAST_PART) {
                faces.add(Face.whole(
                                band.node().name(),
                                List.of(layer(band, vessel)
                                        .link(band.node(), part * patch.outerAreaM2())
                                        .scaledBy(Multipliers.WRAP_CONTACT)))
                        .as(part));
                bare -= part;
            }
        }
        if (bare > Span.LEAST_PART) {
            double rest = Math.min(1, bare);
            around.faces(patch.part(rest), vessel, occupants).forEach(face -> faces.add(face.as(rest)));
        }
        return faces;
    }

    private PorousLayer layer(Band band, Occupant vessel) {
        return new PorousLayer(
                gear.material().thermalConductivity().value(), gear.thicknessM(), gear.gapM(), band.areaM2(vessel));
    }

    /** Poured over the band that dries; what it holds is not known while no vessel is in it. */
    @Override
    public Tended tended(String when, List<Tending> tendings, List<Occupant> occupants, OptionalDouble iceLeftKg) {
        requireOne(occupants);
        Band band = bands.get(0);
        double most = occupants.stream()
                .mapToDouble(vessel -> layer(band, vessel).mostWaterKg())
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
        return WaterPoured.over(this, id, band.node(), most, when, tendings);
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        requireOne(occupants);
        List<String> notes = new ArrayList<>(around.notes(occupants));
        for (Occupant vessel : occupants) {
            for (Band band : bands) {
                double area = band.areaM2(vessel);
                double fraction =
                        area > 0 ? layer(band, vessel).waterFraction(band.node().amounts()[WetStore.WATER]) : 0;
                if (fraction > PorousLayer.FULL) {
                    notes.add(String.format(
                            Locale.ROOT,
                            "in %s the wrap is given more water than it holds, %.0f %% of its volume: some of it would drip off",
                            id,
                            100 * fraction));
                }
            }
        }
        if (gear.waterKg() > 0 && !occupants.isEmpty()) {
            notes.add("in " + id
                    + " how closely the wet wrap lies against the wall and how it conducts are own assumptions, known to a"
                    + " factor of two; water that runs off it is left out");
        }
        return notes;
    }
}
