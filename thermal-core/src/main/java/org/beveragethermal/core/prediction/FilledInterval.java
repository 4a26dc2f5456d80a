/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

/**
 * When a vessel that is filled and emptied in the course of a run holds a drink.
 *
 * @param fromS from then on [s] since the start of the run, ≥ 0
 * @param untilS until then [s], not then itself; infinite if it is never emptied again
 */
public record FilledInterval(double fromS, double untilS) {

    /**
     * Checks the times.
     *
     * @param fromS from then on [s], finite, ≥ 0
     * @param untilS until then [s], later, or infinite
     * @throws IllegalArgumentException if the times are negative or out of order
     */
    public FilledInterval {
        if (!(fromS >= 0 && untilS > fromS) || Double.isInfinite(fromS)) {
            throw new IllegalArgumentException("holds a drink from " + fromS + " s until " + untilS
                    + " s: expected a time of at least 0 s and a later one");
        }
    }

    /**
     * Whether a time is one of them.
     *
     * @param timeS time since the start [s]
     * @return true from {@link #fromS} on and before {@link #untilS}
     */
    public boolean includes(double timeS) {
        return timeS >= fromS && timeS < untilS;
    }

    @Override
    public String toString() {
        return "from " + fromS + " s" + (Double.isInfinite(untilS) ? "" : " until " + untilS + " s");
    }
}
