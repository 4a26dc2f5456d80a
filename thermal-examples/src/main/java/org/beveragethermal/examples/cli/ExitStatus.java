/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

/** How the command line ends. Scripts may rely on the numbers. */
public enum ExitStatus {
    /** The question was answered; where it can be answered with no, the answer is yes. */
    DONE(0, "done", "the question was answered"),
    /**
     * The question was answered, and the answer is no: a temperature is never reached, the drink freezes or its vessel may burst, no ice is
     * enough, the plan does not work, the log does not tell, nothing is listed.
     */
    NO(1, "no", "it was answered, and the answer is no"),
    /** The command line was refused; one line on the error stream says what was given, where, and what is allowed. */
    USAGE(2, "usage", "the command line was refused"),
    /** A file that was to be read is missing, broken or refused. */
    BAD_INPUT(3, "bad input", "a file that was to be read was refused"),
    /** A file or the output could not be written; nothing half-written is left. */
    NOT_WRITABLE(4, "not writable", "an output could not be written"),
    /** The time given by {@code --limit} ran out, or the work was interrupted. */
    CANCELLED(5, "cancelled", "the time given ran out, or it was interrupted"),
    /** The library could not compute an answer; that is a fault of it, not of the command line. */
    INTERNAL(6, "internal", "the library could not compute an answer: a fault of it");

    private final int number;
    private final String label;
    private final String meaning;

    ExitStatus(int number, String label, String meaning) {
        this.number = number;
        this.label = label;
        this.meaning = meaning;
    }

    /**
     * What the status means, for the help of a command.
     *
     * @return a few words
     */
    public String meaning() {
        return meaning;
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
