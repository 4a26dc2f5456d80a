/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.internal.ChebyshevFit;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.liquid.Brine;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * What happens where ice melts in brine: three balances for the melting rate, the temperature and the strength of the brine
 * at the ice.
 *
 * <p>Heat from the brine melts ice and warms its inside; salt that comes through the film keeps up with the fresh melt water;
 * and brine at the ice is at its liquidus: h (T − T_i) = ṁ L + g (T_i − T_ice), (h/c) Le^(−2/3) (w − w_i) = ṁ w_i, T_i =
 * liquidus(w_i). Source: D. M. Holland, A. Jenkins, Modeling thermodynamic ice–ocean interactions at the base of an ice shelf,
 * J. Phys. Oceanogr. 29 (1999) 1787–1800, there with exchange coefficients of an ocean; here heat and mass share one film by
 * the analogy of Chilton and Colburn (exponent from memory, as in Incropera). Because the melt dilutes the brine at the ice, only a
 * part of the difference between brine and its liquidus drives.
 *
 * <p>Theory manual, equation (6.3).
 */
final class BrineInterface {

    /** Lewis number, thermal over salt diffusivity. */
    static final Constant LEWIS = new Constant(
            "Lewis number of cold brine",
            250,
            "1",
            Uncertainty.rectangular(100),
            new Source(
                    "lewis-of-brine",
                    "own computation: diffusivity of NaCl in water 0.44e-9 m²/s at 0 °C and 0.65e-9 m²/s at 5 °C (D. R. Caldwell,"
                            + " Thermal and Fickian diffusion of sodium chloride in a solution of oceanic concentration, 1973,"
                            + " abstract), thermal diffusivity 0.13e-6 to 0.14e-6 m²/s",
                    Source.Kind.OWN_COMPUTATION));

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double WATER_HEAT_CAPACITY = 4200;
    private static final double EXPONENT = 2.0 / 3;
    private static final int ITERATIONS = 80;
    private static final double ACCURACY = 1e-13;
    private static final double STRONGEST = Brine.EUTECTIC_MASS_FRACTION;

    /** Heat conductance of a film between a brine and an ice surface [W/K]. */
    @FunctionalInterface
    interface Film {
        double conductance(double brineK, double surfaceK);
    }

    private final SmoothFunction liquidusK;
    private final double saltPerHeat;

    BrineInterface() {
        // Degree 4, up to the corners at 0 °C and at the eutectic, where Brine cuts it off.
        double low = 0.001;
        double high = STRONGEST - 0.001;
        liquidusK = ChebyshevFit.straight(Brine::freezingTemperatureK, low, high, 1e-12);
        saltPerHeat = Math.pow(LEWIS.value(), -EXPONENT);
    }

    /** Freezing temperature of brine [K], never below the eutectic. */
    double liquidusK(double massFraction) {
        return Math.min(ZERO_CELSIUS_K, Math.max(Brine.EUTECTIC_K, liquidusK.at(Math.max(0, massFraction))));
    }

    /** Rate of melting [kg/s], heat into the inside of the ice [W], state of the brine at the ice, conductance of the film. */
    record Flows(double melt, double insideW, double surfaceK, double surfaceFraction, double filmWPerK) {}

    /**
     * Solves the three balances.
     *
     * @param brineK temperature of the brine [K]
     * @param fraction its mass fraction of salt [-]
     * @param brineHeatCapacity [J/(kg K)]
     * @param iceK mean temperature of the ice [K]
     * @param iceEnthalpy specific enthalpy of the ice over liquid water at 0 °C [J/kg], negative
     * @param inside conductance from the surface to the inside of the ice [W/K]
     * @param film conductance of the film
     */
    Flows solve(
            double brineK,
            double fraction,
            double brineHeatCapacity,
            double iceK,
            double iceEnthalpy,
            double inside,
            Film film) {
        double w = Math.min(STRONGEST, Math.max(0, fraction));
        double low = 0;
        // Melting thins the brine at the ice; ice that grows keeps it, as mush does, at the strength of the rest.
        double high = w;
        double at = w;
        double lowValue = Double.NaN;
        double highValue = Double.NaN;
        int lastSide = 0;
        Flows flows = flows(at, brineK, iceK, iceEnthalpy, inside, film);
        // The lack of salt at the surface falls as the surface gets stronger: bracketed false position (Illinois).
        for (int i = 0; i < ITERATIONS; i++) {
            double perFraction = flows.filmWPerK() / brineHeatCapacity * saltPerHeat;
            double value = perFraction * (w - at) - flows.melt() * at;
            if (Math.abs(value) <= ACCURACY * perFraction) {
                break;
            }
            if (value > 0) {
                low = at;
                lowValue = value;
                highValue = lastSide > 0 ? 0.5 * highValue : highValue;
                lastSide = 1;
            } else {
                high = at;
                highValue = value;
                lowValue = lastSide < 0 ? 0.5 * lowValue : lowValue;
                lastSide = -1;
            }
            double next = Double.isNaN(lowValue) || Double.isNaN(highValue)
                    ? 0.5 * (low + high)
                    : low + (high - low) * lowValue / (lowValue - highValue);
            if (!(next > low && next < high)) {
                break;
            }
            at = next;
            flows = flows(at, brineK, iceK, iceEnthalpy, inside, film);
        }
        return flows;
    }

    private Flows flows(
            double surfaceFraction, double brineK, double iceK, double iceEnthalpy, double inside, Film film) {
        double surfaceK = liquidusK(surfaceFraction);
        double filmWPerK = film.conductance(brineK, surfaceK);
        double heat = filmWPerK * (brineK - surfaceK);
        double insideW = inside * (surfaceK - iceK);
        double latent = WATER_HEAT_CAPACITY * (surfaceK - ZERO_CELSIUS_K) - iceEnthalpy;
        return new Flows((heat - insideW) / latent, insideW, surfaceK, surfaceFraction, filmWPerK);
    }
}
