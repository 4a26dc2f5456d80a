/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.BesselJ;

/**
 * A wall, long cylinder or sphere of one temperature, put into a medium of another with a film of constant coefficient: the
 * series of separation of variables, as in any textbook of heat conduction.
 *
 * <p>Excess temperatures are parts of the one at the start; places are parts of the half thickness or radius.
 */
final class SeriesSolution {

    /** The three shapes, each with its equation of roots, coefficient, form and mean of a term. */
    enum Shape {
        WALL {
            @Override
            double equation(double z, double biot) {
                return z * Math.sin(z) - biot * Math.cos(z);
            }

            @Override
            double coefficient(double z) {
                return 4 * Math.sin(z) / (2 * z + Math.sin(2 * z));
            }

            @Override
            double form(double zx) {
                return Math.cos(zx);
            }

            @Override
            double mean(double z) {
                return Math.sin(z) / z;
            }
        },
        CYLINDER {
            @Override
            double equation(double z, double biot) {
                return z * BesselJ.value(1, z) - biot * BesselJ.value(0, z);
            }

            @Override
            double coefficient(double z) {
                double j0 = BesselJ.value(0, z);
                double j1 = BesselJ.value(1, z);
                return 2 / z * j1 / (j0 * j0 + j1 * j1);
            }

            @Override
            double form(double zx) {
                return BesselJ.value(0, zx);
            }

            @Override
            double mean(double z) {
                return 2 * BesselJ.value(1, z) / z;
            }
        },
        SPHERE {
            @Override
            double equation(double z, double biot) {
                return (1 - biot) * Math.sin(z) - z * Math.cos(z);
            }

            @Override
            double coefficient(double z) {
                return 4 * (Math.sin(z) - z * Math.cos(z)) / (2 * z - Math.sin(2 * z));
            }

            @Override
            double form(double zx) {
                return zx == 0 ? 1 : Math.sin(zx) / zx;
            }

            @Override
            double mean(double z) {
                return 3 * (Math.sin(z) - z * Math.cos(z)) / (z * z * z);
            }
        };

        abstract double equation(double z, double biot);

        abstract double coefficient(double z);

        abstract double form(double zx);

        abstract double mean(double z);
    }

    /** Terms that matter from a Fourier number of 0.01 on: the next is below exp(−0.01 (40 π)²). */
    private static final int TERMS = 40;

    private static final double SCAN = 0.02;

    private final Shape shape;
    private final List<Double> roots;

    private SeriesSolution(Shape shape, List<Double> roots) {
        this.shape = shape;
        this.roots = roots;
    }

    static SeriesSolution of(Shape shape, double biot) {
        DoubleUnaryOperator equation = z -> shape.equation(z, biot);
        List<Double> roots = new ArrayList<>();
        double from = 1e-3;
        while (roots.size() < TERMS) {
            double to = from + SCAN;
            if (equation.applyAsDouble(from) * equation.applyAsDouble(to) < 0) {
                roots.add(new BrentSolver(1e-15, 1e-14).solve(200, equation::applyAsDouble, from, to));
            }
            from = to;
        }
        return new SeriesSolution(shape, List.copyOf(roots));
    }

    double root(int n) {
        return roots.get(n - 1);
    }

    double coefficient(int n) {
        return shape.coefficient(root(n));
    }

    double at(double place, double fourier) {
        return sum(fourier, z -> shape.form(z * place));
    }

    double mean(double fourier) {
        return sum(fourier, shape::mean);
    }

    private double sum(double fourier, DoubleUnaryOperator part) {
        double sum = 0;
        for (double z : roots) {
            sum += shape.coefficient(z) * Math.exp(-z * z * fourier) * part.applyAsDouble(z);
        }
        return sum;
    }
}
