/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * A solution of sucrose in water, 0 to 65 % by mass, -20 °C to 80 °C: the sugar of soft drinks, liqueurs and sweet
 * wines.
 *
 * <p>Density follows ICUMSA SPS-4, viscosity J. Génotelle, heat capacity and conductivity formulas of the sugar trade,
 * each as a difference from water, so that without sugar the solution is exactly {@link Water}. The published formulas
 * hold from 0 °C upwards; below, the liquid is described by continuing them. Below 10 % by mass Génotelle's formula
 * lies up to 4 % under water; there it is joined to water by a factor that fades with the square of the distance (our
 * join).
 *
 * <p>Immutable; equal by mass fraction.
 */
public final class SucroseSolution implements Liquid {
    private static final double CELSIUS_ZERO_K = 273.15;
    private static final double HIGHEST_MASS_FRACTION = 0.65;

    private static final ValidityRange RANGE =
            new ValidityRange("temperature of sucrose solution", 253.15, 353.15, "K");
    private static final ValidityRange MASS_FRACTIONS =
            new ValidityRange("mass fraction of sucrose", 0, HIGHEST_MASS_FRACTION, "1");
    private static final ValidityRange SUGAR_PER_WATER = new ValidityRange("sugar per water by mass", 0, 2, "1");

    private static final Source SPS_4 = Source.published(
            "ICUMSA SPS-4", "ICUMSA Specification and Standard SPS-4 (1994), density of sucrose solutions, 0 to 80 °C");
    private static final Source GENOTELLE = Source.published(
            "Génotelle 1978",
            "J. Génotelle, Expression de la viscosité des solutions sucrées, Industries alimentaires et agricoles 95 (1978)"
                    + " 747-755; below 10 % by mass our join to water");
    private static final Source SUGAR_TRADE = Source.published(
            "sugar trade formulas",
            "heat capacity and conductivity of sugar juices as quoted from O. Llano (2005); no table was found to check them");
    static final Source GOFF_HARTEL = Source.published(
            "Goff-Hartel 2013",
            "H. D. Goff, R. W. Hartel, Ice Cream, 7th ed. (2013), table 6.1: freezing point depression of sucrose, 0 to 180 g per"
                    + " 100 g water; the uncertainty is the deviation of the same book's formula (table 6.3) from it");

    // Density over water, kg/m³: sum over i of th^i sum over k of c[i][k] w^(k+1), th = (t/°C - 20)/100. 0 to 80 °C;
    // within 0.2 kg/m³ of NBS Circular 457 and the CRC Handbook.
    private static final double[][] DENSITY_OVER_WATER = {
        {0, 385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289},
        {0, -46.272, -7.172, 1.1597, 5.1126, 17.5254},
        {0, 59.7712, 7.2491, 12.363, -35.4791},
        {0, -47.2207, -21.6977, 27.6301},
        {0, 18.3184, 12.3081}
    };

    // Génotelle: lg(viscosity/mPa s) = 22.46 n - 0.114 + f (1.1 + 43.1 n^1.25), n = B/(1900 - 18 B), f = (30 - t)/(91 +
    // t), B in per cent by mass, t in °C. 20 °C, 10 to 60 %: within 3 % of the CRC Handbook; at 0 °C and 40 %: 12 %.
    private static final double N_BASE = 1900;
    private static final double N_SLOPE = 18;
    private static final double LG_PER_N = 22.46;
    private static final double LG_OFFSET = -0.114;
    private static final double F_ZERO = 30;
    private static final double F_BASE = 91;
    private static final double F_OFFSET = 1.1;
    private static final double F_PER_N = 43.1;
    private static final double F_EXPONENT = 1.25;
    private static final double LAST_JOINED_PERCENT = 10;

    // Heat capacity over water, J/(kg K), per mass fraction: -2971 + 460 (pure sucrose) + 7.5 t/°C.
    private static final double HEAT_OVER_WATER = -2971 + 460;
    private static final double HEAT_OVER_WATER_PER_KELVIN = 7.5;

    // Conductivity over water, W/(m K), per mass fraction, polynomial in t/°C.
    private static final double[] CONDUCTIVITY_OVER_WATER = {-0.3024, -1.176e-3, 5.466e-6};

    // Freezing point depression in K against g of sucrose per 100 g water: every fifth point of the table, whose
    // rounding to 0.01 K would roughen the slope if all were taken; the points between lie within 0.06 K.
    private static final MonotoneCubic DEPRESSION = MonotoneCubic.through(
            new double[] {0, 15, 30, 45, 60, 75, 90, 105, 120, 135, 150, 165, 180},
            new double[] {0, 0.90, 1.86, 2.78, 3.85, 5.00, 6.23, 7.56, 8.92, 10.22, 11.41, 12.67, 13.68});
    /** Depression per gram of glucose or fructose over that of sucrose: molar masses 342.30 and 180.16 g/mol. */
    static final double INVERT_OVER_SUCROSE = 342.30 / 180.16;

    private static final Source INVERT_SCALING = new Source(
            "ideal molar scaling",
            "own rule: a gram of glucose or fructose depresses the freezing point as 342.30/180.16 = 1.90 g of sucrose do, molecule"
                    + " for molecule; sucrose by " + GOFF_HARTEL.key(),
            Source.Kind.OWN_ASSUMPTION);

    private static final List<PropertyRecord> PROPERTIES = List.of(
            new PropertyRecord("density", "kg/m³", RANGE, Uncertainty.rectangular(0.5), SPS_4),
            new PropertyRecord("dynamic viscosity", "Pa s", RANGE, Uncertainty.rectangularRelative(0.12), GENOTELLE),
            new PropertyRecord(
                    "specific heat capacity", "J/(kg K)", RANGE, Uncertainty.rectangularRelative(0.03), SUGAR_TRADE),
            new PropertyRecord(
                    "thermal conductivity", "W/(m K)", RANGE, Uncertainty.rectangularRelative(0.03), SUGAR_TRADE),
            new PropertyRecord("freezing temperature", "K", MASS_FRACTIONS, Uncertainty.rectangular(0.3), GOFF_HARTEL),
            // Against the ideal dilute solution, 1.86 K kg/mol: the published table lies 7 to 12 % above it.
            new PropertyRecord(
                    "freezing point depression of invert sugar",
                    "K",
                    SUGAR_PER_WATER,
                    Uncertainty.rectangularRelative(0.12),
                    INVERT_SCALING));

    private final double massFraction;
    /** Density over water in kg/m³ as a polynomial in (t/°C - 20)/100. */
    private final double[] densityTerms;

    private final double lgViscosityOffset;
    private final double lgViscosityPerF;
    private final double waterWeight;

    private SucroseSolution(double massFraction) {
        this.massFraction = massFraction;
        this.densityTerms = Polynomials.collapse(DENSITY_OVER_WATER, massFraction);
        double percent = 100 * massFraction;
        double n = percent / (N_BASE - N_SLOPE * percent);
        this.lgViscosityOffset = LG_PER_N * n + LG_OFFSET;
        this.lgViscosityPerF = F_OFFSET + F_PER_N * Math.pow(n, F_EXPONENT);
        double joined = Math.max(0, 1 - percent / LAST_JOINED_PERCENT);
        this.waterWeight = joined * joined;
    }

    /**
     * The solution with a given mass fraction of sucrose.
     *
     * @param massFraction mass of sucrose per mass of solution, 0 to 0.65
     * @return the liquid
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the fraction is outside 0 to 0.65
     * @throws IllegalArgumentException if the fraction is NaN or infinite
     */
    public static SucroseSolution ofMassFraction(double massFraction) {
        return new SucroseSolution(MASS_FRACTIONS.require(massFraction, SPS_4));
    }

    /**
     * Temperature at which water with sugar begins to freeze. A gram of glucose or fructose counts as 1.90 g of
     * sucrose, by the number of molecules (ideal, our scaling); the sum, in grams of sucrose per gram of water, must
     * not pass 2. Beyond 1.8 the published table is continued straight.
     *
     * @param sucrosePerWater mass of sucrose per mass of water, 0 to 2
     * @param invertSugarPerWater mass of glucose and fructose per mass of water, ≥ 0
     * @return temperature in K, at most 273.15
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an amount is negative or their sum is above 2
     * @throws IllegalArgumentException if an amount is NaN or infinite
     */
    public static double freezingTemperatureK(double sucrosePerWater, double invertSugarPerWater) {
        double sucrose = SUGAR_PER_WATER.require(sucrosePerWater, GOFF_HARTEL);
        double invert = SUGAR_PER_WATER.require(invertSugarPerWater, GOFF_HARTEL);
        return CELSIUS_ZERO_K
                - depressionK(SUGAR_PER_WATER.require(sucrose + INVERT_OVER_SUCROSE * invert, GOFF_HARTEL));
    }

    /**
     * Depression in K by grams of sucrose (or its equivalent) per gram of water; beyond 1.8 the table goes on straight.
     */
    static double depressionK(double sucrosePerWater) {
        return DEPRESSION.value(100 * sucrosePerWater);
    }

    /** Derivative of {@link #depressionK} in K. */
    static double depressionSlopeK(double sucrosePerWater) {
        return 100 * DEPRESSION.derivative(100 * sucrosePerWater);
    }

    /**
     * Temperature at which this solution begins to freeze.
     *
     * @return temperature in K, at most 273.15
     */
    public double freezingTemperatureK() {
        return freezingTemperatureK(massFraction / (1 - massFraction), 0);
    }

    /**
     * Mass of sucrose per mass of solution.
     *
     * @return mass fraction, 0 to 0.65
     */
    public double massFraction() {
        return massFraction;
    }

    @Override
    public String name() {
        return "sucrose solution, " + Percent.of(massFraction) + " % by mass";
    }

    @Override
    public double density(double temperatureK) {
        double hundreds = (celsius(temperatureK) - 20) / 100;
        return Water.liquid().density(temperatureK) + Polynomials.value(densityTerms, hundreds);
    }

    @Override
    public double thermalExpansion(double temperatureK) {
        double hundreds = (celsius(temperatureK) - 20) / 100;
        double water = Water.liquid().density(temperatureK);
        double slope = -water * Water.liquid().thermalExpansion(temperatureK)
                + Polynomials.derivative(densityTerms, hundreds) / 100;
        return -slope / (water + Polynomials.value(densityTerms, hundreds));
    }

    @Override
    public double specificHeatCapacity(double temperatureK) {
        double t = celsius(temperatureK);
        return Water.liquid().specificHeatCapacity(temperatureK)
                + massFraction * (HEAT_OVER_WATER + HEAT_OVER_WATER_PER_KELVIN * t);
    }

    @Override
    public double specificEnthalpy(double temperatureK) {
        double t = celsius(temperatureK);
        return Water.liquid().specificEnthalpy(temperatureK)
                + massFraction * t * (HEAT_OVER_WATER + HEAT_OVER_WATER_PER_KELVIN * t / 2);
    }

    @Override
    public double thermalConductivity(double temperatureK) {
        double t = celsius(temperatureK);
        return Water.liquid().thermalConductivity(temperatureK)
                + massFraction * Polynomials.value(CONDUCTIVITY_OVER_WATER, t);
    }

    @Override
    public double dynamicViscosity(double temperatureK) {
        double t = celsius(temperatureK);
        double f = (F_ZERO - t) / (F_BASE + t);
        double formula = 1e-3 * Math.pow(10, lgViscosityOffset + f * lgViscosityPerF);
        if (waterWeight == 0) {
            return formula;
        }
        double formulaOfWater = 1e-3 * Math.pow(10, LG_OFFSET + f * F_OFFSET);
        return formula * Math.pow(Water.liquid().dynamicViscosity(temperatureK) / formulaOfWater, waterWeight);
    }

    private static double celsius(double temperatureK) {
        return RANGE.require(temperatureK, SPS_4) - CELSIUS_ZERO_K;
    }

    @Override
    public ValidityRange temperatureRange() {
        return RANGE;
    }

    @Override
    public List<PropertyRecord> properties() {
        return PROPERTIES;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SucroseSolution that && Double.compare(massFraction, that.massFraction) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(massFraction);
    }

    @Override
    public String toString() {
        return name();
    }
}
