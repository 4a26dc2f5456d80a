/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.millimetres;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.beveragethermal.core.batch.BatchLaw;
import org.beveragethermal.core.batch.BatchSamples;
import org.beveragethermal.core.batch.BatchSolver;
import org.beveragethermal.core.calibration.log.LogFormat;
import org.beveragethermal.core.calibration.log.LogReader;
import org.beveragethermal.core.calibration.log.TemperatureLog;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.network.SensibleStore;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.RunCancelledException;
import org.beveragethermal.core.solver.RunMonitor;
import org.beveragethermal.core.solver.SolverException;
import org.beveragethermal.core.solver.UnrecordedRun;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.examples.internal.WholeFile;
import org.beveragethermal.examples.scenario.ScenarioReader;
import org.beveragethermal.examples.sheet.PlanRequests;
import org.beveragethermal.examples.surroundings.StoneTrough;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.service.plan.PlanLimits;
import org.beveragethermal.service.plan.PlanMonitor;
import org.beveragethermal.service.plan.PlanRequest;
import org.beveragethermal.service.plan.Planner;
import org.beveragethermal.service.plan.ServicePlan;
import org.beveragethermal.service.tracking.Fleet;
import org.beveragethermal.service.tracking.TrackingEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** After a fault of others the same objects answer as before. */
final class FaultsTest {
    private static final double END_S = 7200;

    /** A fault of a user's own part. */
    private static final class Fault extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Fault() {
            super("a fault of a user's own part");
        }
    }

    @TempDir
    Path folder;

    @AfterEach
    void nobodyElseIsInterrupted() {
        Thread.interrupted();
    }

    private static double[] course(Lumped model, Surroundings surroundings) {
        return model.expose(in(surroundings, Shared.TWO_HOURS)).meanTemperaturesK(0, 600, 3600, END_S);
    }

    @Test
    void anInterruptedPredictionMayBeAskedAgain() {
        Lumped model = Lumped.of(Shared.BOTTLE);
        double[] before = course(model, Shared.REFRIGERATOR);
        Thread.currentThread().interrupt();
        assertThatExceptionOfType(RunCancelledException.class)
                .isThrownBy(() -> course(model, Shared.REFRIGERATOR))
                .satisfies(e -> assertThat(e.interrupted()).isTrue());
        assertThat(Thread.interrupted()).isTrue();
        assertThat(course(model, Shared.REFRIGERATOR)).isEqualTo(before);
    }

    /** From another thread, while a scene runs. */
    @Test
    void aSceneInterruptedFromOutsideMayBeAskedAgain() throws InterruptedException {
        Scene scene = Scene.builder()
                .gear("room", Shared.ROOM)
                .vessel("bottle", Shared.BOTTLE, "room")
                .build();
        double[] before = scene.predict(Shared.TWO_HOURS).vessel("bottle").meanTemperaturesK(0, 600, END_S);
        AtomicBoolean ended = new AtomicBoolean();
        Thread runs = new Thread(() -> {
            try {
                while (!ended.get()) {
                    scene.predict(Shared.TWO_HOURS);
                }
            } catch (RunCancelledException e) {
                ended.set(e.interrupted());
            }
        });
        runs.start();
        runs.interrupt();
        runs.join();
        assertThat(ended).isTrue();
        assertThat(scene.predict(Shared.TWO_HOURS).vessel("bottle").meanTemperaturesK(0, 600, END_S))
                .isEqualTo(before);
    }

    private static PlanRequest request() {
        return PlanRequests.from(ScenarioReader.parse(
                "one-bottle.json", new String(Corpus.files("one-bottle.json").get(0), StandardCharsets.UTF_8)));
    }

    private static String told(ServicePlan plan) {
        return plan.instructions() + "\n" + plan.bottles() + "\n" + plan.notes();
    }

    @Test
    void aPlanInterruptedOrCancelledOrDisturbedMayBeMadeAgain() {
        PlanRequest request = request();
        String before = told(Planner.plan(request));
        for (PlanMonitor.Stage stage : PlanMonitor.Stage.values()) {
            assertThatExceptionOfType(CancellationException.class)
                    .isThrownBy(() -> Planner.plan(request, PlanLimits.standard(), (at, part) -> at != stage));
            assertThatExceptionOfType(Fault.class)
                    .isThrownBy(() -> Planner.plan(request, PlanLimits.standard(), (at, part) -> {
                        if (at == stage) {
                            throw new Fault();
                        }
                        return true;
                    }));
        }
        assertThatExceptionOfType(RunCancelledException.class)
                .isThrownBy(() -> Planner.plan(request, PlanLimits.standard(), (at, part) -> {
                    if (at == PlanMonitor.Stage.COUPLED_RUN) {
                        Thread.currentThread().interrupt();
                    }
                    return true;
                }))
                .satisfies(e -> assertThat(e.interrupted()).isTrue());
        assertThat(Thread.interrupted()).isTrue();
        assertThat(told(Planner.plan(request))).isEqualTo(before);
    }

    @Test
    void aMonitorThatThrowsOrCancelsLeavesItsSolverUsable() {
        AtomicInteger steps = new AtomicInteger();
        AtomicInteger mode = new AtomicInteger();
        RunMonitor monitor = (reached, end, count) -> {
            if (mode.get() == 1 && steps.incrementAndGet() > 3) {
                throw new Fault();
            }
            return mode.get() != 2 || reached < 1000;
        };
        NetworkSolver solver = NetworkSolver.standard().withMonitor(monitor);
        Network network = Shared.newNetwork(Shared.FILM);
        PreparedNetwork prepared = network.prepare();
        UnrecordedRun run = solver.unrecorded(prepared);
        Node drink = network.nodes().get(0);
        double before = solver.solve(network, END_S).temperatureK(drink, 5000);
        double timeBefore = run.timeToReach(drink, 285, 1e6).orElseThrow();
        mode.set(1);
        assertThatExceptionOfType(Fault.class).isThrownBy(() -> solver.solve(network, END_S));
        assertThatExceptionOfType(Fault.class).isThrownBy(() -> run.timeToReach(drink, 285, 1e6));
        mode.set(2);
        assertThatExceptionOfType(RunCancelledException.class).isThrownBy(() -> solver.solve(network, END_S));
        assertThatExceptionOfType(RunCancelledException.class).isThrownBy(() -> run.timeToReach(drink, 285, 1e6));
        mode.set(0);
        assertThat(solver.solve(network, END_S).temperatureK(drink, 5000)).isEqualTo(before);
        assertThat(run.timeToReach(drink, 285, 1e6)).hasValue(timeBefore);
    }

    @Test
    void aLawThatThrowsLeavesNetworkAndRunUsable() {
        AtomicBoolean fails = new AtomicBoolean();
        HeatLaw law = (from, to, out) -> {
            if (fails.get() && from < 290) {
                throw new Fault();
            }
            Shared.FILM.evaluate(from, to, out);
        };
        Network network = Shared.newNetwork(law);
        UnrecordedRun run = NetworkSolver.standard().unrecorded(network.prepare());
        Node drink = network.nodes().get(0);
        double before = NetworkSolver.standard().solve(network, END_S).temperatureK(drink, END_S);
        double timeBefore = run.timeToReach(drink, 285, 1e6).orElseThrow();
        fails.set(true);
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> NetworkSolver.standard().solve(network, END_S))
                .withCauseInstanceOf(Fault.class)
                .satisfies(e -> assertThat(e.obstacle()).isEqualTo("outside"));
        assertThatExceptionOfType(SolverException.class).isThrownBy(() -> run.timeToReach(drink, 285, 1e6));
        fails.set(false);
        assertThat(NetworkSolver.standard().solve(network, END_S).temperatureK(drink, END_S))
                .isEqualTo(before);
        assertThat(run.timeToReach(drink, 285, 1e6)).hasValue(timeBefore);
    }

    @Test
    void aStoreThatThrowsLeavesItsNodeUsable() {
        AtomicBoolean fails = new AtomicBoolean();
        SensibleStore plain = new SensibleStore(3100);
        Store store = new Store() {
            @Override
            public int amountCount() {
                return 0;
            }

            @Override
            public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
                plain.evaluate(enthalpyJ, amounts, offset, out);
                if (fails.get() && out.temperatureK < 290) {
                    throw new Fault();
                }
            }

            @Override
            public double enthalpyJ(double temperatureK, double... amounts) {
                return plain.enthalpyJ(temperatureK, amounts);
            }
        };
        Node drink = Node.of("drink", store, 295.15);
        Network network = Network.of(
                List.of(drink),
                List.of(DirectPath.of("film", drink, Boundary.constant("air", 277.15), "convection", Shared.FILM)));
        NetworkSolver solver = NetworkSolver.standard();
        double before = solver.solve(network, 100_000).temperatureK(drink, 90_000);
        fails.set(true);
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> solver.solve(network, 100_000))
                .withCauseInstanceOf(Fault.class)
                .satisfies(e -> assertThat(e.obstacle()).isEqualTo("drink"));
        fails.set(false);
        assertThat(solver.solve(network, 100_000).temperatureK(drink, 90_000)).isEqualTo(before);
    }

    @Test
    void surroundingsThatThrowLeaveModelAndSceneUsable() {
        StoneTrough trough = StoneTrough.of(
                        Solids.granite(), millimetres(95), millimetres(200), millimetres(40), Shared.ROOM)
                .startingAt(celsius(4));
        AtomicBoolean fails = new AtomicBoolean();
        Surroundings own = new Surroundings() {
            @Override
            public Medium open(String id, double originS) {
                if (fails.get()) {
                    throw new Fault();
                }
                return trough.open(id, originS);
            }
        };
        Lumped model = Lumped.of(Shared.BOTTLE);
        Scene scene = Scene.builder()
                .gear("trough", own)
                .vessel("bottle", Shared.BOTTLE, "trough")
                .build();
        double[] before = course(model, own);
        double sceneBefore = scene.predict(Shared.TWO_HOURS).vessel("bottle").meanTemperatureK(END_S);
        fails.set(true);
        assertThatExceptionOfType(Fault.class).isThrownBy(() -> course(model, own));
        assertThatExceptionOfType(Fault.class).isThrownBy(() -> scene.predict(Shared.TWO_HOURS));
        fails.set(false);
        assertThat(course(model, own)).isEqualTo(before).isEqualTo(course(Lumped.of(Shared.BOTTLE), trough));
        assertThat(scene.predict(Shared.TWO_HOURS).vessel("bottle").meanTemperatureK(END_S))
                .isEqualTo(sceneBefore);
    }

    @Test
    void aBatchThatFailsOrIsCancelledMayBeAskedAgain() {
        AtomicBoolean fails = new AtomicBoolean();
        AtomicBoolean goesOn = new AtomicBoolean(true);
        BatchSamples samples = Shared.newSamples(3000, BatchLaw.of(HeatLaw.of((x, y) -> {
            if (fails.get()) {
                throw new Fault();
            }
            return 0.6 * (x - y);
        })));
        BatchSolver solver = BatchSolver.standard().withMonitor((reached, end, count) -> goesOn.get());
        double[] before = solver.timesToS(samples, "drink", 283, 1e6);
        fails.set(true);
        assertThatExceptionOfType(RuntimeException.class)
                .isThrownBy(() -> solver.timesToS(samples, "drink", 283, 1e6))
                .satisfiesAnyOf(
                        e -> assertThat(e).isInstanceOf(Fault.class),
                        e -> assertThat(e).hasRootCauseInstanceOf(Fault.class));
        fails.set(false);
        goesOn.set(false);
        assertThatExceptionOfType(RunCancelledException.class)
                .isThrownBy(() -> solver.timesToS(samples, "drink", 283, 1e6));
        goesOn.set(true);
        assertThat(solver.timesToS(samples, "drink", 283, 1e6)).isEqualTo(before);
    }

    /** What an executor refuses is not done by half. */
    @Test
    void aFleetWhoseExecutorRefusesIsAsBefore() {
        List<TrackingEvent> first = events(0, 10);
        List<TrackingEvent> then = events(10, 20);
        Fleet fleet = Fleet.of(Shared.newTracker());
        fleet.apply(first);
        List<?> before = fleet.snapshots();
        AtomicInteger taken = new AtomicInteger();
        Executor refusing = task -> {
            if (taken.incrementAndGet() > 2) {
                throw new RejectedExecutionException("enough");
            }
            task.run();
        };
        assertThatExceptionOfType(RejectedExecutionException.class).isThrownBy(() -> fleet.apply(then, refusing, 8));
        assertThat(fleet.snapshots()).isEqualTo(before);
        Fleet undisturbed = Fleet.of(Shared.newTracker());
        undisturbed.apply(first);
        assertThat(fleet.apply(then, Runnable::run, 8)).isEqualTo(undisturbed.apply(then));
        assertThat(fleet.snapshots()).isEqualTo(undisturbed.snapshots());
    }

    private static List<TrackingEvent> events(int from, int until) {
        return IntStream.range(from, until)
                .boxed()
                .flatMap(i -> IntStream.range(0, 12).mapToObj(v -> Shared.event("bottle " + v, i)))
                .toList();
    }

    @Test
    void aLogWhoseReadingIsInterruptedMayBeReadAgain() throws IOException {
        byte[] bytes = Corpus.files("iso.csv").get(0);
        TemperatureLog before = LogReader.read(new ByteArrayInputStream(bytes), LogFormat.inferred())
                .log();
        InputStream breaks = new InputStream() {
            private final InputStream whole = new ByteArrayInputStream(bytes);
            private int taken;

            @Override
            public int read() throws IOException {
                throw new InterruptedIOException("interrupted");
            }

            @Override
            public int read(byte[] b, int offset, int length) throws IOException {
                if (taken > 40) {
                    throw new InterruptedIOException("interrupted");
                }
                int got = whole.read(b, offset, Math.min(length, 50));
                taken += got;
                return got;
            }
        };
        assertThatExceptionOfType(InterruptedIOException.class)
                .isThrownBy(() -> LogReader.read(breaks, LogFormat.inferred()));
        assertThat(LogReader.read(new ByteArrayInputStream(bytes), LogFormat.inferred())
                        .log())
                .isEqualTo(before);
    }

    /** The JDK does not break off the reading of a file; what interrupted the thread is not lost either. */
    @Test
    void filesAreReadAndWrittenWholeByAnInterruptedThread() throws IOException {
        Path file = Path.of("scenarios", "two-sittings.json");
        Path log =
                Files.write(folder.resolve("log.csv"), Corpus.files("iso.csv").get(0));
        Path sheet = folder.resolve("sheet.html");
        WholeFile.write(sheet, "before");
        Thread.currentThread().interrupt();
        int drinks = ScenarioReader.read(file).drinks().size();
        TemperatureLog read = LogReader.read(log, LogFormat.inferred()).log();
        WholeFile.write(sheet, "after");
        assertThat(Thread.interrupted()).isTrue();
        assertThat(drinks).isEqualTo(6);
        assertThat(read).isEqualTo(LogReader.read(log, LogFormat.inferred()).log());
        assertThat(sheet).hasContent("after");
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("log.csv", "sheet.html");
    }
}
