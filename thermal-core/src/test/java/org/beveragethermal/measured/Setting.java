/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import java.time.Duration;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
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
 * @param alternatives what divides its draws into two kinds
 * @param airFilm from a draw to a factor on convection in air, besides that on its law [-]
 * @param placing from a draw to the exposure
 */
record Setting(
        Means means,
        Given medium,
        VesselModel model,
        Duration horizon,
        Alternatives alternatives,
        ToDoubleFunction<Draw> airFilm,
        Placing placing) {

    /** Something around a vessel, nothing of which obstructs the air. */
    Setting(
            Means means,
            Given medium,
            VesselModel model,
            Duration horizon,
            Alternatives alternatives,
            Placing placing) {
        this(means, medium, model, horizon, alternatives, draw -> 1, placing);
    }

    /** What is either one thing or another, and is not stated. */
    enum Alternatives {
        /** Nothing that is told apart. */
        NONE(draw -> true),
        /** Still or stirred. */
        STIRRING(Conditions::isStill),
        /** Salt that is mixed in or without effect. */
        SALT(Conditions::isSaltMixed);

        private final Predicate<Draw> first;

        Alternatives(Predicate<Draw> first) {
            this.first = first;
        }

        boolean isFirst(Draw draw) {
            return first.test(draw);
        }
    }

    /** Kinds of means. */
    enum Means {
        ROOM("room air", true),
        OUTDOORS("outdoor air in the shade", true),
        REFRIGERATOR("refrigerator", true),
        FREEZER("freezer", true),
        WATER("tap water bath", false),
        ICE_WATER("ice and water", false),
        BARE_ICE("ice without water", false),
        SALTED_ICE("salted ice and water", false);

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
