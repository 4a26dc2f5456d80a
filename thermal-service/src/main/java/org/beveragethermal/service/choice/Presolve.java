/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Takes a problem apart: slots in which the same routes take the same places become one row, rows that no choice can overload are left out,
 * routes that another outdoes are struck out, and items that share no row become parts of their own.
 */
final class Presolve {
    private final ChoiceProblem problem;
    private final Budget budget;
    private final List<Model.Slot> slots = new ArrayList<>();
    /** First row of each gear, and where its rows begin, by first slot. */
    private final Map<String, TreeMap<Integer, Integer>> rowsOfGear = new HashMap<>();
    /** Routes of each item that are left, each with the places it takes by row. */
    private final List<List<Entry>> entries = new ArrayList<>();

    private final List<List<Certificate.Outdone>> outdone = new ArrayList<>();

    /** A route that is left and the places it takes, by row in rising order. */
    private static final class Entry {
        final CandidateRoute route;
        int[] rows;
        long[] places;
        /** What makes it the same as another, before rows are left out that others imply: whoever checks a proof sees those rows. */
        Object sameness = "";

        Entry(CandidateRoute route, int[] rows, long[] places) {
            this.route = route;
            this.rows = rows;
            this.places = places;
        }

        void noteSameness() {
            sameness = List.of(
                    route.costs(),
                    Arrays.stream(rows).boxed().toList(),
                    Arrays.stream(places).boxed().toList());
        }

        void keep(boolean[] kept) {
            int[] which =
                    IntStream.range(0, rows.length).filter(e -> kept[rows[e]]).toArray();
            if (which.length < rows.length) {
                places = Arrays.stream(which).mapToLong(e -> places[e]).toArray();
                rows = Arrays.stream(which).map(e -> rows[e]).toArray();
            }
        }

        boolean outdoes(Entry other) {
            for (int k = 0; k < route.costs().size(); k++) {
                if (route.costs().get(k) > other.route.costs().get(k)) {
                    return false;
                }
            }
            int at = 0;
            for (int e = 0; e < rows.length; e++) {
                while (at < other.rows.length && other.rows[at] < rows[e]) {
                    at++;
                }
                if (at == other.rows.length || other.rows[at] != rows[e] || other.places[at] < places[e]) {
                    return false;
                }
            }
            return true;
        }
    }

    private Presolve(ChoiceProblem problem, Budget budget) {
        this.problem = problem;
        this.budget = budget;
    }

    /** The parts, those with few routes first; empty if the budget is spent before. */
    static List<Model> parts(ChoiceProblem problem, Budget budget) {
        Presolve presolve = new Presolve(problem, budget);
        presolve.divideSlots();
        if (!presolve.enterRoutes()) {
            return List.of();
        }
        presolve.keepRows(presolve.canOverload());
        if (!presolve.strikeOutdone()) {
            return List.of();
        }
        presolve.entries.forEach(ofItem -> ofItem.forEach(Entry::noteSameness));
        boolean[] kept = presolve.canOverload();
        presolve.leaveOutNeighbours(kept);
        presolve.keepRows(kept);
        return presolve.split();
    }

    private void divideSlots() {
        Map<String, TreeSet<Integer>> ends = new HashMap<>();
        for (ChoiceItem item : problem.items()) {
            for (CandidateRoute route : item.routes()) {
                for (Load load : route.loads()) {
                    TreeSet<Integer> of = ends.computeIfAbsent(load.gearId(), id -> new TreeSet<>());
                    of.add(load.firstSlot());
                    of.add(load.endSlot());
                }
            }
        }
        for (SharedGear gear : problem.gear()) {
            TreeMap<Integer, Integer> rows = new TreeMap<>();
            rowsOfGear.put(gear.id(), rows);
            Integer from = null;
            for (int to : ends.getOrDefault(gear.id(), new TreeSet<>())) {
                if (from != null) {
                    rows.put(from, slots.size());
                    slots.add(tightest(gear, from, to));
                }
                from = to;
            }
        }
    }

    private static Model.Slot tightest(SharedGear gear, int from, int to) {
        int least = from;
        for (int slot = from; slot < to; slot++) {
            if (gear.capacityBySlot().get(slot) < gear.capacityBySlot().get(least)) {
                least = slot;
            }
        }
        return new Model.Slot(
                new ChoiceAnswer.Span(gear.id(), from, to),
                least,
                gear.capacityBySlot().get(least));
    }

    private boolean enterRoutes() {
        long[] dense = new long[slots.size()];
        for (ChoiceItem item : problem.items()) {
            List<Entry> ofItem = new ArrayList<>();
            for (CandidateRoute route : item.routes()) {
                if (budget.spent()) {
                    return false;
                }
                ofItem.add(entry(route, dense));
            }
            entries.add(ofItem);
            outdone.add(new ArrayList<>());
        }
        return true;
    }

    /** The array is all 0 before and after. */
    private Entry entry(CandidateRoute route, long[] dense) {
        BitSet touched = new BitSet();
        for (Load load : route.loads()) {
            TreeMap<Integer, Integer> rows = Objects.requireNonNull(rowsOfGear.get(load.gearId()));
            int from = Objects.requireNonNull(rows.get(load.firstSlot()));
            int to = from + rows.subMap(load.firstSlot(), load.endSlot()).size();
            touched.set(from, to);
            for (int row = from; row < to; row++) {
                dense[row] += load.places();
            }
        }
        int[] rows = touched.stream().toArray();
        long[] places = Arrays.stream(rows).mapToLong(row -> dense[row]).toArray();
        for (int row : rows) {
            dense[row] = 0;
        }
        return new Entry(route, rows, places);
    }

    /** Rows that are overloaded if every item takes the route that takes most of it. */
    private boolean[] canOverload() {
        long[] most = new long[slots.size()];
        long[] mostOfItem = new long[slots.size()];
        for (List<Entry> ofItem : entries) {
            for (Entry entry : ofItem) {
                for (int e = 0; e < entry.rows.length; e++) {
                    mostOfItem[entry.rows[e]] = Math.max(mostOfItem[entry.rows[e]], entry.places[e]);
                }
            }
            for (Entry entry : ofItem) {
                for (int row : entry.rows) {
                    most[row] += mostOfItem[row];
                    mostOfItem[row] = 0;
                }
            }
        }
        boolean[] can = new boolean[most.length];
        for (int row = 0; row < most.length; row++) {
            can[row] = most[row] > slots.get(row).capacity();
        }
        return can;
    }

    private void keepRows(boolean[] kept) {
        entries.forEach(ofItem -> ofItem.forEach(entry -> entry.keep(kept)));
    }

    private boolean strikeOutdone() {
        for (int i = 0; i < entries.size(); i++) {
            List<Entry> left = entries.get(i);
            String item = problem.items().get(i).id();
            for (int r = left.size() - 1; r >= 0; r--) {
                if (budget.spent()) {
                    return false;
                }
                Entry entry = left.get(r);
                for (Entry other : left) {
                    if (!other.route.id().equals(entry.route.id()) && other.outdoes(entry)) {
                        outdone.get(i).add(new Certificate.Outdone(item, entry.route.id(), other.route.id()));
                        left.remove(r);
                        break;
                    }
                }
            }
        }
        return true;
    }

    /** Leaves out a row if a row beside it has no more capacity and every route takes no less of it. */
    private void leaveOutNeighbours(boolean[] kept) {
        boolean[] rises = new boolean[slots.size() + 1];
        boolean[] falls = new boolean[slots.size() + 1];
        for (List<Entry> ofItem : entries) {
            for (Entry entry : ofItem) {
                for (int e = 0; e < entry.rows.length; e++) {
                    int row = entry.rows[e];
                    long before = e > 0 && entry.rows[e - 1] == row - 1 ? entry.places[e - 1] : 0;
                    long after = e + 1 < entry.rows.length && entry.rows[e + 1] == row + 1 ? entry.places[e + 1] : 0;
                    rises[row] |= entry.places[e] > before;
                    falls[row] |= entry.places[e] < before;
                    falls[row + 1] |= entry.places[e] > after;
                    rises[row + 1] |= entry.places[e] < after;
                }
            }
        }
        for (TreeMap<Integer, Integer> rows : rowsOfGear.values()) {
            int last = -1;
            for (int row : rows.values()) {
                if (!kept[row]) {
                    last = -1;
                    continue;
                }
                if (last >= 0 && last == row - 1 && !falls[row] && capacity(row) <= capacity(last)) {
                    kept[last] = false;
                    last = row;
                } else if (last == row - 1 && last >= 0 && !rises[row] && capacity(row) >= capacity(last)) {
                    kept[row] = false;
                    last = -1;
                } else {
                    last = row;
                }
            }
        }
    }

    private int capacity(int row) {
        return slots.get(row).capacity();
    }

    private List<Model> split() {
        int[] leader = new int[entries.size()];
        Map<Integer, Integer> itemOfRow = new HashMap<>();
        for (int i = 0; i < leader.length; i++) {
            leader[i] = i;
            for (Entry entry : entries.get(i)) {
                for (int row : entry.rows) {
                    Integer other = itemOfRow.putIfAbsent(row, i);
                    if (other != null) {
                        leader[find(leader, i)] = find(leader, other);
                    }
                }
            }
        }
        Map<Integer, List<Integer>> members = new TreeMap<>();
        for (int i = 0; i < leader.length; i++) {
            members.computeIfAbsent(find(leader, i), of -> new ArrayList<>()).add(i);
        }
        List<Model> parts = new ArrayList<>();
        for (List<Integer> of : members.values()) {
            parts.add(part(of));
        }
        parts.sort(Comparator.comparingInt(part -> part.routes.size()));
        return parts;
    }

    private static int find(int[] leader, int i) {
        int at = i;
        while (leader[at] != at) {
            leader[at] = leader[leader[at]];
            at = leader[at];
        }
        return at;
    }

    private Model part(List<Integer> members) {
        List<ChoiceItem> items = new ArrayList<>();
        List<CandidateRoute> routes = new ArrayList<>();
        List<Certificate.Outdone> struck = new ArrayList<>();
        List<Entry> left = new ArrayList<>();
        Map<Object, Integer> sameRoute = new HashMap<>();
        Map<Object, Integer> sameItem = new HashMap<>();
        int[] first = new int[members.size() + 1];
        int[] kind = new int[members.size()];
        for (int i = 0; i < kind.length; i++) {
            int member = members.get(i);
            items.add(problem.items().get(member));
            struck.addAll(outdone.get(member));
            TreeMap<Integer, Entry> inOrder = new TreeMap<>();
            for (Entry entry : entries.get(member)) {
                inOrder.put(sameRoute.computeIfAbsent(entry.sameness, key -> sameRoute.size()), entry);
            }
            kind[i] = sameItem.computeIfAbsent(List.copyOf(inOrder.keySet()), key -> sameItem.size());
            for (Entry entry : inOrder.values()) {
                routes.add(entry.route);
                left.add(entry);
            }
            first[i + 1] = routes.size();
        }
        int[] rows = left.stream()
                .flatMapToInt(entry -> Arrays.stream(entry.rows))
                .sorted()
                .distinct()
                .toArray();
        int[][] rowsOf = new int[routes.size()][];
        long[][] placesOf = new long[routes.size()][];
        for (int r = 0; r < rowsOf.length; r++) {
            rowsOf[r] = Arrays.stream(left.get(r).rows)
                    .map(row -> Arrays.binarySearch(rows, row))
                    .toArray();
            placesOf[r] = left.get(r).places;
        }
        List<Model.Slot> kept = Arrays.stream(rows).mapToObj(slots::get).toList();
        return new Model(items, routes, struck, kept, first, kind, rowsOf, placesOf);
    }
}
