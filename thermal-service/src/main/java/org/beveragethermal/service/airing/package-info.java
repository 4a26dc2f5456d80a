/* SPDX-License-Identifier: Apache-2.0 */
/**
 * What a drink's temperature does while it stands open before it is served: decanted, or in its opened bottle.
 *
 * <p><b>Problem.</b> A wine that is given air is not in its bottle, nor in its bucket, when it is poured first: it stands in a wide vessel
 * of thin glass on a sideboard, whose wall takes up heat as it is filled. It arrives at the table warmer, or colder, than it left the
 * bottle, and the temperature to which the bottle must be brought follows from that.
 *
 * <p><b>Use.</b>
 *
 * <pre>{@code
 * Airing airing = Airing.carafe(Duration.ofMinutes(45), "sideboard");
 * AiringCourse course = AiringForecast.of(airing, bottle, sideboard)      // the bottle as it is when it is decanted
 *         .withVesselAt(celsius(21))                                      // the empty decanter
 *         .drunkOver(Duration.ofMinutes(60))
 *         .predict();
 * course.firstPour();  course.lastPour();  course.prediction().explainAt(Duration.ofMinutes(10));
 * DecantingAnswer answer = AiringForecast.of(airing, bottle, sideboard).decantingFor(celsius(16));
 *
 * FilledVessel standing = airing.vesselFor(bottle, celsius(12), celsius(21));    // for scenes and plans of your own
 * }</pre>
 *
 * <p><b>Method.</b> A lumped scene of core.scene: the bottle is poured into the empty vessel, whose wall keeps its own temperature and
 * exchanges heat with the drink from then on; the surface of the drink convects, radiates and evaporates. Of the dry wall above
 * the drink as much counts as conducts heat to it, as a fin does: some 20 mm of glass. From the first glass to the last it is poured from
 * evenly; the wall that falls dry then goes on to count, so that the last glass is predicted a little too near the air. What the stream gives to the air as it falls is left out: some tenths of a per cent of the difference ({@link
 * org.beveragethermal.core.scene.FallingStream}). How much air a wine needs is a matter of taste, and not told here.
 *
 * <p>Decant before the sediment is stirred up and stop when it comes. A stopper does not belong on anything hot. Glass breaks: a
 * vessel taken from ice must not get a hot drink, nor a warmed one a drink from ice.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  bottle + Airing (how long, in what) + place → AiringForecast ┬→ AiringCourse: first pour, last pour
 *                                                             └→ DecantingAnswer: how warm to decant it
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.service.airing;

import org.jspecify.annotations.NullMarked;
