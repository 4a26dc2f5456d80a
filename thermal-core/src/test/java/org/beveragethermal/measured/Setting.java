/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import java.time.Duration;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * What a vessel is put into, with everything that is not stated drawn.
 *
 * @param means in which group of the summary it counts
 * @param medium temperature of the medium, or the one on which the excess is counted
 * @param model how finely the contents are described there
 * @param horizon how long is looked; a temperature not reached by then counts as never reached
 * @param stirringDrawn whether how much a bath is stirred is not stated
 * @param placing from a draw to the exposure
 */
record Setting(Means means, Given medium, VesselModel model, Duration horizon, boolean stirringDrawn, Placing placing) {

    /** Kinds of means. */
    enum Means {
        ROOM("room air", true),
        REFRIGERATOR("refrigerator", true),
        FREEZER("freezer", true),
        WATER("tap water bath", false),
        ICE_WATER("ice and water", false);

        private final String label;
        private final boolean air;

        Means(String label, boolean air) {
            this.label = label;
            this.air = air;
        }

        String label() {
            return label;
        }

        /** Whether the rows count among those in air. */
        boolean isAir() {
            return air;
        }
    }

    /** Puts a filled vessel somewhere. */
    @FunctionalInterface
    interface Placing {
        Exposure expose(Draw draw, FilledVessel vessel, Duration duration);
    }
}
