/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.degrees;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerKelvin;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.hazard.FreezingHazard;
import org.beveragethermal.core.hazard.FreezingOnset;
import org.beveragethermal.core.hazard.Fullness;
import org.beveragethermal.core.hazard.ThermalShock;
import org.beveragethermal.core.hazard.WallMargin;
import org.beveragethermal.core.icemaking.IceBalance;
import org.beveragethermal.core.inversion.AnswerEnsemble;
import org.beveragethermal.core.inversion.Window;
import org.beveragethermal.core.layered.SliceFilm;
import org.beveragethermal.core.prediction.Asymptote;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.prediction.Explanation;
import org.beveragethermal.core.prediction.FilledInterval;
import org.beveragethermal.core.prediction.HeatInput;
import org.beveragethermal.core.prediction.ModelAdvice;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.Resistance;
import org.beveragethermal.core.prediction.Stay;
import org.beveragethermal.core.prediction.StayAdvice;
import org.beveragethermal.core.prediction.WallBand;
import org.beveragethermal.core.scene.BathGuard;
import org.beveragethermal.core.scene.Comparison;
import org.beveragethermal.core.scene.FallingStream;
import org.beveragethermal.core.scene.HarmlessBath;
import org.beveragethermal.core.scene.Layered;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.serving.CuredByWaiting;
import org.beveragethermal.core.serving.Remedy;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.storage.LumpedSwing;
import org.beveragethermal.core.storage.MeanKineticTemperature;
import org.beveragethermal.core.storage.Reading;
import org.beveragethermal.core.storage.StorageFigures;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.DrinkTint;
import org.beveragethermal.core.surroundings.Footing;
import org.beveragethermal.core.surroundings.GlassTint;
import org.beveragethermal.core.surroundings.GroundTemperature;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Sunlight;
import org.beveragethermal.core.surroundings.Tending;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.core.uncertainty.AdaptiveMonteCarlo;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.LinearSpread;
import org.beveragethermal.core.uncertainty.MonteCarloAnswer;
import org.beveragethermal.core.uncertainty.SobolIndices;
import org.beveragethermal.core.uncertainty.UncertainInput;
import org.beveragethermal.core.uncertainty.UncertaintyBudget;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** What predictions and questions answer, read part by part. All bottles are invented. */
class AnswersInUseTest {

    private static final double ZERO = 273.15;
    private static final Beverage WINE = Beverage.wine(percentByVolume(12.5));
    private static final FilledVessel BOTTLE = Vessels.highShouldered750().filledWith(WINE, celsius(22));

    private static Prediction in5Degrees() {
        return Lumped.of(BOTTLE).expose(in(Refrigerator.at(celsius(5)), Duration.ofHours(6)));
    }

    @Test
    void aPredictionSaysWhatItRestsOn() {
        Prediction chilling = in5Degrees();
        Explanation explained = chilling.explainAt(Duration.ofHours(1));
        Resistance deciding = explained.bands().get(0).deciding();
        assertThat(deciding.kelvinPerWatt()).isPositive();
        assertThat(explained.bands().get(0).inSeries()).contains(deciding);
        WallBand band = chilling.bands().get(0);
        assertThat(band.highM()).isGreaterThan(band.lowM());
        Contents contents = chilling.contents();
        assertThat(contents.shares()).containsExactly(1.0);
        assertThat(chilling.trajectory().temperatureK(contents.nodes().get(0), 3600))
                .isCloseTo(chilling.meanTemperatureK(3600), within(1e-9));
        assertThat(chilling.temperatureK(Part.WARMEST, 3600))
                .isGreaterThanOrEqualTo(chilling.temperatureK(Part.MEAN, 3600));
        Asymptote end = chilling.asymptote();
        assertThat(end.nearestK(ZERO)).isBetween(ZERO + 4.9, ZERO + 12);
        Prediction firstHour = chilling.heldOnly(List.of(new FilledInterval(0, 3600)));
        assertThat(firstHour.isFilled(1800)).isTrue();
        assertThat(firstHour.isFilled(7200)).isFalse();
        List<StayAdvice> stays = chilling.stayAdvice();
        assertThat(stays).allSatisfy(advice -> {
            Stay stay = advice.stay();
            assertThat(stay.to()).isGreaterThan(stay.from());
        });
    }

    @Test
    void sunIsAHeatOfItsOwnAndTintDecidesHowMuch() {
        Air sunny = Air.at(celsius(25)).withSun(Sunlight.clearDay(degrees(45), 196, LocalTime.NOON));
        Prediction clear = Layered.of(BOTTLE, VesselModel.lumped().tinted(GlassTint.COLOURLESS, DrinkTint.PALE))
                .expose(in(sunny, Duration.ofMinutes(30)));
        Prediction dark = Layered.of(BOTTLE, VesselModel.lumped().tinted(GlassTint.GREEN, DrinkTint.DARK))
                .expose(in(sunny, Duration.ofMinutes(30)));
        assertThat(dark.meanTemperatureK(1800)).isGreaterThan(clear.meanTemperatureK(1800));
        assertThat(dark.explainAt(Duration.ofMinutes(10)).bands())
                .flatExtracting(Explanation.Band::heats)
                .extracting(HeatInput::watts)
                .anyMatch(watts -> watts > 0);
    }

    @Test
    void descriptionsAreComparedAndOneIsAdvised() {
        WaterBath bath =
                WaterBath.of(Bucket.of(millimetres(220), millimetres(300)), litres(6), celsius(2), Air.at(celsius(24)));
        Comparison compared = Comparison.of(BOTTLE, in(bath, Duration.ofMinutes(6)));
        ModelAdvice advice = compared.advice();
        assertThat(advice.biotAtRest()).isGreaterThan(advice.biotMoving());
        Prediction slices = compared.prediction(ModelAdvice.Model.AXIAL);
        assertThat(slices.temperatureK(Part.WARMEST, 360)).isGreaterThan(slices.temperatureK(Part.COLDEST, 360));
        List<SliceFilm> films = slices.explainAt(Duration.ofMinutes(5)).bands().stream()
                .flatMap(band -> band.films().stream())
                .toList();
        assertThat(films).extracting(SliceFilm::thicknessM).allMatch(thickness -> thickness > 0);
    }

    @Test
    void howWarmABathMayBe() {
        WaterBath bath = WaterBath.of(
                Bucket.of(millimetres(220), millimetres(300)), litres(6), celsius(30), Air.at(celsius(15)));
        FilledVessel cold = Vessels.highShouldered750().filledWith(WINE, celsius(8));
        HarmlessBath answer = BathGuard.of(bath, cold).warmest(celsius(18));
        assertThat(answer)
                .isInstanceOfSatisfying(
                        HarmlessBath.UpTo.class,
                        upTo -> assertThat(upTo.startK()).isBetween(ZERO + 18, ZERO + 60));
        assertThat(FallingStream.exchangedPart(
                        WINE, ZERO + 8, ZERO + 22, millilitres(125), Duration.ofSeconds(5), millimetres(150)))
                .isBetween(0.0, 0.2);
    }

    @Test
    void hazardsAreAnswers() {
        FilledVessel sparkling =
                Vessels.sparkling750().filledWith(Beverage.sparklingWine(percentByVolume(12.5)), celsius(20));
        Prediction forgotten =
                Lumped.of(sparkling).expose(in(Refrigerator.at(celsius(-18)).on(Footing.open()), Duration.ofHours(12)));
        FreezingHazard hazard = FreezingHazard.of(forgotten, ClosedVessel.of(sparkling));
        FreezingOnset onset = hazard.onset();
        Fullness fullness = hazard.fullness();
        assertThat(onset).isInstanceOf(FreezingOnset.Freezes.class);
        assertThat(fullness.explain()).isNotBlank();
        WallMargin margin = ThermalShock.ofPlunge(BOTTLE.vessel(), celsius(20), celsius(2));
        assertThat(margin.differenceK()).isCloseTo(18, within(1e-9));
    }

    @Test
    void iceInABoxIsABalanceOfHeat() {
        double lost = 0.5 * 20 * 3600;
        double left =
                IceBalance.leftKg(kilograms(2), celsius(0), wattsPerKelvin(0.5), celsius(20), Duration.ofHours(1));
        // Latent heat of fusion 333.4 kJ/kg (IAPWS R10-06).
        assertThat(left).isCloseTo(2 - lost / 333.4e3, within(1e-3));
        assertThat(Tending.addIce(kilograms(1), celsius(-8))).isInstanceOf(Tending.AddIce.class);
        assertThat(new Window(Duration.ZERO, Duration.ofMinutes(10)).contains(Duration.ofMinutes(5)))
                .isTrue();
        assertThat(CuredByWaiting.valueOf("NEITHER")).isEqualTo(CuredByWaiting.NEITHER);
        assertThat(Remedy.Change.values())
                .allSatisfy(change -> assertThat(change.words()).isNotBlank());
    }

    @Test
    void aStoredBottleFollowsItsRoomLateAndLess() {
        Instant start = Instant.parse("2027-01-01T00:00:00Z");
        TemperatureHistory room = TemperatureHistory.logged(List.of(
                new Reading(start, celsius(12)),
                new Reading(start.plusSeconds(43_200), celsius(16)),
                new Reading(start.plusSeconds(86_400), celsius(12))));
        StorageFigures figures = StorageFigures.of(room, celsius(10), celsius(15));
        assertThat(figures.meanK()).isCloseTo(ZERO + 14, within(1e-6));
        assertThat(figures.aboveS()).isCloseTo(21_600, within(1.0));
        // One first-order lag: 1/sqrt(1 + (ωτ)²).
        LumpedSwing swing = LumpedSwing.of(Duration.ofHours(4), Duration.ofDays(1));
        assertThat(swing.amplitudeRatio())
                .isCloseTo(1 / Math.sqrt(1 + Math.pow(2 * Math.PI * 4 / 24, 2)), within(1e-9));
        // Warm readings weigh more than in the plain mean.
        assertThat(MeanKineticTemperature.ofReadingsK(new double[] {288.15, 298.15}, new double[] {1, 1}))
                .isGreaterThan(293.15);
        assertThat(GroundTemperature.of(celsius(11))
                        .withYearlyWave(kelvinDifference(8), Duration.ofDays(210))
                        .temperatureK(20, 0, 6e-7))
                .isCloseTo(ZERO + 11, within(0.01));
    }

    @Test
    void uncertaintyIsCountedInFourWays() {
        // JCGM 100:2008, equation (10): independent contributions add in squares.
        UncertaintyBudget budget = new UncertaintyBudget(List.of(
                new UncertaintyBudget.Term("a", 2, 1.5, Double.POSITIVE_INFINITY),
                new UncertaintyBudget.Term("b", 1, 4, Double.POSITIVE_INFINITY)));
        assertThat(budget.combined()).isCloseTo(5, within(1e-12));
        List<UncertainInput> inputs = List.of(
                new UncertainInput("a", 0, Uncertainty.normal(3)), new UncertainInput("b", 0, Uncertainty.normal(4)));
        MonteCarloAnswer sum =
                AdaptiveMonteCarlo.of(0.95, 1, 7L).run(inputs, draw -> draw.value("a") + draw.value("b"));
        assertThat(sum.standardUncertainty()).isCloseTo(5, within(0.3));
        SobolIndices shares = SobolIndices.of(Ensemble.of(4000, 7L), inputs, draw -> draw.value("a") + draw.value("b"));
        assertThat(shares.inputs().get(1).first()).isCloseTo(16.0 / 25, within(0.06));
        LinearSpread spread = LinearSpread.of(
                in5Degrees(), List.of(UncertainInput.factor(Multipliers.AIR_FILM, Uncertainty.normalRelative(0.15))));
        assertThat(spread.standardUncertaintyK(Duration.ofHours(1))).isBetween(0.05, 1.5);
        AnswerEnsemble<FreezingOnset> asked = AnswerEnsemble.of(
                Ensemble.of(4, 7L),
                List.of(UncertainInput.factor(Multipliers.AIR_FILM, Uncertainty.normalRelative(0.15))),
                draw -> FreezingHazard.of(
                                Lumped.of(BOTTLE)
                                        .with(NetworkSolver.standard().withMultipliers(draw.values()))
                                        .expose(in(Refrigerator.at(celsius(-18)), Duration.ofHours(8))),
                                ClosedVessel.of(BOTTLE))
                        .onset());
        assertThat(asked.answers()).hasSize(4);
    }
}
