/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongSupplier;
import org.beveragethermal.examples.internal.WholeFile;
import org.beveragethermal.service.tracking.Estimate;
import org.beveragethermal.service.tracking.TrackedVessel;

/**
 * Watches a thousand bottles from a CSV file of readings with the columns {@code at}, {@code bottle} and {@code temperature_celsius}, in
 * the order of time. The file is followed row by row, never held whole. Where no file is named one is invented.
 */
public final class CellarLogger {

    private static final int DONE = 0;
    private static final int REFUSED = 2;
    private static final int BOTTLES = 1000;
    private static final Duration LASTS = Duration.ofDays(3);
    private static final Duration STEP = Duration.ofMinutes(30);
    private static final long SEED = 20_270_111;
    private static final int SHOWN = 4;
    private static final int MOST_LEFT_OUT_SHOWN = 20;
    private static final double NANO = 1e-9;

    private CellarLogger() {}

    /**
     * Runs the logger and ends the virtual machine with its exit status: 0, or 2 where the file is refused.
     *
     * @param args the file of readings, or nothing for an invented one, written to {@code target/embedding/cellar.csv}
     */
    public static void main(String[] args) {
        System.exit(run(
                args,
                new PrintStream(System.out, true, StandardCharsets.UTF_8),
                new PrintStream(System.err, true, StandardCharsets.UTF_8),
                System::nanoTime));
    }

    static int run(String[] args, PrintStream out, PrintStream err, LongSupplier nanos) {
        try {
            Path file = args.length == 0 ? invented(out) : Path.of(args[0]);
            watch(file, out, err, nanos);
            return DONE;
        } catch (InvalidPathException e) {
            err.println("the file's name is none: " + e.getReason());
        } catch (IllegalArgumentException e) {
            err.println("readings are refused: " + e.getMessage());
        } catch (IOException e) {
            err.println("readings cannot be read or written: " + e);
        }
        return REFUSED;
    }

    private static Path invented(PrintStream out) throws IOException {
        Path folder = Path.of("target", "embedding");
        Files.createDirectories(folder);
        Path file = folder.resolve("cellar.csv");
        WholeFile.write(file, CellarReadings.csv(BOTTLES, LASTS, STEP, SEED));
        out.println("Readings, all of them invented: " + file);
        return file;
    }

    private static void watch(Path file, PrintStream out, PrintStream err, LongSupplier nanos) throws IOException {
        Teller teller = new Teller(out, err);
        long before = nanos.getAsLong();
        CellarLog.Summary summary;
        // What is not UTF-8 becomes a character that no field may have, and only its row is left out.
        try (Reader reader = new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8)) {
            summary = CellarLog.follow(reader, CellarHouse.invented(), teller);
        }
        double seconds = (nanos.getAsLong() - before) * NANO;
        teller.counts.forEach((kind, count) -> out.println(kind + ": " + count));
        out.printf(
                Locale.ROOT,
                "%d bottles, %d rows in %.1f s; %d readings not used, %d rows left out%n",
                summary.vessels().size(),
                summary.rows(),
                seconds,
                summary.unusable(),
                summary.leftOut());
        summary.vessels().stream()
                .max(Comparator.comparingDouble(vessel -> vessel.estimate().temperatureK()))
                .ifPresent(warmest -> out.println("warmest at the end: " + told(warmest)));
    }

    private static String told(TrackedVessel vessel) {
        Estimate now = vessel.estimate();
        return String.format(
                Locale.ROOT,
                "%s, %.1f °C (90 %% interval %.1f to %.1f)",
                vessel.id(),
                now.temperatureK() - EventFields.ZERO_CELSIUS_K,
                now.lowK() - EventFields.ZERO_CELSIUS_K,
                now.highK() - EventFields.ZERO_CELSIUS_K);
    }

    /** Shows the first alerts of each kind and the first rows that are left out; the others are counted. */
    private static final class Teller implements CellarLog.Listener {
        private final PrintStream out;
        private final PrintStream err;
        private final Map<CellarAlert.Kind, Integer> counts = new EnumMap<>(CellarAlert.Kind.class);
        private int leftOut;

        private Teller(PrintStream out, PrintStream err) {
            this.out = out;
            this.err = err;
        }

        @Override
        public void alert(CellarAlert alert) {
            if (counts.merge(alert.kind(), 1, Integer::sum) <= SHOWN) {
                out.println(alert.at() + " " + alert.kind() + ": " + alert.text());
            }
        }

        @Override
        public void leftOut(CellarRow.Bad row) {
            leftOut++;
            if (leftOut <= MOST_LEFT_OUT_SHOWN) {
                err.println("line " + row.line() + " is left out: " + row.why());
            } else if (leftOut == MOST_LEFT_OUT_SHOWN + 1) {
                err.println("more rows are left out and only counted");
            }
        }
    }
}
