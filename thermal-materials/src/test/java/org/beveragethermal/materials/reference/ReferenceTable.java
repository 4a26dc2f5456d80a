/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.beveragethermal.testsupport.OutsideChecks;

/**
 * A table of values from one source: comment lines {@code # source:}, {@code # kind:} and {@code # tolerance:}, then a
 * header, then rows of id, property, state columns, expected value and either an absolute or a relative tolerance.
 */
public final class ReferenceTable {
    /** Mean square of an error spread evenly over the tolerance, as a fraction of its square. */
    private static final double EVEN_MEAN_SQUARE = 1.0 / 3;

    /** Standard deviation of the square of such an error: sqrt(1/5 - 1/9). */
    private static final double EVEN_SQUARE_DEVIATION = Math.sqrt(1.0 / 5 - 1.0 / 9);

    private static final double STANDARD_DEVIATIONS = 3;

    private final String source;
    private final String kind;
    private final List<Row> rows;

    private ReferenceTable(String source, String kind, List<Row> rows) {
        this.source = source;
        this.kind = kind;
        this.rows = rows;
    }

    /** One row; states are looked up by the name of their column. */
    public record Row(List<String> header, List<String> cells) {

        /** The property the row is about. */
        public String property() {
            return text("property");
        }

        /** A number by the name of its column. */
        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        /** A word by the name of its column. */
        public String text(String column) {
            return cells.get(header.indexOf(column));
        }

        private double tolerance() {
            String absolute = text("absoluteTolerance");
            return absolute.isEmpty()
                    ? number("relativeTolerance") * Math.abs(number("expected"))
                    : Double.parseDouble(absolute);
        }

        private String state() {
            List<String> parts = new ArrayList<>();
            for (int i = 2; i < header.size() - 3; i++) {
                parts.add(header.get(i) + " " + cells.get(i));
            }
            return String.join(", ", parts);
        }
    }

    /** Reads a table from the test resources beside {@code org.beveragethermal.materials}. */
    public static ReferenceTable read(String path) {
        String source = "";
        String kind = "";
        List<String> header = List.of();
        List<Row> rows = new ArrayList<>();
        for (String line : lines("/org/beveragethermal/materials/" + path)) {
            if (line.startsWith("# source: ")) {
                source = line.substring("# source: ".length());
            } else if (line.startsWith("# kind: ")) {
                kind = line.substring("# kind: ".length());
            } else if (!line.startsWith("#") && !line.isBlank()) {
                List<String> cells = List.of(line.split(",", -1));
                if (header.isEmpty()) {
                    header = cells;
                } else {
                    rows.add(new Row(header, cells));
                }
            }
        }
        assertThat(source).as("source of " + path).isNotBlank();
        assertThat(kind).as("kind of " + path).isIn("published", "from memory", "reference library");
        assertThat(rows).as("rows of " + path).isNotEmpty();
        return new ReferenceTable(source, kind, rows);
    }

    private static List<String> lines(String resource) {
        try (InputStream in = ReferenceTable.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalArgumentException("no test resource " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Holds a formula against every row: each deviation within the row's tolerance, and their root mean square, as
     * fractions of the tolerance, no larger than that of an error spread evenly over it (plus three standard deviations
     * for so few rows). A formula that sits near the edge of the tolerance everywhere fails the second condition.
     */
    public void check(ToDoubleFunction<Row> formula) {
        double squares = 0;
        for (Row row : rows) {
            double actual = formula.applyAsDouble(row);
            outsideCheck(row).check(actual);
            double fraction = (actual - row.number("expected")) / row.tolerance();
            squares += fraction * fraction;
        }
        double allowedMeanSquare =
                EVEN_MEAN_SQUARE + STANDARD_DEVIATIONS * EVEN_SQUARE_DEVIATION / Math.sqrt(rows.size());
        assertThat(Math.sqrt(squares / rows.size()))
                .as("root mean square deviation as a fraction of the tolerance, " + source)
                .isLessThanOrEqualTo(Math.sqrt(allowedMeanSquare));
    }

    private OutsideChecks.Check outsideCheck(Row row) {
        String id = row.text("id");
        OutsideChecks.Check check = switch (kind) {
            case "from memory" -> OutsideChecks.fromMemory(id, source);
            case "reference library" -> OutsideChecks.referenceLibrary(id, source);
            default -> OutsideChecks.published(id, source);
        };
        return check.what(row.property() + " at " + row.state())
                .unit(unit(row.property()))
                .expected(row.number("expected"))
                .within(row.tolerance());
    }

    private static String unit(String property) {
        return switch (property) {
            case "density", "liquidDensity", "vapourDensity" -> "kg/m³";
            case "specificHeatCapacity" -> "J/(kg K)";
            case "dynamicViscosity" -> "Pa s";
            case "thermalConductivity" -> "W/(m K)";
            case "thermalExpansion" -> "1/K";
            case "specificEnthalpy", "latentHeat" -> "J/kg";
            case "freezingCelsius", "wetBulbCelsius", "dewPointCelsius" -> "°C";
            case "saturationPressure", "pressure" -> "Pa";
            case "prandtlNumber", "strengthByVolume", "humidityRatio", "absorptionCoefficient" -> "1";
            case "lnHenryConstant", "pressureRatio" -> "1";
            case "gramsPerLitreBar" -> "g/(L bar)";
            case "massPercent" -> "% by mass";
            default -> throw new IllegalArgumentException("no unit for property " + property);
        };
    }
}
