/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.AlcoholicStrength;
import org.beveragethermal.materials.units.SiValues;

/**
 * A drink: what it is, how strong it is, and its thermal properties.
 *
 * <p>A wine is described as the ethanol-water mixture of its strength ({@link EthanolWater}, including its continuation
 * above 40 °C). <b>Extract, sugar and dissolved carbon dioxide are not modelled yet.</b> For a dry wine with some 20 to
 * 30 g/L of extract this leaves the density about 1 % too low, the specific heat capacity about 2 % too high, the
 * conductivity about 1.5 % too high, the viscosity up to 10 % too low and the freezing point a few tenths of a kelvin
 * too high (the safe side for a warning); per 100 g/L of sugar in a sweet wine expect about +4 %, -6 %, -5 %, +35 % and
 * -0.7 K. These estimates are ours, by mixing with sucrose; {@link #properties()} carries those for a dry wine as
 * uncertainties. Immutable; equal by kind and strength.
 */
public final class Beverage implements Liquid {

    /** Kinds of drink. */
    public enum Kind {
        /** Drinking water. */
        WATER,
        /** Still wine. */
        WINE,
        /** Sparkling wine. */
        SPARKLING_WINE
    }

    private static final double WATER_FREEZING_K = 273.15;
    private static final double HIGHEST_WINE_STRENGTH = 0.25;

    private static final Source EXTRACT_LEFT_OUT = new Source(
            "extract left out",
            "own estimate of what leaving out 20 to 30 g/L of dry extract does to ethanol-water",
            Source.Kind.OWN_ASSUMPTION);

    private final Kind kind;
    private final Liquid liquid;
    private final double strengthByVolume;
    private final double freezingOnsetK;
    private final List<PropertyRecord> properties;

    private Beverage(
            Kind kind, Liquid liquid, double strengthByVolume, double freezingOnsetK, List<PropertyRecord> properties) {
        this.kind = kind;
        this.liquid = liquid;
        this.strengthByVolume = strengthByVolume;
        this.freezingOnsetK = freezingOnsetK;
        this.properties = properties;
    }

    /**
     * Still wine.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the strength is outside 0 to 25 % vol
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static Beverage wine(Quantity<AlcoholicStrength> strength) {
        return ofEthanolWater(Kind.WINE, strength);
    }

    /**
     * Sparkling wine; its carbon dioxide has no effect on the properties here.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the strength is outside 0 to 25 % vol
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static Beverage sparklingWine(Quantity<AlcoholicStrength> strength) {
        return ofEthanolWater(Kind.SPARKLING_WINE, strength);
    }

    /**
     * Drinking water, with the properties of pure water.
     *
     * @return the beverage
     */
    public static Beverage water() {
        Water water = Water.liquid();
        return new Beverage(Kind.WATER, water, 0, WATER_FREEZING_K, water.properties());
    }

    private static Beverage ofEthanolWater(Kind kind, Quantity<AlcoholicStrength> strength) {
        double fraction = SiValues.strengthByVolume(strength, "alcoholic strength", 0, HIGHEST_WINE_STRENGTH);
        EthanolWater mixture = EthanolWater.ofStrength(strength);
        return new Beverage(
                kind,
                mixture,
                fraction,
                EthanolWater.freezingTemperatureK(mixture.massFraction()),
                withExtractLeftOut(mixture));
    }

    private static List<PropertyRecord> withExtractLeftOut(EthanolWater mixture) {
        ValidityRange range = mixture.temperatureRange();
        Stream<PropertyRecord> own = Stream.of(
                new PropertyRecord("density", "kg/m³", range, Uncertainty.rectangularRelative(0.012), EXTRACT_LEFT_OUT),
                new PropertyRecord(
                        "specific heat capacity",
                        "J/(kg K)",
                        range,
                        Uncertainty.rectangularRelative(0.02),
                        EXTRACT_LEFT_OUT),
                new PropertyRecord(
                        "thermal conductivity",
                        "W/(m K)",
                        range,
                        Uncertainty.rectangularRelative(0.02),
                        EXTRACT_LEFT_OUT),
                new PropertyRecord(
                        "dynamic viscosity", "Pa s", range, Uncertainty.rectangularRelative(0.1), EXTRACT_LEFT_OUT),
                new PropertyRecord("freezing temperature", "K", range, Uncertainty.rectangular(0.5), EXTRACT_LEFT_OUT));
        return Stream.concat(mixture.properties().stream(), own).toList();
    }

    /**
     * Kind of drink.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Alcoholic strength by volume at 20 °C.
     *
     * @return strength as a fraction, 0 for water
     */
    public double strengthByVolume() {
        return strengthByVolume;
    }

    /**
     * Temperature at which the first ice forms at equilibrium; the drink may stay liquid some kelvins below it.
     *
     * @return temperature in K, at most 273.15
     */
    public double freezingOnsetK() {
        return freezingOnsetK;
    }

    @Override
    public String name() {
        return switch (kind) {
            case WATER -> "water";
            case WINE -> "wine, " + Percent.of(strengthByVolume) + " % vol";
            case SPARKLING_WINE -> "sparkling wine, " + Percent.of(strengthByVolume) + " % vol";
        };
    }

    @Override
    public double density(double temperatureK) {
        return liquid.density(temperatureK);
    }

    @Override
    public double specificHeatCapacity(double temperatureK) {
        return liquid.specificHeatCapacity(temperatureK);
    }

    @Override
    public double thermalConductivity(double temperatureK) {
        return liquid.thermalConductivity(temperatureK);
    }

    @Override
    public double dynamicViscosity(double temperatureK) {
        return liquid.dynamicViscosity(temperatureK);
    }

    @Override
    public double specificEnthalpy(double temperatureK) {
        return liquid.specificEnthalpy(temperatureK);
    }

    @Override
    public double thermalExpansion(double temperatureK) {
        return liquid.thermalExpansion(temperatureK);
    }

    @Override
    public ValidityRange temperatureRange() {
        return liquid.temperatureRange();
    }

    @Override
    public List<PropertyRecord> properties() {
        return properties;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Beverage that
                && kind == that.kind
                && Double.compare(strengthByVolume, that.strengthByVolume) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * kind.hashCode() + Double.hashCode(strengthByVolume);
    }

    @Override
    public String toString() {
        return name();
    }
}
