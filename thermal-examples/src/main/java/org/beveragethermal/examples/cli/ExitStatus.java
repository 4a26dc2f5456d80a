/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

/** How the command line ends. Scripts may rely on the numbers. */
public enum ExitStatus {
    /** The question was answered; where it can be answered with no, the answer is yes. */
    DONE(0, "done"),
    /**
     * The question was answered, and the answer is no: a temperature is never reached, the drink freezes or its vessel may burst, no ice is
     * enough, the plan does not work, the log does not tell, nothing is listed.
     */
    NO(1, "no"),
    /** The command line was refused; one line on the error stream says what was given, where, and what is allowed. */
    USAGE(2, "usage"),
    /** A file that was to be read is missing, broken or refused. */
    BAD_INPUT(3, "bad input"),
    /** A file or the output could not be written; nothing half-written is left. */
    NOT_WRITABLE(4, "not writable"),
    /** The time given by {@code --limit} ran out, or the work was interrupted. */
    CANCELLED(5, "cancelled"),
    /** The library could not compute an answer; that is a fault of it, not of the command line. */
    INTERNAL(6, "internal");

    private final int number;
    private final String label;

    ExitStatus(int number, String label) {
        this.number = number;
        this.label = label;
    }

    /**
     * The status of the process.
     *
     * @return 0 to 6
     */
    public int number() {
        return number;
    }

    /**
     * The status in words.
     *
     * @return for example {@code bad input}
     */
    public String label() {
        return label;
    }
}
