/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.service.airing.Airing;
import org.beveragethermal.service.caution.Jurisdiction;

/**
 * What is at hand and what is wanted. Immutable.
 */
public final class PlanRequest {

    private static final Duration LONGEST = Duration.ofDays(7);
    private static final Duration SHORTEST = Duration.ofMinutes(1);

    private final Instant startsAt;
    private final Instant weatherSince;
    private final Map<String, Place> places;
    private final Map<String, Gear> gear;
    private final List<BottleOrder> bottles;
    private final Optional<IceStock> ice;
    private final OptionalInt movesPerMinute;
    private final Jurisdiction jurisdiction;
    private final Map<String, Double> filledIceKg;

    private PlanRequest(Builder builder) {
        this.startsAt = builder.startsAt;
        this.weatherSince = builder.weatherSince;
        this.places = new LinkedHashMap<>(builder.places);
        this.gear = new LinkedHashMap<>(builder.gear);
        this.bottles = List.copyOf(builder.bottles);
        this.ice = builder.ice;
        this.movesPerMinute = builder.movesPerMinute;
        this.jurisdiction = builder.jurisdiction;
        this.filledIceKg = Map.copyOf(builder.filledIceKg);
    }

    /**
     * Begins a request.
     *
     * @param startsAt when planning begins, cut to milliseconds; nothing is done before
     * @return an empty builder
     */
    public static Builder startingAt(Instant startsAt) {
        return new Builder(startsAt);
    }

    /** Collects a request; each part is checked when it is added. */
    public static final class Builder {

        private final Instant startsAt;
        private Instant weatherSince;
        private final Map<String, Place> places = new LinkedHashMap<>();
        private final Map<String, Gear> gear = new LinkedHashMap<>();
        private final List<BottleOrder> bottles = new ArrayList<>();
        private final Set<String> ids = new HashSet<>();
        private Optional<IceStock> ice = Optional.empty();
        private OptionalInt movesPerMinute = OptionalInt.empty();
        private Jurisdiction jurisdiction = Jurisdiction.EUROPEAN_UNION;
        private final Map<String, Double> filledIceKg = new LinkedHashMap<>();

        private Builder(Instant startsAt) {
            this.startsAt = startsAt.truncatedTo(ChronoUnit.MILLIS);
            this.weatherSince = this.startsAt;
        }

        /**
         * The moment from which places and gear count the times of what varies; the start of the plan unless said otherwise. A plan
         * that starts before it has the weather of that moment until then.
         *
         * @param origin the moment, cut to milliseconds
         * @return this builder
         */
        public Builder weatherSince(Instant origin) {
            weatherSince = origin.truncatedTo(ChronoUnit.MILLIS);
            return this;
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
         * @param bottle its id not used before; it starts in a known place or in gear that is there at the start (a bath is
         *     filled then), is aired and served in known places, decanted or opened after the start of the plan and finished within seven days
         * @return this builder
         * @throws IllegalArgumentException if a condition is broken
         */
        public Builder bottle(BottleOrder bottle) {
            Gear start = gear.get(bottle.startsIn());
            if (start == null && !places.containsKey(bottle.startsIn())) {
                throw new IllegalArgumentException("bottle " + bottle.id() + " starts in " + bottle.startsIn()
                        + ": expected one of " + places.keySet() + " and " + gear.keySet());
            }
            if (start != null && !start.isThere(startsAt, startsAt.plus(SHORTEST))) {
                throw new IllegalArgumentException("bottle " + bottle.id() + " starts in " + bottle.startsIn()
                        + ", which is there " + start.windows() + ": expected gear that is there at " + startsAt);
            }
            if (!places.containsKey(bottle.servedIn())) {
                throw new IllegalArgumentException("bottle " + bottle.id() + " served in " + bottle.servedIn()
                        + ": expected one of " + places.keySet());
            }
            if (!bottle.servedAt().isAfter(startsAt)) {
                throw new IllegalArgumentException("bottle " + bottle.id() + " served at " + bottle.servedAt()
                        + ": expected a time after the start " + startsAt);
            }
            requireAiring(bottle);
            if (Duration.between(startsAt, bottle.finishedAt()).compareTo(LONGEST) > 0) {
                throw new IllegalArgumentException("bottle " + bottle.id() + " finished at " + bottle.finishedAt()
                        + ": expected within seven days");
            }
            requireNew(bottle.id());
            bottles.add(bottle);
            return this;
        }

        /**
         * Ice at hand for all baths together. Unless it is said each bath's own ice is at hand.
         *
         * @param stock the stock
         * @return this builder
         */
        public Builder ice(IceStock stock) {
            ice = Optional.of(stock);
            return this;
        }

        /**
         * A bath that is filled already when the plan starts, as it is described: it is not filled again, and its ice does not come out
         * of the stock.
         *
         * @param gearId id of a bath that was added before
         * @return this builder
         * @throws IllegalArgumentException if there is no such bath
         */
        public Builder filled(String gearId) {
            Gear bath = gear.get(gearId);
            if (bath == null || !bath.kind().isFilled()) {
                throw new IllegalArgumentException(
                        "bath " + gearId + " filled at the start: expected a bath of " + gear.keySet());
            }
            return filled(gearId, bath.surroundings() instanceof IceWaterBath ice ? ice.iceKg() : 0);
        }

        /** The same for a bath that was filled with more ice than is in it now [kg]. */
        Builder filled(String gearId, double iceKg) {
            filledIceKg.put(gearId, iceKg);
            return this;
        }

        /**
         * How many bottles can be put somewhere in a minute; any number unless said otherwise. Serving does not count.
         *
         * @param newMovesPerMinute moves per minute, ≥ 1
         * @return this builder
         * @throws IllegalArgumentException if the number is below 1
         */
        public Builder hands(int newMovesPerMinute) {
            if (newMovesPerMinute < 1) {
                throw new IllegalArgumentException("moves per minute " + newMovesPerMinute + ": expected at least 1");
            }
            movesPerMinute = OptionalInt.of(newMovesPerMinute);
            return this;
        }

        /**
         * Whose limits hold for drinks that spoil: no bottle goes a way on which they are overstepped. Time is counted from the start of
         * the plan; what was out before has less left than the plan knows. Unless it is said, the European Union, which states no figure.
         *
         * @param newJurisdiction the jurisdiction; local codes go before it
         * @return this builder
         */
        public Builder jurisdiction(Jurisdiction newJurisdiction) {
            jurisdiction = Objects.requireNonNull(newJurisdiction, "jurisdiction");
            return this;
        }

        /**
         * Makes the request.
         *
         * @return the request
         * @throws IllegalStateException if there is no bottle
         * @throws IllegalArgumentException if more bottles start in gear than it holds
         */
        public PlanRequest build() {
            if (bottles.isEmpty()) {
                throw new IllegalStateException("a plan needs at least one bottle: call bottle(…)");
            }
            requireRoomAtStart();
            return new PlanRequest(this);
        }

        private void requireNew(String id) {
            if (!ids.add(id)) {
                throw new IllegalArgumentException("id " + id + ": already in use");
            }
        }

        private void requireAiring(BottleOrder bottle) {
            if (bottle.airing().isEmpty()) {
                return;
            }
            Airing airing = bottle.airing().get();
            if (!places.containsKey(airing.placeId())) {
                throw new IllegalArgumentException("bottle " + bottle.id() + " aired in " + airing.placeId()
                        + ": expected one of " + places.keySet());
            }
            Instant decanted = bottle.readyAt();
            if (!decanted.isAfter(startsAt)) {
                throw new IllegalArgumentException("bottle " + bottle.id() + " decanted or opened at " + decanted
                        + ": expected a time after the start " + startsAt);
            }
        }

        /** What stands in gear at the start must fit into it. */
        private void requireRoomAtStart() {
            for (Gear item : gear.values()) {
                int places = bottles.stream()
                        .filter(bottle -> bottle.startsIn().equals(item.id()))
                        .mapToInt(BottleOrder::bottlePlaces)
                        .sum();
                if (places > item.capacity()) {
                    throw new IllegalArgumentException("bottles that start in " + item.id() + " take " + places
                            + " places: expected at most its " + item.capacity());
                }
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
     * The moment from which places and gear count the times of what varies.
     *
     * @return the moment; the start unless said otherwise
     */
    public Instant weatherSince() {
        return weatherSince;
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

    /**
     * Ice at hand for all baths together.
     *
     * @return the stock; empty if each bath's own ice is at hand
     */
    public Optional<IceStock> ice() {
        return ice;
    }

    /**
     * How many bottles can be put somewhere in a minute.
     *
     * @return moves per minute; empty if any number
     */
    public OptionalInt movesPerMinute() {
        return movesPerMinute;
    }

    /**
     * Whose limits hold for drinks that spoil.
     *
     * @return the jurisdiction
     */
    public Jurisdiction jurisdiction() {
        return jurisdiction;
    }

    /**
     * Baths that are filled already when the plan starts.
     *
     * @return their ids, unmodifiable
     */
    public Set<String> filled() {
        return filledIceKg.keySet();
    }

    /** Ice that a bath is filled with, or was when it was filled [kg]; 0 for other gear. */
    double fullIceKg(String gearId) {
        Gear item = gear.get(gearId);
        double now = item != null && item.surroundings() instanceof IceWaterBath bath ? bath.iceKg() : 0;
        return filledIceKg.getOrDefault(gearId, now);
    }

    /** A time that something is put off or brought forward by: more than nothing, at most a day. */
    static void requireShift(String what, Duration by) {
        if (by.isNegative() || by.isZero() || by.compareTo(News.LONGEST_SHIFT) > 0) {
            throw new IllegalArgumentException(what + " " + by + ": expected more than nothing and at most a day");
        }
    }

    static void requireId(String id) {
        if (id.isBlank()) {
            throw new IllegalArgumentException("id '" + id + "': expected one that is not blank");
        }
    }
}
