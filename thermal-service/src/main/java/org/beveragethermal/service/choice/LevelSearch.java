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
    private static final double FRACTION = 1e-6;
    /** Bounds the memory of open nodes to about 256 MB. */
    private static final long MOST_OPEN_BITS = 1L << 30;

    private final Model model;
    private final int level;
    private final long[] costLimits;
    private final double gap;
    private final Budget budget;
    private final List<Cut> seeds;
    private final PriorityQueue<Node> open = new PriorityQueue<>(
            Comparator.<Node>comparingLong(node -> node.bound).thenComparingLong(node -> node.number));
    private final ProofTree tree = new ProofTree();
    private long numbers;
    private boolean stopped;
    private @Nullable Cut rootCut;
    private @Nullable Incumbent best;

    /** A case still to be looked at. */
    private static final class Node {
        final long number;
        final BitSet alive;
        /** What the branches above allow, whatever was struck out. */
        final BitSet allowed;

        final ProofTree proof;
        long bound;
        Cut boundBy;

        Node(long number, BitSet alive, BitSet allowed, ProofTree proof, long bound, Cut boundBy) {
            this.number = number;
            this.alive = alive;
            this.allowed = allowed;
            this.proof = proof;
            this.bound = bound;
            this.boundBy = boundBy;
        }
    }

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
        open.add(new Node(numbers++, model.allRoutes(), model.allRoutes(), tree, model.leastCost(level), plain));
        while (!open.isEmpty() && !stopped) {
            Node node = open.poll();
            while (node != null && !stopped) {
                node = closeEnough(node) ? stop(node) : look(node);
            }
        }
    }

    /** Whether the bound, this node's included, lies within the gap. */
    private boolean closeEnough(Node node) {
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
        for (Node node : open) {
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
    private @Nullable Node look(Node node) {
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
    private boolean closedAsOneChoice(Node node) {
        if (node.alive.cardinality() > model.items()) {
            return false;
        }
        offer(node.alive.stream().toArray());
        return strikePlainly(node);
    }

    private @Nullable Node stop(Node node) {
        stopped = true;
        open.add(node);
        return null;
    }

    private boolean emptied(BitSet alive) {
        for (int i = 0; i < model.items(); i++) {
            int next = alive.nextSetBit(model.first[i]);
            if (next < 0 || next >= model.first[i + 1]) {
                return true;
            }
        }
        return false;
    }

    /** Strikes out with one cut; true if some item has no route left. */
    private boolean strike(Node node, Cut cut) {
        if (emptied(node.alive)) {
            return true;
        }
        if (costLimits[level] == Long.MAX_VALUE && cut.weighs(model.capacities() + level)) {
            return false;
        }
        if (Cut.strike(model, node.alive, cut.sum(model, node.alive, costLimits))) {
            cut.needed = true;
            node.proof.cuts.add(cut);
        }
        return emptied(node.alive);
    }

    /** Strikes out what breaks a single limit, until nothing more does; true if some item has no route left. */
    private boolean strikePlainly(Node node) {
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
    private boolean use(Node node, Weighed weighed) {
        node.proof.cuts.add(weighed.cut());
        Cut.Sum sum = weighed.sum();
        if (weighed.unit() > 0) {
            long bound = weighed.bound(0);
            node.proof.boundedBy(weighed.cut(), bound);
            if (bound > node.bound) {
                node.bound = bound;
                node.boundBy = weighed.cut();
            }
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
        return emptied(node.alive);
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

    /** Divides the routes of the most divided item; gives the likeliest case and keeps the others for later. */
    private @Nullable Node branch(Node node, double[] taken, @Nullable Weighed weighed) {
        int item = mostDivided(node.alive, taken);
        List<int[]> groups = groups(node.alive, item, taken);
        Node next = null;
        BitSet earlier = new BitSet();
        for (int[] group : groups) {
            Node child = child(node, item, group, earlier, weighed);
            for (int r : group) {
                earlier.set(r - model.first[item]);
            }
            if (emptied(child.alive)) {
                continue;
            }
            if (next == null) {
                next = child;
            } else {
                open.add(child);
            }
        }
        return next;
    }

    private int mostDivided(BitSet alive, double[] taken) {
        int most = -1;
        double mostBy = -1;
        for (int i = 0; i < model.items(); i++) {
            if (model.left(alive, i) == 1) {
                continue;
            }
            double greatest = 0;
            for (int r = model.first[i]; r < model.first[i + 1]; r++) {
                greatest = Math.max(greatest, taken[r]);
            }
            if (1 - greatest > mostBy) {
                mostBy = 1 - greatest;
                most = i;
            }
        }
        return most;
    }

    /** The two routes taken most, each by itself, and all others. */
    private List<int[]> groups(BitSet alive, int item, double[] taken) {
        List<Integer> routes = new ArrayList<>();
        for (int r = alive.nextSetBit(model.first[item]);
                r >= 0 && r < model.first[item + 1];
                r = alive.nextSetBit(r + 1)) {
            routes.add(r);
        }
        routes.sort(Comparator.comparingDouble((Integer r) -> -taken[r]).thenComparingInt(r -> r));
        List<int[]> groups = new ArrayList<>();
        int single = taken[routes.get(1)] > FRACTION ? 2 : 1;
        for (int s = 0; s < single; s++) {
            groups.add(new int[] {routes.get(s)});
        }
        if (routes.size() > single) {
            groups.add(routes.subList(single, routes.size()).stream()
                    .mapToInt(r -> r)
                    .toArray());
        }
        return groups;
    }

    private Node child(Node node, int item, int[] group, BitSet earlier, @Nullable Weighed weighed) {
        BitSet allowed = (BitSet) node.allowed.clone();
        for (int other = 0; other < model.items(); other++) {
            if (other != item && model.kind[other] == model.kind[item] && sameAllowed(node.allowed, item, other)) {
                int first = model.first[other];
                earlier.stream().forEach(place -> allowed.clear(first + place));
            }
        }
        allowed.clear(model.first[item], model.first[item + 1]);
        for (int r : group) {
            allowed.set(r);
        }
        BitSet alive = (BitSet) node.alive.clone();
        alive.and(allowed);
        Node child = new Node(numbers++, alive, allowed, node.proof.child(group), node.bound, node.boundBy);
        if (weighed != null && weighed.unit() > 0) {
            long least = Arrays.stream(group)
                    .mapToLong(r -> weighed.sum().ofRoute[r])
                    .min()
                    .orElseThrow();
            long bound = weighed.bound(least - weighed.sum().leastOfItem[item]);
            if (bound > child.bound) {
                child.bound = bound;
                child.boundBy = weighed.cut();
            }
        }
        return child;
    }

    private boolean sameAllowed(BitSet allowed, int a, int b) {
        return allowed.get(model.first[a], model.first[a + 1]).equals(allowed.get(model.first[b], model.first[b + 1]));
    }
}
