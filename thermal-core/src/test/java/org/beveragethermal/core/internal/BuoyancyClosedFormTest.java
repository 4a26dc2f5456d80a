/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.SmoothFunction;
import org.junit.jupiter.api.Test;

/**
 * The drive at an ice wall in a liquid with density ρ = ρₘ (1 − a (T − Tₘ)²), against its integrals worked by hand.
 *
 * <p>With x = T_bulk − Tₘ, D = T_wall − T_bulk and the profile T = T_bulk + D s², s from 0 at the edge of the layer to 1 at the
 * wall, the density excess of the bulk is a ρₘ/ρ_bulk (2 x D s² + D² s⁴), so that three times its integral up to s is
 * G(s) = a ρₘ/ρ_bulk (2 x D s³ + 3/5 D² s⁵). Where x &gt; 0 it changes sign once, at s₀² = −2 x/D.
 */
class BuoyancyClosedFormTest {

    private static final double ZERO = 273.15;
    private static final double CURVATURE = 8e-6;
    private static final double MAXIMUM = ZERO + 4.03;
    private static final SmoothFunction DENSITY = new SmoothFunction() {
        @Override
        public double at(double t) {
            return 1000 * (1 - CURVATURE * (t - MAXIMUM) * (t - MAXIMUM));
        }

        @Override
        public double slope(double t) {
            return -2000 * CURVATURE * (t - MAXIMUM);
        }
    };

    private static double modelled(double bulkK, double wallK) {
        HeatFlow out = new HeatFlow();
        Buoyancy.ofDensity(DENSITY).evaluate(bulkK, wallK, out);
        return out.watts;
    }

    /** G(s) of the class comment. */
    private static double pushed(double bulkK, double wallK, double s) {
        double x = bulkK - MAXIMUM;
        double d = wallK - bulkK;
        return CURVATURE * 1000 / DENSITY.at(bulkK) * (2 * x * d * Math.pow(s, 3) + 0.6 * d * d * Math.pow(s, 5));
    }

    private static double byHand(double bulkK, double wallK) {
        double square = -2 * (bulkK - MAXIMUM) / (wallK - bulkK);
        double turn = square <= 0 ? 0 : Math.min(1, Math.sqrt(square));
        double nearEdge = pushed(bulkK, wallK, turn);
        double nearWall = pushed(bulkK, wallK, 1) - nearEdge;
        double up = Math.max(nearEdge, 0) + Math.max(nearWall, 0);
        double down = Math.max(-nearEdge, 0) + Math.max(-nearWall, 0);
        return Math.sqrt(up * up + down * down - up * down);
    }

    @Test
    void oneSignedDrivesAreExact() {
        // All of the layer is lighter than the bulk (bulk at most at the maximum), or all of it is heavier.
        for (double[] pair : new double[][] {{2, 0}, {4.03, 0}, {20, 10}, {9, 6}, {5, 12}}) {
            double expected = byHand(ZERO + pair[0], ZERO + pair[1]);
            assertThat(modelled(ZERO + pair[0], ZERO + pair[1])).isCloseTo(expected, within(1e-6 * expected + 1e-10));
        }
    }

    @Test
    void partlyReversedLayersFollowTheTwoIntegralsAsFarAsTheRuleSeesTheCorner() {
        // Where the excess changes sign each part has a corner, its slope jumping by 3 · 4 a |D x| s₀. Between nodes g
        // apart a
        // rule cannot tell the corner from its chord: it misses at most the triangle between them, jump · g²/8. The
        // widest
        // gap of six Gauss nodes on (0, 1) is 0.23862 (Abramowitz and Stegun, table 25.4).
        for (double bulk = 4.5; bulk <= 9; bulk += 0.25) {
            double x = ZERO + bulk - MAXIMUM;
            double corner = Math.min(1, Math.sqrt(2 * x / bulk));
            double missed = 3 * 4 * CURVATURE * bulk * x * corner * 0.23862 * 0.23862 / 8;
            assertThat(modelled(ZERO + bulk, ZERO)).isCloseTo(byHand(ZERO + bulk, ZERO), within(missed));
        }
    }

    @Test
    void upAndDownBalanceAtThePredictedTemperature() {
        // 3/5 D + 2 x = 0, that is 0.6 T_wall + 1.4 T_bulk = 2 Tₘ: with an ice wall T_bulk = 2 · 4.03/1.4 = 5.757 °C.
        double balance = 2 * 4.03 / 1.4;
        assertThat(balance).isCloseTo(5.757, within(5e-4));
        assertThat(pushed(ZERO + balance, ZERO, 1)).isCloseTo(0, within(1e-15));
        // There the drive is neither gone nor as large as two kelvins to either side.
        double here = modelled(ZERO + balance, ZERO);
        assertThat(here)
                .isPositive()
                .isLessThan(byHand(ZERO + balance - 2, ZERO))
                .isLessThan(byHand(ZERO + balance + 2, ZERO));
    }
}
