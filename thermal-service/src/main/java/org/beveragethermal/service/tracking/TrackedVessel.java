/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Instant;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.service.tracking.TrackingEvent.Goal;
import org.beveragethermal.service.tracking.TrackingEvent.Reading;
import org.jspecify.annotations.Nullable;

/**
 * One vessel as it is tracked: what is believed of it, the latest events, what is wanted, and what has been said. Immutable; {@link
 * Tracker#apply} makes the next one.
 *
 * <p>It keeps two beliefs, one from before the kept events and one from after them. An event that comes late is put between those kept,
 * and the later belief is made anew from the earlier one, so that the order of arrival does not matter.
 */
public final class TrackedVessel {

    private static final double LEAST_LEVEL = 0.5;
    private static final double MOST_LEVEL = 0.999;

    final String id;
    final TrackedModel model;
    final TrackingRules rules;
    /** Before the kept events. */
    final Belief base;
    /** After the kept events. */
    final Belief head;

    final Kept kept;
    /** Whether events have been folded into the base. */
    final boolean folded;

    final long placedIdHash;
    final Said said;

    /**
     * What does not bear on the estimate.
     *
     * @param goal what is wanted, if that is known
     * @param goalMicros when it was ordered
     * @param goalIdHash by which event
     * @param openedMicros when it was opened; the largest number if it was not
     * @param nowMicros the latest time heard of
     * @param refusedMicros time of the latest reading that was none
     * @param refusedInRow how many such in a row
     * @param told bits of alerts and instructions that stand
     * @param toldChangeMicros time of the latest change that was told
     * @param clocked whether it was ever told that time passed
     * @param aside the latest reading if it came from too far ahead to be used
     */
    record Said(
            @Nullable Goal goal,
            long goalMicros,
            long goalIdHash,
            long openedMicros,
            long nowMicros,
            long refusedMicros,
            int refusedInRow,
            int told,
            long toldChangeMicros,
            boolean clocked,
            @Nullable Reading aside) {

        static Said nothing(long nowMicros) {
            return new Said(
                    null,
                    Long.MIN_VALUE,
                    0,
                    Long.MAX_VALUE,
                    nowMicros,
                    Long.MIN_VALUE,
                    0,
                    0,
                    Long.MIN_VALUE,
                    false,
                    null);
        }

        Said ordered(Goal newGoal, long micros, long idHash) {
            return new Said(
                    newGoal,
                    micros,
                    idHash,
                    openedMicros,
                    nowMicros,
                    refusedMicros,
                    refusedInRow,
                    told,
                    toldChangeMicros,
                    clocked,
                    aside);
        }

        Said opened(long micros) {
            return new Said(
                    goal,
                    goalMicros,
                    goalIdHash,
                    Math.min(openedMicros, micros),
                    nowMicros,
                    refusedMicros,
                    refusedInRow,
                    told,
                    toldChangeMicros,
                    clocked,
                    aside);
        }

        /** News from a time; a reading that is still aside then came from a wrong clock. */
        Said now(long micros) {
            return heard(Math.max(nowMicros, micros), clocked, null);
        }

        Said toldTheTime() {
            return heard(nowMicros, true, aside);
        }

        Said aside(Reading reading) {
            return heard(nowMicros, clocked, reading);
        }

        private Said heard(long micros, boolean everClocked, @Nullable Reading held) {
            return new Said(
                    goal,
                    goalMicros,
                    goalIdHash,
                    openedMicros,
                    micros,
                    refusedMicros,
                    refusedInRow,
                    told,
                    toldChangeMicros,
                    everClocked,
                    held);
        }

        Said refused(long micros, int inRow) {
            return new Said(
                    goal,
                    goalMicros,
                    goalIdHash,
                    openedMicros,
                    nowMicros,
                    micros,
                    inRow,
                    told,
                    toldChangeMicros,
                    clocked,
                    aside);
        }

        Said told(int bits, long changeMicros) {
            return new Said(
                    goal,
                    goalMicros,
                    goalIdHash,
                    openedMicros,
                    nowMicros,
                    refusedMicros,
                    refusedInRow,
                    bits,
                    changeMicros,
                    clocked,
                    aside);
        }
    }

    TrackedVessel(
            String id,
            TrackedModel model,
            TrackingRules rules,
            Belief base,
            Belief head,
            Kept kept,
            boolean folded,
            long placedIdHash,
            Said said) {
        this.id = id;
        this.model = model;
        this.rules = rules;
        this.base = base;
        this.head = head;
        this.kept = kept;
        this.folded = folded;
        this.placedIdHash = placedIdHash;
        this.said = said;
    }

    TrackedVessel with(Said newSaid) {
        return new TrackedVessel(id, model, rules, base, head, kept, folded, placedIdHash, newSaid);
    }

    /**
     * Id.
     *
     * @return id, as in events
     */
    public String id() {
        return id;
    }

    /**
     * Kind of vessel.
     *
     * @return the model
     */
    public TrackedModel model() {
        return model;
    }

    /**
     * What is wanted.
     *
     * @return the latest order; empty if there is none
     */
    public Optional<Goal> goal() {
        return Optional.ofNullable(said.goal());
    }

    /**
     * Whether tracking has ended.
     *
     * @return true after {@link TrackingEvent.Finished}
     */
    public boolean isFinished() {
        return head.finished;
    }

    /**
     * Whether it has been opened.
     *
     * @return true after {@link TrackingEvent.Opened}
     */
    public boolean isOpened() {
        return said.openedMicros() != Long.MAX_VALUE;
    }

    /**
     * The latest time heard of. A reading that is held aside as too far ahead does not count.
     *
     * @return instant
     */
    public Instant now() {
        return Checks.instant(said.nowMicros());
    }

    /**
     * What is believed at the latest time heard of.
     *
     * @return the estimate
     */
    public Estimate estimate() {
        return estimate(believedAt(said.nowMicros()));
    }

    /**
     * What is believed of a later time, if nothing happens.
     *
     * @param at when; a time before the latest event gives the estimate of that event
     * @return the estimate
     * @throws IllegalArgumentException if the time is not within 1900 to 2200
     */
    public Estimate estimateAt(Instant at) {
        return estimate(believedAt(Checks.micros(Checks.time(at, "estimate"))));
    }

    /**
     * When it will be at a temperature, asked at the latest time heard of.
     *
     * @param target temperature
     * @return with a central interval of 90 %, or never
     * @throws IllegalArgumentException if it is outside 150 to 500 K
     */
    public Arrival timeTo(Quantity<Temperature> target) {
        return timeTo(SiValues.temperatureK(target, "temperature to be reached"), now(), 0.9);
    }

    /**
     * When it will be at a temperature if it stays where it is.
     *
     * @param targetK temperature [K], 150 to 500
     * @param asked from when; a time before the latest event counts as that of the event
     * @param level probability of the central interval [-], 0.5 to 0.999
     * @return with an interval, or never
     * @throws IllegalArgumentException if a figure is outside its range
     */
    public Arrival timeTo(double targetK, Instant asked, double level) {
        Checks.within(targetK, Checks.COLDEST_K, Checks.WARMEST_K, "temperature to be reached", "K");
        Checks.within(level, LEAST_LEVEL, MOST_LEVEL, "level of the interval", "1");
        return ArrivalSearch.search(model, believedAt(Checks.micros(Checks.time(asked, "question"))), targetK, level);
    }

    /** Where it is after the latest event. */
    String mediumId() {
        return model.law(head.medium).mediumId();
    }

    Belief believedAt(long micros) {
        if (micros <= head.atMicros) {
            return head;
        }
        Belief later = head.copy();
        later.predict(model, micros);
        return later;
    }

    private Estimate estimate(Belief belief) {
        return new Estimate(
                Checks.instant(belief.atMicros),
                belief.t,
                belief.sdK(),
                belief.c,
                Math.sqrt(belief.pcc),
                model.law(belief.medium).mediumId(),
                belief.believedMediumK(),
                Math.sqrt(belief.paa),
                belief.b,
                Math.sqrt(belief.pbb));
    }

    /**
     * Everything, without behaviour, for storage.
     *
     * @return snapshot; {@link TrackedSnapshot#restore} makes an equal vessel of it
     */
    public TrackedSnapshot snapshot() {
        return TrackedSnapshot.of(this);
    }

    @Override
    public String toString() {
        return "TrackedVessel[" + id + ", " + estimate() + "]";
    }
}
