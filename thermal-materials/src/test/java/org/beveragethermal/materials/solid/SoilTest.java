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

    private static final String FAROUKI = "O. T. Farouki, CRREL Report 82-8 (1982), soil of dry density 1600 kg/m³";
    private static final String ISO_13370 = "ISO 13370:2017, thermal properties of the ground, design values";
    private static final String SCATTER =
            "; allowed is the 25 % by which Farouki finds the formula to scatter in moist soil (from memory)";

    private static double halfWidth(Constant constant) {
        return Math.sqrt(3) * constant.standardUncertainty();
    }

    private static double conductivity(Soil soil, double waterPercent) {
        return soil.moist(percent(waterPercent)).thermalConductivity().value();
    }

    /** Against the range that the source prints. */
    private static void inRange(Soil soil, double waterPercent, double low, double high) {
        OutsideChecks.published("soil-" + soil.name() + "-" + waterPercent, FAROUKI + ", range")
                .what("conductivity of " + soil.name() + " with " + waterPercent + " % of water")
                .unit("W/(m K)")
                .between(low, high)
                .check(conductivity(soil, waterPercent));
    }

    /** Against the middle of the source's range. */
    private static void aboutMiddle(Soil soil, double waterPercent, double middle) {
        OutsideChecks.published("soil-" + soil.name() + "-" + waterPercent, FAROUKI + ", middle of the range")
                .what("conductivity of " + soil.name() + " with " + waterPercent + " % of water" + SCATTER)
                .unit("W/(m K)")
                .expected(middle)
                .withinRelative(0.25)
                .check(conductivity(soil, waterPercent));
    }

    @Test
    void sandOfRisingMoisture() {
        inRange(Soil.sand(), 5, 1.4, 2.4);
        aboutMiddle(Soil.sand(), 10, 2.35);
        aboutMiddle(Soil.sand(), 15, 2.55);
        aboutMiddle(Soil.sand(), 20, 2.65);
    }

    @Test
    void clayOfRisingMoisture() {
        aboutMiddle(Soil.clay(), 10, 0.95);
        aboutMiddle(Soil.clay(), 15, 1.1);
        inRange(Soil.clay(), 20, 1.0, 1.4);
    }

    /**
     * Where the formula misses the printed range (O. T. Farouki, CRREL Report 82-8 (1982), 1600 kg/m³): by how much, as {@link Soil} says.
     */
    @Test
    void missesOfThePublishedRanges() {
        assertThat(conductivity(Soil.sand(), 10) - 2.1).isCloseTo(-0.20, within(0.01));
        assertThat(conductivity(Soil.sand(), 20) - 2.4).isCloseTo(-0.01, within(0.01));
        assertThat(conductivity(Soil.clay(), 5) - 0.9).isCloseTo(-0.32, within(0.01));
    }

    @Test
    void dampGroundOfTheDesignTables() {
        heatOf(Soil.clay().moist(percent(22)), 3.0e6);
        heatOf(Soil.sand().moist(percent(10)), 2.0e6);
        OutsideChecks.published("soil-design-sand", ISO_13370)
                .what("conductivity of sand with 10 % of water beside the design value of sand or gravel" + SCATTER)
                .unit("W/(m K)")
                .expected(2.0)
                .withinRelative(0.25)
                .check(conductivity(Soil.sand(), 10));
        OutsideChecks.published("soil-design-clay", ISO_13370)
                .what("conductivity of clay with 22 % of water beside the design value of clay or silt" + SCATTER)
                .unit("W/(m K)")
                .expected(1.5)
                .withinRelative(0.25)
                .check(conductivity(Soil.clay(), 22));
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
