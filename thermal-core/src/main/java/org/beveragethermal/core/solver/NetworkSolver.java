/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.PreparedNetwork;
import org.jspecify.annotations.Nullable;

/**
 * Integrates thermal networks; immutable settings, safe to share.
 *
 * <p>Theory manual, equation (7.6).
 */
public final class NetworkSolver {

    /** Default tolerance [K]. */
    public static final double DEFAULT_TOLERANCE_K = 1e-3;

    /** Surfaces in runs without a record are found to this part of the tolerance. */
    private static final double SURFACE_PART = 1e-4;

    private static final int DEFAULT_STEP_BUDGET = 100_000;

    private final double toleranceK;
    private final int stepBudget;
    private final Map<String, Double> multipliers;
    private final RunMonitor monitor;
    private final @Nullable Trajectory pattern;
    private final Method method;

    private NetworkSolver(
            double toleranceK,
            int stepBudget,
            Map<String, Double> multipliers,
            RunMonitor monitor,
            @Nullable Trajectory pattern,
            Method method) {
        this.method = Objects.requireNonNull(method, "method");
        this.pattern = pattern;
        this.toleranceK = toleranceK;
        this.stepBudget = stepBudget;
        this.multipliers = Map.copyOf(multipliers);
        this.monitor = Objects.requireNonNull(monitor, "monitor");
    }

    /**
     * How large the error of a step may be.
     *
     * @return tolerance [K]
     */
    public double toleranceK() {
        return toleranceK;
    }

    /**
     * A solver with the default tolerance of 1 mK per step and a budget of 100,000 steps.
     *
     * @return the solver
     */
    public static NetworkSolver standard() {
        return new NetworkSolver(
                DEFAULT_TOLERANCE_K, DEFAULT_STEP_BUDGET, Map.of(), RunMonitor.NONE, null, Method.ORDER_4);
    }

    /**
     * The same solver with another tolerance on the error of each step.
     *
     * @param newToleranceK tolerance [K], 1e-12 to 1
     * @return a new solver
     * @throws IllegalArgumentException if the tolerance is outside its range
     */
    public NetworkSolver withToleranceK(double newToleranceK) {
        if (!(newToleranceK >= 1e-12 && newToleranceK <= 1)) {
            throw new IllegalArgumentException("tolerance " + newToleranceK + " K: expected 1e-12 K to 1 K");
        }
        return new NetworkSolver(newToleranceK, stepBudget, multipliers, monitor, pattern, method);
    }

    /**
     * The same solver with another limit on the number of steps.
     *
     * @param newStepBudget accepted and rejected steps allowed, ≥ 1
     * @return a new solver
     * @throws IllegalArgumentException if the budget is below 1
     */
    public NetworkSolver withStepBudget(int newStepBudget) {
        if (newStepBudget < 1) {
            throw new IllegalArgumentException("step budget " + newStepBudget + ": expected at least 1");
        }
        return new NetworkSolver(toleranceK, newStepBudget, multipliers, monitor, pattern, method);
    }

    /**
     * The same solver with factors on the paths' laws.
     *
     * @param newMultipliers factor by name, finite, ≥ 0; a name that no path uses has no effect; not modified
     * @return a new solver
     * @throws IllegalArgumentException if a factor is negative or not finite
     */
    public NetworkSolver withMultipliers(Map<String, Double> newMultipliers) {
        newMultipliers.forEach((name, factor) -> {
            if (!(factor >= 0) || Double.isInfinite(factor)) {
                throw new IllegalArgumentException(
                        "multiplier " + name + " = " + factor + ": expected a finite factor ≥ 0");
            }
        });
        return new NetworkSolver(toleranceK, stepBudget, newMultipliers, monitor, pattern, method);
    }

    /**
     * The same solver with a monitor that is told of progress and may cancel.
     *
     * <p>A run also ends when its thread is interrupted, with or without a monitor.
     *
     * @param newMonitor called after each step on the thread of the run; safe to share if runs share the solver
     * @return a new solver
     */
    public NetworkSolver withMonitor(RunMonitor newMonitor) {
        return new NetworkSolver(toleranceK, stepBudget, multipliers, newMonitor, pattern, method);
    }

    /**
     * The same solver along the steps of another run instead of steps of its own.
     *
     * <p>Along given steps what comes out is a smooth function of what goes in, so that differences between two such runs are slopes,
     * which differences between runs that choose their own steps are not. The error of the steps is that of the other run as long
     * as the two are close.
     *
     * @param run a run of a network, or phases, with the same times at which something changes
     * @return a new solver; its runs end in a {@link SolverException} if the steps do not fit
     */
    public NetworkSolver alongStepsOf(Trajectory run) {
        return new NetworkSolver(toleranceK, stepBudget, multipliers, monitor, run, method);
    }

    /**
     * The same solver with another way of taking steps.
     *
     * @param newMethod the method; {@link Method#ORDER_4} unless set
     * @return a new solver
     */
    public NetworkSolver withMethod(Method newMethod) {
        return new NetworkSolver(toleranceK, stepBudget, multipliers, monitor, pattern, newMethod);
    }

    /**
     * Runs of one network for a single answer each, such as when a temperature is reached, that keep no record: nothing is allocated
     * while they go on, and setting up is paid once.
     *
     * <p>They choose their own steps, also if this solver goes {@linkplain #alongStepsOf along} those of another run.
     *
     * @param network the network
     * @return runs for one thread at a time
     */
    public UnrecordedRun unrecorded(PreparedNetwork network) {
        return new UnrecordedRun(
                network, network.newWorkspace(multipliers, SURFACE_PART * toleranceK), method, newStepping());
    }

    private Stepping newStepping() {
        return new Stepping(toleranceK, stepBudget, monitor, method);
    }

    /**
     * Integrates one network from time 0.
     *
     * @param network the network
     * @param endS end of the run [s], finite, > 0
     * @return what happened
     * @throws IllegalArgumentException if the end is not finite and positive
     * @throws SolverException if the network cannot be integrated
     * @throws RunCancelledException if the monitor says so or the thread is interrupted
     */
    public Trajectory solve(Network network, double endS) {
        return solve(List.of(new Phase(0, network)), endS);
    }

    /**
     * Integrates networks of the same nodes, one after the other.
     *
     * @param phases connections in order of time, the first from 0; every network has the same nodes; not modified
     * @param endS end of the run [s], finite, > 0; phases that start later are ignored
     * @return what happened
     * @throws IllegalArgumentException if a condition is broken
     * @throws SolverException if a network cannot be integrated
     * @throws RunCancelledException if the monitor says so or the thread is interrupted
     */
    public Trajectory solve(List<Phase> phases, double endS) {
        if (!(endS > 0) || Double.isInfinite(endS)) {
            throw new IllegalArgumentException("end of the run " + endS + " s: expected a finite time above 0");
        }
        if (phases.isEmpty() || phases.get(0).startS() != 0) {
            throw new IllegalArgumentException(
                    "phases " + phases.size() + ": expected at least one, the first from 0 s");
        }
        for (int i = 1; i < phases.size(); i++) {
            if (phases.get(i).startS() <= phases.get(i - 1).startS()) {
                throw new IllegalArgumentException(
                        "phase " + i + " at " + phases.get(i).startS() + " s: expected a time after "
                                + phases.get(i - 1).startS() + " s");
            }
            if (!phases.get(i).network().nodes().equals(phases.get(0).network().nodes())) {
                throw new IllegalArgumentException(
                        "phase " + i + " has other nodes than phase 0: connections change, nodes stay");
            }
        }
        return new Integration(multipliers, pattern, method, newStepping()).run(phases, endS);
    }
}
