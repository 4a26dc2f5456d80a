/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.SmoothFunction;

/**
 * Relative density difference that drives free convection between a bulk fluid and a wall: what β ΔT is for a fluid whose
 * density falls in a straight line.
 *
 * <p>Theory manual, equation (3.3).
 */
@FunctionalInterface
public interface Buoyancy {

    /**
     * Evaluates the drive.
     *
     * @param bulkK temperature of the bulk [K]
     * @param wallK temperature of the wall [K]
     * @param out receives the drive [-] as {@code watts} and its slopes [1/K]
     */
    void evaluate(double bulkK, double wallK, HeatFlow out);

    /**
     * Whether something else than temperature, such as vapour, has a part in which side is lighter.
     *
     * @return true if {@link #lighterBulk} says more than which side is warmer
     */
    default boolean hasOtherCauses() {
        return false;
    }

    /**
     * Whether the bulk is lighter than the fluid at the wall, rounded where they weigh about the same.
     *
     * @param bulkK temperature of the bulk [K]
     * @param wallK temperature of the wall [K]
     * @param out receives 1 if it is lighter, 0 if it is heavier, or something between as {@code watts}, and its slopes [1/K]
     */
    default void lighterBulk(double bulkK, double wallK, HeatFlow out) {
        out.watts = bulkK >= wallK ? 1 : 0;
        out.perFromKelvin = 0;
        out.perToKelvin = 0;
    }

    /**
     * An ideal gas: |ΔT| over the film temperature.
     *
     * @return the drive
     */
    static Buoyancy idealGas() {
        return (bulkK, wallK, out) -> {
            double film = 0.5 * (bulkK + wallK);
            double difference = Math.abs(bulkK - wallK);
            double sign = Math.signum(bulkK - wallK);
            out.watts = difference / film;
            out.perFromKelvin = sign / film - 0.5 * difference / (film * film);
            out.perToKelvin = -sign / film - 0.5 * difference / (film * film);
        };
    }

    /**
     * A liquid with its own density curve, also across a density maximum.
     *
     * <p>In a laminar boundary layer of thickness δ with the temperature profile (1 − y/δ)² (Squire–Eckert), the buoyancy that
     * drives the layer is B = 3 ∫ (ρ_bulk − ρ(T))/ρ_bulk d(y/δ), which is β ΔT where the density is straight. The parts that
     * push up and down, B₊ and B₋, are blended as √(B₊² + B₋² − B₊ B₋), so that the drive does not vanish where they cancel.
     * Derivation and blend are ours.
     *
     * @param density density of the liquid [kg/m³] against temperature [K]
     * @return the drive
     */
    static Buoyancy ofDensity(SmoothFunction density) {
        return new LiquidBuoyancy(density);
    }
}
