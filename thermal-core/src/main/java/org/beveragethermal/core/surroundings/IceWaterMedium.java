/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.correlation.Sphere;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.internal.FilmFit;
import org.beveragethermal.core.internal.HeatFit;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.core.store.MeltingBlocks;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.Ice;

/** A bath of ice and water in one run: pack water, clear water and ice. */
final class IceWaterMedium implements Medium {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double WATER_DENSITY = 1000;
    private static final double WATER_HEAT_CAPACITY = 4200;
    /** The densest water is looked for between these [K]. */
    private static final double COLDER_THAN_DENSEST_K = 275.15;

    private static final double WARMER_THAN_DENSEST_K = 279.15;

    /** Laminar free convection: the coefficient grows as side^(−1/4) while a block shrinks, the area falls as side². */
    private static final double LAMINAR_AREA_EXPONENT = 1.75;

    private final String id;
    private final IceWaterBath bath;
    private final FilmFit water = FilmFit.of(Water.liquid());
    private final SmoothFunction enthalpy = HeatFit.specificEnthalpyOf(Water.liquid());
    private final Fluid film = Fluid.of(Water.liquid());
    private final AirMedium air;
    private final PackWater packWater;
    private final Node pack;
    private final Node clear;
    private final Node ice;
    private final double densestK;
    /** Ice and water at the beginning of the stretch. */
    private final double iceKg;

    private final double waterKg;
    private final List<String> tendingNotes;

    IceWaterMedium(String id, IceWaterBath bath, double originS) {
        this.id = id;
        this.bath = bath;
        iceKg = bath.iceKg();
        waterKg = bath.waterKg();
        tendingNotes = List.of();
        air = new AirMedium(id + " room", bath.room(), originS);
        double solid = bath.solidFraction();
        packWater = new PackWater(bath.iceKg() + bath.waterKg(), (1 - solid) / solid);
        double packKg = packWater.at(bath.iceKg());
        LiquidStore store = LiquidStore.ofVaryingMass(Water.liquid());
        pack = Node.of(id + " water among ice", store, bath.waterK(), packKg);
        clear = Node.of(id + " clear water", store, bath.waterK(), bath.waterKg() - packKg);
        ice = Node.of(
                id + " ice",
                IceStore.of(bath.iceKg(), bath.block().shortestM(), WATER_HEAT_CAPACITY * bath.waterKg())
                        .countingBlocks(bath.blocks()),
                bath.iceK(),
                bath.iceKg(),
                bath.block().shortestM(),
                bath.blocks());
        densestK =
                new BrentSolver(1e-9).solve(100, water.density()::slope, COLDER_THAN_DENSEST_K, WARMER_THAN_DENSEST_K);
    }

    /** The same bath after somebody tended it. */
    private IceWaterMedium(IceWaterMedium that, double iceKg, double waterKg, List<String> tendingNotes) {
        this.id = that.id;
        this.bath = that.bath;
        this.air = that.air;
        this.pack = that.pack;
        this.clear = that.clear;
        this.ice = that.ice;
        this.densestK = that.densestK;
        this.iceKg = iceKg;
        this.waterKg = waterKg;
        this.tendingNotes = tendingNotes;
        this.packWater = new PackWater(iceKg + waterKg, that.packWater.gapsPerIce());
    }

    @Override
    public Tended tended(String when, List<Tending> tendings, List<Occupant> occupants, OptionalDouble iceLeftKg) {
        double left = iceLeftKg.orElse(iceKg);
        double water = iceKg + waterKg - left;
        for (Tending tending : tendings) {
            if (tending instanceof Tending.AddIce added) {
                left += added.massKg();
            } else if (tending instanceof Tending.AddWater added) {
                water += added.massKg();
            } else if (tending instanceof Tending.PourOff poured) {
                new ValidityRange("mass of water poured off " + id + " " + when, 0, left + water, "kg")
                        .require(poured.massKg(), "ice and water that are there");
                water -= poured.massKg();
            }
        }
        // As long as it is not known how much has melted, at least as much as a bath needs.
        double total = left + water;
        left = Math.min(left, total / (1 + IceWaterBath.LEAST_WATER_PER_ICE));
        water = total - left;
        boolean adds = tendings.stream()
                .anyMatch(tending -> tending instanceof Tending.AddIce || tending instanceof Tending.AddWater);
        double runOff = adds ? runOffKg(left, water, occupants) : 0;
        List<String> notes = new ArrayList<>();
        notes.add("bath " + id + ": what is done to it " + when + " is taken to mix all of its water");
        if (runOff > 0) {
            notes.add(String.format(Locale.ROOT, "bath %s: %.2f kg of water run over the rim %s", id, runOff, when));
        }
        IceWaterMedium after = new IceWaterMedium(this, left, water - runOff, notes);
        return new Tended(
                after,
                new IceWaterChange(
                        id, when, bath, pack, clear, ice, List.copyOf(tendings), runOff, after.packWater, enthalpy));
    }

    /** Until the bath, afloat or as a pack on the floor, stands at the rim. */
    private double runOffKg(double iceLeftKg, double water, List<Occupant> occupants) {
        double holds = WATER_DENSITY * FillLevel.capacityM3(bath.bucket(), occupants);
        double afloat = iceLeftKg + water - holds;
        double standing = water - (1 - bath.solidFraction()) * holds;
        return Math.max(0, Math.min(afloat, standing));
    }

    /** Where ice is plentiful the pack stands on the floor and only the gaps of the pack hold water. */
    private FillLevel level(List<Occupant> occupants) {
        double floating = (iceKg + waterKg) / WATER_DENSITY;
        double standing = waterKg / WATER_DENSITY / (1 - bath.solidFraction());
        return FillLevel.of(bath.bucket(), Math.min(floating, standing), occupants);
    }

    private PackGeometry geometry(FillLevel level) {
        return new PackGeometry(level.depthM(), level.freeAreaM2(), bath.solidFraction());
    }

    @Override
    public List<Node> nodes() {
        return List.of(pack, clear, ice);
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        return vessel.wettedM(level(occupants).depthM());
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        FillLevel level = level(occupants);
        PackGeometry geometry = geometry(level);
        List<Path> paths = new ArrayList<>();
        paths.add(melting(geometry));
        paths.add(DirectPath.of(
                        id + " penetrative convection",
                        clear,
                        pack,
                        "convection",
                        new LayerExchange(level.freeAreaM2(), water, densestK))
                .scaledBy(Multipliers.PACK_EXCHANGE));
        paths.add(DirectPath.of(
                id + " layers", clear, pack, "conduction and stirring", HeatLaw.conductance(mixing(level))));
        Bucket bucket = bath.bucket();
        paths.add(BathWalls.side(id + " side wall at ice", pack, bucket, level, air, byIce(geometry.packPart())));
        paths.add(BathWalls.side(id + " side wall below ice", clear, bucket, level, air, byIce(geometry.clearPart())));
        paths.add(BathWalls.surface(
                id + " surface of ice", pack, bucket, level, air, byIce(geometry.packPartOfSurface())));
        paths.add(BathWalls.surface(
                id + " surface of water", clear, bucket, level, air, byIce(geometry.clearPartOfSurface())));
        return paths;
    }

    /** Conduction over half the depth, and the water that stirring carries round through the free cross-section. */
    private double mixing(FillLevel level) {
        double conduction = water.conductivity().at(densestK) * level.freeAreaM2() / (0.5 * level.depthM());
        double circulation = WATER_DENSITY
                * WATER_HEAT_CAPACITY
                * level.freeAreaM2()
                * bath.agitation().speedMPerS();
        return conduction + circulation;
    }

    private Path melting(PackGeometry geometry) {
        double length = bath.block().filmLengthM(bath.block().shortestM());
        HeatLaw perArea = ConvectiveFilm.free(1, length, film, VerticalPlate.CHURCHILL_CHU)
                .withStream(bath.agitation().speedMPerS(), length, Sphere.WHITAKER);
        MeltingBlocks law = new MeltingBlocks(
                bath.blocks(),
                bath.block(),
                IceWaterBath.WETTED_ICE_FRACTION.value(),
                LAMINAR_AREA_EXPONENT,
                Ice.density(ZERO_CELSIUS_K),
                Ice.thermalConductivity(ZERO_CELSIUS_K),
                Ice.latentHeatOfFusion().value(),
                perArea,
                geometry.wetPart());
        return new MeltPath(id + " melting", pack, ice, clear, law, packWater, enthalpy, densestK);
    }

    private AmountWeight byIce(SmoothFunction factor) {
        return new AmountWeight(ice, IceStore.MASS, factor);
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        FillLevel level = level(occupants);
        Footing footing = EndFaces.footing(vessel, level.depthM(), bath.footing());
        if (EndFaces.isCovered(patch, footing)) {
            return List.of();
        }
        double wetted = vessel.wettedM(level.depthM());
        double heldAt = vessel.heldAtM(level.depthM());
        if (patch.middleM() > wetted) {
            return air.faces(patch, vessel, occupants);
        }
        PackGeometry geometry = geometry(level);
        if (EndFaces.isEnd(patch)) {
            double height = heldAt + patch.middleM();
            return List.of(
                    end("water among ice", pack, patch, vessel, footing, geometry.packAt(height)),
                    end("clear water", clear, patch, vessel, footing, geometry.clearAt(height)));
        }
        HeatLaw outside = BathWalls.film(patch, wetted, film, bath.agitation());
        return List.of(
                face("water among ice", pack, outside, geometry.packPartOf(heldAt, wetted)),
                face("clear water", clear, outside, geometry.clearPartOf(heldAt, wetted)));
    }

    private Face end(String name, Node water, WallPatch patch, Occupant vessel, Footing footing, SmoothFunction share) {
        return new Face(
                name, List.of(EndFaces.inWater(water, patch, vessel, footing, film, bath.agitation())), byIce(share));
    }

    private Face face(String name, Node water, HeatLaw outside, SmoothFunction share) {
        return new Face(
                name, List.of(Link.of(water, "convection", outside).scaledBy(Multipliers.WATER_FILM)), byIce(share));
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        List<String> notes = new ArrayList<>(tendingNotes);
        if (level(occupants).overflows()) {
            notes.add("bath " + id
                    + ": the vessels push water over the rim; the level is taken at the rim and the water"
                    + " that ran over is still counted");
        }
        if (iceKg / (Ice.density(ZERO_CELSIUS_K) * bath.solidFraction())
                > bath.bucket().volumeM3()) {
            notes.add("bath " + id + ": the pack of ice heaps up above the rim of the bucket");
        }
        return notes;
    }
}
