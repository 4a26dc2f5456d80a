/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.time.ZoneOffset;
import java.util.List;
import java.util.SplittableRandom;
import org.beveragethermal.core.calibration.Bootstrap;
import org.beveragethermal.core.calibration.Criteria;
import org.beveragethermal.core.calibration.CrossValidation;
import org.beveragethermal.core.calibration.Curve;
import org.beveragethermal.core.calibration.Fit;
import org.beveragethermal.core.calibration.FitResult;
import org.beveragethermal.core.calibration.FitSnapshot;
import org.beveragethermal.core.calibration.Loss;
import org.beveragethermal.core.calibration.Model;
import org.beveragethermal.core.calibration.NestedTest;
import org.beveragethermal.core.calibration.Observations;
import org.beveragethermal.core.calibration.Parameter;
import org.beveragethermal.core.calibration.Predicted;
import org.beveragethermal.core.calibration.log.Duplicates;
import org.beveragethermal.core.calibration.log.LineNumbers;
import org.beveragethermal.core.calibration.log.LogFormat;
import org.beveragethermal.core.calibration.log.LogReader;
import org.beveragethermal.core.calibration.log.ReadLog;
import org.beveragethermal.core.calibration.log.Rejected;
import org.beveragethermal.core.calibration.log.SensorFigures;
import org.beveragethermal.core.calibration.log.TimeForm;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.junit.jupiter.api.Test;

/** A fit of a user's own curve and a log with faults. The readings are invented: a straight line with errors drawn from a fixed seed. */
class CalibrationInUseTest {

    private static final double[] AT = at();
    private static final Observations READ = Observations.of(AT, readings());
    private static final Curve LINE = (at, parameters, slopes) -> {
        slopes[0] = 1;
        slopes[1] = at;
        return parameters[0] + parameters[1] * at;
    };

    private static double[] at() {
        double[] at = new double[40];
        for (int i = 0; i < at.length; i++) {
            at[i] = 0.25 * i;
        }
        return at;
    }

    private static double[] readings() {
        SplittableRandom random = new SplittableRandom(11);
        double[] read = new double[AT.length];
        for (int i = 0; i < read.length; i++) {
            read[i] = 3 + 2 * AT[i] + 0.3 * random.nextGaussian();
        }
        return read;
    }

    private static FitResult fit(Loss loss, Parameter slope) {
        return Fit.builder()
                .parameter(Parameter.of("offset", 0))
                .parameter(slope)
                .run("line", Model.of(List.of("offset", "slope"), AT, LINE), READ)
                .loss(loss)
                .build()
                .run();
    }

    @Test
    void aStraightLineIsFound() {
        FitResult result = fit(Loss.SQUARES, Parameter.of("slope", 1));
        assertThat(result.estimate("slope").value()).isCloseTo(2, within(0.1));
        assertThat(fit(Loss.huber(), Parameter.of("slope", 1)).estimate("slope").value())
                .isCloseTo(2, within(0.1));
        Predicted predicted = Model.of(List.of("offset", "slope"), AT, LINE).at(new double[] {3, 2});
        assertThat(predicted.value(4)).isEqualTo(5);
        assertThat(predicted.slope(4, 1)).isEqualTo(1);
    }

    @Test
    void aModelThatLacksItsSlopeIsRejected() {
        FitResult line = fit(Loss.SQUARES, Parameter.of("slope", 1));
        FitResult level = fit(Loss.SQUARES, Parameter.of("slope", 0).kept());
        NestedTest test = level.testAgainst(line);
        assertThat(test.probability()).isLessThan(1e-6);
        Criteria better = line.criteria();
        assertThat(better.bayesian()).isLessThan(level.criteria().bayesian());
        CrossValidation left = line.crossValidation(5, 3L);
        assertThat(left.rootMeanSquare()).isGreaterThan(0.9 * left.ofTheFit()).isLessThan(0.5);
    }

    @Test
    void repeatsOfTheFitScatterAsTheFitSays() {
        FitResult line = fit(Loss.SQUARES, Parameter.of("slope", 1));
        Bootstrap repeats = line.bootstrap(Bootstrap.Kind.PARAMETRIC, Ensemble.of(300, 5L));
        double stated = line.estimate("slope").standardError().orElseThrow();
        assertThat(repeats.standardError("slope")).isCloseTo(stated, within(0.25 * stated));
        FitSnapshot plain = line.snapshot();
        assertThat(plain.converged()).isTrue();
        assertThat(plain.estimates()).hasSize(2);
    }

    @Test
    void aLogSaysWhatItDropped() throws IOException {
        String text = """
                time,bottle
                2027-01-01T10:00:00Z,20.0
                2027-01-01T10:01:00Z,19.5
                2027-01-01T10:01:00Z,19.4
                2027-01-01T10:02:00Z,broken
                2027-01-01T10:03:00Z,18.6
                2027-01-01T10:04:00Z,18.2
                """;
        ReadLog read = LogReader.read(
                new StringReader(text),
                LogFormat.builder()
                        .zone(ZoneOffset.UTC)
                        .duplicates(Duplicates.KEEP_FIRST)
                        .build());
        assertThat(read.report().timeForm()).isEqualTo(TimeForm.STAMP_WITH_OFFSET);
        List<Rejected> rejected = read.report().rejected();
        assertThat(rejected).extracting(Rejected::line).contains(5L);
        LineNumbers lines = read.report().rejectedLines(rejected.get(0).reason());
        assertThat(lines.count()).isPositive();
        SensorFigures figures = read.report().figures().get(0);
        assertThat(figures.sensor()).isEqualTo("bottle");
        assertThat(figures.kept()).isEqualTo(4);
    }
}
