/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.fraction;
import static org.beveragethermal.materials.units.Measures.grams;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.Interval;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.LinearSpread;
import org.beveragethermal.core.uncertainty.PredictionEnsemble;
import org.beveragethermal.core.uncertainty.UncertainInput;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.solid.LatentSolid;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Gel packs around a vessel: limits, balance, sharing, what is uncertain, and what is refused. */
class GelPacksTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(25));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Duration HALF_AN_HOUR = Duration.ofMinutes(30);

    private static GelPacks packs() {
        return GelPacks.of(3, grams(400), millimetres(25), celsius(-18), ROOM);
    }

    private static ScenePrediction run(Surroundings gear, Duration horizon) {
        return Scene.builder()
                .gear("packs", gear)
                .vessel("wine", BOTTLE, "packs")
                .build()
                .predict(horizon);
    }

    private static double wineC(Surroundings gear) {
        return run(gear, HALF_AN_HOUR).vessel("wine").meanTemperatureK(1800) - ZERO;
    }

    @Test
    void packsThatTouchNothingLeaveTheRoom() {
        for (Placement placement : List.of(Placement.upright(), Placement.of(Posture.LYING))) {
            double packed = Lumped.of(BOTTLE)
                    .expose(new Exposure(packs().touching(fraction(0)), HALF_AN_HOUR, placement))
                    .meanTemperatureK(1800);
            double bare = Lumped.of(BOTTLE)
                    .expose(new Exposure(ROOM, HALF_AN_HOUR, placement))
                    .meanTemperatureK(1800);
            assertThat(packed).isCloseTo(bare, within(2e-3));
        }
    }

    @Test
    void theLedgerClosesAndThePacksTookWhatItSays() {
        Duration day = Duration.ofHours(24);
        ScenePrediction run = run(packs(), day);
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        assertThat(run.frozenFraction("packs", Duration.ZERO)).isEqualTo(1);
        assertThat(run.frozenFraction("packs", day)).isZero();
        LatentSolid gel = packs().material();
        double warmed = 1.2
                * (gel.specificEnthalpy(run.gearTemperaturesK("packs", day).getOrDefault("packs", Double.NaN))
                        - gel.specificEnthalpy(ZERO - 18));
        assertThat(run.ledger().heatInto("packs packs")).isCloseTo(warmed, within(2e-4 * warmed));
    }

    /** Limit: a great mass that conducts well keeps the wall at its melting range until it is thawed. */
    @Test
    void greatPacksThatConductWellHoldTheWallAtTheirMeltingRange() {
        LatentSolid metal = new LatentSolid(
                "metal", solid("frozen"), solid("thawed"), constant(ZERO + 2), constant(ZERO + 3), constant(2e5));
        GelPacks gear = GelPacks.of(4, kilograms(4), millimetres(60), celsius(2), ROOM, metal)
                .touching(fraction(1))
                .withGap(millimetres(0.01));
        ScenePrediction run = run(gear, Duration.ofHours(4));
        for (int minutes = 60; minutes <= 240; minutes += 20) {
            assertThat(run.frozenFraction("packs", Duration.ofMinutes(minutes))).isBetween(0.3, 1.0);
            assertThat(run.gearTemperaturesK("packs", Duration.ofMinutes(minutes))
                            .getOrDefault("packs", Double.NaN))
                    .isBetween(ZERO + 1.99, ZERO + 3);
        }
        double pack = run.gearTemperaturesK("packs", Duration.ofHours(4)).getOrDefault("packs", Double.NaN);
        assertThat(run.vessel("wine").wallTemperatureK(0, 4 * 3600)).isCloseTo(pack, within(0.1));
    }

    private static Solid solid(String name) {
        return new Solid(
                name,
                new Constant("density", 1000, "kg/m³", Uncertainty.exact(), source()),
                new Constant("conductivity", 1000, "W/(m K)", Uncertainty.exact(), source()),
                new Constant("specific heat capacity", 2000, "J/(kg K)", Uncertainty.exact(), source()),
                new Constant("emissivity", 0.9, "1", Uncertainty.exact(), source()),
                Optional.empty(),
                Solid.AMBIENT);
    }

    private static Constant constant(double value) {
        return new Constant("figure of the case", value, "SI", Uncertainty.exact(), source());
    }

    private static Source source() {
        return new Source("case", "figures of the case", Source.Kind.OWN_ASSUMPTION);
    }

    @Test
    void contactIsGapAndBagAndHalfAPackInSeries() {
        GelPacks gear = packs().touching(fraction(0.5));
        Occupant wine = new Occupant("wine", BOTTLE.vessel());
        WallPatch patch = new WallPatch(0.02, 0.06, 0.01, 0.076, 0.9);
        Face face = gear.open("packs", 0).faces(patch, wine, List.of(wine)).get(0);
        HeatFlow out = new HeatFlow();
        face.links().get(0).law().evaluate(ZERO - 15, ZERO + 5, out);
        // By hand: frozen gel 1.9 W/(m K) over 12.5 mm, bag 4e-4 m² K/W; air of 5 °C 0.0246 W/(m K) over 0.5 mm and
        // radiation 4 σ (278.15 K)³/(1/0.9 + 1/0.9 − 1) = 4.88 · 0.818 = 3.99 W/(m² K); half of 0.01 m², 20 K.
        double resistance = 0.0125 / 1.9 + 4e-4 + 1 / (0.0246 / 5e-4 + 3.99);
        assertThat(out.watts).isCloseTo(-0.005 * 20 / resistance, within(0.05));
        assertThat(face.part()).isEqualTo(0.5);
    }

    @Test
    void emptyPacksGoOnMeltingAndACoverKeepsThem() {
        Duration hours = Duration.ofHours(6);
        double[] left = new double[3];
        GelPacks[] gear = {
            packs(), packs().withCover(wattsPerSquareMetreKelvin(2)), packs().withCover(wattsPerSquareMetreKelvin(0.2))
        };
        for (int i = 0; i < gear.length; i++) {
            ScenePrediction run = Scene.builder()
                    .gear("room", ROOM)
                    .gear("packs", gear[i])
                    .vessel("wine", BOTTLE, "room")
                    .build()
                    .predict(hours);
            left[i] = run.frozenFraction("packs", hours);
        }
        assertThat(left[0]).isBetween(0.1, 0.95);
        assertThat(left[1]).isGreaterThan(left[0] + 0.1);
        assertThat(left[2]).isGreaterThan(left[1]);
    }

    @Test
    void twoVesselsShareTheFacesOfThePacks() {
        double area = BOTTLE.vessel()
                .profile()
                .outerSideAreaM2(0, BOTTLE.vessel().profile().heightM());
        GelPacks gear = packs();
        assertThat(gear.touchedShare(2 * area)).isCloseTo(0.5 * gear.touchedShare(area), within(1e-12));
        // By hand: 1.2 kg at 960 kg/m³ and 25 mm have faces of 0.05 m² on one side.
        assertThat(gear.faceAreaM2()).isCloseTo(0.05, within(1e-9));
        assertThat(gear.touching(fraction(0.9)).touchedShare(0.1)).isCloseTo(0.5, within(1e-9));
        ScenePrediction both = Scene.builder()
                .gear("packs", gear)
                .vessel("one", BOTTLE, "packs")
                .vessel("two", BOTTLE, "packs")
                .build()
                .predict(HALF_AN_HOUR);
        double one = both.vessel("one").meanTemperatureK(1800);
        assertThat(one).isCloseTo(both.vessel("two").meanTemperatureK(1800), within(1e-9));
        assertThat(one - ZERO).isGreaterThan(wineC(gear) + 1);
    }

    @Test
    void everyPathStatesTheSlopesOfItsFlows() {
        Random random = new Random(20261126);
        Occupant wine = new Occupant("wine", BOTTLE.vessel());
        Medium medium = packs().withCover(wattsPerSquareMetreKelvin(5)).open("packs", 0);
        Node wall = Node.sensible("wall", 500, 290);
        WallPatch patch = new WallPatch(0.02, 0.06, 0.01, 0.076, 0.9);
        List<Path> paths = new java.util.ArrayList<>(medium.paths(List.of(wine)));
        for (Face face : medium.faces(patch, wine, List.of(wine))) {
            List<Link> links = new java.util.ArrayList<>();
            links.add(face.behind(Link.of(wall, "conduction", HeatLaw.conductance(5))));
            links.addAll(face.links());
            paths.add(JunctionPath.of(face.name(), links));
        }
        assertThat(paths).hasSize(3);
        for (Path path : paths) {
            for (int i = 0; i < 40; i++) {
                double[] temperatures = new double[path.ends().size()];
                for (int e = 0; e < temperatures.length; e++) {
                    boolean pack = path.ends().get(e).name().equals("packs packs");
                    temperatures[e] = pack ? 262 + 20 * random.nextDouble() : 275 + 25 * random.nextDouble();
                }
                PathDerivatives.check(path, temperatures, new double[0], 1e-2);
            }
        }
    }

    @Test
    void contactAndGapAreDrawnWithTheLaws() {
        List<UncertainInput> inputs = new java.util.ArrayList<>();
        for (Constant constant : GelPacks.assumptions().subList(0, 2)) {
            inputs.add(new UncertainInput(constant.name(), constant.value(), constant.uncertainty()));
        }
        double area = BOTTLE.vessel()
                .profile()
                .outerSideAreaM2(0, BOTTLE.vessel().profile().heightM());
        double reach = packs().faceAreaM2() / area;
        PredictionEnsemble runs = PredictionEnsemble.of(
                Ensemble.of(60, 3),
                inputs,
                draw -> Lumped.of(BOTTLE)
                        .expose(Exposure.in(
                                packs().touching(fraction(Math.min(
                                                1,
                                                reach * draw.value(inputs.get(0).name()))))
                                        .withGap(metres(draw.value(inputs.get(1).name()))),
                                HALF_AN_HOUR)));
        Interval interval = runs.temperatureK(HALF_AN_HOUR, 0.90);
        System.out.printf(
                Locale.ROOT,
                "750 mL of 22 °C among 3 gel packs of 400 g, −18 °C, room 25 °C, 30 min: %.1f °C; contact and gap: %.1f to %.1f °C%n",
                wineC(packs()),
                interval.low() - ZERO,
                interval.high() - ZERO);
        assertThat(interval.high() - interval.low()).isBetween(1.0, 8.0);
        assertThat(wineC(packs())).isBetween(interval.low() - ZERO, interval.high() - ZERO);
        var slopes = LinearSpread.of(Lumped.of(BOTTLE).expose(Exposure.in(packs(), HALF_AN_HOUR)), LawScatter.all())
                .contributionsK(HALF_AN_HOUR);
        assertThat(slopes.getOrDefault(Multipliers.PACK_CONTACT, 0.0)).isLessThan(-0.5);
    }

    @Test
    void contactScalesWithItsFactorAndRunsRepeatToTheLastBit() {
        Scene scene = Scene.builder()
                .gear("packs", packs())
                .vessel("wine", BOTTLE, "packs")
                .build();
        double[] wine = new double[3];
        double[] factors = {0.5, 1, 2};
        for (int i = 0; i < 3; i++) {
            NetworkSolver solver =
                    NetworkSolver.standard().withMultipliers(Map.of(Multipliers.PACK_CONTACT, factors[i]));
            wine[i] = scene.predict(HALF_AN_HOUR, solver).vessel("wine").meanTemperatureK(1800);
            assertThat(scene.predict(HALF_AN_HOUR, solver).vessel("wine").meanTemperatureK(1800))
                    .isEqualTo(wine[i]);
        }
        assertThat(wine[0]).isGreaterThan(wine[1] + 0.5);
        assertThat(wine[1]).isGreaterThan(wine[2] + 0.5);
    }

    @Test
    void layersAndPosturesHoldEnergyToo() {
        for (VesselModel model : List.of(VesselModel.axial(8), VesselModel.radial(5), VesselModel.mixed())) {
            for (Posture posture : List.of(Posture.UPRIGHT, Posture.LYING)) {
                if (posture == Posture.LYING && model.shells() > 1) {
                    continue;
                }
                ScenePrediction run = Scene.builder()
                        .gear("packs", packs())
                        .vessel("wine", BOTTLE, "packs", model, posture)
                        .build()
                        .predict(HALF_AN_HOUR);
                assertThat(run.ledger().closure()).isLessThan(1e-9);
                assertThat(run.vessel("wine").meanTemperatureK(1800) - ZERO).isBetween(5.0, 21.0);
            }
        }
    }

    /** From crumbs to 10 kg, from −30 °C to 60 °C, wine and water, also where the drink freezes. */
    @Test
    void anyPacksAroundAnyDrinkKeepTheirBalance() {
        Random random = new Random(7);
        for (int i = 0; i < 24; i++) {
            Beverage drink = i % 2 == 0 ? Beverage.wine(percentByVolume(12.5)) : Beverage.water();
            GelPacks gear = GelPacks.of(
                            1 + random.nextInt(6),
                            grams(50 + 2000 * random.nextDouble() * random.nextDouble()),
                            millimetres(5 + 25 * random.nextDouble()),
                            celsius(-30 + (i % 6 == 0 ? 90 : 40) * random.nextDouble()),
                            i % 3 == 0 ? Air.at(celsius(-10)) : ROOM)
                    .touching(fraction(random.nextDouble()))
                    .withGap(millimetres(0.02 + 2 * random.nextDouble()))
                    .withCover(wattsPerSquareMetreKelvin(0.1 + 20 * random.nextDouble()));
            ScenePrediction run = Scene.builder()
                    .gear("packs", gear)
                    .vessel(
                            "drink",
                            Vessels.highShouldered750().filledWith(drink, celsius(2 + 25 * random.nextDouble())),
                            "packs")
                    .build()
                    .predict(Duration.ofHours(12));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            for (int hours = 0; hours <= 12; hours++) {
                assertThat(run.vessel("drink").meanTemperatureK(3600.0 * hours)).isBetween(ZERO - 31, ZERO + 61);
                assertThat(run.frozenFraction("packs", Duration.ofHours(hours))).isBetween(0.0, 1.0);
            }
        }
    }

    @Test
    void notesSayWhatIsAssumedAndWarn() {
        List<String> notes = run(packs(), HALF_AN_HOUR).vessel("wine").notes();
        assertThat(notes).anyMatch(note -> note.contains("are taken to touch"));
        assertThat(notes).anyMatch(note -> note.contains("burst") && note.contains("leaks"));
        assertThat(run(packs().touching(percent(100)), HALF_AN_HOUR)
                        .vessel("wine")
                        .notes())
                .anyMatch(note -> note.contains("do not reach"));
        assertThat(run(GelPacks.of(3, grams(400), millimetres(25), celsius(4), ROOM), HALF_AN_HOUR)
                        .vessel("wine")
                        .notes())
                .noneMatch(note -> note.contains("burst"));
        assertThat(run(packs(), HALF_AN_HOUR)
                        .vessel("wine")
                        .explainAt(Duration.ofMinutes(10))
                        .text())
                .contains("packs packs");
    }

    @Test
    void badPacksAreRefused() {
        assertThatThrownBy(() -> GelPacks.of(0, grams(400), millimetres(25), celsius(-18), ROOM))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0 gel packs");
        assertThatThrownBy(() -> GelPacks.of(1, grams(5), millimetres(25), celsius(-18), ROOM))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("mass of a gel pack");
        assertThatThrownBy(() -> GelPacks.of(1, grams(400), millimetres(1), celsius(-18), ROOM))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("thickness of a gel pack");
        assertThatThrownBy(() -> GelPacks.of(1, grams(400), millimetres(90), celsius(-18), ROOM))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("side of a square pack");
        assertThatThrownBy(() -> GelPacks.of(1, grams(400), millimetres(25), celsius(-40), ROOM))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("temperature of gel packs");
        assertThatThrownBy(() -> packs().touching(fraction(1.1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> packs().withGap(millimetres(30))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> packs().withCover(wattsPerSquareMetreKelvin(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> packs().touchedShare(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Face("face", List.of(), null, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
