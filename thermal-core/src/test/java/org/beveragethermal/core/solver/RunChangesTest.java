/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.junit.jupiter.api.Test;

/** What is changed between phases, and what the ledger says of it: first law of thermodynamics. */
final class RunChangesTest {

    private static final double CHANGED_S = 60;
    private final Node body = Node.sensible("body", 1000, 283.15);
    private final Network still = Network.of(List.of(body), List.of());

    private Trajectory changed(StateChange change) {
        return NetworkSolver.standard()
                .solve(List.of(new Phase(0, still), new Phase(CHANGED_S, still, List.of(change))), 100);
    }

    private StateChange gains(double joules) {
        return state -> state.set(body, state.enthalpyJ(body) + joules);
    }

    @Test
    void whatIsBroughtAndSaidCloses() {
        Trajectory into = changed(state -> {
            gains(500).apply(state);
            state.bring("kettle", "water", "kitchen", "body", 500);
        });
        assertThat(into.ledger(100).largestImbalanceJ()).isZero();
        assertThat(into.ledger(100).totalHeatJ()).isEqualTo(500);
        assertThat(into.ledger(100).heatInto("body")).isEqualTo(500);
        assertThat(into.ledger(CHANGED_S - 1).entries()).isEmpty();
        assertThat(into.temperatureK(body, 100)).isCloseTo(283.65, within(1e-12));
        Trajectory out = changed(state -> {
            gains(-300).apply(state);
            state.bring("pour", "water", "body", "guest", 300);
        });
        assertThat(out.ledger(100).largestImbalanceJ()).isZero();
        assertThat(out.ledger(100).heatInto("guest")).isEqualTo(300);
    }

    @Test
    void whatIsBroughtUnsaidIsMissing() {
        assertThat(changed(gains(500)).ledger(100).largestImbalanceJ()).isEqualTo(500);
        assertThat(changed(gains(-500)).ledger(100).largestImbalanceJ()).isEqualTo(500);
        Ledger half = changed(state -> {
                    gains(500).apply(state);
                    state.bring("kettle", "water", "kitchen", "body", 200);
                })
                .ledger(100);
        assertThat(half.largestImbalanceJ()).isEqualTo(300);
        assertThat(half.closure()).isEqualTo(1.5);
    }

    @Test
    void closureIsImbalanceOverHeat() {
        assertThat(new Ledger(List.of(), 2, 8).closure()).isEqualTo(0.25);
        assertThat(new Ledger(List.of(), 0, 0).closure()).isZero();
    }

    @Test
    void amountsAreReadAndSet() {
        MeltingProblem problem = MeltingProblem.of(0.3, 1, 283.15);
        Network network = problem.network();
        Node water = problem.water();
        // A litre of 40 °C poured in: enthalpy and mass add up.
        StateChange poured = state -> {
            double heat = 40 * MeltingProblem.WATER_J_PER_KG_K;
            state.set(water, state.enthalpyJ(water) + heat, state.amount(water, 0) + 1);
            state.bring("kettle", "water", "kitchen", "water", heat);
        };
        Trajectory run = NetworkSolver.standard()
                .solve(List.of(new Phase(0, network), new Phase(CHANGED_S, network, List.of(poured))), 100);
        double before = run.amount(water, 0, Math.nextDown(CHANGED_S));
        assertThat(before).isBetween(1.0, 1.1);
        assertThat(run.amount(water, 0, CHANGED_S)).isCloseTo(before + 1, within(1e-9));
        assertThat(run.amount(problem.ice(), 0, 100) + run.amount(water, 0, 100))
                .isCloseTo(2.3, within(1e-9));
        assertThat(run.ledger(100).closure()).isLessThan(1e-9);
    }

    @Test
    void statesThatAreNoneAreRefused() {
        MeltingProblem problem = MeltingProblem.of(0.3, 1, 283.15);
        ChangedState state = new ChangedState(
                problem.network().prepare(), problem.network().prepare().initialState());
        Node water = problem.water();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> state.set(water, 1))
                .withMessageContaining("0 amounts");
        assertThatIllegalArgumentException().isThrownBy(() -> state.set(water, 1, 1, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> state.set(water, Double.NaN, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> state.set(water, 1, Double.POSITIVE_INFINITY));
        state.set(water, 12, 3);
        assertThat(state.enthalpyJ(water)).isEqualTo(12);
        assertThat(state.amount(water, 0)).isEqualTo(3);
        assertThat(state.amount(problem.ice(), 0)).isEqualTo(0.3);
    }
}
