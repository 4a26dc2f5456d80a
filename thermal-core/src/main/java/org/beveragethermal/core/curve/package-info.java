/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Cooling curves in surroundings that never change: any start, any target, any time, at once.
 *
 * <p><b>Problem.</b> In a room or a refrigerator that holds its temperature the course of a drink has no clock: how fast it
 * changes depends on how warm it is. All questions about it are then read off one curve, and a planner that asks thousands of
 * them need not integrate thousands of times.
 *
 * <p><b>Use.</b> A real vessel: prepare its curve once, ask it in nanoseconds.
 *
 * <pre>{@code
 * CoolingCurve curve = VesselCurve.of(bottle, refrigerator).prepare(celsius(6), celsius(24));
 * if (curve.timeTo(celsius(21), celsius(9)) instanceof CurveTime.Reached reached) {
 *     System.out.println("ready after " + reached.after().toMinutes() + " min, give or take "
 *             + reached.error().toSeconds() + " s");
 * }
 * Quantity<Temperature> afterAnHour = curve.temperatureAfter(celsius(21), Duration.ofHours(1));
 * double seconds = curve.timeS(294.15, 282.15);
 * }</pre>
 *
 * <p>A body of one temperature, given by a rate or a {@link org.beveragethermal.core.network.Network} of one node, needs no preparation:
 * {@link org.beveragethermal.core.curve.CoolingRate#timeS}; it pays from some five hundred questions on.
 *
 * <p><b>Method.</b> Without preparation: Gauss–Lobatto quadrature of the local time constant over ln|T − T<sub>e</sub>|, five nodes,
 * halved where the Legendre coefficients at the nodes say that they miss more than is allowed. Prepared: cubic Hermite cells
 * that narrow towards the equilibrium, found in the bits of the distance from it, for times; equal cubic cells for temperatures. The
 * error is computed when a curve is built and is part of it. A vessel: the curve is one run of the engine, and what a uniform start
 * adds, the lag of wall and headspace, is found from further runs; the error counts what other runs still differ by.
 *
 * <p><b>Limits.</b> Time must play no part: air that swings, doors, sun that moves, ice that melts and baths that warm are refused.
 * What varies is seen by its knots and at 64 moments within 30 days. The drink must run one way. Errors are estimates with a margin,
 * held to by tests, not proofs: a rate that jumps right between nodes on both sides may be seen late. A closed bottle of 0.75 l
 * in a refrigerator has an error of about 13 s in 3 h. Axial contents keep a memory of how they started that no single lag
 * tells: about 4 min in 3 h.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  vessel + steady surroundings → VesselCurve  → prepare(from, to) ┐
 *  rate f(T), or a one-node network → CoolingRate ─────────────────┴→ CoolingCurve → timeTo, temperatureAfter (± error)
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.curve;

import org.jspecify.annotations.NullMarked;
