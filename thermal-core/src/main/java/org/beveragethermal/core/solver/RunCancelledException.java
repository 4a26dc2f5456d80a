/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

/**
 * A run or an ensemble was cancelled, by its {@link RunMonitor} or because its thread was interrupted.
 *
 * <p>The thread's interrupt status is left as it was found. Nothing that was computed before is returned.
 */
public final class RunCancelledException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** How far it had come. */
    private final double reached;

    /** Whether the thread was interrupted. */
    private final boolean interrupted;

    /**
     * A cancellation.
     *
     * @param reached simulated time reached [s], or draws finished
     * @param end simulated time at the end of the run [s], or number of draws
     * @param interrupted whether the thread was interrupted, rather than the monitor having said so
     */
    public RunCancelledException(double reached, double end, boolean interrupted) {
        super("cancelled at " + reached + " of " + end + (interrupted ? ": thread interrupted" : " by the monitor"));
        this.reached = reached;
        this.interrupted = interrupted;
    }

    /**
     * How far it had come.
     *
     * @return simulated time [s] of a run, number of finished draws of an ensemble
     */
    public double reached() {
        return reached;
    }

    /**
     * Why it ended.
     *
     * @return true if the thread was interrupted, false if the monitor said so
     */
    public boolean interrupted() {
        return interrupted;
    }
}
