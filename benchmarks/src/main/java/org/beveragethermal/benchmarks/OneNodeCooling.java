/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.benchmarks.StatedFilms.ZERO_C;

import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;

/**
 * P1b: liquid and glass as one node cool in air at 4 °C; when are they at 9 °C, from 22 °C, and from any start to any target?
 *
 * <p>Allowed error 1 s, also on pairs drawn at random for what answers any pair.
 */
final class OneNodeCooling {

    /** Time of the nominal case [s]: by SciPy's quad and DOP853. */
    static final double NOMINAL_S = 8744.415114;

    /** Air [°C]. */
    static final double AIR_C = 4;

    /** Heat capacity of the node [J/K]. */
    static final double CAPACITY_J_PER_K = TwoNodeCooling.LIQUID_J_PER_K + TwoNodeCooling.GLASS_J_PER_K;

    private static final double START_C = 22;
    private static final double WANTED_C = TwoNodeCooling.WANTED_C;
    private static final int TIGHTER = 4;

    private OneNodeCooling() {}

    private static void rates(double timeS, double[] at, double[] rates) {
        rates[0] = -StatedFilms.outsideWatts(at[0], AIR_C) / CAPACITY_J_PER_K;
    }

    /** As a network of the project. */
    static Network network() {
        Node bottle = Node.sensible("bottle", CAPACITY_J_PER_K, START_C + ZERO_C);
        Boundary air = Boundary.constant("air", AIR_C + ZERO_C);
        return Network.of(
                List.of(bottle),
                List.of(
                        DirectPath.of("outside", bottle, air, "convection", StatedFilms.OUTSIDE),
                        DirectPath.of("radiation", bottle, air, "radiation", StatedFilms.RADIATION)));
    }

    /** The project's solver. */
    static Prepared engine() {
        Network network = network();
        Node bottle = network.nodes().get(0);
        double wantedK = WANTED_C + ZERO_C;
        Tuned tuned = Tuned.loosest(
                0.1,
                TIGHTER,
                TwoNodeCooling.ALLOWED_S,
                "s",
                tolerance -> Math.abs(
                        OwnRun.of(network, tolerance).timeToReach(bottle, wantedK, TwoNodeCooling.END_S) - NOMINAL_S));
        OwnRun run = OwnRun.of(network, tuned.tolerance());
        return Prepared.of(tuned, () -> run.timeToReach(bottle, wantedK, TwoNodeCooling.END_S));
    }

    /** Another tool. */
    static Prepared peer(Peer peer) {
        Tuned tuned = Tuned.loosest(
                1e-2,
                TIGHTER,
                TwoNodeCooling.ALLOWED_S,
                "s",
                tolerance -> Math.abs(timeS(peer, START_C, WANTED_C, tolerance) - NOMINAL_S));
        return Prepared.of(tuned, () -> timeS(peer, START_C, WANTED_C, tuned.tolerance()));
    }

    /** Time from a start to a target [s] by another tool. */
    static double timeS(Peer peer, double startC, double targetC, double tolerance) {
        return peer.timeOfFall(
                OneNodeCooling::rates, new double[] {startC}, 0, targetC, tolerance, TwoNodeCooling.END_S);
    }
}
