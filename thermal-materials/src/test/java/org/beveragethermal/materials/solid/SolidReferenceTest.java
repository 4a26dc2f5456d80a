/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import org.beveragethermal.materials.provenance.Constant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The stated spread of a solid's properties must reach every table it was drawn from, and tables it was not drawn from.
 */
class SolidReferenceTest {
    private static final double SECONDS_PER_DAY = 86_400;

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

    @ParameterizedTest
    @ValueSource(
            strings = {
                "acs-omega-plastics.csv",
                "ashby-eco-materials.csv",
                "ashrae-insulation.csv",
                "borosilicate-data-sheet.csv",
                "brick-measurements.csv",
                "cibse-foams.csv",
                "cibse.csv",
                "climate-dynamics.csv",
                "climate-responsive-building.csv",
                "en-iso-10456.csv",
                "farouki-conductivity.csv",
                "handbook-table-19.csv",
                "handbook-table-3.csv",
                "infrared-handbooks.csv",
                "moisture-meter-emissivities.csv",
                "non-metallic-solids.csv",
                "pet-data-sheet.csv",
                "properties-of-solids.csv",
                "remembered-solids.csv",
                "soil-physics.csv",
                "specific-heats.csv",
                "springer-polypropylene.csv",
                "thermometer-emissivities.csv"
            })
    void spreadReachesThePublishedFigures(String file) {
        SolidRows rows = SolidRows.read(file);
        for (SolidRows.Row row : rows.rows()) {
            Constant constant = property(Solids.named(row.text("solid")), row.text("property"));
            rows.check(row)
                    .what(constant.name() + ", figure inside the stated spread")
                    .unit(constant.unit())
                    .expected(row.number("expected"))
                    .within(reach(constant) * ROUNDING)
                    .check(constant.value());
        }
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
            double ownUncertainty = diffusivity
                    * Math.sqrt(square(relative(solid.thermalConductivity()))
                            + square(relative(solid.density()))
                            + square(relative(solid.specificHeatCapacity())));
            rows.check(row)
                    .what("thermal diffusivity of " + solid.name() + " from its three properties")
                    .unit("m²/s")
                    .expected((low + high) / 2)
                    .within((high - low) / 2 + ownUncertainty)
                    .check(diffusivity);
        }
    }

    private static double relative(Constant constant) {
        return constant.standardUncertainty() / constant.value();
    }

    private static double square(double x) {
        return x * x;
    }
}
