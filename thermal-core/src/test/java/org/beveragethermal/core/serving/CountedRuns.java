/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

import java.util.concurrent.atomic.AtomicInteger;
import org.beveragethermal.core.solver.NetworkSolver;

/** Counts the runs of a solver: each comes to its end once. */
final class CountedRuns {

    private final AtomicInteger runs = new AtomicInteger();

    NetworkSolver solver() {
        return NetworkSolver.standard().withMonitor((reached, end, steps) -> {
            if (reached >= end) {
                runs.incrementAndGet();
            }
            return true;
        });
    }

    int runs() {
        return runs.get();
    }
}
