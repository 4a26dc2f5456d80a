/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import org.jspecify.annotations.Nullable;

/** Weighted sums of vectors, written so that the compiler can vectorise them. */
final class Sums {

    private Sums() {}

    /** out = base + Σ weights_j vectors_j over the first {@code count}; terms of weight 0 are left out. */
    static void of(double @Nullable [] base, double[] weights, double[][] vectors, int count, double[] out) {
        boolean begun = base != null;
        if (base != null && base != out) {
            System.arraycopy(base, 0, out, 0, out.length);
        }
        int j = next(weights, 0, count);
        while (j < count) {
            int k = next(weights, j + 1, count);
            int l = k < count ? next(weights, k + 1, count) : count;
            if (!begun) {
                times(weights[j], vectors[j], out);
                begun = true;
                j = k;
            } else if (l < count) {
                add(weights[j], vectors[j], weights[k], vectors[k], weights[l], vectors[l], out);
                j = next(weights, l + 1, count);
            } else if (k < count) {
                add(weights[j], vectors[j], weights[k], vectors[k], out);
                j = count;
            } else {
                addTimes(weights[j], vectors[j], out);
                j = count;
            }
        }
    }

    private static int next(double[] weights, int from, int count) {
        int j = from;
        while (j < count && weights[j] == 0) {
            j++;
        }
        return j;
    }

    private static void times(double weight, double[] vector, double[] out) {
        for (int i = 0; i < out.length; i++) {
            out[i] = weight * vector[i];
        }
    }

    /** out += weight · vector. */
    static void addTimes(double weight, double[] vector, double[] out) {
        for (int i = 0; i < out.length; i++) {
            out[i] += weight * vector[i];
        }
    }

    private static void add(double v, double[] a, double w, double[] b, double[] out) {
        for (int i = 0; i < out.length; i++) {
            out[i] += v * a[i] + w * b[i];
        }
    }

    private static void add(double v, double[] a, double w, double[] b, double x, double[] c, double[] out) {
        for (int i = 0; i < out.length; i++) {
            out[i] += v * a[i] + w * b[i] + x * c[i];
        }
    }

    /** out = a + b. */
    static void add(double[] a, double[] b, double[] out) {
        for (int i = 0; i < out.length; i++) {
            out[i] = a[i] + b[i];
        }
    }
}
