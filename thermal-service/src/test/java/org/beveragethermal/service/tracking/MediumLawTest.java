/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** The law of one medium: its closed form against an integrator, its fit against the full model. */
class MediumLawTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(22));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(21));

    private static double integrated(MediumLaw law, double excessK, double seconds) {
        double[] y = {excessK};
        new DormandPrince853Integrator(1e-6, 100, 1e-13, 1e-13)
                .integrate(
                        new FirstOrderDifferentialEquations() {
                            @Override
                            public int getDimension() {
                                return 1;
                            }

                            @Override
                            public void computeDerivatives(double t, double[] state, double[] slope) {
                                double x = state[0];
                                slope[0] =
                                        -(law.linearPerS() + law.convectivePerS() * Math.sqrt(Math.sqrt(Math.abs(x))))
                                                * x;
                            }
                        },
                        0,
                        y,
                        seconds,
                        y);
        return y[0];
    }

    @Test
    void closedFormIsWhatAnIntegratorGives() {
        for (double seconds : new double[] {60, 3600, 20_000}) {
            for (double excess : new double[] {18, -12}) {
                OutsideChecks.referenceLibrary("tracking-law", "Commons Math 3.6.1, DormandPrince853Integrator")
                        .what("excess over the medium after " + (int) seconds + " s from " + (int) excess + " K")
                        .unit("K")
                        .expected(integrated(Truth.COLD, excess, seconds))
                        .within(1e-9)
                        .check(Truth.COLD.excessAfter(excess, seconds));
            }
        }
    }

    @Test
    void withoutTheSecondTermItIsNewtons() {
        MediumLaw law = MediumLaw.newton("air", 3000, ZERO + 20, 0, 0);
        assertThat(law.excessAfter(10, 3000)).isCloseTo(10 / Math.E, within(1e-12));
        assertThat(law.scaledTime(10, 5)).isCloseTo(3000 * Math.log(2), within(1e-9));
        assertThat(law.timeConstantS(7)).isCloseTo(3000, within(1e-9));
    }

    @Test
    void timeIsTheInverseOfCourse() {
        for (double seconds : new double[] {1, 100, 7200, 40_000}) {
            assertThat(Truth.COLD.scaledTime(15, Truth.COLD.excessAfter(15, seconds)))
                    .isCloseTo(seconds, within(1e-6 * seconds));
        }
        assertThat(Truth.COLD.scaledTime(15, 16)).isInfinite();
        assertThat(Truth.COLD.scaledTime(15, -1)).isInfinite();
        assertThat(Truth.COLD.scaledTime(15, 0)).isInfinite();
        assertThat(Truth.COLD.excessAfter(0, 1000)).isZero();
    }

    /** The law is a summary: it may be some hundredths of a kelvin off in air, a few tenths in a bath whose ice it does not know. */
    @Test
    void fittedLawFollowsTheFullModel() {
        follows("refrigerator", Refrigerator.at(celsius(5)), 0.15, 9);
        follows("room", ROOM, 0.15, 25);
        follows("freezer", Air.at(celsius(-18)), 0.3, 9);
        IceWaterBath bath = IceWaterBath.of(
                Bucket.of(millimetres(200), millimetres(200)), kilograms(2), kilograms(2), Air.at(celsius(22)));
        follows("bucket", bath, 0.6, 9);
    }

    private static void follows(String id, Surroundings medium, double rmsK, double targetC) {
        MediumLaw law = TrackedModel.from("bottle", BOTTLE)
                .medium(id, medium)
                .build()
                .laws()
                .get(0);
        FilledVessel start = id.equals("room") ? BOTTLE.atTemperature(celsius(40)) : BOTTLE;
        Prediction run = Lumped.of(start).expose(in(medium, Duration.ofHours(6)));
        double excess = start.temperatureK() - law.mediumK();
        double at = law.scaledTime(excess, ZERO + targetC - law.mediumK());
        assertThat(law.fitRmsK()).as(id).isLessThan(rmsK);
        assertThat(run.meanTemperatureK(at)).as(id).isCloseTo(ZERO + targetC, within(2 * rmsK));
    }

    @Test
    void emptierVesselIsFaster() {
        TrackedModel model = TrackedModel.from("bottle", BOTTLE)
                .medium("refrigerator", Refrigerator.at(celsius(5)))
                .build();
        FilledVessel third = Vessels.highShouldered750()
                .filledWith(Beverage.wine(percentByVolume(12.5)), millilitres(250), celsius(21));
        Prediction run = Lumped.of(third).expose(in(Refrigerator.at(celsius(5)), Duration.ofHours(2)));
        MediumLaw law = model.law(0);
        double expected = law.mediumK() + law.excessAfter(ZERO + 21 - law.mediumK(), 3600 * law.fillFactor(1 / 3.0));
        assertThat(law.fillExponent()).isPositive();
        assertThat(expected).isCloseTo(run.meanTemperatureK(3600), within(0.8));
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> MediumLaw.newton(" ", 100, 280, 0, 0)).hasMessageContaining("not blank");
        assertThatThrownBy(() -> MediumLaw.newton("a", 0, 280, 0, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> MediumLaw.newton("a", 100, Double.NaN, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TrackedModel.of("m", List.of(), Truth.SENSOR)).hasMessageContaining("0 media");
        assertThatThrownBy(() -> TrackedModel.of("m", List.of(Truth.COLD, Truth.COLD), Truth.SENSOR))
                .hasMessageContaining("two media of one name");
        assertThatThrownBy(() -> TrackedModel.from("m", BOTTLE).build()).hasMessageContaining("0 media");
        assertThatThrownBy(() -> Sensor.inDrink(0, 0)).hasMessageContaining("standard deviation of a reading 0 K");
        assertThatThrownBy(() -> Sensor.inDrink(1, 0).onSurface(Duration.ofDays(1), 0))
                .hasMessageContaining("lag");
    }
}
