/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Quantity.Scale;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** The traps of JSR-385 that can reach this library, one named test each. */
class UnitTrapsTest {
    private static final String P = "bath temperature";

    private static Quantity<Temperature> relative(double value, Unit<Temperature> unit) {
        return Quantities.getQuantity(value, unit, Scale.RELATIVE);
    }

    @SuppressWarnings("unchecked")
    private static <Q extends Quantity<Q>> Quantity<Q> smuggled(Quantity<?> q) {
        return (Quantity<Q>) q;
    }

    @Test
    void addingTwoCelsiusTemperaturesIsTheStandardsTrapAndDifferencesAvoidIt() {
        // JSR-385 adds on the kelvin scale: 1 °C + 1 °C = 274.15 K + 274.15 K = 275.15 °C.
        assertThat(SiValues.temperatureK(Measures.celsius(1).add(Measures.celsius(1)), P))
                .isCloseTo(548.3, within(1e-9));
        assertThat(SiValues.temperatureDifferenceK(
                        Measures.celsiusDifference(1).add(Measures.celsiusDifference(1)), "superheat"))
                .isEqualTo(2);
    }

    @Test
    void aDifferenceOfRelativeScaleIsTakenInAnyUnit() {
        assertThat(SiValues.temperatureDifferenceK(relative(5, Units.CELSIUS), P))
                .isEqualTo(5);
        assertThat(SiValues.temperatureDifferenceK(relative(9, ThermalUnits.FAHRENHEIT), P))
                .isCloseTo(5, within(1e-12));
        assertThat(SiValues.temperatureDifferenceK(relative(5, Units.KELVIN), P))
                .isEqualTo(5);
        assertThat(SiValues.temperatureDifferenceK(Measures.fahrenheitDifference(9), P))
                .isCloseTo(5, within(1e-12));
        assertThat(SiValues.temperatureDifferenceK(Measures.kelvinDifference(-3), P))
                .isEqualTo(-3);
    }

    @Test
    void aDifferenceOfAbsoluteScaleIsTakenOnlyInKelvins() {
        assertThat(SiValues.temperatureDifferenceK(Measures.kelvins(5), P)).isEqualTo(5);
        assertThatThrownBy(() -> SiValues.temperatureDifferenceK(Measures.celsius(5), "tolerance"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tolerance 5 °C")
                .hasMessageContaining("kelvinDifference");
        assertThatThrownBy(() -> SiValues.temperatureDifferenceK(Measures.fahrenheit(5), "tolerance"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Scale.RELATIVE");
    }

    @Test
    void aDifferenceIsNotTakenForATemperature() {
        assertThatThrownBy(() -> SiValues.temperatureK(relative(5, Units.CELSIUS), P))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("relative scale");
    }

    @Test
    void belowAbsoluteZeroIsRefused() {
        for (Quantity<Temperature> q :
                List.of(Measures.celsius(-300), Measures.fahrenheit(-500), Measures.kelvins(-1), Measures.kelvins(0))) {
            assertThatThrownBy(() -> SiValues.temperatureK(q, P))
                    .isInstanceOf(OutOfRangeException.class)
                    .hasMessageContaining("absolute zero");
        }
        assertThatThrownBy(() -> SiValues.temperatureK(Measures.celsius(-300), P))
                .isInstanceOfSatisfying(OutOfRangeException.class, e -> {
                    assertThat(e.parameter()).isEqualTo(P);
                    assertThat(e.given()).isCloseTo(-26.85, within(1e-9));
                    assertThat(e.unit()).isEqualTo("K");
                    assertThat(e.getMessage()).startsWith("bath temperature -300 °C: expected");
                });
    }

    @Test
    void aLengthDressedAsAHeatTransferCoefficientIsRefused() {
        Quantity<HeatTransferCoefficient> dressed =
                Quantities.getQuantity(5, Units.METRE.asType(HeatTransferCoefficient.class));
        assertThatThrownBy(() -> SiValues.heatTransferCoefficient(dressed, "coefficient"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("coefficient 5 m");
    }

    @Test
    void aLengthPassedThroughARawTypeAsATemperatureIsRefused() {
        assertThatThrownBy(() -> SiValues.temperatureK(smuggled(Measures.metres(0.5)), P))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("bath temperature 0.5 m: expected temperature");
        assertThatThrownBy(() -> SiValues.temperatureDifferenceK(Measures.metres(0.5), P))
                .isInstanceOf(IllegalArgumentException.class);
        Quantity<Length> temperatureAsLength = smuggled(Measures.celsius(1));
        assertThatThrownBy(() -> SiValues.lengthM(temperatureAsLength, "height"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void celsiusInsideACompoundUnitIsRefusedWithAdvice() {
        Unit<HeatTransferCoefficient> perCelsius =
                Units.WATT.divide(Units.SQUARE_METRE.multiply(Units.CELSIUS)).asType(HeatTransferCoefficient.class);
        assertThatThrownBy(() -> SiValues.heatTransferCoefficient(Quantities.getQuantity(5, perCelsius), "coefficient"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("write K instead of °C");
    }

    @Test
    void everyTenthOfADegreeSurvivesTheRoundTrip() {
        for (int tenths = -300; tenths <= 1000; tenths++) {
            double celsius = tenths / 10.0;
            double kelvins =
                    BigDecimal.valueOf(celsius).add(BigDecimal.valueOf(273.15)).doubleValue();
            assertThat(SiValues.celsiusOf(kelvins).getValue().doubleValue()).isEqualTo(celsius);
        }
    }

    @Test
    void twentyDegreesPrintAsTwenty() {
        assertThat(SiValues.celsiusOf(293.15).toString()).isEqualTo("20 ℃");
        assertThat(SiValues.celsiusOf(293.15).getUnit()).isEqualTo(Units.CELSIUS);
    }

    @Test
    void fahrenheitFixedPoints() {
        String source = "NIST SP 811 (2008), B.6: t/°C = (t/°F - 32)/1.8";
        double[][] pairs = {{32, 0}, {212, 100}, {50, 10}, {-40, -40}};
        for (double[] pair : pairs) {
            OutsideChecks.published("fahrenheit-" + (pair[0] < 0 ? "minus-40" : (int) pair[0] + ""), source)
                    .what("temperature of " + pair[0] + " °F")
                    .unit("K")
                    .expected(273.15 + pair[1])
                    .within(1e-9)
                    .check(SiValues.temperatureK(Measures.fahrenheit(pair[0]), P));
        }
        assertThat(Measures.fahrenheit(50).toString()).isEqualTo("50 °F");
    }

    @Test
    void notANumberIsRefusedEvenThroughTheIdentityConverter() {
        assertThatThrownBy(() -> Measures.kelvins(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Measures.celsius(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            for (Unit<Temperature> unit : List.of(Units.KELVIN, Units.CELSIUS, ThermalUnits.FAHRENHEIT)) {
                assertThatThrownBy(() -> SiValues.temperatureK(new BareQuantity<>(bad, unit), P))
                        .isInstanceOf(IllegalArgumentException.class)
                        .hasMessageContaining(P);
            }
            assertThatThrownBy(() -> SiValues.lengthM(new BareQuantity<>(bad, Units.METRE), "height"))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("height");
            assertThatThrownBy(() ->
                            SiValues.temperatureDifferenceK(new BareQuantity<>(bad, ThermalUnits.KELVIN_DIFFERENCE), P))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void aNumberTooLargeForSiIsRefused() {
        assertThatThrownBy(() -> SiValues.pressurePa(Measures.kilopascals(Double.MAX_VALUE), "pressure"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("pressure");
    }

    @Test
    void wholeDoublesBecomeIntegersAndAreStillRead() {
        assertThat(Measures.kelvins(293.0).getValue()).isInstanceOf(Integer.class);
        assertThat(SiValues.temperatureK(Measures.kelvins(293.0), P)).isEqualTo(293.0);
        assertThat(SiValues.lengthM(Measures.metres(-0.0), "height")).isZero();
    }

    @Test
    void floatsCarryTheirOwnRounding() {
        Quantity<Length> tenth = Quantities.getQuantity(0.1f, Units.METRE);
        assertThat(SiValues.lengthM(tenth, "height")).isCloseTo(0.1, within(2e-9));
    }

    @Test
    void everyNumberClassIsRead() {
        for (Number n : List.of(20, 20L, (short) 20, 20.0f, 20.0, new BigDecimal("20.0"))) {
            assertThat(SiValues.temperatureK(Quantities.getQuantity(n, Units.CELSIUS), P))
                    .isEqualTo(293.15);
        }
    }

    @Test
    void equalVolumesInDifferentUnitsGiveTheSameDouble() {
        assertThat(SiValues.volumeM3(Measures.millilitres(750), "volume"))
                .isEqualTo(SiValues.volumeM3(Measures.litres(0.75), "volume"))
                .isEqualTo(SiValues.volumeM3(Measures.centilitres(75), "volume"))
                .isEqualTo(0.00075);
    }

    @Test
    void nullIsRefusedByName() {
        Quantity<Temperature> missing = smuggled(Missing.quantity());
        assertThatThrownBy(() -> SiValues.temperatureK(missing, P))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("bath temperature: expected a quantity, got null");
    }
}
