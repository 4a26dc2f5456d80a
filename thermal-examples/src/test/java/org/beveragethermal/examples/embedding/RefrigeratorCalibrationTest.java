/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.beveragethermal.core.calibration.Estimate;
import org.beveragethermal.core.calibration.log.LogFormat;
import org.beveragethermal.core.calibration.log.LogReader;
import org.beveragethermal.core.calibration.log.SensorSeries;
import org.beveragethermal.core.surroundings.Multipliers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The calibration finds what a log was made with, and does not explain away a bottle that others have measured. */
class RefrigeratorCalibrationTest {

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... args) {
        return RefrigeratorCalibration.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private SensorSeries log(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("log.csv"), text, StandardCharsets.UTF_8);
        return LogReader.read(file, LogFormat.inferred()).log().only();
    }

    @Test
    void theInventedLogsFactorAndStartAreFound() throws IOException {
        RefrigeratorCalibration.Calibrated found =
                RefrigeratorCalibration.calibrate(log(RefrigeratorCalibration.inventedLog()), 5);
        assertThat(found.isBelieved()).isTrue();
        assertThat(found.result().interval(Multipliers.AIR_FILM, 0.95).contains(1.3))
                .isTrue();
        assertThat(found.result().interval("start", 0.95).contains(273.15 + 21.4))
                .isTrue();
        assertThat(found.result().residualStandardDeviation()).isCloseTo(0.15, within(0.03));
        assertThat(found.timeConstantS()).isLessThan(found.uncalibratedS());
    }

    /**
     * Row M025 of the measured table (thermal-core/docs/measured.md): "organised consumer or test-kitchen test", a bottle of 750 mL of red
     * wine went from room temperature to 12.8 °C within 150 min in a refrigerator. Neither temperature is stated; 21 °C and 4.5 °C, the
     * middle of what that table draws refrigerators from, are supposed here. By hand the row's time constant is then 150 min / ln((21 −
     * 4.5)/(12.8 − 4.5)) = 218 min. It has no reading between; the log follows one exponential between its two.
     *
     * <p>The table predicts 61 to 118 min for it: the bottle was slower than the laws. So says the calibration: the factor ends at its
     * lower bound, a tenth of the law, the model is rejected, and the time constant stays 4 % short of the row's.
     */
    @Test
    void aMeasuredBottleThatIsTooSlowForTheLawsIsNotExplainedAway() throws IOException {
        double byHandMin = 150 / Math.log((21 - 4.5) / (12.8 - 4.5));
        StringBuilder log = new StringBuilder("elapsed [s],bottle [°C]\n");
        for (int minute = 0; minute <= 150; minute += 10) {
            log.append(String.format(
                    Locale.ROOT, "%d,%.2f\n", 60 * minute, 4.5 + (21 - 4.5) * Math.exp(-minute / byHandMin)));
        }
        RefrigeratorCalibration.Calibrated found = RefrigeratorCalibration.calibrate(log(log.toString()), 4.5);
        assertThat(byHandMin).isCloseTo(218, within(0.5));
        assertThat(found.timeConstantS() / 60).isCloseTo(byHandMin, within(0.05 * byHandMin));
        assertThat(found.uncalibratedS() / 60).isLessThan(0.7 * byHandMin);
        assertThat(found.result().estimate(Multipliers.AIR_FILM).status()).isEqualTo(Estimate.Status.AT_LOWER_BOUND);
        assertThat(found.result().residuals().rejectsModel()).isTrue();
        assertThat(found.isBelieved()).isFalse();
    }

    @Test
    void asAProgramItExplainsAndDraws() throws IOException {
        assertThat(run(folder.resolve("plots").toString())).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("invented with a factor of 1.3", "air film", "time constant: ")
                .doesNotContain("NaN");
        try (Stream<Path> files = Files.list(folder.resolve("plots"))) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "refrigerator-log.csv", "prediction.svg", "residuals.svg", "profile.svg");
        }
        for (String plot : List.of("prediction.svg", "residuals.svg", "profile.svg")) {
            assertThat(Files.readString(folder.resolve("plots").resolve(plot), StandardCharsets.UTF_8))
                    .contains("<svg")
                    .doesNotContain("NaN");
        }
        assertThat(err.size()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "12, refrigerator '12': expected 0 to 10 °C",
        "cold, refrigerator 'cold': expected 0 to 10 °C",
        "NaN, refrigerator 'NaN': expected 0 to 10 °C"
    })
    void aBadTemperatureIsRefused(String given, String why) {
        assertThat(run(folder.toString(), "log.csv", given)).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8).strip()).isEqualTo("refused: " + why);
    }

    @Test
    void aBadLogIsRefusedAndNothingIsDrawn() throws IOException {
        Path plots = folder.resolve("plots");
        Path bad = Files.writeString(folder.resolve("bad.csv"), "no log\n", StandardCharsets.UTF_8);
        Path brief = Files.writeString(
                folder.resolve("short.csv"), "elapsed [s],bottle [°C]\n0,21\n300,20\n", StandardCharsets.UTF_8);
        Path huge = Files.write(folder.resolve("huge.csv"), new byte[5_000_000]);
        assertThat(run(plots.toString(), bad.toString())).isEqualTo(2);
        assertThat(run(plots.toString(), brief.toString())).isEqualTo(2);
        assertThat(run(plots.toString(), huge.toString())).isEqualTo(2);
        assertThat(run(plots.toString(), folder.resolve("none.csv").toString())).isEqualTo(2);
        assertThat(run(bad.resolve("in a file").toString())).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("has 2 readings: expected at least 8", "has 5000000 bytes: expected at most 4000000");
        try (Stream<Path> files = Files.list(plots)) {
            assertThat(files).isEmpty();
        }
    }
}
