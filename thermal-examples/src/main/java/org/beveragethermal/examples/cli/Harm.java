/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
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
 * @param found what goes wrong, the gravest first; empty if all is well
 */
record Harm(List<Found> found) {
    private static final Map<CautionRule, String> WHAT = Map.of(
            CautionRule.BURSTS_BY_ICE, "the closed vessel may burst of ice",
            CautionRule.FULL_OF_LIQUID, "the closed vessel may burst of its warmed drink",
            CautionRule.FREEZING_BEGINS, "the drink begins to freeze");
    private static final List<CautionRule> RULES =
            List.of(CautionRule.BURSTS_BY_ICE, CautionRule.FULL_OF_LIQUID, CautionRule.FREEZING_BEGINS);

    /** What happens in fewer runs than this part of them is not said, unless it is grave. */
    private static final double LEAST_PART = 0.05;

    private static final double EARLY_PART = 0.05;

    /**
     * Something that goes wrong.
     *
     * @param caution that of the middle one of the runs in which it does
     * @param after when it does in that run
     * @param earliest when it does in the run that is at {@link #EARLY_PART} of those in which it does
     * @param part part of the runs in which it does
     */
    record Found(Caution caution, Duration after, Duration earliest, double part) {
        String what() {
            return WHAT.getOrDefault(caution.rule(), caution.code());
        }

        String sentence() {
            List<String> more = new ArrayList<>();
            if (earliest.compareTo(after) < 0) {
                more.add("as early as " + (earliest.isZero() ? "the start" : PredictCommand.words(earliest)));
            }
            if (part < 1) {
                more.add(String.format(
                        Locale.ROOT,
                        part < LEAST_PART ? "in %.1f %% of the draws" : "in %.0f %% of the draws",
                        100 * part));
            }
            return what()
                    + (after.isZero() ? " from the start" : " after " + PredictCommand.words(after))
                    + (more.isEmpty() ? "" : " (" + String.join(", ", more) + ")");
        }
    }

    static Harm of(Outlook outlook, FilledVessel vessel) {
        CautionSubject subject = CautionSubject.of(vessel);
        List<Prediction> runs = outlook.deciding();
        List<CautionReport> reports =
                runs.stream().map(run -> Cautions.of(run, subject)).toList();
        List<Found> found = new ArrayList<>();
        for (CautionRule rule : RULES) {
            List<Caution> cautions = reports.stream()
                    .flatMap(report -> report.find(rule).stream())
                    .sorted(Comparator.comparing(Harm::after))
                    .toList();
            double part = (double) cautions.size() / runs.size();
            boolean grave = rule != CautionRule.FREEZING_BEGINS;
            if (!cautions.isEmpty() && (grave || part >= LEAST_PART)) {
                Caution middle = cautions.get(cautions.size() / 2);
                int early = (int) (EARLY_PART * cautions.size());
                found.add(new Found(middle, after(middle), after(cautions.get(early)), part));
            }
        }
        return new Harm(found);
    }

    private static Duration after(Caution caution) {
        return caution.crossing().time().orElse(Duration.ZERO);
    }

    boolean isNone() {
        return found.isEmpty();
    }

    /** One sentence. */
    String sentence() {
        return found.stream().map(Found::sentence).collect(Collectors.joining("; ", "NOT as wanted: ", "."));
    }

    Answer.Table table() {
        List<List<Answer.Cell>> rows = new ArrayList<>();
        for (Found each : found) {
            rows.add(List.of(
                    Answer.Cell.of(each.what()),
                    PredictCommand.minutes(each.after()),
                    PredictCommand.minutes(each.earliest()),
                    Answer.Cell.of(100 * each.part(), each.part() < LEAST_PART ? 1 : 0)));
        }
        return new Answer.Table(
                "What goes wrong",
                List.of(
                        Answer.Column.words("what"),
                        new Answer.Column("after", "min"),
                        new Answer.Column("earliest", "min"),
                        new Answer.Column("in", "% of runs")),
                rows);
    }

    /** What to do about it, in words. */
    List<String> cautions() {
        return found.stream().map(each -> each.caution().text(Locale.ROOT)).toList();
    }
}
