/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

/**
 * The ice at hand.
 *
 * @param massKg mass of all of it [kg]; within 0.1 kg to 500 kg
 * @param blockSideM side of one block, taken as a cube [m]; within 5 mm to 200 mm
 * @param temperatureK its temperature [K]; within -40 °C to 0 °C
 */
public record IceStock(double massKg, double blockSideM, double temperatureK) {
    /**
     * A stock from its parts.
     *
     * @param massKg mass of all of it [kg]; within 0.1 kg to 500 kg
     * @param blockSideM side of one block, taken as a cube [m]; within 5 mm to 200 mm
     * @param temperatureK its temperature [K]; within -40 °C to 0 °C
     * @throws IllegalArgumentException if one of them lies outside its range
     */
    public IceStock {
        Limit.ICE_MASS.requireSi(massKg);
        Limit.BLOCK_SIDE.requireSi(blockSideM);
        Limit.ICE.requireSi(temperatureK);
    }
}
