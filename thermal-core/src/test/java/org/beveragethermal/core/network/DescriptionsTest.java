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
