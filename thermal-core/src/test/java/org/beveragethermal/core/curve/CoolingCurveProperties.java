/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;

import java.time.Duration;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.materials.units.OutOfRangeException;

/** Prepared curves: the laws that hold on any one curve, and their stated errors against times found without preparation. */
class CoolingCurveProperties {

    private static final double AIR_K = 277.15;

    /** Free convection with a power of the difference, beside a conductance, cooling or warming. */
    private static CoolingRate rate(double exponent, double share, double timeConstantS) {
        return CoolingRate.of(
                t -> -(t - AIR_K)
                        / timeConstantS
                        * (share + (1 - share) * Math.pow(Math.abs(t - AIR_K) / 10, exponent)),
                AIR_K);
    }

    private static double at(CoolingCurve curve, double part) {
        return curve.farthestK() + part * (curve.nearestK() - curve.farthestK());
    }

    @Property(tries = 60, seed = "1")
    void statedErrorsHold(
            @ForAll @DoubleRange(min = 0, max = 1.0 / 3) double exponent,
            @ForAll @DoubleRange(min = 0.1, max = 1) double share,
            @ForAll @DoubleRange(min = 50, max = 3e5) double timeConstantS,
            @ForAll @DoubleRange(min = 0.01, max = 2) double near,
            @ForAll @DoubleRange(min = 3, max = 40) double far,
            @ForAll boolean warms) {
        double sign = warms ? -1 : 1;
        CoolingRate rate = rate(exponent, share, timeConstantS);
        CoolingCurve curve = rate.prepare(AIR_K + sign * near, AIR_K + sign * far);
        assertThat(curve.timeErrorS()).isLessThan(1e-6 * timeConstantS + 2e-3);
        for (double from = 0; from < 0.9; from += 0.113) {
            for (double to = from + 0.01; to <= 1; to += 0.077) {
                double start = at(curve, from);
                double target = at(curve, to);
                double exact = rate.timeS(start, target, 1e-6);
                assertThat(curve.timeS(start, target)).isCloseTo(exact, within(curve.timeErrorS()));
                assertThat(curve.temperatureK(start, exact)).isCloseTo(target, within(curve.temperatureErrorK()));
            }
        }
    }

    @Property(tries = 200, seed = "2")
    void timesAddUpGrowAndVanish(
            @ForAll @DoubleRange(min = 0, max = 1) double a,
            @ForAll @DoubleRange(min = 0, max = 1) double b,
            @ForAll @DoubleRange(min = 0, max = 1) double c) {
        CoolingCurve curve = rate(0.25, 0.5, 6000).prepare(278, 300);
        double first = at(curve, Math.min(a, Math.min(b, c)));
        double last = at(curve, Math.max(a, Math.max(b, c)));
        double middle = at(curve, Math.max(Math.min(a, b), Math.min(Math.max(a, b), c)));
        assertThat(curve.timeS(first, first)).isZero();
        assertThat(curve.temperatureK(first, 0)).isEqualTo(first);
        assertThat(curve.timeS(first, middle) + curve.timeS(middle, last))
                .isCloseTo(curve.timeS(first, last), within(1e-8));
        assertThat(curve.timeS(first, last)).isGreaterThanOrEqualTo(curve.timeS(first, middle));
        if (last < first) {
            assertThat(curve.timeS(last, first)).isInfinite();
        }
    }

    @Property(tries = 200, seed = "3")
    void temperaturesFallAndReturn(
            @ForAll @DoubleRange(min = 0, max = 1) double part,
            @ForAll @DoubleRange(min = 0, max = 1e5) double one,
            @ForAll @DoubleRange(min = 0, max = 1e5) double other) {
        CoolingCurve curve = rate(0.25, 0.5, 6000).prepare(278, 300);
        double start = at(curve, part);
        double early = curve.temperatureK(start, Math.min(one, other));
        double late = curve.temperatureK(start, Math.max(one, other));
        assertThat(late).isLessThanOrEqualTo(early + 1e-12);
        assertThat(late).isGreaterThanOrEqualTo(AIR_K);
        if (early > curve.nearestK()) {
            double rate = (early - curve.temperatureK(start, Math.min(one, other) + 1));
            assertThat(curve.timeS(start, early))
                    .isCloseTo(Math.min(one, other), within(2 * curve.temperatureErrorK() / rate + 1e-6));
        }
    }

    @Example
    void endsOfTheCurveAreAnsweredOrRefused() {
        CoolingCurve curve = CoolingRateTest.newton(5000).prepare(278.15, 309.15);
        // 1 K and 32 K from the equilibrium: both ends are bounds of cells.
        assertThat(curve.timeS(309.15, 278.15)).isCloseTo(5000 * Math.log(32), within(curve.timeErrorS()));
        assertThat(curve.timeS(309.15, 309.15)).isZero();
        assertThat(curve.timeS(300, AIR_K)).isInfinite();
        assertThat(curve.timeS(300, 250)).isInfinite();
        assertThat(curve.timeS(300, 301)).isInfinite();
        assertThat(curve.temperatureK(300, Double.POSITIVE_INFINITY)).isEqualTo(AIR_K);
        double beyond = 5000 * Math.log((300 - AIR_K) / 0.5);
        assertThat(curve.temperatureK(300, beyond)).isCloseTo(AIR_K + 0.5, within(1e-4));
        assertThatThrownBy(() -> curve.timeS(310, 300)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> curve.timeS(276, 276.5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> curve.timeS(300, 277.5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> curve.timeS(300, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> curve.timeS(Double.NaN, 300)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> curve.temperatureK(300, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> curve.temperatureK(300, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CoolingRateTest.newton(5000).prepare(309.15, 278.15))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CoolingRateTest.newton(5000).prepare(276, 300))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Example
    void quantitiesGiveTheSameAnswers() {
        CoolingCurve curve = CoolingRateTest.newton(5000).prepare(278.15, 309.15);
        assertThat(curve.timeTo(celsius(20), celsius(12)))
                .isEqualTo(
                        new CurveTime.Reached(Duration.ofMillis(Math.round(5e6 * Math.log(2))), Duration.ofMillis((long)
                                Math.ceil(1000 * curve.timeErrorS()))));
        assertThat(curve.timeTo(celsius(20), celsius(4))).isInstanceOf(CurveTime.Never.class);
        assertThat(curve.temperatureAfter(celsius(20), Duration.ofMinutes(30))
                        .getValue()
                        .doubleValue())
                .isCloseTo(4 + 16 * Math.exp(-1800 / 5000.0), within(1e-5));
    }
}
