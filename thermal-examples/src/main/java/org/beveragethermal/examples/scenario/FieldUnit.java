/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.math.BigDecimal;

/** A unit that a field of the file may have, and how its numbers become SI. */
enum FieldUnit {
    CELSIUS("°C", "K", "1", "273.15"),
    MILLIMETRE("mm", "m", "0.001", "0"),
    KILOGRAM("kg", "kg", "1", "0"),
    PERCENT_BY_VOLUME("% vol", "1", "0.01", "0"),
    WATT_PER_KELVIN("W/K", "W/K", "1", "0");

    private final String symbol;
    private final String siSymbol;
    private final BigDecimal factor;
    private final BigDecimal offset;

    FieldUnit(String symbol, String siSymbol, String factor, String offset) {
        this.symbol = symbol;
        this.siSymbol = siSymbol;
        this.factor = new BigDecimal(factor);
        this.offset = new BigDecimal(offset);
    }

    String symbol() {
        return symbol;
    }

    String siSymbol() {
        return siSymbol;
    }

    /** Decimal arithmetic, so that 20 °C becomes the double nearest to 293.15 K. */
    double toSi(double value) {
        return BigDecimal.valueOf(value).multiply(factor).add(offset).doubleValue();
    }
}
