/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Ice that suffices with a probability, from sampling: for each draw of the laws' scatter the least ice is searched anew, and the margin is
 * the least mass that is enough in so many of the draws. Where ice is added later, each mass is searched by itself: what is put in before it is
 * as planned, or as much of that as has room in the draw, and it has to last until the next addition.
 *
 * <p>Drawn is what {@code LawScatter} lists. How densely the ice is packed, how much of it is wet, and how well temperatures and times are
 * known is not: real margins are larger.
 *
 * @param kg90 ice that is enough in nine draws of ten [kg]; empty if no mass that the bucket takes is
 * @param kg95 ice that is enough in nineteen draws of twenty [kg]; empty if no mass that the bucket takes is
 * @param draws number of draws
 * @param never draws in which no mass that the bucket takes is enough
 */
public record IceMargin(OptionalDouble kg90, OptionalDouble kg95, int draws, int never) {

    /** From the least ice of each draw [kg], infinite where none is enough. */
    static IceMargin of(double[] leastKg) {
        double[] sorted = leastKg.clone();
        Arrays.sort(sorted);
        int never = (int) Arrays.stream(sorted).filter(Double::isInfinite).count();
        return new IceMargin(part(sorted, 0.90), part(sorted, 0.95), sorted.length, never);
    }

    private static OptionalDouble part(double[] sorted, double probability) {
        double kg = sorted[(int) Math.ceil(probability * sorted.length) - 1];
        return Double.isInfinite(kg) ? OptionalDouble.empty() : OptionalDouble.of(kg);
    }
}
