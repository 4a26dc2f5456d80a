/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PathEvaluation;
import org.junit.jupiter.api.Test;

/** What a finished run answers, on Newton's law of cooling: T = T∞ + (T₀ − T∞) e^(−t/τ). */
final class TrajectoryTest {

    private static final double ZERO = 273.15;
    private final Node body = Node.sensible("body", 3000, ZERO + 22);
    private final Boundary air = Boundary.constant("air", ZERO + 4);
    private final DirectPath film = DirectPath.of("film", body, air, "convection", HeatLaw.conductance(2))
            .scaledBy("film factor");
    private final Network network = Network.of(List.of(body), List.of(film));

    @Test
    void multiplierScalesTheConductance() {
        Trajectory run = NetworkSolver.standard()
                .withToleranceK(1e-9)
                .withMultipliers(Map.of("film factor", 1.5, "of no path", 3.0))
                .solve(network, 2000);
        // τ = 3000 / (1.5 · 2) s.
        assertThat(run.temperatureK(body, 1500)).isCloseTo(ZERO + 4 + 18 * Math.exp(-1.5), within(1e-7));
    }

    @Test
    void pathIsExplainedWithTheMultipliersOfTheRun() {
        Trajectory run = NetworkSolver.standard()
                .withMultipliers(Map.of("film factor", 1.5))
                .solve(network, 2000);
        PathEvaluation explained = run.evaluate("film", 1500);
        double drive = run.temperatureK(body, 1500) - (ZERO + 4);
        assertThat(explained.multiplier(0)).isEqualTo(1.5);
        assertThat(explained.flowOf(0)).isCloseTo(3 * drive, within(1e-9));
        assertThat(explained.timeS()).isEqualTo(1500);
        assertThat(explained.temperatureK(0)).isEqualTo(run.temperatureK(body, 1500));
    }

    @Test
    void multiplierOfZeroSwitchesAPathOff() {
        Trajectory run = NetworkSolver.standard()
                .withMultipliers(Map.of("film factor", 0.0))
                .solve(network, 2000);
        assertThat(run.temperatureK(body, 2000)).isEqualTo(ZERO + 22);
    }

    @Test
    void denseOutputPassesThroughStartAndEnd() {
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-9).solve(network, 2000);
        assertThat(run.endS()).isEqualTo(2000);
        assertThat(run.temperatureK(body, 0)).isEqualTo(ZERO + 22);
        for (double t = 0; t <= 2000; t += 7.3) {
            assertThat(run.temperatureK(body, t)).isCloseTo(ZERO + 4 + 18 * Math.exp(-t / 1500), within(1e-7));
            assertThat(run.enthalpyJ(body, t)).isCloseTo(3000 * (run.temperatureK(body, t) - ZERO), within(1e-6));
        }
    }

    @Test
    void firstCrossingIsFoundInEitherDirectionAndFromAnyTime() {
        // Sine of period 1000 s as the function: the run only says where its steps are.
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-9).solve(network, 2000);
        assertThat(run.firstCrossing(1, t -> Math.sin(2 * Math.PI * t / 1000)).orElseThrow())
                .isCloseTo(500, within(1e-3));
        assertThat(run.firstCrossing(501, t -> Math.sin(2 * Math.PI * t / 1000)).orElseThrow())
                .isCloseTo(1000, within(1e-3));
        assertThat(run.firstCrossing(0, t -> t).orElseThrow()).isZero();
        assertThat(run.firstCrossing(0, t -> t + 1)).isEmpty();
    }

    @Test
    void largestValueIsFoundInsideAndAtTheEnds() {
        Node still = Node.sensible("still", 3000, 300);
        // One step of 4000 s, looked at every 1000 s.
        Trajectory run = NetworkSolver.standard().solve(Network.of(List.of(still), List.of()), 4000);
        assertThat(run.timeOfLargest(0, t -> 7 - Math.pow((t - 2300) / 1000, 2)))
                .isCloseTo(2300, within(0.1));
        assertThat(run.timeOfLargest(0, t -> -7 - Math.pow((t - 300) / 1000, 2)))
                .isCloseTo(300, within(0.1));
        assertThat(run.timeOfLargest(0, t -> t)).isEqualTo(4000);
        assertThat(run.timeOfLargest(1500, t -> -t)).isCloseTo(1500, within(0.01));
        // The first of several.
        assertThat(run.timeOfLargest(0, t -> 1)).isZero();
    }

    @Test
    void aRunAlongGivenStepsTakesThemWhateverItsTolerance() {
        Trajectory rough = NetworkSolver.standard().withToleranceK(0.5).solve(network, 2000);
        NetworkSolver fine = NetworkSolver.standard().withToleranceK(1e-9);
        Trajectory along = fine.alongStepsOf(rough).solve(network, 2000);
        assertThat(along.steps())
                .isEqualTo(rough.steps())
                .isLessThan(fine.solve(network, 2000).steps());
        assertThat(along.temperatureK(body, 1234)).isEqualTo(rough.temperatureK(body, 1234));
        assertThat(fine.toleranceK()).isEqualTo(1e-9);
    }

    @Test
    void firstCrossingContinuesThroughPhases() {
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-8).solve(ThreeNodeProblem.phases(), 7200);
        // SciPy solve_ivp, DOP853 and Radau: the drink is at 5.103089531 °C after 5400 s, see three-node-reference.csv.
        double crossing = run.firstCrossing(0, t -> run.temperatureK(ThreeNodeProblem.DRINK, t) - ZERO - 5.103089531)
                .orElseThrow();
        assertThat(crossing).isCloseTo(5400, within(1e-3));
        assertThat(run.evaluate("outside", crossing).flowOf(0)).isPositive();
    }
}
