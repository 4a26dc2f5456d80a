/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Chooses one of several routes for each item so that shared gear is never overloaded and the costs are least, and proves it.
 *
 * <p><b>Problem.</b> Each item can be served by several routes. A route costs something in each of several levels, and takes places of shared
 * gear in slots of time. Which route for which item, so that no gear is overloaded in any slot, and the summed cost of the first level is
 * least, then that of the second among what is least in the first, and so on? Whatever there is only so much of in a slot is gear: places in
 * a refrigerator, hands (one place in the slot of the move), ice (places from the slot of use to the end, a capacity that rises as ice is made).
 * The package knows nothing of drinks, temperatures and clocks.
 *
 * <p><b>Use.</b> Describe a {@link org.beveragethermal.service.choice.ChoiceProblem}, hand it to {@link
 * org.beveragethermal.service.choice.RouteChooser}, read the sealed {@link org.beveragethermal.service.choice.ChoiceAnswer}.
 *
 * <pre>{@code
 * CandidateRoute cold = new CandidateRoute("bucket", List.of(0L, 2L), List.of(new Load("bucket", 3, 6, 1)));
 * CandidateRoute warm = new CandidateRoute("as it is", List.of(40L, 0L), List.of());
 * ChoiceProblem problem = new ChoiceProblem(
 *         List.of("minutes out of range", "moves"),
 *         12,
 *         List.of(SharedGear.constant("bucket", 1, 12)),
 *         List.of(new ChoiceItem("bottle 1", List.of(cold, warm)), new ChoiceItem("bottle 2", List.of(cold, warm))));
 * ChoiceAnswer answer = RouteChooser.choose(problem, ChoiceLimits.within(Duration.ofSeconds(5)), ChoiceMonitor.none());
 * answer.found().ifPresent(choice -> System.out.println(choice.routeByItem() + " at " + choice.costByLevel()));
 * Optional<String> fault = CertificateCheck.fault(problem, answer);
 * }</pre>
 *
 * <p><b>Method.</b> The multiple-choice assignment problem with side constraints, solved by branch and bound. Slots in which the same routes
 * take the same places become one, routes that another outdoes are struck out, items that share no scarce gear are solved apart. The relaxation
 * that allows fractions of routes is solved by the dual simplex method, which yields the best Lagrange multipliers of the capacities. They are
 * rounded to whole weights; from there on everything is counted in whole numbers of 64 bits, and weights whose sums would not fit are made
 * coarser. Weights bound the cost of every case and strike out routes (reduced-cost fixing). Cases with the least bound come first; items that
 * are alike are told apart by their first case only. The least cost of a level is a limit, with a weight of its own, for the levels after it.
 * Choices are begun by handing out the cheapest routes that fit, and are mended and bettered by changing one item or two.
 *
 * <p><b>Certificate.</b> Claimed is that no choice keeps all capacities and costs less. Give each limit a weight that is not negative and add
 * up the limits so weighed: every choice that keeps them keeps the sum (Lagrangian relaxation, or a surrogate constraint). If the sum is broken
 * although every item takes the route that is lightest by these weights, there is no such choice; if it is broken as soon as one item takes a
 * certain route, that route may be struck out. Where that is not enough, the routes of one item are divided into cases, each proven by itself.
 * This holds for any weights, however they were found, so that {@link org.beveragethermal.service.choice.CertificateCheck} need not trust the
 * search: it adds up anew. {@link org.beveragethermal.service.choice.AnswerCheck} adds up the choice itself.
 *
 * <p><b>Limits.</b> Where a limit of time or nodes ends a search, the answer is the best choice found, a bound on each level and the gap. The
 * bound of a level holds among choices that cost no more in the levels before. Below the first level that is not proven the bounds are only the
 * sums of the least costs. Loads whose sizes are nearly all different (weights rather than places) leave a gap in the relaxation that is
 * closed slowly: there a gap of about a half per cent may stay. Where there is no choice, the answer names few items that cannot all be served
 * and the gear and slots that are too small for them; other such sets may exist besides.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  items with CandidateRoutes ┐                                ┌→ best choice + Certificate → CertificateCheck
 *  SharedGear by slot         ├→ ChoiceProblem → RouteChooser ─┼→ choice with bounds and gap
 *  costs by level             ┘                                └→ no choice: which items, which gear
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.service.choice;

import org.jspecify.annotations.NullMarked;
