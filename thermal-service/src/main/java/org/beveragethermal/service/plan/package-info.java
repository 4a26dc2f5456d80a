/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Decides for each bottle what it goes into and when, so that it is in range when poured and until it is finished.
 *
 * <p><b>Problem.</b> Bottles stand where they stand, at the temperature they have. Each is to be served at a given moment and
 * place and drunk over some time. At hand are rooms, refrigerators and buckets. What goes where, when at the latest, where is
 * the bottle kept while it is drunk, and what cannot be reached?
 *
 * <p><b>Use.</b> Build a {@link org.beveragethermal.service.plan.PlanRequest}, hand it to {@link
 * org.beveragethermal.service.plan.Planner}, read the {@link org.beveragethermal.service.plan.ServicePlan}: one {@link
 * org.beveragethermal.service.plan.BottlePlan} per bottle with instructions, predicted temperatures, reasons, and an honest
 * verdict. The verdict comes from one coupled run of the whole plan, in which bottles share baths and melt the same ice.
 *
 * <p><b>Method, first form.</b> Each bottle is planned alone: first the temperature at which it must be poured so that it stays
 * in range while it is drunk, and where it is kept meanwhile; then the means that brings it there, cheapest first, with the
 * moment to begin found by root finding on predictions. Gear is given out in the order of serving; where every fitting means
 * is full, the conflict is reported. Gear is not yet shared optimally.
 *
 * <p>Times are instants; no clock is read and no time zone is assumed.
 */
@NullMarked
package org.beveragethermal.service.plan;

import org.jspecify.annotations.NullMarked;
