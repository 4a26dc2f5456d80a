/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What is at hand and what is wanted. Immutable.
 */
public final class PlanRequest {

    private static final Duration LONGEST = Duration.ofDays(7);

    private final Instant startsAt;
    private final Map<String, Place> places;
    private final Map<String, Gear> gear;
    private final List<BottleOrder> bottles;

    private PlanRequest(Builder builder) {
        this.startsAt = builder.startsAt;
        this.places = new LinkedHashMap<>(builder.places);
        this.gear = new LinkedHashMap<>(builder.gear);
        this.bottles = List.copyOf(builder.bottles);
    }

    /**
     * Begins a request.
     *
     * @param startsAt when planning begins; nothing is done before
     * @return an empty builder
     */
    public static Builder startingAt(Instant startsAt) {
        return new Builder(startsAt);
    }

    /** Collects a request; each part is checked when it is added. */
    public static final class Builder {

        private final Instant startsAt;
        private final Map<String, Place> places = new LinkedHashMap<>();
        private final Map<String, Gear> gear = new LinkedHashMap<>();
        private final List<BottleOrder> bottles = new ArrayList<>();

        private Builder(Instant startsAt) {
            this.startsAt = Objects.requireNonNull(startsAt, "startsAt");
        }

        /**
         * Adds a place.
         *
         * @param place its id not used before
         * @return this builder
         * @throws IllegalArgumentException if the id is in use
         */
        public Builder place(Place place) {
            requireNew(place.id());
            places.put(place.id(), place);
            return this;
        }

        /**
         * Adds a piece of gear.
         *
         * @param item its id not used before
         * @return this builder
         * @throws IllegalArgumentException if the id is in use
         */
        public Builder gear(Gear item) {
            requireNew(item.id());
            gear.put(item.id(), item);
            return this;
        }

        /**
         * Adds a bottle.
         *
         * @param bottle its id not used before; it starts in a known place or refrigerator and is served in a known place,
         *     after the start of the plan and within seven days
         * @return this builder
         * @throws IllegalArgumentException if a condition is broken
         */
        public Builder bottle(BottleOrder bottle) {
            requireNew(bottle.id());
            Gear start = gear.get(bottle.startsIn());
            if (start == null
                    ? !places.containsKey(bottle.startsIn())
                    : start.kind().isFilled()) {
                throw new IllegalArgumentException("bottle " + bottle.id() + " starts in " + bottle.startsIn()
                        + ": expected a place or a refrigerator of " + places.keySet() + " and " + gear.keySet());
            }
            if (!places.containsKey(bottle.servedIn())) {
                throw new IllegalArgumentException("bottle " + bottle.id() + " served in " + bottle.servedIn()
                        + ": expected one of " + places.keySet());
            }
            if (!bottle.servedAt().isAfter(startsAt)) {
                throw new IllegalArgumentException("bottle " + bottle.id() + " served at " + bottle.servedAt()
                        + ": expected a time after the start " + startsAt);
            }
            if (Duration.between(startsAt, bottle.finishedAt()).compareTo(LONGEST) > 0) {
                throw new IllegalArgumentException("bottle " + bottle.id() + " finished at " + bottle.finishedAt()
                        + ": expected within seven days");
            }
            bottles.add(bottle);
            return this;
        }

        /**
         * Makes the request.
         *
         * @return the request
         * @throws IllegalStateException if there is no bottle
         */
        public PlanRequest build() {
            if (bottles.isEmpty()) {
                throw new IllegalStateException("a plan needs at least one bottle: call bottle(…)");
            }
            return new PlanRequest(this);
        }

        private void requireNew(String id) {
            if (places.containsKey(id)
                    || gear.containsKey(id)
                    || bottles.stream().anyMatch(b -> b.id().equals(id))) {
                throw new IllegalArgumentException("id " + id + ": already in use");
            }
        }
    }

    /**
     * When planning begins.
     *
     * @return the start
     */
    public Instant startsAt() {
        return startsAt;
    }

    /**
     * The places.
     *
     * @return places by id, in the order given, a copy
     */
    public Map<String, Place> places() {
        return new LinkedHashMap<>(places);
    }

    /**
     * The gear.
     *
     * @return gear by id, in the order given, a copy
     */
    public Map<String, Gear> gear() {
        return new LinkedHashMap<>(gear);
    }

    /**
     * The bottles.
     *
     * @return bottles in the order given
     */
    public List<BottleOrder> bottles() {
        return bottles;
    }

    static void requireId(String id) {
        if (id.isBlank()) {
            throw new IllegalArgumentException("id '" + id + "': expected one that is not blank");
        }
    }
}
