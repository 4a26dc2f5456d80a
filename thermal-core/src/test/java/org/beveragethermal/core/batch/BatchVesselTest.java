/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

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
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Real vessels in batches, and the two forms of a law. */
class BatchVesselTest {

    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    /** The snippet of the package's documentation, and what it answers against the engine's own runs. */
    @Test
    void aRealBottleGivesTheEnginesTimes() {
        FilledVessel bottle = BOTTLE;
        Refrigerator refrigerator = Refrigerator.at(celsius(5));
        double[] inside = {0.8, 1, 1.2, 1};
        double[] air = {1.1, 0.9, 1, 1};
        double[] startsK = {295.15, 297.15, 291.15, 293.15};

        List<Path> paths = Lumped.of(bottle)
                .expose(in(refrigerator, Duration.ofSeconds(1)))
                .trajectory()
                .paths(0);
        BatchSamples samples = BatchNetwork.of(paths)
                .samples(4)
                .startK("vessel contents", startsK)
                .startK("vessel wall 1", startsK)
                .multiplier(Multipliers.INSIDE_FILM, inside)
                .multiplier(Multipliers.AIR_FILM, air)
                .build();
        double[] seconds = BatchSolver.standard().timesToS(samples, "vessel contents", 282.15, 50_000);

        for (int s = 0; s < 4; s++) {
            BatchSamples alone = BatchNetwork.of(paths)
                    .samples(1)
                    .startK("vessel contents", startsK[s])
                    .startK("vessel wall 1", startsK[s])
                    .multiplier(Multipliers.INSIDE_FILM, inside[s])
                    .multiplier(Multipliers.AIR_FILM, air[s])
                    .build();
            assertThat(BatchSolver.standard().timesToS(alone, "vessel contents", 282.15, 50_000))
                    .containsExactly(seconds[s]);
            Prediction run = Lumped.of(bottle.atTemperature(celsius(startsK[s] - 273.15)))
                    .with(NetworkSolver.standard()
                            .withToleranceK(1e-6)
                            .withMultipliers(Map.of(Multipliers.INSIDE_FILM, inside[s], Multipliers.AIR_FILM, air[s])))
                    .expose(in(refrigerator, Duration.ofHours(10)));
            double engine = run.trajectory()
                    .firstCrossing(0, t -> run.meanTemperatureK(t) - 282.15)
                    .getAsDouble();
            assertThat(seconds[s]).isCloseTo(engine, within(2.0));
        }
        double[] given = BatchSolver.standard().givingUpAfter(2).timesToS(samples, "vessel contents", 282.15, 50_000);
        assertThat(given).usingComparatorWithPrecision(2.0).containsExactly(seconds);
    }

    @Test
    void moreInTheBottleTakesLonger() {
        List<Path> paths = Lumped.of(BOTTLE)
                .expose(in(Refrigerator.at(celsius(5)), Duration.ofSeconds(1)))
                .trajectory()
                .paths(0);
        BatchSamples samples = BatchNetwork.of(paths)
                .samples(2)
                .capacityFactor("vessel contents", 1, 1.1)
                .build();
        double[] seconds = BatchSolver.standard().timesToS(samples, "vessel contents", 282.15, 50_000);
        assertThat(seconds[1] / seconds[0]).isBetween(1.07, 1.1);
        double[] given = BatchSolver.standard().givingUpAfter(2).timesToS(samples, "vessel contents", 282.15, 50_000);
        assertThat(given).usingComparatorWithPrecision(2.0).containsExactly(seconds);
    }

    @Test
    void whatVariesInTimeWithoutAJumpIsRefused() {
        Node body = Node.sensible("body", 1000, 295.15);
        Boundary air = Boundary.constant("air", 278.15);
        HeatLaw law = HeatLaw.conductance(1);
        JunctionPath swinging = JunctionPath.of(
                "film",
                JunctionPath.Link.of(body, "conduction", law),
                new JunctionPath.Link(
                        air, "convection", law, null, null, TimeFunction.smooth(t -> 1 + 0.9 * Math.sin(t / 1000))));
        assertThatThrownBy(() -> BatchNetwork.of(List.of(swinging)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("path film varies in time");
    }

    @Test
    void whatHasAmountsIsRefused() {
        IceWaterBath bath = IceWaterBath.of(
                Bucket.of(millimetres(200), millimetres(400)), kilograms(1), kilograms(3), Air.at(celsius(22)));
        List<Path> paths = Lumped.of(BOTTLE)
                .expose(in(bath, Duration.ofSeconds(1)))
                .trajectory()
                .paths(0);
        assertThatThrownBy(() -> BatchNetwork.of(paths))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("amounts");
    }

    @Test
    void lawsKeepTheirNumbersInEitherForm() {
        BatchLaw batch = BatchLaw.of(TwoNodes.INSIDE);
        HeatLaw back = batch.asHeatLaw();
        HeatFlow one = new HeatFlow();
        HeatFlow other = new HeatFlow();
        TwoNodes.INSIDE.evaluate(295, 290, one);
        back.evaluate(295, 290, other);
        assertThat(other).usingRecursiveComparison().isEqualTo(one);
        BatchLaw.conductance(2).asHeatLaw().evaluate(295, 290, other);
        assertThat(List.of(other.watts, other.perFromKelvin, other.perToKelvin)).containsExactly(10.0, 2.0, -2.0);
    }
}
