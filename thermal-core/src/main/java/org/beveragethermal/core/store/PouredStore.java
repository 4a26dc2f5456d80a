/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;

/**
 * A well-mixed drink that is poured, drunk from or evaporates: its one amount is its mass [kg], which may be 0. A {@link Beverage} freezes
 * and thaws as in a {@link FreezingStore}; another liquid stays liquid.
 *
 * <p>A node of no mass and no enthalpy is at 0 °C, with the heat capacity of a milligram, so that a solver may carry it along while
 * nothing is joined to it. What evaporates is taken to leave the drink as strong as it was. Immutable and thread-safe.
 */
public final class PouredStore implements Store {

    /** Index of the mass [kg]. */
    public static final int MASS = 0;

    /** Keeps the temperature defined where there is nothing [kg]. */
    private static final double SMALLEST_MASS_KG = 1e-6;

    /** Heat of evaporation, by which errors of mass are weighed [J/kg]. */
    private static final double MASS_ERROR_J_PER_KG = 2.4e6;

    private final Store kilogram;

    private PouredStore(Store kilogram) {
        this.kilogram = kilogram;
    }

    /**
     * A drink of any mass.
     *
     * @param liquid the drink
     * @return the store, with one amount: mass [kg]
     */
    public static PouredStore of(Liquid liquid) {
        return new PouredStore(
                liquid instanceof Beverage drink ? FreezingStore.ofMass(drink, 1) : LiquidStore.ofMass(liquid, 1));
    }

    /**
     * Temperature at which ice begins to form.
     *
     * @return temperature [K]; 0 for a liquid of which no freezing curve is known
     */
    public double freezingOnsetK() {
        return kilogram instanceof FreezingStore store ? store.freezingOnsetK() : 0;
    }

    /**
     * Mass of ice per mass of drink and ice.
     *
     * @param enthalpyJ enthalpy of the node [J], finite
     * @param massKg its mass [kg], finite
     * @return part [-], 0 to 1; 0 where there is nothing
     * @throws IllegalArgumentException if a number is not finite
     */
    public double iceFraction(double enthalpyJ, double massKg) {
        if (!Double.isFinite(massKg)) {
            throw new IllegalArgumentException("mass " + massKg + " kg: expected a finite number");
        }
        return kilogram instanceof FreezingStore store ? store.iceFractionAtEnthalpy(enthalpyJ / held(massKg)) : 0;
    }

    private static double held(double massKg) {
        return Math.max(massKg, SMALLEST_MASS_KG);
    }

    @Override
    public int amountCount() {
        return 1;
    }

    @Override
    public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
        double mass = held(amounts[offset]);
        double h = enthalpyJ / mass;
        kilogram.evaluate(h, amounts, offset, out);
        double slope = out.temperaturePerJoule;
        double capacity = out.kelvinPerJoule;
        out.temperaturePerJoule = slope / mass;
        out.kelvinPerJoule = capacity / mass;
        out.temperaturePerAmount[MASS] = amounts[offset] > SMALLEST_MASS_KG ? -slope * h / mass : 0;
        out.kelvinPerAmount[MASS] = MASS_ERROR_J_PER_KG * capacity / mass;
    }

    @Override
    public double enthalpyJ(double temperatureK, double... amounts) {
        return amounts[MASS] * kilogram.enthalpyJ(temperatureK);
    }
}
