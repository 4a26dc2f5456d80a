/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** The stated spread of a solid's properties must reach every table it was drawn from. */
class SolidsTest {
    private static final String EN = "EN 12524:2000 / EN ISO 10456, tabulated design values";
    private static final String CIBSE = "CIBSE Guide A, table 3.36";

    private static void reaches(String id, String source, double published, Constant constant) {
        double halfWidth = constant.uncertainty().quantile(constant.value(), 1 - 1e-12) - constant.value();
        OutsideChecks.published(id, source)
                .what(constant.name() + ", published value inside the stated spread")
                .unit(constant.unit())
                .expected(published)
                .within(halfWidth * (1 + 1e-9))
                .check(constant.value());
    }

    @Test
    void glassReachesBothTables() {
        Solid glass = Solids.sodaLimeGlass();
        reaches("glass-density-en", EN, 2500, glass.density());
        reaches("glass-density-cibse", CIBSE, 2500, glass.density());
        reaches("glass-conductivity-en", EN, 1.0, glass.thermalConductivity());
        reaches("glass-conductivity-cibse", CIBSE, 1.05, glass.thermalConductivity());
        reaches("glass-cp-en", EN, 750, glass.specificHeatCapacity());
        reaches("glass-cp-cibse", CIBSE, 840, glass.specificHeatCapacity());
        reaches("glass-emissivity", "Properties of solids, radiative properties at 288 K", 0.9, glass.emissivity());
    }

    @Test
    void steelReachesBothTables() {
        Solid steel = Solids.stainlessSteel();
        reaches("steel-density-en", EN, 7900, steel.density());
        reaches("steel-density-cibse", CIBSE, 8000, steel.density());
        reaches("steel-conductivity-en", EN, 17, steel.thermalConductivity());
        reaches("steel-conductivity-cibse", CIBSE, 16, steel.thermalConductivity());
        reaches("steel-cp-en", EN, 460, steel.specificHeatCapacity());
        reaches("steel-cp-cibse", CIBSE, 480, steel.specificHeatCapacity());
        reaches("steel-emissivity", "Mechanical Engineers' Handbook, vol. 4, table 19", 0.6, steel.emissivity());
    }

    @Test
    void aSolidWithImpossiblePropertiesIsRefused() {
        Solid glass = Solids.sodaLimeGlass();
        Constant zero = constant(0);
        Constant two = constant(2);
        assertThatThrownBy(() -> new Solid(
                        "x", zero, glass.thermalConductivity(), glass.specificHeatCapacity(), glass.emissivity()))
                .isInstanceOfSatisfying(
                        OutOfRangeException.class, e -> assertThat(e.given()).isZero());
        assertThatThrownBy(
                        () -> new Solid("x", glass.density(), zero, glass.specificHeatCapacity(), glass.emissivity()))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Solid("x", glass.density(), glass.thermalConductivity(), zero, glass.emissivity()))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() ->
                        new Solid("x", glass.density(), glass.thermalConductivity(), glass.specificHeatCapacity(), two))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Solid(
                        " ",
                        glass.density(),
                        glass.thermalConductivity(),
                        glass.specificHeatCapacity(),
                        glass.emissivity()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Constant constant(double value) {
        return new Constant("test", value, "1", Uncertainty.exact(), Source.published("test", "test"));
    }
}
