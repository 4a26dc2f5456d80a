/* SPDX-License-Identifier: Apache-2.0 */
/**
 * How warm a drink must be when it is poured, and what becomes of it glass by glass.
 *
 * <p><b>Problem.</b> A drink is not drunk at the temperature at which it is poured: the glass, the air, a hand and the sun warm it, or a cold
 * terrace cools it, and the less is left the faster. A host wants it in a range while it is drunk, from the first glass to the last.
 *
 * <p><b>Use.</b> Describe the {@link org.beveragethermal.core.serving.Serving}: the drink, how much of it, the glass and how warm that is,
 * where it stands or who holds it, and how long it is drunk. {@link org.beveragethermal.core.serving.PouringAim} finds the pouring
 * temperature; {@link org.beveragethermal.core.serving.LastGlass} follows a bottle that is poured from through an evening.
 *
 * <pre>{@code
 * Serving glass = Serving.of(white, millilitres(125), Vessels.of(VesselShape.WHITE_WINE_GLASS, millilitres(125)), celsius(24))
 *         .in(Air.at(celsius(27)).withRelativeHumidity(percent(50)))
 *         .drunkOver(Duration.ofMinutes(20));
 * AimAnswer answer = PouringAim.of(glass).aim(Wanted.between(celsius(8), celsius(12)));
 * if (answer instanceof AimAnswer.Aim aim) {
 *     Quantity<Temperature> bottle = glass.beforePouring(
 *             kelvins(aim.pouringK()), celsius(27), Duration.ofSeconds(5), centimetres(10));
 * }
 * LastGlass.Evening evening = LastGlass.of(bottle, sleeve, glass).pouredAt(List.of(Duration.ZERO, Duration.ofMinutes(40)));
 * }</pre>
 *
 * <p>Contents are lumped: a glass is stirred by being carried and drunk from. What evaporates is counted where the air has a humidity
 * or a humidity of 50 % is taken for it, as scenes do.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  drink, glass, place, duration → Serving ┬→ PouringAim.aim(Wanted) → AimAnswer (aim, or remedies)
 *                                          ├→ beforePouring → temperature of the bottle
 *                                          └→ LastGlass → the bottle glass by glass
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.serving;

import org.jspecify.annotations.NullMarked;
