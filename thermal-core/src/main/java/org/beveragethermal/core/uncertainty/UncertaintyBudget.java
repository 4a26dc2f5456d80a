/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * A budget of independent contributions to first order (JCGM 100:2008): combined standard uncertainty, effective degrees of freedom
 * and expanded uncertainty.
 *
 * <p>Theory manual, equation (8.6).
 *
 * @param terms the contributions
 */
public record UncertaintyBudget(List<Term> terms) {

    /**
     * A contribution.
     *
     * @param name of what
     * @param sensitivity change of the result per unit of it, finite
     * @param standardUncertainty its standard uncertainty, finite, ≥ 0
     * @param degreesOfFreedom how well that is known, &gt; 0; infinite if it is not in question
     */
    public record Term(String name, double sensitivity, double standardUncertainty, double degreesOfFreedom) {

        /**
         * Checks the parts.
         *
         * @param name of what
         * @param sensitivity change of the result per unit of it, finite
         * @param standardUncertainty its standard uncertainty, finite, ≥ 0
         * @param degreesOfFreedom how well that is known, &gt; 0, may be infinite
         * @throws IllegalArgumentException if a number is outside its range
         */
        public Term {
            boolean fit = Double.isFinite(sensitivity)
                    && standardUncertainty >= 0
                    && Double.isFinite(standardUncertainty)
                    && degreesOfFreedom > 0;
            if (!fit) {
                throw new IllegalArgumentException("contribution " + name + ": sensitivity " + sensitivity
                        + ", standard uncertainty " + standardUncertainty + ", degrees of freedom " + degreesOfFreedom
                        + ": expected finite numbers, none negative, and degrees of freedom above 0");
            }
        }

        /**
         * What it contributes.
         *
         * @return size of sensitivity times standard uncertainty
         */
        public double contribution() {
            return Math.abs(sensitivity) * standardUncertainty;
        }
    }

    /**
     * Checks the parts.
     *
     * @param terms the contributions, at least one, not modified
     * @throws IllegalArgumentException if there is none
     */
    public UncertaintyBudget {
        terms = List.copyOf(terms);
        if (terms.isEmpty()) {
            throw new IllegalArgumentException("no contributions: expected at least one");
        }
    }

    /**
     * Combined standard uncertainty (JCGM 100, 5.1.2).
     *
     * @return root of the sum of squares of the contributions
     */
    public double combined() {
        return Math.sqrt(terms.stream()
                .mapToDouble(t -> t.contribution() * t.contribution())
                .sum());
    }

    /**
     * Effective degrees of freedom by Welch and Satterthwaite (JCGM 100, G.4.1).
     *
     * @return degrees of freedom, infinite if all contributions have infinitely many
     */
    public double effectiveDegreesOfFreedom() {
        double sum = terms.stream()
                .mapToDouble(t -> Math.pow(t.contribution(), 4) / t.degreesOfFreedom())
                .sum();
        return sum > 0 ? Math.pow(combined(), 4) / sum : Double.POSITIVE_INFINITY;
    }

    /**
     * Coverage factor: the quantile of Student's distribution with the effective degrees of freedom, cut to a whole number (JCGM 100,
     * G.4.2).
     *
     * @param probability coverage probability, between 0 and 1
     * @return the factor
     * @throws IllegalArgumentException if the probability is outside its range
     */
    public double coverageFactor(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("probability " + probability + ": expected between 0 and 1");
        }
        double upper = 0.5 + 0.5 * probability;
        double freedom = Math.max(1, Math.floor(effectiveDegreesOfFreedom()));
        return Double.isInfinite(freedom)
                ? new NormalDistribution(null, 0, 1).inverseCumulativeProbability(upper)
                : new TDistribution(null, freedom).inverseCumulativeProbability(upper);
    }

    /**
     * Expanded uncertainty.
     *
     * @param probability coverage probability, between 0 and 1
     * @return half-width of the interval
     * @throws IllegalArgumentException if the probability is outside its range
     */
    public double expanded(double probability) {
        return coverageFactor(probability) * combined();
    }
}
