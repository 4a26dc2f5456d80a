/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

/** How a vessel stands in gear. */
public enum Posture {
    /** On its base. */
    UPRIGHT,
    /** On its closure, base up; only for closed vessels without sediment. */
    INVERTED
}
