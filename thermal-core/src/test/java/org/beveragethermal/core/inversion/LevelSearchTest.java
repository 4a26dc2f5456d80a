/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Functions whose answers are known: several roots, roots within a step, a level that is only touched, no root, jumps, a bound. */
class LevelSearchTest {

    private static LevelSearch search(DoubleUnaryOperator function, double low, double high, int most) {
        return new LevelSearch(function, low, high, 12, most, 1e-6);
    }

    @Test
    void allRootsOfASine() {
        List<Double> roots = search(Math::sin, 0.5, 9.7, 200).roots(0);
        assertThat(roots).hasSize(3);
        for (int i = 0; i < 3; i++) {
            assertThat(roots.get(i)).isCloseTo((i + 1) * Math.PI, within(1e-6));
        }
    }

    @Test
    void twoRootsWithinTwoStepsOfTheScan() {
        // A dip between the looks at 0.25 and 0.333, nowhere near a look.
        List<Double> roots = search(x -> (x - 0.30) * (x - 0.32), 0, 1, 200).roots(0);
        assertThat(roots).hasSize(2);
        assertThat(roots.get(0)).isCloseTo(0.30, within(1e-5));
        assertThat(roots.get(1)).isCloseTo(0.32, within(1e-5));
    }

    @Test
    void twoRootsWithinTheFirstOrTheLastStep() {
        // Nearest to the level at an end, which it leaves towards the level before it turns.
        for (double end : new double[] {0, 1}) {
            DoubleUnaryOperator function = x -> (Math.abs(x - end) - 0.01) * (Math.abs(x - end) - 0.03);
            List<Double> roots = search(function, 0, 1, 200).roots(0);
            assertThat(roots).hasSize(2);
            assertThat(Math.abs(roots.get(end == 0 ? 0 : 1) - end)).isCloseTo(0.01, within(1e-5));
            assertThat(Math.abs(roots.get(end == 0 ? 1 : 0) - end)).isCloseTo(0.03, within(1e-5));
        }
        assertThat(search(x -> 1 + x, 0, 1, 50).roots(0)).isEmpty();
    }

    @Test
    void stretchesWithinTwoLevels() {
        List<double[]> stretches = search(Math::sin, 0, 2 * Math.PI, 400).within(0.5, 2);
        assertThat(stretches).hasSize(1);
        assertThat(stretches.get(0)[0]).isCloseTo(Math.PI / 6, within(1e-5));
        assertThat(stretches.get(0)[1]).isCloseTo(5 * Math.PI / 6, within(1e-5));
        List<double[]> outer = search(Math::cos, 0, 2 * Math.PI, 400).within(0.5, 2);
        assertThat(outer).hasSize(2);
        assertThat(outer.get(0)[0]).isEqualTo(0);
        assertThat(outer.get(1)[1]).isEqualTo(2 * Math.PI);
        assertThat(search(x -> x, 0, 1, 50).within(-1, 2)).hasSize(1);
        assertThat(search(x -> x, 0, 1, 50).within(2, 3)).isEmpty();
        List<double[]> single = search(x -> x, 0, 1, 50).within(0.4, 0.4);
        assertThat(single).hasSize(1);
        assertThat(single.get(0)[0]).isCloseTo(0.4, within(1e-6)).isEqualTo(single.get(0)[1]);
    }

    @Test
    void aBoundOnEvaluationsIsKept() {
        AtomicInteger calls = new AtomicInteger();
        LevelSearch search = search(
                x -> {
                    calls.incrementAndGet();
                    return Math.exp(30 * (x - 0.5)) - Math.cos(7 * x);
                },
                0,
                1,
                14);
        List<Double> roots = search.roots(0);
        assertThat(calls.get()).isLessThanOrEqualTo(14).isEqualTo(search.evaluations());
        assertThat(roots).isNotEmpty();
        assertThat(search.accuracyReached()).isGreaterThan(1e-6);
    }
}
