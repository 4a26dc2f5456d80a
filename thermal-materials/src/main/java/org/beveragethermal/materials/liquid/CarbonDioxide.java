/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.AlcoholicStrength;
import org.beveragethermal.materials.units.MassConcentration;

/**
 * Carbon dioxide dissolved in a drink, and the pressure it makes in a closed vessel, -5 °C to 40 °C.
 *
 * <p>How much dissolves per pressure: in water by R. F. Weiss (Marine Chemistry 2 (1974) 203-215), in beer by a fit to
 * brewing tables, in wine by Commission Regulation (EEC) No 2676/90 at 20 °C. How the solubility in wine falls with
 * temperature is unsettled between sources; it follows van 't Hoff with an <b>enthalpy of solution that is itself
 * uncertain</b> ({@link #ENTHALPY_OF_SOLUTION}), to be varied with {@link #inWine(Quantity, Quantity, double)}. The gas
 * is ideal, which at 10 bar is 5 % wrong; liquid and headspace are taken to be in balance, which an undisturbed bottle
 * reaches in hours to days.
 *
 * <p>A warm sparkling bottle stands under several bar and can burst, so can a frozen one: handle it cold, point it away
 * from people, and do not use vessels that were not made for pressure.
 *
 * <p>Immutable. Pressures are absolute partial pressures of carbon dioxide in Pa; a gauge on a bottle whose headspace
 * holds nothing else shows this less the pressure of the atmosphere.
 */
public final class CarbonDioxide {
    /** Molar mass in kg/mol (IUPAC atomic weights). */
    public static final double MOLAR_MASS = 0.04401;

    private static final double GAS_CONSTANT = 8.314462618;
    private static final double ATMOSPHERE_PA = 101325;
    private static final double REFERENCE_K = 293.15;

    private static final Source WEISS = Source.published(
            "Weiss 1974", "R. F. Weiss, Carbon dioxide in water and seawater, Marine Chemistry 2 (1974) 203-215");
    private static final Source REGULATION = Source.published(
            "Regulation 2676/90",
            "Commission Regulation (EEC) No 2676/90, carbon dioxide in sparkling wine from its pressure at 20 °C");
    private static final Source BREWING = Source.published(
            "brewing table fit", "fit of the customary table of carbonation against pressure and temperature of beer");

    /**
     * Heat released when a mole dissolves in wine, J/mol: 20 to 25 kJ/mol. Weiss's formula for water corresponds to 20,
     * another value in use (from memory) to 24.8; the published pressures of sealed bottles fall between.
     */
    public static final Constant ENTHALPY_OF_SOLUTION = new Constant(
            "enthalpy of solution of carbon dioxide in wine",
            22_500,
            "J/mol",
            Uncertainty.rectangular(2_500),
            new Source(
                    "CO2 enthalpy range",
                    "own range: van 't Hoff slope of Weiss (1974) to a value from memory, 24.8 kJ/mol",
                    Source.Kind.OWN_ASSUMPTION));

    private static final ValidityRange TEMPERATURES =
            new ValidityRange("temperature of a carbonated drink", 268.15, 313.15, "K");
    private static final ValidityRange HENRY_TEMPERATURES = new ValidityRange(
            "temperature of water with carbon dioxide", HenryConstant.LOWEST_K, HenryConstant.HIGHEST_K, "K");
    private static final ValidityRange PRESSURES = new ValidityRange("pressure of carbon dioxide", 0, 2e6, "Pa");
    private static final ValidityRange CONTENTS = new ValidityRange("content of carbon dioxide", 0, 30, "kg/m³");
    private static final ValidityRange HEADSPACES = new ValidityRange("headspace per volume of liquid", 0, 100, "1");
    private static final ValidityRange ENTHALPIES = new ValidityRange("enthalpy of solution", 15_000, 30_000, "J/mol");
    static final double HIGHEST_STRENGTH = 0.25;
    static final double HIGHEST_SUGAR = 300;

    // Weiss, ln(K0/(mol/(L atm))) = A1 + A2 (100/T) + A3 ln(T/100) without salt; 0 to 40 °C, within 0.3 % of his data.
    private static final double A_1 = -58.0931;
    private static final double A_2 = 90.5069;
    private static final double A_3 = 22.2940;

    // Regulation 2676/90: g/L = 1.951e-5 p/Pa (0.86 - 0.01 A)(1 - 0.00144 S), A in % vol, S in g/L; 20 °C.
    private static final double WINE_PER_PASCAL = 1.951e-5;
    private static final double WINE_BASE = 0.86;
    private static final double WINE_PER_STRENGTH = 1.0; // 0.01 per % vol
    private static final double WINE_PER_SUGAR = 0.00144;

    // Beer: volumes = p/psi (0.01821 + 0.090115 exp(-(F - 32)/43.11)) - 0.003342; the last term, 0.01 g/L, is left out
    // so that no pressure means no gas. A volume is 1.977 kg/m³ (gas at 0 °C and 1 atm).
    private static final double BEER_BASE = 0.01821;
    private static final double BEER_FALL = 0.090115;
    private static final double BEER_FALL_RANKINE = 43.11;
    private static final double PSI_PA = 6894.757293168;
    private static final double VOLUME_KG_PER_M3 = 1.977;
    private static final double RANKINE_PER_KELVIN = 1.8;
    private static final double FREEZING_POINT_K = 273.15;

    /** Solubility as a function of temperature. */
    private interface Law {
        double at(double temperatureK);
    }

    private final String drink;
    private final Source source;
    private final Constant accuracy;
    private final List<PropertyRecord> properties;
    private final Law law;

    private CarbonDioxide(
            String drink, Source source, double relativeUncertainty, Law law, PropertyRecord... furtherProperties) {
        this.drink = drink;
        this.source = source;
        this.accuracy = new Constant(
                "factor on the solubility of carbon dioxide in " + drink,
                1,
                "1",
                Uncertainty.rectangularRelative(relativeUncertainty),
                source);
        PropertyRecord solubility = new PropertyRecord(
                "solubility of carbon dioxide", "kg/(m³ Pa)", TEMPERATURES, accuracy.uncertainty(), source);
        this.properties = Stream.concat(Stream.of(solubility), Stream.of(furtherProperties))
                .toList();
        this.law = law;
    }

    /**
     * In water without alcohol or sugar.
     *
     * @return the solution
     */
    public static CarbonDioxide inWater() {
        PropertyRecord henry = new PropertyRecord(
                "Henry's constant of carbon dioxide in water",
                "Pa",
                HENRY_TEMPERATURES,
                Uncertainty.rectangularRelative(0.045),
                HenryConstant.G7_04);
        return new CarbonDioxide("water", WEISS, 0.012, CarbonDioxide::weiss, henry);
    }

    /**
     * In beer; strength and extract of common beers are in the table it rests on.
     *
     * @return the solution
     */
    public static CarbonDioxide inBeer() {
        return new CarbonDioxide("beer", BREWING, 0.06, CarbonDioxide::beer);
    }

    /**
     * In wine, with the middle value of {@link #ENTHALPY_OF_SOLUTION}.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @param sugar sugar, 0 to 300 g/L
     * @return the solution
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static CarbonDioxide inWine(Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar) {
        return inWine(strength, sugar, ENTHALPY_OF_SOLUTION.value());
    }

    /**
     * In wine, with an enthalpy of solution of your own.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @param sugar sugar, 0 to 300 g/L
     * @param enthalpyOfSolution heat released in J/mol, 15 000 to 30 000
     * @return the solution
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static CarbonDioxide inWine(
            Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar, double enthalpyOfSolution) {
        double byVolume = Inputs.strength(strength, HIGHEST_STRENGTH, REGULATION);
        double kgPerM3 = Inputs.concentration(sugar, "sugar", HIGHEST_SUGAR, REGULATION);
        double slope = ENTHALPIES.require(enthalpyOfSolution, REGULATION) / GAS_CONSTANT;
        double at20 = WINE_PER_PASCAL * (WINE_BASE - WINE_PER_STRENGTH * byVolume) * (1 - WINE_PER_SUGAR * kgPerM3);
        PropertyRecord change = new PropertyRecord(
                ENTHALPY_OF_SOLUTION.name(),
                ENTHALPY_OF_SOLUTION.unit(),
                TEMPERATURES,
                ENTHALPY_OF_SOLUTION.uncertainty(),
                ENTHALPY_OF_SOLUTION.source());
        return new CarbonDioxide(
                "wine", REGULATION, 0.05, t -> at20 * Math.exp(slope * (1 / t - 1 / REFERENCE_K)), change);
    }

    /**
     * Henry's constant of carbon dioxide in pure water, for hot water and for comparison: fugacity over mole fraction in
     * the liquid, by IAPWS G7-04. It was fitted to measurements up to 640 K; in cold water it lets 4 % less dissolve than
     * {@link #inWater()} does, which is the one to use below 40 °C.
     *
     * @param temperatureK temperature in K, 274.19 to 642.66
     * @return Henry's constant in Pa
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double henryConstantInWater(double temperatureK) {
        return HenryConstant.pascals(HENRY_TEMPERATURES.require(temperatureK, HenryConstant.G7_04));
    }

    private static double weiss(double temperatureK) {
        double hundreds = temperatureK / 100;
        double molesPerLitreAtmosphere = Math.exp(A_1 + A_2 / hundreds + A_3 * Math.log(hundreds));
        return molesPerLitreAtmosphere * 1000 * MOLAR_MASS / ATMOSPHERE_PA;
    }

    private static double beer(double temperatureK) {
        double degrees = RANKINE_PER_KELVIN * (temperatureK - FREEZING_POINT_K);
        return VOLUME_KG_PER_M3 / PSI_PA * (BEER_BASE + BEER_FALL * Math.exp(-degrees / BEER_FALL_RANKINE));
    }

    /**
     * Mass that a volume of the drink takes up per pressure.
     *
     * @param temperatureK temperature in K, 268.15 to 313.15
     * @return solubility in kg/(m³ Pa), falling with temperature
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double solubility(double temperatureK) {
        return law.at(TEMPERATURES.require(temperatureK, source));
    }

    /**
     * Pressure in a closed vessel.
     *
     * @param contentKgPerM3 all carbon dioxide in the vessel, dissolved or not, per volume of liquid, 0 to 30 kg/m³ (=
     *     g/L)
     * @param headspacePerLiquid volume of gas per volume of liquid, 0 to 100
     * @param temperatureK temperature of both in K, 268.15 to 313.15
     * @return partial pressure of carbon dioxide in Pa
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public double pressure(double contentKgPerM3, double headspacePerLiquid, double temperatureK) {
        return CONTENTS.require(contentKgPerM3, source) / contentPerPressure(headspacePerLiquid, temperatureK);
    }

    /**
     * What a gauge on a closed vessel shows whose headspace holds carbon dioxide alone: {@link #pressure} less the
     * standard atmosphere of 101 325 Pa.
     *
     * @param contentKgPerM3 all carbon dioxide in the vessel, dissolved or not, per volume of liquid, 0 to 30 kg/m³ (=
     *     g/L)
     * @param headspacePerLiquid volume of gas per volume of liquid, 0 to 100
     * @param temperatureK temperature of both in K, 268.15 to 313.15
     * @return gauge pressure in Pa, negative where the drink would take up more gas
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public double gaugePressure(double contentKgPerM3, double headspacePerLiquid, double temperatureK) {
        return pressure(contentKgPerM3, headspacePerLiquid, temperatureK) - ATMOSPHERE_PA;
    }

    /**
     * Content of a closed vessel that stands under a pressure; the inverse of {@link #pressure}.
     *
     * @param pressurePa partial pressure of carbon dioxide in Pa, 0 to 2 000 000
     * @param headspacePerLiquid volume of gas per volume of liquid, 0 to 100
     * @param temperatureK temperature of both in K, 268.15 to 313.15
     * @return all carbon dioxide in the vessel per volume of liquid, kg/m³
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public double content(double pressurePa, double headspacePerLiquid, double temperatureK) {
        return PRESSURES.require(pressurePa, source) * contentPerPressure(headspacePerLiquid, temperatureK);
    }

    private double contentPerPressure(double headspacePerLiquid, double temperatureK) {
        double gas = MOLAR_MASS / (GAS_CONSTANT * temperatureK);
        return solubility(temperatureK) + HEADSPACES.require(headspacePerLiquid, source) * gas;
    }

    /**
     * How well the solubility is known: a factor of 1 with its uncertainty. In wine {@link #ENTHALPY_OF_SOLUTION} adds
     * its own.
     *
     * @return the factor
     */
    public Constant accuracy() {
        return accuracy;
    }

    /**
     * Where the figures come from: the solubility and, in wine, how it changes with temperature.
     *
     * @return the records, unmodifiable
     */
    public List<PropertyRecord> properties() {
        return properties;
    }

    @Override
    public String toString() {
        return "carbon dioxide in " + drink;
    }
}
