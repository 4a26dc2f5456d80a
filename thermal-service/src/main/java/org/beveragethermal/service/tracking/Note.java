/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

/**
 * Why an event was not used.
 *
 * @param eventId which event
 * @param vesselId of which vessel
 * @param code why
 * @param detail what was given and what is allowed, in English; may be empty
 */
public record Note(String eventId, String vesselId, Code code, String detail) {

    /** Reasons. */
    public enum Code {
        /** It is known already. */
        DUPLICATE,
        /** It is from before what is kept for late ones. */
        TOO_LATE,
        /** The reading is no temperature that the sensor could read. */
        NOT_A_READING,
        /** The reading is too far from what was expected to be used, until others agree. */
        STRAY_READING,
        /**
         * The reading is from further ahead than {@link TrackingRules#mostAhead} allows and is held aside until other news show whether its
         * clock was right. If so it is used; if not {@link #LET_GO} says so.
         */
        AHEAD,
        /** The reading was held aside as too far ahead, and other news came first: its clock was wrong, or it is to be handed in again later. */
        LET_GO,
        /** The vessel has not been placed. */
        UNKNOWN_VESSEL,
        /** There is no such kind of vessel. */
        UNKNOWN_MODEL,
        /** The model knows no such medium. */
        UNKNOWN_MEDIUM,
        /** The vessel is tracked already. */
        ALREADY_PLACED,
        /** The vessel was finished before. */
        FINISHED
    }
}
