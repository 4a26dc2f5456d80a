/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.units.SiValues;

/**
 * A range in which the temperature is wanted, or one temperature.
 *
 * @param lowK lower end [K], > 0
 * @param highK upper end [K], not below the lower
 */
public record Wanted(double lowK, double highK) {

    /**
     * Checks the ends.
     *
     * @param lowK lower end [K]
     * @param highK upper end [K]
     * @throws IllegalArgumentException if an end is not finite and above 0 K, or they are out of order
     */
    public Wanted {
        if (!(lowK > 0 && lowK <= highK && highK <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "wanted from " + lowK + " K to " + highK + " K: expected finite ends above 0 K in ascending order");
        }
    }

    /**
     * A range.
     *
     * @param low lower end
     * @param high upper end, not below the lower
     * @return the range
     * @throws IllegalArgumentException if a quantity is not a temperature or the ends are out of order
     */
    public static Wanted between(Quantity<Temperature> low, Quantity<Temperature> high) {
        return new Wanted(
                SiValues.temperatureK(low, "lower end of the range"),
                SiValues.temperatureK(high, "upper end of the range"));
    }

    /**
     * One temperature.
     *
     * @param target the temperature
     * @return a range without width
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public static Wanted at(Quantity<Temperature> target) {
        double targetK = SiValues.temperatureK(target, "target temperature");
        return new Wanted(targetK, targetK);
    }

    /** Whether only one temperature will do. */
    boolean isTarget() {
        return lowK == highK;
    }

    /** How far outside a temperature is [K]; not positive inside. */
    double outsideK(double temperatureK) {
        return Math.max(lowK - temperatureK, temperatureK - highK);
    }

    /** The end that lies towards a temperature [K]. */
    double nearestK(double temperatureK) {
        return Math.max(lowK, Math.min(highK, temperatureK));
    }

    String text() {
        return isTarget() ? Text.celsius(lowK) : Text.celsius(lowK) + " to " + Text.celsius(highK);
    }
}
