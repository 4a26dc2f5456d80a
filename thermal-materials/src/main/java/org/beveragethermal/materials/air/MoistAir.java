/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.air;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
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
 * <p>The heat of evaporation, and viscosity and conductivity with the moisture in them, come from formulas of their own: IAPWS
 * supplementary equations for the heat, the mixing rule of C. R. Wilke (J. Chem. Phys. 18 (1950) 517-519) with dry air and dilute
 * vapour for transport, its weights used for conductivity too. Air saturated at 30 °C (4 % vapour by volume) is 2.1 % less viscous
 * and 1.3 % less conducting than dry air; below 20 °C moisture changes neither by more than 1.2 %.
 *
 * <p>The methods that invert (dew point, wet bulb) search by bisection to neighbouring doubles.
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

    private static final Source SUPPLEMENTARY = Source.published(
            "IAPWS SR1-86",
            "W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783-787 (IAPWS SR1-86(1992)), saturation properties of"
                    + " water; below 273.16 K an extrapolation; uncertainty from comparison with steam tables");
    private static final Source WILKE = Source.published(
            "Wilke 1950",
            "C. R. Wilke, J. Chem. Phys. 18 (1950) 517-519, mixing rule; dry air by Lemmon-Jacobsen 2004, dilute vapour by IAPWS"
                    + " R12-08 and R15-11");

    private static final Source ISO_2533 =
            Source.published("ISO 2533", "ISO 2533:1975, Standard atmosphere; the constants of its lowest layer");

    // Standard atmosphere up to 11 km: p = p0 (1 - L h/T0)^(g/(R L)), g = 9.80665 m/s², R = 287.05287 J/(kg K).
    private static final double SEA_LEVEL_TEMPERATURE_K = 288.15;
    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double PRESSURE_EXPONENT = 9.80665 / (287.05287 * LAPSE_K_PER_M);
    private static final ValidityRange ALTITUDES = new ValidityRange("height above sea level", -500, 11_000, "m");

    private static final ValidityRange TEMPERATURES = new ValidityRange("moist air temperature", 223.15, 383.15, "K");
    private static final ValidityRange ICE_TEMPERATURES =
            new ValidityRange("ice temperature", 223.15, TRIPLE_POINT_K, "K");
    private static final ValidityRange EVAPORATION_TEMPERATURES =
            new ValidityRange("temperature of evaporating water", 253.15, 383.15, "K");
    private static final ValidityRange TRANSPORT_TEMPERATURES =
            new ValidityRange("moist air temperature", 230, 350, "K");
    private static final ValidityRange RELATIVE = new ValidityRange("relative humidity", 0, 1, "1");
    private static final ValidityRange RATIOS = new ValidityRange("humidity ratio", 0, 1, "1");

    private static final List<PropertyRecord> PROPERTIES = List.of(
            new PropertyRecord(
                    "saturation pressure", "Pa", TEMPERATURES, Uncertainty.rectangularRelative(0.0003), HYLAND_WEXLER),
            new PropertyRecord("humidity ratio", "1", TEMPERATURES, Uncertainty.rectangularRelative(0.006), ASHRAE),
            new PropertyRecord("density", "kg/m³", TEMPERATURES, Uncertainty.rectangularRelative(0.003), ASHRAE),
            new PropertyRecord(
                    "specific enthalpy", "J/kg", TEMPERATURES, Uncertainty.rectangularRelative(0.01), ASHRAE),
            new PropertyRecord(
                    "latent heat of evaporation",
                    "J/kg",
                    EVAPORATION_TEMPERATURES,
                    Uncertainty.rectangularRelative(0.001),
                    SUPPLEMENTARY),
            new PropertyRecord(
                    "dynamic viscosity", "Pa s", TRANSPORT_TEMPERATURES, Uncertainty.rectangularRelative(0.02), WILKE),
            new PropertyRecord(
                    "thermal conductivity",
                    "W/(m K)",
                    TRANSPORT_TEMPERATURES,
                    Uncertainty.rectangularRelative(0.03),
                    WILKE));

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
        return hylandWexler(t < TRIPLE_POINT_K ? OVER_ICE : OVER_WATER, t);
    }

    private static double hylandWexler(double[] c, double t) {
        return Math.exp(c[0] / t + c[1] + t * (c[2] + t * (c[3] + t * (c[4] + t * c[5]))) + c[6] * Math.log(t));
    }

    /**
     * Pressure of vapour over a stated surface. Over liquid water below 0.01 °C the formula is continued beyond its published
     * range: 0.1 % high at -20 °C, 2 % at -50 °C, against D. M. Murphy and T. Koop, Q. J. R. Meteorol. Soc. 131 (2005) 1539-1565.
     *
     * @param temperatureK temperature in K, 223.15 to 383.15; over ice up to 273.16
     * @param surface ice or liquid water
     * @return pressure in Pa, greater than 0
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double saturationPressure(double temperatureK, WaterSurface surface) {
        return surface == WaterSurface.ICE
                ? hylandWexler(OVER_ICE, ICE_TEMPERATURES.require(temperatureK, HYLAND_WEXLER))
                : hylandWexler(OVER_WATER, TEMPERATURES.require(temperatureK, HYLAND_WEXLER));
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
     * Relative humidity of air with a humidity ratio; the inverse of {@link #humidityRatio}.
     *
     * @param temperatureK temperature in K, 223.15 to 383.15
     * @param humidityRatio kg vapour per kg dry air, 0 to 1
     * @param pressurePa absolute pressure in Pa, 10 000 to 200 000
     * @return vapour pressure over saturation pressure (over ice below 0.01 °C), 0 to 1
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range, or if the air would be
     *     more than saturated: the excess is fog
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double relativeHumidity(double temperatureK, double humidityRatio, double pressurePa) {
        double saturated = saturationPressure(temperatureK);
        return RELATIVE.require(vapourPressure(humidityRatio, pressurePa) / saturated, ASHRAE);
    }

    /**
     * Relative humidity of air with a dew point (a frost point below 0.01 °C); the inverse of {@link #dewPointK}.
     *
     * @param temperatureK temperature in K, 223.15 to 383.15
     * @param dewPointK dew point in K, 223.15 up to the temperature
     * @return vapour pressure over saturation pressure (over ice below 0.01 °C), greater than 0, at most 1
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double relativeHumidityAtDewPoint(double temperatureK, double dewPointK) {
        return RELATIVE.require(saturationPressure(dewPointK) / saturationPressure(temperatureK), ASHRAE);
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
        return saturationPressure(low) >= vapour
                ? low
                : firstReaching(vapour, low, temperatureK, MoistAir::saturationPressure);
    }

    /** The least double from low to high at which a rising function reaches a value; high if none before it does. */
    private static double firstReaching(double value, double low, double high, DoubleUnaryOperator rising) {
        double below = low;
        double reaching = high;
        double middle = below + (reaching - below) / 2;
        while (below < middle && middle < reaching) {
            if (rising.applyAsDouble(middle) < value) {
                below = middle;
            } else {
                reaching = middle;
            }
            middle = below + (reaching - below) / 2;
        }
        return reaching;
    }

    /**
     * Thermodynamic wet-bulb temperature: where a wet cloth in moving air ends, if nothing else heats it. Below 0 °C the cloth
     * is taken as iced.
     *
     * <p>At 0 °C the balance jumps, since subliming takes 13 % more heat than evaporating: air whose wet cloth would settle
     * between 0 and about 0.5 °C has an iced wet bulb below 0 °C as well, and both are right. Which of the two this method finds
     * there is not promised; {@link #wetBulbK(double, double, double, WaterSurface)} lets the caller choose.
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
        return firstReaching(
                ratio, TEMPERATURES.low(), temperatureK, wet -> humidityRatioAtWetBulb(temperatureK, wet, pressurePa));
    }

    /**
     * Thermodynamic wet-bulb temperature of a cloth whose water is liquid, or ice.
     *
     * <p>Liquid: below 0 °C the water is supercooled. Ice: if even ice at 0 °C would gain heat, it melts, and the cloth stays at
     * 0 °C until the ice is gone.
     *
     * @param temperatureK temperature of the air in K, 223.15 to 383.15
     * @param relativeHumidity vapour pressure over saturation pressure (over ice below 0.01 °C), 0 to 1
     * @param pressurePa absolute pressure in Pa, 10 000 to 200 000
     * @param surface what the water in the cloth is
     * @return wet-bulb temperature in K, at most the temperature; at most 273.15 over ice
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double wetBulbK(
            double temperatureK, double relativeHumidity, double pressurePa, WaterSurface surface) {
        double ratio = humidityRatio(temperatureK, relativeHumidity, pressurePa);
        double highest = surface == WaterSurface.ICE ? Math.min(CELSIUS_ZERO_K, temperatureK) : temperatureK;
        return firstReaching(
                ratio,
                TEMPERATURES.low(),
                highest,
                wet -> humidityRatioAtWetBulb(temperatureK, wet, pressurePa, surface));
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
        double saturation = saturationPressure(wetBulbK);
        return balance(temperatureK, wetBulbK, pressurePa, saturation, wetBulbK < CELSIUS_ZERO_K);
    }

    /**
     * Humidity ratio of air from a dry thermometer and one whose cloth holds liquid water, or ice.
     *
     * @param temperatureK temperature of the air in K, 223.15 to 383.15
     * @param wetBulbK wet-bulb temperature in K, 223.15 up to the temperature of the air; over ice up to 273.15
     * @param pressurePa absolute pressure in Pa, 10 000 to 200 000
     * @param surface what the water in the cloth is
     * @return humidity ratio in kg vapour per kg dry air; negative if no air could have cooled the cloth so far
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double humidityRatioAtWetBulb(
            double temperatureK, double wetBulbK, double pressurePa, WaterSurface surface) {
        double saturation = saturationPressure(wetBulbK, surface);
        return balance(temperatureK, wetBulbK, pressurePa, saturation, surface == WaterSurface.ICE);
    }

    private static double balance(
            double temperatureK, double wetBulbK, double pressurePa, double saturationPa, boolean iced) {
        double t = TEMPERATURES.require(temperatureK, ASHRAE) - CELSIUS_ZERO_K;
        double saturated = ratioOfVapour(saturationPa, DryAir.pressureRange().require(pressurePa, ASHRAE));
        if (wetBulbK > temperatureK) {
            throw OutOfRangeException.refusal(
                    "wet-bulb temperature", wetBulbK, TEMPERATURES.low(), temperatureK, "K", ASHRAE.key());
        }
        double wet = wetBulbK - CELSIUS_ZERO_K;
        double sensible = AIR_HEAT * (t - wet);
        return iced
                ? ((SUBLIMATION - SUBLIMATION_FALL * wet) * saturated - sensible)
                        / (SUBLIMATION + VAPOUR_HEAT * t - ICE_HEAT * wet)
                : ((EVAPORATION - EVAPORATION_FALL * wet) * saturated - sensible)
                        / (EVAPORATION + VAPOUR_HEAT * t - WATER_HEAT * wet);
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
     * Isobaric specific heat capacity, per kilogram of moist air.
     *
     * @param temperatureK temperature in K, 230 to 350
     * @param humidityRatio kg vapour per kg dry air, 0 to 1
     * @return specific heat capacity in J/(kg K) of moist air, that of dry air without vapour
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double specificHeatCapacity(double temperatureK, double humidityRatio) {
        double t = TRANSPORT_TEMPERATURES.require(temperatureK, ASHRAE);
        double w = RATIOS.require(humidityRatio, ASHRAE);
        return (DryAir.specificHeatCapacity(t) + w * VAPOUR_HEAT) / (1 + w);
    }

    /**
     * Dynamic viscosity.
     *
     * @param temperatureK temperature in K, 230 to 350
     * @param humidityRatio kg vapour per kg dry air, 0 to 1
     * @return dynamic viscosity in Pa s, that of dry air without vapour
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double dynamicViscosity(double temperatureK, double humidityRatio) {
        double t = TRANSPORT_TEMPERATURES.require(temperatureK, WILKE);
        double moles = RATIOS.require(humidityRatio, WILKE) / MOLAR_MASS_RATIO;
        double air = DryAir.dynamicViscosity(t);
        double vapour = WaterVapour.dynamicViscosity(t);
        return mixed(air, vapour, moles, air / vapour);
    }

    /**
     * Thermal conductivity.
     *
     * @param temperatureK temperature in K, 230 to 350
     * @param humidityRatio kg vapour per kg dry air, 0 to 1
     * @return thermal conductivity in W/(m K), that of dry air without vapour
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double thermalConductivity(double temperatureK, double humidityRatio) {
        double t = TRANSPORT_TEMPERATURES.require(temperatureK, WILKE);
        double moles = RATIOS.require(humidityRatio, WILKE) / MOLAR_MASS_RATIO;
        double viscosityRatio = DryAir.dynamicViscosity(t) / WaterVapour.dynamicViscosity(t);
        return mixed(DryAir.thermalConductivity(t), WaterVapour.thermalConductivity(t), moles, viscosityRatio);
    }

    /** Wilke's rule for moles of vapour per mole of dry air; the ratio is of viscosities, air to vapour. */
    private static double mixed(double air, double vapour, double moles, double viscosityRatio) {
        double airInVapour = interaction(viscosityRatio, MOLAR_MASS_RATIO);
        double vapourInAir = interaction(1 / viscosityRatio, 1 / MOLAR_MASS_RATIO);
        return air / (1 + moles * airInVapour) + moles * vapour / (moles + vapourInAir);
    }

    /** Weight of the other gas: viscosity of this one over that of the other, molar mass of the other over that of this one. */
    private static double interaction(double viscosityRatio, double otherMolarMassRatio) {
        double root = 1 + Math.sqrt(viscosityRatio) * Math.pow(otherMolarMassRatio, 0.25);
        return root * root / Math.sqrt(8 * (1 + 1 / otherMolarMassRatio));
    }

    /**
     * Heat taken up by evaporating a kilogram of liquid water; below 0.01 °C supercooled, an extrapolation.
     *
     * @param temperatureK temperature of the water in K, 253.15 to 383.15
     * @return latent heat in J/kg
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double latentHeatOfEvaporation(double temperatureK) {
        return WaterVapour.latentHeatOfEvaporation(EVAPORATION_TEMPERATURES.require(temperatureK, SUPPLEMENTARY));
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
