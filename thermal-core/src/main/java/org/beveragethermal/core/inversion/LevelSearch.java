/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.exception.TooManyEvaluationsException;

/**
 * Where a function of one variable, each value of which costs a run, meets a level: a scan for brackets, a root search in each. Where
 * three looks in a row come closer to the level and go away again, the turning point between them is searched, so that a function is
 * missed only if it meets the level more than twice within two steps of the scan. Confined to one search and one thread; the number of
 * evaluations is bounded.
 */
final class LevelSearch {

    private static final int TURN_EVALUATIONS = 14;
    private static final double GOLDEN = 0.381966011250105;
    private static final int ORDER = 5;
    /** Which way the function starts from an end of the range is looked at over this part of a step. */
    private static final double END_PART = 0.01;

    private final DoubleUnaryOperator function;
    private final double[] grid;
    private final int most;
    private final double accuracy;
    private final Map<Double, Double> known = new HashMap<>();
    private double widest;

    /**
     * A search.
     *
     * @param function finite in the whole range
     * @param low lower end
     * @param high upper end, above the lower
     * @param samples steps of the scan, at least 2
     * @param most evaluations at most, more than the scan takes
     * @param accuracy how closely a place is found
     */
    LevelSearch(DoubleUnaryOperator function, double low, double high, int samples, int most, double accuracy) {
        this.function = function;
        this.most = most;
        this.accuracy = accuracy;
        this.widest = accuracy;
        this.grid = new double[samples + 1];
        for (int i = 0; i <= samples; i++) {
            grid[i] = i == samples ? high : low + (high - low) * i / samples;
        }
    }

    double at(double x) {
        Double before = known.get(x);
        if (before != null) {
            return before;
        }
        if (known.size() >= most) {
            throw new TooManyEvaluationsException(most);
        }
        double value = function.applyAsDouble(x);
        known.put(x, value);
        return value;
    }

    int evaluations() {
        return known.size();
    }

    /** How closely places were found: the accuracy asked for, or the widest bracket that was left when evaluations ran out. */
    double accuracyReached() {
        return widest;
    }

    /** Places at which the level is met, ascending. */
    List<Double> roots(double level) {
        List<Double> roots = new ArrayList<>();
        // The scan comes first, so that refining never takes its evaluations away.
        for (double x : grid) {
            at(x);
        }
        for (int i = 0; i < grid.length; i++) {
            double here = at(grid[i]) - level;
            if (here == 0) {
                add(roots, grid[i]);
                continue;
            }
            if (i > 0 && (at(grid[i - 1]) - level) * here < 0) {
                add(roots, between(grid[i - 1], grid[i], level));
            }
            if (i > 0 && i < grid.length - 1) {
                turn(i, level, roots);
            }
        }
        turnAtEnd(grid[0], grid[1], level, roots);
        turnAtEnd(grid[grid.length - 1], grid[grid.length - 2], level, roots);
        roots.sort(null);
        return roots;
    }

    /** Two roots between neighbours of a look that comes closest to the level without reaching it. */
    private void turn(int i, double level, List<Double> roots) {
        double before = at(grid[i - 1]) - level;
        double here = at(grid[i]) - level;
        double after = at(grid[i + 1]) - level;
        boolean dip = Math.abs(here) <= Math.abs(before)
                && Math.abs(here) <= Math.abs(after)
                && here * before > 0
                && here * after > 0
                && (Math.abs(here) < Math.abs(before) || Math.abs(here) < Math.abs(after));
        if (!dip) {
            return;
        }
        aroundTurn(grid[i - 1], grid[i], grid[i + 1], level, roots);
    }

    /** Two roots within the first or the last step, if the function starts from an end towards the level and turns before the next look. */
    private void turnAtEnd(double end, double next, double level, List<Double> roots) {
        double here = at(end) - level;
        double beyond = at(next) - level;
        if (here * beyond <= 0 || Math.abs(here) > Math.abs(beyond) || known.size() >= most) {
            return;
        }
        double probe = end + END_PART * (next - end);
        double value = at(probe) - level;
        if (value * here <= 0) {
            add(roots, between(Math.min(end, probe), Math.max(end, probe), level));
            add(roots, between(Math.min(probe, next), Math.max(probe, next), level));
        } else if (Math.abs(value) < Math.abs(here)) {
            aroundTurn(Math.min(end, next), probe, Math.max(end, next), level, roots);
        }
    }

    /** Searches the turning point between three places, the middle one of which is nearest to the level, for where it is met. */
    private void aroundTurn(double low, double nearest, double high, double level, List<Double> roots) {
        double sign = at(nearest) - level;
        double left = low;
        double right = high;
        double middle = nearest;
        for (int n = 0; n < TURN_EVALUATIONS && right - left > accuracy && known.size() < most; n++) {
            boolean wideRight = right - middle > middle - left;
            double probe = wideRight ? middle + GOLDEN * (right - middle) : middle - GOLDEN * (middle - left);
            double value = at(probe) - level;
            if (value * sign <= 0) {
                add(roots, between(low, probe, level));
                add(roots, between(probe, high, level));
                return;
            }
            boolean better = Math.abs(value) < Math.abs(at(middle) - level);
            if (better && wideRight) {
                left = middle;
            } else if (better) {
                right = middle;
            } else if (wideRight) {
                right = probe;
            } else {
                left = probe;
            }
            middle = better ? probe : middle;
        }
    }

    private void add(List<Double> roots, double root) {
        if (roots.stream().noneMatch(other -> Math.abs(other - root) <= accuracy)) {
            roots.add(root);
        }
    }

    private double between(double low, double high, double level) {
        double atLow = at(low) - level;
        double atHigh = at(high) - level;
        if (atLow == 0 || atHigh == 0) {
            return atLow == 0 ? low : high;
        }
        // The solver looks at both ends anew; these are known and cost nothing.
        int left = most - known.size() + 2;
        try {
            return new BracketingNthOrderBrentSolver(accuracy, ORDER).solve(left, x -> at(x) - level, low, high);
        } catch (TooManyEvaluationsException spent) {
            widest = Math.max(widest, high - low);
            return low + (high - low) * atLow / (atLow - atHigh);
        }
    }

    /** Stretches, ascending, in which the function lies between two levels; without width where it only touches. */
    List<double[]> within(double lowLevel, double highLevel) {
        List<Double> cuts = new ArrayList<>(roots(lowLevel));
        if (highLevel > lowLevel) {
            roots(highLevel).forEach(root -> add(cuts, root));
        }
        double first = grid[0];
        double last = grid[grid.length - 1];
        add(cuts, first);
        add(cuts, last);
        cuts.sort(null);
        List<double[]> stretches = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            boolean follows = i > 0 && inside(cuts.get(i - 1), cuts.get(i), lowLevel, highLevel);
            if (follows) {
                stretches.get(stretches.size() - 1)[1] = cuts.get(i);
            } else if (isMet(cuts.get(i), lowLevel, highLevel) || opens(cuts, i, lowLevel, highLevel)) {
                stretches.add(new double[] {cuts.get(i), cuts.get(i)});
            }
        }
        return stretches;
    }

    private boolean opens(List<Double> cuts, int i, double lowLevel, double highLevel) {
        return i + 1 < cuts.size() && inside(cuts.get(i), cuts.get(i + 1), lowLevel, highLevel);
    }

    /** Cuts other than the ends of the range are places where a level is met. */
    private boolean isMet(double cut, double lowLevel, double highLevel) {
        boolean end = cut == grid[0] || cut == grid[grid.length - 1];
        double value = end ? at(cut) : lowLevel;
        return value >= lowLevel && value <= highLevel;
    }

    /** Between two neighbouring cuts the function is on one side of both levels; a look of the scan between them tells which. */
    private boolean inside(double from, double to, double lowLevel, double highLevel) {
        double probe = 0.5 * (from + to);
        for (double x : grid) {
            if (x > from + accuracy && x < to - accuracy) {
                probe = x;
                break;
            }
        }
        double value = known.size() < most || known.containsKey(probe) ? at(probe) : fromScan(probe);
        return value >= lowLevel && value <= highLevel;
    }

    /** What straight lines between the looks of the scan say, for when no evaluation is left. */
    private double fromScan(double x) {
        int i = 1;
        while (i < grid.length - 1 && grid[i] < x) {
            i++;
        }
        double part = (x - grid[i - 1]) / (grid[i] - grid[i - 1]);
        return at(grid[i - 1]) + part * (at(grid[i]) - at(grid[i - 1]));
    }
}
