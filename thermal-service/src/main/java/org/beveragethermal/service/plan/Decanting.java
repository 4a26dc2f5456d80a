/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;

/** Drinks that stand in a carafe instead of their bottle. */
final class Decanting {

    private static final double LITRES_PER_CUBIC_METRE = 1000;

    private Decanting() {}

    /**
     * The carafe with all that is in a bottle.
     *
     * @throws IllegalArgumentException if it does not take it
     */
    static FilledVessel filled(Airing airing, FilledVessel bottle) {
        return airing.carafe()
                .filledWith(
                        bottle.liquid(),
                        Measures.litres(LITRES_PER_CUBIC_METRE * bottle.liquidVolumeM3()),
                        SiValues.celsiusOf(bottle.temperatureK()));
    }
}
