/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Where the sun stands, what a clear sky lets through, and how cold it is, against published figures. */
class SunAndSkyTest {

    private static final double ZERO = 273.15;
    /** From Btu/(h ft²) to W/m². */
    private static final double BTU = 3.154591;

    private static double elevationDegrees(double latitude, int day, double solarTimeH) {
        return Math.toDegrees(
                SolarPosition.elevation(Math.toRadians(latitude), SolarPosition.declination(day), solarTimeH));
    }

    @Test
    void sunStandsWhereWorkedExamplesSay() {
        OutsideChecks.published("sun-declination-june", "Kalogirou, Solar Energy Engineering, example 2.5, 15 June")
                .what("declination on day 167")
                .unit("°")
                .expected(23.35)
                .within(0.06)
                .check(Math.toDegrees(SolarPosition.declination(167)));
        OutsideChecks.published(
                        "sun-elevation-june", "Kalogirou, Solar Energy Engineering, example 2.5, two hours after noon")
                .what("elevation at 40° N on day 167, 14 h solar time")
                .unit("°")
                .expected(59.75)
                .within(0.1)
                .check(elevationDegrees(40, 167, 14));
        OutsideChecks.fromMemory("sun-elevation-february", "Duffie and Beckman, example 1.6.2: zenith 66.5°")
                .what("elevation at 43° N on 13 February, 9:30 solar time")
                .unit("°")
                .expected(23.5)
                .within(0.1)
                .check(elevationDegrees(43, 44, 9.5));
        OutsideChecks.fromMemory("sun-elevation-july", "Duffie and Beckman, example 1.6.2: zenith 79.6°")
                .what("elevation at 43° N on 1 July, 18:30 solar time")
                .unit("°")
                .expected(10.4)
                .within(0.1)
                .check(elevationDegrees(43, 182, 18.5));
    }

    @Test
    void clearSkyLetsThroughWhatItsTableSays() {
        // Direct normal irradiance and solar altitude, 40° N, 21st of the month.
        double[][] rows = {{21, 30.0, 294}, {21, 8.1, 142}, {172, 73.5, 279}, {172, 14.8, 155}};
        for (double[] row : rows) {
            OutsideChecks.fromMemory(
                            "clear-sky-beam-" + (int) row[0] + "-" + (int) row[1],
                            "ASHRAE Handbook of Fundamentals, table of solar position and intensity, 40° N, Btu/(h ft²)")
                    .what("direct irradiance on day " + (int) row[0] + ", sun at " + row[1] + "°")
                    .unit("W/m²")
                    .expected(row[2] * BTU)
                    .within(0.6 * BTU)
                    .check(ClearSky.beam((int) row[0], false, Math.toRadians(row[1])));
        }
        assertThat(ClearSky.diffuse(172, false, 1) / ClearSky.beam(172, false, 1))
                .isCloseTo(0.134, within(1e-12));
        // Half-way between the tables of 21 December and 21 January, over the turn of the year.
        assertThat(ClearSky.diffuse(5, false, 1) / ClearSky.beam(5, false, 1))
                .isGreaterThan(0.057)
                .isLessThan(0.058);
    }

    @Property(tries = 300, seed = "20261126")
    @Label("No sun at night")
    void noSunAtNight(
            @ForAll @IntRange(min = 1, max = 366) int day,
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @DoubleRange(min = 0, max = 48) double hour) {
        double elevation = SolarPosition.elevation(Math.toRadians(latitude), SolarPosition.declination(day), hour);
        double beam = ClearSky.beam(day, latitude < 0, elevation);
        if (elevation <= 0) {
            assertThat(beam).isZero();
            assertThat(ClearSky.diffuse(day, latitude < 0, elevation)).isZero();
        } else {
            assertThat(beam).isBetween(0.0, 1100.0);
        }
        // The sun is as high before noon as after it, and a day later.
        assertThat(SolarPosition.elevation(Math.toRadians(latitude), SolarPosition.declination(day), 24 - hour))
                .isCloseTo(elevation, within(1e-9));
    }

    @Test
    void southernMidsummerIsANorthernOneNearerToTheSun() {
        double north = ClearSky.beam(172, false, 1);
        double south = ClearSky.beam(355, true, 1);
        // The sun is 3.3 % closer than on average in early January and farther in July: irradiance 1.067 to 1.
        assertThat(south / north).isCloseTo(1.067, within(0.005));
        // C of the table for 21 June belongs to 21 December there, for the 21st of March to September: half a year
        // apart.
        assertThat(ClearSky.diffuse(355, true, 1) / ClearSky.beam(355, true, 1)).isCloseTo(0.134, within(1e-12));
        assertThat(ClearSky.diffuse(263, true, 1) / ClearSky.beam(263, true, 1)).isCloseTo(0.071, within(1e-12));
    }

    @Test
    void skyIsAsColdAsPublishedFormulasSay() {
        OutsideChecks.published(
                        "sky-swinbank",
                        "Swinbank 1963, flux 5.31e-13 T^6 W/m²; as sky temperature (9.36e-6 T^6)^(1/4) in public building codes")
                .what("clear sky over air of 20 °C, humidity unknown")
                .unit("K")
                .expected(Math.pow(9.36e-6 * Math.pow(293.15, 6), 0.25))
                .withinRelative(0.003)
                .check(SkyRadiation.swinbank(293.15));
        // Two older formulas for the emissivity at a dew point of 10 °C, vapour pressure 12.3 hPa.
        OutsideChecks.fromMemory(
                        "sky-berdahl-martin-brunt", "Brunt 1932 with Sellers' constants: 0.605 + 0.048 √(e/hPa)")
                .what("emissivity of a clear sky, dew point 10 °C")
                .unit("1")
                .expected(0.605 + 0.048 * Math.sqrt(12.27))
                .within(0.03)
                .check(SkyRadiation.berdahlMartin(ZERO + 10));
        OutsideChecks.fromMemory("sky-berdahl-martin-clark", "Clark and Allen 1978: 0.787 + 0.764 ln(T/273 K)")
                .what("emissivity of a clear sky, dew point 10 °C")
                .unit("1")
                .expected(0.787 + 0.764 * Math.log(283.15 / 273))
                .within(0.05)
                .check(SkyRadiation.berdahlMartin(ZERO + 10));
        assertThat(SkyRadiation.berdahlMartin(ZERO)).isEqualTo(0.711);
        assertThat(SkyRadiation.clearSky(290, 285)).isLessThan(290);
        // 300 K times the fourth root of 0.711.
        assertThat(SkyRadiation.clearSky(300, ZERO)).isCloseTo(275.479, within(1e-3));
        assertThat(SkyRadiation.swinbank(340)).isEqualTo(340);
    }

    @Test
    void badInputIsNamed() {
        assertThatThrownBy(() -> SolarPosition.declination(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("day of the year 0");
        assertThatThrownBy(() -> SolarPosition.elevation(2, 0, 12)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SolarPosition.elevation(1, 0, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ClearSky.beam(367, false, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ClearSky.beam(1, false, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SkyRadiation.swinbank(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SkyRadiation.clearSky(290, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SkyRadiation.berdahlMartin(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
