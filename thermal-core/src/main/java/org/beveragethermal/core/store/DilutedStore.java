/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import java.util.Optional;
import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Composition;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;

/**
 * A well-mixed drink that takes up melt water: its one amount is its mass with that water [kg], less than at the start while water of
 * its own has frozen onto ice.
 *
 * <p>Enthalpies of the drink and of the water add up, both counted from the liquid at 0 °C. <b>Left out</b> is the heat that appears
 * when a stronger mixture of ethanol and water is diluted: a wine that takes up a tenth of water would be about 0.2 K warmer, a spirit
 * that takes up a third about 2 K (own estimate from heats of mixing at 25 °C, from memory).
 *
 * <p>The drink stays liquid whatever its temperature; ice that is in it already freezes and melts by a path of its own. Its freezing
 * point follows the water in it: a depression in inverse proportion to the water, as of an ideal solution; to 6 % of the depression for a
 * spirit diluted to half its strength. Immutable and thread-safe; evaluating allocates nothing.
 *
 * <p>Theory manual, equation (2.7).
 */
public final class DilutedStore implements Store {

    /** Index of the mass of drink and water [kg]. */
    public static final int MASS = 0;

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double FUSION_J_PER_KG = 3.3e5;
    private static final int MOST_ROUNDS = 30;
    private static final double SAME_K = 1e-11;
    /** The drink keeps at least this part of its water while the solver tries states [-]. */
    private static final double LEAST_PART = 0.05;

    private final Liquid liquid;
    private final double massKg;
    private final SmoothFunction ofDrink;
    private final SmoothFunction drinkTemperature;
    private final SmoothFunction ofWater;
    private final double waterKg;
    private final double depressionK;

    private DilutedStore(Liquid liquid, double massKg) {
        this.liquid = liquid;
        this.massKg = massKg;
        LiquidFit drink = LiquidFit.of(liquid);
        this.ofDrink = drink.specificEnthalpy();
        this.drinkTemperature = drink.temperatureOfEnthalpy();
        this.ofWater = LiquidFit.of(Water.liquid()).specificEnthalpy();
        boolean known = liquid instanceof Beverage;
        this.waterKg = massKg
                * (liquid instanceof Beverage drinkable
                        ? drinkable.composition().water()
                        : 1);
        this.depressionK = known ? ZERO_CELSIUS_K - ((Beverage) liquid).freezingOnsetK() : 0;
    }

    /**
     * A drink of a given mass before anything is added.
     *
     * @param liquid the drink; one that is no {@link Beverage} is taken to freeze at 0 °C
     * @param massKg mass of the drink [kg], finite, > 0
     * @return the store
     * @throws IllegalArgumentException if the mass is not finite and positive
     */
    public static DilutedStore ofMass(Liquid liquid, double massKg) {
        if (!(massKg > 0) || Double.isInfinite(massKg)) {
            throw new IllegalArgumentException(
                    "mass of " + liquid.name() + " " + massKg + " kg: expected a finite value above 0");
        }
        return new DilutedStore(liquid, massKg);
    }

    /**
     * Water that came to the drink.
     *
     * @param totalKg mass of drink and water [kg]
     * @return water added [kg], below 0 if the drink lost some
     */
    public double addedKg(double totalKg) {
        return totalKg - massKg;
    }

    private double held(double addedKg) {
        return Math.max(addedKg, (LEAST_PART - 1) * waterKg);
    }

    private boolean isHeld(double addedKg) {
        return addedKg < (LEAST_PART - 1) * waterKg;
    }

    /**
     * How far below 0 °C the diluted drink begins to freeze.
     *
     * @param addedKg water added [kg], finite
     * @return depression [K], ≥ 0
     */
    public double freezingDepressionK(double addedKg) {
        return depressionK * waterKg / (waterKg + held(addedKg));
    }

    /**
     * Slope of {@link #freezingDepressionK}.
     *
     * @param addedKg water added [kg], finite
     * @return slope [K/kg], ≤ 0
     */
    public double freezingDepressionSlope(double addedKg) {
        return isHeld(addedKg) ? 0 : -freezingDepressionK(addedKg) / (waterKg + addedKg);
    }

    /**
     * The drink with the water in it.
     *
     * @param addedKg water added [kg], finite; below 0 counts as none
     * @return the diluted beverage; empty for a liquid that is none
     * @throws IllegalArgumentException if the water is not finite
     */
    public Optional<Beverage> diluted(double addedKg) {
        if (!Double.isFinite(addedKg)) {
            throw new IllegalArgumentException("water added " + addedKg + " kg: expected a finite number");
        }
        if (!(liquid instanceof Beverage drink)) {
            return Optional.empty();
        }
        Composition c = drink.composition();
        double added = Math.max(0, addedKg) / massKg;
        double all = 1 + added;
        return Optional.of(Beverage.of(
                drink.kind(),
                new Composition(
                        (c.water() + added) / all,
                        c.ethanol() / all,
                        c.sucrose() / all,
                        c.invertSugar() / all,
                        c.protein() / all,
                        c.fat() / all,
                        c.carbohydrate() / all,
                        c.ash() / all,
                        c.carbonDioxideKgPerM3() / all)));
    }

    @Override
    public int amountCount() {
        return 1;
    }

    @Override
    public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
        double added = held(addedKg(amounts[offset]));
        double t = drinkTemperature.at(enthalpyJ / (massKg + added));
        double capacity = capacity(t, added);
        for (int i = 0; added != 0 && i < MOST_ROUNDS; i++) {
            double step = (enthalpyJ - massKg * ofDrink.at(t) - added * ofWater.at(t)) / capacity;
            t += step;
            capacity = capacity(t, added);
            if (Math.abs(step) < SAME_K) {
                break;
            }
        }
        out.temperatureK = t;
        out.temperaturePerJoule = 1 / capacity;
        out.kelvinPerJoule = 1 / capacity;
        out.temperaturePerAmount[MASS] = isHeld(addedKg(amounts[offset])) ? 0 : -ofWater.at(t) / capacity;
        out.kelvinPerAmount[MASS] = FUSION_J_PER_KG / capacity;
    }

    private double capacity(double temperatureK, double addedKg) {
        return massKg * ofDrink.slope(temperatureK) + addedKg * ofWater.slope(temperatureK);
    }

    @Override
    public double enthalpyJ(double temperatureK, double... amounts) {
        return massKg * ofDrink.at(temperatureK) + held(addedKg(amounts[MASS])) * ofWater.at(temperatureK);
    }
}
