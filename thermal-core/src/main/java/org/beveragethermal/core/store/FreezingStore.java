/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import java.util.List;
import java.util.function.Supplier;
import org.beveragethermal.core.internal.HeatFit;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.FreezingCurve;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.jspecify.annotations.Nullable;

/**
 * A well-mixed drink of fixed mass that holds as much ice as belongs to its enthalpy.
 *
 * <p>Above the onset of freezing it is a {@link LiquidStore}, to the last digit. Below, ice grows as heat is withdrawn and what
 * stays liquid gets stronger, so that the temperature falls along the liquidus of {@link FreezingCurve}: by several kelvins
 * while the first half of wine freezes, by {@value #PLATEAU_K} K while all of water does, so that even there the temperature
 * tells how much is ice. Temperature follows the curve within {@value #ACCURACY_K} K, ice within 1e-4 of the mass, down to
 * −25 °C; colder, the map goes on straight and the ice stays what it is there. A drink that begins to freeze only below −25 °C
 * stays liquid. Enthalpy counts from the liquid drink at 0 °C. The slope of the temperature in the enthalpy jumps at the onset
 * (without anything dissolved also where the last water is frozen) and is continuous elsewhere; errors are weighed by the
 * sensible heat capacity of drink and ice, never by what freezing takes.
 *
 * <p><b>Not modelled:</b> supercooling. An undisturbed drink may stay liquid some kelvins below the onset and then freeze in a
 * moment; here ice forms at the onset, as in a drink that is moved, and a node that starts below its onset starts with ice.
 * Nor where the ice sits: it is spread evenly, like slush, and does not insulate the wall on which it grows, so that freezing
 * through takes longer than it says.
 *
 * <p>How much ice there is at a time of a run: {@code store.iceFraction(run.temperatureK(node, timeS))}.
 *
 * <p>Immutable and thread-safe. Evaluating allocates nothing, but for the table of what lies below the onset, which is laid out
 * when a state there is first asked for, since most drinks never get there.
 *
 * <p>Theory manual, equation (2.2).
 */
public final class FreezingStore implements Store {

    /** How closely the temperature follows the freezing curve [K]. */
    public static final double ACCURACY_K = 1e-5;

    /** By how much the temperature falls while a drink without anything dissolved turns to ice [K]. */
    public static final double PLATEAU_K = 1e-3;

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double COLDEST_K = 248.15;
    private static final double LIQUID_COLDEST_K = 253.15;
    /** The cubics are compared with the curve at a few points only; in between they may be a little farther off. */
    private static final double ACCURACY_AT_PROBES_K = 0.5 * ACCURACY_K;

    private final SmoothFunction temperatureOfEnthalpy;
    private final SmoothFunction specificEnthalpy;
    private final double massKg;
    private final double onsetK;
    /** Specific enthalpy at the onset [J/kg]; −∞ for a drink that stays liquid. */
    private final double onsetEnthalpy;

    private final Late frozen;

    /** A table that is made when it is first needed; that two threads may both make it does no harm. */
    private static final class Late {

        private final Supplier<FreezingTable> make;
        private volatile @Nullable FreezingTable made;

        private Late(Supplier<FreezingTable> make) {
            this.make = make;
        }

        private FreezingTable get() {
            FreezingTable table = made;
            if (table == null) {
                table = make.get();
                made = table;
            }
            return table;
        }
    }

    private FreezingStore(
            SmoothFunction temperatureOfEnthalpy,
            SmoothFunction specificEnthalpy,
            double massKg,
            double onsetK,
            double onsetEnthalpy,
            Late frozen) {
        this.temperatureOfEnthalpy = temperatureOfEnthalpy;
        this.specificEnthalpy = specificEnthalpy;
        this.massKg = massKg;
        this.onsetK = onsetK;
        this.onsetEnthalpy = onsetEnthalpy;
        this.frozen = frozen;
    }

    /**
     * A drink of fixed mass.
     *
     * @param beverage the drink
     * @param massKg mass of drink and ice [kg], finite, > 0
     * @return the store
     * @throws IllegalArgumentException if the mass is not finite and positive
     */
    public static FreezingStore ofMass(Beverage beverage, double massKg) {
        requirePositive("mass of " + beverage.name(), massKg, "kg");
        FreezingCurve curve = FreezingCurve.of(beverage);
        double onsetK = curve.onset().temperatureK();
        HeatFit fit = HeatFit.of(beverage);
        return new FreezingStore(
                fit.temperatureOfEnthalpy(),
                fit.specificEnthalpy(),
                massKg,
                onsetK,
                onsetK > COLDEST_K ? curve.specificEnthalpyWithIce(onsetK) : Double.NEGATIVE_INFINITY,
                new Late(() -> table(curve)));
    }

    /**
     * A drink of fixed mass whose heat capacity is one number as long as it is liquid; below the onset it is that of {@link
     * #ofMass(Beverage, double)}.
     *
     * @param beverage the drink; if it begins to freeze only below −25 °C it stays liquid
     * @param massKg mass of drink and ice [kg], finite, > 0
     * @param liquidHeatCapacity specific heat capacity of the liquid [J/(kg K)], finite, > 0
     * @return the store
     * @throws IllegalArgumentException if a number is not finite and positive
     */
    public static FreezingStore ofMass(Beverage beverage, double massKg, double liquidHeatCapacity) {
        requirePositive("mass of " + beverage.name(), massKg, "kg");
        requirePositive("specific heat capacity of the liquid", liquidHeatCapacity, "J/(kg K)");
        FreezingCurve curve = FreezingCurve.of(beverage);
        double onsetK = curve.onset().temperatureK();
        boolean freezes = onsetK > COLDEST_K;
        double here = freezes ? onsetK : ZERO_CELSIUS_K;
        double enthalpy = freezes ? curve.specificEnthalpyWithIce(onsetK) : 0;
        return new FreezingStore(
                new Line(here, 1 / liquidHeatCapacity, enthalpy),
                new Line(enthalpy, liquidHeatCapacity, here),
                massKg,
                onsetK,
                freezes ? enthalpy : Double.NEGATIVE_INFINITY,
                new Late(() -> table(curve)));
    }

    /**
     * The same drink in another quantity; what was worked out for this store serves the new one too.
     *
     * @param newMassKg mass of drink and ice [kg], finite, > 0
     * @return a new store
     * @throws IllegalArgumentException if the mass is not finite and positive
     */
    public FreezingStore withMass(double newMassKg) {
        requirePositive("mass", newMassKg, "kg");
        return new FreezingStore(temperatureOfEnthalpy, specificEnthalpy, newMassKg, onsetK, onsetEnthalpy, frozen);
    }

    /**
     * A substance that freezes at one temperature, with constant heat of fusion and heat capacities: for comparison with closed
     * forms.
     *
     * @param freezingK temperature at which it begins to freeze [K], finite, > 1
     * @param latentHeatJPerKg heat of fusion [J/kg], finite, > 0, and so much that what cools {@value #PLATEAU_K} K is small
     *     beside it
     * @param liquidHeatCapacity specific heat capacity of the liquid [J/(kg K)], finite, > 0
     * @param frozenHeatCapacity specific heat capacity of the frozen substance [J/(kg K)], finite, > 0
     * @param massKg mass [kg], finite, > 0
     * @return the store
     * @throws IllegalArgumentException if an argument is not finite and positive
     */
    public static FreezingStore ofConstants(
            double freezingK,
            double latentHeatJPerKg,
            double liquidHeatCapacity,
            double frozenHeatCapacity,
            double massKg) {
        requirePositive("freezing temperature less 1 K", freezingK - 1, "K");
        requirePositive("heat of fusion", latentHeatJPerKg, "J/kg");
        requirePositive("specific heat capacity of the liquid", liquidHeatCapacity, "J/(kg K)");
        requirePositive("specific heat capacity when frozen", frozenHeatCapacity, "J/(kg K)");
        requirePositive("mass", massKg, "kg");
        double onsetEnthalpy = liquidHeatCapacity * (freezingK - ZERO_CELSIUS_K);
        double frozenK = freezingK - PLATEAU_K;
        FreezingTable.Curve solid = t -> new FreezingTable.Point(
                t,
                onsetEnthalpy - latentHeatJPerKg + frozenHeatCapacity * (t - frozenK),
                1 / frozenHeatCapacity,
                1,
                frozenHeatCapacity);
        return new FreezingStore(
                new Line(ZERO_CELSIUS_K, 1 / liquidHeatCapacity, 0),
                new Line(0, liquidHeatCapacity, ZERO_CELSIUS_K),
                massKg,
                freezingK,
                onsetEnthalpy,
                new Late(() -> aboveIce(solid, freezingK - 1, frozenK, freezingK, onsetEnthalpy, liquidHeatCapacity)));
    }

    /** A straight line through a point. */
    private record Line(double value, double slope, double origin) implements SmoothFunction {
        @Override
        public double at(double x) {
            return value + slope * (x - origin);
        }

        @Override
        public double slope(double x) {
            return slope;
        }
    }

    private static FreezingTable table(FreezingCurve curve) {
        double onsetK = curve.onset().temperatureK();
        // At the onset itself the curve still has the slope of the liquid.
        double topK = Math.nextDown(onsetK);
        FreezingTable.Curve withIce = t -> point(curve, t);
        // All ice at once, but for what is lost in rounding, or next to none.
        return curve.iceFraction(topK) < 0.5
                ? FreezingTable.follow(ACCURACY_AT_PROBES_K, List.of(withIce), COLDEST_K, topK)
                : aboveIce(
                        withIce,
                        COLDEST_K,
                        onsetK - PLATEAU_K,
                        onsetK,
                        curve.specificEnthalpyWithIce(onsetK),
                        curve.beverage().specificHeatCapacity(onsetK));
    }

    /** All ice up to the end of the plateau, then straight to all liquid. */
    private static FreezingTable aboveIce(
            FreezingTable.Curve solid,
            double coldestK,
            double frozenK,
            double onsetK,
            double onsetEnthalpy,
            double liquidCapacity) {
        FreezingTable.Point allIce = solid.at(frozenK);
        double capacity = (onsetEnthalpy - allIce.enthalpy()) / (onsetK - frozenK);
        FreezingTable.Curve plateau = t -> {
            double liquid = (t - frozenK) / (onsetK - frozenK);
            return new FreezingTable.Point(
                    t,
                    allIce.enthalpy() + capacity * (t - frozenK),
                    1 / capacity,
                    1 - liquid,
                    allIce.sensibleCapacity() + liquid * (liquidCapacity - allIce.sensibleCapacity()));
        };
        return FreezingTable.follow(ACCURACY_AT_PROBES_K, List.of(solid, plateau), coldestK, frozenK, onsetK);
    }

    private static FreezingTable.Point point(FreezingCurve curve, double temperatureK) {
        double ice = curve.iceFraction(temperatureK);
        double liquidK = Math.max(temperatureK, LIQUID_COLDEST_K);
        double sensible = curve.beverage().specificHeatCapacity(liquidK)
                - ice * (Water.liquid().specificHeatCapacity(liquidK) - Ice.specificHeatCapacity(temperatureK));
        return new FreezingTable.Point(
                temperatureK,
                curve.specificEnthalpyWithIce(temperatureK),
                1 / curve.apparentHeatCapacity(temperatureK),
                ice,
                sensible);
    }

    private static void requirePositive(String what, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " " + value + " " + unit + ": expected a finite value above 0");
        }
    }

    /**
     * Temperature at which ice begins to form.
     *
     * @return temperature [K]
     */
    public double freezingOnsetK() {
        return onsetK;
    }

    /**
     * Mass of ice per mass of drink and ice, at equilibrium.
     *
     * @param temperatureK temperature [K], finite
     * @return part [-], 0 from the onset upwards, at most 1
     * @throws IllegalArgumentException if the temperature is not finite
     */
    public double iceFraction(double temperatureK) {
        if (!Double.isFinite(temperatureK)) {
            throw new IllegalArgumentException("temperature " + temperatureK + " K: expected a finite number");
        }
        return iceFractionAtEnthalpy(enthalpyJ(temperatureK));
    }

    /**
     * Mass of ice per mass of drink and ice.
     *
     * @param enthalpyJ enthalpy of the node [J], finite
     * @return part [-], 0 for a drink that is all liquid, at most 1
     * @throws IllegalArgumentException if the enthalpy is not finite
     */
    public double iceFractionAtEnthalpy(double enthalpyJ) {
        if (!Double.isFinite(enthalpyJ)) {
            throw new IllegalArgumentException("enthalpy " + enthalpyJ + " J: expected a finite number");
        }
        double h = enthalpyJ / massKg;
        return h >= onsetEnthalpy ? 0 : frozen.get().ice(h);
    }

    private boolean liquidThroughout() {
        return onsetEnthalpy == Double.NEGATIVE_INFINITY;
    }

    @Override
    public int amountCount() {
        return 0;
    }

    @Override
    public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
        double h = enthalpyJ / massKg;
        // Written so that an enthalpy that is no number stays with the liquid and comes out as no number.
        if (h < onsetEnthalpy) {
            FreezingTable table = frozen.get();
            out.temperatureK = table.temperatureK(h);
            out.temperaturePerJoule = table.slope(h) / massKg;
            out.kelvinPerJoule = 1 / (table.sensibleCapacity(h) * massKg);
        } else {
            double slope = temperatureOfEnthalpy.slope(h);
            out.temperatureK = temperatureOfEnthalpy.at(h);
            out.temperaturePerJoule = slope / massKg;
            out.kelvinPerJoule = slope / massKg;
        }
    }

    @Override
    public double enthalpyJ(double temperatureK, double... amounts) {
        boolean liquid = temperatureK >= onsetK || liquidThroughout();
        return massKg
                * (liquid ? specificEnthalpy.at(temperatureK) : frozen.get().enthalpy(temperatureK));
    }
}
