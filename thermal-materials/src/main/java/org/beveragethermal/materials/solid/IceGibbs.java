/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

/**
 * Gibbs function of ice Ih and what follows from it: IAPWS R10-06(2009), Revised Release on the Equation of State 2006
 * for H2O Ice Ih. Temperature in K, pressure in Pa; range 0 to 273.16 K, 0 to 210 MPa. Complex numbers are kept as two
 * doubles, so that nothing is allocated.
 *
 * <p>With tau = T/T_t and w = (p - 101325 Pa)/p_t:
 * g = g0(p) - s0 T + T_t Re sum r_k [(t_k - tau) ln(t_k - tau) + (t_k + tau) ln(t_k + tau) - 2 t_k ln t_k - tau²/t_k],
 * g0 = sum G_0[i] w^i, r_1 constant, r_2 = sum R_2[i] w^i.
 */
@SuppressWarnings("FloatingPointLiteralPrecision") // all digits as published
final class IceGibbs {
    static final double NORMAL_PRESSURE_PA = 101325;

    private static final double TRIPLE_TEMPERATURE_K = 273.16;
    private static final double TRIPLE_PRESSURE_PA = 611.657;

    private static final double[] G_0 = {
        -0.632020233335886e6, 0.655022213658955, -0.189369929326131e-7, 0.339746123271053e-14, -0.556464869058991e-21
    };

    private static final double T_1_RE = 0.368017112855051e-1;
    private static final double T_1_IM = 0.510878114959572e-1;
    private static final double T_2_RE = 0.337315741065416;
    private static final double T_2_IM = 0.335449415919309;
    private static final double R_1_RE = 0.447050716285388e2;
    private static final double R_1_IM = 0.656876847463481e2;
    private static final double[] R_2_RE = {-0.725974574329220e2, -0.557107698030123e-4, 0.234801409215913e-10};
    private static final double[] R_2_IM = {-0.781008427112870e2, 0.464578634580806e-4, -0.285651142904972e-10};

    private IceGibbs() {}

    /** Density in kg/m³: 1 / (dg/dp). */
    static double density(double temperatureK, double pressurePa) {
        double tau = temperatureK / TRIPLE_TEMPERATURE_K;
        double w = (pressurePa - NORMAL_PRESSURE_PA) / TRIPLE_PRESSURE_PA;
        double gP = (G_0[1] + w * (2 * G_0[2] + w * (3 * G_0[3] + w * 4 * G_0[4]))) / TRIPLE_PRESSURE_PA;
        double re = (R_2_RE[1] + 2 * w * R_2_RE[2]) / TRIPLE_PRESSURE_PA;
        double im = (R_2_IM[1] + 2 * w * R_2_IM[2]) / TRIPLE_PRESSURE_PA;
        return 1 / (gP + TRIPLE_TEMPERATURE_K * bracket(re, im, T_2_RE, T_2_IM, tau));
    }

    /** Specific heat capacity in J/(kg K): -T d²g/dT². */
    static double specificHeatCapacity(double temperatureK, double pressurePa) {
        double tau = temperatureK / TRIPLE_TEMPERATURE_K;
        double w = (pressurePa - NORMAL_PRESSURE_PA) / TRIPLE_PRESSURE_PA;
        return -tau
                * (curvature(R_1_RE, R_1_IM, T_1_RE, T_1_IM, tau)
                        + curvature(series(R_2_RE, w), series(R_2_IM, w), T_2_RE, T_2_IM, tau));
    }

    /** Specific enthalpy in J/kg on the release's zero: g - T dg/dT. */
    static double specificEnthalpy(double temperatureK, double pressurePa) {
        double tau = temperatureK / TRIPLE_TEMPERATURE_K;
        double w = (pressurePa - NORMAL_PRESSURE_PA) / TRIPLE_PRESSURE_PA;
        return series(G_0, w)
                + TRIPLE_TEMPERATURE_K
                        * (enthalpyTerm(R_1_RE, R_1_IM, T_1_RE, T_1_IM, tau)
                                + enthalpyTerm(series(R_2_RE, w), series(R_2_IM, w), T_2_RE, T_2_IM, tau));
    }

    /** Re r [(t - tau) ln(t - tau) + (t + tau) ln(t + tau) - 2 t ln t - tau²/t]. */
    private static double bracket(double rRe, double rIm, double tRe, double tIm, double tau) {
        double square = tau * tau / squaredModulus(tRe, tIm);
        double re = timesLogRe(tRe - tau, tIm) + timesLogRe(tRe + tau, tIm) - 2 * timesLogRe(tRe, tIm) - square * tRe;
        double im = timesLogIm(tRe - tau, tIm) + timesLogIm(tRe + tau, tIm) - 2 * timesLogIm(tRe, tIm) + square * tIm;
        return rRe * re - rIm * im;
    }

    /** Re r [1/(t - tau) + 1/(t + tau) - 2/t]. */
    private static double curvature(double rRe, double rIm, double tRe, double tIm, double tau) {
        double minus = squaredModulus(tRe - tau, tIm);
        double plus = squaredModulus(tRe + tau, tIm);
        double square = squaredModulus(tRe, tIm);
        double re = (tRe - tau) / minus + (tRe + tau) / plus - 2 * tRe / square;
        double im = -tIm / minus - tIm / plus + 2 * tIm / square;
        return rRe * re - rIm * im;
    }

    /** Re r [t (ln(t - tau) + ln(t + tau) - 2 ln t) + tau²/t], what remains of g - T dg/dT. */
    private static double enthalpyTerm(double rRe, double rIm, double tRe, double tIm, double tau) {
        double logRe = logRe(tRe - tau, tIm) + logRe(tRe + tau, tIm) - 2 * logRe(tRe, tIm);
        double logIm = logIm(tRe - tau, tIm) + logIm(tRe + tau, tIm) - 2 * logIm(tRe, tIm);
        double square = tau * tau / squaredModulus(tRe, tIm);
        double re = tRe * logRe - tIm * logIm + square * tRe;
        double im = tRe * logIm + tIm * logRe - square * tIm;
        return rRe * re - rIm * im;
    }

    private static double series(double[] coefficients, double w) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * w + coefficients[i];
        }
        return sum;
    }

    private static double squaredModulus(double re, double im) {
        return re * re + im * im;
    }

    private static double logRe(double re, double im) {
        return 0.5 * Math.log(squaredModulus(re, im));
    }

    private static double logIm(double re, double im) {
        return Math.atan2(im, re);
    }

    private static double timesLogRe(double re, double im) {
        return re * logRe(re, im) - im * logIm(re, im);
    }

    private static double timesLogIm(double re, double im) {
        return re * logIm(re, im) + im * logRe(re, im);
    }
}
