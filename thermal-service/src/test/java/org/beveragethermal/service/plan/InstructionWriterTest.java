/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.service.plan.ReplanEvenings.START;
import static org.beveragethermal.service.plan.ReplanEvenings.after;
import static org.beveragethermal.service.plan.ReplanEvenings.bucket;
import static org.beveragethermal.service.plan.ReplanEvenings.refrigerator;
import static org.beveragethermal.service.plan.ReplanEvenings.room;
import static org.beveragethermal.service.plan.ReplanEvenings.white;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.service.airing.Airing;
import org.junit.jupiter.api.Test;

/** What somebody would write on a slip of paper for stays and temperatures that are given, thing by thing. */
class InstructionWriterTest {

    private static final Reason FIRST = Reason.of(Reason.Code.KEPT_IN, new Argument.Where("table"));
    private static final Reason LAST = Reason.of(Reason.Code.BROUGHT_BY, new Argument.Where("cool"));

    /** There until an hour has passed. */
    private static final Gear LEAVING = new Gear(
            "leaving",
            "leaving",
            GearKind.REFRIGERATOR,
            Refrigerator.at(celsius(6)),
            6,
            List.of(new Window(START, after(60))));

    private static PlanRequest request(BottleOrder... orders) {
        PlanRequest.Builder request = room().gear(LEAVING).gear(refrigerator()).gear(bucket());
        for (BottleOrder order : orders) {
            request.bottle(order);
        }
        return request.build();
    }

    private static Stay stay(String where, long fromMin, long toMin) {
        return new Stay(where, after(fromMin), after(toMin));
    }

    private static Poured pour(long minute, double celsius) {
        return new Poured(after(minute), Expected.of(273.15 + celsius, 0.5), true);
    }

    private static BottlePlan plan(BottleOrder order, List<Stay> stays, Optional<Instant> latest, Poured... pours) {
        return new BottlePlan(
                order,
                Verdict.VERIFIED,
                stays,
                latest,
                List.of(pours),
                280,
                290,
                Optional.empty(),
                List.of(FIRST, LAST));
    }

    /** A round of which only what is said of baths matters. */
    private static Planning.Round round(PlanRequest request, Map<String, CoupledRun> baths) {
        ServicePlan.Chosen chosen = Planner.plan(request).chosen();
        return new Planning.Round(
                1,
                chosen.problem(),
                chosen.answer(),
                Map.of(),
                Map.of(),
                Map.of(),
                new CoupledRuns.Together(Map.of(), baths, List.of()));
    }

    private static List<Instruction> written(BottlePlan... plans) {
        Map<BottleOrder, BottlePlan> bottles = new LinkedHashMap<>();
        for (BottlePlan plan : plans) {
            bottles.put(plan.order(), plan);
        }
        PlanRequest request = request(bottles.keySet().toArray(new BottleOrder[0]));
        return new InstructionWriter(new Site(request), round(request, Map.of()), bottles, List.of()).instructions();
    }

    private static Instruction at(List<Instruction> instructions, long minute, Instruction.Action action) {
        return instructions.stream()
                .filter(i -> i.at().equals(after(minute)) && i.action() == action)
                .reduce((one, other) -> {
                    throw new AssertionError("two of " + action);
                })
                .orElseThrow(() -> new AssertionError("no " + action + " in " + instructions));
    }

    @Test
    void everyMoveSaysWhatWhenWhenceWhitherAndWhy() {
        BottleOrder order = white("white", 22, "room", 120);
        List<Instruction> slips = written(plan(
                order,
                List.of(
                        stay("room", 0, 10),
                        stay("terrace", 10, 20),
                        stay("leaving", 20, 60),
                        stay("room", 60, 90),
                        stay("cold", 90, 120),
                        stay("room", 120, 130),
                        stay("cold", 130, 140)),
                Optional.of(after(95)),
                pour(120, 9),
                pour(140, 13)));
        assertThat(slips)
                .extracting(
                        i -> i.action() + " " + Duration.between(START, i.at()).toMinutes() + " "
                                + i.from().orElse("") + ">" + i.where() + " "
                                + i.reason().code())
                .containsExactly(
                        "MOVE 10 room>terrace BROUGHT_BY",
                        "MOVE 20 terrace>leaving BROUGHT_BY",
                        "TAKE_OUT 60 leaving>room GEAR_LEAVES",
                        "MOVE 90 room>cold BROUGHT_BY",
                        "SERVE 120 cold>room KEPT_IN",
                        "MOVE 130 room>cold KEPT_IN");
        assertThat(slips).allSatisfy(i -> assertThat(i.bottleIds()).containsExactly("white"));
        assertThat(at(slips, 60, Instruction.Action.TAKE_OUT).reason().arguments())
                .containsExactly(new Argument.Where("leaving"), new Argument.Moment(after(60)));
        // Only the last thing before serving can be put off.
        assertThat(slips)
                .filteredOn(i -> i.latest().isPresent())
                .singleElement()
                .satisfies(i -> assertThat(i.at()).isEqualTo(after(90)))
                .satisfies(i -> assertThat(i.latest()).contains(after(95)));
        // What is expected is the next glass: of 8 °C to 14 °C a glass at 9 °C and at 13 °C has a margin of 1 K.
        for (Instruction slip : slips) {
            boolean served = slip.at().isAfter(after(120));
            assertThat(slip.expected().orElseThrow().meanK()).isCloseTo(273.15 + (served ? 13 : 9), within(1e-9));
            assertThat(slip.marginK().orElseThrow()).isCloseTo(1, within(1e-9));
        }
    }

    /** Moved from one gear to another it is not taken out, though the first leaves; nor is why it is taken out last that gear leaves. */
    @Test
    void gearThatLeavesIsTheReasonOnlyWhereABottleHasToGetOut() {
        List<Instruction> over = written(plan(
                white("white", 22, "room", 120),
                List.of(
                        stay("room", 0, 20),
                        stay("leaving", 20, 60),
                        stay("cold", 60, 90),
                        stay("room", 90, 100),
                        stay("cold", 100, 120),
                        stay("room", 120, 140)),
                Optional.empty(),
                pour(120, 9)));
        assertThat(at(over, 60, Instruction.Action.MOVE).reason()).isEqualTo(LAST);
        assertThat(at(over, 90, Instruction.Action.TAKE_OUT).reason()).isEqualTo(LAST);
        // Where taking it out is the last thing before serving, that is what brings it to its temperature.
        List<Instruction> last = written(plan(
                white("white", 22, "room", 120),
                List.of(stay("room", 0, 20), stay("leaving", 20, 60), stay("room", 60, 140)),
                Optional.of(after(60)),
                pour(120, 9)));
        Instruction out = at(last, 60, Instruction.Action.TAKE_OUT);
        assertThat(out.reason()).isEqualTo(LAST);
        assertThat(out.latest()).isEmpty();
        // Taken out while it is drunk, when gear leaves that need not be said of a bottle in the middle of its glasses.
        List<Instruction> drunk = written(plan(
                white("white", 22, "room", 50),
                List.of(stay("room", 0, 20), stay("leaving", 20, 60), stay("room", 60, 70)),
                Optional.empty(),
                pour(50, 9)));
        assertThat(at(drunk, 60, Instruction.Action.TAKE_OUT).reason())
                .isEqualTo(Reason.of(
                        Reason.Code.GEAR_LEAVES, new Argument.Where("leaving"), new Argument.Moment(after(60))));
        assertThat(at(drunk, 60, Instruction.Action.TAKE_OUT).latest()).isEmpty();
        // Taken out before it leaves, it is for the sake of the drink.
        List<Instruction> before = written(plan(
                white("white", 22, "room", 120),
                List.of(
                        stay("room", 0, 20),
                        stay("leaving", 20, 50),
                        stay("room", 50, 90),
                        stay("cold", 90, 120),
                        stay("room", 120, 140)),
                Optional.empty(),
                pour(120, 9)));
        assertThat(at(before, 50, Instruction.Action.TAKE_OUT).reason()).isEqualTo(LAST);
        // After the last glass the last is what is told of.
        assertThat(at(drunk, 60, Instruction.Action.TAKE_OUT)
                        .expected()
                        .orElseThrow()
                        .meanK())
                .isCloseTo(273.15 + 9, within(1e-9));
    }

    /** A bottle that is decanted when it is taken out: the taking out can wait, the decanting is told with no such moment. */
    @Test
    void decantingAndServingHaveNoLatestMoment() {
        BottleOrder order = white("white", 12, "cold", 100).aired(Airing.carafe(Duration.ofMinutes(40), "room"));
        List<Instruction> slips = written(plan(
                order, List.of(stay("cold", 0, 60), stay("room", 60, 120)), Optional.of(after(70)), pour(100, 10)));
        assertThat(at(slips, 60, Instruction.Action.TAKE_OUT).latest()).contains(after(70));
        Instruction decant = at(slips, 60, Instruction.Action.DECANT);
        assertThat(decant.latest()).isEmpty();
        assertThat(decant.where()).isEqualTo("room");
        assertThat(decant.reason()).isEqualTo(Reason.of(Reason.Code.AIRED, new Argument.Span(Duration.ofMinutes(40))));
        assertThat(slips)
                .extracting(Instruction::action)
                .containsExactly(Instruction.Action.TAKE_OUT, Instruction.Action.DECANT, Instruction.Action.SERVE);
    }

    /** Two alike go in together; each is served and poured again at its own table; what is told of both is what has less margin. */
    @Test
    void whatIsAlikeIsDoneAtOnceAndPouredApart() {
        List<Pouring> rounds = List.of(Pouring.of(after(100), litres(0.3)), Pouring.of(after(115), litres(0.3)));
        BottleOrder inside = white("inside", 22, "room", 100).poured(rounds);
        BottleOrder outside = new BottleOrder(
                        "outside",
                        "outside",
                        inside.bottle(),
                        "room",
                        1,
                        inside.target(),
                        inside.servedAt(),
                        "terrace",
                        inside.finishedAfter())
                .poured(rounds);
        List<Stay> stays = List.of(stay("room", 0, 30), stay("cold", 30, 120));
        for (boolean tightFirst : new boolean[] {true, false}) {
            double one = tightFirst ? 13.5 : 11;
            double other = tightFirst ? 11 : 13.5;
            List<Instruction> slips = written(
                    plan(inside, stays, Optional.of(after(40)), pour(100, one), pour(115, one)),
                    plan(outside, stays, Optional.of(after(40)), pour(100, other), pour(115, other)));
            Instruction move = at(slips, 30, Instruction.Action.MOVE);
            assertThat(move.bottleIds()).containsExactly("inside", "outside");
            assertThat(move.latest()).contains(after(40));
            assertThat(move.expected().orElseThrow().meanK()).isCloseTo(273.15 + 13.5, within(1e-9));
            assertThat(move.marginK().orElseThrow()).isCloseTo(0.5, within(1e-9));
            for (Instruction.Action action : List.of(Instruction.Action.SERVE, Instruction.Action.POUR)) {
                assertThat(slips)
                        .filteredOn(i -> i.action() == action)
                        .extracting(Instruction::bottleIds)
                        .containsExactly(List.of("inside"), List.of("outside"));
            }
        }
    }

    /** Water is cold a quarter of an hour after ice has come in: filled just so long before, it is in time. */
    @Test
    void aBathIsFilledInTimeIfItIsAQuarterOfAnHourBefore() {
        BottleOrder order = white("white", 22, "room", 60);
        PlanRequest request = request(order);
        Site site = new Site(request);
        Route route = Route.of(
                Route.Kind.ONE_MEANS,
                new Leg("room", 0, 1800),
                new Leg("bucket", 1800, 3600),
                new Leg("room", 3600, 4800));
        CoupledRun run = new CoupledRun(site, new IceSupply(request), Map.of(order, route), Set.of());
        Planning.Round round = round(request, Map.of("bucket", run));
        for (long minute : new long[] {14, 15, 16}) {
            GearUse use = new GearUse("bucket", after(minute), 4, 4, 3, Optional.empty(), List.of());
            Instruction fill = new InstructionWriter(site, round, Map.of(), List.of(use))
                    .instructions()
                    .get(0);
            assertThat(fill.action()).isEqualTo(Instruction.Action.FILL);
            assertThat(fill.at()).isEqualTo(after(minute));
            assertThat(fill.where()).isEqualTo("bucket");
            assertThat(fill.reason())
                    .isEqualTo(
                            minute > 15
                                    ? Reason.of(Reason.Code.FILLED_LATE)
                                    : Reason.of(
                                            Reason.Code.READY_IN_TIME,
                                            new Argument.Span(Duration.ofMinutes(30 - minute))));
        }
    }
}
