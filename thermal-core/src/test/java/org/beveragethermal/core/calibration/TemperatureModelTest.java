/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Sensitivity;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Thermal predictions as models: slopes against closed forms and the variational equations; what one log of the drink tells. */
class TemperatureModelTest {

    private static final double[] TIMES =
            IntStream.rangeClosed(1, 200).mapToDouble(i -> 60 * i).toArray();

    /** T = T∞ + (T₀ − T∞) e^(−mt/τ), read with a lag: closed form θ. */
    private static TemperatureModel exponential(double... times) {
        return TemperatureModel.of(times, (values, solver) -> {
                    Node body = Node.sensible("body", 1000, values.getOrDefault("start", 300.0));
                    Boundary air = Boundary.constant("air", values.getOrDefault("room", 280.0));
                    DirectPath film = DirectPath.of("film", body, air, "convection", HeatLaw.conductance(1))
                            .scaledBy("film");
                    return Sensed.in(solver.solve(Network.of(List.of(body), List.of(film)), 12_001), body);
                })
                .multipliers("film")
                .throughLawsAlone()
                .inputs("start", "room");
    }

    @Test
    void slopesAreThoseOfTheClosedForm() {
        double[] times = {300, 1000, 2500, 6000};
        double m = 1.3;
        double[] at = {m, 300, 280};
        Predicted predicted = exponential(times).at(at);
        Predicted closer = exponential(times)
                .with(NetworkSolver.standard().withToleranceK(1e-5))
                .at(at);
        for (int i = 0; i < times.length; i++) {
            double e = Math.exp(-m * times[i] / 1000);
            // The error of a step may be 1e-4 K, and 1e-5 K where that is asked for.
            assertThat(predicted.value(i)).isCloseTo(280 + 20 * e, within(1e-4));
            assertThat(closer.value(i)).isCloseTo(280 + 20 * e, within(2e-5));
            assertThat(predicted.slope(i, 0)).isCloseTo(-20 * times[i] / 1000 * e, within(2e-4));
            assertThat(predicted.slope(i, 1)).isCloseTo(e, within(2e-6));
            assertThat(predicted.slope(i, 2)).isCloseTo(1 - e, within(2e-6));
        }
    }

    @Test
    void laggingBiasedThermometerFollowsTheClosedForm() {
        // With 1/τ_s = b, 1/τ = a: θ = T∞ + bias + (T₀ − T∞) (b e^(−at) − a e^(−bt)) / (b − a) for θ(0) = T₀ (closed
        // form).
        double[] times = {10, 60, 300, 1000, 2500};
        double lag = 90;
        TemperatureModel model =
                exponential(times).readBy(Sensor.IDEAL.lagging("lag").biased("bias"));
        assertThat(model.parameters()).containsExactly("film", "start", "room", "lag", "bias");
        Predicted predicted = model.at(new double[] {1, 300, 280, lag, 0.25});
        for (int i = 0; i < times.length; i++) {
            double t = times[i];
            assertThat(predicted.value(i)).isCloseTo(read(t, lag) + 0.25, within(2e-5));
            double byLag = (read(t, lag + 0.01) - read(t, lag - 0.01)) / 0.02;
            assertThat(predicted.slope(i, 3)).isCloseTo(byLag, within(1e-6));
            assertThat(predicted.slope(i, 4)).isEqualTo(1);
        }
    }

    private static double read(double t, double lag) {
        double a = 1.0 / 1000;
        double b = 1 / lag;
        return 280 + 20 * (b * Math.exp(-a * t) - a * Math.exp(-b * t)) / (b - a);
    }

    private static TemperatureModel bottle() {
        return TemperatureModel.of(
                        TIMES,
                        (values, solver) -> Sensed.in(Lumped.of(Vessels.highShouldered750()
                                        .filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22)))
                                .with(solver)
                                .expose(in(Refrigerator.at(celsius(4)), Duration.ofSeconds(12_001)))))
                .multipliers(Multipliers.INSIDE_FILM, Multipliers.AIR_FILM)
                .throughLawsAlone();
    }

    @Test
    void slopesAgreeWithTheVariationalEquations() {
        Predicted predicted = bottle().at(new double[] {1, 1});
        var prediction = Lumped.of(
                        Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22)))
                .with(NetworkSolver.standard().withToleranceK(1e-6))
                .expose(in(Refrigerator.at(celsius(4)), Duration.ofSeconds(12_001)));
        Sensitivity sensitivity = Sensitivity.of(
                prediction.trajectory(), List.of(Multipliers.INSIDE_FILM, Multipliers.AIR_FILM), List.of());
        for (int i = 9; i < TIMES.length; i += 10) {
            for (int k = 0; k < 2; k++) {
                double slope = sensitivity.temperatureSlope(
                        bottle().parameters().get(k),
                        prediction.contents().nodes().get(0),
                        TIMES[i]);
                assertThat(predicted.slope(i, k)).isCloseTo(slope, within(2e-3 * Math.abs(slope) + 1e-5));
            }
        }
    }

    /** Two pieces of gear, one after the other: slopes against differences of runs at a tight tolerance. */
    @Test
    void slopesOfABottleThatIsMovedAreThoseOfRuns() {
        var wine = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
        TemperatureModel moved = TemperatureModel.of(
                        TIMES,
                        (values, solver) -> Sensed.in(Lumped.of(wine)
                                .with(solver)
                                .expose(
                                        in(Refrigerator.at(celsius(4)), Duration.ofSeconds(5000)),
                                        in(Air.at(celsius(26)), Duration.ofSeconds(7001)))))
                .multipliers(Multipliers.INSIDE_FILM, Multipliers.AIR_FILM)
                .throughLawsAlone();
        TemperatureModel tight = moved.with(NetworkSolver.standard().withToleranceK(1e-9));
        double[] at = {1.2, 0.8};
        Predicted predicted = moved.at(at);
        for (int k = 0; k < 2; k++) {
            double[] above = at.clone();
            double[] below = at.clone();
            above[k] += 1e-3;
            below[k] -= 1e-3;
            double[] high = tight.at(above).values();
            double[] low = tight.at(below).values();
            double largest = 0;
            double off = 0;
            for (int i = 0; i < TIMES.length; i++) {
                double slope = (high[i] - low[i]) / 2e-3;
                largest = Math.max(largest, Math.abs(slope));
                off = Math.max(off, Math.abs(slope - predicted.slope(i, k)));
            }
            assertThat(off).isLessThan(3e-4 * largest);
        }
    }

    /** A multiplier that sets the start as well: T = 280 + 20 m e^(−mt/τ). */
    @Test
    void settingThatUsesAMultiplierOtherwiseHasItsSlopesToo() {
        double[] times = {300, 1000, 2500, 6000};
        double m = 1.3;
        Predicted predicted = TemperatureModel.of(times, (values, solver) -> {
                    Node body = Node.sensible("body", 1000, 280 + 20 * values.getOrDefault("film", 1.0));
                    Boundary air = Boundary.constant("air", 280);
                    DirectPath film = DirectPath.of("film", body, air, "convection", HeatLaw.conductance(1))
                            .scaledBy("film");
                    return Sensed.in(solver.solve(Network.of(List.of(body), List.of(film)), 12_001), body);
                })
                .multipliers("film")
                .at(new double[] {m});
        for (int i = 0; i < times.length; i++) {
            double e = Math.exp(-m * times[i] / 1000);
            assertThat(predicted.slope(i, 0)).isCloseTo(20 * e * (1 - m * times[i] / 1000), within(1e-3));
        }
    }

    /** A refrigerator that is warmer where the factor is above 1.5: what is asked first must not matter. */
    @Test
    void answersDoNotHangOnWhatWasAskedBefore() {
        double[] times = {600, 3600, 7200};
        TemperatureModel.Setting setting = (values, solver) -> Sensed.in(Lumped.of(
                        Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22)))
                .with(solver)
                .expose(in(
                        Refrigerator.at(celsius(values.getOrDefault(Multipliers.AIR_FILM, 1.0) > 1.5 ? 9 : 5)),
                        Duration.ofSeconds(7201))));
        TemperatureModel fresh = TemperatureModel.of(times, setting).multipliers(Multipliers.AIR_FILM);
        double[] expected = fresh.at(new double[] {2}).values();
        TemperatureModel asked = TemperatureModel.of(times, setting).multipliers(Multipliers.AIR_FILM);
        asked.at(new double[] {1}).slope(0, 0);
        asked.at(new double[] {0}).slope(0, 0);
        assertThat(asked.at(new double[] {2}).values()).containsExactly(expected);
    }

    /** Said to act through the laws alone, a bottle reads as its setting does, and its slopes are those of differences. */
    @Test
    void throughLawsAloneNothingButTheTimeChanges() {
        TemperatureModel plain = TemperatureModel.of(
                        TIMES,
                        (values, solver) -> Sensed.in(Lumped.of(Vessels.highShouldered750()
                                        .filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22)))
                                .with(solver)
                                .expose(in(Refrigerator.at(celsius(4)), Duration.ofSeconds(12_001)))))
                .multipliers(Multipliers.INSIDE_FILM, Multipliers.AIR_FILM);
        TemperatureModel quick = plain.throughLawsAlone();
        quick.at(new double[] {1, 1});
        for (double[] at : new double[][] {{1.3, 0.7}, {0.8, 1.1}}) {
            Predicted expected = plain.at(at);
            Predicted predicted = quick.at(at);
            assertThat(predicted.values()).containsExactly(expected.values(), within(1e-9));
            for (int k = 0; k < 2; k++) {
                for (int i = 0; i < TIMES.length; i += 20) {
                    assertThat(predicted.slope(i, k)).isCloseTo(expected.slope(i, k), within(1e-3));
                }
            }
        }
    }

    @Test
    void oneLogOfTheDrinkDoesNotTellInsideFromOutside() {
        TemperatureModel model = bottle();
        double[] truth = model.at(new double[] {1.15, 0.9}).values();
        SplittableRandom random = new SplittableRandom(20261126);
        NormalDistribution normal = new NormalDistribution(null, 0, 0.05);
        double[] readings = Arrays.stream(truth)
                .map(t -> t + normal.inverseCumulativeProbability(random.nextDouble()))
                .toArray();
        FitResult result = Fit.builder()
                .parameter(Parameter.of(Multipliers.INSIDE_FILM, 1).between(0.05, 20))
                .parameter(Parameter.of(Multipliers.AIR_FILM, 1).between(0.05, 20))
                .run("fridge", model, Observations.of(TIMES, readings))
                .build()
                .run();
        assertThat(result.correlation(Multipliers.INSIDE_FILM, Multipliers.AIR_FILM))
                .isLessThan(-0.9);
    }
}
