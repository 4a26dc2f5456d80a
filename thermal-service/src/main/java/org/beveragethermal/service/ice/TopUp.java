/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import java.time.Duration;
import java.util.Optional;

/**
 * Ice to add in the course of the service.
 *
 * @param after time since the bath was made
 * @param iceKg mass of ice [kg]
 * @param pourOffKg water to pour off before, so that the level stays [kg]
 * @param blocks number of blocks, rounded up
 * @param margin ice to add at this time for 90 % and 95 %, if all before it goes as planned, so that it lasts until the next addition or the
 *     end; empty if it was not asked for, or if the vessels need not be ready before the next addition
 */
public record TopUp(Duration after, double iceKg, double pourOffKg, int blocks, Optional<IceMargin> margin) {

    TopUp with(Optional<IceMargin> newMargin) {
        return new TopUp(after, iceKg, pourOffKg, blocks, newMargin);
    }
}
