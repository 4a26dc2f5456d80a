/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.watts;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.List;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.hazard.FreezingHazard;
import org.beveragethermal.core.hazard.FreezingOnset;
import org.beveragethermal.core.icemaking.IceBatches;
import org.beveragethermal.core.icemaking.IceMaking;
import org.beveragethermal.core.icemaking.IceMould;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.storage.StorageFigures;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.Interval;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.UncertainInput;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Answers of other packages asked anew for each draw. */
class AnswersAskedAnewTest {

    private static final long SEED = 20_261_126L;

    private static Interval interval(AnswerEnsemble<?> asked, String figure) {
        return asked.spread(figure, 0.9).interval().orElseThrow();
    }

    /** A bias of the thermometer moves every temperature by as much, so that the interval of the mean is that of the bias. */
    @Test
    void figuresOfAStoreAreAsSureAsItsThermometer() {
        double[] times = {0, 3600, 90_000};
        Ensemble ensemble = Ensemble.of(100, SEED);
        List<UncertainInput> bias = List.of(new UncertainInput("bias", 0, Uncertainty.rectangular(0.5)));
        AnswerEnsemble<StorageFigures> asked = AnswerEnsemble.of(ensemble, bias, draw -> {
            double off = draw.value("bias");
            TemperatureHistory history = TemperatureHistory.of(times, new double[] {285 + off, 287 + off, 286 + off});
            return StorageFigures.of(history, celsius(10), celsius(13));
        });
        StorageFigures first = asked.answers().get(0);
        Interval ofBias = Interval.of(
                ensemble.run(bias, draw -> draw.value("bias")).stream()
                        .mapToDouble(Double::doubleValue)
                        .toArray(),
                0.9);
        // Two lines: 286 K for an hour, 286.5 K for 24 hours.
        double mean = (286 + 24 * 286.5) / 25;
        assertThat(interval(asked, "meanK").low()).isCloseTo(mean + ofBias.low(), within(1e-9));
        assertThat(interval(asked, "meanK").high()).isCloseTo(mean + ofBias.high(), within(1e-9));
        assertThat(asked.spread("greatestDailySwingK", 0.9).having()).isEqualTo(100);
        assertThat(first.snapshot().valuesSi())
                .hasSize(14)
                .containsEntry("belowS", List.of(first.belowS()))
                .containsEntry("aboveKS", List.of(3600 * first.kelvinHoursAbove()))
                .containsEntry("fastestKPerS", List.of(first.fastestKelvinPerHour() / 3600));
    }

    @Test
    void batchesOfIceTakeAsLongAsTheirFilmLets() {
        IceMould mould = IceMould.of(IceBlock.cube(millimetres(30)));
        List<UncertainInput> film = List.of(UncertainInput.factor("film", Uncertainty.normalRelative(0.2)));
        AnswerEnsemble<IceBatches> asked = AnswerEnsemble.of(
                Ensemble.of(8, SEED),
                film,
                draw -> IceBatches.of(
                        kilograms(2.5 * mould.iceKg()),
                        IceMaking.under(
                                mould, celsius(-18), wattsPerSquareMetreKelvin(20 * draw.value("film")), celsius(15)),
                        1,
                        watts(1000)));
        assertThat(interval(asked, "batches")).isEqualTo(new Interval(3, 3, 3, 0.9));
        Interval each = interval(asked, "perBatchS");
        Interval all = interval(asked, "inAllS");
        assertThat(each.low()).isLessThan(0.9 * each.high());
        assertThat(all.low()).isCloseTo(3 * each.low(), within(0.01));
        assertThat(all.high()).isCloseTo(3 * each.high(), within(0.01));
        assertThat(asked.explain(0.9)).startsWith("batches in 8 of 8 draws.").contains("inAllS: ");
    }

    @Test
    void onsetOfFreezingHasAnIntervalAndAChance() {
        FilledVessel bottle = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(8));
        AnswerEnsemble<FreezingOnset> asked = AnswerEnsemble.of(Ensemble.of(30, SEED), LawScatter.all(), draw -> {
            Prediction prediction = Lumped.of(bottle)
                    .with(NetworkSolver.standard().withMultipliers(draw.values()))
                    .expose(in(Air.at(celsius(-18)), Duration.ofMinutes(100)));
            return FreezingHazard.of(prediction, ClosedVessel.of(bottle)).onset();
        });
        Chance freezes = asked.chance(FreezingOnset.Freezes.class);
        assertThat(freezes.draws()).isEqualTo(30);
        assertThat(freezes.hits())
                .isBetween(2, 29)
                .isEqualTo(asked.spread("afterS", 0.9).having());
        assertThat(interval(asked, "afterS").low()).isBetween(1800.0, 6000.0);
        assertThat(interval(asked, "freezingPointK").low())
                .isEqualTo(interval(asked, "freezingPointK").high());
    }
}
