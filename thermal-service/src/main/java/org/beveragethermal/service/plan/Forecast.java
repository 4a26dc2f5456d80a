/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.Optional;
import org.beveragethermal.service.caution.DangerLimits;

/**
 * Temperatures of a bottle on a route, alone in its gear, as the flow tables give them. Immutable.
 *
 * <p>Theory manual, equation (9.3).
 */
final class Forecast {

    /** What tables, solver and minutes rounded may come to [K]. */
    private static final double LEAST_MARGIN_K = 0.2;

    private final double[] poursK;
    private final double[] sigmasK;
    private final double[] endsK;
    private final boolean fromAbove;
    private final double iceKg;
    private final double[] courseS;
    private final double[] courseK;

    /**
     * A forecast.
     *
     * @param poursK temperature at each pour [K], kept
     * @param sigmasK standard deviation of each [K], kept
     * @param endsK temperature at the end of each leg [K], kept
     * @param fromAbove whether it was warmer than when poured first
     * @param iceKg ice that its heat melts [kg]
     * @param courseS times of its course, if it is watched [s], kept
     * @param courseK temperatures of its course [K], kept
     */
    Forecast(
            double[] poursK,
            double[] sigmasK,
            double[] endsK,
            boolean fromAbove,
            double iceKg,
            double[] courseS,
            double[] courseK) {
        this.poursK = poursK;
        this.sigmasK = sigmasK;
        this.endsK = endsK;
        this.fromAbove = fromAbove;
        this.iceKg = iceKg;
        this.courseS = courseS;
        this.courseK = courseK;
    }

    double pouredK() {
        return poursK[0];
    }

    double pourK(int i) {
        return poursK[i];
    }

    double sigmaK(int i) {
        return sigmasK[i];
    }

    int pours() {
        return poursK.length;
    }

    double endK(int leg) {
        return endsK[leg];
    }

    double iceKg() {
        return iceKg;
    }

    /** The first danger limit that its course oversteps; none where it is not watched. */
    Optional<DangerLimits.Breach> firstBreach(DangerLimits limits) {
        return courseS.length == 0 ? Optional.empty() : limits.firstBreach(courseS, courseK);
    }

    /** How many pours are outside a range. */
    long outside(double lowK, double highK) {
        long outside = 0;
        for (double kelvins : poursK) {
            outside += kelvins < lowK || kelvins > highK ? 1 : 0;
        }
        return outside;
    }

    /**
     * What the margins lack, summed over the pours [K]. On the side that the bottle comes from the margin is to be so many standard
     * deviations; on the other side it is to be more than what the tables and the solver may be wrong by.
     */
    double shortfallK(double lowK, double highK, double deviations) {
        double sum = 0;
        for (int i = 0; i < poursK.length; i++) {
            double below = poursK[i] - lowK;
            double above = highK - poursK[i];
            double wanted = deviations * sigmasK[i];
            double coming = fromAbove ? wanted - above : wanted - below;
            double other = fromAbove ? -below : -above;
            sum += Math.max(0, Math.max(coming, LEAST_MARGIN_K + other));
        }
        return sum;
    }
}
