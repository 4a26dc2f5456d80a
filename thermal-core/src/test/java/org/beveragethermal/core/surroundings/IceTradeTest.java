/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.film.RadiativeFilm;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.DocumentParts;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** What the trade takes for granted about ice, beside what the model gives. Nothing in the model was tuned to it. */
class IceTradeTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(21));
    private static final Bucket BUCKET = Bucket.of(millimetres(200), millimetres(420));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    /**
     * The order is that of the trade where the water is as cold as that of a bath that has stood [°C]; with warmer water it
     * depends on the blocks, and what happens is printed.
     */
    private static final double STOOD = 5;

    /** Against fresh water of this temperature blocks no larger than this are faster alone [°C, mm]. */
    private static final double FRESH = 15;

    private static final double SMALL_MM = 20;

    private static final FilledVessel CAN =
            Vessels.of(VesselShape.CAN, millilitres(330)).filledWith(Water.liquid(), celsius(22));

    private static Prediction cooled(Surroundings gear) {
        return cooled(BOTTLE, gear);
    }

    private static Prediction cooled(FilledVessel vessel, Surroundings gear) {
        return Scene.builder()
                .gear("ice", gear)
                .vessel("wine", vessel, "ice")
                .build()
                .predict(Duration.ofHours(3))
                .vessel("wine");
    }

    private static IceWaterBath iceAndWater(double waterC, double sideMm) {
        return IceWaterBath.in(BUCKET, ROOM)
                .ice(kilograms(4), millimetres(sideMm), celsius(-5))
                .water(kilograms(4), celsius(waterC))
                .build();
    }

    private static BareIce bare(double sideMm) {
        return BareIce.in(BUCKET, ROOM)
                .ice(kilograms(4), millimetres(sideMm), celsius(-5))
                .build();
    }

    private static String minutesTo(Prediction prediction, double targetC) {
        return prediction.timeTo(celsius(targetC)) instanceof TimeToTemperature.Reached reached
                ? String.format(Locale.ROOT, "%.1f min", reached.after().toMillis() / 60_000.0)
                : "not within 3 h";
    }

    /** A row of the table of the first minutes: ice alone beside ice and water. */
    private static List<String> firstMinutes(
            String vessel, BareIce ice, double waterC, Prediction alone, Prediction both, double wallDiameterM) {
        double slower = alone.meanTemperatureK(300) - both.meanTemperatureK(300);
        return List.of(
                vessel,
                String.format(Locale.ROOT, "%.0f °C", waterC),
                String.format(Locale.ROOT, "%.0f %%", 100 * ice.contactFraction(wallDiameterM)),
                String.format(Locale.ROOT, "%.0f %%", 100 * wettedPart(both)),
                String.format(Locale.ROOT, "%.1f °C", alone.meanTemperatureK(300) - ZERO),
                String.format(Locale.ROOT, "%.1f °C", both.meanTemperatureK(300) - ZERO),
                slower > 0 ? "yes" : "**no**");
    }

    private static double wettedPart(Prediction prediction) {
        return prediction.stayAdvice().get(0).stay().wettedPart();
    }

    private static void print(String what, Prediction prediction) {
        System.out.printf(
                Locale.ROOT,
                "%s: after 5 min %.1f °C; to 12.8 °C %s, 8 °C %s, 5 °C %s, 3 °C %s%n",
                what,
                prediction.meanTemperatureK(300) - ZERO,
                minutesTo(prediction, 12.8),
                minutesTo(prediction, 8),
                minutesTo(prediction, 5),
                minutesTo(prediction, 3));
    }

    /** The model says the opposite of the trade: recorded, not asserted. */
    private static void contradicted(String id, String vessel, double waterC, double warmer) {
        OutsideChecks.ruleOfThumb(
                "ice-alone-" + id,
                String.format(
                        Locale.ROOT,
                        "%s after 5 min in ice alone, %s, warmer by at least this than with as much still water of %.0f °C",
                        vessel,
                        id.startsWith("can") ? "blocks of 25 mm" : "blocks of 20 mm",
                        waterC),
                0,
                warmer,
                "K",
                "contact of ice is known to a factor of two; water that is not cold yet, or ice colder than 0 °C, turns the order");
    }

    /** Ice without water is slow because only points touch: said of the first minutes, from room temperature. */
    @Test
    void iceWithoutWaterIsSlowerThanIceAndWaterAtFirst() {
        List<List<String>> table = new ArrayList<>();
        double bottleDiameter = 2 * BOTTLE.vessel().profile().maxOuterRadiusM();
        for (double side : new double[] {20, 25, 40}) {
            Prediction alone = cooled(bare(side));
            print("750 mL in 4 kg of ice alone, blocks of " + side + " mm", alone);
            for (double waterC : new double[] {5, 10, 15}) {
                Prediction both = cooled(iceAndWater(waterC, side));
                print("750 mL in 4 kg of ice and 4 kg of still water of " + waterC + " °C", both);
                table.add(firstMinutes(
                        String.format(Locale.ROOT, "750 mL bottle, blocks of %.0f mm", side),
                        bare(side),
                        waterC,
                        alone,
                        both,
                        bottleDiameter));
                double warmer = alone.meanTemperatureK(300) - both.meanTemperatureK(300);
                if (side > SMALL_MM || waterC < FRESH) {
                    OutsideChecks.commonPractice(String.format(Locale.ROOT, "ice-alone-slower-%.0f-%.0f", side, waterC))
                            .what(String.format(
                                    Locale.ROOT,
                                    "750 mL from 22 °C after 5 min in 4 kg of ice of %.0f mm alone: warmer by this than with 4 kg of"
                                            + " still water of %.0f °C",
                                    side,
                                    waterC))
                            .unit("K")
                            .between(0, 10)
                            .check(warmer);
                } else {
                    contradicted(
                            String.format(Locale.ROOT, "bottle-%.0f-%.0f", side, waterC), "750 mL", waterC, warmer);
                }
                for (int s = 60; waterC <= STOOD && s < 300; s += 60) {
                    assertThat(alone.meanTemperatureK(s)).isGreaterThan(both.meanTemperatureK(s));
                }
            }
        }
        // Of a can the order is not asserted: its wall hides neither, and ice colder than 0 °C gains.
        Prediction canAlone = cooled(CAN, bare(25));
        print("330 mL can in 4 kg of ice alone, blocks of 25 mm", canAlone);
        for (double waterC : new double[] {5, 15}) {
            Prediction both = cooled(CAN, iceAndWater(waterC, 25));
            print("330 mL can in 4 kg of ice and 4 kg of still water of " + waterC + " °C", both);
            contradicted(
                    String.format(Locale.ROOT, "can-25-%.0f", waterC),
                    "330 mL can",
                    waterC,
                    canAlone.meanTemperatureK(300) - both.meanTemperatureK(300));
            table.add(firstMinutes(
                    "330 mL can, blocks of 25 mm",
                    bare(25),
                    waterC,
                    canAlone,
                    both,
                    2 * CAN.vessel().profile().maxOuterRadiusM()));
        }
        DocumentParts.leaveTable(
                "surroundings-ice-alone",
                List.of(
                        "4 kg of ice from 22 °C",
                        "Water beside it",
                        "Wall that ice alone touches",
                        "Wall that water wets",
                        "Alone, after 5 min",
                        "With 4 kg of water, after 5 min",
                        "Slower alone, as the trade says"),
                table);
        print("750 mL in 4 kg of crushed ice of 6 mm", cooled(BareIce.crushed(BUCKET, kilograms(4), ROOM)));
    }

    /** The same kilogram of ice hanging in the air of a room: every face free. */
    private static double hoursInAir(int blocks) {
        double density = Ice.density(ZERO);
        double side = Math.cbrt(1 / (density * blocks));
        PileGeometry geometry = new PileGeometry(1, side, 0, 1000, 0.57, false, new FillLevel(0.1, 1, false));
        Node ice = Node.of("ice", IceStore.of(1, side, 4200).showingSurplus(), ZERO - 5, 1, side);
        Node water = Node.of("water", new MeltStore(1), ZERO, 0);
        Boundary air = Boundary.constant("air", ZERO + 21);
        double area = 6 * side * side * blocks;
        HeatLaw film =
                ConvectiveFilm.free(area, side, Fluid.air(DryAir.STANDARD_PRESSURE_PA), VerticalPlate.CHURCHILL_CHU);
        AmountWeight laminar = new AmountWeight(ice, IceStore.SIDE, geometry.power(1.75));
        AmountWeight square = new AmountWeight(ice, IceStore.SIDE, geometry.power(2));
        Path heat = JunctionPath.of(
                "heat",
                Link.of(air, "convection", film).weightedBy(laminar),
                Link.of(air, "radiation", new RadiativeFilm(area, 0.97)).weightedBy(square),
                Link.of(ice, "surface", HeatLaw.conductance(1e4)));
        Path melt = new ThawPath(
                "melting",
                ice,
                water,
                0,
                geometry,
                density,
                Ice.latentHeatOfFusion().value());
        Trajectory run = NetworkSolver.standard().solve(Network.of(List.of(ice, water), List.of(heat, melt)), 3e5);
        return run.firstCrossing(0, t -> run.amount(ice, IceStore.SIDE, t) - 1e-3 * side)
                        .orElseThrow()
                / 3600;
    }

    private static double hours(Surroundings gear) {
        ScenePrediction run = Scene.builder()
                .gear("ice", gear)
                .gear("room", ROOM)
                .vessel("wine", BOTTLE, "room")
                .build()
                .predict(Duration.ofDays(20));
        return run.iceGone("ice").orElseThrow().toMillis() / 3.6e6;
    }

    /** Balls last longer than cubes and cubes longer than slabs of one mass each: less surface. */
    @Test
    void compactBlocksLastLonger() {
        double cube = 0.05;
        double ball = cube * Math.cbrt(6 / Math.PI);
        List<IceBlock> shapes = List.of(
                IceBlock.sphere(millimetres(1000 * ball)),
                IceBlock.cube(millimetres(1000 * cube)),
                IceBlock.cylinder(millimetres(30), millimetres(4e6 * Math.pow(cube, 3) / (Math.PI * 0.9))),
                IceBlock.brick(millimetres(10), millimetres(111.803), millimetres(111.803)));
        double[] hours = new double[shapes.size()];
        for (int i = 0; i < hours.length; i++) {
            IceBlock shape = shapes.get(i);
            ScenePrediction run = Scene.builder()
                    .gear(
                            "ice",
                            IceWaterBath.in(BUCKET, ROOM)
                                    .blocks(9, shape, celsius(-5))
                                    .water(kilograms(6), celsius(20))
                                    .build())
                    .gear("room", ROOM)
                    .vessel("wine", BOTTLE, "room")
                    .build()
                    .predict(Duration.ofDays(1));
            hours[i] = run.iceGone("ice").orElseThrow().toMillis() / 3.6e6;
            assertThat(run.iceKg("ice", Duration.ofDays(1))).isLessThan(1e-4);
            assertThat(run.gearMassKg("ice", Duration.ofDays(1)))
                    .isCloseTo(6 + 9 * Ice.density(ZERO) * Math.pow(cube, 3), within(1e-3));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            System.out.printf(
                    Locale.ROOT,
                    "9 blocks of 115 g, each a %s, last %.2f h in 6 kg of water of 20 °C (%d steps)%n",
                    shape,
                    hours[i],
                    run.trajectory().steps());
        }
        OutsideChecks.commonPractice("ice-compact-blocks-last-longer")
                .what("time that balls last in water over that of slabs of 10 mm of the same mass")
                .unit("1")
                .between(1, 100)
                .check(hours[0] / hours[3]);
        assertThat(hours[0]).isGreaterThan(hours[1]);
        assertThat(hours[1]).isGreaterThan(hours[3]);
        assertThat(hours[2]).isBetween(hours[3], hours[0]);
    }

    /** Larger blocks last longer. */
    @Test
    void largerBlocksLastLonger() {
        double[] air = new double[3];
        double[] drained = new double[3];
        double[] water = new double[3];
        double cube = Ice.density(ZERO) * Math.pow(0.025, 3);
        int[] blocks = {(int) Math.round(1 / cube), 2, 1};
        List<List<String>> table = new ArrayList<>();
        for (int i = 0; i < blocks.length; i++) {
            double sideMm = 1000 * Math.cbrt(1 / (Ice.density(ZERO) * blocks[i]));
            air[i] = hoursInAir(blocks[i]);
            drained[i] = hours(BareIce.in(BUCKET, ROOM)
                    .ice(kilograms(1), millimetres(sideMm), celsius(-5))
                    .drained()
                    .build());
            water[i] = hours(IceWaterBath.in(BUCKET, ROOM)
                    .ice(kilograms(1), millimetres(sideMm), celsius(-5))
                    .water(kilograms(6), celsius(20))
                    .build());
            System.out.printf(
                    Locale.ROOT,
                    "1 kg of ice in %d blocks of %.0f mm lasts: free in air of 21 °C %.2f h, drained in a bucket %.2f h,"
                            + " in 6 kg of water of 20 °C %.2f h%n",
                    blocks[i],
                    sideMm,
                    air[i],
                    drained[i],
                    water[i]);
        }
        for (int i = 0; i < blocks.length; i++) {
            table.add(List.of(
                    blocks[i] == 1 ? "one block" : blocks[i] + " blocks",
                    String.format(Locale.ROOT, "%.0f mm", 1000 * Math.cbrt(1 / (Ice.density(ZERO) * blocks[i]))),
                    String.format(Locale.ROOT, "%.1f h", air[i]),
                    String.format(Locale.ROOT, "%.1f h", drained[i]),
                    String.format(Locale.ROOT, "%.2f h", water[i])));
        }
        DocumentParts.leaveTable(
                "surroundings-blocks",
                List.of(
                        "1 kg of ice",
                        "Side",
                        "Free in air of 21 °C",
                        "Drained in a bucket in that air",
                        "In 6 kg of water of 20 °C"),
                table);
        OutsideChecks.commonPractice("ice-larger-blocks-last-longer-in-air")
                .what("time that one block of 1 kg lasts in air over that of 25 mm cubes of 1 kg")
                .unit("1")
                .between(1, 100)
                .check(air[2] / air[0]);
        OutsideChecks.commonPractice("ice-larger-blocks-last-longer-in-water")
                .what("time that one block of 1 kg lasts in water over that of 25 mm cubes of 1 kg")
                .unit("1")
                .between(1, 100)
                .check(water[2] / water[0]);
        assertThat(air[1]).isBetween(air[0], air[2]);
        assertThat(water[1]).isBetween(water[0], water[2]);
        assertThat(drained).isSorted();
    }
}
