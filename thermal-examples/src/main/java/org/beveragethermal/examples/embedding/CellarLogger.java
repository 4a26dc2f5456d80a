/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.io.IOException;
import java.io.PrintStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongSupplier;
import org.beveragethermal.examples.sheet.WholeFile;
import org.beveragethermal.service.tracking.Alert;
import org.beveragethermal.service.tracking.Estimate;
import org.beveragethermal.service.tracking.TrackedVessel;
import org.beveragethermal.service.tracking.TrackingWords;

/**
 * Watches a thousand bottles from a CSV file of readings with the columns {@code at}, {@code bottle} and {@code temperature_celsius}, in
 * the order of time. Where no file is named it invents one.
 */
public final class CellarLogger {

    private static final int DONE = 0;
    private static final int REFUSED = 2;
    private static final int BOTTLES = 1000;
    private static final long SEED = 20_270_111;
    private static final int SHOWN = 12;
    private static final double ZERO_CELSIUS_K = 273.15;
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
            Path file = args.length == 0 ? Path.of("target", "embedding", "cellar.csv") : Path.of(args[0]);
            if (args.length == 0) {
                Files.createDirectories(file.getParent());
                WholeFile.write(file, CellarReadings.csv(BOTTLES, SEED));
                out.println("Invented readings: " + file);
            }
            watch(file, out, nanos);
            return DONE;
        } catch (InvalidPathException e) {
            err.println("the argument is not a path: " + e.getReason());
        } catch (IllegalArgumentException e) {
            err.println("readings are refused: " + e.getMessage());
        } catch (IOException e) {
            err.println("readings cannot be read or written: " + e.getMessage());
        }
        return REFUSED;
    }

    private static void watch(Path file, PrintStream out, LongSupplier nanos) throws IOException {
        TrackingWords words = TrackingWords.in(Locale.ENGLISH);
        Map<Alert.Code, Integer> counts = new EnumMap<>(Alert.Code.class);
        long before = nanos.getAsLong();
        CellarLog.Summary summary;
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            summary = CellarLog.follow(reader, alert -> {
                if (counts.values().stream().mapToInt(Integer::intValue).sum() < SHOWN) {
                    out.println(alert.at() + " " + words.signal(alert) + ": " + words.text(alert));
                }
                counts.merge(alert.code(), 1, Integer::sum);
            });
        }
        double seconds = (nanos.getAsLong() - before) * NANO;
        out.printf(
                Locale.ROOT,
                "%d bottles, %d rows in %.1f s; %d readings not used, %d rows left out%n",
                summary.vessels().size(),
                summary.rows(),
                seconds,
                summary.unusable(),
                summary.leftOut().size());
        summary.leftOut().stream().limit(SHOWN).forEach(row -> out.println("left out: " + row));
        counts.forEach((code, count) -> out.println("alerts " + code + ": " + count));
        summary.vessels().stream()
                .map(CellarLogger::told)
                .max((a, b) -> Double.compare(a.estimate().temperatureK(), b.estimate().temperatureK()))
                .ifPresent(warmest -> out.printf(
                        Locale.ROOT,
                        "warmest at the end: %s, %.1f °C (90 %% interval %.1f to %.1f)%n",
                        warmest.bottle(),
                        warmest.estimate().temperatureK() - ZERO_CELSIUS_K,
                        warmest.estimate().lowK() - ZERO_CELSIUS_K,
                        warmest.estimate().highK() - ZERO_CELSIUS_K));
    }

    private record Told(String bottle, Estimate estimate) {}

    private static Told told(TrackedVessel vessel) {
        return new Told(vessel.id(), vessel.estimate());
    }
}
