/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.beveragethermal.core.network.PreparedNetwork;
import org.jspecify.annotations.Nullable;

/** One run of the solver: walks through the phases and collects their steps. */
final class Integration {

    private final Map<String, Double> multipliers;
    private final @Nullable Trajectory pattern;
    private final Method method;
    private final Stepping stepping;

    Integration(Map<String, Double> multipliers, @Nullable Trajectory pattern, Method method, Stepping stepping) {
        this.multipliers = multipliers;
        this.pattern = pattern;
        this.method = method;
        this.stepping = stepping;
    }

    Trajectory run(List<Phase> phases, double endS) {
        stepping.restart(endS);
        List<Trajectory.Leg> legs = new ArrayList<>();
        PreparedNetwork network = phases.get(0).network().prepare();
        double[] state = network.initialState();
        for (int i = 0; i < phases.size() && phases.get(i).startS() < endS; i++) {
            double legEnd =
                    i + 1 < phases.size() ? Math.min(endS, phases.get(i + 1).startS()) : endS;
            network = i == 0 ? network : phases.get(i).network().prepare();
            ChangedState start = changed(network, state, phases.get(i).changes());
            takeGiven(i);
            Trajectory.Leg leg = integrate(network, phases.get(i), legEnd, state, start);
            legs.add(leg);
            state = leg.endState();
        }
        return new Trajectory(legs, stepping.tried(), multipliers);
    }

    private void takeGiven(int leg) {
        if (pattern != null) {
            if (leg >= pattern.legs().size()) {
                throw new SolverException(pattern.endS(), "", "the given steps are those of fewer phases", null);
            }
            StepLog log = pattern.legs().get(leg).log();
            double[] given = new double[log.size()];
            Arrays.setAll(given, i -> log.step(i).lengthS());
            stepping.follow(given);
        }
    }

    /** What changes make of a state. */
    static ChangedState changed(PreparedNetwork network, double[] state, List<StateChange> changes) {
        ChangedState result = new ChangedState(network, state);
        changes.forEach(change -> change.apply(result));
        return result;
    }

    private Trajectory.Leg integrate(
            PreparedNetwork network, Phase phase, double endS, double[] before, ChangedState start) {
        double[] startState = start.values();
        double startS = phase.startS();
        RosenbrockStep step = new RosenbrockStep(network, network.newWorkspace(multipliers), Tableau.of(method), true);
        StepLog log = new StepLog(network.stateSize(), network.ledgerSize());
        step.start(startState);
        double time = startS;
        for (double knot : network.knots()) {
            if (knot > time && knot < endS) {
                time = stepping.advance(step, time, knot, log.of(step));
            }
        }
        stepping.advance(step, time, endS, log.of(step));
        return new Trajectory.Leg(
                network, startS, endS, phase.changes(), start.brought(), before, startState, log, step.state());
    }
}
