/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;

/**
 * Sums over rows of results f(A), f(B), f(AB) for each input, and what becomes of them when rows are drawn again.
 *
 * <p>Theory manual, equation (8.8).
 */
final class VarianceParts {

    private static final int MOST_GROUPS = 1000;
    private static final int BOOTSTRAPS = 200;
    /** Places of a group's sums: rows, results, their squares; then f(B) (f(AB) − f(A)) and (f(A) − f(AB))² for each input. */
    private static final int ROWS = 0;

    private static final int SUM = 1;
    private static final int SQUARES = 2;
    private static final int FIRST = 3;

    private final int inputs;
    private final int rows;
    private final double mean;
    private final double[][] groups;

    VarianceParts(List<double[]> results) {
        this.inputs = results.get(0).length - 2;
        this.rows = results.size();
        this.mean = results.stream().mapToDouble(row -> 0.5 * (row[0] + row[1])).sum() / rows;
        this.groups = new double[Math.min(MOST_GROUPS, rows)][FIRST + 2 * inputs];
        for (int j = 0; j < rows; j++) {
            add(results.get(j), groups[j % groups.length]);
        }
    }

    private void add(double[] row, double[] group) {
        double a = row[0] - mean;
        double b = row[1] - mean;
        group[ROWS]++;
        group[SUM] += a + b;
        group[SQUARES] += a * a + b * b;
        for (int i = 0; i < inputs; i++) {
            double mixed = row[i + 2] - mean;
            group[FIRST + 2 * i] += b * (mixed - a);
            group[FIRST + 2 * i + 1] += (a - mixed) * (a - mixed);
        }
    }

    SobolIndices indices(List<String> names, long seed) {
        double[] sums = new double[FIRST + 2 * inputs];
        Arrays.stream(groups).forEach(group -> addTo(sums, group));
        double[] best = indices(sums);
        double[] errors = errors(seed);
        List<SobolIndices.Index> each = new ArrayList<>();
        for (int i = 0; i < inputs; i++) {
            each.add(new SobolIndices.Index(
                    names.get(i), best[2 * i], errors[2 * i], best[2 * i + 1], errors[2 * i + 1]));
        }
        return new SobolIndices(mean, variance(sums), each, rows * (inputs + 2));
    }

    /** First order and total of each input in turn. */
    private double[] indices(double[] sums) {
        double variance = variance(sums);
        double[] indices = new double[2 * inputs];
        for (int i = 0; i < inputs && variance > 0; i++) {
            indices[2 * i] = sums[FIRST + 2 * i] / sums[ROWS] / variance;
            indices[2 * i + 1] = 0.5 * sums[FIRST + 2 * i + 1] / sums[ROWS] / variance;
        }
        return indices;
    }

    private static double variance(double[] sums) {
        double count = 2 * sums[ROWS];
        double offMean = sums[SUM] / count;
        return Math.max(0, sums[SQUARES] / count - offMean * offMean);
    }

    private double[] errors(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[][] drawn = new double[2 * inputs][BOOTSTRAPS];
        for (int n = 0; n < BOOTSTRAPS; n++) {
            double[] sums = new double[FIRST + 2 * inputs];
            for (int g = 0; g < groups.length; g++) {
                addTo(sums, groups[random.nextInt(groups.length)]);
            }
            double[] again = indices(sums);
            for (int i = 0; i < again.length; i++) {
                drawn[i][n] = again[i];
            }
        }
        return Arrays.stream(drawn)
                .mapToDouble(new StandardDeviation()::evaluate)
                .toArray();
    }

    private static void addTo(double[] sums, double[] group) {
        for (int i = 0; i < sums.length; i++) {
            sums[i] += group[i];
        }
    }
}
