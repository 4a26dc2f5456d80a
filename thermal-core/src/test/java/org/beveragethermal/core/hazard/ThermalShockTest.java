/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import org.apache.commons.math3.special.Erf;
import org.assertj.core.data.Percentage;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Difference through a wall, against closed forms of conduction. */
final class ThermalShockTest {

    private static final Vessel BOTTLE = Vessels.highShouldered750();

    /** While nothing has reached the far side the wall is a half-space: its near side has cooled by 1 − exp(Bi² Fo) erfc(Bi √Fo). */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2, 6, 20})
    void earlyTheWallIsAHalfSpace(double biot) {
        double fourier = 0.02;
        double argument = biot * Math.sqrt(fourier);
        double halfSpace = 1 - Math.exp(argument * argument) * Erf.erfc(argument);
        OutsideChecks.published(
                        "quenched-wall-early-bi" + biot,
                        "H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed. (1959), section 2.7, half-space with a film")
                .what("difference through a wall at Fo 0.02, Bi " + biot + ", over that between wall and water")
                .unit("1")
                .expected(halfSpace)
                .within(2e-5)
                .check(SlabQuench.difference(biot, fourier));
    }

    @Test
    void aThinWallHasHalfItsBiotNumberThroughIt() {
        // Quasi-steady parabola: q L/(2 k) between the sides.
        assertThat(SlabQuench.share(1e-3)).isCloseTo(0.5e-3, Percentage.withPercentage(1));
        assertThat(SlabQuench.share(1e5)).isBetween(0.95, 1.0);
    }

    @Test
    void theShareRisesWithTheBiotNumber() {
        double before = 0;
        for (double biot = 0.05; biot < 60; biot *= 1.3) {
            double here = SlabQuench.share(biot);
            assertThat(here).isGreaterThan(before).isLessThan(1);
            before = here;
        }
    }

    @Test
    void plungesAreJudgedByTheDifferenceBetweenBaths() {
        assertThat(ThermalShock.ofPlunge(BOTTLE, celsius(21), celsius(0)))
                .isInstanceOfSatisfying(
                        WallMargin.Within.class,
                        answer -> assertThat(answer.marginK()).isBetween(5.0, 20.0));
        assertThat(ThermalShock.ofPlunge(BOTTLE, celsius(0), celsius(50))).isInstanceOf(WallMargin.Doubtful.class);
        assertThat(ThermalShock.ofPlunge(BOTTLE, celsius(95), celsius(5)))
                .isInstanceOfSatisfying(
                        WallMargin.Beyond.class,
                        answer -> assertThat(ThermalShock.explain(BOTTLE, answer))
                                .contains("more than such a wall bears"));
        Vessel can = Vessels.all(VesselShape.CAN).get(0);
        assertThat(ThermalShock.ofPlunge(can, celsius(95), celsius(5))).isInstanceOf(WallMargin.NotJudged.class);
        assertThatThrownBy(() -> ThermalShock.ofPlunge(BOTTLE, celsius(900), celsius(5)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void lessStandsThroughTheWallThanBetweenTheBaths() {
        double still =
                ThermalShock.throughWallOfPlunge(BOTTLE, celsius(60), celsius(10), wattsPerSquareMetreKelvin(400));
        double stirred =
                ThermalShock.throughWallOfPlunge(BOTTLE, celsius(60), celsius(10), wattsPerSquareMetreKelvin(2000));
        assertThat(still).isBetween(5.0, stirred);
        assertThat(stirred).isLessThan(50);
        assertThatThrownBy(() -> ThermalShock.throughWallOfPlunge(
                        BOTTLE, celsius(60), celsius(10), wattsPerSquareMetreKelvin(0)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void aPredictionIsJudgedByWhatStandsThroughItsWall() {
        FilledVessel cold = BOTTLE.filledWith(Beverage.wine(percentByVolume(12.5)), celsius(5));
        Air room = Air.at(celsius(20));
        Prediction aired = Lumped.of(cold).expose(in(room, Duration.ofHours(1)));
        ThermalShock.ThroughWall inAir = ThermalShock.throughWall(aired);
        // 10 W/m²K and 15 K through 3 to 4 mm of glass: about half a kelvin.
        assertThat(inAir.differenceK()).isBetween(0.1, 1.0);
        assertThat(inAir.outsideColder()).isFalse();
        assertThat(ThermalShock.ofPrediction(aired, BOTTLE)).isInstanceOf(WallMargin.Within.class);
        // No band is thicker than the thickest place, which a plunge with the film of the test goes by.
        double thickest = ThermalShock.throughWallOfPlunge(
                BOTTLE, celsius(21), celsius(20), wattsPerSquareMetreKelvin(ThermalShock.TEST_FILM.value()));
        assertThat(aired.bands())
                .isNotEmpty()
                .allSatisfy(band -> assertThat(ThermalShock.shareInTest(BOTTLE, band))
                        .isGreaterThan(0.1)
                        .isLessThanOrEqualTo(thickest + 1e-9));

        Bucket bucket = Bucket.of(millimetres(220), millimetres(300));
        Prediction bathed =
                Lumped.of(cold).expose(in(WaterBath.of(bucket, litres(6), celsius(60), room), Duration.ofMinutes(20)));
        ThermalShock.ThroughWall inHotWater = ThermalShock.throughWall(bathed);
        assertThat(inHotWater.differenceK()).isBetween(10 * inAir.differenceK(), 55.0);
        assertThat(inHotWater.outsideColder()).isFalse();
        assertThat(inHotWater.after()).isLessThan(Duration.ofMinutes(2));
        assertThat(inHotWater.explain()).contains("the inside is the colder side");

        FilledVessel hot = BOTTLE.filledWith(Beverage.tea(), celsius(60));
        Prediction quenched =
                Lumped.of(hot).expose(in(WaterBath.of(bucket, litres(6), celsius(5), room), Duration.ofMinutes(20)));
        ThermalShock.ThroughWall inColdWater = ThermalShock.throughWall(quenched);
        assertThat(inColdWater.outsideColder()).isTrue();
        assertThat(inColdWater.explain()).contains("the outside is the colder side");
        assertThat(inColdWater.snapshot().valuesSi().get("outsideColder")).containsExactly(1.0);
    }

    @Test
    void quasiSteadyHeatTimesTheWallsResistanceIsTheDifference() {
        FilledVessel cold = BOTTLE.filledWith(Beverage.wine(percentByVolume(12.5)), celsius(5));
        Prediction aired = Lumped.of(cold).expose(in(Air.at(celsius(20)), Duration.ofHours(1)));
        ThermalShock.ThroughWall greatest = ThermalShock.throughWall(aired);
        var band = aired.explainAt(greatest.after()).bands().get(greatest.band());
        double wall = band.inSeries().get(1).kelvinPerWatt();
        double mean = aired.meanTemperatureK(greatest.after().toMillis() / 1000.0);
        double watts = (band.mediumK() - mean) / band.kelvinPerWatt();
        assertThat(greatest.differenceK()).isCloseTo(watts * wall, within(0.6 * watts * wall));
    }
}
