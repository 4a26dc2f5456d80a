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
    void saturationAgreesWithAnotherFormulation() {
        ReferenceTable.read("air/iapws-saturation.csv").check(MoistAirTest::saturated);
    }

    @Test
    void saturatedHumidityRatioAgreesWithTheHandbook() {
        ReferenceTable.read("air/ashrae-saturated-air.csv").check(MoistAirTest::saturated);
    }

    @Test
    void icedWetBulbAgreesWithAnIndependentComputation() {
        ReferenceTable.read("air/psychrolib-spreadsheet.csv")
                .check(row -> MoistAir.humidityRatioAtWetBulb(
                        ZERO + row.number("celsius"), ZERO + row.number("wetBulbCelsius"), row.number("pressurePa")));
    }

    @Test
    void standardAtmosphereAgreesWithItsTable() {
        ReferenceTable.read("air/iso-2533-pressure.csv")
                .check(row -> MoistAir.standardPressure(row.number("altitudeM")));
    }

    private static double psychrometric(Row row) {
        double t = ZERO + row.number("celsius");
        double humidity = row.number("humidity");
        double pressure = row.number("pressurePa");
        double ratio = MoistAir.humidityRatio(t, humidity, pressure);
        return switch (row.property()) {
            case "humidityRatio" -> ratio;
            case "wetBulbCelsius" -> MoistAir.wetBulbK(t, humidity, pressure) - ZERO;
            case "dewPointCelsius" -> MoistAir.dewPointK(t, humidity) - ZERO;
            case "specificEnthalpy" -> MoistAir.specificEnthalpy(t, ratio);
            case "density" -> MoistAir.density(t, ratio, pressure);
            default -> throw new IllegalArgumentException(row.property());
        };
    }

    @Test
    void psychrometricsAgreeWithAReferenceLibrary() {
        ReferenceTable.read("air/psychrolib.csv").check(MoistAirTest::psychrometric);
    }

    /** The library's own tests hold these figures, computed by others. */
    @Test
    void wetBulbAgreesWithPublishedExamples() {
        String source = "PsychroLib, test values computed independently in a spreadsheet";
        OutsideChecks.published("moist-air-wet-bulb-7", source)
                .what("wet bulb of air at 7 °C, 61 %, 100 kPa")
                .unit("°C")
                .expected(3.926674)
                .withinRelative(0.0004)
                .check(MoistAir.wetBulbK(ZERO + 7, 0.61, 100_000) - ZERO);
        OutsideChecks.published("moist-air-ratio-30-25", source)
                .what("humidity ratio of air at 30 °C, wet bulb 25 °C, 95 461 Pa")
                .unit("1")
                .expected(0.01922813)
                .withinRelative(0.0004)
                .check(MoistAir.humidityRatioAtWetBulb(ZERO + 30, ZERO + 25, 95461));
        OutsideChecks.published("moist-air-ratio-40-20", source)
                .what("humidity ratio of air at 40 °C, wet bulb 20 °C, 101 325 Pa")
                .unit("1")
                .expected(0.0065)
                .within(1e-4)
                .check(MoistAir.humidityRatioAtWetBulb(ZERO + 40, ZERO + 20, SEA));
    }

    private static double vapour(Row row) {
        double t = row.number("temperatureK");
        return switch (row.property()) {
            case "saturationPressure" -> WaterVapour.saturationPressure(t);
            case "liquidDensity" -> WaterVapour.saturatedLiquidDensity(t);
            case "vapourDensity" -> WaterVapour.saturatedVapourDensity(t);
            case "thermalConductivity" -> WaterVapour.thermalConductivity(t);
            default -> throw new IllegalArgumentException(row.property());
        };
    }

    @Test
    void vapourAgreesWithTheReleases() {
        ReferenceTable.read("air/iapws-water-vapour.csv").check(MoistAirTest::vapour);
    }

    @Test
    void evaporationAgreesWithSteamTables() {
        ReferenceTable.read("air/steam-table-evaporation.csv")
                .check(row -> MoistAir.latentHeatOfEvaporation(ZERO + row.number("celsius")));
    }

    /** Below 0 °C the formula over water is continued; another published formula holds there. */
    @Test
    void supercooledWaterAgreesWithMurphyAndKoop() {
        for (int celsius : new int[] {-20, -10, -5}) {
            double t = ZERO + celsius;
            double published = Math.exp(54.842763
                    - 6763.22 / t
                    - 4.210 * Math.log(t)
                    + 0.000367 * t
                    + Math.tanh(0.0415 * (t - 218.8)) * (53.878 - 1331.22 / t - 9.44523 * Math.log(t) + 0.014025 * t));
            OutsideChecks.fromMemory(
                            "supercooled-vapour-m" + -celsius,
                            "D. M. Murphy, T. Koop, Q. J. R. Meteorol. Soc. 131 (2005) 1539-1565, eq. 10")
                    .what("vapour pressure over supercooled water at " + celsius + " °C")
                    .unit("Pa")
                    .expected(published)
                    .withinRelative(0.0015)
                    .check(MoistAir.saturationPressure(t, WaterSurface.LIQUID));
        }
    }

    /** Mixing by Wilke's rule keeps the pure gases and, as measured for air with steam, lowers the viscosity of air. */
    @Test
    void transportKeepsDryAirAndThinsWithMoisture() {
        for (double t : new double[] {230, 273.15, 300, 350}) {
            assertThat(MoistAir.dynamicViscosity(t, 0)).isEqualTo(DryAir.dynamicViscosity(t));
            assertThat(MoistAir.thermalConductivity(t, 0)).isEqualTo(DryAir.thermalConductivity(t));
            assertThat(MoistAir.specificHeatCapacity(t, 0)).isEqualTo(DryAir.specificHeatCapacity(t));
        }
        double w = MoistAir.humidityRatio(ZERO + 30, 1, SEA);
        assertThat(MoistAir.dynamicViscosity(303.15, w) / DryAir.dynamicViscosity(303.15))
                .isBetween(0.975, 0.985);
        assertThat(MoistAir.thermalConductivity(303.15, w) / DryAir.thermalConductivity(303.15))
                .isBetween(0.98, 0.995);
        assertThat(MoistAir.specificHeatCapacity(303.15, w)).isGreaterThan(DryAir.specificHeatCapacity(303.15));
        assertThatThrownBy(() -> MoistAir.dynamicViscosity(400, 0)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void theClothMayBeWetOrIced() {
        // Air that leaves a wet cloth a little above 0 °C and an iced one a little below: both balances hold.
        double t = ZERO + 6;
        double ratio = MoistAir.humidityRatioAtWetBulb(t, ZERO + 0.2, SEA);
        double humidity = MoistAir.relativeHumidity(t, ratio, SEA);
        double wet = MoistAir.wetBulbK(t, humidity, SEA, WaterSurface.LIQUID);
        double iced = MoistAir.wetBulbK(t, humidity, SEA, WaterSurface.ICE);
        assertThat(wet).isCloseTo(ZERO + 0.2, within(1e-4));
        assertThat(iced).isLessThan(ZERO).isGreaterThan(ZERO - 1);
        assertThat(MoistAir.humidityRatioAtWetBulb(t, iced, SEA, WaterSurface.ICE))
                .isCloseTo(ratio, within(1e-12));
        assertThat(MoistAir.wetBulbK(t, humidity, SEA)).isIn(wet, iced);
        // Over liquid water vapour presses harder than over ice, so a supercooled cloth loses more and ends colder.
        double supercooled = MoistAir.wetBulbK(ZERO - 5, 0.5, SEA, WaterSurface.LIQUID);
        assertThat(supercooled).isLessThan(MoistAir.wetBulbK(ZERO - 5, 0.5, SEA, WaterSurface.ICE));
        assertThat(MoistAir.wetBulbK(ZERO + 20, 0.5, SEA, WaterSurface.ICE)).isEqualTo(ZERO);
        assertThat(MoistAir.wetBulbK(ZERO + 20, 0.5, SEA, WaterSurface.LIQUID))
                .isEqualTo(MoistAir.wetBulbK(ZERO + 20, 0.5, SEA));
    }

    @Test
    void humidityGoesBothWays() {
        for (double celsius : new double[] {-20, -1, 0, 0.005, 10, 35}) {
            for (double humidity : new double[] {0.05, 0.5, 1}) {
                double t = ZERO + celsius;
                double ratio = MoistAir.humidityRatio(t, humidity, 90_000);
                assertThat(MoistAir.relativeHumidity(t, ratio, 90_000)).isCloseTo(humidity, within(1e-12));
                double dew = MoistAir.dewPointK(t, humidity);
                if (dew > 223.15) {
                    assertThat(MoistAir.relativeHumidityAtDewPoint(t, dew)).isCloseTo(humidity, within(1e-9));
                }
            }
        }
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
                assertThat(MoistAir.humidityRatioAtWetBulb(t, wet, 95000)).isCloseTo(ratio, within(1e-12));
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
        assertThatThrownBy(() -> MoistAir.relativeHumidity(ZERO + 5, 0.02, SEA))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("relative humidity");
        assertThatThrownBy(() -> MoistAir.relativeHumidityAtDewPoint(ZERO + 5, ZERO + 6))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> MoistAir.saturationPressure(ZERO + 1, WaterSurface.ICE))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("ice temperature");
        assertThatThrownBy(() -> MoistAir.latentHeatOfEvaporation(240)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> MoistAir.standardPressure(12_000)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> MoistAir.saturationPressure(500)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> MoistAir.humidityRatio(ZERO + 105, 1, SEA)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> MoistAir.saturationPressure(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
