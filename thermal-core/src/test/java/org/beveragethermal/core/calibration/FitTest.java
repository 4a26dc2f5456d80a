/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.MatrixUtils;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

/** Fits: bounds, priors, runs, limits, starts, bad input, and what results say. */
@Isolated
class FitTest {

    private static final double[] TIMES =
            IntStream.range(0, 40).mapToDouble(i -> 8 * i).toArray();

    private static double[] simulated(double room, double difference, double rate, double scatter, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        return IntStream.range(0, TIMES.length)
                .mapToDouble(i -> room
                        + difference * Math.exp(-rate * TIMES[i])
                        + scatter * normal.inverseCumulativeProbability(random.nextDouble(1e-12, 1)))
                .toArray();
    }

    private static FitResult usual(long seed) {
        return Curves.decayFit(5, 17, 0.01)
                .run("log", Curves.decay(TIMES), Observations.of(TIMES, simulated(4, 18, 0.008, 0.1, seed)))
                .build()
                .run();
    }

    @Test
    void parameterAtItsBoundIsHeldAndSaidSo() {
        double[] readings = simulated(4, 18, 0.008, 0.1, 1);
        FitResult bounded = Fit.builder()
                .parameter(Parameter.of("room", 6).between(5, 10))
                .parameter(Parameter.of("difference", 17))
                .parameter(Parameter.of("rate", 0.01))
                .run("log", Curves.decay(TIMES), Observations.of(TIMES, readings))
                .build()
                .run();
        FitResult kept = Fit.builder()
                .parameter(Parameter.of("room", 5).kept())
                .parameter(Parameter.of("difference", 17))
                .parameter(Parameter.of("rate", 0.01))
                .run("log", Curves.decay(TIMES), Observations.of(TIMES, readings))
                .build()
                .run();
        assertThat(bounded.estimate("room").status()).isEqualTo(Estimate.Status.AT_LOWER_BOUND);
        assertThat(bounded.estimate("room").value()).isEqualTo(5);
        assertThat(bounded.estimate("room").standardError()).isEmpty();
        assertThat(bounded.estimate("rate").value())
                .isCloseTo(kept.estimate("rate").value(), within(1e-9));
        assertThat(bounded.estimate("rate").standardError().orElseThrow())
                .isCloseTo(kept.estimate("rate").standardError().orElseThrow(), within(1e-9));
        assertThat(bounded.explain()).contains("at its lower bound");
    }

    @Test
    void parameterLeavesABoundThatItStartsAt() {
        FitResult result = Fit.builder()
                .parameter(Parameter.of("room", 10).between(0, 10))
                .parameter(Parameter.of("difference", 5).between(5, 30))
                .parameter(Parameter.of("rate", 0.1).between(1e-4, 0.1))
                .run("log", Curves.decay(TIMES), Observations.of(TIMES, simulated(4, 18, 0.008, 0.1, 1)))
                .build()
                .run();
        FitResult free = usual(1);
        for (Estimate estimate : free.estimates()) {
            assertThat(result.estimate(estimate.name()).value())
                    .isCloseTo(estimate.value(), within(1e-6 * Math.abs(estimate.value())));
        }
    }

    @Test
    void priorOfAMeanIsTheConjugateNormal() {
        // n readings of known deviation s and a prior m ± u: precision n/s² + 1/u², mean weighted by precisions (closed
        // form).
        Model mean = Model.of(List.of("mean"), new double[] {0, 1, 2, 3}, (x, b, slopes) -> {
            slopes[0] = 1;
            return b[0];
        });
        Observations.Builder readings = Observations.builder();
        readings.value(0, 10.0, 0.5).value(1, 10.4, 0.5).value(2, 9.8, 0.5).value(3, 10.2, 0.5);
        FitResult result = Fit.builder()
                .parameter(Parameter.of("mean", 0).withPrior(9, 0.2))
                .run("log", mean, readings.build())
                .knownDeviations()
                .build()
                .run();
        double precision = 4 / 0.25 + 1 / 0.04;
        assertThat(result.estimate("mean").value()).isCloseTo((10.1 * 4 / 0.25 + 9 / 0.04) / precision, within(1e-12));
        assertThat(result.estimate("mean").standardError().orElseThrow())
                .isCloseTo(Math.sqrt(1 / precision), within(1e-12));
        assertThat(result.effectiveParameters()).isCloseTo(4 / 0.25 / precision, within(1e-12));
    }

    @Test
    void severalRunsShareWhatTheyShare() {
        FitResult result = Fit.builder()
                .parameter(Parameter.of("room", 5))
                .parameter(Parameter.of("difference", 10).forEachRun())
                .parameter(Parameter.of("rate", 0.01))
                .run("a", Curves.decay(TIMES), Observations.of(TIMES, simulated(4, 18, 0.008, 0.05, 1)))
                .run("b", Curves.decay(TIMES), Observations.of(TIMES, simulated(4, 9, 0.008, 0.05, 2)))
                .build()
                .run();
        assertThat(result.estimates().stream().map(Estimate::name))
                .containsExactly("room", "difference@a", "rate", "difference@b");
        assertThat(result.estimate("difference@a").value()).isCloseTo(18, within(0.15));
        assertThat(result.estimate("difference@b").value()).isCloseTo(9, within(0.15));
        assertThat(result.crossValidationByRun().parts()).isEqualTo(2);
        FittedSet set = result.fittedSet("a room", 1, Instant.EPOCH);
        assertThat(set.values()).containsOnlyKeys("room", "rate");
    }

    @Test
    void startsAgreeOnOneMinimumAmongSeveral() {
        // sin(w t) has many minima in w.
        Model wave = Model.of(List.of("w"), TIMES, (t, b, slopes) -> {
            slopes[0] = t * Math.cos(b[0] * t);
            return Math.sin(b[0] * t);
        });
        double[] readings = IntStream.range(0, TIMES.length)
                .mapToDouble(i -> Math.sin(0.11 * TIMES[i]) + 0.01 * Math.cos(37.0 * i))
                .toArray();
        Fit.Builder builder = Fit.builder()
                .parameter(Parameter.of("w", 0.02).between(0.001, 0.15))
                .run("log", wave, Observations.of(TIMES, readings));
        assertThat(Math.abs(builder.build().run().estimate("w").value() - 0.11)).isGreaterThan(0.01);
        FitResult many = builder.starts(60, 3).build().run();
        assertThat(many.estimate("w").value()).isCloseTo(0.11, within(1e-3));
        assertThat(many.agreeingStarts()).isBetween(1, 59);
        assertThat(builder.build().run().estimate("w").value())
                .isEqualTo(many.estimate("w").value());
    }

    @Test
    void neverWithinTheWatchIsAReading() {
        // Time to reach 8 °C; the slowest of three was given up after 300 min.
        Model time = Model.of(List.of("rate"), new double[] {1, 0.8, 0.5}, (size, b, slopes) -> {
            slopes[0] = -Math.log(18.0 / 4) / (b[0] * b[0] * size);
            return Math.log(18.0 / 4) / (b[0] * size);
        });
        Observations seen = Observations.builder()
                .value(0, 188, 8)
                .value(1, 235, 8)
                .above(2, 300, 8)
                .build();
        Fit.Builder builder = Fit.builder()
                .parameter(Parameter.of("rate", 0.006).between(1e-4, 1))
                .knownDeviations();
        FitResult result = builder.run("times", time, seen).build().run();
        assertThat(result.estimate("rate").value()).isCloseTo(0.008, within(2e-4));
        Model never = Model.of(List.of("rate"), new double[] {1, 0.8, 0}, (size, b, slopes) -> {
            slopes[0] = size == 0 ? 0 : -Math.log(18.0 / 4) / (b[0] * b[0] * size);
            return size == 0 ? Double.POSITIVE_INFINITY : Math.log(18.0 / 4) / (b[0] * size);
        });
        FitResult endless = Fit.builder()
                .parameter(Parameter.of("rate", 0.006).between(1e-4, 1))
                .knownDeviations()
                .run("times", never, seen)
                .build()
                .run();
        assertThat(endless.estimate("rate").value()).isCloseTo(0.008, within(2e-4));
    }

    @Test
    void profileOfALineIsItsInterval() {
        double[] readings = simulated(4, 18, 0.008, 0.1, 5);
        FitResult result = Curves.lineFit()
                .run("log", Curves.line(TIMES), Observations.of(TIMES, readings))
                .build()
                .run();
        ConfidenceInterval linear = result.interval("slope", 0.95);
        ConfidenceInterval profile = result.profile("slope", 0.95).interval();
        double width = linear.high().orElseThrow() - linear.low().orElseThrow();
        assertThat(profile.low().orElseThrow()).isCloseTo(linear.low().orElseThrow(), within(1e-3 * width));
        assertThat(profile.high().orElseThrow()).isCloseTo(linear.high().orElseThrow(), within(1e-3 * width));
    }

    @Test
    void repeatedFitsAreTheSameOnAnyThreads() {
        FitResult result = usual(7);
        ExecutorService threads = Executors.newFixedThreadPool(3);
        try {
            for (Bootstrap.Kind kind : Bootstrap.Kind.values()) {
                Bootstrap one = result.bootstrap(kind, Ensemble.of(300, 11));
                Bootstrap three = result.bootstrap(kind, Ensemble.of(300, 11).on(threads));
                assertThat(three.estimates("rate")).isEqualTo(one.estimates("rate"));
                assertThat(one.failed()).isZero();
                double linear = result.estimate("rate").standardError().orElseThrow();
                assertThat(one.standardError("rate")).isCloseTo(linear, within(0.15 * linear));
            }
        } finally {
            threads.shutdown();
        }
    }

    @Test
    void whatIsNotDeterminedIsNamed() {
        // difference and factor only come as a product.
        Model product = Model.of(List.of("difference", "factor"), TIMES, (t, b, slopes) -> {
            double e = Math.exp(-0.008 * t);
            slopes[0] = b[1] * e;
            slopes[1] = b[0] * e;
            return b[0] * b[1] * e;
        });
        FitResult result = Fit.builder()
                .parameter(Parameter.of("difference", 10))
                .parameter(Parameter.of("factor", 1))
                .run("log", product, Observations.of(TIMES, simulated(0, 18, 0.008, 0.1, 1)))
                .build()
                .run();
        Identifiability report = result.identifiability();
        assertThat(report.rank()).isEqualTo(1);
        assertThat(report.notDetermined()).containsExactly("difference", "factor");
        assertThat(report.isIdentifiable()).isFalse();
        assertThat(result.estimate("factor").status()).isEqualTo(Estimate.Status.NOT_DETERMINED);
        assertThat(result.interval("factor", 0.95).isOpen()).isTrue();
        assertThat(result.explain()).contains("NOT IDENTIFIABLE");
        // What the readings tell is the product; a prediction of one factor is anyone's guess, and says so.
        assertThat(result.band("log", 0.95).undetermined()).isEmpty();
        Model alone = Model.of(List.of("difference"), new double[] {0}, (t, b, slopes) -> {
            slopes[0] = 1;
            return b[0];
        });
        assertThat(result.band(alone, 1, 0.95).undetermined()).containsExactly("difference");
    }

    @Test
    void flatProfileIsOpen() {
        // A log that ends before the room matters: the room has a limit on one side only.
        double[] early = {0, 1, 2, 3, 4, 5};
        double[] readings = {22.0, 21.7, 21.7, 21.4, 21.6, 21.2};
        FitResult result = Fit.builder()
                .parameter(Parameter.of("room", 4).between(-50, 21))
                .parameter(Parameter.of("difference", 18))
                .parameter(Parameter.of("rate", 0.008).between(1e-6, 10))
                .run("log", Curves.decay(early), Observations.of(early, readings))
                .build()
                .run();
        Identifiability report = result.identifiability();
        assertThat(report.flat()).contains("room");
        assertThat(result.profile("room", 0.95).interval().low()).isEmpty();
        assertThat(report.advice()).anyMatch(advice -> advice.startsWith("The readings set no limit to room"));
    }

    @Test
    void logInWhichNothingChangesIsNamed() {
        double[] readings = new double[TIMES.length];
        java.util.Arrays.fill(readings, 7.5);
        FitResult result = Curves.decayFit(5, 17, 0.01)
                .run(
                        "still",
                        Curves.decay(TIMES),
                        Observations.of(TIMES, readings).quantised(0.5))
                .build()
                .run();
        assertThat(result.explain()).contains("All 40 readings of run still are 7.5");
        assertThat(result.identifiability().isIdentifiable()).isFalse();
    }

    @Test
    void roundingOfTheDisplayIsNoSmallerScatter() {
        double[] rounded = java.util.Arrays.stream(simulated(4, 18, 0.008, 0.0, 1))
                .map(t -> Math.round(t))
                .toArray();
        FitResult result = Curves.decayFit(5, 17, 0.01)
                .run("log", Curves.decay(TIMES), Observations.of(TIMES, rounded).quantised(1))
                .build()
                .run();
        assertThat(result.residualStandardDeviation()).isGreaterThanOrEqualTo(1 / Math.sqrt(12));
    }

    @Test
    void badInputIsRefusedWhereItEnters() {
        double[] two = {0, 10};
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Curves.decayFit(5, 17, 0.01)
                        .run("log", Curves.decay(two), Observations.of(two, new double[] {22, 20}))
                        .build())
                .withMessageContaining("2 readings and 0 priors for 3 free parameters");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Observations.of(two, new double[] {22, Double.NaN}))
                .withMessageContaining("reading 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Curves.lineFit()
                        .parameter(Parameter.of("third", 1))
                        .run("log", Curves.line(TIMES), Observations.of(TIMES, TIMES))
                        .build())
                .withMessageContaining("third");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Fit.builder()
                        .parameter(Parameter.of("slope", 1))
                        .run("log", Curves.line(TIMES), Observations.of(TIMES, TIMES))
                        .build())
                .withMessageContaining("intercept");
        double[] back = {0, 20, 10};
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Curves.lineFit()
                        .run("log", Curves.line(back), Observations.of(back, new double[] {1, 2, 3}))
                        .followingErrors()
                        .build())
                .withMessageContaining("ascending");
        Model broken = Model.of(List.of("a"), TIMES, (t, b, slopes) -> Double.NaN);
        assertThatExceptionOfType(FitException.class)
                .isThrownBy(() -> Fit.builder()
                        .parameter(Parameter.of("a", 1))
                        .run("bad", broken, Observations.of(TIMES, TIMES))
                        .build()
                        .run())
                .withMessageContaining("bad")
                .withMessageContaining("NaN");
        assertThatExceptionOfType(FitException.class)
                .isThrownBy(() -> Curves.lineFit()
                        .run("short", Curves.line(two), Observations.of(TIMES, TIMES))
                        .build()
                        .run())
                .withMessageContaining("predicts 2 values for 40 readings");
    }

    @Test
    void tenMillionReadingsAreRefused() {
        double[] many = new double[10_000_000];
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Observations.of(many, many))
                .withMessageContaining("10000000 readings: expected 1 to 1000000");
    }

    @Test
    void fittedSetIsReadBackExactlyInAnyLocale() {
        FitResult result = usual(9);
        FittedSet set = result.fittedSet("our own refrigerator", 3, Instant.parse("2026-11-26T10:00:00Z"));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-u-nu-arab"));
            assertThat(FittedSet.parse(set.text())).isEqualTo(set);
        } finally {
            Locale.setDefault(before);
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FittedSet.parse(set.text().replace("version\t3", "version\tthree")))
                .withMessageContaining("line 3");
        assertThat(set.prior(Parameter.of("rate", 1)).start())
                .isEqualTo(set.values().get("rate"));
        SplittableRandom random = new SplittableRandom(5);
        double[] rates = IntStream.range(0, 4000)
                .mapToDouble(i -> set.draw(random).getOrDefault("rate", 0.0))
                .toArray();
        double error = result.estimate("rate").standardError().orElseThrow();
        assertThat(new org.apache.commons.math3.stat.descriptive.moment.StandardDeviation().evaluate(rates))
                .isCloseTo(error, within(0.05 * error));
    }

    @Test
    void explanationSaysAll() {
        assertThat(usual(3).explain())
                .contains("37.00 degrees of freedom")
                .contains("by linearisation, by profile, by 199 repeated fits")
                .contains("correlations:")
                .contains("Durbin-Watson")
                .contains("identifiability: 3 of 3")
                .contains("AICc")
                .contains("cross-validation in 10 parts");
        FitSnapshot snapshot = usual(3).snapshot();
        assertThat(snapshot.estimates()).hasSize(3);
        assertThat(snapshot).isEqualTo(usual(3).snapshot());
    }

    /**
     * Two logs of one error process, the second read half as often. By hand: the generalised mean with covariances ρ to the power of the
     * time between readings over their usual spacing, which is 2 (Aitken 1935).
     */
    @Test
    void errorsThatFollowEachOtherAreThoseOfTimeInEveryRun() {
        double[] often = {0, 1, 2, 3};
        double[] seldom = {0, 2, 4, 6};
        double[] first = {5.1, 5.3, 5.2, 4.7};
        double[] second = {4.9, 5.4, 4.6, 5.2};
        Model level = Model.of(List.of("level"), often, (t, b, slopes) -> {
            slopes[0] = 1;
            return b[0];
        });
        FitResult result = Fit.builder()
                .parameter(Parameter.of("level", 5))
                .run("often", level, Observations.of(often, first))
                .run("seldom", level, Observations.of(seldom, second))
                .followingErrors()
                .build()
                .run();
        double rho = result.errorCorrelation();
        assertThat(rho).isBetween(0.0, 0.9999);
        double weights = 0;
        double sum = 0;
        double[][] times = {often, seldom};
        double[][] readings = {first, second};
        for (int r = 0; r < 2; r++) {
            double[] at = times[r];
            double[][] covariance = new double[4][4];
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < 4; j++) {
                    covariance[i][j] = Math.pow(rho, Math.abs(at[i] - at[j]) / 2);
                }
            }
            double[] weight = MatrixUtils.inverse(MatrixUtils.createRealMatrix(covariance))
                    .operate(new double[] {1, 1, 1, 1});
            for (int i = 0; i < 4; i++) {
                weights += weight[i];
                sum += weight[i] * readings[r][i];
            }
        }
        assertThat(result.estimate("level").value()).isCloseTo(sum / weights, within(1e-6));
    }
}
