/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Branch and bound for one level of cost, the levels before it limited. Nodes with the least bound come first, and from each the search goes down
 * as long as it can. All bounds and everything struck out rest on whole numbers.
 */
final class LevelSearch {
    /** Bounds the memory of open nodes to about 256 MB. */
    private static final long MOST_OPEN_BITS = 1L << 30;

    private final Model model;
    private final int level;
    private final long[] costLimits;
    private final double gap;
    private final Budget budget;
    private final List<Cut> seeds;
    private final PriorityQueue<SearchNode> open = new PriorityQueue<>(
            Comparator.<SearchNode>comparingLong(node -> node.bound).thenComparingLong(node -> node.number));
    private final ProofTree tree = new ProofTree();
    private long numbers;
    private boolean stopped;
    private @Nullable Cut rootCut;
    private @Nullable Incumbent best;

    /**
     * Prepares a search.
     *
     * @param seeds cuts that may strike something out at the root
     */
    LevelSearch(
            Model model,
            int level,
            long[] limitsBefore,
            @Nullable Incumbent best,
            List<Cut> seeds,
            double gap,
            Budget budget) {
        this.model = model;
        this.level = level;
        this.costLimits = Arrays.copyOf(limitsBefore, model.levels());
        Arrays.fill(costLimits, level, model.levels(), Long.MAX_VALUE);
        this.best = best;
        this.seeds = seeds;
        this.gap = gap;
        this.budget = budget;
        aim();
    }

    private void aim() {
        if (best != null) {
            costLimits[level] = best.cost[level] - 1;
        }
    }

    void run() {
        Cut plain = Cut.unit(model.capacities() + level);
        plain.needed = true;
        tree.cuts.add(plain);
        open.add(new SearchNode(numbers++, model.allRoutes(), model.allRoutes(), tree, model.leastCost(level), plain));
        while (!open.isEmpty() && !stopped) {
            SearchNode node = open.poll();
            while (node != null && !stopped) {
                node = closeEnough(node) ? stop(node) : look(node);
            }
        }
    }

    /** Whether the bound, this node's included, lies within the gap. */
    private boolean closeEnough(SearchNode node) {
        if (gap == 0 || best == null) {
            return false;
        }
        long bound = open.isEmpty() ? node.bound : Math.min(node.bound, open.peek().bound);
        return best.cost[level] - bound <= gap * best.cost[level];
    }

    @Nullable
    Incumbent best() {
        return best;
    }

    /** Whether it is shown that no choice keeps the capacities. */
    boolean infeasible() {
        return best == null && !stopped;
    }

    /** No choice within the limits of the levels before costs less in this level. */
    long bound() {
        long bound = best == null ? Long.MAX_VALUE : best.cost[level];
        for (SearchNode node : open) {
            bound = Math.min(bound, node.bound);
        }
        return bound;
    }

    /** The weights by which the root was bounded; null if it was not. */
    @Nullable
    Cut rootCut() {
        return rootCut;
    }

    /** The weights by which the root alone is shown to have no choice; null if there are none. */
    @Nullable
    Cut breaking() {
        return infeasible() ? tree.onlyBreaking() : null;
    }

    /** Capacity rows that the proof rests on. */
    BitSet rowsInProof() {
        return tree.rows(model);
    }

    /** The proof of the bound, or that no choice keeps the capacities. */
    Certificate.Proof proof() {
        List<Long> limits = new ArrayList<>();
        if (!infeasible()) {
            for (int k = 0; k < level; k++) {
                limits.add(costLimits[k]);
            }
            limits.add(bound() - 1);
        }
        ProofTree.Style style = new ProofTree.Style(stopped, limits.size(), infeasible() ? Long.MAX_VALUE : bound());
        return new Certificate.Proof(limits, () -> tree.node(model, style));
    }

    /** Looks at a node; gives the child to go on with, null if it is done with. */
    private @Nullable SearchNode look(SearchNode node) {
        if (node.bound > costLimits[level]) {
            node.boundBy.needed = true;
            return null;
        }
        if (open.size() > MOST_OPEN_BITS / model.routes.size()) {
            budget.end("there were too many open cases");
        }
        if (!budget.node(level, open.size())) {
            return stop(node);
        }
        if (node.proof == tree) {
            seeds.forEach(seed -> strike(node, seed));
        }
        if (strikePlainly(node)) {
            return null;
        }
        if (closedAsOneChoice(node)) {
            return null;
        }
        Relaxation relaxation = Relaxation.solve(model, node.alive, level, costLimits, budget);
        if (budget.spent()) {
            return stop(node);
        }
        Weighed weighed = Weighed.of(model, node.alive, relaxation, level, costLimits);
        if (weighed != null && use(node, weighed)) {
            return null;
        }
        if (relaxation.end == Relaxation.End.LEAST) {
            offerRounded(relaxation.taken);
            if (node.bound > costLimits[level]) {
                node.boundBy.needed = true;
                return null;
            }
        }
        return closedAsOneChoice(node) ? null : branch(node, relaxation.taken, weighed);
    }

    /** Whether only one choice was left: it is taken if it is the best yet, and plain limits then strike it out. */
    private boolean closedAsOneChoice(SearchNode node) {
        if (node.alive.cardinality() > model.items()) {
            return false;
        }
        offer(node.alive.stream().toArray());
        return strikePlainly(node);
    }

    private @Nullable SearchNode stop(SearchNode node) {
        stopped = true;
        open.add(node);
        return null;
    }

    /** Strikes out with one cut; true if some item has no route left. */
    private boolean strike(SearchNode node, Cut cut) {
        if (model.emptied(node.alive)) {
            return true;
        }
        if (costLimits[level] == Long.MAX_VALUE && cut.weighs(model.capacities() + level)) {
            return false;
        }
        if (Cut.strike(model, node.alive, cut.sum(model, node.alive, costLimits))) {
            cut.needed = true;
            node.proof.cuts.add(cut);
        }
        return model.emptied(node.alive);
    }

    /** Strikes out what breaks a single limit, until nothing more does; true if some item has no route left. */
    private boolean strikePlainly(SearchNode node) {
        int before;
        do {
            before = node.alive.cardinality();
            for (int k = 0; k <= level; k++) {
                if (costLimits[k] != Long.MAX_VALUE && strike(node, Cut.unit(model.capacities() + k))) {
                    return true;
                }
            }
            for (int q : tightRows(node.alive)) {
                if (strike(node, Cut.unit(q))) {
                    return true;
                }
            }
        } while (node.alive.cardinality() < before);
        return false;
    }

    /** Rows that some route cannot have beside the items that have no other route. */
    private int[] tightRows(BitSet alive) {
        long[] use = new long[model.capacities()];
        for (int i = 0; i < model.items(); i++) {
            if (model.left(alive, i) == 1) {
                model.add(use, alive.nextSetBit(model.first[i]), 1);
            }
        }
        BitSet tight = new BitSet();
        for (int r = alive.nextSetBit(0); r >= 0; r = alive.nextSetBit(r + 1)) {
            boolean fixed = model.left(alive, model.itemOf[r]) == 1;
            for (int e = 0; e < model.rows[r].length; e++) {
                int q = model.rows[r][e];
                if (use[q] + (fixed ? 0 : model.places[r][e])
                        > model.slots.get(q).capacity()) {
                    tight.set(q);
                }
            }
        }
        return tight.stream().toArray();
    }

    /** Takes the bound of a cut and strikes out with it; true if the node is done with. */
    private boolean use(SearchNode node, Weighed weighed) {
        node.proof.cuts.add(weighed.cut());
        Cut.Sum sum = weighed.sum();
        if (weighed.unit() > 0) {
            long bound = weighed.bound(0);
            node.proof.boundedBy(weighed.cut(), bound);
            node.bound(bound, weighed.cut());
            if (node.proof == tree) {
                rootCut = weighed.cut();
            }
            if (costLimits[level] == Long.MAX_VALUE) {
                return false;
            }
            sum = weighed.sumWithin(costLimits[level]);
        }
        if (Cut.strike(model, node.alive, sum)) {
            weighed.cut().needed = true;
        }
        return model.emptied(node.alive);
    }

    private void offerRounded(double[] taken) {
        int[] choice = new int[model.items()];
        for (int i = 0; i < choice.length; i++) {
            choice[i] = model.first[i];
            for (int r = model.first[i]; r < model.first[i + 1]; r++) {
                choice[i] = taken[r] > taken[choice[i]] ? r : choice[i];
            }
        }
        if (model.fits(model.use(choice))) {
            offer(choice);
        } else if (best == null || numbers % 16 == 1) {
            Incumbent mended = LocalSearch.mended(model, choice, budget);
            if (mended != null && !take(LocalSearch.bettered(model, mended, budget))) {
                take(mended);
            }
        }
    }

    private void offer(int[] choice) {
        if (model.fits(model.use(choice)) && take(new Incumbent(model, choice))) {
            take(LocalSearch.bettered(model, new Incumbent(model, choice), budget));
        }
    }

    private boolean take(Incumbent found) {
        for (int k = 0; k < level; k++) {
            if (found.cost[k] > costLimits[k]) {
                return false;
            }
        }
        if (best != null && Incumbent.compare(found.cost, best.cost, level) >= 0) {
            return false;
        }
        best = found;
        aim();
        return true;
    }

    /** Gives the likeliest case below a node and keeps the others for later. */
    private @Nullable SearchNode branch(SearchNode node, double[] taken, @Nullable Weighed weighed) {
        List<SearchNode> children = Branching.children(model, node, taken, weighed, numbers);
        numbers += children.size();
        if (children.isEmpty()) {
            return null;
        }
        open.addAll(children.subList(1, children.size()));
        return children.get(0);
    }
}
