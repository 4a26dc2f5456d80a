/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

/** Whether a bottle is in its range, as the coupled run of the whole plan shows it. */
public enum Verdict {
    /** In range when poured and until it is finished. */
    IN_RANGE,
    /** In range when poured, but not until it is finished. */
    LEAVES_RANGE,
    /** Not in range when poured. */
    NOT_REACHED
}
