/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Looks for events in the dense output of a run.
 *
 * <p>Within a step every part of the state is a cubic. Cut where those that decide turn round, a step falls into pieces on which
 * a reading that follows one part of the state only rises or only falls: no crossing can hide. A reading that follows several
 * (the temperature of a node with amounts) is cut where each of them turns and in four besides.
 *
 * <p>Theory manual, equation (7.5).
 */
final class EventSearch {

    /** Times are located to this part of the step. */
    private static final double TIME_PART = 1e-6;

    private static final int EVALUATIONS = 200;
    private static final int SAMPLES = 4;

    private final RunEvent event;
    private final List<Double> found = new ArrayList<>();
    private double closest = Double.NaN;
    private double closestTimeS = Double.NaN;

    private EventSearch(RunEvent event) {
        this.event = event;
    }

    /** Looks through a run from a time on, to the first time the event holds or through to the end. */
    static EventSearch of(List<Trajectory.Leg> legs, RunEvent event, double fromS, boolean firstOnly) {
        EventSearch search = new EventSearch(event);
        search.walk(legs, fromS, firstOnly);
        return search;
    }

    List<Double> times() {
        return found;
    }

    EventAnswer answer() {
        return found.isEmpty()
                ? new EventAnswer.NeverReached(closest, closestTimeS)
                : new EventAnswer.Reached(found.get(0));
    }

    private void walk(List<Trajectory.Leg> legs, double fromS, boolean firstOnly) {
        boolean begun = false;
        boolean held = false;
        for (Trajectory.Leg leg : legs) {
            for (int i = 0; i < leg.log().size(); i++) {
                StepLog.Step step = leg.log().step(i);
                double end = i + 1 < leg.log().size() ? leg.log().step(i + 1).startS() : leg.endS();
                boolean atEnd = end == fromS && end == legs.get(legs.size() - 1).endS();
                if (end <= fromS && !atEnd) {
                    continue;
                }
                DoubleUnaryOperator excess = t -> event.excess(value(leg, step, t));
                double before = Math.max(fromS, step.startS());
                double excessBefore = look(leg, step, before);
                boolean holds = excessBefore <= 0;
                if (begun ? happens(held, holds) : (holds && !event.eitherWay()) || excessBefore == 0) {
                    found.add(before);
                }
                begun = true;
                held = holds;
                for (double time : cuts(leg, step, before, end)) {
                    if (firstOnly && !found.isEmpty()) {
                        return;
                    }
                    double excessHere = look(leg, step, time);
                    holds = excessHere <= 0;
                    if (happens(held, holds)) {
                        found.add(located(excess, before, excessBefore, time, excessHere, step.lengthS()));
                    }
                    before = time;
                    excessBefore = excessHere;
                    held = holds;
                }
            }
        }
    }

    private boolean happens(boolean held, boolean holds) {
        return held != holds && (holds || event.eitherWay());
    }

    private static double located(
            DoubleUnaryOperator excess, double from, double excessFrom, double to, double excessTo, double lengthS) {
        if (excessFrom == 0) {
            return from;
        }
        return excessTo == 0
                ? to
                : new BracketingNthOrderBrentSolver(TIME_PART * lengthS, 5)
                        .solve(EVALUATIONS, excess::applyAsDouble, from, to);
    }

    /** How far the event is from holding; remembers the value that came closest. */
    private double look(Trajectory.Leg leg, StepLog.Step step, double timeS) {
        double value = value(leg, step, timeS);
        double threshold = event.threshold();
        if (!(Math.abs(value - threshold) >= Math.abs(closest - threshold))) {
            closest = value;
            closestTimeS = timeS;
        }
        return event.excess(value);
    }

    private double value(Trajectory.Leg leg, StepLog.Step step, double timeS) {
        int offset = leg.network().offset(event.node());
        double[] amounts = new double[event.node().store().amountCount()];
        for (int k = 0; k < amounts.length; k++) {
            amounts[k] = leg.log().stateComponent(step, offset + 1 + k, timeS);
        }
        return event.value(leg.log().stateComponent(step, offset, timeS), amounts);
    }

    /** Ends of the pieces after the first moment. */
    private NavigableSet<Double> cuts(Trajectory.Leg leg, StepLog.Step step, double from, double to) {
        TreeSet<Double> cuts = new TreeSet<>();
        int offset = leg.network().offset(event.node());
        int parts = 1 + event.node().store().amountCount();
        for (int k = 0; k < parts; k++) {
            if (event.component() < 0 || event.component() == k) {
                for (double theta : leg.log().turns(step, offset + k)) {
                    cuts.add(step.startS() + theta * step.lengthS());
                }
            }
        }
        if (event.component() < 0) {
            for (int i = 1; i < SAMPLES; i++) {
                cuts.add(step.startS() + step.lengthS() * i / SAMPLES);
            }
        }
        TreeSet<Double> inside = new TreeSet<>(cuts.tailSet(from, false).headSet(to, false));
        if (to > from) {
            inside.add(to);
        }
        return inside;
    }
}
