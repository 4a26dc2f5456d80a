/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.List;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.Method;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.UnrecordedRun;

/** The project's solver on one network, asked again and again. */
record OwnRun(UnrecordedRun run, List<Node> nodes) {

    /** With the method that suits the problem: as other tools, the project is asked in the way that is fastest for it. */
    static OwnRun of(Network network, Method method, double toleranceK) {
        return new OwnRun(
                NetworkSolver.standard()
                        .withMethod(method)
                        .withToleranceK(toleranceK)
                        .unrecorded(network.prepare()),
                network.nodes());
    }

    /** When a node is first at a temperature [s]; infinite if never before the end. */
    double timeToReach(Node node, double temperatureK, double endS) {
        return run.timeToReach(node, temperatureK, endS).orElse(Double.POSITIVE_INFINITY);
    }

    /** Temperatures of all nodes at the end [K]. */
    void runTo(double endS, double[] out) {
        run.runTo(endS);
        for (int i = 0; i < out.length; i++) {
            out[i] = run.temperatureK(nodes.get(i));
        }
    }
}
