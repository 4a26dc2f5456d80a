/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import org.jspecify.annotations.Nullable;

/**
 * A network could not be integrated.
 *
 * <p>Says at which time, which node or path stands in the way, why and what to try; nothing that was computed before is
 * returned. If a path, store or boundary threw, that is the cause.
 */
public final class SolverException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** When the integration stopped [s]. */
    private final double timeS;

    /** Name of the node or path in the way. */
    private final String obstacle;

    SolverException(double timeS, String obstacle, String reason, @Nullable Throwable cause) {
        super("at " + timeS + " s: " + reason, cause);
        this.timeS = timeS;
        this.obstacle = obstacle;
    }

    /**
     * When the integration stopped.
     *
     * @return time since the start [s]
     */
    public double timeS() {
        return timeS;
    }

    /**
     * What stands in the way.
     *
     * @return name of a path or node that failed, else of the node that changed fastest; empty if no single one does
     */
    public String obstacle() {
        return obstacle;
    }
}
