/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.junit.jupiter.api.Test;

/** Identities of runs in phases: a network has no clock of its own. */
final class PhasesTest {

    private static final double ZERO = 273.15;
    private static final HeatLaw FILM =
            HeatLaw.of((from, to) -> 0.4 * Math.pow(Math.abs(from - to), 0.25) * (from - to));

    @Test
    void splittingARunChangesNothingBeyondTolerance() {
        List<Phase> whole = ThreeNodeProblem.phases();
        List<Phase> split = new ArrayList<>();
        for (double start : new double[] {0, 17, 900, 2500}) {
            split.add(new Phase(start, whole.get(0).network()));
        }
        for (double start : new double[] {3600, 3601, 5000}) {
            split.add(new Phase(start, whole.get(1).network()));
        }
        for (double toleranceK : new double[] {1e-3, 1e-6}) {
            NetworkSolver solver = NetworkSolver.standard().withToleranceK(toleranceK);
            Trajectory one = solver.solve(whole, 7200);
            Trajectory many = solver.solve(split, 7200);
            for (double t = 0; t <= 7200; t += 100) {
                for (Node node : whole.get(0).network().nodes()) {
                    assertThat(many.temperatureK(node, t)).isCloseTo(one.temperatureK(node, t), within(toleranceK));
                }
            }
            assertThat(many.ledger(7200).heatInto("drink"))
                    .isCloseTo(one.ledger(7200).heatInto("drink"), within(3066 * toleranceK));
        }
    }

    @Test
    void laterStartShiftsTheRun() {
        Node body = Node.sensible("body", 3000, ZERO + 22);
        Network alone = Network.of(List.of(body), List.of());
        Network cooled = alone.withPaths(
                List.of(DirectPath.of("film", body, Boundary.constant("air", ZERO + 4), "convection", FILM)));
        NetworkSolver solver = NetworkSolver.standard().withToleranceK(1e-8);
        Trajectory now = solver.solve(cooled, 3600);
        Trajectory later = solver.solve(List.of(new Phase(0, alone), new Phase(1234.5, cooled)), 1234.5 + 3600);
        assertThat(later.temperatureK(body, 1000)).isEqualTo(ZERO + 22);
        assertThat(later.temperatureK(body, 1234.5)).isEqualTo(ZERO + 22);
        for (double t = 0; t <= 3600; t += 60) {
            assertThat(later.temperatureK(body, 1234.5 + t)).isCloseTo(now.temperatureK(body, t), within(1e-9));
        }
        assertThat(later.ledger(1000).totalHeatJ()).isZero();
        assertThat(later.ledger(1000).closure()).isZero();
    }

    @Test
    void temperaturesCarryOverAtASwitch() {
        Trajectory run = NetworkSolver.standard().solve(ThreeNodeProblem.phases(), 7200);
        for (Node node : List.of(ThreeNodeProblem.DRINK, ThreeNodeProblem.GLASS, ThreeNodeProblem.SLEEVE)) {
            assertThat(run.temperatureK(node, Math.nextDown(3600.0)))
                    .isCloseTo(run.temperatureK(node, 3600), within(1e-9));
        }
        assertThat(run.paths(Math.nextDown(3600.0))).isNotEqualTo(run.paths(3600));
    }

    @Test
    void phasesAfterTheEndAreIgnored() {
        Trajectory run = NetworkSolver.standard().solve(ThreeNodeProblem.phases(), 3600);
        assertThat(run.endS()).isEqualTo(3600);
        assertThat(run.paths(3600))
                .extracting(path -> path.name())
                .containsExactly("inside film", "sleeve contact", "outside");
    }

    @Test
    void twoEqualBodiesInAFiniteBathAreOneOfTwiceTheSize() {
        Node first = Node.sensible("first", 1500, ZERO + 24);
        Node second = Node.sensible("second", 1500, ZERO + 24);
        Node both = Node.sensible("both", 3000, ZERO + 24);
        Node bath = Node.sensible("bath", 9000, ZERO + 1);
        Boundary room = Boundary.constant("room", ZERO + 21);
        DirectPath loss = DirectPath.of("loss", bath, room, "convection", HeatLaw.conductance(0.8));
        HeatLaw doubled = (from, to, out) -> {
            FILM.evaluate(from, to, out);
            out.watts *= 2;
            out.perFromKelvin *= 2;
            out.perToKelvin *= 2;
        };
        NetworkSolver solver = NetworkSolver.standard().withToleranceK(1e-7);
        Trajectory pair = solver.solve(
                Network.of(
                        List.of(first, second, bath),
                        List.of(
                                DirectPath.of("film 1", first, bath, "convection", FILM),
                                DirectPath.of("film 2", second, bath, "convection", FILM),
                                loss)),
                7200);
        Trajectory single = solver.solve(
                Network.of(
                        List.of(both, bath), List.of(DirectPath.of("film", both, bath, "convection", doubled), loss)),
                7200);
        for (double t = 0; t <= 7200; t += 120) {
            assertThat(pair.temperatureK(first, t)).isCloseTo(pair.temperatureK(second, t), within(1e-10));
            assertThat(pair.temperatureK(first, t)).isCloseTo(single.temperatureK(both, t), within(1e-7));
            assertThat(pair.temperatureK(bath, t)).isCloseTo(single.temperatureK(bath, t), within(1e-7));
        }
    }
}
