/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

/** Heat in proportion to the temperature difference. */
record ConstantConductance(double wattsPerKelvin) implements HeatLaw {

    @Override
    public void evaluate(double fromK, double toK, HeatFlow out) {
        out.watts = wattsPerKelvin * (fromK - toK);
        out.perFromKelvin = wattsPerKelvin;
        out.perToKelvin = -wattsPerKelvin;
    }
}
