/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.Ice;

/**
 * A drink with as much ice in it as belongs to its temperature, from -25 °C to the upper end of the liquid's range.
 *
 * <p>Ice is pure water, so what stays liquid grows stronger and freezes at ever lower temperatures; only water itself
 * freezes at one temperature. The curve begins at the onset, the warmer one where published curves differ, and follows
 * below it Melinder's polynomial for ethanol-water and the published table for sugar, shifted so as to begin there.
 *
 * <p>Enthalpy is that of the drink held liquid, less what the frozen water gives up in turning into ice at that
 * temperature, as pure water. <b>Left out</b> is that the ethanol, concentrated in what stays liquid, takes up again some
 * of the heat it gave when it was mixed with water: a real drink gives off less heat in freezing, in wine of 12.5 % vol 4 %
 * less down to -10 °C and 7 % less down to -20 °C (estimated from heats of mixing at 25 °C), so that times to freeze and to
 * thaw come out a little long. The stated uncertainty of the enthalpy covers it: 6 %, and 10 % above 15 % vol. Volume is that
 * of the ice, of the remaining ethanol and water at their own strength, and of the rest. Below -20 °C, where the formulas for
 * liquids end, they are continued. Enthalpy has the zero of {@link Beverage#specificEnthalpy(double)}, the liquid at 0 °C, and
 * its derivative is exactly {@link #apparentHeatCapacity(double)}, except at 0 °C for water, where it jumps.
 *
 * <p><b>Supercooling.</b> All this holds once ice has formed. An undisturbed drink often stays liquid some kelvins,
 * sometimes ten, below the onset and then freezes in a moment when it is moved or opened: staying above the onset is
 * safe, staying below it without ice is luck. Sugar that crystallises below about -14 °C is not covered; the liquid
 * stays syrup here.
 *
 * <p>Immutable; equal by beverage. Methods allocate nothing.
 */
public final class FreezingCurve {
    private static final double LOWEST_K = 248.15;
    private static final double LIQUID_LOWEST_K = 253.15;

    /** Strength by volume above which the heat of mixing that is left out matters more. */
    private static final double STRONG = 0.15;

    private static final Source OWN_RULE = new Source(
            "freezing of drinks",
            "own rule: pure ice in balance with the remaining liquid, depressions of ethanol (Melinder 2010), sugar (Goff-Hartel 2013)"
                    + " and minerals added up; heat of mixing left out",
            Source.Kind.OWN_ASSUMPTION);

    private final Beverage beverage;
    private final Liquidus liquidus;
    private final double water;
    private final double onsetK;
    private final ValidityRange range;
    private final List<PropertyRecord> properties;

    private FreezingCurve(Beverage beverage) {
        this.beverage = beverage;
        this.liquidus = beverage.liquidus();
        this.water = beverage.composition().water();
        this.onsetK = liquidus.onset().temperatureK();
        this.range = new ValidityRange(
                "temperature of a freezing drink",
                LOWEST_K,
                beverage.temperatureRange().high(),
                "K");
        this.properties = List.of(
                record("ice fraction", "1", Uncertainty.rectangular(0.04)),
                record(
                        "enthalpy with ice",
                        "J/kg",
                        Uncertainty.rectangularRelative(beverage.strengthByVolume() > STRONG ? 0.1 : 0.06)),
                record("apparent heat capacity", "J/(kg K)", Uncertainty.rectangularRelative(0.2)),
                record("specific volume with ice", "m³/kg", Uncertainty.rectangularRelative(0.006)));
    }

    private PropertyRecord record(String property, String unit, Uncertainty uncertainty) {
        return new PropertyRecord(property, unit, range, uncertainty, OWN_RULE);
    }

    /**
     * The freezing of a drink.
     *
     * @param beverage the drink
     * @return its curve
     */
    public static FreezingCurve of(Beverage beverage) {
        return new FreezingCurve(beverage);
    }

    /**
     * The drink.
     *
     * @return the beverage
     */
    public Beverage beverage() {
        return beverage;
    }

    /**
     * Temperature at which the first ice forms at equilibrium, and the curve that set it.
     *
     * @return the freezing point
     */
    public FreezingPoint onset() {
        return liquidus.onset();
    }

    /**
     * Mass of ice per mass of drink at equilibrium.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return 0 from the onset upwards, rising below it, less than the mass fraction of water; for water 1 below 0 °C
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double iceFraction(double temperatureK) {
        return ice(checked(temperatureK));
    }

    private double ice(double temperatureK) {
        if (temperatureK >= onsetK) {
            return 0;
        }
        return liquidus.hasSolute() ? Math.max(0, water - liquidus.liquidWater(temperatureK)) : water;
    }

    /**
     * Alcoholic strength of the liquid that is left between the ice, by volume at 20 °C and without its sugar.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return strength as a fraction, rising as it gets colder; 0 for a drink that freezes like water
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double remainingStrength(double temperatureK) {
        double ethanol = beverage.composition().ethanol();
        if (ethanol == 0 || !liquidus.hasSolute()) {
            checked(temperatureK);
            return 0;
        }
        double liquidWater = water - ice(checked(temperatureK));
        return EthanolWater.strengthFromMassFraction(ethanol / (ethanol + liquidWater));
    }

    /**
     * Enthalpy per kilogram of drink and ice, counted from the liquid drink at 0 °C.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return specific enthalpy in J/kg; that of the liquid from the onset upwards
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double specificEnthalpyWithIce(double temperatureK) {
        double t = checked(temperatureK);
        double ice = ice(t);
        double liquid = continuedEnthalpy(beverage, t);
        return ice == 0 ? liquid : liquid - ice * fusionHeat(t);
    }

    /**
     * Heat per kilogram and kelvin including that of freezing or melting: the derivative of {@link
     * #specificEnthalpyWithIce}. It jumps at the onset, where the first ice forms.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return apparent specific heat capacity in J/(kg K), greater than 0
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double apparentHeatCapacity(double temperatureK) {
        double t = checked(temperatureK);
        double ice = ice(t);
        double sensible = sensible(t, ice);
        return t < onsetK && liquidus.hasSolute() ? sensible + fusionHeat(t) / liquidus.slopeK(water - ice) : sensible;
    }

    /**
     * Heat per kilogram and kelvin of the liquid and the ice as they are, without any freezing or melting: what tables of
     * foods print as the specific heat below freezing.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return specific heat capacity in J/(kg K), greater than 0, at most {@link #apparentHeatCapacity(double)}
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double sensibleHeatCapacity(double temperatureK) {
        double t = checked(temperatureK);
        return sensible(t, ice(t));
    }

    private double sensible(double temperatureK, double ice) {
        double inside = inLiquidRange(temperatureK);
        double liquid = beverage.specificHeatCapacity(inside);
        return ice == 0
                ? liquid
                : liquid - ice * (Water.liquid().specificHeatCapacity(inside) - Ice.specificHeatCapacity(temperatureK));
    }

    /**
     * Volume per kilogram of drink and ice, for the question whether it still fits.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return specific volume in m³/kg
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double specificVolume(double temperatureK) {
        double t = checked(temperatureK);
        if (t >= onsetK && t >= LIQUID_LOWEST_K) {
            return 1 / beverage.density(t);
        }
        double ice = ice(t);
        double liquidWater = water - ice;
        return ice / Ice.density(t) + solventVolume(liquidWater, t) + solidsVolume(t);
    }

    /**
     * Growth of the volume from one temperature to another, as a fraction of the volume at the first.
     *
     * @param fromK temperature in K at which it was filled, inside {@link #temperatureRange()}
     * @param toK temperature in K it reaches, inside {@link #temperatureRange()}
     * @return relative growth; a vessel whose headspace is a smaller fraction of its contents overflows or bursts
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a temperature is outside the range
     * @throws IllegalArgumentException if a temperature is NaN or infinite
     */
    public double expansion(double fromK, double toK) {
        return specificVolume(toK) / specificVolume(fromK) - 1;
    }

    private static double fusionHeat(double temperatureK) {
        return continuedEnthalpy(Water.liquid(), temperatureK) - Ice.specificEnthalpy(temperatureK);
    }

    private static double inLiquidRange(double temperatureK) {
        return Math.max(temperatureK, LIQUID_LOWEST_K);
    }

    private static double continuedEnthalpy(Liquid liquid, double temperatureK) {
        double inside = inLiquidRange(temperatureK);
        double enthalpy = liquid.specificEnthalpy(inside);
        return temperatureK == inside
                ? enthalpy
                : enthalpy + liquid.specificHeatCapacity(inside) * (temperatureK - inside);
    }

    /** Volume of the ethanol and the liquid water of a kilogram of drink, m³. */
    private double solventVolume(double liquidWater, double temperatureK) {
        double ethanol = beverage.composition().ethanol();
        if (ethanol == 0 || !liquidus.hasSolute()) {
            double inside = inLiquidRange(temperatureK);
            double expansion = Water.liquid().thermalExpansion(inside) * (temperatureK - inside);
            return liquidWater / Water.liquid().density(inside) * (1 + expansion);
        }
        double solvent = ethanol + liquidWater;
        return solvent / EthanolWater.density(ethanol / solvent, temperatureK);
    }

    /** What everything but ethanol and water adds to the volume of a kilogram of drink, m³. */
    private double solidsVolume(double temperatureK) {
        double inside = inLiquidRange(temperatureK);
        return 1 / beverage.density(inside) - solventVolume(water, inside);
    }

    private double checked(double temperatureK) {
        return range.require(temperatureK, OWN_RULE);
    }

    /**
     * Range of temperatures, ends included.
     *
     * @return the range in K
     */
    public ValidityRange temperatureRange() {
        return range;
    }

    /**
     * Where the figures come from and how well they are known.
     *
     * @return the records, unmodifiable
     */
    public List<PropertyRecord> properties() {
        return properties;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FreezingCurve that && beverage.equals(that.beverage);
    }

    @Override
    public int hashCode() {
        return beverage.hashCode();
    }

    @Override
    public String toString() {
        return "freezing of " + beverage;
    }
}
