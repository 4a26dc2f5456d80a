/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.materials.solid.LatentSolid;

/**
 * A body of a {@link LatentSolid} of fixed mass, such as a gel pack: it warms frozen, melts over a range of temperatures and
 * warms thawed.
 *
 * <p>Temperature against enthalpy is three straight lines whose corners are rounded over {@value #CORNER_K} K; it follows the
 * solid's own map within {@value #ACCURACY_K} K and takes up the same heat from below the range of melting to above it. Outside the
 * temperatures of the solid it goes on straight. Enthalpy counts from the thawed solid at the end of melting: nothing leaves such a
 * body, so that the reference does not matter. Errors are weighed by the sensible heat capacity, never by what melting takes.
 *
 * <p>Not modelled: that it may stay liquid below its melting point when it is frozen again, and that its parts melt one after the
 * other. Immutable and thread-safe; evaluating allocates nothing.
 *
 * <p>Theory manual, equation (2.5).
 */
public final class LatentStore implements Store {

    /** How closely the temperature follows that of the solid, of a range of melting up to 5 K wide [K]. */
    public static final double ACCURACY_K = 0.03;

    /** Width of the rounded corners at the ends of melting [K]. */
    public static final double CORNER_K = 0.01;

    private static final double SEARCH_K = 200;
    private static final double SEARCH_ACCURACY_J_PER_KG = 1e-7;
    private static final int MOST_STEPS = 200;

    private final double massKg;
    private final double startK;
    private final double endK;
    private final double frozenCapacity;
    private final double thawedCapacity;
    private final double startEnthalpy;

    private LatentStore(LatentSolid solid, double massKg) {
        this.massKg = massKg;
        this.startK = solid.meltingStart().value();
        this.endK = solid.meltingEnd().value();
        this.frozenCapacity = solid.frozen().specificHeatCapacity().value();
        this.thawedCapacity = solid.thawed().specificHeatCapacity().value();
        this.startEnthalpy = solid.specificEnthalpy(startK);
    }

    /**
     * A body of fixed mass.
     *
     * @param solid what it is made of
     * @param massKg mass [kg], finite, > 0
     * @return the store
     * @throws IllegalArgumentException if the mass is not finite and positive
     */
    public static LatentStore ofMass(LatentSolid solid, double massKg) {
        if (!(massKg > 0) || Double.isInfinite(massKg)) {
            throw new IllegalArgumentException(
                    "mass of " + solid.name() + " " + massKg + " kg: expected a finite value above 0");
        }
        return new LatentStore(solid, massKg);
    }

    private double frozenLineK(double enthalpy) {
        return startK + (enthalpy - startEnthalpy) / frozenCapacity;
    }

    private double meltingLineK(double enthalpy) {
        return endK - (endK - startK) * enthalpy / startEnthalpy;
    }

    private double thawedLineK(double enthalpy) {
        return endK + enthalpy / thawedCapacity;
    }

    /** The lower of the first two lines, then the higher of that and the third. */
    private double temperatureK(double enthalpy) {
        double low = SmoothMath.min(frozenLineK(enthalpy), meltingLineK(enthalpy), CORNER_K);
        return -SmoothMath.min(-low, -thawedLineK(enthalpy), CORNER_K);
    }

    private double slope(double enthalpy) {
        double frozen = frozenLineK(enthalpy);
        double melting = meltingLineK(enthalpy);
        double ofFrozen = SmoothMath.minSlope(frozen, melting, CORNER_K);
        double lowSlope = ofFrozen / frozenCapacity - (1 - ofFrozen) * (endK - startK) / startEnthalpy;
        double low = SmoothMath.min(frozen, melting, CORNER_K);
        double ofLow = SmoothMath.minSlope(-low, -thawedLineK(enthalpy), CORNER_K);
        return ofLow * lowSlope + (1 - ofLow) / thawedCapacity;
    }

    /**
     * How much of the mass has melted.
     *
     * @param temperatureK temperature [K], finite
     * @return 0 up to the start of melting, 1 from its end on, in proportion between
     * @throws IllegalArgumentException if the temperature is not finite
     */
    public double meltedFraction(double temperatureK) {
        if (!Double.isFinite(temperatureK)) {
            throw new IllegalArgumentException("temperature " + temperatureK + " K: expected a finite number");
        }
        return Math.min(1, Math.max(0, (temperatureK - startK) / (endK - startK)));
    }

    @Override
    public int amountCount() {
        return 0;
    }

    @Override
    public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
        double h = enthalpyJ / massKg;
        double melted = Math.min(1, Math.max(0, 1 - h / startEnthalpy));
        out.temperatureK = temperatureK(h);
        out.temperaturePerJoule = slope(h) / massKg;
        out.kelvinPerJoule = 1 / (massKg * (frozenCapacity + melted * (thawedCapacity - frozenCapacity)));
    }

    @Override
    public double enthalpyJ(double temperatureK, double... amounts) {
        double low = startEnthalpy - frozenCapacity * SEARCH_K;
        double high = thawedCapacity * SEARCH_K;
        double within = Math.min(temperatureK(high), Math.max(temperatureK(low), temperatureK));
        return massKg
                * new BrentSolver(1e-14, SEARCH_ACCURACY_J_PER_KG)
                        .solve(MOST_STEPS, h -> temperatureK(h) - within, low, high);
    }
}
