/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.core.internal.FilmFit;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.liquid.Water;
import org.junit.jupiter.api.Test;

/** How a pack of ice lies in its water, and what its layers exchange. */
class PackTest {

    private static final double ZERO = 273.15;
    private static final PackGeometry GEOMETRY = new PackGeometry(0.3, 0.025, 0.57);
    /** Depth 0.3 m, free section 0.025 m², solid fraction 0.57: this much ice reaches the floor, by hand [kg]. */
    private static final double REACHING_FLOOR = 1000 * 0.57 * 0.025 * 0.3;

    @Test
    void withoutIceThereIsNoPackAndWithPlentyThereIsNothingElse() {
        List<SmoothFunction> packs =
                List.of(GEOMETRY.packPart(), GEOMETRY.packPartOf(0, 0.2), GEOMETRY.packPartOfSurface());
        List<SmoothFunction> clears =
                List.of(GEOMETRY.clearPart(), GEOMETRY.clearPartOf(0, 0.2), GEOMETRY.clearPartOfSurface());
        for (int i = 0; i < packs.size(); i++) {
            // The rounded corner of a vessel that ends below the surface leaves it a trace of pack from the start.
            assertThat(packs.get(i).at(0)).isCloseTo(0, within(0.01));
            assertThat(packs.get(i).at(20 * REACHING_FLOOR)).isCloseTo(1, within(0.05));
            for (double kg = 0; kg < 3 * REACHING_FLOOR; kg += 0.3) {
                assertThat(packs.get(i).at(kg) + clears.get(i).at(kg)).isCloseTo(1, within(1e-12));
            }
        }
        assertThat(GEOMETRY.packPart().at(0.5 * REACHING_FLOOR)).isCloseTo(0.5, within(0.01));
        assertThat(GEOMETRY.packPart().at(20 * REACHING_FLOOR)).isCloseTo(1, within(1e-3));
    }

    @Test
    void moreIceReachesDeeperAndLiesDrier() {
        for (SmoothFunction pack : List.of(
                GEOMETRY.packPart(),
                GEOMETRY.packPartOf(0, 0.2),
                GEOMETRY.packPartOf(0, 0.3),
                GEOMETRY.packPartOf(0.1, 0.2),
                GEOMETRY.packPartOfSurface())) {
            for (double kg = 0; kg < 3 * REACHING_FLOOR; kg += 0.1) {
                assertThat(pack.at(kg + 0.1)).isGreaterThanOrEqualTo(pack.at(kg));
            }
        }
        for (double kg = 0; kg < 3 * REACHING_FLOOR; kg += 0.1) {
            assertThat(GEOMETRY.wetPart().at(kg + 0.1))
                    .isLessThanOrEqualTo(GEOMETRY.wetPart().at(kg) + 1e-12);
        }
        // A vessel that ends below the surface is touched later than one that reaches up to it.
        for (double kg = 0.3 * REACHING_FLOOR; kg < REACHING_FLOOR; kg += 0.2) {
            assertThat(GEOMETRY.packPartOf(0, 0.15).at(kg))
                    .isLessThan(GEOMETRY.packPartOf(0, 0.3).at(kg));
        }
    }

    @Test
    void aLevelSurfaceIsReachedByThePackOnceItIsDeepEnough() {
        for (double height : new double[] {0, 0.1, 0.2, 0.3}) {
            SmoothFunction pack = GEOMETRY.packAt(height);
            assertThat(pack.at(0)).isZero();
            assertThat(pack.at(20 * REACHING_FLOOR)).isCloseTo(1, within(1e-3));
            for (double kg = 0.05; kg < 3 * REACHING_FLOOR; kg += 0.1) {
                assertThat(pack.at(kg) + GEOMETRY.clearAt(height).at(kg)).isCloseTo(1, within(1e-12));
                assertThat(pack.at(kg)).isGreaterThanOrEqualTo(pack.at(kg - 0.05));
                double step = 1e-6;
                assertThat(pack.slope(kg))
                        .isCloseTo((pack.at(kg + step) - pack.at(kg - step)) / (2 * step), within(1e-5));
            }
            // Half-way when the pack's depth is that of the surface below the water level.
            if (height == 0.1 || height == 0.2) {
                assertThat(pack.at((1 - height / 0.3) * REACHING_FLOOR)).isBetween(0.1, 0.9);
            }
        }
    }

    @Test
    void waterIsSharedBetweenGapsAndClearWater() {
        // 6 kg in all, 0.75 kg of water in the gaps per kilogram of ice.
        PackWater water = new PackWater(6, 0.75);
        for (double ice = 0; ice < 5.5; ice += 0.1) {
            double gaps = water.at(ice);
            assertThat(gaps).isPositive().isLessThan(6 - ice);
            // Either the gaps are full, or nearly all water lies in them; corner and least part are 2 % and 1 %.
            assertThat(gaps).isCloseTo(Math.min(0.75 * ice, 6 - ice), within(0.2));
        }
        // Melting never makes clear water disappear: of a kilogram melted at most the gaps' own share stays in the
        // pack.
        for (double ice = 0.1; ice < 5.5; ice += 0.1) {
            assertThat(1 + water.slope(ice)).isGreaterThanOrEqualTo(0);
        }
    }

    @Test
    void layersHaveTheSlopesOfTheirExchange() {
        LayerExchange exchange = new LayerExchange(0.02, FilmFit.of(Water.liquid()), ZERO + 3.98);
        HeatFlow at = new HeatFlow();
        HeatFlow up = new HeatFlow();
        HeatFlow down = new HeatFlow();
        double step = 1e-4;
        // Lower and upper layer: warm below cold on either side of the maximum, cold above 4 °C, warm under warm.
        for (double[] pair : new double[][] {{8, 0.2}, {5, 1}, {15, 3}, {12, 6}, {20, 4.5}, {1, 3}, {0.5, 9}}) {
            double lower = ZERO + pair[0];
            double upper = ZERO + pair[1];
            exchange.evaluate(lower, upper, at);
            exchange.evaluate(lower + step, upper, up);
            exchange.evaluate(lower - step, upper, down);
            double scale = Math.abs(at.perFromKelvin) + Math.abs(at.perToKelvin) + 1e-9;
            assertThat(at.perFromKelvin).isCloseTo((up.watts - down.watts) / (2 * step), within(1e-4 * scale));
            exchange.evaluate(lower, upper + step, up);
            exchange.evaluate(lower, upper - step, down);
            assertThat(at.perToKelvin).isCloseTo((up.watts - down.watts) / (2 * step), within(1e-4 * scale));
        }
    }

    @Test
    void stableLayersExchangeNothingByConvection() {
        LayerExchange exchange = new LayerExchange(0.02, FilmFit.of(Water.liquid()), ZERO + 3.98);
        HeatFlow out = new HeatFlow();
        for (double[] pair : new double[][] {{3.9, 0}, {2, 1}, {4.5, 9}, {6, 20}, {3, 3}, {7, 7}}) {
            exchange.evaluate(ZERO + pair[0], ZERO + pair[1], out);
            assertThat(out.watts).isZero();
        }
    }
}
