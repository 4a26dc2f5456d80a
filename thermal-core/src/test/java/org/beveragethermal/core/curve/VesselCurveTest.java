/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Curves of real vessels against runs of the engine that they were not made of. */
class VesselCurveTest {

    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20));
    private static final Refrigerator COLD = Refrigerator.at(celsius(5));

    private static Prediction run(double startC, Surroundings surroundings, Map<String, Double> multipliers) {
        return Lumped.of(BOTTLE.atTemperature(celsius(startC)))
                .with(NetworkSolver.standard().withToleranceK(1e-6).withMultipliers(multipliers))
                .expose(in(surroundings, Duration.ofHours(12)));
    }

    private static double timeS(Prediction run, double targetK) {
        return run.trajectory()
                .firstCrossing(0, t -> run.meanTemperatureK(t) - targetK)
                .getAsDouble();
    }

    @Test
    void uniformStartsAreMetWithinTheStatedError() {
        CoolingCurve curve = VesselCurve.of(BOTTLE, COLD).prepare(celsius(6.5), celsius(24));
        assertThat(curve.timeErrorS()).isLessThan(20);
        assertThat(curve.temperatureK(293.15, Double.POSITIVE_INFINITY)).isEqualTo(curve.equilibriumK());
        for (double start : new double[] {23.3, 18.7, 12.1}) {
            Prediction run = run(start, COLD, Map.of());
            for (double target : new double[] {start - 0.1, start - 0.6, start - 2, 0.5 * (start + 6.5), 7}) {
                assertThat(curve.timeS(start + 273.15, target + 273.15))
                        .isCloseTo(timeS(run, target + 273.15), within(curve.timeErrorS()));
            }
            for (double after : new double[] {20, 60, 600, 3600, 7200}) {
                assertThat(curve.temperatureK(start + 273.15, after))
                        .isCloseTo(run.meanTemperatureK(after), within(curve.temperatureErrorK()));
            }
        }
    }

    @Test
    void aCourseUnderWayIsADifferenceOfTimes() {
        CoolingCurve curve =
                VesselCurve.of(BOTTLE, COLD).prepare(celsius(6.5), celsius(24)).underWay();
        Prediction run = run(27, COLD, Map.of());
        double[] targets = {296.15, 292, 288.15, 283.15, 280};
        for (int i = 0; i + 1 < targets.length; i++) {
            assertThat(curve.timeS(targets[i], targets[i + 1]))
                    .isCloseTo(timeS(run, targets[i + 1]) - timeS(run, targets[i]), within(1.0));
        }
        assertThat(curve.timeS(295, 290) + curve.timeS(290, 285)).isCloseTo(curve.timeS(295, 285), within(1e-8));
        assertThat(curve.underWay()).isSameAs(curve);
    }

    @Test
    void warmingAndFactorsAreFollowedToo() {
        Air room = Air.at(celsius(22));
        Map<String, Double> factors = Map.of(Multipliers.AIR_FILM, 1.3);
        CoolingCurve curve =
                VesselCurve.of(BOTTLE, room).withMultipliers(factors).prepare(celsius(20), celsius(5));
        Prediction run = run(8, room, factors);
        for (double target : new double[] {8.5, 10, 14, 19}) {
            assertThat(curve.timeS(281.15, target + 273.15))
                    .isCloseTo(timeS(run, target + 273.15), within(curve.timeErrorS()));
        }
        assertThat(curve.timeS(281.15, 273.15)).isInfinite();
        assertThat(curve.timeS(281.15, 300)).isInfinite();
    }

    @Test
    void whatIsNotSteadyIsRefused() {
        VesselCurve swinging =
                VesselCurve.of(BOTTLE, Refrigerator.cycling(celsius(5), kelvinDifference(2), Duration.ofMinutes(40)));
        assertThatThrownBy(() -> swinging.prepare(celsius(8), celsius(20)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("varies in time");
        VesselCurve bath = VesselCurve.of(
                BOTTLE,
                WaterBath.of(
                        Bucket.of(millimetres(200), millimetres(400)), litres(4), celsius(5), Air.at(celsius(22))));
        assertThatThrownBy(() -> bath.prepare(celsius(8), celsius(20)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("water");
        assertThatThrownBy(() -> VesselCurve.of(BOTTLE, COLD).prepare(celsius(4), celsius(20)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("one side");
        assertThatThrownBy(() -> VesselCurve.of(BOTTLE, COLD).prepare(celsius(5.001), celsius(20)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tends");
    }

    /** The snippet of the package's documentation. */
    @Test
    void theSnippetRuns() {
        FilledVessel bottle = BOTTLE;
        Refrigerator refrigerator = COLD;
        CoolingCurve curve = VesselCurve.of(bottle, refrigerator).prepare(celsius(6), celsius(24));
        String answer = "";
        if (curve.timeTo(celsius(21), celsius(9)) instanceof CurveTime.Reached reached) {
            answer = "ready after " + reached.after().toMinutes() + " min, give or take "
                    + reached.error().toSeconds() + " s";
        }
        Quantity<Temperature> afterAnHour = curve.temperatureAfter(celsius(21), Duration.ofHours(1));
        double seconds = curve.timeS(294.15, 282.15);
        assertThat(answer).startsWith("ready after 1").contains(" min, give or take ");
        assertThat(afterAnHour.getValue().doubleValue()).isBetween(13.0, 18.0);
        assertThat(seconds).isBetween(9e3, 13e3);
    }
}
