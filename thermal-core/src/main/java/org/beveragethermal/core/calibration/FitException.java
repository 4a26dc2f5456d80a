/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

/** A fit that cannot be made: the message names the run and what is wrong with it. */
public final class FitException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * A failure.
     *
     * @param message what is wrong, with names
     */
    public FitException(String message) {
        super(message);
    }

    /**
     * A failure with its cause.
     *
     * @param message what is wrong, with names
     * @param cause what a model threw
     */
    public FitException(String message, Throwable cause) {
        super(message, cause);
    }
}
