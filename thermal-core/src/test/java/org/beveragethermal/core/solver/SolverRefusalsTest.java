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
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
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
    void givenStepsThatDoNotFit() {
        Trajectory run = solver.solve(network, 3600);
        NetworkSolver along = solver.alongStepsOf(run);
        assertThatNoException().isThrownBy(() -> along.solve(network, 3600));
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> along.solve(network, 7200))
                .withMessageContaining("the given steps are used up")
                .satisfies(e -> assertThat(e.timeS()).isBetween(3599.9, 7200.0));
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> along.solve(List.of(new Phase(0, network), new Phase(3600, network)), 7200))
                .withMessageContaining("the given steps are those of fewer phases");
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
    void boundaryWithoutAFiniteTemperatureIsNamedWithThePathAndTheTime() {
        // The rate of a smooth function looks a second ahead: it is lost a second before the value.
        Boundary gap = Boundary.varying("gap", TimeFunction.smooth(t -> t < 100 ? 280 : Double.NaN));
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> solver.solve(between(gap), 3600))
                .withMessageContaining("path film threw")
                .withMessageContaining("NaN")
                .withMessageContaining("gap")
                .withCauseInstanceOf(IllegalArgumentException.class)
                .satisfies(e -> assertThat(e.timeS()).isBetween(50.0, 100.0))
                .satisfies(e -> assertThat(e.obstacle()).isEqualTo("film"));
    }

    private Network between(Boundary boundary) {
        return network.withPaths(List.of(DirectPath.of("film", body, boundary, "convection", HeatLaw.conductance(2))));
    }

    private record Given(double value, double slope) implements TimeFunction {
        @Override
        public double at(double timeS) {
            return value;
        }

        @Override
        public double rate(double timeS) {
            return slope;
        }
    }

    @Test
    void boundaryOfAUsersOwnWithoutANumberIsNamed() {
        for (Given given : List.of(new Given(Double.NaN, 0), new Given(280, Double.NaN))) {
            assertThatExceptionOfType(SolverException.class)
                    .isThrownBy(() -> solver.solve(between(Boundary.varying("sky", given)), 3600))
                    .withMessageContaining("path film")
                    .withMessageContaining("sky")
                    .satisfies(e -> assertThat(e.timeS()).isZero());
        }
    }

    @Test
    void pathThatThrowsIsNamedWithTheTimeAndItsCause() {
        IllegalStateException bug = new IllegalStateException("no such table");
        Network broken = network.withPaths(List.of(
                DirectPath.of("film", body, air, "convection", HeatLaw.conductance(2)),
                DirectPath.of("own law", body, air, "convection", (from, to, out) -> {
                    if (from < 285) {
                        throw bug;
                    }
                })));
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> solver.solve(broken, 3600))
                .withMessageContaining("path own law threw java.lang.IllegalStateException: no such table")
                .withCause(bug)
                .satisfies(e -> assertThat(e.obstacle()).isEqualTo("own law"))
                .satisfies(e -> assertThat(e.timeS()).isBetween(1000.0, 1500 * Math.log(18 / 7.85) + 1));
    }

    /** A store whose temperature or weight of errors is lost below an enthalpy. */
    private record FailingStore(double temperatureK, double kelvinPerJoule, boolean throwing) implements Store {
        @Override
        public int amountCount() {
            return 0;
        }

        @Override
        public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
            boolean fails = enthalpyJ < 3000 * 12;
            if (fails && throwing) {
                throw new ArithmeticException("off the table");
            }
            out.temperatureK = fails ? temperatureK : 273.15 + enthalpyJ / 3000;
            out.temperaturePerJoule = 1.0 / 3000;
            out.kelvinPerJoule = fails ? kelvinPerJoule : 1.0 / 3000;
        }

        @Override
        public double enthalpyJ(double temperature, double... amounts) {
            return 3000 * (temperature - 273.15);
        }
    }

    @Test
    void storeThatFailsIsNamedAsANode() {
        for (FailingStore store : List.of(
                new FailingStore(Double.NaN, 1.0 / 3000, false),
                new FailingStore(285, 0, false),
                new FailingStore(285, Double.NaN, false),
                new FailingStore(285, 1, true))) {
            Node frail = Node.of("frail", store, 295.15);
            Network broken = Network.of(
                    List.of(body, frail),
                    List.of(DirectPath.of("film", frail, air, "convection", HeatLaw.conductance(2))));
            assertThatExceptionOfType(SolverException.class)
                    .isThrownBy(() -> solver.solve(broken, 3600))
                    .withMessageContaining("node frail")
                    .satisfies(e -> assertThat(e.obstacle()).isEqualTo("frail"))
                    .satisfies(e -> assertThat(e.timeS()).isBetween(500.0, 3600.0));
        }
    }

    @Test
    void nodeWithoutPathsKeepsItsTemperature() {
        // Gear that is prepared later has no connections yet: it is no error.
        Node alone = Node.sensible("alone", 10, 300);
        Trajectory run = solver.solve(Network.of(List.of(body, alone), network.paths()), 3600);
        assertThat(run.temperatureK(alone, 3600)).isEqualTo(300);
        assertThat(run.temperatureK(body, 3600)).isLessThan(290);
        assertThat(solver.solve(Network.of(List.of(alone), List.of()), 3600).temperatureK(alone, 1800))
                .isEqualTo(300);
    }

    @Test
    void exhaustedBudgetNamesTheFastestNode() {
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> solver.withToleranceK(1e-9).withStepBudget(20).solve(network, 3600))
                .withMessageContaining("fastest node body")
                .withMessageContaining("try")
                .satisfies(e -> assertThat(e.obstacle()).isEqualTo("body"));
    }

    @Test
    void boundaryThatFlickersEndsAtTheBudget() {
        Boundary flicker = Boundary.varying(
                "flicker", TimeFunction.smooth(t -> 280 + (Double.doubleToLongBits(t) % 2 == 0 ? 10 : -10)));
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> solver.withStepBudget(2000).solve(between(flicker), 3600))
                .withMessageContaining("body");
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
