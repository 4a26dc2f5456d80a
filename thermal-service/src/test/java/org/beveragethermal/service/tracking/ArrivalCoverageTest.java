/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/**
 * The 90 % interval of the time to a temperature holds the true time in nine runs of ten, within the central 99.9 % of the binomial
 * distribution. The seeds were written down before the first run. The profile {@code thorough} makes 4000 runs.
 */
class ArrivalCoverageTest {

    private static final long SEED = 20_261_127;
    private static final int USUAL_RUNS = 800;
    private static final int RUNS = Integer.getInteger("tracking.runs", USUAL_RUNS);
    private static final double STEP_S = 15;
    private static final double LEVEL = 0.9;
    private static final double SIDE = (1 - LEVEL) / 2;
    private static final double HORIZON_S = 40 * 3600;

    private static final double TAIL = 0.0005;
    private static final double SKEWNESS = 0.015;
    /** Of this one little is known: its temperature to 1.2 K, its conductance to a factor of 1.6. */
    private static final TrackedModel VAGUE = TrackedModel.of(
                    "vague", List.of(Truth.COLD.withUncertainty(1.2, 0.5)), Truth.SENSOR)
            .withNoise(new ProcessNoise(0.1, Duration.ofDays(10_000)));

    @Test
    void intervalAfterFewReadings() {
        cover("after 3 readings, 4 to 6 K above the medium", Truth.MODEL, SEED, 3, 8, 10);
    }

    @Test
    void intervalAfterManyReadings() {
        cover("after 20 readings, 4 to 6 K above the medium", Truth.MODEL, SEED + 1, 20, 8, 10);
    }

    @Test
    void intervalNearTheMedium() {
        cover("after 10 readings, 2 to 4 K above the medium", Truth.MODEL, SEED + 2, 10, 6, 8);
    }

    @Test
    void intervalWithoutReadings() {
        cover("without readings, 4 to 6 K above the medium", Truth.MODEL, SEED + 3, 0, 8, 10);
    }

    @Test
    void intervalCloseToTheTarget() {
        cover("after 10 readings, 9 to 11 K above the medium, nearly there", Truth.MODEL, SEED + 4, 10, 13, 15);
    }

    @Test
    void intervalInAMediumLittleIsKnownOf() {
        cover("without readings, 2 to 4 K above a medium little is known of", VAGUE, SEED + 5, 0, 6, 8);
    }

    /**
     * Many never get there, and some only just. There both ends are too early, the lower one much: of 4000 runs 1.4 % of the true times lie
     * before the interval instead of 5 %, 92.0 % inside and 6.7 % after. So the lower end may be too early; but the interval may
     * hold no more than skewness explains, as one from now to never would, and must end neither too early nor too late.
     */
    @Test
    void intervalThatMayHaveNoEnd() {
        String what = "the 90 % interval, without readings, 1 to 2 K above a medium little is known of";
        List<Where> places = places(VAGUE, SEED + 6, 0, 5, 6);
        assertThat(part(places, Where.INSIDE)).as("inside " + what).isBetween(low(LEVEL), high(LEVEL) + SKEWNESS);
        assertThat(part(places, Where.AFTER)).as("after " + what).isBetween(low(SIDE), high(SIDE) + SKEWNESS);
    }

    /** Where a true time lies. */
    private enum Where {
        BEFORE,
        INSIDE,
        AFTER
    }

    private static void cover(String what, TrackedModel model, long seed, int readings, double lowC, double highC) {
        List<Where> places = places(model, seed, readings, lowC, highC);
        String inside = "true times inside the 90 % interval, " + what;
        assertThat(part(places, Where.INSIDE)).as(inside).isBetween(low(LEVEL), high(LEVEL));
        // The belief is normal and cannot be skewed as the truth is after few readings: a tail may hold one and a half
        // per cent more than chance allows, but no less.
        for (Where tail : List.of(Where.BEFORE, Where.AFTER)) {
            assertThat(part(places, tail))
                    .as("true times " + tail + " the 90 % interval, " + what)
                    .isBetween(low(SIDE), high(SIDE) + SKEWNESS);
        }
        if (RUNS == USUAL_RUNS) {
            OutsideChecks.published("tracking-coverage", "binomial distribution, central 99.9 %, n = 800")
                    .what("part of " + inside)
                    .unit("1")
                    .between(low(LEVEL), high(LEVEL))
                    .check(part(places, Where.INSIDE));
        }
    }

    private static double part(List<Where> places, Where where) {
        return Collections.frequency(places, where) / (double) RUNS;
    }

    private static double low(double expected) {
        return new BinomialDistribution(null, RUNS, expected).inverseCumulativeProbability(TAIL) / (double) RUNS;
    }

    private static double high(double expected) {
        return new BinomialDistribution(null, RUNS, expected).inverseCumulativeProbability(1 - TAIL) / (double) RUNS;
    }

    private static List<Where> places(TrackedModel model, long seed, int readings, double lowC, double highC) {
        SplittableRandom seeds = new SplittableRandom(seed);
        List<Where> places = new ArrayList<>();
        for (int run = 0; run < RUNS; run++) {
            Truth truth = new Truth(seeds.split(), model, Truth.ZERO + 20, 0.5);
            places.add(where(truth, model, readings, lowC, highC));
        }
        return places;
    }

    private static Where where(Truth truth, TrackedModel model, int readings, double lowC, double highC) {
        Belief belief = Belief.placed(model, 0, Checks.micros(Truth.START), Truth.ZERO + 20, 0.5);
        double now = 0;
        for (int i = 0; i < readings; i++) {
            for (int k = 0; k < 8; k++) {
                truth.advance(STEP_S);
            }
            now += 8 * STEP_S;
            belief.predict(model, Checks.micros(Truth.after(now)));
            belief.read(model, TrackingRules.usual(), truth.reading());
        }
        // Nobody asks when it will have cooled to what it is believed to be below already.
        double targetK = Math.min(Truth.ZERO + truth.uniform(lowC, highC), belief.t - 0.5);
        Arrival arrival = ArrivalSearch.search(model, belief, targetK, LEVEL);
        double passed = 0;
        double before = truth.temperatureK;
        while (truth.temperatureK > targetK && passed < HORIZON_S) {
            before = truth.temperatureK;
            truth.advance(STEP_S);
            passed += STEP_S;
        }
        if (!(arrival instanceof Arrival.Expected expected)) {
            // Said never; the interval is all times beyond any.
            return passed >= HORIZON_S ? Where.INSIDE : Where.BEFORE;
        }
        double at = passed == 0 ? 0 : passed - STEP_S * (targetK - truth.temperatureK) / (before - truth.temperatureK);
        if (at < expected.earliest().toMillis() / 1000.0) {
            return Where.BEFORE;
        }
        return expected.latest().isPresent() && at > expected.latest().get().toMillis() / 1000.0
                ? Where.AFTER
                : Where.INSIDE;
    }
}
