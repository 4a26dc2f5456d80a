/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The steps of one leg of a run, as interpolants. Filled by one run, then only read. */
final class StepLog {

    private final int n;
    private final int m;
    private final List<Step> steps = new ArrayList<>();
    private double[] ledgerSoFar;

    /**
     * One accepted step.
     *
     * @param startS start time [s]
     * @param lengthS length [s]
     * @param state start, end and two bends of each state component, length 4n
     * @param ledgerStart ledger at the start, length m
     * @param ledger gain and two bends of each account, length 3m
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared; the arrays are written once and then only read
    record Step(double startS, double lengthS, double[] state, double[] ledgerStart, double[] ledger) {}

    StepLog(int n, int m) {
        this.n = n;
        this.m = m;
        this.ledgerSoFar = new double[m];
    }

    void add(double startS, double lengthS, RosenbrockStep step) {
        double[] state = new double[4 * n];
        double[] ledger = new double[3 * m];
        step.interpolant(state, ledger);
        steps.add(new Step(startS, lengthS, state, ledgerSoFar, ledger));
        double[] next = ledgerSoFar.clone();
        for (int k = 0; k < m; k++) {
            next[k] += ledger[k];
        }
        if (!(isFinite(state) && isFinite(ledger) && isFinite(next))) {
            throw step.failure(
                    startS,
                    "a step of " + lengthS + " s moves more heat than a number can hold",
                    "expected smaller flows or a shorter run");
        }
        ledgerSoFar = next;
    }

    private static boolean isFinite(double[] values) {
        double zero = 0;
        for (double value : values) {
            zero += 0 * value;
        }
        return zero == 0;
    }

    /** Adds every step that is accepted. */
    Stepping.Listener of(RosenbrockStep step) {
        return (startS, lengthS) -> {
            add(startS, lengthS, step);
            return true;
        };
    }

    int size() {
        return steps.size();
    }

    Step step(int index) {
        return steps.get(index);
    }

    /** Index of the step that holds a time; the last one at its end. */
    int find(double timeS) {
        int low = 0;
        int high = steps.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (steps.get(middle).startS() <= timeS) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    double stateComponent(Step step, int i, double timeS) {
        return statePart(step, i, Math.min(1, Math.max(0, (timeS - step.startS()) / step.lengthS())));
    }

    /** A component of the state at a part of a step, 0 to 1. */
    double statePart(Step step, int i, double theta) {
        double[] s = step.state();
        return (1 - theta) * s[i] + theta * (s[n + i] + (1 - theta) * (s[2 * n + i] + theta * s[3 * n + i]));
    }

    double ledgerComponent(Step step, int k, double timeS) {
        double theta = Math.min(1, Math.max(0, (timeS - step.startS()) / step.lengthS()));
        double[] g = step.ledger();
        return step.ledgerStart()[k] + theta * (g[k] + (1 - theta) * (g[m + k] + theta * g[2 * m + k]));
    }

    /** Parts of a step, 0 to 1, at which a component of the state turns from rising to falling or back; none to two. */
    double[] turns(Step step, int i) {
        double[] s = step.state();
        double[] turns = new double[2];
        int count = Turns.of(s[i], s[n + i], s[2 * n + i], s[3 * n + i], turns);
        return Arrays.copyOf(turns, count);
    }
}
