/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeInRange;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Spread of any figure over draws, some of which may not have it. */
class SpreadTest {

    private static OptionalDouble aboveFive(double value) {
        return value > 5 ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    @Test
    void onlyDrawsThatHaveTheFigureCount() {
        List<Double> answers = List.of(1.0, 6.0, 10.0, 8.0);
        Spread spread = Spread.of(answers, SpreadTest::aboveFive, 0.5);
        assertThat(spread.draws()).isEqualTo(4);
        assertThat(spread.having()).isEqualTo(3);
        assertThat(spread.interval()).contains(new Interval(7, 8, 9, 0.5));
        assertThat(Spread.of(List.of(1.0, 6.0), SpreadTest::aboveFive, 0.5))
                .isEqualTo(new Spread(Optional.empty(), 2, 1));
    }

    /** Figures as large as a double stand for anything at all; with their negatives they are wider apart than a double is large. */
    @Test
    void noFigureIsTooLarge() {
        Interval interval = Spread.of(
                        List.of(-Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE), OptionalDouble::of, 0.9)
                .interval()
                .orElseThrow();
        assertThat(interval.low()).isCloseTo(-0.8 * Double.MAX_VALUE, within(1e295));
        assertThat(interval.high()).isEqualTo(Double.MAX_VALUE);
    }

    @Test
    void readsOffPredictionsWhenTheyLeaveARange() {
        FilledVessel bottle = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(8));
        PredictionEnsemble runs = PredictionEnsemble.of(
                Ensemble.of(30, 20_261_126L),
                LawScatter.all(),
                draw -> Lumped.of(bottle)
                        .with(NetworkSolver.standard().withMultipliers(draw.values()))
                        .expose(in(Air.at(celsius(22)), Duration.ofHours(1))));
        Spread leaves = runs.spread(SpreadTest::leftAfterS, 0.9);
        // It is at 8 °C from the start, so that leaving 7 to 10 °C is reaching 10 °C.
        TimeSpread reaches = runs.timeTo(celsius(10), 0.9);
        assertThat(leaves.having()).isEqualTo(30);
        assertThat(leaves.interval().orElseThrow().median())
                .isCloseTo(reaches.median().orElseThrow().toMillis() / 1000.0, within(30.0));
        assertThat(runs.spread(prediction -> OptionalDouble.empty(), 0.9).having())
                .isZero();
    }

    private static OptionalDouble leftAfterS(Prediction prediction) {
        return prediction.timeInRange(celsius(7), celsius(10)) instanceof TimeInRange.Leaves leaves
                ? OptionalDouble.of(leaves.leftAfter().toMillis() / 1000.0)
                : OptionalDouble.empty();
    }

    /** A bias of best value 0 may have either sign; a factor of 1 is never negative. */
    @Test
    void drawsAboutZeroHaveEitherSign() {
        List<UncertainInput> inputs = List.of(
                new UncertainInput("bias", 0, Uncertainty.normal(0.5)),
                UncertainInput.factor("factor", Uncertainty.normalRelative(1)));
        Ensemble ensemble = Ensemble.of(4000, 20_261_126L);
        double mean = ensemble.run(inputs, draw -> draw.value("bias")).stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
        // Four standard errors of the mean of a symmetric distribution; cut at 0 it would be 0.2.
        assertThat(mean).isCloseTo(0, within(4 * 0.5 / Math.sqrt(4000)));
        assertThat(ensemble.run(inputs, draw -> draw.value("factor"))).allMatch(factor -> factor >= 0);
    }

    @Test
    void nonsenseIsRefused() {
        List<Double> answers = List.of(1.0, 2.0);
        assertThatIllegalArgumentException().isThrownBy(() -> Spread.of(List.<Double>of(), OptionalDouble::of, 0.9));
        assertThatIllegalArgumentException().isThrownBy(() -> Spread.of(answers, OptionalDouble::of, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Spread.of(answers, answer -> OptionalDouble.of(Double.NaN), 0.9))
                .withMessageContaining("NaN");
        assertThatIllegalArgumentException().isThrownBy(() -> new Spread(Optional.empty(), 3, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> new Spread(Optional.empty(), 0, 0));
    }
}
