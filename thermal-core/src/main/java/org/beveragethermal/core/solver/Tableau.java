/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.Arrays;
import org.beveragethermal.core.internal.Ros4;

/**
 * Coefficients of a Rosenbrock method in the transformed form that needs no multiplication by the Jacobian:
 *
 * <p>(I/(hγ) − J) U_i = f(t + c_i h, y + Σ a_ij U_j) + Σ (C_ij/h) U_j + d_i h ∂f/∂t, y₁ = y + Σ m_j U_j, error = Σ e_j U_j.
 *
 * <p>Held to the order conditions by TableauTest. Read only.
 *
 * <p>Theory manual, equations (7.1), (7.2), (7.4).
 */
final class Tableau {

    /**
     * Six stages, order 4(3), stiffly accurate, γ = 1/4: RODAS, E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd ed.,
     * Springer 1996, section IV.7; the numbers are from memory of the published code. Its dense output is of order 3.
     */
    static final Tableau RODAS = new Tableau(
            0.25,
            new double[][] {
                {},
                {1.544},
                {0.9466785280815826, 0.2557011698983284},
                {3.314825187068521, 2.896124015972201, 0.9986419139977817},
                {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950},
                {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950, 1},
            },
            new double[][] {
                {},
                {-5.6688},
                {-2.430093356833875, -0.2063599157091915},
                {-0.1073529058151375, -9.594562251023355, -20.47028614809616},
                {7.496443313967647, -10.24680431464352, -33.99990352819905, 11.70890893206160},
                {8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054},
            },
            new double[] {0, 0.386, 0.21, 0.63, 1, 1},
            new double[] {0.25, -0.1043, 0.1035, -0.03620000000000023, 0, 0},
            new double[] {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950, 1, 1},
            new double[] {0, 0, 0, 0, 0, 1},
            new double[][] {
                {10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662, 0},
                {-0.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872, 0},
            },
            3,
            3);

    /**
     * Four stages on three evaluations, order 3(2), stiffly accurate, γ = 1/2: RODAS3 of A. Sandu, J. G. Verwer, J. G. Blom, E. J. Spee, G. R.
     * Carmichael and F. A. Potra, Benchmarking stiff ODE solvers for atmospheric chemistry problems II: Rosenbrock solvers, Atmospheric
     * Environment 31 (1997) 3459-3472; numbers from memory. The dense output is of order 2 and ours: the smallest weights that meet its
     * conditions and the one of order 3 without the Jacobian.
     */
    static final Tableau RODAS3 = new Tableau(
            0.5,
            new double[][] {{}, {0}, {2, 0}, {2, 0, 1}},
            new double[][] {{}, {4}, {1, -1}, {1, -1, -8.0 / 3}},
            new double[] {0, 0, 1, 1},
            new double[] {0.5, 1.5, 0, 0},
            new double[] {2, 0, 1, 1},
            new double[] {0, 0, 0, 1},
            new double[][] {
                {3, -1, -0.6, 0.2},
                {0, 0, -0.6, 0.2},
            },
            2,
            2);

    /**
     * Four stages on three evaluations, order 4(3), L-stable but not stiffly accurate: ROS4, E. Hairer and G. Wanner, Solving Ordinary Differential
     * Equations II, 2nd ed., Springer 1996, section IV.7, table 7.2 and the published code; numbers from memory. The dense output is of
     * order 2 and ours, found as that of {@link #RODAS3}.
     */
    static final Tableau ROS4 = new Tableau(
            Ros4.GAMMA,
            new double[][] {{}, {Ros4.A21}, {Ros4.A31, Ros4.A32}, {Ros4.A31, Ros4.A32, 0}},
            new double[][] {{}, {Ros4.C21}, {Ros4.C31, Ros4.C32}, {Ros4.C41, Ros4.C42, Ros4.C43}},
            new double[] {0, 1.14564, 0.65521686381559, 0.65521686381559},
            new double[] {Ros4.GAMMA, -1.769193891319233, 0.7592633437920482, -0.1049021087100450},
            new double[] {Ros4.B1, Ros4.B2, Ros4.B3, Ros4.B4},
            new double[] {Ros4.E1, Ros4.E2, Ros4.E3, Ros4.E4},
            new double[][] {
                {2.4627113597684236, 0.31796209282872323, -1.191313653882772, -0.5373300903708828},
                {0.13573884058678967, -0.14095900206147352, -0.42853515916506707, 0.016841321686829357},
            },
            3,
            2);

    static Tableau of(Method method) {
        return switch (method) {
            case ORDER_4 -> RODAS;
            case ORDER_4_LIGHT -> ROS4;
            case ORDER_3 -> RODAS3;
        };
    }

    final int stages;
    final double gamma;
    final double[][] a;
    final double[][] c;
    final double[] time;
    final double[] timeDerivative;
    final double[] solution;
    final double[] error;
    /** y(t + θh) = (1−θ) y₀ + θ (y₁ + (1−θ) (Σ dense[0]_j U_j + θ Σ dense[1]_j U_j)). */
    final double[][] dense;
    /** Order of the solution that the error estimate is of. */
    final int errorOrder;

    /** Order up to which the dense output meets the conditions. */
    final int denseOrder;
    /** Whether a stage is evaluated where the one before it was. */
    final boolean[] repeated;
    /** Whether the argument of a stage is that of the stage before it plus what that stage gave. */
    final boolean[] following;
    /** Whether a stage is evaluated at the start of the step. */
    final boolean[] usesBase;
    /** Whether the solution is the argument of the last stage plus what that stage gave. */
    final boolean solutionFollows;

    /** Whether the error estimate is what the last stage gave. */
    final boolean errorIsLastStage;

    private Tableau(
            double gamma,
            double[][] a,
            double[][] c,
            double[] time,
            double[] timeDerivative,
            double[] solution,
            double[] error,
            double[][] dense,
            int errorOrder,
            int denseOrder) {
        this.stages = time.length;
        this.gamma = gamma;
        this.a = a;
        this.c = c;
        this.time = time;
        this.timeDerivative = timeDerivative;
        this.solution = solution;
        this.error = error;
        this.dense = dense;
        this.errorOrder = errorOrder;
        this.denseOrder = denseOrder;
        repeated = new boolean[stages];
        following = new boolean[stages];
        usesBase = new boolean[stages];
        usesBase[0] = true;
        for (int s = 1; s < stages; s++) {
            boolean same = Arrays.equals(a[s], 0, s - 1, a[s - 1], 0, s - 1);
            repeated[s] = same && a[s][s - 1] == 0 && time[s] == time[s - 1];
            usesBase[s] = repeated[s] && usesBase[s - 1];
            following[s] = same && a[s][s - 1] == 1 && s > 1;
        }
        solutionFollows =
                solution[stages - 1] == 1 && Arrays.equals(solution, 0, stages - 1, a[stages - 1], 0, stages - 1);
        double[] last = new double[stages];
        last[stages - 1] = 1;
        errorIsLastStage = Arrays.equals(error, last);
    }
}
