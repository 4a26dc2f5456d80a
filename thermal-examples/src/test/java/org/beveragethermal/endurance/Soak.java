/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import static org.beveragethermal.materials.units.Measures.celsius;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.beveragethermal.core.batch.BatchLaw;
import org.beveragethermal.core.batch.BatchSamples;
import org.beveragethermal.core.batch.BatchSolver;
import org.beveragethermal.core.curve.CoolingCurve;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.service.tracking.TrackedVessel;
import org.beveragethermal.service.tracking.Tracker;

/**
 * Ten million predictions and a million readings in one small virtual machine: does the heap grow, does it slow down? Run with {@code mvn
 * -q -DskipTests -Psoak -pl thermal-examples -am package}.
 */
@SuppressWarnings("UnnecessaryLambda") // the parts are values in a table
public final class Soak {
    private static final int CURVE = 4_900_000;
    private static final int BATCH = 5_000_000;
    private static final int SCENES = 100_000;
    private static final int READINGS = 1_000_000;
    private static final int LANES = 10_000;
    private static final int VESSELS = 1000;
    private static final int TENTHS = 10;
    private static final double NANOS_PER_MS = 1e6;
    private static final double MIB = 1024.0 * 1024.0;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    /** What the answers add up to, so that none may be left out. */
    private double sum;

    private Soak() {}

    /**
     * Prints a row for each part.
     *
     * @param args part of the full numbers, 1 unless given
     */
    public static void main(String[] args) {
        double part = args.length > 0 ? Double.parseDouble(args[0]) : 1;
        Soak soak = new Soak();
        soak.row("questions to a prepared curve", (int) (CURVE * part), 1, curve());
        soak.row("samples of a batch, two nodes", (int) (BATCH * part), LANES, batch());
        soak.row("scene predictions, a bottle in a refrigerator, then in a room", (int) (SCENES * part), 1, scenes());
        soak.row("readings, " + VESSELS + " vessels", (int) (READINGS * part), 1, readings());
        System.out.println(
                String.format(Locale.ROOT, "heap at the end: %.1f MiB; checksum %.6g", soak.heapMiB(), soak.sum));
    }

    private static IntToDoubleFunction curve() {
        CoolingCurve curve = Shared.newCurve();
        return i -> curve.timeS(Shared.ZERO_C + 15 + (i % 997) * 0.008, Shared.ZERO_C + 7 + (i % 89) * 0.08);
    }

    /** New samples each time, as an ensemble would ask. */
    private static IntToDoubleFunction batch() {
        BatchLaw film = BatchLaw.of(Shared.FILM);
        return i -> {
            BatchSamples samples = Shared.newSamples(LANES, film);
            return BatchSolver.standard().timesToS(samples, "drink", 283, 1e6)[i % LANES];
        };
    }

    private static IntToDoubleFunction scenes() {
        return i -> Scene.builder()
                .gear("refrigerator", Shared.REFRIGERATOR)
                .gear("room", Shared.ROOM)
                .vessel(
                        "bottle",
                        Shared.BOTTLE.vessel().filledWith(Shared.BOTTLE.liquid(), celsius(15 + (i % 100) * 0.1)),
                        "refrigerator")
                .move("bottle", Shared.TWO_HOURS.dividedBy(2), "room")
                .build()
                .predict(Shared.TWO_HOURS)
                .vessel("bottle")
                .meanTemperatureK(5000);
    }

    private static IntToDoubleFunction readings() {
        Tracker tracker = Shared.newTracker();
        TrackedVessel[] vessels = new TrackedVessel[VESSELS];
        String[] ids = IntStream.range(0, VESSELS).mapToObj(i -> "bottle " + i).toArray(String[]::new);
        return i -> {
            int which = i % VESSELS;
            vessels[which] = tracker.apply(Optional.ofNullable(vessels[which]), Shared.event(ids[which], i / VESSELS))
                    .vessel()
                    .orElseThrow();
            return vessels[which].estimate().temperatureK();
        };
    }

    /** Runs a part; the first tenth warms up and is not compared. */
    private void row(String name, int count, int perCall, IntToDoubleFunction call) {
        int calls = Math.max(TENTHS, count / perCall);
        double[] millisPerThousand = new double[TENTHS];
        double[] heap = new double[TENTHS];
        int done = 0;
        for (int tenth = 0; tenth < TENTHS; tenth++) {
            int until = (int) ((long) calls * (tenth + 1) / TENTHS);
            int from = done;
            long start = threads.getCurrentThreadCpuTime();
            for (; done < until; done++) {
                sum += call.applyAsDouble(done);
            }
            long took = threads.getCurrentThreadCpuTime() - start;
            millisPerThousand[tenth] = took / NANOS_PER_MS / ((until - from) * (double) perCall) * 1000;
            heap[tenth] = heapMiB();
        }
        System.out.println(String.format(
                Locale.ROOT,
                "| %s | %,d | %.1f | %.1f | %.1f | %.4g | %.4g | %.4g |",
                name,
                calls * perCall,
                heap[0],
                heap[TENTHS / 2],
                heap[TENTHS - 1],
                millisPerThousand[1],
                millisPerThousand[TENTHS / 2],
                millisPerThousand[TENTHS - 1]));
    }

    /** What is still in use after everything that can go has gone. */
    private double heapMiB() {
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / MIB;
    }
}
