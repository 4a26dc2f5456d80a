/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

/** A message is refused as a whole: with which HTTP status, and what was given, where, and what is allowed. */
final class BadMessage extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final int LONGEST = 300;

    private final int status;

    BadMessage(int status, String message) {
        super(message.length() > LONGEST ? message.substring(0, LONGEST) + "..." : message);
        this.status = status;
    }

    static BadMessage at(String where, String given, String allowed) {
        return new BadMessage(400, where + " " + shortened(given) + ": expected " + allowed);
    }

    int status() {
        return status;
    }

    private static String shortened(String given) {
        int longest = 80;
        return given.length() > longest ? given.substring(0, longest) + "..." : given;
    }
}
