/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.benchmarks.StatedFilms.ZERO_C;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.beveragethermal.core.curve.CoolingCurve;
import org.beveragethermal.core.curve.CoolingRate;
import org.beveragethermal.core.film.FittedFilm;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.Method;

/**
 * P1b: liquid and glass as one node cool in air at 4 °C; when are they at 9 °C, from 22 °C, and from any start to any target?
 *
 * <p>Allowed error 1 s, also on pairs drawn at random for what answers any pair.
 */
final class OneNodeCooling {

    /** Time of the nominal case [s]: by SciPy's quad and DOP853. */
    static final double NOMINAL_S = 8744.415114;

    /** Air [°C]. */
    static final double AIR_C = 4;

    /** Heat capacity of the node [J/K]. */
    static final double CAPACITY_J_PER_K = TwoNodeCooling.LIQUID_J_PER_K + TwoNodeCooling.GLASS_J_PER_K;

    private static final double START_C = 22;
    private static final double WANTED_C = TwoNodeCooling.WANTED_C;
    private static final Method METHOD = Method.ORDER_4_LIGHT;
    private static final int TIGHTER = 4;
    private static final int PAIRS = 1024;
    private static final double COLDEST_C = 5;
    private static final double WARMEST_C = 35;

    private OneNodeCooling() {}

    private static void rates(double timeS, double[] at, double[] rates) {
        rates[0] = -StatedFilms.outsideWatts(at[0], AIR_C) / CAPACITY_J_PER_K;
    }

    /** As a network of the project. */
    static Network network() {
        Node bottle = Node.sensible("bottle", CAPACITY_J_PER_K, START_C + ZERO_C);
        Boundary air = Boundary.constant("air", AIR_C + ZERO_C);
        return Network.of(
                List.of(bottle),
                List.of(
                        DirectPath.of("outside", bottle, air, "convection", StatedFilms.OUTSIDE),
                        DirectPath.of("radiation", bottle, air, "radiation", StatedFilms.RADIATION)));
    }

    /** The project's solver. */
    static Prepared engine() {
        Network network = network();
        Node bottle = network.nodes().get(0);
        double wantedK = WANTED_C + ZERO_C;
        Tuned tuned = Tuned.loosest(
                0.1,
                TIGHTER,
                TwoNodeCooling.ALLOWED_S,
                "s",
                tolerance -> Math.abs(
                        OwnRun.of(network, METHOD, tolerance).timeToReach(bottle, wantedK, TwoNodeCooling.END_S)
                                - NOMINAL_S));
        OwnRun run = OwnRun.of(network, METHOD, tuned.tolerance());
        return Prepared.of(tuned, () -> run.timeToReach(bottle, wantedK, TwoNodeCooling.END_S))
                .by(METHOD);
    }

    /** The project's quadrature, for any pair and without preparation; timed on starts about the nominal one. */
    static Prepared quadrature() {
        CoolingRate rate = rate();
        double[][] pairs = pairs();
        double[] references = referencesS(pairs);
        Tuned tuned = Tuned.loosest(1, TIGHTER, TwoNodeCooling.ALLOWED_S, "s", tolerance -> {
            double worst = Math.abs(rate.timeS(START_C + ZERO_C, WANTED_C + ZERO_C, tolerance) - NOMINAL_S);
            for (int i = 0; i < PAIRS; i++) {
                worst = Math.max(worst, Math.abs(rate.timeS(pairs[i][0], pairs[i][1], tolerance) - references[i]));
            }
            return worst;
        });
        double toleranceS = tuned.tolerance();
        return Prepared.of(tuned, () -> {
                    double sum = 0;
                    for (int i = 0; i < PAIRS; i++) {
                        sum += rate.timeS(START_C + ZERO_C + 1e-5 * i, WANTED_C + ZERO_C, toleranceS);
                    }
                    return sum;
                })
                .holding(PAIRS);
    }

    /** The project's prepared curve, for any pair. */
    static Prepared prepared() {
        CoolingCurve curve = curve();
        double[][] pairs = pairs();
        return Prepared.of(checked(curve, pairs), () -> {
                    double sum = 0;
                    for (int i = 0; i < PAIRS; i++) {
                        sum += curve.timeS(pairs[i][0], pairs[i][1]);
                    }
                    return sum;
                })
                .holding(PAIRS);
    }

    /** The same with each query waiting for the last. */
    static Prepared chained() {
        CoolingCurve curve = curve();
        double[][] pairs = pairs();
        return Prepared.of(checked(curve, pairs), () -> {
                    double last = 0;
                    for (int i = 0; i < PAIRS; i++) {
                        last = curve.timeS(pairs[i][0] + 1e-300 * last, pairs[i][1]);
                    }
                    return last;
                })
                .holding(PAIRS);
    }

    /** The temperature after a time, by the prepared curve. */
    static Prepared after() {
        CoolingCurve curve = curve();
        double[][] pairs = pairs();
        double[] times = referencesS(pairs);
        double worst = 0;
        for (int i = 0; i < PAIRS; i++) {
            worst = Math.max(worst, Math.abs(curve.temperatureK(pairs[i][0], times[i]) - pairs[i][1]));
        }
        return Prepared.of(Tuned.fixed(worst, RadialLayers.ALLOWED_K, "K"), () -> {
                    double sum = 0;
                    for (int i = 0; i < PAIRS; i++) {
                        sum += curve.temperatureK(pairs[i][0], times[i]);
                    }
                    return sum;
                })
                .holding(PAIRS);
    }

    /** Preparing the curve. */
    static Prepared preparing() {
        return Prepared.of(() -> curve().timeErrorS());
    }

    private static Tuned checked(CoolingCurve curve, double[][] pairs) {
        double[] references = referencesS(pairs);
        double worst = 0;
        for (int i = 0; i < PAIRS; i++) {
            worst = Math.max(worst, Math.abs(curve.timeS(pairs[i][0], pairs[i][1]) - references[i]));
        }
        return Tuned.fixed(worst, TwoNodeCooling.ALLOWED_S, "s");
    }

    private static CoolingCurve curve() {
        return rate().prepare(COLDEST_C + ZERO_C, WARMEST_C + ZERO_C);
    }

    /** By a form of the film that is fast. */
    private static CoolingRate rate() {
        double airK = AIR_C + ZERO_C;
        FittedFilm film = FittedFilm.of(StatedFilms.OUTSIDE, airK, WARMEST_C + ZERO_C, TwoNodeCooling.FOLLOWED)
                .radiating(StatedFilms.RADIATING);
        return CoolingRate.of(temperatureK -> -film.watts(temperatureK, airK) / CAPACITY_J_PER_K, airK);
    }

    /** Starts and targets drawn at random [K]. */
    private static double[][] pairs() {
        Random random = new Random(1);
        double[][] pairs = new double[PAIRS][];
        for (int i = 0; i < PAIRS; i++) {
            double target = COLDEST_C + 15 * random.nextDouble();
            double start = target + (WARMEST_C - target) * random.nextDouble();
            pairs[i] = new double[] {start + ZERO_C, target + ZERO_C};
        }
        return pairs;
    }

    private static double[] referencesS(double[][] pairs) {
        return Arrays.stream(pairs)
                .mapToDouble(pair -> timeS(CommonsMath.DP853, pair[0] - ZERO_C, pair[1] - ZERO_C, 1e-12))
                .toArray();
    }

    /** Another tool. */
    static Prepared peer(Peer peer) {
        Tuned tuned = Tuned.loosest(
                1e-2,
                TIGHTER,
                TwoNodeCooling.ALLOWED_S,
                "s",
                tolerance -> Math.abs(timeS(peer, START_C, WANTED_C, tolerance) - NOMINAL_S));
        return Prepared.of(tuned, () -> timeS(peer, START_C, WANTED_C, tuned.tolerance()));
    }

    /** Time from a start to a target [s] by another tool. */
    static double timeS(Peer peer, double startC, double targetC, double tolerance) {
        return peer.timeOfFall(
                OneNodeCooling::rates, new double[] {startC}, 0, targetC, tolerance, TwoNodeCooling.END_S);
    }
}
