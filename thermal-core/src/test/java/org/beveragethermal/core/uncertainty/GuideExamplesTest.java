/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.beveragethermal.core.solver.RunCancelledException;
import org.beveragethermal.core.uncertainty.UncertaintyBudget.Term;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.testsupport.DocumentParts;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/**
 * Worked examples of the guides on uncertainty: JCGM 100:2008, H.1, whose figures are those of the print, and JCGM 101:2008, clause 9 (9.2
 * to 9.5), whose figures are all from memory and marked so in each row.
 */
class GuideExamplesTest {

    private static final String GUIDE = "JCGM 100:2008, H.1, calibration of an end gauge";
    private static final String SUPPLEMENT = "JCGM 101:2008, ";
    /** Written down before the first run. */
    private static final long SEED = 20261126L;

    private static final Map<String, List<String>> ROWS = new ConcurrentSkipListMap<>();

    @Test
    void endGauge() {
        double length = 50_000_623;
        UncertaintyBudget budget = new UncertaintyBudget(List.of(
                new Term("length of the standard [nm]", 1, 25, 18),
                new Term("difference [nm]", 1, 9.7, 25.6),
                new Term("expansion of the standard [1/K]", 0, 1.2e-6, Double.POSITIVE_INFINITY),
                new Term("temperature off 20 °C [K]", 0, 0.41, Double.POSITIVE_INFINITY),
                new Term("difference of expansions [1/K]", length * 0.1, 0.58e-6, 50),
                new Term("difference of temperatures [K]", -length * 11.5e-6, 0.029, 2)));
        check(
                OutsideChecks.published("guide-end-gauge-combined", GUIDE),
                GUIDE,
                "combined standard uncertainty",
                "nm",
                0,
                32,
                0.5,
                budget.combined());
        check(
                OutsideChecks.published("guide-end-gauge-freedom", GUIDE),
                GUIDE,
                "effective degrees of freedom, cut to a whole number",
                "1",
                0,
                16,
                0,
                Math.floor(budget.effectiveDegreesOfFreedom()));
        check(
                OutsideChecks.published("guide-end-gauge-factor", GUIDE),
                GUIDE,
                "coverage factor at 99 %",
                "1",
                2,
                2.92,
                0.005,
                budget.coverageFactor(0.99));
        check(
                OutsideChecks.published("guide-end-gauge-expanded", GUIDE),
                GUIDE,
                "expanded uncertainty at 99 %, from the unrounded combined one",
                "nm",
                0,
                93,
                0.5,
                budget.expanded(0.99));
    }

    private static void additive(String clause, double[] widths, boolean normal, double uncertainty, double end) {
        List<UncertainInput> inputs = IntStream.range(0, 4)
                .mapToObj(i -> new UncertainInput(
                        "x" + i,
                        -0.0,
                        normal ? Uncertainty.normal(widths[i]) : Uncertainty.rectangular(widths[i] * Math.sqrt(3))))
                .toList();
        MonteCarloAnswer answer = AdaptiveMonteCarlo.of(0.95, 2, SEED)
                .runSeeded(random -> inputs.stream()
                        .mapToDouble(x -> x.uncertainty().quantile(0, random.nextDouble(1e-12, 1)))
                        .sum());
        assertThat(answer.stable()).isTrue();
        String source = SUPPLEMENT + clause + ", additive model";
        check(
                OutsideChecks.fromMemory("guide-additive-u-" + clause, source),
                source,
                "standard uncertainty of a sum of four",
                "1",
                1,
                uncertainty,
                answer.tolerance(),
                answer.standardUncertainty());
        check(
                OutsideChecks.fromMemory("guide-additive-end-" + clause, source),
                source,
                "upper end of the 95 % interval of a sum of four",
                "1",
                end < 10 ? 2 : 1,
                end,
                answer.tolerance(),
                answer.interval().high());
        assertThat(answer.interval().low()).isCloseTo(-end, within(answer.tolerance()));
        assertThat(answer.mean()).isCloseTo(0, within(answer.tolerance()));
    }

    @Test
    void sumOfFour() {
        additive("9.2.2", new double[] {1, 1, 1, 1}, true, 2.0, 3.92);
        additive("9.2.3", new double[] {1, 1, 1, 1}, false, 2.0, 3.88);
        additive("9.2.4", new double[] {1, 1, 1, 10}, false, 10.1, 17.0);
    }

    @Test
    void massOfAWeight() {
        List<UncertainInput> inputs = List.of(
                new UncertainInput("reference", 100_000, Uncertainty.normal(0.050)),
                new UncertainInput("added", 1.234, Uncertainty.normal(0.020)),
                new UncertainInput("air", 1.20, Uncertainty.rectangular(0.10)),
                new UncertainInput("weight", 8000, Uncertainty.rectangular(1000)),
                new UncertainInput("standard", 8000, Uncertainty.rectangular(50)));
        MonteCarloAnswer answer = AdaptiveMonteCarlo.of(0.95, 2, SEED)
                .run(
                        inputs,
                        draw -> (draw.value("reference") + draw.value("added"))
                                        * (1
                                                + (draw.value("air") - 1.2)
                                                        * (1 / draw.value("weight") - 1 / draw.value("standard")))
                                - 100_000);
        String source = SUPPLEMENT + "9.3, calibration of a weight";
        assertThat(answer.stable()).isTrue();
        check(
                OutsideChecks.fromMemory("guide-weight-mean", source),
                source,
                "deviation from nominal",
                "mg",
                4,
                1.2341,
                answer.tolerance(),
                answer.mean());
        check(
                OutsideChecks.fromMemory("guide-weight-u", source),
                source,
                "standard uncertainty",
                "mg",
                4,
                0.0754,
                answer.tolerance(),
                answer.standardUncertainty());
        // The distribution is symmetric to the last digit, so that the middle of its interval is its mean; that of the
        // print lies
        // 1.2 µg below the printed mean. The guide's own draws scatter more there than the tolerance of 0.5 µg.
        check(
                OutsideChecks.fromMemory("guide-weight-low", source),
                source,
                "lower end at 95 %",
                "mg",
                4,
                1.0834,
                3 * answer.tolerance(),
                answer.interval().low());
        check(
                OutsideChecks.fromMemory("guide-weight-high", source),
                source,
                "upper end at 95 %",
                "mg",
                4,
                1.3825,
                3 * answer.tolerance(),
                answer.interval().high());
        assertThat(answer.shortest().high() - answer.shortest().low())
                .isCloseTo(1.3825 - 1.0834, within(2 * answer.tolerance()));
    }

    private static void check(
            OutsideChecks.Check check,
            String source,
            String what,
            String unit,
            int decimals,
            double printed,
            double within,
            double actual) {
        String format = "%." + decimals + "f" + (unit.equals("1") ? "" : " " + unit);
        ROWS.put(
                source + what,
                List.of(
                        source,
                        what,
                        String.format(Locale.ROOT, format, printed),
                        String.format(Locale.ROOT, format, actual)));
        check.what(what).unit(unit).expected(printed).within(within).check(actual);
    }

    @AfterAll
    static void leaveTable() {
        DocumentParts.leaveTable(
                "calibration-guide", List.of("Example", "Figure", "Print", "Found"), List.copyOf(ROWS.values()));
    }

    /** Two parts of a coefficient of reflection, uncertain by 0.005 each; results in millionths. */
    private static void comparisonLoss(
            double first, double correlation, double mean, double uncertainty, double low, double high) {
        double own = Math.sqrt(1 - correlation * correlation);
        MonteCarloAnswer answer = AdaptiveMonteCarlo.of(0.95, 2, SEED).runSeeded(random -> {
            double z = random.nextGaussian();
            double real = first + 0.005 * z;
            double imaginary = 0.005 * (correlation * z + own * random.nextGaussian());
            return 1e6 * (real * real + imaginary * imaginary);
        });
        String which = String.format(Locale.ROOT, "first part %.3f, correlation %.1f: ", first, correlation);
        String id = String.format(Locale.ROOT, "guide-comparison-loss-%.0f-%.0f-", 1000 * first, 10 * correlation);
        String source = SUPPLEMENT + "9.4, comparison loss of a power meter";
        double sure = answer.tolerance() + 0.5;
        loss(id + "mean", source, which + "mean", mean, sure, answer.mean());
        loss(id + "u", source, which + "standard uncertainty", uncertainty, sure, answer.standardUncertainty());
        loss(
                id + "low",
                source,
                which + "lower end of the shortest 95 %",
                low,
                sure,
                answer.shortest().low());
        loss(
                id + "high",
                source,
                which + "upper end of the shortest 95 %",
                high,
                sure,
                answer.shortest().high());
    }

    private static void loss(String id, String source, String what, double printed, double within, double actual) {
        check(OutsideChecks.fromMemory(id, source), source, what, "10⁻⁶", 0, printed, within, actual);
    }

    @Test
    void comparisonLossOfAPowerMeter() {
        comparisonLoss(0, 0, 50, 50, 0, 150);
        comparisonLoss(0.010, 0, 150, 112, 0, 367);
        comparisonLoss(0.050, 0, 2551, 502, 1590, 3543);
        comparisonLoss(0, 0.9, 50, 67, 0, 185);
        comparisonLoss(0.010, 0.9, 150, 121, 13, 398);
    }

    @Test
    void gaugeBlock() {
        double nominal = 50_000_000;
        MonteCarloAnswer answer = AdaptiveMonteCarlo.of(0.99, 2, SEED)
                .withAtMost(600_000)
                .runSeeded(random -> {
                    double standard = 50_000_623 + 25 * student(random, 18);
                    double difference = 215 + 6 * student(random, 24);
                    double d1 = 4 * student(random, 5);
                    double d2 = 7 * student(random, 8);
                    double expansion = 11.5e-6 + 2e-6 * (2 * random.nextDouble() - 1);
                    double mean = -0.1 + 0.2 * random.nextGaussian();
                    double cyclic = 0.5 * Math.sin(2 * Math.PI * random.nextDouble());
                    double apart = inexact(1.0e-6, 0.1e-6, random.nextDouble(), random.nextDouble());
                    double warmer = inexact(0.050, 0.025, random.nextDouble(), random.nextDouble());
                    double temperature = mean + cyclic;
                    return (standard * (1 + expansion * (temperature + warmer)) + difference + d1 + d2)
                                    / (1 + (expansion + apart) * temperature)
                            - nominal;
                });
        String source = SUPPLEMENT + "9.5, calibration of a gauge block";
        check(
                OutsideChecks.fromMemory("guide-gauge-block-mean", source),
                source,
                "deviation from nominal",
                "nm",
                0,
                838,
                0.5,
                answer.mean());
        check(
                OutsideChecks.fromMemory("guide-gauge-block-u", source),
                source,
                "standard uncertainty",
                "nm",
                0,
                36,
                0.5,
                answer.standardUncertainty());
        check(
                OutsideChecks.fromMemory("guide-gauge-block-low", source),
                source,
                "lower end at 99 %",
                "nm",
                0,
                745,
                1,
                answer.interval().low());
        check(
                OutsideChecks.fromMemory("guide-gauge-block-high", source),
                source,
                "upper end at 99 %",
                "nm",
                0,
                932,
                1,
                answer.interval().high());
    }

    /** Student's distribution: a normal number over the root of the mean of squares of others. */
    private static double student(SplittableRandom random, int freedom) {
        double squares = 0;
        for (int i = 0; i < freedom; i++) {
            double z = random.nextGaussian();
            squares += z * z;
        }
        return random.nextGaussian() / Math.sqrt(squares / freedom);
    }

    /** A rectangular distribution about 0 whose half-width is itself known to a half-width only (JCGM 101, 6.4.3). */
    private static double inexact(double halfWidth, double known, double first, double second) {
        double half = halfWidth + known * (2 * first - 1);
        return half * (2 * second - 1);
    }

    @Test
    void threadsDoNotMatterAndTheMonitorMayCancel() {
        List<UncertainInput> inputs = List.of(new UncertainInput("x", 10, Uncertainty.normal(1)));
        AdaptiveMonteCarlo settings = AdaptiveMonteCarlo.of(0.95, 1, 5);
        MonteCarloAnswer one = settings.run(inputs, draw -> draw.value("x") * draw.value("x"));
        ExecutorService threads = Executors.newFixedThreadPool(3);
        try {
            assertThat(settings.on(threads).run(inputs, draw -> draw.value("x") * draw.value("x")))
                    .isEqualTo(one);
        } finally {
            threads.shutdown();
        }
        assertThatExceptionOfType(RunCancelledException.class)
                .isThrownBy(() -> settings.withMonitor((reached, end, count) -> count < 15_000)
                        .withAtMost(100_000)
                        .run(inputs, draw -> draw.value("x")));
        assertThat(AdaptiveMonteCarlo.of(0.95, 4, 5)
                        .withAtMost(100_000)
                        .run(inputs, draw -> draw.value("x"))
                        .stable())
                .isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> settings.run(inputs, draw -> Double.NaN))
                .withMessageContaining("draw 0 gave NaN");
    }

    @Test
    void toleranceIsHalfOfTheLastDigit() {
        // JCGM 101, 7.9.2: 0.035 g with two digits 35 × 10⁻³: 0.0005; with one digit 3 or 4 × 10⁻²: 0.005.
        assertThat(AdaptiveMonteCarlo.tolerance(0.035, 2)).isCloseTo(0.0005, within(1e-12));
        assertThat(AdaptiveMonteCarlo.tolerance(0.035, 1)).isCloseTo(0.005, within(1e-12));
        assertThat(AdaptiveMonteCarlo.tolerance(0.0996, 2)).isCloseTo(0.005, within(1e-12));
    }

    @Test
    void tornadoShowsTheWidestFirst() {
        List<UncertainInput> inputs = List.of(
                new UncertainInput("small", 1, Uncertainty.normal(0.1)),
                new UncertainInput("large", 2, Uncertainty.rectangular(1)));
        Tornado tornado =
                Tornado.of(inputs, 0.95, x -> x.getOrDefault("small", 0.0) + 3 * x.getOrDefault("large", 0.0));
        assertThat(tornado.atBest()).isEqualTo(7);
        assertThat(tornado.bars().stream().map(Tornado.Bar::name)).containsExactly("large", "small");
        assertThat(tornado.bars().get(0).width()).isCloseTo(3 * 2 * 0.95, within(1e-9));
        assertThat(tornado.bars().get(1).width()).isCloseTo(2 * 1.959964 * 0.1, within(1e-6));
    }
}
