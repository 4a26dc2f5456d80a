/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import org.beveragethermal.core.network.TimeFunction;

/**
 * A temperature that varies as a sine, with its exact rate.
 *
 * @param mean mean [K]
 * @param amplitude amplitude [K]
 * @param omega angular frequency [rad/s]
 */
record Sinusoid(double mean, double amplitude, double omega) implements TimeFunction {

    @Override
    public double at(double timeS) {
        return mean + amplitude * Math.sin(omega * timeS);
    }

    @Override
    public double rate(double timeS) {
        return amplitude * omega * Math.cos(omega * timeS);
    }

    /** Periodic solution of τ dT/dt = at(t) − T: amplitude divided by √(1 + ω²τ²), late by arctan ωτ. */
    double response(double tau, double timeS) {
        return mean
                + amplitude
                        / Math.sqrt(1 + omega * omega * tau * tau)
                        * Math.sin(omega * timeS - Math.atan(omega * tau));
    }
}
