/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

/**
 * Coefficients of a four-stage, L-stable Rosenbrock method of order 4 with an embedded estimate of order 3, which evaluates
 * the rates three times a step, in the transformed form that needs no multiplication by the Jacobian:
 *
 * <p>(I/(hγ) − J) U_i = f(y + Σ a_ij U_j) + Σ (c_ij/h) U_j, y₁ = y + Σ b_i U_i, error = Σ e_i U_i; the fourth stage looks where
 * the third does.
 *
 * <p>Source: E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd ed., Springer 1996, section IV.7, method
 * ROS4 (L-stable to the five digits of its γ: stiff parts are damped to 1.5e-5 of themselves in a step); the numbers are from
 * memory of the published code and are held to the order conditions and to L-stability by TableauTest.
 *
 * <p>Theory manual, equation (7.2).
 */
public final class Ros4 {

    /** Diagonal coefficient γ [-]. */
    public static final double GAMMA = 0.57282;
    /** Argument of stage 2: weight of U_1 [-]. */
    public static final double A21 = 2;
    /** Argument of stage 3: weight of U_1 [-]. */
    public static final double A31 = 1.867943637803922;
    /** Argument of stage 3: weight of U_2 [-]. */
    public static final double A32 = 0.2344449711399156;
    /** Right hand side of stage 2: weight of U_1 over the step [-]. */
    public static final double C21 = -7.137615036412310;
    /** Right hand side of stage 3: weight of U_1 over the step [-]. */
    public static final double C31 = 2.580708087951457;
    /** Right hand side of stage 3: weight of U_2 over the step [-]. */
    public static final double C32 = 0.6515950076447975;
    /** Right hand side of stage 4: weight of U_1 over the step [-]. */
    public static final double C41 = -2.137148994382534;
    /** Right hand side of stage 4: weight of U_2 over the step [-]. */
    public static final double C42 = -0.3214669691237626;
    /** Right hand side of stage 4: weight of U_3 over the step [-]. */
    public static final double C43 = -0.6949742501781779;
    /** Solution: weight of U_1 [-]. */
    public static final double B1 = 2.255570073418735;
    /** Solution: weight of U_2 [-]. */
    public static final double B2 = 0.2870493262186792;
    /** Solution: weight of U_3 [-]. */
    public static final double B3 = 0.4353179431840180;
    /** Solution: weight of U_4 [-]. */
    public static final double B4 = 1.093502252409163;
    /** Error: weight of U_1 [-]. */
    public static final double E1 = -0.2815431932141155;
    /** Error: weight of U_2 [-]. */
    public static final double E2 = -0.07276199124934920;
    /** Error: weight of U_3 [-]. */
    public static final double E3 = -0.1082196201495311;
    /** Error: weight of U_4 [-]. */
    public static final double E4 = -1.093502252409163;

    private Ros4() {}
}
