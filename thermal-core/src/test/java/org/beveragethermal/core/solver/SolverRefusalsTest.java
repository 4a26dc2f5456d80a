/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;

import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.TimeFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every refusal that the solver documents. */
final class SolverRefusalsTest {

    private final Node body = Node.sensible("body", 3000, 295.15);
    private final Node stranger = Node.sensible("stranger", 3000, 295.15);
    private final Boundary air = Boundary.constant("air", 277.15);
    private final Network network =
            Network.of(List.of(body), List.of(DirectPath.of("film", body, air, "convection", HeatLaw.conductance(2))));
    private final NetworkSolver solver = NetworkSolver.standard();

    private static void refused(ThrowingCallable call, String part) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(part);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1e-3, 9.9e-13, 1.0001, Double.NaN, Double.POSITIVE_INFINITY})
    void toleranceOutsideItsRange(double toleranceK) {
        refused(() -> solver.withToleranceK(toleranceK), "tolerance " + toleranceK + " K");
    }

    @Test
    void toleranceAtTheEndsOfItsRange() {
        assertThatNoException().isThrownBy(() -> solver.withToleranceK(1e-12));
        assertThatNoException().isThrownBy(() -> solver.withToleranceK(1));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -5})
    void stepBudgetBelowOne(int budget) {
        refused(() -> solver.withStepBudget(budget), "step budget " + budget);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void multiplierThatIsNoFactor(double factor) {
        refused(() -> solver.withMultipliers(Map.of("film", factor)), "multiplier film = " + factor);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void endOfTheRunThatIsNoTime(double endS) {
        refused(() -> solver.solve(network, endS), "end of the run " + endS + " s");
        refused(() -> solver.solve(List.of(new Phase(0, network)), endS), "end of the run " + endS + " s");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void phaseThatStartsAtNoTime(double startS) {
        refused(() -> new Phase(startS, network), "phase starting at " + startS + " s");
    }

    @Test
    void phasesThatDoNotBeginAtZero() {
        refused(() -> solver.solve(List.of(), 10), "phases 0");
        refused(() -> solver.solve(List.of(new Phase(1, network)), 10), "from 0 s");
    }

    @Test
    void phasesOutOfOrder() {
        refused(
                () -> solver.solve(List.of(new Phase(0, network), new Phase(5, network), new Phase(5, network)), 10),
                "phase 2 at 5.0 s");
        refused(
                () -> solver.solve(List.of(new Phase(0, network), new Phase(5, network), new Phase(3, network)), 10),
                "phase 2 at 3.0 s");
    }

    @Test
    void phasesWithOtherNodes() {
        Network other = Network.of(List.of(stranger), List.of());
        refused(() -> solver.solve(List.of(new Phase(0, network), new Phase(5, other)), 10), "phase 1 has other nodes");
    }

    @Test
    void stepBudgetThatIsUsedUpIsReportedWithTheTime() {
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> solver.withToleranceK(1e-9).withStepBudget(20).solve(network, 3600))
                .withMessageContaining("step budget of 20")
                .satisfies(e -> {
                    assertThat(e.timeS()).isGreaterThan(0).isLessThan(3600);
                    assertThat(e).hasMessageContaining("at " + e.timeS() + " s");
                });
    }

    @Test
    void stepBudgetCountsAllPhases() {
        Trajectory run = solver.solve(ThreeNodeProblem.phases(), 7200);
        assertThatNoException()
                .isThrownBy(() -> solver.withStepBudget(run.stepsTried()).solve(ThreeNodeProblem.phases(), 7200));
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> solver.withStepBudget(run.stepsTried() - 1).solve(ThreeNodeProblem.phases(), 7200))
                .satisfies(e -> assertThat(e.timeS()).isGreaterThan(3600));
    }

    @Test
    void pathWithoutAFiniteFlowAtTheStartIsNamed() {
        Network broken = network.withPaths(
                List.of(DirectPath.of("broken film", body, air, "convection", HeatLaw.of((from, to) -> Double.NaN))));
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> solver.solve(broken, 3600))
                .withMessageContaining("path broken film")
                .satisfies(e -> assertThat(e.timeS()).isZero());
    }

    @Test
    void pathThatLosesItsFlowOnTheWayIsNamedWithTheTime() {
        // √(T − 285 K) has no value below 285 K; at 2 W/K from 295.15 K to 277.15 K that is after 1500 s · ln(18/7.85).
        Network broken = network.withPaths(List.of(
                DirectPath.of("film", body, air, "convection", HeatLaw.conductance(2)),
                DirectPath.of(
                        "broken film", body, air, "convection", HeatLaw.of((from, to) -> 0 * Math.sqrt(from - 285)))));
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> solver.solve(broken, 3600))
                .withMessageContaining("path broken film")
                .satisfies(e -> assertThat(e.timeS()).isBetween(1000.0, 1500 * Math.log(18 / 7.85) + 1));
    }

    @Test
    void derivativeThatIsNotFiniteStopsTheRun() {
        Network broken = network.withPaths(List.of(DirectPath.of("film", body, air, "convection", (from, to, out) -> {
            out.watts = 2 * (from - to);
            out.perFromKelvin = Double.NaN;
            out.perToKelvin = -2;
        })));
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> solver.solve(broken, 3600))
                .withMessageContaining("path film");
    }

    @Test
    void boundaryWithoutAFiniteTemperatureIsRefused() {
        Boundary gap = Boundary.varying("gap", TimeFunction.smooth(t -> t < 100 ? 280 : Double.NaN));
        Network broken =
                network.withPaths(List.of(DirectPath.of("film", body, gap, "convection", HeatLaw.conductance(2))));
        refused(() -> solver.solve(broken, 3600), "NaN");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-9, 3600.001, Double.NaN, Double.POSITIVE_INFINITY})
    void timeOutsideTheRun(double timeS) {
        Trajectory run = solver.solve(network, 3600);
        String part = "time " + timeS + " s";
        refused(() -> run.temperatureK(body, timeS), part);
        refused(() -> run.enthalpyJ(body, timeS), part);
        refused(() -> run.amount(body, 0, timeS), part);
        refused(() -> run.ledger(timeS), part);
        refused(() -> run.paths(timeS), part);
        refused(() -> run.evaluate("film", timeS), part);
        refused(() -> run.firstCrossing(timeS, t -> t), part);
    }

    @Test
    void nodeOfAnotherNetwork() {
        Trajectory run = solver.solve(network, 3600);
        refused(() -> run.temperatureK(stranger, 10), "node stranger");
        refused(() -> run.enthalpyJ(stranger, 10), "node stranger");
        refused(() -> run.amount(stranger, 0, 10), "node stranger");
    }

    @Test
    void amountThatTheNodeDoesNotHave() {
        MeltingProblem problem = MeltingProblem.of(0.3, 1, 290);
        Trajectory run = solver.solve(problem.network(), 60);
        assertThat(run.amount(problem.ice(), 0, 60)).isPositive();
        refused(() -> run.amount(problem.ice(), 1, 60), "amount 1");
        refused(() -> run.amount(problem.ice(), -1, 60), "amount -1");
    }

    @Test
    void pathThatIsNotActive() {
        Trajectory run = solver.solve(network, 3600);
        refused(() -> run.evaluate("sunshine", 10), "path sunshine");
    }
}
