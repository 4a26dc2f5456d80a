/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.Measures;
import org.junit.jupiter.api.Test;

/** Events against closed forms, and against the run itself. */
final class RunEventTest {

    private static final double ZERO = 273.15;
    private static final double PERIOD_S = 1000;

    private static double reached(EventAnswer answer) {
        assertThat(answer).isInstanceOf(EventAnswer.Reached.class);
        return ((EventAnswer.Reached) answer).timeS();
    }

    private static Trajectory cooling(Node body, double toleranceK) {
        Boundary air = Boundary.constant("air", ZERO + 4);
        return NetworkSolver.standard()
                .withToleranceK(toleranceK)
                .solve(
                        Network.of(
                                List.of(body),
                                List.of(DirectPath.of("film", body, air, "convection", HeatLaw.conductance(2)))),
                        6000);
    }

    /** A body of 1 J/K that follows the integral of a sine: T = 300 K + (1 − cos ωt) P/ω, up and down again. */
    private static Trajectory swinging(Node body, double toleranceK, double endS) {
        double omega = 2 * Math.PI / PERIOD_S;
        Boundary clock = Boundary.varying("clock", new Sinusoid(300, 1, omega));
        return NetworkSolver.standard()
                .withToleranceK(toleranceK)
                .solve(
                        Network.of(
                                List.of(body), List.of(DirectPath.of("drive", clock, body, "work", (from, to, out) -> {
                                    out.watts = omega * 10 * (from - 300);
                                    out.perFromKelvin = omega * 10;
                                    out.perToKelvin = 0;
                                }))),
                        endS);
    }

    @Property(seed = "20260201")
    @Label("Inverse ∘ forward = identity: the time of an event against the closed form")
    void temperatureAtTheTimeItIsReachedIsTheTemperature(@ForAll @DoubleRange(min = 4.4, max = 21.99) double celsius) {
        Node body = Node.sensible("body", 3000, ZERO + 22);
        Trajectory run = cooling(body, 1e-7);
        double time = reached(run.first(RunEvent.temperatureFallsTo(body, ZERO + celsius), 0));
        // Newton's law of cooling, τ = 1500 s; a millionth of a step is below 1 ms.
        assertThat(time).isCloseTo(1500 * Math.log(18 / (celsius - 4)), within(1e-2));
        assertThat(run.temperatureK(body, time)).isCloseTo(ZERO + celsius, within(1e-5));
        if (time > 1) {
            assertThat(run.temperatureK(body, time - 1)).isGreaterThan(ZERO + celsius);
        }
        assertThat(reached(run.first(RunEvent.temperatureReaches(body, ZERO + celsius), 0)))
                .isEqualTo(time);
        assertThat(run.first(RunEvent.temperatureRisesTo(body, ZERO + celsius), 0))
                .isEqualTo(new EventAnswer.Reached(0));
    }

    @Test
    void whatIsNeverReachedSaysHowCloseItCame() {
        Node body = Node.sensible("body", 3000, ZERO + 22);
        Trajectory run = cooling(body, 1e-7);
        EventAnswer answer = run.first(RunEvent.temperatureFallsTo(body, ZERO + 4), 0);
        assertThat(answer).isInstanceOfSatisfying(EventAnswer.NeverReached.class, never -> {
            assertThat(never.closest()).isCloseTo(ZERO + 4 + 18 * Math.exp(-4), within(1e-5));
            assertThat(never.closestTimeS()).isEqualTo(6000);
        });
        assertThat(run.times(RunEvent.temperatureRisesTo(body, ZERO + 30), 10)).isEmpty();
        assertThat(run.first(RunEvent.temperatureFallsTo(body, ZERO + 3), 6000))
                .isInstanceOf(EventAnswer.NeverReached.class);
        assertThat(run.first(RunEvent.temperatureFallsTo(body, ZERO + 5), 6000))
                .isEqualTo(new EventAnswer.Reached(6000));
    }

    @Property(seed = "20260202")
    @Label("Inverse ∘ forward = identity: no passage is missed however close to the turning point")
    void noPassageIsMissedHoweverCloseToTheTurningPoint(@ForAll @DoubleRange(min = -8, max = -1) double logBelow) {
        // T − 300 K = 10 (1 − cos ωt) K, at most 20 K: passed twice around each maximum, at ωt = π ∓ acos(1 −
        // below/10).
        Node body = Node.sensible("body", 1, 300);
        Trajectory run = swinging(body, 1e-9, 2.2 * PERIOD_S);
        double below = Math.pow(10, logBelow) + 2e-8;
        double top = run.temperatureK(body, PERIOD_S / 2);
        double[] times = run.times(RunEvent.temperatureReaches(body, top - below), 0);
        assertThat(times).hasSize(4);
        double half = Math.acos(1 - below / 10) * PERIOD_S / (2 * Math.PI);
        assertThat(times[1] - times[0]).isCloseTo(2 * half, within(0.02 * half + 0.05));
        assertThat(0.5 * (times[0] + times[1])).isCloseTo(PERIOD_S / 2, within(0.2));
        assertThat(run.times(RunEvent.temperatureRisesTo(body, top - below), 0)).containsExactly(times[0], times[2]);
        assertThat(run.times(RunEvent.temperatureFallsTo(body, top - below), 1)).containsExactly(1, times[1], times[3]);
    }

    @Test
    void functionThatDipsAcrossZeroBetweenLooksIsFound() {
        // Long steps: nothing moves, so the run is one step of 4000 s, looked at every 1000 s.
        Node still = Node.sensible("still", 3000, 300);
        Trajectory run = NetworkSolver.standard().solve(Network.of(List.of(still), List.of()), 4000);
        assertThat(run.steps()).isEqualTo(1);
        double crossing =
                run.firstCrossing(0, t -> Math.pow((t - 2300) / 1000, 2) - 1e-4).orElseThrow();
        assertThat(crossing).isCloseTo(2290, within(0.01));
        assertThat(run.firstCrossing(0, t -> 1e-4 - Math.pow((t - 1700) / 1000, 2))
                        .orElseThrow())
                .isCloseTo(1690, within(0.01));
        assertThat(run.firstCrossing(0, t -> Math.pow((t - 2300) / 1000, 2) + 1e-4))
                .isEmpty();
    }

    @Test
    void meltingIceGoesAndItsMassPassesEveryThresholdOnItsWay() {
        MeltingProblem problem = MeltingProblem.of(0.3, 1, 290);
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-6).solve(problem.network(), 60);
        double first = run.amount(problem.ice(), 0, 0);
        double last = run.amount(problem.ice(), 0, 60);
        for (double part = 0.05; part < 1; part += 0.1) {
            double mass = first + part * (last - first);
            double time = reached(run.first(RunEvent.amountFallsTo(problem.ice(), 0, mass), 0));
            assertThat(run.amount(problem.ice(), 0, time)).isCloseTo(mass, within(1e-6 * first));
        }
        assertThat(run.first(RunEvent.amountRisesTo(problem.ice(), 0, 2 * first), 0))
                .isEqualTo(new EventAnswer.NeverReached(first, 0));
    }

    @Test
    void drinkBeginsToFreezeAndThawsAgain() {
        FreezingStore store = FreezingStore.ofMass(Beverage.wine(Measures.percentByVolume(12.5)), 0.74);
        Node wine = Node.of("wine", store, ZERO + 20);
        Boundary freezer = Boundary.constant("freezer", ZERO - 18);
        Boundary room = Boundary.constant("room", ZERO + 20);
        Network cold = Network.of(
                List.of(wine), List.of(DirectPath.of("film", wine, freezer, "convection", HeatLaw.conductance(0.9))));
        Network warm =
                cold.withPaths(List.of(DirectPath.of("film", wine, room, "convection", HeatLaw.conductance(0.9))));
        Trajectory run = NetworkSolver.standard().solve(List.of(new Phase(0, cold), new Phase(20_000, warm)), 80_000);
        double begins = reached(run.first(RunEvent.freezingStarts(wine), 0));
        double third = reached(run.first(RunEvent.iceRisesTo(wine, 1.0 / 3), 0));
        double gone = reached(run.first(RunEvent.iceGone(wine), begins + 1));
        assertThat(begins).isBetween(1000.0, third);
        assertThat(run.temperatureK(wine, begins)).isCloseTo(store.freezingOnsetK(), within(1e-4));
        assertThat(store.iceFraction(run.temperatureK(wine, third))).isCloseTo(1.0 / 3, within(1e-5));
        assertThat(third).isLessThan(20_000);
        assertThat(gone).isBetween(20_000.0, 80_000.0);
        assertThat(run.temperatureK(wine, gone)).isCloseTo(store.freezingOnsetK(), within(1e-4));
        assertThat(run.first(RunEvent.iceRisesTo(wine, 0.9), 0)).isInstanceOf(EventAnswer.NeverReached.class);
    }

    @Test
    void mixingThatJumpsAcrossAThresholdIsAnEvent() {
        Node low = Node.sensible("low", 1000, 280);
        Node high = Node.sensible("high", 1000, 300);
        Network apart = Network.of(List.of(low, high), List.of());
        Trajectory run = NetworkSolver.standard()
                .solve(
                        List.of(
                                new Phase(0, apart),
                                new Phase(50, apart, List.of(new Mixing(List.of(low, high), List.of(1.0, 1.0))))),
                        100);
        assertThat(run.times(RunEvent.temperatureRisesTo(low, 285), 0)).containsExactly(50);
        assertThat(run.times(RunEvent.temperatureReaches(high, 295), 0)).containsExactly(50);
    }

    @Test
    void nonsenseIsRefused() {
        Node body = Node.sensible("body", 3000, ZERO + 22);
        Trajectory run = cooling(body, 1e-3);
        RunEvent event = RunEvent.temperatureFallsTo(body, 280);
        assertThat(event.node()).isSameAs(body);
        assertThat(event.threshold()).isEqualTo(280);
        assertThat(event).hasToString("body falls to 280.0 K");
        Node stranger = Node.sensible("stranger", 1, 300);
        assertThatIllegalArgumentException().isThrownBy(() -> run.first(event, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> run.times(event, Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> run.first(RunEvent.temperatureFallsTo(stranger, 280), 0))
                .withMessageContaining("stranger");
        assertThatIllegalArgumentException().isThrownBy(() -> RunEvent.temperatureRisesTo(body, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> RunEvent.amountFallsTo(body, 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> RunEvent.iceGone(body));
        assertThatIllegalArgumentException().isThrownBy(() -> RunEvent.freezingStarts(body));
        assertThatIllegalArgumentException().isThrownBy(() -> RunEvent.iceRisesTo(body, 0));
    }

    @Test
    void threadsThatShareARunReadTheSame() {
        Trajectory run = NetworkSolver.standard().solve(ThreeNodeProblem.phases(), 7200);
        double[] expected = readings(run);
        AtomicInteger read = new AtomicInteger();
        IntStream.range(0, 200).parallel().forEach(i -> {
            assertThat(readings(run)).containsExactly(expected);
            read.incrementAndGet();
        });
        assertThat(read).hasValue(200);
    }

    private static double[] readings(Trajectory run) {
        Node drink = ThreeNodeProblem.DRINK;
        double[] values = new double[110];
        for (int i = 0; i < 100; i++) {
            double t = (i * 7919) % 7200;
            values[i] = run.temperatureK(i % 2 == 0 ? drink : ThreeNodeProblem.GLASS, t);
        }
        values[100] = reached(run.first(RunEvent.temperatureFallsTo(drink, ZERO + 10), 0));
        values[101] =
                run.firstCrossing(0, t -> run.temperatureK(drink, t) - ZERO - 6).orElseThrow();
        values[102] = run.ledger(5000).totalHeatJ();
        values[103] = run.enthalpyJ(drink, 4321);
        values[104] = run.evaluate("outside", 1234).flowOf(0);
        return values;
    }
}
