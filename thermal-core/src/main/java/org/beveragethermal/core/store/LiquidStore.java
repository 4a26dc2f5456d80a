/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.materials.liquid.Liquid;

/**
 * A well-mixed liquid: enthalpy from the integral of its own specific heat capacity.
 *
 * <p>Of fixed mass, or with its mass [kg] as the one amount (a bath that takes up melt water).
 *
 * <p>Theory manual, equation (2.1).
 */
public final class LiquidStore implements Store {

    /** Keeps the temperature defined while an implicit step looks at a mass of nearly nothing [kg]. */
    private static final double SMALLEST_MASS_KG = 1e-9;

    /** Heat that a kilogram of water carries when it comes from ice, to weigh errors of mass [J/kg]. */
    private static final double MASS_ERROR_J_PER_KG = 3.3e5;

    private static final double ZERO_CELSIUS_K = 273.15;

    private final SmoothFunction temperatureOfEnthalpy;
    private final SmoothFunction specificEnthalpy;
    private final double fixedMassKg;

    private LiquidStore(SmoothFunction temperatureOfEnthalpy, SmoothFunction specificEnthalpy, double fixedMassKg) {
        this.temperatureOfEnthalpy = temperatureOfEnthalpy;
        this.specificEnthalpy = specificEnthalpy;
        this.fixedMassKg = fixedMassKg;
    }

    private static LiquidStore of(Liquid liquid, double fixedMassKg) {
        LiquidFit fit = LiquidFit.of(liquid);
        return new LiquidStore(fit.temperatureOfEnthalpy(), fit.specificEnthalpy(), fixedMassKg);
    }

    /**
     * A liquid of fixed mass.
     *
     * @param liquid the liquid
     * @param massKg mass [kg], finite, > 0
     * @return the store
     * @throws IllegalArgumentException if the mass is not finite and positive
     */
    public static LiquidStore ofMass(Liquid liquid, double massKg) {
        if (!(massKg > 0) || Double.isInfinite(massKg)) {
            throw new IllegalArgumentException(
                    "mass of " + liquid.name() + " " + massKg + " kg: expected a finite value above 0");
        }
        return of(liquid, massKg);
    }

    /**
     * A liquid whose mass is an amount of the node.
     *
     * @param liquid the liquid; its enthalpy must count from liquid water at 0 °C if it exchanges mass
     * @return the store, with one amount: mass [kg]
     */
    public static LiquidStore ofVaryingMass(Liquid liquid) {
        return of(liquid, Double.NaN);
    }

    /**
     * A liquid of constant heat capacity whose mass is an amount of the node.
     *
     * @param specificHeatCapacity [J/(kg K)], finite, > 0
     * @return the store, with one amount: mass [kg]
     * @throws IllegalArgumentException if the heat capacity is not finite and positive
     */
    public static LiquidStore ofVaryingMass(double specificHeatCapacity) {
        if (!(specificHeatCapacity > 0) || Double.isInfinite(specificHeatCapacity)) {
            throw new IllegalArgumentException(
                    "specific heat capacity " + specificHeatCapacity + " J/(kg K): expected a finite value above 0");
        }
        return new LiquidStore(
                line(ZERO_CELSIUS_K, 1 / specificHeatCapacity, 0),
                line(0, specificHeatCapacity, ZERO_CELSIUS_K),
                Double.NaN);
    }

    private static SmoothFunction line(double valueAtOrigin, double slope, double origin) {
        return new SmoothFunction() {
            @Override
            public double at(double x) {
                return valueAtOrigin + slope * (x - origin);
            }

            @Override
            public double slope(double x) {
                return slope;
            }
        };
    }

    @Override
    public int amountCount() {
        return Double.isNaN(fixedMassKg) ? 1 : 0;
    }

    @Override
    public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
        boolean varying = Double.isNaN(fixedMassKg);
        double mass = varying ? Math.max(amounts[offset], SMALLEST_MASS_KG) : fixedMassKg;
        double h = enthalpyJ / mass;
        double slope = temperatureOfEnthalpy.slope(h);
        out.temperatureK = temperatureOfEnthalpy.at(h);
        out.temperaturePerJoule = slope / mass;
        out.kelvinPerJoule = slope / mass;
        if (varying) {
            out.temperaturePerAmount[0] = -slope * h / mass;
            out.kelvinPerAmount[0] = MASS_ERROR_J_PER_KG * slope / mass;
        }
    }

    @Override
    public double enthalpyJ(double temperatureK, double... amounts) {
        return (Double.isNaN(fixedMassKg) ? amounts[0] : fixedMassKg) * specificEnthalpy.at(temperatureK);
    }
}
