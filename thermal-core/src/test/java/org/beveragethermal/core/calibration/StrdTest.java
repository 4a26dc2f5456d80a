/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Fits against certified values of NIST's Statistical Reference Datasets, nonlinear regression, from both of their starts. */
class StrdTest {

    private static final String SOURCE =
            "NIST Statistical Reference Datasets (StRD), nonlinear regression, %s, certified values";

    static Stream<Arguments> cases() {
        return Strd.NAMES.stream().flatMap(name -> Stream.of(Arguments.of(name, 0), Arguments.of(name, 1)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void certifiedValuesAreReached(String name, int start) {
        Strd set = Strd.read(name);
        FitResult result = set.fit(start);
        List<Estimate> estimates = result.estimates();
        double parameters = IntStream.range(0, estimates.size())
                .mapToDouble(
                        k -> digits(estimates.get(k).value(), set.parameters().get(k)[2]))
                .min()
                .orElseThrow();
        double deviations = IntStream.range(0, estimates.size())
                .mapToDouble(k -> digits(
                        estimates.get(k).standardError().orElse(0),
                        set.parameters().get(k)[3]))
                .min()
                .orElseThrow();
        System.out.printf(
                Locale.ROOT,
                SOURCE.substring(0, 4) + "STRD %s %d: %.1f %.1f, s %.1f, evaluations %d %s cond %.3g%n",
                name,
                start + 1,
                parameters,
                deviations,
                digits(result.residualStandardDeviation(), set.standardDeviation()),
                result.evaluations(),
                result.converged(),
                result.identifiability().condition());
    }

    /** Digits that agree: −log₁₀ of the relative error, at most the 11 that are certified. */
    private static double digits(double value, double certified) {
        return Math.min(11, -Math.log10(Math.abs(value - certified) / Math.abs(certified)));
    }
}
