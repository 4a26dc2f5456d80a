/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.benchmarks.StatedFilms.ZERO_C;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.beveragethermal.core.batch.BatchLaw;
import org.beveragethermal.core.batch.BatchNetwork;
import org.beveragethermal.core.batch.BatchSamples;
import org.beveragethermal.core.batch.BatchSolver;

/**
 * P4: ten thousand samples of P1 with starts, airs, films and capacities drawn at random; allowed error 1 s on every one.
 *
 * <p>Components of the arrays: start [°C], air [°C], factor on the film inside, factor on all heat outside, capacity of the liquid [J/K].
 */
final class SampledBottles {

    private static final double TIGHT = 1e-9;
    private static final double TIGHTER = 0.3;

    private SampledBottles() {}

    private static double[][] draws(int count) {
        SplittableRandom random = new SplittableRandom(42);
        double[][] draws = new double[count][];
        for (int i = 0; i < count; i++) {
            draws[i] = new double[] {
                random.nextDouble(20, 24),
                random.nextDouble(2, 6),
                random.nextDouble(0.7, 1.3),
                random.nextDouble(0.7, 1.3),
                TwoNodeCooling.LIQUID_J_PER_K * random.nextDouble(0.95, 1.05)
            };
        }
        return draws;
    }

    /** The project's batch, its films in vector form. */
    static Prepared own(int count) {
        return own(
                count,
                TwoNodeCooling.fitted(StatedFilms.INSIDE),
                TwoNodeCooling.fitted(StatedFilms.OUTSIDE).radiating(StatedFilms.RADIATING));
    }

    private static Prepared own(int count, BatchLaw inside, BatchLaw outside) {
        double[][] draws = draws(count);
        double[] references = referencesS(draws);
        BatchSamples samples = BatchNetwork.builder()
                .node("liquid")
                .node("glass")
                .boundary("air")
                .link("inside", "liquid", "glass", inside)
                .link("outside", "glass", "air", outside)
                .build()
                .samples(count)
                .capacityJPerK("liquid", column(draws, 4, 0))
                .capacityJPerK("glass", TwoNodeCooling.GLASS_J_PER_K)
                .startK("liquid", column(draws, 0, ZERO_C))
                .startK("glass", column(draws, 0, ZERO_C))
                .boundaryK("air", column(draws, 1, ZERO_C))
                .multiplier("inside", column(draws, 2, 0))
                .multiplier("outside", column(draws, 3, 0))
                .build();
        double wantedK = TwoNodeCooling.WANTED_C + ZERO_C;
        Tuned tuned = Tuned.loosest(
                0.25,
                1,
                TwoNodeCooling.ALLOWED_S,
                "s",
                tolerance -> RadialLayers.largestError(
                        references,
                        BatchSolver.standard()
                                .withToleranceK(tolerance)
                                .timesToS(samples, "liquid", wantedK, TwoNodeCooling.END_S),
                        0));
        BatchSolver solver = BatchSolver.standard().withToleranceK(tuned.tolerance());
        return Prepared.of(tuned, () -> solver.timesToS(samples, "liquid", wantedK, TwoNodeCooling.END_S)[count - 1])
                .holding(count);
    }

    /** Apache Commons Math, one sample after the other; one that fails is tried again at a tighter tolerance. */
    static Prepared peer(int count) {
        double[][] draws = draws(count);
        double[] references = referencesS(draws);
        Tuned tuned = Tuned.loosest(
                1e-5,
                0,
                TwoNodeCooling.ALLOWED_S,
                "s",
                tolerance -> RadialLayers.largestError(references, timesS(draws, tolerance), 0));
        return Prepared.of(tuned, () -> timesS(draws, tuned.tolerance())[count - 1])
                .holding(count);
    }

    private static double[] referencesS(double[][] draws) {
        return timesS(draws, TIGHT);
    }

    private static double[] timesS(double[][] draws, double tolerance) {
        return Arrays.stream(draws).mapToDouble(draw -> timeS(draw, tolerance)).toArray();
    }

    private static double timeS(double[] draw, double tolerance) {
        PlainEquations equations = (timeS, at, rates) -> {
            double in = draw[2] * StatedFilms.insideWatts(at[0], at[1]);
            rates[0] = -in / draw[4];
            rates[1] = (in - draw[3] * StatedFilms.outsideWatts(at[1], draw[1])) / TwoNodeCooling.GLASS_J_PER_K;
        };
        double tried = tolerance;
        while (tried > 1e-12) {
            try {
                return CommonsMath.DP853.timeOfFall(
                        equations,
                        new double[] {draw[0], draw[0]},
                        0,
                        TwoNodeCooling.WANTED_C,
                        tried,
                        TwoNodeCooling.END_S);
            } catch (MathIllegalArgumentException outOfRange) {
                // A trial step has left the range of the formulas: NoBracketingException and its like.
                tried *= TIGHTER;
            }
        }
        throw new IllegalStateException("no tolerance gets a sample through");
    }

    private static double[] column(double[][] draws, int column, double shift) {
        return Arrays.stream(draws).mapToDouble(draw -> draw[column] + shift).toArray();
    }
}
