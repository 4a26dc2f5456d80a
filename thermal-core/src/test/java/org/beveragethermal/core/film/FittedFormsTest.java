/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.core.batch.BatchLaw;
import org.beveragethermal.core.correlation.Correlation;
import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.correlation.HorizontalPlate;
import org.beveragethermal.core.correlation.VerticalCylinder;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.Measures;
import org.junit.jupiter.api.Test;

/** Fast forms of films against the correlations they stand for. */
final class FittedFormsTest {

    private static final List<Fluid> FLUIDS = List.of(
            Fluid.air(101_325), Fluid.of(Water.liquid()), Fluid.of(Beverage.wine(Measures.percentByVolume(12.5))));
    private static final List<Correlation> LAWS = List.of(
            VerticalPlate.CHURCHILL_CHU,
            VerticalCylinder.popiel(4),
            EnclosedLiquid.COOLING,
            HorizontalPlate.UNSTABLE_MCADAMS);

    /** The fits of the properties themselves are good to a few parts in ten million. */
    @Test
    void tabulatedFilmsFollowTheirCorrelations() {
        HeatFlow fast = new HeatFlow();
        HeatFlow exact = new HeatFlow();
        for (Fluid fluid : FLUIDS) {
            for (Correlation law : LAWS) {
                for (ConvectiveFilm film : List.of(
                        ConvectiveFilm.free(0.08, 0.25, fluid, law),
                        ConvectiveFilm.free(0.08, 0.25, fluid, law).atLeast(2))) {
                    for (double mean = 274; mean < 330; mean += 1.7) {
                        for (double difference = -14.03; difference < 15; difference += 0.9) {
                            film.evaluate(mean + difference / 2, mean - difference / 2, fast);
                            film.evaluateReference(mean + difference / 2, mean - difference / 2, exact);
                            String at = law.name() + " at " + mean + " K, " + difference + " K";
                            assertThat(fast.watts / exact.watts).as(at).isCloseTo(1, within(1e-6));
                            assertThat(fast.perFromKelvin / exact.perFromKelvin)
                                    .as(at)
                                    .isCloseTo(1, within(1e-4));
                            assertThat(fast.perToKelvin / exact.perToKelvin)
                                    .as(at)
                                    .isCloseTo(1, within(1e-4));
                        }
                    }
                }
            }
        }
    }

    @Test
    void filmsWithoutDriveAreFinite() {
        HeatFlow flow = new HeatFlow();
        for (Fluid fluid : FLUIDS) {
            for (Correlation law : LAWS) {
                for (double difference : new double[] {0, 1e-12, -1e-9, 1e-6}) {
                    ConvectiveFilm.free(0.08, 0.25, fluid, law).evaluate(290 + difference, 290, flow);
                    assertThat(flow.watts * difference).isGreaterThanOrEqualTo(0);
                    assertThat(flow.perFromKelvin).isFinite();
                    assertThat(flow.perToKelvin).isFinite();
                }
            }
        }
    }

    @Test
    void sixthRootIsThatOfThePower() {
        assertThat(SmoothMath.sixthRoot(0)).isZero();
        for (double x = 1e-300; x < 1e300; x *= 1.7e3) {
            assertThat(SmoothMath.sixthRoot(x) / Math.pow(x, 1.0 / 6)).isCloseTo(1, within(1e-13));
        }
    }

    @Test
    void fittedFilmFollowsAFilmOfALiquidAndItsSlopesAreThose() {
        ConvectiveFilm reference = ConvectiveFilm.free(0.05, 0.2, FLUIDS.get(0), VerticalPlate.CHURCHILL_CHU);
        FittedFilm fit = FittedFilm.of(reference, 265, 315, 1e-6);
        assertThat(fit.relativeError()).isPositive().isLessThanOrEqualTo(1e-6);
        HeatFlow fast = new HeatFlow();
        HeatFlow exact = new HeatFlow();
        for (double from = 270; from < 310; from += 3.3) {
            for (double to = 270.5; to < 310; to += 3.1) {
                fit.evaluate(from, to, fast);
                reference.evaluateReference(from, to, exact);
                assertThat(fast.watts / exact.watts).isCloseTo(1, within(2e-6));
                assertThat(fast.perFromKelvin / exact.perFromKelvin).isCloseTo(1, within(1e-4));
                assertThat(fast.perToKelvin / exact.perToKelvin).isCloseTo(1, within(1e-4));
            }
        }
        fit.evaluate(290, 290, fast);
        assertThat(fast.watts).isZero();
        assertThat(fast.perFromKelvin).isPositive().isEqualTo(-fast.perToKelvin, within(1e-12));
    }

    /** In lanes the sixth root is good to 1e-9; where nothing drives it does not matter. */
    @Test
    void fittedFilmOfManyPairsIsThatOfEachPair() {
        HeatLaw plate = ConvectiveFilm.free(0.05, 0.2, FLUIDS.get(0), VerticalPlate.CHURCHILL_CHU);
        HeatLaw slender = ConvectiveFilm.free(0.05, 0.2, FLUIDS.get(0), VerticalCylinder.popiel(4));
        for (FittedFilm film : List.of(
                FittedFilm.of(plate, 265, 315, 1e-6),
                FittedFilm.of(plate, 265, 315, 1e-6).radiating(3e-9),
                FittedFilm.of(slender, 265, 315, 0.02))) {
            int n = BatchLaw.MOST_PAIRS;
            double[] from = new double[n];
            double[] to = new double[n];
            for (int i = 0; i < n; i++) {
                // Also outside the range of the fit, either way, and with differences of 0.
                int row = i / 16;
                from[i] = 255 + 5.0 * (i - 16 * row);
                to[i] = 255 + 10.0 * row;
            }
            double[] watts = new double[n];
            double[] perFrom = new double[n];
            double[] perTo = new double[n];
            double[] flows = new double[n];
            film.evaluate(from, to, watts, perFrom, perTo, n);
            film.flows(from, to, flows, new double[n], new double[n], n);
            HeatFlow one = new HeatFlow();
            for (int i = 0; i < n; i++) {
                film.evaluate(from[i], to[i], one);
                double size = Math.max(1e-3, Math.abs(one.perFromKelvin));
                assertThat(watts[i]).isEqualTo(one.watts, within(1e-8 * Math.max(1, Math.abs(one.watts))));
                assertThat(flows[i]).isEqualTo(one.watts, within(1e-8 * Math.max(1, Math.abs(one.watts))));
                assertThat(film.watts(from[i], to[i]))
                        .isEqualTo(one.watts, within(1e-11 * Math.max(1, Math.abs(one.watts))));
                if (from[i] != to[i]) {
                    assertThat(perFrom[i]).isEqualTo(one.perFromKelvin, within(1e-8 * size));
                    assertThat(perTo[i]).isEqualTo(one.perToKelvin, within(1e-8 * size));
                }
            }
        }
        assertThatThrownBy(() -> FittedFilm.of(plate, 265, 315, 1e-3).radiating(-1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void lawsOfAnotherFormAreRefused() {
        HeatLaw laminar = HeatLaw.of((from, to) -> Math.cbrt(Math.cbrt(from - to)) * (1 + Math.sin(from)));
        assertThatThrownBy(() -> FittedFilm.of(laminar, 280, 300, 1e-6)).isInstanceOf(IllegalArgumentException.class);
        HeatLaw backwards = HeatLaw.of((from, to) -> to - from);
        assertThatThrownBy(() -> FittedFilm.of(backwards, 280, 300, 1e-6)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FittedFilm.of(laminar, 300, 280, 1e-6)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FittedFilm.of(laminar, 280, 300, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
