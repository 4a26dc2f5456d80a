/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.internal.ChebyshevFit;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.materials.solid.Ice;

/**
 * Ice in blocks, colder than or at its melting point: amounts are the mass [kg] (index {@link #MASS}) and the side of a
 * block, its shortest extent [m] (index {@link #SIDE}), and, if it {@linkplain #countingBlocks counts them}, the number of blocks
 * (index {@link #BLOCKS}).
 *
 * <p>Enthalpy counts from liquid water at 0 °C, so ice at 0 °C holds minus its heat of fusion. Melt water leaves at 0 °C
 * and takes no enthalpy along: melting shows as mass lost and enthalpy gained in step, and no special solver is needed.
 *
 * <p>Theory manual, equation (2.3).
 */
public final class IceStore implements Store {

    /** Index of the mass [kg]. */
    public static final int MASS = 0;

    /** Index of the side of a block [m]. */
    public static final int SIDE = 1;

    /** Index of the number of blocks, of a store that counts them. */
    public static final int BLOCKS = 2;

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double COLDEST_K = 223.15;
    /** Below this part of its first side a block keeps its heat capacity, so that what is left of nothing has a temperature. */
    private static final double SMALLEST_PART = 0.05;
    /** The surplus is a small difference of large numbers: heat of such ice is kept more closely by this factor. */
    private static final double SURPLUS_CARE = 100;

    private final SmoothFunction temperatureOfEnthalpy;
    private final DoubleUnaryOperator enthalpyOfTemperature;
    private final double meltingEnthalpy;
    private final double smallestMassKg;
    private final double exchangingCapacityJPerK;
    private final double joulePerMetre;
    private final double firstMassKg;
    private final double firstSideM;
    private final boolean showsSurplus;
    /** NaN if blocks are not counted. */
    private final double firstBlocks;

    private IceStore(
            SmoothFunction temperatureOfEnthalpy,
            DoubleUnaryOperator enthalpyOfTemperature,
            double massKg,
            double sideM,
            double exchangingCapacityJPerK,
            boolean showsSurplus,
            double firstBlocks) {
        requirePositive("mass of ice", massKg, "kg");
        requirePositive("side of a block", sideM, "m");
        requirePositive("heat capacity beside the ice", exchangingCapacityJPerK, "J/K");
        this.temperatureOfEnthalpy = temperatureOfEnthalpy;
        this.enthalpyOfTemperature = enthalpyOfTemperature;
        this.meltingEnthalpy = enthalpyOfTemperature.applyAsDouble(ZERO_CELSIUS_K);
        this.smallestMassKg = 1e-9 * massKg;
        this.exchangingCapacityJPerK = exchangingCapacityJPerK;
        this.joulePerMetre = -3 * meltingEnthalpy * massKg / sideM;
        this.firstMassKg = massKg;
        this.firstSideM = sideM;
        this.showsSurplus = showsSurplus;
        this.firstBlocks = firstBlocks;
    }

    /**
     * Ice with the properties of ice Ih.
     *
     * @param massKg mass at the start [kg], finite, > 0; sets the scale below which ice counts as gone
     * @param sideM side of a block at the start [m], finite, > 0
     * @param exchangingCapacityJPerK sensible heat capacity of the water the ice melts in [J/K], > 0; weighs errors
     * @return the store
     * @throws IllegalArgumentException if an argument is not finite and positive
     */
    public static IceStore of(double massKg, double sideM, double exchangingCapacityJPerK) {
        double low = Ice.specificEnthalpy(COLDEST_K);
        double melting = Ice.specificEnthalpy(ZERO_CELSIUS_K);
        SmoothFunction fit = ChebyshevFit.straight(
                h -> h <= low
                        ? COLDEST_K
                        : h >= melting
                                ? ZERO_CELSIUS_K
                                : new BrentSolver(1e-12, 1e-12)
                                        .solve(200, t -> Ice.specificEnthalpy(t) - h, COLDEST_K, ZERO_CELSIUS_K),
                low,
                melting,
                1e-10);
        return new IceStore(fit, Ice::specificEnthalpy, massKg, sideM, exchangingCapacityJPerK, false, Double.NaN);
    }

    /**
     * A melting solid with constant heat of fusion and heat capacity, melting at 0 °C.
     *
     * @param latentHeatJPerKg heat of fusion [J/kg], finite, > 0
     * @param specificHeatCapacity of the solid [J/(kg K)], finite, > 0
     * @param massKg mass at the start [kg], finite, > 0
     * @param sideM side of a block at the start [m], finite, > 0
     * @param exchangingCapacityJPerK sensible heat capacity of the liquid it melts in [J/K], > 0; weighs errors
     * @return the store
     * @throws IllegalArgumentException if an argument is not finite and positive
     */
    public static IceStore ofConstants(
            double latentHeatJPerKg,
            double specificHeatCapacity,
            double massKg,
            double sideM,
            double exchangingCapacityJPerK) {
        requirePositive("heat of fusion", latentHeatJPerKg, "J/kg");
        requirePositive("specific heat capacity", specificHeatCapacity, "J/(kg K)");
        SmoothFunction line = new SmoothFunction() {
            @Override
            public double at(double h) {
                return ZERO_CELSIUS_K + (h + latentHeatJPerKg) / specificHeatCapacity;
            }

            @Override
            public double slope(double h) {
                return 1 / specificHeatCapacity;
            }
        };
        return new IceStore(
                line,
                t -> -latentHeatJPerKg + specificHeatCapacity * (t - ZERO_CELSIUS_K),
                massKg,
                sideM,
                exchangingCapacityJPerK,
                false,
                Double.NaN);
    }

    /**
     * The same ice, whose temperature goes on rising above 0 °C with the heat capacity of ice at 0 °C: for ice that takes
     * heat by several paths and melts by a law of its own, which reads the surplus there. Its temperature counts heat
     * beyond that of melting ice over the mass that belongs to the side of its blocks, so that it stays defined while the
     * last ice goes.
     *
     * @return a new store
     */
    public IceStore showingSurplus() {
        return with(true, firstBlocks);
    }

    /**
     * The same ice with the number of its blocks as a third amount, which nothing but a change of state alters: for ice to which
     * more may be added.
     *
     * @param blocks number of blocks at the start, finite, > 0, not necessarily whole
     * @return a new store
     * @throws IllegalArgumentException if the number is not finite and positive
     */
    public IceStore countingBlocks(double blocks) {
        requirePositive("number of blocks", blocks, "");
        return with(showsSurplus, blocks);
    }

    private IceStore with(boolean surplus, double blocks) {
        return new IceStore(
                temperatureOfEnthalpy,
                enthalpyOfTemperature,
                firstMassKg,
                firstSideM,
                exchangingCapacityJPerK,
                surplus,
                blocks);
    }

    private boolean countsBlocks() {
        return !Double.isNaN(firstBlocks);
    }

    private static void requirePositive(String what, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " " + value + " " + unit + ": expected a finite value above 0");
        }
    }

    /**
     * Heat of fusion at 0 °C.
     *
     * @return [J/kg]
     */
    public double latentHeatJPerKg() {
        return -meltingEnthalpy;
    }

    @Override
    public int amountCount() {
        return countsBlocks() ? 3 : 2;
    }

    @Override
    public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
        out.kelvinPerJoule = 1 / exchangingCapacityJPerK;
        out.kelvinPerAmount[MASS] = -meltingEnthalpy / exchangingCapacityJPerK;
        out.kelvinPerAmount[SIDE] = joulePerMetre / exchangingCapacityJPerK;
        double mass = amounts[offset + MASS];
        if (countsBlocks()) {
            out.kelvinPerAmount[BLOCKS] = 0;
            out.temperaturePerAmount[BLOCKS] = 0;
        }
        if (showsSurplus) {
            double more = countsBlocks() ? amounts[offset + BLOCKS] / firstBlocks : 1;
            evaluateSurplus(enthalpyJ, mass, amounts[offset + SIDE], more, out);
            return;
        }
        double h = mass > smallestMassKg ? enthalpyJ / mass : meltingEnthalpy;
        if (h < meltingEnthalpy) {
            double slope = temperatureOfEnthalpy.slope(h);
            out.temperatureK = temperatureOfEnthalpy.at(h);
            out.temperaturePerJoule = slope / mass;
            out.temperaturePerAmount[MASS] = -slope * h / mass;
        } else {
            out.temperatureK = ZERO_CELSIUS_K;
            out.temperaturePerJoule = 0;
            out.temperaturePerAmount[MASS] = 0;
        }
        out.temperaturePerAmount[SIDE] = 0;
    }

    private void evaluateSurplus(double enthalpyJ, double massKg, double sideM, double more, StoreState out) {
        boolean gone = sideM < SMALLEST_PART * firstSideM;
        double part = gone ? SMALLEST_PART : sideM / firstSideM;
        double massOfSide = more * firstMassKg * part * part * part;
        double beyondMelting = enthalpyJ - massKg * meltingEnthalpy;
        double h = meltingEnthalpy + beyondMelting / massOfSide;
        double slope = temperatureOfEnthalpy.slope(h) / massOfSide;
        out.temperatureK = temperatureOfEnthalpy.at(h);
        out.temperaturePerJoule = slope;
        out.kelvinPerJoule = SURPLUS_CARE / exchangingCapacityJPerK;
        out.temperaturePerAmount[MASS] = -slope * meltingEnthalpy;
        out.temperaturePerAmount[SIDE] = gone ? 0 : -3 * slope * beyondMelting / sideM;
        if (countsBlocks()) {
            out.temperaturePerAmount[BLOCKS] = -slope * beyondMelting / (more * firstBlocks);
        }
    }

    @Override
    public double enthalpyJ(double temperatureK, double... amounts) {
        if (!(temperatureK <= ZERO_CELSIUS_K)) {
            throw new IllegalArgumentException("ice at " + temperatureK + " K: expected at most 273.15 K");
        }
        return amounts[MASS] * enthalpyOfTemperature.applyAsDouble(temperatureK);
    }
}
