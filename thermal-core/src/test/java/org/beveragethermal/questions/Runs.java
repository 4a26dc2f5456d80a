/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.questions;

import java.util.concurrent.atomic.AtomicInteger;
import org.beveragethermal.core.solver.NetworkSolver;

/** A solver whose runs are counted: each comes to its end once. */
final class Runs {

    private final AtomicInteger count = new AtomicInteger();

    NetworkSolver solver() {
        return NetworkSolver.standard().withMonitor((reached, end, steps) -> {
            if (reached >= end) {
                count.incrementAndGet();
            }
            return true;
        });
    }

    /** Counts a run that is made without this solver. */
    void add() {
        count.incrementAndGet();
    }

    int count() {
        return count.get();
    }
}
