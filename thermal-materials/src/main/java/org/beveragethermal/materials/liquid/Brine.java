/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * A solution of common salt (NaCl) in water, 0 to 23.3 % salt by mass, -22 °C to 40 °C: what salted ice turns into.
 *
 * <p>Properties and the freezing curve follow Melinder's polynomials (IIR 2010, 0 to 23 % by mass); the curve ends at
 * the eutectic, below which everything is solid. More concentrated brine, up to saturation at about 26 % by mass
 * ({@link Salt#solubility(double)}), is not covered.
 *
 * <p><b>Dissolving salt takes heat</b>: nearly as much per kilogram as cooling it by 50 K. The heat of solution at 25
 * °C is the one at infinite dilution (V. B. Parker, NSRDS-NBS 2 (1965), as in the CRC Handbook) plus the relative
 * apparent enthalpy by L. F. Silvester and K. S. Pitzer; the heat capacities carry it to other temperatures. {@link
 * #enthalpyOverWaterAndSalt(double)} has it in, so that a balance of ice, water, salt and brine closes.
 *
 * <p>Salted ice is colder than any ice: it freezes skin and bursts bottles. Immutable; equal by mass fraction.
 */
public final class Brine implements Liquid {
    private static final double CELSIUS_ZERO_K = 273.15;
    private static final double STANDARD_K = 298.15;

    /**
     * The least temperature at which brine is liquid, K: -21.1 °C (Lange's Handbook of Chemistry, 15th ed., table
     * 5.13).
     */
    public static final double EUTECTIC_K = 252.05;

    /** Mass fraction of salt in the brine that freezes last (Lange's Handbook of Chemistry, 15th ed., table 5.13). */
    public static final double EUTECTIC_MASS_FRACTION = 0.233;

    private static final Source MELINDER = Source.published(
            "Melinder 2010 NaCl",
            "Å. Melinder, Properties of secondary working fluids for indirect systems, IIR (2010): polynomials for sodium"
                    + " chloride-water, 0 to 23 % by mass, freezing point to 40 °C");
    private static final Source PITZER = Source.published(
            "Silvester-Pitzer 1977",
            "L. F. Silvester, K. S. Pitzer, J. Phys. Chem. 81 (1977) 1822-1828 and J. Solution Chem. 7 (1978) 327: slopes of the"
                    + " virial coefficients of NaCl; limiting slope from memory; at infinite dilution V. B. Parker, NSRDS-NBS 2"
                    + " (1965), as in the CRC Handbook of Chemistry and Physics");

    private static final ValidityRange RANGE = new ValidityRange("temperature of brine", 251.15, 313.15, "K");
    private static final ValidityRange MASS_FRACTIONS =
            new ValidityRange("mass fraction of salt", 0, EUTECTIC_MASS_FRACTION, "1");
    private static final ValidityRange LIQUIDUS =
            new ValidityRange("freezing temperature of brine", EUTECTIC_K, CELSIUS_ZERO_K, "K");

    // Melinder's polynomials, sum c[j][i] x^i y^j, x = 100 w - X_REFERENCE, y = t/°C - Y_REFERENCE. Range: 0 to 23 % by
    // mass, freezing point to 40 °C. Deviation: freezing 0.18 K and density 0.27 kg/m³ from handbook tables;
    // conductivity and viscosity were not found tabulated independently.
    private static final double X_REFERENCE = 13.3897;
    private static final double Y_REFERENCE = 12.6179;
    private static final double[] FREEZING_CELSIUS = {-9.383, -0.9039, -0.02204, -0.0004827, 2.247e-06};
    private static final double[][] DENSITY = {
        {1099, 7.723, 0.02567, 0.0001108, -1.686e-05},
        {-0.3758, -0.01426, 0.0003994, 3.522e-07},
        {-0.002023, 0.0001535, -7.281e-06}
    };
    private static final double[][] SPECIFIC_HEAT_CAPACITY = {
        {3593, -32.48, 0.6453, -0.01629, 0.0002331},
        {1.669, -0.03331, -0.009314, 0.0007927},
        {-0.02019, -0.001164, 0.0002236}
    };
    private static final double[][] THERMAL_CONDUCTIVITY = {
        {0.5736, -0.0009383, -1.057e-05, -4.853e-07, -4.654e-09},
        {0.001595, -1.248e-05, 4.158e-07, -1.587e-08},
        {-4.003e-07, 3.353e-07, -2.032e-08}
    };
    private static final double[][] LN_VISCOSITY = {
        {0.4369, 0.02346, 0.0004276, 7.386e-06, 4.688e-07},
        {-0.02666, -5.368e-05, -4.526e-06, 5.437e-07},
        {0.0002035, 2.871e-06, 1.838e-07}
    };

    /** Molar mass of NaCl, kg/mol (IUPAC atomic weights). */
    private static final double MOLAR_MASS = 0.05844;
    /** Heat taken by dissolving one mole in much water at 25 °C, J/mol (Parker 1965). */
    private static final double INFINITE_DILUTION = 3880;

    // Relative apparent enthalpy at 25 °C, J/mol: (A_H/b) ln(1 + b √m) - 2 R T² (m B + m² C), with
    // B = BETA_0 + BETA_1 g(2 √m), g(x) = 2 (1 - (1 + x) e^-x)/x², the slopes with temperature of the virial
    // coefficients.
    private static final double GAS_CONSTANT = 8.314462618;
    private static final double LIMITING_SLOPE = 1986; // A_H at 25 °C, J/mol (kg/mol)^½
    private static final double B = 1.2; // (kg/mol)^½
    private static final double BETA_0 = 7.159e-4; // kg/(mol K)
    private static final double BETA_1 = 7.005e-4; // kg/(mol K)
    private static final double C = -10.54e-5 / 2; // kg²/(mol² K)

    private static final List<PropertyRecord> PROPERTIES = List.of(
            new PropertyRecord("density", "kg/m³", RANGE, Uncertainty.rectangular(0.6), MELINDER),
            new PropertyRecord(
                    "specific heat capacity", "J/(kg K)", RANGE, Uncertainty.rectangularRelative(0.01), MELINDER),
            new PropertyRecord(
                    "thermal conductivity", "W/(m K)", RANGE, Uncertainty.rectangularRelative(0.03), MELINDER),
            new PropertyRecord("dynamic viscosity", "Pa s", RANGE, Uncertainty.rectangularRelative(0.05), MELINDER),
            new PropertyRecord("freezing temperature", "K", MASS_FRACTIONS, Uncertainty.rectangular(0.2), MELINDER),
            new PropertyRecord(
                    "heat of solution", "J/kg", MASS_FRACTIONS, Uncertainty.rectangularRelative(0.1), PITZER));

    private final double massFraction;
    private final double[] densityTerms;
    private final double[] heatCapacityTerms;
    private final double[] conductivityTerms;
    private final double[] lnViscosityTerms;

    private Brine(double massFraction) {
        double x = 100 * massFraction - X_REFERENCE;
        this.massFraction = massFraction;
        this.densityTerms = Polynomials.collapse(DENSITY, x);
        this.heatCapacityTerms = Polynomials.collapse(SPECIFIC_HEAT_CAPACITY, x);
        this.conductivityTerms = Polynomials.collapse(THERMAL_CONDUCTIVITY, x);
        this.lnViscosityTerms = Polynomials.collapse(LN_VISCOSITY, x);
    }

    /**
     * Brine with a given mass fraction of salt.
     *
     * @param massFraction mass of salt per mass of brine, 0 to 0.233
     * @return the liquid
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the fraction is outside 0 to 0.233
     * @throws IllegalArgumentException if the fraction is NaN or infinite
     */
    public static Brine ofMassFraction(double massFraction) {
        return new Brine(MASS_FRACTIONS.require(massFraction, MELINDER));
    }

    /**
     * Brine that is in balance with ice at a temperature: what salted ice drips at that temperature.
     *
     * @param temperatureK temperature in K, 252.05 to 273.15
     * @return the liquid
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static Brine inBalanceWithIceAt(double temperatureK) {
        LIQUIDUS.require(temperatureK, MELINDER);
        double low = 0;
        double high = EUTECTIC_MASS_FRACTION;
        double middle = high / 2;
        while (low < middle && middle < high) {
            if (freezingTemperatureK(middle) > temperatureK) {
                low = middle;
            } else {
                high = middle;
            }
            middle = low + (high - low) / 2;
        }
        return new Brine(freezingTemperatureK(low) <= temperatureK ? low : high);
    }

    /**
     * Temperature at which the first ice forms.
     *
     * @param massFraction mass of salt per mass of brine, 0 to 0.233
     * @return temperature in K, 252.05 to 273.15, never rising with the fraction
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the fraction is outside 0 to 0.233
     * @throws IllegalArgumentException if the fraction is NaN or infinite
     */
    public static double freezingTemperatureK(double massFraction) {
        double x = 100 * MASS_FRACTIONS.require(massFraction, MELINDER) - X_REFERENCE;
        double celsius = Math.min(0, Polynomials.value(FREEZING_CELSIUS, x));
        return Math.max(EUTECTIC_K, CELSIUS_ZERO_K + celsius);
    }

    /**
     * Mass of salt per mass of brine.
     *
     * @return mass fraction, 0 to 0.233
     */
    public double massFraction() {
        return massFraction;
    }

    /**
     * Heat taken from the surroundings when the salt of this brine dissolves in its water, at 25 °C throughout.
     *
     * @return heat in J per kg of salt, greater than 0
     */
    public double heatOfSolution() {
        double molality = massFraction / ((1 - massFraction) * MOLAR_MASS);
        return (INFINITE_DILUTION + relativeApparentEnthalpy(molality)) / MOLAR_MASS;
    }

    private static double relativeApparentEnthalpy(double molality) {
        double root = Math.sqrt(molality);
        double virial = molality * (BETA_0 + BETA_1 * debyeHueckelRange(2 * root)) + molality * molality * C;
        return LIMITING_SLOPE / B * Math.log1p(B * root) - 2 * GAS_CONSTANT * STANDARD_K * STANDARD_K * virial;
    }

    private static double debyeHueckelRange(double x) {
        return x == 0 ? 1 : -2 * (Math.expm1(-x) + x * Math.exp(-x)) / (x * x);
    }

    /**
     * Enthalpy per kilogram of brine, counted from its liquid water and its solid salt apart, both at 0 °C.
     *
     * <p>With it the balance of salted ice reads: mass of brine times this, plus mass of ice times the (negative)
     * enthalpy of ice over liquid water at 0 °C, stays what it was when water, salt and ice were put together.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return specific enthalpy in J/kg; positive at 0 °C, because dissolving takes heat
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double enthalpyOverWaterAndSalt(double temperatureK) {
        double apart = (1 - massFraction) * Water.liquid().specificEnthalpy(STANDARD_K)
                + massFraction * Salt.specificEnthalpy(STANDARD_K);
        double dissolved = apart + massFraction * heatOfSolution();
        return dissolved + specificEnthalpy(temperatureK) - specificEnthalpy(STANDARD_K);
    }

    @Override
    public String name() {
        return "brine, " + Percent.of(massFraction) + " % salt by mass";
    }

    @Override
    public double density(double temperatureK) {
        return Polynomials.value(densityTerms, argument(temperatureK));
    }

    @Override
    public double thermalExpansion(double temperatureK) {
        double y = argument(temperatureK);
        return -Polynomials.derivative(densityTerms, y) / Polynomials.value(densityTerms, y);
    }

    @Override
    public double specificHeatCapacity(double temperatureK) {
        return Polynomials.value(heatCapacityTerms, argument(temperatureK));
    }

    @Override
    public double specificEnthalpy(double temperatureK) {
        return Polynomials.antiderivative(heatCapacityTerms, argument(temperatureK))
                - Polynomials.antiderivative(heatCapacityTerms, -Y_REFERENCE);
    }

    @Override
    public double thermalConductivity(double temperatureK) {
        return Polynomials.value(conductivityTerms, argument(temperatureK));
    }

    @Override
    public double dynamicViscosity(double temperatureK) {
        return 1e-3 * Math.exp(Polynomials.value(lnViscosityTerms, argument(temperatureK)));
    }

    private static double argument(double temperatureK) {
        return RANGE.require(temperatureK, MELINDER) - CELSIUS_ZERO_K - Y_REFERENCE;
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
        return other instanceof Brine that && Double.compare(massFraction, that.massFraction) == 0;
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
