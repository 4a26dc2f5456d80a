/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MILLI;

import javax.measure.Quantity;
import javax.measure.Unit;
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
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * Factories of the quantities that users hand in: {@code celsius(6)}, {@code litres(0.75)},
 * {@code percentByVolume(12.5)}. Every factory takes any finite number; whether the value makes sense is checked by
 * the method it is handed to, which knows what it is for.
 *
 * <p>Do not add or subtract temperatures made by {@link #celsius} or {@link #fahrenheit}: JSR-385 defines
 * 1 °C + 1 °C as 275.15 °C. Use a difference ({@link #kelvinDifference} and its kin) where a difference is meant.
 */
public final class Measures {
    private static final Unit<Length> MILLIMETRE = MILLI(Units.METRE);
    private static final Unit<Length> CENTIMETRE = CENTI(Units.METRE);
    private static final Unit<Pressure> KILOPASCAL = KILO(Units.PASCAL);

    private Measures() {}

    private static <Q extends Quantity<Q>> Quantity<Q> of(double value, Unit<Q> unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "quantity in " + SiValues.symbol(unit) + ": expected a finite number, got " + value);
        }
        return Quantities.getQuantity(value, unit);
    }

    /**
     * A temperature on the Celsius scale.
     *
     * @param value temperature in °C, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Temperature> celsius(double value) {
        return of(value, Units.CELSIUS);
    }

    /**
     * A temperature on the Fahrenheit scale.
     *
     * @param value temperature in °F, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Temperature> fahrenheit(double value) {
        return of(value, ThermalUnits.FAHRENHEIT);
    }

    /**
     * A thermodynamic temperature.
     *
     * @param value temperature in K, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Temperature> kelvins(double value) {
        return of(value, Units.KELVIN);
    }

    /**
     * A temperature difference in kelvins.
     *
     * @param value difference in K, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<TemperatureDifference> kelvinDifference(double value) {
        return of(value, ThermalUnits.KELVIN_DIFFERENCE);
    }

    /**
     * A temperature difference in degrees Celsius; 1 °C of difference is 1 K.
     *
     * @param value difference in °C, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<TemperatureDifference> celsiusDifference(double value) {
        return of(value, ThermalUnits.KELVIN_DIFFERENCE);
    }

    /**
     * A temperature difference in degrees Fahrenheit; 9 °F of difference are 5 K.
     *
     * @param value difference in °F, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<TemperatureDifference> fahrenheitDifference(double value) {
        return of(value, ThermalUnits.FAHRENHEIT_DIFFERENCE);
    }

    /**
     * A volume in litres.
     *
     * @param value volume in L, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Volume> litres(double value) {
        return of(value, Units.LITRE);
    }

    /**
     * A volume in millilitres.
     *
     * @param value volume in mL, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Volume> millilitres(double value) {
        return of(value, ThermalUnits.MILLILITRE);
    }

    /**
     * A volume in centilitres.
     *
     * @param value volume in cL, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Volume> centilitres(double value) {
        return of(value, ThermalUnits.CENTILITRE);
    }

    /**
     * A volume in US fluid ounces.
     *
     * @param value volume in US fl oz, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Volume> usFluidOunces(double value) {
        return of(value, ThermalUnits.US_FLUID_OUNCE);
    }

    /**
     * A volume in cubic metres.
     *
     * @param value volume in m³, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Volume> cubicMetres(double value) {
        return of(value, Units.CUBIC_METRE);
    }

    /**
     * A mass in kilograms.
     *
     * @param value mass in kg, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Mass> kilograms(double value) {
        return of(value, Units.KILOGRAM);
    }

    /**
     * A mass in grams.
     *
     * @param value mass in g, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Mass> grams(double value) {
        return of(value, Units.GRAM);
    }

    /**
     * A length in metres.
     *
     * @param value length in m, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Length> metres(double value) {
        return of(value, Units.METRE);
    }

    /**
     * A length in millimetres.
     *
     * @param value length in mm, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Length> millimetres(double value) {
        return of(value, MILLIMETRE);
    }

    /**
     * A length in centimetres.
     *
     * @param value length in cm, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Length> centimetres(double value) {
        return of(value, CENTIMETRE);
    }

    /**
     * An area in square metres.
     *
     * @param value area in m², finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Area> squareMetres(double value) {
        return of(value, Units.SQUARE_METRE);
    }

    /**
     * A speed in metres per second.
     *
     * @param value speed in m/s, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Speed> metresPerSecond(double value) {
        return of(value, Units.METRE_PER_SECOND);
    }

    /**
     * An absolute pressure in pascals.
     *
     * @param value pressure in Pa, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Pressure> pascals(double value) {
        return of(value, Units.PASCAL);
    }

    /**
     * An absolute pressure in kilopascals.
     *
     * @param value pressure in kPa, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Pressure> kilopascals(double value) {
        return of(value, KILOPASCAL);
    }

    /**
     * An energy in joules.
     *
     * @param value energy in J, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Energy> joules(double value) {
        return of(value, Units.JOULE);
    }

    /**
     * A power in watts.
     *
     * @param value power in W, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Power> watts(double value) {
        return of(value, Units.WATT);
    }

    /**
     * An alcoholic strength in per cent by volume at 20 °C.
     *
     * @param value strength in % vol, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<AlcoholicStrength> percentByVolume(double value) {
        return of(value, ThermalUnits.PERCENT_BY_VOLUME);
    }

    /**
     * A concentration in grams of solute per litre of solution.
     *
     * @param value concentration in g/L, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<MassConcentration> gramsPerLitre(double value) {
        return of(value, ThermalUnits.GRAM_PER_LITRE);
    }

    /**
     * A density in kilograms per cubic metre.
     *
     * @param value density in kg/m³, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Density> kilogramsPerCubicMetre(double value) {
        return of(value, ThermalUnits.KILOGRAM_PER_CUBIC_METRE);
    }

    /**
     * A thermal conductivity.
     *
     * @param value conductivity in W/(m K), finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<ThermalConductivity> wattsPerMetreKelvin(double value) {
        return of(value, ThermalUnits.WATT_PER_METRE_KELVIN);
    }

    /**
     * A heat transfer coefficient.
     *
     * @param value coefficient in W/(m² K), finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<HeatTransferCoefficient> wattsPerSquareMetreKelvin(double value) {
        return of(value, ThermalUnits.WATT_PER_SQUARE_METRE_KELVIN);
    }

    /**
     * An irradiance.
     *
     * @param value irradiance in W/m², finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Irradiance> wattsPerSquareMetre(double value) {
        return of(value, ThermalUnits.WATT_PER_SQUARE_METRE);
    }

    /**
     * An angle.
     *
     * @param value angle in degrees of arc, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Angle> degrees(double value) {
        return of(value, ThermalUnits.DEGREE);
    }

    /**
     * A thermal conductance.
     *
     * @param value conductance in W/K, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<ThermalConductance> wattsPerKelvin(double value) {
        return of(value, ThermalUnits.WATT_PER_KELVIN);
    }

    /**
     * What a tap gives: volume per time.
     *
     * @param value flow in L/min, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<VolumetricFlowRate> litresPerMinute(double value) {
        return of(value, ThermalUnits.LITRE_PER_MINUTE);
    }

    /**
     * A heat capacity.
     *
     * @param value heat capacity in J/K, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<HeatCapacity> joulesPerKelvin(double value) {
        return of(value, ThermalUnits.JOULE_PER_KELVIN);
    }

    /**
     * A specific heat capacity.
     *
     * @param value specific heat capacity in J/(kg K), finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<SpecificHeatCapacity> joulesPerKilogramKelvin(double value) {
        return of(value, ThermalUnits.JOULE_PER_KILOGRAM_KELVIN);
    }

    /**
     * A specific enthalpy or latent heat.
     *
     * @param value specific enthalpy in J/kg, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<SpecificEnthalpy> joulesPerKilogram(double value) {
        return of(value, ThermalUnits.JOULE_PER_KILOGRAM);
    }

    /**
     * A dynamic viscosity.
     *
     * @param value viscosity in Pa s, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<DynamicViscosity> pascalSeconds(double value) {
        return of(value, ThermalUnits.PASCAL_SECOND);
    }

    /**
     * A number in per cent, for example relative humidity.
     *
     * @param value number in %, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Dimensionless> percent(double value) {
        return of(value, ThermalUnits.PERCENT);
    }

    /**
     * A plain number.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static Quantity<Dimensionless> fraction(double value) {
        return of(value, AbstractUnit.ONE);
    }
}
