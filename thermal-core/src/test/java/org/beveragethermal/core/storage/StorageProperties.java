/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.fahrenheit;
import static org.beveragethermal.materials.units.Measures.kelvins;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

/** What must hold of any history. */
final class StorageProperties {

    private static final double ZERO = 273.15;

    private static TemperatureHistory history(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int n = random.nextInt(2, 60);
        double[] times = new double[n];
        double[] temperatures = new double[n];
        for (int i = 0; i < n; i++) {
            times[i] = i == 0 ? 0 : times[i - 1] + Math.round(1 + random.nextDouble() * 7200);
            temperatures[i] = ZERO - 5 + random.nextInt(450) / 10.0;
        }
        return TemperatureHistory.of(times, temperatures);
    }

    private static double kinetic(TemperatureHistory history) {
        return history.meanKineticTemperatureK(83_144);
    }

    @Property(seed = "20261126")
    @Label("Mean kinetic temperature is between the arithmetic mean and the highest")
    void kineticMeanIsAboveTheMean(@ForAll long seed) {
        TemperatureHistory history = history(seed);
        assertThat(kinetic(history))
                .isBetween(history.meanK() - 1e-9, history.highest().temperatureK() + 1e-9);
    }

    @Property(seed = "20261127")
    @Label("A constant log has its temperature as all of its means")
    void constantLogs(@ForAll long seed) {
        double kelvins = ZERO + new SplittableRandom(seed).nextDouble() * 40;
        TemperatureHistory constant =
                TemperatureHistory.of(new double[] {0, 10, 5000}, new double[] {kelvins, kelvins, kelvins});
        assertThat(kinetic(constant)).isCloseTo(kelvins, within(1e-9));
        assertThat(constant.meanK()).isCloseTo(kelvins, within(1e-9));
        assertThat(constant.fastestChange().kelvin()).isZero();
    }

    @Property(seed = "20261128")
    @Label("Times and degree-hours of the parts of a log add up to those of the whole")
    void partsAddUp(@ForAll long seed) {
        TemperatureHistory whole = history(seed);
        SplittableRandom random = new SplittableRandom(~seed);
        double cut = whole.endS() * (0.1 + 0.8 * random.nextDouble());
        double limit = ZERO + 40 * random.nextDouble();
        TemperatureHistory first = whole.part(0, cut);
        TemperatureHistory last = whole.part(cut, whole.endS());
        for (int sign : new int[] {-1, 1}) {
            assertThat(first.degreeHours(limit, sign) + last.degreeHours(limit, sign))
                    .isCloseTo(whole.degreeHours(limit, sign), within(1e-9 * (1 + whole.degreeHours(limit, sign))));
            assertThat(first.secondsAbove(limit, sign) + last.secondsAbove(limit, sign))
                    .isCloseTo(whole.secondsAbove(limit, sign), within(1e-6));
        }
        // Mean above less mean below is the mean's distance from the limit.
        assertThat(whole.degreeHours(limit, 1) - whole.degreeHours(limit, -1))
                .isCloseTo((whole.meanK() - limit) * whole.endS() / 3600, within(1e-7));
    }

    @Property(seed = "20261129")
    @Label("Readings added on the lines of a log change nothing")
    void pointsOnTheLinesChangeNothing(@ForAll long seed) {
        TemperatureHistory coarse = history(seed);
        SplittableRandom random = new SplittableRandom(~seed);
        TreeMap<Double, Double> points = new TreeMap<>();
        double[] times = coarse.timesS();
        for (int i = 0; i < times.length; i++) {
            points.put(times[i], coarse.temperaturesK()[i]);
        }
        for (int i = 0; i < 40; i++) {
            double t = coarse.endS() * random.nextDouble();
            points.put(t, coarse.temperatureK(t));
        }
        TemperatureHistory fine = TemperatureHistory.of(
                points.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                points.values().stream().mapToDouble(Double::doubleValue).toArray());
        double limit = ZERO + 15;
        assertThat(kinetic(fine)).isCloseTo(kinetic(coarse), within(1e-7));
        assertThat(fine.meanK()).isCloseTo(coarse.meanK(), within(1e-9));
        assertThat(fine.secondsAbove(limit, 1)).isCloseTo(coarse.secondsAbove(limit, 1), within(1e-5));
        assertThat(fine.degreeHours(limit, 1)).isCloseTo(coarse.degreeHours(limit, 1), within(1e-7));
        assertThat(fine.highest().temperatureK()).isCloseTo(coarse.highest().temperatureK(), within(1e-9));
        Duration over = Times.duration(coarse.endS() / 3);
        assertThat(Math.abs(fine.greatestChange(over).kelvin()))
                .isCloseTo(Math.abs(coarse.greatestChange(over).kelvin()), within(1e-7));
        if (coarse.endS() > 3 * 3600) {
            Duration period = Duration.ofHours(3);
            TemperatureHistory room = history(seed + 1);
            assertSame(
                    RoomResponse.of(room, fine).swing(period),
                    RoomResponse.of(room, coarse).swing(period));
        }
    }

    private static void assertSame(RoomResponse.Swing one, RoomResponse.Swing other) {
        if (one instanceof RoomResponse.Follows fine && other instanceof RoomResponse.Follows coarse) {
            assertThat(fine.contentsAmplitudeK()).isCloseTo(coarse.contentsAmplitudeK(), within(1e-5));
            assertThat(fine.roomAmplitudeK()).isCloseTo(coarse.roomAmplitudeK(), within(1e-5));
        } else {
            assertThat(one.getClass()).isEqualTo(other.getClass());
        }
    }

    @Property(seed = "20261130", tries = 30)
    @Label("Scale of temperature, locale, time zone and where the clock stands change nothing")
    void nothingDependsOnPlace(@ForAll long seed) {
        TemperatureHistory plain = history(seed);
        Instant start = Instant.parse("2026-03-28T23:30:00Z");
        TemperatureHistory celsius = logged(plain, start, k -> celsius(k - ZERO));
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        StorageFigures here = StorageFigures.of(celsius, celsius(10), celsius(18));
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Europe/Berlin"));
            TemperatureHistory elsewhere =
                    logged(plain, start.plus(Duration.ofDays(100)), k -> fahrenheit(1.8 * (k - ZERO) + 32));
            StorageFigures there = StorageFigures.of(elsewhere, kelvins(10 + ZERO), fahrenheit(64.4));
            assertThat(there.meanKineticK()).isCloseTo(here.meanKineticK(), within(1e-9));
            assertThat(there.kelvinHoursAbove()).isCloseTo(here.kelvinHoursAbove(), within(1e-7));
            assertThat(there.aboveS()).isCloseTo(here.aboveS(), within(1e-5));
            assertThat(there.lengthS()).isEqualTo(here.lengthS());
            assertThat(there.longestGapS()).isEqualTo(here.longestGapS());
            assertThat(here.explain())
                    .isEqualTo(
                            StorageFigures.of(celsius, celsius(10), celsius(18)).explain());
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    private static TemperatureHistory logged(
            TemperatureHistory plain, Instant start, DoubleFunction<Quantity<Temperature>> quantity) {
        double[] times = plain.timesS();
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < times.length; i++) {
            readings.add(
                    new Reading(start.plusSeconds(Math.round(times[i])), quantity.apply(plain.temperaturesK()[i])));
        }
        return TemperatureHistory.logged(readings);
    }

    @Property(seed = "20261201")
    @Label("A lumped body behind any room is found by its time constant")
    void timeConstantIsFound(@ForAll long seed) {
        TemperatureHistory room = history(seed);
        SplittableRandom random = new SplittableRandom(~seed);
        double tau = room.endS() * (0.02 + 0.5 * random.nextDouble());
        double[] times = new double[2001];
        Arrays.setAll(times, i -> room.endS() * i / 2000);
        double[] body = new double[times.length];
        body[0] = ZERO + 40 * random.nextDouble();
        for (int i = 1; i < times.length; i++) {
            // Small steps of the differential equation itself, midpoint rule with the exact decay.
            double step = times[i] - times[i - 1];
            double middle = room.temperatureK(times[i] - step / 2);
            body[i] = middle + (body[i - 1] - middle) * Math.exp(-step / tau);
        }
        RoomResponse.Lag answer =
                RoomResponse.of(room, TemperatureHistory.of(times, body)).timeConstant();
        assertThat(answer).isInstanceOf(RoomResponse.Lags.class);
        RoomResponse.Lags lags = (RoomResponse.Lags) answer;
        assertThat(Times.seconds(lags.timeConstant())).isBetween(0.97 * tau, 1.03 * tau);
        assertThat(lags.rmsK()).isLessThan(0.1);
    }
}
