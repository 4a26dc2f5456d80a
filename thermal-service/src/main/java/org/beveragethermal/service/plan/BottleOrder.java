/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.service.airing.Airing;
import org.beveragethermal.service.target.ServingTarget;

/**
 * One bottle that is to be served. Moments and times are cut to milliseconds.
 *
 * @param id its id, not blank
 * @param name what people call it
 * @param bottle the bottle with its contents at their temperature at the start of the plan
 * @param startsIn id of the place or gear where it is at the start
 * @param bottlePlaces how many places it takes in gear, ≥ 1
 * @param target the range it is to be served in and the aim inside it
 * @param servedAt when it is poured first
 * @param servedIn id of the place where it is served
 * @param finishedAfter how long it is drunk, > 0, at most a day
 * @param pourings the rounds of glasses, in order of time, from when it is served to when it is finished; none if they are not
 *     known: then it is to be in range all the time
 * @param airing how it is decanted, or opened to stand, before it is served, if it is
 */
public record BottleOrder(
        String id,
        String name,
        FilledVessel bottle,
        String startsIn,
        int bottlePlaces,
        ServingTarget target,
        Instant servedAt,
        String servedIn,
        Duration finishedAfter,
        List<Pouring> pourings,
        Optional<Airing> airing) {

    private static final Duration LONGEST_DRINKING = Duration.ofHours(24);
    /** A bottle of 0.75 L gives five or six glasses (common practice, no source). */
    private static final int USUAL_GLASSES = 5;

    private static final double ROUNDING_M3 = 1e-9;

    /**
     * Checks the parts and cuts times to milliseconds.
     *
     * @param id its id, not blank
     * @param name what people call it
     * @param bottle the bottle with its contents
     * @param startsIn id of the place or gear where it is at the start
     * @param bottlePlaces places it takes in gear, ≥ 1
     * @param target range and aim
     * @param servedAt when it is poured first
     * @param servedIn id of the place where it is served
     * @param finishedAfter how long it is drunk, > 0, at most a day
     * @param pourings the rounds of glasses, not modified
     * @param airing how it is decanted
     * @throws IllegalArgumentException if a condition is broken
     */
    public BottleOrder {
        PlanRequest.requireId(id);
        Objects.requireNonNull(bottle, "bottle");
        Objects.requireNonNull(target, "target");
        servedAt = servedAt.truncatedTo(ChronoUnit.MILLIS);
        finishedAfter = finishedAfter.truncatedTo(ChronoUnit.MILLIS);
        Objects.requireNonNull(airing, "airing");
        if (bottlePlaces < 1) {
            throw new IllegalArgumentException("bottle places of " + id + " " + bottlePlaces + ": expected at least 1");
        }
        if (finishedAfter.isNegative() || finishedAfter.isZero() || finishedAfter.compareTo(LONGEST_DRINKING) > 0) {
            throw new IllegalArgumentException(
                    "drinking time of " + id + " " + finishedAfter + ": expected more than nothing and at most a day");
        }
        pourings = List.copyOf(pourings);
        requirePourings(id, bottle, servedAt, servedAt.plus(finishedAfter), pourings);
    }

    private static void requirePourings(
            String id, FilledVessel bottle, Instant from, Instant to, List<Pouring> pourings) {
        double volumeM3 = 0;
        Instant before = from.minusNanos(1);
        for (Pouring pouring : pourings) {
            if (!pouring.at().isAfter(before) || pouring.at().isAfter(to)) {
                throw new IllegalArgumentException("pouring of " + id + " at " + pouring.at()
                        + ": expected pourings in order of time from " + from + " to " + to);
            }
            before = pouring.at();
            volumeM3 += pouring.volumeM3();
        }
        if (volumeM3 > bottle.liquidVolumeM3() + ROUNDING_M3) {
            throw new IllegalArgumentException("poured from " + id + " " + volumeM3 + " m³: expected at most the "
                    + bottle.liquidVolumeM3() + " m³ in it");
        }
    }

    /**
     * A bottle that is in range all the time while it is drunk, whenever glasses are poured, and is not given air.
     *
     * @param id its id, not blank
     * @param name what people call it
     * @param bottle the bottle with its contents
     * @param startsIn id of the place or gear where it is at the start
     * @param bottlePlaces places it takes in gear, ≥ 1
     * @param target range and aim
     * @param servedAt when it is poured first
     * @param servedIn id of the place where it is served
     * @param finishedAfter how long it is drunk, > 0, at most a day
     * @throws IllegalArgumentException if a condition is broken
     */
    public BottleOrder(
            String id,
            String name,
            FilledVessel bottle,
            String startsIn,
            int bottlePlaces,
            ServingTarget target,
            Instant servedAt,
            String servedIn,
            Duration finishedAfter) {
        this(
                id,
                name,
                bottle,
                startsIn,
                bottlePlaces,
                target,
                servedAt,
                servedIn,
                finishedAfter,
                List.of(),
                Optional.empty());
    }

    /**
     * The same bottle poured in rounds.
     *
     * @param newPourings rounds of glasses, in order of time, none before it is served or after it is finished
     * @return a new order
     * @throws IllegalArgumentException if they are out of order, outside that time, or more than there is
     */
    public BottleOrder poured(List<Pouring> newPourings) {
        return with(bottle, startsIn, target, servedAt, newPourings, airing);
    }

    /**
     * The same bottle decanted, or opened to stand.
     *
     * @param newAiring how
     * @return a new order
     */
    public BottleOrder aired(Airing newAiring) {
        return with(bottle, startsIn, target, servedAt, pourings, Optional.of(newAiring));
    }

    /**
     * The same bottle served at another time, its rounds with it.
     *
     * @param by how much later, negative for earlier
     * @return a new order
     */
    BottleOrder shifted(Duration by) {
        return with(
                bottle,
                startsIn,
                target,
                servedAt.plus(by),
                pourings.stream()
                        .map(pouring -> new Pouring(pouring.at().plus(by), pouring.volumeM3()))
                        .toList(),
                airing);
    }

    /** The same order with another range. */
    BottleOrder aimedAt(ServingTarget newTarget) {
        return with(bottle, startsIn, newTarget, servedAt, pourings, airing);
    }

    /** What it is decanted into with all of it there, as warm as the bottle; empty if it is not decanted. */
    Optional<FilledVessel> carafe() {
        return airing.filter(Airing::decanted)
                .map(airs -> airs.vesselFor(bottle, SiValues.celsiusOf(bottle.temperatureK())));
    }

    /** The same order with a bottle that stands elsewhere. */
    BottleOrder standing(FilledVessel newBottle, String newStart) {
        return with(newBottle, newStart, target, servedAt, pourings, airing);
    }

    private BottleOrder with(
            FilledVessel newBottle,
            String newStart,
            ServingTarget newTarget,
            Instant newServedAt,
            List<Pouring> newPourings,
            Optional<Airing> newAiring) {
        return new BottleOrder(
                id,
                name,
                newBottle,
                newStart,
                bottlePlaces,
                newTarget,
                newServedAt,
                servedIn,
                finishedAfter,
                newPourings,
                newAiring);
    }

    /**
     * Moments at which its temperature counts: the pourings, or if there are none five moments from when it is served to when it is
     * finished, both included, at equal distances.
     *
     * @return the moments, in order of time
     */
    public List<Instant> pourTimes() {
        if (!pourings.isEmpty()) {
            return pourings.stream().map(Pouring::at).toList();
        }
        List<Instant> times = new ArrayList<>();
        for (int i = 0; i < USUAL_GLASSES; i++) {
            times.add(servedAt.plus(finishedAfter.multipliedBy(i).dividedBy(USUAL_GLASSES - 1))
                    .truncatedTo(ChronoUnit.MILLIS));
        }
        return times;
    }

    /** When it must be as wanted: when it is decanted or opened to stand, or served at once. */
    Instant readyAt() {
        return servedAt.minus(airing.map(Airing::before).orElse(Duration.ZERO));
    }

    /**
     * When it is finished.
     *
     * @return the moment of the last glass
     */
    public Instant finishedAt() {
        return servedAt.plus(finishedAfter);
    }
}
