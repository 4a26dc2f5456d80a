/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;
import org.junit.jupiter.api.Test;

/** The book of gear, against counting by hand and by brute force. */
class GearBookTest {

    private static final Instant START = Instant.parse("2027-06-18T15:00:00Z");
    private static final int CAPACITY = 3;

    private final BottleOrder one = order("one", 1);
    private final BottleOrder another = order("another", 1);
    private final BottleOrder magnum = order("magnum", 2);
    private final GearBook book = new GearBook(PlanRequest.startingAt(START)
            .place(new Place("room", "room", Air.at(celsius(22))))
            .gear(new Gear("cold", "cold", GearKind.REFRIGERATOR, Refrigerator.at(celsius(5)), CAPACITY))
            .gear(new Gear("other", "other", GearKind.REFRIGERATOR, Refrigerator.at(celsius(8)), 1))
            .bottle(one)
            .build());

    private static BottleOrder order(String id, int bottlePlaces) {
        return new BottleOrder(
                id,
                id,
                Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20)),
                "room",
                bottlePlaces,
                Targets.of(Targets.style("white-full"), RangePolicy.envelope()),
                START.plus(Duration.ofHours(4)),
                "room",
                Duration.ofMinutes(20));
    }

    @Test
    void fullGearIsNoConflict() {
        book.add("cold", 0, 100, one);
        book.add("cold", 0, 100, magnum);
        assertThat(book.conflicts()).isEmpty();
        assertThat(book.fits("cold", 99, 200, another)).isFalse();
    }

    @Test
    void aBottleMayGoInWhenAnotherComesOut() {
        book.add("cold", 0, 100, one);
        book.add("cold", 0, 100, magnum);
        book.add("cold", 100, 200, another);
        assertThat(book.conflicts()).isEmpty();
        assertThat(book.fits("cold", 100, 200, order("late", 2))).isTrue();
        assertThat(book.fits("cold", 100, 200, order("late", 3))).isFalse();
    }

    @Test
    void aConflictTellsWhatWhenAndWho() {
        book.add("cold", 0, 100, one);
        book.add("cold", 60, 160, magnum);
        book.add("cold", 80, 90, another);
        assertThat(book.conflicts())
                .containsExactly(new CapacityConflict(
                        "cold",
                        START.plusSeconds(80),
                        START.plusSeconds(90),
                        4,
                        CAPACITY,
                        List.of("one", "magnum", "another")));
    }

    @Test
    void gearIsCountedApart() {
        book.add("cold", 0, 100, magnum);
        book.add("other", 0, 100, one);
        assertThat(book.conflicts()).isEmpty();
        book.add("other", 50, 70, another);
        assertThat(book.conflicts()).singleElement().satisfies(conflict -> {
            assertThat(conflict.gearId()).isEqualTo("other");
            assertThat(conflict.placesNeeded()).isEqualTo(2);
            assertThat(conflict.from()).isEqualTo(START.plusSeconds(50));
            assertThat(conflict.to()).isEqualTo(START.plusSeconds(70));
        });
    }

    @Test
    void aBottleIsNotInItsOwnWay() {
        book.add("other", 0, 100, one);
        assertThat(book.fits("other", 0, 100, one)).isTrue();
        assertThat(book.fits("other", 0, 100, another)).isFalse();
    }

    @Test
    void whatIsTakenOutLeavesNoTrace() {
        book.add("other", 0, 100, one);
        book.add("cold", 100, 200, one);
        book.add("cold", 0, 100, another);
        book.remove(one);
        assertThat(book.entries()).extracting(GearBook.Entry::order).containsExactly(another);
    }

    @Test
    void placesHoldAnyNumberAndAMomentIsNoStay() {
        book.add("room", 0, 100, one);
        book.add("cold", 50, 50, one);
        assertThat(book.entries()).isEmpty();
        assertThat(book.fits("room", 0, 100, order("crowd", 1000))).isTrue();
        assertThat(book.fits("cold", 0, 100, order("too much", CAPACITY + 1))).isFalse();
    }

    /** Random stays on whole minutes; each minute is counted by itself. */
    @Test
    void agreesWithCountingEveryMinute() {
        Random random = new Random(20270618);
        for (int round = 0; round < 50; round++) {
            List<BottleOrder> orders = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                BottleOrder next = order("bottle " + i, 1 + random.nextInt(2));
                orders.add(next);
                int from = random.nextInt(20);
                book.add("cold", 60.0 * from, 60.0 * (from + 1 + random.nextInt(10)), next);
            }
            BottleOrder wanted = order("wanted", 1 + random.nextInt(2));
            int from = random.nextInt(20);
            int to = from + 1 + random.nextInt(10);
            boolean free = true;
            for (int minute = 0; minute < 40; minute++) {
                int needed = placesTakenAt(60.0 * minute);
                Instant now = START.plusSeconds(60L * minute);
                assertThat(book.conflicts().stream()
                                .filter(c -> !c.from().isAfter(now) && c.to().isAfter(now))
                                .mapToInt(CapacityConflict::placesNeeded)
                                .sum())
                        .isEqualTo(needed > CAPACITY ? needed : 0);
                free &= minute < from || minute >= to || needed + wanted.bottlePlaces() <= CAPACITY;
            }
            assertThat(book.fits("cold", 60.0 * from, 60.0 * to, wanted)).isEqualTo(free);
            orders.forEach(book::remove);
        }
    }

    private int placesTakenAt(double timeS) {
        return book.entries().stream()
                .filter(entry -> entry.fromS() <= timeS && timeS < entry.toS())
                .mapToInt(entry -> entry.order().bottlePlaces())
                .sum();
    }
}
