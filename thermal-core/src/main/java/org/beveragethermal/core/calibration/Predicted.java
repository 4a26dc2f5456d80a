/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.Arrays;

/**
 * What a model says for one set of parameters: a value for each reading and its slopes. Immutable.
 */
public final class Predicted {

    private final double[] values;
    private final double[][] slopes;

    private Predicted(double[] values, double[][] slopes) {
        this.values = values;
        this.slopes = slopes;
    }

    /**
     * Values with their slopes.
     *
     * @param values {@code values[i]} belongs to reading i; not copied, not to be modified any more
     * @param slopes {@code slopes[i][k]} is the exact derivative of value i in parameter k; as many rows as values; not copied, not
     *     to be modified any more
     * @return the prediction
     * @throws IllegalArgumentException if the numbers of rows differ
     */
    public static Predicted of(double[] values, double[][] slopes) {
        if (values.length != slopes.length) {
            throw new IllegalArgumentException(
                    slopes.length + " rows of slopes for " + values.length + " values: expected as many");
        }
        return new Predicted(values, slopes);
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
     */
    public double slope(int i, int k) {
        return slopes[i][k];
    }

    @Override
    public String toString() {
        return "predicted " + Arrays.toString(values);
    }
}
