/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Decides for each bottle what it goes into and when, so that it is in range at every pour, when many bottles share little gear.
 *
 * <p><b>Problem.</b> Bottles stand where they stand, at the temperature they have. Each is to be served at a given moment and place and
 * drunk over some time. At hand are rooms, refrigerators and buckets, each with its places and the times at which it is there, a stock of
 * ice, and so many hands. What goes where, when at the latest, where is the bottle kept while it is drunk, and what cannot be reached?
 *
 * <p><b>Use.</b> Build a {@link org.beveragethermal.service.plan.PlanRequest}, hand it to {@link
 * org.beveragethermal.service.plan.Planner}, read the {@link org.beveragethermal.service.plan.ServicePlan}.
 *
 * <pre>{@code
 * PlanRequest request = PlanRequest.startingAt(now)
 *         .place(new Place("room", "dining room", Air.at(celsius(23))))
 *         .gear(new Gear("cold", "refrigerator", GearKind.REFRIGERATOR, Refrigerator.at(celsius(5)), 6))
 *         .bottle(order)
 *         .ice(IceStock.of(6))
 *         .hands(2)
 *         .build();
 * ServicePlan plan = Planner.planWithin(request, Duration.ofSeconds(5));
 * plan.instructions();              // what to do, as data
 * plan.bottles().get(0).verdict();  // whether it works, and how that is known
 * plan.chosen().answer();           // the choice: proven with its certificate, or the gap
 *
 * PlanTexts texts = PlanTexts.in(Locale.ENGLISH, zone).naming(request);
 * for (Instruction instruction : plan.instructions()) {
 *     texts.words(PlanPhrases.of(plan).action(instruction));  // the same in words
 * }
 * Advice advice = Adviser.advise(plan, PlanLimits.standard(), PlanMonitor.NONE);  // what would help where it does not work
 * Replan replan = Replanner.replan(plan, later, List.of(new News.LateGuests(List.of(), Duration.ofMinutes(30))), PlanLimits.standard());
 * }</pre>
 *
 * <p><b>Method.</b> Orders, places and gear → flow tables → candidate routes with costs and loads → choice → seats → coupled run → verdict,
 * or corrections and the choice again.
 *
 * <ol>
 *   <li><b>Flow tables.</b> For each kind of bottle in each place or gear a few predictions from temperatures 8 K apart; any stay is read
 *       off between them. Where the air changes they begin every two hours; a bath is taken as just filled, filled a quarter of an hour
 *       before, or between. Drinks that are nearly alike share a table and differ in pace. What a bottle finds in its wall when it
 *       is moved, and what others do to a bath, is not in the tables: the coupled run sees both.
 *   <li><b>Candidates.</b> A bottle stays; goes through one means and is kept at its table or in gear; through two, where neither of the two
 *       does alone; or into gear and out by turns while it is drunk, where neither table nor gear keeps it. Of each the moment to begin that
 *       serves the drink best and of equals the latest, and a later one that loads the gear less. Where the choice leaves a drink out of range,
 *       such routes are added as free scarce gear early: one means chills, another holds. A candidate on which the drink begins to freeze,
 *       fills its vessel to the brim, is out of its holding temperatures for too long by the request's jurisdiction or above 65 °C when it is
 *       poured, or on which glass is plunged through its limit (42 K for bottle glass), is none, whatever it would bring.
 *   <li><b>Costs</b>, whole numbers, the first counts most: drinks with a pour out of range; pours out of range; tenths of a kelvin that margins lack; changes of an earlier
 *       plan; moves; ice in tens of grams; minutes of early start. The margin wanted is 1.28 standard deviations towards the side that the
 *       bottle comes from, 0.2 K towards the other; the standard deviation is what 15 % more or less speed does, before serving and
 *       after it apart (a judgement from the scatter of the laws).
 *   <li><b>Choice</b> by {@link org.beveragethermal.service.choice}: time is divided where anything begins or ends; shared are the places in
 *       gear (gear that is alike counts as one), the ice that bottles may melt in each bath, and hands. The best choice is proven, or the gap
 *       is stated.
 *   <li><b>Coupled run.</b> All bottles on their routes in one scene, in which they share baths and melt the same ice (those that share
 *       nothing that remembers run apart, which is the same). Where a bottle is out of range that was to be in it, what the run
 *       taught corrects its forecasts, and the choice is made again, four times at most; the best round stays.
 * </ol>
 *
 * <p><b>Advice</b> ({@link org.beveragethermal.service.plan.Adviser}): kinds of changes, each tried by planning anew in steps that double until
 * one helps and are then halved. <b>Re-plans</b> ({@link org.beveragethermal.service.plan.Replanner}): the coupled run says where the
 * bottles are and how warm and what is left of the ice; from there the same method goes on, with what the earlier plan would do among the
 * candidates and the number of changes as a level of cost. <b>Words</b> ({@link org.beveragethermal.service.plan.PlanTexts}): whatever is said is
 * data, a {@link org.beveragethermal.service.plan.Reason} or a {@link org.beveragethermal.service.plan.Phrase}, and becomes text by a resource
 * bundle.
 *
 * <p><b>Left out.</b> A bath is filled once; when a third of its ice is left and the stock has more than all fills it gets its part of that, once.
 * A bath whose ice the stock does not give is not filled. Forecasts take the bottle as full; the coupled run takes out what is poured. Bottles are
 * lumped: their top is warmer than their mean. Serving takes no hands.
 *
 * <p>Times are instants; no time zone is assumed, and no clock is read but for the time limit.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  PlanRequest → flow tables → candidates → choice → seats → coupled run → ServicePlan ┬→ instructions, verdicts
 *       ↑                          ↑__________ corrections ______│                     ├→ Adviser → Advice
 *      News ← what happens                                                             └→ PlanTexts → words
 *       └──────────────────────→ Replanner → Replan
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.service.plan;

import org.jspecify.annotations.NullMarked;
