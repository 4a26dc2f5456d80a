/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * How fast a vessel takes the temperature of one medium: the excess over the medium, θ = T − T_medium, obeys
 * \[ dθ/dt = −e^c (k_1 + k_2 |θ|^{1/4}) θ \]
 *
 * <p>The first term stands for what conducts, radiates or is blown, the second for free convection, whose coefficient grows as the
 * fourth root of the temperature difference while it is laminar (Nu ~ Ra^{1/4}). The equation is one of Bernoulli's and has a
 * solution in closed form, so that no step size limits it. c is an unknown factor's logarithm, zero where the model is right.
 *
 * <p>Theory manual, equation (9.4).
 *
 * @param mediumId name of the medium, as in events
 * @param linearPerS k_1 at a full vessel [1/s], &gt; 0 and at most 1
 * @param convectivePerS k_2 at a full vessel [1/(s K^{1/4})], 0 to 1
 * @param fillExponent the rate of a vessel of which a part p is left is that of the full one times p^(−fillExponent), 0 to 2
 * @param mediumK temperature of the medium [K], 150 to 500
 * @param mediumSdK standard uncertainty of that temperature [K], 0 to 50
 * @param conductanceLogSd standard uncertainty of c [-], 0 to 2
 * @param fitRmsK how far this law is from the course that it was fitted to, root mean square [K]; 0 if it was fitted to none
 */
public record MediumLaw(
        String mediumId,
        double linearPerS,
        double convectivePerS,
        double fillExponent,
        double mediumK,
        double mediumSdK,
        double conductanceLogSd,
        double fitRmsK) {

    /**
     * Checks the figures.
     *
     * @param mediumId name of the medium, not blank
     * @param linearPerS k_1 [1/s]
     * @param convectivePerS k_2 [1/(s K^{1/4})]
     * @param fillExponent exponent of the part left [-]
     * @param mediumK temperature of the medium [K]
     * @param mediumSdK its standard uncertainty [K]
     * @param conductanceLogSd standard uncertainty of c [-]
     * @param fitRmsK residual of the fit [K]
     * @throws OutOfRangeException if a figure is outside its range
     * @throws IllegalArgumentException if the name is blank
     */
    public MediumLaw {
        Checks.name(mediumId, "medium");
        Checks.within(linearPerS, Double.MIN_NORMAL, 1, "rate k1 of " + mediumId, "1/s");
        Checks.within(convectivePerS, 0, 1, "rate k2 of " + mediumId, "1/(s K^0.25)");
        Checks.within(fillExponent, 0, 2, "fill exponent of " + mediumId, "1");
        Checks.within(mediumK, Checks.COLDEST_K, Checks.WARMEST_K, "temperature of " + mediumId, "K");
        Checks.within(mediumSdK, 0, 50, "standard uncertainty of the temperature of " + mediumId, "K");
        Checks.within(conductanceLogSd, 0, 2, "standard uncertainty of the log conductance of " + mediumId, "1");
        Checks.within(fitRmsK, 0, 50, "residual of the law of " + mediumId, "K");
    }

    /**
     * Newton's law with one time constant.
     *
     * @param mediumId name of the medium
     * @param timeConstantS time constant of the full vessel [s], at least 1
     * @param mediumK temperature of the medium [K]
     * @param mediumSdK its standard uncertainty [K]
     * @param conductanceLogSd standard uncertainty of the logarithm of the conductance [-]
     * @return the law
     * @throws OutOfRangeException if a figure is outside its range
     */
    public static MediumLaw newton(
            String mediumId, double timeConstantS, double mediumK, double mediumSdK, double conductanceLogSd) {
        Checks.within(timeConstantS, 1, 1e9, "time constant in " + mediumId, "s");
        return new MediumLaw(mediumId, 1 / timeConstantS, 0, 0, mediumK, mediumSdK, conductanceLogSd, 0);
    }

    /**
     * The same law with other uncertainties.
     *
     * @param newMediumSdK standard uncertainty of the medium's temperature [K], 0 to 50
     * @param newConductanceLogSd standard uncertainty of the logarithm of the conductance [-], 0 to 2
     * @return a new law
     * @throws OutOfRangeException if a figure is outside its range
     */
    public MediumLaw withUncertainty(double newMediumSdK, double newConductanceLogSd) {
        return new MediumLaw(
                mediumId,
                linearPerS,
                convectivePerS,
                fillExponent,
                mediumK,
                newMediumSdK,
                newConductanceLogSd,
                fitRmsK);
    }

    /**
     * Time constant at an excess: how long the present rate would take to bring it to zero.
     *
     * @param excessK temperature of the drink less that of the medium [K]
     * @return time constant of the full vessel [s]
     * @throws OutOfRangeException if the excess is not within ±1000 K
     */
    public double timeConstantS(double excessK) {
        Checks.within(excessK, -1000, 1000, "excess over " + mediumId, "K");
        return 1 / (linearPerS + convectivePerS * fourthRoot(Math.abs(excessK)));
    }

    /** Rate of the excess per unit of scaled time [K/s]. */
    double rate(double excessK) {
        return -(linearPerS + convectivePerS * fourthRoot(Math.abs(excessK))) * excessK;
    }

    /** Derivative of {@link #rate} with respect to the excess [1/s]. */
    double rateSlope(double excessK) {
        return -(linearPerS + 1.25 * convectivePerS * fourthRoot(Math.abs(excessK)));
    }

    /** The excess after a scaled time s = t e^c p^(−m): what remains of it is the fourth power of {@link #remainingRoot}. */
    double excessAfter(double excessK, double scaledS) {
        double y = remainingRoot(convectionRatio(excessK), scaledS);
        return excessK * (y * y) * (y * y);
    }

    /** Rate by free convection over the linear one at an excess [-]; at what remains later it is this times {@link #remainingRoot}. */
    double convectionRatio(double excessK) {
        return convectivePerS / linearPerS * fourthRoot(Math.abs(excessK));
    }

    /** Fourth root of the part of an excess that remains after a scaled time. */
    double remainingRoot(double convectionRatio, double scaledS) {
        double e = Math.exp(-0.25 * linearPerS * scaledS);
        return e / (1 + convectionRatio * (1 - e));
    }

    /** The scaled time from one excess to a smaller one of the same sign; infinite if it is never reached. */
    double scaledTime(double fromK, double toK) {
        if (fromK == toK) {
            return 0;
        }
        double ratio = toK / fromK;
        if (!(ratio > 0 && ratio < 1)) {
            return Double.POSITIVE_INFINITY;
        }
        double y = fourthRoot(ratio);
        double rq = convectionRatio(fromK);
        double e = y * (1 + rq) / (1 + y * rq);
        return Math.max(0, -4 * Math.log(e) / linearPerS);
    }

    /** Factor of the rate when a part of the contents is left. */
    double fillFactor(double part) {
        return part == 1 ? 1 : Math.pow(part, -fillExponent);
    }

    private static double fourthRoot(double x) {
        return Math.sqrt(Math.sqrt(x));
    }
}
