/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * What several sources say of one property, made into one constant: the middle of all, with a rectangle that reaches
 * all.
 *
 * <p>Tables copy each other, so their agreement proves little (J. A. Clarke, P. P. Yaneske, A. A. Pinney, The
 * Harmonisation of Thermal Properties of Building Materials, BRE 1990). The rectangle is therefore never narrower than
 * a least half-width of ours. The constant is as weak as its weakest source.
 *
 * @param property name of the property
 * @param unit SI unit
 * @param least least half-width, as a fraction of the value or, for properties from 0 to 1, in full
 * @param reports what the sources say; not empty
 */
record Spread(String property, String unit, Least least, List<Report> reports) {

    /**
     * What one source says: a figure, or the ends of a range.
     *
     * @param source the source
     * @param row what the figure is said of
     * @param low lower end
     * @param high upper end, at least the lower
     */
    record Report(Source source, String row, double low, double high) {
        private String text() {
            String figures = low == high ? plain(low) : plain(low) + " to " + plain(high);
            return source.citation() + (row.isEmpty() ? "" : ": " + row) + " (" + figures + ")";
        }
    }

    /** Least half-width of a rectangle. */
    record Least(double width, boolean relative) {
        double of(double value) {
            return relative ? width * value : width;
        }
    }

    private static final MathContext DIGITS = new MathContext(6);

    private static final Least OF_DENSITY = new Least(0.02, true);
    private static final Least OF_CONDUCTIVITY = new Least(0.1, true);
    private static final Least OF_SPECIFIC_HEAT = new Least(0.05, true);
    private static final Least OF_EMISSIVITY = new Least(0.02, false);
    private static final Least OF_ABSORPTANCE = new Least(0.05, false);
    private static final Least NONE = new Least(0, false);

    static Report at(Source source, String row, double figure) {
        return new Report(source, row, figure, figure);
    }

    static Report at(Source source, String row, double low, double high) {
        return new Report(source, row, low, high);
    }

    static Spread density(Report... reports) {
        return new Spread("density", "kg/m³", OF_DENSITY, List.of(reports));
    }

    static Spread conductivity(Report... reports) {
        return new Spread("thermal conductivity", "W/(m K)", OF_CONDUCTIVITY, List.of(reports));
    }

    static Spread specificHeat(Report... reports) {
        return new Spread("specific heat capacity", "J/(kg K)", OF_SPECIFIC_HEAT, List.of(reports));
    }

    static Spread emissivity(Report... reports) {
        return new Spread("emissivity", "1", OF_EMISSIVITY, List.of(reports));
    }

    static Spread absorptance(Report... reports) {
        return new Spread("solar absorptance", "1", OF_ABSORPTANCE, List.of(reports));
    }

    /** Any other figure, with no least width. */
    static Spread other(String property, String unit, Report... reports) {
        return new Spread(property, unit, NONE, List.of(reports));
    }

    /** The constant of a solid with that name. */
    Constant of(String name) {
        double low = reports.stream().mapToDouble(Report::low).min().orElseThrow();
        double high = reports.stream().mapToDouble(Report::high).max().orElseThrow();
        double middle = low + (high - low) / 2;
        double reach = (high - low) / 2;
        double leastReach = least.of(middle);
        String widened = leastReach > reach ? "; half-width widened to " + plain(leastReach) + " by us" : "";
        return new Constant(
                property + " of " + name,
                middle,
                unit,
                Uncertainty.rectangular(Math.max(reach, leastReach)),
                new Source(
                        keys(),
                        reports.stream().map(Report::text).collect(Collectors.joining("; ")) + widened,
                        kind()));
    }

    private String keys() {
        return reports.stream().map(report -> report.source().key()).distinct().collect(Collectors.joining(", "));
    }

    private Source.Kind kind() {
        return reports.stream()
                .map(report -> report.source().kind())
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static String plain(double value) {
        return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
    }
}
