/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Why a drink cools or warms as fast as it does at one moment: the resistances in series, band by band.
 *
 * @param at time since the start
 * @param contentsK mean temperature of the drink [K]
 * @param heatCapacityJPerK heat capacity of drink and wall [J/K]
 * @param bands one entry per band of wall that holds liquid
 */
public record Explanation(Duration at, double contentsK, double heatCapacityJPerK, List<Band> bands) {

    private static final double ZERO_CELSIUS_K = 273.15;

    /**
     * A band of wall.
     *
     * @param name name of the band
     * @param mediumK temperature of what touches it, weighted by conductance [K]
     * @param inSeries resistances from the drink outwards: inside film, wall, layers around it if there are any, then the
     *     outside
     * @param outside what the outside consists of, side by side
     */
    public record Band(String name, double mediumK, List<Resistance> inSeries, List<Resistance> outside) {

        /**
         * Copies the lists.
         *
         * @param name name of the band
         * @param mediumK temperature of what touches it [K]
         * @param inSeries resistances in series, not modified
         * @param outside parts of the outside, not modified
         */
        public Band {
            inSeries = List.copyOf(inSeries);
            outside = List.copyOf(outside);
        }

        /**
         * Resistance from drink to medium.
         *
         * @return sum of the resistances in series [K/W]
         */
        public double kelvinPerWatt() {
            return inSeries.stream().mapToDouble(Resistance::kelvinPerWatt).sum();
        }

        /**
         * The resistance that decides.
         *
         * @return the largest of the resistances in series
         */
        public Resistance deciding() {
            return inSeries.stream()
                    .max(Comparator.comparingDouble(Resistance::kelvinPerWatt))
                    .orElseThrow();
        }
    }

    /**
     * Copies the list.
     *
     * @param at time since the start
     * @param contentsK mean temperature of the drink [K]
     * @param heatCapacityJPerK heat capacity of drink and wall [J/K]
     * @param bands bands of wall, not modified
     */
    public Explanation {
        bands = List.copyOf(bands);
    }

    /**
     * Time constant at this moment: heat capacity over the conductances of all bands side by side.
     *
     * @return time constant [s]
     */
    public double timeConstantS() {
        double conductance =
                bands.stream().mapToDouble(band -> 1 / band.kelvinPerWatt()).sum();
        return heatCapacityJPerK / conductance;
    }

    /**
     * The explanation in words and numbers that a student can follow.
     *
     * @return several lines
     */
    public String text() {
        StringBuilder text = new StringBuilder();
        line(
                text,
                "After %.1f min the drink is at %.1f °C; time constant %.0f min.",
                at.toMillis() / 60_000.0,
                contentsK - ZERO_CELSIUS_K,
                timeConstantS() / 60);
        for (Band band : bands) {
            line(text, "%s, towards %.1f °C: resistances in series", band.name(), band.mediumK() - ZERO_CELSIUS_K);
            for (Resistance r : band.inSeries()) {
                describe(text, "  ", r, 100 * r.kelvinPerWatt() / band.kelvinPerWatt());
            }
            if (band.outside().size() > 1) {
                line(text, "  the outside is made of, side by side");
                for (Resistance r : band.outside()) {
                    describe(text, "    ", r, Double.NaN);
                }
            }
            line(text, "  %s decides.", band.deciding().name());
        }
        return text.toString();
    }

    private static void describe(StringBuilder text, String indent, Resistance r, double percent) {
        StringBuilder entry = new StringBuilder();
        entry.append(String.format(Locale.ROOT, "%s%-18s %.4f K/W", indent, r.name(), r.kelvinPerWatt()));
        if (!Double.isNaN(percent)) {
            entry.append(String.format(Locale.ROOT, " (%.0f %%)", percent));
        }
        if (r.coefficient() > 0) {
            entry.append(String.format(Locale.ROOT, ", h = %.1f W/(m² K)", r.coefficient()));
        }
        if (r.rayleigh() > 0) {
            entry.append(String.format(
                    Locale.ROOT, ", Ra = %.2e, Pr = %.2f, Nu = %.1f", r.rayleigh(), r.prandtl(), r.nusselt()));
        }
        if (!r.law().isEmpty()) {
            entry.append(" [").append(r.law()).append(']');
        }
        text.append(entry).append('\n');
    }

    private static void line(StringBuilder text, String format, Object... arguments) {
        text.append(String.format(Locale.ROOT, format, arguments)).append('\n');
    }
}
