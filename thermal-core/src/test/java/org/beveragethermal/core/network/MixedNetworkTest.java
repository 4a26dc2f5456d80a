/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.junit.jupiter.api.Test;

/**
 * A network with one part of every kind: its rates, derivatives and flows against central differences, against balances and against each
 * other.
 */
final class MixedNetworkTest {

    private static final double SIGMA = 5.670374419e-8;

    /** Heat capacity that grows with warmth: T = 270 + 80 ln(1 + H/40 kJ). */
    private record Curved() implements Store {
        @Override
        public int amountCount() {
            return 0;
        }

        @Override
        public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
            out.temperatureK = 270 + 80 * Math.log1p(enthalpyJ / 40_000);
            out.temperaturePerJoule = 80 / (40_000 + enthalpyJ);
            out.kelvinPerJoule = 1 / 450.0;
        }

        @Override
        public double enthalpyJ(double temperatureK, double... amounts) {
            return 40_000 * Math.expm1((temperatureK - 270) / 80);
        }
    }

    /** Water [kg] whose heat capacity grows with it, and a second amount that warms it by 5 K per unit. */
    private record Filling() implements Store {
        @Override
        public int amountCount() {
            return 2;
        }

        @Override
        public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
            double capacity = 100 + 4190 * amounts[offset];
            out.temperatureK = 273.15 + enthalpyJ / capacity + 5 * amounts[offset + 1];
            out.temperaturePerJoule = 1 / capacity;
            out.temperaturePerAmount[0] = -4190 * enthalpyJ / (capacity * capacity);
            out.temperaturePerAmount[1] = 5;
            out.kelvinPerJoule = 1 / capacity;
            out.kelvinPerAmount[0] = 80;
            out.kelvinPerAmount[1] = 5;
        }

        @Override
        public double enthalpyJ(double temperatureK, double... amounts) {
            return (100 + 4190 * amounts[0]) * (temperatureK - 273.15 - 5 * amounts[1]);
        }
    }

    /** Saturates with the amount. */
    private static final SmoothFunction FADE = new SmoothFunction() {
        @Override
        public double at(double x) {
            return 1 - Math.exp(-x / 0.2);
        }

        @Override
        public double slope(double x) {
            return Math.exp(-x / 0.2) / 0.2;
        }
    };

    private static final HeatLaw FILM = HeatLaw.of((from, to) -> 1.5 * Math.atan((from - to) / 4));
    private static final HeatLaw RADIATION =
            HeatLaw.of((from, to) -> 0.06 * SIGMA * (Math.pow(from, 4) - Math.pow(to, 4)));

    private final Node drink = Node.sensible("drink", 3100, 289);
    private final Node glass = Node.sensible("glass", 400, 296);
    private final Node wax = Node.of("wax", new Curved(), 301);
    private final Node water = Node.of("water", new Filling(), 279, 0.3, 0.2);
    private final Boundary air = Boundary.constant("air", 295);
    private final Boundary room = Boundary.varying("room", TimeFunction.smooth(t -> 285 + 6 * Math.sin(t / 900)));
    private final Boundary sky =
            Boundary.varying("sky", TimeFunction.linear(new double[] {0, 1000, 5000}, new double[] {250, 262, 270}));

    /** Water that runs off: what it takes along depends on its temperature, its amounts, a factor and time. */
    private final class Drain implements Path {
        @Override
        public String name() {
            return "drain";
        }

        @Override
        public List<End> ends() {
            return List.of(water, drink, sky);
        }

        @Override
        public List<Account> accounts() {
            return List.of(
                    Account.heat("advection", 0, 1), Account.change("runs off", 0, 0), Account.change("ages", 0, 1));
        }

        @Override
        public List<String> multipliers() {
            return List.of("tap", "film");
        }

        @Override
        public double[] knots() {
            return new double[] {1000, 333};
        }

        @Override
        public void evaluate(PathEvaluation e) {
            double open = 1e-4 * (2 + Math.cos(e.timeS() / 700));
            double openRate = -1e-4 * Math.sin(e.timeS() / 700) / 700;
            double tap = e.multiplier(0);
            double mass = e.amount(0, 0);
            double rise = e.temperatureK(0) - e.temperatureK(1);
            double flow = open * tap * mass;
            e.flow(0, 4190 * flow * rise + 1e-3 * e.temperatureK(2));
            e.flow(1, -flow);
            e.flow(2, 1e-3 * e.amount(0, 1) * e.multiplier(1));
            e.flowByTemperature(0, 0, 4190 * flow);
            e.flowByTemperature(0, 1, -4190 * flow);
            e.flowByTemperature(0, 2, 1e-3);
            e.flowByAmount(0, 0, 0, 4190 * open * tap * rise);
            e.flowByAmount(1, 0, 0, -open * tap);
            e.flowByAmount(2, 0, 1, 1e-3 * e.multiplier(1));
            e.flowByMultiplier(0, 0, 4190 * open * mass * rise);
            e.flowByMultiplier(1, 0, -open * mass);
            e.flowByMultiplier(2, 1, 1e-3 * e.amount(0, 1));
            e.flowByTime(0, 4190 * openRate * tap * mass * rise);
            e.flowByTime(1, -openRate * tap * mass);
        }
    }

    private final List<Path> paths = List.of(
            DirectPath.of("conduction", drink, glass, "conduction", HeatLaw.conductance(4))
                    .scaledBy("wall"),
            JunctionPath.of(
                    "skin",
                    Link.of(glass, "conduction", HeatLaw.conductance(6)).scaledBy("wall"),
                    Link.of(room, "convection", FILM).scaledBy("film"),
                    Link.of(sky, "radiation", RADIATION)),
            DirectPath.of("convection", room, drink, "convection", FILM).scaledBy("film"),
            DirectPath.of("leak", drink, air, "conduction", HeatLaw.conductance(0.7)),
            GivenHeat.of("sun", sky, wax, "sunlight", TimeFunction.smooth(t -> 20 * Math.cos(t / 500)))
                    .scaledBy("sun")
                    .weightedBy(new AmountWeight(water, 0, FADE)),
            DirectPath.of("wax to glass", wax, glass, "conduction", HeatLaw.conductance(0.4))
                    .scaledBy("wax"),
            DirectPath.of("water to sky", water, sky, "radiation", RADIATION),
            DirectPath.of("glass to wax", glass, wax, "convection", FILM),
            JunctionPath.of(
                    "shore",
                    Link.of(water, "contact", HeatLaw.conductance(9)).weightedBy(new AmountWeight(water, 0, FADE)),
                    Link.of(drink, "convection", FILM).scaledBy("film"),
                    Link.of(wax, "conduction", HeatLaw.conductance(2))),
            DirectPath.of("stand", drink, wax, "conduction", HeatLaw.conductance(0.25)),
            DirectPath.of("bath", sky, glass, "convection", HeatLaw.conductance(0.3)),
            new Drain());

    private final PreparedNetwork prepared =
            Network.of(List.of(wax, drink, water, glass), paths).prepare();
    private static final Map<String, Double> FACTORS =
            Map.of("wall", 1.3, "film", 0.7, "sun", 1.9, "tap", 2.1, "wax", 0.8, "nobody's", 5.0);
    private static final double TIME_S = 1234;

    private double[] rates(double timeS, double[] state, Map<String, Double> factors) {
        double[] rates = new double[prepared.stateSize()];
        assertThat(prepared.newWorkspace(factors).evaluateRates(timeS, state, false, rates))
                .isEqualTo(-1);
        return rates;
    }

    private double[] flows(double timeS, double[] state, Map<String, Double> factors) {
        PreparedNetwork.Workspace workspace = prepared.newWorkspace(factors);
        assertThat(workspace.evaluate(timeS, state, false)).isEqualTo(-1);
        return workspace.flows().clone();
    }

    private PreparedNetwork.Workspace evaluated() {
        PreparedNetwork.Workspace workspace = prepared.newWorkspace(FACTORS);
        assertThat(workspace.evaluate(TIME_S, prepared.initialState(), true)).isEqualTo(-1);
        return workspace;
    }

    /** A step for differences, about a hundredth of a kelvin or a thousandth of an amount. */
    private double step(int row) {
        return row == prepared.offset(water) + 1 || row == prepared.offset(water) + 2 ? 1e-3 : 20;
    }

    private static double[] moved(double[] state, int row, double by) {
        double[] moved = state.clone();
        moved[row] += by;
        return moved;
    }

    private static void assertClose(double[] stated, double[] after, double[] before, double step, String what) {
        for (int i = 0; i < stated.length; i++) {
            double difference = (after[i] - before[i]) / step;
            assertThat(stated[i])
                    .as("%s, %d", what, i)
                    .isCloseTo(difference, within(2e-5 * Math.abs(difference) + 2e-7 / step));
        }
    }

    @Test
    void stateIsLaidOutNodeAfterNode() {
        assertThat(prepared.stateSize()).isEqualTo(6);
        assertThat(prepared.ledgerSize()).isEqualTo(16);
        assertThat(prepared.offset(wax)).isZero();
        assertThat(prepared.offset(drink)).isEqualTo(1);
        assertThat(prepared.offset(water)).isEqualTo(2);
        assertThat(prepared.offset(glass)).isEqualTo(5);
        double[] state = prepared.initialState();
        assertThat(state[1]).isCloseTo(3100 * (289 - 273.15), within(1e-9));
        assertThat(state[2]).isCloseTo((100 + 4190 * 0.3) * (279 - 273.15 - 1), within(1e-9));
        assertThat(state[3]).isEqualTo(0.3);
        assertThat(state[4]).isEqualTo(0.2);
        PreparedNetwork.Workspace workspace = evaluated();
        double[] kelvin = {301, 289, 279, 296};
        for (int node = 0; node < 4; node++) {
            assertThat(workspace.temperatureK(node)).isCloseTo(kelvin[node], within(1e-9));
        }
    }

    @Test
    void knotsAreThoseOfAllBoundariesAndPathsInOrderAndOnce() {
        assertThat(prepared.knots()).containsExactly(0, 333, 1000, 5000);
        prepared.knots()[0] = 7;
        assertThat(prepared.knots()[0]).isZero();
    }

    /** What leaves one end enters another: all enthalpies together change by what the boundaries bring. */
    @Test
    void ratesAreWhatTheAccountsGiveAndTake() {
        double[] state = prepared.initialState();
        double[] rates = rates(TIME_S, state, FACTORS);
        double[] flows = flows(TIME_S, state, FACTORS);
        double[] expected = new double[6];
        double fromBoundaries = 0;
        int account = 0;
        for (Path path : paths) {
            for (Account one : path.accounts()) {
                for (Account.Entry entry : one.entries()) {
                    if (path.ends().get(entry.end()) instanceof Node node) {
                        expected[prepared.offset(node) + 1 + entry.amount()] += entry.factor() * flows[account];
                    } else {
                        fromBoundaries -= entry.factor() * flows[account];
                    }
                }
                account++;
            }
        }
        for (int row = 0; row < 6; row++) {
            assertThat(rates[row]).isCloseTo(expected[row], within(1e-10));
        }
        assertThat(rates[0] + rates[1] + rates[2] + rates[5]).isCloseTo(fromBoundaries, within(1e-9));
        // Water that runs off, by hand.
        assertThat(rates[3]).isCloseTo(-1e-4 * (2 + Math.cos(TIME_S / 700)) * 2.1 * 0.3, within(1e-15));
    }

    @Test
    void jacobianIsThatOfDifferences() {
        double[] state = prepared.initialState();
        PreparedNetwork.Workspace workspace = evaluated();
        double[][] columns = new double[6][6];
        workspace.jacobian((row, column, value) -> columns[column][row] += value);
        for (int column = 0; column < 6; column++) {
            double h = step(column);
            assertClose(
                    columns[column],
                    rates(TIME_S, moved(state, column, h), FACTORS),
                    rates(TIME_S, moved(state, column, -h), FACTORS),
                    2 * h,
                    "rates by column " + column);
        }
        double[] flat = new double[37];
        JacobianPlaces places = prepared.places((row, column) -> 6 * column + row, 36);
        workspace.addConstantJacobian(places, flat);
        // The part that never changes: the wall of 1.3 × 4 W/K, the leak of 0.7 W/K and the bath of 0.3 W/K.
        assertThat(flat[6 * 1 + 1]).isCloseTo(-(5.2 + 0.7) / 3100, within(1e-15));
        assertThat(flat[6 * 1 + 5]).isCloseTo(5.2 / 3100, within(1e-15));
        assertThat(flat[6 * 5 + 1]).isCloseTo(5.2 / 400, within(1e-15));
        assertThat(flat[6 * 5 + 5]).isCloseTo(-(5.2 + 0.3) / 400, within(1e-15));
        workspace.addVaryingJacobian(places, flat);
        for (int column = 0; column < 6; column++) {
            for (int row = 0; row < 6; row++) {
                assertThat(flat[6 * column + row]).isCloseTo(columns[column][row], within(1e-14));
            }
        }
    }

    @Test
    void changesOfFlowsAndTemperaturesAreThoseOfDifferences() {
        double[] state = prepared.initialState();
        PreparedNetwork.Workspace workspace = evaluated();
        for (int row = 0; row < 6; row++) {
            double h = step(row);
            double[] change = new double[6];
            change[row] = 1;
            double[] stated = new double[16];
            workspace.flowChange(change, stated);
            assertClose(
                    stated,
                    flows(TIME_S, moved(state, row, h), FACTORS),
                    flows(TIME_S, moved(state, row, -h), FACTORS),
                    2 * h,
                    "flows by row " + row);
            PreparedNetwork.Workspace after = prepared.newWorkspace(FACTORS);
            PreparedNetwork.Workspace before = prepared.newWorkspace(FACTORS);
            after.evaluate(TIME_S, moved(state, row, h), false);
            before.evaluate(TIME_S, moved(state, row, -h), false);
            for (int node = 0; node < 4; node++) {
                double difference = (after.temperatureK(node) - before.temperatureK(node)) / (2 * h);
                assertThat(workspace.temperatureChangeK(node, change))
                        .as("node %d by row %d", node, row)
                        .isCloseTo(difference, within(1e-5 * Math.abs(difference) + 1e-11));
            }
        }
        // Two changes at once add up.
        double[] both = new double[16];
        workspace.flowChange(new double[] {300, -200, 100, 0.1, 0.2, -50}, both);
        double[] sum = new double[16];
        double[] one = new double[16];
        double[] changes = {300, -200, 100, 0.1, 0.2, -50};
        for (int row = 0; row < 6; row++) {
            double[] change = new double[6];
            change[row] = changes[row];
            workspace.flowChange(change, one);
            for (int a = 0; a < 16; a++) {
                sum[a] += one[a];
            }
        }
        for (int a = 0; a < 16; a++) {
            assertThat(both[a]).isCloseTo(sum[a], within(1e-10));
        }
    }

    @Test
    void rateOfFlowsInTimeIsThatOfDifferences() {
        double[] state = prepared.initialState();
        PreparedNetwork.Workspace workspace = evaluated();
        assertThat(workspace.isSteady()).isFalse();
        double[] stated = new double[16];
        assertThat(workspace.flowTimeDerivative(TIME_S, stated)).isEqualTo(-1);
        assertClose(stated, flows(TIME_S + 1, state, FACTORS), flows(TIME_S - 1, state, FACTORS), 2, "flows by time");
    }

    @Test
    void flowsByAFactorAreThoseOfDifferences() {
        double[] state = prepared.initialState();
        PreparedNetwork.Workspace workspace = evaluated();
        for (String name : FACTORS.keySet()) {
            Map<String, Double> more = new HashMap<>(FACTORS);
            more.merge(name, 1e-4, Double::sum);
            Map<String, Double> less = new HashMap<>(FACTORS);
            less.merge(name, -1e-4, Double::sum);
            double[] stated = new double[16];
            Arrays.fill(stated, 99);
            workspace.flowByMultiplier(name, stated);
            assertClose(stated, flows(TIME_S, state, more), flows(TIME_S, state, less), 2e-4, "flows by " + name);
        }
    }

    @Test
    void whatAPathSawCanBeAskedFor() {
        double[] state = prepared.initialState();
        PreparedNetwork.Workspace workspace = evaluated();
        int account = 0;
        for (int p = 0; p < paths.size(); p++) {
            Path path = paths.get(p);
            PathEvaluation e = workspace.evaluation(p);
            for (int end = 0; end < path.ends().size(); end++) {
                double kelvin = path.ends().get(end) instanceof Boundary boundary
                        ? boundary.temperatureK().at(TIME_S)
                        : workspace.temperatureK(
                                prepared.network().nodes().indexOf(path.ends().get(end)));
                assertThat(workspace.endTemperatureK(p, end)).isCloseTo(kelvin, within(1e-12));
                assertThat(e.temperatureK(end)).isCloseTo(kelvin, within(1e-12));
            }
            assertThat(e.timeS()).isEqualTo(TIME_S);
            for (int a = 0; a < path.accounts().size(); a++) {
                assertThat(e.flowOf(a)).isCloseTo(workspace.flows()[account++], within(1e-12));
            }
        }
        assertThat(workspace.evaluation(11).amount(0, 0)).isEqualTo(state[3]);
        assertThat(workspace.evaluation(11).amount(0, 1)).isEqualTo(state[4]);
        // Slopes of a path that is laid out flat are stated too: 1.3 × 4 W/K.
        assertThat(workspace.evaluation(0).derivativeOf(0, 0)).isCloseTo(5.2, within(1e-12));
    }

    @Test
    void sizeIsTheLargestOfAllPartsInKelvin() {
        PreparedNetwork.Workspace workspace = evaluated();
        assertThat(workspace.sizeK(new double[6])).isZero();
        assertThat(workspace.sizeK(new double[] {0, -31, 0, 0, 0, 0})).isCloseTo(0.01, within(1e-15));
        assertThat(workspace.sizeK(new double[] {9, 31, 0, 0, 0, 0})).isCloseTo(0.02, within(1e-15));
        assertThat(workspace.sizeK(new double[] {0, 0, 1357, 0, 0, 0})).isCloseTo(1, within(1e-12));
        assertThat(workspace.sizeK(new double[] {0, 0, 1357, -0.1, 0, 0})).isCloseTo(8, within(1e-12));
        assertThat(workspace.sizeK(new double[] {0, 0, 0, 0.1, 3, 400})).isCloseTo(15, within(1e-12));
        assertThat(workspace.sizeK(new double[] {0, 0, 0, 0, 0, 400})).isCloseTo(1, within(1e-12));
        assertThat(workspace.sizeK(new double[] {9, Double.NaN, 0, 0, 0, 1e9})).isNaN();
    }
}
