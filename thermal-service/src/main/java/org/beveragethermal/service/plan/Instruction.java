/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.List;

/**
 * Something to be done at a time.
 *
 * @param at when
 * @param action what
 * @param bottleIds the bottles it concerns; empty for gear
 * @param where id of the place or gear that the action leads to
 * @param reason why, in words
 */
public record Instruction(Instant at, Action action, List<String> bottleIds, String where, String reason) {

    /** What is to be done. */
    public enum Action {
        /** Fill a bath. */
        FILL,
        /** Move bottles. */
        MOVE,
        /** Pour the first glass. */
        SERVE
    }

    /**
     * Copies the ids.
     *
     * @param at when
     * @param action what
     * @param bottleIds the bottles it concerns, not modified
     * @param where id of the place or gear
     * @param reason why
     */
    public Instruction {
        bottleIds = List.copyOf(bottleIds);
    }
}
