/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.examples.scenario.ScenarioReader;
import org.beveragethermal.examples.sheet.PlanRequests;
import org.beveragethermal.service.plan.PlanRequest;

/** Scenarios as JSON, up to the request for a plan. */
final class ScenarioTarget implements FuzzTarget {
    private final boolean trees;

    private ScenarioTarget(boolean trees) {
        this.trees = trees;
    }

    /** Changed as text. */
    static ScenarioTarget ofWords() {
        return new ScenarioTarget(false);
    }

    /** Changed as what it says. */
    static ScenarioTarget ofTrees() {
        return new ScenarioTarget(true);
    }

    @Override
    public Inputs inputs() {
        return trees ? new ScenarioTrees(corpus()) : new Mutations(this);
    }

    @Override
    public String toString() {
        return name();
    }

    @Override
    public String name() {
        return trees ? "scenario JSON, values" : "scenario JSON, text";
    }

    @Override
    public List<byte[]> corpus() {
        return Corpus.files("evening.json", "one-bottle.json", "bath.json", "frost.json");
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
        return request(input).isPresent();
    }

    /**
     * A scenario and what it asks.
     *
     * @param scenario the scenario
     * @param request the request for a plan
     */
    record Asked(Scenario scenario, PlanRequest request) {}

    /** What an input asks; empty if it was refused as documented. */
    static Optional<Asked> request(byte[] input) {
        try {
            Scenario scenario = ScenarioReader.parse("fuzz.json", new String(input, StandardCharsets.UTF_8));
            Documented.finiteThroughout("scenario", scenario);
            PlanRequest request = PlanRequests.from(scenario);
            Documented.finiteThroughout("bottles", request.bottles());
            Documented.finiteThroughout("gear", request.gear());
            return Optional.of(new Asked(scenario, request));
        } catch (IllegalArgumentException e) {
            oneLine(e);
            return Optional.empty();
        }
    }

    private static void oneLine(IllegalArgumentException e) {
        Documented.refusal(e);
        if (String.valueOf(e.getMessage()).chars().anyMatch(Character::isISOControl)) {
            throw new AssertionError("message of more than one line: " + e.getMessage(), e);
        }
    }
}
