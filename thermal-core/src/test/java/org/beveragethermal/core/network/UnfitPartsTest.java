/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A law, a store or a boundary that gives no number is named, whichever part of it gives none. */
final class UnfitPartsTest {

    private final Node first = Node.sensible("first", 100, 290);
    private final Node second = Node.sensible("second", 200, 295);
    private final Boundary air = Boundary.constant("air", 300);
    private final Path good = DirectPath.of("good", first, second, "conduction", HeatLaw.conductance(2));

    /** What a law or a path of a user's own says. */
    private static HeatLaw law(double watts, double perFrom, double perTo) {
        return (from, to, out) -> {
            out.watts = watts;
            out.perFromKelvin = perFrom;
            out.perToKelvin = perTo;
        };
    }

    private static final class Said implements Path {
        private final List<End> ends;
        private final double[] flows;
        private final double[] byTemperature;
        private final double[] byTime;

        Said(List<End> ends, double[] flows, double[] byTemperature, double[] byTime) {
            this.ends = ends;
            this.flows = flows;
            this.byTemperature = byTemperature;
            this.byTime = byTime;
        }

        @Override
        public List<End> ends() {
            return ends;
        }

        @Override
        public String name() {
            return "said";
        }

        @Override
        public List<Account> accounts() {
            List<Account> accounts = new ArrayList<>();
            for (int a = 0; a < flows.length; a++) {
                accounts.add(Account.heat("said " + a, 0, 1));
            }
            return accounts;
        }

        @Override
        public void evaluate(PathEvaluation e) {
            for (int a = 0; a < flows.length; a++) {
                e.flow(a, flows[a]);
                e.flowByTemperature(a, 0, byTemperature[a]);
                e.flowByTemperature(a, 1, 1);
                e.flowByTime(a, byTime[a]);
            }
        }
    }

    private record Strange(double kelvin, double perJoule, double error) implements Store {
        @Override
        public int amountCount() {
            return 0;
        }

        @Override
        public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
            out.temperatureK = kelvin;
            out.temperaturePerJoule = perJoule;
            out.kelvinPerJoule = error;
        }

        @Override
        public double enthalpyJ(double temperatureK, double... amounts) {
            return 0;
        }
    }

    private record Weather(double kelvin, double rate) implements TimeFunction {
        @Override
        public double at(double timeS) {
            return kelvin;
        }

        @Override
        public double rate(double timeS) {
            return rate;
        }
    }

    private static PreparedNetwork of(List<Node> nodes, Path... paths) {
        return Network.of(nodes, List.of(paths)).prepare();
    }

    /** Both ways of evaluating name the same part. */
    private static void assertNamed(PreparedNetwork prepared, double[] state, boolean derivatives, int part) {
        PreparedNetwork.Workspace workspace = prepared.newWorkspace(Map.of());
        assertThat(workspace.evaluate(0, state, derivatives)).isEqualTo(part);
        assertThat(prepared.newWorkspace(Map.of())
                        .evaluateRates(0, state, derivatives, new double[prepared.stateSize()]))
                .isEqualTo(part);
    }

    private void assertNamed(Path bad, boolean derivatives, int part) {
        PreparedNetwork prepared =
                part == 0 ? of(List.of(first, second), bad, good) : of(List.of(first, second), good, bad);
        assertNamed(prepared, prepared.initialState(), derivatives, part);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void partsThatGiveNoNumber(double bad) {
        PreparedNetwork two = of(List.of(first, second), good);
        assertNamed(two, new double[] {1000, bad}, false, 2);
        assertNamed(two, new double[] {bad, 1000}, true, 1);
        PreparedNetwork alone = of(List.of(first, second));
        assertNamed(alone, new double[] {bad, 1000}, true, 0);
        assertNamed(alone, new double[] {1000, bad}, false, 1);
        for (Strange store : List.of(
                new Strange(bad, 0.01, 0.01),
                new Strange(280, bad, 0.01),
                new Strange(280, 0.01, bad),
                new Strange(280, 0.01, 0))) {
            Node strange = Node.of("strange", store, 280);
            PreparedNetwork prepared = of(List.of(first, second, strange), good);
            assertNamed(prepared, prepared.initialState(), false, 3);
            PreparedNetwork only = of(List.of(strange));
            assertNamed(only, only.initialState(), false, 0);
        }
        for (int part = 0; part < 2; part++) {
            assertNamed(DirectPath.of("bad", first, air, "x", law(bad, 1, -1)), false, part);
            assertNamed(DirectPath.of("bad", first, second, "x", law(1, bad, -1)), true, part);
            assertNamed(DirectPath.of("bad", first, second, "x", law(1, 1, bad)), true, part);
            for (int account = 0; account < 2; account++) {
                double[] fine = {3, 5};
                double[] one = fine.clone();
                one[account] = bad;
                List<End> ends = List.of(first, second);
                assertNamed(new Said(ends, one, fine, fine), false, part);
                assertNamed(new Said(ends, one, fine, fine), true, part);
                assertNamed(new Said(ends, fine, one, fine), true, part);
            }
        }
        // The first path at a boundary is named for it; what derivatives are like does not matter unless they are
        // wanted.
        Boundary weather = Boundary.varying("weather", new Weather(bad, 0));
        assertNamed(DirectPath.of("bad", first, weather, "x", HeatLaw.conductance(1)), false, 1);
        assertNamed(DirectPath.of("bad", weather, second, "x", HeatLaw.conductance(1)), false, 0);
        assertNamed(DirectPath.of("bad", first, second, "x", law(1, bad, -1)), false, -1);
        assertNamed(new Said(List.of(first, second), new double[] {1}, new double[] {bad}, new double[1]), false, -1);
    }

    private static int ratesInTime(PreparedNetwork prepared) {
        PreparedNetwork.Workspace workspace = prepared.newWorkspace(Map.of());
        assertThat(workspace.evaluate(0, prepared.initialState(), true)).isEqualTo(-1);
        return workspace.flowTimeDerivative(0, new double[prepared.ledgerSize()]);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void ratesInTimeThatAreNone(double bad) {
        List<Node> nodes = List.of(first, second);
        Boundary weather = Boundary.varying("weather", new Weather(280, bad));
        Path film = DirectPath.of("film", first, weather, "x", HeatLaw.conductance(1));
        assertThat(ratesInTime(of(nodes, good, film))).isEqualTo(1);
        assertThat(ratesInTime(of(nodes, film, good))).isZero();
        double[] fine = {3, 5};
        Path said = new Said(List.of(weather, first), fine, fine, fine);
        assertThat(ratesInTime(of(nodes, good, said))).isEqualTo(1);
        assertThat(ratesInTime(of(nodes, said, good))).isZero();
        for (double[] one : List.of(new double[] {bad, 5}, new double[] {3, bad})) {
            assertThat(ratesInTime(of(nodes, good, new Said(List.of(first, air), fine, fine, one))))
                    .isEqualTo(1);
        }
        assertThat(ratesInTime(of(nodes, good, new Said(List.of(first, air), fine, fine, fine))))
                .isEqualTo(-1);
    }

    /** A network is steady if its boundaries and all its paths are; a path of a user's own is not unless it says so. */
    @Test
    void steadyIsWhatNothingInTimeChanges() {
        List<Node> nodes = List.of(first, second);
        double[] fine = {3};
        Path said = new Said(List.of(first, air), fine, fine, fine);
        Path sun = GivenHeat.of("sun", air, first, "sun", TimeFunction.constant(3));
        Path film = DirectPath.of("film", first, air, "x", law(1, 1, -1));
        Path outside =
                DirectPath.of("outside", first, Boundary.varying("weather", new Weather(280, 1)), "x", law(1, 1, -1));
        assertThat(good.isSteady()).isTrue();
        assertThat(said.isSteady()).isFalse();
        assertThat(of(nodes, good, film).newWorkspace(Map.of()).isSteady()).isTrue();
        assertThat(of(nodes, good, said).newWorkspace(Map.of()).isSteady()).isFalse();
        assertThat(of(nodes, sun, good).newWorkspace(Map.of()).isSteady()).isFalse();
        assertThat(of(nodes, good, outside).newWorkspace(Map.of()).isSteady()).isFalse();
    }
}
