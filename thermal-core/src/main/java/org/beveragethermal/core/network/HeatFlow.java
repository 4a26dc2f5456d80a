/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

/** A heat flow between two temperatures and its slopes. A mutable holder, reused; not thread-safe. */
public final class HeatFlow {

    /** Heat from the first to the second temperature [W]. */
    public double watts;

    /** Slope in the first temperature [W/K], ≥ 0 for any passive law. */
    public double perFromKelvin;

    /** Slope in the second temperature [W/K], ≤ 0 for any passive law. */
    public double perToKelvin;

    /** An empty holder. */
    public HeatFlow() {}
}
