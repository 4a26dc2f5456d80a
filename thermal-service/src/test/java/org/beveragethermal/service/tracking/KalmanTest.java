/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.filter.DefaultMeasurementModel;
import org.apache.commons.math3.filter.DefaultProcessModel;
import org.apache.commons.math3.filter.KalmanFilter;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Where the model is linear the filter is Kalman's; where it stands still it solves Riccati's equation; its sums alarm as published. */
class KalmanTest {

    private static final double TAU_S = 3000;
    private static final double STEP_S = 120;
    private static final double MEDIUM_K = 277.15;
    private static final double MEDIUM_SD_K = 0.8;
    private static final double SENSOR_SD_K = 0.4;
    private static final ProcessNoise NOISE = new ProcessNoise(0.3, Duration.ofHours(5));

    private static TrackedModel linear(double mediumSdK, double biasSdK) {
        return TrackedModel.of(
                        "linear",
                        List.of(MediumLaw.newton("cold", TAU_S, MEDIUM_K, mediumSdK, 0)),
                        Sensor.inDrink(SENSOR_SD_K, 0).withBias(biasSdK))
                .withNoise(NOISE);
    }

    private static long at(int step) {
        return Checks.micros(Truth.START) + Math.round(step * STEP_S * 1e6);
    }

    /** Temperature less that of the medium, the medium's offset and the sensor's bias: three unknowns, nothing nonlinear. */
    @Test
    void linearCaseIsThatOfAReferenceLibrary() {
        double j = Math.exp(-STEP_S / TAU_S);
        double phi = Math.exp(-STEP_S / NOISE.forgettingS());
        double wander = (1 - phi * phi) * MEDIUM_SD_K * MEDIUM_SD_K;
        double pull = 1 / TAU_S;
        double lever = pull * STEP_S;
        double[][] q = {
            {NOISE.varianceK2PerS() * STEP_S + lever * lever * wander / 3, lever * wander / 2, 0},
            {lever * wander / 2, wander, 0},
            {0, 0, 0}
        };
        double[][] a = {{j, 1 - j, 0}, {0, phi, 0}, {0, 0, 1}};
        double biasSd = 0.25;
        KalmanFilter reference = new KalmanFilter(
                new DefaultProcessModel(
                        new Array2DRowRealMatrix(a),
                        new Array2DRowRealMatrix(new double[3][1]),
                        new Array2DRowRealMatrix(q),
                        new ArrayRealVector(new double[] {15, 0, 0}),
                        new Array2DRowRealMatrix(
                                new double[][] {{1, 0, 0}, {0, MEDIUM_SD_K * MEDIUM_SD_K, 0}, {0, 0, biasSd * biasSd}
                                })),
                new DefaultMeasurementModel(
                        new Array2DRowRealMatrix(new double[][] {{1, 0, 1}}),
                        new Array2DRowRealMatrix(new double[][] {{SENSOR_SD_K * SENSOR_SD_K}})));
        TrackedModel model = linear(MEDIUM_SD_K, biasSd);
        Belief belief = Belief.placed(model, 0, at(0), MEDIUM_K + 15, 1);
        Truth truth = new Truth(new SplittableRandom(20_261_128), model, MEDIUM_K + 15, 1);
        for (int i = 1; i <= 60; i++) {
            truth.advance(STEP_S);
            double reading = truth.reading();
            reference.predict();
            reference.correct(new double[] {reading - MEDIUM_K});
            belief.predict(model, at(i));
            assertThat(belief.read(model, TrackingRules.usual(), reading)).isTrue();
        }
        double[] x = reference.getStateEstimation();
        double[][] p = reference.getErrorCovariance();
        String[] names = {"excess", "offset of the medium", "bias"};
        double[] mine = {belief.t - MEDIUM_K, belief.a, belief.b};
        double[] variances = {belief.pTT, belief.paa, belief.pbb};
        double[] covariances = {belief.pTa, belief.pTb, belief.pab};
        for (int i = 0; i < 3; i++) {
            library("mean of the " + names[i] + " after 60 readings", "K", x[i], mine[i]);
            library("variance of the " + names[i] + " after 60 readings", "K²", p[i][i], variances[i]);
        }
        library("covariance of excess and offset", "K²", p[0][1], covariances[0]);
        library("covariance of excess and bias", "K²", p[0][2], covariances[1]);
        library("covariance of offset and bias", "K²", p[1][2], covariances[2]);
    }

    private static void library(String what, String unit, double expected, double actual) {
        OutsideChecks.referenceLibrary("tracking-kalman", "Commons Math 3.6.1, KalmanFilter")
                .what(what)
                .unit(unit)
                .expected(expected)
                .within(1e-9)
                .check(actual);
    }

    /**
     * One unknown: the variance before a reading settles at the root of p² + p (r (1 − j²) − q) − q r = 0, the algebraic Riccati equation
     * p = j² p r / (p + r) + q (Anderson and Moore, Optimal Filtering, 1979, section 4.4).
     */
    @Test
    void varianceSettlesWhereRiccatiSays() {
        TrackedModel model = linear(0, 0);
        Belief belief = Belief.placed(model, 0, at(0), MEDIUM_K + 15, 1);
        for (int i = 1; i <= 400; i++) {
            belief.predict(model, at(i));
            belief.read(model, TrackingRules.usual(), belief.t);
        }
        belief.predict(model, at(401));
        double j = Math.exp(-STEP_S / TAU_S);
        double q = NOISE.varianceK2PerS() * STEP_S;
        double r = SENSOR_SD_K * SENSOR_SD_K;
        double half = (r * (1 - j * j) - q) / 2;
        OutsideChecks.published("tracking-riccati", "Anderson and Moore 1979, section 4.4")
                .what("steady variance before a reading, one unknown")
                .unit("K²")
                .expected(-half + Math.sqrt(half * half + q * r))
                .within(1e-12)
                .check(belief.pTT);
    }

    /**
     * Mean number of readings between false alarms of two-sided cumulative sums with k = 1/2: 168 for a limit of 4, 465 for 5
     * (Montgomery, Introduction to Statistical Quality Control, table of average run lengths; from memory).
     */
    @Test
    void sumsAlarmAsSeldomAsPublished() {
        runLength(4, 168, 20_261_129);
        runLength(5, 465, 20_261_130);
    }

    private static void runLength(double limit, double published, long seed) {
        TrackingRules usual = TrackingRules.usual();
        TrackingRules rules = new TrackingRules(
                100,
                usual.straysForChange(),
                0.5,
                limit,
                usual.kept(),
                usual.lead(),
                usual.freezingLead(),
                usual.backK(),
                usual.silentAfter(),
                usual.refusedForFaulty(),
                usual.mostAhead());
        // A temperature that is known and stands still: innovations are the noise alone.
        TrackedModel model = TrackedModel.of(
                        "still", List.of(MediumLaw.newton("cold", TAU_S, MEDIUM_K, 0, 0)), Sensor.inDrink(1, 0))
                .withNoise(new ProcessNoise(0, Duration.ofDays(1)));
        Truth draws = new Truth(new SplittableRandom(seed), model, MEDIUM_K, 0);
        int runs = 3000;
        long readings = 0;
        for (int run = 0; run < runs; run++) {
            Belief belief = Belief.placed(model, 0, at(0), MEDIUM_K, 0);
            for (int i = 1; belief.changes == 0; i++) {
                belief.predict(model, at(i));
                belief.read(model, rules, draws.reading());
                readings++;
            }
        }
        // Run lengths are nearly exponential: their mean has a standard deviation of mean/√runs.
        OutsideChecks.fromMemory("tracking-sums", "Montgomery, Introduction to Statistical Quality Control")
                .what("mean readings between false alarms, limit " + (int) limit + ", 3000 runs")
                .unit("1")
                .expected(published)
                .withinRelative(3.29 / Math.sqrt(runs))
                .check(readings / (double) runs);
    }

    /** The mean over an unknown factor is that of the courses, not the course of the mean factor. */
    @Test
    void meanIsThatOfTheCourses() {
        MediumLaw law = new MediumLaw("cold", 1.2e-4, 5e-5, 0, MEDIUM_K, 0, 0.3, 0);
        TrackedModel model = TrackedModel.of("curved", List.of(law), Sensor.inDrink(1, 0))
                .withNoise(new ProcessNoise(0, Duration.ofDays(10_000)));
        Belief belief = Belief.placed(model, 0, at(0), MEDIUM_K + 16, 0);
        for (int i = 1; i <= 45; i++) {
            belief.predict(model, at(i));
        }
        double sum = 0;
        double weights = 0;
        for (double z = -6; z <= 6; z += 0.01) {
            double weight = Math.exp(-z * z / 2);
            sum += weight * law.excessAfter(16, 45 * STEP_S * Math.exp(0.3 * z));
            weights += weight;
        }
        assertThat(belief.t - MEDIUM_K).isCloseTo(sum / weights, within(0.02));
        assertThat(law.excessAfter(16, 45 * STEP_S)).isNotCloseTo(sum / weights, within(0.03));
    }

    @Test
    void quantisationAddsItsVariance() {
        assertThat(Sensor.inDrink(0.3, 0.5).varianceK2()).isCloseTo(0.09 + 0.25 / 12, within(1e-15));
    }

    /** First-order lag on a ramp: the output is behind by the lag times the slope, less what has not built up yet. */
    @Test
    void slowSensorIsReadAsSuch() {
        double lagS = 180;
        TrackedModel model = TrackedModel.of(
                        "slow",
                        List.of(new MediumLaw("cold", 1.2e-4, 5e-5, 0, MEDIUM_K, 0, 0.2, 0)),
                        Sensor.inDrink(0.05, 0).onSurface(Duration.ofSeconds((long) lagS), 0.1))
                .withNoise(new ProcessNoise(0.02, Duration.ofHours(24)));
        Belief with = Belief.placed(model, 0, at(0), MEDIUM_K + 16, 0.5);
        Belief without = with.copy();
        TrackedModel plain = model.withSensor(Sensor.inDrink(0.05, 0));
        MediumLaw law = model.law(0);
        double factor = Math.exp(0.15);
        double shown = MEDIUM_K + 16;
        double drink = shown;
        for (int i = 1; i <= 15; i++) {
            for (int k = 0; k < 120; k++) {
                drink = MEDIUM_K + law.excessAfter(drink - MEDIUM_K, factor);
                shown += (drink - shown) * -Math.expm1(-1 / lagS);
            }
            double reading = shown + 0.1 * (MEDIUM_K - drink);
            with.predict(model, at(i));
            with.read(model, TrackingRules.usual(), reading);
            without.predict(plain, at(i));
            without.read(plain, TrackingRules.usual(), reading);
        }
        assertThat(with.t).isCloseTo(drink, within(0.1));
        assertThat(Math.abs(without.t - drink)).isGreaterThan(0.5);
        assertThat(with.c).isCloseTo(0.15, within(0.06));
    }
}
