/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;
import org.beveragethermal.core.store.IceBlock;

/** How much ice it takes, or why no ice does it. */
public sealed interface IceAnswer extends Answer {

    /** Why no ice does it. */
    enum Reason {
        /** The vessels do not stand beside each other in the bucket, or leave no room for a bath, or too little. */
        BUCKET_TOO_SMALL,
        /** There is not so much ice. */
        NOT_ENOUGH_ICE,
        /** It would get there, but later. */
        TIME_TOO_SHORT,
        /** A bath of ice and water, or this one where its water is warmer below the ice, does not get that cold. */
        COLDER_THAN_THE_BATH,
        /** The ice runs out, and it was allowed too few times to top up. */
        ICE_RUNS_OUT,
        /** So many vessels in one bath are not followed. */
        TOO_MANY_VESSELS,
        /** What stays in the bath becomes colder than its range. */
        BECOMES_TOO_COLD
    }

    /**
     * The least ice that does it.
     *
     * @param iceKg ice at the start [kg]
     * @param blocks number of blocks at the start, rounded up
     * @param shape shape of the blocks
     * @param waterKg water to add at the start [kg]
     * @param topUps ice to add later; empty if none
     * @param energy what it takes by energy alone
     * @param margin ice at the start for 90 % and 95 %, so that it lasts until the first addition or the end; empty if it was not asked for, or
     *     if the vessels need not be ready before the first addition
     * @param iceLeftKg ice left at the end of the service [kg]
     * @param vessels what the vessels do
     * @param runs predictions that were made, without those of the margin
     * @param notes of the predictions, and what to mind
     */
    record Enough(
            double iceKg,
            int blocks,
            IceBlock shape,
            double waterKg,
            List<TopUp> topUps,
            IceEnergy energy,
            Optional<IceMargin> margin,
            double iceLeftKg,
            List<VesselCourse> vessels,
            int runs,
            List<String> notes)
            implements IceAnswer {

        /**
         * Copies the lists.
         *
         * @param iceKg ice at the start [kg]
         * @param blocks number of blocks at the start
         * @param shape shape of the blocks
         * @param waterKg water to add at the start [kg]
         * @param topUps ice to add later, not modified
         * @param energy what it takes by energy alone
         * @param margin ice at the start for 90 % and 95 %, if it was asked for
         * @param iceLeftKg ice left at the end of the service [kg]
         * @param vessels what the vessels do, not modified
         * @param runs predictions that were made
         * @param notes of the predictions, not modified
         */
        public Enough {
            topUps = List.copyOf(topUps);
            vessels = List.copyOf(vessels);
            notes = List.copyOf(notes);
        }

        /**
         * All ice to have at hand.
         *
         * @return mass [kg], at the start and later
         */
        public double totalKg() {
            return iceKg + topUps.stream().mapToDouble(TopUp::iceKg).sum();
        }

        @Override
        public String explain() {
            StringBuilder text = new StringBuilder(String.format(
                    Locale.ROOT,
                    "%.2f kg of ice (%d blocks, %s) and %.2f kg of water%s. It would be %.2f kg by energy alone for the drinks, %.2f kg"
                            + " with vessels and water of the bath.",
                    iceKg,
                    blocks,
                    shape,
                    waterKg,
                    words(margin),
                    energy.drinksKg(),
                    energy.everythingKg()));
            for (TopUp topUp : topUps) {
                text.append(String.format(
                        Locale.ROOT,
                        " After %d min pour off %.2f kg of water and add %.2f kg of ice (%d blocks)%s.",
                        topUp.after().toMinutes(),
                        topUp.pourOffKg(),
                        topUp.iceKg(),
                        topUp.blocks(),
                        words(topUp.margin())));
            }
            return text.toString();
        }

        @Override
        public Snapshot snapshot() {
            Map<String, List<Double>> figures = new LinkedHashMap<>();
            figures.put("iceKg", List.of(iceKg));
            figures.put("blocks", List.of((double) blocks));
            figures.put("waterKg", List.of(waterKg));
            figures.put("topUpAfterS", each(topUp -> IceBudget.seconds(topUp.after())));
            figures.put("topUpIceKg", each(TopUp::iceKg));
            figures.put("topUpPourOffKg", each(TopUp::pourOffKg));
            figures.put("energyDrinksKg", List.of(energy.drinksKg()));
            figures.put("energyEverythingKg", List.of(energy.everythingKg()));
            margin.ifPresent(known -> {
                known.kg90().ifPresent(kg -> figures.put("iceKg90", List.of(kg)));
                known.kg95().ifPresent(kg -> figures.put("iceKg95", List.of(kg)));
            });
            figures.put("iceLeftKg", List.of(iceLeftKg));
            figures.put("runs", List.of((double) runs));
            return new Snapshot(Snapshot.FORMAT_VERSION, "enough", figures);
        }

        private List<Double> each(ToDoubleFunction<TopUp> figure) {
            return topUps.stream().map(figure::applyAsDouble).toList();
        }

        private static String words(Optional<IceMargin> margin) {
            return margin.map(m -> "; with a probability of 90 % it takes " + words(m.kg90()) + " of ice, of 95 % "
                            + words(m.kg95()))
                    .orElse("");
        }

        private static String words(OptionalDouble kg) {
            return kg.isPresent() ? String.format(Locale.ROOT, "%.2f kg", kg.getAsDouble()) : "more than has room";
        }
    }

    /**
     * No ice does it.
     *
     * @param reason why
     * @param why what happens, in words
     * @param help what would help
     * @param energy what it would take by energy alone; empty where no bath could be described
     * @param runs predictions that were made, 0 where it is known without one
     */
    record Never(Reason reason, String why, String help, Optional<IceEnergy> energy, int runs) implements IceAnswer {

        @Override
        public String explain() {
            return why + " " + help;
        }

        @Override
        public Snapshot snapshot() {
            Map<String, List<Double>> figures = new LinkedHashMap<>();
            energy.ifPresent(bound -> {
                figures.put("energyDrinksKg", List.of(bound.drinksKg()));
                figures.put("energyEverythingKg", List.of(bound.everythingKg()));
            });
            figures.put("runs", List.of((double) runs));
            return new Snapshot(Snapshot.FORMAT_VERSION, "never " + reason.name(), figures);
        }
    }
}
