/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lag and damping against the closed form of a lumped body. */
final class RoomResponseTest {

    private static final double ZERO = 273.15;
    private static final Duration DAY = Duration.ofDays(1);
    private static final double DAY_S = 86_400;
    private static final String CLOSED_FORM =
            "H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed. (1959), section 1.9, well-stirred body in air that"
                    + " swings: 1/sqrt(1 + w²t²), arctan(w t)";

    private static double room(double timeS) {
        return ZERO + 13 + 3 * Math.cos(2 * Math.PI * (timeS / DAY_S - 0.6));
    }

    private static TemperatureHistory roomOver(int days) {
        int n = 96 * days;
        double[] times = new double[n + 1];
        double[] temperatures = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            times[i] = i * DAY_S / 96;
            temperatures[i] = room(times[i]);
        }
        return TemperatureHistory.of(times, temperatures);
    }

    /** A linear body: one node, one conductance, a room that swings; the prediction of it is drawn and taken apart. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 3.0, 12.0})
    void linearBodyInARoomThatSwings(double hours) {
        double tau = 3600 * hours;
        Node body = Node.sensible("contents", 3600, room(0));
        Network network = Network.of(
                List.of(body),
                List.of(DirectPath.of(
                        "film",
                        body,
                        Boundary.varying("air", TimeFunction.smooth(RoomResponseTest::room)),
                        "convection",
                        HeatLaw.conductance(3600 / tau))));
        Prediction prediction = Prediction.of(
                NetworkSolver.standard().solve(network, 8 * DAY_S), Contents.of(body), 3600, List.of(), List.of());
        TemperatureHistory contents = TemperatureHistory.of(prediction).between(Duration.ofDays(5), Duration.ofDays(8));
        RoomResponse response = RoomResponse.of(roomOver(3), contents);
        RoomResponse.Follows follows = (RoomResponse.Follows) response.swing(DAY);
        double angle = 2 * Math.PI * tau / DAY_S;
        OutsideChecks.published("swing-damped-tau-" + hours + "h", CLOSED_FORM)
                .what("amplitude of a lumped body over that of its room, time constant " + hours + " h, period 24 h")
                .unit("1")
                .expected(1 / Math.sqrt(1 + angle * angle))
                .within(7e-4)
                .check(follows.amplitudeRatio());
        OutsideChecks.published("swing-delayed-tau-" + hours + "h", CLOSED_FORM)
                .what("how late a lumped body is behind its room, time constant " + hours + " h, period 24 h")
                .unit("s")
                .expected(Math.atan(angle) * DAY_S / (2 * Math.PI))
                .within(60)
                .check(Times.seconds(follows.lag()));
        LumpedSwing closed = LumpedSwing.of(Times.duration(tau), DAY);
        assertThat(closed.amplitudeRatio()).isCloseTo(1 / Math.sqrt(1 + angle * angle), within(1e-12));
        RoomResponse.Lags lags = (RoomResponse.Lags) response.timeConstant();
        assertThat(Times.seconds(lags.timeConstant())).isCloseTo(tau, Percentage.withPercentage(1));
        assertThat(lags.swing(DAY).amplitudeRatio()).isCloseTo(closed.amplitudeRatio(), within(0.01));
    }

    /** Films depend on temperature and the glass has a capacity: a bottle is not linear, and within a tenth of one that is. */
    @Test
    void bottleInARoomThatSwings() {
        FilledVessel wine =
                Vessels.highShouldered750().filledWith(Beverage.dryWine(percentByVolume(12.5)), celsius(13));
        Air cellar = Air.periodic(celsius(13), kelvinDifference(3), DAY, Duration.ofHours(15));
        Prediction bottle = Lumped.of(wine).expose(in(cellar, Duration.ofDays(5)));
        TemperatureHistory contents = TemperatureHistory.of(bottle).between(Duration.ofDays(2), Duration.ofDays(5));
        double[] times = new double[3 * 96 + 1];
        double[] air = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = i * DAY_S / 96;
            air[i] = cellar.airK().at(2 * DAY_S + times[i]);
        }
        RoomResponse response = RoomResponse.of(TemperatureHistory.of(times, air), contents);
        RoomResponse.Follows follows = (RoomResponse.Follows) response.swing(DAY);
        Duration constant = ((RoomResponse.Lags) response.timeConstant()).timeConstant();
        assertThat(constant).isBetween(Duration.ofMinutes(110), Duration.ofMinutes(300));
        LumpedSwing linear = LumpedSwing.of(constant, DAY);
        assertThat(follows.amplitudeRatio()).isCloseTo(linear.amplitudeRatio(), within(0.03));
        assertThat(Times.seconds(follows.lag())).isCloseTo(Times.seconds(linear.lag()), Percentage.withPercentage(10));
        assertThat(follows.explain()).contains("the contents by");
        assertThat(linear.explain()).contains("% is left");
    }

    /** A log goes into the room of a prediction and is compared with what comes out. */
    @Test
    void contentsBehindALoggedRoom() {
        TemperatureHistory log = TemperatureHistory.of(
                new double[] {0, 4 * 3600, 5 * 3600, 20 * 3600, 21 * 3600, DAY_S},
                new double[] {ZERO + 12, ZERO + 12, ZERO + 24, ZERO + 24, ZERO + 15, ZERO + 15});
        FilledVessel wine =
                Vessels.highShouldered750().filledWith(Beverage.dryWine(percentByVolume(12.5)), celsius(12));
        Prediction bottle = Lumped.of(wine).expose(in(Air.varying(log.byDuration()), log.length()));
        TemperatureHistory contents = TemperatureHistory.of(bottle);
        RoomResponse.Lags lags =
                (RoomResponse.Lags) RoomResponse.of(log, contents).timeConstant();
        assertThat(lags.timeConstant()).isBetween(Duration.ofMinutes(110), Duration.ofMinutes(300));
        assertThat(lags.rmsK()).isLessThan(0.5);
        assertThat(lags.explain()).contains("like a lumped body");
        Duration warm = Duration.ofHours(20);
        assertThat(contents.between(Duration.ZERO, warm).timeAbove(celsius(18)))
                .isLessThan(log.between(Duration.ZERO, warm).timeAbove(celsius(18)));
        assertThat(contents.highest().temperatureK()).isBetween(ZERO + 23, ZERO + 24);
    }

    @Test
    void whatDoesNotTellIsAnAnswer() {
        TemperatureHistory still = TemperatureHistory.of(new double[] {0, 4 * DAY_S}, new double[] {285, 285});
        RoomResponse none = RoomResponse.of(still, still);
        assertThat(none.swing(DAY)).isInstanceOf(RoomResponse.NoSwing.class);
        assertThat(none.timeConstant()).isInstanceOf(RoomResponse.NotTold.class);
        assertThat(none.swing(Duration.ofDays(30)).explain()).contains("less than a period");
        RoomResponse same = RoomResponse.of(roomOver(2), roomOver(2));
        assertThat(same.timeConstant()).isInstanceOf(RoomResponse.NotTold.class);
        RoomResponse.Follows follows = (RoomResponse.Follows) same.swing(DAY);
        assertThat(follows.amplitudeRatio()).isCloseTo(1, within(1e-9));
        assertThat(follows.lag().abs()).isLessThan(Duration.ofSeconds(1));
        assertThat(same.swing(Duration.ofNanos(1)).explain()).contains("more than 30000");
        assertThat(follows.snapshot().valuesSi().keySet())
                .containsExactly("roomAmplitudeK", "contentsAmplitudeK", "lagS");
        assertThat(none.swing(DAY).snapshot().answer()).isEqualTo("noSwing");
        assertThat(new RoomResponse.Follows(2, 1, Duration.ofHours(-1)).explain())
                .contains("1.0 h earlier");
        assertThatThrownBy(() -> none.swing(Duration.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("period");
        assertThatThrownBy(() -> LumpedSwing.of(Duration.ZERO, DAY)).hasMessageContaining("time constant");
    }

    @Test
    void logsAreComparedOverTheTimeTheyShare() {
        Instant start = Instant.parse("2026-07-01T00:00:00Z");
        List<Reading> early = List.of(
                new Reading(start, celsius(12)),
                new Reading(start.plus(Duration.ofHours(2)), celsius(20)),
                new Reading(start.plus(Duration.ofHours(30)), celsius(20)));
        List<Reading> late = List.of(
                new Reading(start.plus(Duration.ofHours(2)), celsius(12)),
                new Reading(start.plus(Duration.ofHours(5)), celsius(20 - 8 / Math.E)),
                new Reading(start.plus(Duration.ofHours(40)), celsius(20)));
        RoomResponse.Lag lag = RoomResponse.of(TemperatureHistory.logged(early), TemperatureHistory.logged(late))
                .timeConstant();
        assertThat(lag).isInstanceOf(RoomResponse.Lags.class);
        List<Reading> after = List.of(
                new Reading(start.plus(Duration.ofHours(50)), celsius(12)),
                new Reading(start.plus(Duration.ofHours(60)), celsius(12)));
        assertThatThrownBy(() -> RoomResponse.of(TemperatureHistory.logged(early), TemperatureHistory.logged(after)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lasts beyond");
    }
}
