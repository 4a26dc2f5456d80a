/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.compared;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.Locale;
import java.util.function.Function;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.DrinkTint;
import org.beveragethermal.core.surroundings.GlassTint;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;

/**
 * One row: a bottle of wine of 750 mL in one surroundings.
 *
 * @param id short name
 * @param kind which surroundings it stands for
 * @param words the setting in words
 * @param task from which temperature to which
 * @param looking air or bath, which decides how finely and how long is looked
 * @param gear the surroundings for a draw
 * @param added ice that is added later, nothing for most
 */
record Case(
        String id,
        Class<? extends Surroundings> kind,
        String words,
        Task task,
        Looking looking,
        Function<Doubts, Surroundings> gear,
        Added added) {

    static final String GEAR = "gear";
    static final String BOTTLE = "bottle";

    /**
     * Ice that is added to a bath.
     *
     * @param after when
     * @param kg how much [kg], 0 for nothing
     */
    record Added(Duration after, double kg) {

        static final Added NOTHING = new Added(Duration.ZERO, 0);

        /** What has been added by a time [kg]. */
        double kgAt(Duration time) {
            return after.compareTo(time) <= 0 ? kg : 0;
        }
    }

    /** Wine is to be cooled, or to be warmed. */
    enum Task {
        COOL(22, 10),
        WARM(8, 12),
        /** As far as ground of 12 °C can cool it in reasonable time. */
        TEMPER(22, 14);

        private final double startC;
        private final double targetC;

        Task(double startC, double targetC) {
            this.startC = startC;
            this.targetC = targetC;
        }

        double startC() {
            return startC;
        }

        double targetC() {
            return targetC;
        }
    }

    /** How finely contents are described, and how long is looked: what takes longer counts as never. */
    enum Looking {
        /** One temperature. */
        AIR(1, Duration.ofHours(12), 400),
        /** One temperature, red wine in green glass, whose colours the sun sees. */
        DARK(1, Duration.ofHours(12), 400),
        /** One temperature, paper of 0.1 mm all round. */
        LABELLED(1, Duration.ofHours(12), 400),
        /** One temperature, in ground of some hundred rings. */
        GROUND(1, Duration.ofHours(12), 120),
        /** Slices. */
        BATH(8, Duration.ofHours(2), 80),
        /** As in a bath, with ice whose amount is asked for. */
        ICE(8, Duration.ofMinutes(40), 80),
        /** Ice alone, which takes many steps to follow once the bottle is cold. */
        ALONE(8, Duration.ofMinutes(40), 80),
        /** As with ice, no longer than until the drink begins to freeze at the wall. */
        SALT(8, Duration.ofMinutes(12), 80);

        private final int slices;
        private final Duration horizon;
        private final int draws;

        Looking(int slices, Duration horizon, int draws) {
            this.slices = slices;
            this.horizon = horizon;
            this.draws = draws;
        }

        VesselModel model() {
            return switch (this) {
                case AIR, GROUND -> VesselModel.lumped();
                case DARK -> VesselModel.lumped().tinted(GlassTint.GREEN, DrinkTint.DARK);
                case LABELLED -> VesselModel.lumped().wrappedIn(Layer.of(Solids.paper(), millimetres(0.1)));
                case BATH, ICE, ALONE, SALT -> VesselModel.axial(slices);
            };
        }

        Duration horizon() {
            return horizon;
        }

        /** How often it is drawn, so that an end of an interval moves by a few per cent at most from seed to seed. */
        int draws() {
            return draws;
        }

        boolean hasIce() {
            return this == ICE || this == ALONE || this == SALT;
        }
    }

    /** As for measured runs. */
    private static final double TOLERANCE_K = 0.05;

    private static final double ADDED_C = -5;
    private static final double STRENGTH = 12.5;
    private static final Vessel VESSEL = Vessels.highShouldered750();

    static String described() {
        return String.format(
                Locale.ROOT,
                "%.0f mL of wine of %.1f %% vol, %s",
                1e6 * VESSEL.nominalVolumeM3(),
                STRENGTH,
                VESSEL.name());
    }

    ScenePrediction run(Doubts doubts) {
        FilledVessel bottle =
                Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(task.startC()));
        Scene.Builder scene = Scene.builder()
                .gear(GEAR, gear.apply(doubts))
                .vessel(BOTTLE, bottle, GEAR, looking.model(), Placement.upright());
        if (added.kg() > 0) {
            scene.topUpIce(GEAR, added.after(), kilograms(added.kg()), celsius(ADDED_C));
        }
        return scene.build()
                .predict(
                        looking.horizon(),
                        NetworkSolver.standard().withToleranceK(TOLERANCE_K).withMultipliers(doubts.multipliers()));
    }
}
