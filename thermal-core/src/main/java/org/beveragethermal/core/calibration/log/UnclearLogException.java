/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.List;

/**
 * A log that cannot be read without an answer that it does not contain. The message names the choices; {@link #question()} and {@link
 * #choices()} are for programs.
 */
public final class UnclearLogException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** What has to be answered, by which setting of {@link LogFormat}. */
    public enum Question {
        /** Nothing in the text looks like rows of times and temperatures: {@code separator}, {@code charset}. */
        ROWS,
        /** Which columns hold what: {@code timeColumn}, {@code sensorColumns}. */
        COLUMNS,
        /** A comma is both separator and decimal mark: {@code separator}, {@code decimalMark}; or export the log anew. */
        DECIMAL_MARK,
        /** Day first or month first: {@code dateOrder}. */
        DATE_ORDER,
        /** Zone of local times: {@code zone}. */
        ZONE,
        /** What a number or clock reading in the time column counts: {@code timeForm}. */
        TIME_FORM,
        /** Unit of the temperatures: {@code unit}. */
        TEMPERATURE_UNIT,
        /** A quote that is opened and not closed, or a cell or row longer than any log has. */
        QUOTES
    }

    /** What has to be answered. */
    private final Question question;
    /** What is unclear. */
    private final String reason;
    /** Possible answers. */
    private final String[] choices;

    UnclearLogException(Question question, String message, String... choices) {
        super(choices.length == 0 ? message : message + "; choose " + String.join(" or ", choices));
        this.question = question;
        this.reason = message;
        this.choices = choices.clone();
    }

    /**
     * What has to be answered.
     *
     * @return the question
     */
    public Question question() {
        return question;
    }

    /**
     * What is unclear: the message without the possible answers, for whoever words these in another way.
     *
     * @return half a sentence
     */
    public String reason() {
        return reason;
    }

    /**
     * Possible answers.
     *
     * @return settings of {@link LogFormat} as one would write them; empty if they cannot be listed
     */
    public List<String> choices() {
        return List.of(choices);
    }
}
