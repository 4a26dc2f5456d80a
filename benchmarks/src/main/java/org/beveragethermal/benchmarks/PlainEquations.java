/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

/** Ordinary differential equations as other tools want them. */
@FunctionalInterface
interface PlainEquations {

    /**
     * The rates of change.
     *
     * @param timeS time [s]
     * @param state state, not modified
     * @param rates receives the rate of each component
     */
    void rates(double timeS, double[] state, double[] rates);
}
