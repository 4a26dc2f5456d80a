/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.examples.scenario.ScenarioException;
import org.beveragethermal.examples.scenario.ScenarioReader;
import org.beveragethermal.examples.sheet.PlanRequests;
import org.beveragethermal.service.plan.PlanRequest;

/** Scenarios as JSON, up to the request for a plan. */
final class ScenarioTarget implements FuzzTarget {

    @Override
    public String toString() {
        return name();
    }

    @Override
    public String name() {
        return "scenario JSON";
    }

    @Override
    public List<byte[]> corpus() {
        return Corpus.files("evening.json", "one-bottle.json", "bath.json");
    }

    @Override
    public List<String> words() {
        return List.of(
                "null",
                "true",
                "[]",
                "{}",
                "[[",
                "}}",
                "\"\"",
                "\"id\"",
                "\"kitchen\"",
                "\"ice-and-water\"",
                "\"water\"",
                "\"magnum\"",
                "\"sparkling-750\"",
                "\"sparkling-dry\"",
                "\"zone\"",
                "\"UTC\"",
                "\"+18:00\"",
                "\"24:00\"",
                "\"23:59\"",
                "\"-999999999-01-01T00:00:00Z\"",
                "\"+999999999-12-31T23:59:59Z\"",
                "\"count\"",
                "\"servingRange\"");
    }

    @Override
    public boolean accepts(byte[] input) {
        Scenario scenario;
        try {
            scenario = ScenarioReader.parse("fuzz.json", new String(input, StandardCharsets.UTF_8));
        } catch (ScenarioException e) {
            return oneLine(e);
        }
        Documented.finiteThroughout("scenario", scenario);
        try {
            PlanRequest request = PlanRequests.from(scenario);
            Documented.finiteThroughout("bottles", request.bottles());
            Documented.finiteThroughout("gear", request.gear());
            return true;
        } catch (IllegalArgumentException e) {
            return oneLine(e);
        }
    }

    private static boolean oneLine(IllegalArgumentException e) {
        Documented.refusal(e);
        if (String.valueOf(e.getMessage()).chars().anyMatch(Character::isISOControl)) {
            throw new AssertionError("message of more than one line: " + e.getMessage(), e);
        }
        return false;
    }
}
