/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.ServingTarget;
import org.beveragethermal.service.target.Targets;

/**
 * An evening of service: places, gear, drinks and what is served when. Immutable. Comes from {@link ScenarioReader},
 * which has checked that identifiers are unique, references lead somewhere, nothing is served before the start, bottles
 * suffice, and refrigerators hold what is in them at the start.
 */
public final class Scenario {
    private final ScenarioHeader header;
    private final List<Place> places;
    private final ScenarioGear gear;
    private final List<Drink> drinks;
    private final List<Sitting> sittings;

    Scenario(ScenarioHeader header, List<Place> places, ScenarioGear gear, List<Drink> drinks, List<Sitting> sittings) {
        this.header = header;
        this.places = places;
        this.gear = gear;
        this.drinks = drinks;
        this.sittings = sittings;
    }

    /**
     * What the scenario is called.
     *
     * @return the title, one line
     */
    public String title() {
        return header.title();
    }

    /**
     * Where the scenario comes from.
     *
     * @return the note, one line
     */
    public String note() {
        return header.note();
    }

    /**
     * When everything stands as described; nothing can be done earlier.
     *
     * @return the start
     */
    public Instant startsAt() {
        return header.startsAt();
    }

    /**
     * In which zone times are told.
     *
     * @return the zone
     */
    public ZoneId zone() {
        return header.zone();
    }

    /**
     * How ranges of several sources become one, for drinks without a range of their own.
     *
     * @return the policy
     */
    public RangePolicy rangePolicy() {
        return header.rangePolicy();
    }

    /**
     * Rooms and other places.
     *
     * @return unmodifiable list in the order of the file, not empty
     */
    public List<Place> places() {
        return places;
    }

    /**
     * Refrigerators.
     *
     * @return unmodifiable list in the order of the file; may be empty
     */
    public List<Refrigerator> refrigerators() {
        return gear.refrigerators();
    }

    /**
     * Buckets.
     *
     * @return unmodifiable list in the order of the file; may be empty
     */
    public List<Bucket> buckets() {
        return gear.buckets();
    }

    /**
     * The ice at hand.
     *
     * @return the stock; present if any bucket is for ice
     */
    public Optional<IceStock> iceStock() {
        return gear.iceStock();
    }

    /**
     * Temperature of the water that baths are filled with.
     *
     * @return the temperature [K], 0 °C to 60 °C; present if there is any bucket
     */
    public OptionalDouble fillingWaterTemperatureK() {
        return gear.fillingWaterTemperatureK();
    }

    /**
     * Drinks.
     *
     * @return unmodifiable list in the order of the file, not empty
     */
    public List<Drink> drinks() {
        return drinks;
    }

    /**
     * Sittings.
     *
     * @return unmodifiable list in the order of the file, not empty
     */
    public List<Sitting> sittings() {
        return sittings;
    }

    /**
     * What is served in all sittings.
     *
     * @return unmodifiable list in order of time, and in the order of the file at the same time
     */
    public List<Serving> servings() {
        return sittings.stream()
                .flatMap(sitting -> sitting.servings().stream())
                .sorted(Comparator.comparing(Serving::servedAt))
                .toList();
    }

    /**
     * The place with an identifier.
     *
     * @param id the identifier
     * @return the place
     * @throws IllegalArgumentException if there is none
     */
    public Place place(String id) {
        return places.stream()
                .filter(place -> place.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("unknown place " + OneLine.quoted(id)));
    }

    /**
     * The drink with an identifier.
     *
     * @param id the identifier
     * @return the drink
     * @throws IllegalArgumentException if there is none
     */
    public Drink drink(String id) {
        return drinks.stream()
                .filter(drink -> drink.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("unknown drink " + OneLine.quoted(id)));
    }

    /**
     * What a drink is to be served at: its own range if it has one, and by the scenario's policy otherwise.
     *
     * @param drink the drink
     * @return the target
     * @throws IllegalArgumentException if the drink is not one of this scenario and the policy cannot be applied to it
     */
    public ServingTarget targetOf(Drink drink) {
        RangePolicy policy = drink.ownRange().map(RangePolicy.class::cast).orElse(rangePolicy());
        return Targets.of(drink.style(), policy);
    }
}
