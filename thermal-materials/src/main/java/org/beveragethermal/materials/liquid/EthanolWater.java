/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import javax.measure.Quantity;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.AlcoholicStrength;

/**
 * A liquid mixture of ethanol and water, 0 to 60 % ethanol by mass, -20 °C to 80 °C.
 *
 * <p>Density and alcoholic strength follow the general formula of OIML R 22 (-20 to 40 °C, tables reproduced to
 * 0.005 kg/m³); specific heat capacity, thermal conductivity and viscosity follow Melinder's polynomials (IIR 2010, up
 * to 40 °C). Those polynomials rest on tables from 11 % by mass upwards; below that, where wine lies, they are
 * continued towards water, which at 0 % they meet within 0.6 % (heat capacity), 1.1 % (conductivity) and 0.3 %
 * (viscosity). Use {@link Water} for water itself.
 *
 * <p><b>Above 40 °C</b>, up to 80 °C, the viscosity falls as Bingham and Jackson (1917) tabulated it, in proportion to its
 * value at 40 °C. No formula is published for the other properties; they are continued from 40 °C: density along the
 * parabola that touches it there, conductivity along its tangent, the specific heat capacity unchanged. What could be
 * found to hold this against agrees: without ethanol, water at 80 °C (0.09 % in density, 3 % in conductivity, 1 % in
 * viscosity); at 18.6 % by mass, densities from measured excess volumes up to 65 °C (0.01 %); from 20 to 60 % by mass, heat
 * capacities from measured heats of mixing (3 % up to 30 % by mass, 7 % above, where the rising heat capacity of ethanol is
 * missed). Below the freezing point the mixture is described as a supercooled liquid. {@link #properties()} lists the
 * larger uncertainty of the continuation.
 *
 * <p>Unlike water, the mixture has its greatest density near or below the freezing point (near -0.6 °C at 12.5 % vol):
 * do not expect an inversion at 4 °C. Immutable; equal by mass fraction.
 */
public final class EthanolWater implements Liquid {
    private static final double CELSIUS_ZERO_K = 273.15;
    private static final double DENSITY_REFERENCE_CELSIUS = 20;
    private static final double LAST_PUBLISHED_CELSIUS = 40;
    private static final double LAST_PUBLISHED_K = 313.15;
    static final double HIGHEST_MASS_FRACTION = 0.6;

    private static final ValidityRange RANGE = new ValidityRange("temperature of ethanol-water", 253.15, 353.15, "K");
    private static final ValidityRange PUBLISHED =
            new ValidityRange("temperature of ethanol-water", 253.15, LAST_PUBLISHED_K, "K");
    private static final ValidityRange CONTINUED =
            new ValidityRange("temperature of ethanol-water", LAST_PUBLISHED_K, 353.15, "K");
    private static final ValidityRange MASS_FRACTIONS =
            new ValidityRange("mass fraction of ethanol", 0, HIGHEST_MASS_FRACTION, "1");
    private static final ValidityRange ANY_FRACTION = new ValidityRange("mass fraction of ethanol", 0, 1, "1");
    private static final ValidityRange ANY_STRENGTH = new ValidityRange("alcoholic strength", 0, 1, "1");

    /**
     * Density of ethanol at 20 °C by the formula itself, 789.2391 kg/m³ (printed as 789.24), so that a mass fraction of
     * 1 is a strength of exactly 1.
     */
    static final double ETHANOL_DENSITY_20 = Polynomials.value(EthanolWaterTables.A, 1);

    private static final Source CONTINUATION = new Source(
            "continued above 40 °C",
            "own continuation of OIML R 22 and Melinder (2010) from 40 °C: parabola for density, tangent for conductivity,"
                    + " constant specific heat capacity",
            Source.Kind.OWN_ASSUMPTION);

    /** Up to this mass fraction the heat capacity of the hot mixture is known better. */
    private static final double STRONG = 0.3;

    private static final List<PropertyRecord> PROPERTIES = records(0.03);
    private static final List<PropertyRecord> PROPERTIES_OF_STRONG = records(0.07);

    private final double massFraction;
    private final double strengthByVolume;
    /** Density in kg/m³ as a polynomial in t/°C - 20. */
    private final double[] densityTerms;
    /** Specific heat capacity in J/(kg K) as a polynomial in t/°C - Y_REFERENCE. */
    private final double[] heatCapacityTerms;
    /** Conductivity in W/(m K) as a polynomial in t/°C - Y_REFERENCE. */
    private final double[] conductivityTerms;
    /** ln(viscosity/mPa s) as a polynomial in t/°C - Y_REFERENCE. */
    private final double[] lnViscosityTerms;

    /** Fall of ln(viscosity) from 40 °C upwards as a polynomial in kelvins above 40 °C. */
    private final double[] fallOfLnViscosity;

    /** Unchecked; the factories check the range. */
    EthanolWater(double massFraction) {
        double x = 100 * massFraction - EthanolWaterTables.X_REFERENCE;
        this.massFraction = massFraction;
        this.strengthByVolume = strengthFromMassFraction(massFraction);
        this.densityTerms = densityTerms(massFraction);
        this.heatCapacityTerms = Polynomials.collapse(EthanolWaterTables.SPECIFIC_HEAT_CAPACITY, x);
        this.conductivityTerms = Polynomials.collapse(EthanolWaterTables.THERMAL_CONDUCTIVITY, x);
        this.lnViscosityTerms = Polynomials.collapse(EthanolWaterTables.LN_VISCOSITY, x);
        this.fallOfLnViscosity = EthanolWaterTables.fallOfLnViscosity(massFraction);
    }

    private static List<PropertyRecord> records(double continuedHeatCapacity) {
        return List.of(
                record("density", "kg/m³", PUBLISHED, Uncertainty.rectangular(0.05), EthanolWaterTables.OIML_R_22),
                record("density", "kg/m³", CONTINUED, Uncertainty.rectangularRelative(0.003), CONTINUATION),
                record(
                        "specific heat capacity",
                        "J/(kg K)",
                        PUBLISHED,
                        Uncertainty.rectangularRelative(0.012),
                        EthanolWaterTables.MELINDER),
                record(
                        "specific heat capacity",
                        "J/(kg K)",
                        CONTINUED,
                        Uncertainty.rectangularRelative(continuedHeatCapacity),
                        CONTINUATION),
                record(
                        "thermal conductivity",
                        "W/(m K)",
                        PUBLISHED,
                        Uncertainty.rectangularRelative(0.02),
                        EthanolWaterTables.MELINDER),
                record(
                        "thermal conductivity",
                        "W/(m K)",
                        CONTINUED,
                        Uncertainty.rectangularRelative(0.05),
                        CONTINUATION),
                record(
                        "dynamic viscosity",
                        "Pa s",
                        PUBLISHED,
                        Uncertainty.rectangularRelative(0.035),
                        EthanolWaterTables.MELINDER),
                record(
                        "dynamic viscosity",
                        "Pa s",
                        CONTINUED,
                        Uncertainty.rectangularRelative(0.06),
                        EthanolWaterTables.BINGHAM_JACKSON),
                record(
                        "freezing temperature",
                        "K",
                        MASS_FRACTIONS,
                        Uncertainty.rectangular(1.1),
                        new Source(
                                "warmer of two",
                                "the warmer of Lange's Handbook of Chemistry, table 5.13, and Melinder (2010), which differ"
                                        + " by up to 1.1 K",
                                Source.Kind.OWN_COMPUTATION)));
    }

    private static PropertyRecord record(
            String property, String unit, ValidityRange validity, Uncertainty uncertainty, Source source) {
        return new PropertyRecord(property, unit, validity, uncertainty, source);
    }

    /** Density of any mixture in kg/m³ straight from the formula, -25 to 40 °C, without allocating. */
    static double density(double p, double temperatureK) {
        double d = temperatureK - CELSIUS_ZERO_K - DENSITY_REFERENCE_CELSIUS;
        double sum = 0;
        for (int i = EthanolWaterTables.B.length - 1; i >= 0; i--) {
            sum = (sum + densityTerm(p, i)) * d;
        }
        return Polynomials.value(EthanolWaterTables.A, p) + sum;
    }

    private static double densityTerm(double p, int i) {
        double mixed = i < EthanolWaterTables.C.length ? p * Polynomials.value(EthanolWaterTables.C[i], p) : 0;
        return EthanolWaterTables.B[i] + mixed;
    }

    /** Terms of the density at a mass fraction from 0 to 1, as a polynomial in t/°C - 20. */
    static double[] densityTerms(double p) {
        double[] terms = new double[EthanolWaterTables.B.length + 1];
        terms[0] = Polynomials.value(EthanolWaterTables.A, p);
        for (int i = 0; i < EthanolWaterTables.B.length; i++) {
            terms[i + 1] = densityTerm(p, i);
        }
        return terms;
    }

    /**
     * The mixture with a given mass fraction of ethanol.
     *
     * @param massFraction mass of ethanol per mass of mixture, 0 to 0.6
     * @return the liquid
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the fraction is outside 0 to 0.6
     * @throws IllegalArgumentException if the fraction is NaN or infinite
     */
    public static EthanolWater ofMassFraction(double massFraction) {
        return new EthanolWater(MASS_FRACTIONS.require(massFraction, EthanolWaterTables.MELINDER));
    }

    /**
     * The mixture with a given alcoholic strength by volume at 20 °C.
     *
     * @param strength alcoholic strength, 0 to about 67.7 % vol (60 % by mass)
     * @return the liquid
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the strength is outside that range
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static EthanolWater ofStrength(Quantity<AlcoholicStrength> strength) {
        double highest = strengthFromMassFraction(HIGHEST_MASS_FRACTION);
        return new EthanolWater(
                massFractionFromStrength(Inputs.strength(strength, highest, EthanolWaterTables.MELINDER)));
    }

    /**
     * Alcoholic strength by volume of a mixture: its mass of ethanol, as a volume of pure ethanol at 20 °C, per volume
     * of mixture at 20 °C. OIML R 22.
     *
     * @param massFraction mass of ethanol per mass of mixture, 0 to 1
     * @return strength by volume at 20 °C as a fraction, 0 to 1
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the fraction is outside 0 to 1
     * @throws IllegalArgumentException if the fraction is NaN or infinite
     */
    public static double strengthFromMassFraction(double massFraction) {
        ANY_FRACTION.require(massFraction, EthanolWaterTables.OIML_R_22);
        return massFraction * Polynomials.value(EthanolWaterTables.A, massFraction) / ETHANOL_DENSITY_20;
    }

    /**
     * Mass fraction of a mixture from its alcoholic strength by volume at 20 °C; the inverse of
     * {@link #strengthFromMassFraction(double)}, to rounding.
     *
     * @param strengthByVolume strength by volume at 20 °C as a fraction, 0 to 1
     * @return mass of ethanol per mass of mixture, 0 to 1
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the strength is outside 0 to 1
     * @throws IllegalArgumentException if the strength is NaN or infinite
     */
    public static double massFractionFromStrength(double strengthByVolume) {
        ANY_STRENGTH.require(strengthByVolume, EthanolWaterTables.OIML_R_22);
        // The strength grows monotonically with the mass fraction; bisection down to neighbouring doubles cannot fail.
        double low = 0;
        double high = 1;
        double middle = 0.5;
        while (low < middle && middle < high) {
            if (strengthFromMassFraction(middle) < strengthByVolume) {
                low = middle;
            } else {
                high = middle;
            }
            middle = low + (high - low) / 2;
        }
        return strengthByVolume == 0 ? 0 : high;
    }

    /**
     * Temperature at which a mixture begins to freeze: the warmer of Lange's table (to 39 % by mass, linear between its
     * points) and Melinder's polynomial, never above 0 °C. The warmer curve is the safe one for a freezing warning; the
     * two differ by up to 1.1 K near 30 % by mass, and by less than 0.2 K up to 11 %.
     *
     * @param massFraction mass of ethanol per mass of mixture, 0 to 0.6
     * @return freezing temperature and the source that set it
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the fraction is outside 0 to 0.6
     * @throws IllegalArgumentException if the fraction is NaN or infinite
     */
    public static FreezingPoint freezingPoint(double massFraction) {
        MASS_FRACTIONS.require(massFraction, EthanolWaterTables.MELINDER);
        double percent = 100 * massFraction;
        double melinder = melinderFreezingCelsius(percent);
        double[] tabulated = EthanolWaterTables.LANGE_MASS_PERCENT;
        if (percent <= tabulated[tabulated.length - 1]) {
            double lange = langeFreezingCelsius(percent);
            if (lange >= melinder) {
                return new FreezingPoint(CELSIUS_ZERO_K + lange, EthanolWaterTables.LANGE);
            }
        }
        return new FreezingPoint(CELSIUS_ZERO_K + melinder, EthanolWaterTables.MELINDER);
    }

    static double melinderFreezingCelsius(double percent) {
        return Math.min(0, freezingCelsius(percent));
    }

    /**
     * Melinder's polynomial as it stands, in °C by per cent ethanol by mass; without ethanol it ends near, not at, 0
     * °C.
     */
    static double freezingCelsius(double percent) {
        return Polynomials.value(EthanolWaterTables.FREEZING, percent - EthanolWaterTables.X_REFERENCE);
    }

    /** Derivative of {@link #freezingCelsius}, K per per cent, less than 0. */
    static double freezingSlope(double percent) {
        return Polynomials.derivative(EthanolWaterTables.FREEZING, percent - EthanolWaterTables.X_REFERENCE);
    }

    private static double langeFreezingCelsius(double percent) {
        double[] x = EthanolWaterTables.LANGE_MASS_PERCENT;
        double[] y = EthanolWaterTables.LANGE_FREEZING_CELSIUS;
        int upper = 1;
        while (x[upper] < percent) {
            upper++;
        }
        int lower = upper - 1;
        return y[lower] + (y[upper] - y[lower]) * (percent - x[lower]) / (x[upper] - x[lower]);
    }

    /**
     * Temperature at which a mixture begins to freeze; see {@link #freezingPoint(double)}.
     *
     * @param massFraction mass of ethanol per mass of mixture, 0 to 0.6
     * @return freezing temperature in K
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the fraction is outside 0 to 0.6
     * @throws IllegalArgumentException if the fraction is NaN or infinite
     */
    public static double freezingTemperatureK(double massFraction) {
        return freezingPoint(massFraction).temperatureK();
    }

    /**
     * Mass of ethanol per mass of mixture.
     *
     * @return mass fraction, 0 to 0.6
     */
    public double massFraction() {
        return massFraction;
    }

    /**
     * Alcoholic strength by volume at 20 °C.
     *
     * @return strength as a fraction
     */
    public double strengthByVolume() {
        return strengthByVolume;
    }

    @Override
    public String name() {
        return "ethanol-water, " + Percent.of(massFraction) + " % by mass";
    }

    @Override
    public double density(double temperatureK) {
        double t = celsius(temperatureK);
        double d = densityArgument(t);
        double beyond = beyond(t);
        return Polynomials.value(densityTerms, d)
                + beyond
                        * (Polynomials.derivative(densityTerms, d)
                                + beyond / 2 * Polynomials.secondDerivative(densityTerms, d));
    }

    @Override
    public double thermalExpansion(double temperatureK) {
        double t = celsius(temperatureK);
        double d = densityArgument(t);
        double slope =
                Polynomials.derivative(densityTerms, d) + beyond(t) * Polynomials.secondDerivative(densityTerms, d);
        return -slope / density(temperatureK);
    }

    private static double densityArgument(double t) {
        return Math.min(t, LAST_PUBLISHED_CELSIUS) - DENSITY_REFERENCE_CELSIUS;
    }

    @Override
    public double specificHeatCapacity(double temperatureK) {
        return Polynomials.value(heatCapacityTerms, melinderY(celsius(temperatureK)));
    }

    @Override
    public double specificEnthalpy(double temperatureK) {
        double t = celsius(temperatureK);
        double y = melinderY(t);
        return Polynomials.antiderivative(heatCapacityTerms, y)
                - Polynomials.antiderivative(heatCapacityTerms, -EthanolWaterTables.Y_REFERENCE)
                + beyond(t) * Polynomials.value(heatCapacityTerms, y);
    }

    @Override
    public double thermalConductivity(double temperatureK) {
        double t = celsius(temperatureK);
        double y = melinderY(t);
        return Polynomials.value(conductivityTerms, y) + beyond(t) * Polynomials.derivative(conductivityTerms, y);
    }

    @Override
    public double dynamicViscosity(double temperatureK) {
        double t = celsius(temperatureK);
        return 1e-3
                * Math.exp(Polynomials.value(lnViscosityTerms, melinderY(t))
                        - Polynomials.value(fallOfLnViscosity, beyond(t)));
    }

    private static double celsius(double temperatureK) {
        Source limit = temperatureK > LAST_PUBLISHED_K ? CONTINUATION : EthanolWaterTables.OIML_R_22;
        return RANGE.require(temperatureK, limit) - CELSIUS_ZERO_K;
    }

    private static double melinderY(double t) {
        return Math.min(t, LAST_PUBLISHED_CELSIUS) - EthanolWaterTables.Y_REFERENCE;
    }

    /** Kelvins beyond the published range. */
    private static double beyond(double t) {
        return Math.max(0, t - LAST_PUBLISHED_CELSIUS);
    }

    @Override
    public ValidityRange temperatureRange() {
        return RANGE;
    }

    @Override
    public List<PropertyRecord> properties() {
        return massFraction > STRONG ? PROPERTIES_OF_STRONG : PROPERTIES;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof EthanolWater that && Double.compare(massFraction, that.massFraction) == 0;
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
