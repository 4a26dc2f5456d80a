/* SPDX-License-Identifier: Apache-2.0 */
/**
 * The thermal network: the one description from which everything is computed.
 *
 * <p><b>Problem.</b> Vessels, drinks, ice, baths and rooms exchange heat and sometimes matter. Each of them stores
 * enthalpy (reference: liquid water at 0 °C) and, where it has them, amounts such as kilograms of water or the side of
 * an ice block; between them heat flows by conduction, convection, radiation or melting.
 *
 * <p><b>Parts.</b>
 *
 * <ul>
 *   <li>{@link org.beveragethermal.core.network.Node}: has a name, a {@link org.beveragethermal.core.network.Store} that
 *       maps (enthalpy, amounts) to temperature, and its state at the start.
 *   <li>{@link org.beveragethermal.core.network.Boundary}: a temperature given as a function of time.
 *   <li>{@link org.beveragethermal.core.network.Path}: joins two or more ends. What one end gives another receives, by
 *       construction: a path states flows on accounts, and an account names who gives and who takes.
 *   <li>{@link org.beveragethermal.core.network.JunctionPath}: a path around a surface without capacity whose
 *       temperature balances the flows that meet there, also beyond the temperatures of its ends if a link, such as
 *       sunlight, brings heat of its own.
 *   <li>{@link org.beveragethermal.core.network.Network}: nodes and the paths that are active, immutable; {@code
 *       prepare()} turns it into flat arrays that threads may share.
 * </ul>
 *
 * <p><b>Use.</b> Describe nodes and paths, build a network, hand it to {@code org.beveragethermal.core.solver}:
 *
 * <pre>{@code
 * Node drink = Node.sensible("drink", 3100, 295.15);
 * Boundary air = Boundary.constant("air", 277.15);
 * Network network = Network.of(List.of(drink), List.of(DirectPath.of("film", drink, air, "convection",
 *         HeatLaw.conductance(0.6))));
 * Trajectory run = NetworkSolver.standard().solve(network, 3600);
 * double temperatureK = run.temperatureK(drink, 1800);
 * }</pre>
 *
 * <p><b>What is fast.</b> {@link org.beveragethermal.core.network.DirectPath}s between nodes without amounts are laid out flat; those of {@link
 * org.beveragethermal.core.network.HeatLaw#conductance} between nodes of constant heat capacity are summed in loops over arrays, and their
 * derivatives are found once. A junction starts from the surface it found last. Nodes that are listed along a chain keep the matrix of a
 * step narrow without being put in order first.
 *
 * <p>A node without paths keeps its state: gear that is prepared later has none yet. A law, store or boundary that throws or
 * gives no number is named, with the time, by the solver's exception.
 *
 * <p>This package is public but unsettled: signatures may change until the first release.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Node (Store, state) ┐                        ┌→ solver: dH/dt, dm/dt and their slopes
 *  Boundary (T of t)   ├→ Network → prepare() → ┤
 *  Path (Accounts)     ┘          flat arrays   └→ ledger: who gave what to whom, by which mechanism
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.network;

import org.jspecify.annotations.NullMarked;
