/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.VerticalCylinder;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;

/** Condensation only below the dew point, smooth, and as strong as the analogy of heat and mass has it. */
final class CondensingFilmProperties {

    private static final double ZERO = 273.15;
    private static final double PRESSURE = 101_325;
    private static final ConvectiveFilm FILM =
            ConvectiveFilm.free(0.07, 0.3, Fluid.air(PRESSURE), VerticalCylinder.popiel(4));
    private static final ConvectiveFilm WINDY = FILM.withStream(2, 0.075, CrossflowCylinder.CHURCHILL_BERNSTEIN);

    private static double watts(CondensingFilm film, double airK, double surfaceK) {
        HeatFlow out = new HeatFlow();
        film.evaluate(airK, surfaceK, out);
        return out.watts;
    }

    private static double conductance(ConvectiveFilm film, double airK, double surfaceK) {
        HeatFlow out = new HeatFlow();
        film.conductance(airK, surfaceK, out);
        return out.watts;
    }

    @Property(tries = 100, seed = "20261125")
    void onlyBelowTheDewPoint(
            @ForAll @DoubleRange(min = -25, max = 45) double airC,
            @ForAll @DoubleRange(min = 0.02, max = 1) double humidity,
            @ForAll @DoubleRange(min = 0.01, max = 20) double belowK) {
        CondensingFilm film = CondensingFilm.of(FILM, humidity, PRESSURE);
        double air = ZERO + airC;
        double dew = MoistAir.dewPointK(air, humidity);
        if (dew <= 223.15) {
            return;
        }
        double below = Math.max(dew - belowK, 223.15);
        assertThat(watts(film, air, below)).isPositive();
        assertThat(watts(film, air, dew + 1e-5)).isZero();
        assertThat(watts(film, air, dew + belowK)).isZero();
        // The colder the surface, the more.
        assertThat(watts(film, air, below - 0.5)).isGreaterThanOrEqualTo(watts(film, air, below));
    }

    @Property(tries = 100, seed = "20261126")
    void slopesAreThoseOfTheFlow(
            @ForAll @DoubleRange(min = -10, max = 45) double airC,
            @ForAll @DoubleRange(min = 0.1, max = 1) double humidity,
            @ForAll @DoubleRange(min = 0.01, max = 15) double belowK) {
        double air = ZERO + airC;
        double surface = MoistAir.dewPointK(air, humidity) - belowK;
        // Where the formula of the saturation pressure changes the slope jumps.
        if (surface < 230 || Math.abs(surface - 273.16) < 1e-3 || Math.abs(air - 273.16) < 1e-3) {
            return;
        }
        double step = 1e-5;
        for (ConvectiveFilm through : new ConvectiveFilm[] {FILM, WINDY}) {
            CondensingFilm film = CondensingFilm.of(through, humidity, PRESSURE);
            HeatFlow out = new HeatFlow();
            film.evaluate(air, surface, out);
            double scale = Math.abs(out.perFromKelvin) + Math.abs(out.perToKelvin);
            assertThat(out.perFromKelvin)
                    .isCloseTo(
                            (watts(film, air + step, surface) - watts(film, air - step, surface)) / (2 * step),
                            within(2e-3 * scale));
            assertThat(out.perToKelvin)
                    .isCloseTo(
                            (watts(film, air, surface + step) - watts(film, air, surface - step)) / (2 * step),
                            within(2e-3 * scale));
        }
    }

    @Example
    void byHand() {
        // Air at 30 °C, 70 %, a surface at 5 °C, with the formulas of moist air themselves.
        double air = ZERO + 30;
        double surface = ZERO + 5;
        double drive = Math.log((PRESSURE - MoistAir.saturationPressure(surface))
                / (PRESSURE - 0.7 * MoistAir.saturationPressure(air)));
        double kilograms = conductance(WINDY, air, surface) / 1006 * 0.621945 * Math.pow(0.85, -2.0 / 3) * drive;
        double expected = kilograms * MoistAir.latentHeatOfEvaporation(surface);
        assertThat(watts(CondensingFilm.of(WINDY, 0.7, PRESSURE), air, surface))
                .isCloseTo(expected, within(1e-3 * expected));
    }

    @Example
    void transferOfVapourPerTransferOfHeat() {
        // Around 15 °C and small drives, so that the air that moves along does not matter.
        double air = ZERO + 16;
        double surface = ZERO + 14;
        CondensingFilm film = CondensingFilm.of(WINDY, 0.95, PRESSURE);
        double vapour = 0.95 * MoistAir.saturationPressure(air) - MoistAir.saturationPressure(surface);
        double perHeat = watts(film, air, surface)
                / CondensingFilm.latentHeatJPerKg(surface)
                / vapour
                / conductance(WINDY, air, surface);
        OutsideChecks.fromMemory(
                        "condensation-lewis",
                        "H. M. Kuenzel, Simultaneous heat and moisture transport in building components, 1995: 7e-9 times the"
                                + " convective coefficient")
                .what("vapour transfer over convective heat transfer, times 1e9")
                .unit("kg K/(J Pa)")
                .expected(7.0)
                .withinRelative(0.05)
                .check(1e9 * perHeat);
    }

    @Example
    void settlesAtThePsychrometricDewPoint() {
        // The coldest surface at which nothing settles, by bisection of the law.
        double[][] table = {{25, 0.50, 13.9}, {30, 0.60, 21.4}, {20, 0.40, 6.0}};
        for (double[] row : table) {
            CondensingFilm film = CondensingFilm.of(FILM, row[1], PRESSURE);
            double low = ZERO - 5;
            double high = ZERO + row[0];
            for (int i = 0; i < 60; i++) {
                double middle = 0.5 * (low + high);
                if (watts(film, ZERO + row[0], middle) > 0) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            OutsideChecks.fromMemory("condensation-dew-point", "table of dew points in DIN 4108-3 (°C, one decimal)")
                    .what(String.format(
                            java.util.Locale.ROOT,
                            "warmest surface that sweats in air of %.0f °C, %.0f %%",
                            row[0],
                            100 * row[1]))
                    .unit("°C")
                    .expected(row[2])
                    .within(0.1)
                    .check(low - ZERO);
        }
    }

    @Example
    void frostGivesTheHeatOfSublimation() {
        OutsideChecks.fromMemory(
                        "frost-latent-heat", "D. M. Murphy and T. Koop, Q. J. R. Meteorol. Soc. 131 (2005), eq. 5")
                .what("heat of sublimation at -10 °C")
                .unit("J/kg")
                .expected(2.8365e6)
                .withinRelative(0.002)
                .check(CondensingFilm.latentHeatJPerKg(ZERO - 10));
        assertThat(CondensingFilm.latentHeatJPerKg(ZERO + 10))
                .isCloseTo(MoistAir.latentHeatOfEvaporation(ZERO + 10), within(10.0));
        assertThat(CondensingFilm.latentHeatJPerKg(ZERO)).isBetween(2.6e6, 2.7e6);
        CondensingFilm film = CondensingFilm.of(FILM, 0.9, PRESSURE);
        assertThat(film.describe(ZERO, ZERO - 10).law()).contains("frost");
        assertThat(film.describe(ZERO + 20, ZERO + 10).law()).contains("dew");
        assertThat(film.describe(ZERO + 20, ZERO + 20).coefficient()).isZero();
    }

    @Example
    void aTenthOfAMillimetreOfWater() {
        // 12 fl oz of a drink like water in a can of about 0.0285 m² (area from memory).
        double kelvins = 1e-4 * 0.0285 * 1000 * CondensingFilm.latentHeatJPerKg(ZERO + 5) / (0.3549 * 4200);
        OutsideChecks.published("condensation-film", "D. R. Durran and D. M. W. Frierson, Physics Today 66 (2013) 74")
                .what("rise of a can of 12 fl oz by the heat of 0.004 inch of condensed water (9 °F)")
                .unit("K")
                .expected(5.0)
                .within(0.5)
                .check(kelvins);
    }

    @Example
    void badInput() {
        assertThatThrownBy(() -> CondensingFilm.of(FILM, 1.2, PRESSURE))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("relative humidity");
        assertThatThrownBy(() -> CondensingFilm.of(FILM, -0.1, PRESSURE)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> CondensingFilm.of(FILM, 0.5, 4e4)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> CondensingFilm.latentHeatJPerKg(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        // An implicit step may look beyond anything physical.
        CondensingFilm film = CondensingFilm.of(FILM, 1, PRESSURE);
        for (double surface : new double[] {100, 223, 400, 2000}) {
            assertThat(watts(film, ZERO + 30, surface)).isFinite().isNotNegative();
        }
    }
}
