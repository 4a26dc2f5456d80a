/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.Objects;

/**
 * Something that a reader of a log should know.
 *
 * @param kind how sure it is
 * @param text what it is
 */
public record LogNote(Kind kind, String text) {

    /** How sure a note is. */
    public enum Kind {
        /** The file says so. */
        STATED,
        /** The whole file allows nothing else. */
        INFERRED,
        /** The file allows something else too: say it in the {@link LogFormat} if it is wrong. */
        ASSUMED,
        /** Something looks wrong, and this may be why. */
        SUGGESTED
    }

    /**
     * Checks that both are there.
     *
     * @param kind how sure it is
     * @param text what it is
     */
    public LogNote {
        Objects.requireNonNull(kind, "kind of a note");
        Objects.requireNonNull(text, "text of a note");
    }

    @Override
    public String toString() {
        return kind + ": " + text;
    }
}
