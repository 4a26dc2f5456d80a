/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Conversion, refusal and messages of every accessor. */
class SiValuesTest {

    /** A factory of a quantity, the accessor that reads it, its factor to SI, and whether a negative value is nonsense. */
    record Pair(String name, DoubleFunction<Double> roundTrip, double factor, boolean refusesNegative) {
        @Override
        public String toString() {
            return name;
        }

        static <Q extends Quantity<Q>> Pair of(
                String name,
                DoubleFunction<Quantity<Q>> make,
                ToDoubleFunction<Quantity<Q>> read,
                double factor,
                boolean refusesNegative) {
            return new Pair(name, v -> read.applyAsDouble(make.apply(v)), factor, refusesNegative);
        }
    }

    static Stream<Pair> pairs() {
        return Stream.of(
                Pair.of("metres", Measures::metres, q -> SiValues.lengthM(q, "x"), 1, false),
                Pair.of("centimetres", Measures::centimetres, q -> SiValues.lengthM(q, "x"), 1e-2, false),
                Pair.of("millimetres", Measures::millimetres, q -> SiValues.lengthM(q, "x"), 1e-3, false),
                Pair.of("squareMetres", Measures::squareMetres, q -> SiValues.areaM2(q, "x"), 1, true),
                Pair.of("cubicMetres", Measures::cubicMetres, q -> SiValues.volumeM3(q, "x"), 1, true),
                Pair.of("litres", Measures::litres, q -> SiValues.volumeM3(q, "x"), 1e-3, true),
                Pair.of("centilitres", Measures::centilitres, q -> SiValues.volumeM3(q, "x"), 1e-5, true),
                Pair.of("millilitres", Measures::millilitres, q -> SiValues.volumeM3(q, "x"), 1e-6, true),
                Pair.of("kilograms", Measures::kilograms, q -> SiValues.massKg(q, "x"), 1, true),
                Pair.of("grams", Measures::grams, q -> SiValues.massKg(q, "x"), 1e-3, true),
                Pair.of("metresPerSecond", Measures::metresPerSecond, q -> SiValues.speedMPerS(q, "x"), 1, false),
                Pair.of("pascals", Measures::pascals, q -> SiValues.pressurePa(q, "x"), 1, true),
                Pair.of("kilopascals", Measures::kilopascals, q -> SiValues.pressurePa(q, "x"), 1e3, true),
                Pair.of("joules", Measures::joules, q -> SiValues.energyJ(q, "x"), 1, false),
                Pair.of("watts", Measures::watts, q -> SiValues.powerW(q, "x"), 1, false),
                Pair.of("percent", Measures::percent, q -> SiValues.fraction(q, "x"), 1e-2, false),
                Pair.of("fraction", Measures::fraction, q -> SiValues.fraction(q, "x"), 1, false),
                Pair.of(
                        "percentByVolume",
                        Measures::percentByVolume,
                        q -> SiValues.strengthByVolume(q, "x"),
                        1e-2,
                        true),
                Pair.of("gramsPerLitre", Measures::gramsPerLitre, q -> SiValues.concentrationKgPerM3(q, "x"), 1, true),
                Pair.of("density", Measures::kilogramsPerCubicMetre, q -> SiValues.densityKgPerM3(q, "x"), 1, true),
                Pair.of(
                        "litresPerMinute",
                        Measures::litresPerMinute,
                        q -> SiValues.volumetricFlowM3PerS(q, "x", 0, Double.MAX_VALUE),
                        1e-3 / 60,
                        true),
                Pair.of(
                        "irradiance",
                        Measures::wattsPerSquareMetre,
                        q -> SiValues.irradianceWPerM2(q, "x", 0, Double.MAX_VALUE),
                        1,
                        true),
                Pair.of(
                        "degrees",
                        Measures::degrees,
                        q -> SiValues.angleDegrees(q, "x", -Double.MAX_VALUE, Double.MAX_VALUE),
                        1,
                        false),
                Pair.of("conductance", Measures::wattsPerKelvin, q -> SiValues.conductanceWPerK(q, "x"), 1, true),
                Pair.of(
                        "coefficient",
                        Measures::wattsPerSquareMetreKelvin,
                        q -> SiValues.heatTransferCoefficient(q, "x"),
                        1,
                        true),
                Pair.of(
                        "conductivity",
                        Measures::wattsPerMetreKelvin,
                        q -> SiValues.thermalConductivity(q, "x"),
                        1,
                        true),
                Pair.of(
                        "specific heat",
                        Measures::joulesPerKilogramKelvin,
                        q -> SiValues.specificHeatCapacity(q, "x"),
                        1,
                        true),
                Pair.of("heat capacity", Measures::joulesPerKelvin, q -> SiValues.heatCapacityJPerK(q, "x"), 1, true),
                Pair.of(
                        "enthalpy",
                        Measures::joulesPerKilogram,
                        q -> SiValues.specificEnthalpyJPerKg(q, "x"),
                        1,
                        false),
                Pair.of("viscosity", Measures::pascalSeconds, q -> SiValues.dynamicViscosityPaS(q, "x"), 1, true));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void everyFactoryMeetsItsAccessor(Pair pair) {
        assertThat(pair.roundTrip().apply(12.5)).isCloseTo(12.5 * pair.factor(), within(1e-13 * 12.5 * pair.factor()));
        assertThat(pair.roundTrip().apply(0)).isZero();
        assertThatThrownBy(() -> pair.roundTrip().apply(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void negativeValuesAreRefusedWhereTheyMakeNoSense(Pair pair) {
        if (pair.refusesNegative()) {
            assertThatThrownBy(() -> pair.roundTrip().apply(-1)).isInstanceOf(OutOfRangeException.class);
        } else {
            assertThat(pair.roundTrip().apply(-1)).isNegative();
        }
    }

    @Test
    void usVolumes() {
        String source = "NIST SP 811 (2008), appendix B.8, printed to seven digits";
        us("us-fluid-ounce", source, 2.957353e-5, Measures.usFluidOunces(1));
        us("us-quart", source, 9.463529e-4, Quantities.getQuantity(1, ThermalUnits.US_QUART));
        us("us-gallon", source, 3.785412e-3, Quantities.getQuantity(1, ThermalUnits.US_GALLON));
    }

    private static void us(String id, String source, double cubicMetres, Quantity<Volume> q) {
        OutsideChecks.published(id, source)
                .what("one " + q.getUnit())
                .unit("m³")
                .expected(cubicMetres)
                .withinRelative(5e-7)
                .check(SiValues.volumeM3(q, "volume"));
    }

    @Test
    void aRefusalNamesParameterValueAndRange() {
        assertThatThrownBy(() -> SiValues.lengthM(Measures.metres(0.5), "wall thickness", 0.0001, 0.02))
                .isInstanceOfSatisfying(OutOfRangeException.class, e -> {
                    assertThat(e).hasMessage("wall thickness 0.5 m: expected 0.0001 m to 0.02 m");
                    assertThat(e.parameter()).isEqualTo("wall thickness");
                    assertThat(e.given()).isEqualTo(0.5);
                    assertThat(e.low()).isEqualTo(0.0001);
                    assertThat(e.high()).isEqualTo(0.02);
                    assertThat(e.unit()).isEqualTo("m");
                });
        assertThatThrownBy(() -> SiValues.massKg(Measures.kilograms(-1), "ice"))
                .hasMessage("ice -1 kg: expected at least 0 kg");
        assertThatThrownBy(() -> SiValues.lengthM(Measures.metres(0), "diameter", Double.MIN_VALUE, Double.MAX_VALUE))
                .hasMessage("diameter 0 m: expected more than 0 m");
        assertThatThrownBy(() -> SiValues.lengthM(Measures.metres(3), "depth", -Double.MAX_VALUE, 2))
                .hasMessage("depth 3 m: expected at most 2 m");
        assertThatThrownBy(() -> SiValues.fraction(Measures.percent(150), "relative humidity", 0, 1))
                .hasMessageContaining("relative humidity 150 %: expected 0 to 1");
    }

    @Test
    void rangesApplyToTemperaturesAndDifferences() {
        assertThat(SiValues.temperatureK(Measures.celsius(-20), "x", 253.15, 300))
                .isEqualTo(253.15);
        assertThatThrownBy(() -> SiValues.temperatureK(Measures.celsius(-20.001), "x", 253.15, 300))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SiValues.temperatureDifferenceK(Measures.kelvinDifference(-1), "x", 0, 5))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SiValues.strengthByVolume(Measures.percentByVolume(101), "x"))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void celsiusOutputRefusesNonsense() {
        assertThatThrownBy(() -> SiValues.celsiusOf(-1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SiValues.celsiusOf(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .isNotInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SiValues.celsiusOf(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(SiValues.celsiusOf(0).getValue().doubleValue()).isEqualTo(-273.15);
        assertThat(SiValues.celsiusOf(Double.MAX_VALUE).getValue().doubleValue())
                .isEqualTo(Double.MAX_VALUE);
    }

    /** Rounding is forgiven at ends of either sign, by a part in 10¹² and no more; messages write what is usual without an exponent. */
    @Test
    void rangesForgiveRoundingAndNoMore() {
        for (double end : new double[] {253.15, 1e-5, 4}) {
            assertThat(OutOfRangeException.admits(end - 0.9e-12 * end, end, 1e3))
                    .isTrue();
            assertThat(OutOfRangeException.admits(end - 1.1e-12 * end, end, 1e3))
                    .isFalse();
            assertThat(OutOfRangeException.admits(end + 0.9e-12 * end, -1e3, end))
                    .isTrue();
            assertThat(OutOfRangeException.admits(end + 1.1e-12 * end, -1e3, end))
                    .isFalse();
            assertThat(OutOfRangeException.admits(-end - 0.9e-12 * end, -end, 1e3))
                    .isTrue();
            assertThat(OutOfRangeException.admits(-end - 1.1e-12 * end, -end, 1e3))
                    .isFalse();
            assertThat(OutOfRangeException.admits(-end + 0.9e-12 * end, -1e3, -end))
                    .isTrue();
            assertThat(OutOfRangeException.admits(-end + 1.1e-12 * end, -1e3, -end))
                    .isFalse();
        }
        assertThat(OutOfRangeException.admits(1 - 1e-12, 1, 2)).isTrue();
        assertThat(OutOfRangeException.admits(1 + 1e-12, 0, 1)).isTrue();
        assertThat(OutOfRangeException.withUnit(1e9, "W")).isEqualTo("1000000000 W");
        assertThat(OutOfRangeException.withUnit(-1e9, "W")).isEqualTo("-1000000000 W");
        assertThat(OutOfRangeException.withUnit(Math.nextUp(1e9), "W")).contains("E9 W");
        assertThat(OutOfRangeException.withUnit(1e-7, "1")).isEqualTo("0.0000001");
        assertThat(OutOfRangeException.withUnit(9e-8, "1")).isEqualTo("9.0E-8");
    }

    @Test
    void unitsOfOthersAreReadThroughTheirConverters() {
        assertThat(SiValues.temperatureK(
                        Quantities.getQuantity(293_150, javax.measure.MetricPrefix.MILLI(Units.KELVIN)), "x"))
                .isCloseTo(293.15, within(1e-9));
    }

    @Test
    void roundingAtTheEndsOfARangeIsForgivenAndNothingElse() {
        assertThat(OutOfRangeException.admits(253.14999999999998, 253.15, 300)).isTrue();
        assertThat(OutOfRangeException.admits(253.1499999, 253.15, 300)).isFalse();
        assertThat(OutOfRangeException.admits(-1e-300, 0, 1)).isFalse();
        assertThat(OutOfRangeException.admits(Double.NaN, 0, 1)).isFalse();
        assertThat(OutOfRangeException.admits(Double.POSITIVE_INFINITY, 0, Double.MAX_VALUE))
                .isFalse();
    }
}
