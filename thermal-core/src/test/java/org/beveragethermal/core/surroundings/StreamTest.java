/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.FlatPlate;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.Film;
import org.beveragethermal.core.film.FilmState;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Layered;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.LinearSpread;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Water that is renewed: laws, limits, refusals. */
class StreamTest {

    private static final double ZERO = 273.15;
    private static final Air AIR = Air.at(celsius(24));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Stream BROOK = brook(0.3);

    private static Stream brook(double speed) {
        return Stream.at(celsius(10), metresPerSecond(speed), metres(1), AIR);
    }

    private static Occupant occupant(Posture posture) {
        return new Occupant("bottle", BOTTLE.vessel(), Placement.of(posture));
    }

    private static Link link(Stream stream, WallPatch patch, Posture posture) {
        Occupant occupant = occupant(posture);
        return stream.open("brook", 0)
                .faces(patch, occupant, List.of(occupant))
                .get(0)
                .links()
                .get(0);
    }

    private static FilmState film(Stream stream, WallPatch patch, Posture posture, double waterK, double wallK) {
        return ((Film) link(stream, patch, posture).law()).describe(waterK, wallK);
    }

    private static WallPatch patch(double diameterM, Orientation orientation) {
        // A vessel that lies is as high as it is thick.
        double high = orientation == Orientation.LYING_WALL ? diameterM : 0.3;
        return new WallPatch(0, high, 0.07, diameterM, 0.9, orientation);
    }

    @Test
    void filmByHand() {
        // Warm water and a small difference: its density falls in a straight line.
        double waterK = ZERO + 30;
        double wallK = ZERO + 31;
        Water water = Water.liquid();
        double filmK = ZERO + 30.5;
        double nu = water.kinematicViscosity(filmK);
        double pr = water.prandtlNumber(filmK);
        double k = water.thermalConductivity(filmK);
        double height = BOTTLE.vessel().profile().heightM();
        double buoyancy = (water.density(waterK) - water.density(wallK)) / water.density(filmK);
        double rayleigh = 9.80665 * buoyancy * Math.pow(height, 3) * pr / (nu * nu);
        double free = k / height * VerticalPlate.churchillChu(rayleigh, pr);
        for (double speed : new double[] {0.01, 0.1, 1, 3}) {
            double forced = k / 0.076 * CrossflowCylinder.churchillBernstein(speed * 0.076 / nu, pr);
            double expected = Math.pow(Math.pow(free, 4) + Math.pow(forced, 4), 0.25);
            FilmState state =
                    film(brook(speed), patch(0.076, Orientation.UPRIGHT_WALL), Posture.UPRIGHT, waterK, wallK);
            assertThat(state.coefficient()).isCloseTo(expected, within(2e-3 * expected));
            // Along: the plate law on the whole length, and only for what lies.
            Stream along = brook(speed).along();
            assertThat(film(along, patch(0.076, Orientation.UPRIGHT_WALL), Posture.UPRIGHT, waterK, wallK)
                            .coefficient())
                    .isEqualTo(state.coefficient());
        }
        double length = BOTTLE.vessel().profile().heightM();
        double plate = k / length * FlatPlate.laminar(1 * length / nu, pr);
        FilmState lying = film(brook(1).along(), patch(0.076, Orientation.LYING_WALL), Posture.LYING, waterK, wallK);
        assertThat(lying.coefficient()).isBetween(plate, 1.02 * plate);
        assertThat(lying.law()).contains("flat plate");
        assertThat(film(brook(1), patch(0.076, Orientation.LYING_WALL), Posture.LYING, waterK, wallK)
                        .coefficient())
                .isGreaterThan(lying.coefficient());
    }

    /** Another published law for the same cylinder, at the Reynolds numbers of a bottle in a brook. */
    @Test
    void anotherLawForTheSameCylinder() {
        Water water = Water.liquid();
        double waterK = ZERO + 10;
        double wallK = ZERO + 10.2;
        double nu = water.kinematicViscosity(waterK);
        double pr = water.prandtlNumber(waterK);
        for (double[] row : new double[][] {{0.03, 0.51, 0.5}, {0.2, 0.26, 0.6}, {2, 0.26, 0.6}}) {
            double re = row[0] * 0.075 / nu;
            double nusselt = row[1] * Math.pow(re, row[2]) * Math.pow(pr, 0.37);
            FilmState state =
                    film(brook(row[0]), patch(0.075, Orientation.UPRIGHT_WALL), Posture.UPRIGHT, waterK, wallK);
            OutsideChecks.published(
                            "stream-zukauskas-" + row[0],
                            "A. Zukauskas, Adv. Heat Transfer 8 (1972) 93-160, cylinder in crossflow, constants as in Incropera and DeWitt,"
                                    + " table 7.4 (from memory)")
                    .what("coefficient of a bottle of 75 mm in a stream of " + row[0] + " m/s at 10 °C")
                    .unit("W/(m² K)")
                    .expected(nusselt * water.thermalConductivity(waterK) / 0.075)
                    .withinRelative(0.2)
                    .check(state.coefficient());
        }
    }

    /** A lake is a bath without end at one temperature; the bath has 4.6 m³ and a wall that insulates. */
    @Test
    void aStreamWithoutSpeedIsABathWithoutEnd() {
        Stream lake = Stream.at(celsius(10), metresPerSecond(0), metres(1.4), Air.at(celsius(10)));
        WaterBath tank = WaterBath.of(
                Bucket.of(metres(2), metres(1.5)).withWall(wattsPerSquareMetreKelvin(0.05)),
                litres(4500),
                celsius(10),
                Air.at(celsius(10)));
        Prediction inLake = Lumped.of(BOTTLE).expose(in(lake, Duration.ofMinutes(40)));
        Prediction inTank = Lumped.of(BOTTLE).expose(in(tank, Duration.ofMinutes(40)));
        Prediction creep = Lumped.of(BOTTLE)
                .expose(in(
                        Stream.at(celsius(10), metresPerSecond(1e-4), metres(1.4), Air.at(celsius(10))),
                        Duration.ofMinutes(40)));
        for (int minutes = 5; minutes <= 40; minutes += 5) {
            double lakeK = inLake.meanTemperatureK(60 * minutes);
            assertThat(inTank.meanTemperatureK(60 * minutes)).isCloseTo(lakeK, within(5e-3));
            assertThat(creep.meanTemperatureK(60 * minutes)).isCloseTo(lakeK, within(5e-3));
        }
    }

    @Test
    void whatSticksOutIsInTheAir() {
        double before = Double.POSITIVE_INFINITY;
        for (double depth : new double[] {0.02, 0.06, 0.12, 0.4}) {
            Stream stream = Stream.at(celsius(10), metresPerSecond(0.5), metres(depth), AIR);
            Prediction run = Layered.axial(BOTTLE).expose(in(stream, Duration.ofMinutes(15)));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            assertThat(run.meanTemperatureK(900)).isLessThan(before - 0.3);
            before = run.meanTemperatureK(900);
        }
        // A lying bottle in water half as deep as it is thick.
        Prediction half = Layered.axial(BOTTLE)
                .expose(in(Stream.at(celsius(10), metresPerSecond(0.5), metres(0.038), AIR), Duration.ofMinutes(15))
                        .lying());
        assertThat(half.ledger().closure()).isLessThan(1e-9);
        assertThat(half.meanTemperatureK(900)).isBetween(before, ZERO + 22);
    }

    @Test
    void theDayOfARiver() {
        Stream river = Stream.periodic(
                celsius(18),
                kelvinDifference(2),
                Duration.ofDays(1),
                Duration.ofHours(16),
                metresPerSecond(0.5),
                metres(1),
                AIR);
        assertThat(river.waterK().at(16 * 3600)).isCloseTo(ZERO + 20, within(1e-9));
        Prediction day = Lumped.of(BOTTLE).expose(in(river, Duration.ofDays(2)));
        // A bottle in a stream follows the day closely: a time constant of minutes against 24 h.
        assertThat(day.meanTemperatureK(40 * 3600)).isCloseTo(ZERO + 20, within(0.1));
        assertThat(day.meanTemperatureK(28 * 3600)).isCloseTo(ZERO + 16, within(0.1));
        Stream log = Stream.varying(
                Map.of(Duration.ZERO, celsius(12), Duration.ofHours(1), celsius(14)),
                metresPerSecond(0.5),
                metres(1),
                AIR);
        assertThat(log.waterK().at(1800)).isCloseTo(ZERO + 13, within(1e-9));
        assertThat(log.speedMPerS()).isEqualTo(0.5);
        assertThat(log.depthM()).isEqualTo(1);
    }

    @Test
    void itsFilmIsDrawn() {
        Prediction run = Lumped.of(BOTTLE).expose(in(BROOK, Duration.ofMinutes(15)));
        double contribution = LinearSpread.of(run, LawScatter.all())
                .contributionsK(Duration.ofMinutes(10))
                .getOrDefault(Multipliers.STREAM_FILM, 0.0);
        // 20 % of a film that is a few per cent of the resistance.
        assertThat(contribution).isBetween(-0.5, -0.01);
    }

    @Test
    void slopesAreThoseOfTheFlow() {
        for (Orientation orientation : Orientation.values()) {
            Stream stream = BROOK.on(Footing.open()).along();
            Posture posture = orientation == Orientation.LYING_WALL ? Posture.LYING : Posture.INVERTED;
            Link film = link(stream, patch(0.07, orientation), posture);
            Node wall = Node.sensible("wall", 100, ZERO + 18);
            JunctionPath path = JunctionPath.of("outside", Link.of(wall, "conduction", HeatLaw.conductance(20)), film);
            PathDerivatives.check(path, new double[] {ZERO + 18, ZERO + 10}, new double[0], 1e-4);
        }
    }

    @Property(tries = 60, seed = "20261126")
    void fasterWaterNeverCarriesLess(
            @ForAll @DoubleRange(min = 1, max = 30) double waterC,
            @ForAll @DoubleRange(min = 0.2, max = 20) double differenceK,
            @ForAll @DoubleRange(min = 0, max = 2) double speed,
            @ForAll @DoubleRange(min = 0.01, max = 1) double more,
            @ForAll Orientation orientation) {
        WallPatch patch = patch(0.07, orientation);
        HeatFlow slow = new HeatFlow();
        HeatFlow fast = new HeatFlow();
        Posture posture = orientation == Orientation.LYING_WALL ? Posture.LYING : Posture.UPRIGHT;
        link(brook(speed).on(Footing.open()), patch, posture)
                .law()
                .evaluate(ZERO + waterC, ZERO + waterC + differenceK, slow);
        link(brook(speed + more).on(Footing.open()), patch, posture)
                .law()
                .evaluate(ZERO + waterC, ZERO + waterC + differenceK, fast);
        assertThat(fast.watts).isLessThanOrEqualTo(slow.watts).isNegative();
    }

    @Test
    void fastWaterIsCautioned() {
        assertThat(brook(1).open("brook", 0).notes(List.of())).anyMatch(note -> note.contains("carries away"));
        assertThat(BROOK.open("brook", 0).notes(List.of())).isEmpty();
    }

    @Test
    void refusals() {
        refused("stream temperature", () -> Stream.at(celsius(0), metresPerSecond(1), metres(1), AIR));
        refused("stream temperature", () -> Stream.at(celsius(46), metresPerSecond(1), metres(1), AIR));
        refused("speed of the stream", () -> brook(3.1));
        refused("speed of the stream", () -> brook(-0.1));
        refused("depth of the stream", () -> Stream.at(celsius(10), metresPerSecond(1), metres(0.009), AIR));
        refused("depth of the stream", () -> Stream.at(celsius(10), metresPerSecond(1), metres(2.1), AIR));
        refused(
                "amplitude of the stream temperature",
                () -> Stream.periodic(
                        celsius(2),
                        kelvinDifference(3),
                        Duration.ofDays(1),
                        Duration.ZERO,
                        metresPerSecond(1),
                        metres(1),
                        AIR));
        assertThatThrownBy(() -> Stream.varying(Map.of(), metresPerSecond(1), metres(1), AIR))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static void refused(String parameter, ThrowingCallable call) {
        OutOfRangeException refusal = catchThrowableOfType(OutOfRangeException.class, call);
        assertThat(refusal).isNotNull().hasMessageContaining(parameter);
    }
}
