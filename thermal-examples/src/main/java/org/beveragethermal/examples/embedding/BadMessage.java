/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

/** A message is refused as a whole: with which HTTP status, where, what was given there, and what is allowed. */
final class BadMessage extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final int BAD_REQUEST = 400;
    private static final int LONGEST = 120;

    private final int status;
    private final String field;
    private final String given;
    private final String allowed;

    BadMessage(int status, String field, String given, String allowed) {
        super(field + " " + shortened(given) + ": expected " + allowed);
        this.status = status;
        this.field = field;
        this.given = shortened(given);
        this.allowed = allowed;
    }

    static BadMessage at(String field, String given, String allowed) {
        return new BadMessage(BAD_REQUEST, field, given, allowed);
    }

    int status() {
        return status;
    }

    String field() {
        return field;
    }

    String given() {
        return given;
    }

    String allowed() {
        return allowed;
    }

    /** The sentence that says all three. */
    String sentence() {
        return field + " " + given + ": expected " + allowed;
    }

    private static String shortened(String given) {
        return given.length() > LONGEST ? given.substring(0, LONGEST) + "..." : given;
    }
}
