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
 * the state, with the same derivatives, so it closes to rounding even if a path states wrong derivatives. Two shorter methods are
 * offered beside it, see {@link org.beveragethermal.core.solver.Method}.
 *
 * <p><b>Use.</b> {@link org.beveragethermal.core.solver.NetworkSolver} takes a network, or several with the times at which
 * they take over (same nodes, other connections), and returns a {@link org.beveragethermal.core.solver.Trajectory} that
 * answers for any time in between and may be shared by threads. Tolerance is one number in kelvin.
 *
 * <p>Where one network takes over from another, the state itself may change by a stated map, a {@link
 * org.beveragethermal.core.solver.StateChange}: parts of a liquid are {@linkplain org.beveragethermal.core.solver.Mixing mixed}, or mass
 * and enthalpy come from outside. The ledger has entries for the latter and closes only if a change books what it brings;
 * sensitivities are carried across by differences.
 *
 * <p>When something happens is asked by a {@link org.beveragethermal.core.solver.RunEvent}: a temperature is reached, an amount
 * falls to a threshold, ice is gone, a drink begins to freeze. The {@link org.beveragethermal.core.solver.EventAnswer} may be
 * that it never does:
 *
 * <pre>{@code
 * EventAnswer answer = run.first(RunEvent.temperatureFallsTo(drink, 281.15), 0);
 * if (answer instanceof EventAnswer.Reached reached) {
 *     double timeS = reached.timeS();
 * }
 * }</pre>
 *
 * <p><b>One answer, many times.</b> Where neither the course of a run nor its balance is wanted, {@link
 * org.beveragethermal.core.solver.UnrecordedRun} gives the time at which a temperature is reached, or the state at a time, without
 * allocating anything per step; it is set up once and called again and again by one thread:
 *
 * <pre>{@code
 * UnrecordedRun run = NetworkSolver.standard()
 *         .withToleranceK(0.01)
 *         .withMethod(Method.ORDER_4_LIGHT)
 *         .unrecorded(network.prepare());
 * OptionalDouble readyS = run.timeToReach(drink, 281.15, 12 * 3600);
 * }</pre>
 *
 * <p><b>Long runs.</b> A {@link org.beveragethermal.core.solver.RunMonitor} is told of progress and may cancel; so does an
 * interruption of the thread. Both end in a {@link org.beveragethermal.core.solver.RunCancelledException}. What cannot be
 * integrated ends in a {@link org.beveragethermal.core.solver.SolverException} that names the time, the node or path in the way
 * and what to try; the step budget bounds every run.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Network, or Phases ┐                   ┌→ Trajectory ┬→ temperature at any time (dense output)
 *  tolerance, Method  ├→ NetworkSolver ───┤             ├→ RunEvent → EventAnswer (reached, or never)
 *  multipliers        ┘                   │             ├→ Ledger (heat by account)
 *                                         │             └→ Sensitivity, RunReadings (slopes)
 *                                         └→ UnrecordedRun: one answer, many times
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.solver;

import org.jspecify.annotations.NullMarked;
