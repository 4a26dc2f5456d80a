/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.function.DoubleBinaryOperator;

/**
 * Heat between two temperatures: a constant conductance, a convective film, radiation, or a user's own.
 *
 * <p>Implementations are immutable and thread-safe; zero drive gives zero flow.
 *
 * <p>Theory manual, equation (1.3).
 */
@FunctionalInterface
public interface HeatLaw {

    /**
     * Evaluates the law.
     *
     * @param fromK temperature on the giving side [K]
     * @param toK temperature on the taking side [K]
     * @param out receives flow and slopes
     */
    void evaluate(double fromK, double toK, HeatFlow out);

    /**
     * A constant conductance.
     *
     * @param wattsPerKelvin conductance [W/K], finite, ≥ 0
     * @return the law
     * @throws IllegalArgumentException if the conductance is negative or not finite
     */
    static HeatLaw conductance(double wattsPerKelvin) {
        if (!(wattsPerKelvin >= 0) || Double.isInfinite(wattsPerKelvin)) {
            throw new IllegalArgumentException("conductance " + wattsPerKelvin + " W/K: expected a finite value ≥ 0");
        }
        return new ConstantConductance(wattsPerKelvin);
    }

    /**
     * The same law over another area: flow and slopes times a factor.
     *
     * @param factor factor on the flow, finite, ≥ 0
     * @return the law times the factor
     * @throws IllegalArgumentException if the factor is negative or not finite
     */
    default HeatLaw times(double factor) {
        if (!(factor >= 0) || Double.isInfinite(factor)) {
            throw new IllegalArgumentException("factor " + factor + " on a heat law: expected a finite value ≥ 0");
        }
        if (this instanceof ConstantConductance constant) {
            return conductance(factor * constant.wattsPerKelvin());
        }
        return (fromK, toK, out) -> {
            evaluate(fromK, toK, out);
            out.watts *= factor;
            out.perFromKelvin *= factor;
            out.perToKelvin *= factor;
        };
    }

    /**
     * Any smooth function of the two temperatures; slopes by central differences over 2 mK.
     *
     * @param watts heat from the first to the second temperature [W], given both [K]
     * @return the law
     */
    static HeatLaw of(DoubleBinaryOperator watts) {
        double step = 1e-3;
        return (fromK, toK, out) -> {
            out.watts = watts.applyAsDouble(fromK, toK);
            out.perFromKelvin =
                    (watts.applyAsDouble(fromK + step, toK) - watts.applyAsDouble(fromK - step, toK)) / (2 * step);
            out.perToKelvin =
                    (watts.applyAsDouble(fromK, toK + step) - watts.applyAsDouble(fromK, toK - step)) / (2 * step);
        };
    }
}
