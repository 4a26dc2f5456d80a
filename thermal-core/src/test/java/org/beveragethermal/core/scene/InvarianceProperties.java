/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.core.scene.RandomScenes.between;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.centimetres;
import static org.beveragethermal.materials.units.Measures.cubicMetres;
import static org.beveragethermal.materials.units.Measures.fahrenheit;
import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.prediction.TimeToTemperature.Reached;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;

/** Ways of asking the same that must not change the answer: other units, another clock, pieces of a time, the way back. */
final class InvarianceProperties {

    /** How a person writes down temperatures, volumes and lengths; given in °C, L and mm. */
    private record Writing(
            DoubleFunction<Quantity<Temperature>> temperature,
            DoubleFunction<Quantity<Volume>> volume,
            DoubleFunction<Quantity<Length>> length) {}

    private static final List<Writing> WRITINGS = List.of(
            new Writing(c -> kelvins(c + 273.15), l -> cubicMetres(l / 1000), mm -> metres(mm / 1000)),
            new Writing(c -> fahrenheit(c * 1.8 + 32), l -> millilitres(l * 1000), mm -> centimetres(mm / 10)));
    private static final Writing USUAL = new Writing(c -> celsius(c), l -> litres(l), mm -> millimetres(mm));

    /** A vessel in a room and in a bath, as numbers. */
    private record Numbers(
            Vessel vessel,
            Liquid drink,
            double drinkL,
            double drinkC,
            double airC,
            double wallsC,
            double bucketMm,
            double waterL,
            double waterC,
            int inRoomS,
            int inBathS) {

        static Numbers draw(SplittableRandom random) {
            Vessel vessel = RandomScenes.vessel(random);
            return new Numbers(
                    vessel,
                    RandomScenes.drink(random),
                    between(0.5, 0.9, random) * 1000 * vessel.brimfulVolumeM3(),
                    between(4, 35, random),
                    between(4, 35, random),
                    between(4, 35, random),
                    between(200, 400, random),
                    between(4, 8, random),
                    between(2, 40, random),
                    300 + random.nextInt(1200),
                    300 + random.nextInt(1200));
        }

        Prediction predict(Writing writing) {
            Air room = Air.at(writing.temperature().apply(airC))
                    .withWalls(writing.temperature().apply(wallsC));
            WaterBath bath = WaterBath.of(
                    Bucket.of(writing.length().apply(bucketMm), writing.length().apply(400)),
                    writing.volume().apply(waterL),
                    writing.temperature().apply(waterC),
                    room);
            FilledVessel filled = vessel.filledWith(
                    drink, writing.volume().apply(drinkL), writing.temperature().apply(drinkC));
            return Lumped.of(filled)
                    .expose(in(room, Duration.ofSeconds(inRoomS)), in(bath, Duration.ofSeconds(inBathS)));
        }
    }

    @Property(seed = "20260311")
    @Label("Invariance of units: the same in °C, K and °F, in L, mL and m³, in mm, cm and m")
    void theUnitsInWhichItIsAskedDoNotMatter(@ForAll long seed) {
        Numbers numbers = Numbers.draw(new SplittableRandom(seed));
        Prediction usual = numbers.predict(USUAL);
        for (Writing writing : WRITINGS) {
            Prediction other = numbers.predict(writing);
            for (double part : new double[] {0, 0.1, 0.4, 0.7, 1}) {
                double time = part * usual.trajectory().endS();
                // Surfaces are found to about 1e-9 K; rounding of the inputs moves them by as much, and through the
                // estimates of
                // error the lengths of steps, each of which has an error of up to 1e-3 K: 2.7e-8 K is the most that was
                // seen.
                assertThat(other.meanTemperatureK(time)).isCloseTo(usual.meanTemperatureK(time), within(1e-7));
            }
        }
    }

    @Property(seed = "20260312")
    @Label("Invariance in time: another hour of the clock changes nothing where nothing varies")
    void anotherHourOfTheClockChangesNothingWhereNothingVaries(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        FilledVessel vessel = RandomScenes.filled(random);
        Surroundings gear = RandomScenes.gear(random).surroundings();
        Duration later = Duration.ofSeconds(1 + random.nextInt(100_000));
        VesselModel model = RandomScenes.model(random);
        Prediction now = startingAfter(Duration.ZERO, vessel, model, gear);
        Prediction then = startingAfter(later, vessel, model, gear);
        for (double time : new double[] {1, 60, 300, 600}) {
            assertThat(then.profileK(time)).containsExactly(now.profileK(time));
        }
    }

    @Property(seed = "20260313")
    @Label("Invariance in time: weather and scene that both begin later give the same")
    void weatherAndSceneThatBothBeginLaterGiveTheSame(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        FilledVessel vessel = RandomScenes.filled(random);
        Duration later = Duration.ofSeconds(1 + random.nextInt(50_000));
        Map<Duration, Quantity<Temperature>> early = new LinkedHashMap<>();
        Map<Duration, Quantity<Temperature>> late = new LinkedHashMap<>();
        for (int i = 0; i < 4; i++) {
            Duration at = Duration.ofSeconds(300L * i + random.nextInt(200));
            Quantity<Temperature> air = celsius(between(5, 35, random));
            early.put(at, air);
            late.put(at.plus(later), air);
        }
        Prediction now = startingAfter(Duration.ZERO, vessel, VesselModel.lumped(), Air.varying(early));
        Prediction then = startingAfter(later, vessel, VesselModel.lumped(), Air.varying(late));
        for (double time : new double[] {1, 60, 300, 600}) {
            assertThat(then.meanTemperatureK(time)).isCloseTo(now.meanTemperatureK(time), within(1e-8));
        }
    }

    private static Prediction startingAfter(
            Duration origin, FilledVessel vessel, VesselModel model, Surroundings gear) {
        return Scene.builder()
                .startingAfter(origin)
                .gear("gear", gear)
                .vessel("vessel", vessel, "gear", model, Posture.UPRIGHT)
                .build()
                .predict(Duration.ofMinutes(10))
                .vessel("vessel");
    }

    @Property(seed = "20260314")
    @Label("Splitting changes nothing: one exposure in up to five pieces")
    void splittingAnExposureChangesNothing(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        FilledVessel vessel = RandomScenes.filled(random);
        Surroundings gear = RandomScenes.gear(random).surroundings();
        VesselModel model = RandomScenes.model(random);
        List<Exposure> pieces = new ArrayList<>();
        Duration sum = Duration.ZERO;
        for (int i = 0; i <= 1 + random.nextInt(4); i++) {
            Duration piece = Duration.ofMillis(1000 + random.nextInt(600_000));
            pieces.add(in(gear, piece));
            sum = sum.plus(piece);
        }
        // Steps fall otherwise when a run begins anew, and where a column overturns an error of theirs grows a
        // hundredfold.
        NetworkSolver solver = NetworkSolver.standard().withToleranceK(1e-4);
        Prediction whole = Layered.of(vessel, model).with(solver).expose(in(gear, sum));
        Prediction split = Layered.of(vessel, model).with(solver).expose(pieces);
        for (double part : new double[] {0.1, 0.3, 0.5, 0.8, 1}) {
            double time = part * whole.trajectory().endS();
            double[] profile = whole.profileK(time);
            double[] again = split.profileK(time);
            for (int i = 0; i < profile.length; i++) {
                assertThat(again[i]).isCloseTo(profile[i], within(5e-3));
            }
        }
    }

    @Property(seed = "20260315")
    @Label("Inverse ∘ forward = identity: at the time it is first reached the drink has the temperature")
    void atTheTimeItIsFirstReachedItHasTheTemperature(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        FilledVessel vessel = RandomScenes.filled(random);
        Prediction run = Layered.of(vessel, RandomScenes.model(random))
                .expose(
                        in(RandomScenes.gear(random).surroundings(), Duration.ofSeconds(200 + random.nextInt(600))),
                        in(RandomScenes.gear(random).surroundings(), Duration.ofSeconds(200 + random.nextInt(600))));
        double end = run.trajectory().endS();
        double time = end * random.nextDouble();
        double wanted = run.meanTemperatureK(time);
        double found = seconds(run.timeToK(wanted, 0));
        assertThat(found).isLessThanOrEqualTo(time + toleranceS(run, time));
        // Answers are rounded to a millisecond.
        double rounding = 0.5e-3 * rateKPerS(run, found) + 1e-6;
        assertThat(run.meanTemperatureK(Math.min(end, found))).isCloseTo(wanted, within(rounding));
        // Nothing before passes it: all the way the drink stays on the side on which it was at the start.
        double side = Math.signum(run.meanTemperatureK(0) - wanted);
        for (int i = 0; i < 50; i++) {
            double before = found * i / 50;
            assertThat(side * (run.meanTemperatureK(before) - wanted)).isGreaterThanOrEqualTo(-rounding);
        }
    }

    /** Half of the millisecond to which answers are rounded, and how long the mean temperature takes for 1 µK there. */
    private static double toleranceS(Prediction run, double timeS) {
        return 0.5e-3 + 1e-6 / Math.max(rateKPerS(run, timeS), 1e-9);
    }

    private static double rateKPerS(Prediction run, double timeS) {
        double to = Math.min(run.trajectory().endS(), timeS + 0.01);
        double from = Math.max(0, timeS - 0.01);
        return Math.abs(run.meanTemperatureK(to) - run.meanTemperatureK(from)) / (to - from);
    }

    private static double seconds(TimeToTemperature answer) {
        Duration after = answer instanceof Reached reached
                ? reached.after()
                : ((TimeToTemperature.ReachedThenLost) answer).after();
        return after.toMillis() / 1000.0;
    }
}
