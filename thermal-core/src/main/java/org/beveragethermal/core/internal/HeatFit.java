/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import java.util.Arrays;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.liquid.Liquid;

/**
 * Heat and temperature of a liquid, each as a smooth function of the other with slopes. They go on straight outside the liquid's range.
 *
 * @param specificEnthalpy h [J/kg] against temperature [K], 0 at 0 °C
 * @param temperatureOfEnthalpy T [K] against h [J/kg]
 */
public record HeatFit(SmoothFunction specificEnthalpy, SmoothFunction temperatureOfEnthalpy) {

    private static final double ENTHALPY_ACCURACY = 1e-13;
    private static final double TEMPERATURE_ACCURACY = 1e-10;
    private static final double ROOT_ACCURACY = 1e-11;
    private static final int NEWTON_TRIES = 20;
    private static final int BRENT_TRIES = 200;

    /**
     * Fits a liquid.
     *
     * @param liquid the liquid
     * @return its fits
     */
    public static HeatFit of(Liquid liquid) {
        double[] joints = PiecewiseFit.joints(liquid);
        SmoothFunction enthalpy = specificEnthalpyOf(liquid);
        double[] enthalpies = Arrays.stream(joints).map(enthalpy::at).toArray();
        double low = joints[0];
        double high = joints[joints.length - 1];
        return new HeatFit(
                enthalpy,
                PiecewiseFit.of(h -> temperature(enthalpy, h, low, high), enthalpies, TEMPERATURE_ACCURACY, true));
    }

    /**
     * Fits the specific enthalpy alone.
     *
     * @param liquid the liquid
     * @return h [J/kg] against temperature [K], the same as that of the whole
     */
    public static SmoothFunction specificEnthalpyOf(Liquid liquid) {
        return PiecewiseFit.of(liquid::specificEnthalpy, PiecewiseFit.joints(liquid), ENTHALPY_ACCURACY, true);
    }

    /** Newton's method from the straight line between the ends; heat always rises with temperature. */
    private static double temperature(SmoothFunction enthalpy, double h, double low, double high) {
        double atLow = enthalpy.at(low);
        double atHigh = enthalpy.at(high);
        if (h <= atLow) {
            return low;
        }
        if (h >= atHigh) {
            return high;
        }
        double t = low + (high - low) * (h - atLow) / (atHigh - atLow);
        for (int i = 0; i < NEWTON_TRIES; i++) {
            double next = Math.max(low, Math.min(high, t - (enthalpy.at(t) - h) / enthalpy.slope(t)));
            if (Math.abs(next - t) <= ROOT_ACCURACY) {
                return next;
            }
            t = next;
        }
        return new BrentSolver(ROOT_ACCURACY, ROOT_ACCURACY).solve(BRENT_TRIES, x -> enthalpy.at(x) - h, low, high);
    }
}
