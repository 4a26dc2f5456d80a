/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.beveragethermal.testsupport.DocumentParts;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Published logs of cups that cool in a room. */
class CupLogsTest {

    /** 15 of the 222 readings of a mug of freshly poured water: dataset CoolingWater, R package mosaicData 0.20.4. */
    private static final double[] MUG_MIN = {0, 1, 2, 5, 10, 15, 20, 30, 45, 60, 90, 120, 150, 180, 221};

    private static final double[] MUG_C = {
        98.2, 94.4, 91.4, 84.9, 76.5, 70.3, 65.3, 58.1, 50.5, 45.1, 37.7, 33.2, 30.1, 27.8, 25.8
    };

    @Test
    void printedLeastSquaresLineIsReproduced() {
        double[] minutes = {0, 10, 20, 30, 40, 50, 60, 70, 80, 90};
        double[] fahrenheit = {182.0, 151.7, 133.9, 122.0, 113.1, 106.2, 101.1, 96.7, 93.5, 90.9};
        double[] logs = Arrays.stream(fahrenheit).map(t -> Math.log(t - 74.6)).toArray();
        FitResult result = Curves.lineFit()
                .run("cup", Curves.line(minutes), Observations.of(minutes, logs))
                .build()
                .run();
        String source = "university calculus class, cup of hot water in a room of 74.6 °F, printed line ln(T − 74.6) ="
                + " −0.020416 t + 4.535718";
        OutsideChecks.published("cup-line-slope", source)
                .what("least-squares line: slope per minute")
                .unit("1/min")
                .expected(-0.020416)
                .within(1e-6)
                .check(result.estimate("slope").value());
        OutsideChecks.published("cup-line-intercept", source)
                .what("least-squares line: intercept")
                .unit("1")
                .expected(4.535718)
                .within(1e-6)
                .check(result.estimate("intercept").value());
    }

    @Test
    void singleExponentialIsRejectedByItsResiduals() {
        Observations readings = Observations.of(MUG_MIN, MUG_C);
        FitResult one = Curves.decayFit(22, 70, 0.02)
                .run("mug", Curves.decay(MUG_MIN), readings)
                .build()
                .run();
        FitResult two = Fit.builder()
                .parameter(Parameter.of("room", 22))
                .parameter(Parameter.of("difference", 70))
                .parameter(Parameter.of("rate", 0.012))
                .parameter(Parameter.of("part", 0.7).between(0, 1))
                .parameter(Parameter.of("fast", 0.08))
                .run("mug", Curves.twoDecays(MUG_MIN), readings)
                .build()
                .run();
        ResidualDiagnostics residuals = one.residuals();
        assertThat(residuals.rejectsModel()).isTrue();
        String words = one.explain();
        assertThat(words).contains("THE MODEL IS REJECTED");
        DocumentParts.leaveTable(
                "calibration-rejected",
                List.of("A single exponential through the mug's log"),
                words.lines().map(line -> List.of(line.strip())).toList());
        assertThat(one.testAgainst(two).probability()).isLessThan(1e-6);
        assertThat(two.criteria().akaikeCorrected().orElseThrow())
                .isLessThan(one.criteria().akaikeCorrected().orElseThrow() - 20);
    }
}
