/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds few items that cannot all be served, by leaving out others as long as no choice becomes possible. */
final class Faults {
    private static final int MOST_TRIES = 200;
    private static final long NODES_PER_TRY = 50;
    private static final int MOST_NAMED = 8;

    private final ChoiceProblem problem;
    private final Budget budget;
    private int tries;

    private Faults(ChoiceProblem problem, Budget budget) {
        this.problem = problem;
        this.budget = budget;
    }

    /** The answer for a part that is known to have no choice. */
    static ChoiceAnswer.Infeasible explain(ChoiceProblem problem, PartSearch part, Budget budget) {
        return new Faults(problem, budget).explain(part);
    }

    private ChoiceAnswer.Infeasible explain(PartSearch part) {
        PartSearch heaviest = infeasiblePart(part.heaviest());
        PartSearch fewest = heaviest == null ? part : heaviest;
        int chunk = Math.max(1, fewest.model.items() / 2);
        while (chunk > 0 && tries < MOST_TRIES && !budget.spent()) {
            PartSearch fewer = withoutChunk(fewest, chunk);
            if (fewer == null) {
                chunk /= 2;
            } else {
                fewest = fewer;
                chunk = Math.min(chunk, Math.max(1, fewest.model.items() / 2));
            }
        }
        return answer(fewest);
    }

    /** The first part without a choice that is left when so many neighbours are left out, null if there is none. */
    private @Nullable PartSearch withoutChunk(PartSearch part, int chunk) {
        List<ChoiceItem> items = part.model.items;
        for (int from = 0; from < items.size() && items.size() > 1; from += chunk) {
            if (tries++ >= MOST_TRIES || budget.spent()) {
                return null;
            }
            List<ChoiceItem> left = new ArrayList<>(items.subList(0, from));
            left.addAll(items.subList(Math.min(items.size(), from + chunk), items.size()));
            PartSearch fewer = infeasiblePart(left);
            if (fewer != null) {
                return fewer;
            }
        }
        return null;
    }

    private @Nullable PartSearch infeasiblePart(List<ChoiceItem> items) {
        ChoiceProblem left = new ChoiceProblem(problem.levels(), problem.slots(), problem.gear(), items);
        for (Model model : Presolve.parts(left, budget)) {
            PartSearch search = new PartSearch(model);
            search.run(1, budget.atMost(NODES_PER_TRY));
            if (search.infeasible()) {
                return search;
            }
        }
        return null;
    }

    private static ChoiceAnswer.Infeasible answer(PartSearch part) {
        List<String> items = part.model.items.stream().map(ChoiceItem::id).toList();
        List<ChoiceAnswer.Span> spans = joined(part.spansInProof());
        String named = items.size() <= MOST_NAMED
                ? String.join(", ", items)
                : String.join(", ", items.subList(0, MOST_NAMED)) + " and " + (items.size() - MOST_NAMED) + " more";
        List<String> where = spans.stream()
                .limit(MOST_NAMED)
                .map(span -> span.gearId() + " in slots " + span.firstSlot() + " to " + (span.endSlot() - 1))
                .toList();
        String reason = "not all of these can be served: " + named + "; too small is " + String.join(", ", where);
        return new ChoiceAnswer.Infeasible(reason, items, spans, new Certificate(List.of(part.certificate())));
    }

    private static List<ChoiceAnswer.Span> joined(List<ChoiceAnswer.Span> spans) {
        List<ChoiceAnswer.Span> joined = new ArrayList<>();
        for (ChoiceAnswer.Span span : spans) {
            ChoiceAnswer.Span last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && last.gearId().equals(span.gearId()) && last.endSlot() == span.firstSlot()) {
                joined.set(joined.size() - 1, new ChoiceAnswer.Span(span.gearId(), last.firstSlot(), span.endSlot()));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }
}
