/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.Arrays;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What a model says for one set of parameters: a value for each reading and its slopes. Immutable and thread-safe.
 */
public final class Predicted {

    private final double[] values;
    private final @Nullable Supplier<double[][]> later;
    /** For each parameter, the slopes of all values; made when first asked for. */
    private volatile double @Nullable [][] columns;

    private Predicted(double[] values, @Nullable Supplier<double[][]> later, double @Nullable [][] columns) {
        this.values = values;
        this.later = later;
        this.columns = columns;
    }

    /**
     * Values with their slopes.
     *
     * @param values {@code values[i]} belongs to reading i; not copied, not to be modified any more
     * @param slopes {@code slopes[i][k]} is the exact derivative of value i in parameter k; as many rows as values; not modified
     * @return the prediction
     * @throws IllegalArgumentException if the numbers of rows differ
     */
    public static Predicted of(double[] values, double[][] slopes) {
        if (values.length != slopes.length) {
            throw new IllegalArgumentException(
                    slopes.length + " rows of slopes for " + values.length + " values: expected as many");
        }
        return new Predicted(values, null, turned(slopes));
    }

    /**
     * Values whose slopes are worked out only where they are asked for: a search needs none of a place that it does not go to. Columns
     * that do not have a slope for each value are refused there.
     *
     * @param values {@code values[i]} belongs to reading i; not copied, not to be modified any more
     * @param slopes gives {@code slopes[k][i]}, the exact derivative of value i in parameter k; asked once as a rule, the same whenever
     *     it is asked
     * @return the prediction
     */
    public static Predicted of(double[] values, Supplier<double[][]> slopes) {
        return new Predicted(values, Objects.requireNonNull(slopes, "slopes"), null);
    }

    private static double[][] turned(double[][] rows) {
        double[][] columns = new double[rows.length == 0 ? 0 : rows[0].length][rows.length];
        for (int i = 0; i < rows.length; i++) {
            for (int k = 0; k < columns.length; k++) {
                columns[k][i] = rows[i][k];
            }
        }
        return columns;
    }

    /** For each parameter, the slopes of all values; not to be modified. Fails as {@link #slope} does. */
    double[][] columns() {
        double[][] known = columns;
        if (known == null) {
            known = Objects.requireNonNull(later).get();
            for (double[] column : known) {
                if (column.length != values.length) {
                    throw new IllegalArgumentException(
                            column.length + " slopes for " + values.length + " values: expected as many");
                }
            }
            columns = known;
        }
        return known;
    }

    /**
     * Number of values.
     *
     * @return number of readings that are predicted
     */
    public int size() {
        return values.length;
    }

    /**
     * A value.
     *
     * @param i index of the reading
     * @return its predicted value, in the unit of the readings
     */
    public double value(int i) {
        return values[i];
    }

    /**
     * All values.
     *
     * @return a copy
     */
    public double[] values() {
        return values.clone();
    }

    /**
     * A slope.
     *
     * @param i index of the reading
     * @param k index of the parameter
     * @return derivative of value i in parameter k
     * @throws IllegalArgumentException if slopes that are worked out only now are more or fewer than the values
     */
    public double slope(int i, int k) {
        return columns()[k][i];
    }

    @Override
    public String toString() {
        return "predicted " + Arrays.toString(values);
    }
}
