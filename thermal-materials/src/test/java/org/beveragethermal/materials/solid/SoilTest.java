/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.kilogramsPerCubicMetre;
import static org.beveragethermal.materials.units.Measures.percent;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Soil by density and moisture, against published ranges and design values. */
class SoilTest {

    private static final String FAROUKI =
            "O. T. Farouki, CRREL Report 82-8 (1982), soil of dry density 1600 kg/m³, middle of the range";
    private static final String ISO_13370 = "ISO 13370:2017, thermal properties of the ground, design values";

    private static double halfWidth(Constant constant) {
        return Math.sqrt(3) * constant.standardUncertainty();
    }

    private static void conducts(Soil soil, double waterPercent, double expected) {
        Constant k = soil.moist(percent(waterPercent)).thermalConductivity();
        OutsideChecks.published("soil-" + soil.name() + "-" + waterPercent, FAROUKI)
                .what("conductivity of " + soil.name() + " with " + waterPercent
                        + " % of water, within the doubt that the soil states")
                .unit("W/(m K)")
                .expected(expected)
                .within(halfWidth(k))
                .check(k.value());
    }

    @Test
    void sandOfRisingMoisture() {
        conducts(Soil.sand(), 5, 1.9);
        conducts(Soil.sand(), 10, 2.35);
        conducts(Soil.sand(), 15, 2.55);
        conducts(Soil.sand(), 20, 2.65);
    }

    @Test
    void clayOfRisingMoisture() {
        OutsideChecks.ruleOfThumb(
                "soil-clay-5",
                "conductivity of clay with 5 % of water (" + FAROUKI + ")",
                0.95,
                Soil.clay().moist(percent(5)).thermalConductivity().value(),
                "W/(m K)",
                "saturation 0.2, where Johansen's formula for fine soil is known to be too low");
        conducts(Soil.clay(), 10, 0.95);
        conducts(Soil.clay(), 15, 1.1);
        conducts(Soil.clay(), 20, 1.2);
    }

    @Test
    void dampGroundOfTheDesignTables() {
        Solid clay = Soil.clay().moist(percent(22));
        Solid sand = Soil.sand().moist(percent(10));
        heatOf(clay, 3.0e6);
        heatOf(sand, 2.0e6);
        OutsideChecks.published("soil-design-sand", ISO_13370)
                .what("conductivity of sand with 10 % of water beside the design value of sand or gravel")
                .unit("W/(m K)")
                .expected(2.0)
                .within(halfWidth(sand.thermalConductivity()))
                .check(sand.thermalConductivity().value());
        OutsideChecks.published("soil-design-clay", ISO_13370)
                .what("conductivity of clay with 22 % of water beside the design value of clay or silt")
                .unit("W/(m K)")
                .expected(1.5)
                .within(halfWidth(clay.thermalConductivity()))
                .check(clay.thermalConductivity().value());
    }

    private static void heatOf(Solid soil, double expected) {
        OutsideChecks.published("soil-design-heat-" + soil.name(), ISO_13370)
                .what("volumetric heat capacity of " + soil.name() + ", within the spread of its density")
                .unit("J/(m³ K)")
                .expected(expected)
                .withinRelative(0.1)
                .check(soil.density().value() * soil.specificHeatCapacity().value());
    }

    @Test
    void driedSandIsThatOfTheTableOfSolids() {
        Constant table = Solids.drySand().thermalConductivity();
        Constant dry = Soil.sand().moist(percent(0)).thermalConductivity();
        assertThat(dry.value()).isCloseTo(table.value(), within(halfWidth(table) + halfWidth(dry)));
    }

    @Property
    void moreWaterConductsAndStoresMore(
            @ForAll @DoubleRange(min = 0, max = 0.95) double filled,
            @ForAll @DoubleRange(min = 800, max = 2200) double density) {
        for (Soil kind : List.of(Soil.sand(), Soil.loam(), Soil.clay())) {
            Soil soil = kind.ofDryDensity(kilogramsPerCubicMetre(density));
            Solid less = soil.moist(percent(100 * filled * soil.saturation()));
            Solid more = soil.moist(percent(100 * (filled + 0.05) * soil.saturation()));
            assertThat(more.thermalConductivity().value())
                    .isGreaterThanOrEqualTo(less.thermalConductivity().value());
            assertThat(more.density().value() * more.specificHeatCapacity().value())
                    .isGreaterThan(
                            less.density().value() * less.specificHeatCapacity().value());
            assertThat(halfWidth(more.thermalConductivity()))
                    .isBetween(0.0, more.thermalConductivity().value());
        }
    }

    @Test
    void nonsenseIsRefused() {
        Soil sand = Soil.sand();
        assertThat(sand).hasToString("sand of 1600 kg/m³ dry");
        assertThatThrownBy(() -> sand.moist(percent(-1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> sand.moist(percent(30)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("water per dry mass of sand");
        assertThatThrownBy(() -> sand.ofDryDensity(kilogramsPerCubicMetre(3000)))
                .isInstanceOf(OutOfRangeException.class);
        for (double[] bad : new double[][] {{1600, 1.1, 0.5}, {1600, 0.5, Double.NaN}, {100, 0.5, 0.5}}) {
            assertThatThrownBy(() -> Soil.johansen(bad[0], bad[1], bad[2], true))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }
}
