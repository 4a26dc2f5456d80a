/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * What a drink is made of: mass fractions that add up to 1, and dissolved gas apart.
 *
 * @param water mass fraction of water, above 0 to 1
 * @param ethanol mass fraction of ethanol; at most 0.6 of ethanol and water together
 * @param sucrose mass fraction of sucrose
 * @param invertSugar mass fraction of glucose and fructose
 * @param protein mass fraction of protein, 0 to 0.06
 * @param fat mass fraction of fat, 0 to 0.4
 * @param carbohydrate mass fraction of other dissolved extract: dextrins, milk sugar, glycerol, acids; together with
 *     the sugars at most 0.6 of the drink without protein, fat and ash
 * @param ash mass fraction of minerals, 0 to 0.02
 * @param carbonDioxideKgPerM3 dissolved carbon dioxide per volume of drink, 0 to 30 kg/m³ (= g/L); it is not part of
 *     the mass fractions and has no effect on the properties here
 */
public record Composition(
        double water,
        double ethanol,
        double sucrose,
        double invertSugar,
        double protein,
        double fat,
        double carbohydrate,
        double ash,
        double carbonDioxideKgPerM3) {

    /** How far from 1 the sum may be, as printed analyses are rounded no finer. */
    private static final double SUM_TOLERANCE = 1e-6;

    private static final double HIGHEST_SUGAR = 0.6;

    /**
     * Checks the parts.
     *
     * @param water mass fraction of water
     * @param ethanol mass fraction of ethanol
     * @param sucrose mass fraction of sucrose
     * @param invertSugar mass fraction of glucose and fructose
     * @param protein mass fraction of protein
     * @param fat mass fraction of fat
     * @param carbohydrate mass fraction of other dissolved extract
     * @param ash mass fraction of minerals
     * @param carbonDioxideKgPerM3 dissolved carbon dioxide in kg/m³
     * @throws OutOfRangeException if a part is outside its range or the fractions do not add up to 1
     * @throws IllegalArgumentException if a part is NaN or infinite
     */
    public Composition {
        require("water", water, Double.MIN_VALUE, 1);
        require("ethanol", ethanol, 0, 1);
        require("sucrose", sucrose, 0, 1);
        require("invert sugar", invertSugar, 0, 1);
        require("protein", protein, 0, 0.06);
        require("fat", fat, 0, 0.4);
        require("carbohydrate", carbohydrate, 0, 1);
        require("ash", ash, 0, 0.02);
        range("dissolved carbon dioxide", 30, "kg/m³").require(carbonDioxideKgPerM3, Inputs.LIMITS);
        double sugars = sucrose + invertSugar + carbohydrate;
        double sum = water + ethanol + sugars + protein + fat + ash;
        new ValidityRange("sum of the mass fractions", 1 - SUM_TOLERANCE, 1 + SUM_TOLERANCE, "1")
                .require(sum, Inputs.LIMITS);
        range("mass fraction of ethanol in ethanol and water", EthanolWater.HIGHEST_MASS_FRACTION, "1")
                .require(ethanol / (ethanol + water), EthanolWaterTables.MELINDER);
        range("mass fraction of sugar and other extract in water, ethanol and extract", HIGHEST_SUGAR, "1")
                .require(sugars / (water + ethanol + sugars), Inputs.LIMITS);
    }

    private static void require(String component, double fraction, double low, double high) {
        new ValidityRange("mass fraction of " + component, low, high, "1").require(fraction, Inputs.LIMITS);
    }

    private static ValidityRange range(String quantity, double high, String unit) {
        return new ValidityRange(quantity, 0, high, unit);
    }

    /**
     * Pure water.
     *
     * @return the composition
     */
    public static Composition ofWater() {
        return new Composition(1, 0, 0, 0, 0, 0, 0, 0, 0);
    }

    /**
     * Ethanol and water without anything else.
     *
     * @param massFraction mass of ethanol per mass of mixture, 0 to 0.6
     * @return the composition
     * @throws OutOfRangeException if the fraction is outside 0 to 0.6
     * @throws IllegalArgumentException if the fraction is NaN or infinite
     */
    public static Composition ofEthanolAndWater(double massFraction) {
        return new Composition(1 - massFraction, massFraction, 0, 0, 0, 0, 0, 0, 0);
    }

    /**
     * The same with another content of carbon dioxide.
     *
     * @param kgPerM3 dissolved carbon dioxide, 0 to 30 kg/m³
     * @return the composition
     * @throws OutOfRangeException if the content is outside the range
     * @throws IllegalArgumentException if the content is NaN or infinite
     */
    public Composition withCarbonDioxide(double kgPerM3) {
        return new Composition(water, ethanol, sucrose, invertSugar, protein, fat, carbohydrate, ash, kgPerM3);
    }

    /**
     * Sucrose and invert sugar together.
     *
     * @return mass fraction
     */
    public double sugar() {
        return sucrose + invertSugar;
    }

    /**
     * Mass fraction of ethanol in the ethanol and water alone.
     *
     * @return mass fraction, 0 to 0.6
     */
    double ethanolInSolvent() {
        return ethanol / (ethanol + water);
    }

    /** Everything that is neither water nor ethanol. */
    double solids() {
        return sucrose + invertSugar + protein + fat + carbohydrate + ash;
    }
}
