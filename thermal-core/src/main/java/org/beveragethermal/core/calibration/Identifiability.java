/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Whether the readings tell the parameters apart.
 *
 * @param parameters number of parameters that were estimated
 * @param rank number of directions among them that the readings (and priors) determine
 * @param condition largest over smallest singular value of the slopes, columns of unit length; infinite if the rank is short
 * @param notDetermined parameters that could have any value
 * @param flat parameters whose profile is open on a side
 * @param together pairs whose estimates go together: correlation beyond {@link #MOST_CORRELATION}
 * @param advice what to do about it; empty if nothing is needed
 * @param further what other readings of the same runs would do, the most useful first
 */
public record Identifiability(
        int parameters,
        int rank,
        double condition,
        List<String> notDetermined,
        List<String> flat,
        List<Together> together,
        List<String> advice,
        List<Further> further) {

    /** Estimates with a correlation beyond this, of either sign, are not told apart. */
    public static final double MOST_CORRELATION = 0.99;

    /**
     * Two parameters that go together.
     *
     * @param first name of one
     * @param second name of the other
     * @param correlation correlation of their estimates
     */
    public record Together(String first, String second, double correlation) {}

    /**
     * What further readings would do, to first order.
     *
     * @param reading what would be read beside what was, as often and as well
     * @param standardErrors standard error of each parameter with them, by name; without those that would still not be determined
     * @param gain factor by which each of the parameters named in the report (of all if none is named) would become surer at least; 1 if
     *     one would still not be determined, +∞ if all are determined by these readings alone
     */
    public record Further(String reading, Map<String, Double> standardErrors, double gain) {

        /**
         * Checks the parts.
         *
         * @param reading what would be read
         * @param standardErrors standard error of each parameter with them, by name, not modified
         * @param gain factor by which each parameter in question would become surer at least, 1 to +∞
         */
        public Further {
            standardErrors = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(standardErrors));
        }
    }

    /**
     * Checks the parts.
     *
     * @param parameters number of parameters that were estimated
     * @param rank number of directions that are determined
     * @param condition condition number
     * @param notDetermined parameters that could have any value, not modified
     * @param flat parameters with an open profile, not modified
     * @param together pairs that go together, not modified
     * @param advice what to do, not modified
     * @param further what other readings would do, not modified
     */
    public Identifiability {
        notDetermined = List.copyOf(notDetermined);
        flat = List.copyOf(flat);
        together = List.copyOf(together);
        advice = List.copyOf(advice);
        further = List.copyOf(further);
    }

    /**
     * Whether each parameter is determined by itself.
     *
     * @return true if none is undetermined, flat or goes together with another
     */
    public boolean isIdentifiable() {
        return notDetermined.isEmpty() && flat.isEmpty() && together.isEmpty();
    }
}
