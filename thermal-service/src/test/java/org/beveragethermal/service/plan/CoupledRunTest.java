/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.service.plan.ReplanEvenings.ROOM;
import static org.beveragethermal.service.plan.ReplanEvenings.after;
import static org.beveragethermal.service.plan.ReplanEvenings.bucket;
import static org.beveragethermal.service.plan.ReplanEvenings.refrigerator;
import static org.beveragethermal.service.plan.ReplanEvenings.room;
import static org.beveragethermal.service.plan.ReplanEvenings.white;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.service.airing.Airing;
import org.junit.jupiter.api.Test;

/** Bottles on their routes come to what a scene comes to that is written down by hand with the same moves. */
class CoupledRunTest {

    /** The run may be 0.02 K off in a step, and so may the scene. */
    private static final double SAME_K = 0.06;

    private static final Gear FREEZER =
            new Gear("freezer", "freezer", GearKind.REFRIGERATOR, Refrigerator.at(celsius(-20)), 6);

    private static CoupledRun run(PlanRequest request, Map<BottleOrder, Route> routes) {
        return new CoupledRun(new Site(request), new IceSupply(request), routes, Set.of());
    }

    private static PlanRequest.Builder gear() {
        return room().gear(bucket()).gear(refrigerator()).gear(FREEZER);
    }

    private static Leg leg(String where, double fromMin, double toMin) {
        return new Leg(where, 60 * fromMin, 60 * toMin);
    }

    private static Route route(Leg... legs) {
        return Route.of(Route.Kind.ONE_MEANS, legs);
    }

    private static Duration min(long minutes) {
        return Duration.ofMinutes(minutes);
    }

    /**
     * One cools from the start, is drunk in two rounds from the bath and is then empty; another is put in while it is drunk: it feels
     * what the first has left, and no more of it once it is empty.
     */
    @Test
    void bottlesThatShareABathFeelEachOtherUntilTheyAreEmpty() {
        BottleOrder first = white("first", 22, "room", 50)
                .poured(List.of(Pouring.of(after(50), litres(0.3)), Pouring.of(after(60), litres(0.45))));
        BottleOrder second = white("second", 28, "room", 100);
        PlanRequest request = gear().bottle(first).bottle(second).build();
        Map<BottleOrder, Route> routes = new LinkedHashMap<>();
        routes.put(first, route(leg("room", 0, 20), leg("bucket", 20, 70)));
        routes.put(second, route(leg("room", 0, 65), leg("bucket", 65, 100), leg("room", 100, 120)));
        CoupledRun run = run(request, routes);

        FilledVessel one = first.bottle();
        ScenePrediction scene = Scene.builder()
                .gear("room", ROOM)
                .gear("bucket", bucket().surroundings(), min(5))
                .vessel("first", one, "room")
                .vessel("second", second.bottle(), "room")
                .move("first", min(20), "bucket")
                .drink("first", min(50), litres(0.3))
                .move("first", min(70), "room")
                .move("second", min(65), "bucket")
                .move("second", min(100), "room")
                .build()
                .predict(min(120));
        assertThat(run.filledS()).containsExactly(Map.entry("bucket", 300.0));
        assertThat(run.firstS("bucket")).isEqualTo(1200);
        assertThat(run.lastS("bucket")).isEqualTo(6000);
        assertThat(run.topUps("bucket")).isEmpty();
        assertThat(run.orders()).containsExactly(first, second);
        for (double time : new double[] {600, 1500, 2990, 3300, 4000, 4500, 6000, 7200}) {
            assertThat(run.drinkK(second, time))
                    .isCloseTo(scene.vessel("second").meanTemperatureK(time), within(SAME_K));
            if (time < 4200) {
                assertThat(run.drinkK(first, time))
                        .isCloseTo(scene.vessel("first").meanTemperatureK(time), within(SAME_K));
            }
            if (time > 300) {
                Duration when = Site.duration(time);
                assertThat(run.iceKg("bucket", time)).isCloseTo(scene.iceKg("bucket", when), within(0.01));
                assertThat(run.bathKg("bucket", time)).isCloseTo(8, within(1e-6));
                assertThat(run.waterK("bucket", time))
                        .isCloseTo(scene.mixedWaterK("bucket", when).orElseThrow(), within(SAME_K));
            }
        }
        Outcome poured = run.outcomes().values().iterator().next();
        assertThat(poured.poursK()).hasSize(2);
        for (int i = 0; i < 2; i++) {
            assertThat(poured.poursK().get(i))
                    .isCloseTo(scene.vessel("first").meanTemperatureK(3000 + 600 * i - 0.001), within(SAME_K));
        }
        // Rounds are known: they alone count, so that it comes to nothing that it goes on cooling.
        assertThat(poured.coldestK())
                .isEqualTo(Math.min(poured.poursK().get(0), poured.poursK().get(1)));
        assertThat(poured.warmestK())
                .isEqualTo(Math.max(poured.poursK().get(0), poured.poursK().get(1)));
    }

    /** Glasses not known, the whole time from the first to the last counts, to a quarter of a minute. */
    @Test
    void whenItLeavesItsRangeIsWhenItCrossesItsEnd() {
        BottleOrder order = white("white", 13.5, "cold", 1);
        PlanRequest request = gear().bottle(order).build();
        CoupledRun run = run(request, Map.of(order, route(leg("cold", 0, 1), leg("room", 1, 21))));
        Outcome outcome = run.outcomes().values().iterator().next();
        double leaves = outcome.leavesS().orElseThrow();
        // Its range ends at 14 °C, and a twentieth of a kelvin more is not seen.
        double end = 273.15 + 14 + Outcome.TOLERANCE_K;
        assertThat(run.drinkK(order, leaves)).isGreaterThan(end);
        assertThat(run.drinkK(order, leaves - 15)).isLessThanOrEqualTo(end);
        assertThat(outcome.warmestK()).isCloseTo(run.drinkK(order, 21 * 60), within(1e-9));
        assertThat(outcome.coldestK()).isCloseTo(run.drinkK(order, 60), within(0.05));
        assertThat(outcome.isInRange()).isFalse();
    }

    /** From its bottle into a carafe that is as warm as the room, where it stands, and then from there. */
    @Test
    void whatIsDecantedGoesOnInItsCarafe() {
        BottleOrder order = white("white", 12, "room", 100).aired(Airing.carafe(Duration.ofMinutes(30), "terrace"));
        PlanRequest request = gear().bottle(order).build();
        CoupledRun run = run(
                request,
                Map.of(
                        order,
                        route(
                                leg("room", 0, 20),
                                leg("cold", 20, 70),
                                leg("terrace", 70, 100),
                                leg("room", 100, 120))));
        FilledVessel carafe = order.carafe().orElseThrow();
        ScenePrediction scene = Scene.builder()
                .gear("room", ROOM)
                .gear("cold", refrigerator().surroundings())
                .gear("terrace", new Site(request).surroundings("terrace"))
                .vessel("bottle", order.bottle(), "room")
                .emptyVessel("carafe", carafe.vessel(), kelvins(273.15 + 27), "terrace")
                .move("bottle", min(20), "cold")
                .pourAll("bottle", min(70), "carafe")
                .move("carafe", min(100), "room")
                .build()
                .predict(min(120));
        for (double time : new double[] {600, 3000, 4190}) {
            assertThat(run.drinkK(order, time))
                    .isCloseTo(scene.vessel("bottle").meanTemperatureK(time), within(SAME_K));
        }
        for (double time : new double[] {4300, 6000, 7200}) {
            assertThat(run.drinkK(order, time))
                    .isCloseTo(scene.vessel("carafe").meanTemperatureK(time), within(SAME_K));
        }
        // What the model leaves out of bottle and carafe is told, once for bottles that fare alike.
        assertThat(run.notes())
                .containsAll(scene.vessel("bottle").limits())
                .containsAll(scene.vessel("carafe").limits());
        assertThat(run.freezing()).isEmpty();
    }

    /** What the model leaves out of a bottle in a bath is told once for two that fare alike, and not missed for one that stays away. */
    @Test
    void ofBottlesThatFareAlikeNotesAreToldOnce() {
        BottleOrder away = white("away", 22, "room", 30);
        BottleOrder one = white("one", 22, "room", 30);
        BottleOrder two = white("two", 22, "room", 30);
        PlanRequest request = gear().bottle(away).bottle(one).bottle(two).build();
        Map<BottleOrder, Route> routes = new LinkedHashMap<>();
        routes.put(away, route(leg("room", 0, 50)));
        for (BottleOrder order : List.of(one, two)) {
            routes.put(order, route(leg("room", 0, 20), leg("bucket", 20, 30), leg("room", 30, 50)));
        }
        assertThat(run(request, routes).notes())
                .filteredOn(note -> note.contains("only partly under water"))
                .hasSize(1);
    }

    /** Hours at −20 °C freeze a wine; one that is taken out in time, and one put in only after it is served, are not told of. */
    @Test
    void freezingIsToldOfWhatFreezesBeforeItIsServed() {
        BottleOrder forgotten = white("forgotten", 8, "freezer", 300);
        BottleOrder fetched = white("fetched", 8, "freezer", 30);
        BottleOrder later = white("later", 8, "cold", 20);
        PlanRequest request =
                gear().bottle(forgotten).bottle(fetched).bottle(later).build();
        Map<BottleOrder, Route> routes = new LinkedHashMap<>();
        routes.put(forgotten, route(leg("freezer", 0, 300), leg("room", 300, 320)));
        routes.put(fetched, route(leg("freezer", 0, 10), leg("room", 10, 50)));
        routes.put(later, route(leg("cold", 0, 20), leg("freezer", 20, 40)));
        assertThat(run(request, routes).freezing()).containsExactly(forgotten);
    }

    /** A third of a kilogram of ice is soon gone under two warm bottles; just when, a scene says. */
    @Test
    void iceThatIsGoneIsGoneWhenASceneSays() {
        Gear little = new Gear("little", "little", GearKind.ICE_BATH, Evenings.bath(0.4), 3);
        BottleOrder one = white("one", 25, "room", 100);
        BottleOrder two = white("two", 25, "room", 100);
        PlanRequest request = room().gear(little).bottle(one).bottle(two).build();
        Map<BottleOrder, Route> routes = new LinkedHashMap<>();
        for (BottleOrder order : List.of(one, two)) {
            routes.put(order, route(leg("room", 0, 15), leg("little", 15, 100), leg("room", 100, 120)));
        }
        CoupledRun run = run(request, routes);
        ScenePrediction scene = Scene.builder()
                .gear("room", ROOM)
                .gear("little", little.surroundings())
                .vessel("one", one.bottle(), "room")
                .vessel("two", two.bottle(), "room")
                .move("one", min(15), "little")
                .move("two", min(15), "little")
                .build()
                .predict(min(100));
        double gone = Site.seconds(scene.iceGone("little").orElseThrow());
        assertThat(run.iceGoneS("little").orElseThrow()).isCloseTo(gone, within(30.0));
        assertThat(run.iceKg("little", gone + 120)).isZero();
        assertThat(run.topUps("little")).isEmpty();

        // With more in stock it is added when a third is left, and its ice is not gone then.
        PlanRequest stocked =
                room().gear(little).ice(IceStock.of(2)).bottle(one).bottle(two).build();
        CoupledRun tended = run(stocked, routes);
        TopUp topUp = tended.topUps("little").get(0);
        assertThat(topUp.goneS()).isCloseTo(gone, within(60.0));
        assertThat(run.iceKg("little", topUp.atS())).isLessThan(0.4 / 3);
        assertThat(run.iceKg("little", topUp.atS() - 60)).isGreaterThanOrEqualTo(0.4 / 3);
        assertThat(topUp.iceKg()).isCloseTo(0.4 - run.iceKg("little", topUp.atS()), within(0.01));
        ScenePrediction added = Scene.builder()
                .gear("room", ROOM)
                .gear("little", little.surroundings())
                .vessel("one", one.bottle(), "room")
                .vessel("two", two.bottle(), "room")
                .move("one", min(15), "little")
                .move("two", min(15), "little")
                .pourOff("little", Site.duration(topUp.atS()), kilograms(topUp.iceKg()))
                .topUpIce("little", Site.duration(topUp.atS()), kilograms(topUp.iceKg()), celsius(0))
                .build()
                .predict(min(100));
        assertThat(tended.drinkK(one, 6000)).isCloseTo(added.vessel("one").meanTemperatureK(6000), within(SAME_K));
    }

    /** Two baths have the stock between them; each is given half, at its own time, and told of by itself. */
    @Test
    void twoBathsShareTheIceThatIsLeft() {
        Gear left = new Gear("left", "left", GearKind.ICE_BATH, Evenings.bath(1), 3);
        Gear right = new Gear("right", "right", GearKind.ICE_BATH, Evenings.bath(1), 3);
        BottleOrder one = white("one", 25, "room", 200);
        BottleOrder two = white("two", 25, "room", 200);
        PlanRequest request = room().gear(left)
                .gear(right)
                .ice(IceStock.of(2.5))
                .bottle(one)
                .bottle(two)
                .build();
        Map<BottleOrder, Route> routes = new LinkedHashMap<>();
        routes.put(one, route(leg("room", 0, 15), leg("left", 15, 200), leg("room", 200, 220)));
        routes.put(two, route(leg("room", 0, 45), leg("right", 45, 200), leg("room", 200, 220)));
        CoupledRun run = run(request, routes);
        for (String bath : List.of("left", "right")) {
            assertThat(run.topUps(bath)).singleElement().satisfies(topUp -> {
                assertThat(topUp.gearId()).isEqualTo(bath);
                // 2.5 kg less 1 kg for each bath leaves 0.5 kg.
                assertThat(topUp.iceKg()).isCloseTo(0.25, within(1e-9));
                assertThat(topUp.goneS()).isGreaterThan(topUp.atS());
            });
        }
        assertThat(run.topUps("left").get(0).atS())
                .isLessThan(run.topUps("right").get(0).atS());
    }

    /** Ice that would last until the bottle is out is said to last until then, though not for ever. */
    @Test
    void iceIsWantedNoLongerThanThereAreBottles() {
        Gear bath = new Gear("bath", "bath", GearKind.ICE_BATH, Evenings.bath(1), 3);
        BottleOrder late = white("late", 22, "room", 600);
        BottleOrder order = white("white", 25, "room", 80);
        PlanRequest none = room().gear(bath).bottle(order).bottle(late).build();
        Map<BottleOrder, Route> routes = new LinkedHashMap<>();
        routes.put(order, route(leg("room", 0, 15), leg("bath", 15, 80), leg("room", 80, 100)));
        routes.put(late, route(leg("room", 0, 620)));
        CoupledRun untended = run(none, routes);
        double gone = untended.iceGoneS("bath").orElseThrow();
        double lowS = 0;
        while (untended.iceKg("bath", lowS) >= 1.0 / 3) {
            lowS += 60;
        }
        // In it until halfway between.
        double outMin = Math.floor((lowS + gone) / 120);
        BottleOrder longer = white("white", 25, "room", (long) outMin);
        routes.clear();
        routes.put(longer, route(leg("room", 0, 15), leg("bath", 15, outMin), leg("room", outMin, outMin + 20)));
        routes.put(late, route(leg("room", 0, 620)));
        PlanRequest stocked = room().gear(bath)
                .ice(IceStock.of(3))
                .bottle(longer)
                .bottle(late)
                .build();
        assertThat(run(stocked, routes).topUps("bath"))
                .singleElement()
                .satisfies(topUp -> assertThat(topUp.goneS()).isEqualTo(60 * outMin));
    }

    /** Decanted as it is served, in a place where it stands no time: the carafe has been there, and is as warm as that. */
    @Test
    void aCarafeMayBeFilledAtTheTable() {
        BottleOrder order = white("white", 12, "cold", 60).aired(Airing.carafe(Duration.ZERO, "terrace"));
        PlanRequest request = gear().bottle(order).build();
        CoupledRun run = run(request, Map.of(order, route(leg("cold", 0, 60), leg("room", 60, 80))));
        ScenePrediction scene = Scene.builder()
                .gear("room", ROOM)
                .gear("cold", refrigerator().surroundings())
                .gear("terrace", new Site(request).surroundings("terrace"))
                .vessel("bottle", order.bottle(), "cold")
                .emptyVessel("carafe", order.carafe().orElseThrow().vessel(), kelvins(273.15 + 27), "terrace")
                .pourAll("bottle", min(60), "carafe")
                .move("carafe", min(60), "room")
                .build()
                .predict(min(80));
        for (double time : new double[] {3660, 4800}) {
            assertThat(run.drinkK(order, time))
                    .isCloseTo(scene.vessel("carafe").meanTemperatureK(time), within(SAME_K));
        }
    }

    /** One that goes through both baths, and one after the other that is in each of them. */
    @Test
    void whatIsJoinedStaysJoined() {
        Gear other = Evenings.bucket("other", 3, 3);
        BottleOrder a = white("a", 22, "room", 60);
        BottleOrder b = white("b", 24, "room", 60);
        BottleOrder c = white("c", 26, "room", 60);
        PlanRequest request = gear().gear(other).bottle(a).bottle(b).bottle(c).build();
        Map<BottleOrder, Route> routes = new LinkedHashMap<>();
        routes.put(a, route(leg("room", 0, 20), leg("bucket", 20, 40), leg("other", 40, 60), leg("room", 60, 80)));
        routes.put(b, route(leg("room", 0, 20), leg("bucket", 20, 60), leg("room", 60, 80)));
        routes.put(c, route(leg("room", 0, 25), leg("other", 25, 60), leg("room", 60, 80)));
        assertThat(new CoupledRuns(new Site(request), new IceSupply(request))
                        .of(routes)
                        .runs())
                .singleElement()
                .satisfies(run -> assertThat(run.orders()).containsExactly(a, b, c));
    }

    /**
     * Three bottles, two baths: the one that goes through both joins all three; one in the refrigerator, which remembers nothing, and one
     * that stays in the room run by themselves. All come to what one scene says.
     */
    @Test
    void whatSharesMemoryRunsTogetherWhateverTheOrder() {
        Gear other = Evenings.bucket("other", 3, 3);
        BottleOrder a = white("a", 22, "room", 60);
        BottleOrder b = white("b", 24, "room", 60);
        BottleOrder c = white("c", 26, "room", 60);
        BottleOrder d = white("d", 20, "room", 60);
        BottleOrder e = white("e", 18, "room", 60);
        PlanRequest request = gear().gear(other)
                .bottle(a)
                .bottle(b)
                .bottle(c)
                .bottle(d)
                .bottle(e)
                .build();
        Site site = new Site(request);
        Map<BottleOrder, Route> routes = new LinkedHashMap<>();
        routes.put(a, route(leg("room", 0, 20), leg("bucket", 20, 60), leg("room", 60, 80)));
        routes.put(b, route(leg("room", 0, 25), leg("other", 25, 60), leg("room", 60, 80)));
        routes.put(d, route(leg("room", 0, 10), leg("cold", 10, 60), leg("room", 60, 80)));
        routes.put(c, route(leg("room", 0, 20), leg("bucket", 20, 40), leg("other", 40, 60), leg("room", 60, 80)));
        routes.put(e, route(leg("room", 0, 10), leg("cold", 10, 60), leg("room", 60, 80)));
        CoupledRuns.Together together = new CoupledRuns(site, new IceSupply(request)).of(routes);
        assertThat(together.runs())
                .extracting(run -> Set.copyOf(run.orders()))
                .containsExactlyInAnyOrder(Set.of(a, b, c), Set.of(d), Set.of(e));
        assertThat(together.baths().keySet()).containsExactlyInAnyOrder("bucket", "other");
        assertThat(together.baths().get("bucket")).isSameAs(together.baths().get("other"));
        CoupledRun all = run(request, routes);
        Map<BottleOrder, Outcome> expected = all.outcomes();
        assertThat(together.outcomes().keySet()).containsExactlyInAnyOrder(a, b, c, d, e);
        together.outcomes()
                .forEach((order, outcome) -> assertThat(outcome.poursK().get(0))
                        .as(order.id())
                        .isCloseTo(
                                expected.entrySet().stream()
                                        .filter(entry -> entry.getKey().equals(order))
                                        .findFirst()
                                        .orElseThrow()
                                        .getValue()
                                        .poursK()
                                        .get(0),
                                within(SAME_K)));
    }
}
