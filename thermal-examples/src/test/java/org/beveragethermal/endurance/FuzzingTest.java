/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Some thousand changed inputs for each target, the same each time; a million in the profile {@code fuzz}. */
final class FuzzingTest {
    private static final long ALL = 5000;

    static List<FuzzTarget> targets() {
        return Fuzzing.SHARES.stream().map(Fuzzing.Share::target).toList();
    }

    static List<Fuzzing.Share> shares() {
        return Fuzzing.SHARES;
    }

    @ParameterizedTest
    @MethodSource("shares")
    void changedInputIsAcceptedOrRefusedAsDocumented(Fuzzing.Share share) {
        FuzzTarget target = share.target();
        Inputs inputs = target.inputs();
        for (long seed = 1; seed <= ALL * share.thousandths() / 1000; seed++) {
            byte[] input = inputs.input(seed);
            try {
                target.accepts(input);
            } catch (RuntimeException | AssertionError | StackOverflowError e) {
                throw new AssertionError(
                        target.name() + ", seed " + seed + ": " + new String(input, StandardCharsets.UTF_8), e);
            }
        }
    }

    /** Bytes of no form at all. */
    @Property(tries = 200, seed = "20261126", shrinking = ShrinkingMode.OFF)
    @Label("Input: any bytes are accepted or refused as documented, at every door")
    void anyBytesAreRefused(@ForAll byte[] input) {
        targets().forEach(target -> target.accepts(input));
    }

    /** A fuzzer whose inputs are all refused at the first check tries nothing. */
    @ParameterizedTest
    @MethodSource("shares")
    void corpusIsAcceptedAndSoIsSomeOfWhatIsMadeOfIt(Fuzzing.Share share) {
        FuzzTarget target = share.target();
        assertThat(target.corpus().stream().filter(target::accepts).count())
                .isGreaterThanOrEqualTo(target.corpus().size() - 1);
        long tried = 5L * share.thousandths() / 2;
        assertThat(accepted(target, tried)).isStrictlyBetween(tried / 100, tried);
    }

    private static long accepted(FuzzTarget target, long tried) {
        Inputs inputs = target.inputs();
        return LongStream.rangeClosed(1, tried)
                .filter(seed -> target.accepts(inputs.input(seed)))
                .count();
    }

    /** What is changed as text hardly ever gets past the form; what is changed as values does, and tries what is behind it. */
    @Test
    void aThirdOfTheScenariosChangedByValuesIsAccepted() {
        assertThat(accepted(ScenarioTarget.ofTrees(), 300)).isBetween(100L, 200L);
    }

    @Test
    void whatTheJdkThrowsIsNoRefusal() {
        assertThatExceptionOfType(AssertionError.class)
                .isThrownBy(() -> Documented.refusal(new NumberFormatException("x")));
        assertThatExceptionOfType(AssertionError.class)
                .isThrownBy(() -> Documented.refusal(new IllegalArgumentException("")));
        assertThatExceptionOfType(AssertionError.class)
                .isThrownBy(() -> Documented.finiteThroughout("list", List.of(1.0, Double.NaN)));
        assertThat(Documented.refusal(new IllegalArgumentException("count 0: expected at least 1")))
                .isFalse();
    }
}
