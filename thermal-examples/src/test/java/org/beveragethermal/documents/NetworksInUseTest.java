/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.core.batch.BatchLaw;
import org.beveragethermal.core.batch.BatchNetwork;
import org.beveragethermal.core.batch.BatchSamples;
import org.beveragethermal.core.batch.BatchSolver;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.GivenHeat;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.network.SensibleStore;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.core.solver.ChangedState;
import org.beveragethermal.core.solver.Mixing;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Phase;
import org.beveragethermal.core.solver.RunReadings;
import org.beveragethermal.core.solver.Sensitivity;
import org.beveragethermal.core.solver.StateChange;
import org.beveragethermal.core.solver.Trajectory;
import org.junit.jupiter.api.Test;

/** Nodes, paths, stores and laws of a user's own on the engine, against closed forms. */
class NetworksInUseTest {

    private static final double CAPACITY = 3000;
    private static final double CONDUCTANCE = 0.5;
    private static final double START = 295.15;
    private static final double ROOM = 278.15;
    private static final double ZERO_CELSIUS_K = 273.15;

    /** A body whose amount is what it has taken up; its temperature does not depend on it. */
    private record Soaking(double capacityJPerK) implements Store {
        @Override
        public int amountCount() {
            return 1;
        }

        @Override
        public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
            out.temperatureK = ZERO_CELSIUS_K + enthalpyJ / capacityJPerK;
            out.temperaturePerJoule = 1 / capacityJPerK;
            out.kelvinPerJoule = 1 / capacityJPerK;
            out.temperaturePerAmount[0] = 0;
            out.kelvinPerAmount[0] = 0;
        }

        @Override
        public double enthalpyJ(double temperatureK, double... amounts) {
            return capacityJPerK * (temperatureK - ZERO_CELSIUS_K);
        }
    }

    /** Newton's law, and a steady drip on the first end's amount. */
    private record Drip(String name, Node from, Boundary to) implements Path {
        @Override
        public List<End> ends() {
            return List.of(from, to);
        }

        @Override
        public List<Account> accounts() {
            return List.of(Account.heat("convection", 0, 1), Account.change("drip", 0, 0));
        }

        @Override
        public void evaluate(PathEvaluation e) {
            e.flow(0, CONDUCTANCE * (e.temperatureK(0) - e.temperatureK(1)));
            e.flow(1, 0.001);
            e.flowByTemperature(0, 0, CONDUCTANCE);
            e.flowByTemperature(0, 1, -CONDUCTANCE);
        }
    }

    private static double newton(double seconds) {
        return ROOM + (START - ROOM) * Math.exp(-CONDUCTANCE * seconds / CAPACITY);
    }

    @Test
    void aStoreAndAPathOfOnesOwn() {
        Node body = Node.of("body", new Soaking(CAPACITY), START, 0.0);
        Path drip = new Drip("drip", body, Boundary.constant("room", ROOM));
        Trajectory run = NetworkSolver.standard().solve(Network.of(List.of(body), List.of(drip)), 3600);
        assertThat(run.temperatureK(body, 3600)).isCloseTo(newton(3600), within(1e-3));
        assertThat(run.amount(body, 0, 3600)).isCloseTo(3.6, within(1e-9));
    }

    @Test
    void slopesInFactorsAndInTheStart() {
        Node body = Node.sensible("body", CAPACITY, START);
        Path film = DirectPath.of(
                        "film", body, Boundary.constant("room", ROOM), "convection", HeatLaw.conductance(CONDUCTANCE))
                .scaledBy("film");
        Network network = Network.of(List.of(body), List.of(film));
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-6).solve(network, 3600);
        double share = CONDUCTANCE * 3600 / CAPACITY;
        double byFactor = -share * Math.exp(-share) * (START - ROOM);
        Sensitivity sensitivity = Sensitivity.of(run, List.of("film"), List.of(body));
        assertThat(sensitivity.temperatureSlope("film", body, 3600)).isCloseTo(byFactor, within(1e-3));
        RunReadings readings = RunReadings.of(run, List.of(body), List.of(1.0));
        assertThat(readings.temperaturesK(new double[] {3600})[0]).isCloseTo(newton(3600), within(1e-4));
        assertThat(readings.slopes(List.of("film"), new double[] {3600})[0][0]).isCloseTo(byFactor, within(1e-3));
        PreparedNetwork prepared = network.prepare();
        assertThat(prepared.network()).isSameAs(network);
        assertThat(body.store()).isEqualTo(new SensibleStore(CAPACITY));
    }

    @Test
    void heatThatIsGivenIsWeightedByWhatIsLeft() {
        Node body = Node.of("body", new Soaking(CAPACITY), START, 0.25);
        SmoothFunction half = new SmoothFunction() {
            @Override
            public double at(double x) {
                return 2 * x;
            }

            @Override
            public double slope(double x) {
                return 2;
            }
        };
        GivenHeat lamp = GivenHeat.of("lamp", Boundary.constant("lamp", 3000), body, "light", TimeFunction.constant(10))
                .weightedBy(new AmountWeight(body, 0, half));
        Trajectory run = NetworkSolver.standard().solve(Network.of(List.of(body), List.of(lamp)), 600);
        assertThat(run.temperatureK(body, 600)).isCloseTo(START + 600 * 5 / CAPACITY, within(1e-6));
    }

    @Test
    void aLawStatesItsSlopes() {
        HeatFlow flow = new HeatFlow();
        HeatLaw.conductance(CONDUCTANCE).evaluate(START, ROOM, flow);
        assertThat(flow.watts).isCloseTo(CONDUCTANCE * (START - ROOM), within(1e-12));
        assertThat(flow.perFromKelvin).isEqualTo(-flow.perToKelvin);
    }

    @Test
    void aLawForManyBodiesAtOnce() {
        BatchLaw newton = (fromK, toK, watts, perFrom, perTo, n) -> {
            for (int i = 0; i < n; i++) {
                watts[i] = CONDUCTANCE * (fromK[i] - toK[i]);
                perFrom[i] = CONDUCTANCE;
                perTo[i] = -CONDUCTANCE;
            }
        };
        BatchNetwork network = BatchNetwork.builder()
                .node("body")
                .boundary("room")
                .link("film", "body", "room", newton)
                .build();
        BatchSamples samples = network.samples(3)
                .capacityJPerK("body", CAPACITY)
                .startK("body", 293.15, 294.15, START)
                .boundaryK("room", ROOM)
                .build();
        double[] seconds = BatchSolver.standard().timesToS(samples, "body", 283.15, 50_000);
        assertThat(seconds[2]).isCloseTo(CAPACITY / CONDUCTANCE * Math.log((START - ROOM) / 5), within(5.0));
        assertThat(seconds).isSorted();
    }

    @Test
    void aChangeBetweenTwoRunsMixesWhatWasLayered() {
        Node warm = Node.sensible("warm", CAPACITY, START);
        Node cold = Node.sensible("cold", CAPACITY, ROOM);
        StateChange mixing = new Mixing(List.of(warm, cold), List.of(0.5, 0.5));
        StateChange heating = (ChangedState state) -> {
            state.set(warm, state.enthalpyJ(warm) + CAPACITY);
            state.bring("a poker", "contact", "poker", "warm", CAPACITY);
        };
        Network network = Network.of(List.of(warm, cold), List.of());
        Trajectory run = NetworkSolver.standard()
                .solve(
                        List.of(new Phase(0, network, List.of()), new Phase(60, network, List.of(mixing, heating))),
                        120);
        double mixed = (START + ROOM) / 2;
        assertThat(run.temperatureK(cold, 100)).isCloseTo(mixed, within(1e-9));
        assertThat(run.temperatureK(warm, 100)).isCloseTo(mixed + 1, within(1e-9));
    }
}
