/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

/**
 * Something a vessel can be put into.
 *
 * <p>Immutable values without identity: the same value under two ids in a scene is two pieces of gear.
 *
 * <p><b>Your own.</b> Implement this and {@link Medium}; a scene treats it as it does the kinds of this package. The class {@code
 * StoneTrough} of thermal-examples is a worked example. What {@link #open} returns belongs to one run and may hold nodes; the value itself
 * must not. Unsettled: the interface may change in the next version.
 */
public interface Surroundings {

    /**
     * Opens a piece of gear for one run; called by scenes.
     *
     * @param id the gear's id, which names its nodes
     * @param originS time on the clock of the surroundings' weather at which the run starts [s]
     * @return its live part
     */
    Medium open(String id, double originS);

    /**
     * Whether a vessel in it stands in water to some height.
     *
     * @return true for baths
     */
    default boolean isBath() {
        return false;
    }

    /**
     * Whether somebody may do something to it in the course of a run.
     *
     * @param tending what is done
     * @return true for baths of ice and water; for bare ice if ice is added or gathered melt water poured off
     */
    default boolean allows(Tending tending) {
        return false;
    }
}
