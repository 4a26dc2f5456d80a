/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** The search against the optimum that a body in a linear exchange with its surroundings has in closed form. */
final class AimSearchTest {

    private static final double ZERO = 273.15;
    private static final String LUMPED =
            "closed form of the lumped body, T = T_a + (T_0 − T_a) exp(−t/τ), F. P. Incropera and D. P. DeWitt, Fundamentals of"
                    + " Heat and Mass Transfer, section 5.1; the optimum is derived beside the test";
    private static final double LOOKED_K = 0.011;

    /**
     * A body with time constant {@code tau} that is drunk over {@code length}, of a range from {@code low} to {@code high}, all in the same
     * unit of time and in °C.
     */
    private record Body(double ambient, double tau, double length, double low, double high, double limit) {

        GlassCourse course(double pouringK) {
            int looks = 300;
            double[] timesS = new double[looks + 1];
            double[] temperaturesK = new double[looks + 1];
            for (int i = 0; i <= looks; i++) {
                timesS[i] = length * i * i / (looks * (double) looks);
                temperaturesK[i] = ambient + ZERO + (pouringK - ZERO - ambient) * Math.exp(-timesS[i] / tau);
            }
            return new GlassCourse(timesS, temperaturesK);
        }

        AimSearch search(CuredByWaiting cured) {
            boolean cold = cured == CuredByWaiting.TOO_COLD;
            return new AimSearch(
                    new Wanted(low + ZERO, high + ZERO),
                    (cold ? limit : low) + ZERO,
                    (cold ? high : limit) + ZERO,
                    cured,
                    5,
                    this::course);
        }

        /** The end at which the passage begins. */
        double first() {
            return ambient > high ? low : high;
        }

        double last() {
            return ambient > high ? high : low;
        }

        /** How long the passage from one end of the range to the other takes, wherever it begins. */
        double passage() {
            return tau * Math.log((ambient - first()) / (ambient - last()));
        }

        /** The pouring temperature whose mean over the drinking is a temperature. */
        double poured(double mean) {
            return ambient - (ambient - mean) * (length / tau) / -Math.expm1(-length / tau);
        }

        /**
         * Drinking shorter than the passage: the first end, all of it inside. Longer: colder pouring (in warm surroundings) moves the
         * passage later without shortening it, so the time at the fault that stays falls until the passage ends with the drinking; there the
         * aim is, unless the mean or the limit comes first.
         */
        double optimum() {
            if (passage() >= length) {
                return first();
            }
            double endsTogether = ambient - (ambient - last()) * Math.exp(length / tau);
            return ambient > high
                    ? Math.max(Math.max(endsTogether, poured(low)), limit)
                    : Math.min(Math.min(endsTogether, poured(high)), limit);
        }

        /** How closely a search finds it, as it says: 0.01 K or a 1500th of what is allowed. */
        double lookedK() {
            return Math.max(LOOKED_K, Math.abs(limit - (ambient > high ? high : low)) / 1500 + 0.001);
        }

        /** Whether the aim's mean is on the near side of the last end. */
        boolean holds() {
            return ambient > high ? poured(high) >= limit : poured(low) <= limit;
        }
    }

    private static void check(String id, String what, Body body, CuredByWaiting cured) {
        AimSearch.Choice aim = body.search(cured).aim().orElseThrow();
        OutsideChecks.fromMemory("aim-" + id, LUMPED)
                .what("pouring temperature: " + what)
                .unit("°C")
                .expected(body.optimum())
                .within(body.lookedK())
                .check(aim.pouringK() - ZERO);
        OutsideChecks.fromMemory("aim-" + id + "-mean", LUMPED)
                .what("mean while it is drunk: " + what)
                .unit("°C")
                .expected(body.ambient()
                        - (body.ambient() - body.optimum())
                                * (body.tau() / body.length())
                                * -Math.expm1(-body.length() / body.tau()))
                .within(body.lookedK())
                .check(aim.course().meanK() - ZERO);
    }

    @Test
    void theAimIsThatOfTheClosedForm() {
        Body shortDrink = new Body(22, 60, 12, 8, 12, 5);
        assertThat(shortDrink.passage()).isGreaterThan(12);
        check("cold-end", "drunk within the passage: the cold end", shortDrink, CuredByWaiting.TOO_COLD);
        Body longDrink = new Body(26, 40, 14, 8, 12, 0);
        assertThat(longDrink.passage()).isLessThan(14);
        check("passage-last", "drunk longer: the passage ends with the drinking", longDrink, CuredByWaiting.TOO_COLD);
        Body mean = new Body(30, 40, 60, 8, 12, -14);
        assertThat(mean.optimum()).isEqualTo(mean.poured(8));
        check("mean", "drunk much longer: the mean is at the cold end", mean, CuredByWaiting.TOO_COLD);
        Body limited = new Body(28, 40, 18, 8, 12, 6.5);
        assertThat(limited.optimum()).isEqualTo(6.5);
        check("limit", "the coldest pouring that is allowed", limited, CuredByWaiting.TOO_COLD);
        Body hot = new Body(5, 30, 12, 55, 65, 85);
        assertThat(hot.optimum()).isEqualTo(hot.poured(65));
        check("hot", "a hot drink in the cold: the mean is at the hot end", hot, CuredByWaiting.TOO_WARM);
        Body scalding = new Body(5, 30, 12, 55, 65, 70);
        assertThat(scalding.optimum()).isEqualTo(70);
        check("scald", "a hot drink in the cold, limited against scalding", scalding, CuredByWaiting.TOO_WARM);
    }

    @Test
    void theTimeInTheRangeIsThePassage() {
        Body body = new Body(26, 40, 14, 8, 12, 0);
        GlassCourse course =
                body.search(CuredByWaiting.TOO_COLD).aim().orElseThrow().course();
        OutsideChecks.fromMemory("aim-passage", LUMPED)
                .what("time in the range at the aim: τ ln((T_a − T_low)/(T_a − T_high)), drunk over 14 with τ = 40")
                .unit("1")
                .expected(body.passage())
                .within(0.01)
                .check(course.insideS(8 + ZERO, 12 + ZERO));
    }

    @Test
    void whereNothingHoldsTheLongestIsTold() {
        Body body = new Body(35, 20, 40, 8, 12, 5);
        assertThat(body.holds()).isFalse();
        AimSearch search = body.search(CuredByWaiting.TOO_COLD);
        assertThat(search.aim()).isEmpty();
        // The passage takes equally long from the limit on: the coldest has most reserve.
        AimSearch.Choice longest = search.longest();
        assertThat(longest.course().insideS(8 + ZERO, 12 + ZERO)).isCloseTo(body.passage(), within(0.01));
        assertThat(search.runs()).isLessThanOrEqualTo(10);
    }

    @Property(seed = "20260712", tries = 40)
    @Label(
            "Aim, closed form: never warmer in hotter surroundings, and in the range or beyond the end that they pull away from")
    void hotterSurroundingsNeverGiveAWarmerAim(
            @ForAll @DoubleRange(min = 13, max = 40) double ambient,
            @ForAll @DoubleRange(min = 0.1, max = 10) double hotter,
            @ForAll @DoubleRange(min = 0.05, max = 1.5) double length) {
        Body one = new Body(ambient, 1, length, 8, 12, 2);
        Body other = new Body(ambient + hotter, 1, length, 8, 12, 2);
        var aim = one.search(CuredByWaiting.TOO_COLD).aim();
        var hotAim = other.search(CuredByWaiting.TOO_COLD).aim();
        assertThat(aim.isPresent()).isEqualTo(one.holds());
        assertThat(hotAim.isPresent()).isEqualTo(other.holds());
        if (aim.isPresent()) {
            assertThat(aim.get().pouringK() - ZERO).isBetween(2.0, 8 + 1e-6).isCloseTo(one.optimum(), within(LOOKED_K));
        }
        if (aim.isPresent() && hotAim.isPresent()) {
            assertThat(hotAim.get().pouringK()).isLessThanOrEqualTo(aim.get().pouringK() + LOOKED_K);
        }
    }
}
