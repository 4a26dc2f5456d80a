/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * The range in which a quantity of a scenario has to lie, in the unit of the file. The ranges only keep slips and
 * nonsense out; they are wider than anything met in service (own assumption).
 *
 * @param quantity name of the quantity
 * @param low lower end, included
 * @param high upper end, included
 * @param unit unit of both ends
 */
record Limit(String quantity, double low, double high, FieldUnit unit) {
    static final Limit AIR = new Limit("air temperature", -30, 50, FieldUnit.CELSIUS);
    static final Limit RADIANT = new Limit("radiant temperature", -30, 80, FieldUnit.CELSIUS);
    static final Limit REFRIGERATOR_AIR = new Limit("refrigerator air temperature", -30, 20, FieldUnit.CELSIUS);
    static final Limit DRINK = new Limit("drink temperature", -10, 45, FieldUnit.CELSIUS);
    static final Limit SERVING = new Limit("serving temperature", 0, 40, FieldUnit.CELSIUS);
    static final Limit ICE = new Limit("ice temperature", -30, 0, FieldUnit.CELSIUS);
    static final Limit FILLING_WATER = new Limit("filling water temperature", 0, 60, FieldUnit.CELSIUS);
    static final Limit ICE_MASS = new Limit("ice mass", 0.1, 500, FieldUnit.KILOGRAM);
    static final Limit BLOCK_SIDE = new Limit("ice block side", 5, 200, FieldUnit.MILLIMETRE);
    static final Limit INNER_DIAMETER = new Limit("inner diameter", 80, 800, FieldUnit.MILLIMETRE);
    static final Limit INNER_HEIGHT = new Limit("height", 80, 800, FieldUnit.MILLIMETRE);
    static final Limit WALL_CONDUCTANCE = new Limit("wall conductance", 0, 20, FieldUnit.WATT_PER_KELVIN);
    static final Limit STRENGTH = new Limit("strength", 0, 60, FieldUnit.PERCENT_BY_VOLUME);

    boolean contains(double value) {
        return value >= low && value <= high;
    }

    /** Passes a value in SI through if it is allowed. */
    double requireSi(double value) {
        double lowSi = unit.toSi(low);
        double highSi = unit.toSi(high);
        if (!(value >= lowSi && value <= highSi)) {
            throw OutOfRangeException.refusal(quantity, value, lowSi, highSi, unit.siSymbol(), "");
        }
        return value;
    }

    /** The allowed range in words, in the unit of the file. */
    String allowed() {
        return Decimal.text(low) + " " + unit.symbol() + " to " + Decimal.text(high) + " " + unit.symbol();
    }
}
