/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;

/**
 * How long planning may take and how near to the best choice it must come.
 *
 * @param timeLimit longest time for the whole plan, > 0, at most a day
 * @param relativeGap gap at which the choice counts as good enough, 0 for proven, to 1
 */
public record PlanLimits(Duration timeLimit, double relativeGap) {

    /** Long enough for an evening's service to be chosen with proof, short enough to wait for. */
    private static final Duration USUAL = Duration.ofSeconds(10);

    private static final Duration LONGEST = Duration.ofDays(1);

    /**
     * Checks the limits.
     *
     * @param timeLimit longest time, > 0, at most a day
     * @param relativeGap gap, 0 to 1
     * @throws IllegalArgumentException if a limit is outside its range
     */
    public PlanLimits {
        if (timeLimit.isNegative() || timeLimit.isZero() || timeLimit.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException(
                    "time limit " + timeLimit + ": expected more than nothing and at most a day");
        }
        if (!(relativeGap >= 0 && relativeGap <= 1)) {
            throw new IllegalArgumentException("gap " + relativeGap + ": expected 0 to 1");
        }
    }

    /**
     * Ten seconds, and no gap accepted before.
     *
     * @return the limits unless said otherwise
     */
    public static PlanLimits standard() {
        return new PlanLimits(USUAL, 0);
    }

    /**
     * Another time limit.
     *
     * @param timeLimit longest time, > 0, at most a day
     * @return limits without a gap
     * @throws IllegalArgumentException if the time is outside its range
     */
    public static PlanLimits within(Duration timeLimit) {
        return new PlanLimits(timeLimit, 0);
    }

    /**
     * The same time, another gap.
     *
     * @param newGap relative gap, 0 to 1
     * @return new limits
     * @throws IllegalArgumentException if the gap is outside its range
     */
    public PlanLimits withGap(double newGap) {
        return new PlanLimits(timeLimit, newGap);
    }
}
