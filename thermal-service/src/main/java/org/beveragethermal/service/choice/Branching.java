/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Divides a case by the routes of one item. */
final class Branching {
    private static final double FRACTION = 1e-6;

    private Branching() {}

    /**
     * The cases below a node, the likeliest first, without those that leave an item no route.
     *
     * @param taken how much of each route the relaxation takes
     * @param weighed weights that bound the node, null if there are none
     * @param number number of the first child
     */
    static List<SearchNode> children(
            Model model, SearchNode node, double[] taken, @Nullable Weighed weighed, long number) {
        int item = mostDivided(model, node.alive, taken);
        List<SearchNode> children = new ArrayList<>();
        BitSet earlier = new BitSet();
        for (int[] group : groups(model, node.alive, item, taken)) {
            BitSet allowed = allowedAfter(model, node.allowed, item, earlier);
            SearchNode child = child(model, node, item, group, allowed, weighed, number + children.size());
            for (int r : group) {
                earlier.set(r - model.first[item]);
            }
            if (!model.emptied(child.alive)) {
                children.add(child);
            }
        }
        return children;
    }

    /** An item with several routes left of which the relaxation takes no route nearly whole. */
    private static int mostDivided(Model model, BitSet alive, double[] taken) {
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
    private static List<int[]> groups(Model model, BitSet alive, int item, double[] taken) {
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

    private static SearchNode child(
            Model model,
            SearchNode node,
            int item,
            int[] group,
            BitSet allowed,
            @Nullable Weighed weighed,
            long number) {
        allowed.clear(model.first[item], model.first[item + 1]);
        for (int r : group) {
            allowed.set(r);
        }
        BitSet alive = (BitSet) node.alive.clone();
        alive.and(allowed);
        SearchNode child = new SearchNode(number, alive, allowed, node.proof.child(group), node.bound, node.boundBy);
        if (weighed != null && weighed.unit() > 0) {
            long least = Arrays.stream(group)
                    .mapToLong(r -> weighed.sum().ofRoute[r])
                    .min()
                    .orElseThrow();
            child.bound(weighed.bound(least - weighed.sum().leastOfItem[item]), weighed.cut());
        }
        return child;
    }

    /** What is allowed below a node when items that are the same as this one leave routes to it that have had their case. */
    private static BitSet allowedAfter(Model model, BitSet allowed, int item, BitSet earlier) {
        BitSet below = (BitSet) allowed.clone();
        for (int other = 0; other < model.items(); other++) {
            if (other != item && model.kind[other] == model.kind[item] && sameAllowed(model, allowed, item, other)) {
                int first = model.first[other];
                earlier.stream().forEach(place -> below.clear(first + place));
            }
        }
        return below;
    }

    private static boolean sameAllowed(Model model, BitSet allowed, int a, int b) {
        return allowed.get(model.first[a], model.first[a + 1]).equals(allowed.get(model.first[b], model.first[b + 1]));
    }
}
