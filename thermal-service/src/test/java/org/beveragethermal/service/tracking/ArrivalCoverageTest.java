/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import static org.assertj.core.api.Assertions.assertThat;

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
    private static final int RUNS = Integer.getInteger("tracking.runs", 800);
    private static final double STEP_S = 15;
    private static final double LEVEL = 0.9;
    private static final double HORIZON_S = 40 * 3600;

    @Test
    void intervalAfterFewReadings() {
        cover("after 3 readings, 6 to 4 K above the medium", SEED, 3, 8, 10);
    }

    @Test
    void intervalAfterManyReadings() {
        cover("after 20 readings, 6 to 4 K above the medium", SEED + 1, 20, 8, 10);
    }

    @Test
    void intervalNearTheMedium() {
        cover("after 10 readings, 2 to 4 K above the medium", SEED + 2, 10, 6, 8);
    }

    @Test
    void intervalWithoutReadings() {
        cover("without readings, 4 to 6 K above the medium", SEED + 3, 0, 8, 10);
    }

    @Test
    void intervalCloseToTheTarget() {
        cover("after 10 readings, 9 to 11 K above the medium, nearly there", SEED + 4, 10, 13, 15);
    }

    private static void cover(String what, long seed, int readings, double lowC, double highC) {
        SplittableRandom seeds = new SplittableRandom(seed);
        int inside = 0;
        for (int run = 0; run < RUNS; run++) {
            inside += isInside(new Truth(seeds.split(), Truth.MODEL, Truth.ZERO + 20, 0.5), readings, lowC, highC)
                    ? 1
                    : 0;
        }
        BinomialDistribution binomial = new BinomialDistribution(null, RUNS, LEVEL);
        double low = binomial.inverseCumulativeProbability(0.0005) / (double) RUNS;
        double high = binomial.inverseCumulativeProbability(0.9995) / (double) RUNS;
        if (RUNS == 800) {
            OutsideChecks.published("tracking-coverage", "binomial distribution, central 99.9 %, n = 800")
                    .what("part of true times inside the 90 % interval, " + what)
                    .unit("1")
                    .between(low, high)
                    .check(inside / (double) RUNS);
        }
        assertThat(inside / (double) RUNS).as(what).isBetween(low, high);
    }

    private static boolean isInside(Truth truth, int readings, double lowC, double highC) {
        Belief belief = Belief.placed(Truth.MODEL, 0, Checks.micros(Truth.START), Truth.ZERO + 20, 0.5);
        double now = 0;
        for (int i = 0; i < readings; i++) {
            for (int k = 0; k < 8; k++) {
                truth.advance(STEP_S);
            }
            now += 8 * STEP_S;
            belief.predict(Truth.MODEL, Checks.micros(Truth.after(now)));
            belief.read(Truth.MODEL, TrackingRules.usual(), truth.reading());
        }
        // Nobody asks when it will have cooled to what it is believed to be below already.
        double targetK = Math.min(Truth.ZERO + truth.uniform(lowC, highC), belief.t - 0.5);
        Arrival arrival = ArrivalSearch.search(Truth.MODEL, belief, targetK, LEVEL);
        double passed = 0;
        double before = truth.temperatureK;
        while (truth.temperatureK > targetK && passed < HORIZON_S) {
            before = truth.temperatureK;
            truth.advance(STEP_S);
            passed += STEP_S;
        }
        if (!(arrival instanceof Arrival.Expected expected)) {
            return passed >= HORIZON_S;
        }
        double at = passed == 0 ? 0 : passed - STEP_S * (targetK - truth.temperatureK) / (before - truth.temperatureK);
        return at >= expected.earliest().toMillis() / 1000.0
                && expected.latest()
                        .map(latest -> at <= latest.toMillis() / 1000.0)
                        .orElse(true);
    }
}
