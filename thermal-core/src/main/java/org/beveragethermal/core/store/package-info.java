/* SPDX-License-Identifier: Apache-2.0 */
/**
 * What things do with enthalpy: a liquid warms by its own specific heat capacity, ice warms and then melts, a drink freezes.
 *
 * <p>Each class is a {@link org.beveragethermal.core.network.Store} for a node of a network; enthalpy counts from liquid
 * water at 0 °C, so that melt water can pass from an ice node to a bath node without bookkeeping of its own.
 *
 * <ul>
 *   <li>{@link org.beveragethermal.core.store.LiquidStore}: a liquid that stays liquid, of fixed or varying mass.
 *   <li>{@link org.beveragethermal.core.store.FreezingStore}: a drink of fixed mass that holds ice below the onset of freezing;
 *       asked for a temperature of a run it tells how much. Supercooling is not modelled.
 *   <li>{@link org.beveragethermal.core.store.IceStore}: ice in blocks, whose mass and size shrink by a {@link
 *       org.beveragethermal.core.store.MeltingPath}; what shape they have says {@link org.beveragethermal.core.store.IceBlock}.
 *   <li>{@link org.beveragethermal.core.store.LatentStore}: a body of fixed mass that melts over a range of temperatures, such as
 *       a gel pack; {@link org.beveragethermal.core.store.LatentConduction} is what its inside resists.
 *   <li>{@link org.beveragethermal.core.store.DilutedStore}: a drink whose mass grows by the melt water of ice in it, which an {@link
 *       org.beveragethermal.core.store.IceInDrinkPath} brings.
 * </ul>
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  enthalpy, amounts (kg of ice, its side, water, salt) → Store → temperature and its slopes
 *  MeltingPath, IceInDrinkPath: heat → kilograms that melt → amounts of the nodes
 * </pre>
 *
 * <p><b>Use.</b> Give a node the store that says what it does with heat, and join ice to what it melts in by its path:
 *
 * <pre>{@code
 * Node bath = Node.of("bath", LiquidStore.ofVaryingMass(Water.liquid()), 278.15, 3.0);
 * Node ice = Node.of("ice", IceStore.of(1.0, 0.025, 12_600), 273.15, 1.0, 0.025);
 * }</pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.store;

import org.jspecify.annotations.NullMarked;
