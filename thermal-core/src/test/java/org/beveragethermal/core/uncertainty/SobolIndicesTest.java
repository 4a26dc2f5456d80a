/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.beveragethermal.core.solver.RunCancelledException;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.testsupport.DocumentParts;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Indices of functions whose parts of variance are known in closed form. Seeds were written down before the first run. */
class SobolIndicesTest {

    private static final long SEED = 20_261_126L;
    private static final int DRAWS = 20_000;
    /** Estimates are held to this many of their standard errors: one of eight misses once in fifty seeds. */
    private static final double ERRORS = 3.2;

    private static final String ISHIGAMI =
            "T. Ishigami, T. Homma, An importance quantification technique in uncertainty analysis for computer models, Proc. ISUMA"
                    + " (1990) 398-403";
    private static final double A = 7;
    private static final double B = 0.1;

    private static final List<UncertainInput> ANGLES = IntStream.rangeClosed(1, 3)
            .mapToObj(i -> new UncertainInput("x" + i, 0, Uncertainty.rectangular(Math.PI)))
            .toList();

    private static double ishigami(Draw x) {
        double sine = Math.sin(x.value("x2"));
        return Math.sin(x.value("x1")) * (1 + B * Math.pow(x.value("x3"), 4)) + A * sine * sine;
    }

    /**
     * Parts of the variance from moments over (−π, π): E sin² = 1/2, E sin⁴ = 3/8, E x⁴ = π⁴/5, E x⁸ = π⁸/9. By x₁ alone the function is
     * sin x₁ (1 + b E x⁴), by x₂ alone a sin² x₂; x₃ acts through x₁ only, by b (x₃⁴ − E x⁴) sin x₁.
     */
    private record Exact(double first, double second, double together) {

        static Exact ofIshigami() {
            double fourth = Math.pow(Math.PI, 4) / 5;
            double eighth = Math.pow(Math.PI, 8) / 9;
            return new Exact(
                    0.5 * Math.pow(1 + B * fourth, 2),
                    A * A * (3.0 / 8 - 1.0 / 4),
                    0.5 * B * B * (eighth - fourth * fourth));
        }

        double variance() {
            return first + second + together;
        }
    }

    @Test
    void closedFormIsWhatIsUsuallyPrinted() {
        Exact exact = Exact.ofIshigami();
        assertThat(exact.first() / exact.variance()).isCloseTo(0.3139, within(5e-5));
        assertThat(exact.second() / exact.variance()).isCloseTo(0.4424, within(5e-5));
        assertThat((exact.first() + exact.together()) / exact.variance()).isCloseTo(0.5576, within(5e-5));
        assertThat(exact.together() / exact.variance()).isCloseTo(0.2437, within(5e-5));
    }

    @Test
    void ishigami() {
        Exact exact = Exact.ofIshigami();
        SobolIndices found = SobolIndices.of(Ensemble.of(DRAWS, SEED), ANGLES, SobolIndicesTest::ishigami);
        double v = exact.variance();
        double[] first = {exact.first() / v, exact.second() / v, 0};
        double[] total = {(exact.first() + exact.together()) / v, exact.second() / v, exact.together() / v};
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            SobolIndices.Index index = found.inputs().get(i);
            assertThat(index.name()).isEqualTo("x" + (i + 1));
            check("first", index, first[i], index.first(), index.firstError(), rows);
            check("total", index, total[i], index.total(), index.totalError(), rows);
        }
        DocumentParts.leaveTable(
                "calibration-sobol", List.of("Index", "Input", "Exact", "Found", "Standard error"), rows);
        assertThat(found.runs()).isEqualTo(5 * DRAWS);
        // E f = a E sin² x₂; the mean of 2 n independent results.
        assertThat(found.mean()).isCloseTo(A / 2, within(4 * Math.sqrt(v / (2 * DRAWS))));
        assertThat(found.variance()).isCloseTo(v, within(0.03 * v));
        assertThat(found.inputs())
                .allSatisfy(index -> assertThat(Math.max(index.firstError(), index.totalError()))
                        .isBetween(0.001, 0.02));
    }

    private static void check(
            String kind, SobolIndices.Index index, double exact, double found, double error, List<List<String>> rows) {
        OutsideChecks.published("sobol-ishigami-" + kind + "-" + index.name(), ISHIGAMI)
                .what(kind + " index of " + index.name() + ", from the closed form with a = 7, b = 0.1")
                .unit("1")
                .expected(exact)
                .within(ERRORS * error)
                .check(found);
        rows.add(List.of(kind, index.name(), number(exact), number(found), number(error)));
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.4f", value);
        return text.matches("-0\\.0+") ? text.substring(1) : text;
    }

    /**
     * A product of factors (|4 x − 2| + a) / (1 + a) on (0, 1), each of mean 1 and variance 1/(3 (1 + a)²): the variance of the product is that
     * of independent factors. The function is I. M. Sobol's (A. Saltelli, I. M. Sobol', Reliability Engineering and System Safety 50 (1995)
     * 225-239), from memory; the parts follow from what is said here.
     */
    @Test
    void productOfFactors() {
        double[] a = {0, 1, 4.5, 9};
        List<UncertainInput> inputs = IntStream.range(0, a.length)
                .mapToObj(i -> new UncertainInput("x" + i, 0.5, Uncertainty.rectangular(0.5)))
                .toList();
        SobolIndices found = SobolIndices.of(
                Ensemble.of(DRAWS, SEED),
                inputs,
                x -> IntStream.range(0, a.length)
                        .mapToDouble(i -> (Math.abs(4 * x.value("x" + i) - 2) + a[i]) / (1 + a[i]))
                        .reduce(1, (one, other) -> one * other));
        double[] parts = IntStream.range(0, a.length)
                .mapToDouble(i -> 1 / (3 * (1 + a[i]) * (1 + a[i])))
                .toArray();
        double product = 1;
        for (double part : parts) {
            product *= 1 + part;
        }
        for (int i = 0; i < a.length; i++) {
            SobolIndices.Index index = found.inputs().get(i);
            assertThat(index.first()).isCloseTo(parts[i] / (product - 1), within(ERRORS * index.firstError()));
            assertThat(index.total())
                    .isCloseTo(
                            parts[i] * product / (1 + parts[i]) / (product - 1), within(ERRORS * index.totalError()));
        }
    }

    /** Without interplay both indices are the parts of a sum of variances; widths 1, 2, 3 make 1/14, 4/14, 9/14. */
    @Test
    void sumOfThree() {
        List<UncertainInput> inputs = IntStream.rangeClosed(1, 3)
                .mapToObj(i -> new UncertainInput("x" + i, 0, Uncertainty.normal(i)))
                .toList();
        SobolIndices found = SobolIndices.of(
                Ensemble.of(DRAWS, SEED), inputs, x -> 1e6 + x.value("x1") + x.value("x2") + x.value("x3"));
        for (int i = 1; i <= 3; i++) {
            SobolIndices.Index index = found.inputs().get(i - 1);
            assertThat(index.first()).isCloseTo(i * i / 14.0, within(ERRORS * index.firstError()));
            assertThat(index.total()).isCloseTo(i * i / 14.0, within(ERRORS * index.totalError()));
        }
        assertThat(found.mean()).isCloseTo(1e6, within(0.1));
        assertThat(found.variance()).isCloseTo(14, within(0.5));
    }

    /** Ninety of a hundred estimates lie within 1.645 standard errors of the truth: one index of each kind per independent sample. */
    @Test
    void standardErrorsAreTrue() {
        int samples = 400;
        Exact exact = Exact.ofIshigami();
        int first = 0;
        int total = 0;
        for (int i = 0; i < samples; i++) {
            SobolIndices.Index x1 = SobolIndices.of(Ensemble.of(500, SEED + 1 + i), ANGLES, SobolIndicesTest::ishigami)
                    .inputs()
                    .get(0);
            first += Math.abs(x1.first() - exact.first() / exact.variance()) <= 1.645 * x1.firstError() ? 1 : 0;
            total += Math.abs(x1.total() - (exact.first() + exact.together()) / exact.variance())
                            <= 1.645 * x1.totalError()
                    ? 1
                    : 0;
        }
        BinomialDistribution band = new BinomialDistribution(null, samples, 0.90);
        int fewest = band.inverseCumulativeProbability(0.0005);
        int most = band.inverseCumulativeProbability(0.9995);
        assertThat(first).as("first order within 1.645 standard errors").isBetween(fewest, most);
        assertThat(total).as("total within 1.645 standard errors").isBetween(fewest, most);
    }

    /** More draws than groups: the standard error is that of single rows, to what 200 bootstrap samples tell. */
    @Test
    void standardErrorsFallWithTheRootOfTheDraws() {
        double few = error(1000);
        double many = error(16_000);
        assertThat(few / many).isBetween(3.0, 5.3);
    }

    private static double error(int draws) {
        return SobolIndices.of(Ensemble.of(draws, SEED), ANGLES, SobolIndicesTest::ishigami)
                .inputs()
                .get(0)
                .firstError();
    }

    @Test
    void threadsDoNotMatterAndTheMonitorMayCancel() {
        ToDoubleFunction<Draw> model = SobolIndicesTest::ishigami;
        SobolIndices alone = SobolIndices.of(Ensemble.of(1500, SEED), ANGLES, model);
        ExecutorService threads = Executors.newFixedThreadPool(3);
        try {
            assertThat(SobolIndices.of(Ensemble.of(1500, SEED).on(threads), ANGLES, model))
                    .isEqualTo(alone);
        } finally {
            threads.shutdown();
        }
        assertThat(SobolIndices.of(Ensemble.of(1500, SEED + 1), ANGLES, model)).isNotEqualTo(alone);
        assertThatExceptionOfType(RunCancelledException.class)
                .isThrownBy(() -> SobolIndices.of(
                        Ensemble.of(1500, SEED).withMonitor((reached, end, count) -> count < 100), ANGLES, model));
    }

    @Test
    void whatDoesNotVaryHasNoParts() {
        SobolIndices found = SobolIndices.of(Ensemble.of(10, SEED), ANGLES, draw -> 7.5);
        assertThat(found.variance()).isZero();
        assertThat(found.inputs())
                .allSatisfy(index -> assertThat(index).isEqualTo(new SobolIndices.Index(index.name(), 0, 0, 0, 0)));
    }

    @Test
    void nonsenseIsRefused() {
        Ensemble ensemble = Ensemble.of(10, SEED);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SobolIndices.of(ensemble, List.of(), draw -> 1))
                .withMessageContaining("0 inputs");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SobolIndices.of(ensemble, List.of(ANGLES.get(0), ANGLES.get(0)), draw -> 1))
                .withMessageContaining("x1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SobolIndices.of(Ensemble.of(1_000_001, SEED), ANGLES, draw -> 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SobolIndices.of(ensemble, ANGLES, draw -> Double.NaN))
                .withMessageContaining("result NaN");
        assertThatIllegalArgumentException().isThrownBy(() -> SobolIndices.of(ensemble, ANGLES, draw -> 1e200));
    }
}
