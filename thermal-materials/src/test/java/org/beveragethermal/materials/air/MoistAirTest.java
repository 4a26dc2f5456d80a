/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.beveragethermal.materials.reference.ReferenceTable;
import org.beveragethermal.materials.reference.ReferenceTable.Row;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Moist air against the tables of its handbook, and against itself where quantities belong together. */
class MoistAirTest {
    private static final double ZERO = 273.15;
    private static final double SEA = DryAir.STANDARD_PRESSURE_PA;

    private static double saturated(Row row) {
        double temperatureK = ZERO + row.number("celsius");
        return row.property().equals("saturationPressure")
                ? MoistAir.saturationPressure(temperatureK)
                : MoistAir.humidityRatio(temperatureK, 1, SEA);
    }

    @Test
    void saturationAgreesWithTheHandbook() {
        ReferenceTable.read("air/ashrae-saturation-pressure.csv").check(MoistAirTest::saturated);
    }

    @Test
    void saturatedHumidityRatioAgreesWithTheHandbook() {
        ReferenceTable.read("air/ashrae-saturated-air.csv").check(MoistAirTest::saturated);
    }

    @Test
    void icedWetBulbAgreesWithAnIndependentComputation() {
        OutsideChecks.published(
                        "moist-air-iced-wet-bulb",
                        "psychrolib, test values computed independently in a spreadsheet: -1 °C, wet bulb -5 °C, 95 461 Pa")
                .what("humidity ratio from an iced wet bulb")
                .unit("1")
                .expected(0.00120399819933844)
                .within(0.0003 * 0.0012)
                .check(MoistAir.humidityRatioAtWetBulb(ZERO - 1, ZERO - 5, 95461));
    }

    @Test
    void standardAtmosphereAgreesWithItsTable() {
        OutsideChecks.fromMemory("standard-atmosphere-1000-m", "ISO 2533:1975, Standard atmosphere, 1000 m: 898.75 hPa")
                .what("standard pressure at 1000 m")
                .unit("Pa")
                .expected(89875)
                .within(5)
                .check(MoistAir.standardPressure(1000));
    }

    /** At one temperature, dew point and wet bulb of saturated air are that temperature. */
    @Test
    void saturatedAirIsAtItsDewPointAndItsWetBulb() {
        for (double celsius : new double[] {-20, -3, 5, 20, 35}) {
            double t = ZERO + celsius;
            assertThat(MoistAir.dewPointK(t, 1)).isCloseTo(t, within(1e-9));
            assertThat(MoistAir.wetBulbK(t, 1, SEA)).isCloseTo(t, within(1e-9));
        }
    }

    @Test
    void dewPointAndWetBulbInvertWhatTheyCameFrom() {
        for (double celsius : new double[] {2, 15, 25, 38}) {
            for (double humidity : new double[] {0.2, 0.5, 0.8}) {
                double t = ZERO + celsius;
                double ratio = MoistAir.humidityRatio(t, humidity, 95000);
                double dew = MoistAir.dewPointK(t, humidity);
                double wet = MoistAir.wetBulbK(t, humidity, 95000);
                assertThat(dew).isLessThan(wet);
                assertThat(wet).isLessThan(t);
                assertThat(MoistAir.saturationPressure(dew))
                        .isCloseTo(MoistAir.vapourPressure(ratio, 95000), within(1e-6));
                // Between wet and iced cloth the balance jumps; there the search can only stop at the jump.
                if (Math.abs(wet - ZERO) > 1e-6) {
                    assertThat(MoistAir.humidityRatioAtWetBulb(t, wet, 95000)).isCloseTo(ratio, within(1e-12));
                }
            }
        }
    }

    @Test
    void dryAirHasNoDewPointInTheRange() {
        assertThat(MoistAir.dewPointK(ZERO + 20, 0)).isEqualTo(223.15);
    }

    @Test
    void moistureMakesAirLighterAndRicher() {
        double t = ZERO + 25;
        double w = MoistAir.humidityRatio(t, 0.6, SEA);
        assertThat(MoistAir.density(t, w, SEA)).isLessThan(DryAir.density(t, SEA));
        assertThat(MoistAir.density(t, 0, SEA)).isEqualTo(DryAir.density(t, SEA));
        assertThat(MoistAir.specificEnthalpy(t, w)).isGreaterThan(MoistAir.specificEnthalpy(t, 0));
        assertThat(MoistAir.specificEnthalpy(ZERO, 0)).isZero();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> MoistAir.dewPointK(ZERO + 20, 1.2))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("relative humidity")
                .hasMessageContaining("1.2");
        assertThatThrownBy(() -> MoistAir.humidityRatioAtWetBulb(ZERO + 20, ZERO + 21, SEA))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("wet-bulb");
        assertThatThrownBy(() -> MoistAir.saturationPressure(500)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> MoistAir.humidityRatio(ZERO + 105, 1, SEA)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> MoistAir.saturationPressure(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
