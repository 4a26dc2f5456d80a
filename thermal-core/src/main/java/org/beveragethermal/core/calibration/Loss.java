/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

/**
 * What a standardised residual costs: its square, or less where it is large.
 *
 * <p>A loss ρ(r) is minimised as the sum of squares of √(2 ρ) with the sign of r, so that least squares serves for all. Constants by
 * default give 95 % efficiency on normal errors (Huber 1981; Holland and Welsch 1977).
 *
 * <p>Immutable.
 *
 * <p>Theory manual, equation (8.3).
 */
public final class Loss {

    /** Least squares. */
    public static final Loss SQUARES = new Loss(Shape.SQUARES, Double.POSITIVE_INFINITY);

    private enum Shape {
        SQUARES,
        HUBER,
        BIWEIGHT
    }

    private final Shape shape;
    private final double constant;

    private Loss(Shape shape, double constant) {
        this.shape = shape;
        this.constant = constant;
    }

    /**
     * Squares that go over into absolute values at 1.345 standard deviations: outliers pull, but not with their square.
     *
     * @return the loss
     */
    public static Loss huber() {
        return new Loss(Shape.HUBER, 1.345);
    }

    /**
     * A loss that levels off at 4.685 standard deviations: outliers beyond do not pull at all. It may have several minima.
     *
     * @return the loss
     */
    public static Loss biweight() {
        return new Loss(Shape.BIWEIGHT, 4.685);
    }

    boolean isSquares() {
        return shape == Shape.SQUARES;
    }

    /** √(2 ρ(r)) with the sign of r. */
    double root(double r) {
        double size = Math.abs(r);
        if (shape == Shape.HUBER && size > constant) {
            return Math.signum(r) * Math.sqrt(constant * (2 * size - constant));
        }
        if (shape == Shape.BIWEIGHT) {
            return size >= constant ? Math.signum(r) * constant / Math.sqrt(3) : r * Math.sqrt(biweightRatio(r));
        }
        return r;
    }

    /** Derivative of {@link #root}. */
    double rootSlope(double r) {
        double size = Math.abs(r);
        if (shape == Shape.HUBER && size > constant) {
            return constant / Math.sqrt(constant * (2 * size - constant));
        }
        if (shape == Shape.BIWEIGHT) {
            double rest = 1 - r * r / (constant * constant);
            return size >= constant ? 0 : rest * rest / Math.sqrt(biweightRatio(r));
        }
        return 1;
    }

    private double biweightRatio(double r) {
        double u = r * r / (constant * constant);
        return (3 - 3 * u + u * u) / 3;
    }

    /** Derivative of ρ. */
    double influence(double r) {
        return root(r) * rootSlope(r);
    }

    /** Second derivative of ρ. */
    double influenceSlope(double r) {
        double u = r * r / (constant * constant);
        return switch (shape) {
            case SQUARES -> 1;
            case HUBER -> u > 1 ? 0 : 1;
            case BIWEIGHT -> u > 1 ? 0 : (1 - u) * (1 - 5 * u);
        };
    }

    @Override
    public String toString() {
        return switch (shape) {
            case SQUARES -> "least squares";
            case HUBER -> "Huber's loss";
            case BIWEIGHT -> "biweight loss";
        };
    }
}
