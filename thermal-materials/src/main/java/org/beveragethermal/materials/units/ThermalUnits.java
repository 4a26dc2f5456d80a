/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.MILLI;

import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

/**
 * Units of heat transfer and of drinks that JSR-385 lacks, each with its quantity type.
 *
 * <p>Conversion factors are those of NIST Special Publication 811 (2008), appendix B: °F by t/°C = (t/°F − 32)/1.8;
 * US gallon 231 in³ with 1 in = 25.4 mm exactly, a quart being a quarter and a fluid ounce 1/128 of it.
 */
public final class ThermalUnits {
    private static final long US_GALLON_PICO_CUBIC_METRES = 3_785_411_784_000_000L;
    private static final long PICO_CUBIC_METRES = 1_000_000_000_000_000_000L;

    /** W/(m K). */
    public static final Unit<ThermalConductivity> WATT_PER_METRE_KELVIN =
            Units.WATT.divide(Units.METRE.multiply(Units.KELVIN)).asType(ThermalConductivity.class);

    /** W/(m² K). */
    public static final Unit<HeatTransferCoefficient> WATT_PER_SQUARE_METRE_KELVIN =
            Units.WATT.divide(Units.SQUARE_METRE.multiply(Units.KELVIN)).asType(HeatTransferCoefficient.class);

    /** W/m². */
    public static final Unit<Irradiance> WATT_PER_SQUARE_METRE =
            Units.WATT.divide(Units.SQUARE_METRE).asType(Irradiance.class);

    /** Degree of arc, π/180 rad. */
    public static final Unit<Angle> DEGREE =
            new TransformedUnit<>("°", Units.RADIAN, Units.RADIAN, MultiplyConverter.of(Math.PI / 180));

    /** J/(kg K). */
    public static final Unit<SpecificHeatCapacity> JOULE_PER_KILOGRAM_KELVIN =
            Units.JOULE.divide(Units.KILOGRAM.multiply(Units.KELVIN)).asType(SpecificHeatCapacity.class);

    /** kg/m³ as a density. */
    public static final Unit<Density> KILOGRAM_PER_CUBIC_METRE =
            Units.KILOGRAM.divide(Units.CUBIC_METRE).asType(Density.class);

    /** Pa s. */
    public static final Unit<DynamicViscosity> PASCAL_SECOND =
            Units.PASCAL.multiply(Units.SECOND).asType(DynamicViscosity.class);

    /** W/K. */
    public static final Unit<ThermalConductance> WATT_PER_KELVIN =
            Units.WATT.divide(Units.KELVIN).asType(ThermalConductance.class);

    /** J/K. */
    public static final Unit<HeatCapacity> JOULE_PER_KELVIN =
            Units.JOULE.divide(Units.KELVIN).asType(HeatCapacity.class);

    /** m³/s. */
    public static final Unit<VolumetricFlowRate> CUBIC_METRE_PER_SECOND =
            Units.CUBIC_METRE.divide(Units.SECOND).asType(VolumetricFlowRate.class);

    /** L/min. */
    public static final Unit<VolumetricFlowRate> LITRE_PER_MINUTE =
            Units.LITRE.divide(Units.MINUTE).asType(VolumetricFlowRate.class);

    /** J/kg. */
    public static final Unit<SpecificEnthalpy> JOULE_PER_KILOGRAM =
            Units.JOULE.divide(Units.KILOGRAM).asType(SpecificEnthalpy.class);

    /** kg/m³ as a concentration of a solute. */
    public static final Unit<MassConcentration> KILOGRAM_PER_CUBIC_METRE_OF_SOLUTION =
            Units.KILOGRAM.divide(Units.CUBIC_METRE).asType(MassConcentration.class);

    /** g/L as a concentration of a solute; equal to 1 kg/m³. */
    public static final Unit<MassConcentration> GRAM_PER_LITRE =
            Units.GRAM.divide(Units.LITRE).asType(MassConcentration.class);

    /** K as a difference of two temperatures; a difference of 1 °C is 1 K. */
    public static final Unit<TemperatureDifference> KELVIN_DIFFERENCE =
            Units.KELVIN.asType(TemperatureDifference.class);

    /** °F as a difference of two temperatures; 5/9 K. */
    public static final Unit<TemperatureDifference> FAHRENHEIT_DIFFERENCE = new TransformedUnit<>(
            "Δ°F", "Fahrenheit difference", KELVIN_DIFFERENCE, MultiplyConverter.ofRational(5, 9));

    /** Degree Fahrenheit as a temperature. */
    public static final Unit<Temperature> FAHRENHEIT = new TransformedUnit<>(
            "°F",
            "Fahrenheit",
            Units.KELVIN,
            Units.KELVIN.multiply(5).divide(9).shift(459.67).getConverterTo(Units.KELVIN));

    /** mL. */
    public static final Unit<Volume> MILLILITRE = MILLI(Units.LITRE);

    /** cL. */
    public static final Unit<Volume> CENTILITRE = CENTI(Units.LITRE);

    /** US liquid gallon, 231 in³ = 3.785 411 784 L. */
    public static final Unit<Volume> US_GALLON = new TransformedUnit<>(
            "gal (US)",
            "US liquid gallon",
            Units.CUBIC_METRE,
            MultiplyConverter.ofRational(US_GALLON_PICO_CUBIC_METRES, PICO_CUBIC_METRES));

    /** US liquid quart, a quarter of a gallon. */
    public static final Unit<Volume> US_QUART = new TransformedUnit<>(
            "qt (US)",
            "US liquid quart",
            Units.CUBIC_METRE,
            MultiplyConverter.ofRational(US_GALLON_PICO_CUBIC_METRES / 4, PICO_CUBIC_METRES));

    /** US fluid ounce, 1/128 of a gallon = 29.573 529 562 5 mL. */
    public static final Unit<Volume> US_FLUID_OUNCE = new TransformedUnit<>(
            "fl oz (US)",
            "US fluid ounce",
            Units.CUBIC_METRE,
            MultiplyConverter.ofRational(US_GALLON_PICO_CUBIC_METRES / 128, PICO_CUBIC_METRES));

    /** Per cent by volume, the usual unit of alcoholic strength. */
    public static final Unit<AlcoholicStrength> PERCENT_BY_VOLUME = new TransformedUnit<>(
            "% vol",
            "per cent by volume",
            AbstractUnit.ONE.asType(AlcoholicStrength.class),
            MultiplyConverter.ofRational(1, 100));

    /** Per cent, of anything without a dimension. */
    public static final Unit<Dimensionless> PERCENT = Units.PERCENT;

    private ThermalUnits() {}
}
