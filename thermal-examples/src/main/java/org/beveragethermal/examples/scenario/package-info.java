/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Reads an evening of service from a JSON file: where it takes place, what gear there is, which drinks stand where and
 * how warm they are, and when each is served.
 *
 * <p>{@link org.beveragethermal.examples.scenario.ScenarioReader} checks everything as it reads, so a
 * {@link org.beveragethermal.examples.scenario.Scenario} is complete and consistent: every reference leads somewhere,
 * every quantity is in its range. A file that is not is refused with a
 * {@link org.beveragethermal.examples.scenario.ScenarioException}, one line that says where, what was given and what is
 * allowed. In the file each quantity has its unit in its name ({@code airTemperatureCelsius}); in the model all are SI.
 *
 * <p><b>Use.</b>
 *
 * <pre>{@code
 * Scenario scenario = ScenarioReader.read(Path.of("scenarios/two-sittings.json"));
 * for (Serving serving : scenario.servings()) {
 *     Drink drink = scenario.drink(serving.drinkId());
 *     ServingTarget target = scenario.targetOf(drink);
 * }
 * }</pre>
 *
 * <p>The format is described in {@code scenarios/FORMAT.md}.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  JSON file → ScenarioReader (checks as it reads) ┬→ Scenario → PlanRequests of examples.sheet
 *                                                  └→ ScenarioException: where, given, allowed
 * </pre>
 */
@NullMarked
package org.beveragethermal.examples.scenario;

import org.jspecify.annotations.NullMarked;
