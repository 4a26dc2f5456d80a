/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.beveragethermal.core.internal.FilmFit;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.materials.liquid.EthanolWater;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The film below a column, and the mixing of slices that overturn: hand values, limits, slopes. */
final class BottomFilmTest {

    private static final double ZERO = 273.15;
    private static final double GRAVITY = 9.80665;
    private static final double AREA = 0.004;
    private static final Liquid WINE = EthanolWater.ofMassFraction(0.10049);
    /** CIPM formula: water is densest at 3.98 °C (from memory). */
    private static final double DENSEST_WATER_K = 277.13;

    private static BottomFilm wine(double halfHeightM) {
        return new BottomFilm(AREA, halfHeightM, 263.15, FilmFit.of(WINE));
    }

    private static double watts(BottomFilm film, double sliceK, double surfaceK) {
        HeatFlow flow = new HeatFlow();
        film.evaluate(sliceK, surfaceK, flow);
        return flow.watts;
    }

    @ParameterizedTest
    @CsvSource({"8, 12", "8, 9", "15, 21", "2, 20"})
    void warmBottomFollowsTheHandbookWhateverTheSlice(double sliceC, double surfaceC) {
        // McAdams, warm face up, turbulent: Nu = 0.15 Ra^(1/3); any length gives the same coefficient.
        double length = 0.02;
        double film = ZERO + 0.5 * (sliceC + surfaceC);
        double buoyancy = WINE.density(ZERO + sliceC) / WINE.density(ZERO + surfaceC) - 1;
        double ra = GRAVITY
                * buoyancy
                * Math.pow(length, 3)
                / (WINE.kinematicViscosity(film) * WINE.thermalDiffusivity(film));
        double expected = AREA * 0.15 * Math.cbrt(ra) * WINE.thermalConductivity(film) / length * (sliceC - surfaceC);
        for (double half : new double[] {1e-4, 1e-3, 1e-2}) {
            assertThat(watts(wine(half), ZERO + sliceC, ZERO + surfaceC))
                    .isCloseTo(expected, within(1e-5 * Math.abs(expected)));
        }
    }

    @ParameterizedTest
    @CsvSource({"12, 8", "9, 8", "20, 2"})
    void coldBottomConductsOverHalfASlice(double sliceC, double surfaceC) {
        double k = WINE.thermalConductivity(ZERO + 0.5 * (sliceC + surfaceC));
        double expected = AREA * k / 0.005 * (sliceC - surfaceC);
        assertThat(watts(wine(0.005), ZERO + sliceC, ZERO + surfaceC)).isCloseTo(expected, within(1e-6 * expected));
    }

    @Test
    void equalTemperaturesPassNoHeat() {
        assertThat(watts(wine(0.005), ZERO + 10, ZERO + 10)).isZero();
    }

    @Test
    void densityDecidesNotTemperature() {
        // Water at 0.5 °C over a bottom at 3 °C: the warmer water at the bottom is the heavier and stays there.
        FilmFit water = FilmFit.of(Water.liquid());
        BottomFilm film = new BottomFilm(AREA, 0.005, DENSEST_WATER_K, water);
        double k = Water.liquid().thermalConductivity(ZERO + 1.75);
        assertThat(watts(film, ZERO + 0.5, ZERO + 3)).isCloseTo(-AREA * k / 0.005 * 2.5, within(1e-5));
        // Over a bottom at 0.5 °C the water at 3 °C sinks: no slice in the result.
        assertThat(watts(film, ZERO + 3, ZERO + 0.5))
                .isEqualTo(watts(new BottomFilm(AREA, 5e-4, DENSEST_WATER_K, water), ZERO + 3, ZERO + 0.5))
                .isPositive();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 2, 3.9, 4.1, 6, 9})
    void heatGrowsWithTheDifferenceWithoutAJump(double sliceC) {
        BottomFilm film = new BottomFilm(AREA, 0.005, DENSEST_WATER_K, FilmFit.of(Water.liquid()));
        double before = watts(film, ZERO + sliceC, ZERO);
        for (double surface = 0.002; surface < 12; surface += 0.002) {
            double here = watts(film, ZERO + sliceC, ZERO + surface);
            assertThat(here).as("surface %.3f °C", surface).isLessThanOrEqualTo(before);
            assertThat(before - here).isLessThan(AREA * 0.002 * 1000);
            before = here;
        }
    }

    @ParameterizedTest
    @CsvSource({"8, 12", "12, 8", "7, 2", "2, 7", "3, 1", "1, 3", "10, 10.3", "10.3, 10"})
    void slopesAreThoseOfDifferences(double sliceC, double surfaceC) {
        for (Liquid liquid : new Liquid[] {WINE, Water.liquid()}) {
            BottomFilm film = new BottomFilm(AREA, 0.004, DENSEST_WATER_K, FilmFit.of(liquid));
            assertSlopes(film, ZERO + sliceC, ZERO + surfaceC);
            assertSlopes(new UnstableMixing(AREA, 0.01, 0.03, FilmFit.of(liquid)), ZERO + sliceC, ZERO + surfaceC);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 3, 3.98, 5, 12})
    void slopeHasNoCornerWhereTheRegimesMeet(double celsius) {
        // At equal temperatures, and where slice or surface passes the densest temperature. Between two points a
        // hundredth of
        // the turn apart a corner would change the slope by all of k/(half a slice).
        double near = 1e-5;
        for (Liquid liquid : new Liquid[] {WINE, Water.liquid()}) {
            BottomFilm film = new BottomFilm(AREA, 0.004, DENSEST_WATER_K, FilmFit.of(liquid));
            double conduction = AREA * liquid.thermalConductivity(ZERO + 4) / 0.004;
            double at = ZERO + celsius;
            assertSmooth(film, at + near, at, at - near, at, conduction);
            assertSmooth(film, at, at + near, at, at - near, conduction);
            assertSmooth(film, DENSEST_WATER_K + near, at, DENSEST_WATER_K - near, at, conduction);
            assertSmooth(film, at, DENSEST_WATER_K + near, at, DENSEST_WATER_K - near, conduction);
        }
    }

    private static void assertSmooth(
            BottomFilm film, double slice, double surface, double otherSlice, double otherSurface, double scale) {
        HeatFlow one = new HeatFlow();
        HeatFlow other = new HeatFlow();
        film.evaluate(slice, surface, one);
        film.evaluate(otherSlice, otherSurface, other);
        String where = "slice %s K over surface %s K";
        assertThat(one.perFromKelvin).as(where, slice, surface).isCloseTo(other.perFromKelvin, within(0.05 * scale));
        assertThat(one.perToKelvin).as(where, slice, surface).isCloseTo(other.perToKelvin, within(0.05 * scale));
    }

    @ParameterizedTest
    @CsvSource({
        "10, 10.0004",
        "10.0004, 10",
        "10, 10.1",
        "3.98, 4.5",
        "3.9804, 2",
        "3.9796, 2",
        "2, 3.9805",
        "3, 3.0003",
        "3.0003, 3",
        "3.5, 3.9799",
        "8, 8.4"
    })
    void slopesNearTheCornersAreThoseOfDifferences(double sliceC, double surfaceC) {
        for (Liquid liquid : new Liquid[] {WINE, Water.liquid()}) {
            BottomFilm film = new BottomFilm(AREA, 0.004, DENSEST_WATER_K, FilmFit.of(liquid));
            assertSlopes(film, ZERO + sliceC, ZERO + surfaceC, 1e-6, 2e-3);
        }
    }

    private static void assertSlopes(org.beveragethermal.core.network.HeatLaw law, double oneK, double otherK) {
        assertSlopes(law, oneK, otherK, 1e-4, 1e-4);
    }

    private static void assertSlopes(
            org.beveragethermal.core.network.HeatLaw law, double oneK, double otherK, double step, double relative) {
        HeatFlow at = new HeatFlow();
        HeatFlow up = new HeatFlow();
        HeatFlow down = new HeatFlow();
        law.evaluate(oneK, otherK, at);
        law.evaluate(oneK + step, otherK, up);
        law.evaluate(oneK - step, otherK, down);
        double scale = Math.abs(at.perFromKelvin) + Math.abs(at.perToKelvin);
        assertThat(at.perFromKelvin).isCloseTo((up.watts - down.watts) / (2 * step), within(relative * scale));
        law.evaluate(oneK, otherK + step, up);
        law.evaluate(oneK, otherK - step, down);
        assertThat(at.perToKelvin).isCloseTo((up.watts - down.watts) / (2 * step), within(relative * scale));
    }

    @Test
    void mixingCarriesTheSameHeatAtTheSameGradientHoweverFineTheSlices() {
        // Two neighbours of twice the distance and twice the difference; the density curve is all but straight here.
        FilmFit wine = FilmFit.of(WINE);
        HeatFlow near = new HeatFlow();
        HeatFlow far = new HeatFlow();
        new UnstableMixing(AREA, 0.001, 0.035, wine).evaluate(ZERO + 15.001, ZERO + 15, near);
        new UnstableMixing(AREA, 0.002, 0.035, wine).evaluate(ZERO + 15.002, ZERO + 15, far);
        assertThat(far.watts).isCloseTo(near.watts, within(1e-2 * near.watts));
    }

    @Test
    void filmDescribesWhatItPasses() {
        BottomFilm film = wine(0.005);
        for (double[] pair : new double[][] {{8, 12}, {12, 8}, {10, 10}}) {
            var state = film.describe(ZERO + pair[0], ZERO + pair[1]);
            assertThat(state.coefficient() * AREA * (pair[0] - pair[1]))
                    .isCloseTo(watts(film, ZERO + pair[0], ZERO + pair[1]), within(1e-9));
        }
        assertThat(film.describe(ZERO + 8, ZERO + 12).law()).contains("warm face up");
        assertThat(film.describe(ZERO + 12, ZERO + 8).law().toLowerCase(Locale.ROOT))
                .contains("conduction");
    }
}
