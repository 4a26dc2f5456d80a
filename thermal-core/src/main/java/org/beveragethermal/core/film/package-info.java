/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Heat laws at a surface: a correlation and a fluid become heat between a bulk temperature and a wall temperature.
 *
 * <p><b>Problem.</b> A correlation gives a Nusselt number; an engine needs watts and slopes at two temperatures, with the fluid's
 * properties at the film temperature, smooth where the drive vanishes.
 *
 * <p><b>Use.</b> {@link org.beveragethermal.core.film.ConvectiveFilm} takes an area, a length, a {@link
 * org.beveragethermal.core.film.Fluid} (air, or any liquid) and any {@link org.beveragethermal.core.correlation.Correlation}, one
 * of this library or your own; {@link org.beveragethermal.core.film.RadiativeFilm} is radiation from large surroundings. Both are
 * heat laws: use them in a direct path or as a link of a junction.
 *
 * <pre>{@code
 * HeatLaw film = ConvectiveFilm.free(0.08, 0.30, Fluid.air(101_325), VerticalPlate.CHURCHILL_CHU);
 * Path path = DirectPath.of("wall to room", wall, room, "convection", film);
 * }</pre>
 *
 * <p>{@link org.beveragethermal.core.film.CondensingFilm} adds what moist air gives to a surface below its dew point through the same
 * film; {@link org.beveragethermal.core.film.EvaporatingFilm} is the same law at a surface that is kept wet, both ways, with the mass of
 * water that goes.
 *
 * <p>Where a law of your own takes long to evaluate, {@link org.beveragethermal.core.film.FittedFilm} follows it by polynomials and tells how
 * far it is off.
 *
 * <p>A {@link org.beveragethermal.core.film.Film} also describes itself: coefficient, Nusselt, Rayleigh and Prandtl number, which
 * law decides and whether it is used outside its published range.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Correlation + Fluid + area, length → ConvectiveFilm ┬→ HeatLaw: W and slopes at (T bulk, T wall) → network
 *                                                      ├→ FilmState: Nu, Ra, Pr, which law, in range?
 *                                                      └→ CondensingFilm, EvaporatingFilm: vapour by the same film
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.film;

import org.jspecify.annotations.NullMarked;
