/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

/**
 * Coefficients of the six-stage, order 4(3), L-stable, stiffly accurate Rosenbrock method with γ = 1/4 and its dense
 * output of order 3, in the transformed form that needs no multiplication by the Jacobian:
 *
 * <p>(I/(hγ) − J) U_i = f(t + c_i h, y + Σ a_ij U_j) + Σ (C_ij/h) U_j + d_i h ∂f/∂t, y₁ = y + Σ a_5j U_j + U_5 + U_6, error =
 * U_6.
 *
 * <p>Source: E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd ed., Springer 1996, section IV.7,
 * method RODAS; the numbers are from memory of the published code and are held to the order conditions, L-stability and
 * observed order by RosenbrockTableauTest.
 *
 * <p>Theory manual, equation (7.2).
 */
final class RosenbrockTableau {

    static final int STAGES = 6;
    static final double GAMMA = 0.25;

    /** Stage arguments; row i for stage i, rows 4 and 5 build on each other (row 5 is row 4 plus U_4). */
    static final double[][] A = {
        {},
        {1.544},
        {0.9466785280815826, 0.2557011698983284},
        {3.314825187068521, 2.896124015972201, 0.9986419139977817},
        {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950},
        {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950, 1},
    };

    static final double[][] C = {
        {},
        {-5.6688},
        {-2.430093356833875, -0.2063599157091915},
        {-0.1073529058151375, -9.594562251023355, -20.47028614809616},
        {7.496443313967647, -10.24680431464352, -33.99990352819905, 11.70890893206160},
        {8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054},
    };

    /** Abscissae of the stages. */
    static final double[] TIME = {0, 0.386, 0.21, 0.63, 1, 1};

    /** Weights of h ∂f/∂t. */
    static final double[] TIME_DERIVATIVE = {0.25, -0.1043, 0.1035, -0.03620000000000023, 0, 0};

    /** y(t + θh) = (1−θ) y₀ + θ (y₁ + (1−θ) (Σ DENSE[0]_j U_j + θ Σ DENSE[1]_j U_j)). */
    static final double[][] DENSE = {
        {10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662, 0},
        {-0.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872, 0},
    };

    private RosenbrockTableau() {}
}
