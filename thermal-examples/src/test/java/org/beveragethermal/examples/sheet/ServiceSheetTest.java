/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.TimeZone;
import java.util.regex.Pattern;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.examples.scenario.ScenarioReader;
import org.beveragethermal.examples.scenario.Serving;
import org.beveragethermal.service.plan.BottlePlan;
import org.beveragethermal.service.plan.Instruction;
import org.beveragethermal.service.plan.Planner;
import org.beveragethermal.service.plan.ServicePlan;
import org.beveragethermal.service.plan.Verdict;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sheet of the shipped scenario: complete, in order, the same everywhere.
 *
 * <p>The sheet as it should be stands in two-sittings-sheet.txt; after a change that is meant, look at the difference and
 * write it anew with {@code mvn test -pl thermal-examples -am -Dtest=ServiceSheetTest
 * -Dsurefire.failIfNoSpecifiedTests=false -Dsheet.write}; that run itself still compares with the old text.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ServiceSheetTest {

    private static final Path SHIPPED = Path.of("scenarios", "two-sittings.json");
    private static final String GOLDEN = "two-sittings-sheet.txt";

    private final Scenario scenario = ShippedEvening.SCENARIO;
    private final ServicePlan plan = ShippedEvening.PLAN;
    private final String sheet = ServiceSheet.text(scenario, plan, ShippedEvening.ADVICE);

    @BeforeAll
    void writeAnewIfAsked() throws Exception {
        if (System.getProperty("sheet.write") != null) {
            Files.writeString(
                    Path.of("src", "test", "resources", "org", "beveragethermal", "examples", "sheet", GOLDEN), sheet);
        }
    }

    @Test
    void isTheSheetThatWasLookedAt() throws Exception {
        try (var in = Objects.requireNonNull(ServiceSheetTest.class.getResourceAsStream(GOLDEN))) {
            assertThat(sheet).isEqualTo(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void namesEveryBottleThatIsServed() {
        int bottles = scenario.servings().stream().mapToInt(Serving::bottles).sum();
        assertThat(plan.bottles()).hasSize(bottles);
        for (BottlePlan bottle : plan.bottles()) {
            assertThat(sheet).contains("\n" + bottle.order().name() + "\n");
        }
        assertThat(sheet.lines().filter(line -> line.matches("\\d\\d:\\d\\d  pour .*")))
                .hasSize(scenario.servings().size());
    }

    @Test
    void isInOrderOfTimeAndFitsAPage() {
        List<Instruction> instructions = plan.instructions();
        for (int i = 1; i < instructions.size(); i++) {
            assertThat(instructions.get(i).at())
                    .isAfterOrEqualTo(instructions.get(i - 1).at());
        }
        assertThat(instructions.get(0).at()).isAfterOrEqualTo(scenario.startsAt());
        assertThat(sheet.lines()).allMatch(line -> line.length() <= 100);
        assertThat(sheet).contains("Invented for this project");
    }

    @Test
    void saysWhatCannotBeReachedAndWhy() {
        List<BottlePlan> missed = plan.bottles().stream()
                .filter(b -> b.verdict() == Verdict.NOT_REACHED)
                .toList();
        assertThat(missed).hasSize(1);
        assertThat(missed.get(0).order().name()).contains("magnum");
        assertThat(sheet).contains("NOT in range when poured").contains("will not do: put there at once");
    }

    /** Turkish has an I of its own, German a decimal comma, Arabic digits of its own; plan and sheet are made anew. */
    @ParameterizedTest
    @CsvSource({"tr-TR, Asia/Kathmandu", "de-DE, Pacific/Apia", "ar-EG-u-nu-arab, America/St_Johns"})
    void isTheSameInAnyLocaleAndZone(String tag, String zoneId) {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            TimeZone.setDefault(TimeZone.getTimeZone(zoneId));
            Scenario again = ScenarioReader.read(SHIPPED);
            assertThat(ServiceSheet.text(again, Planner.plan(PlanRequests.from(again)), ShippedEvening.ADVICE))
                    .isEqualTo(sheet);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void beginsWithItsHeading() {
        assertThat(sheet).startsWith("Service sheet: " + scenario.title() + "\n");
        assertThat(sheet).endsWith("\n").doesNotContain("\r").doesNotContain("\t");
    }

    /** Figures as fine as a thermometer and a watch show, and the times of the sheet are those of the scenario's zone. */
    @Test
    void tellsTenthsOfADegreeAndWholeMinutes() {
        String oneLine = sheet.replaceAll("\\s+", " ");
        assertThat(Pattern.compile("(\\S+) °C").matcher(oneLine).results())
                .isNotEmpty()
                .allMatch(figure -> figure.group(1).matches("-?\\d+\\.\\d"));
        assertThat(sheet).doesNotContainPattern("\\d:\\d\\d:\\d\\d");
        // 17:12 local time, 15:12 UTC: Central European Summer Time is two hours ahead of UTC.
        assertThat(sheet).contains("17:12  pour young rosé in the magnum").doesNotContain("15:12");
    }

    @Test
    void iceStaysWithinTheStock() {
        double ice = plan.gearUses().stream().mapToDouble(u -> u.iceKg()).sum();
        assertThat(ice)
                .isPositive()
                .isLessThanOrEqualTo(scenario.iceStock().orElseThrow().massKg());
        assertThat(PlanRequests.from(scenario).bottles())
                .filteredOn(order -> order.id().startsWith("magnum"))
                .allMatch(order -> order.bottlePlaces() == 2);
    }
}
