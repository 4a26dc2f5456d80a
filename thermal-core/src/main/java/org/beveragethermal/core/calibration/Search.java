/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.beveragethermal.core.calibration.Minimiser.Precision;

/**
 * The search of a fit: from several starts, with the scatter and the following of errors estimated in turn with the parameters.
 *
 * @param minimum where it ended
 * @param noise the errors
 * @param solution what the readings tell there
 * @param starts number of starts that could be tried
 * @param agreeing number of starts that ended at the same cost as the best
 */
record Search(Minimum minimum, Noise noise, Solution solution, int starts, int agreeing) {

    private static final int ROUNDS = 100;
    /** Scatter (relative) and following of errors are settled when they change by less. */
    private static final double TOLERANCE = 1e-7;

    private static final double QUICK_TOLERANCE = 1e-4;
    private static final double SAME_COST = 1e-6;
    /** Bounds that span more than this factor are drawn from by their logarithm. */
    private static final double WIDE = 100;

    /** The whole search of a fit. */
    static Search of(Problem problem) {
        Precision precision =
                problem.runs().stream().allMatch(run -> run.model().isExact()) ? Precision.FULL : Precision.QUICK;
        boolean[] held = fixed(problem);
        double[] given =
                problem.slots().stream().mapToDouble(s -> s.parameter().start()).toArray();
        List<Search> found = new ArrayList<>();
        List<Problem.Infeasible> refused = new ArrayList<>();
        SplittableRandom sources = new SplittableRandom(problem.settings().seed());
        for (int i = 0; i < problem.settings().starts(); i++) {
            try {
                found.add(from(problem, i == 0 ? given : drawn(problem, sources.split()), held, precision));
            } catch (Problem.Infeasible noAnswer) {
                refused.add(noAnswer);
            }
        }
        if (found.isEmpty()) {
            throw new FitException("no start can be tried: " + refused.get(0).getMessage(), refused.get(0));
        }
        int best = 0;
        for (int i = 1; i < found.size(); i++) {
            if (found.get(i).badness() < found.get(best).badness()) {
                best = i;
            }
        }
        double lowest = found.get(best).badness();
        int agreeing = (int) found.stream()
                .filter(s -> s.badness() - lowest <= SAME_COST * Math.max(1, Math.abs(lowest)))
                .count();
        Search winner = found.get(best);
        return new Search(winner.minimum(), winner.noise(), winner.solution(), found.size(), agreeing);
    }

    static boolean[] fixed(Problem problem) {
        boolean[] held = new boolean[problem.slots().size()];
        for (int k = 0; k < held.length; k++) {
            held[k] = problem.slots().get(k).parameter().fixed();
        }
        return held;
    }

    /** What several starts are compared by: the cost, or with an estimated scatter its likelihood. */
    private double badness() {
        return solution.deviance();
    }

    /** Parameters and errors in turn, from one start. */
    static Search from(Problem problem, double[] start, boolean[] held, Precision precision) {
        return from(problem, Minimiser.from(problem, Noise.UNIT, start, held, precision), precision, held);
    }

    /** The same from where models were asked before: by a fit of other readings, or of more. */
    static Search from(Problem problem, Minimum known, boolean[] held, Precision precision) {
        int most = problem.settings().mostEvaluations();
        return from(problem, Minimiser.from(problem, Noise.UNIT, known, held, precision, most), precision, held);
    }

    private static Search from(Problem problem, Minimum first, Precision precision, boolean[] held) {
        Minimum minimum = first;
        if (!Solution.needsTurns(problem)) {
            Solution unit = Solution.of(problem, minimum, Noise.UNIT);
            return problem.settings().scatterKnown()
                    ? new Search(minimum, Noise.UNIT, unit, 1, 1)
                    : new Search(minimum, new Noise(unit.scatter(), 0), unit.scattered(), 1, 1);
        }
        Noise noise = next(problem, minimum, Noise.UNIT);
        int most = problem.settings().mostEvaluations();
        for (int round = 0; round < ROUNDS && minimum.evaluations() < most; round++) {
            int spent = minimum.evaluations();
            Minimum next = Minimiser.from(problem, noise, minimum, held, precision, most - spent);
            minimum = next.after(spent + next.evaluations(), next.converged());
            Noise better = next(problem, minimum, noise);
            double tolerance = precision == Precision.FULL ? TOLERANCE : QUICK_TOLERANCE;
            boolean settled = Math.abs(Math.log(better.scatter() / noise.scatter())) < tolerance
                    && Math.abs(better.following() - noise.following()) < tolerance;
            noise = better;
            if (settled) {
                return single(problem, minimum, noise);
            }
        }
        return single(problem, minimum.after(minimum.evaluations(), false), noise);
    }

    private static Search single(Problem problem, Minimum minimum, Noise noise) {
        return new Search(minimum, noise, Solution.of(problem, minimum, noise), 1, 1);
    }

    private static Noise next(Problem problem, Minimum minimum, Noise noise) {
        double following = problem.settings().following()
                ? Following.estimate(problem, problem.rows(minimum.theta(), minimum.predicted(), noise, false))
                : 0;
        Noise followed = new Noise(noise.scatter(), following);
        return problem.settings().scatterKnown()
                ? followed
                : new Noise(Solution.of(problem, minimum, followed).scatter(), following);
    }

    /** A start at random. */
    private static double[] drawn(Problem problem, SplittableRandom random) {
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        double[] start = new double[problem.slots().size()];
        for (int k = 0; k < start.length; k++) {
            Parameter parameter = problem.slots().get(k).parameter();
            double u = random.nextDouble(1e-9, 1);
            start[k] = parameter.fixed() ? parameter.start() : drawn(parameter, u, normal);
        }
        return start;
    }

    private static double drawn(Parameter parameter, double u, NormalDistribution normal) {
        double low = parameter.low();
        double high = parameter.high();
        if (Double.isFinite(low) && Double.isFinite(high)) {
            return low > 0 && high > WIDE * low ? low * Math.pow(high / low, u) : low + u * (high - low);
        }
        double z = normal.inverseCumulativeProbability(u);
        double value = parameter
                .prior()
                .map(prior -> prior.mean() + z * prior.standardDeviation())
                .orElse(parameter.start() + z * parameter.scale());
        return Math.max(low, Math.min(high, value));
    }
}
