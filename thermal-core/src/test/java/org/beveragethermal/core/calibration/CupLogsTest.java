/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.beveragethermal.core.CupLogs;
import org.beveragethermal.testsupport.DocumentParts;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Published logs of cups that cool in a room. */
class CupLogsTest {

    @Test
    void printedLeastSquaresLineIsReproduced() {
        double[] minutes = CupLogs.classMinutes();
        double[] logs = Arrays.stream(CupLogs.classFahrenheit())
                .map(t -> Math.log(t - CupLogs.CLASS_ROOM_F))
                .toArray();
        FitResult result = Curves.lineFit()
                .run("cup", Curves.line(minutes), Observations.of(minutes, logs))
                .build()
                .run();
        OutsideChecks.published("cup-line-slope", CupLogs.CLASS_SOURCE)
                .what("least-squares line: slope per minute")
                .unit("1/min")
                .expected(CupLogs.CLASS_SLOPE_PER_MIN)
                .within(1e-6)
                .check(result.estimate("slope").value());
        OutsideChecks.published("cup-line-intercept", CupLogs.CLASS_SOURCE)
                .what("least-squares line: intercept")
                .unit("1")
                .expected(CupLogs.CLASS_INTERCEPT)
                .within(1e-6)
                .check(result.estimate("intercept").value());
    }

    @Test
    void singleExponentialIsRejectedByItsResiduals() {
        double[] minutes = CupLogs.mugMinutes();
        Observations readings = Observations.of(minutes, CupLogs.mugCelsius());
        FitResult one = Curves.decayFit(22, 70, 0.02)
                .run("mug", Curves.decay(minutes), readings)
                .build()
                .run();
        FitResult two = Fit.builder()
                .parameter(Parameter.of("room", 22))
                .parameter(Parameter.of("difference", 70))
                .parameter(Parameter.of("rate", 0.012))
                .parameter(Parameter.of("part", 0.7).between(0, 1))
                .parameter(Parameter.of("fast", 0.08))
                .run("mug", Curves.twoDecays(minutes), readings)
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
