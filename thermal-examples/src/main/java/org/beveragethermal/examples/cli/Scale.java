/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.util.Locale;

/** The scale in which temperatures are shown. */
enum Scale {
    CELSIUS("C", "°C", 273.15, 1),
    FAHRENHEIT("F", "°F", 459.67, 1.8),
    KELVIN("K", "K", 0, 1);

    private final String letter;
    private final String symbol;
    private final double zero;
    private final double perKelvin;

    Scale(String letter, String symbol, double zero, double perKelvin) {
        this.letter = letter;
        this.symbol = symbol;
        this.zero = zero;
        this.perKelvin = perKelvin;
    }

    static Scale of(String where, String given) {
        for (Scale scale : values()) {
            if (scale.letter.equalsIgnoreCase(given)) {
                return scale;
            }
        }
        throw Refusal.usage(where, given, "C, F or K");
    }

    String symbol() {
        return symbol;
    }

    double value(double kelvins) {
        return kelvins * perKelvin - zero;
    }

    Answer.Cell cell(double kelvins) {
        return Answer.Cell.of(value(kelvins), 1);
    }

    String text(double kelvins) {
        return String.format(Locale.ROOT, "%s %s", cell(kelvins).text(), symbol);
    }
}
