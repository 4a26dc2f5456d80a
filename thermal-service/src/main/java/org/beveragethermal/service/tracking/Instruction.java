/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Instant;

/**
 * Something to do now. It is said once, and again only after there was no reason for it.
 *
 * @param vesselId which vessel
 * @param at when it was seen
 * @param code what
 * @param facts its figures; the destination is a medium of the model
 */
public record Instruction(String vesselId, Instant at, Code code, Facts facts) {

    /** What may be asked. */
    public enum Code {
        /** Take it out of where it is. */
        TAKE_OUT,
        /** Pour: it is in the range that is wanted, at the time that is wanted. */
        POUR_NOW,
        /** Put it back to where it was before. */
        PUT_BACK
    }
}
