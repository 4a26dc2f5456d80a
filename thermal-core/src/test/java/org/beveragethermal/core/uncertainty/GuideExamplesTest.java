/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.beveragethermal.core.solver.RunCancelledException;
import org.beveragethermal.core.uncertainty.UncertaintyBudget.Term;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Worked examples of the guides on uncertainty: JCGM 100:2008, H.1, and JCGM 101:2008, clause 9. */
class GuideExamplesTest {

    private static final String GUIDE = "JCGM 100:2008, H.1, calibration of an end gauge";
    private static final String SUPPLEMENT = "JCGM 101:2008, ";
    /** Written down before the first run. */
    private static final long SEED = 20261126L;

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
        OutsideChecks.published("guide-end-gauge-combined", GUIDE)
                .what("combined standard uncertainty")
                .unit("nm")
                .expected(32)
                .within(0.5)
                .check(budget.combined());
        OutsideChecks.published("guide-end-gauge-freedom", GUIDE)
                .what("effective degrees of freedom, cut to a whole number")
                .unit("1")
                .expected(16)
                .within(0)
                .check(Math.floor(budget.effectiveDegreesOfFreedom()));
        OutsideChecks.published("guide-end-gauge-factor", GUIDE)
                .what("coverage factor at 99 %")
                .unit("1")
                .expected(2.92)
                .within(0.005)
                .check(budget.coverageFactor(0.99));
        OutsideChecks.published("guide-end-gauge-expanded", GUIDE)
                .what("expanded uncertainty at 99 %, from the unrounded combined one")
                .unit("nm")
                .expected(93)
                .within(1)
                .check(budget.expanded(0.99));
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
        OutsideChecks.fromMemory("guide-additive-u-" + clause, source)
                .what("standard uncertainty of a sum of four")
                .unit("1")
                .expected(uncertainty)
                .within(answer.tolerance())
                .check(answer.standardUncertainty());
        OutsideChecks.fromMemory("guide-additive-end-" + clause, source)
                .what("upper end of the 95 % interval of a sum of four")
                .unit("1")
                .expected(end)
                .within(2 * answer.tolerance())
                .check(answer.interval().high());
        assertThat(answer.interval().low()).isCloseTo(-end, within(2 * answer.tolerance()));
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
        check("guide-weight-mean", source, "deviation from nominal", 1.2341, answer.tolerance(), answer.mean());
        check(
                "guide-weight-u",
                source,
                "standard uncertainty",
                0.0754,
                answer.tolerance(),
                answer.standardUncertainty());
        // The printed ends are those of the shortest interval of the guide's own draws, which scatter more than the
        // tolerance: for
        // a distribution that is symmetric to the last digit they lie 1.3 µg below its ends.
        check(
                "guide-weight-low",
                source,
                "lower end at 95 %",
                1.0834,
                2e-3,
                answer.interval().low());
        check(
                "guide-weight-high",
                source,
                "upper end at 95 %",
                1.3825,
                2e-3,
                answer.interval().high());
        assertThat(answer.shortest().high() - answer.shortest().low())
                .isCloseTo(1.3825 - 1.0834, within(2 * answer.tolerance()));
    }

    private static void check(String id, String source, String what, double expected, double within, double actual) {
        OutsideChecks.fromMemory(id, source)
                .what(what)
                .unit("mg")
                .expected(expected)
                .within(within)
                .check(actual);
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
        OutsideChecks.fromMemory("guide-gauge-block-mean", source)
                .what("deviation from nominal")
                .unit("nm")
                .expected(838)
                .within(1)
                .check(answer.mean());
        OutsideChecks.fromMemory("guide-gauge-block-u", source)
                .what("standard uncertainty")
                .unit("nm")
                .expected(36)
                .within(1)
                .check(answer.standardUncertainty());
        OutsideChecks.fromMemory("guide-gauge-block-low", source)
                .what("lower end at 99 %")
                .unit("nm")
                .expected(745)
                .within(2)
                .check(answer.interval().low());
        OutsideChecks.fromMemory("guide-gauge-block-high", source)
                .what("upper end at 99 %")
                .unit("nm")
                .expected(932)
                .within(2)
                .check(answer.interval().high());
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
