/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.util.Locale;
import java.util.stream.Collectors;
import org.beveragethermal.service.plan.Instruction;
import org.beveragethermal.service.plan.PlanPhrases;
import org.beveragethermal.service.plan.PlanTexts;
import org.beveragethermal.service.plan.ServicePlan;

/** What to do when, as a table: one row for each thing to do, its kind told by a word and a sign. */
final class SheetMoves {

    private final ServicePlan plan;
    private final PlanTexts texts;
    private final PlanPhrases phrases;

    private SheetMoves(ServicePlan plan, PlanTexts texts) {
        this.plan = plan;
        this.texts = texts;
        this.phrases = PlanPhrases.of(plan);
    }

    static String table(ServicePlan plan, PlanTexts texts) {
        return new SheetMoves(plan, texts).table();
    }

    private String table() {
        // On a phone the style sheet stacks the cells; the roles keep it a table for those who hear it.
        return plan.instructions().stream().map(this::row).collect(Collectors.joining("", """
                        <table role="table">
                        <caption>Times are when to do it; “latest” is when it still works.</caption>
                        <thead role="rowgroup"><tr role="row"><th role="columnheader" scope="col">When</th><th role="columnheader" scope="col">Kind</th><th role="columnheader" scope="col">What to do</th><th role="columnheader" scope="col">Latest</th><th role="columnheader" scope="col">When poured</th></tr></thead>
                        <tbody role="rowgroup">
                        """, "</tbody>\n</table>\n"));
    }

    private String row(Instruction instruction) {
        Kind kind = Kind.of(instruction.action());
        return String.format(
                Locale.ROOT,
                "<tr role=\"row\" class=\"%s\"><th role=\"rowheader\" scope=\"row\"><time>%s</time></th>"
                        + "<td role=\"cell\" class=\"kind\"><span aria-hidden=\"true\">%s</span> %s</td>"
                        + "<td role=\"cell\">%s</td><td role=\"cell\" class=\"latest\">%s</td>"
                        + "<td role=\"cell\" class=\"then\">%s</td></tr>\n",
                kind.name().toLowerCase(Locale.ROOT),
                Markup.text(texts.clock(instruction.at())),
                kind.sign,
                kind.word,
                Markup.text(SheetWords.capital(texts.words(phrases.action(instruction)))),
                instruction
                        .latest()
                        .filter(latest -> latest.isAfter(instruction.at()))
                        .map(latest -> Markup.text(texts.clock(latest)))
                        .orElse(""),
                instruction.bottleIds().isEmpty() ? "" : outlook(instruction));
    }

    private String outlook(Instruction instruction) {
        String expected = instruction
                .expected()
                .map(e -> texts.temperature(e.meanK())
                        + (e.high90K() > e.low90K()
                                ? " (" + SheetWords.figure(texts, e.low90K()) + "\u00a0to\u00a0"
                                        + SheetWords.figure(texts, e.high90K()) + ")"
                                : ""))
                .orElse("");
        boolean out = instruction.marginK().orElse(0) < 0;
        return Markup.text(expected)
                + (out
                        ? " <strong class=\"out\">out by\u00a0"
                                + String.format(
                                        Locale.ROOT,
                                        "%.1f\u00a0K",
                                        -instruction.marginK().orElse(0))
                                + "</strong>"
                        : "");
    }

    /** Kinds of things to do, each with its word and its sign. */
    private enum Kind {
        FILL("▽", "fill"),
        MOVE("◆", "move"),
        AIR("○", "air"),
        POUR("▼", "pour");

        private final String sign;
        private final String word;

        Kind(String sign, String word) {
            this.sign = sign;
            this.word = word;
        }

        static Kind of(Instruction.Action action) {
            return switch (action) {
                case FILL, ADD_ICE -> FILL;
                case TAKE_OUT, MOVE -> MOVE;
                case DECANT, OPEN -> AIR;
                case SERVE, POUR -> POUR;
            };
        }
    }
}
