/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * Estimates that belong to some gear, with their covariance: to be stored, and applied to other vessels in the same gear.
 *
 * <p>Its parts are plain, so that any format can hold them; {@link #text} and {@link #parse} are one. Values that are multipliers go
 * to {@code NetworkSolver.withMultipliers}, which ignores names that no path uses.
 *
 * @param name what it is of, not blank, one line without tabulators
 * @param version counts up with each new fit of the same, ≥ 1
 * @param fittedAt when it was fitted
 * @param values estimates by name, in order
 * @param covariances covariance of each two, in the same order
 * @param residualStandardDeviation scatter of the readings behind it
 * @param degreesOfFreedom degrees of freedom behind it
 */
public record FittedSet(
        String name,
        int version,
        Instant fittedAt,
        Map<String, Double> values,
        List<List<Double>> covariances,
        double residualStandardDeviation,
        double degreesOfFreedom) {

    private static final String HEAD = "fitted set, format 1";

    /**
     * Checks the parts.
     *
     * @param name what it is of, not blank, one line without tabulators
     * @param version counts up with each new fit, ≥ 1
     * @param fittedAt when it was fitted
     * @param values estimates by name, finite, at least one, names without tabulators and line breaks, not modified
     * @param covariances covariance of each two, finite, not modified
     * @param residualStandardDeviation scatter of the readings behind it, finite, ≥ 0
     * @param degreesOfFreedom degrees of freedom behind it, finite
     * @throws IllegalArgumentException if a part is outside its range
     */
    public FittedSet {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        covariances = covariances.stream().map(List::copyOf).toList();
        int size = values.size();
        if (name.isBlank() || name.lines().count() != 1 || version < 1 || size == 0) {
            throw new IllegalArgumentException("fitted set '" + name + "', version " + version + ", " + size
                    + " values: expected a name of one line, a version of at least 1 and at least one value");
        }
        if (breaksLines(name) || values.keySet().stream().anyMatch(FittedSet::breaksLines)) {
            throw new IllegalArgumentException("fitted set '" + name + "' of " + values.keySet()
                    + ": expected names without tabulators and line breaks");
        }
        boolean square = covariances.size() == size
                && covariances.stream()
                        .allMatch(row -> row.size() == size && row.stream().allMatch(Double::isFinite));
        if (!square || !values.values().stream().allMatch(Double::isFinite)) {
            throw new IllegalArgumentException(
                    "fitted set " + name + ": expected finite values and a finite covariance of each two of " + size);
        }
        if (!(residualStandardDeviation >= 0)
                || Double.isInfinite(residualStandardDeviation)
                || !Double.isFinite(degreesOfFreedom)) {
            throw new IllegalArgumentException(
                    "fitted set " + name + ": scatter " + residualStandardDeviation + " with " + degreesOfFreedom
                            + " degrees of freedom: expected a finite scatter ≥ 0 and a finite number of them");
        }
    }

    private static boolean breaksLines(String name) {
        return name.chars().anyMatch(c -> c == '\t' || c == '\n' || c == '\r');
    }

    /**
     * Standard errors.
     *
     * @return standard error by name; 0 of what was kept
     */
    public Map<String, Double> standardErrors() {
        Map<String, Double> errors = new LinkedHashMap<>();
        int k = 0;
        for (String one : values.keySet()) {
            errors.put(one, Math.sqrt(Math.max(0, covariances.get(k).get(k))));
            k++;
        }
        return errors;
    }

    /**
     * A draw of all values together, as sure and as correlated as they were fitted; for ensembles of predictions.
     *
     * <p>The set does not know the bounds of the fit: a draw of a normal distribution can lie beyond them, and beyond what a model
     * takes, such as below 0. Whoever draws cuts the values where their meaning ends.
     *
     * @param random source of random numbers
     * @return value by name
     */
    public Map<String, Double> draw(SplittableRandom random) {
        int n = values.size();
        double[][] matrix = covariances.stream()
                .map(row -> row.stream().mapToDouble(c -> c).toArray())
                .toArray(double[][]::new);
        EigenDecomposition eigen = new EigenDecomposition(new Array2DRowRealMatrix(matrix));
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        double[] off = new double[n];
        for (int d = 0; d < n; d++) {
            double length = Math.sqrt(Math.max(0, eigen.getRealEigenvalue(d)))
                    * normal.inverseCumulativeProbability(random.nextDouble(1e-9, 1));
            for (int k = 0; k < n; k++) {
                off[k] += length * eigen.getV().getEntry(k, d);
            }
        }
        Map<String, Double> drawn = new LinkedHashMap<>();
        for (Map.Entry<String, Double> entry : values.entrySet()) {
            drawn.put(entry.getKey(), entry.getValue() + off[drawn.size()]);
        }
        return drawn;
    }

    /**
     * The set as knowledge beforehand of a further fit, such as of another bottle in the same refrigerator.
     *
     * @param parameter a parameter of that fit, named as here
     * @return the parameter, starting at the value and with its standard error as prior; kept if it has none
     * @throws IllegalArgumentException if there is no such value
     */
    public Parameter prior(Parameter parameter) {
        Double value = values.get(parameter.name());
        if (value == null) {
            throw new IllegalArgumentException("value " + parameter.name() + ": expected one of " + values.keySet());
        }
        double error = standardErrors().getOrDefault(parameter.name(), 0.0);
        Parameter started = new Parameter(
                parameter.name(),
                Math.max(parameter.low(), Math.min(parameter.high(), value)),
                parameter.low(),
                parameter.high(),
                parameter.prior(),
                parameter.fixed(),
                parameter.perRun(),
                parameter.scale());
        return error > 0 ? started.withPrior(value, error) : started.kept();
    }

    /**
     * The set as lines of text that {@link #parse} reads back exactly.
     *
     * @return lines, the same in every locale
     */
    public String text() {
        StringBuilder text = new StringBuilder(HEAD).append('\n');
        text.append("name\t").append(name).append('\n');
        text.append("version\t").append(version).append('\n');
        text.append("fitted\t").append(fittedAt).append('\n');
        text.append("scatter\t")
                .append(residualStandardDeviation)
                .append('\t')
                .append(degreesOfFreedom)
                .append('\n');
        int k = 0;
        for (Map.Entry<String, Double> entry : values.entrySet()) {
            text.append("value\t").append(entry.getKey()).append('\t').append(entry.getValue());
            covariances.get(k++).forEach(c -> text.append('\t').append(c));
            text.append('\n');
        }
        return text.toString();
    }

    /**
     * Reads what {@link #text} wrote.
     *
     * @param text the lines
     * @return the set
     * @throws IllegalArgumentException if a line is not as expected, with its number
     */
    public static FittedSet parse(String text) {
        List<String> lines = text.lines().toList();
        if (lines.size() < 6 || !lines.get(0).equals(HEAD)) {
            throw new IllegalArgumentException("line 1: expected '" + HEAD + "' and at least five more lines");
        }
        int line = 1;
        String name;
        int version;
        Instant fitted;
        String[] scatter;
        Map<String, Double> values = new LinkedHashMap<>();
        List<List<Double>> covariances = new ArrayList<>();
        double scatterOfReadings;
        double freedom;
        try {
            name = field(lines.get(line), "name", 2)[1];
            line++;
            version = Integer.parseInt(field(lines.get(line), "version", 2)[1]);
            line++;
            fitted = Instant.parse(field(lines.get(line), "fitted", 2)[1]);
            line++;
            scatter = field(lines.get(line), "scatter", 3);
            scatterOfReadings = Double.parseDouble(scatter[1]);
            freedom = Double.parseDouble(scatter[2]);
            line++;
            int size = lines.size() - line;
            for (; line < lines.size(); line++) {
                String[] value = field(lines.get(line), "value", 3 + size);
                values.put(value[1], Double.valueOf(value[2]));
                covariances.add(
                        Arrays.stream(value).skip(3).map(Double::valueOf).toList());
            }
        } catch (IllegalArgumentException | DateTimeParseException wrong) {
            throw new IllegalArgumentException("line " + (line + 1) + ": " + wrong.getMessage(), wrong);
        }
        return new FittedSet(name, version, fitted, values, covariances, scatterOfReadings, freedom);
    }

    private static String[] field(String line, String key, int parts) {
        String[] fields = line.split("\t", -1);
        if (fields.length != parts || !fields[0].equals(key)) {
            throw new IllegalArgumentException("'" + line + "': expected '" + key + "' and " + (parts - 1) + " fields");
        }
        return fields;
    }
}
