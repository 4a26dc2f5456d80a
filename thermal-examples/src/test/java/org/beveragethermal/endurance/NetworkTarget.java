/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.GivenHeat;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.core.solver.EventAnswer;
import org.beveragethermal.core.solver.Method;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.RunEvent;
import org.beveragethermal.core.solver.SolverException;
import org.beveragethermal.core.solver.Trajectory;

/**
 * Networks of any laws and capacities: number of nodes, end [s], tolerance [K], method, temperature asked for [K], then capacity [J/K] and
 * start [K] of each node, then for each path two ends, kind of law and two numbers of the law.
 */
final class NetworkTarget implements FuzzTarget {
    private static final int MOST_NODES = 6;
    private static final int MOST_PATHS = 12;
    private static final int STEPS = 400;
    private static final List<Method> METHODS = List.of(Method.values());

    @Override
    public String toString() {
        return name();
    }

    @Override
    public String name() {
        return "networks";
    }

    @Override
    public List<byte[]> corpus() {
        return Corpus.lines("networks.txt");
    }

    @Override
    public List<String> words() {
        return List.of(
                "300", "280", "3600", "1e-3", "1e-12", "1e6", "1e-6", "1e12", "1e-200", "1e200", "1e-320", "3", "4",
                "5", "6", "7");
    }

    @Override
    public boolean accepts(byte[] input) {
        Numbers given = new Numbers(Corpus.numbers(input));
        try {
            return run(given);
        } catch (IllegalArgumentException | SolverException e) {
            return Documented.refusal(e, SolverException.class);
        }
    }

    private static boolean run(Numbers given) {
        int count = 1 + given.index(MOST_NODES);
        double endS = given.next();
        NetworkSolver solver =
                NetworkSolver.standard().withToleranceK(given.next()).withStepBudget(STEPS);
        Method method = METHODS.get(given.index(METHODS.size()));
        double askedK = given.next();
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            nodes.add(Node.sensible("node " + i, given.next(), given.next()));
        }
        List<End> ends = new ArrayList<>(nodes);
        ends.add(Boundary.constant("room", 293.15));
        ends.add(Boundary.varying(
                "day", TimeFunction.linear(new double[] {0, 600, 7200}, new double[] {280, 300, 275})));
        List<Path> paths = new ArrayList<>();
        while (given.hasMore() && paths.size() < MOST_PATHS) {
            paths.add(path("path " + paths.size(), ends, given));
        }
        Network network = Network.of(nodes, paths);
        // An exponential method keeps no record.
        Method recording = method == Method.EXPONENTIAL ? Method.ORDER_4 : method;
        look(network, solver.withMethod(recording).solve(network, endS), endS, askedK);
        solver.withMethod(method)
                .unrecorded(network.prepare())
                .timeToReach(nodes.get(0), askedK, endS)
                .ifPresent(timeS -> Documented.finite("time", timeS));
        return true;
    }

    private static void look(Network network, Trajectory run, double endS, double askedK) {
        for (Node node : network.nodes()) {
            for (double part : new double[] {0, 0.3, 1}) {
                Documented.finite(node.name(), run.temperatureK(node, part * endS), run.enthalpyJ(node, part * endS));
            }
        }
        if (run.first(RunEvent.temperatureReaches(network.nodes().get(0), askedK), 0)
                instanceof EventAnswer.Reached reached) {
            Documented.finite("reached", reached.timeS());
        }
        Documented.finiteThroughout("ledger", run.ledger(endS));
    }

    private static Path path(String name, List<End> ends, Numbers given) {
        End from = ends.get(given.index(ends.size()));
        End to = ends.get(given.index(ends.size()));
        int kind = given.index(8);
        double a = given.next();
        double b = given.next();
        return switch (kind) {
            case 0, 1 -> DirectPath.of(name, from, to, "conduction", HeatLaw.conductance(a));
            case 2 ->
                DirectPath.of(name, from, to, "film", HeatLaw.of((x, y) -> a * (x - y) * Math.pow(Math.abs(x - y), b)));
            case 3 ->
                DirectPath.of(name, from, to, "radiation", HeatLaw.of((x, y) -> a * (Math.pow(x, 4) - Math.pow(y, 4))));
            case 4 ->
                GivenHeat.of(name, from, to, "heater", TimeFunction.linear(new double[] {0, 900}, new double[] {a, b}));
            case 5 -> DirectPath.of(name, from, to, "valve", HeatLaw.of((x, y) -> x > y + b ? a * (x - y) : 0));
            case 6 ->
                JunctionPath.of(
                        name,
                        JunctionPath.Link.of(from, "one side", HeatLaw.conductance(a)),
                        JunctionPath.Link.of(to, "other side", HeatLaw.of((x, y) -> b * (x - y) * Math.abs(x - y))));
            default -> DirectPath.of(name, from, to, "odd", HeatLaw.of((x, y) -> Math.sqrt(x - y) * a));
        };
    }

    /** Numbers one after the other; 0 when there are no more. */
    private static final class Numbers {
        private final double[] values;
        private int at;

        Numbers(double[] values) {
            this.values = values;
        }

        boolean hasMore() {
            return at < values.length;
        }

        double next() {
            return at < values.length ? values[at++] : 0;
        }

        int index(int count) {
            return Math.floorMod((int) next(), count);
        }
    }
}
