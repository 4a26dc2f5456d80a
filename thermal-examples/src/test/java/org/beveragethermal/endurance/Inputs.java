/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

/** Inputs without end; the same seed gives the same input. */
@FunctionalInterface
public interface Inputs {

    /**
     * One input.
     *
     * @param seed any number
     * @return bytes
     */
    byte[] input(long seed);
}
