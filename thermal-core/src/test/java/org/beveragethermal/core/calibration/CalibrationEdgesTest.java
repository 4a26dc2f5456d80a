/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Fits at the edge of what readings can tell. Expected values follow from counting or from the definitions. */
class CalibrationEdgesTest {

    private static final double[] AT = {0, 1, 2, 3};

    private static final Model LEVEL = new Model() {
        @Override
        public List<String> parameters() {
            return List.of("level");
        }

        @Override
        public Predicted at(double[] values) {
            return Predicted.of(
                    new double[] {values[0], values[0], values[0], values[0]}, new double[][] {{1}, {1}, {1}, {1}});
        }
    };

    private static final Model LINE = new Model() {
        @Override
        public List<String> parameters() {
            return List.of("level", "slope");
        }

        @Override
        public Predicted at(double[] values) {
            double[] line = new double[AT.length];
            double[][] slopes = new double[AT.length][];
            for (int i = 0; i < AT.length; i++) {
                line[i] = values[0] + values[1] * AT[i];
                slopes[i] = new double[] {1, AT[i]};
            }
            return Predicted.of(line, slopes);
        }
    };

    private static Observations readings(double... values) {
        return Observations.of(AT, values);
    }

    private static Fit.Builder level() {
        return Fit.builder().parameter(Parameter.of("level", 1));
    }

    private static Fit.Builder line() {
        return level().parameter(Parameter.of("slope", 0));
    }

    @Test
    void signsOfSeveralRunsAreCountedAsOneOrder() {
        // Of the 70 orders of four of either sign, two have as few as two stretches.
        FitResult result = level().run("warm", LEVEL, readings(2, 2.1, 2.2, 2.1))
                .run("cold", LEVEL, readings(1, 1.1, 1.2, 1.1))
                .build()
                .run();
        assertThat(result.residuals().changesOfSign()).isEqualTo(2);
        assertThat(result.residuals().changesOfSignP()).isCloseTo(2.0 / 70, within(1e-12));
        assertThat(result.residuals().rejectsModel()).isFalse();
    }

    @Test
    void scatterThatReadingsCannotTellIsRefused() {
        Observations limits = Observations.builder()
                .above(0, 1, 1)
                .above(1, 1, 1)
                .below(2, 3, 1)
                .below(3, 2, 1)
                .build();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> level().run("limits", LEVEL, limits).build())
                .withMessageContaining("0 exact readings")
                .withMessageContaining("knownDeviations");
        FitResult known =
                level().knownDeviations().run("limits", LEVEL, limits).build().run();
        assertThat(known.estimate("level").standardError()).isPresent();

        Fit.Builder wide = Fit.builder();
        List<String> names = List.of("a", "b", "c", "d");
        names.forEach(name -> wide.parameter(Parameter.of(name, 1).withPrior(1, 1e6)));
        Model free = new Model() {
            @Override
            public List<String> parameters() {
                return names;
            }

            @Override
            public Predicted at(double[] values) {
                return Predicted.of(
                        values.clone(), new double[][] {{1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}, {0, 0, 0, 1}});
            }
        };
        Fit saturated = wide.run("one", free, readings(2, 5, 3, 4)).build();
        assertThatExceptionOfType(FitException.class)
                .isThrownBy(saturated::run)
                .withMessageContaining("degrees of freedom");
    }

    @Test
    void laterSlopesThatAreNotOnePerValueAreRefused() {
        Predicted predicted = Predicted.of(new double[] {1, 2, 3}, () -> new double[][] {{1, 1, 1}, {1, 1}});
        assertThatIllegalArgumentException()
                .isThrownBy(() -> predicted.slope(0, 0))
                .withMessageContaining("2 slopes for 3 values");
    }

    @Test
    void readingsThatAreAllZeroGiveNumbers() {
        FitResult result =
                line().run("zero", LINE, readings(0, 0, 0, 0)).build().run();
        assertThat(result.degreesOfFreedom()).isCloseTo(2, within(1e-9));
        assertThat(result.explain()).doesNotContain("NaN").contains("AICc none");
    }

    @Test
    void bandRefusesADeviationThatIsNone() {
        FitResult result =
                line().run("one", LINE, readings(0.2, 1.1, 0, 0.1)).build().run();
        for (double deviation : new double[] {Double.NaN, -1, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> result.band(LINE, deviation, 0.95))
                    .withMessageContaining("deviation of a new reading");
        }
    }

    @Test
    void fittedSetRefusesNamesThatItsTextCannotHold() {
        for (String name : List.of("pantry\tleft", "pantry\n")) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() ->
                            new FittedSet(name, 1, Instant.EPOCH, Map.of("film", 1.0), List.of(List.of(0.01)), 0.1, 5))
                    .withMessageContaining("expected");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new FittedSet(
                            "pantry", 1, Instant.EPOCH, Map.of(name, 1.0), List.of(List.of(0.01)), 0.1, 5))
                    .withMessageContaining("tabulators");
        }
    }

    @Test
    void runLeftOutIsPredictedWithoutWhatOnlyItTells() {
        FitResult result = Fit.builder()
                .parameter(Parameter.of("level", 0).forEachRun())
                .run("hundred", LEVEL, readings(100, 100, 100, 100.1))
                .run("two hundred", LEVEL, readings(200, 200, 200, 200.1))
                .build()
                .run();
        // Both levels begin at 0: the root of the mean of 100² and 200².
        assertThat(result.crossValidationByRun().rootMeanSquare()).isCloseTo(Math.sqrt(25_000), within(0.1));
    }

    @Test
    void errorsThatAlternateKeepTheirSignOverGaps() {
        assertThat(Following.correlation(-0.5, 2)).isCloseTo(0.25, within(1e-15));
        assertThat(Following.correlation(-0.5, 3)).isCloseTo(-0.125, within(1e-15));
        assertThat(Following.correlation(0.5, 1.5)).isCloseTo(Math.pow(0.5, 1.5), within(1e-15));
    }

    @Test
    void sumsOfSquaresThatHaveNoDistributionAreNotTested() {
        Observations seen = readings(0.2, 1.1, 2.0, 3.2);
        FitResult small =
                level().followingErrors().run("one", LEVEL, seen).build().run();
        FitResult large = line().run("one", LINE, seen).build().run();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> small.testAgainst(large))
                .withMessageContaining("compare criteria");
    }

    @Test
    void parameterAtItsBoundHasNoLinearInterval() {
        FitResult result = Fit.builder()
                .parameter(Parameter.of("level", 1).between(1, 5))
                .run("one", LEVEL, readings(0.2, 0.1, 0, 0.1))
                .build()
                .run();
        assertThat(result.explain()).contains("readings ask for less); none; open to");
    }

    @Test
    void standardErrorOfARobustLevelIsHubers() {
        FitResult result = level().knownDeviations()
                .loss(Loss.huber())
                .run("one", LEVEL, readings(0, 0.1, -0.1, 10))
                .build()
                .run();
        // Three readings within the constant and one beyond: 3 m = 1.345. Huber (1981), section 7.6, by hand.
        double m = 1.345 / 3;
        assertThat(result.estimate("level").value()).isCloseTo(m, within(1e-9));
        double influences = m * m + (m - 0.1) * (m - 0.1) + (m + 0.1) * (m + 0.1) + 1.345 * 1.345;
        double correction = 1 + 0.25 * (0.75 * 0.25) / (0.75 * 0.75);
        double variance = correction * correction * influences / 3 / (0.75 * 0.75) / 4;
        assertThat(result.estimate("level").standardError().orElseThrow()).isCloseTo(Math.sqrt(variance), within(1e-9));
    }
}
