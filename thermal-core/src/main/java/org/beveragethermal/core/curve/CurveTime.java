/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

import java.time.Duration;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/** Answer to "how long from this temperature to that one?" in surroundings that never change. */
public sealed interface CurveTime {

    /**
     * The temperature is reached.
     *
     * @param after time from the start
     * @param error how far the time may be off
     */
    record Reached(Duration after, Duration error) implements CurveTime {}

    /**
     * The temperature is never reached, however long one waits.
     *
     * @param tendsTo where the temperature tends to instead
     */
    record Never(Quantity<Temperature> tendsTo) implements CurveTime {}
}
