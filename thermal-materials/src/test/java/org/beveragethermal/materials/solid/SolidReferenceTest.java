/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The stated spread of a solid's properties must reach every table it was drawn from, and tables it was not drawn from.
 */
class SolidReferenceTest {
    private static final double SECONDS_PER_DAY = 86_400;

    /** By which Farouki finds conductivities of moist soil to scatter; from memory. */
    private static final double SCATTER = 0.25;

    /** Two figures at the ends of a range lie off its middle by half its width, give or take rounding. */
    private static final double ROUNDING = 1 + 1e-9;

    private static Constant property(Solid solid, String property) {
        return switch (property) {
            case "density" -> solid.density();
            case "thermalConductivity" -> solid.thermalConductivity();
            case "specificHeatCapacity" -> solid.specificHeatCapacity();
            case "emissivity" -> solid.emissivity();
            case "solarAbsorptance" -> solid.solarAbsorptance().orElseThrow();
            default -> throw new IllegalArgumentException(property);
        };
    }

    /** Half-width of a rectangle of the stated standard uncertainty. */
    private static double reach(Constant constant) {
        return Math.sqrt(3) * constant.standardUncertainty();
    }

    /** One file per source; quoted by the table of solids, but for the moisture meter's list. */
    static List<String> files() {
        return List.of(
                "acs-omega-plastics.csv",
                "ashby-eco-materials.csv",
                "ashrae-insulation.csv",
                "borosilicate-data-sheet.csv",
                "brick-measurements.csv",
                "building-materials.csv",
                "camera-emissivities.csv",
                "cardboard-panels.csv",
                "cibse-foams.csv",
                "cibse.csv",
                "climate-dynamics.csv",
                "climate-responsive-building.csv",
                "en-iso-10456.csv",
                "farouki-conductivity.csv",
                "farouki-ranges.csv",
                "handbook-table-19.csv",
                "handbook-table-3.csv",
                "infrared-handbooks.csv",
                "lead-glass-article.csv",
                "moisture-meter-emissivities.csv",
                "non-metal-emissivities.csv",
                "non-metallic-solids.csv",
                "pet-article.csv",
                "pet-data-sheet.csv",
                "properties-of-solids.csv",
                "remembered-solids.csv",
                "soil-physics.csv",
                "specific-heats-non-metals.csv",
                "specific-heats.csv",
                "springer-polypropylene.csv",
                "thermometer-emissivities.csv");
    }

    @ParameterizedTest
    @MethodSource("files")
    void spreadReachesThePublishedFigures(String file) {
        SolidRows rows = SolidRows.read(file);
        for (SolidRows.Row row : rows.rows()) {
            Constant constant = property(Solids.named(row.text("solid")), row.text("property"));
            rows.check(row)
                    .what(constant.name() + (row.has("within") ? "" : ", figure inside the stated spread"))
                    .unit(constant.unit())
                    .expected(row.number("expected"))
                    .within(ROUNDING * (row.has("within") ? row.number("within") : reach(constant)))
                    .check(constant.value());
        }
    }

    /** Reaching all sources must not be bought by reaching beyond them: a slip that widens a range moves its middle. */
    @Test
    void theValueIsTheMiddleOfThePublishedFigures() {
        Map<Constant, DoubleSummaryStatistics> published = new HashMap<>();
        for (String file : files()) {
            for (SolidRows.Row row : SolidRows.read(file).rows()) {
                Constant constant = property(Solids.named(row.text("solid")), row.text("property"));
                published
                        .computeIfAbsent(constant, c -> new DoubleSummaryStatistics())
                        .accept(row.number("expected"));
            }
        }
        List<Constant> wholly = Solids.all().stream()
                .flatMap(SolidsTest::constants)
                .filter(constant -> constant.source().kind() == Source.Kind.PUBLISHED)
                .toList();
        assertThat(wholly).hasSizeGreaterThan(100);
        assertThat(wholly)
                .filteredOn(constant -> !isMiddle(constant.value(), published.get(constant)))
                .extracting(
                        constant -> constant.name() + " " + constant.value() + ", figures " + published.get(constant))
                .isEmpty();
    }

    /**
     * Density, conductivity and specific heat come from different rows and sources; together they must still make
     * sense.
     */
    @Test
    void diffusivityOfMoistGroundAgrees() {
        SolidRows rows = SolidRows.read("farouki-diffusivity.csv");
        for (SolidRows.Row row : rows.rows()) {
            Solid solid = Solids.named(row.text("solid"));
            double low = row.number("lowM2PerDay") / SECONDS_PER_DAY;
            double high = row.number("highM2PerDay") / SECONDS_PER_DAY;
            double diffusivity = SolidsTest.diffusivity(solid);
            rows.check(row)
                    .what("thermal diffusivity of " + solid.name() + " from its three properties")
                    .unit("m²/s")
                    .expected((low + high) / 2)
                    .withinRelative(SCATTER)
                    .check(diffusivity);
        }
    }

    private static boolean isMiddle(double value, @Nullable DoubleSummaryStatistics figures) {
        return figures != null && Math.abs(value - (figures.getMin() + figures.getMax()) / 2) <= 1e-9 * value;
    }
}
