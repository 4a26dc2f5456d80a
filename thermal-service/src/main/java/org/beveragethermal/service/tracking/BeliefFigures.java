/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A belief as figures by name, and back. What comes back is held to what a filter can come to, so that no stored figure makes a NaN.
 *
 * @param figures all {@link #NAMES}, finite
 * @param where what they are of, for refusals
 */
record BeliefFigures(Map<String, Double> figures, String where) {

    static final List<String> NAMES = List.of(
            "atMicros",
            "temperatureK",
            "logFactor",
            "mediumOffsetK",
            "biasK",
            "pTT",
            "pTc",
            "pTa",
            "pTb",
            "pcc",
            "pca",
            "pcb",
            "paa",
            "pab",
            "pbb",
            "medium",
            "previousMedium",
            "finished",
            "part",
            "mediumK",
            "mediumSdK",
            "placedMicros",
            "sumUp",
            "sumDown",
            "strays",
            "changes",
            "changedMicros",
            "changedByK",
            "readMicros",
            "innovationK",
            "innovationVarianceK2");

    /** No thermometer that is worth tracking with errs by more [K]; an assumption, to keep sums from overflowing. */
    private static final double LARGEST_BIAS_K = 1000;
    /** Likewise of variances. */
    private static final double LARGEST_VARIANCE = 1e12;
    /** How far rounding may take a covariance out of what is possible, as a part of it and beside nothing. */
    private static final double ROUNDING = 1e-3;

    private static final double TINY = 1e-9;

    static Map<String, Double> of(Belief belief) {
        double[] values = {
            belief.atMicros,
            belief.t,
            belief.c,
            belief.a,
            belief.b,
            belief.pTT,
            belief.pTc,
            belief.pTa,
            belief.pTb,
            belief.pcc,
            belief.pca,
            belief.pcb,
            belief.paa,
            belief.pab,
            belief.pbb,
            belief.medium,
            belief.previousMedium,
            belief.finished ? 1 : 0,
            belief.part,
            belief.mediumK,
            belief.mediumSdK,
            belief.placedMicros,
            belief.up,
            belief.down,
            belief.strays,
            belief.changes,
            belief.changedMicros,
            belief.changedByK,
            belief.readMicros,
            belief.innovationK,
            belief.innovationVarianceK2
        };
        Map<String, Double> figures = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i++) {
            figures.put(NAMES.get(i), values[i]);
        }
        return figures;
    }

    /** The belief; refused if no filter could have come to it. */
    Belief belief(TrackedModel model) {
        Belief belief = Belief.blank();
        belief.atMicros = micros("atMicros");
        belief.t = Checks.temperature(figure("temperatureK"), "temperatureK in " + where);
        belief.mediumK = Checks.temperature(figure("mediumK"), "mediumK in " + where);
        belief.mediumSdK = within("mediumSdK", 0, Checks.MOST_SD_K, "K");
        belief.c = within("logFactor", -Belief.LARGEST_LOG, Belief.LARGEST_LOG, "1");
        belief.a = within("mediumOffsetK", Checks.COLDEST_K - belief.mediumK, Checks.WARMEST_K - belief.mediumK, "K");
        belief.b = within("biasK", -LARGEST_BIAS_K, LARGEST_BIAS_K, "K");
        belief.pTT = variance("pTT");
        belief.pcc = variance("pcc");
        belief.paa = variance("paa");
        belief.pbb = variance("pbb");
        belief.pTc = covariance("pTc", belief.pTT, belief.pcc);
        belief.pTa = covariance("pTa", belief.pTT, belief.paa);
        belief.pTb = covariance("pTb", belief.pTT, belief.pbb);
        belief.pca = covariance("pca", belief.pcc, belief.paa);
        belief.pcb = covariance("pcb", belief.pcc, belief.pbb);
        belief.pab = covariance("pab", belief.paa, belief.pbb);
        int last = model.laws().size() - 1;
        belief.medium = (byte) within("medium", 0, last, "1");
        belief.previousMedium = (byte) within("previousMedium", -1, last, "1");
        belief.finished = within("finished", 0, 1, "1") != 0;
        belief.part = (float) within("part", Checks.LEAST_PART, 1, "1");
        belief.placedMicros = micros("placedMicros");
        belief.up = within("sumUp", 0, Double.MAX_VALUE, "1");
        belief.down = within("sumDown", 0, Double.MAX_VALUE, "1");
        belief.strays = (int) within("strays", -TrackingRules.MOST_STRAYS, TrackingRules.MOST_STRAYS, "1");
        belief.changes = (int) within("changes", 0, Integer.MAX_VALUE, "1");
        belief.changedMicros = micros("changedMicros");
        belief.changedByK = figure("changedByK");
        belief.readMicros = micros("readMicros");
        belief.innovationK = figure("innovationK");
        belief.innovationVarianceK2 = variance("innovationVarianceK2");
        return belief;
    }

    /** A covariance, no larger than the two variances allow. */
    private double covariance(String name, double variance, double otherVariance) {
        double most = Math.sqrt(variance * otherVariance) * (1 + ROUNDING) + TINY;
        return within(name, -most, most, "SI units");
    }

    private double figure(String name) {
        return Objects.requireNonNull(figures.get(name), name);
    }

    private double within(String name, double low, double high, String unit) {
        return Checks.within(figure(name), low, high, name + " in " + where, unit);
    }

    private double variance(String name) {
        return within(name, 0, LARGEST_VARIANCE, "SI units");
    }

    private long micros(String name) {
        long micros = (long) figure(name);
        Checks.time(Checks.instant(micros), name + " in " + where);
        return micros;
    }
}
