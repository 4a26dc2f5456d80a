/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

/**
 * A figure that the text of a caution names.
 *
 * @param name what it is, for programs, such as {@code limit}
 * @param value the figure in SI units
 * @param shown how people read it
 */
public record Argument(String name, double value, Shown shown) {

    /** How a figure in SI units is shown to people. */
    public enum Shown {
        /** A temperature in kelvins, shown in degrees Celsius. */
        CELSIUS(1, -273.15),
        /** A difference of temperature in kelvins, shown as it is. */
        KELVINS(1, 0),
        /** Seconds, shown in minutes. */
        MINUTES(1.0 / 60, 0),
        /** Seconds, shown as they are. */
        SECONDS(1, 0),
        /** Seconds, shown in hours. */
        HOURS(1.0 / 3600, 0),
        /** A number without a unit, shown as it is. */
        NUMBER(1, 0),
        /** Pascals, shown in bar. */
        BAR(1e-5, 0),
        /** A fraction, shown in parts of a hundred. */
        PERCENT(100, 0);

        private final double factor;
        private final double offset;

        Shown(double factor, double offset) {
            this.factor = factor;
            this.offset = offset;
        }
    }

    private static final double DECIMALS = 1e6;

    /**
     * Checks the figure.
     *
     * @param name what it is, not blank
     * @param value the figure in SI units, finite
     * @param shown how people read it
     * @throws IllegalArgumentException if the name is blank or the figure is not finite
     */
    public Argument {
        if (name.isBlank() || !Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "argument '" + name + "' " + value + ": expected a name that is not blank and a finite figure");
        }
    }

    /**
     * The figure as people read it.
     *
     * @return the figure in the unit of {@link #shown}, never minus zero
     */
    public double inShownUnit() {
        double rounded = Math.rint((value * shown.factor + shown.offset) * DECIMALS) / DECIMALS;
        return rounded == 0 ? 0 : rounded;
    }
}
