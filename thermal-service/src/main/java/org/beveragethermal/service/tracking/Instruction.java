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
        /**
         * Take it out of where it is: ice may form; or it is out of its range and does not come back; or it is leaving it and is in its last
         * quarter or has two minutes left.
         */
        TAKE_OUT(24),
        /** Pour: it is in the range that is wanted, at the time that is wanted. */
        POUR_NOW(25),
        /** Put it back to where it was before, for the same reasons. */
        PUT_BACK(26);

        /** What is said of where it should be, which a move answers. */
        static final int OF_PLACES = TAKE_OUT.bit | PUT_BACK.bit;

        private final int bit;

        Code(int number) {
            this.bit = 1 << number;
        }

        /** Stands for it in what has been said; stored in snapshots, so never to be changed. */
        int bit() {
            return bit;
        }
    }
}
