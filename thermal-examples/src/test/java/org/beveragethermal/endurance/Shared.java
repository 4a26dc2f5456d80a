/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.beveragethermal.core.batch.BatchLaw;
import org.beveragethermal.core.batch.BatchNetwork;
import org.beveragethermal.core.batch.BatchSamples;
import org.beveragethermal.core.batch.BatchSolver;
import org.beveragethermal.core.curve.CoolingCurve;
import org.beveragethermal.core.curve.VesselCurve;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Layered;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.solver.UnrecordedRun;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.examples.surroundings.StoneTrough;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.tracking.Estimate;
import org.beveragethermal.service.tracking.MediumLaw;
import org.beveragethermal.service.tracking.Sensor;
import org.beveragethermal.service.tracking.TrackedModel;
import org.beveragethermal.service.tracking.TrackedVessel;
import org.beveragethermal.service.tracking.Tracker;
import org.beveragethermal.service.tracking.TrackingEvent;
import org.beveragethermal.service.tracking.TrackingRules;

/** Objects that threads share, each with a question whose answer is numbers. */
final class Shared {
    static final double ZERO_C = 273.15;
    static final Duration TWO_HOURS = Duration.ofHours(2);
    static final Instant START = Instant.parse("2027-06-18T15:00:00Z");

    static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    static final Refrigerator REFRIGERATOR = Refrigerator.at(celsius(5));
    static final Air ROOM = Air.at(celsius(24));
    static final HeatLaw FILM = HeatLaw.of((x, y) -> 0.25 * (x - y) * Math.sqrt(Math.sqrt(Math.abs(x - y))));

    /**
     * One object and a question.
     *
     * @param name what is shared
     * @param times how often it is asked in a row, so that threads meet in what answers at once
     * @param answer asks it
     */
    record Question(String name, int times, Supplier<double[]> answer) {}

    private Shared() {}

    /** Each call makes new objects, so that the first answer of each is asked too. */
    static List<Question> questions() {
        return List.of(
                lumped(),
                prediction(
                        Lumped.of(BOTTLE).expose(in(REFRIGERATOR, TWO_HOURS), in(ROOM, TWO_HOURS)),
                        "prediction, lumped"),
                prediction(
                        Layered.axial(BOTTLE).expose(in(REFRIGERATOR, Duration.ofMinutes(20))), "prediction, slices"),
                scene(),
                trough(),
                curve(),
                network(),
                unrecorded(),
                batch(),
                tracker());
    }

    private static Question lumped() {
        Lumped model = Lumped.of(BOTTLE);
        return new Question(
                "lumped model",
                5,
                () -> model.expose(in(REFRIGERATOR, TWO_HOURS)).meanTemperaturesK(times(TWO_HOURS)));
    }

    private static double[] times(Duration end) {
        return IntStream.rangeClosed(0, 20)
                .mapToDouble(i -> i * end.toSeconds() / 20.0)
                .toArray();
    }

    private static Question prediction(Prediction shared, String name) {
        return new Question(name, 5, () -> {
            double[] means = shared.meanTemperaturesK(times(shared.end()));
            double[] top = shared.topTemperaturesK(times(shared.end()));
            double reached = shared.timeTo(celsius(15)) instanceof TimeToTemperature.Reached r
                    ? r.after().toNanos()
                    : -1;
            double words =
                    shared.explainAt(shared.end().dividedBy(2)).toString().hashCode();
            return joined(means, top, new double[] {
                reached, words, shared.ledger().totalHeatJ(), shared.ledger().largestImbalanceJ()
            });
        });
    }

    private static Question scene() {
        Scene scene = Scene.builder()
                .gear(
                        "bucket",
                        IceWaterBath.of(
                                Bucket.of(millimetres(200), millimetres(230)), kilograms(2), kilograms(2), ROOM))
                .gear("room", ROOM)
                .vessel("bottle", BOTTLE, "bucket")
                .move("bottle", Duration.ofMinutes(15), "room")
                .build();
        Duration end = Duration.ofMinutes(25);
        return new Question(
                "scene with a bath",
                1,
                () -> scene.predict(end).vessel("bottle").meanTemperaturesK(times(end)));
    }

    private static Question trough() {
        StoneTrough trough = StoneTrough.of(Solids.granite(), millimetres(95), millimetres(200), millimetres(40), ROOM)
                .startingAt(celsius(4));
        return new Question(
                "surroundings of a user's own",
                3,
                () -> Lumped.of(BOTTLE).expose(in(trough, TWO_HOURS)).meanTemperaturesK(times(TWO_HOURS)));
    }

    static CoolingCurve newCurve() {
        return VesselCurve.of(BOTTLE, REFRIGERATOR).prepare(celsius(6), celsius(24));
    }

    private static Question curve() {
        CoolingCurve curve = newCurve();
        return new Question(
                "cooling curve",
                100,
                () -> IntStream.range(0, 200)
                        .mapToDouble(i -> i % 2 == 0
                                ? curve.timeS(ZERO_C + 12 + 0.05 * i, ZERO_C + 7 + 0.02 * i)
                                : curve.temperatureK(ZERO_C + 12 + 0.05 * i, 30.0 * i))
                        .toArray());
    }

    static Network newNetwork(HeatLaw film) {
        Node drink = Node.sensible("drink", 3100, 295.15);
        Node glass = Node.sensible("glass", 400, 295.15);
        Boundary air = Boundary.constant("air", 277.15);
        return Network.of(
                List.of(drink, glass),
                List.of(
                        DirectPath.of("inside", drink, glass, "convection", HeatLaw.conductance(12)),
                        DirectPath.of("outside", glass, air, "convection", film)));
    }

    private static Question network() {
        Network network = newNetwork(FILM);
        NetworkSolver solver = NetworkSolver.standard();
        return new Question("network and solver", 20, () -> {
            Trajectory run = solver.solve(network, 7200);
            Node drink = network.nodes().get(0);
            return IntStream.range(0, 20)
                    .mapToDouble(i -> run.temperatureK(drink, 360.0 * i))
                    .toArray();
        });
    }

    private static Question unrecorded() {
        PreparedNetwork prepared = newNetwork(FILM).prepare();
        NetworkSolver solver = NetworkSolver.standard();
        return new Question("prepared network", 40, () -> {
            Node drink = prepared.network().nodes().get(0);
            UnrecordedRun run = solver.unrecorded(prepared);
            return IntStream.range(0, 10)
                    .mapToDouble(i -> run.timeToReach(drink, 282 + i, 1e6).orElse(-1))
                    .toArray();
        });
    }

    static BatchSamples newSamples(int count, BatchLaw outside) {
        return BatchNetwork.builder()
                .node("drink")
                .node("glass")
                .boundary("air")
                .link("inside", "drink", "glass", BatchLaw.conductance(12))
                .link("outside", "glass", "air", outside)
                .build()
                .samples(count)
                .capacityJPerK("drink", 3100)
                .capacityJPerK("glass", 400)
                .startK(
                        "drink",
                        IntStream.range(0, count)
                                .mapToDouble(i -> 290 + 10.0 * i / count)
                                .toArray())
                .startK("glass", 293)
                .boundaryK("air", 277.15)
                .build();
    }

    private static Question batch() {
        BatchSolver solver = BatchSolver.standard();
        BatchSamples samples = newSamples(200, BatchLaw.of(FILM));
        return new Question("batch", 5, () -> solver.timesToS(samples, "drink", 283, 1e6));
    }

    static Tracker newTracker() {
        TrackedModel model = TrackedModel.of(
                "bottle",
                List.of(
                        new MediumLaw("cold", 1.2e-4, 5e-5, 0.1, ZERO_C + 4, 0.6, 0.25, 0),
                        new MediumLaw("room", 6e-5, 3e-5, 0.1, ZERO_C + 22, 1, 0.25, 0)),
                Sensor.inDrink(0.3, 0.1).withBias(0.2));
        return Tracker.of(List.of(model), TrackingRules.usual());
    }

    /** An evening of a vessel: readings of a course that cools, a move and a pour. */
    static TrackingEvent event(String vessel, int i) {
        Instant at = START.plusSeconds(60L * i);
        if (i == 0) {
            return new TrackingEvent.Placed(vessel + i, at, vessel, "bottle", "cold", ZERO_C + 21, 1);
        }
        return switch (i % 50) {
            case 30 -> new TrackingEvent.Moved(vessel + i, at, vessel, i % 100 < 50 ? "room" : "cold");
            case 40 -> new TrackingEvent.TimePassed(vessel + i, at, vessel);
            default ->
                new TrackingEvent.Reading(
                        vessel + i, at, vessel, ZERO_C + 12 + 6 * Math.cos(i / 60.0) + 0.3 * Math.sin(i * 7.0));
        };
    }

    private static Question tracker() {
        Tracker tracker = newTracker();
        return new Question("tracker", 10, () -> {
            Optional<TrackedVessel> vessel = Optional.empty();
            List<Double> numbers = new ArrayList<>();
            for (int i = 0; i < 120; i++) {
                vessel = tracker.apply(vessel, event("bottle 1", i)).vessel();
                Estimate estimate = vessel.orElseThrow().estimate();
                numbers.add(estimate.temperatureK());
                numbers.add(estimate.sdK());
            }
            return numbers.stream().mapToDouble(Double::doubleValue).toArray();
        });
    }

    private static double[] joined(double[]... parts) {
        return java.util.Arrays.stream(parts)
                .flatMapToDouble(java.util.Arrays::stream)
                .toArray();
    }
}
