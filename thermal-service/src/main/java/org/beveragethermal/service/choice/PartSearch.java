/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Solves a part level by level: what a level costs at the least is a limit for the next. */
final class PartSearch {
    final Model model;
    private final List<Certificate.Proof> proofs = new ArrayList<>();
    private final List<Long> bounds = new ArrayList<>();
    private @Nullable Incumbent best;
    private boolean infeasible;
    private @Nullable Cut breaking;
    private BitSet rowsInProof = new BitSet();

    PartSearch(Model model) {
        this.model = model;
        for (int k = 0; k < model.levels(); k++) {
            bounds.add(model.leastCost(k));
        }
    }

    /** Looks for some choice, without proof. */
    void begin(Budget budget) {
        Incumbent found = LocalSearch.mended(model, LocalSearch.begun(model, budget), budget);
        best = found == null ? null : LocalSearch.bettered(model, found, budget);
    }

    /** Solves as many levels as the budget allows. */
    void run(double gap, Budget budget) {
        long[] limits = new long[model.levels()];
        List<Cut> seeds = new ArrayList<>();
        for (int level = 0; level < model.levels(); level++) {
            List<Cut> copies = seeds.stream().map(Cut::copy).toList();
            LevelSearch search = new LevelSearch(model, level, limits, best, copies, gap, budget);
            search.run();
            best = search.best();
            infeasible = search.infeasible();
            if (!infeasible) {
                bounds.set(level, search.bound());
            }
            proofs.add(search.proof());
            breaking = search.breaking();
            rowsInProof = search.rowsInProof();
            if (best == null || budget.spent()) {
                return;
            }
            limits[level] = best.cost[level];
            if (search.rootCut() != null) {
                seeds.add(search.rootCut());
            }
        }
    }

    @Nullable
    Incumbent best() {
        return best;
    }

    boolean infeasible() {
        return infeasible;
    }

    /** A bound for each level, given the costs of the levels before it. */
    List<Long> bounds() {
        return bounds;
    }

    /**
     * Items that cannot all be served: those that weigh most by the weights that show it, as many as it takes; all items if more than one
     * weighing was needed.
     */
    List<ChoiceItem> heaviest() {
        if (breaking == null) {
            return model.items;
        }
        long[] limits = new long[model.levels()];
        Cut.Sum sum = breaking.sum(model, model.allRoutes(), limits);
        long limit = Arrays.stream(sum.leastOfItem).sum() - sum.excess;
        int[] byWeight = IntStream.range(0, model.items())
                .boxed()
                .sorted(Comparator.comparingLong(i -> -sum.leastOfItem[i]))
                .mapToInt(i -> i)
                .toArray();
        long weight = 0;
        BitSet heaviest = new BitSet();
        for (int i : byWeight) {
            if (weight <= limit) {
                weight += sum.leastOfItem[i];
                heaviest.set(i);
            }
        }
        return heaviest.stream().mapToObj(model.items::get).toList();
    }

    /** Gear and slots that the last proof rests on. */
    List<ChoiceAnswer.Span> spansInProof() {
        return rowsInProof.stream().mapToObj(q -> model.slots.get(q).span()).toList();
    }

    Certificate.Part certificate() {
        return new Certificate.Part(model.items.stream().map(ChoiceItem::id).toList(), model.outdone, proofs);
    }
}
