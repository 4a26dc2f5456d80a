/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.Objects;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.TimeFunction;

/**
 * Sunlight that passes through a wall and is taken up behind it.
 *
 * @param sun whom the ledger names as the giver
 * @param watts what is taken up, as a function of time [W]
 */
public record PassingLight(End sun, TimeFunction watts) {

    /** Ledger account of sunlight. */
    public static final String MECHANISM = "sun";

    /**
     * Checks the parts.
     *
     * @param sun whom the ledger names as the giver
     * @param watts what is taken up [W]
     */
    public PassingLight {
        Objects.requireNonNull(sun, "sun");
        Objects.requireNonNull(watts, "watts");
    }
}
