/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The falling film against the channel of which it is one half, and against older measurements. */
class FallingFilmTest {

    private static final double ZERO = 273.15;
    private static final double VERY_LONG = 1e12;

    /** Thickness of a laminar film over the film length, (3 Re)^(1/3), Nusselt 1916. */
    private static double thickness(double re) {
        return Math.cbrt(3 * re);
    }

    /**
     * A laminar film has the velocity and temperature profiles of one half of a channel with both walls at one temperature: hydraulic
     * diameter four times the film.
     */
    @Test
    void aLongLaminarFilmIsHalfAChannel() {
        double re = 2;
        double onThickness = FallingFilm.wilke(re, 10, VERY_LONG) * thickness(re);
        OutsideChecks.published(
                        "falling-film-developed",
                        "R. K. Shah and A. L. London, Laminar Flow Forced Convection in Ducts, 1978: parallel plates, both at one"
                                + " temperature, Nu = 7.541 on the hydraulic diameter (from memory)")
                .what("Nusselt number of a long laminar falling film on its thickness")
                .unit("1")
                .expected(7.541 / 4)
                // The law's 1.30 is rounded by its source; the channel gives 1.307.
                .withinRelative(0.01)
                .check(onThickness);
    }

    @ParameterizedTest
    @CsvSource({"0.0002", "0.0005", "0.002", "0.005", "0.01", "0.03", "0.1"})
    void aShortLaminarFilmIsTheBeginningOfAChannel(double x) {
        // Mean Nusselt number of parallel plates against x = L/(D Re Pr), Shah and London 1978 (from memory): they
        // state 3 %.
        double channel =
                x <= 0.0005 ? 1.849 / Math.cbrt(x) : x <= 0.006 ? 1.849 / Math.cbrt(x) + 0.6 : 7.541 + 0.0235 / x;
        double re = 4;
        double pr = 30;
        double length = x * 4 * thickness(re) * 4 * re * pr;
        double onDiameter = FallingFilm.wilke(re, pr, length) * 4 * thickness(re);
        OutsideChecks.published(
                        "falling-film-developing-" + x,
                        "R. K. Shah and A. L. London, Laminar Flow Forced Convection in Ducts, 1978: parallel plates, thermal entrance"
                                + " (from memory)")
                .what("mean Nusselt number of a short laminar falling film on four thicknesses, L/(D Re Pr) = " + x)
                .unit("1")
                .expected(channel)
                .withinRelative(0.06)
                .check(onDiameter);
    }

    /** An older law has no temperature in it; it was measured on water that was heated, so warm water is the fairer case. */
    @Test
    void theOldLawForWater() {
        for (double celsius : new double[] {20, 60}) {
            double kelvin = ZERO + celsius;
            Water water = Water.liquid();
            double nu = water.kinematicViscosity(kelvin);
            double film = Math.cbrt(nu * nu / 9.80665);
            double perWidth = 0.5;
            double re = perWidth / (nu * water.density(kelvin));
            double coefficient = FallingFilm.wilke(re, water.prandtlNumber(kelvin), 3 / film)
                    * water.thermalConductivity(kelvin)
                    / film;
            OutsideChecks.fromMemory(
                            "falling-film-mcadams-" + (int) celsius,
                            "W. H. McAdams, T. B. Drew and G. S. Bays, Trans. ASME 62 (1940) 627: 9150 Γ^(1/3) W/(m² K) for water heated"
                                    + " in a falling film, here Γ = 0.5 kg/(m s)")
                    .what("coefficient of a falling film of water at " + (int) celsius
                            + " °C; the source knows no temperature")
                    .unit("W/(m² K)")
                    .expected(9150 * Math.cbrt(perWidth))
                    .withinRelative(celsius > 40 ? 0.2 : 0.5)
                    .check(coefficient);
        }
    }

    @Test
    void lawsMeetWithoutSteps() {
        double before = FallingFilm.wilke(0.5, 7, 4000);
        for (double re = 0.5; re < 5000; re *= 1.01) {
            double here = FallingFilm.wilke(re, 7, 4000);
            double largest = Math.max(
                    Math.max(0.0425 * Math.pow(re, 0.2), 0.0136 * Math.pow(re, 0.4)) * Math.pow(7, 0.344),
                    1.30 / Math.cbrt(re));
            assertThat(here / before).isBetween(0.98, 1.02);
            assertThat(here).isGreaterThanOrEqualTo(largest);
            before = here;
        }
        assertThat(FallingFilm.wilke(1500, 7, VERY_LONG))
                .isCloseTo(0.0136 * Math.pow(1500, 0.4) * Math.pow(7, 0.344), within(1e-3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void nonsenseIsRefused(double bad) {
        assertThatThrownBy(() -> FallingFilm.wilke(bad, 7, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FallingFilm.wilke(1, bad, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FallingFilm.wilke(1, 7, bad)).isInstanceOf(IllegalArgumentException.class);
    }
}
