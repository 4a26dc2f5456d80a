/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.junit.jupiter.api.Test;

/** The problems are posed as stated: their answers are those of SciPy 1.17.1. */
class StatedProblemsTest {

    private static final TwoNodeCooling.Case NOMINAL = TwoNodeCooling.Case.NOMINAL;

    @Test
    void twoNodesReachNineDegreesWhenSciPySays() {
        // DOP853 and Radau, rtol = atol = 1e-12.
        assertThat(TwoNodeCooling.referenceS(NOMINAL)).isCloseTo(9377.261608, within(1e-5));
        assertThat(Hipparchus.DP54.timeOfFall(NOMINAL.equations(), NOMINAL.start(), 0, 9, 1e-11, 60_000))
                .isCloseTo(9377.261608, within(1e-3));
    }

    @Test
    void oneNodeReachesNineDegreesWhenSciPySays() {
        // quad and DOP853.
        assertThat(OneNodeCooling.timeS(CommonsMath.DP853, 22, 9, 1e-12)).isCloseTo(8744.415114, within(1e-5));
    }

    @Test
    void radialLayersEndAsSciPySays() {
        // eigh_tridiagonal.
        double[] still = RadialLayers.of(100, 0).exactC();
        assertThat(still[0]).isCloseTo(19.909949142086198, within(1e-9));
        assertThat(still[49]).isCloseTo(18.304885339885026, within(1e-9));
        assertThat(still[69]).isCloseTo(18.11871234590222, within(1e-9));
        assertThat(still[99]).isCloseTo(9.83811098086618, within(1e-9));
        // Radau, rtol = atol = 1e-10.
        double[] swinging = RadialLayers.of(100, 2).exactC();
        assertThat(swinging[0]).isCloseTo(19.944881934015836, within(1e-7));
        assertThat(swinging[49]).isCloseTo(18.26016508709875, within(1e-7));
        assertThat(swinging[69]).isCloseTo(18.069221869779312, within(1e-7));
        assertThat(swinging[99]).isCloseTo(9.752389994103677, within(1e-7));
    }

    @Test
    void axialStackEndsAsSciPySays() {
        // Radau, rtol = atol = 1e-11.
        double[] liquid = {
            0.77130622, 0.83363143, 1.13467005, 2.47134944, 7.78851127, 10.64896322, 10.91447508, 10.89711688,
            10.87114876, 10.83868346, 10.80081358, 10.75828153, 10.71215063, 10.66852029, 10.62816533, 10.59140643,
            10.55860052, 10.53024994, 10.50715084, 10.49085783
        };
        double[] wall = {
            0.6885875, 0.74319053, 1.00407451, 2.16810933, 7.38393153, 10.16193197, 10.64873455, 10.68271868,
            10.66304084, 10.63191018, 10.59069456, 10.50284173, 10.00482003, 9.92016743, 9.8790581, 9.84523046,
            9.81541063, 9.78972226, 9.76894651, 9.75499343
        };
        double[] reference = AxialStack.referenceC();
        for (int i = 0; i < AxialStack.SLICES; i++) {
            assertThat(reference[2 * i]).as("liquid %d", i).isCloseTo(liquid[i], within(2e-7));
            assertThat(reference[2 * i + 1]).as("wall %d", i).isCloseTo(wall[i], within(2e-7));
        }
    }

    @Test
    void theProjectIsGivenTheSameFilmsAsTheOthers() {
        HeatFlow convection = new HeatFlow();
        HeatFlow radiation = new HeatFlow();
        for (double warm = 5; warm <= 30; warm += 2.5) {
            for (double cold = 0.5; cold <= 30; cold += 3) {
                double warmK = warm + StatedFilms.ZERO_C;
                double coldK = cold + StatedFilms.ZERO_C;
                StatedFilms.INSIDE.evaluate(warmK, coldK, convection);
                assertThat(convection.watts).isCloseTo(StatedFilms.insideWatts(warm, cold), within(1e-9));
                StatedFilms.OUTSIDE.evaluate(warmK, coldK, convection);
                StatedFilms.RADIATION.evaluate(warmK, coldK, radiation);
                assertThat(convection.watts + radiation.watts)
                        .isCloseTo(StatedFilms.outsideWatts(warm, cold), within(1e-9));
            }
        }
    }

    @Test
    void slopesOfTheFilmsAreThoseOfDifferences() {
        for (HeatLaw law : new HeatLaw[] {StatedFilms.INSIDE, StatedFilms.OUTSIDE, StatedFilms.RADIATION}) {
            HeatFlow stated = new HeatFlow();
            HeatFlow differences = new HeatFlow();
            law.evaluate(294.15, 281.15, stated);
            HeatLaw.of((from, to) -> {
                        HeatFlow out = new HeatFlow();
                        law.evaluate(from, to, out);
                        return out.watts;
                    })
                    .evaluate(294.15, 281.15, differences);
            assertThat(stated.perFromKelvin).isCloseTo(differences.perFromKelvin, within(1e-7));
            assertThat(stated.perToKelvin).isCloseTo(differences.perToKelvin, within(1e-7));
        }
    }
}
