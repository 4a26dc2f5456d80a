/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.internal.ChebyshevFit;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.materials.solid.Ice;

/**
 * Ice in blocks, colder than or at its melting point: amounts are the mass [kg] (index {@link #MASS}) and the side of a
 * block [m] (index {@link #SIDE}).
 *
 * <p>Enthalpy counts from liquid water at 0 °C, so ice at 0 °C holds minus its heat of fusion. Melt water leaves at 0 °C
 * and takes no enthalpy along: melting shows as mass lost and enthalpy gained in step, and no special solver is needed.
 */
public final class IceStore implements Store {

    /** Index of the mass [kg]. */
    public static final int MASS = 0;

    /** Index of the side of a block [m]. */
    public static final int SIDE = 1;

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double COLDEST_K = 223.15;

    private final ChebyshevFit temperatureOfEnthalpy;
    private final double meltingEnthalpy;
    private final double smallestMassKg;
    private final double exchangingCapacityJPerK;
    private final double joulePerMetre;

    /**
     * A store for ice that starts with a given mass in blocks of a given side.
     *
     * @param massKg mass at the start [kg], finite, > 0; sets the scale below which ice counts as gone
     * @param sideM side of a block at the start [m], finite, > 0
     * @param exchangingCapacityJPerK sensible heat capacity of the water the ice melts in [J/K], > 0; weighs errors
     * @throws IllegalArgumentException if an argument is not finite and positive
     */
    public IceStore(double massKg, double sideM, double exchangingCapacityJPerK) {
        if (!(massKg > 0 && sideM > 0 && exchangingCapacityJPerK > 0)
                || Double.isInfinite(massKg + sideM + exchangingCapacityJPerK)) {
            throw new IllegalArgumentException("ice of " + massKg + " kg, side " + sideM + " m, beside "
                    + exchangingCapacityJPerK + " J/K: expected finite values above 0");
        }
        double low = Ice.specificEnthalpy(COLDEST_K);
        this.meltingEnthalpy = Ice.specificEnthalpy(ZERO_CELSIUS_K);
        this.temperatureOfEnthalpy = ChebyshevFit.straight(
                h -> h <= low
                        ? COLDEST_K
                        : h >= meltingEnthalpy
                                ? ZERO_CELSIUS_K
                                : new BrentSolver(1e-12, 1e-12)
                                        .solve(200, t -> Ice.specificEnthalpy(t) - h, COLDEST_K, ZERO_CELSIUS_K),
                low,
                meltingEnthalpy,
                1e-10);
        this.smallestMassKg = 1e-9 * massKg;
        this.exchangingCapacityJPerK = exchangingCapacityJPerK;
        this.joulePerMetre = -3 * meltingEnthalpy * massKg / sideM;
    }

    @Override
    public int amountCount() {
        return 2;
    }

    @Override
    public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
        double mass = amounts[offset + MASS];
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
        out.kelvinPerJoule = 1 / exchangingCapacityJPerK;
        out.kelvinPerAmount[MASS] = -meltingEnthalpy / exchangingCapacityJPerK;
        out.kelvinPerAmount[SIDE] = joulePerMetre / exchangingCapacityJPerK;
    }

    @Override
    public double enthalpyJ(double temperatureK, double... amounts) {
        if (!(temperatureK <= ZERO_CELSIUS_K)) {
            throw new IllegalArgumentException("ice at " + temperatureK + " K: expected at most 273.15 K");
        }
        return amounts[MASS] * Ice.specificEnthalpy(temperatureK);
    }
}
