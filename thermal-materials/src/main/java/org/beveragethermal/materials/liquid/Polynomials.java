/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

/** Polynomials by Horner's scheme; coefficients run from the constant upwards and are not modified. */
final class Polynomials {
    private Polynomials() {}

    static double value(double[] c, double x) {
        double sum = 0;
        for (int i = c.length - 1; i >= 0; i--) {
            sum = sum * x + c[i];
        }
        return sum;
    }

    static double derivative(double[] c, double x) {
        double sum = 0;
        for (int i = c.length - 1; i >= 1; i--) {
            sum = sum * x + i * c[i];
        }
        return sum;
    }

    static double secondDerivative(double[] c, double x) {
        double sum = 0;
        for (int i = c.length - 1; i >= 2; i--) {
            sum = sum * x + i * (i - 1) * c[i];
        }
        return sum;
    }

    /** Antiderivative that vanishes at x = 0. */
    static double antiderivative(double[] c, double x) {
        double sum = 0;
        for (int i = c.length - 1; i >= 0; i--) {
            sum = sum * x + c[i] / (i + 1);
        }
        return sum * x;
    }

    /** The polynomial in y that remains of rows c[j][i] x^i y^j when x is fixed. */
    static double[] collapse(double[][] c, double x) {
        double[] inY = new double[c.length];
        for (int j = 0; j < c.length; j++) {
            inY[j] = value(c[j], x);
        }
        return inY;
    }
}
