/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.time.Instant;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/**
 * A reading of a log.
 *
 * @param at when it was taken
 * @param temperature what was read; checked when a history is made of it
 */
public record Reading(Instant at, Quantity<Temperature> temperature) {

    /**
     * Checks that both are there.
     *
     * @param at when it was taken
     * @param temperature what was read
     */
    public Reading {
        Objects.requireNonNull(at, "instant of a reading");
        Objects.requireNonNull(temperature, "temperature of a reading");
    }
}
