/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

/**
 * Is told how far planning has come, and may cancel it.
 *
 * <p>What it does takes part in nothing that is computed. It is called from the thread that plans and should return at once.
 */
@FunctionalInterface
public interface PlanMonitor {

    /** Parts of the work, in order; from the second round on the last three repeat. */
    enum Stage {
        /** Predicting what gear and places do to the bottles. */
        TABLES,
        /** Making candidate routes. */
        CANDIDATES,
        /** Choosing among them. */
        CHOICE,
        /** Running the whole plan as one scene. */
        COUPLED_RUN
    }

    /** Lets everything go on. */
    PlanMonitor NONE = (stage, part) -> true;

    /**
     * Called at the beginning of a stage and in its course.
     *
     * @param stage what is being done
     * @param part part of the stage that is done, 0 to 1
     * @return whether to go on; if not, planning ends with a {@link java.util.concurrent.CancellationException}
     */
    boolean goOn(Stage stage, double part);
}
