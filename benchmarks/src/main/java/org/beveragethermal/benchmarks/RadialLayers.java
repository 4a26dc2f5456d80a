/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.benchmarks.StatedFilms.ZERO_C;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.core.solver.Method;

/**
 * P2: a cylinder of liquid (as a solid), glass and a sleeve cools from the outside for an hour; what are its temperatures?
 *
 * <p>Per metre of length, in N cells: half of them liquid, a fifth glass, the rest sleeve. Allowed error 1 mK against the exact solution of
 * the same cells, by their eigenvalues, at the tolerance and at the next three tighter ones.
 */
final class RadialLayers {

    /** End of the run [s]. */
    static final double END_S = 3600;

    /** Allowed error [K]. */
    static final double ALLOWED_K = 1e-3;

    private static final int TIGHTER = 3;
    private static final double START_C = 22;
    private static final double EDGE_C = 4;
    private static final double EDGE_PERIOD_S = 1800;
    private static final double FILM_W_PER_M2_K = 8;
    private static final double[] RADIUS_M = {0, 0.034, 0.037, 0.043};
    private static final double[] CONDUCTIVITY = {0.56, 1.0, 0.035};
    private static final double[] CAPACITY_J_PER_M3_K = {4.05e6, 2.1e6, 1e5};

    private final double[] capacityJPerK;
    private final double[] conductanceWPerK;
    private final double swingK;

    private RadialLayers(double[] capacityJPerK, double[] conductanceWPerK, double swingK) {
        this.capacityJPerK = capacityJPerK;
        this.conductanceWPerK = conductanceWPerK;
        this.swingK = swingK;
    }

    /**
     * The cells.
     *
     * @param cells number of cells
     * @param swingK how far the temperature outside swings about 4 °C, with a period of half an hour [K]
     */
    static RadialLayers of(int cells, double swingK) {
        int[] counts = {cells / 2, cells / 5, cells - cells / 2 - cells / 5};
        double[] capacity = new double[cells];
        double[] inward = new double[cells];
        double[] outward = new double[cells];
        int cell = 0;
        for (int layer = 0; layer < counts.length; layer++) {
            double width = (RADIUS_M[layer + 1] - RADIUS_M[layer]) / counts[layer];
            for (int k = 0; k < counts[layer]; k++) {
                double inner = RADIUS_M[layer] + k * width;
                double outer = RADIUS_M[layer] + (k + 1) * width;
                double middle = 0.5 * (inner + outer);
                double perLog = 1 / (2 * Math.PI * CONDUCTIVITY[layer]);
                capacity[cell] = CAPACITY_J_PER_M3_K[layer] * Math.PI * (outer * outer - inner * inner);
                inward[cell] = inner == 0 ? 0 : perLog * Math.log(middle / inner);
                outward[cell] = perLog * Math.log(outer / middle);
                cell++;
            }
        }
        double[] conductance = new double[cells];
        for (int i = 0; i + 1 < cells; i++) {
            conductance[i] = 1 / (outward[i] + inward[i + 1]);
        }
        conductance[cells - 1] = 1 / (outward[cells - 1] + 1 / (FILM_W_PER_M2_K * 2 * Math.PI * RADIUS_M[3]));
        return new RadialLayers(capacity, conductance, swingK);
    }

    private int cells() {
        return capacityJPerK.length;
    }

    private double edgeC(double timeS) {
        return EDGE_C + swingK * Math.sin(2 * Math.PI / EDGE_PERIOD_S * timeS);
    }

    /** An edge that swings asks for a tighter tolerance, and there the higher method pays. */
    private Method method() {
        return swingK == 0 ? Method.ORDER_4_LIGHT : Method.ORDER_4;
    }

    /** The project's solver. */
    Prepared own() {
        double[] exact = exactC();
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < cells(); i++) {
            nodes.add(Node.sensible("cell " + i, capacityJPerK[i], START_C + ZERO_C));
        }
        Boundary edge = swingK == 0
                ? Boundary.constant("edge", EDGE_C + ZERO_C)
                : Boundary.varying("edge", new TimeFunction() {
                    @Override
                    public double at(double timeS) {
                        return edgeC(timeS) + ZERO_C;
                    }

                    @Override
                    public double rate(double timeS) {
                        double frequency = 2 * Math.PI / EDGE_PERIOD_S;
                        return swingK * frequency * Math.cos(frequency * timeS);
                    }
                });
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < cells(); i++) {
            paths.add(DirectPath.of(
                    "path " + i,
                    nodes.get(i),
                    i + 1 < cells() ? nodes.get(i + 1) : edge,
                    "conduction",
                    HeatLaw.conductance(conductanceWPerK[i])));
        }
        Network network = Network.of(nodes, paths);
        double[] at = new double[cells()];
        Tuned tuned = Tuned.loosest(1, TIGHTER, ALLOWED_K, "K", tolerance -> {
            OwnRun run = OwnRun.of(network, method(), tolerance);
            run.runTo(END_S, at);
            return largestError(exact, at, ZERO_C);
        });
        OwnRun run = OwnRun.of(network, method(), tuned.tolerance());
        return Prepared.of(tuned, () -> {
                    run.runTo(END_S, at);
                    return at[0];
                })
                .by(method());
    }

    /** Another tool. */
    Prepared peer(Peer peer) {
        double[] exact = exactC();
        double[] start = new double[cells()];
        Arrays.fill(start, START_C);
        PlainEquations equations = this::rates;
        Tuned tuned = Tuned.loosest(
                1e-3,
                0,
                ALLOWED_K * 1.05,
                "K",
                tolerance -> largestError(exact, peer.stateAt(equations, start, tolerance, END_S), 0));
        return Prepared.of(tuned, () -> peer.stateAt(equations, start, tuned.tolerance(), END_S)[0]);
    }

    private void rates(double timeS, double[] at, double[] rates) {
        double from = 0;
        for (int i = 0; i < at.length; i++) {
            double to = conductanceWPerK[i] * (at[i] - (i + 1 < at.length ? at[i + 1] : edgeC(timeS)));
            rates[i] = (from - to) / capacityJPerK[i];
            from = to;
        }
    }

    /** Largest difference of temperatures. */
    static double largestError(double[] exactC, double[] at, double zero) {
        double worst = 0;
        for (int i = 0; i < exactC.length; i++) {
            worst = Math.max(worst, Math.abs(at[i] - zero - exactC[i]));
        }
        return worst;
    }

    /** The exact temperatures of the cells at the end [°C], mode by mode. */
    double[] exactC() {
        int n = cells();
        double[] main = new double[n];
        double[] beside = new double[n - 1];
        for (int i = 0; i < n; i++) {
            main[i] = (conductanceWPerK[i] + (i == 0 ? 0 : conductanceWPerK[i - 1])) / capacityJPerK[i];
            if (i + 1 < n) {
                beside[i] = -conductanceWPerK[i] / Math.sqrt(capacityJPerK[i] * capacityJPerK[i + 1]);
            }
        }
        EigenDecomposition modes = new EigenDecomposition(main, beside);
        double frequency = 2 * Math.PI / EDGE_PERIOD_S;
        double[] at = new double[n];
        Arrays.fill(at, EDGE_C);
        for (int k = 0; k < n; k++) {
            double[] mode = modes.getEigenvector(k).toArray();
            double rate = modes.getRealEigenvalue(k);
            double amplitude = 0;
            for (int i = 0; i < n; i++) {
                amplitude += mode[i] * Math.sqrt(capacityJPerK[i]) * (START_C - EDGE_C);
            }
            double decay = Math.exp(-rate * END_S);
            double forced = swingK
                    * mode[n - 1]
                    * conductanceWPerK[n - 1]
                    / Math.sqrt(capacityJPerK[n - 1])
                    * (rate * Math.sin(frequency * END_S) - frequency * Math.cos(frequency * END_S) + frequency * decay)
                    / (rate * rate + frequency * frequency);
            for (int i = 0; i < n; i++) {
                at[i] += mode[i] / Math.sqrt(capacityJPerK[i]) * (amplitude * decay + forced);
            }
        }
        return at;
    }
}
