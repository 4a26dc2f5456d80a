/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.materials.liquid.Water;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Parts of one liquid that are mixed at the start of a phase. */
final class MixingTest {

    private static final double ZERO = 273.15;
    private static final double MIXED_S = 400;
    private static final double END_S = 1500;

    private final double[] masses = {0.2, 0.35, 0.1};
    private final List<Node> parts = List.of(
            Node.of("low", LiquidStore.ofMass(Water.liquid(), masses[0]), ZERO + 2),
            Node.of("middle", LiquidStore.ofMass(Water.liquid(), masses[1]), ZERO + 11),
            Node.of("high", LiquidStore.ofMass(Water.liquid(), masses[2]), ZERO + 24));
    private final Node wall = Node.sensible("wall", 400, ZERO + 5);
    private final Boundary air = Boundary.constant("air", ZERO + 30);

    private Network network() {
        List<Node> nodes = new ArrayList<>(parts);
        nodes.add(wall);
        List<Path> paths = new ArrayList<>();
        for (Node part : parts) {
            paths.add(DirectPath.of(part.name(), part, wall, "convection", HeatLaw.conductance(0.4)));
        }
        paths.add(DirectPath.of("air", air, wall, "convection", HeatLaw.conductance(0.3)));
        return Network.of(nodes, paths);
    }

    private Mixing all() {
        return new Mixing(parts, Arrays.stream(masses).boxed().toList());
    }

    private Trajectory run(Mixing... mixings) {
        return NetworkSolver.standard()
                .solve(List.of(new Phase(0, network()), new Phase(MIXED_S, network(), List.of(mixings))), END_S);
    }

    private double enthalpy(Trajectory run, double t) {
        return parts.stream().mapToDouble(part -> run.enthalpyJ(part, t)).sum();
    }

    @Test
    void partsOfOneLiquidHaveOneTemperatureAfterwards() {
        Trajectory run = run(all());
        double first = run.temperatureK(parts.get(0), MIXED_S);
        for (Node part : parts) {
            assertThat(run.temperatureK(part, MIXED_S)).isCloseTo(first, within(1e-9));
        }
        // The wall does not take part.
        double before = Math.nextDown(MIXED_S);
        assertThat(run.temperatureK(wall, MIXED_S)).isCloseTo(run.temperatureK(wall, before), within(1e-9));
        // Between the coldest and the warmest, about the mean by mass: water's heat capacity varies little.
        double mean = 0;
        for (int i = 0; i < masses.length; i++) {
            mean += masses[i] * run.temperatureK(parts.get(i), before);
        }
        assertThat(first).isCloseTo(mean / Arrays.stream(masses).sum(), within(0.02));
    }

    @Test
    void enthalpyIsConserved() {
        Trajectory run = run(all());
        Trajectory unmixed = run();
        double before = enthalpy(unmixed, MIXED_S);
        assertThat(enthalpy(run, MIXED_S)).isCloseTo(before, within(1e-12 * before));
        assertThat(enthalpy(run, Math.nextDown(MIXED_S))).isCloseTo(before, within(1e-9 * before));
    }

    @Test
    void ledgerClosesBeforeAtAndAfterTheMixing() {
        Trajectory run = run(all());
        for (double t : new double[] {1, MIXED_S - 1, MIXED_S, MIXED_S + 1, END_S}) {
            assertThat(run.ledger(t).closure()).isLessThanOrEqualTo(1e-9);
        }
        double gained = enthalpy(run, END_S) - enthalpy(run, 0) + 400 * (run.temperatureK(wall, END_S) - (ZERO + 5));
        double fromAir = -run.ledger(END_S).heatInto("air");
        assertThat(gained).isCloseTo(fromAir, within(1e-9 * run.ledger(END_S).totalHeatJ()));
    }

    @Test
    void onlyThePartsNamedAreMixedAndMixingsFollowOneAnother() {
        Trajectory lower = run(new Mixing(parts.subList(0, 2), List.of(masses[0], masses[1])));
        double before = lower.temperatureK(parts.get(2), Math.nextDown(MIXED_S));
        assertThat(lower.temperatureK(parts.get(2), MIXED_S)).isCloseTo(before, within(1e-9));
        assertThat(lower.temperatureK(parts.get(0), MIXED_S))
                .isCloseTo(lower.temperatureK(parts.get(1), MIXED_S), within(1e-9));
        // Lower two first, then all: the same as all at once.
        Trajectory twice = run(new Mixing(parts.subList(0, 2), List.of(masses[0], masses[1])), all());
        Trajectory once = run(all());
        for (Node part : parts) {
            assertThat(twice.temperatureK(part, END_S)).isCloseTo(once.temperatureK(part, END_S), within(1e-9));
        }
    }

    @Test
    void mixingWhatIsMixedChangesNothing() {
        Trajectory once = NetworkSolver.standard().solve(List.of(new Phase(0, network(), List.of(all()))), END_S);
        Trajectory again =
                NetworkSolver.standard().solve(List.of(new Phase(0, network(), List.of(all(), all()))), END_S);
        for (Node part : parts) {
            assertThat(again.temperatureK(part, END_S)).isCloseTo(once.temperatureK(part, END_S), within(1e-9));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void shareThatIsNone(double share) {
        refused(() -> new Mixing(parts.subList(0, 2), List.of(1.0, share)), "share " + share);
    }

    @Test
    void partsAndSharesThatDoNotMatch() {
        refused(() -> new Mixing(parts.subList(0, 1), List.of(1.0)), "at least two");
        refused(() -> new Mixing(parts, List.of(1.0, 2.0)), "as many shares as parts");
        refused(() -> new Mixing(List.of(), List.of()), "at least two");
    }

    @Test
    void mixingOfAStrangerIsRefused() {
        Node stranger = Node.sensible("stranger", 1000, ZERO + 10);
        assertThatThrownBy(() -> run(new Mixing(List.of(parts.get(0), stranger), List.of(1.0, 1.0))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void listsAreCopied() {
        List<Node> nodes = new ArrayList<>(parts);
        List<Double> shares = new ArrayList<>(List.of(1.0, 1.0, 1.0));
        Mixing mixing = new Mixing(nodes, shares);
        nodes.clear();
        shares.clear();
        assertThat(mixing.nodes()).hasSize(3);
        assertThat(mixing.shares()).hasSize(3);
    }

    private static void refused(ThrowingCallable call, String part) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(part);
    }
}
