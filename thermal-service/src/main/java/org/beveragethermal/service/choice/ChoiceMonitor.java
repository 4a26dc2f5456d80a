/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

/** Hears of the progress of a search and may end it. Called from the thread that searches. */
public interface ChoiceMonitor {
    /**
     * Called now and then.
     *
     * @param level level of cost being searched, from 0
     * @param nodes nodes of the search tree looked at so far, all levels together
     * @param openNodes nodes known but not yet looked at
     */
    default void progress(int level, long nodes, int openNodes) {}

    /**
     * Asked often; the search ends soon after the answer is true, with what is known by then.
     *
     * @return whether to end
     */
    default boolean cancelled() {
        return false;
    }

    /**
     * A monitor that hears nothing and never ends a search.
     *
     * @return the monitor
     */
    static ChoiceMonitor none() {
        return new ChoiceMonitor() {};
    }
}
