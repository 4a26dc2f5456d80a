/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.joulesPerKelvin;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerKelvin;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.DoubleStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.DoorOpenings;
import org.beveragethermal.core.surroundings.Freezer;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Refrigerators and freezers that have a fan, a door, a thermostat and a load. */
class AppliancesTest {

    private static final double ZERO = 273.15;
    private static final Duration NEVER = Duration.ofMinutes(5);
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Refrigerator PLAIN = Refrigerator.at(celsius(5));
    /** Time constant 600 s. */
    private static final Refrigerator FEELING = PLAIN.withLoad(joulesPerKelvin(12_000), wattsPerKelvin(20));

    private static DoorOpenings openings(double sharePercent, Duration recovery, Duration... times) {
        return DoorOpenings.of(celsius(25), percent(sharePercent), recovery, List.of(times));
    }

    private static Prediction predict(Surroundings appliance, Duration horizon) {
        return Lumped.of(BOTTLE).expose(in(appliance, horizon));
    }

    private static double boundaryK(ScenePrediction run, String name, double timeS) {
        return run.trajectory().paths(timeS).stream()
                .flatMap(path -> path.ends().stream())
                .filter(end -> end.name().equals(name))
                .map(end -> (Boundary) end)
                .findFirst()
                .orElseThrow()
                .temperatureK()
                .at(timeS);
    }

    @Test
    void whatIsNotUsedChangesNothing() {
        Duration hours = Duration.ofHours(3);
        Prediction plain = predict(PLAIN, hours);
        List<Surroundings> same = List.of(
                PLAIN.withDoorOpenings(openings(50, NEVER)),
                PLAIN.withDoorOpenings(openings(0, NEVER, Duration.ofMinutes(20))),
                PLAIN.withFan(metresPerSecond(0)),
                PLAIN.withRelativeHumidity(percent(0)),
                PLAIN.withWalls(celsius(5)),
                Refrigerator.cycling(celsius(5), kelvinDifference(0), Duration.ofMinutes(20)),
                Refrigerator.following(Map.of(Duration.ZERO, celsius(5))),
                Air.at(celsius(5)));
        for (Surroundings appliance : same) {
            Prediction other = predict(appliance, hours);
            for (int minutes = 15; minutes <= 180; minutes += 15) {
                assertThat(other.meanTemperatureK(60 * minutes))
                        .isCloseTo(plain.meanTemperatureK(60 * minutes), within(1e-3));
            }
        }
        assertThat(predict(PLAIN.withDoorOpenings(openings(50, NEVER)), hours).meanTemperatureK(9000))
                .isEqualTo(plain.meanTemperatureK(9000));
    }

    @Test
    void openingsByHand() {
        // At 5 °C with room at 25 °C: up to 15 °C, then down with 300 s; the second opening starts from what is left.
        Refrigerator opened =
                PLAIN.withDoorOpenings(openings(50, NEVER, Duration.ofSeconds(400), Duration.ofSeconds(100)));
        ScenePrediction run = Scene.builder()
                .gear("fridge", opened)
                .vessel("wine", BOTTLE, "fridge")
                .build()
                .predict(Duration.ofHours(1));
        assertThat(boundaryK(run, "fridge air", 99.9) - ZERO).isCloseTo(5, within(1e-9));
        assertThat(boundaryK(run, "fridge air", 100) - ZERO).isCloseTo(15, within(1e-9));
        double left = 10 * Math.exp(-1);
        assertThat(boundaryK(run, "fridge air", 399.999) - ZERO).isCloseTo(5 + left, within(1e-3));
        double second = left + 0.5 * (20 - left);
        assertThat(boundaryK(run, "fridge air", 400) - ZERO).isCloseTo(5 + second, within(1e-9));
        assertThat(boundaryK(run, "fridge air", 1000) - ZERO).isCloseTo(5 + second * Math.exp(-2), within(1e-9));
        assertThat(boundaryK(run, "fridge walls", 400) - ZERO).isCloseTo(5, within(1e-9));
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void halfOfTheAirIsReplaced() {
        // Half of the volume from the kitchen at 20 °C, half left at 4 °C, at one pressure: equal volumes hold unequal
        // masses, so
        // that the mixture has the harmonic mean, 11.78 °C; half-way is 12 °C.
        Refrigerator opened = Refrigerator.at(celsius(4))
                .withDoorOpenings(DoorOpenings.of(celsius(20), percent(50), NEVER, List.of(Duration.ofSeconds(100))));
        ScenePrediction run = Scene.builder()
                .gear("fridge", opened)
                .vessel("wine", BOTTLE, "fridge")
                .build()
                .predict(Duration.ofMinutes(5));
        OutsideChecks.published(
                        "appliance-door-half",
                        "Y. A. Cengel and M. A. Boles, Thermodynamics, 8th ed., problem 6-27: half of the air is replaced")
                .what("air of a refrigerator of 4 °C just after an opening, kitchen of 20 °C")
                .unit("°C")
                .expected(2 / (1 / (ZERO + 4) + 1 / (ZERO + 20)) - ZERO)
                .within(0.3)
                .check(boundaryK(run, "fridge air", 100) - ZERO);
    }

    @Test
    void openingTheDoorCostsTime() {
        Duration[] often = new Duration[12];
        for (int i = 0; i < often.length; i++) {
            often[i] = Duration.ofMinutes(5 + 10 * i);
        }
        Duration hours = Duration.ofHours(2);
        double closed = predict(PLAIN, hours).meanTemperatureK(7200);
        double opened = predict(PLAIN.withDoorOpenings(openings(50, NEVER, often)), hours)
                .meanTemperatureK(7200);
        assertThat(opened).isBetween(closed + 0.5, closed + 4);
    }

    @Test
    void anEmptyOneReturnsToItsSetPoint() {
        // Held at its set point it stays there; pushed away by a door opening it lags behind the air it would have had:
        // x' = (u − x)/600 s with u = 10 K exp(−t/300 s) gives x = 10 K · 300/(300 − 600) (exp(−t/300 s) − exp(−t/600
        // s)).
        ScenePrediction run = Scene.builder()
                .gear("fridge", FEELING.withDoorOpenings(openings(50, NEVER, Duration.ofMinutes(10))))
                .gear("quiet", FEELING)
                .gear("room", Air.at(celsius(22)))
                .vessel("wine", BOTTLE, "room")
                .build()
                .predict(Duration.ofHours(3));
        for (int minutes : new int[] {0, 5, 30, 180}) {
            assertThat(air(run, "quiet", Duration.ofMinutes(minutes))).isCloseTo(5, within(1e-9));
        }
        for (int minutes : new int[] {12, 20, 30, 60}) {
            double t = 60 * (minutes - 10);
            double expected = 5 + 10 * 300 / (300.0 - 600) * (Math.exp(-t / 300) - Math.exp(-t / 600));
            OutsideChecks.published("appliance-lag-" + minutes, "closed form: first-order lag under a decaying input")
                    .what("air of a refrigerator that feels its load, " + minutes + " min, door opened at 10 min")
                    .unit("°C")
                    .expected(expected)
                    .within(2e-3)
                    .check(air(run, "fridge", Duration.ofMinutes(minutes)));
        }
        assertThat(air(run, "fridge", Duration.ofHours(3))).isCloseTo(5, within(2e-3));
        // At the end as much has gone out as came in, so that the sum of net heat says nothing; 10 min after the
        // opening it
        // does.
        assertThat(run.trajectory().ledger(1200).closure()).isLessThan(1e-9);
    }

    private static double air(ScenePrediction run, String gear, Duration time) {
        return Objects.requireNonNull(run.gearTemperaturesK(gear, time).get("air")) - ZERO;
    }

    /** What a node loses from half a minute before to half a minute after an hour [J]. */
    private static double lostJ(ScenePrediction run, Node node) {
        return run.trajectory().enthalpyJ(node, 3570) - run.trajectory().enthalpyJ(node, 3630);
    }

    private static ScenePrediction loaded(int bottles, Refrigerator appliance) {
        Scene.Builder scene = Scene.builder().gear("fridge", appliance);
        for (int i = 0; i < bottles; i++) {
            scene.vessel("wine " + i, BOTTLE, "fridge");
        }
        return scene.build().predict(Duration.ofDays(1));
    }

    @Test
    void warmBottlesWarmItAndItRecovers() {
        double[] after = new double[2];
        double[] warmest = new double[2];
        for (int i = 0; i < 2; i++) {
            int bottles = i == 0 ? 1 : 6;
            ScenePrediction run = loaded(bottles, FEELING);
            warmest[i] = DoubleStream.iterate(0, t -> t <= 7200, t -> t + 300)
                    .map(t -> air(run, "fridge", Duration.ofSeconds((long) t)))
                    .max()
                    .orElseThrow();
            after[i] = run.vessel("wine 0").meanTemperatureK(3 * 3600) - ZERO;
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            // By hand: what bottles and glass give passes 20 W/K to the set point, or cools the store of 12 kJ/K.
            double given = 0;
            for (int b = 0; b < bottles; b++) {
                Prediction bottle = run.vessel("wine " + b);
                given += bottle.contents().nodes().stream()
                        .mapToDouble(node -> lostJ(run, node))
                        .sum();
                given += bottle.bands().stream()
                        .mapToDouble(band -> lostJ(run, band.wall()))
                        .sum();
            }
            double stored = 12_000
                    * (air(run, "fridge", Duration.ofSeconds(3630)) - air(run, "fridge", Duration.ofSeconds(3570)));
            double expected = (given - stored) / 60 / 20;
            assertThat(air(run, "fridge", Duration.ofMinutes(60)) - 5).isCloseTo(expected, within(1e-2 * expected));
            assertThat(air(run, "fridge", Duration.ofDays(1))).isCloseTo(5, within(0.1));
        }
        assertThat(warmest[0]).isBetween(5.1, 6.0);
        assertThat(warmest[1] - 5).isBetween(4 * (warmest[0] - 5), 6 * (warmest[0] - 5));
        assertThat(after[1]).isGreaterThan(after[0] + 0.3);
    }

    @Test
    void aStrongOneIsHeld() {
        double held = predict(PLAIN, Duration.ofHours(3)).meanTemperatureK(10_000);
        Prediction strong = predict(PLAIN.withLoad(joulesPerKelvin(1000), wattsPerKelvin(1000)), Duration.ofHours(3));
        assertThat(strong.meanTemperatureK(10_000)).isCloseTo(held, within(0.02));
        // With walls of their own the store is warmed by convection only.
        ScenePrediction own = loaded(6, FEELING.withWalls(celsius(5)));
        ScenePrediction along = loaded(6, FEELING);
        assertThat(air(own, "fridge", Duration.ofHours(1))).isLessThan(air(along, "fridge", Duration.ofHours(1)) - 0.2);
        assertThat(own.ledger().closure()).isLessThan(1e-9);
        // A cold plate at the back draws a bottle below the air, whether the air is held or feels its load.
        for (Refrigerator appliance : List.of(PLAIN, FEELING)) {
            double end =
                    predict(appliance.withWalls(celsius(0)), Duration.ofDays(1)).meanTemperatureK(86_400);
            assertThat(end - ZERO).isBetween(1.0, 4.0);
        }
    }

    @Test
    void cyclingSwingsTheBottleAsATimeConstantLetsIt() {
        // A fan makes the film nearly independent of the difference: then the swing of the drink over that of the air
        // is
        // 1/√(1 + (ω τ)²), with wall and drink one capacity (they are, within a tenth).
        Duration period = Duration.ofHours(6);
        Refrigerator cycling =
                Refrigerator.cycling(celsius(6), kelvinDifference(2), period).withFan(metresPerSecond(4));
        FilledVessel there = BOTTLE.atTemperature(celsius(6));
        Prediction run = Lumped.of(there).expose(in(cycling, Duration.ofDays(2)));
        double tau = Lumped.of(BOTTLE)
                .expose(in(Refrigerator.at(celsius(6)).withFan(metresPerSecond(4)), Duration.ofHours(1)))
                .explainAt(Duration.ofMinutes(30))
                .timeConstantS();
        double[] swing = DoubleStream.iterate(42 * 3600, t -> t <= 48 * 3600, t -> t + 60)
                .map(run::meanTemperatureK)
                .toArray();
        double high = DoubleStream.of(swing).max().orElseThrow();
        double low = DoubleStream.of(swing).min().orElseThrow();
        double omega = 2 * Math.PI / (6 * 3600);
        double expected = 2 / Math.sqrt(1 + Math.pow(omega * tau, 2));
        assertThat((high - low) / 2).isCloseTo(expected, within(0.12 * expected));
        assertThat((high + low) / 2 - ZERO).isCloseTo(6, within(0.05));
        // A quick cycle hardly reaches the drink, and is not stepped over: its mean is that of the air.
        Prediction quick = predict(
                Refrigerator.cycling(celsius(6), kelvinDifference(2), Duration.ofMinutes(30)), Duration.ofHours(30));
        Prediction steady = predict(Refrigerator.at(celsius(6)), Duration.ofHours(30));
        assertThat(quick.meanTemperatureK(30 * 3600)).isCloseTo(steady.meanTemperatureK(30 * 3600), within(0.15));
        assertThat(quick.meanTemperatureK(4 * 3600)).isCloseTo(steady.meanTemperatureK(4 * 3600), within(0.2));
    }

    @Test
    void aFanHurriesAndALogIsFollowed() {
        Duration hours = Duration.ofHours(2);
        double still = predict(PLAIN, hours).meanTemperatureK(7200);
        assertThat(predict(PLAIN.withFan(metresPerSecond(0.5)), hours).meanTemperatureK(7200))
                .isBetween(still - 4, still - 0.5);
        Refrigerator logged = Refrigerator.following(Map.of(
                Duration.ZERO, celsius(8), Duration.ofMinutes(30), celsius(4), Duration.ofMinutes(60), celsius(8)));
        Air room = Air.varying(Map.of(
                Duration.ZERO, celsius(8), Duration.ofMinutes(30), celsius(4), Duration.ofMinutes(60), celsius(8)));
        assertThat(predict(logged, hours).meanTemperatureK(7000))
                .isEqualTo(predict(room, hours).meanTemperatureK(7000));
    }

    @Test
    void freezersFreezeAndWarn() {
        Prediction frozen = predict(Freezer.at(celsius(-18)), Duration.ofHours(12));
        assertThat(frozen.iceFraction(12 * 3600)).isGreaterThan(0.3);
        assertThat(frozen.limits()).anyMatch(note -> note.contains("burst"));
        Prediction refrigerator = predict(Refrigerator.at(celsius(-18)), Duration.ofHours(12));
        assertThat(frozen.meanTemperatureK(40_000)).isEqualTo(refrigerator.meanTemperatureK(40_000));
        assertThat(refrigerator.limits()).noneMatch(note -> note.contains("burst"));
        Prediction quick =
                predict(Freezer.of(Refrigerator.at(celsius(-18)).withFan(metresPerSecond(2))), Duration.ofHours(2));
        assertThat(quick.meanTemperatureK(3600)).isLessThan(refrigerator.meanTemperatureK(3600) - 2);
    }

    @Test
    void twoRunsAgreeBitForBit() {
        Refrigerator all = Refrigerator.cycling(celsius(5), kelvinDifference(1), Duration.ofMinutes(40))
                .withFan(metresPerSecond(0.2))
                .withRelativeHumidity(percent(60))
                .withDoorOpenings(openings(40, NEVER, Duration.ofMinutes(15), Duration.ofMinutes(70)))
                .withLoad(joulesPerKelvin(9000), wattsPerKelvin(15));
        Prediction one = predict(all, Duration.ofHours(3));
        assertThat(predict(all, Duration.ofHours(3)).meanTemperatureK(10_000)).isEqualTo(one.meanTemperatureK(10_000));
        assertThat(one.ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void refusals() {
        refused("freezer temperature", () -> Freezer.at(celsius(0)));
        refused("refrigerator temperature", () -> Freezer.at(celsius(-30.1)));
        refused(
                "freezer temperature",
                () -> Freezer.of(Refrigerator.cycling(celsius(-2), kelvinDifference(2.5), Duration.ofMinutes(30))));
        refused(
                "amplitude of the refrigerator temperature",
                () -> Refrigerator.cycling(celsius(19), kelvinDifference(2), Duration.ofMinutes(30)));
        refused("refrigerator temperature", () -> Refrigerator.following(Map.of(Duration.ZERO, celsius(21))));
        assertThatThrownBy(() -> Refrigerator.following(Map.of())).isInstanceOf(IllegalArgumentException.class);
        refused("air speed", () -> PLAIN.withFan(metresPerSecond(-1)));
        refused("relative humidity", () -> PLAIN.withRelativeHumidity(percent(120)));
        refused("heat capacity of the refrigerator", () -> PLAIN.withLoad(joulesPerKelvin(9), wattsPerKelvin(20)));
        refused("cooling of the refrigerator", () -> PLAIN.withLoad(joulesPerKelvin(9000), wattsPerKelvin(0)));
        refused("share of a door opening", () -> openings(101, NEVER));
        refused("recovery after a door opening", () -> openings(50, Duration.ZERO));
        refused("time of a door opening", () -> openings(50, NEVER, Duration.ofSeconds(-1)));
        assertThatThrownBy(() -> openings(50, NEVER, Duration.ofMinutes(1), Duration.ofMinutes(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("ascending");
    }

    private static void refused(String parameter, ThrowingCallable call) {
        OutOfRangeException refusal = catchThrowableOfType(OutOfRangeException.class, call);
        assertThat(refusal).isNotNull().hasMessageContaining(parameter);
    }
}
