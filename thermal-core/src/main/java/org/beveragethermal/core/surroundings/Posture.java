/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

/** How a vessel stands or lies in gear. */
public enum Posture {
    /** On its base. */
    UPRIGHT,
    /** On its closure, base up; only for closed vessels without sediment. */
    INVERTED,
    /** On its side, its axis level; only for closed vessels. */
    LYING
}
