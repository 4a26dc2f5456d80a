/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import java.math.BigDecimal;
import java.util.Objects;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * The one place where quantities become SI doubles, and temperatures become quantities again.
 *
 * <p>Every method refuses, naming the parameter and what was given: a missing quantity, a unit of another dimension
 * (JSR-385 does not check this for quantity types it does not know), a number that is not finite, a unit that cannot
 * be converted, and what is physically impossible (a temperature not above absolute zero, a negative mass). The
 * variants with two more arguments also refuse what lies outside a range, given in SI, ends included (a value beyond an
 * end by mere rounding becomes the end). A refusal of
 * the value is an {@link OutOfRangeException}, any other an {@link IllegalArgumentException}.
 *
 * <p>Kelvins and degrees Celsius take a short path (no conversion objects, no allocation).
 */
public final class SiValues {
    private static final double CELSIUS_ZERO_K = 273.15;
    private static final BigDecimal CELSIUS_ZERO = BigDecimal.valueOf(CELSIUS_ZERO_K);

    private SiValues() {}

    /**
     * A temperature in kelvins.
     *
     * @param q the temperature, in any unit of temperature, of absolute scale, above absolute zero
     * @param parameter name of the parameter, for messages
     * @return temperature in K, finite, greater than 0
     * @throws OutOfRangeException if the temperature is not above absolute zero
     * @throws IllegalArgumentException if the quantity is null, not a temperature, a difference (relative scale), not
     *     finite or not convertible
     */
    public static double temperatureK(Quantity<Temperature> q, String parameter) {
        return temperatureK(q, parameter, Double.MIN_VALUE, Double.MAX_VALUE);
    }

    /**
     * A temperature in kelvins, within a range.
     *
     * @param q the temperature, in any unit of temperature, of absolute scale
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in K, above 0
     * @param high highest allowed value in K
     * @return temperature in K, within the range
     * @throws OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the quantity is null, not a temperature, a difference (relative scale), not
     *     finite or not convertible
     */
    public static double temperatureK(Quantity<Temperature> q, String parameter, double low, double high) {
        double usual = usualTemperatureK(q);
        return usual > 0 && usual >= low && usual <= high && usual <= Double.MAX_VALUE
                ? usual
                : unusualTemperatureK(q, parameter, low, high);
    }

    /** A temperature in one of the two units that nearly all are in, told by identity; 0 of any other, or of a difference. */
    @SuppressWarnings("ReferenceEquality") // Other units that equal these are told apart later.
    private static double usualTemperatureK(@Nullable Quantity<Temperature> q) {
        if (q == null || q.getScale() != Quantity.Scale.ABSOLUTE) {
            return 0;
        }
        Unit<Temperature> unit = q.getUnit();
        if (unit == Units.CELSIUS) {
            return q.getValue().doubleValue() + CELSIUS_ZERO_K;
        }
        return unit == Units.KELVIN ? q.getValue().doubleValue() : 0;
    }

    private static double unusualTemperatureK(
            @Nullable Quantity<Temperature> q, String parameter, double low, double high) {
        Quantity<?> given = requirePresent(q, parameter);
        if (given.getScale() != Quantity.Scale.ABSOLUTE) {
            throw new IllegalArgumentException(parameter + " " + describe(given)
                    + ": expected a temperature, got a temperature difference (relative scale)");
        }
        double kelvins = temperatureValueK(given, parameter);
        if (!(kelvins > 0)) {
            throw OutOfRangeException.refusal(
                    parameter, describe(given), kelvins, low, high, "K", "absolute zero is -273.15 °C");
        }
        return requireRange(given, kelvins, parameter, low, high, "K");
    }

    private static double temperatureValueK(Quantity<?> q, String parameter) {
        Unit<?> unit = q.getUnit();
        if (Objects.equals(unit, Units.CELSIUS)) {
            return finite(q, parameter) + CELSIUS_ZERO_K;
        }
        return converted(q, Units.KELVIN, "temperature", parameter);
    }

    /**
     * A temperature difference in kelvins. Taken are a {@link TemperatureDifference}, a temperature of relative scale
     * in any unit, and a temperature of absolute scale in a unit whose zero is absolute zero (K, mK). A temperature of
     * absolute scale in °C or °F is refused, because 5 °C so given is 278.15 K.
     *
     * @param q the difference
     * @param parameter name of the parameter, for messages
     * @return difference in K, finite, of either sign
     * @throws IllegalArgumentException if the quantity is null, not a difference, of another dimension, not finite or
     *     not convertible
     */
    public static double temperatureDifferenceK(Quantity<?> q, String parameter) {
        return temperatureDifferenceK(q, parameter, -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    /**
     * A temperature difference in kelvins, within a range; accepts what {@link #temperatureDifferenceK(Quantity,
     * String)} accepts.
     *
     * @param q the difference
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in K
     * @param high highest allowed value in K
     * @return difference in K, within the range
     * @throws OutOfRangeException if the difference is outside the range
     * @throws IllegalArgumentException if the quantity is null, not a difference, of another dimension, not finite or
     *     not convertible
     */
    public static double temperatureDifferenceK(Quantity<?> q, String parameter, double low, double high) {
        Quantity<?> given = requirePresent(q, parameter);
        UnitConverter toKelvin = converter(given, Units.KELVIN, "temperature difference", parameter);
        double kelvins;
        if (toKelvin.isLinear()) {
            kelvins = convert(given, toKelvin, parameter);
        } else if (given.getScale() == Quantity.Scale.RELATIVE) {
            kelvins = finite(given, parameter) * slope(toKelvin);
        } else {
            throw new IllegalArgumentException(parameter + " " + describe(given)
                    + ": expected a temperature difference, got a temperature; pass Measures.kelvinDifference(...),"
                    + " or a quantity of Scale.RELATIVE");
        }
        return requireRange(given, kelvins, parameter, low, high, "K");
    }

    /** Kelvins per degree of a unit whose zero is not absolute zero. */
    private static double slope(UnitConverter toKelvin) {
        BigDecimal one = new BigDecimal(toKelvin.convert(BigDecimal.ONE).toString());
        BigDecimal zero = new BigDecimal(toKelvin.convert(BigDecimal.ZERO).toString());
        return one.subtract(zero).doubleValue();
    }

    /**
     * A temperature as a quantity in °C, for output. The subtraction is decimal, so that 293.15 K reads 20 °C.
     *
     * @param temperatureK temperature in K, finite, at least 0
     * @return the temperature in °C
     * @throws OutOfRangeException if the temperature is negative
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static Quantity<Temperature> celsiusOf(double temperatureK) {
        if (!(temperatureK >= 0 && temperatureK <= Double.MAX_VALUE)) {
            throw OutOfRangeException.refusal("temperature", temperatureK, 0, Double.MAX_VALUE, "K", "");
        }
        BigDecimal celsius =
                BigDecimal.valueOf(temperatureK).subtract(CELSIUS_ZERO).stripTrailingZeros();
        return Quantities.getQuantity(celsius.setScale(Math.max(0, celsius.scale())), Units.CELSIUS);
    }

    /**
     * An alcoholic strength by volume as a fraction.
     *
     * @param q the strength, 0 % vol to 100 % vol
     * @param parameter name of the parameter, for messages
     * @return strength by volume at 20 °C as a fraction, 0 to 1
     * @throws OutOfRangeException if the strength is outside 0 to 1
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double strengthByVolume(Quantity<AlcoholicStrength> q, String parameter) {
        return strengthByVolume(q, parameter, 0, 1);
    }

    /**
     * An alcoholic strength by volume as a fraction, within a range.
     *
     * @param q the strength
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value as a fraction
     * @param high highest allowed value as a fraction
     * @return strength by volume at 20 °C as a fraction, within the range
     * @throws OutOfRangeException if the strength is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double strengthByVolume(Quantity<AlcoholicStrength> q, String parameter, double low, double high) {
        return si(q, AbstractUnit.ONE, "alcoholic strength", parameter, low, high, "1");
    }

    /**
     * A length in m.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in m, finite, of either sign
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double lengthM(Quantity<Length> q, String parameter) {
        return lengthM(q, parameter, -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    /**
     * A length in m, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in m
     * @param high highest allowed value in m
     * @return the value in m, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double lengthM(Quantity<Length> q, String parameter, double low, double high) {
        return si(q, Units.METRE, "length", parameter, low, high, "m");
    }

    /**
     * An area in m².
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in m², finite, at least 0
     * @throws OutOfRangeException if the value is negative
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double areaM2(Quantity<Area> q, String parameter) {
        return areaM2(q, parameter, 0, Double.MAX_VALUE);
    }

    /**
     * An area in m², within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in m²
     * @param high highest allowed value in m²
     * @return the value in m², within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double areaM2(Quantity<Area> q, String parameter, double low, double high) {
        return si(q, Units.SQUARE_METRE, "area", parameter, low, high, "m²");
    }

    /**
     * A volume in m³.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in m³, finite, at least 0
     * @throws OutOfRangeException if the value is negative
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double volumeM3(Quantity<Volume> q, String parameter) {
        return volumeM3(q, parameter, 0, Double.MAX_VALUE);
    }

    /**
     * A volume in m³, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in m³
     * @param high highest allowed value in m³
     * @return the value in m³, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double volumeM3(Quantity<Volume> q, String parameter, double low, double high) {
        return si(q, Units.CUBIC_METRE, "volume", parameter, low, high, "m³");
    }

    /**
     * A mass in kg.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in kg, finite, at least 0
     * @throws OutOfRangeException if the value is negative
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double massKg(Quantity<Mass> q, String parameter) {
        return massKg(q, parameter, 0, Double.MAX_VALUE);
    }

    /**
     * A mass in kg, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in kg
     * @param high highest allowed value in kg
     * @return the value in kg, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double massKg(Quantity<Mass> q, String parameter, double low, double high) {
        return si(q, Units.KILOGRAM, "mass", parameter, low, high, "kg");
    }

    /**
     * A speed in m/s.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in m/s, finite, of either sign
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double speedMPerS(Quantity<Speed> q, String parameter) {
        return speedMPerS(q, parameter, -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    /**
     * A speed in m/s, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in m/s
     * @param high highest allowed value in m/s
     * @return the value in m/s, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double speedMPerS(Quantity<Speed> q, String parameter, double low, double high) {
        return si(q, Units.METRE_PER_SECOND, "speed", parameter, low, high, "m/s");
    }

    /**
     * An absolute pressure in Pa.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in Pa, finite, at least 0
     * @throws OutOfRangeException if the value is negative
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double pressurePa(Quantity<Pressure> q, String parameter) {
        return pressurePa(q, parameter, 0, Double.MAX_VALUE);
    }

    /**
     * An absolute pressure in Pa, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in Pa
     * @param high highest allowed value in Pa
     * @return the value in Pa, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double pressurePa(Quantity<Pressure> q, String parameter, double low, double high) {
        return si(q, Units.PASCAL, "absolute pressure", parameter, low, high, "Pa");
    }

    /**
     * An energy in J.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in J, finite, of either sign
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double energyJ(Quantity<Energy> q, String parameter) {
        return energyJ(q, parameter, -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    /**
     * An energy in J, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in J
     * @param high highest allowed value in J
     * @return the value in J, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double energyJ(Quantity<Energy> q, String parameter, double low, double high) {
        return si(q, Units.JOULE, "energy", parameter, low, high, "J");
    }

    /**
     * A power in W.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in W, finite, of either sign
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double powerW(Quantity<Power> q, String parameter) {
        return powerW(q, parameter, -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    /**
     * A power in W, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in W
     * @param high highest allowed value in W
     * @return the value in W, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double powerW(Quantity<Power> q, String parameter, double low, double high) {
        return si(q, Units.WATT, "power", parameter, low, high, "W");
    }

    /**
     * A number as a fraction.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value as a fraction, finite, of either sign
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double fraction(Quantity<Dimensionless> q, String parameter) {
        return fraction(q, parameter, -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    /**
     * A number as a fraction, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value as a fraction
     * @param high highest allowed value as a fraction
     * @return the value as a fraction, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double fraction(Quantity<Dimensionless> q, String parameter, double low, double high) {
        return si(q, AbstractUnit.ONE, "number", parameter, low, high, "1");
    }

    /**
     * A mass concentration in kg/m³.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in kg/m³, finite, at least 0
     * @throws OutOfRangeException if the value is negative
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double concentrationKgPerM3(Quantity<MassConcentration> q, String parameter) {
        return concentrationKgPerM3(q, parameter, 0, Double.MAX_VALUE);
    }

    /**
     * A mass concentration in kg/m³, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in kg/m³
     * @param high highest allowed value in kg/m³
     * @return the value in kg/m³, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double concentrationKgPerM3(
            Quantity<MassConcentration> q, String parameter, double low, double high) {
        return si(
                q,
                ThermalUnits.KILOGRAM_PER_CUBIC_METRE_OF_SOLUTION,
                "mass concentration",
                parameter,
                low,
                high,
                "kg/m³");
    }

    /**
     * A density in kg/m³.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in kg/m³, finite, at least 0
     * @throws OutOfRangeException if the value is negative
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double densityKgPerM3(Quantity<Density> q, String parameter) {
        return densityKgPerM3(q, parameter, 0, Double.MAX_VALUE);
    }

    /**
     * A density in kg/m³, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in kg/m³
     * @param high highest allowed value in kg/m³
     * @return the value in kg/m³, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double densityKgPerM3(Quantity<Density> q, String parameter, double low, double high) {
        return si(q, ThermalUnits.KILOGRAM_PER_CUBIC_METRE, "density", parameter, low, high, "kg/m³");
    }

    /**
     * A thermal conductance in W/K.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in W/K, finite, at least 0
     * @throws OutOfRangeException if the value is negative
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double conductanceWPerK(Quantity<ThermalConductance> q, String parameter) {
        return conductanceWPerK(q, parameter, 0, Double.MAX_VALUE);
    }

    /**
     * A thermal conductance in W/K, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in W/K
     * @param high highest allowed value in W/K
     * @return the value in W/K, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double conductanceWPerK(Quantity<ThermalConductance> q, String parameter, double low, double high) {
        return si(q, ThermalUnits.WATT_PER_KELVIN, "thermal conductance", parameter, low, high, "W/K");
    }

    /**
     * A volumetric flow rate in m³/s, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in m³/s
     * @param high highest allowed value in m³/s
     * @return the value in m³/s, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double volumetricFlowM3PerS(
            Quantity<VolumetricFlowRate> q, String parameter, double low, double high) {
        return si(q, ThermalUnits.CUBIC_METRE_PER_SECOND, "volumetric flow rate", parameter, low, high, "m³/s");
    }

    /**
     * A heat transfer coefficient in W/(m² K).
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in W/(m² K), finite, at least 0
     * @throws OutOfRangeException if the value is negative
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double heatTransferCoefficient(Quantity<HeatTransferCoefficient> q, String parameter) {
        return heatTransferCoefficient(q, parameter, 0, Double.MAX_VALUE);
    }

    /**
     * A heat transfer coefficient in W/(m² K), within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in W/(m² K)
     * @param high highest allowed value in W/(m² K)
     * @return the value in W/(m² K), within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double heatTransferCoefficient(
            Quantity<HeatTransferCoefficient> q, String parameter, double low, double high) {
        return si(
                q,
                ThermalUnits.WATT_PER_SQUARE_METRE_KELVIN,
                "heat transfer coefficient",
                parameter,
                low,
                high,
                "W/(m² K)");
    }

    /**
     * An irradiance in W/m², within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in W/m²
     * @param high highest allowed value in W/m²
     * @return the value in W/m², within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double irradianceWPerM2(Quantity<Irradiance> q, String parameter, double low, double high) {
        return si(q, ThermalUnits.WATT_PER_SQUARE_METRE, "irradiance", parameter, low, high, "W/m²");
    }

    /**
     * An angle in degrees of arc, in which people give and read it, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in degrees
     * @param high highest allowed value in degrees
     * @return the value in degrees, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double angleDegrees(Quantity<Angle> q, String parameter, double low, double high) {
        return si(q, ThermalUnits.DEGREE, "angle", parameter, low, high, "°");
    }

    /**
     * A thermal conductivity in W/(m K).
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in W/(m K), finite, at least 0
     * @throws OutOfRangeException if the value is negative
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double thermalConductivity(Quantity<ThermalConductivity> q, String parameter) {
        return thermalConductivity(q, parameter, 0, Double.MAX_VALUE);
    }

    /**
     * A thermal conductivity in W/(m K), within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in W/(m K)
     * @param high highest allowed value in W/(m K)
     * @return the value in W/(m K), within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double thermalConductivity(
            Quantity<ThermalConductivity> q, String parameter, double low, double high) {
        return si(q, ThermalUnits.WATT_PER_METRE_KELVIN, "thermal conductivity", parameter, low, high, "W/(m K)");
    }

    /**
     * A specific heat capacity in J/(kg K).
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in J/(kg K), finite, at least 0
     * @throws OutOfRangeException if the value is negative
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double specificHeatCapacity(Quantity<SpecificHeatCapacity> q, String parameter) {
        return specificHeatCapacity(q, parameter, 0, Double.MAX_VALUE);
    }

    /**
     * A specific heat capacity in J/(kg K), within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in J/(kg K)
     * @param high highest allowed value in J/(kg K)
     * @return the value in J/(kg K), within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double specificHeatCapacity(
            Quantity<SpecificHeatCapacity> q, String parameter, double low, double high) {
        return si(
                q, ThermalUnits.JOULE_PER_KILOGRAM_KELVIN, "specific heat capacity", parameter, low, high, "J/(kg K)");
    }

    /**
     * A heat capacity in J/K.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in J/K, finite, at least 0
     * @throws OutOfRangeException if the value is negative
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double heatCapacityJPerK(Quantity<HeatCapacity> q, String parameter) {
        return heatCapacityJPerK(q, parameter, 0, Double.MAX_VALUE);
    }

    /**
     * A heat capacity in J/K, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in J/K
     * @param high highest allowed value in J/K
     * @return the value in J/K, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double heatCapacityJPerK(Quantity<HeatCapacity> q, String parameter, double low, double high) {
        return si(q, ThermalUnits.JOULE_PER_KELVIN, "heat capacity", parameter, low, high, "J/K");
    }

    /**
     * A specific enthalpy in J/kg.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in J/kg, finite, of either sign
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double specificEnthalpyJPerKg(Quantity<SpecificEnthalpy> q, String parameter) {
        return specificEnthalpyJPerKg(q, parameter, -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    /**
     * A specific enthalpy in J/kg, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in J/kg
     * @param high highest allowed value in J/kg
     * @return the value in J/kg, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double specificEnthalpyJPerKg(
            Quantity<SpecificEnthalpy> q, String parameter, double low, double high) {
        return si(q, ThermalUnits.JOULE_PER_KILOGRAM, "specific enthalpy", parameter, low, high, "J/kg");
    }

    /**
     * A dynamic viscosity in Pa s.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @return the value in Pa s, finite, at least 0
     * @throws OutOfRangeException if the value is negative
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double dynamicViscosityPaS(Quantity<DynamicViscosity> q, String parameter) {
        return dynamicViscosityPaS(q, parameter, 0, Double.MAX_VALUE);
    }

    /**
     * A dynamic viscosity in Pa s, within a range.
     *
     * @param q the quantity
     * @param parameter name of the parameter, for messages
     * @param low lowest allowed value in Pa s
     * @param high highest allowed value in Pa s
     * @return the value in Pa s, within the range
     * @throws OutOfRangeException if the value is outside the range
     * @throws IllegalArgumentException if the quantity is null, of another dimension, not finite or not convertible
     */
    public static double dynamicViscosityPaS(Quantity<DynamicViscosity> q, String parameter, double low, double high) {
        return si(q, ThermalUnits.PASCAL_SECOND, "dynamic viscosity", parameter, low, high, "Pa s");
    }

    private static double si(
            @Nullable Quantity<?> q,
            Unit<?> siUnit,
            String kind,
            String parameter,
            double low,
            double high,
            String siSymbol) {
        Quantity<?> given = requirePresent(q, parameter);
        return requireRange(given, converted(given, siUnit, kind, parameter), parameter, low, high, siSymbol);
    }

    private static Quantity<?> requirePresent(@Nullable Quantity<?> q, String parameter) {
        if (q == null) {
            throw new IllegalArgumentException(parameter + ": expected a quantity, got null");
        }
        return q;
    }

    private static double requireRange(
            Quantity<?> q, double value, String parameter, double low, double high, String siSymbol) {
        if (value >= low && value <= high) {
            return value;
        }
        if (!OutOfRangeException.admits(value, low, high)) {
            throw OutOfRangeException.refusal(parameter, describe(q), value, low, high, siSymbol, "");
        }
        return Math.min(high, Math.max(low, value));
    }

    private static double converted(Quantity<?> q, Unit<?> siUnit, String kind, String parameter) {
        if (Objects.equals(q.getUnit(), siUnit)) {
            return finite(q, parameter);
        }
        return convert(q, converter(q, siUnit, kind, parameter), parameter);
    }

    private static double convert(Quantity<?> q, UnitConverter toSi, String parameter) {
        finite(q, parameter);
        double value = toSi.convert(q.getValue()).doubleValue();
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(parameter + " " + describe(q) + ": too large to be expressed in SI");
        }
        return value;
    }

    private static UnitConverter converter(Quantity<?> q, Unit<?> siUnit, String kind, String parameter) {
        Unit<?> unit = q.getUnit();
        if (!unit.getDimension().equals(siUnit.getDimension())) {
            throw new IllegalArgumentException(wrongUnit(q, siUnit, kind, parameter));
        }
        try {
            return unit.getConverterToAny(siUnit);
        } catch (IncommensurableException | UnconvertibleException | UnsupportedOperationException e) {
            // W/(m²·°C) ends here: a unit with a shifted zero has no meaning inside a product.
            throw new IllegalArgumentException(
                    wrongUnit(q, siUnit, kind, parameter) + "; write K instead of °C inside a compound unit", e);
        }
    }

    private static String wrongUnit(Quantity<?> q, Unit<?> siUnit, String kind, String parameter) {
        return parameter + " " + describe(q) + ": expected " + kind + " in a unit convertible to " + symbol(siUnit);
    }

    private static double finite(Quantity<?> q, String parameter) {
        double value = q.getValue().doubleValue();
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(parameter + " " + describe(q) + ": expected a finite number");
        }
        return value;
    }

    private static String describe(Quantity<?> q) {
        return OutOfRangeException.withUnit(q.getValue().doubleValue(), symbol(q.getUnit()));
    }

    /** The unit as text; °C in the two characters everybody reads, not in the single sign U+2103. */
    static String symbol(Unit<?> unit) {
        if (unit.equals(Units.CELSIUS)) {
            return "°C";
        }
        return unit.equals(AbstractUnit.ONE) ? "1" : unit.toString();
    }
}
