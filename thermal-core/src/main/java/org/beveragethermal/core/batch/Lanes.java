/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

import java.util.Arrays;
import org.beveragethermal.core.internal.Ros4;

/**
 * Steps of {@link Ros4} in many samples side by side, each with a step length of its own.
 *
 * <p>A lane is a sample that is being followed. What a lane computes depends on nothing in the others, and the operations are those
 * of a single sample in the same order, so that a sample's numbers do not depend on where it stands.
 */
final class Lanes {

    private static final double SAFETY = 0.9;
    private static final double MOST_GROWTH = 5;
    private static final double LEAST_GROWTH = 0.1;

    private final Rates rates;
    private final int nodes;
    private final double inverseTolerance;
    /** State at the start of the step, then at its end. */
    final double[][] state;

    final double[][] next;
    /** Rates at the start of the step [1/s]. */
    final double[][] rate;
    /** Length of the step [s]. */
    final double[] length = new double[BatchLaw.MOST_PAIRS];
    /** Size of the error over the tolerance; not a number if a rate is not. */
    final double[] error = new double[BatchLaw.MOST_PAIRS];
    /** Factor on the length of the step that suits the tolerance. */
    final double[] growth = new double[BatchLaw.MOST_PAIRS];

    private final double[] inverseLength = new double[BatchLaw.MOST_PAIRS];
    private final double[] shift = new double[BatchLaw.MOST_PAIRS];
    private final double[][] argument;
    private final double[][] matrix;
    private final double[][] pivot;
    private final double[][] u1;
    private final double[][] u2;
    private final double[][] u3;
    private final double[][] u4;

    /** Weight of an error by node and lane: its heat over that of the same error in the node that is asked for, at most 1. */
    private final double[][] weight;
    /** The node that is asked for. */
    private final int node;

    Lanes(BatchSamples samples, int node, double toleranceK) {
        this.node = node;
        rates = new Rates(samples);
        nodes = rates.nodes();
        inverseTolerance = 1 / toleranceK;
        state = Rates.lanes(nodes);
        next = Rates.lanes(nodes);
        rate = Rates.lanes(nodes);
        argument = Rates.lanes(nodes);
        matrix = Rates.lanes(nodes * nodes);
        pivot = Rates.lanes(nodes);
        weight = Rates.lanes(nodes);
        u1 = Rates.lanes(nodes);
        u2 = Rates.lanes(nodes);
        u3 = Rates.lanes(nodes);
        u4 = Rates.lanes(nodes);
    }

    Rates rates() {
        return rates;
    }

    /** Takes a sample into a lane; its first step is measured by {@link #firstLengthS}. */
    void load(int sample, int lane) {
        rates.load(sample, lane, state);
        length[lane] = 0;
        for (int i = 0; i < nodes; i++) {
            weight[i][lane] = Math.min(1, rates.capacityJPerK(i, lane) / rates.capacityJPerK(node, lane));
        }
    }

    void move(int from, int to) {
        rates.move(from, to);
        Rates.move(state, from, to);
        Rates.move(rate, from, to);
        Rates.move(weight, from, to);
        length[to] = length[from];
    }

    /** Rates and derivatives at the states of the first n lanes. */
    void begin(int n) {
        rates.evaluate(state, n, true);
        for (int i = 0; i < nodes; i++) {
            System.arraycopy(rates.rate[i], 0, rate[i], 0, n);
        }
    }

    /** Half the fastest time constant of a node at the state of {@link #begin} [s]; infinite where nothing moves. */
    double firstLengthS(int lane) {
        double fastest = 0;
        for (int i = 0; i < nodes; i++) {
            fastest = Math.max(fastest, Math.abs(rates.jacobian[i * nodes + i][lane]));
        }
        return 0.5 / fastest;
    }

    /** Tries a step of each lane's length from the state of {@link #begin}. */
    void attempt(int n) {
        invert(length, inverseLength, n);
        scale(inverseLength, 1 / Ros4.GAMMA, shift, n);
        factorise(n);
        for (int i = 0; i < nodes; i++) {
            System.arraycopy(rate[i], 0, u1[i], 0, n);
        }
        solve(u1, n);
        for (int i = 0; i < nodes; i++) {
            sum(state[i], Ros4.A21, u1[i], argument[i], n);
        }
        rates.evaluate(argument, n, false);
        for (int i = 0; i < nodes; i++) {
            second(rates.rate[i], inverseLength, u1[i], u2[i], n);
        }
        solve(u2, n);
        for (int i = 0; i < nodes; i++) {
            sum(state[i], Ros4.A31, u1[i], Ros4.A32, u2[i], argument[i], n);
        }
        rates.evaluate(argument, n, false);
        for (int i = 0; i < nodes; i++) {
            third(rates.rate[i], inverseLength, u1[i], u2[i], u3[i], n);
        }
        solve(u3, n);
        for (int i = 0; i < nodes; i++) {
            fourth(rates.rate[i], inverseLength, u1[i], u2[i], u3[i], u4[i], n);
        }
        solve(u4, n);
        Arrays.fill(error, 0, n, 0);
        for (int i = 0; i < nodes; i++) {
            end(state[i], u1[i], u2[i], u3[i], u4[i], next[i], n);
            estimate(u1[i], u2[i], u3[i], u4[i], weight[i], error, n);
        }
        scale(error, inverseTolerance, error, n);
        grow(error, growth, n);
    }

    /** Takes the step of a lane. */
    void accept(int lane) {
        for (int i = 0; i < nodes; i++) {
            state[i][lane] = next[i][lane];
        }
    }

    /** I/(hγ) − J in factors without pivoting: what flows out of a node is the largest of its row unless heat makes itself. */
    private void factorise(int n) {
        for (int i = 0; i < nodes; i++) {
            for (int j = 0; j < nodes; j++) {
                scale(rates.jacobian[i * nodes + j], -1, matrix[i * nodes + j], n);
            }
            add(matrix[i * nodes + i], shift, n);
        }
        for (int k = 0; k < nodes; k++) {
            invert(matrix[k * nodes + k], pivot[k], n);
            for (int i = k + 1; i < nodes; i++) {
                double[] factor = matrix[i * nodes + k];
                multiply(factor, pivot[k], n);
                for (int j = k + 1; j < nodes; j++) {
                    subtractProduct(matrix[i * nodes + j], factor, matrix[k * nodes + j], n);
                }
            }
        }
    }

    private void solve(double[][] u, int n) {
        for (int i = 1; i < nodes; i++) {
            for (int k = 0; k < i; k++) {
                subtractProduct(u[i], matrix[i * nodes + k], u[k], n);
            }
        }
        for (int i = nodes - 1; i >= 0; i--) {
            for (int k = i + 1; k < nodes; k++) {
                subtractProduct(u[i], matrix[i * nodes + k], u[k], n);
            }
            multiply(u[i], pivot[i], n);
        }
    }

    private static void invert(double[] a, double[] out, int n) {
        for (int l = 0; l < n; l++) {
            out[l] = 1 / a[l];
        }
    }

    private static void scale(double[] a, double factor, double[] out, int n) {
        for (int l = 0; l < n; l++) {
            out[l] = factor * a[l];
        }
    }

    private static void add(double[] to, double[] a, int n) {
        for (int l = 0; l < n; l++) {
            to[l] += a[l];
        }
    }

    private static void multiply(double[] to, double[] a, int n) {
        for (int l = 0; l < n; l++) {
            to[l] *= a[l];
        }
    }

    private static void subtractProduct(double[] to, double[] a, double[] b, int n) {
        for (int l = 0; l < n; l++) {
            to[l] -= a[l] * b[l];
        }
    }

    private static void sum(double[] y, double a, double[] u, double[] out, int n) {
        for (int l = 0; l < n; l++) {
            out[l] = y[l] + a * u[l];
        }
    }

    private static void sum(double[] y, double a, double[] u, double b, double[] v, double[] out, int n) {
        for (int l = 0; l < n; l++) {
            out[l] = y[l] + a * u[l] + b * v[l];
        }
    }

    private static void second(double[] f, double[] inverseLength, double[] u1, double[] out, int n) {
        for (int l = 0; l < n; l++) {
            out[l] = f[l] + inverseLength[l] * (Ros4.C21 * u1[l]);
        }
    }

    private static void third(double[] f, double[] inverseLength, double[] u1, double[] u2, double[] out, int n) {
        for (int l = 0; l < n; l++) {
            out[l] = f[l] + inverseLength[l] * (Ros4.C31 * u1[l] + Ros4.C32 * u2[l]);
        }
    }

    private static void fourth(
            double[] f, double[] inverseLength, double[] u1, double[] u2, double[] u3, double[] out, int n) {
        for (int l = 0; l < n; l++) {
            out[l] = f[l] + inverseLength[l] * (Ros4.C41 * u1[l] + Ros4.C42 * u2[l] + Ros4.C43 * u3[l]);
        }
    }

    private static void end(double[] y, double[] u1, double[] u2, double[] u3, double[] u4, double[] out, int n) {
        for (int l = 0; l < n; l++) {
            out[l] = y[l] + (Ros4.B1 * u1[l] + Ros4.B2 * u2[l] + Ros4.B3 * u3[l] + Ros4.B4 * u4[l]);
        }
    }

    /** The larger of the error so far and that of one node. */
    private static void estimate(
            double[] u1, double[] u2, double[] u3, double[] u4, double[] weight, double[] largest, int n) {
        for (int l = 0; l < n; l++) {
            double e = Ros4.E1 * u1[l] + Ros4.E2 * u2[l] + Ros4.E3 * u3[l] + Ros4.E4 * u4[l];
            largest[l] = Math.max(largest[l], weight[l] * Math.abs(e));
        }
    }

    /** 0.9/⁴√error, within bounds. */
    private static void grow(double[] error, double[] growth, int n) {
        for (int l = 0; l < n; l++) {
            double wanted = SAFETY / Math.sqrt(Math.sqrt(error[l]));
            growth[l] = Math.max(LEAST_GROWTH, Math.min(MOST_GROWTH, wanted));
        }
    }
}
