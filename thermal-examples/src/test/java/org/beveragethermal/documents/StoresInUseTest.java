/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.conduction.AxisymmetricBlock;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.curve.CoolingRate;
import org.beveragethermal.core.film.CondensingFilm;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.EvaporatingFilm;
import org.beveragethermal.core.film.Film;
import org.beveragethermal.core.film.FittedFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.layered.FilmRun;
import org.beveragethermal.core.layered.Slice;
import org.beveragethermal.core.layered.StratifiedLiquid;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.BrineStore;
import org.beveragethermal.core.store.DilutedStore;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.store.IceInDrinkPath;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.core.store.LatentConduction;
import org.beveragethermal.core.store.LatentStore;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.core.store.MeltingBlocks;
import org.beveragethermal.core.store.MeltingPath;
import org.beveragethermal.core.store.PouredStore;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Composition;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.solid.Solids;
import org.junit.jupiter.api.Test;

/** Stores, films, blocks and stratified liquids as parts of networks of a user's own. */
class StoresInUseTest {

    private static final double ZERO = 273.15;
    private static final Beverage WINE = Beverage.wine(percentByVolume(12));

    private static double temperatureK(Store store, double enthalpyJ, double... amounts) {
        StoreState state = new StoreState(store.amountCount());
        store.evaluate(enthalpyJ, amounts, 0, state);
        return state.temperatureK;
    }

    @Test
    void storesTellTheTemperatureThatTheyWereGiven() {
        BrineStore brine = BrineStore.create();
        double[] salted = new double[3];
        salted[BrineStore.WATER] = 1;
        salted[BrineStore.DISSOLVED] = 0.1;
        assertThat(temperatureK(brine, brine.enthalpyJ(ZERO - 3, salted), salted))
                .isCloseTo(ZERO - 3, within(1e-6));
        PouredStore glass = PouredStore.of(WINE);
        assertThat(temperatureK(glass, glass.enthalpyJ(ZERO + 9, 0.15), 0.15)).isCloseTo(ZERO + 9, within(1e-4));
        LatentStore pack = LatentStore.ofMass(Solids.gelPack(), 0.4);
        assertThat(temperatureK(pack, pack.enthalpyJ(ZERO - 18))).isCloseTo(ZERO - 18, within(LatentStore.ACCURACY_K));
        assertThat(pack.meltedFraction(ZERO - 18)).isZero();
    }

    @Test
    void wineIsSlushBelowItsOnset() {
        FreezingStore store = FreezingStore.ofMass(WINE, 0.75);
        double onset = store.freezingOnsetK();
        assertThat(onset).isBetween(ZERO - 7, ZERO - 4);
        assertThat(store.iceFraction(onset + 0.1)).isZero();
        assertThat(store.iceFraction(onset - 2)).isPositive();
        assertThat(PouredStore.of(WINE).freezingOnsetK()).isCloseTo(onset, within(0.05));
    }

    @Test
    void meltWaterThinsADrinkAndRaisesItsFreezingPoint() {
        DilutedStore store = DilutedStore.ofMass(WINE, 0.2);
        assertThat(store.freezingDepressionK(0.1)).isLessThan(store.freezingDepressionK(0));
        Node drink = Node.of("drink", store, ZERO + 8, 0.2);
        Node ice = Node.of("ice", IceStore.of(0.04, 0.03, 1000), ZERO - 5, 0.04, 0.03);
        IceInDrinkPath melting = IceInDrinkPath.of("ice in it", drink, ice, 2, HeatLaw.conductance(1.5), "ice film");
        Trajectory run = NetworkSolver.standard().solve(Network.of(List.of(drink, ice), List.of(melting)), 900);
        double left = run.amount(ice, IceStore.MASS, 900);
        assertThat(left).isLessThan(0.04);
        assertThat(run.amount(drink, DilutedStore.MASS, 900) + left).isCloseTo(0.24, within(1e-9));
        assertThat(run.temperatureK(drink, 900)).isLessThan(ZERO + 8);
    }

    @Test
    void whatABathLosesMeltsIce() {
        double side = 0.025;
        double mass = 20 * Ice.density(ZERO) * side * side * side;
        MeltingBlocks law = new MeltingBlocks(
                20,
                side,
                0.75,
                1.75,
                Ice.density(ZERO),
                Ice.thermalConductivity(ZERO),
                Ice.latentHeatOfFusion().value(),
                HeatLaw.conductance(300),
                MeltingBlocks.ALL_WET);
        Node bath = Node.of("bath", LiquidStore.ofVaryingMass(Water.liquid()), ZERO + 15, 2.0);
        Node ice = Node.of("ice", IceStore.of(mass, side, 4200 * mass), ZERO, mass, side);
        Trajectory run = NetworkSolver.standard()
                .solve(Network.of(List.of(bath, ice), List.of(MeltingPath.of("melting", bath, ice, law, "film"))), 300);
        double melted = mass - run.amount(ice, IceStore.MASS, 300);
        double given =
                2.0 * Water.liquid().specificHeatCapacity(ZERO + 12) * (15 - (run.temperatureK(bath, 300) - ZERO));
        // The melt takes 334 J/g and warms up to the bath: within some per cent all that the water lost.
        assertThat(melted * (334e3 + 4200 * (run.temperatureK(bath, 300) - ZERO)))
                .isCloseTo(given, within(0.03 * given));
    }

    @Test
    void aPackConductsBetterFrozen() {
        HeatLaw pack = LatentConduction.of(Solids.gelPack(), 0.5, 0.2);
        HeatFlow frozen = new HeatFlow();
        HeatFlow thawed = new HeatFlow();
        pack.evaluate(ZERO - 10, ZERO - 11, frozen);
        pack.evaluate(ZERO + 11, ZERO + 10, thawed);
        assertThat(frozen.watts).isGreaterThan(thawed.watts).isPositive();
    }

    @Test
    void moistAirWarmsAColdWallAndAWetOneIsCooled() {
        ConvectiveFilm dry = ConvectiveFilm.free(0.08, 0.30, Fluid.air(101_325), VerticalPlate.CHURCHILL_CHU);
        Film dew = CondensingFilm.of(dry, 0.6, 101_325);
        EvaporatingFilm cloth = EvaporatingFilm.of(dry, 0.6, 101_325, 1);
        HeatFlow flow = new HeatFlow();
        dew.evaluate(ZERO + 25, ZERO + 6, flow);
        assertThat(flow.watts).isPositive();
        cloth.evaluate(ZERO + 25, ZERO + 25, flow);
        assertThat(flow.watts).isNegative();
        assertThat(EvaporatingFilm.idealWaterActivity(Composition.ofWater())).isCloseTo(1, within(1e-12));
        FittedFilm fitted = FittedFilm.of(dry, ZERO, ZERO + 40, 1e-4);
        dry.evaluate(ZERO + 25, ZERO + 6, flow);
        double exact = flow.watts;
        fitted.evaluate(ZERO + 25, ZERO + 6, flow);
        assertThat(flow.watts).isCloseTo(exact, within(2 * fitted.relativeError() * exact));
    }

    @Test
    void waterInAColdJacketStratifies() {
        Boundary jacket = Boundary.constant("jacket", ZERO + 6);
        List<Slice> slices =
                StratifiedLiquid.cylinder(0.035, StratifiedLiquid.faces(0, 0.2, 10), slice -> jacket, slice -> 200.0);
        assertThat(slices.get(0).run()).isEqualTo(new FilmRun(0.02, 0.035, 0.035));
        StratifiedLiquid water = StratifiedLiquid.of("water", Water.liquid(), 998, ZERO + 22, slices);
        Trajectory run = NetworkSolver.standard().solve(Network.of(water.nodes(), water.paths()), 600);
        double[] profile = water.profileK(run, 600);
        assertThat(profile[9]).isGreaterThan(profile[0] + 1);
        assertThat(water.meanK(run, 600)).isBetween(ZERO + 6, ZERO + 21);
    }

    @Test
    void aBlockOfEarthComesToTheTemperatureOfItsSides() {
        double[] radii = {0, 0.05, 0.1, 0.2};
        double[] depths = {0, 0.1, 0.2, 0.4};
        AxisymmetricBlock block = AxisymmetricBlock.of("earth", radii, depths, 1.5, 2e6, ZERO + 20, 0, 0, 0);
        List<Path> paths = new ArrayList<>(block.paths());
        paths.addAll(block.side(Boundary.constant("around", ZERO + 12), 1e4));
        Trajectory run = NetworkSolver.standard().solve(Network.of(block.nodes(), paths), 40 * 86_400);
        assertThat(block.atK(0.02, 0.2, run, 40 * 86_400)).isCloseTo(ZERO + 12, within(0.01));
    }

    @Test
    void newtonsLawTakesTheTimeOfItsClosedForm() {
        CoolingRate rate = CoolingRate.of(kelvin -> -(kelvin - 278.15) / 6000, 278.15);
        assertThat(rate.timeS(295.15, 283.15)).isCloseTo(6000 * Math.log(17.0 / 5), within(0.05));
    }
}
