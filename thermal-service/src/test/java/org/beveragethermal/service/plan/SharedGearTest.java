/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Random;
import org.beveragethermal.service.choice.AnswerCheck;
import org.beveragethermal.service.choice.Choice;
import org.beveragethermal.service.choice.ChoiceProblem;
import org.junit.jupiter.api.Test;

/** What is shared: places, ice and hands, against a count of every minute; figures by hand. */
class SharedGearTest {

    private static final double[] NONE = {};
    private static final int SERVED_MIN = 120;
    private static final int FINISHED_MIN = 145;

    private static Leg leg(String where, int fromMin, int toMin) {
        return new Leg(where, 60.0 * fromMin, 60.0 * toMin);
    }

    private static Candidate candidate(double iceKg, Leg... legs) {
        return new Candidate(
                Route.of(Route.Kind.TWO_MEANS, legs),
                new Forecast(NONE, NONE, NONE, true, iceKg, NONE, NONE),
                List.of(0L, 0L, 0L, 0L, 0L, 0L, 0L));
    }

    private static BottleOrder bottle(String id, String startsIn, int places) {
        BottleOrder order = Evenings.order(id, "white-light", 22, startsIn, SERVED_MIN, "room");
        return new BottleOrder(
                id,
                id,
                order.bottle(),
                startsIn,
                places,
                order.target(),
                order.servedAt(),
                "room",
                order.finishedAfter());
    }

    private static final Gear ONE = Evenings.refrigerator("one", 5, 2);

    private static Gear alike(String id, int capacity) {
        return new Gear(id, id, ONE.kind(), ONE.surroundings(), capacity);
    }

    private static Gear between(Gear gear, int fromMin, int toMin) {
        Window window = new Window(
                Evenings.START.plus(Duration.ofMinutes(fromMin)), Evenings.START.plus(Duration.ofMinutes(toMin)));
        return new Gear(gear.id(), gear.name(), gear.kind(), gear.surroundings(), gear.capacity(), List.of(window));
    }

    /**
     * One place is in the refrigerator from minute 20 to 90, two in the bucket with 4 kg of ice, two hands. In stock are 5.5 kg, or 3.5 kg and 1 kg
     * more each hour: then the bucket is filled after half an hour.
     */
    @Test
    void whatTheProblemAllowsIsWhatFitsInEveryMinute() {
        Random random = new Random(5);
        int fits = 0;
        int not = 0;
        for (int trial = 0; trial < 80; trial++) {
            List<BottleOrder> orders = List.of(
                    bottle("a", "room", 1), bottle("b", "room", trial % 3 == 0 ? 2 : 1), bottle("c", "room", 1));
            PlanRequest.Builder builder = Evenings.places()
                    .gear(between(Evenings.refrigerator("cold", 5, 1), 20, 90))
                    .gear(Evenings.bucket("bucket", 4, 2))
                    .ice(growing(trial) ? new IceStock(3.5, 1, OptionalDouble.empty()) : IceStock.of(5.5))
                    .hands(2);
            orders.forEach(builder::bottle);
            PlanRequest request = builder.build();
            Map<BottleOrder, List<Candidate>> candidates = new LinkedHashMap<>();
            for (BottleOrder order : orders) {
                candidates.put(order, List.of(drawn(random), drawn(random)));
            }
            RouteChoice choice = new RouteChoice(
                    new Site(request), new GearPools(request), new IceSupply(request), request.movesPerMinute());
            ChoiceProblem problem = choice.problem(candidates);
            for (int which = 0; which < 8; which++) {
                Map<BottleOrder, Candidate> chosen = new LinkedHashMap<>();
                Map<String, String> routes = new LinkedHashMap<>();
                for (int i = 0; i < 3; i++) {
                    int number = which >> i & 1;
                    chosen.put(
                            orders.get(i),
                            Objects.requireNonNull(candidates.get(orders.get(i)))
                                    .get(number));
                    routes.put(orders.get(i).id(), Integer.toString(number));
                }
                Choice named = new Choice(routes, List.of(0L, 0L, 0L, 0L, 0L, 0L, 0L));
                assertThat(RouteChoice.chosen(named, candidates)).isEqualTo(chosen);
                boolean allowed = AnswerCheck.faults(problem, named).isEmpty();
                assertThat(allowed).as("%s", chosen.values()).isEqualTo(fitsEveryMinute(chosen, growing(trial)));
                fits += allowed ? 1 : 0;
                not += allowed ? 0 : 1;
            }
        }
        assertThat(fits).isGreaterThan(50);
        assertThat(not).isGreaterThan(50);
    }

    private static boolean growing(int trial) {
        return trial % 2 == 0;
    }

    private static Candidate drawn(Random random) {
        int from = 15 + random.nextInt(25);
        int to = from + 1 + random.nextInt(40);
        int until = random.nextInt(4) == 0 ? SERVED_MIN : to + random.nextInt(3);
        String first = random.nextBoolean() ? "cold" : "bucket";
        String second = random.nextBoolean() ? "room" : "bucket";
        return candidate(
                random.nextInt(4) * 0.6,
                leg("room", 0, from),
                leg(first, from, to),
                leg(second, to, until),
                leg("terrace", until, FINISHED_MIN));
    }

    private static boolean fitsEveryMinute(Map<BottleOrder, Candidate> chosen, boolean growing) {
        double melted = 0;
        for (int minute = 0; minute < FINISHED_MIN; minute++) {
            int cold = 0;
            int bucket = 0;
            int moves = 0;
            for (Map.Entry<BottleOrder, Candidate> entry : chosen.entrySet()) {
                boolean before = false;
                for (Leg leg : entry.getValue().route().legs()) {
                    boolean there = leg.fromS() <= 60 * minute && 60 * (minute + 1) <= leg.toS();
                    int places = entry.getKey().bottlePlaces();
                    cold += there && leg.where().equals("cold") ? places : 0;
                    bucket += there && leg.where().equals("bucket") ? places : 0;
                    moves += leg.fromS() == 60 * minute && minute > 0 && minute < SERVED_MIN ? 1 : 0;
                    if (leg.fromS() == 60 * minute && leg.where().equals("bucket") && !before) {
                        melted += entry.getValue().forecast().iceKg();
                    }
                    before |= leg.where().equals("bucket");
                }
            }
            boolean open = 20 <= minute && minute < 90;
            // Two thirds of what is in the bucket and all that is left in the stock.
            double spare = growing ? Math.max(0, 3.5 + minute / 60.0 - 4) : 1.5;
            double mayMelt = 4 * 2 / 3.0 + spare;
            boolean filled = !growing || minute >= 30;
            if (cold > (open ? 1 : 0) || bucket > (filled ? 2 : 0) || moves > 2 || melted > mayMelt + 1e-9) {
                return false;
            }
        }
        return true;
    }

    @Test
    void alikeGearIsSeatedSoThatNoPieceIsTooFull() {
        Random random = new Random(11);
        int seated = 0;
        for (int trial = 0; trial < 200; trial++) {
            List<Gear> gear = List.of(ONE, alike("two", 1), Evenings.refrigerator("other", 9, 1), alike("three", 1));
            List<BottleOrder> orders = new ArrayList<>();
            Map<BottleOrder, Candidate> chosen = new LinkedHashMap<>();
            for (int i = 0; i < 6; i++) {
                BottleOrder order = bottle("bottle " + i, "room", 1);
                int from = Math.max(0, random.nextInt(80) - 20);
                int to = from + 1 + random.nextInt(50);
                orders.add(order);
                chosen.put(
                        order, candidate(0, leg("room", 0, from), leg("one", from, to), leg("room", to, FINISHED_MIN)));
            }
            BottleOrder standing = bottle("stands in two", "two", 1);
            int leaves = 5 + random.nextInt(60);
            orders.add(standing);
            chosen.put(standing, candidate(0, leg("two", 0, leaves), leg("room", leaves, FINISHED_MIN)));
            PlanRequest request = Evenings.request(gear, orders);
            boolean roomForAll = true;
            for (int minute = 0; minute < FINISHED_MIN; minute++) {
                double middleS = 60 * minute + 30;
                long there = chosen.values().stream()
                        .filter(one -> one.route().legs().stream()
                                .anyMatch(leg ->
                                        !leg.where().equals("room") && leg.fromS() < middleS && middleS < leg.toS()))
                        .count();
                roomForAll &= there <= 4;
            }
            Map<BottleOrder, Route> routes = new Seating(new GearPools(request), new IceSupply(request)).seated(chosen);
            assertThat(routes.keySet()).containsExactlyElementsOf(chosen.keySet());
            assertThat(Objects.requireNonNull(routes.get(standing)).legs().get(0))
                    .isEqualTo(leg("two", 0, leaves));
            routes.forEach((order, route) -> {
                Route wished = Objects.requireNonNull(chosen.get(order)).route();
                assertThat(route.kind()).isEqualTo(wished.kind());
                assertThat(route.legs())
                        .extracting(Leg::fromS)
                        .containsExactlyElementsOf(
                                wished.legs().stream().map(Leg::fromS).toList());
                assertThat(route.legs()).extracting(Leg::where).isSubsetOf("room", "one", "two", "three");
            });
            if (roomForAll) {
                assertThat(new Occupancy(request, new Site(request), routes).conflicts())
                        .as("trial %d", trial)
                        .isEmpty();
                seated++;
            }
        }
        assertThat(seated).isGreaterThan(30);
    }

    @Test
    void gearThatIsAlikeIsOnePoolAsLongAsBottlesTakeEquallyMuch() {
        List<Gear> gear = List.of(
                alike("one", 5),
                Evenings.refrigerator("colder", 4, 5),
                alike("two", 3),
                between(alike("later", 5), 30, 90),
                new Gear("kept at 5", "x", GearKind.WATER_BATH, ONE.surroundings(), 5));
        GearPools equal =
                new GearPools(Evenings.request(gear, List.of(bottle("a", "room", 2), bottle("b", "room", 2))));
        assertThat(equal.pools()).extracting(GearPools.Pool::id).containsExactly("one", "colder", "later", "kept at 5");
        assertThat(equal.members("two")).extracting(Gear::id).containsExactly("one", "two");
        assertThat(equal.poolId("two")).isEqualTo("one");
        assertThat(equal.poolId("room")).isEqualTo("room");
        assertThat(equal.isGear("two")).isTrue();
        assertThat(equal.isGear("room")).isFalse();
        assertThat(equal.places(gear.get(0))).isEqualTo(4);
        assertThat(equal.places(gear.get(2))).isEqualTo(2);
        GearPools unequal =
                new GearPools(Evenings.request(gear, List.of(bottle("a", "room", 2), bottle("b", "room", 1))));
        assertThat(unequal.pools()).hasSize(5);
        assertThat(unequal.places(gear.get(0))).isEqualTo(5);
    }

    private static IceSupply supply(PlanRequest.Builder request) {
        return new IceSupply(request.gear(Evenings.refrigerator("cold", 5, 1))
                .gear(Evenings.bucket("first", 3, 2))
                .gear(Evenings.bucket("second", 4, 2))
                .bottle(bottle("a", "room", 1))
                .build());
    }

    private static IceStock stock(double kg, double perHour, double cap) {
        return new IceStock(kg, perHour, cap > 0 ? OptionalDouble.of(cap) : OptionalDouble.empty());
    }

    @Test
    void bathsAreFilledInTurnAsSoonAsThereIsIceForThem() {
        IceSupply none = supply(Evenings.places());
        assertThat(List.of(none.readyS("first"), none.readyS("second"), none.readyS("cold")))
                .containsOnly(0.0);
        assertThat(none.meltableKg("second", 0)).isCloseTo(4 * 2 / 3.0, within(1e-12));
        assertThat(none.spareKg(0)).isZero();
        // 5 kg and 2 kg an hour: the first at once, the second after an hour, when there are 7.
        IceSupply making = supply(Evenings.places().ice(stock(5, 2, 0)));
        assertThat(making.readyS("first")).isZero();
        assertThat(making.readyS("second")).isCloseTo(3600, within(1e-9));
        assertThat(making.changesS()).containsExactly(0.0, making.readyS("second"));
        assertThat(making.meltableKg("second", 3599)).isZero();
        assertThat(making.meltableKg("second", 3601)).isCloseTo(4 * 2 / 3.0, within(1e-3));
        // After three hours there are 11 kg, 4 of them to spare, half for each.
        assertThat(making.spareKg(3 * 3600)).isCloseTo(4, within(1e-9));
        assertThat(making.meltableKg("first", 3 * 3600)).isCloseTo(2 + 2, within(1e-9));
        assertThat(making.baths()).isEqualTo(2);
        // No more than 6 kg are stored, so that there never are 7; with 7 there are.
        assertThat(supply(Evenings.places().ice(stock(5, 2, 6))).readyS("second"))
                .isInfinite();
        assertThat(supply(Evenings.places().ice(stock(5, 2, 6))).changesS()).containsExactly(0.0);
        assertThat(supply(Evenings.places().ice(stock(5, 2, 7))).readyS("second"))
                .isCloseTo(3600, within(1e-9));
        assertThat(supply(Evenings.places().ice(stock(6.9, 0, 0))).readyS("second"))
                .isInfinite();
        assertThat(supply(Evenings.places().ice(stock(7, 0, 0))).readyS("second"))
                .isZero();
        assertThat(supply(Evenings.places().ice(stock(2, 0, 0))).meltableKg("first", 9e9))
                .isZero();
    }

    @Test
    void aBathThatStandsThereFilledTakesNothingOutOfTheStockAndMayMeltAway() {
        PlanRequest request = Evenings.places()
                .gear(Evenings.bucket("first", 3, 2))
                .gear(Evenings.bucket("second", 4, 2))
                .filled("first")
                .ice(IceStock.of(5))
                .bottle(bottle("a", "room", 1))
                .build();
        assertThat(request.fullIceKg("first")).isEqualTo(3);
        assertThat(request.fullIceKg("cold")).isZero();
        IceSupply standing = new IceSupply(request);
        assertThat(standing.readyS("first")).isZero();
        assertThat(standing.readyS("second")).isZero();
        assertThat(standing.spareKg(0)).isCloseTo(1, within(1e-12));
        assertThat(standing.meltableKg("first", 0)).isCloseTo(3 + 0.5, within(1e-12));
        assertThat(standing.meltableKg("second", 0)).isCloseTo(4 * 2 / 3.0 + 0.5, within(1e-12));
    }

    @Test
    void stocksGrowByTheHourUpToWhatCanBeStored() {
        assertThat(stock(5, 2, 0).kgBy(Duration.ofMinutes(90))).isCloseTo(8, within(1e-12));
        assertThat(stock(5, 2, 6).kgBy(Duration.ofMinutes(90))).isEqualTo(6);
        assertThat(IceStock.of(5).kgBy(Duration.ofDays(1))).isEqualTo(5);
    }
}
