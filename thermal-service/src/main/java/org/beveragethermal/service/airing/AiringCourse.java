/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.airing;

import java.time.Duration;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.prediction.Prediction;

/**
 * What becomes of a drink from the moment it is decanted, or its bottle opened, to its last glass. Immutable.
 *
 * @param airing how it got air
 * @param prediction the drink in the open vessel, from that moment on
 * @param drinking from the first glass to the last
 */
public record AiringCourse(Airing airing, Prediction prediction, Duration drinking) {

    /**
     * Mean temperature of the drink in the open vessel.
     *
     * @param afterBeginning time since it was decanted or opened, 0 to the last glass
     * @return the temperature
     * @throws IllegalArgumentException if the time is outside its range
     */
    public Quantity<Temperature> at(Duration afterBeginning) {
        return prediction.meanTemperatureAt(afterBeginning);
    }

    /**
     * Temperature at which the first glass is poured.
     *
     * @return the temperature
     */
    public Quantity<Temperature> firstPour() {
        return at(airing.before());
    }

    /**
     * Temperature at which the last glass is poured.
     *
     * @return the temperature
     */
    public Quantity<Temperature> lastPour() {
        return at(airing.before().plus(drinking));
    }
}
