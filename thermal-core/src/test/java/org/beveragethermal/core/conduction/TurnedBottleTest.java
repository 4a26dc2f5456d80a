/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Phase;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A network built by hand: 20 layers of liquid and glass, 12 mm each, the lower 12 in ice water, the others in air; after 900 s
 * the bottle stands on its head, so that layers 9 to 20 are in the water. Everything is linear; in a second case neighbouring
 * layers of liquid also mix where the upper one is heavier, by a law of the user's own with a corner.
 */
final class TurnedBottleTest {

    private static final double ZERO = 273.15;
    private static final int LAYERS = 20;
    private static final int IMMERSED = 12;
    private static final double HEIGHT = 0.012;
    private static final double INNER = 0.035;
    private static final double OUTER = 0.0385;
    private static final double INSIDE = 80;
    private static final double TURN_S = 900;
    private static final double END_S = 2700;

    private final List<Node> liquid = new ArrayList<>();
    private final List<Node> wall = new ArrayList<>();
    private final Boundary water = Boundary.constant("ice water", ZERO);
    private final Boundary air = Boundary.constant("air", ZERO + 24);

    TurnedBottleTest() {
        double bore = Math.PI * INNER * INNER;
        double glass = Math.PI * (OUTER * OUTER - INNER * INNER);
        for (int i = 1; i <= LAYERS; i++) {
            liquid.add(Node.sensible("L" + i, 985 * 4150 * bore * HEIGHT, ZERO + 22));
            wall.add(Node.sensible("W" + i, 2500 * 840 * glass * HEIGHT, ZERO + 22));
        }
    }

    private static Path joined(Node from, End to, double conductance) {
        return DirectPath.of(
                from.name() + " to " + to.name(), from, to, "conduction", HeatLaw.conductance(conductance));
    }

    private static double density(double temperatureK) {
        double above = temperatureK - ZERO - 4;
        return 999.97 * (1 - 8.0e-6 * above * above);
    }

    /** 50 max(0, density above − density below) W/K. */
    private static void mixing(double lowerK, double upperK, HeatFlow out) {
        double excess = Math.max(0, density(upperK) - density(lowerK));
        double slope = excess > 0 ? 2 * 50 * 999.97 * 8.0e-6 * (lowerK - upperK) : 0;
        out.watts = 50 * excess * (lowerK - upperK);
        out.perFromKelvin = 50 * excess + slope * (lowerK - ZERO - 4);
        out.perToKelvin = -50 * excess - slope * (upperK - ZERO - 4);
    }

    private Network network(boolean turned, boolean mixes) {
        double bore = Math.PI * INNER * INNER;
        double glass = Math.PI * (OUTER * OUTER - INNER * INNER);
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < LAYERS; i++) {
            boolean wet = turned ? i >= LAYERS - IMMERSED : i < IMMERSED;
            Boundary outside = wet ? water : air;
            double film = wet ? 300 : 9;
            paths.add(joined(liquid.get(i), wall.get(i), INSIDE * 2 * Math.PI * INNER * HEIGHT));
            paths.add(joined(wall.get(i), outside, film * 2 * Math.PI * OUTER * HEIGHT));
            if (i + 1 < LAYERS) {
                paths.add(joined(liquid.get(i), liquid.get(i + 1), 0.58 * bore / HEIGHT));
                paths.add(joined(wall.get(i), wall.get(i + 1), 1.05 * glass / HEIGHT));
            }
            if (mixes && i + 1 < LAYERS) {
                Node lower = liquid.get(turned ? i + 1 : i);
                Node upper = liquid.get(turned ? i : i + 1);
                paths.add(DirectPath.of("mixing " + i, lower, upper, "mixing", TurnedBottleTest::mixing));
            }
            if (i == 0 || i == LAYERS - 1) {
                double thickness = i == 0 ? 0.006 : 0.0035;
                paths.add(joined(liquid.get(i), outside, bore / (1 / INSIDE + thickness / 1.05 + 1 / film)));
            }
        }
        List<Node> nodes = new ArrayList<>(liquid);
        nodes.addAll(wall);
        return Network.of(nodes, paths);
    }

    private double quantity(String name, Trajectory run, double t) {
        if (name.equals("mean")) {
            return liquid.stream()
                    .mapToDouble(node -> run.temperatureK(node, t))
                    .average()
                    .orElseThrow();
        }
        List<Node> nodes = name.startsWith("L") ? liquid : wall;
        return run.temperatureK(nodes.get(Integer.parseInt(name.substring(1)) - 1), t);
    }

    @ParameterizedTest
    @CsvSource({"default, 1e-3, 2e-3", "tight, 1e-5, 1e-4"})
    void bottleIsTurnedOver(String how, double toleranceK, double limitK) throws IOException {
        Trajectory run = NetworkSolver.standard()
                .withToleranceK(toleranceK)
                .solve(List.of(new Phase(0, network(false, false)), new Phase(TURN_S, network(true, false))), END_S);
        double worst = worst(run, lines("turned-bottle.csv"), 132);
        OutsideChecks.referenceLibrary(
                        "conduction-turned-bottle-" + how,
                        "matrix exponential; an explicit integration (DOP853 at 1e-12) agrees to 4e-10 K")
                .what("largest error of 132 temperatures of a bottle of 40 nodes turned over, tolerance " + toleranceK
                        + " K")
                .unit("K")
                .expected(0)
                .within(limitK)
                .check(worst);
    }

    @ParameterizedTest
    @CsvSource({"default, 1e-3, 2e-3", "tight, 1e-5, 1e-4"})
    void bottleThatMixesIsTurnedOver(String how, double toleranceK, double limitK) throws IOException {
        Trajectory run = NetworkSolver.standard()
                .withToleranceK(toleranceK)
                .solve(List.of(new Phase(0, network(false, true)), new Phase(TURN_S, network(true, true))), END_S);
        OutsideChecks.referenceLibrary(
                        "mixing-turned-bottle-" + how,
                        "SciPy solve_ivp, Radau at 1e-9, BDF at 1e-10 agrees to 3e-8 K, turned-bottle-mixing.py")
                .what("largest error of 451 temperatures of a bottle of 40 nodes that mixes, turned over, tolerance "
                        + toleranceK + " K")
                .unit("K")
                .expected(0)
                .within(limitK)
                .check(worst(run, lines("turned-bottle-mixing.csv"), 451));
    }

    private double worst(Trajectory run, List<String> lines, int expectedRows) {
        double worst = 0;
        for (String line : lines) {
            String[] row = line.split(",", -1);
            double actual = quantity(row[1], run, Double.parseDouble(row[0])) - ZERO;
            worst = Math.max(worst, Math.abs(actual - Double.parseDouble(row[2])));
        }
        assertThat(lines).hasSize(expectedRows);
        assertThat(run.ledger(END_S).closure()).isLessThan(1e-9);
        return worst;
    }

    private static List<String> lines(String file) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(TurnedBottleTest.class.getResourceAsStream(file)), StandardCharsets.UTF_8))) {
            return reader.lines().filter(line -> !line.startsWith("#")).toList();
        }
    }
}
