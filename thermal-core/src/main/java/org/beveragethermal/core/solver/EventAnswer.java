/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

/** When something happens in a run, or that it does not. */
public sealed interface EventAnswer {

    /**
     * It happens.
     *
     * @param timeS time since the start of the run [s]; where the search began if it holds there already
     */
    record Reached(double timeS) implements EventAnswer {}

    /**
     * It does not happen up to the end of the run.
     *
     * @param closest value that came closest to the threshold [K, or unit of the amount, or ice per mass]
     * @param closestTimeS when [s]
     */
    record NeverReached(double closest, double closestTimeS) implements EventAnswer {}
}
