/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;

import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.network.Account.Entry;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every refusal that the description of a network documents. */
final class NetworkRefusalsTest {

    private static final HeatLaw LAW = HeatLaw.conductance(2);
    private static final Store ONE_AMOUNT = new OneAmountStore();
    private final Node body = Node.sensible("body", 3000, 295);
    private final Node ice = Node.of("ice", ONE_AMOUNT, 273.15, 0.5);
    private final Boundary air = Boundary.constant("air", 277);

    private record OneAmountStore() implements Store {
        @Override
        public int amountCount() {
            return 1;
        }

        @Override
        public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
            out.temperatureK = 273.15;
            out.kelvinPerJoule = 1;
        }

        @Override
        public double enthalpyJ(double temperatureK, double... amounts) {
            return 0;
        }
    }

    /** A path that states whatever account it is given and never a flow. */
    private record StatedPath(List<End> ends, List<Account> accounts) implements Path {
        @Override
        public String name() {
            return "stated";
        }

        @Override
        public void evaluate(PathEvaluation e) {
            for (int account = 0; account < accounts.size(); account++) {
                e.flow(account, 0);
            }
        }
    }

    private static void refused(ThrowingCallable call, String part) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(part);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t"})
    void blankNames(String name) {
        refused(() -> Node.sensible(name, 1, 300), "name '" + name + "'");
        refused(() -> Node.of(name, ONE_AMOUNT, 273.15, 1), "name '" + name + "'");
        refused(() -> Boundary.varying(name, TimeFunction.constant(300)), "name '" + name + "'");
        refused(() -> DirectPath.of(name, body, air, "convection", LAW), "name '" + name + "'");
        refused(() -> JunctionPath.of(name, Link.of(body, "a", LAW), Link.of(air, "b", LAW)), "name '" + name + "'");
    }

    @Test
    void blankNameOfAConstantBoundary() {
        refused(() -> Boundary.constant(" ", 300), "name ' '");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void heatCapacityThatIsNone(double capacityJPerK) {
        refused(() -> Node.sensible("body", capacityJPerK, 300), "heat capacity " + capacityJPerK + " J/K");
        refused(() -> new SensibleStore(capacityJPerK), "heat capacity " + capacityJPerK + " J/K");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -5, Double.NaN, Double.POSITIVE_INFINITY})
    void temperatureThatIsNone(double temperatureK) {
        refused(() -> Node.sensible("body", 1, temperatureK), "body at " + temperatureK + " K");
        refused(() -> Node.of("ice", ONE_AMOUNT, temperatureK, 1), "ice at " + temperatureK + " K");
        refused(() -> Boundary.constant("air", temperatureK), "air at " + temperatureK + " K");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-9, Double.NaN, Double.POSITIVE_INFINITY})
    void amountThatIsNone(double amount) {
        refused(() -> Node.of("ice", ONE_AMOUNT, 273.15, amount), "amount " + amount);
        assertThat(Node.of("ice", ONE_AMOUNT, 273.15, 0).amounts()).containsExactly(0);
    }

    @Test
    void wrongNumberOfAmounts() {
        refused(() -> Node.of("ice", ONE_AMOUNT, 273.15), "0 amounts, expected 1");
        refused(() -> Node.of("ice", ONE_AMOUNT, 273.15, 1, 2), "2 amounts, expected 1");
    }

    @Test
    void weightByAnAmountThatTheNodeDoesNotHave() {
        SmoothFunction identity = new SmoothFunction() {
            @Override
            public double at(double x) {
                return x;
            }

            @Override
            public double slope(double x) {
                return 1;
            }
        };
        assertThatNoException().isThrownBy(() -> new AmountWeight(ice, 0, identity));
        refused(() -> new AmountWeight(ice, 1, identity), "amount 1 of node ice: expected 0 to 0");
        refused(() -> new AmountWeight(ice, -1, identity), "amount -1 of node ice");
        refused(() -> new AmountWeight(body, 0, identity), "amount 0 of node body");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-9, Double.NaN, Double.POSITIVE_INFINITY})
    void conductanceThatIsNone(double wattsPerKelvin) {
        refused(() -> HeatLaw.conductance(wattsPerKelvin), "conductance " + wattsPerKelvin + " W/K");
        refused(() -> LAW.times(wattsPerKelvin), "factor " + wattsPerKelvin);
    }

    @Test
    void junctionOfFewerThanTwoLinks() {
        refused(() -> JunctionPath.of("surface", List.of()), "junction surface with 0 links");
        refused(() -> JunctionPath.of("surface", Link.of(body, "conduction", LAW)), "junction surface with 1 links");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1e-9, Double.NaN})
    void accuracyOfSurfacesThatIsNone(double accuracyK) {
        PreparedNetwork prepared = Network.of(List.of(body), List.of()).prepare();
        refused(() -> prepared.newWorkspace(Map.of(), accuracyK), "accuracy of surfaces " + accuracyK + " K");
        assertThatNoException().isThrownBy(() -> prepared.newWorkspace(Map.of(), Double.MIN_VALUE));
    }

    @Test
    void networkWithoutNodes() {
        refused(() -> Network.of(List.of(), List.of()), "network without nodes");
    }

    @Test
    void nodesOfOneName() {
        refused(() -> Network.of(List.of(body, Node.sensible("body", 5, 300)), List.of()), "two nodes named body");
        refused(() -> Network.of(List.of(body, body), List.of()), "two nodes named body");
    }

    @Test
    void pathsOfOneName() {
        Path first = DirectPath.of("film", body, air, "convection", LAW);
        Path second = DirectPath.of("film", air, body, "radiation", LAW);
        refused(() -> Network.of(List.of(body), List.of(first, second)), "two paths named film");
        Network network = Network.of(List.of(body), List.of(first));
        refused(() -> network.withPaths(List.of(first, second)), "two paths named film");
    }

    @Test
    void pathThatEndsOutsideTheNetwork() {
        Path path = DirectPath.of("film", body, ice, "convection", LAW);
        refused(() -> Network.of(List.of(body), List.of(path)), "path film ends at node ice");
        refused(() -> Network.of(List.of(body), List.of()).withPaths(List.of(path)), "path film ends at node ice");
        // The same name is not the same node.
        Node twin = Node.sensible("body", 3000, 295);
        refused(
                () -> Network.of(List.of(body), List.of(DirectPath.of("film", twin, air, "convection", LAW))),
                "path film ends at node body");
    }

    @Test
    void accountsThatDoNotFitTheirEnds() {
        assertAccountRefused(Account.heat("x", 0, 2), "end 2, expected 0 to 1");
        assertAccountRefused(Account.heat("x", -1, 1), "end -1");
        assertAccountRefused(Account.amount("x", 0, 0, 1, 0), "amount 0 of node body");
        assertAccountRefused(Account.change("x", 1, 1), "amount 1 of node ice");
        assertAccountRefused(Account.change("x", 1, -2), "amount -2 of node ice");
        Path atTheAir = new StatedPath(List.of(air), List.of(Account.change("x", 0, -2)));
        refused(() -> Network.of(List.of(body), List.of(atTheAir)), "amount -2 of boundary air");
        assertThatNoException()
                .isThrownBy(() -> Network.of(
                        List.of(body, ice),
                        List.of(new StatedPath(
                                List.of(body, ice), List.of(Account.heat("x", 0, 1), Account.change("y", 1, 0))))));
    }

    @Test
    void heatFromNothing() {
        String part = "heat must leave one end and enter another";
        assertAccountRefused(new Account("x", true, List.of(new Entry(0, -1, 1))), part);
        assertAccountRefused(new Account("x", true, List.of(new Entry(0, -1, -1), new Entry(1, -1, 2))), part);
        assertAccountRefused(new Account("x", true, List.of(new Entry(0, -1, 1), new Entry(1, -1, 1))), part);
        assertAccountRefused(new Account("x", true, List.of(new Entry(0, -1, -1), new Entry(1, 0, 1))), part);
    }

    @Test
    void accountWithoutAFiniteFactor() {
        for (double factor : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
            assertAccountRefused(new Account("x", false, List.of(new Entry(1, 0, factor))), "factor " + factor);
        }
    }

    @Test
    void pathOfAUsersOwnWithoutAName() {
        Path nameless = new Path() {
            @Override
            public String name() {
                return " ";
            }

            @Override
            public List<End> ends() {
                return List.of(body, air);
            }

            @Override
            public List<Account> accounts() {
                return List.of();
            }

            @Override
            public void evaluate(PathEvaluation e) {}
        };
        refused(() -> Network.of(List.of(body), List.of(nameless)), "name ' '");
    }

    @Test
    void storeWithoutAnEnthalpyAtTheStart() {
        Store lost = new Store() {
            @Override
            public int amountCount() {
                return 0;
            }

            @Override
            public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
                out.temperatureK = 280;
            }

            @Override
            public double enthalpyJ(double temperatureK, double... amounts) {
                return Double.NaN;
            }
        };
        refused(() -> Node.of("lost", lost, 290), "node lost at 290.0 K");
    }

    private void assertAccountRefused(Account account, String part) {
        Path path = new StatedPath(List.of(body, ice), List.of(account));
        refused(() -> Network.of(List.of(body, ice), List.of(path)), part);
    }

    @Test
    void nodeOfAnotherNetwork() {
        PreparedNetwork prepared = Network.of(List.of(ice, body), List.of()).prepare();
        assertThat(prepared.offset(ice)).isZero();
        assertThat(prepared.offset(body)).isEqualTo(2);
        refused(() -> prepared.offset(Node.sensible("body", 3000, 295)), "node body");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY})
    void timeFunctionsThatAreNotFinite(double value) {
        refused(() -> TimeFunction.constant(value), "value " + value);
        refused(() -> TimeFunction.constant(3).times(value), "value " + value);
        refused(() -> TimeFunction.smooth(t -> value).at(3), "value " + value);
        refused(() -> TimeFunction.linear(new double[] {0, 1}, new double[] {280, value}), "point 1");
        refused(() -> TimeFunction.linear(new double[] {value, 1}, new double[] {280, 281}), "point 0");
    }

    @Test
    void pointsThatMakeNoLine() {
        refused(() -> TimeFunction.linear(new double[] {}, new double[] {}), "0 times and 0 values");
        refused(() -> TimeFunction.linear(new double[] {0, 1}, new double[] {280}), "2 times and 1 values");
        refused(() -> TimeFunction.linear(new double[] {0, 5, 5}, new double[] {1, 2, 3}), "time 5.0 s after 5.0 s");
        refused(() -> TimeFunction.linear(new double[] {0, 5, 4}, new double[] {1, 2, 3}), "time 4.0 s after 5.0 s");
    }
}
