/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import java.util.Arrays;
import org.beveragethermal.core.internal.ChebyshevFit;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.materials.liquid.Brine;
import org.beveragethermal.materials.liquid.Salt;

/**
 * Well-mixed brine of changing strength, with salt that has not dissolved yet at the same temperature. Amounts are the mass of
 * water [kg] (index {@link #WATER}), of dissolved salt [kg] (index {@link #DISSOLVED}) and of undissolved salt [kg] (index {@link
 * #UNDISSOLVED}).
 *
 * <p>Enthalpy counts from liquid water and solid salt apart, both at 0 °C, as {@link Brine#enthalpyOverWaterAndSalt}, of which
 * it is a fit: salt that dissolves at constant enthalpy cools the brine, and ice may be melted into it by moving its mass and
 * its enthalpy. The fit leaves out what {@link Brine} gives for pure water at 0 °C, some J/kg, so that pure water there holds
 * nothing. Outside the range of {@link Brine} heat capacities keep their end values. Immutable and thread-safe.
 *
 * <p>Theory manual, equation (2.6).
 */
public final class BrineStore implements Store {

    /** Index of the mass of water [kg]. */
    public static final int WATER = 0;

    /** Index of the mass of dissolved salt [kg]. */
    public static final int DISSOLVED = 1;

    /** Index of the mass of undissolved salt [kg]. */
    public static final int UNDISSOLVED = 2;

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double COLDEST = -22;
    private static final double WARMEST = 40;
    private static final double ACCURACY = 1e-9;
    private static final double SMALLEST_KG = 1e-9;
    private static final double SMALLEST_ROOT = 1e-6;
    private static final double KELVIN_ACCURACY = 1e-11;
    private static final int MOST_ITERATIONS = 30;
    /** Heat that a kilogram of water carries when it comes from ice, to weigh errors of mass [J/kg]. */
    private static final double MASS_ERROR_J_PER_KG = 3.3e5;

    /** Enthalpy at 0 °C against the square root of the mass fraction, in which it is smooth. */
    private final SmoothFunction enthalpyAtZero;
    /** Coefficients of the heat capacity in powers of the temperature [°C], against the mass fraction. */
    private final SmoothFunction[] heatCapacity;

    private BrineStore() {
        double strongest = Brine.EUTECTIC_MASS_FRACTION;
        double ofPureWater = Brine.ofMassFraction(0).enthalpyOverWaterAndSalt(ZERO_CELSIUS_K);
        enthalpyAtZero = ChebyshevFit.straight(
                root -> Brine.ofMassFraction(Math.min(strongest, root * root)).enthalpyOverWaterAndSalt(ZERO_CELSIUS_K)
                        - (1 - root * root) * ofPureWater,
                0,
                Math.sqrt(strongest),
                ACCURACY);
        heatCapacity = new SmoothFunction[3];
        for (int j = 0; j < heatCapacity.length; j++) {
            int power = j;
            heatCapacity[j] = ChebyshevFit.straight(w -> coefficients(w)[power], 0, strongest, ACCURACY);
        }
    }

    /** The parabola through the heat capacities at three temperatures, which is what {@link Brine} has. */
    private static double[] coefficients(double massFraction) {
        Brine brine = Brine.ofMassFraction(massFraction);
        double step = 20;
        double below = brine.specificHeatCapacity(ZERO_CELSIUS_K - step);
        double at = brine.specificHeatCapacity(ZERO_CELSIUS_K);
        double above = brine.specificHeatCapacity(ZERO_CELSIUS_K + step);
        return new double[] {at, (above - below) / (2 * step), (above + below - 2 * at) / (2 * step * step)};
    }

    /**
     * A store for any amounts.
     *
     * @return the store
     */
    public static BrineStore create() {
        return new BrineStore();
    }

    @Override
    public int amountCount() {
        return 3;
    }

    /**
     * Specific heat capacity of brine.
     *
     * @param massFraction mass of salt per mass of brine, 0 to 0.233
     * @param temperatureK temperature [K], −22 °C to 40 °C; end values beyond
     * @return heat capacity [J/(kg K)]
     */
    public double specificHeatCapacity(double massFraction, double temperatureK) {
        double t = Math.min(WARMEST, Math.max(COLDEST, temperatureK - ZERO_CELSIUS_K));
        double[] c = new double[heatCapacity.length];
        Arrays.setAll(c, j -> heatCapacity[j].at(massFraction));
        return capacity(c, t);
    }

    private static double capacity(double[] c, double t) {
        return c[0] + t * (c[1] + t * c[2]);
    }

    /** Integral of the heat capacity from 0 °C, straight beyond the ends of its range. */
    private static double rise(double[] c, double t) {
        double inside = Math.min(WARMEST, Math.max(COLDEST, t));
        return inside * (c[0] + inside * (c[1] / 2 + inside * c[2] / 3)) + capacity(c, inside) * (t - inside);
    }

    @Override
    public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
        double water = Math.max(SMALLEST_KG, amounts[offset + WATER]);
        double salt = amounts[offset + DISSOLVED];
        double crystals = amounts[offset + UNDISSOLVED];
        double brine = water + Math.max(0, salt);
        double w = Math.max(0, salt) / brine;
        double root = Math.max(SMALLEST_ROOT, Math.sqrt(w));
        double[] c = new double[heatCapacity.length];
        double[] cSlope = new double[heatCapacity.length];
        for (int j = 0; j < c.length; j++) {
            c[j] = heatCapacity[j].at(w);
            cSlope[j] = heatCapacity[j].slope(w);
        }
        double crystalCapacity = Salt.specificHeatCapacity().value() * Math.max(0, crystals);
        double atZero = enthalpyAtZero.at(root);
        double t = (enthalpyJ - brine * atZero) / (brine * c[0] + crystalCapacity);
        double capacity = 0;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            capacity = brine * capacity(c, Math.min(WARMEST, Math.max(COLDEST, t))) + crystalCapacity;
            double change = (enthalpyJ - brine * (atZero + rise(c, t)) - crystalCapacity * t) / capacity;
            t += change;
            if (Math.abs(change) < KELVIN_ACCURACY) {
                break;
            }
        }
        double h = atZero + rise(c, t);
        double byFraction = enthalpyAtZero.slope(root) / (2 * root) + rise(cSlope, t);
        out.temperatureK = ZERO_CELSIUS_K + t;
        out.temperaturePerJoule = 1 / capacity;
        out.temperaturePerAmount[WATER] = -(h - w * byFraction) / capacity;
        out.temperaturePerAmount[DISSOLVED] = -(h + (1 - w) * byFraction) / capacity;
        out.temperaturePerAmount[UNDISSOLVED] = -Salt.specificHeatCapacity().value() * t / capacity;
        out.kelvinPerJoule = 1 / capacity;
        Arrays.fill(out.kelvinPerAmount, MASS_ERROR_J_PER_KG / capacity);
    }

    @Override
    public double enthalpyJ(double temperatureK, double... amounts) {
        double brine = amounts[WATER] + amounts[DISSOLVED];
        double w = brine > 0 ? amounts[DISSOLVED] / brine : 0;
        double t = temperatureK - ZERO_CELSIUS_K;
        double[] c = new double[heatCapacity.length];
        Arrays.setAll(c, j -> heatCapacity[j].at(w));
        return brine * (enthalpyAtZero.at(Math.max(SMALLEST_ROOT, Math.sqrt(w))) + rise(c, t))
                + Salt.specificHeatCapacity().value() * amounts[UNDISSOLVED] * t;
    }
}
