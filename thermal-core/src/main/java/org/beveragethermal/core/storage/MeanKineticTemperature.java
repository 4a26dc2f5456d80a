/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * Mean kinetic temperature: the constant temperature at which as much of a first-order reaction of given activation energy goes on as at
 * temperatures that vary.
 *
 * <p>\[ T_K = (ΔH/R) / −\ln(Σ wᵢ e^{−ΔH/(R Tᵢ)} / Σ wᵢ) \] J. D. Haynes, Journal of Pharmaceutical Sciences 60 (1971) 927-929; in the
 * United States Pharmacopeia, general chapter 1079.2, with ΔH = 83.144 kJ/mol. It is at least the arithmetic mean, and the same for
 * constant temperatures. That activation energy is a convention for medicines; reactions in wine have between about 40 and 130 kJ/mol
 * (from memory).
 *
 * <p>Theory manual, equation (8.9).
 */
public final class MeanKineticTemperature {

    /** Activation energy by convention. */
    public static final Constant ACTIVATION_ENERGY = new Constant(
            "activation energy of the mean kinetic temperature",
            83_144,
            "J/mol",
            Uncertainty.exact(),
            Source.published(
                    "Haynes 1971",
                    "J. D. Haynes, Worldwide virtual temperatures for product stability testing, J. Pharm. Sci. 60 (1971) 927-929;"
                            + " USP general chapter 1079.2"));

    /** The gas constant that the convention goes with, so that their quotient is 10 000 K [J/(mol K)]. */
    private static final double GAS_CONSTANT = 8.3144;

    private static final double LEAST_ENERGY = 1e3;
    private static final double MOST_ENERGY = 1e6;
    private static final double REFERENCE_K = 293.15;
    private static final double COLDEST_K = 150;
    private static final double HOTTEST_K = 500;

    private MeanKineticTemperature() {}

    /**
     * Of readings that each stand for a stretch of time.
     *
     * @param temperaturesK temperatures [K], 150 to 500, at least one, not modified
     * @param weights how long each lasted, in any unit, at least 0, not all 0; as many, not modified
     * @return mean kinetic temperature [K] with {@link #ACTIVATION_ENERGY}
     * @throws IllegalArgumentException if there are none, the lengths differ, or a number is outside its range or not finite
     */
    public static double ofReadingsK(double[] temperaturesK, double[] weights) {
        if (temperaturesK.length == 0 || temperaturesK.length != weights.length) {
            throw new IllegalArgumentException(temperaturesK.length + " temperatures and " + weights.length
                    + " weights: expected as many weights as temperatures, at least one");
        }
        double quotientK = ACTIVATION_ENERGY.value() / GAS_CONSTANT;
        double longest = longest(weights);
        double total = 0;
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            if (!(temperaturesK[i] >= COLDEST_K && temperaturesK[i] <= HOTTEST_K)) {
                throw new IllegalArgumentException("temperature " + i + ", " + temperaturesK[i] + " K: expected "
                        + COLDEST_K + " K to " + HOTTEST_K + " K");
            }
            total += weights[i] / longest;
            sum += weights[i] / longest * rate(quotientK, temperaturesK[i]);
        }
        return temperatureK(quotientK, sum / total);
    }

    /** The greatest weight; sums of parts of it neither overflow nor vanish, whatever the unit. */
    private static double longest(double[] weights) {
        double longest = 0;
        for (int i = 0; i < weights.length; i++) {
            if (!(weights[i] >= 0 && weights[i] <= Double.MAX_VALUE)) {
                throw new IllegalArgumentException(
                        "weight " + i + ", " + weights[i] + ": expected a finite number, at least 0");
            }
            longest = Math.max(longest, weights[i]);
        }
        if (!(longest > 0)) {
            throw new IllegalArgumentException("weights: expected one above 0");
        }
        return longest;
    }

    /** Of lines: the integral along them in place of the sum. */
    static double ofLinesK(Lines lines, double activationEnergy) {
        if (!OutOfRangeException.admits(activationEnergy, LEAST_ENERGY, MOST_ENERGY)) {
            throw OutOfRangeException.refusal(
                    "activation energy", activationEnergy, LEAST_ENERGY, MOST_ENERGY, "J/mol", "");
        }
        double quotientK = activationEnergy / GAS_CONSTANT;
        double sum = 0;
        for (int i = 1; i < lines.points(); i++) {
            sum += lines.spanS(i) * meanRate(quotientK, lines.temperatureK(i - 1), lines.temperatureK(i));
        }
        return temperatureK(quotientK, sum / lines.endS());
    }

    /** Mean of the rate along a line, which is its mean over the temperatures, cut so that it grows little within a part. */
    private static double meanRate(double quotientK, double fromK, double toK) {
        double exponents = Math.abs(quotientK * (1 / fromK - 1 / toK));
        return Quadrature.mean(t -> rate(quotientK, t), fromK, toK, 1 + (int) Math.ceil(2 * exponents));
    }

    /** Rate relative to that at 20 °C, so that no number gets small. */
    private static double rate(double quotientK, double temperatureK) {
        return Math.exp(quotientK * (1 / REFERENCE_K - 1 / temperatureK));
    }

    /** The temperature that has a rate. */
    private static double temperatureK(double quotientK, double rate) {
        return 1 / (1 / REFERENCE_K - Math.log(rate) / quotientK);
    }
}
