/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Networks of constant conductances, dense and sparse, against the conductance matrix of circuit theory (Kirchhoff's laws: each link adds its
 * conductance to two places of the diagonal and takes it off two others) put together with Apache Commons Math.
 */
final class LinearNetworksTest {

    private static final double ZERO = 273.15;

    /** Where the nodes are joined: in what order they are listed must not matter. */
    private enum Joined {
        CHAIN,
        CHAIN_BACKWARDS,
        EVERY_SECOND,
        STAR,
        SCATTERED,
        ALL,
        LOOSE
    }

    /** A network and what circuit theory says of it: C dT/dt = −K T + b. */
    private record Circuit(Network network, RealMatrix conductances, RealVector fromOutside, RealVector capacities) {}

    private static List<int[]> pairs(Joined joined, int n, SplittableRandom random) {
        List<int[]> pairs = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                boolean linked = switch (joined) {
                    case CHAIN, CHAIN_BACKWARDS -> j == i + 1;
                    case EVERY_SECOND -> j == i + 2 || (j == i + 1 && i == 0);
                    case STAR -> i == 0;
                    case SCATTERED -> random.nextInt(n) < 2;
                    case ALL -> true;
                    case LOOSE -> false;
                };
                if (linked) {
                    pairs.add(
                            joined == Joined.CHAIN_BACKWARDS || random.nextBoolean()
                                    ? new int[] {j, i}
                                    : new int[] {i, j});
                }
            }
        }
        return pairs;
    }

    private static Circuit circuit(Joined joined, int n, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Node> nodes = new ArrayList<>();
        double[] capacities = new double[n];
        for (int i = 0; i < n; i++) {
            capacities[i] = random.nextDouble(50, 5000);
            nodes.add(Node.sensible("node " + i, capacities[i], random.nextDouble(265, 310)));
        }
        double airK = 291;
        double bathK = 276;
        Boundary air = Boundary.constant("air", airK);
        Boundary bath = Boundary.constant("bath", bathK);
        RealMatrix k = new Array2DRowRealMatrix(n, n);
        RealVector b = new ArrayRealVector(n);
        List<Path> paths = new ArrayList<>();
        for (int[] pair : pairs(joined, n, random)) {
            double g = random.nextDouble(0.1, 20);
            paths.add(DirectPath.of(
                    "link " + paths.size(),
                    nodes.get(pair[0]),
                    nodes.get(pair[1]),
                    "conduction",
                    HeatLaw.conductance(g)));
            k.addToEntry(pair[0], pair[0], g);
            k.addToEntry(pair[1], pair[1], g);
            k.addToEntry(pair[0], pair[1], -g);
            k.addToEntry(pair[1], pair[0], -g);
        }
        for (int i : new int[] {0, n - 1, n / 2}) {
            double g = random.nextDouble(0.1, 20);
            boolean outwards = i == 0;
            paths.add(DirectPath.of(
                    "film " + paths.size(),
                    outwards ? nodes.get(i) : air,
                    outwards ? air : nodes.get(i),
                    "convection",
                    HeatLaw.conductance(g)));
            k.addToEntry(i, i, g);
            b.addToEntry(i, g * airK);
        }
        double scaled = random.nextDouble(0.1, 20);
        paths.add(DirectPath.of("bath", bath, nodes.get(0), "convection", HeatLaw.conductance(scaled))
                .scaledBy("bath"));
        k.addToEntry(0, 0, 2.5 * scaled);
        b.addToEntry(0, 2.5 * scaled * bathK);
        return new Circuit(Network.of(nodes, paths), k, b, new ArrayRealVector(capacities));
    }

    @ParameterizedTest
    @CsvSource({
        "CHAIN, 8",
        "CHAIN_BACKWARDS, 8",
        "EVERY_SECOND, 9",
        "STAR, 7",
        "SCATTERED, 12",
        "ALL, 6",
        "LOOSE, 3",
        "CHAIN, 2",
        "LOOSE, 1"
    })
    void ratesAndJacobianAreThoseOfTheConductanceMatrix(Joined joined, int n) {
        for (long seed = 1; seed <= 5; seed++) {
            Circuit circuit = circuit(joined, n, seed);
            PreparedNetwork prepared = circuit.network().prepare();
            PreparedNetwork.Workspace workspace = prepared.newWorkspace(Map.of("bath", 2.5));
            double[] state = prepared.initialState();
            double[] kelvin = new double[n];
            for (int i = 0; i < n; i++) {
                kelvin[i] = ZERO + state[i] / circuit.capacities().getEntry(i);
            }
            RealVector watts =
                    circuit.fromOutside().subtract(circuit.conductances().operate(new ArrayRealVector(kelvin)));
            // Whatever stood in the array before is written over.
            double[] rates = new double[n];
            Arrays.fill(rates, 1e6);
            assertThat(workspace.evaluateRates(0, state, true, rates)).isEqualTo(-1);
            double[] fromFlows = new double[n];
            assertThat(workspace.evaluate(0, state, true)).isEqualTo(-1);
            workspace.rates(workspace.flows(), fromFlows);
            for (int i = 0; i < n; i++) {
                assertThat(rates[i]).isCloseTo(watts.getEntry(i), within(1e-9));
                assertThat(fromFlows[i]).isCloseTo(watts.getEntry(i), within(1e-9));
            }
            double[][] jacobian = new double[n][n];
            workspace.jacobian((row, column, value) -> jacobian[row][column] += value);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    assertThat(jacobian[i][j])
                            .isCloseTo(
                                    -circuit.conductances().getEntry(i, j)
                                            / circuit.capacities().getEntry(j),
                                    within(1e-12));
                }
            }
            double[] flat = new double[n * n + 1];
            JacobianPlaces places = prepared.places((row, column) -> row * n + column, n * n);
            workspace.addConstantJacobian(places, flat);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    assertThat(flat[i * n + j]).isCloseTo(jacobian[i][j], within(1e-12));
                }
            }
            double[] constantPart = flat.clone();
            workspace.addVaryingJacobian(places, flat);
            assertThat(flat).containsExactly(constantPart);
        }
    }

    /** At rest K T = b; the flow of each link follows. */
    @ParameterizedTest
    @CsvSource({"CHAIN, 8", "EVERY_SECOND, 9", "STAR, 7", "SCATTERED, 12", "ALL, 6"})
    void nothingChangesAtTheTemperaturesOfRest(Joined joined, int n) {
        Circuit circuit = circuit(joined, n, 7);
        PreparedNetwork prepared = circuit.network().prepare();
        PreparedNetwork.Workspace workspace = prepared.newWorkspace(Map.of("bath", 2.5));
        // Nodes that nothing joins to the rest (a scattered network may have some) keep what they have.
        for (int i = 0; i < n; i++) {
            if (circuit.conductances().getEntry(i, i) == 0) {
                circuit.conductances().setEntry(i, i, 1);
                circuit.fromOutside().setEntry(i, 280);
            }
        }
        RealVector rest =
                new LUDecomposition(circuit.conductances()).getSolver().solve(circuit.fromOutside());
        double[] state = new double[n];
        for (int i = 0; i < n; i++) {
            state[i] = circuit.capacities().getEntry(i) * (rest.getEntry(i) - ZERO);
        }
        double[] rates = new double[n];
        assertThat(workspace.evaluateRates(0, state, false, rates)).isEqualTo(-1);
        for (int i = 0; i < n; i++) {
            assertThat(workspace.temperatureK(i)).isCloseTo(rest.getEntry(i), within(1e-10));
            assertThat(rates[i]).isCloseTo(0, within(1e-8));
        }
    }
}
