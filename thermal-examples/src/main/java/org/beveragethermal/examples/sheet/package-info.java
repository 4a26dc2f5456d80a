/* SPDX-License-Identifier: Apache-2.0 */
/**
 * From a scenario to a plan, and from a plan to a sheet that hangs in a kitchen.
 *
 * <p>{@link org.beveragethermal.examples.sheet.PlanRequests} turns a scenario into what the planner of thermal-service
 * understands: places become still air with a course of temperatures, buckets are filled with a share of the ice, each bottle of
 * each serving becomes an order. {@link org.beveragethermal.examples.sheet.ServiceSheet} writes the plan as text, {@link
 * org.beveragethermal.examples.sheet.ServicePage} as one page of HTML that needs nothing else and is read on a phone or printed.
 *
 * <p><b>Use.</b>
 *
 * <pre>{@code
 * Scenario scenario = ScenarioReader.read(file);
 * ServicePlan plan = Planner.plan(PlanRequests.from(scenario));
 * Advice advice = Adviser.advise(plan, PlanLimits.standard(), PlanMonitor.NONE);
 * Files.writeString(Path.of("evening.html"), ServicePage.html(scenario, plan, advice));
 * }</pre>
 *
 * <p>Curves and intervals of the page are those of {@link org.beveragethermal.service.plan.BottleCourse}. Its colours stand in
 * service-page.css, and a test computes their contrast; what a colour says is said by a word, a dash or a mark too.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Scenario → PlanRequests → Planner → ServicePlan ┬→ ServiceSheet: text
 *                                                  └→ ServicePage: HTML with curves
 * </pre>
 */
@NullMarked
package org.beveragethermal.examples.sheet;

import org.jspecify.annotations.NullMarked;
