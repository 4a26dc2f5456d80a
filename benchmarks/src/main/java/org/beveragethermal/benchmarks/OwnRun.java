/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.List;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.EventAnswer;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.RunEvent;
import org.beveragethermal.core.solver.Trajectory;

/** The project's solver on one network, asked again and again. */
final class OwnRun {

    private final NetworkSolver solver;
    private final Network network;

    private OwnRun(NetworkSolver solver, Network network) {
        this.solver = solver;
        this.network = network;
    }

    static OwnRun of(Network network, double toleranceK) {
        return new OwnRun(NetworkSolver.standard().withToleranceK(toleranceK), network);
    }

    static OwnRun lowOrder(Network network, double toleranceK) {
        return of(network, toleranceK);
    }

    /** When a node falls to a temperature [s]; infinite if never before the end. */
    double timeToReach(Node node, double temperatureK, double endS) {
        EventAnswer answer = solver.solve(network, endS).first(RunEvent.temperatureFallsTo(node, temperatureK), 0);
        return answer instanceof EventAnswer.Reached reached ? reached.timeS() : Double.POSITIVE_INFINITY;
    }

    /** Temperatures of all nodes at the end [K]. */
    void runTo(double endS, double[] out) {
        Trajectory run = solver.solve(network, endS);
        List<Node> nodes = network.nodes();
        for (int i = 0; i < out.length; i++) {
            out[i] = run.temperatureK(nodes.get(i), endS);
        }
    }
}
