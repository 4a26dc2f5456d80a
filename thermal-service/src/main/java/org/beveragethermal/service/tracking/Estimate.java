/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Instant;

/**
 * What is believed of a vessel at an instant.
 *
 * @param at when
 * @param temperatureK mean temperature of the drink [K]
 * @param sdK its standard uncertainty [K]
 * @param logFactor natural logarithm of the factor by which the conductance differs from the model's [-]
 * @param logFactorSd its standard uncertainty [-]
 * @param mediumId where it is
 * @param mediumK temperature of that medium [K]
 * @param mediumSdK its standard uncertainty [K]
 * @param biasK error of the sensor [K]
 * @param biasSdK its standard uncertainty [K]
 */
public record Estimate(
        Instant at,
        double temperatureK,
        double sdK,
        double logFactor,
        double logFactorSd,
        String mediumId,
        double mediumK,
        double mediumSdK,
        double biasK,
        double biasSdK) {

    /** Half-width of a central 90 % interval of a normal distribution in standard deviations. */
    static final double Z90 = 1.6448536269514722;

    /**
     * Lower end of the 90 % interval.
     *
     * @return temperature [K]
     */
    public double lowK() {
        return temperatureK - Z90 * sdK;
    }

    /**
     * Upper end of the 90 % interval.
     *
     * @return temperature [K]
     */
    public double highK() {
        return temperatureK + Z90 * sdK;
    }
}
