/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What part of the variance of a result each uncertain input causes: by itself, and with all that it does together with others (I. M.
 * Sobol', Mathematical Modelling and Computational Experiments 1 (1993) 407-414).
 *
 * <p>The first-order index is the part of the variance that would go on average if the input became known; the total index the part that
 * would be left if all others did. Their difference is what the input does in interplay. First-order indices add up to 1 where there is
 * no interplay; otherwise they stay below and the total ones above. Inputs must be independent.
 *
 * <p><b>Method.</b> Two independent samples A and B of n draws, and for each input a sample that is A with that input taken from B.
 * First order by A. Saltelli and others, Computer Physics Communications 181 (2010) 259-270, table 2, (b): mean of f(B) (f(AB) −
 * f(A)), with the mean of f taken off before; total by M. J. W. Jansen, Computer Physics Communications 117 (1999) 35-43: half of the mean
 * of (f(A) − f(AB))². Both over the variance of f over A and B together. Standard errors are those of 200 bootstrap samples of the draws,
 * which are gathered into groups of equal size where there are more than a thousand. Estimates scatter, and small ones may come out
 * below 0.
 *
 * <p>With n draws of k inputs the model is run n (k + 2) times. Standard errors fall as 1/√n: about 0.01 with n = 10,000.
 *
 * <p>Theory manual, equation (8.8).
 *
 * @param mean mean of the result
 * @param variance variance of the result, ≥ 0
 * @param inputs one for each input, in the order in which they were given
 * @param runs how often the model was run
 */
public record SobolIndices(double mean, double variance, List<Index> inputs, int runs) {

    private static final int MOST_DRAWS = 1_000_000;
    /** Squares of differences of larger results would not be finite. */
    private static final double LARGEST = 1e150;

    /**
     * What one input does. All are 0 if the result does not vary.
     *
     * @param name name of the input
     * @param first part of the variance that it causes by itself [-]
     * @param firstError standard error of that [-]
     * @param total part of the variance that it causes by itself and together with others [-]
     * @param totalError standard error of that [-]
     */
    public record Index(String name, double first, double firstError, double total, double totalError) {}

    /**
     * Copies the list.
     *
     * @param mean mean of the result
     * @param variance variance of the result
     * @param inputs one for each input, not modified
     * @param runs how often the model was run
     */
    public SobolIndices {
        inputs = List.copyOf(inputs);
    }

    /**
     * Runs a model and tells what each input does.
     *
     * @param ensemble how many draws, 2 to 1 million, which seed and which threads; its monitor counts draws and may cancel
     * @param inputs what is uncertain, independent of each other, names unique, at least one, not modified
     * @param model from a draw to the result, a number of at most 1e150 in size; called from the ensemble's threads
     * @return the indices; the same for any threads
     * @throws IllegalArgumentException if there is no input, two share a name, there are too many draws or runs, or a result is too large or
     *     no number
     * @throws org.beveragethermal.core.solver.RunCancelledException if the ensemble's monitor says so or the calling thread is interrupted
     */
    public static SobolIndices of(Ensemble ensemble, List<UncertainInput> inputs, ToDoubleFunction<Draw> model) {
        List<UncertainInput> known = List.copyOf(inputs);
        Ensemble.requireUniqueNames(known);
        long runs = (known.size() + 2L) * ensemble.samples();
        if (known.isEmpty() || ensemble.samples() > MOST_DRAWS || runs > Integer.MAX_VALUE) {
            throw new IllegalArgumentException(known.size() + " inputs with " + ensemble.samples()
                    + " draws: expected at least one input, at most " + MOST_DRAWS + " draws and " + Integer.MAX_VALUE
                    + " runs");
        }
        List<double[]> rows = ensemble.runSeeded(random -> {
            double[] a = Draw.probabilities(known.size(), random);
            double[] b = Draw.probabilities(known.size(), random);
            double[] results = new double[known.size() + 2];
            results[0] = finite(model.applyAsDouble(Draw.at(known, a)));
            results[1] = finite(model.applyAsDouble(Draw.at(known, b)));
            for (int i = 0; i < known.size(); i++) {
                double[] mixed = a.clone();
                mixed[i] = b[i];
                results[i + 2] = finite(model.applyAsDouble(Draw.at(known, mixed)));
            }
            return results;
        });
        return new VarianceParts(rows)
                .indices(known.stream().map(UncertainInput::name).toList(), ensemble.seed());
    }

    private static double finite(double result) {
        if (!(Math.abs(result) <= LARGEST)) {
            throw new IllegalArgumentException(
                    "result " + result + ": expected a number of at most " + LARGEST + " in size");
        }
        return result;
    }
}
