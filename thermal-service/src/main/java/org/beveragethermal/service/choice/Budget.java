/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.function.LongSupplier;

/** What may still be spent: time until a deadline, nodes, and the patience of the monitor. Once spent it stays spent. */
final class Budget {
    private final LongSupplier nanoClock;
    private final ChoiceMonitor monitor;
    private final long deadlineNanos;
    private long nodesLeft;
    private long nodesDone;
    private String reason = "";

    Budget(ChoiceLimits limits, ChoiceMonitor monitor, LongSupplier nanoClock) {
        this(nanoClock, monitor, nanoClock.getAsLong() + limits.timeLimit().toNanos(), limits.nodeLimit());
    }

    private Budget(LongSupplier nanoClock, ChoiceMonitor monitor, long deadlineNanos, long nodesLeft) {
        this.nanoClock = nanoClock;
        this.monitor = monitor;
        this.deadlineNanos = deadlineNanos;
        this.nodesLeft = nodesLeft;
    }

    /** A share of what is left, one of so many. */
    Budget share(int of) {
        long now = nanoClock.getAsLong();
        return new Budget(nanoClock, monitor, now + (deadlineNanos - now) / of, Math.max(1, nodesLeft / of));
    }

    /** What is left, but at most so many nodes. */
    Budget atMost(long nodes) {
        return new Budget(nanoClock, monitor, deadlineNanos, Math.min(nodes, nodesLeft));
    }

    /** Takes what a share has used out of this. */
    void charge(Budget share) {
        nodesLeft = Math.max(0, nodesLeft - share.nodesDone);
        nodesDone += share.nodesDone;
    }

    /** Ends it for a reason of the search's own. */
    void end(String why) {
        reason = reason.isEmpty() ? why : reason;
    }

    boolean spent() {
        if (reason.isEmpty()) {
            if (monitor.cancelled()) {
                reason = "the search was cancelled";
            } else if (nanoClock.getAsLong() - deadlineNanos > 0) {
                reason = "the time limit was reached";
            }
        }
        return !reason.isEmpty();
    }

    /** Counts a node; false if there is none left. */
    boolean node(int level, int open) {
        if (nodesLeft == 0) {
            end("the node limit was reached");
        }
        if (spent()) {
            return false;
        }
        nodesLeft--;
        nodesDone++;
        if (nodesDone % 64 == 1) {
            monitor.progress(level, nodesDone, open);
        }
        return true;
    }

    /** Which limit it was, empty if none. */
    String reason() {
        return reason;
    }
}
