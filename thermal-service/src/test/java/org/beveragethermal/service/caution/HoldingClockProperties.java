/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What holds for holding clocks along any course. */
class HoldingClockProperties {

    private static final double STEP_S = 900;

    @Provide
    Arbitrary<List<Double>> celsius() {
        return Arbitraries.doubles().between(-2, 75).list().ofMinSize(2).ofMaxSize(40);
    }

    private static double[] times(int points) {
        double[] times = new double[points];
        for (int i = 0; i < points; i++) {
            times[i] = i * STEP_S;
        }
        return times;
    }

    private static double[] kelvins(List<Double> celsius) {
        return celsius.stream().mapToDouble(c -> c + 273.15).toArray();
    }

    private static double over(OptionalDouble answer) {
        return answer.orElse(Double.POSITIVE_INFINITY);
    }

    @Property(tries = 300, seed = "20311")
    @Label("a reading added on a line between two readings changes no clock")
    void aReadingOnALineChangesNothing(@ForAll("celsius") List<Double> celsius, @ForAll Jurisdiction where) {
        double[] coarseT = times(celsius.size());
        double[] coarse = kelvins(celsius);
        double[] fineT = new double[2 * coarse.length - 1];
        double[] fine = new double[fineT.length];
        for (int i = 0; i < fineT.length; i++) {
            fineT[i] = 0.5 * i * STEP_S;
            fine[i] = 0.5 * (coarse[i / 2] + coarse[(i + 1) / 2]);
        }
        HoldingClock clock = HoldingClock.of(where);
        double one = over(clock.overAtS(coarseT, coarse));
        double other = over(clock.overAtS(fineT, fine));
        assertThat(one == other || Math.abs(one - other) < 1e-3)
                .as(one + " and " + other)
                .isTrue();
    }

    @Property(tries = 300, seed = "20312")
    @Label("a clock that has run out stays so, and what was out before only hastens it")
    void timeNeverComesBack(
            @ForAll("celsius") List<Double> celsius,
            @ForAll Jurisdiction where,
            @ForAll @IntRange(max = 300) int before) {
        double[] times = times(celsius.size());
        double[] kelvins = kelvins(celsius);
        HoldingClock clock = HoldingClock.of(where);
        double whole = over(clock.overAtS(times, kelvins));
        int half = Math.max(1, celsius.size() / 2);
        double part = over(clock.overAtS(times(half), kelvins(celsius.subList(0, half))));
        assertThat(part == whole || part == Double.POSITIVE_INFINITY).isTrue();
        double hastened = over(clock.alreadyOut(Duration.ofMinutes(before)).overAtS(times, kelvins));
        assertThat(hastened).isLessThanOrEqualTo(whole + 1e-6);
    }

    @Property(tries = 200, seed = "20313")
    @Label("a warmer course from the cold runs out no later, below the hot limit")
    void warmerIsNoLater(@ForAll("celsius") List<Double> celsius, @ForAll Jurisdiction where) {
        double[] times = times(celsius.size());
        double[] cold = celsius.stream().mapToDouble(c -> 273.15 + 0.5 * c).toArray();
        double[] warmer = celsius.stream().mapToDouble(c -> 275.15 + 0.5 * c).toArray();
        cold[0] = 275.15;
        warmer[0] = 275.15;
        HoldingClock clock = HoldingClock.of(where);
        // One stay allowed: a warmer course may be one long stay where the colder one is two short ones.
        if (where != Jurisdiction.ENGLAND) {
            assertThat(over(clock.overAtS(times, warmer))).isLessThanOrEqualTo(over(clock.overAtS(times, cold)) + 1e-6);
        }
    }
}
