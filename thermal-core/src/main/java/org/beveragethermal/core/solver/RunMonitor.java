/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

/**
 * Is told how far a long computation has come, and may cancel it.
 *
 * <p>What it does takes part in nothing that is computed: a run that is not cancelled gives the same numbers with any
 * monitor. It is called often (after every step of a run) and should return at once.
 */
@FunctionalInterface
public interface RunMonitor {

    /** Lets everything go on. */
    RunMonitor NONE = (reached, end, count) -> true;

    /**
     * Called after each step of a run, and after each draw of an ensemble.
     *
     * @param reached simulated time reached [s], or draws finished
     * @param end simulated time at the end of the run [s], or number of draws
     * @param count steps tried so far, or draws finished
     * @return whether to go on; after the last step or draw the answer is ignored
     */
    boolean goOn(double reached, double end, long count);
}
