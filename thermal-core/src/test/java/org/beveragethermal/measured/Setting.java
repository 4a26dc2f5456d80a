/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import java.time.Duration;
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
        NONE,
        /** Still or stirred. */
        STIRRING,
        /** Salt that is mixed in or without effect. */
        SALT;

        /** Whether it is the first of them in a draw. */
        boolean isFirst(Draw draw) {
            return switch (this) {
                case NONE -> true;
                case STIRRING -> Conditions.isStill(draw);
                case SALT -> Conditions.isSaltMixed(draw);
            };
        }
    }

    /** Kinds of means. */
    enum Means {
        ROOM("room air", true),
        OUTDOORS("outdoor air in the shade", true),
        PARKED_CAR("parked car in the sun", true),
        REFRIGERATOR("refrigerator", true),
        FREEZER("freezer", true),
        FROZEN_PACK("frozen pack in a freezer", false),
        RUNNING_TAP("running tap", false),
        WATER("tap water bath", false),
        ICE_WATER("ice and water", false),
        BARE_ICE("ice without water", false),
        SALTED_ICE("salted ice and water", false),
        WET_WRAP("wet wrap in air or a freezer", false),
        GLASS("glass or cup in a room", false);

        /** Against 0.01 K this moved the median temperature of six runs after 10 minutes by less than 0.002 K. */
        private static final double TOLERANCE_K = 0.05;

        /** Pieces that sink past a vessel make short steps, and what is predicted there is known to some kelvins. */
        private static final double TOLERANCE_AMONG_PIECES_K = 0.2;

        private final String label;
        private final boolean air;

        Means(String label, boolean air) {
            this.label = label;
            this.air = air;
        }

        String label() {
            return label;
        }

        /** Tolerance on the error of a step [K]. */
        double toleranceK() {
            return this == BARE_ICE || this == SALTED_ICE ? TOLERANCE_AMONG_PIECES_K : TOLERANCE_K;
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
