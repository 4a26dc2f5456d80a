/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.beveragethermal.materials.units.Measures.kelvins;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.ServingTarget;
import org.beveragethermal.service.target.Targets;

/**
 * A change of what is at hand or wanted under which a plan works that otherwise does not. Each was tried by planning anew with
 * it; of its kind it is the smallest that was found to do, to the step that its component states.
 */
public sealed interface PlanAdvice {

    /**
     * The advice as a phrase.
     *
     * @return the phrase
     */
    Phrase phrase();

    /**
     * The request with the change.
     *
     * @param request the request that the advice was given for
     * @return the request as it is to be planned
     * @throws IllegalArgumentException if it does not fit together any more, such as a start before gear is there
     */
    PlanRequest appliedTo(PlanRequest request);

    /**
     * More ice in stock.
     *
     * @param massKg so much more [kg], > 0, at most 100 t, in steps of half a kilogram
     */
    record MoreIce(double massKg) implements PlanAdvice {

        /**
         * Checks the mass.
         *
         * @param massKg so much more [kg], > 0, at most 100 t
         * @throws IllegalArgumentException if it is out of range
         */
        public MoreIce {
            if (!(massKg > 0 && massKg <= IceStock.MOST_KG)) {
                throw new IllegalArgumentException("more ice " + massKg + " kg: expected more than 0 and at most "
                        + (int) IceStock.MOST_KG + " kg");
            }
        }

        @Override
        public Phrase phrase() {
            return Phrase.of(Sentence.ADVICE_MORE_ICE, new Argument.Mass(massKg));
        }

        @Override
        public PlanRequest appliedTo(PlanRequest request) {
            RequestDraft draft = new RequestDraft(request);
            draft.ice = draft.ice.map(this::added);
            return draft.build();
        }

        private IceStock added(IceStock ice) {
            OptionalDouble cap = ice.capKg().isPresent()
                    ? OptionalDouble.of(ice.capKg().getAsDouble() + massKg)
                    : OptionalDouble.empty();
            return new IceStock(ice.kgAtStart() + massKg, ice.kgPerHour(), cap);
        }
    }

    /**
     * Begin earlier, everything else at its time.
     *
     * @param by so much earlier, > 0, at most a day, in steps of five minutes
     */
    record EarlierStart(Duration by) implements PlanAdvice {

        /**
         * Checks the time.
         *
         * @param by so much earlier, > 0, at most a day
         * @throws IllegalArgumentException if it is out of range
         */
        public EarlierStart {
            PlanRequest.requireShift("start earlier by", by);
        }

        @Override
        public Phrase phrase() {
            return Phrase.of(Sentence.ADVICE_EARLIER_START, new Argument.Span(by));
        }

        @Override
        public PlanRequest appliedTo(PlanRequest request) {
            RequestDraft draft = new RequestDraft(request);
            draft.startsAt = draft.startsAt.minus(by);
            return draft.build();
        }
    }

    /**
     * More gear like one that is there.
     *
     * @param likeGearId id of the gear that is there
     * @param count so many more, ≥ 1
     */
    record MoreGear(String likeGearId, int count) implements PlanAdvice {

        /**
         * Checks the number.
         *
         * @param likeGearId id of the gear that is there
         * @param count so many more, ≥ 1
         * @throws IllegalArgumentException if there is none more
         */
        public MoreGear {
            if (count < 1) {
                throw new IllegalArgumentException(
                        "more gear like " + likeGearId + " " + count + ": expected at least 1");
            }
        }

        @Override
        public Phrase phrase() {
            return count == 1
                    ? Phrase.of(Sentence.ADVICE_ONE_MORE_GEAR, new Argument.Where(likeGearId))
                    : Phrase.of(Sentence.ADVICE_MORE_GEAR, new Argument.Count(count), new Argument.Where(likeGearId));
        }

        @Override
        public PlanRequest appliedTo(PlanRequest request) {
            RequestDraft draft = new RequestDraft(request);
            Gear like = draft.gear.get(likeGearId);
            if (like == null) {
                throw new IllegalArgumentException(
                        "more gear like " + likeGearId + ": expected one of " + draft.gear.keySet());
            }
            for (int i = 1; i <= count; i++) {
                String id = likeGearId + " more " + i;
                draft.gear.put(
                        id,
                        new Gear(id, like.name(), like.kind(), like.surroundings(), like.capacity(), like.windows()));
            }
            return draft.build();
        }
    }

    /**
     * Wider ranges.
     *
     * @param bottles the bottles with their wider ranges, at least one
     */
    record WiderRange(List<Widened> bottles) implements PlanAdvice {

        /**
         * Copies the list.
         *
         * @param bottles the bottles with their wider ranges, at least one; not modified
         * @throws IllegalArgumentException if there is none
         */
        public WiderRange {
            bottles = List.copyOf(bottles);
            if (bottles.isEmpty()) {
                throw new IllegalArgumentException("wider ranges of no bottles: expected one at least");
            }
        }

        @Override
        public Phrase phrase() {
            List<Phrase> each = new ArrayList<>();
            bottles.forEach(bottle -> each.add(bottle.phrase()));
            return Phrase.joined(each);
        }

        @Override
        public PlanRequest appliedTo(PlanRequest request) {
            RequestDraft draft = new RequestDraft(request);
            for (Widened bottle : bottles) {
                draft.changing(List.of(bottle.bottleId()), order -> order.aimedAt(bottle.appliedTo(order.target())));
            }
            return draft.build();
        }
    }

    /**
     * A bottle with a wider range.
     *
     * @param bottleId the bottle
     * @param fromK the end of its range that is moved, as it was [K], > 0
     * @param toK the same end moved, in steps of half a kelvin [K], > 0
     */
    record Widened(String bottleId, double fromK, double toK) {

        /**
         * Checks the temperatures.
         *
         * @param bottleId the bottle
         * @param fromK the end of its range that is moved, as it was [K], > 0
         * @param toK the same end moved [K], > 0
         * @throws IllegalArgumentException if one of them is no temperature, or both are the same
         */
        public Widened {
            boolean finite = Double.isFinite(fromK) && Double.isFinite(toK);
            if (!finite || fromK <= 0 || toK <= 0 || Double.compare(fromK, toK) == 0) {
                throw new IllegalArgumentException("range of " + bottleId + " moved from " + fromK + " K to " + toK
                        + " K: expected two temperatures that differ");
            }
        }

        /** A range of one's own with the old aim. */
        private ServingTarget appliedTo(ServingTarget target) {
            RangePolicy range = new RangePolicy.OwnRange(Math.min(target.lowK(), toK), Math.max(target.highK(), toK));
            return Targets.of(target.style(), range).withAim(kelvins(target.aimK()));
        }

        Phrase phrase() {
            return Phrase.of(
                    toK > fromK ? Sentence.ADVICE_SERVE_WARMER : Sentence.ADVICE_SERVE_COLDER,
                    new Argument.Bottles(List.of(bottleId)),
                    new Argument.Temperature(toK),
                    new Argument.Temperature(fromK));
        }
    }

    /**
     * Serve some bottles later.
     *
     * @param bottleIds the bottles, at least one
     * @param by so much later, > 0, at most a day, in steps of five minutes
     */
    record LaterServing(List<String> bottleIds, Duration by) implements PlanAdvice {

        /**
         * Copies the ids.
         *
         * @param bottleIds the bottles, at least one; not modified
         * @param by so much later, > 0, at most a day
         * @throws IllegalArgumentException if there is no bottle or the time is out of range
         */
        public LaterServing {
            bottleIds = List.copyOf(bottleIds);
            if (bottleIds.isEmpty()) {
                throw new IllegalArgumentException("no bottles served later: expected one at least");
            }
            PlanRequest.requireShift("served later by", by);
        }

        @Override
        public Phrase phrase() {
            return Phrase.of(Sentence.ADVICE_SERVE_LATER, new Argument.Bottles(bottleIds), new Argument.Span(by));
        }

        @Override
        public PlanRequest appliedTo(PlanRequest request) {
            return new RequestDraft(request)
                    .changing(bottleIds, order -> order.shifted(by))
                    .build();
        }
    }
}
