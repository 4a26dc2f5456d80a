/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * The choice with fractions of routes allowed, solved by the dual simplex method from the choice of the cheapest routes; limits join only when
 * they are broken. Its multipliers are the best weights there are for a {@link Cut}. Floating point is harmless here: a cut from inexact
 * multipliers is valid all the same, only less sharp.
 *
 * <p>Theory manual, equation (9.2).
 */
final class Relaxation {
    private static final double TOLERANCE = 1e-8;
    /** A row broken by less than this may be so by rounding. */
    private static final double SURELY = 1e-6;
    /** The most numbers in the tableau: 160 MB. A larger one is given up for the multipliers reached by then. */
    private static final long MOST_CELLS = 20_000_000;

    private static final double PIVOT = 1e-8;

    private final Model model;
    private final BitSet alive;
    private final int level;
    private final long[] costLimits;
    private final Budget budget;

    /** Columns: routes by number, slacks of row q as {@code routes + q}. */
    private final int[] column;

    private final Row reduced;
    private double objective;
    private final List<Row> tableau = new ArrayList<>();
    private long cells;
    private double[] value = new double[64];
    private int[] basic = new int[64];
    private final double[] scale;
    private final double costScale;

    /** A row of the tableau; outside its window, at first the columns of one item, it is 0. */
    private final class Row {
        int from;
        double[] at;

        Row(int from, int to) {
            this.from = from;
            this.at = new double[to - from];
            cells += at.length;
        }

        double get(int j) {
            return j < from || j >= from + at.length ? 0 : at[j - from];
        }

        void set(int j, double value) {
            at[j - from] = value;
        }

        /** Subtracts another row so many times. */
        void subtract(Row other, double factor) {
            if (other.from < from || other.from + other.at.length > from + at.length) {
                double[] wide = new double[column.length];
                System.arraycopy(at, 0, wide, from, at.length);
                cells += wide.length - at.length;
                from = 0;
                at = wide;
            }
            int shift = other.from - from;
            for (int j = 0; j < other.at.length; j++) {
                at[j + shift] -= factor * other.at[j];
            }
        }

        void divide(double by) {
            for (int j = 0; j < at.length; j++) {
                at[j] /= by;
            }
        }
    }

    /** How a relaxation ended. */
    enum End {
        /** At the least cost. */
        LEAST,
        /** At proof that the limits cannot be kept. */
        BROKEN,
        /** Early: by the budget, or because the cost is beyond the limit of the level. */
        EARLY
    }

    End end = End.EARLY;
    /** For each row, how much relief of it would save; after {@link End#BROKEN} the weights of the contradiction. */
    final double[] multiplier;
    /** For each route, how much of it is taken. */
    final double[] taken;

    private Relaxation(Model model, BitSet alive, int level, long[] costLimits, Budget budget) {
        this.model = model;
        this.alive = alive;
        this.level = level;
        this.costLimits = costLimits;
        this.budget = budget;
        this.multiplier = new double[model.capacities() + model.levels()];
        this.taken = new double[model.routes.size()];
        this.scale = new double[multiplier.length];
        this.costScale = (double) Math.max(1, spread(level));
        this.column = new int[alive.cardinality() - model.items()];
        this.reduced = new Row(0, column.length);
    }

    /** Solves for a level, the levels before it limited; no item may be without routes. */
    static Relaxation solve(Model model, BitSet alive, int level, long[] costLimits, Budget budget) {
        Relaxation relaxation = new Relaxation(model, alive, level, costLimits, budget);
        relaxation.start();
        relaxation.run();
        return relaxation;
    }

    private long spread(int ofLevel) {
        long most = 0;
        for (int i = 0; i < model.items(); i++) {
            long low = Long.MAX_VALUE;
            long high = 0;
            for (int r = next(model.first[i]); r < model.first[i + 1]; r = next(r + 1)) {
                low = Math.min(low, model.costs[ofLevel][r]);
                high = Math.max(high, model.costs[ofLevel][r]);
            }
            most = Math.max(most, high - low);
        }
        return most;
    }

    private int next(int route) {
        int next = alive.nextSetBit(route);
        return next < 0 ? Integer.MAX_VALUE - 1 : next;
    }

    /** Costs raised by unequal trifles, in all less than a fifth of a unit, so that ties do not stall the method. */
    private double cost(int route) {
        long mixed = (route + 1L) * 0x9E3779B97F4A7C15L;
        double trifle = (mixed >>> 11) * 0x1p-53 * 0.2 / model.items();
        return (model.costs[level][route] + trifle) / costScale;
    }

    private void start() {
        int columns = 0;
        for (int i = 0; i < model.items(); i++) {
            int base = next(model.first[i]);
            int left = 0;
            for (int r = base; r < model.first[i + 1]; r = next(r + 1)) {
                base = cost(r) < cost(base) ? r : base;
                left++;
            }
            objective += cost(base);
            if (left == 1) {
                taken[base] = 1;
                continue;
            }
            int from = columns;
            for (int r = next(model.first[i]); r < model.first[i + 1]; r = next(r + 1)) {
                if (r != base) {
                    reduced.set(columns, cost(r) - cost(base));
                    column[columns++] = r;
                }
            }
            Row row = new Row(from, columns);
            Arrays.fill(row.at, 1);
            addRow(row, 1, base);
        }
    }

    private void addRow(Row row, double of, int variable) {
        if (tableau.size() == basic.length) {
            value = Arrays.copyOf(value, 2 * basic.length);
            basic = Arrays.copyOf(basic, 2 * basic.length);
        }
        value[tableau.size()] = of;
        basic[tableau.size()] = variable;
        tableau.add(row);
    }

    private void run() {
        double beyond = limit();
        int patience = 1000 + 20 * (column.length + multiplier.length);
        while (patience-- > 0 && objective <= beyond && cells <= MOST_CELLS && !budget.spent()) {
            int leaving = mostNegative();
            if (leaving < 0) {
                readTaken();
                leaving = joinBrokenRow();
                if (leaving < 0) {
                    end = End.LEAST;
                    break;
                }
            }
            int entering = entering(tableau.get(leaving));
            if (entering < 0 && value[leaving] > -SURELY) {
                break;
            }
            if (entering < 0) {
                end = End.BROKEN;
                readContradiction(leaving);
                return;
            }
            pivot(leaving, entering);
        }
        readMultipliers();
    }

    private double limit() {
        if (costLimits[level] == Long.MAX_VALUE) {
            return Double.POSITIVE_INFINITY;
        }
        return (costLimits[level] + 0.3) / costScale * (1 + 1e-12);
    }

    private int mostNegative() {
        int most = -1;
        for (int p = 0; p < tableau.size(); p++) {
            if (value[p] < -TOLERANCE && (most < 0 || value[p] < value[most])) {
                most = p;
            }
        }
        return most;
    }

    private int entering(Row row) {
        int best = -1;
        double bestBy = 0;
        double bestRatio = Double.POSITIVE_INFINITY;
        for (int j = row.from; j < row.from + row.at.length; j++) {
            double by = row.get(j);
            if (by < -PIVOT) {
                double ratio = reduced.get(j) / -by;
                if (ratio < bestRatio - 1e-13 || (ratio <= bestRatio && by < bestBy)) {
                    best = j;
                    bestBy = by;
                    bestRatio = ratio;
                }
            }
        }
        return best;
    }

    private void pivot(int p, int c) {
        Row pivotRow = tableau.get(p);
        double divisor = pivotRow.get(c);
        pivotRow.divide(divisor);
        pivotRow.set(c, 1 / divisor);
        value[p] /= divisor;
        for (int i = 0; i < tableau.size(); i++) {
            Row row = tableau.get(i);
            double factor = row.get(c);
            if (i != p && factor != 0) {
                row.set(c, 0);
                row.subtract(pivotRow, factor);
                value[i] -= factor * value[p];
            }
        }
        double cost = reduced.get(c);
        reduced.set(c, 0);
        reduced.subtract(pivotRow, cost);
        objective += cost * value[p];
        for (int j = 0; j < reduced.at.length; j++) {
            reduced.at[j] = Math.max(0, reduced.at[j]);
        }
        int left = basic[p];
        basic[p] = column[c];
        column[c] = left;
        if (basic[p] >= model.routes.size()) {
            removeRow(p);
        }
    }

    /** A row whose slack has become basic is kept by itself. */
    private void removeRow(int p) {
        int last = tableau.size() - 1;
        cells -= tableau.get(p).at.length;
        tableau.set(p, tableau.get(last));
        value[p] = value[last];
        basic[p] = basic[last];
        tableau.remove(last);
    }

    private void readTaken() {
        for (int variable : column) {
            if (variable < model.routes.size()) {
                taken[variable] = 0;
            }
        }
        for (int p = 0; p < tableau.size(); p++) {
            taken[basic[p]] = Math.max(0, value[p]);
        }
    }

    /** Adds the row that is broken most, by its own scale; its place in the tableau, or -1 if none is. */
    private int joinBrokenRow() {
        double[] use = new double[multiplier.length];
        double[] most = new double[multiplier.length];
        for (int r = alive.nextSetBit(0); r >= 0; r = alive.nextSetBit(r + 1)) {
            for (int e = 0; e < model.rows[r].length; e++) {
                int q = model.rows[r][e];
                use[q] += model.places[r][e] * taken[r];
                most[q] = Math.max(most[q], (double) model.places[r][e]);
            }
        }
        int worst = -1;
        double worstBy = 1e-7;
        for (int q = 0; q < model.capacities(); q++) {
            double by = most[q] == 0 ? 0 : (use[q] - model.slots.get(q).capacity()) / most[q];
            if (by > worstBy) {
                worstBy = by;
                worst = q;
            }
            scale[q] = Math.max(1, most[q]);
        }
        for (int k = 0; k < level; k++) {
            int q = model.capacities() + k;
            scale[q] = (double) Math.max(1, spread(k));
            double by = levelExcess(k) / scale[q];
            if (by > worstBy) {
                worstBy = by;
                worst = q;
            }
        }
        return worst < 0 ? -1 : join(worst);
    }

    private double levelExcess(int k) {
        double sum = (double) -costLimits[k];
        for (int r = alive.nextSetBit(0); r >= 0; r = alive.nextSetBit(r + 1)) {
            sum += model.costs[k][r] * taken[r];
        }
        return sum;
    }

    private double coefficient(int route, int row) {
        if (row >= model.capacities()) {
            return (double) model.costs[row - model.capacities()][route];
        }
        int at = Arrays.binarySearch(model.rows[route], row);
        return at < 0 ? 0 : (double) model.places[route][at];
    }

    private int join(int q) {
        double limit =
                q < model.capacities() ? model.slots.get(q).capacity() : (double) costLimits[q - model.capacities()];
        Row row = new Row(0, column.length);
        for (int j = 0; j < column.length; j++) {
            row.set(j, column[j] < model.routes.size() ? coefficient(column[j], q) : 0);
        }
        double left = limit;
        for (int i = 0; i < model.items(); i++) {
            int only = next(model.first[i]);
            if (next(only + 1) >= model.first[i + 1]) {
                left -= coefficient(only, q);
            }
        }
        for (int p = 0; p < tableau.size(); p++) {
            double factor = coefficient(basic[p], q);
            if (factor != 0) {
                row.subtract(tableau.get(p), factor);
                left -= factor * value[p];
            }
        }
        row.divide(scale[q]);
        addRow(row, left / scale[q], model.routes.size() + q);
        return tableau.size() - 1;
    }

    private void readMultipliers() {
        for (int j = 0; j < column.length; j++) {
            int q = column[j] - model.routes.size();
            if (q >= 0) {
                multiplier[q] = Math.max(0, reduced.get(j)) * costScale / scale[q];
            }
        }
    }

    private void readContradiction(int p) {
        Row row = tableau.get(p);
        for (int j = 0; j < column.length; j++) {
            int q = column[j] - model.routes.size();
            if (q >= 0) {
                multiplier[q] = Math.max(0, row.get(j)) / scale[q];
            }
        }
        int q = basic[p] - model.routes.size();
        if (q >= 0) {
            multiplier[q] = 1 / scale[q];
        }
    }
}
