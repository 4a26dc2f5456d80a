/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
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
}
