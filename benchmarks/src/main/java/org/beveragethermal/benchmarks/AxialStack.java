/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.benchmarks.StatedFilms.ZERO_C;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.Method;

/**
 * P3: twenty slices of liquid and wall, stood in three surroundings, cool for an hour; liquid that is warm under cold mixes.
 *
 * <p>Allowed error 1 mK at the end, at the tolerance and at the next three tighter ones. Components: liquid and wall of slice 0, of slice
 * 1, and so on upwards.
 */
final class AxialStack {

    /** End of the run [s]. */
    static final double END_S = 3600;

    /** Number of slices. */
    static final int SLICES = 20;

    private static final Method METHOD = Method.ORDER_4_LIGHT;
    private static final int TIGHTER = 3;
    private static final double ALLOWED_K = 1e-3;
    private static final double START_C = 22;
    private static final double LIQUID_J_PER_K = 155;
    private static final double WALL_J_PER_K = 21;
    private static final double LIQUID_WALL = 0.6;
    private static final double WALL_WALL = 0.08;
    private static final double STILL = 0.02;
    private static final double MIXING = 500;
    private static final double SLICE_M2 = 0.0031;

    private AxialStack() {}

    private static double outsideWPerK(int slice) {
        return SLICE_M2 * (slice < 4 ? 100 : slice < 12 ? 8 : 20);
    }

    private static double outsideC(int slice) {
        return slice < 4 ? 0.5 : slice < 12 ? 4 : 2;
    }

    /** The project's solver. */
    static Prepared own() {
        double[] reference = referenceC();
        Network network = network();
        double[] at = new double[2 * SLICES];
        Tuned tuned = Tuned.loosest(1, TIGHTER, ALLOWED_K, "K", tolerance -> {
            OwnRun run = OwnRun.of(network, METHOD, tolerance);
            run.runTo(END_S, at);
            return RadialLayers.largestError(reference, at, ZERO_C);
        });
        OwnRun run = OwnRun.of(network, METHOD, tuned.tolerance());
        return Prepared.of(tuned, () -> {
                    run.runTo(END_S, at);
                    return at[0];
                })
                .by(METHOD);
    }

    static Network network() {
        HeatLaw mixing = (fromK, toK, out) -> {
            double drive = fromK - toK;
            double over = Math.max(0, drive);
            out.watts = (STILL + MIXING * over) * drive;
            out.perFromKelvin = STILL + 2 * MIXING * over;
            out.perToKelvin = -out.perFromKelvin;
        };
        List<Node> nodes = new ArrayList<>();
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < SLICES; i++) {
            Node liquid = Node.sensible("liquid " + i, LIQUID_J_PER_K, START_C + ZERO_C);
            Node wall = Node.sensible("wall " + i, WALL_J_PER_K, START_C + ZERO_C);
            paths.add(DirectPath.of("inside " + i, liquid, wall, "convection", HeatLaw.conductance(LIQUID_WALL)));
            paths.add(DirectPath.of(
                    "outside " + i,
                    wall,
                    Boundary.constant("outside " + i, outsideC(i) + ZERO_C),
                    "convection",
                    HeatLaw.conductance(outsideWPerK(i))));
            if (i > 0) {
                Node below = nodes.get(nodes.size() - 2);
                Node wallBelow = nodes.get(nodes.size() - 1);
                paths.add(DirectPath.of("mixing " + i, below, liquid, "mixing", mixing));
                paths.add(DirectPath.of("wall " + i, wallBelow, wall, "conduction", HeatLaw.conductance(WALL_WALL)));
            }
            nodes.add(liquid);
            nodes.add(wall);
        }
        return Network.of(nodes, paths);
    }

    /** Another tool. */
    static Prepared peer(Peer peer) {
        double[] reference = referenceC();
        double[] start = start();
        Tuned tuned = Tuned.loosest(
                0.1,
                TIGHTER,
                ALLOWED_K,
                "K",
                tolerance -> RadialLayers.largestError(
                        reference, peer.stateAt(AxialStack::rates, start, tolerance, END_S), 0));
        return Prepared.of(tuned, () -> peer.stateAt(AxialStack::rates, start, tuned.tolerance(), END_S)[0]);
    }

    /** Temperatures at the end [°C] to 1e-6 K or better. */
    static double[] referenceC() {
        return CommonsMath.DP853.stateAt(AxialStack::rates, start(), 1e-10, END_S);
    }

    private static double[] start() {
        double[] start = new double[2 * SLICES];
        Arrays.fill(start, START_C);
        return start;
    }

    private static void rates(double timeS, double[] at, double[] rates) {
        double mixed = 0;
        double conducted = 0;
        for (int i = 0; i < SLICES; i++) {
            double liquid = at[2 * i];
            double wall = at[2 * i + 1];
            double inside = LIQUID_WALL * (liquid - wall);
            double up = 0;
            double wallUp = 0;
            if (i + 1 < SLICES) {
                double drive = liquid - at[2 * i + 2];
                up = (STILL + MIXING * Math.max(0, drive)) * drive;
                wallUp = WALL_WALL * (wall - at[2 * i + 3]);
            }
            rates[2 * i] = (mixed - up - inside) / LIQUID_J_PER_K;
            rates[2 * i + 1] = (inside + conducted - wallUp - outsideWPerK(i) * (wall - outsideC(i))) / WALL_J_PER_K;
            mixed = up;
            conducted = wallUp;
        }
    }
}
