/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.service.caution.Caution;
import org.beveragethermal.service.caution.CautionReport;
import org.beveragethermal.service.caution.CautionRule;
import org.beveragethermal.service.caution.CautionSubject;
import org.beveragethermal.service.caution.Cautions;

/**
 * What a prediction comes to that nobody asks for: ice in the drink, or a closed vessel without room under its closure.
 *
 * @param found the cautions about it, the gravest first; empty if all is well
 */
record Harm(List<Caution> found) {
    private static final Map<CautionRule, String> WHAT = Map.of(
            CautionRule.BURSTS_BY_ICE, "the closed vessel may burst of ice",
            CautionRule.FULL_OF_LIQUID, "the closed vessel may burst of its warmed drink",
            CautionRule.FREEZING_BEGINS, "the drink begins to freeze");
    private static final List<CautionRule> RULES =
            List.of(CautionRule.BURSTS_BY_ICE, CautionRule.FULL_OF_LIQUID, CautionRule.FREEZING_BEGINS);

    static Harm of(Prediction prediction, FilledVessel vessel) {
        CautionReport report = Cautions.of(prediction, CautionSubject.of(vessel));
        return new Harm(
                RULES.stream().flatMap(rule -> report.find(rule).stream()).toList());
    }

    boolean isNone() {
        return found.isEmpty();
    }

    /** One sentence. */
    String sentence() {
        return found.stream()
                .map(caution -> what(caution) + " "
                        + caution.crossing()
                                .time()
                                .filter(time -> !time.isZero())
                                .map(time -> "after " + PredictCommand.words(time))
                                .orElse("from the start"))
                .collect(Collectors.joining("; ", "NOT as wanted: ", "."));
    }

    Answer.Table table() {
        List<List<Answer.Cell>> rows = new ArrayList<>();
        for (Caution caution : found) {
            rows.add(List.of(
                    Answer.Cell.of(what(caution)),
                    PredictCommand.minutes(caution.crossing().time().orElse(Duration.ZERO))));
        }
        return new Answer.Table(
                "What goes wrong", List.of(Answer.Column.words("what"), new Answer.Column("after", "min")), rows);
    }

    /** What to do about it, in words. */
    List<String> cautions() {
        return found.stream().map(caution -> caution.text(Locale.ROOT)).toList();
    }

    private static String what(Caution caution) {
        return WHAT.getOrDefault(caution.rule(), caution.code());
    }
}
