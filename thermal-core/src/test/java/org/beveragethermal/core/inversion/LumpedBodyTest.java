/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;

import java.time.Duration;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Inverse answers beside worked examples of lumped capacitance in textbooks, and beside the closed form. */
class LumpedBodyTest {

    private static final double ZERO = 273.15;
    private static final String THERMOCOUPLE =
            "F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer, Example 5.1: thermocouple junction";
    private static final String BODY = "Y. A. Cengel, Heat Transfer, Example 4-2: predicting the time of death";

    /** h = 400 W/(m² K), c = 400 J/(kg K), rho = 8500 kg/m³, 25 °C in a gas of 200 °C. */
    private static LumpedBody junction(double diameterM) {
        double volume = Math.PI / 6 * Math.pow(diameterM, 3);
        double area = Math.PI * diameterM * diameterM;
        return new LumpedBody(8500 * 400 * volume, 400 * area, ZERO + 25, ZERO + 200);
    }

    /** Cylinder of 0.3 m by 1.7 m with rho = 996 kg/m³, c = 4178 J/(kg K), h = 8 W/(m² K) in air of 20 °C. */
    private static LumpedBody cylinder(double startK) {
        double volume = Math.PI * 0.15 * 0.15 * 1.7;
        double area = 2 * Math.PI * 0.15 * 1.7 + 2 * Math.PI * 0.15 * 0.15;
        return new LumpedBody(996 * 4178 * volume, 8 * area, startK, ZERO + 20);
    }

    @Test
    void theDiameterOfAThermocoupleForATimeConstantOfASecond() {
        ValueSearch search = ValueSearch.of(
                new AskedValue("diameter of the junction", "mm", 1000, 0),
                1e-4,
                2e-3,
                (diameter, horizon) -> junction(diameter).predict(horizon));
        // After one time constant 1/e of the difference is left.
        ValueAnswer answer = search.temperatureAt(Duration.ofSeconds(1), celsius(200 - 175 / Math.E));
        ValueAnswer.Reached reached = (ValueAnswer.Reached) answer;
        OutsideChecks.fromMemory("inverse-thermocouple-diameter", THERMOCOUPLE)
                .what("diameter for a time constant of 1 s, found by inversion")
                .unit("mm")
                .expected(0.706)
                .within(0.0005)
                .check(1000 * reached.solution().value());
        assertThat(reached.explain()).contains("the diameter of the junction must be 0.706 mm");
        ValueAnswer.Reached timed =
                (ValueAnswer.Reached) search.timeTo(celsius(200 - 175 / Math.E), Duration.ofSeconds(1));
        assertThat(timed.solution().value()).isCloseTo(reached.solution().value(), within(1e-6));
        // T = 200 − 175 exp(−t/(kD)): dT/dD = −175 t/(kD²) e^(−1) with kD = 1 s at D.
        double d = reached.solution().value();
        assertThat(1 / reached.solution().valuePerKelvin()).isCloseTo(-175 / Math.E / d, within(0.01 * 175 / d));
    }

    @Test
    void theTimeThatAThermocoupleNeeds() {
        Passing.At passing = (Passing.At)
                Passing.of(junction(7.06e-4).predict(Duration.ofSeconds(20)), celsius(199), kelvinDifference(0.2));
        OutsideChecks.fromMemory("inverse-thermocouple-time", THERMOCOUPLE)
                .what("time from 25 °C to 199 °C in a gas of 200 °C")
                .unit("s")
                .expected(5.2)
                .within(0.05)
                .check(Times.seconds(passing.first().at()));
    }

    @Test
    void howLongAgoABodyWasWarm() {
        Passing.At passing = (Passing.At)
                Passing.of(cylinder(ZERO + 37).predict(Duration.ofHours(30)), celsius(25), kelvinDifference(0.01));
        OutsideChecks.fromMemory("inverse-time-of-death", BODY)
                .what("time from 37 °C to 25 °C in air of 20 °C")
                .unit("h")
                .expected(12.2)
                .within(0.05)
                .check(Times.seconds(passing.first().at()) / 3600);
        ValueAnswer.Reached was = (ValueAnswer.Reached) ValueSearch.of(
                        AskedValue.temperature("temperature"),
                        ZERO + 21,
                        ZERO + 60,
                        (startK, horizon) -> cylinder(startK).predict(horizon))
                .temperatureAt(Duration.ofMinutes(731), celsius(25));
        OutsideChecks.fromMemory("inverse-body-start", BODY)
                .what("temperature 43 860 s before it was found at 25 °C")
                .unit("°C")
                .expected(37)
                .within(0.1)
                .check(was.solution().value() - ZERO);
        // exp(bt) kelvins then for a kelvin now: 17/5.
        assertThat(was.solution().valuePerKelvin()).isCloseTo(17.0 / 5, within(0.02));
    }

    @Test
    void windowsAndHoldingAreThoseOfTheClosedForm() {
        LumpedBody body = new LumpedBody(3000, 0.4, ZERO + 20, ZERO + 5);
        Holding.NotYet notYet = (Holding.NotYet) Holding.until(
                body.predict(Duration.ofHours(6)), Wanted.between(celsius(8), celsius(10)), Duration.ZERO);
        assertThat(Times.seconds(notYet.entersAfter())).isCloseTo(body.timeS(ZERO + 10), within(0.1));
        Holding.Until until = (Holding.Until) Holding.until(
                body.predict(Duration.ofHours(6)),
                Wanted.between(celsius(8), celsius(10)),
                notYet.entersAfter().plusSeconds(60));
        assertThat(Times.seconds(until.until())).isCloseTo(body.timeS(ZERO + 8), within(0.1));
        assertThat(until.tooWarm()).isFalse();
        assertThat(until.kelvinPerHour()).isCloseTo(-3 * 0.4 / 3000 * 3600, within(0.01));
        assertThat(Holding.until(
                        body.predict(Duration.ofHours(6)), Wanted.between(celsius(4), celsius(21)), Duration.ZERO))
                .isInstanceOf(Holding.Throughout.class);
    }

    @Test
    void aPassageThatOnlyComesNearIsNearestWithinItself() {
        // It tends to 8 °C and never meets 7.9 °C, but comes within the resolution of it.
        LumpedBody body = new LumpedBody(3000, 0.4, ZERO + 20, ZERO + 8);
        double seenS = body.timeS(ZERO + 8.05);
        Passing.At passing =
                (Passing.At) Passing.of(body.predict(Times.duration(seenS)), celsius(7.9), kelvinDifference(0.2));
        assertThat(Times.seconds(passing.first().window().from())).isCloseTo(body.timeS(ZERO + 8.1), within(1.0));
        assertThat(Times.seconds(passing.first().at())).isCloseTo(seenS, within(0.1));
    }
}
