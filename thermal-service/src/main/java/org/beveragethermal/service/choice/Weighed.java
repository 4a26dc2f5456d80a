/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.BitSet;
import org.jspecify.annotations.Nullable;

/**
 * The multipliers of a relaxation as whole weights, and what they sum to.
 *
 * @param cut the weights
 * @param sum their sum, the limit of the level searched taken as 0
 * @param unit the weight of that limit; 0 if the weights show that the other limits cannot be kept
 */
record Weighed(Cut cut, Cut.Sum sum, long unit) {
    private static final int MOST_BITS = 40;
    private static final int FEWER_BITS = 4;

    /** As fine as 64 bits allow; null if the multipliers are good for nothing. */
    static @Nullable Weighed of(Model model, BitSet alive, Relaxation relaxation, int level, long[] costLimits) {
        boolean broken = relaxation.end == Relaxation.End.BROKEN;
        double most = Arrays.stream(relaxation.multiplier).max().orElse(0);
        if (broken && most <= 0) {
            return null;
        }
        for (int bits = MOST_BITS; bits >= 0; bits -= FEWER_BITS) {
            long[] weights = new long[relaxation.multiplier.length];
            for (int q = 0; q < weights.length; q++) {
                weights[q] = Math.round(relaxation.multiplier[q] / (broken ? most : 1) * (1L << bits));
            }
            weights[model.capacities() + level] = broken ? 0 : 1L << bits;
            reduce(weights);
            Weighed weighed = summed(model, alive, weights, level, costLimits);
            if (weighed != null) {
                return weighed;
            }
        }
        return null;
    }

    /** Null if the sums are too large. */
    private static @Nullable Weighed summed(Model model, BitSet alive, long[] weights, int level, long[] costLimits) {
        long unit = weights[model.capacities() + level];
        long[] plain = costLimits.clone();
        plain[level] = 0;
        try {
            Cut cut = Cut.of(weights);
            Weighed weighed = new Weighed(cut, cut.sum(model, alive, plain), unit);
            if (costLimits[level] != Long.MAX_VALUE) {
                Cut.modest(Math.multiplyExact(unit, costLimits[level]));
            }
            return weighed;
        } catch (ArithmeticException tooLarge) {
            return null;
        }
    }

    private static void reduce(long[] weights) {
        BigInteger common = BigInteger.ZERO;
        for (long weight : weights) {
            common = common.gcd(BigInteger.valueOf(weight));
        }
        for (int q = 0; q < weights.length && common.compareTo(BigInteger.ONE) > 0; q++) {
            weights[q] /= common.longValueExact();
        }
    }

    /** What the level costs at the least if the weighed sum is greater by so much. */
    long bound(long more) {
        return -Math.floorDiv(-(sum.excess + more), unit);
    }

    /** The sum with the limit of the level as it is. */
    Cut.Sum sumWithin(long costLimit) {
        return new Cut.Sum(sum.ofRoute, sum.leastOfItem, sum.excess - unit * costLimit);
    }
}
