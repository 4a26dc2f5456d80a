/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

/** A command ends without an answer. The message is one line: what was given, where, and what is allowed. */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final int LONGEST = 900;

    private final ExitStatus status;

    Refusal(ExitStatus status, String message) {
        super(oneLine(message));
        this.status = status;
    }

    /** Something on the command line is not as it should be. */
    static Refusal usage(String where, String given, String allowed) {
        return new Refusal(ExitStatus.USAGE, where + " " + quoted(given) + ": expected " + allowed);
    }

    ExitStatus status() {
        return status;
    }

    /** What a user typed, of bounded length. */
    static String quoted(String text) {
        int longest = 80;
        return '"' + (text.length() > longest ? oneLine(text.substring(0, longest)) + "..." : oneLine(text)) + '"';
    }

    /** One line of bounded length without characters that steer a terminal. */
    static String oneLine(String text) {
        StringBuilder line = new StringBuilder();
        text.codePoints()
                .limit(LONGEST)
                .map(c -> c == '\n' || c == '\r' || c == '\t' ? ' ' : c)
                .map(c -> switch (Character.getType(c)) {
                    case Character.CONTROL,
                            Character.FORMAT,
                            Character.SURROGATE,
                            Character.LINE_SEPARATOR,
                            Character.PARAGRAPH_SEPARATOR -> 0xFFFD;
                    default -> c;
                })
                .forEach(line::appendCodePoint);
        return line.toString();
    }
}
