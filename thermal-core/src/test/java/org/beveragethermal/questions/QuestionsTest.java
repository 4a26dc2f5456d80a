/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.questions;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.testsupport.DocumentParts;
import org.junit.jupiter.api.Test;

/** Asks every question and leaves the tables of {@code docs/questions.md}. */
final class QuestionsTest {

    private static final int RUNS = 3;

    @Test
    void everyQuestionIsAnsweredInWords() {
        List<List<String>> rows = new ArrayList<>();
        for (Question question : Questions.all()) {
            List<String> row = question.row();
            String answer = row.get(2);
            assertThat(answer)
                    .as(question.asked())
                    .matches("(?s)[A-Z0-9].*\\.")
                    .doesNotContain("NaN")
                    .doesNotContain("null")
                    .doesNotContain("Infinity")
                    .doesNotContainPattern("-0\\.0+ ")
                    .doesNotContain("|");
            // All searches are bounded; the costliest draws for each of its runs.
            assertThat(Integer.parseInt(row.get(RUNS))).as(question.asked()).isBetween(0, 200);
            rows.add(row);
        }
        assertThat(rows).hasSizeGreaterThanOrEqualTo(14);
        assertThat(rows.get(0).get(RUNS)).as("one forward prediction").isEqualTo("1");
        DocumentParts.leaveTable("questions", List.of("Question", "Asked of", "Answer", "Cost, forward runs"), rows);
        DocumentParts.leaveTable(
                "questions-sampling",
                List.of("Draws of what has an interval", "of the pouring aim", "Seed"),
                List.of(List.of(
                        Integer.toString(Questions.DRAWS),
                        Integer.toString(Questions.DRAWS / 2),
                        Long.toString(Questions.SEED))));
    }

    @Test
    void rulesOfThumbStandBesideTheModel() {
        List<TradeRule> rules = TradeRule.all();
        DocumentParts.leaveTable(
                "questions-rules",
                List.of("What is said", "Said", "Model", "90 % interval", "Model then", "Together"),
                rules.stream().map(TradeRule::row).toList());
        // The rule of the refrigerator is out of reach: not one draw comes near it.
        assertThat(rules.get(0).spread().earliest().orElseThrow()).isGreaterThan(Duration.ofMinutes(90));
    }
}
