/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

/** Kinds of gear. */
public enum GearKind {
    /** Cold air; always ready. */
    REFRIGERATOR,
    /** A bucket of water, filled when it is needed. */
    WATER_BATH,
    /** A bucket of ice and water, filled when it is needed; uses up ice. */
    ICE_BATH;

    /**
     * Whether the gear has to be filled before it is used.
     *
     * @return true for baths
     */
    public boolean isFilled() {
        return this != REFRIGERATOR;
    }
}
