/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;
import org.junit.jupiter.api.Test;

/** Margins, verdicts, what readings are worth, what is told of a change; figures by hand. */
class MarginsTest {

    private static final double LOW_K = 281.15;
    private static final double HIGH_K = 285.15;
    private static final Instant NOW = Evenings.START;
    private static final Phrase BECAUSE = Phrase.of(Sentence.FAULT_SHARED, new Argument.Bottles(List.of("white")));

    private static Forecast forecast(boolean fromAbove, double[] pours, double sigma) {
        double[] sigmas = new double[pours.length];
        Arrays.fill(sigmas, sigma);
        return new Forecast(pours, sigmas, new double[] {280}, fromAbove, 0.7, new double[0], new double[0]);
    }

    @Test
    void poursOutsideARangeAreCountedItsEndsBelongToIt() {
        Forecast forecast = forecast(true, new double[] {LOW_K, LOW_K - 1e-9, 283, HIGH_K, HIGH_K + 1e-9}, 0);
        assertThat(forecast.outside(LOW_K, HIGH_K)).isEqualTo(2);
        assertThat(forecast.pouredK()).isEqualTo(LOW_K);
        assertThat(forecast.pourK(2)).isEqualTo(283);
        assertThat(forecast.pours()).isEqualTo(5);
        assertThat(forecast(true, new double[] {283}, 0.4).sigmaK(0)).isEqualTo(0.4);
        assertThat(forecast.iceKg()).isEqualTo(0.7);
        assertThat(forecast.endK(0)).isEqualTo(280);
    }

    /** Wanted are so many standard deviations to the side that a bottle comes from, 0.2 K to the other. */
    @Test
    void whatMarginsLack() {
        // Chilled: 1.2 K above wanted with 1.5 standard deviations of 0.8 K; 0.7 K are there.
        assertThat(forecast(true, new double[] {HIGH_K - 0.7}, 0.8).shortfallK(LOW_K, HIGH_K, 1.5))
                .isCloseTo(0.5, within(1e-9));
        // As near to the other end only 0.2 K count.
        assertThat(forecast(true, new double[] {LOW_K + 0.7}, 0.8).shortfallK(LOW_K, HIGH_K, 1.5))
                .isZero();
        assertThat(forecast(true, new double[] {LOW_K + 0.05}, 0.8).shortfallK(LOW_K, HIGH_K, 1.5))
                .isCloseTo(0.15, within(1e-9));
        // Warmed it is the other way round.
        assertThat(forecast(false, new double[] {LOW_K + 0.7}, 0.8).shortfallK(LOW_K, HIGH_K, 1.5))
                .isCloseTo(0.5, within(1e-9));
        assertThat(forecast(false, new double[] {HIGH_K - 0.05}, 0.8).shortfallK(LOW_K, HIGH_K, 1.5))
                .isCloseTo(0.15, within(1e-9));
        // Beyond the end the distance is added, and pours add up.
        assertThat(forecast(true, new double[] {HIGH_K + 1, LOW_K - 1, 283}, 0.8)
                        .shortfallK(LOW_K, HIGH_K, 1.5))
                .isCloseTo(2.2 + 1.2, within(1e-9));
    }

    private static BottleOrder order() {
        BottleOrder order = Evenings.order("white", "white-light", 22, "room", 60, "room");
        return order.aimedAt(Targets.of(Targets.style("white-light"), RangePolicy.own(celsius(8), celsius(12))));
    }

    private static Outcome outcome(OptionalDouble leavesS, Double... poursK) {
        return new Outcome(List.of(poursK), 280, 290, leavesS);
    }

    @Test
    void aVerdictLooksAtTheFirstPourAndThenAtTheRest() {
        OptionalDouble never = OptionalDouble.empty();
        OptionalDouble soon = OptionalDouble.of(4000);
        assertThat(outcome(never, 283.0, 284.0).verdict(order(), false)).isEqualTo(Verdict.VERIFIED);
        assertThat(outcome(never, 283.0, 284.0).verdict(order(), true)).isEqualTo(Verdict.REPAIRED);
        assertThat(outcome(soon, 283.0, 286.0).verdict(order(), true)).isEqualTo(Verdict.LEAVES_RANGE);
        assertThat(outcome(soon, 286.0, 283.0).verdict(order(), true)).isEqualTo(Verdict.NOT_REACHED);
        // 0.05 K more or less is in range all the same.
        assertThat(outcome(never, HIGH_K + 0.049).verdict(order(), false)).isEqualTo(Verdict.VERIFIED);
        assertThat(outcome(never, HIGH_K + 0.051).verdict(order(), false)).isEqualTo(Verdict.NOT_REACHED);
        assertThat(outcome(soon, 283.0, HIGH_K + 0.049, HIGH_K + 0.051, LOW_K - 0.06, 284.0)
                        .outside(order()))
                .isEqualTo(2);
        assertThat(outcome(soon, 283.0, 286.15, 282.15).marginK(order())).isCloseTo(-1, within(1e-9));
        assertThat(outcome(never, 283.15, 282.15).marginK(order())).isCloseTo(1, within(1e-9));
    }

    @Test
    void nineInTenAreWithinTheInterval() {
        // The standard normal distribution has 5 % beyond 1.6449 (NIST/SEMATECH e-Handbook 1.3.6.7.1, from memory).
        Expected expected = Expected.of(283, 0.5);
        assertThat(expected.low90K()).isCloseTo(283 - 0.82245, within(1e-9));
        assertThat(expected.high90K()).isCloseTo(283 + 0.82245, within(1e-9));
    }

    /** Two estimates weighted by the inverse of their variances; worked out with 0.3 and 0.4: 0.09 to 0.16, together 0.5. */
    @Test
    void aReadingCountsByHowSureItIs() {
        Trust trust = Trust.of(new News.Reading("white", 284, 0.4), 283, 0.3);
        assertThat(trust.usedK()).isCloseTo(283 + 0.36, within(1e-9));
        assertThat(trust.deviations()).isCloseTo(2, within(1e-9));
        assertThat(trust.doubted()).isFalse();
        assertThat(Trust.of(new News.Reading("white", 283.5, 0.4), 283, 0.3).usedK())
                .isCloseTo(283 + 0.18, within(1e-9));
        assertThat(Trust.of(new News.Reading("white", 281.99, 0.4), 283, 0.3).doubted())
                .isTrue();
        assertThat(trust.phrase().sentence()).isEqualTo(Sentence.TRUST_KEPT);
        assertThat(trust.phrase().arguments())
                .containsExactly(
                        new Argument.Bottle("white"), new Argument.Temperature(284), new Argument.Temperature(283));
        assertThat(new Trust("white", 283, 290, 286, 14).phrase().sentence()).isEqualTo(Sentence.TRUST_DOUBTED);
    }

    private static BottlePlan plan(BottleOrder order, Stay... stays) {
        return new BottlePlan(
                order,
                Verdict.VERIFIED,
                List.of(stays),
                Optional.empty(),
                List.of(new Poured(order.servedAt(), Expected.of(283, 0.1), true)),
                283,
                284,
                Optional.empty(),
                List.of());
    }

    private static Instant minute(int minute) {
        return NOW.plus(Duration.ofMinutes(minute));
    }

    private static Stay stay(String where, int from, int to) {
        return new Stay(where, minute(from), minute(to));
    }

    private static List<Change> changes(BottlePlan old, BottlePlan now, int fromMinute) {
        List<Change> changes = new ArrayList<>();
        new Comparison(old, now, minute(fromMinute), BECAUSE).addTo(changes);
        return changes;
    }

    private static final BottleOrder AT_60 = order();

    private static BottlePlan chilled(String gear, int from) {
        return plan(AT_60, stay("room", 0, from), stay(gear, from, 60), stay("room", 60, 85));
    }

    private static BottlePlan staying(String keptIn) {
        return plan(AT_60, stay("room", 0, 60), stay(keptIn, 60, 85));
    }

    private static void assertChange(Change change, Change.Kind kind, String before, int was, String now, int is) {
        assertThat(change.kind()).isEqualTo(kind);
        assertThat(change.bottleId()).isEqualTo("white");
        assertThat(change.whereBefore()).isEqualTo(before.isEmpty() ? Optional.empty() : Optional.of(before));
        assertThat(change.atBefore()).isEqualTo(was < 0 ? Optional.empty() : Optional.of(minute(was)));
        assertThat(change.where()).isEqualTo(now.isEmpty() ? Optional.empty() : Optional.of(now));
        assertThat(change.at()).isEqualTo(is < 0 ? Optional.empty() : Optional.of(minute(is)));
    }

    private static void assertSaid(Change change, Sentence sentence, Argument... arguments) {
        Phrase phrase = change.phrase();
        assertThat(phrase.sentence()).isEqualTo(sentence);
        assertThat(phrase.arguments()).startsWith(arguments);
    }

    @Test
    void changesAreToldOnceEachWithBeforeAndNow() {
        Argument white = new Argument.Bottle("white");
        Argument cold = new Argument.Where("cold");
        Argument at20 = new Argument.Moment(minute(20));
        Argument at30 = new Argument.Moment(minute(30));
        assertThat(changes(chilled("cold", 20), chilled("cold", 20), 5)).isEmpty();
        assertThat(changes(chilled("cold", 20), chilled("cold", 30), 5))
                .singleElement()
                .satisfies(change -> {
                    assertChange(change, Change.Kind.TIME, "cold", 20, "cold", 30);
                    assertSaid(change, Sentence.CHANGE_TIME, white, cold, at30, at20);
                });
        assertThat(changes(chilled("cold", 20), chilled("bucket", 20), 5))
                .singleElement()
                .satisfies(change -> {
                    assertChange(change, Change.Kind.WAY, "cold", 20, "bucket", 20);
                    assertSaid(change, Sentence.CHANGE_WAY, white, new Argument.Where("bucket"), at20, cold, at20);
                });
        assertThat(changes(chilled("cold", 20), staying("room"), 5))
                .singleElement()
                .satisfies(change -> {
                    assertChange(change, Change.Kind.STAYS, "cold", 20, "", -1);
                    assertSaid(change, Sentence.CHANGE_STAYS, white, cold, at20);
                });
        assertThat(changes(staying("room"), chilled("cold", 20), 5))
                .singleElement()
                .satisfies(change -> {
                    assertChange(change, Change.Kind.MOVES, "", -1, "cold", 20);
                    assertSaid(change, Sentence.CHANGE_MOVES, white, cold, at20);
                });
        assertThat(changes(staying("cold"), staying("room"), 5)).singleElement().satisfies(change -> {
            assertChange(change, Change.Kind.KEPT, "cold", -1, "room", -1);
            assertSaid(change, Sentence.CHANGE_KEPT, white, new Argument.Where("room"), cold);
        });
        // What was done before is not told.
        assertThat(changes(chilled("cold", 20), chilled("cold", 30), 40)).isEmpty();
        BottleOrder later = AT_60.shifted(Duration.ofMinutes(10));
        assertThat(changes(staying("room"), plan(later, stay("room", 0, 95)), 5))
                .singleElement()
                .satisfies(change -> {
                    assertChange(change, Change.Kind.SERVED, "", 60, "", 70);
                    assertSaid(
                            change,
                            Sentence.CHANGE_SERVED,
                            white,
                            new Argument.Moment(minute(70)),
                            new Argument.Moment(minute(60)));
                });
    }

    @Test
    void thirtySecondsAreNoChange() {
        BottlePlan old = chilled("cold", 20);
        for (int seconds : new int[] {-30, -29, 29, 30}) {
            Instant in = minute(20).plusSeconds(seconds);
            BottlePlan now =
                    plan(AT_60, new Stay("room", NOW, in), new Stay("cold", in, minute(60)), stay("room", 60, 85));
            assertThat(changes(old, now, 5)).hasSize(Math.abs(seconds) < 30 ? 0 : 1);
        }
    }

    @Test
    void additionsAndRemovalsAreChangesToo() {
        Phrase why = BECAUSE;
        Change added = Change.added(chilled("cold", 20), why);
        assertChange(added, Change.Kind.ADDED, "", -1, "cold", 20);
        assertSaid(
                added,
                Sentence.CHANGE_ADDED,
                new Argument.Bottle("white"),
                new Argument.Where("cold"),
                new Argument.Moment(minute(20)));
        assertChange(Change.added(staying("room"), why), Change.Kind.ADDED, "", -1, "room", 0);
        Change gone = Change.gone("white", why);
        assertChange(gone, Change.Kind.REMOVED, "", -1, "", -1);
        assertSaid(gone, Sentence.CHANGE_REMOVED, new Argument.Bottle("white"), new Argument.Said(why));
    }

    @Test
    void aPlanOfABottleKnowsWhereItIs() {
        BottlePlan chilled = chilled("cold", 20);
        assertThat(chilled.means()).isEqualTo("cold");
        assertThat(chilled.startAt()).contains(minute(20));
        assertThat(chilled.keptIn()).isEqualTo("room");
        assertThat(chilled.pouredAtK()).isEqualTo(283);
        assertThat(chilled.finishedAtK()).isEqualTo(283);
        assertThat(chilled.stayAt(minute(19)).where()).isEqualTo("room");
        assertThat(chilled.stayAt(minute(20)).where()).isEqualTo("cold");
        assertThat(chilled.stayAt(minute(-5)).where()).isEqualTo("room");
        assertThat(staying("cold").startAt()).isEmpty();
        assertThat(staying("cold").keptIn()).isEqualTo("cold");
        assertThat(plan(AT_60, stay("cold", 0, 60), stay("room", 60, 85)).startAt())
                .contains(minute(0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> plan(AT_60))
                .withMessage("plan of white with 0 stays and 1 pours: expected one of each at least");
    }

    @Test
    void pouringsAreInOrderWithinTheTimeAndNoMoreThanThereIs() {
        BottleOrder order = AT_60;
        List<Pouring> full = List.of(Pouring.of(minute(60), litres(0.375)), Pouring.of(minute(85), litres(0.375)));
        assertThat(order.poured(full).pourTimes()).containsExactly(minute(60), minute(85));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> order.poured(
                        List.of(Pouring.of(minute(60), litres(0.375)), Pouring.of(minute(85), litres(0.376)))))
                .withMessageContaining("poured from white")
                .withMessageContaining("expected at most");
        for (int[] minutes : new int[][] {{59, 70}, {70, 65}, {70, 70}, {70, 86}}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> order.poured(List.of(
                            Pouring.of(minute(minutes[0]), litres(0.100)),
                            Pouring.of(minute(minutes[1]), litres(0.100)))))
                    .withMessageContaining("pouring of white at")
                    .withMessageContaining("from " + minute(60) + " to " + minute(85));
        }
        BottleOrder later = order.poured(full).shifted(Duration.ofMinutes(10));
        assertThat(later.pourTimes()).containsExactly(minute(70), minute(95));
        assertThat(later.servedAt()).isEqualTo(minute(70));
        assertThat(later.pourings()).extracting(Pouring::volumeM3).containsOnly(375e-6);
    }

    @Test
    void figuresOfNewsEndWhereTheyAreSaidTo() {
        assertThat(new News.IceLeft(0).massKg()).isZero();
        assertThat(new News.IceLeft(10_000).massKg()).isEqualTo(10_000);
        refused(() -> new News.IceLeft(-0.001), "ice left -0.001 kg", "0 to 10000.0 kg");
        refused(() -> new News.IceLeft(10_001), "ice left 10001.0 kg");
        assertThat(new News.Reading("white", 233.15, 10).temperatureK()).isEqualTo(233.15);
        assertThat(new News.Reading("white", 373.15, 0.01).temperatureK()).isEqualTo(373.15);
        refused(() -> new News.Reading("white", 233.14, 1), "reading of white 233.14 K", "233.15 K to 373.15 K");
        refused(() -> new News.Reading("white", 373.16, 1), "reading of white 373.16 K");
        refused(() -> new News.Reading("white", 283, 0), "standard error of the reading of white 0.0 K");
        refused(() -> new News.Reading("white", 283, 10.1), "10.1 K", "at most 10.0 K");
        Duration day = Duration.ofDays(1);
        assertThat(new News.LateGuests(List.of("white"), day).by()).isEqualTo(day);
        refused(() -> new News.LateGuests(List.of(), day.plusMillis(1)), "guests late by", "at most a day");
        refused(() -> new News.LateGuests(List.of(), Duration.ZERO), "guests late by PT0S");
        refused(() -> new News.EarlierGuests(List.of(), Duration.ofMinutes(-1)), "guests early by PT-1M");
        assertThat(new IceStock(1e5, 0, OptionalDouble.of(1e5)).capKg()).hasValue(1e5);
        refused(() -> IceStock.of(-1), "ice at the start -1.0 kg");
        refused(() -> new IceStock(1, 1e5 + 1, OptionalDouble.empty()), "ice made per hour 100001.0 kg");
        refused(() -> new IceStock(2, 0, OptionalDouble.of(1.9)), "stored at most 1.9 kg", "2.0 kg");
    }

    @Test
    void limitsAndWindowsEndWhereTheyAreSaidTo() {
        assertThat(PlanLimits.within(Duration.ofDays(1)).withGap(1).relativeGap())
                .isEqualTo(1);
        refused(() -> PlanLimits.within(Duration.ofDays(1).plusMillis(1)), "time limit", "at most a day");
        refused(() -> PlanLimits.standard().withGap(1.001), "gap 1.001", "0 to 1");
        assertThat(new Pouring(NOW, 1e-7).volumeM3()).isEqualTo(1e-7);
        assertThat(new Pouring(NOW, 1).volumeM3()).isEqualTo(1);
        refused(() -> new Pouring(NOW, 0.9e-7), "volume poured at " + NOW, "0.1 mL to 1000 L");
        refused(() -> new Pouring(NOW, 1.001), "1.001 m³");
        Window window = new Window(minute(20), minute(60));
        assertThat(window.holds(minute(20), minute(60))).isTrue();
        assertThat(window.holds(minute(19), minute(60))).isFalse();
        assertThat(window.holds(minute(20), minute(61))).isFalse();
    }

    private static void refused(ThrowingCallable call, String... words) {
        assertThatIllegalArgumentException().isThrownBy(call).satisfies(refusal -> {
            for (String word : words) {
                assertThat(refusal).hasMessageContaining(word);
            }
        });
    }

    @Test
    void iceIsAddedInTheFirstMinuteInWhichAThirdIsLeft() {
        // 3 kg were in it; 1 kg is left after 50 minutes, so that in the 51st there is less than a third.
        Optional<TopUp> topUp = topUp(time -> 3 - time / 1500, time -> 10, 6000);
        assertThat(topUp).isPresent();
        assertThat(topUp.get().atS()).isEqualTo(3060);
        assertThat(topUp.get().iceKg()).isCloseTo(3 - (3 - 3060 / 1500.0), within(1e-9));
        assertThat(topUp.get().goneS()).isEqualTo(4500);
        // Not more than is to spare, not at all where that is little or it would be too late.
        assertThat(topUp(time -> 3 - time / 1500, time -> 0.5, 6000)
                        .orElseThrow()
                        .iceKg())
                .isEqualTo(0.5);
        assertThat(topUp(time -> 3 - time / 1500, time -> 0.19, 6000)).isEmpty();
        assertThat(topUp(time -> 3 - time / 1500, time -> 10, 3060)).isEmpty();
        assertThat(topUp(time -> 3 - time / 1500, time -> 10, 3061)).isPresent();
        assertThat(topUp(time -> 1.5, time -> 10, 6000)).isEmpty();
    }

    private static Optional<TopUp> topUp(DoubleUnaryOperator iceKg, DoubleUnaryOperator spareKg, double lastS) {
        return TopUp.of("bucket", Evenings.bath(3), 3, iceKg, spareKg, 0, lastS, 4500);
    }
}
