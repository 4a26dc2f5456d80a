/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

/** How the air in a refrigerator moves. */
public enum RefrigeratorKind {
    /** Air moves only because it is warmer in one place than in another. */
    STATIC("static"),
    /** A fan moves the air. */
    FAN_ASSISTED("fan-assisted");

    private final String id;

    RefrigeratorKind(String id) {
        this.id = id;
    }

    /**
     * The word in the file.
     *
     * @return {@code static} or {@code fan-assisted}
     */
    public String id() {
        return id;
    }
}
