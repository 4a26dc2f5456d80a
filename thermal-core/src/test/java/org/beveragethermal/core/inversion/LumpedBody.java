/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.solver.NetworkSolver;

/** A body of one temperature beside a medium of another: the textbook's lumped capacitance, whose course is an exponential. */
record LumpedBody(double capacityJPerK, double conductanceWPerK, double startK, double mediumK) {

    /** The closed form. */
    double temperatureK(double timeS) {
        return mediumK + (startK - mediumK) * Math.exp(-timeS * conductanceWPerK / capacityJPerK);
    }

    /** The closed form turned round. */
    double timeS(double temperatureK) {
        return capacityJPerK / conductanceWPerK * Math.log((startK - mediumK) / (temperatureK - mediumK));
    }

    Prediction predict(Duration horizon) {
        Node body = Node.sensible("body", capacityJPerK, startK);
        DirectPath film = DirectPath.of(
                "film",
                body,
                Boundary.constant("medium", mediumK),
                "convection",
                HeatLaw.conductance(conductanceWPerK));
        return Prediction.of(
                NetworkSolver.standard()
                        .withToleranceK(1e-5)
                        .solve(Network.of(List.of(body), List.of(film)), Times.seconds(horizon)),
                Contents.of(body),
                capacityJPerK,
                List.of(),
                List.of());
    }
}
