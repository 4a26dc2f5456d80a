/* SPDX-License-Identifier: Apache-2.0 */
/**
 * A stratifying liquid in an upright vessel, as slices stacked along the height.
 *
 * <p><b>Problem.</b> A bottle that is cooled at its wall does not stay at one temperature: a film runs down the wall, fills the
 * bottle with cold liquid from below, and the film in turn follows the stratification it made. Half immersed, only the lower
 * half takes part. One node cannot show that.
 *
 * <p><b>Model.</b> Each slice is a node. The film at the wall is one path with many ends: followed from where it starts, it
 * takes heat from each slice, carries the deficit along the wall, and leaves it where it ends, while the core moves the other
 * way. The momentum and energy integrals of a laminar buoyant layer close it (the profile of Squire and Eckert); nothing in it
 * is fitted. Its structure was settled while looking at our own two-dimensional flow computation of bottles. Slices conduct to
 * their neighbours, and heavy liquid above light liquid mixes.
 *
 * <p><b>Slices.</b> Every law has a limit as slices get thinner: heat that mixing carries depends on the gradient, a layer at
 * rest conducts over half a slice, the film on a warm bottom has a coefficient without a length in it, and what rounding of
 * corners takes goes with the square of a slice's height. Times converge about first order with the number of slices; 20 slices
 * of a bottle are within 2.5 % of the limit, cooled or warmed, 80 within 1 %.
 *
 * <p><b>Freezing.</b> Slices of a drink hold as much ice as belongs to their enthalpy. Films and mixing know nothing of it: they
 * see a liquid of the slice's temperature, described as if it were supercooled and with the values of −20 °C below that, where
 * buoyancy therefore ends. They stay finite and continuous down there.
 *
 * <p><b>Near the densest.</b> Where water's 4 °C lie between a slice and its wall, the film has two layers that pull against each
 * other. One drive and one direction are made of both; they follow the inversion parameter of Gebhart and Mollendorf (J. Fluid
 * Mech. 89, 1978, 673–707), the drive with an own assumption that keeps heat a single-valued, smooth function of temperatures. The
 * coefficient falls to 0.64 of what it is beside the band, and may by our own estimate be off by a third inside it: there the published
 * solutions for an unbounded core have gaps, and none of them has a stratified core. With slice and wall on one side of the
 * densest, and in drinks without one, nothing of this enters.
 *
 * <p><b>Turning walls.</b> A film that meets a wall which no longer drives it, or works against it, gives what it carries back to a
 * stratified core, as if 0.01 K were left between core and wall; in a core of one temperature it runs on. That band is ours, for
 * continuity.
 *
 * <p><b>Limits.</b> Laminar film, upright round vessel, no flow at the start, no headspace convection; the direction of the film
 * is decided slice by slice from the liquid's own density.
 *
 * <p><b>Use.</b> {@link org.beveragethermal.core.layered.StratifiedLiquid} makes nodes and paths for any column of liquid; join
 * its slices to walls or boundaries of your own.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Slices (volume, wall, height) + Liquid → StratifiedLiquid → nodes, bottom to top
 *                                              ├→ WallFilmPath: down or up the wall, slice by slice
 *                                              ├→ UnstableMixing: between neighbours
 *                                              └→ BottomFilm: to what lies below
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.layered;

import org.jspecify.annotations.NullMarked;
