/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.beveragethermal.examples.scenario.Drink;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.examples.scenario.Serving;
import org.beveragethermal.service.target.ServingTarget;

/** What a scenario asks for, in lines to read. */
final class ScenarioSummary {
    private static final DateTimeFormatter DAY_AND_TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private ScenarioSummary() {}

    static List<String> lines(Scenario scenario) {
        Stream<String> head = Stream.of(
                scenario.title(),
                scenario.note(),
                "starts " + shown(scenario, scenario.startsAt()) + " (" + scenario.zone() + ")",
                "");
        Stream<String> servings = scenario.servings().stream().map(serving -> line(scenario, serving));
        return Stream.concat(head, servings).toList();
    }

    private static String line(Scenario scenario, Serving serving) {
        Drink drink = scenario.drink(serving.drinkId());
        ServingTarget target = scenario.targetOf(drink);
        return shown(scenario, serving.servedAt()) + "  " + serving.bottles() + " x " + drink.name() + ", "
                + scenario.place(serving.placeId()).name() + ": " + target;
    }

    private static String shown(Scenario scenario, Instant time) {
        return DAY_AND_TIME.format(time.atZone(scenario.zone()));
    }
}
