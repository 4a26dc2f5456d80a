/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * A drink as its label or analysis gives it, per volume at 20 °C, to be turned into mass fractions.
 *
 * @param strength ethanol by volume, fraction
 * @param sucrose kg/m³
 * @param invertSugar kg/m³
 * @param extract other dissolved extract, kg/m³
 * @param protein kg/m³
 * @param ash kg/m³
 * @param fat mass fraction
 */
record Recipe(
        double strength, double sucrose, double invertSugar, double extract, double protein, double ash, double fat) {

    private static final double REFERENCE_K = 293.15;
    private static final double FIRST_GUESS = 1000;
    private static final int MOST_ROUNDS = 100;
    private static final double SAME = 1e-14;

    static Recipe of(double strength, double sucrose, double invertSugar, double extract) {
        return new Recipe(strength, sucrose, invertSugar, extract, 0, 0, 0);
    }

    /** The density that turns volumes into masses follows from the composition itself: repeated until it stays. */
    Composition composition() {
        if (isEthanolAndWater()) {
            return Composition.ofEthanolAndWater(EthanolWater.massFractionFromStrength(strength));
        }
        double density = FIRST_GUESS;
        Composition composition = atDensity(density);
        for (int i = 0; i < MOST_ROUNDS; i++) {
            double next = DrinkMixture.of("", composition).density(REFERENCE_K);
            boolean settled = Math.abs(next - density) <= SAME * next;
            density = next;
            composition = atDensity(density);
            if (settled) {
                break;
            }
        }
        return composition;
    }

    private boolean isEthanolAndWater() {
        return sucrose == 0 && invertSugar == 0 && extract == 0 && protein == 0 && ash == 0 && fat == 0;
    }

    private Composition atDensity(double density) {
        double ethanol = strength * EthanolWater.ETHANOL_DENSITY_20;
        double water = 1 - fat - (ethanol + sucrose + invertSugar + extract + protein + ash) / density;
        if (!(water > 0)) {
            throw OutOfRangeException.refusal(
                    "mass fraction of water",
                    water,
                    Double.MIN_VALUE,
                    1,
                    "1",
                    "strength, sugar and fat leave no water");
        }
        return new Composition(
                water,
                ethanol / density,
                sucrose / density,
                invertSugar / density,
                protein / density,
                fat,
                extract / density,
                ash / density,
                0);
    }

    /** Strength by volume at 20 °C of any composition. */
    static double strengthByVolume(Composition composition) {
        if (composition.solids() == 0) {
            return EthanolWater.strengthFromMassFraction(composition.ethanol());
        }
        double density = DrinkMixture.of("", composition).density(REFERENCE_K);
        return composition.ethanol() * density / EthanolWater.ETHANOL_DENSITY_20;
    }
}
