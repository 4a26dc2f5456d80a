/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The tree of a search as far as a proof needs it; grows with the search. */
final class ProofTree {
    final List<Cut> cuts = new ArrayList<>();
    private final List<int[]> groups = new ArrayList<>();
    private final List<ProofTree> children = new ArrayList<>();
    private @Nullable Cut bounding;
    private long bound;

    ProofTree child(int[] group) {
        ProofTree child = new ProofTree();
        groups.add(group);
        children.add(child);
        return child;
    }

    /** The last cut of a tree without branches, null if there are branches. */
    @Nullable
    Cut onlyBreaking() {
        return children.isEmpty() && !cuts.isEmpty() ? cuts.get(cuts.size() - 1) : null;
    }

    /** Capacity rows of the cuts that are needed. */
    BitSet rows(Model model) {
        BitSet rows = new BitSet();
        cuts.stream()
                .filter(cut -> cut.needed)
                .forEach(cut -> Arrays.stream(cut.rows()).forEach(rows::set));
        children.forEach(child -> rows.or(child.rows(model)));
        rows.clear(model.capacities(), Math.max(model.capacities(), rows.length()));
        return rows;
    }

    /** Notes that weights, the last of the cuts, bound the cost of this case. */
    void boundedBy(Cut cut, long by) {
        bounding = cut;
        bound = by;
    }

    /**
     * What a proof takes of a tree.
     *
     * @param all whether all cuts are taken or only those that are needed
     * @param levels how many levels are limited; cuts that weigh others are left out
     * @param proven the bound to be proven; cases that a single cut bounds so are not divided
     */
    record Style(boolean all, int levels, long proven) {}

    /** The proof in names. */
    Certificate.Node node(Model model, Style style) {
        boolean closed = bounding != null && bound >= style.proven;
        List<Certificate.Weights> weights = cuts.stream()
                .filter(cut -> style.all || cut.needed || (closed && cut.equals(bounding)))
                .filter(cut -> cut.lastRow() < model.capacities() + style.levels)
                .map(cut -> cut.weights(model))
                .toList();
        if (closed) {
            return new Certificate.Node(weights, List.of());
        }
        List<Certificate.Branch> branches = new ArrayList<>();
        for (int c = 0; c < children.size(); c++) {
            int[] group = groups.get(c);
            String item = model.items.get(model.itemOf[group[0]]).id();
            List<String> routes =
                    Arrays.stream(group).mapToObj(r -> model.routes.get(r).id()).toList();
            branches.add(new Certificate.Branch(item, routes, children.get(c).node(model, style)));
        }
        return new Certificate.Node(weights, branches);
    }
}
