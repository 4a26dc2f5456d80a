/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.util.CombinatoricsUtils;
import org.beveragethermal.core.calibration.ResidualDiagnostics.QuantilePair;

/** Examines the residuals of a fit. */
final class Examination {

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    /** Up to this many of either sign the number of stretches is counted exactly. */
    private static final int EXACT = 200;

    private Examination() {}

    static ResidualDiagnostics of(Problem problem, Search search) {
        Solution solution = search.solution();
        List<Double> standardised = new ArrayList<>();
        List<Double> leverages = new ArrayList<>();
        List<Double> distances = new ArrayList<>();
        double products = 0;
        double squares = 0;
        double steps = 0;
        int pairs = 0;
        int stretches = 0;
        int first = 0;
        // Signs of independent errors are in random order over all runs together.
        double signBefore = Double.NaN;
        for (Problem.Run run : problem.runs()) {
            double before = Double.NaN;
            for (int row = first; row < first + run.observations().size(); row++) {
                if (Double.isNaN(solution.rows().deviations[row])) {
                    continue;
                }
                double e = -solution.rows().innovations[row];
                double h = solution.leverages()[row];
                double rest = Math.max(1 - h, 1e-9);
                standardised.add(e / Math.sqrt(rest));
                leverages.add(h);
                distances.add(e * e * h / (rest * rest) / Math.max(solution.effective(), 1e-9));
                squares += e * e;
                stretches += Double.isNaN(signBefore) || e >= 0 != signBefore >= 0 ? 1 : 0;
                signBefore = e;
                if (!Double.isNaN(before)) {
                    products += e * before;
                    steps += (e - before) * (e - before);
                    pairs++;
                }
                before = e;
            }
            first += run.observations().size();
        }
        double total = Math.max(squares, Double.MIN_NORMAL);
        double lagOne = products / total;
        double z = lagOne * Math.sqrt(Math.max(pairs, 1));
        int above = (int) standardised.stream().filter(r -> r >= 0).count();
        double normality = andersonDarling(standardised);
        return new ResidualDiagnostics(
                standardised,
                leverages,
                distances,
                lagOne,
                pairs < 2 ? 1 : NORMAL.cumulativeProbability(-z),
                steps / total,
                stretches,
                fewStretches(stretches, above, standardised.size() - above),
                normality,
                andersonDarlingP(normality),
                fitP(problem, search, squares));
    }

    private static OptionalDouble fitP(Problem problem, Search search, double squares) {
        double freedom = search.solution().used() - search.solution().effective();
        if (!problem.settings().scatterKnown() || problem.censored() || freedom < 0.5) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(1 - new ChiSquaredDistribution(null, freedom).cumulativeProbability(squares));
    }

    /** Probability of at most a number of stretches among signs in random order (Wald and Wolfowitz 1940). */
    static double fewStretches(int stretches, int above, int below) {
        if (above == 0 || below == 0) {
            return above + below < 6 ? 1 : Math.pow(0.5, above + below - 1.0);
        }
        if (above <= EXACT && below <= EXACT) {
            double all = CombinatoricsUtils.binomialCoefficientLog(above + below, above);
            double sum = 0;
            for (int r = 2; r <= stretches; r++) {
                int half = r / 2;
                sum += r % 2 == 0
                        ? 2 * Math.exp(ways(above, half) + ways(below, half) - all)
                        : Math.exp(ways(above, half + 1) + ways(below, half) - all)
                                + Math.exp(ways(above, half) + ways(below, half + 1) - all);
            }
            return Math.min(1, sum);
        }
        double n = (double) above + below;
        double product = 2.0 * above * below;
        double mean = product / n + 1;
        double variance = product * (product - n) / (n * n * (n - 1));
        return NORMAL.cumulativeProbability((stretches + 0.5 - mean) / Math.sqrt(variance));
    }

    /** Logarithm of the number of ways to part a number of things into stretches. */
    private static double ways(int number, int stretches) {
        return stretches > number
                ? Double.NEGATIVE_INFINITY
                : CombinatoricsUtils.binomialCoefficientLog(number - 1, stretches - 1);
    }

    /** Anderson and Darling's statistic with mean and scatter estimated, corrected for the number (Stephens 1986). */
    static double andersonDarling(List<Double> values) {
        int n = values.size();
        double mean = values.stream().mapToDouble(v -> v).average().orElse(0);
        double variance =
                values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum() / Math.max(1, n - 1);
        if (n < 3 || !(variance > 0)) {
            return 0;
        }
        double[] sorted = values.stream().mapToDouble(v -> v).sorted().toArray();
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double low = (sorted[i] - mean) / Math.sqrt(variance);
            double high = (sorted[n - 1 - i] - mean) / Math.sqrt(variance);
            sum += (2 * i + 1) * (Tail.logProbability(low) + Tail.logProbability(-high));
        }
        double statistic = -n - sum / n;
        return statistic * (1 + 0.75 / n + 2.25 / ((double) n * n));
    }

    /** Probability of Anderson and Darling's corrected statistic (D'Agostino and Stephens 1986, table 4.9). */
    static double andersonDarlingP(double a) {
        if (a >= 10) {
            return 0;
        }
        if (a >= 0.6) {
            return Math.exp(1.2937 - 5.709 * a + 0.0186 * a * a);
        }
        if (a > 0.34) {
            return Math.exp(0.9177 - 4.279 * a - 1.38 * a * a);
        }
        return a > 0.2
                ? 1 - Math.exp(-8.318 + 42.796 * a - 59.938 * a * a)
                : 1 - Math.exp(-13.436 + 101.14 * a - 223.73 * a * a);
    }

    static List<QuantilePair> quantiles(List<Double> standardised) {
        double[] sorted = standardised.stream().mapToDouble(v -> v).toArray();
        Arrays.sort(sorted);
        List<QuantilePair> pairs = new ArrayList<>();
        for (int i = 0; i < sorted.length; i++) {
            pairs.add(new QuantilePair(
                    NORMAL.inverseCumulativeProbability((i + 1 - 0.375) / (sorted.length + 0.25)), sorted[i]));
        }
        return Collections.unmodifiableList(pairs);
    }
}
