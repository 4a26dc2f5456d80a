/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Duration;
import java.util.Optional;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.special.Erf;

/**
 * Distribution of the time at which a temperature is reached.
 *
 * <p>The temperature of the medium acts least linearly: near it times grow without bound, and beyond it there are none. So the belief is
 * cut into seven (Gauss–Hermite nodes along the offset of the medium, each keeping a part of its variance), and in each the closed form
 * gives the mean time and the covariance carried there its spread: sd(t) = sd(T at that time) / |dT/dt|. Within a piece t is taken as
 * normal on a scale t^λ between t itself (λ = 1, where the present temperature is what is uncertain) and ln t (λ → 0, where the
 * conductance is), λ being the share of the variance that is not the conductance's. Quantiles are those of the mixture.
 *
 * <p>Theory manual, equation (9.8).
 */
final class ArrivalSearch {

    private static final int PIECES = 7;
    /** For the standard normal distribution: the rule of the library is for the weight exp(−x²). */
    private static final double[] NODES = new double[PIECES];

    private static final double[] WEIGHTS = new double[PIECES];

    static {
        GaussIntegrator rule = new GaussIntegratorFactory().hermite(PIECES);
        for (int i = 0; i < PIECES; i++) {
            NODES[i] = Math.sqrt(2) * rule.getPoint(i);
            WEIGHTS[i] = rule.getWeight(i) / Math.sqrt(Math.PI);
        }
    }

    /** Part of the variance of the offset that each piece keeps, so that the mixture is smooth; an assumption of ours, no source. */
    private static final double KEPT_PART = 0.35;

    /** What takes longer counts as never [s]. */
    static final double LONGEST_S = 400 * 86_400.0;

    private static final double SMALLEST_LAMBDA = 1e-3;
    private static final int BISECTIONS = 60;
    private static final double ROUNDING = 1e-12;

    private final double[] meanS = new double[PIECES];
    private final double[] lambda = new double[PIECES];
    private final double[] spread = new double[PIECES];
    private double never;
    private double longestS;

    private ArrivalSearch() {}

    static Arrival search(TrackedModel model, Belief now, double targetK, double level) {
        boolean cooling = now.t > targetK;
        ArrivalSearch search = new ArrivalSearch();
        for (int i = 0; i < PIECES; i++) {
            search.piece(model, now, i, targetK, cooling);
        }
        search.never = search.never > 1 - ROUNDING ? 1 : search.never;
        if (search.never >= 0.5) {
            return new Arrival.Never(Checks.instant(now.atMicros), now.believedMediumK(), search.never);
        }
        double high = 0.5 + level / 2;
        return new Arrival.Expected(
                Checks.instant(now.atMicros),
                duration(search.quantile(0.5 - level / 2)),
                duration(search.quantile(0.5)),
                1 - search.never > high ? Optional.of(duration(search.quantile(high))) : Optional.empty(),
                level,
                search.never);
    }

    private static Duration duration(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    private void piece(TrackedModel model, Belief whole, int i, double targetK, boolean cooling) {
        Belief piece = whole.copy();
        if (piece.paa > 0) {
            narrow(piece, NODES[i]);
        }
        double seconds;
        if (cooling == piece.t > targetK) {
            seconds = piece.secondsTo(model, piece.t, targetK);
        } else {
            seconds = 0;
        }
        if (!(seconds <= LONGEST_S)) {
            meanS[i] = Double.POSITIVE_INFINITY;
            never += WEIGHTS[i];
            return;
        }
        piece.predict(model, piece.atMicros + Math.round(seconds * 1e6));
        double rate = Math.abs(piece.rateAt(model, targetK));
        double byConductance = rate * seconds;
        double share = piece.pTT > 0 ? Math.min(1, byConductance * byConductance * piece.pcc / piece.pTT) : 0;
        meanS[i] = seconds;
        lambda[i] = Math.max(SMALLEST_LAMBDA, 1 - share);
        double sdS = rate > 0 ? Math.min(LONGEST_S, Math.sqrt(piece.pTT) / rate) : 0;
        spread[i] = seconds > 0 ? sdS * Math.pow(seconds, lambda[i] - 1) : 0;
        longestS = Math.max(longestS, seconds + 20 * sdS);
    }

    private static void narrow(Belief piece, double node) {
        double step = Math.sqrt(1 - KEPT_PART) * node / Math.sqrt(piece.paa);
        piece.t += piece.pTa * step;
        piece.c += piece.pca * step;
        piece.a += piece.paa * step;
        double s = (1 - KEPT_PART) / piece.paa;
        piece.pTT -= piece.pTa * piece.pTa * s;
        piece.pTc -= piece.pTa * piece.pca * s;
        piece.pcc -= piece.pca * piece.pca * s;
        piece.pTa *= KEPT_PART;
        piece.pca *= KEPT_PART;
        piece.paa *= KEPT_PART;
    }

    /** Probability that it is there by a time. */
    private double chance(double seconds) {
        double sum = 0;
        for (int i = 0; i < PIECES; i++) {
            if (Double.isInfinite(meanS[i])) {
                continue;
            }
            double beyond = (Math.pow(seconds, lambda[i]) - Math.pow(meanS[i], lambda[i])) / lambda[i];
            double part = spread[i] > 0 ? 0.5 * Erf.erfc(-beyond / (spread[i] * Math.sqrt(2))) : beyond >= 0 ? 1 : 0;
            sum += WEIGHTS[i] * part;
        }
        return sum;
    }

    private double quantile(double probability) {
        if (chance(0) >= probability) {
            return 0;
        }
        double low = 0;
        double high = Math.max(1, longestS);
        while (chance(high) < probability && high < LONGEST_S) {
            high *= 2;
        }
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = 0.5 * (low + high);
            if (chance(middle) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
