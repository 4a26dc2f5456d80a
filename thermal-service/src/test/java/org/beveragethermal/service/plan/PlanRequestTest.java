/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.airing.Airing;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests: what is taken, in what order, and what is refused with which words. */
class PlanRequestTest {

    private static final Instant START = Instant.parse("2027-06-18T15:00:00Z");
    private static final Air AIR = Air.at(celsius(22));
    private static final Duration HOUR = Duration.ofHours(1);
    private static final Duration SHORT = Duration.ofMinutes(20);

    private static PlanRequest.Builder builder() {
        return PlanRequest.startingAt(START)
                .place(new Place("room", "room", AIR))
                .place(new Place("terrace", "terrace", AIR))
                .gear(refrigerator("cold", 6))
                .gear(bath());
    }

    private static Gear refrigerator(String id, int capacity) {
        return new Gear(id, id, GearKind.REFRIGERATOR, Refrigerator.at(celsius(5)), capacity);
    }

    private static Gear bath() {
        Bucket bucket = Bucket.of(millimetres(250), millimetres(330));
        return new Gear("bath", "bath", GearKind.WATER_BATH, WaterBath.of(bucket, litres(5), celsius(8), AIR), 3);
    }

    private static BottleOrder order(String id, String startsIn, String servedIn, Duration after, Duration finished) {
        return order(id, startsIn, 1, servedIn, after, finished);
    }

    private static BottleOrder order(
            String id, String startsIn, int bottlePlaces, String servedIn, Duration after, Duration finished) {
        return new BottleOrder(
                id,
                id,
                Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(18)),
                startsIn,
                bottlePlaces,
                Targets.of(Targets.style("red-full"), RangePolicy.envelope()),
                START.plus(after),
                servedIn,
                finished);
    }

    @Test
    void keepsWhatItIsGivenInOrder() {
        PlanRequest request = builder()
                .bottle(order("b", "room", "terrace", HOUR, SHORT))
                .bottle(order("a", "cold", "room", HOUR, SHORT))
                .build();
        assertThat(request.startsAt()).isEqualTo(START);
        assertThat(request.places().keySet()).containsExactly("room", "terrace");
        assertThat(request.gear().keySet()).containsExactly("cold", "bath");
        assertThat(request.bottles()).extracting(BottleOrder::id).containsExactly("b", "a");
        assertThat(request.bottles().get(0).finishedAt())
                .isEqualTo(START.plus(HOUR).plus(SHORT));
    }

    @Test
    void cannotBeChangedAfterwards() {
        PlanRequest.Builder builder = builder().bottle(order("a", "room", "room", HOUR, SHORT));
        PlanRequest request = builder.build();
        builder.bottle(order("late", "room", "room", HOUR, SHORT)).gear(refrigerator("late too", 1));
        request.places().clear();
        request.gear().clear();
        assertThat(request.bottles()).hasSize(1);
        assertThat(request.places()).hasSize(2);
        assertThat(request.gear()).hasSize(2);
    }

    @Test
    void takesTheEndsOfWhatIsAllowed() {
        Duration week = Duration.ofDays(7);
        Duration day = Duration.ofDays(1);
        assertThatNoException()
                .isThrownBy(() -> builder()
                        .bottle(order("soonest", "room", "room", Duration.ofMillis(1), Duration.ofMillis(1)))
                        .bottle(order("latest", "room", "room", week.minus(day), day)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"room", "cold", "a"})
    void anIdIsUsedOnce(String id) {
        PlanRequest.Builder builder = builder().bottle(order("a", "room", "room", HOUR, SHORT));
        String why = "id " + id + ": already in use";
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.place(new Place(id, "x", AIR)))
                .withMessage(why);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.gear(refrigerator(id, 1)))
                .withMessage(why);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.bottle(order(id, "room", "room", HOUR, SHORT)))
                .withMessage(why);
    }

    @ParameterizedTest
    @ValueSource(strings = {"nowhere", "a"})
    void aBottleStartsInAPlaceOrInGear(String startsIn) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().bottle(order("a", startsIn, "room", HOUR, SHORT)))
                .withMessageContaining("starts in " + startsIn)
                .withMessageContaining("[room, terrace]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"nowhere", "cold", "bath"})
    void aBottleIsServedInAPlace(String servedIn) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().bottle(order("a", "room", servedIn, HOUR, SHORT)))
                .withMessageContaining("served in " + servedIn)
                .withMessageContaining("[room, terrace]");
    }

    @ParameterizedTest
    @ValueSource(longs = {0, -1, -86_400_000})
    void nothingIsServedAtTheStartOrBefore(long afterMillis) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().bottle(order("a", "room", "room", Duration.ofMillis(afterMillis), SHORT)))
                .withMessageContaining("expected a time after the start " + START);
    }

    @Test
    void nothingIsFinishedAfterAWeek() {
        Duration justTooLate = Duration.ofDays(7).minus(SHORT).plusMillis(1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().bottle(order("a", "room", "room", justTooLate, SHORT)))
                .withMessageContaining("within seven days");
    }

    @Test
    void aRequestWantsABottle() {
        assertThatIllegalStateException().isThrownBy(() -> builder().build()).withMessageContaining("bottle");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t\n"})
    void blankIdsAreRefused(String id) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Place(id, "x", AIR))
                .withMessageContaining("blank");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> refrigerator(id, 1))
                .withMessageContaining("blank");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> order(id, "room", "room", HOUR, SHORT))
                .withMessageContaining("blank");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1, Integer.MIN_VALUE})
    void gearAndBottlesTakeAtLeastOnePlace(int places) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> refrigerator("cold", places))
                .withMessageContaining("capacity of cold " + places);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> order("a", "room", places, "room", HOUR, SHORT))
                .withMessageContaining("bottle places of a " + places);
    }

    @ParameterizedTest
    @ValueSource(longs = {0, -1, 86_400_001})
    void drinkingTakesSomeTimeAndAtMostADay(long millis) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> order("a", "room", "room", HOUR, Duration.ofMillis(millis)))
                .withMessageContaining("drinking time of a")
                .withMessageContaining("at most a day");
    }

    /** Clocks tell nanoseconds; plans are in milliseconds. What has both is planned as without the rest. */
    @Test
    void momentsAreCutToMilliseconds() {
        Instant start = Evenings.START.plusNanos(123_456_789);
        BottleOrder like = Evenings.order("white", "white-light", 22, "room", 120, "room");
        BottleOrder order = new BottleOrder(
                "white",
                "white",
                like.bottle(),
                "cold",
                1,
                like.target(),
                start.plus(Duration.ofMinutes(120)),
                "room",
                Duration.ofMinutes(25).plusNanos(1_999_999));
        PlanRequest request = PlanRequest.startingAt(start)
                .place(new Place("room", "room", Evenings.ROOM))
                .gear(new Gear(
                        "cold",
                        "cold",
                        GearKind.REFRIGERATOR,
                        Refrigerator.at(celsius(5)),
                        1,
                        List.of(new Window(start, start.plus(Duration.ofHours(5))))))
                .bottle(order)
                .build();
        assertThat(request.startsAt()).isEqualTo(Evenings.START.plusMillis(123));
        assertThat(order.servedAt()).isEqualTo(Evenings.START.plusMillis(123 + 7_200_000));
        assertThat(order.finishedAfter()).isEqualTo(Duration.ofMinutes(25).plusMillis(1));
        assertThat(order.pourTimes()).allMatch(at -> at.equals(at.truncatedTo(ChronoUnit.MILLIS)));
        ServicePlan plan = Planner.plan(request);
        assertThat(plan.bottles().get(0).stays().get(0).from()).isEqualTo(request.startsAt());
        assertThat(plan.bottles().get(0).pours()).hasSize(5);
        Duration aired = Duration.ofMinutes(30).plusNanos(2_999_999);
        assertThat(order.aired(Airing.opened(aired, "room")).readyAt())
                .isEqualTo(order.servedAt().minus(Duration.ofMinutes(30)).minusMillis(2));
        assertThat(Pouring.of(start, litres(0.1)).at()).isEqualTo(request.startsAt());
    }
}
