/* SPDX-License-Identifier: Apache-2.0 */
/**
 * From a scenario to a plan, and from a plan to a sheet that hangs in a kitchen.
 *
 * <p>{@link org.beveragethermal.examples.sheet.PlanRequests} turns a scenario into what the planner of thermal-service
 * understands: places become still air with a course of temperatures, buckets are filled with a share of the ice, each bottle of
 * each serving becomes an order. {@link org.beveragethermal.examples.sheet.ServiceSheet} writes the plan as text.
 */
@NullMarked
package org.beveragethermal.examples.sheet;

import org.jspecify.annotations.NullMarked;
