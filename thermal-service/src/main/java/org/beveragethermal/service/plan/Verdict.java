/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

/** Whether a bottle is in its range at every pour, as the coupled run of the whole plan shows it; best first. */
public enum Verdict {
    /** In range at every pour, as chosen. */
    VERIFIED,
    /** In range at every pour, after the coupled run had shown that the first choice was not. */
    REPAIRED,
    /** In range when poured first, but not until it is finished. */
    LEAVES_RANGE,
    /** Not in range when poured first. */
    NOT_REACHED;

    /**
     * Whether it is in range at every pour.
     *
     * @return true for verified and repaired
     */
    public boolean inRange() {
        return this == VERIFIED || this == REPAIRED;
    }
}
