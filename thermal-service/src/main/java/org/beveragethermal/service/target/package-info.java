/* SPDX-License-Identifier: Apache-2.0 */
/**
 * What is wanted: the temperature range in which each style of drink is served, and the temperature to aim for.
 *
 * <p>Sources disagree, for some styles by several kelvins. So every range is kept with the source that states it
 * ({@link org.beveragethermal.service.target.ServingRange}), the caller chooses how the sources become one range
 * ({@link org.beveragethermal.service.target.RangePolicy}), and the
 * {@link org.beveragethermal.service.target.ServingTarget} that results says which sources decided and why.
 *
 * <pre>{@code
 * DrinkStyle style = Targets.style("red-full");
 * ServingTarget target = Targets.of(style);                           // what the sources have in common
 * ServingTarget wide = Targets.of(style, RangePolicy.envelope());     // everything any source allows
 * target.aimK();  target.basis();  target.decidedBy();  Targets.rangesOf(style);
 * }</pre>
 *
 * <p>Temperatures here are those of the drink as it is drunk. What the glass and the weather do to it between pouring
 * and drinking is not corrected for yet.
 */
@NullMarked
package org.beveragethermal.service.target;

import org.jspecify.annotations.NullMarked;
