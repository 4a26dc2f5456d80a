/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

/** From where on predictions warn of what is hot. */
public final class Hazards {

    /**
     * From here on water and drinks are said to scald [K], 50 °C: skin burns deeply within some minutes at 50 °C, some seconds at 60 °C (A. R.
     * Moritz and F. C. Henriques, Studies of thermal injury II, Am. J. Pathol. 23 (1947) 695-720; from memory).
     */
    public static final double SCALDS_K = 323.15;

    /** A sudden difference that glass containers are commonly tested to withstand [K] (42 K, test of ISO 7459; from memory). */
    public static final double SHOCK_K = 42;

    private Hazards() {}
}
