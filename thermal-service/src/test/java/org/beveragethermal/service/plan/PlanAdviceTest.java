/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.service.target.ServingTarget;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Advice that could not be followed cannot be made. */
class PlanAdviceTest {

    private static Arguments refused(ThrowingCallable advice, String message) {
        return Arguments.of(advice, message);
    }

    static Stream<Arguments> nonsense() {
        Duration hour = Duration.ofHours(1);
        return Stream.of(
                refused(() -> new PlanAdvice.MoreIce(0), "more ice 0.0 kg: expected more than 0"),
                refused(() -> new PlanAdvice.MoreIce(Double.NaN), "more ice NaN kg"),
                refused(() -> new PlanAdvice.MoreIce(100_001), "at most 100000 kg"),
                refused(() -> new PlanAdvice.EarlierStart(Duration.ZERO), "start earlier by PT0S"),
                refused(() -> new PlanAdvice.EarlierStart(hour.negated()), "expected more than nothing"),
                refused(() -> new PlanAdvice.EarlierStart(Duration.ofHours(25)), "at most a day"),
                refused(() -> new PlanAdvice.MoreGear("cold", 0), "more gear like cold 0: expected at least 1"),
                refused(() -> new PlanAdvice.WiderRange(List.of()), "expected one at least"),
                refused(() -> new PlanAdvice.Widened("a", 285, 285), "range of a moved from 285.0 K to 285.0 K"),
                refused(() -> new PlanAdvice.Widened("a", Double.NaN, 285), "two temperatures that differ"),
                refused(() -> new PlanAdvice.Widened("a", 285, -1), "two temperatures that differ"),
                refused(() -> new PlanAdvice.LaterServing(List.of(), hour), "expected one at least"),
                refused(() -> new PlanAdvice.LaterServing(List.of("a"), Duration.ZERO), "served later by PT0S"));
    }

    @ParameterizedTest
    @MethodSource("nonsense")
    void nonsenseIsRefused(ThrowingCallable advice, String message) {
        assertThatIllegalArgumentException().isThrownBy(advice).withMessageContaining(message);
    }

    @Test
    void moreGearLikeNoneIsRefused() {
        PlanRequest request = Evenings.request(
                List.of(Evenings.refrigerator("cold", 5, 2)),
                List.of(Evenings.order("white", "white-light", 22, "room", 90, "room")));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PlanAdvice.MoreGear("warm", 1).appliedTo(request))
                .withMessageContaining("more gear like warm: expected one of [cold]");
        assertThat(new PlanAdvice.MoreGear("cold", 2).appliedTo(request).gear())
                .containsOnlyKeys("cold", "cold more 1", "cold more 2");
    }

    private static PlanRequest evening() {
        return Evenings.places()
                .gear(Evenings.refrigerator("cold", 5, 2))
                .ice(new IceStock(3, 2, OptionalDouble.of(8)))
                .bottle(Evenings.order("white", "white-light", 22, "room", 90, "room"))
                .bottle(Evenings.order("other", "white-light", 22, "room", 90, "room"))
                .build();
    }

    /** Whoever follows advice has a request that differs in that alone. */
    @Test
    void adviceChangesWhatItSaysAndNothingElse() {
        PlanRequest before = evening();
        Duration quarter = Duration.ofMinutes(15);
        assertThat(new PlanAdvice.MoreIce(1.5).appliedTo(before).ice())
                .contains(new IceStock(4.5, 2, OptionalDouble.of(9.5)));
        PlanRequest uncapped = Evenings.places()
                .ice(IceStock.of(3))
                .bottle(before.bottles().get(0))
                .build();
        assertThat(new PlanAdvice.MoreIce(1.5).appliedTo(uncapped).ice()).contains(IceStock.of(4.5));
        assertThat(new PlanAdvice.EarlierStart(quarter).appliedTo(before).startsAt())
                .isEqualTo(before.startsAt().minus(quarter));
        PlanRequest later = new PlanAdvice.LaterServing(List.of("white"), quarter).appliedTo(before);
        assertThat(later.bottles())
                .extracting(BottleOrder::servedAt)
                .containsExactly(
                        before.bottles().get(0).servedAt().plus(quarter),
                        before.bottles().get(1).servedAt());
        double lowK = before.bottles().get(0).target().lowK();
        double highK = before.bottles().get(0).target().highK();
        for (double toK : new double[] {highK + 2, lowK - 2}) {
            double fromK = toK > highK ? highK : lowK;
            PlanAdvice wider = new PlanAdvice.WiderRange(List.of(new PlanAdvice.Widened("white", fromK, toK)));
            ServingTarget target = wider.appliedTo(before).bottles().get(0).target();
            assertThat(target.lowK()).isCloseTo(Math.min(lowK, toK), within(1e-9));
            assertThat(target.highK()).isCloseTo(Math.max(highK, toK), within(1e-9));
            assertThat(target.aimK()).isCloseTo(before.bottles().get(0).target().aimK(), within(1e-9));
            assertThat(wider.appliedTo(before).bottles().get(1).target())
                    .isEqualTo(before.bottles().get(1).target());
            Argument whose = new Argument.Bottles(List.of("white"));
            Phrase said = Phrase.of(
                    toK > fromK ? Sentence.ADVICE_SERVE_WARMER : Sentence.ADVICE_SERVE_COLDER,
                    whose,
                    new Argument.Temperature(toK),
                    new Argument.Temperature(fromK));
            assertThat(wider.phrase()).isEqualTo(Phrase.joined(List.of(said)));
        }
    }

    @Test
    void adviceSaysHowMuchOfWhat() {
        assertThat(new PlanAdvice.MoreIce(1e5).phrase())
                .isEqualTo(Phrase.of(Sentence.ADVICE_MORE_ICE, new Argument.Mass(1e5)));
        assertThat(new PlanAdvice.EarlierStart(Duration.ofDays(1)).phrase())
                .isEqualTo(Phrase.of(Sentence.ADVICE_EARLIER_START, new Argument.Span(Duration.ofDays(1))));
        assertThat(new PlanAdvice.MoreGear("cold", 1).phrase())
                .isEqualTo(Phrase.of(Sentence.ADVICE_ONE_MORE_GEAR, new Argument.Where("cold")));
        assertThat(new PlanAdvice.MoreGear("cold", 2).phrase())
                .isEqualTo(Phrase.of(Sentence.ADVICE_MORE_GEAR, new Argument.Count(2), new Argument.Where("cold")));
        assertThat(new PlanAdvice.LaterServing(List.of("white"), Duration.ofMinutes(15)).phrase())
                .isEqualTo(Phrase.of(
                        Sentence.ADVICE_SERVE_LATER,
                        new Argument.Bottles(List.of("white")),
                        new Argument.Span(Duration.ofMinutes(15))));
    }
}
