/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.beveragethermal.testsupport.DocumentParts;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How often intervals hold the truth: one interval per independent simulated log, 1,000 logs, 4,000 in the profile {@code thorough},
 * against the exact binomial band of 99.9 %. Seeds were written down before the first run.
 */
class CoverageTest {

    private static final int RUNS = Integer.getInteger("coverage.runs", 1000);
    private static final long SEED = 20261126L;
    /** The documents show this many; more runs leave no table. */
    private static final int SHOWN = 1000;

    private static final Map<String, List<String>> ROWS = new ConcurrentSkipListMap<>();
    private static final double[] TIMES =
            IntStream.range(0, 20).mapToDouble(i -> 15 * i).toArray();
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private static double[] simulated(SplittableRandom random, double scatter) {
        double[] readings = new double[TIMES.length];
        for (int i = 0; i < readings.length; i++) {
            double error = NORMAL.inverseCumulativeProbability(random.nextDouble(1e-12, 1));
            readings[i] = 4 + 18 * Math.exp(-0.008 * TIMES[i]) + scatter * error;
        }
        return readings;
    }

    private static Fit.Builder fit(double[] readings) {
        return Curves.decayFit(5, 17, 0.01).run("log", Curves.decay(TIMES), Observations.of(TIMES, readings));
    }

    /** Counts hits over independent logs and holds them to the band. */
    private static void holds(String what, double probability, long salt, ToIntFunction<SplittableRandom> hit) {
        SplittableRandom seeds = new SplittableRandom(SEED + salt);
        SplittableRandom[] sources = IntStream.range(0, RUNS)
                .mapToObj(i -> new SplittableRandom(seeds.nextLong()))
                .toArray(SplittableRandom[]::new);
        int hits = IntStream.range(0, RUNS)
                .parallel()
                .map(i -> hit.applyAsInt(sources[i]))
                .sum();
        BinomialDistribution exact = new BinomialDistribution(null, RUNS, probability);
        int fewest = exact.inverseCumulativeProbability(0.0005);
        int most = exact.inverseCumulativeProbability(0.9995);
        ROWS.put(
                salt + what + probability,
                List.of(
                        what,
                        String.format(Locale.ROOT, "%.0f %%", 100 * probability),
                        String.format(Locale.ROOT, "%.1f %%", 100.0 * hits / RUNS),
                        Integer.toString(RUNS),
                        String.format(Locale.ROOT, "%.1f to %.1f %%", 100.0 * fewest / RUNS, 100.0 * most / RUNS)));
        assertThat(hits).as("%s: %d of %d at %s", what, hits, RUNS, probability).isBetween(fewest, most);
    }

    @AfterAll
    static void leaveTable() {
        if (RUNS == SHOWN) {
            DocumentParts.leaveTable(
                    "calibration-coverage",
                    List.of("Interval", "Nominal", "Found", "Logs", "Band of 99.9 %"),
                    List.copyOf(ROWS.values()));
        }
    }

    private static int in(ConfidenceInterval interval, double truth) {
        return interval.contains(truth) ? 1 : 0;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.90, 0.95})
    void intervalsByLinearisation(double probability) {
        holds(
                "of the rate, by linearisation",
                probability,
                1,
                random -> in(fit(simulated(random, 0.1)).build().run().interval("rate", probability), 0.008));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.90, 0.95})
    void intervalsByProfile(double probability) {
        holds(
                "of the room, by profile",
                probability,
                2,
                random -> in(
                        fit(simulated(random, 0.5))
                                .build()
                                .run()
                                .profile("room", probability)
                                .interval(),
                        4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.90, 0.95})
    void bandsOfNewReadings(double probability) {
        holds("of a new reading, by the prediction band", probability, 3, random -> {
            Band.Point point = fit(simulated(random, 0.1))
                    .build()
                    .run()
                    .band(Curves.decay(330), 1, probability)
                    .points()
                    .get(0);
            double reading = 4
                    + 18 * Math.exp(-0.008 * 330)
                    + 0.1 * NORMAL.inverseCumulativeProbability(random.nextDouble(1e-12, 1));
            return reading >= point.predictionLow() && reading <= point.predictionHigh() ? 1 : 0;
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.90, 0.95})
    void intervalsWithAPriorThatIsTrue(double probability) {
        holds("of the room, by linearisation, with a prior that is true", probability, 4, random -> {
            double room = 4 + 0.5 * NORMAL.inverseCumulativeProbability(random.nextDouble(1e-12, 1));
            double[] readings = simulated(random, 0.5);
            return in(
                    Fit.builder()
                            .parameter(Parameter.of("room", 5).withPrior(room, 0.5))
                            .parameter(Parameter.of("difference", 17))
                            .parameter(Parameter.of("rate", 0.01))
                            .run("log", Curves.decay(TIMES), Observations.of(TIMES, readings))
                            .build()
                            .run()
                            .interval("room", probability),
                    4);
        });
    }
}
