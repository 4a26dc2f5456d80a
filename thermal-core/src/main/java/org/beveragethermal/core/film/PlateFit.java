/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import org.beveragethermal.core.correlation.PlateLaw;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.network.SmoothFunction;

/**
 * What films of free convection need of a fluid at their mean temperature, in one table: polynomials of degree 5 through
 * Chebyshev's points of cells some 9 K wide, which follow the formulas of the {@link PlateLaw} to a few parts in 10⁷ as the fits of the
 * properties do. Keeps its end values outside the fluid's range. Immutable.
 */
final class PlateFit {

    /** Root of the conductivity √k. */
    static final int ROOT = 0;
    /** What the root of the coefficient gains per sixth root of the buoyancy: √k c(Pr) (g/(ν α))^(1/6). */
    static final int DRIVEN = 1;
    /** Grashof number per buoyancy and cube of the length g/ν². */
    static final int GRASHOF = 2;
    /** Logarithm of the factor of the slenderness. */
    static final int LOG_FACTOR = 3;
    /** Its exponent. */
    static final int EXPONENT = 4;

    /** Rayleigh number per buoyancy and cube of the length g/(ν α). */
    static final int RAYLEIGH = 5;

    private static final int FUNCTIONS = 6;
    private static final int TERMS = 6;
    private static final double CELL_K = 9;
    /** From values at the points of a cell, 0 to 1, to coefficients of powers. */
    private static final double[][] FROM_VALUES = inverseVandermonde();

    private final double[] joints;
    /** For each piece between joints: its first cell, and cells per kelvin. */
    private final int[] firstCell;

    private final double[] cellsPerK;
    private final double[] terms;

    private PlateFit(double[] joints, int[] firstCell, double[] cellsPerK, double[] terms) {
        this.joints = joints;
        this.firstCell = firstCell;
        this.cellsPerK = cellsPerK;
        this.terms = terms;
    }

    private static double point(int i) {
        return 0.5 - 0.5 * Math.cos(Math.PI * (i + 0.5) / TERMS);
    }

    /** Lagrange's polynomials of the points, multiplied out. */
    private static double[][] inverseVandermonde() {
        double[][] result = new double[TERMS][TERMS];
        for (int i = 0; i < TERMS; i++) {
            double[] product = {1, 0, 0, 0, 0, 0};
            for (int j = 0; j < TERMS; j++) {
                if (j == i) {
                    continue;
                }
                double scale = 1 / (point(i) - point(j));
                for (int p = TERMS - 1; p >= 0; p--) {
                    product[p] = scale * ((p > 0 ? product[p - 1] : 0) - point(j) * product[p]);
                }
            }
            for (int p = 0; p < TERMS; p++) {
                result[p][i] = product[p];
            }
        }
        return result;
    }

    /**
     * Tabulates a fluid.
     *
     * @param joints ends of its range and temperatures at which a property changes its formula [K], ascending
     */
    static PlateFit of(
            SmoothFunction conductivity, SmoothFunction inverseDiffusion, SmoothFunction prandtl, double[] joints) {
        int pieces = joints.length - 1;
        int[] firstCell = new int[pieces + 1];
        double[] cellsPerK = new double[pieces];
        for (int i = 0; i < pieces; i++) {
            int cells = (int) Math.ceil((joints[i + 1] - joints[i]) / CELL_K);
            firstCell[i + 1] = firstCell[i] + cells;
            cellsPerK[i] = cells / (joints[i + 1] - joints[i]);
        }
        PlateLaw law = (PlateLaw) VerticalPlate.CHURCHILL_CHU.law();
        double[] terms = new double[firstCell[pieces] * FUNCTIONS * TERMS];
        double[][] values = new double[FUNCTIONS][TERMS];
        for (int i = 0; i < pieces; i++) {
            for (int cell = firstCell[i]; cell < firstCell[i + 1]; cell++) {
                for (int j = 0; j < TERMS; j++) {
                    double t = joints[i] + (cell - firstCell[i] + point(j)) / cellsPerK[i];
                    double pr = prandtl.at(t);
                    double group = ConvectiveFilm.GRAVITY * inverseDiffusion.at(t);
                    double root = Math.sqrt(conductivity.at(t));
                    values[ROOT][j] = root;
                    values[DRIVEN][j] = root * law.rootPerSixthRoot(pr) * Math.pow(group, 1.0 / 6);
                    values[GRASHOF][j] = group / pr;
                    values[LOG_FACTOR][j] = Math.log(law.slendernessFactor(pr));
                    values[RAYLEIGH][j] = group;
                    values[EXPONENT][j] = law.slendernessExponent(pr);
                }
                for (int f = 0; f < FUNCTIONS; f++) {
                    for (int p = 0; p < TERMS; p++) {
                        double sum = 0;
                        for (int j = 0; j < TERMS; j++) {
                            sum += FROM_VALUES[p][j] * values[f][j];
                        }
                        terms[(cell * FUNCTIONS + f) * TERMS + p] = sum;
                    }
                }
            }
        }
        return new PlateFit(joints, firstCell, cellsPerK, terms);
    }

    /** Piece between joints in which a temperature lies; the nearest outside the range. */
    int piece(double temperatureK) {
        int i = 0;
        while (i + 2 < joints.length && temperatureK > joints[i + 1]) {
            i++;
        }
        return i;
    }

    /** Cells passed since the start of a piece, held in it. */
    double passed(int piece, double temperatureK) {
        double last = firstCell[piece + 1] - firstCell[piece];
        return Math.min(last, Math.max(0, (temperatureK - joints[piece]) * cellsPerK[piece]));
    }

    /** Cell of a place in a piece. */
    int cell(int piece, double passed) {
        return Math.min(firstCell[piece + 1] - 1, firstCell[piece] + (int) passed);
    }

    /** Part of a cell that is passed. */
    double part(int piece, int cell, double passed) {
        return passed - (cell - firstCell[piece]);
    }

    /** Slope of the part passed in the temperature [1/K]; 0 outside the range. */
    double scale(int piece, double temperatureK) {
        return temperatureK >= joints[0] && temperatureK <= joints[joints.length - 1] ? cellsPerK[piece] : 0;
    }

    double value(int cell, int function, double part) {
        int o = (cell * FUNCTIONS + function) * TERMS;
        double[] c = terms;
        return c[o] + part * (c[o + 1] + part * (c[o + 2] + part * (c[o + 3] + part * (c[o + 4] + part * c[o + 5]))));
    }

    /** Slope in the part of the cell. */
    double slope(int cell, int function, double part) {
        int o = (cell * FUNCTIONS + function) * TERMS;
        double[] c = terms;
        return c[o + 1] + part * (2 * c[o + 2] + part * (3 * c[o + 3] + part * (4 * c[o + 4] + part * 5 * c[o + 5])));
    }
}
