/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.Stream;
import org.beveragethermal.testsupport.DocumentParts;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Fits against certified values of NIST's Statistical Reference Datasets, nonlinear regression, from both of their starts. Each set
 * and start leaves two rows: the digits that agree, of the worst parameter and of the worst standard deviation.
 */
class StrdTest {

    /** Certified values have eleven digits. */
    private static final double MOST = 11;

    /** Rows of the table of the documents, by place of the set and start. */
    private static final Map<Integer, List<String>> ROWS = new ConcurrentSkipListMap<>();

    static Stream<Arguments> cases() {
        return Strd.NAMES.stream().flatMap(name -> Stream.of(Arguments.of(name, 0), Arguments.of(name, 1)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void certifiedValuesAreReached(String name, int start) {
        Strd set = Strd.read(name);
        FitResult result = set.fit(start);
        List<Estimate> estimates = result.estimates();
        double parameters = 0;
        double deviations = 0;
        for (int k = 0; k < estimates.size(); k++) {
            Estimate estimate = estimates.get(k);
            double[] certified = set.parameters().get(k);
            parameters = Math.max(parameters, off(estimate.value(), certified[2]));
            deviations = Math.max(deviations, off(estimate.standardError().orElse(0), certified[3]));
        }
        String id = "strd-" + name.toLowerCase(Locale.ROOT) + "-" + (start + 1);
        ROWS.put(
                2 * Strd.NAMES.indexOf(name) + start,
                List.of(name, Integer.toString(start + 1), digits(parameters), digits(deviations)));
        check(id + "-parameters", set, start, "worst parameter", 1e-6, parameters);
        check(id + "-deviations", set, start, "worst standard deviation", 1e-5, deviations);
        check(
                id + "-residual",
                set,
                start,
                "residual standard deviation",
                1e-8,
                off(result.residualStandardDeviation(), set.standardDeviation()));
    }

    @AfterAll
    static void leaveTable() {
        DocumentParts.leaveTable(
                "calibration-strd",
                List.of("Set", "Start", "Digits of the worst parameter", "Digits of the worst standard deviation"),
                List.copyOf(ROWS.values()));
    }

    /** Digits that agree: −log₁₀ of the relative error, cut to one decimal, never more than there are. */
    private static String digits(double off) {
        double digits = Math.min(MOST, -Math.log10(off));
        return String.format(Locale.ROOT, "%.1f", Math.floor(10 * digits) / 10);
    }

    private static void check(String id, Strd set, int start, String what, double most, double off) {
        OutsideChecks.published(
                        id,
                        "NIST Statistical Reference Datasets (StRD), nonlinear regression, certified values of "
                                + set.name())
                .what(set.name() + " from start " + (start + 1) + ": relative error of the " + what)
                .unit("1")
                .expected(0)
                .within(most)
                .check(off);
    }

    /** Relative error. */
    private static double off(double value, double certified) {
        return Math.abs(value - certified) / Math.abs(certified);
    }
}
