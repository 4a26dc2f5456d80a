/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.junit.jupiter.api.Test;

/** Values that describe a network: they say what they were given and cannot be changed from outside. */
final class DescriptionsTest {

    @Test
    void linearTimeFunctionFollowsItsPoints() {
        TimeFunction function = TimeFunction.linear(new double[] {10, 20, 40}, new double[] {1, 3, -1});
        assertThat(function.at(0)).isEqualTo(1);
        assertThat(function.at(10)).isEqualTo(1);
        assertThat(function.at(15)).isEqualTo(2);
        assertThat(function.at(20)).isEqualTo(3);
        assertThat(function.at(30)).isEqualTo(1);
        assertThat(function.at(40)).isEqualTo(-1);
        assertThat(function.at(1e9)).isEqualTo(-1);
        assertThat(function.knots()).containsExactly(10, 20, 40);
    }

    @Test
    void rateAtAKnotIsTheRateJustAfterIt() {
        TimeFunction function = TimeFunction.linear(new double[] {10, 20, 40}, new double[] {1, 3, -1});
        assertThat(function.rate(9)).isZero();
        assertThat(function.rate(10)).isCloseTo(0.2, within(1e-15));
        assertThat(function.rate(20)).isCloseTo(-0.2, within(1e-15));
        assertThat(function.rate(40)).isZero();
    }

    @Test
    void smoothTimeFunctionHasTheRateOfItsFunction() {
        TimeFunction function = TimeFunction.smooth(t -> 280 + 8 * Math.sin(t / 1000));
        for (double t : new double[] {0, 333, 5000}) {
            assertThat(function.rate(t)).isCloseTo(8e-3 * Math.cos(t / 1000), within(1e-8));
        }
        assertThat(function.knots()).isEmpty();
    }

    /** A clock that starts 10 s later shows 5 s when the other shows 15 s. */
    @Test
    void functionOnAClockThatStartsLater() {
        TimeFunction function = TimeFunction.linear(new double[] {10, 20, 40}, new double[] {1, 3, -1});
        TimeFunction later = function.startingAt(10);
        assertThat(later.at(5)).isEqualTo(2);
        assertThat(later.at(10)).isEqualTo(3);
        assertThat(later.rate(5)).isCloseTo(0.2, within(1e-15));
        assertThat(later.rate(15)).isCloseTo(-0.2, within(1e-15));
        assertThat(later.knots()).containsExactly(0, 10, 30);
        TimeFunction constant = TimeFunction.constant(7);
        assertThat(constant.startingAt(99)).isEqualTo(constant);
        assertThat(constant.at(3)).isEqualTo(7);
        assertThat(constant.rate(3)).isZero();
        assertThat(constant.knots()).isEmpty();
    }

    @Test
    void functionTimesAFactor() {
        TimeFunction function = TimeFunction.linear(new double[] {10, 20, 40}, new double[] {1, 3, -1})
                .times(-4);
        assertThat(function.at(15)).isEqualTo(-8);
        assertThat(function.rate(15)).isCloseTo(-0.8, within(1e-14));
        assertThat(function.knots()).containsExactly(10, 20, 40);
    }

    /** Twice the area carries twice the heat, with twice the slopes. */
    @Test
    void lawOverAnotherArea() {
        HeatFlow flow = new HeatFlow();
        HeatLaw.conductance(3).times(2.5).evaluate(300, 290, flow);
        assertThat(flow.watts).isEqualTo(75);
        assertThat(flow.perFromKelvin).isEqualTo(7.5);
        assertThat(flow.perToKelvin).isEqualTo(-7.5);
        assertThat(HeatLaw.conductance(3).times(2.5)).isEqualTo(HeatLaw.conductance(7.5));
        HeatLaw square = (from, to, out) -> {
            out.watts = from * from - to * to;
            out.perFromKelvin = 2 * from;
            out.perToKelvin = -2 * to;
        };
        square.times(4).evaluate(3, 2, flow);
        assertThat(flow.watts).isEqualTo(20);
        assertThat(flow.perFromKelvin).isEqualTo(24);
        assertThat(flow.perToKelvin).isEqualTo(-16);
        square.times(0).evaluate(3, 2, flow);
        assertThat(flow.watts).isZero();
    }

    @Test
    void givenHeatNamesTheNodeWhoseAmountWeighsItOnce() {
        Store oneAmount = new Store() {
            @Override
            public int amountCount() {
                return 1;
            }

            @Override
            public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
                out.temperatureK = 280;
                out.kelvinPerJoule = 1;
            }

            @Override
            public double enthalpyJ(double temperatureK, double... amounts) {
                return 0;
            }
        };
        SmoothFunction square = new SmoothFunction() {
            @Override
            public double at(double x) {
                return x * x;
            }

            @Override
            public double slope(double x) {
                return 2 * x;
            }
        };
        Node ice = Node.of("ice", oneAmount, 280, 3);
        Node drink = Node.sensible("drink", 100, 300);
        Boundary sun = Boundary.constant("sun", 300);
        TimeFunction watts = TimeFunction.constant(5);
        AmountWeight weight = new AmountWeight(ice, 0, square);
        GivenHeat from = GivenHeat.of("from", ice, drink, "sun", watts).weightedBy(weight);
        GivenHeat into = GivenHeat.of("into", sun, ice, "sun", watts).weightedBy(weight);
        GivenHeat beside = GivenHeat.of("beside", sun, drink, "sun", watts).weightedBy(weight);
        assertThat(from.ends()).containsExactly(ice, drink);
        assertThat(into.ends()).containsExactly(sun, ice);
        assertThat(beside.ends()).containsExactly(sun, drink, ice);
        assertThat(beside.scaledBy("k").ends()).containsExactly(sun, drink, ice);
        for (GivenHeat path : List.of(from, into, beside)) {
            PathEvaluation e = new PathEvaluation(path);
            e.evaluate(path, 0, new double[path.ends().size()], 3);
            assertThat(e.flowOf(0)).isEqualTo(45);
            assertThat(e.derivativeOf(0, path.ends().size())).isEqualTo(30);
        }
    }

    @Test
    void workingMemoryIsHandedOutAgain() {
        Node body = Node.sensible("body", 100, 300);
        PathEvaluation e = new PathEvaluation(
                DirectPath.of("film", body, Boundary.constant("air", 280), "convection", HeatLaw.conductance(1)));
        double[] memory = e.workspace(double[].class, () -> new double[3]);
        assertThat(e.workspace(double[].class, () -> new double[4])).isSameAs(memory);
        assertThat(e.workspace(int[].class, () -> new int[5])).hasSize(5);
    }

    @Test
    void arraysAreCopiedInAndOut() {
        double[] times = {0, 1};
        double[] values = {280, 290};
        TimeFunction function = TimeFunction.linear(times, values);
        times[1] = 7;
        values[1] = 7;
        function.knots()[1] = 7;
        assertThat(function.at(1)).isEqualTo(290);
        assertThat(function.knots()).containsExactly(0, 1);
        Node node = Node.sensible("body", 10, 300);
        List<Node> nodes = new ArrayList<>(List.of(node));
        Network network = Network.of(nodes, List.of());
        nodes.clear();
        assertThat(network.nodes()).containsExactly(node);
    }

    @Test
    void enthalpyIsCountedFromZeroCelsius() {
        // By convention of Store, liquid water at 0 °C has none. A body of 100 J/K at 20 °C has 2000 J.
        assertThat(Node.sensible("body", 100, 293.15).enthalpyJ()).isCloseTo(2000, within(1e-9));
        StoreState state = new StoreState(0);
        new SensibleStore(100).evaluate(2000, new double[0], 0, state);
        assertThat(state.temperatureK).isCloseTo(293.15, within(1e-12));
        assertThat(state.temperaturePerJoule).isEqualTo(0.01);
        assertThat(state.kelvinPerJoule).isEqualTo(0.01);
    }

    @Test
    void pathsThatNameTheSameMultiplierShareIt() {
        Node body = Node.sensible("body", 100, 300);
        Boundary air = Boundary.constant("air", 280);
        HeatLaw law = HeatLaw.conductance(1);
        JunctionPath path = JunctionPath.of(
                "surface",
                Link.of(body, "a", law).scaledBy("k"),
                Link.of(air, "b", law).scaledBy("k"));
        assertThat(path.multipliers()).containsExactly("k");
        assertThat(path.accounts())
                .singleElement()
                .satisfies(account -> assertThat(account.entries())
                        .extracting(Account.Entry::factor)
                        .containsExactly(-1.0, 1.0));
        PathEvaluation e = new PathEvaluation(path);
        e.setMultiplier(0, 4);
        e.evaluate(path, 0, new double[] {300, 280});
        // Two conductances of 4 W/K in series: 2 W/K over 20 K.
        assertThat(e.flowOf(0)).isCloseTo(40, within(1e-8));
    }

    @Test
    void surfaceBetweenLinksWithoutConductanceCarriesNothing() {
        Node body = Node.sensible("body", 100, 300);
        Boundary air = Boundary.constant("air", 280);
        HeatLaw none = HeatLaw.conductance(0);
        JunctionPath path = JunctionPath.of("surface", Link.of(body, "a", none), Link.of(air, "b", none));
        PathEvaluation e = new PathEvaluation(path);
        e.evaluate(path, 0, new double[] {300, 280});
        assertThat(e.flowOf(0)).isZero();
        assertThat(e.derivativeOf(0, 0)).isZero();
        assertThat(e.derivativeOf(0, 1)).isZero();
    }
}
