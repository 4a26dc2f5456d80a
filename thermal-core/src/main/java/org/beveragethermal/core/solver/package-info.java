/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Integrates a thermal network in time.
 *
 * <p><b>Problem.</b> Thin walls answer in seconds, a bottle in hours, and ice disappears: the equations are stiff and
 * their fluxes have kinks. Explicit integrators are the wrong tool.
 *
 * <p><b>Method.</b> A linearly implicit Runge–Kutta (Rosenbrock) method of order 4 with an embedded estimate of order 3,
 * L-stable and stiffly accurate (six stages, one factorisation per step), with the analytic derivatives of the paths,
 * adaptive steps, and an interpolant of order 3 in each step. The ledger is integrated by the same stages and weights as
 * the state, with the same derivatives, so it closes to rounding even if a path states wrong derivatives.
 *
 * <p><b>Use.</b> {@link org.beveragethermal.core.solver.NetworkSolver} takes a network, or several with the times at which
 * they take over (same nodes, other connections), and returns a {@link org.beveragethermal.core.solver.Trajectory} that
 * answers for any time in between and may be shared by threads. Tolerance is one number in kelvin.
 */
@NullMarked
package org.beveragethermal.core.solver;

import org.jspecify.annotations.NullMarked;
