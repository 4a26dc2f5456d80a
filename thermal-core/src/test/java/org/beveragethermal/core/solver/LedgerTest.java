/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What leaves one end enters another: first law of thermodynamics, whatever the derivatives. */
final class LedgerTest {

    private static final double CLOSURE = 1e-9;

    static Stream<Arguments> distortions() {
        return Stream.of(
                distortion("right derivatives", path -> path),
                distortion("no derivatives", path -> new DistortedPath(path, 0, 0, 0)),
                distortion("derivatives halved", path -> new DistortedPath(path, 0.5, 0, 0)),
                distortion("derivatives tripled", path -> new DistortedPath(path, 3, 0, 0)),
                distortion("derivatives of the wrong sign", path -> new DistortedPath(path, -1, 0, 0)),
                distortion("derivatives at random", path -> new DistortedPath(path, 1, 1, 7)),
                distortion("wild derivatives", path -> new DistortedPath(path, 1, 10, 11)));
    }

    private static Arguments distortion(String name, UnaryOperator<Path> distort) {
        return Arguments.of(Named.of(name, distort));
    }

    private static Network distorted(Network network, UnaryOperator<Path> distort) {
        return network.withPaths(network.paths().stream().map(distort).toList());
    }

    @ParameterizedTest
    @MethodSource("distortions")
    void closesForTheThreeNodeProblem(UnaryOperator<Path> distort) {
        List<Phase> phases = ThreeNodeProblem.phases().stream()
                .map(phase -> new Phase(phase.startS(), distorted(phase.network(), distort)))
                .toList();
        Trajectory run = NetworkSolver.standard().solve(phases, 7200);
        for (double t : new double[] {1, 77.7, 1800, 3600, 3605, 7200}) {
            Ledger ledger = run.ledger(t);
            assertThat(ledger.totalHeatJ()).isPositive();
            assertThat(ledger.closure()).as("closure at %s s", t).isLessThanOrEqualTo(CLOSURE);
            assertBalance(run, phases.get(0).network().nodes(), t);
        }
        // Error control works on the result, so wrong derivatives cost steps and little accuracy.
        // SciPy solve_ivp, DOP853 and Radau: 1.638443716 °C, see three-node-reference.csv.
        assertThat(run.temperatureK(ThreeNodeProblem.DRINK, 7200) - 273.15).isCloseTo(1.638443716, within(2e-2));
    }

    @ParameterizedTest
    @MethodSource("distortions")
    void closesWhereIceMelts(UnaryOperator<Path> distort) {
        MeltingProblem problem = MeltingProblem.of(0.3, 1.2, 293.15);
        Boundary room = Boundary.constant("room", 298.15);
        Network network = Network.of(
                List.of(problem.ice(), problem.water()),
                List.of(
                        problem.melting(),
                        DirectPath.of("gain", room, problem.water(), "convection", HeatLaw.conductance(0.7))));
        Trajectory run = NetworkSolver.standard().solve(distorted(network, distort), 20_000);
        for (double t : new double[] {3, 500, 7777, 20_000}) {
            Ledger ledger = run.ledger(t);
            assertThat(ledger.closure()).as("closure at %s s", t).isLessThanOrEqualTo(CLOSURE);
            assertBalance(run, network.nodes(), t);
            assertThat(run.amount(problem.ice(), 0, t) + run.amount(problem.water(), 0, t))
                    .isCloseTo(1.5, within(1e-12));
        }
        assertThat(run.amount(problem.ice(), 0, 20_000)).isLessThan(0.3);
    }

    private static void assertBalance(Trajectory run, List<Node> nodes, double timeS) {
        Ledger ledger = run.ledger(timeS);
        for (Node node : nodes) {
            assertThat(ledger.heatInto(node.name()))
                    .as("%s at %s s", node, timeS)
                    .isCloseTo(run.enthalpyJ(node, timeS) - node.enthalpyJ(), within(CLOSURE * ledger.totalHeatJ()));
        }
    }

    @Test
    void closesWhereTimeConstantsAreNineDecadesApart() {
        Node film = Node.sensible("film", 1e-4, 280);
        Node tank = Node.sensible("tank", 1e6, 300);
        Network network = Network.of(
                List.of(film, tank),
                List.of(
                        DirectPath.of("contact", tank, film, "conduction", HeatLaw.conductance(50)),
                        DirectPath.of(
                                "air", film, Boundary.constant("air", 277), "convection", HeatLaw.conductance(40))));
        Trajectory run = NetworkSolver.standard().solve(network, 1e5);
        // Not below a second: a tank of 3e7 J is known to 4e-9 J, and in a millisecond only 1 J flows.
        for (double t : new double[] {1, 1e3, 1e5}) {
            assertThat(run.ledger(t).closure()).isLessThanOrEqualTo(CLOSURE);
        }
    }

    @ParameterizedTest
    @MethodSource("distortions")
    void closesWhereTheAirVaries(UnaryOperator<Path> distort) {
        Node drink = Node.sensible("drink", 3000, 281.15);
        Node glass = Node.sensible("glass", 440, 281.15);
        Boundary air = Boundary.varying("air", new Sinusoid(293.15, 8, 2 * Math.PI / 1800));
        Network network = Network.of(
                List.of(drink, glass),
                List.of(
                        DirectPath.of("inside", drink, glass, "convection", HeatLaw.conductance(4)),
                        JunctionPath.of(
                                "outside",
                                Link.of(glass, "conduction", HeatLaw.conductance(30)),
                                Link.of(air, "convection", HeatLaw.conductance(2)))));
        Trajectory run = NetworkSolver.standard().solve(distorted(network, distort), 7200);
        for (double t : new double[] {10, 1000, 7200}) {
            assertThat(run.ledger(t).closure()).as("closure at %s s", t).isLessThanOrEqualTo(CLOSURE);
            assertBalance(run, network.nodes(), t);
        }
    }

    @Test
    void aClosedSystemKeepsItsEnthalpy() {
        MeltingProblem problem = MeltingProblem.of(0.3, 1, 303.15);
        Trajectory run = NetworkSolver.standard().solve(problem.network(), 36_000);
        double start = problem.ice().enthalpyJ() + problem.water().enthalpyJ();
        for (double t = 0; t <= 36_000; t += 1000) {
            assertThat(run.enthalpyJ(problem.ice(), t) + run.enthalpyJ(problem.water(), t))
                    .isCloseTo(start, within(1e-7));
        }
    }

    @Test
    void meltingIceStaysAtTheIcePoint() {
        // Heat and melt are two accounts: with right derivatives they stay in proportion and the plateau is exact.
        MeltingProblem problem = MeltingProblem.of(0.3, 1, 303.15);
        Trajectory run = NetworkSolver.standard().solve(problem.network(), 72_000);
        for (double t = 0; t <= 72_000; t += 1500) {
            assertThat(run.temperatureK(problem.ice(), t)).isCloseTo(MeltingProblem.ICE_POINT_K, within(1e-9));
        }
    }

    @Test
    void iceAndWaterEndWhereTheFirstLawSays() {
        MeltingProblem allMelts = MeltingProblem.of(0.3, 1, 303.15);
        Trajectory warm = NetworkSolver.standard().solve(allMelts.network(), 72_000);
        double heat = 30 * MeltingProblem.WATER_J_PER_KG_K;
        OutsideChecks.published("melting-all", "first law of thermodynamics, closed form")
                .what("0.3 kg of ice at 0 °C melts in 1 kg of water at 30 °C: final temperature")
                .unit("°C")
                .expected((heat - 0.3 * MeltingProblem.FUSION_J_PER_KG) / (1.3 * MeltingProblem.WATER_J_PER_KG_K))
                .within(2e-3)
                .check(warm.temperatureK(allMelts.water(), 72_000) - MeltingProblem.ICE_POINT_K);
        assertThat(warm.amount(allMelts.ice(), 0, 72_000)).isBetween(0.0, 1e-6);
        MeltingProblem someStays = MeltingProblem.of(0.5, 1, 303.15);
        Trajectory cold = NetworkSolver.standard().solve(someStays.network(), 500_000);
        OutsideChecks.published("melting-some", "first law of thermodynamics, closed form")
                .what("0.5 kg of ice at 0 °C in 1 kg of water at 30 °C: ice that stays")
                .unit("kg")
                .expected(0.5 - heat / MeltingProblem.FUSION_J_PER_KG)
                .within(1e-5)
                .check(cold.amount(someStays.ice(), 0, 500_000));
    }

    @Test
    void iceMeltsAtTheRateOfTheQuadrature() {
        // Energy gives the water's temperature from the ice left; dt = −m₀ L dm / (G m T(m)) is then a quadrature.
        double iceKg = 0.3;
        double waterKg = 1;
        MeltingProblem problem = MeltingProblem.of(iceKg, waterKg, 303.15);
        double leftKg = 0.12;
        double timeS = new RombergIntegrator(1e-12, 1e-12, 3, 25)
                .integrate(
                        1_000_000,
                        m -> iceKg
                                * MeltingProblem.FUSION_J_PER_KG
                                / (MeltingProblem.CONDUCTANCE * m)
                                * (MeltingProblem.WATER_J_PER_KG_K * (waterKg + iceKg - m))
                                / (MeltingProblem.WATER_J_PER_KG_K * waterKg * 30
                                        - MeltingProblem.FUSION_J_PER_KG * (iceKg - m)),
                        leftKg,
                        iceKg);
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-8).solve(problem.network(), 10_000);
        OutsideChecks.referenceLibrary("melting-quadrature", "Apache Commons Math 3.6.1, RombergIntegrator")
                .what("ice left of 0.3 kg in 1 kg of water at 30 °C after the time in which 0.12 kg is left")
                .unit("kg")
                .expected(leftKg)
                .within(1e-8)
                .check(run.amount(problem.ice(), 0, timeS));
    }

    @Test
    void ledgerNamesWhoGaveWhat() {
        Node drink = Node.sensible("drink", 3000, 295.15);
        Boundary air = Boundary.constant("air", 277.15);
        Network network = Network.of(
                List.of(drink), List.of(DirectPath.of("film", drink, air, "convection", HeatLaw.conductance(2))));
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-9).solve(network, 1500);
        Ledger ledger = run.ledger(1500);
        // Closed form: Q = C ΔT (1 − e^(−t/τ)), τ = 1500 s.
        double heat = 3000 * 18 * (1 - Math.exp(-1));
        assertThat(ledger.entries()).singleElement().satisfies(entry -> {
            assertThat(entry.path()).isEqualTo("film");
            assertThat(entry.mechanism()).isEqualTo("convection");
            assertThat(entry.from()).isEqualTo("drink");
            assertThat(entry.to()).isEqualTo("air");
            assertThat(entry.heatJ()).isCloseTo(heat, within(1e-4));
        });
        assertThat(ledger.heatInto("air")).isCloseTo(heat, within(1e-4));
        assertThat(ledger.heatInto("drink")).isCloseTo(-heat, within(1e-4));
        assertThat(ledger.heatInto("nobody")).isZero();
        assertThat(ledger.totalHeatJ()).isCloseTo(heat, within(1e-4));
        assertThat(run.ledger(0).entries())
                .singleElement()
                .satisfies(e -> assertThat(e.heatJ()).isZero());
    }
}
