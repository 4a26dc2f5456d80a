/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.GivenHeat;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.TimeFunction;
import org.junit.jupiter.api.Test;

/** Heat beyond the largest number ends a run by name; it once left a balance that was no number. */
final class HugeHeatTest {
    private static final Node DRINK = Node.sensible("drink", 3100, 295);

    /** What goes round leaves the temperatures alone and fills the balance. */
    private static Trajectory run(double watts, double endS) {
        Boundary from = Boundary.constant("from", 295);
        Boundary to = Boundary.constant("to", 295);
        TimeFunction heat = TimeFunction.linear(new double[] {0, 900}, new double[] {0, watts});
        return NetworkSolver.standard()
                .solve(
                        Network.of(
                                List.of(DRINK),
                                List.of(
                                        GivenHeat.of("in", from, DRINK, "heater", heat),
                                        GivenHeat.of("out", DRINK, to, "cooler", heat))),
                        endS);
    }

    @Test
    void heatThatNoNumberHoldsIsRefused() {
        assertThatExceptionOfType(SolverException.class)
                .isThrownBy(() -> run(1e4, 1e308))
                .withMessageContaining("more heat than a number can hold");
    }

    @Test
    void heatThatANumberHoldsIsBooked() {
        Trajectory run = run(1e4, 1e6);
        assertThat(run.ledger(1e6).totalHeatJ()).isFinite().isGreaterThan(1e10);
        assertThat(run.temperatureK(DRINK, 1e6)).isCloseTo(295, within(1e-6));
    }
}
