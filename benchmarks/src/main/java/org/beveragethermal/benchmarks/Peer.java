/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

/** A general-purpose integrator beside which the project is measured; its tolerance is absolute and relative alike. */
interface Peer {

    /**
     * When a component of the state has fallen to a threshold.
     *
     * @param equations the equations
     * @param start state at the start, not modified
     * @param component which component
     * @param threshold where it has to fall
     * @param tolerance tolerance of a step, absolute and relative
     * @param endS where to give up [s]
     * @return the time [s]; the end if it does not fall so far
     */
    double timeOfFall(
            PlainEquations equations, double[] start, int component, double threshold, double tolerance, double endS);

    /**
     * The state at an end.
     *
     * @param equations the equations
     * @param start state at the start, not modified
     * @param tolerance tolerance of a step, absolute and relative
     * @param endS the end [s]
     * @return the state
     */
    double[] stateAt(PlainEquations equations, double[] start, double tolerance, double endS);
}
