/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.correlation.Sphere;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.store.BrineStore;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.materials.liquid.Brine;
import org.beveragethermal.materials.solid.Ice;

/** Ice in brine that is mixed all the time, in one run: one node of brine, one of ice. */
final class SaltedIceMedium implements Medium {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double HEAT_CAPACITY = 3500;
    private static final int FACES_OF_A_CUBE = 6;

    private final String id;
    private final SaltedIce gear;
    private final AirMedium air;
    private final BrineStore store = BrineStore.create();
    private final Node brine;
    private final Node ice;
    private final Fluid fluid;
    private final IcePile pile;

    SaltedIceMedium(String id, SaltedIce gear, double originS) {
        this.id = id;
        this.gear = gear;
        air = new AirMedium(id + " room", gear.room(), originS);
        brine = Node.of(id + " brine", store, gear.waterK(), gear.waterKg(), 0, gear.saltKg());
        ice = Node.of(
                id + " ice",
                IceStore.of(gear.iceKg(), gear.blockSideM(), HEAT_CAPACITY * gear.waterKg())
                        .showingSurplus(),
                gear.iceK(),
                gear.iceKg(),
                gear.blockSideM());
        fluid = Fluid.of(Brine.ofMassFraction(gear.meanFraction()));
        IcePile.PileLiquid liquid = new IcePile.PileLiquid(brine, "brine", fluid, gear.agitation());
        pile = new IcePile(id, gear.bucket(), air, ice, liquid, gear.contact());
    }

    private PileGeometry geometry(List<Occupant> occupants) {
        return PileGeometry.of(
                gear.bucket(),
                gear.iceKg(),
                gear.blockSideM(),
                gear.waterKg() + gear.saltKg(),
                SaltedIce.liquidDensity(gear.meanFraction()),
                gear.solidFraction(),
                true,
                occupants);
    }

    @Override
    public List<Node> nodes() {
        return List.of(brine, ice);
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        return vessel.wettedM(geometry(occupants).level().depthM());
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        PileGeometry geometry = geometry(occupants);
        List<Path> paths = new ArrayList<>();
        paths.add(new BrineMeltPath(id + " melting in brine", brine, ice, geometry, iceFilm(geometry), store));
        paths.add(new ThawPath(
                id + " melting",
                ice,
                brine,
                BrineStore.WATER,
                geometry,
                Ice.density(ZERO_CELSIUS_K),
                Ice.latentHeatOfFusion().value()));
        paths.add(new DissolvingPath(id + " dissolving", brine, gear.dissolvingS()));
        paths.addAll(pile.roomPaths(geometry));
        return paths;
    }

    private HeatLaw iceFilm(PileGeometry geometry) {
        double side = gear.blockSideM();
        double area = FACES_OF_A_CUBE * geometry.blocks() * side * side * IceWaterBath.WETTED_ICE_FRACTION.value();
        return ConvectiveFilm.free(area, side, fluid, VerticalPlate.CHURCHILL_CHU)
                .withStream(gear.agitation().speedMPerS(), side, Sphere.WHITAKER);
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        return pile.faces(patch, vessel, occupants, geometry(occupants));
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        List<String> notes = new ArrayList<>();
        notes.add("salted ice " + id
                + " is predicted as mixed: all salt that dissolves is spread evenly through its water; without"
                + " stirring expect less, at worst the prediction with ineffective salt");
        notes.add(SaltedIce.CAUTION);
        double dissolves = gear.dissolvableKg();
        if (gear.saltKg() > dissolves) {
            notes.add(String.format(
                    Locale.ROOT,
                    "in %s at least %.2f kg of the %.2f kg of salt stay undissolved, even when all ice has melted",
                    id,
                    gear.saltKg() - dissolves,
                    gear.saltKg()));
        }
        if (geometry(occupants).level().overflows()) {
            notes.add("salted ice " + id
                    + ": the vessels push ice or brine over the rim; the level is taken at the rim and what ran over is still"
                    + " counted");
        }
        return notes;
    }
}
