/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Sensitivity;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Sampling and first-order propagation: reproducible, right where the answer is known, and agreeing with each other. */
class UncertaintyTest {

    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Duration HALF_AN_HOUR = Duration.ofMinutes(30);

    private static Prediction predict(Map<String, Double> factors) {
        return predict(factors, 1e-6);
    }

    private static Prediction predict(Map<String, Double> factors, double toleranceK) {
        IceWaterBath bath = IceWaterBath.in(Bucket.of(millimetres(180), millimetres(400)), Air.at(celsius(22)))
                .ice(kilograms(2), millimetres(25), celsius(-5))
                .water(kilograms(4), celsius(12))
                .build();
        return Lumped.of(BOTTLE)
                .with(NetworkSolver.standard().withToleranceK(toleranceK).withMultipliers(factors))
                .expose(in(bath, Duration.ofHours(1)));
    }

    @Test
    void slopesAreThoseOfTheRun() {
        LinearSpread spread = LinearSpread.of(predict(Map.of()), LawScatter.all());
        Map<String, Double> contributions = spread.contributionsK(HALF_AN_HOUR);
        double squares = 0;
        for (UncertainInput input : LawScatter.all()) {
            double d = 0.01;
            double up = predict(Map.of(input.name(), 1 + d)).meanTemperatureK(1800);
            double down = predict(Map.of(input.name(), 1 - d)).meanTemperatureK(1800);
            double numeric = (up - down) / (2 * d) * input.standardUncertainty();
            assertThat(contributions.getOrDefault(input.name(), Double.NaN))
                    .as(input.name())
                    .isCloseTo(numeric, within(0.005));
            squares += numeric * numeric;
        }
        assertThat(spread.standardUncertaintyK(HALF_AN_HOUR)).isCloseTo(Math.sqrt(squares), within(0.01));
        assertThat(Math.abs(contributions.getOrDefault(Multipliers.WATER_FILM, 0.0)))
                .isGreaterThan(0.1);
    }

    @Test
    void slopeInAFactorAndInTheStartOfAnExponential() {
        // T = T∞ + (T₀ − T∞) e^(−mt/τ): dT/dm = −(T₀ − T∞) (t/τ) e^(−t/τ), dT/dT₀ = e^(−t/τ) (closed form).
        Node body = Node.sensible("body", 1000, 300);
        Boundary air = Boundary.constant("air", 280);
        DirectPath film = DirectPath.of("film", body, air, "convection", HeatLaw.conductance(1))
                .scaledBy("film");
        Trajectory run =
                NetworkSolver.standard().withToleranceK(1e-6).solve(Network.of(List.of(body), List.of(film)), 3000);
        Sensitivity sensitivity = Sensitivity.of(run, List.of("film"), List.of(body));
        for (double t : new double[] {300, 1000, 2500}) {
            double e = Math.exp(-t / 1000);
            assertThat(sensitivity.temperatureSlope("film", body, t)).isCloseTo(-20 * t / 1000 * e, within(0.02));
            assertThat(sensitivity.temperatureSlope("body", body, t)).isCloseTo(e, within(2e-3));
        }
        assertThatThrownBy(() -> sensitivity.temperatureSlope("other", body, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void samplesAgreeWithPropagation() {
        PredictionEnsemble runs =
                PredictionEnsemble.of(Ensemble.of(200, 5), LawScatter.all(), d -> predict(d.values(), 1e-3));
        double u = LinearSpread.of(predict(Map.of()), LawScatter.all()).standardUncertaintyK(HALF_AN_HOUR);
        Interval interval = runs.temperatureK(HALF_AN_HOUR, 0.90);
        // 90 % of a normal distribution lie within 1.645 standard deviations; 200 draws know the width to about a
        // tenth.
        assertThat(interval.high() - interval.low()).isCloseTo(2 * 1.645 * u, within(0.3 * 2 * 1.645 * u));
        assertThat(runs.probabilityInRange(HALF_AN_HOUR, interval.low(), interval.high()))
                .isBetween(0.85, 0.95);
        TimeSpread time = runs.timeTo(celsius(10), 0.9);
        assertThat(time.earliest().orElseThrow()).isLessThan(time.latest().orElseThrow());
        assertThat(time.neverPart()).isZero();
        assertThat(runs.timeTo(celsius(1), 0.9).neverPart()).isEqualTo(1);
        assertThat(runs.timeTo(celsius(1), 0.9).median()).isEmpty();
        assertThat(runs.predictions()).hasSize(200);
    }

    @Test
    void drawsDoNotDependOnThreads() {
        List<UncertainInput> inputs = List.of(
                UncertainInput.factor("a", Uncertainty.normalRelative(0.1)),
                new UncertainInput("b", 20, Uncertainty.rectangular(2)));
        List<Double> alone = Ensemble.of(500, 11).run(inputs, d -> d.value("a") * d.value("b"));
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            assertThat(Ensemble.of(500, 11).on(threads).run(inputs, d -> d.value("a") * d.value("b")))
                    .isEqualTo(alone);
        } finally {
            threads.shutdown();
        }
        assertThat(Ensemble.of(500, 12).run(inputs, d -> d.value("a") * d.value("b")))
                .isNotEqualTo(alone);
        double mean = alone.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        assertThat(mean).isCloseTo(20, within(0.5));
    }

    @Test
    void intervalsOfKnownSamples() {
        double[] values = new double[101];
        for (int i = 0; i < values.length; i++) {
            values[i] = 100 - i;
        }
        Interval interval = Interval.of(values, 0.9);
        assertThat(interval.low()).isCloseTo(5, within(1e-12));
        assertThat(interval.median()).isCloseTo(50, within(1e-12));
        assertThat(interval.high()).isCloseTo(95, within(1e-12));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> Ensemble.of(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Interval.of(new double[] {1}, 0.9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Interval.of(new double[] {1, 2}, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new UncertainInput(" ", 1, Uncertainty.exact()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new UncertainInput("a", Double.NaN, Uncertainty.exact()))
                .isInstanceOf(IllegalArgumentException.class);
        UncertainInput a = UncertainInput.factor("a", Uncertainty.exact());
        assertThatThrownBy(() -> Ensemble.of(2, 0).run(List.of(a, a), d -> d))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Ensemble.of(2, 0).run(List.of(a), d -> d.value("b")))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
