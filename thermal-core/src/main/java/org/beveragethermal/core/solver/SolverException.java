/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

/**
 * A network could not be integrated.
 *
 * <p>Says at which time and why; nothing that was computed before is returned.
 */
public final class SolverException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** When the integration stopped [s]. */
    private final double timeS;

    SolverException(double timeS, String reason) {
        super("at " + timeS + " s: " + reason);
        this.timeS = timeS;
    }

    /**
     * When the integration stopped.
     *
     * @return time since the start [s]
     */
    public double timeS() {
        return timeS;
    }
}
