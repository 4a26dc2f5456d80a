/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.network.StoreState;

/**
 * What happened in a run: states, temperatures and ledger at any time from start to end.
 *
 * <p>Immutable; queries write nothing, so it may be shared by threads.
 *
 * <p>Theory manual, equation (7.4).
 */
public final class Trajectory {

    private static final double EVENT_FRACTION = 1e-6;
    /** Sensitivities are carried across changes of state by differences of this part of a unit of their parameter. */
    private static final double SMALL_PART = 1e-5;

    private static final int EVENT_SAMPLES = 4;
    private static final int EVENT_EVALUATIONS = 200;
    private static final double GOLDEN = 0.5 * (Math.sqrt(5) - 1);
    /** Narrows a dip to about a millionth of where it was seen. */
    private static final int DIP_ITERATIONS = 30;

    private final List<Leg> legs;
    private final int stepsTried;
    private final Map<String, Double> multipliers;

    /** One stretch of time with unchanged connections. */
    @SuppressWarnings("ArrayRecordComponent") // never compared; the arrays are written once and then only read
    record Leg(
            PreparedNetwork network,
            double startS,
            double endS,
            List<StateChange> changes,
            List<LedgerEntry> brought,
            double[] before,
            double[] startState,
            StepLog log,
            double[] endState) {

        /** What the changes at the start of the leg make of a small change of the state before it; mixing is linear. */
        double[] carried(double[] small) {
            if (changes.stream().allMatch(Mixing.class::isInstance)) {
                return Integration.changed(network, small, changes).values();
            }
            double[] above = before.clone();
            double[] below = before.clone();
            for (int i = 0; i < small.length; i++) {
                above[i] += SMALL_PART * small[i];
                below[i] -= SMALL_PART * small[i];
            }
            double[] result = Integration.changed(network, above, changes).values();
            double[] other = Integration.changed(network, below, changes).values();
            for (int i = 0; i < result.length; i++) {
                result[i] = (result[i] - other[i]) / (2 * SMALL_PART);
            }
            return result;
        }
    }

    Trajectory(List<Leg> legs, int stepsTried, Map<String, Double> multipliers) {
        this.legs = List.copyOf(legs);
        this.stepsTried = stepsTried;
        this.multipliers = Map.copyOf(multipliers);
    }

    List<Leg> legs() {
        return legs;
    }

    Map<String, Double> multipliers() {
        return multipliers;
    }

    /**
     * End of the run.
     *
     * @return time [s]; the run starts at 0
     */
    public double endS() {
        return legs.get(legs.size() - 1).endS();
    }

    /**
     * Steps that were accepted.
     *
     * @return number of steps
     */
    public int steps() {
        return legs.stream().mapToInt(leg -> leg.log().size()).sum();
    }

    /**
     * Steps that were tried, accepted or not.
     *
     * @return number of steps
     */
    public int stepsTried() {
        return stepsTried;
    }

    /**
     * Temperature of a node.
     *
     * @param node a node of the network
     * @param timeS time [s], 0 to {@link #endS}
     * @return temperature [K]
     * @throws IllegalArgumentException if the time or the node is not in the run
     */
    public double temperatureK(Node node, double timeS) {
        return storeState(node, leg(timeS), timeS).temperatureK;
    }

    /**
     * Amount of a node.
     *
     * @param node a node of the network
     * @param amount index of the amount
     * @param timeS time [s], 0 to {@link #endS}
     * @return the amount; never below 0
     * @throws IllegalArgumentException if the time or the node is not in the run or the node has no such amount
     */
    public double amount(Node node, int amount, double timeS) {
        Leg leg = leg(timeS);
        int offset = leg.network().offset(node);
        if (amount < 0 || amount >= node.store().amountCount()) {
            throw new IllegalArgumentException("amount " + amount + " of " + node + ": it has "
                    + node.store().amountCount());
        }
        return Math.max(0, component(leg, offset + 1 + amount, timeS));
    }

    /**
     * Enthalpy of a node.
     *
     * @param node a node of the network
     * @param timeS time [s], 0 to {@link #endS}
     * @return enthalpy [J] above liquid water at 0 °C
     * @throws IllegalArgumentException if the time or the node is not in the run
     */
    public double enthalpyJ(Node node, double timeS) {
        Leg leg = leg(timeS);
        return component(leg, leg.network().offset(node), timeS);
    }

    /**
     * The first time at which an event holds, located to 1e-6 of the step.
     *
     * <p>It holds at once if it holds at the beginning of the search. Crossings cannot be missed where the reading follows one
     * part of the node's state, as temperatures of nodes without amounts and amounts do; {@link RunEvent} that follow more are
     * looked at in at least four parts of each step.
     *
     * @param event the event
     * @param fromS where to begin [s], 0 to {@link #endS}
     * @return when it first holds, or that it never does up to the end of the run
     * @throws IllegalArgumentException if the time or the node is not in the run
     */
    public EventAnswer first(RunEvent event, double fromS) {
        leg(fromS);
        return EventSearch.of(legs, event, fromS, true).answer();
    }

    /**
     * All times at which an event comes to hold, from its beginning; one that is passed either way counts every passage.
     *
     * @param event the event
     * @param fromS where to begin [s], 0 to {@link #endS}
     * @return ascending times [s], the first {@code fromS} itself if the event holds there; empty if it never does
     * @throws IllegalArgumentException if the time or the node is not in the run
     */
    public double[] times(RunEvent event, double fromS) {
        leg(fromS);
        return EventSearch.of(legs, event, fromS, false).times().stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    /**
     * The first time at which a function of the run crosses zero, located to 1e-6 of the step.
     *
     * <p>Each step is looked at in four parts. Where three looks in a row come closer to zero and go away again, the turning
     * point between them is searched, so that a function is missed only if it crosses more than twice within two parts. {@link
     * #first(RunEvent, double)} is surer for readings of a single node.
     *
     * @param fromS where to begin [s]
     * @param function function of time [s], evaluated between {@code fromS} and the end
     * @return the time [s], or empty if it never crosses
     * @throws IllegalArgumentException if the time is not in the run
     */
    public OptionalDouble firstCrossing(double fromS, DoubleUnaryOperator function) {
        leg(fromS);
        double first = fromS;
        double valueFirst = Double.NaN;
        double before = fromS;
        double valueBefore = function.applyAsDouble(before);
        if (valueBefore == 0) {
            return OptionalDouble.of(before);
        }
        for (Leg leg : legs) {
            for (int i = 0; i < leg.log().size(); i++) {
                StepLog.Step step = leg.log().step(i);
                for (int part = 1; part <= EVENT_SAMPLES; part++) {
                    double time = Math.min(endS(), step.startS() + step.lengthS() * part / EVENT_SAMPLES);
                    if (time <= before) {
                        continue;
                    }
                    double value = function.applyAsDouble(time);
                    boolean dip = Math.abs(valueBefore) < Math.abs(valueFirst)
                            && Math.abs(valueBefore) < Math.abs(value)
                            && value * valueBefore > 0;
                    double across = dip ? across(function, first, time, valueBefore) : Double.NaN;
                    if (!Double.isNaN(across)) {
                        return OptionalDouble.of(located(function, first, across, step.lengthS()));
                    }
                    if (value == 0) {
                        return OptionalDouble.of(time);
                    }
                    if (value * valueBefore < 0) {
                        return OptionalDouble.of(located(function, before, time, step.lengthS()));
                    }
                    first = before;
                    valueFirst = valueBefore;
                    before = time;
                    valueBefore = value;
                }
            }
        }
        return OptionalDouble.empty();
    }

    /**
     * When a function of the run is largest.
     *
     * <p>Each step is looked at in four parts; around the largest look the turning point is then located to about a millionth of those
     * parts. A turn that lies wholly between two looks is missed.
     *
     * @param fromS where to begin [s]
     * @param function function of time [s], evaluated between {@code fromS} and the end
     * @return the time [s], the first of several
     * @throws IllegalArgumentException if the time is not in the run
     */
    public double timeOfLargest(double fromS, DoubleUnaryOperator function) {
        leg(fromS);
        double before = fromS;
        double best = fromS;
        double largest = function.applyAsDouble(fromS);
        double low = fromS;
        double high = fromS;
        boolean follows = true;
        for (Leg leg : legs) {
            for (int i = 0; i < leg.log().size(); i++) {
                StepLog.Step step = leg.log().step(i);
                for (int part = 1; part <= EVENT_SAMPLES; part++) {
                    double time = Math.min(endS(), step.startS() + step.lengthS() * part / EVENT_SAMPLES);
                    if (time <= before) {
                        continue;
                    }
                    double value = function.applyAsDouble(time);
                    high = follows ? time : high;
                    follows = value > largest;
                    if (follows) {
                        largest = value;
                        best = time;
                        low = before;
                        high = time;
                    }
                    before = time;
                }
            }
        }
        double refined = peak(function, low, high);
        return function.applyAsDouble(refined) > largest ? refined : best;
    }

    /** Where a function with one peak between two times is largest, by golden section. */
    private static double peak(DoubleUnaryOperator function, double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < DIP_ITERATIONS; i++) {
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            if (function.applyAsDouble(left) < function.applyAsDouble(right)) {
                low = left;
            } else {
                high = right;
            }
        }
        return 0.5 * (low + high);
    }

    private static double located(DoubleUnaryOperator function, double from, double to, double lengthS) {
        if (function.applyAsDouble(to) == 0) {
            return to;
        }
        return new BracketingNthOrderBrentSolver(EVENT_FRACTION * lengthS, 5)
                .solve(EVENT_EVALUATIONS, function::applyAsDouble, from, to);
    }

    /** A time at which a function of one sign at both ends has the other sign or is 0, by golden section; NaN if none is found. */
    private static double across(DoubleUnaryOperator function, double from, double to, double sign) {
        double low = from;
        double high = to;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double valueLeft = Math.signum(sign) * function.applyAsDouble(left);
        double valueRight = Math.signum(sign) * function.applyAsDouble(right);
        for (int i = 0; i < DIP_ITERATIONS; i++) {
            if (valueLeft <= 0 || valueRight <= 0) {
                return valueLeft <= 0 ? left : right;
            }
            if (valueLeft < valueRight) {
                high = right;
                right = left;
                valueRight = valueLeft;
                left = high - GOLDEN * (high - low);
                valueLeft = Math.signum(sign) * function.applyAsDouble(left);
            } else {
                low = left;
                left = right;
                valueLeft = valueRight;
                right = low + GOLDEN * (high - low);
                valueRight = Math.signum(sign) * function.applyAsDouble(right);
            }
        }
        return Double.NaN;
    }

    /**
     * A path evaluated at the state of a time, with the multipliers of the run, for explaining it.
     *
     * @param path name of a path that is active then
     * @param timeS time [s], 0 to {@link #endS}
     * @return the path's evaluation, a private copy
     * @throws IllegalArgumentException if the time is not in the run or no such path is active
     */
    public PathEvaluation evaluate(String path, double timeS) {
        Leg leg = leg(timeS);
        Network network = leg.network().network();
        for (int p = 0; p < network.paths().size(); p++) {
            if (network.paths().get(p).name().equals(path)) {
                PreparedNetwork.Workspace workspace = leg.network().newWorkspace(multipliers);
                workspace.evaluate(timeS, state(leg, timeS), true);
                return workspace.evaluation(p);
            }
        }
        throw new IllegalArgumentException("path " + path + ": not active at " + timeS + " s");
    }

    /**
     * The paths that are active at a time.
     *
     * @param timeS time [s], 0 to {@link #endS}
     * @return active paths
     * @throws IllegalArgumentException if the time is not in the run
     */
    public List<Path> paths(double timeS) {
        return leg(timeS).network().network().paths();
    }

    /**
     * The heat balance from the start up to a time.
     *
     * @param timeS time [s], 0 to {@link #endS}
     * @return accounts and closure
     * @throws IllegalArgumentException if the time is not in the run
     */
    public Ledger ledger(double timeS) {
        Leg last = leg(timeS);
        record Key(String path, String mechanism, String from, String to) {}
        Map<Key, Double> sums = new LinkedHashMap<>();
        double[] balance = new double[last.network().stateSize()];
        double total = 0;
        double imbalance = 0;
        Set<String> names = new HashSet<>();
        double[] before = legs.get(0).startState();
        for (Leg leg : legs) {
            if (leg.startS() > last.startS()) {
                break;
            }
            // What is mixed between legs moves enthalpy from node to node outside any path; what comes from outside is
            // booked.
            for (int i = 0; i < balance.length; i++) {
                balance[i] += leg.startState()[i] - before[i];
            }
            double unbooked = 0;
            for (Node node : leg.network().network().nodes()) {
                int i = leg.network().offset(node);
                unbooked += leg.startState()[i] - before[i];
                names.add(node.name());
            }
            for (LedgerEntry entry : leg.brought()) {
                sums.merge(
                        new Key(entry.path(), entry.mechanism(), entry.from(), entry.to()), entry.heatJ(), Double::sum);
                total += Math.abs(entry.heatJ());
                unbooked -= names.contains(entry.to()) ? entry.heatJ() : 0;
                unbooked += names.contains(entry.from()) ? entry.heatJ() : 0;
            }
            imbalance = Math.max(imbalance, Math.abs(unbooked));
            before = leg.endState();
            double until = Math.min(timeS, leg.endS());
            int account = 0;
            double[] gains = new double[leg.network().ledgerSize()];
            StepLog.Step step = leg.log().step(leg.log().find(until));
            for (Path path : leg.network().network().paths()) {
                for (Account a : path.accounts()) {
                    gains[account] = leg.log().ledgerComponent(step, account, until);
                    if (a.heat()) {
                        String from = path.ends().get(a.entries().get(0).end()).name();
                        String to = path.ends().get(a.entries().get(1).end()).name();
                        sums.merge(new Key(path.name(), a.mechanism(), from, to), gains[account], Double::sum);
                        total += Math.abs(gains[account]);
                    }
                    account++;
                }
            }
            double[] change = new double[balance.length];
            leg.network().newWorkspace(Map.of()).rates(gains, change);
            for (int i = 0; i < balance.length; i++) {
                balance[i] += change[i];
            }
        }
        for (Node node : last.network().network().nodes()) {
            int i = last.network().offset(node);
            double gained = component(last, i, timeS) - legs.get(0).startState()[i];
            imbalance = Math.max(imbalance, Math.abs(gained - balance[i]));
        }
        List<LedgerEntry> entries = new ArrayList<>();
        sums.forEach(
                (key, heat) -> entries.add(new LedgerEntry(key.path(), key.mechanism(), key.from(), key.to(), heat)));
        return new Ledger(entries, imbalance, total);
    }

    private Leg leg(double timeS) {
        if (!(timeS >= 0 && timeS <= endS())) {
            throw new IllegalArgumentException("time " + timeS + " s: expected 0 s to " + endS() + " s");
        }
        for (int i = legs.size() - 1; i > 0; i--) {
            if (legs.get(i).startS() <= timeS) {
                return legs.get(i);
            }
        }
        return legs.get(0);
    }

    private static double component(Leg leg, int i, double timeS) {
        return leg.log().stateComponent(leg.log().step(leg.log().find(timeS)), i, timeS);
    }

    private static double[] state(Leg leg, double timeS) {
        double[] state = new double[leg.network().stateSize()];
        StepLog.Step step = leg.log().step(leg.log().find(timeS));
        for (int i = 0; i < state.length; i++) {
            state[i] = leg.log().stateComponent(step, i, timeS);
        }
        return state;
    }

    StoreState storeState(Node node, double timeS) {
        return storeState(node, leg(timeS), timeS);
    }

    private static StoreState storeState(Node node, Leg leg, double timeS) {
        int offset = leg.network().offset(node);
        double[] amounts = new double[node.store().amountCount()];
        for (int k = 0; k < amounts.length; k++) {
            amounts[k] = component(leg, offset + 1 + k, timeS);
        }
        StoreState out = new StoreState(amounts.length);
        node.store().evaluate(component(leg, offset, timeS), amounts, 0, out);
        return out;
    }
}
