/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.service.plan.ReplanEvenings.START;
import static org.beveragethermal.service.plan.ReplanEvenings.after;
import static org.beveragethermal.service.plan.ReplanEvenings.bottle;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.beveragethermal.service.choice.Certificate;
import org.beveragethermal.service.choice.ChoiceAnswer;
import org.beveragethermal.service.choice.ChoiceProblem;
import org.junit.jupiter.api.Test;

/** What is left of an earlier plan and what is wrong with one, told of plans written by hand. */
class EarlierPlanTest {

    private static final BottleOrder WHITE = ReplanEvenings.white("white", 22, "room", 60);
    private static final Gear COLD = ReplanEvenings.refrigerator();
    private static final Gear COLD_TOO = new Gear("cold too", "cold too", COLD.kind(), COLD.surroundings(), 6);
    private static final Gear BUCKET = ReplanEvenings.bucket();
    private static final double LOW_K = 281.15;
    private static final double HIGH_K = 287.15;

    private static Stay stay(String where, int from, int to) {
        return new Stay(where, after(from), after(to));
    }

    private static Leg leg(String where, int fromMin, int toMin) {
        return new Leg(where, 60.0 * fromMin, 60.0 * toMin);
    }

    private static BottlePlan plan(
            BottleOrder order, double[] poursK, double coldestK, double warmestK, Stay... stays) {
        List<Poured> pours = new ArrayList<>();
        for (int i = 0; i < poursK.length; i++) {
            boolean in = poursK[i] >= LOW_K && poursK[i] <= HIGH_K;
            pours.add(new Poured(order.servedAt().plus(Duration.ofMinutes(10L * i)), Expected.of(poursK[i], 0.1), in));
        }
        Verdict verdict = coldestK < LOW_K || warmestK > HIGH_K ? Verdict.LEAVES_RANGE : Verdict.VERIFIED;
        return new BottlePlan(
                order,
                verdict,
                List.of(stays),
                Optional.empty(),
                pours,
                coldestK,
                warmestK,
                Optional.empty(),
                List.of());
    }

    private static BottlePlan plan(Stay... stays) {
        return plan(WHITE, new double[] {284.15, 285.15, 286.15}, 284, 286.5, stays);
    }

    private static PlanRequest request(Instant from, BottleOrder order, Gear... gear) {
        PlanRequest.Builder builder = PlanRequest.startingAt(from)
                .place(new Place("room", "room", ReplanEvenings.ROOM))
                .place(new Place("terrace", "terrace", ReplanEvenings.ROOM));
        for (Gear item : gear) {
            builder.gear(item);
        }
        return builder.bottle(order).build();
    }

    private static ServicePlan service(ChoiceAnswer answer, List<CapacityConflict> conflicts, BottlePlan... bottles) {
        return new ServicePlan(
                request(START, WHITE, COLD, COLD_TOO, BUCKET),
                List.of(bottles),
                List.of(),
                List.of(),
                conflicts,
                List.of(),
                new ServicePlan.Chosen(new ChoiceProblem(List.of("cost"), 1, List.of(), List.of()), answer, 1));
    }

    private static ServicePlan service(BottlePlan... bottles) {
        return service(new ChoiceAnswer.Undecided("none", List.of(0L)), List.of(), bottles);
    }

    private static final ServicePlan CHILLED =
            service(plan(stay("room", 0, 20), stay("cold", 20, 60), stay("room", 60, 80)));

    private static EarlierRoutes from(ServicePlan plan, int minute, BottleOrder order) {
        return new EarlierRoutes(plan, request(after(minute), order, COLD, COLD_TOO, BUCKET));
    }

    private static Optional<Route> left(ServicePlan plan, int minute, BottleOrder order) {
        return from(plan, minute, order).route(order);
    }

    @Test
    void whatIsLeftToBeDoneIsToldOnTheNewClock() {
        assertThat(left(CHILLED, 10, WHITE))
                .contains(Route.of(Route.Kind.ONE_MEANS, leg("room", 0, 10), leg("cold", 10, 50), leg("room", 50, 70)));
        BottleOrder inCold = WHITE.standing(bottle(18), "cold");
        assertThat(left(CHILLED, 30, inCold))
                .contains(Route.of(Route.Kind.STAY, leg("cold", 0, 30), leg("room", 30, 50)));
        // Ten minutes later it stays ten minutes longer where it was last, and as long at its table.
        assertThat(left(CHILLED, 10, WHITE.shifted(Duration.ofMinutes(10))))
                .contains(Route.of(Route.Kind.ONE_MEANS, leg("room", 0, 10), leg("cold", 10, 60), leg("room", 60, 80)));
        assertThat(left(CHILLED, 10, WHITE.shifted(Duration.ofMinutes(-10))))
                .contains(Route.of(Route.Kind.ONE_MEANS, leg("room", 0, 10), leg("cold", 10, 40), leg("room", 40, 60)));
        // Alike gear goes by one name, but for where it stands now.
        ServicePlan other = service(plan(stay("room", 0, 20), stay("cold too", 20, 60), stay("room", 60, 80)));
        assertThat(left(other, 10, WHITE)).isEqualTo(left(CHILLED, 10, WHITE));
        assertThat(left(other, 30, WHITE.standing(bottle(18), "cold too")))
                .contains(Route.of(Route.Kind.STAY, leg("cold too", 0, 30), leg("room", 30, 50)));
        ServicePlan two =
                service(plan(stay("room", 0, 20), stay("bucket", 20, 30), stay("cold", 30, 60), stay("room", 60, 80)));
        assertThat(left(two, 10, WHITE).map(Route::kind)).contains(Route.Kind.TWO_MEANS);
        ServicePlan turns = service(plan(
                stay("room", 0, 20),
                stay("cold", 20, 60),
                stay("room", 60, 65),
                stay("bucket", 65, 70),
                stay("room", 70, 80)));
        assertThat(left(turns, 10, WHITE).map(Route::kind)).contains(Route.Kind.BY_TURNS);
    }

    @Test
    void nothingIsLeftWhereTheGearIsGoneOrTheBottleIsNew() {
        EarlierRoutes without = new EarlierRoutes(CHILLED, request(after(10), WHITE, BUCKET));
        assertThat(without.route(WHITE)).isEmpty();
        BottleOrder other = ReplanEvenings.white("another", 22, "room", 60);
        EarlierRoutes unknown = from(CHILLED, 10, other);
        assertThat(unknown.route(other)).isEmpty();
        Route any = Route.of(Route.Kind.STAY, leg("room", 0, 70));
        assertThat(unknown.changes(other, any)).isZero();
        assertThat(unknown.forgivenK(other, any)).isZero();
        assertThat(unknown.leastMarginK(other)).isInfinite();
    }

    @Test
    void anotherWayIsTwoChangesAnotherMomentIsOne() {
        EarlierRoutes earlier = from(CHILLED, 10, WHITE);
        assertChanges(earlier, 0, leg("room", 0, 10), leg("cold", 10, 50), leg("room", 50, 70));
        assertChanges(earlier, 0, leg("room", 0, 10), leg("cold too", 10, 50), leg("room", 50, 70));
        assertChanges(earlier, 2, leg("room", 0, 10), leg("bucket", 10, 50), leg("room", 50, 70));
        assertChanges(earlier, 2, leg("room", 0, 10), leg("cold", 10, 50), leg("cold too", 50, 70));
        assertChanges(earlier, 2, leg("room", 0, 70));
        assertChanges(earlier, 1, leg("room", 0, 11), leg("cold", 11, 50), leg("room", 50, 70));
        assertChanges(earlier, 2, leg("room", 0, 11), leg("cold", 11, 49), leg("room", 49, 70));
        assertChanges(earlier, 0, new Leg("room", 0, 630), new Leg("cold", 630, 3000), leg("room", 50, 70));
        assertChanges(earlier, 1, new Leg("room", 0, 631), new Leg("cold", 631, 3000), leg("room", 50, 70));
    }

    private static void assertChanges(EarlierRoutes earlier, long changes, Leg... legs) {
        Route route = new Route(Route.Kind.ONE_MEANS, List.of(legs));
        assertThat(earlier.changes(WHITE, route)).as("%s", route).isEqualTo(changes);
        assertThat(earlier.forgivenK(WHITE, route)).isEqualTo(changes == 0 ? 0.3 : 0);
    }

    /** The range is 8 °C to 14 °C; the pours ahead are at 11 °C, 12 °C and 13 °C, of which the last is nearest to an end: 1 K. */
    @Test
    void thePlanStaysAsLongAsItsMarginIsNearlyThere() {
        assertThat(from(CHILLED, 10, WHITE).leastMarginK(WHITE)).isCloseTo(1 - 0.3, within(1e-9));
        ServicePlan cooling = service(plan(
                WHITE, new double[] {286.65, 285.15, 284.15}, 284, 286.7, stay("room", 0, 60), stay("room", 60, 80)));
        BottleOrder again = new BottleOrder(
                "white", "white", bottle(12), "room", 1, WHITE.target(), after(66), "room", Duration.ofMinutes(14));
        // The first pour, half a kelvin from the end, is over.
        assertThat(from(cooling, 65, again).leastMarginK(again)).isCloseTo(2 - 0.3, within(1e-9));
    }

    @Test
    void aBottleOutOfItsRangeIsToldByItsWorstGlass() {
        BottlePlan warm = plan(WHITE, new double[] {286, 288, 289}, 286, 289.5, stay("room", 0, 80));
        assertThat(Fault.of(service(warm))).singleElement().satisfies(fault -> {
            assertThat(fault.bottleIds()).containsExactly("white");
            assertThat(fault.gearId()).isEmpty();
            assertThat(fault.from()).isEqualTo(after(70));
            assertThat(fault.to()).isEqualTo(after(80));
            assertSaid(fault, Sentence.FAULT_TOO_WARM, after(80), 289, HIGH_K);
        });
        BottlePlan cold = plan(WHITE, new double[] {280, 279, 282}, 279, 282, stay("room", 0, 80));
        assertThat(Fault.of(service(cold))).singleElement().satisfies(fault -> {
            assertThat(fault.from()).isEqualTo(after(60));
            assertThat(fault.to()).isEqualTo(after(70));
            assertSaid(fault, Sentence.FAULT_TOO_COLD, after(70), 279, LOW_K);
        });
        // Out of range between two glasses only: all are shown, the warmest named.
        BottlePlan between = plan(WHITE, new double[] {284, 286, 285}, 284, 288, stay("room", 0, 80));
        assertThat(Fault.of(service(between))).singleElement().satisfies(fault -> {
            assertThat(fault.from()).isEqualTo(after(60));
            assertThat(fault.to()).isEqualTo(after(80));
            assertSaid(fault, Sentence.FAULT_TOO_WARM, after(70), 286, HIGH_K);
        });
        // As far out on either side it is called too warm.
        BottlePlan both = plan(WHITE, new double[] {280.15, 288.15}, 280.15, 288.15, stay("room", 0, 80));
        assertThat(Fault.of(service(both)))
                .singleElement()
                .satisfies(fault -> assertThat(fault.what().sentence()).isEqualTo(Sentence.FAULT_TOO_WARM));
        assertThat(Fault.of(CHILLED)).isEmpty();
    }

    private static void assertSaid(Fault fault, Sentence sentence, Instant at, double kelvins, double endK) {
        assertThat(fault.what().sentence()).isEqualTo(sentence);
        assertThat(fault.what().arguments())
                .containsExactly(
                        new Argument.Bottle("white"),
                        new Argument.Moment(at),
                        new Argument.Temperature(kelvins),
                        new Argument.Temperature(endK));
    }

    @Test
    void gearThatIsTooFullIsToldWithItsBottlesAndWhatIsSharedOnlyWhereNoneIs() {
        CapacityConflict conflict = new CapacityConflict("cold", after(20), after(60), 7, 6, List.of("white"));
        ChoiceAnswer none = new ChoiceAnswer.Infeasible("x", List.of("white"), List.of(), new Certificate(List.of()));
        BottlePlan bottle = CHILLED.bottles().get(0);
        assertThat(Fault.of(service(none, List.of(conflict), bottle)))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.bottleIds()).containsExactly("white");
                    assertThat(fault.gearId()).contains("cold");
                    assertThat(fault.from()).isEqualTo(after(20));
                    assertThat(fault.to()).isEqualTo(after(60));
                    assertThat(fault.what().sentence()).isEqualTo(Sentence.FAULT_OVERFULL);
                    assertThat(fault.what().arguments())
                            .containsExactly(
                                    new Argument.Where("cold"),
                                    new Argument.Moment(after(20)),
                                    new Argument.Moment(after(60)),
                                    new Argument.Count(7),
                                    new Argument.Count(6));
                });
        assertThat(Fault.of(service(none, List.of(), bottle))).singleElement().satisfies(fault -> {
            assertThat(fault.what().sentence()).isEqualTo(Sentence.FAULT_SHARED);
            assertThat(fault.what().arguments()).containsExactly(new Argument.Bottles(List.of("white")));
            assertThat(fault.bottleIds()).containsExactly("white");
            assertThat(fault.from()).isEqualTo(START);
            assertThat(fault.to()).isEqualTo(after(80));
        });
    }
}
