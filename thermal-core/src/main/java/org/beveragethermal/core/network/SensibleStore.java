/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

/**
 * A body of constant heat capacity: H = C (T − 273.15 K).
 *
 * <p>Theory manual, equation (1.2).
 *
 * @param capacityJPerK heat capacity [J/K], finite, > 0
 */
public record SensibleStore(double capacityJPerK) implements Store {

    static final double ZERO_CELSIUS_K = 273.15;

    /**
     * Checks the capacity.
     *
     * @param capacityJPerK heat capacity [J/K], finite, > 0
     * @throws IllegalArgumentException if the capacity is not finite and positive
     */
    public SensibleStore {
        if (!(capacityJPerK > 0) || Double.isInfinite(capacityJPerK)) {
            throw new IllegalArgumentException(
                    "heat capacity " + capacityJPerK + " J/K: expected a finite value above 0");
        }
    }

    @Override
    public int amountCount() {
        return 0;
    }

    @Override
    public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
        out.temperatureK = ZERO_CELSIUS_K + enthalpyJ / capacityJPerK;
        out.temperaturePerJoule = 1 / capacityJPerK;
        out.kelvinPerJoule = 1 / capacityJPerK;
    }

    @Override
    public double enthalpyJ(double temperatureK, double... amounts) {
        return capacityJPerK * (temperatureK - ZERO_CELSIUS_K);
    }
}
