/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Published laws of heat transfer: Nusselt numbers, radiation, convection at a density extremum.
 *
 * <p><b>Problem.</b> How much heat passes between a surface and what touches it, given temperatures and properties.
 *
 * <p><b>Use.</b> Each formula is a pure static function on a class named after its geometry, for instance {@code
 * VerticalPlate.churchillChu(rayleigh, prandtl)}. Beside it stands a {@link
 * org.beveragethermal.core.correlation.Correlation} that knows its name, source, range and scatter and gives the slopes
 * that an implicit solver needs; models choose a correlation by instance. Numbers outside a stated range are computed, and
 * the prediction that used them carries a note.
 *
 * <p><b>Symbols.</b> Nu Nusselt, Ra Rayleigh, Re Reynolds, Pr Prandtl number; h heat transfer coefficient [W/(m² K)]; L
 * length [m].
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Ra or Re, Pr → static function → Nu            (to compute by hand)
 *               → Correlation ┬→ NusseltLaw: Nu, ∂Nu/∂Ra, ∂Nu/∂Pr → film.ConvectiveFilm
 *                             ├→ scatter → uncertainty.LawScatter
 *                             └→ outside(Ra, Pr) → a note of the prediction
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.correlation;

import org.jspecify.annotations.NullMarked;
