/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

/** Kinds of gear, by how much trouble they are. */
public enum GearKind {
    /** Cold air; always ready. */
    REFRIGERATOR(1),
    /** A bucket of water, filled when it is needed. */
    WATER_BATH(2),
    /** A bucket of ice and water, filled when it is needed; uses up ice. */
    ICE_BATH(3);

    private final int trouble;

    GearKind(int trouble) {
        this.trouble = trouble;
    }

    int trouble() {
        return trouble;
    }

    /**
     * Whether the gear has to be filled before it is used.
     *
     * @return true for baths
     */
    public boolean isFilled() {
        return this != REFRIGERATOR;
    }
}
