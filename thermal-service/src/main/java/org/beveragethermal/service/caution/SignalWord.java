/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

/**
 * How grave a hazard is: the signal words of the open safety-sign standards ANSI Z535.4 and ISO 3864-2, from the mildest to the gravest.
 * NOTICE is of the former alone.
 *
 * <p>The standards word DANGER for what will do grave harm unless it is avoided. Here it marks a limit beyond which harm is to be
 * expected, so that a plan is never allowed to cross it.
 */
public enum SignalWord {
    /** What has nothing to do with injury: spoiled drinks, broken property, duties towards guests. */
    NOTICE,
    /** Could lead to a minor or moderate injury. */
    CAUTION,
    /** Could lead to death or a grave injury. */
    WARNING,
    /** Not to be crossed, whatever is gained by it. */
    DANGER
}
