/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.benchmarks.StatedFilms.ZERO_C;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.beveragethermal.core.film.FittedFilm;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.Method;

/**
 * P1: liquid and glass cool in air; when is the liquid at 9 °C?
 *
 * <p>Allowed error 1 s, on 17 cases of start and air, at the tolerance and at the next four tighter ones. The nominal case is timed.
 */
final class TwoNodeCooling {

    /** Time of the nominal case [s]: SciPy's DOP853 and Radau at a tolerance of 1e-12 agree on it to 2e-10 s. */
    static final double NOMINAL_S = 9377.261608;

    /** Allowed error [s]. */
    static final double ALLOWED_S = 1;

    /** Where all tools give up [s]. */
    static final double END_S = 60_000;

    static final double LIQUID_J_PER_K = 3100;
    static final double GLASS_J_PER_K = 420;
    static final double WANTED_C = 9;

    private static final Method METHOD = Method.EXPONENTIAL;
    private static final int TIGHTER = 4;
    private static final double COLDEST_K = 270;
    private static final double WARMEST_K = 310;
    /** How closely fitted films follow the formulas [-]. */
    static final double FOLLOWED = 1e-4;

    private TwoNodeCooling() {}

    /** One case: start and air [°C]. */
    record Case(double startC, double airC) {

        /** The one that is timed. */
        static final Case NOMINAL = new Case(22, 4);

        /** All that are checked, the nominal one first. */
        static List<Case> all() {
            List<Case> all = new ArrayList<>(List.of(NOMINAL));
            for (double start : new double[] {18, 21, 24, 27}) {
                for (double air : new double[] {1, 3, 5, 7}) {
                    all.add(new Case(start, air));
                }
            }
            return all;
        }

        /** For other tools: the formulas as they stand. */
        PlainEquations equations() {
            return (timeS, at, rates) -> {
                double in = StatedFilms.insideWatts(at[0], at[1]);
                rates[0] = -in / LIQUID_J_PER_K;
                rates[1] = (in - StatedFilms.outsideWatts(at[1], airC)) / GLASS_J_PER_K;
            };
        }

        double[] start() {
            return new double[] {startC, startC};
        }

        /** For the project: the same formulas, or laws that follow them. */
        Bottle bottle(HeatLaw inside, HeatLaw outside) {
            Node liquid = Node.sensible("liquid", LIQUID_J_PER_K, startC + ZERO_C);
            Node glass = Node.sensible("glass", GLASS_J_PER_K, startC + ZERO_C);
            Boundary air = Boundary.constant("air", airC + ZERO_C);
            return new Bottle(
                    liquid,
                    Network.of(
                            List.of(liquid, glass),
                            List.of(
                                    DirectPath.of("inside", liquid, glass, "convection", inside),
                                    DirectPath.of("outside", glass, air, "convection", outside),
                                    DirectPath.of("radiation", glass, air, "radiation", StatedFilms.RADIATION))));
        }
    }

    /** A network and the node that is asked for. */
    record Bottle(Node liquid, Network network) {

        OwnRun run(double toleranceK) {
            return OwnRun.of(network, METHOD, toleranceK);
        }
    }

    /** The project's solver; what the laws' fitted form adds to the error is in the check. */
    static Prepared own() {
        return own(fitted(StatedFilms.INSIDE), fitted(StatedFilms.OUTSIDE));
    }

    /** The project's solver on the formulas themselves. */
    static Prepared ownPlain() {
        return own(StatedFilms.INSIDE, StatedFilms.OUTSIDE);
    }

    /** A law of the statements in the form that is fast. */
    static FittedFilm fitted(HeatLaw law) {
        return FittedFilm.of(law, COLDEST_K, WARMEST_K, FOLLOWED);
    }

    private static Prepared own(HeatLaw inside, HeatLaw outside) {
        Tuned tuned = tuned((toCheck, tolerance) -> {
            Bottle bottle = toCheck.bottle(inside, outside);
            return timeS(bottle.run(tolerance), bottle.liquid());
        });
        Bottle bottle = Case.NOMINAL.bottle(inside, outside);
        OwnRun run = bottle.run(tuned.tolerance());
        return Prepared.of(tuned, () -> timeS(run, bottle.liquid())).by(METHOD);
    }

    private static double timeS(OwnRun run, Node liquid) {
        return run.timeToReach(liquid, WANTED_C + ZERO_C, END_S);
    }

    /** Another tool. */
    static Prepared peer(Peer peer) {
        Tuned tuned = tuned((toCheck, tolerance) -> timeS(peer, toCheck, tolerance));
        return Prepared.of(tuned, () -> timeS(peer, Case.NOMINAL, tuned.tolerance()));
    }

    private static Tuned tuned(ToDoubleBiFunction<Case, Double> timeS) {
        List<Case> cases = Case.all();
        double[] references =
                cases.stream().mapToDouble(TwoNodeCooling::referenceS).toArray();
        return Tuned.loosest(0.1, TIGHTER, ALLOWED_S, "s", tolerance -> {
            double worst = 0;
            for (int i = 0; i < references.length; i++) {
                worst = Math.max(worst, Math.abs(timeS.applyAsDouble(cases.get(i), tolerance) - references[i]));
            }
            return worst;
        });
    }

    /** The answer to 1e-6 s or better. */
    static double referenceS(Case toCheck) {
        return timeS(CommonsMath.DP853, toCheck, 1e-12);
    }

    private static double timeS(Peer peer, Case toSolve, double tolerance) {
        return peer.timeOfFall(toSolve.equations(), toSolve.start(), 0, WANTED_C, tolerance, END_S);
    }
}
