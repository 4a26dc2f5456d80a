/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.RunReadings;
import org.beveragethermal.core.solver.Trajectory;

/**
 * A place whose temperature is the mean of nodes of the run, so that its readings and their slopes can be taken in one walk.
 *
 * @param nodes the nodes
 * @param shares weight of each
 * @param one the temperature at a single time; says why there is none where there is none
 * @param filled when there is one
 */
record NodeMean(List<Node> nodes, List<Double> shares, DoubleUnaryOperator one, DoublePredicate filled)
        implements DoubleUnaryOperator {

    static NodeMean of(Trajectory run, Node node) {
        return new NodeMean(List.of(node), List.of(1.0), timeS -> run.temperatureK(node, timeS), timeS -> true);
    }

    @Override
    public double applyAsDouble(double timeS) {
        return one.applyAsDouble(timeS);
    }

    RunReadings of(Trajectory run) {
        return RunReadings.of(run, nodes, shares);
    }

    /** Temperatures [K] at ascending times. */
    double[] temperaturesK(Trajectory run, double[] timesS) {
        return Arrays.stream(timesS).allMatch(filled)
                ? of(run).temperaturesK(timesS)
                : Arrays.stream(timesS).map(one).toArray();
    }
}
