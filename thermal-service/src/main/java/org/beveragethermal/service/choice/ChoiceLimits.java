/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.time.Duration;

/**
 * When to stop.
 *
 * @param timeLimit how long to search at most, more than 0 and at most 365 days; the only limit under which two runs may differ
 * @param relativeGap how far the cost of a level may lie above its bound, as a part of that cost, from 0 (exact) to 1
 * @param nodeLimit how many nodes of the search tree to look at, at least 1; bounds the memory too
 */
public record ChoiceLimits(Duration timeLimit, double relativeGap, long nodeLimit) {
    private static final Duration NO_LIMIT = Duration.ofDays(365);
    private static final long USUAL_NODES = 200_000;

    /**
     * Checks the limits.
     *
     * @param timeLimit how long to search at most, more than 0 and at most 365 days
     * @param relativeGap how far the cost of a level may lie above its bound, as a part of that cost, from 0 to 1
     * @param nodeLimit how many nodes of the search tree to look at, at least 1
     * @throws IllegalArgumentException if a limit is out of range
     */
    public ChoiceLimits {
        if (timeLimit.isNegative() || timeLimit.isZero() || timeLimit.compareTo(NO_LIMIT) > 0) {
            throw new IllegalArgumentException(
                    "timeLimit must be positive and at most " + NO_LIMIT + ", was " + timeLimit);
        }
        if (!(relativeGap >= 0 && relativeGap <= 1)) {
            throw new IllegalArgumentException("relativeGap must be within [0, 1], was " + relativeGap);
        }
        Checks.within(nodeLimit, 1, Long.MAX_VALUE, "nodeLimit");
    }

    /**
     * No time limit, no gap, and 200 000 nodes.
     *
     * @return the limits
     */
    public static ChoiceLimits exact() {
        return new ChoiceLimits(NO_LIMIT, 0, USUAL_NODES);
    }

    /**
     * A time limit, no gap.
     *
     * @param timeLimit how long to search at most, more than 0 and at most 365 days
     * @return the limits
     */
    public static ChoiceLimits within(Duration timeLimit) {
        return new ChoiceLimits(timeLimit, 0, USUAL_NODES);
    }

    /**
     * The same limits with another gap.
     *
     * @param gap how far the cost of a level may lie above its bound, as a part of that cost, from 0 to 1
     * @return the limits
     */
    public ChoiceLimits withGap(double gap) {
        return new ChoiceLimits(timeLimit, gap, nodeLimit);
    }

    /**
     * The same limits with another number of nodes.
     *
     * @param nodes how many nodes of the search tree to look at, at least 1
     * @return the limits
     */
    public ChoiceLimits withNodes(long nodes) {
        return new ChoiceLimits(timeLimit, relativeGap, nodes);
    }
}
