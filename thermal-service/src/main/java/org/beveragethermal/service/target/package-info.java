/* SPDX-License-Identifier: Apache-2.0 */
/**
 * What is wanted: the temperature range in which each style of drink is served, and the temperature to aim for.
 *
 * <p>Sources disagree, for some styles by several kelvins. So every range is kept with the source that states it
 * ({@link org.beveragethermal.service.target.ServingRange}), the caller chooses how the sources become one range
 * ({@link org.beveragethermal.service.target.RangePolicy}), and the
 * {@link org.beveragethermal.service.target.ServingTarget} that results says which sources decided and why.
 *
 * <p><b>Use.</b>
 *
 * <pre>{@code
 * DrinkStyle style = Targets.style("red-full");
 * ServingTarget target = Targets.of(style);                           // what the sources have in common
 * ServingTarget wide = Targets.of(style, RangePolicy.envelope());     // everything any source allows
 * target.aimK();  target.basis();  target.decidedBy();  Targets.rangesOf(style);
 * System.out.println(target.explain());                               // all of it in words
 *
 * HouseRules rules = HouseRules.builder()
 *         .forDrink("old-red", RangePolicy.own(celsius(15), celsius(16)))
 *         .forGuest("table 4", style, RangePolicy.own(celsius(18), celsius(19)))
 *         .build();
 * Targets.ofDrink("old-red", style, rules);                           // 15 to 16 °C
 * Targets.ofDrink("old-red", style, rules, "table 4");                // 18 to 19 °C
 * Targets.storageOf(style);                                           // where it is kept until then
 * style.drink(percentByVolume(13.5));                                 // what is in the bottle
 * }</pre>
 *
 * <p>Styles are wines, low-alcohol wines, vermouth, cider, beer, sake, spirits, liqueurs, water, juice, milk, tea, coffee
 * and chocolate. Journals, standards and codes are cited; what the trade does and what is quoted at second hand is marked
 * as common practice, and what nobody could be found for as a value from memory. A standard for competitions states at
 * what temperature jurors taste: it is kept as a source for the general styles (white, red, sparkling …) and not for the
 * finer ones, of which it does not speak. Hot drinks are told by the temperature at which they are drunk; how hot they
 * are brewed is no serving range. The cautions about very hot drinks and about food that stands warm are not made here.
 *
 * <p>Serving temperatures here are those of the drink as it is drunk. What the glass and the weather do to it between pouring
 * and drinking is not corrected for yet.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  name of a drink → DrinkStyle (family, sources) ┐
 *  HouseRules (the house's own)                   ┴→ ServingTarget: range, ideal → plan, serving
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.service.target;

import org.jspecify.annotations.NullMarked;
