/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.provenance;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;

/**
 * How well a figure is known: the shape of its distribution around the stated value, its width, and whether the
 * unknown deviation is the same for all vessels of a run or different from vessel to vessel.
 *
 * <p>Shapes and their standard uncertainties follow JCGM 100:2008, 4.3: a rectangular distribution of half-width a has
 * a/sqrt(3), a triangular one a/sqrt(6). A width is absolute (in the unit of the figure) or relative (a fraction of
 * its magnitude). Immutable; equal by value.
 */
public final class Uncertainty {
    private static final MathContext PRINTED = new MathContext(6);

    /** Shape of the distribution around the stated value; all are symmetric. */
    public enum Shape {
        /** No uncertainty: a definition. */
        EXACT,
        /** Normal; the width is the standard uncertainty. */
        NORMAL,
        /** Rectangular; the width is the half-width. */
        RECTANGULAR,
        /** Symmetric triangular; the width is the half-width. */
        TRIANGULAR
    }

    /** Whether one draw serves all vessels of a run or each vessel has its own. */
    public enum Scope {
        /** One unknown deviation, the same for all vessels of a run (an error of a formula or a table). */
        SHARED,
        /** A deviation of its own for each vessel (manufacturing spread). */
        PER_VESSEL
    }

    private static final Uncertainty EXACT = new Uncertainty(Shape.EXACT, 0, false, Scope.SHARED);

    private final Shape shape;
    private final double width;
    private final boolean relative;
    private final Scope scope;

    private Uncertainty(Shape shape, double width, boolean relative, Scope scope) {
        this.shape = shape;
        this.width = width;
        this.relative = relative;
        this.scope = scope;
    }

    private static Uncertainty of(Shape shape, double width, boolean relative) {
        if (!(width >= 0 && Double.isFinite(width))) {
            throw new IllegalArgumentException(
                    "width of an uncertainty: expected a finite number of at least 0, got " + width);
        }
        return new Uncertainty(shape, width, relative, Scope.SHARED);
    }

    /**
     * No uncertainty: the figure is a definition.
     *
     * @return the exact uncertainty
     */
    public static Uncertainty exact() {
        return EXACT;
    }

    /**
     * Normal distribution, absolute width.
     *
     * @param standardUncertainty standard uncertainty in the unit of the figure, finite, at least 0
     * @return the uncertainty, shared by all vessels
     * @throws IllegalArgumentException if the width is negative or not finite
     */
    public static Uncertainty normal(double standardUncertainty) {
        return of(Shape.NORMAL, standardUncertainty, false);
    }

    /**
     * Normal distribution, relative width.
     *
     * @param fraction standard uncertainty as a fraction of the figure, finite, at least 0
     * @return the uncertainty, shared by all vessels
     * @throws IllegalArgumentException if the width is negative or not finite
     */
    public static Uncertainty normalRelative(double fraction) {
        return of(Shape.NORMAL, fraction, true);
    }

    /**
     * Rectangular distribution, absolute width.
     *
     * @param halfWidth half-width in the unit of the figure, finite, at least 0
     * @return the uncertainty, shared by all vessels
     * @throws IllegalArgumentException if the width is negative or not finite
     */
    public static Uncertainty rectangular(double halfWidth) {
        return of(Shape.RECTANGULAR, halfWidth, false);
    }

    /**
     * Rectangular distribution, relative width.
     *
     * @param fraction half-width as a fraction of the figure, finite, at least 0
     * @return the uncertainty, shared by all vessels
     * @throws IllegalArgumentException if the width is negative or not finite
     */
    public static Uncertainty rectangularRelative(double fraction) {
        return of(Shape.RECTANGULAR, fraction, true);
    }

    /**
     * Symmetric triangular distribution, absolute width.
     *
     * @param halfWidth half-width in the unit of the figure, finite, at least 0
     * @return the uncertainty, shared by all vessels
     * @throws IllegalArgumentException if the width is negative or not finite
     */
    public static Uncertainty triangular(double halfWidth) {
        return of(Shape.TRIANGULAR, halfWidth, false);
    }

    /**
     * Symmetric triangular distribution, relative width.
     *
     * @param fraction half-width as a fraction of the figure, finite, at least 0
     * @return the uncertainty, shared by all vessels
     * @throws IllegalArgumentException if the width is negative or not finite
     */
    public static Uncertainty triangularRelative(double fraction) {
        return of(Shape.TRIANGULAR, fraction, true);
    }

    /**
     * The same uncertainty, drawn anew for each vessel of a run.
     *
     * @return a copy with scope {@link Scope#PER_VESSEL}
     */
    public Uncertainty perVessel() {
        return new Uncertainty(shape, width, relative, Scope.PER_VESSEL);
    }

    /**
     * Shape of the distribution.
     *
     * @return the shape
     */
    public Shape shape() {
        return shape;
    }

    /**
     * Whether the deviation is common to all vessels of a run.
     *
     * @return the scope
     */
    public Scope scope() {
        return scope;
    }

    /**
     * Whether the width is a fraction of the figure.
     *
     * @return true if relative, false if in the unit of the figure
     */
    public boolean isRelative() {
        return relative;
    }

    /**
     * Standard uncertainty of a figure.
     *
     * @param value the figure, finite
     * @return standard uncertainty in the unit of the figure, at least 0
     * @throws IllegalArgumentException if the value is not finite or the result would not be
     */
    public double standardUncertainty(double value) {
        double w = absoluteWidth(value);
        return switch (shape) {
            case EXACT -> 0;
            case NORMAL -> w;
            case RECTANGULAR -> w / Math.sqrt(3);
            case TRIANGULAR -> w / Math.sqrt(6);
        };
    }

    /**
     * The value below which the true figure lies with a given probability. Feeding it uniform random numbers draws
     * samples of the figure.
     *
     * @param value the stated figure, finite
     * @param probability cumulative probability, strictly between 0 and 1
     * @return the quantile, in the unit of the figure; the stated figure itself at 0.5
     * @throws IllegalArgumentException if the value is not finite, the probability is not strictly between 0 and 1, or
     *     the result would not be finite
     */
    public double quantile(double value, double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException(
                    "probability: expected a number strictly between 0 and 1, got " + probability);
        }
        double w = absoluteWidth(value);
        double deviation = switch (shape) {
            case EXACT -> 0;
            case NORMAL -> w * NormalQuantile.of(probability);
            case RECTANGULAR -> w * (2 * probability - 1);
            case TRIANGULAR -> w * unitTriangularQuantile(probability);
        };
        return requireFinite("quantile", value + deviation);
    }

    private static double unitTriangularQuantile(double probability) {
        return probability <= 0.5 ? Math.sqrt(2 * probability) - 1 : 1 - Math.sqrt(2 * (1 - probability));
    }

    private double absoluteWidth(double value) {
        requireFinite("value", value);
        return requireFinite("width", relative ? width * Math.abs(value) : width);
    }

    private static double requireFinite(String what, double x) {
        if (!Double.isFinite(x)) {
            throw new IllegalArgumentException(what + ": expected a finite number, got " + x);
        }
        return x;
    }

    private String widthInWords() {
        BigDecimal exact = BigDecimal.valueOf(width).round(PRINTED);
        return relative
                ? exact.movePointRight(2).stripTrailingZeros().toPlainString() + " %"
                : exact.stripTrailingZeros().toPlainString();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Uncertainty that
                && shape == that.shape
                && Double.compare(width, that.width) == 0
                && relative == that.relative
                && scope == that.scope;
    }

    @Override
    public int hashCode() {
        return Objects.hash(shape, width, relative, scope);
    }

    /**
     * Shape, width and scope in words, for example {@code rectangular half-width 10 % per vessel}.
     *
     * @return the description
     */
    @Override
    public String toString() {
        if (shape == Shape.EXACT) {
            return "exact";
        }
        String name = switch (shape) {
            case EXACT, NORMAL -> "normal standard uncertainty ";
            case RECTANGULAR -> "rectangular half-width ";
            case TRIANGULAR -> "triangular half-width ";
        };
        return name + widthInWords() + (scope == Scope.PER_VESSEL ? " per vessel" : "");
    }
}
