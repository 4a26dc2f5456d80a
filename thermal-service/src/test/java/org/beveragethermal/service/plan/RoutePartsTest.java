/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Moments, routes and which of them are worth keeping, counted minute by minute. */
class RoutePartsTest {

    private static final double[] NONE = {};

    private static Leg leg(String where, int fromMin, int toMin) {
        return new Leg(where, 60.0 * fromMin, 60.0 * toMin);
    }

    private static Candidate candidate(List<Long> costs, Leg... legs) {
        Route route = Route.of(Route.Kind.ONE_MEANS, legs);
        return new Candidate(route, new Forecast(NONE, NONE, NONE, true, 0, NONE, NONE), costs);
    }

    @Test
    void startsAreFiveMinutesApartInTheLastHourAndFurtherBefore() {
        for (int[] span : new int[][] {{0, 7200}, {30, 7230}, {0, 200_000}, {61, 700_000}, {3599, 3601}, {0, 60}}) {
            TreeSet<Double> expected = new TreeSet<>();
            double first = 60 * Math.ceil(span[0] / 60.0);
            expected.add(first);
            for (int minutes = 5; minutes <= 10_080; minutes += 5) {
                boolean asked = minutes <= 60
                        || (minutes <= 240 && minutes % 15 == 0)
                        || (minutes <= 1440 && minutes % 60 == 0)
                        || minutes % 240 == 0;
                double start = 60 * Math.floor((span[1] - 60.0 * minutes) / 60);
                if (asked && start >= first) {
                    expected.add(start);
                }
            }
            assertThat(StartTimes.upTo(span[0], span[1]))
                    .as("%d s to %d s", span[0], span[1])
                    .containsExactlyElementsOf(expected);
        }
        assertThat(StartTimes.upTo(3600, 3600)).isEmpty();
        assertThat(StartTimes.upTo(3541, 3600)).isEmpty();
        assertThat(StartTimes.upTo(3540, 3600)).containsExactly(3540.0);
    }

    @Test
    void momentsBetweenAreEvenlySpacedWholeMinutes() {
        assertThat(StartTimes.between(60, 360, 15)).containsExactly(120.0, 180.0, 240.0, 300.0);
        assertThat(StartTimes.between(0, 1800, 15))
                .hasSize(14)
                .startsWith(120.0)
                .endsWith(1680.0);
        assertThat(StartTimes.between(0, 1860, 15))
                .containsExactly(180.0, 360.0, 540.0, 720.0, 900.0, 1080.0, 1260.0, 1440.0, 1620.0, 1800.0);
        assertThat(StartTimes.between(0, 60, 15)).isEmpty();
        assertThat(StartTimes.between(300, 300, 15)).isEmpty();
    }

    @Test
    void legsWithoutLengthAreLeftOutAndLegsInOnePlaceAreOne() {
        Route route = Route.of(
                Route.Kind.ONE_MEANS,
                leg("room", 0, 0),
                leg("cold", 0, 10),
                leg("cold", 10, 20),
                leg("room", 20, 20),
                leg("cold", 20, 25),
                leg("room", 25, 40));
        assertThat(route.legs()).containsExactly(leg("cold", 0, 25), leg("room", 25, 40));
        assertThat(route.endingAtOrAfter(1500)).isEqualTo(leg("cold", 0, 25));
        assertThat(route.endingAtOrAfter(1501)).isEqualTo(leg("room", 25, 40));
        assertThat(route.endingAtOrAfter(9999)).isEqualTo(leg("room", 25, 40));
        assertThat(route.beginningAtOrBefore(1500)).isEqualTo(leg("room", 25, 40));
        assertThat(route.beginningAtOrBefore(1499)).isEqualTo(leg("cold", 0, 25));
    }

    @Test
    void theFirstLevelThatDiffersDecides() {
        Candidate best = candidate(List.of(0L, 0L, 0L, 5L, 9L), leg("room", 0, 60));
        Candidate dearer = candidate(List.of(0L, 0L, 0L, 6L, 0L), leg("room", 0, 60));
        Candidate worse = candidate(List.of(0L, 0L, 1L, 0L, 0L), leg("room", 0, 60));
        Candidate out = candidate(List.of(1L, 3L, 0L, 0L, 0L), leg("room", 0, 60));
        List<Candidate> rising = List.of(best, dearer, worse, out);
        for (int i = 0; i < rising.size(); i++) {
            for (int j = 0; j < rising.size(); j++) {
                assertThat(rising.get(i).isCheaperThan(rising.get(j))).isEqualTo(i < j);
                assertThat(rising.get(i).servesBetterThan(rising.get(j))).isEqualTo(i < j && j > 1);
            }
        }
        assertThat(rising).extracting(Candidate::isInRange).containsExactly(true, true, true, false);
        assertThat(rising).extracting(Candidate::does).containsExactly(true, true, false, false);
        assertThat(rising).extracting(Candidate::poursOutside).containsExactly(0L, 0L, 0L, 3L);
    }

    /** A candidate is left out only for a cheaper one that is in gear only when it is; and then it is left out. */
    @Test
    void whatAnotherOutdoesIsLeftOutAndNothingElse() {
        Gear cold = Evenings.refrigerator("cold", 5, 2);
        Gear too = new Gear("cold too", "cold too", cold.kind(), cold.surroundings(), 2);
        PlanRequest request =
                Evenings.request(List.of(cold, too, Evenings.refrigerator("cool", 9, 2)), Evenings.bottles(1, 1));
        GearPools pools = new GearPools(request);
        Random random = new Random(3);
        int left = 0;
        int leftOut = 0;
        for (int trial = 0; trial < 300; trial++) {
            boolean fewHands = trial % 2 == 0;
            List<Candidate> all = new ArrayList<>();
            for (int i = 0; i < 7; i++) {
                int from = random.nextInt(4) * 5;
                int to = from + 1 + random.nextInt(4) * 5;
                List<Long> costs = List.of(0L, 0L, (long) random.nextInt(3), 0L, (long) random.nextInt(2));
                String gear = List.of("cold", "cold too", "cool", "room").get(random.nextInt(4));
                all.add(candidate(costs, leg("room", 0, from), leg(gear, from, to), leg("room", to, 60)));
            }
            List<Candidate> best = Dominance.best(all, pools, fewHands);
            List<Candidate> shuffled = new ArrayList<>(all);
            Collections.shuffle(shuffled, random);
            assertThat(Dominance.best(shuffled, pools, fewHands))
                    .as("in any order")
                    .extracting(Candidate::route, Candidate::costs)
                    .containsExactlyElementsOf(best.stream()
                            .map(one -> tuple(one.route(), one.costs()))
                            .toList());
            for (int i = 1; i < best.size(); i++) {
                assertThat(best.get(i).isCheaperThan(best.get(i - 1))).isFalse();
            }
            for (Candidate one : all) {
                boolean outdone = best.stream()
                        .anyMatch(other ->
                                !other.equals(one) && !one.isCheaperThan(other) && outdoes(other, one, fewHands));
                boolean kept = best.stream().anyMatch(one::equals);
                if (!kept) {
                    assertThat(outdone).as("left out %s of %s", one, best).isTrue();
                    leftOut++;
                } else {
                    assertThat(best.stream()
                                    .anyMatch(other -> !other.equals(one)
                                            && other.isCheaperThan(one)
                                            && outdoes(other, one, fewHands)))
                            .isFalse();
                    left++;
                }
            }
        }
        assertThat(left).isGreaterThan(300);
        assertThat(leftOut).isGreaterThan(300);
    }

    private static boolean outdoes(Candidate better, Candidate worse, boolean fewHands) {
        return inGear(worse).containsAll(inGear(better))
                && (!fewHands || moves(worse).containsAll(moves(better)));
    }

    private static Set<String> inGear(Candidate candidate) {
        Set<String> minutes = new HashSet<>();
        for (Leg leg : candidate.route().legs()) {
            for (int minute = (int) (leg.fromS() / 60); minute < leg.toS() / 60; minute++) {
                if (!leg.where().equals("room")) {
                    minutes.add(leg.where().replace(" too", "") + " " + minute);
                }
            }
        }
        return minutes;
    }

    private static Set<Double> moves(Candidate candidate) {
        Set<Double> moments = new HashSet<>();
        candidate.route().legs().forEach(leg -> moments.add(leg.fromS()));
        return moments;
    }
}
