/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.core.store.MeltingBlocks;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;

/**
 * A bucket of ice without added water in one run: ice, and the water that it turns into.
 *
 * <p>Theory manual, equation (6.1).
 */
final class BareIceMedium implements Medium {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double WATER_DENSITY = 1000;
    private static final double WATER_HEAT_CAPACITY = 4200;
    /** Laminar free convection: the coefficient grows as side^(−1/4) while a block shrinks, the area falls as side². */
    private static final double LAMINAR_AREA_EXPONENT = 1.75;

    private static final int FACES_OF_A_CUBE = 6;

    private final String id;
    private final BareIce gear;
    private final Node ice;
    private final Node water;
    private final Fluid fluid = Fluid.of(Water.liquid());
    private final IcePile pile;
    private final AirMedium air;
    private final MeltStore store;
    /** Blocks, ice and gathered melt water at the beginning of the stretch. */
    private final double blocks;

    private final double iceKg;
    private final double waterKg;
    private final List<String> tendingNotes;

    BareIceMedium(String id, BareIce gear, double originS) {
        this.id = id;
        this.gear = gear;
        iceKg = gear.iceKg();
        waterKg = 0;
        blocks = IceCount.wholeBlocks(gear.block(), iceKg);
        tendingNotes = List.of();
        air = new AirMedium(id + " room", gear.room(), originS);
        ice = Node.of(
                id + " ice",
                IceStore.of(gear.iceKg(), gear.blockSideM(), WATER_HEAT_CAPACITY * gear.iceKg())
                        .showingSurplus()
                        .countingBlocks(blocks),
                gear.iceK(),
                gear.iceKg(),
                gear.blockSideM(),
                blocks);
        String name = gear.isDrained() ? "drained water" : "melt water";
        store = new MeltStore(gear.iceKg());
        water = Node.of(id + " " + name, store, ZERO_CELSIUS_K, 0);
        IcePile.PileLiquid liquid =
                gear.isDrained() ? null : new IcePile.PileLiquid(water, name, fluid, Agitation.STILL);
        pile = new IcePile(id, gear.bucket(), air, ice, liquid, gear.contact());
    }

    /** The same bucket after somebody tended it. */
    private BareIceMedium(BareIceMedium that, double blocks, double iceKg, double waterKg, List<String> tendingNotes) {
        this.id = that.id;
        this.gear = that.gear;
        this.ice = that.ice;
        this.water = that.water;
        this.pile = that.pile;
        this.air = that.air;
        this.store = that.store;
        this.blocks = blocks;
        this.iceKg = iceKg;
        this.waterKg = waterKg;
        this.tendingNotes = tendingNotes;
    }

    @Override
    public Tended tended(String when, List<Tending> tendings, List<Occupant> occupants, OptionalDouble iceLeftKg) {
        double left = iceLeftKg.orElse(iceKg);
        double melt = waterKg + iceKg - left;
        double side = Math.cbrt(left / (Ice.density(ZERO_CELSIUS_K) * blocks));
        IceCount count = new IceCount(gear.block(), blocks, side);
        for (Tending tending : tendings) {
            if (tending instanceof Tending.AddIce added) {
                left += added.massKg();
                count = count.plus(added.massKg());
            } else if (tending instanceof Tending.PourOff poured) {
                melt -= poured.massKg();
            }
        }
        melt = Math.max(0, melt);
        double holds = WATER_DENSITY * FillLevel.capacityM3(gear.bucket(), occupants);
        double runOff = gear.isDrained()
                ? 0
                : Math.max(0, Math.min(left + melt - holds, melt - (1 - gear.solidFraction()) * holds));
        List<String> notes = runOff > 0
                ? List.of(String.format(Locale.ROOT, "ice %s: %.2f kg of water run over the rim %s", id, runOff, when))
                : List.of();
        return new Tended(
                new BareIceMedium(this, count.blocks(), left, melt - runOff, notes),
                new PileChange(id, when, gear, ice, water, store, List.copyOf(tendings), runOff, count.blocks()));
    }

    private PileGeometry geometry(List<Occupant> occupants) {
        double whole = blocks * Ice.density(ZERO_CELSIUS_K) * gear.block().volumeM3();
        return PileGeometry.ofLeft(
                gear.bucket(),
                whole,
                gear.blockSideM(),
                iceKg,
                waterKg,
                WATER_DENSITY,
                gear.solidFraction(),
                !gear.isDrained(),
                occupants);
    }

    @Override
    public List<Node> nodes() {
        return List.of(ice, water);
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        return vessel.wettedM(geometry(occupants).level().depthM());
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        PileGeometry geometry = geometry(occupants);
        List<Path> paths = new ArrayList<>();
        paths.add(new ThawPath(
                id + " melting",
                ice,
                water,
                0,
                geometry,
                Ice.density(ZERO_CELSIUS_K),
                Ice.latentHeatOfFusion().value()));
        paths.addAll(pile.roomPaths(geometry));
        if (!gear.isDrained()) {
            paths.add(pile.liquidToIce(geometry, iceFilm(geometry), innerConductance(geometry), LAMINAR_AREA_EXPONENT));
        }
        return paths;
    }

    private ConvectiveFilm iceFilm(PileGeometry geometry) {
        double side = gear.blockSideM();
        double area = FACES_OF_A_CUBE * geometry.blocks() * side * side * IceWaterBath.WETTED_ICE_FRACTION.value();
        return ConvectiveFilm.free(area, side, fluid, VerticalPlate.CHURCHILL_CHU);
    }

    private double innerConductance(PileGeometry geometry) {
        return MeltingBlocks.innerConductance(
                geometry.blocks(), gear.blockSideM(), Ice.thermalConductivity(ZERO_CELSIUS_K));
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        return pile.faces(patch, vessel, occupants, geometry(occupants));
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        List<String> notes = new ArrayList<>(tendingNotes);
        for (Occupant vessel : occupants) {
            notes.add(String.format(
                    Locale.ROOT,
                    "in %s the ice is taken to touch %.0f %% of the wall of %s beside it; times are good to a factor of two",
                    id,
                    100 * gear.contact().fraction(vessel.vessel().profile().maxOuterRadiusM()),
                    vessel.id()));
        }
        if (geometry(occupants).level().overflows()) {
            notes.add("ice " + id
                    + ": the vessels push ice over the rim; it is taken up to the rim and the rest still counted");
        }
        return notes;
    }
}
