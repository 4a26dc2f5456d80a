/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.conduction.LayerStack;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.store.LatentConduction;
import org.beveragethermal.core.store.LatentStore;
import org.beveragethermal.materials.air.DryAir;

/** A closed box in one run: its air, its walls, and packs if there are any. */
final class FoamBoxMedium implements Medium {

    /** Vessels radiate to the middle of the innermost cell, which is therefore this part of the wall: half of it is passed over. */
    private static final double SKIN = 0.01;

    private final String id;
    private final FoamBox gear;
    private final Medium outside;
    private final Occupant body;
    private final List<WallPatch> outerPatches;
    private final boolean floorPasses;
    private final Node air;
    private final LayerStack walls;
    private final List<Node> packs;
    private final AirMedium inside;

    FoamBoxMedium(String id, FoamBox gear, Medium outside) {
        this.id = id;
        this.gear = gear;
        this.outside = outside;
        body = Body.standing(id, gear.outerHeightM(), gear.outerGirthM() / Math.PI);
        WallPatch floor = end(0, Orientation.END_FACING_DOWN);
        floorPasses = !outside.faces(floor, body, List.of(body)).isEmpty();
        WallPatch sides = new WallPatch(
                        0,
                        gear.outerHeightM(),
                        gear.outerSidesM2(),
                        gear.outerGirthM() / Math.PI,
                        gear.wall().emissivity())
                .withOptics(optics());
        WallPatch lid = end(gear.outerHeightM(), Orientation.END_FACING_UP);
        outerPatches = floorPasses ? List.of(sides, lid, floor) : List.of(sides, lid);
        double capacity = gear.innerVolumeM3()
                * DryAir.density(gear.startK(), DryAir.STANDARD_PRESSURE_PA)
                * DryAir.specificHeatCapacity(gear.startK());
        air = Node.sensible(id + " air", capacity, gear.startK());
        Layer wall = gear.wall();
        double skin = SKIN * wall.thicknessM();
        walls = LayerStack.plane(gear.shapeFactorM(floorPasses) * wall.thicknessM(), 0)
                .layer(wall.name() + " face", skin, wall.conductivity(), wall.volumetricHeatCapacity(), 1)
                .layer(
                        wall.name(),
                        wall.thicknessM() - skin,
                        wall.conductivity(),
                        wall.volumetricHeatCapacity(),
                        wall.cells())
                .build(id, gear.startK());
        packs = gear.hasPacks()
                ? List.of(Node.of(
                        id + " packs",
                        LatentStore.ofMass(gear.packs().material(), gear.packs().massKg()),
                        gear.packs().startK()))
                : List.of();
        inside = new AirMedium(
                new AirMedium.Ends(air, walls.nodes().get(0), air),
                Air.AirState.STILL_AND_DRY,
                Footing.insulating(),
                List.of(),
                List.of(),
                List.of());
    }

    private WallPatch end(double heightM, Orientation orientation) {
        double diameter = 2 * Math.sqrt(gear.outerLidM2() / Math.PI);
        return new WallPatch(
                        heightM,
                        heightM,
                        gear.outerLidM2(),
                        diameter,
                        gear.wall().emissivity(),
                        orientation)
                .withOptics(optics());
    }

    private SunOptics optics() {
        return SunOptics.opaque(gear.wall().solarAbsorptance());
    }

    @Override
    public List<Node> nodes() {
        List<Node> nodes = new ArrayList<>(outside.nodes());
        nodes.add(air);
        nodes.addAll(walls.nodes());
        nodes.addAll(packs);
        return List.copyOf(nodes);
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        return 0;
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        requireRoom(occupants);
        List<Path> paths = new ArrayList<>(outside.paths(List.of(body)));
        ConvectiveFilm film = ConvectiveFilm.free(
                gear.innerAreaM2(floorPasses),
                gear.heightM(),
                Fluid.air(DryAir.STANDARD_PRESSURE_PA),
                VerticalPlate.CHURCHILL_CHU);
        paths.add(JunctionPath.of(
                id + " inside", Link.of(air, "convection", film).scaledBy(Multipliers.AIR_FILM), walls.innerSurface()));
        paths.addAll(walls.paths());
        double outerArea =
                outerPatches.stream().mapToDouble(WallPatch::outerAreaM2).sum();
        for (int i = 0; i < outerPatches.size(); i++) {
            WallPatch patch = outerPatches.get(i);
            Link whole = walls.outerSurface();
            Link behind = Link.of(whole.end(), whole.mechanism(), whole.law().times(patch.outerAreaM2() / outerArea));
            String name = id + " outside " + (i + 1);
            outside.faces(patch, body, List.of(body)).forEach(face -> paths.add(face.joinedTo(behind, name)));
        }
        packs.forEach(node -> paths.add(packSurface(node)));
        return paths;
    }

    /** Both faces of all packs, from their middle through bag and air. */
    private Path packSurface(Node node) {
        GelPacks packed = gear.packs();
        double area = 2 * packed.faceAreaM2();
        List<Link> links = new ArrayList<>();
        links.add(Link.of(
                node,
                "conduction",
                LatentConduction.of(
                        packed.material(), area / (0.5 * packed.thicknessM()), GelPacks.BAG.value() / area)));
        links.addAll(inside.upright(
                area,
                packed.sideM(),
                packed.sideM(),
                packed.material().thawed().emissivity().value()));
        return JunctionPath.of(id + " pack faces", links);
    }

    private void requireRoom(List<Occupant> occupants) {
        double filled = 0;
        for (Occupant vessel : occupants) {
            boolean lies = vessel.posture() == Posture.LYING;
            if (vessel.heightM() > gear.heightM() || (lies && vessel.lengthM() > gear.lengthM())) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "vessel %s in box %s: it is %.0f mm long%s; expected less than the box's inner height of %.0f mm, or"
                                + " length of %.0f mm lying",
                        vessel.id(),
                        id,
                        1000 * vessel.lengthM(),
                        lies ? " and lies" : "",
                        1000 * gear.heightM(),
                        1000 * gear.lengthM()));
            }
            filled += vessel.vessel().profile().outerVolumeM3(0, vessel.lengthM());
        }
        if (filled > gear.volumeForVesselsM3()) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "vessels %s in box %s: they take %.1f L; expected at most its %.1f L%s",
                    occupants.stream().map(Occupant::id).toList(),
                    id,
                    1000 * filled,
                    1000 * gear.volumeForVesselsM3(),
                    gear.hasPacks() ? ", what the packs leave" : ""));
        }
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        return inside.faces(patch, vessel, occupants);
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        List<String> notes = new ArrayList<>(outside.notes(List.of(body)));
        if (occupants.size() > 1) {
            notes.add(
                    "in " + id
                            + " all vessels have the same air and walls: one in a corner follows the outside sooner, one in the middle later");
        }
        return notes;
    }
}
