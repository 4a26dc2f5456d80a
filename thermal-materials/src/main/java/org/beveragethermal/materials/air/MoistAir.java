/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.air;

import java.util.List;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * Air with water vapour: what decides whether a cold bottle sweats and how far a wet cloth cools it.
 *
 * <p>Saturation pressure by R. W. Hyland and A. Wexler (ASHRAE Transactions 89 (1983) 500-519, as in the ASHRAE Handbook of
 * Fundamentals, psychrometrics), over ice below 0.01 °C and over liquid water above. Air and vapour are ideal gases without the
 * enhancement factor, which leaves the saturated humidity ratio up to 0.6 % below the handbook's table. The wet bulb is the
 * thermodynamic one (adiabatic saturation) by the handbook's balance of enthalpy. Humidity ratios are kilograms of vapour per
 * kilogram of dry air; enthalpies count from dry air and liquid water at 0 °C.
 *
 * <p>The methods that invert (dew point, wet bulb) search by bisection to neighbouring doubles and allocate nothing.
 */
public final class MoistAir {
    private static final double CELSIUS_ZERO_K = 273.15;
    /** Below it water vapour settles as frost. */
    private static final double TRIPLE_POINT_K = 273.16;

    // ln(p/Pa) = C1/T + C2 + C3 T + C4 T² + C5 T³ + C6 T⁴ + C7 ln T. Over ice 173.15 to 273.16 K, over water to 473.15
    // K;
    // the handbook's table is reproduced to 0.02 %.
    private static final double[] OVER_ICE = {
        -5.6745359e3, 6.3925247, -9.677843e-3, 6.2215701e-7, 2.0747825e-9, -9.484024e-13, 4.1635019
    };
    private static final double[] OVER_WATER = {
        -5.8002206e3, 1.3914993, -4.8640239e-2, 4.1764768e-5, -1.4452093e-8, 0, 6.5459673
    };

    /** Molar mass of water over that of dry air. */
    private static final double MOLAR_MASS_RATIO = 0.621945;
    /** Specific heat capacity of dry air in the enthalpy, J/(kg K). */
    private static final double AIR_HEAT = 1006;
    /** Specific heat capacity of vapour in the enthalpy, J/(kg K). */
    private static final double VAPOUR_HEAT = 1860;
    /** Enthalpy of vapour at 0 °C over liquid water at 0 °C, J/kg. */
    private static final double EVAPORATION = 2.501e6;
    /** Fall of the heat of evaporation with temperature, J/(kg K): 4186 of water less 1860 of vapour. */
    private static final double EVAPORATION_FALL = 2326;

    private static final double WATER_HEAT = 4186;
    /** Enthalpy of vapour at 0 °C over ice at 0 °C, J/kg. */
    private static final double SUBLIMATION = 2.830e6;

    private static final double SUBLIMATION_FALL = 240;
    private static final double ICE_HEAT = 2100;

    private static final Source HYLAND_WEXLER = Source.published(
            "Hyland-Wexler 1983",
            "R. W. Hyland, A. Wexler, ASHRAE Transactions 89 (1983) 500-519, as in ASHRAE Handbook of Fundamentals 2017,"
                    + " ch. 1");
    private static final Source ASHRAE = Source.published(
            "ASHRAE psychrometrics",
            "ASHRAE Handbook of Fundamentals 2017, ch. 1: humidity ratio, enthalpy and wet-bulb temperature of moist air as"
                    + " ideal gases; the uncertainty is the enhancement factor left out");

    private static final Source ISO_2533 =
            Source.published("ISO 2533", "ISO 2533:1975, Standard atmosphere; the constants of its lowest layer");

    // Standard atmosphere up to 11 km: p = p0 (1 - L h/T0)^(g/(R L)), g = 9.80665 m/s², R = 287.05287 J/(kg K).
    private static final double SEA_LEVEL_TEMPERATURE_K = 288.15;
    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double PRESSURE_EXPONENT = 9.80665 / (287.05287 * LAPSE_K_PER_M);
    private static final ValidityRange ALTITUDES = new ValidityRange("height above sea level", -500, 11_000, "m");

    private static final ValidityRange TEMPERATURES = new ValidityRange("moist air temperature", 223.15, 383.15, "K");
    private static final ValidityRange RELATIVE = new ValidityRange("relative humidity", 0, 1, "1");
    private static final ValidityRange RATIOS = new ValidityRange("humidity ratio", 0, 1, "1");

    private static final List<PropertyRecord> PROPERTIES = List.of(
            new PropertyRecord(
                    "saturation pressure", "Pa", TEMPERATURES, Uncertainty.rectangularRelative(0.0003), HYLAND_WEXLER),
            new PropertyRecord("humidity ratio", "1", TEMPERATURES, Uncertainty.rectangularRelative(0.006), ASHRAE),
            new PropertyRecord("density", "kg/m³", TEMPERATURES, Uncertainty.rectangularRelative(0.003), ASHRAE),
            new PropertyRecord(
                    "specific enthalpy", "J/kg", TEMPERATURES, Uncertainty.rectangularRelative(0.01), ASHRAE));

    private MoistAir() {}

    /**
     * Pressure of vapour over ice (below 0.01 °C) or liquid water.
     *
     * @param temperatureK temperature in K, 223.15 to 383.15
     * @return pressure in Pa, greater than 0
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double saturationPressure(double temperatureK) {
        double t = TEMPERATURES.require(temperatureK, HYLAND_WEXLER);
        double[] c = t < TRIPLE_POINT_K ? OVER_ICE : OVER_WATER;
        return Math.exp(c[0] / t + c[1] + t * (c[2] + t * (c[3] + t * (c[4] + t * c[5]))) + c[6] * Math.log(t));
    }

    /**
     * Vapour per dry air.
     *
     * @param temperatureK temperature in K, 223.15 to 383.15
     * @param relativeHumidity vapour pressure over saturation pressure (over ice below 0.01 °C), 0 to 1
     * @param pressurePa absolute pressure in Pa, 10 000 to 200 000
     * @return humidity ratio in kg vapour per kg dry air, 0 to 1
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range, or if the air would
     *     hold more vapour than dry air (near boiling)
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double humidityRatio(double temperatureK, double relativeHumidity, double pressurePa) {
        double vapour = RELATIVE.require(relativeHumidity, ASHRAE) * saturationPressure(temperatureK);
        double pressure = DryAir.pressureRange().require(pressurePa, ASHRAE);
        return RATIOS.require(ratioOfVapour(vapour, pressure), ASHRAE);
    }

    /** Humidity ratio at a vapour pressure; more than 1, as a stand-in for boiling, where vapour fills the room. */
    private static double ratioOfVapour(double vapourPa, double pressurePa) {
        double dry = pressurePa - vapourPa;
        return dry > vapourPa * MOLAR_MASS_RATIO ? MOLAR_MASS_RATIO * vapourPa / dry : 2;
    }

    /**
     * Vapour pressure of air with a humidity ratio.
     *
     * @param humidityRatio kg vapour per kg dry air, 0 to 1
     * @param pressurePa absolute pressure in Pa, 10 000 to 200 000
     * @return vapour pressure in Pa
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double vapourPressure(double humidityRatio, double pressurePa) {
        double w = RATIOS.require(humidityRatio, ASHRAE);
        return DryAir.pressureRange().require(pressurePa, ASHRAE) * w / (MOLAR_MASS_RATIO + w);
    }

    /**
     * Temperature at which vapour begins to settle: a surface colder than this sweats (or frosts, below 0.01 °C).
     *
     * @param temperatureK temperature of the air in K, 223.15 to 383.15
     * @param relativeHumidity greater than 0, up to 1
     * @return dew point in K, at most the temperature; the low end of the range if it would lie below that
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double dewPointK(double temperatureK, double relativeHumidity) {
        double vapour = RELATIVE.require(relativeHumidity, ASHRAE) * saturationPressure(temperatureK);
        double low = TEMPERATURES.low();
        double high = temperatureK;
        double middle = low + (high - low) / 2;
        while (low < middle && middle < high) {
            if (saturationPressure(middle) < vapour) {
                low = middle;
            } else {
                high = middle;
            }
            middle = low + (high - low) / 2;
        }
        return saturationPressure(low) >= vapour ? low : high;
    }

    /**
     * Thermodynamic wet-bulb temperature: where a wet cloth in moving air ends, if nothing else heats it. Below 0 °C the cloth
     * is taken as iced.
     *
     * @param temperatureK temperature of the air in K, 223.15 to 383.15
     * @param relativeHumidity 0 to 1
     * @param pressurePa absolute pressure in Pa, 10 000 to 200 000
     * @return wet-bulb temperature in K, at most the temperature
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double wetBulbK(double temperatureK, double relativeHumidity, double pressurePa) {
        double ratio = humidityRatio(temperatureK, relativeHumidity, pressurePa);
        double low = TEMPERATURES.low();
        double high = temperatureK;
        double middle = low + (high - low) / 2;
        while (low < middle && middle < high) {
            if (humidityRatioAtWetBulb(temperatureK, middle, pressurePa) < ratio) {
                low = middle;
            } else {
                high = middle;
            }
            middle = low + (high - low) / 2;
        }
        return high;
    }

    /**
     * Humidity ratio of air from a dry and a wet thermometer.
     *
     * @param temperatureK temperature of the air in K, 223.15 to 383.15
     * @param wetBulbK wet-bulb temperature in K, 223.15 up to the temperature of the air
     * @param pressurePa absolute pressure in Pa, 10 000 to 200 000
     * @return humidity ratio in kg vapour per kg dry air; negative if no air could have cooled the cloth so far
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double humidityRatioAtWetBulb(double temperatureK, double wetBulbK, double pressurePa) {
        double t = TEMPERATURES.require(temperatureK, ASHRAE) - CELSIUS_ZERO_K;
        double pressure = DryAir.pressureRange().require(pressurePa, ASHRAE);
        double saturated = ratioOfVapour(saturationPressure(wetBulbK), pressure);
        if (wetBulbK > temperatureK) {
            throw OutOfRangeException.refusal(
                    "wet-bulb temperature", wetBulbK, TEMPERATURES.low(), temperatureK, "K", ASHRAE.key());
        }
        double wet = wetBulbK - CELSIUS_ZERO_K;
        double sensible = AIR_HEAT * (t - wet);
        return wet >= 0
                ? ((EVAPORATION - EVAPORATION_FALL * wet) * saturated - sensible)
                        / (EVAPORATION + VAPOUR_HEAT * t - WATER_HEAT * wet)
                : ((SUBLIMATION - SUBLIMATION_FALL * wet) * saturated - sensible)
                        / (SUBLIMATION + VAPOUR_HEAT * t - ICE_HEAT * wet);
    }

    /**
     * Mass of moist air per volume; at one pressure and temperature moist air is lighter than dry air.
     *
     * @param temperatureK temperature in K, 223.15 to 383.15
     * @param humidityRatio kg vapour per kg dry air, 0 to 1
     * @param pressurePa absolute pressure in Pa, 10 000 to 200 000
     * @return density in kg/m³, vapour included
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double density(double temperatureK, double humidityRatio, double pressurePa) {
        double t = TEMPERATURES.require(temperatureK, ASHRAE);
        double w = RATIOS.require(humidityRatio, ASHRAE);
        return DryAir.density(t, pressurePa) * (1 + w) / (1 + w / MOLAR_MASS_RATIO);
    }

    /**
     * Enthalpy per kilogram of dry air, from dry air and liquid water at 0 °C.
     *
     * @param temperatureK temperature in K, 223.15 to 383.15
     * @param humidityRatio kg vapour per kg dry air, 0 to 1
     * @return J per kg of dry air
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double specificEnthalpy(double temperatureK, double humidityRatio) {
        double t = TEMPERATURES.require(temperatureK, ASHRAE) - CELSIUS_ZERO_K;
        return AIR_HEAT * t + RATIOS.require(humidityRatio, ASHRAE) * (EVAPORATION + VAPOUR_HEAT * t);
    }

    /**
     * Pressure at a height above sea level in the standard atmosphere: what to use where nobody reads a barometer.
     *
     * @param altitudeM height in m, -500 to 11 000
     * @return pressure in Pa
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the height is outside its range
     * @throws IllegalArgumentException if the height is NaN or infinite
     */
    public static double standardPressure(double altitudeM) {
        double h = ALTITUDES.require(altitudeM, ISO_2533);
        return DryAir.STANDARD_PRESSURE_PA
                * Math.pow(1 - LAPSE_K_PER_M * h / SEA_LEVEL_TEMPERATURE_K, PRESSURE_EXPONENT);
    }

    /**
     * Where the formulas come from.
     *
     * @return the records, unmodifiable
     */
    public static List<PropertyRecord> properties() {
        return PROPERTIES;
    }
}
