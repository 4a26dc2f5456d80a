/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.util.Locale;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/**
 * The filter's uncertainty is what its errors show: normalised estimation error squared (NEES) and normalised innovation squared (NIS)
 * average to the number of unknowns and to one, within the band of the chi-square distribution (Bar-Shalom, Li and Kirubarajan, Estimation
 * with Applications to Tracking and Navigation, 2001, section 5.4). The seed was written down before the first run.
 */
class FilterConsistencyTest {

    private static final long SEED = 20_261_126;
    private static final int RUNS = 500;
    private static final int READINGS = 90;
    private static final int UNKNOWNS = 4;
    private static final double TAIL = 0.0005;

    @Test
    void errorsAreAsLargeAsTheFilterSays() {
        double[] nees = new double[READINGS];
        double[] nis = new double[READINGS];
        SplittableRandom seeds = new SplittableRandom(SEED);
        for (int run = 0; run < RUNS; run++) {
            Truth truth = new Truth(seeds.split(), Truth.MODEL, Truth.ZERO + 21, 1);
            Belief belief = Belief.placed(Truth.MODEL, 0, Checks.micros(Truth.START), Truth.ZERO + 21, 1);
            double now = 0;
            for (int i = 0; i < READINGS; i++) {
                // Every two minutes; three in ten are missing, and for 40 min all are.
                int steps = 4 * (truth.uniform(0, 1) < 0.3 ? 2 : 1) + (i == 30 ? 80 : 0);
                for (int k = 0; k < steps; k++) {
                    truth.advance(30);
                }
                now += 30 * steps;
                belief.predict(Truth.MODEL, Checks.micros(Truth.after(now)));
                belief.read(Truth.MODEL, TrackingRules.usual(), truth.reading());
                nis[i] += belief.innovationK * belief.innovationK / belief.innovationVarianceK2;
                nees[i] += nees(belief, truth);
            }
        }
        double all = 0;
        for (double sum : nis) {
            all += sum;
        }
        check("nis", "mean NIS of all readings of 500 runs", all / RUNS / READINGS, 1, RUNS * READINGS);
        for (int i : new int[] {4, 29, 30, 59, 89}) {
            String which = String.format(Locale.ROOT, "mean %%s of 500 runs at reading %d", i + 1);
            check("nees", which.replace("%s", "NEES"), nees[i] / RUNS, UNKNOWNS, RUNS);
            check("nis", which.replace("%s", "NIS"), nis[i] / RUNS, 1, RUNS);
        }
    }

    private static double nees(Belief b, Truth truth) {
        RealVector error = new ArrayRealVector(
                new double[] {truth.temperatureK - b.t, truth.logFactor - b.c, truth.offsetK - b.a, truth.biasK - b.b});
        double[][] covariance = {
            {b.pTT, b.pTc, b.pTa, b.pTb},
            {b.pTc, b.pcc, b.pca, b.pcb},
            {b.pTa, b.pca, b.paa, b.pab},
            {b.pTb, b.pcb, b.pab, b.pbb}
        };
        RealVector solved = new LUDecomposition(new Array2DRowRealMatrix(covariance))
                .getSolver()
                .solve(error);
        return error.dotProduct(solved);
    }

    private static void check(String id, String what, double mean, int unknowns, int samples) {
        ChiSquaredDistribution chi = new ChiSquaredDistribution(null, (double) unknowns * samples);
        OutsideChecks.published(
                        "tracking-" + id, "Bar-Shalom, Li and Kirubarajan 2001, section 5.4; chi-square distribution")
                .what(what)
                .unit("1")
                .between(
                        chi.inverseCumulativeProbability(TAIL) / samples,
                        chi.inverseCumulativeProbability(1 - TAIL) / samples)
                .check(mean);
    }
}
