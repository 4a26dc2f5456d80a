/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.Arrays;

/**
 * Readings of one run: exact, or only known to lie below or above a value. Immutable.
 */
public final class Observations {

    /** Largest number of readings of a run. */
    public static final int MOST = 1_000_000;

    /** What a reading says. */
    public enum Kind {
        /** The value was read. */
        EXACT,
        /** The value was below the reading. */
        BELOW,
        /** The value was above the reading. */
        ABOVE
    }

    private final double[] at;
    private final double[] values;
    private final double[] deviations;
    private final Kind[] kinds;
    private final double quantum;

    private Observations(double[] at, double[] values, double[] deviations, Kind[] kinds, double quantum) {
        this.at = at;
        this.values = values;
        this.deviations = deviations;
        this.kinds = kinds;
        this.quantum = quantum;
    }

    /**
     * Exact readings of equal weight.
     *
     * @param at where, such as times [s], finite, not modified; only order and spacing matter, and only to correlated errors
     * @param values the readings, finite, as many, not modified
     * @return the readings
     * @throws IllegalArgumentException if a number is not finite, the lengths differ or there are too many
     */
    public static Observations of(double[] at, double[] values) {
        if (at.length != values.length) {
            throw new IllegalArgumentException(
                    values.length + " readings at " + at.length + " places: expected as many");
        }
        requireNumber(values.length);
        Builder builder = builder();
        for (int i = 0; i < values.length; i++) {
            builder.value(at[i], values[i]);
        }
        return builder.build();
    }

    /**
     * Collects readings.
     *
     * @return a new builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * The same readings, taken by an instrument that rounds: each variance grows by a twelfth of the step squared, and scatter that
     * is estimated is never taken to be less.
     *
     * @param step step of the display, in the unit of the readings, finite, ≥ 0
     * @return new readings
     * @throws IllegalArgumentException if the step is negative or not finite
     */
    public Observations quantised(double step) {
        if (!(step >= 0) || Double.isInfinite(step)) {
            throw new IllegalArgumentException("step of the display " + step + ": expected a finite number ≥ 0");
        }
        return new Observations(at, values, deviations, kinds, step);
    }

    /**
     * Number of readings.
     *
     * @return number
     */
    public int size() {
        return values.length;
    }

    /**
     * Where a reading was taken.
     *
     * @param i its index
     * @return place, such as the time [s]
     */
    public double at(int i) {
        return at[i];
    }

    /**
     * A reading.
     *
     * @param i its index
     * @return the value, or the limit that it was below or above
     */
    public double value(int i) {
        return values[i];
    }

    /**
     * Standard deviation of a reading, or its size relative to others where the scatter is estimated.
     *
     * @param i its index
     * @return standard deviation, as given
     */
    public double deviation(int i) {
        return deviations[i];
    }

    /**
     * What a reading says.
     *
     * @param i its index
     * @return its kind
     */
    public Kind kind(int i) {
        return kinds[i];
    }

    /**
     * Step of the display.
     *
     * @return step, 0 if the readings are not rounded
     */
    public double quantum() {
        return quantum;
    }

    boolean ascending() {
        for (int i = 1; i < at.length; i++) {
            if (!(at[i] > at[i - 1])) {
                return false;
            }
        }
        return true;
    }

    /** The same readings with other values, all of a kind as given. */
    Observations replaced(double[] newValues, Kind[] newKinds) {
        return new Observations(at, newValues, deviations, newKinds, quantum);
    }

    private static void requireNumber(int number) {
        if (number < 1 || number > MOST) {
            throw new IllegalArgumentException(number + " readings: expected 1 to " + MOST
                    + "; thin the log, neighbouring readings tell little more than one of them");
        }
    }

    /** Collects readings; not thread-safe. */
    public static final class Builder {

        private double[] at = new double[16];
        private double[] values = new double[16];
        private double[] deviations = new double[16];
        private Kind[] kinds = new Kind[16];
        private int size;

        private Builder() {}

        /**
         * Adds an exact reading of weight 1.
         *
         * @param where place, such as the time [s], finite
         * @param value the reading, finite
         * @return this builder
         */
        public Builder value(double where, double value) {
            return add(where, value, 1, Kind.EXACT);
        }

        /**
         * Adds an exact reading.
         *
         * @param where place, such as the time [s], finite
         * @param value the reading, finite
         * @param deviation its standard deviation, or relative to others where the scatter is estimated, finite, &gt; 0
         * @return this builder
         */
        public Builder value(double where, double value, double deviation) {
            return add(where, value, deviation, Kind.EXACT);
        }

        /**
         * Adds that something was below a value.
         *
         * @param where place, such as the time [s], finite
         * @param limit the value, finite
         * @param deviation standard deviation, as of an exact reading, finite, &gt; 0
         * @return this builder
         */
        public Builder below(double where, double limit, double deviation) {
            return add(where, limit, deviation, Kind.BELOW);
        }

        /**
         * Adds that something was above a value; for a time: that it had not happened while it was watched.
         *
         * @param where place, such as the time [s], finite
         * @param limit the value, finite
         * @param deviation standard deviation, as of an exact reading, finite, &gt; 0
         * @return this builder
         */
        public Builder above(double where, double limit, double deviation) {
            return add(where, limit, deviation, Kind.ABOVE);
        }

        private Builder add(double where, double value, double deviation, Kind kind) {
            if (!Double.isFinite(where) || !Double.isFinite(value)) {
                throw new IllegalArgumentException(
                        "reading " + size + ": " + value + " at " + where + ": expected finite numbers");
            }
            if (!(deviation > 0) || Double.isInfinite(deviation)) {
                throw new IllegalArgumentException(
                        "reading " + size + ": standard deviation " + deviation + ": expected a finite number above 0");
            }
            requireNumber(size + 1);
            if (size == values.length) {
                int capacity = 2 * size;
                at = Arrays.copyOf(at, capacity);
                values = Arrays.copyOf(values, capacity);
                deviations = Arrays.copyOf(deviations, capacity);
                kinds = Arrays.copyOf(kinds, capacity);
            }
            at[size] = where;
            values[size] = value;
            deviations[size] = deviation;
            kinds[size] = kind;
            size++;
            return this;
        }

        /**
         * The readings.
         *
         * @return the readings, at least one
         * @throws IllegalArgumentException if there is none
         */
        public Observations build() {
            requireNumber(size);
            return new Observations(
                    Arrays.copyOf(at, size),
                    Arrays.copyOf(values, size),
                    Arrays.copyOf(deviations, size),
                    Arrays.copyOf(kinds, size),
                    0);
        }
    }
}
