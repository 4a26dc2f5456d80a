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
 */
@NullMarked
package org.beveragethermal.core.store;

import org.jspecify.annotations.NullMarked;
