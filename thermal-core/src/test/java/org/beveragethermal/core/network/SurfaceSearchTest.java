/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.junit.jupiter.api.Test;

/**
 * How often and where a junction asks its laws on its way to its surface, which is what a run costs, and how well it finds it, against roots
 * found with Apache Commons Math.
 */
final class SurfaceSearchTest {

    private static final double SIGMA = 5.670374419e-8;
    /** All that a black surface of 1 m² radiates: strongly curved. */
    private static final HeatLaw RADIATION = (from, to, out) -> {
        out.watts = SIGMA * (Math.pow(from, 4) - Math.pow(to, 4));
        out.perFromKelvin = 4 * SIGMA * Math.pow(from, 3);
        out.perToKelvin = -4 * SIGMA * Math.pow(to, 3);
    };

    private final Node body = Node.sensible("body", 1000, 290);
    private final Boundary air = Boundary.constant("air", 300);
    private final Boundary walls = Boundary.constant("walls", 285);

    /** A law that keeps where it was asked. */
    private record Asked(HeatLaw law, List<Double> surfacesK) implements HeatLaw {
        Asked(HeatLaw law) {
            this(law, new ArrayList<>());
        }

        @Override
        public void evaluate(double fromK, double toK, HeatFlow out) {
            surfacesK.add(toK);
            law.evaluate(fromK, toK, out);
        }

        int times() {
            int times = surfacesK.size();
            surfacesK.clear();
            return times;
        }
    }

    private JunctionPath radiating(HeatLaw conduction, HeatLaw radiation) {
        return JunctionPath.of("skin", Link.of(body, "conduction", conduction), Link.of(air, "radiation", radiation));
    }

    /** Conduction of 2 W/K against radiation. */
    private static double brent(double bodyK, double airK) {
        return new BrentSolver(1e-15, 1e-13)
                .solve(
                        1000,
                        surface -> 2 * (bodyK - surface) + SIGMA * (Math.pow(airK, 4) - Math.pow(surface, 4)),
                        Math.min(bodyK, airK) - 1,
                        Math.max(bodyK, airK) + 1);
    }

    @Test
    void lawsAreAskedBetweenTheEndsOnlyAndSeldom() {
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < 300; i++) {
            double bodyK = random.nextDouble(200, 900);
            double airK = random.nextDouble(200, 900);
            Asked radiation = new Asked(RADIATION);
            JunctionPath path = radiating(HeatLaw.conductance(2), radiation);
            PathEvaluation e = new PathEvaluation(path);
            e.inputs()[0] = bodyK;
            e.inputs()[1] = airK;
            assertThat(path.surfaceTemperatureK(e)).isCloseTo(brent(bodyK, airK), within(1e-9));
            assertThat(radiation.surfacesK())
                    .allMatch(kelvin -> kelvin >= Math.min(bodyK, airK) && kelvin <= Math.max(bodyK, airK));
            assertThat(radiation.times()).isLessThan(20);
        }
    }

    /** Where all is linear the surface follows from the one before: one evaluation is enough, however far the ends have moved. */
    @Test
    void linearSurfaceIsFoundAtOnceFromTheOneBefore() {
        Asked conduction = new Asked(HeatLaw.conductance(3));
        Asked film = new Asked(HeatLaw.conductance(2));
        Asked radiation = new Asked(HeatLaw.conductance(0.5));
        JunctionPath path = JunctionPath.of(
                "skin",
                Link.of(body, "conduction", conduction),
                Link.of(air, "convection", film),
                Link.of(walls, "radiation", radiation));
        PathEvaluation e = new PathEvaluation(path);
        e.evaluate(path, 0, new double[] {290, 300, 285});
        conduction.times();
        film.times();
        radiation.times();
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 50; i++) {
            double[] kelvin = random.doubles(3, 250, 350).toArray();
            e.evaluate(path, 0, kelvin);
            double surface = (3 * kelvin[0] + 2 * kelvin[1] + 0.5 * kelvin[2]) / 5.5;
            assertThat(e.flowOf(0)).isCloseTo(2 * (surface - kelvin[1]), within(1e-9));
            assertThat(e.flowOf(1)).isCloseTo(0.5 * (surface - kelvin[2]), within(1e-9));
            assertThat(conduction.times()).isEqualTo(1);
            assertThat(film.times()).isEqualTo(1);
            assertThat(radiation.times()).isEqualTo(1);
        }
    }

    /** What a step of Newton's method leaves behind is known once two have been taken: then small moves ask each law once. */
    @Test
    void curvedSurfaceIsFollowedWithFewEvaluationsAndWithinItsAccuracy() {
        Asked radiation = new Asked(RADIATION);
        JunctionPath path = radiating(HeatLaw.conductance(2), radiation);
        PathEvaluation e = new PathEvaluation(path);
        double bodyK = 290;
        e.evaluate(path, 0, new double[] {bodyK, 320});
        int first = radiation.times();
        assertThat(first).isBetween(3, 9);
        bodyK += 5;
        double found = surface(path, e, bodyK, 320);
        assertThat(radiation.times()).isEqualTo(2);
        assertThat(found).isCloseTo(brent(bodyK, 320), within(1e-9));
        for (int i = 0; i < 20; i++) {
            bodyK += 0.1;
            found = surface(path, e, bodyK, 320);
            assertThat(radiation.times()).isEqualTo(1);
            assertThat(found).isCloseTo(brent(bodyK, 320), within(1e-9));
            assertThat(e.flowOf(0)).isCloseTo(2 * (bodyK - brent(bodyK, 320)), within(5e-9));
        }
        for (double move : new double[] {2, -3, 8, -20, 60, -120, 250}) {
            bodyK += move;
            found = surface(path, e, bodyK, 320);
            assertThat(radiation.times()).as("a move of %s K", move).isBetween(2, 4);
            assertThat(found).isCloseTo(brent(bodyK, 320), within(1e-9));
        }
    }

    /** A run that asks for less is given less, but never less than it asks for. */
    @Test
    void surfaceIsAsGoodAsARunAsksFor() {
        double worst = 0;
        int once = 0;
        for (double move = 0.5; move < 40; move += 0.5) {
            Asked radiation = new Asked(RADIATION);
            JunctionPath path = radiating(HeatLaw.conductance(2), radiation);
            PathEvaluation e = new PathEvaluation(path);
            e.setSurfaceAccuracyK(1e-5);
            e.evaluate(path, 0, new double[] {290, 320});
            e.evaluate(path, 0, new double[] {350, 320});
            e.evaluate(path, 0, new double[] {290, 320});
            radiation.times();
            double bodyK = 290 + move;
            double error = Math.abs(surface(path, e, bodyK, 320) - brent(bodyK, 320));
            worst = Math.max(worst, error);
            once += radiation.times() == 1 ? 1 : 0;
        }
        assertThat(worst).isBetween(1e-7, 1e-5);
        assertThat(once).isGreaterThan(10);
    }

    private static double surface(JunctionPath path, PathEvaluation e, double bodyK, double airK) {
        e.inputs()[0] = bodyK;
        e.inputs()[1] = airK;
        return path.evaluateAtSurface(e);
    }

    /** Accuracy is handed down to the junctions of a network, down to that of a path alone. */
    @Test
    void accuracyIsThatOfTheWorkspace() {
        int[] times = new int[3];
        double[] accuracyK = {1e-20, 3e-10, 1e-3};
        for (int i = 0; i < 3; i++) {
            Asked radiation = new Asked(RADIATION);
            PreparedNetwork prepared = Network.of(List.of(body), List.of(radiating(HeatLaw.conductance(2), radiation)))
                    .prepare();
            PreparedNetwork.Workspace workspace = prepared.newWorkspace(Map.of(), accuracyK[i]);
            double[] state = prepared.initialState();
            for (int step = 0; step < 20; step++) {
                state[0] += 2000;
                assertThat(workspace.evaluate(0, state, true)).isEqualTo(-1);
            }
            times[i] = radiation.times();
        }
        assertThat(times[0]).isEqualTo(times[1]);
        assertThat(times[2]).isLessThan(times[1] - 10);
    }

    /** What another junction found on the same workspace, or this one before it was told to forget, changes not one bit. */
    @Test
    void onlyItsOwnMemoryCounts() {
        JunctionPath one = radiating(HeatLaw.conductance(2), RADIATION);
        JunctionPath other = radiating(HeatLaw.conductance(7), RADIATION);
        PathEvaluation used = new PathEvaluation(one);
        PathEvaluation forgetful = new PathEvaluation(one);
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 20; i++) {
            double bodyK = random.nextDouble(250, 350);
            double airK = random.nextDouble(250, 350);
            double alone = surface(one, new PathEvaluation(one), bodyK, airK);
            surface(other, used, 300, 310);
            assertThat(surface(one, used, bodyK, airK)).isEqualTo(alone);
            forgetful.forget();
            assertThat(surface(one, forgetful, bodyK, airK)).isEqualTo(alone);
        }
    }

    /** Sunlight that comes on moves the surface by far more than any end does. */
    @Test
    void surfaceIsFoundAgainWhenTheSunComesOn() {
        Asked radiation = new Asked(RADIATION);
        JunctionPath path = JunctionPath.of(
                "skin",
                Link.of(body, "conduction", HeatLaw.conductance(2)),
                Link.of(air, "radiation", radiation),
                Link.bringing(walls, "sun", TimeFunction.linear(new double[] {10, 20}, new double[] {0, 5000})));
        PathEvaluation e = new PathEvaluation(path);
        double[] kelvin = {290, 290, 290};
        e.evaluate(path, 0, kelvin);
        assertThat(e.flowOf(0)).isCloseTo(0, within(1e-8));
        for (double timeS : new double[] {15, 20, 12, 30, 0}) {
            double watts = 5000 * Math.min(1, Math.max(0, (timeS - 10) / 10));
            double surface = new BrentSolver(1e-15, 1e-13)
                    .solve(1000, s -> 2 * (290 - s) + SIGMA * (Math.pow(290, 4) - Math.pow(s, 4)) + watts, 280, 900);
            radiation.times();
            e.evaluate(path, timeS, kelvin);
            assertThat(radiation.times()).isLessThan(20);
            assertThat(e.flowOf(0)).isCloseTo(SIGMA * (Math.pow(surface, 4) - Math.pow(290, 4)), within(1e-7));
        }
    }

    /** A law that is flat where it comes to rest, of a user's own, is approached slowly; no end of the bracket is taken for it. */
    @Test
    void flatLawComesToRestNearItsEnd() {
        HeatLaw flat = (from, to, out) -> {
            double drive = from - to;
            out.watts = Math.pow(drive, 9);
            out.perFromKelvin = 9 * Math.pow(drive, 8);
            out.perToKelvin = -out.perFromKelvin;
        };
        JunctionPath path = JunctionPath.of(
                "night", Link.of(air, "convection", flat), Link.bringing(walls, "sun", TimeFunction.constant(0)));
        PathEvaluation e = new PathEvaluation(path);
        e.evaluate(path, 0, new double[] {300, 320});
        assertThat(path.surfaceTemperatureK(e)).isCloseTo(300, within(1e-3));
        assertThat(e.flowOf(0)).isCloseTo(0, within(1e-12));
    }

    /** Where a law says no slope at all, halving the bracket still ends at the root. */
    @Test
    void rootIsFoundWhereSlopesMislead() {
        // From 20 W to none within some hundredths of a kelvin, at a difference of 20 K: 8 W where tanh x = −0.2.
        HeatLaw steps = (from, to, out) -> {
            out.watts = 10 * Math.tanh((from - to - 20) * 50) + 10;
            out.perFromKelvin = 0;
            out.perToKelvin = 0;
        };
        JunctionPath path = JunctionPath.of(
                "switch", Link.of(air, "switch", steps), Link.bringing(walls, "cooling", TimeFunction.constant(-8)));
        PathEvaluation e = new PathEvaluation(path);
        e.evaluate(path, 0, new double[] {320, 280});
        assertThat(path.surfaceTemperatureK(e)).isCloseTo(300 - 0.5 * Math.log(0.8 / 1.2) / 50, within(1e-8));
    }
}
