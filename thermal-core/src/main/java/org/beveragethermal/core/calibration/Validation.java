/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.beveragethermal.core.calibration.Minimiser.Precision;

/** Leaves readings out in turn, and predicts them. */
final class Validation {

    /** Fits again to what is left without a part. */
    @FunctionalInterface
    private interface Refit {
        Search of(Problem without, int left);
    }

    private Validation() {}

    /** Parts drawn at random, or stretches of neighbours where errors follow each other. */
    static CrossValidation parts(Problem problem, Search search, int parts, long seed) {
        int n = problem.readings();
        int[] part = new int[n];
        for (int i = 0; i < n; i++) {
            part[i] = problem.settings().following() ? (int) ((long) i * parts / n) : i % parts;
        }
        if (!problem.settings().following()) {
            shuffle(part, new SplittableRandom(seed));
        }
        return of(
                problem,
                search,
                parts,
                part,
                (without, left) -> Search.from(without, search.minimum(), Search.fixed(problem), Precision.QUICK));
    }

    /** One run is a part; only what the runs share can be learnt from the others. */
    static CrossValidation runs(Problem problem, Search search) {
        int[] part = new int[problem.readings()];
        int row = 0;
        for (int r = 0; r < problem.runs().size(); r++) {
            for (int i = 0; i < problem.runs().get(r).observations().size(); i++) {
                part[row++] = r;
            }
        }
        return of(problem, search, problem.runs().size(), part, (without, left) -> {
            double[] start = withoutOwn(problem, search, left);
            return Search.from(without, start, Search.fixed(problem), Precision.QUICK);
        });
    }

    /** The estimates; but what only the left-out run tells begins where the fit began. */
    private static double[] withoutOwn(Problem problem, Search search, int left) {
        double[] theta = search.minimum().theta().clone();
        Set<Integer> others = new HashSet<>();
        for (int r = 0; r < problem.runs().size(); r++) {
            if (r != left) {
                Arrays.stream(problem.runs().get(r).places()).forEach(others::add);
            }
        }
        for (int place : problem.runs().get(left).places()) {
            if (!others.contains(place)) {
                theta[place] = problem.slots().get(place).parameter().start();
            }
        }
        return theta;
    }

    private static void shuffle(int[] values, SplittableRandom random) {
        for (int i = values.length - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int kept = values[i];
            values[i] = values[j];
            values[j] = kept;
        }
    }

    private static CrossValidation of(Problem problem, Search search, int parts, int[] part, Refit refit) {
        double squares = 0;
        int number = 0;
        int failed = 0;
        for (int left = 0; left < parts; left++) {
            try {
                Minimum minimum = refit.of(problem.leavingOut(masks(problem, part, left)), left)
                        .minimum();
                double[] deviations = problem.rows(minimum.theta(), minimum.predicted(), Noise.UNIT, false).deviations;
                for (int i = 0; i < part.length; i++) {
                    if (part[i] == left && !Double.isNaN(deviations[i])) {
                        squares += deviations[i] * deviations[i];
                        number++;
                    }
                }
            } catch (Problem.Infeasible noAnswer) {
                failed++;
            }
        }
        double fitted = 0;
        int exact = 0;
        for (double deviation : search.solution().rows().deviations) {
            fitted += Double.isNaN(deviation) ? 0 : deviation * deviation;
            exact += Double.isNaN(deviation) ? 0 : 1;
        }
        return new CrossValidation(
                parts, Math.sqrt(squares / Math.max(1, number)), Math.sqrt(fitted / Math.max(1, exact)), failed);
    }

    private static List<boolean[]> masks(Problem problem, int[] part, int left) {
        List<boolean[]> masks = new ArrayList<>();
        int row = 0;
        for (Problem.Run run : problem.runs()) {
            boolean[] mask = new boolean[run.observations().size()];
            for (int i = 0; i < mask.length; i++) {
                mask[i] = part[row++] == left;
            }
            masks.add(mask);
        }
        return masks;
    }
}
