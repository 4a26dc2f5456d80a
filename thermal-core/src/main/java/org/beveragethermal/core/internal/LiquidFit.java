/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * The properties of a liquid that films and stores need, as smooth functions of temperature with slopes.
 *
 * <p>They follow the liquid's own formulas to a few parts in 10⁷ and keep their end values outside the liquid's range.
 *
 * @param conductivity k [W/(m K)]
 * @param density ρ [kg/m³]
 * @param inverseDiffusion 1/(ν α) [s²/m⁴]
 * @param prandtl Pr [-]
 * @param kinematicViscosity ν [m²/s]
 * @param specificEnthalpy h [J/kg], 0 at 0 °C; goes on straight outside the range
 * @param temperatureOfEnthalpy T(h) [K]; goes on straight outside the range
 */
public record LiquidFit(
        SmoothFunction conductivity,
        SmoothFunction density,
        SmoothFunction inverseDiffusion,
        SmoothFunction prandtl,
        SmoothFunction kinematicViscosity,
        SmoothFunction specificEnthalpy,
        SmoothFunction temperatureOfEnthalpy) {

    private static final double DENSITY_ACCURACY = 1e-10;
    private static final double ENTHALPY_ACCURACY = 1e-13;

    /**
     * Fits a liquid.
     *
     * @param liquid the liquid
     * @return its fits
     */
    public static LiquidFit of(Liquid liquid) {
        double[] joints = joints(liquid);
        double low = joints[0];
        double high = joints[joints.length - 1];
        double[] enthalpyJoints =
                java.util.Arrays.stream(joints).map(liquid::specificEnthalpy).toArray();
        DoubleUnaryOperator inverse =
                h -> temperature(liquid, h, low, high, enthalpyJoints[0], enthalpyJoints[joints.length - 1]);
        FilmFit film = FilmFit.of(liquid);
        return new LiquidFit(
                film.conductivity(),
                film.density(),
                film.inverseDiffusion(),
                film.prandtl(),
                film.kinematicViscosity(),
                specificEnthalpyOf(liquid),
                PiecewiseFit.of(inverse, enthalpyJoints, DENSITY_ACCURACY, true));
    }

    /**
     * Fits the specific enthalpy alone.
     *
     * @param liquid the liquid
     * @return h [J/kg] against temperature [K], the same as that of the whole
     */
    public static SmoothFunction specificEnthalpyOf(Liquid liquid) {
        return PiecewiseFit.of(liquid::specificEnthalpy, joints(liquid), ENTHALPY_ACCURACY, true);
    }

    /**
     * Ends of the liquid's range and, in between, the temperatures at which one of its formulas ends.
     *
     * @param liquid the liquid
     * @return ascending temperatures [K], at least two
     */
    public static double[] joints(Liquid liquid) {
        ValidityRange range = liquid.temperatureRange();
        TreeSet<Double> joints = new TreeSet<>(List.of(range.low(), range.high()));
        for (PropertyRecord property : liquid.properties()) {
            for (double end :
                    new double[] {property.validity().low(), property.validity().high()}) {
                if (end > range.low() && end < range.high()) {
                    joints.add(end);
                }
            }
        }
        return joints.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double temperature(Liquid liquid, double h, double low, double high, double hLow, double hHigh) {
        if (h <= hLow) {
            return low;
        }
        if (h >= hHigh) {
            return high;
        }
        return new BrentSolver(1e-12, 1e-12).solve(200, t -> liquid.specificEnthalpy(t) - h, low, high);
    }
}
