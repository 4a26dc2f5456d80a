/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.correlation.Sphere;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.internal.LiquidFit;
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
    private final LiquidFit water = LiquidFit.of(Water.liquid());
    private final Fluid film = Fluid.of(Water.liquid());
    private final AirMedium air;
    private final PackWater packWater;
    private final Node pack;
    private final Node clear;
    private final Node ice;
    private final double densestK;

    IceWaterMedium(String id, IceWaterBath bath, double originS) {
        this.id = id;
        this.bath = bath;
        air = new AirMedium(id + " room", bath.room(), originS);
        double solid = bath.solidFraction();
        packWater = new PackWater(bath.iceKg() + bath.waterKg(), (1 - solid) / solid);
        double packKg = packWater.at(bath.iceKg());
        LiquidStore store = LiquidStore.ofVaryingMass(Water.liquid());
        pack = Node.of(id + " water among ice", store, bath.waterK(), packKg);
        clear = Node.of(id + " clear water", store, bath.waterK(), bath.waterKg() - packKg);
        ice = Node.of(
                id + " ice",
                IceStore.of(bath.iceKg(), bath.blockSideM(), WATER_HEAT_CAPACITY * bath.waterKg()),
                bath.iceK(),
                bath.iceKg(),
                bath.blockSideM());
        densestK =
                new BrentSolver(1e-9).solve(100, water.density()::slope, COLDER_THAN_DENSEST_K, WARMER_THAN_DENSEST_K);
    }

    /** Where ice is plentiful the pack stands on the floor and only the gaps of the pack hold water. */
    private FillLevel level(List<Occupant> occupants) {
        double floating = (bath.iceKg() + bath.waterKg()) / WATER_DENSITY;
        double standing = bath.waterKg() / WATER_DENSITY / (1 - bath.solidFraction());
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
        return Math.min(vessel.heightM(), level(occupants).depthM());
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
        HeatLaw perArea = ConvectiveFilm.free(1, bath.blockSideM(), film, VerticalPlate.CHURCHILL_CHU)
                .withStream(bath.agitation().speedMPerS(), bath.blockSideM(), Sphere.WHITAKER);
        double density = Ice.density(ZERO_CELSIUS_K);
        double blocks = bath.iceKg() / (density * Math.pow(bath.blockSideM(), 3));
        MeltingBlocks law = new MeltingBlocks(
                blocks,
                bath.blockSideM(),
                IceWaterBath.WETTED_ICE_FRACTION.value(),
                LAMINAR_AREA_EXPONENT,
                density,
                Ice.thermalConductivity(ZERO_CELSIUS_K),
                Ice.latentHeatOfFusion().value(),
                perArea,
                geometry.wetPart());
        return new MeltPath(id + " melting", pack, ice, clear, law, packWater, water.specificEnthalpy(), densestK);
    }

    private AmountWeight byIce(SmoothFunction factor) {
        return new AmountWeight(ice, IceStore.MASS, factor);
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        if (EndFaces.isCovered(patch, bath.footing())) {
            return List.of();
        }
        FillLevel level = level(occupants);
        double wetted = Math.min(vessel.heightM(), level.depthM());
        if (patch.middleM() > wetted) {
            return air.faces(patch, vessel, occupants);
        }
        PackGeometry geometry = geometry(level);
        if (EndFaces.isEnd(patch)) {
            double height = patch.middleM();
            return List.of(
                    end("water among ice", pack, patch, vessel, geometry.packAt(height)),
                    end("clear water", clear, patch, vessel, geometry.clearAt(height)));
        }
        HeatLaw outside = BathWalls.film(patch, wetted, film, bath.agitation());
        return List.of(
                face("water among ice", pack, outside, geometry.packPartOf(wetted)),
                face("clear water", clear, outside, geometry.clearPartOf(wetted)));
    }

    private Face end(String name, Node water, WallPatch patch, Occupant vessel, SmoothFunction share) {
        return new Face(
                name,
                List.of(EndFaces.inWater(water, patch, vessel, bath.footing(), film, bath.agitation())),
                byIce(share));
    }

    private Face face(String name, Node water, HeatLaw outside, SmoothFunction share) {
        return new Face(
                name, List.of(Link.of(water, "convection", outside).scaledBy(Multipliers.WATER_FILM)), byIce(share));
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        return level(occupants).overflows()
                ? List.of("bath " + id
                        + ": the vessels push water over the rim; the level is taken at the rim and the water"
                        + " that ran over is still counted")
                : List.of();
    }
}
