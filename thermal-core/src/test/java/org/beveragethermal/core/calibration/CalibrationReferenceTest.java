/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** One log of our own invention, fitted by R too: the script is calibration.R among the reference scripts. */
class CalibrationReferenceTest {

    private static final double[] MINUTES =
            IntStream.range(0, 20).mapToDouble(i -> 15 * i).toArray();
    private static final double[] READINGS = {
        22.1, 20.4, 18.9, 17.6, 16.3, 15.3, 14.2, 13.4, 12.5, 11.9, 11.1, 10.6, 10.0, 9.6, 9.0, 8.7, 8.3, 8.0, 7.6, 7.5
    };
    private static final double[] LOGARITHMS =
            Arrays.stream(READINGS).map(y -> Math.log(y - 4)).toArray();
    private static final double[] DECAYED = decayed(0.0078);
    private static final Map<String, double[]> EXPECTED = read();

    private static double[] decayed(double rate) {
        return Arrays.stream(MINUTES).map(t -> Math.exp(-rate * t)).toArray();
    }

    private static Map<String, double[]> read() {
        Map<String, double[]> values = new HashMap<>();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(CalibrationReferenceTest.class.getResourceAsStream("calibration-reference.txt")),
                StandardCharsets.UTF_8))) {
            for (String line : lines.lines().toList()) {
                String[] fields = line.trim().split(" +", -1);
                values.put(
                        fields[0],
                        Arrays.stream(fields)
                                .skip(1)
                                .mapToDouble(Double::parseDouble)
                                .toArray());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return values;
    }

    private static void check(String routine, String name, int i, double relative, double actual) {
        double expected = Objects.requireNonNull(EXPECTED.get(name), name)[i];
        OutsideChecks.referenceLibrary("calibration-" + name + "-" + i, "R 4.2.2, " + routine)
                .what("log of 20 readings: " + name + " " + (i + 1))
                .unit("1")
                .expected(expected)
                .withinRelative(relative)
                .check(actual);
    }

    private static FitResult decay() {
        return Curves.decayFit(4, 18, 0.008)
                .run("log", Curves.decay(MINUTES), Observations.of(MINUTES, READINGS))
                .build()
                .run();
    }

    private static FitResult line() {
        return Curves.lineFit()
                .run("log", Curves.line(MINUTES), Observations.of(MINUTES, LOGARITHMS))
                .build()
                .run();
    }

    @Test
    void nonlinearFitIsThatOfNls() {
        FitResult result = decay();
        for (int k = 0; k < 3; k++) {
            Estimate estimate = result.estimates().get(k);
            check("nls", "nls.coef", k, 1e-7, estimate.value());
            check("nls", "nls.se", k, 1e-6, estimate.standardError().orElseThrow());
        }
        check("nls", "nls.sigma", 0, 1e-8, result.residualStandardDeviation());
        check("nls", "nls.cor", 0, 1e-6, result.correlation("room", "rate"));
        check("logLik", "nls.logLik", 0, 1e-8, result.criteria().logLikelihood());
        check("AIC", "nls.AIC", 0, 1e-8, result.criteria().akaike());
        check("BIC", "nls.BIC", 0, 1e-8, result.criteria().bayesian());
    }

    @Test
    void profilesAreThoseOfConfint() {
        FitResult result = decay();
        ConfidenceInterval room = result.profile("room", 0.95).interval();
        ConfidenceInterval rate = result.profile("rate", 0.95).interval();
        check("confint of nls (MASS)", "nls.profile.room", 0, 1e-4, room.low().orElseThrow());
        check("confint of nls (MASS)", "nls.profile.room", 1, 1e-4, room.high().orElseThrow());
        check("confint of nls (MASS)", "nls.profile.r", 0, 1e-4, rate.low().orElseThrow());
        check("confint of nls (MASS)", "nls.profile.r", 1, 1e-4, rate.high().orElseThrow());
    }

    @Test
    void nestedTestIsThatOfAnova() {
        FitResult kept = Fit.builder()
                .parameter(Parameter.of("room", 4).kept())
                .parameter(Parameter.of("difference", 18))
                .parameter(Parameter.of("rate", 0.008))
                .run("log", Curves.decay(MINUTES), Observations.of(MINUTES, READINGS))
                .build()
                .run();
        NestedTest test = kept.testAgainst(decay());
        check("anova of nls", "nls.F", 0, 1e-6, test.statistic());
        check("anova of nls", "nls.F.p", 0, 1e-5, test.probability());
    }

    @Test
    void lineAndItsDiagnosticsAreThoseOfLm() {
        FitResult result = line();
        ResidualDiagnostics residuals = result.residuals();
        check("cooks.distance", "lm.cooks1", 0, 1e-8, residuals.cooksDistances().get(0));
        check("hatvalues", "lm.hat1", 0, 1e-8, residuals.leverages().get(0));
        check("Durbin and Watson's statistic by its definition", "dw", 0, 1e-8, residuals.durbinWatson());
        Band.Point point = result.band(Curves.line(300), 1, 0.95).points().get(0);
        check("predict of lm", "lm.predict", 0, 1e-8, point.value());
        check("predict of lm", "lm.predict", 1, 1e-8, point.predictionLow());
        check("predict of lm", "lm.predict", 2, 1e-8, point.predictionHigh());
        check("predict of lm", "lm.confidence", 1, 1e-8, point.confidenceLow());
        check("predict of lm", "lm.confidence", 2, 1e-8, point.confidenceHigh());
        double[] raw = IntStream.range(0, 20)
                .mapToDouble(i ->
                        LOGARITHMS[i] - result.band("log", 0.95).points().get(i).value())
                .toArray();
        check(
                "Anderson and Darling's statistic by its definition",
                "ad.statistic",
                0,
                1e-8,
                Examination.andersonDarling(Arrays.stream(raw).boxed().toList()));
    }

    @Test
    void errorsThatFollowEachOtherAreThoseOfGls() {
        FitResult result = Curves.lineFit()
                .run("log", Curves.line(MINUTES), Observations.of(MINUTES, LOGARITHMS))
                .followingErrors()
                .build()
                .run();
        check("gls (nlme), corAR1, ML", "gls.phi", 0, 1e-4, result.errorCorrelation());
        check("gls (nlme), corAR1, ML", "gls.logLik", 0, 1e-7, result.criteria().logLikelihood());
        for (int k = 0; k < 2; k++) {
            Estimate estimate = result.estimates().get(k);
            check("gls (nlme), corAR1, ML", "gls.coef", k, 1e-5, estimate.value());
            check(
                    "gls (nlme), corAR1, ML",
                    "gls.se",
                    k,
                    1e-3,
                    estimate.standardError().orElseThrow());
        }
    }

    @Test
    void censoredReadingsAreThoseOfSurvreg() {
        Observations.Builder builder = Observations.builder();
        for (int i = 0; i < READINGS.length; i++) {
            if (READINGS[i] >= 9) {
                builder.value(MINUTES[i], READINGS[i], 0.1);
            } else {
                builder.below(MINUTES[i], 9, 0.1);
            }
        }
        FitResult known = Curves.lineFit()
                .run("log", Curves.line(DECAYED), builder.build())
                .knownDeviations()
                .build()
                .run();
        for (int k = 0; k < 2; k++) {
            Estimate estimate = known.estimates().get(k);
            check("survreg, left-censored, scale 0.1", "tobit.known.coef", k, 1e-6, estimate.value());
            check(
                    "survreg, left-censored, scale 0.1",
                    "tobit.known.se",
                    k,
                    1e-6,
                    estimate.standardError().orElseThrow());
        }
        FitResult free = Curves.lineFit()
                .run("log", Curves.line(DECAYED), builder.build())
                .build()
                .run();
        assertMostLikely(free);
    }

    /**
     * The equations of a maximum of the likelihood of left-censored normal readings (J. Tobin, Econometrica 26 (1958) 24), written out
     * here again. R's scale is the most likely one, {@code Σ e² = n − Σ(1 − zφ/Φ)}; ours makes up for the parameters: their number is
     * taken off the right.
     */
    private static void assertMostLikely(FitResult fit) {
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        double scale = fit.residualStandardDeviation() * 0.1;
        double byIntercept = 0;
        double bySlope = 0;
        double squares = 0;
        double counted = -fit.effectiveParameters();
        for (int i = 0; i < READINGS.length; i++) {
            double line =
                    fit.estimate("intercept").value() + fit.estimate("slope").value() * DECAYED[i];
            double z = (Math.max(READINGS[i], 9) - line) / scale;
            boolean seen = READINGS[i] >= 9;
            double pull = seen ? z : -normal.density(z) / normal.cumulativeProbability(z);
            byIntercept += pull;
            bySlope += pull * DECAYED[i];
            squares += seen ? z * z : 0;
            counted += seen ? 1 : -z * pull;
        }
        assertThat(byIntercept).isCloseTo(0, within(1e-5));
        assertThat(bySlope).isCloseTo(0, within(1e-5));
        assertThat(squares).isCloseTo(counted, within(1e-4));
    }

    @Test
    void robustFitsAreThoseOfDirectMinimisation() {
        double[] off = READINGS.clone();
        off[4] += 3;
        off[11] -= 2;
        Observations.Builder builder = Observations.builder();
        IntStream.range(0, 20).forEach(i -> builder.value(MINUTES[i], off[i], 0.1));
        for (Loss loss : new Loss[] {Loss.huber(), Loss.biweight()}) {
            FitResult result = Fit.builder()
                    .parameter(Parameter.of("intercept", 4))
                    .parameter(Parameter.of("slope", 18))
                    .run("log", Curves.line(decayed(0.00676)), builder.build())
                    .knownDeviations()
                    .loss(loss)
                    .build()
                    .run();
            String name = loss.toString().startsWith("Huber") ? "huber.coef" : "biweight.coef";
            check(
                    "optim on the loss, scale 0.1",
                    name,
                    0,
                    2e-5,
                    result.estimates().get(0).value());
            check(
                    "optim on the loss, scale 0.1",
                    name,
                    1,
                    2e-5,
                    result.estimates().get(1).value());
        }
    }
}
