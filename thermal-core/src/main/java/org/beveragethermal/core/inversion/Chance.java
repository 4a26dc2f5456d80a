/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.util.List;
import org.apache.commons.math3.stat.interval.ClopperPearsonInterval;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;

/**
 * A probability estimated from draws, and how well the number of draws tells it.
 *
 * @param draws number of draws, at least 1
 * @param hits how many of them did, 0 to {@code draws}
 * @param low lower end of the exact interval that covers the probability with 95 % (Clopper and Pearson, Biometrika 26 (1934) 404)
 * @param high upper end of it
 */
public record Chance(int draws, int hits, double low, double high) implements Answer {

    private static final double COVERAGE = 0.95;

    /**
     * Checks the counts.
     *
     * @param draws number of draws
     * @param hits how many did
     * @param low lower end of the interval
     * @param high upper end of the interval
     * @throws IllegalArgumentException if the counts do not fit or the interval does not hold their ratio
     */
    public Chance {
        if (draws < 1
                || hits < 0
                || hits > draws
                || !(low >= 0 && low * draws <= hits && hits <= high * draws && high <= 1)) {
            throw new IllegalArgumentException(hits + " of " + draws + ", interval " + low + " to " + high
                    + ": expected at least one draw, 0 to all of them, and an interval that holds the ratio");
        }
    }

    /** The chance that counts tell. */
    static Chance of(int hits, int draws) {
        if (hits == 0 || hits == draws) {
            // Closed form where all or none did, for which the distribution function has no inverse to search.
            double tail = Math.pow((1 - COVERAGE) / 2, 1.0 / draws);
            return hits == 0 ? new Chance(draws, 0, 0, 1 - tail) : new Chance(draws, draws, tail, 1);
        }
        ConfidenceInterval interval = new ClopperPearsonInterval().createInterval(draws, hits, COVERAGE);
        return new Chance(draws, hits, interval.getLowerBound(), interval.getUpperBound());
    }

    /**
     * The estimate.
     *
     * @return part of the draws that did, 0 to 1
     */
    public double probability() {
        return (double) hits / draws;
    }

    /**
     * Binomial standard error of the estimate: √(p(1 − p)/n). It is 0 where all or no draws did; the interval is honest there too.
     *
     * @return standard error [-]
     */
    public double standardError() {
        double p = probability();
        return Math.sqrt(p * (1 - p) / draws);
    }

    @Override
    public String explain() {
        return Text.format(
                "%.1f %% of %d draws (standard error %.1f %%; between %.1f %% and %.1f %% with 95 %% confidence).",
                100 * probability(), draws, 100 * standardError(), 100 * low, 100 * high);
    }

    @Override
    public Snapshot snapshot() {
        return Snapshot.of("chance")
                .with("draws", draws)
                .with("hits", hits)
                .with("standardError", standardError())
                .with("interval95", List.of(low, high))
                .done();
    }
}
