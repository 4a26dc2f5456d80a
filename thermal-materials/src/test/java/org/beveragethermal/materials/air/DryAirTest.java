/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.beveragethermal.materials.reference.ReferenceTable;
import org.beveragethermal.materials.reference.ReferenceTable.Row;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.junit.jupiter.api.Test;

/** Dry air against the check values of its source and two textbook tables. */
class DryAirTest {

    private static double air(Row row) {
        double temperatureK = row.number("temperatureK");
        return switch (row.property()) {
            case "density" -> DryAir.density(temperatureK, DryAir.STANDARD_PRESSURE_PA);
            case "specificHeatCapacity" -> DryAir.specificHeatCapacity(temperatureK);
            case "thermalConductivity" -> DryAir.thermalConductivity(temperatureK);
            case "dynamicViscosity" -> DryAir.dynamicViscosity(temperatureK);
            case "prandtlNumber" -> DryAir.prandtlNumber(temperatureK);
            default -> throw new IllegalArgumentException(row.property());
        };
    }

    @Test
    void transportReproducesItsCheckValues() {
        ReferenceTable.read("air/lemmon-jacobsen-table-5.csv")
                .check(row -> row.property().equals("dynamicViscosity")
                        ? 1e-6 * DryAir.diluteViscosityMicroPaS(row.number("temperatureK"))
                        : DryAir.diluteConductivity(row.number("temperatureK")));
    }

    @Test
    void agreesWithIncropera() {
        ReferenceTable.read("air/incropera-a-4.csv").check(DryAirTest::air);
    }

    @Test
    void agreesWithCengel() {
        ReferenceTable.read("air/cengel-a-15.csv").check(DryAirTest::air);
    }

    @Test
    void densityIsProportionalToPressure() {
        double sea = DryAir.density(293.15, DryAir.STANDARD_PRESSURE_PA);
        double mountain = DryAir.density(293.15, DryAir.STANDARD_PRESSURE_PA / 2);
        assertThat(mountain).isCloseTo(sea / 2, within(1e-12));
        assertThat(DryAir.kinematicViscosity(293.15, DryAir.STANDARD_PRESSURE_PA))
                .isCloseTo(DryAir.dynamicViscosity(293.15) / sea, within(1e-15));
    }

    @Test
    void statesOutsideTheRangeAreRefused() {
        double p = DryAir.STANDARD_PRESSURE_PA;
        assertThatThrownBy(() -> DryAir.density(199, p)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> DryAir.density(300, 9_999)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> DryAir.density(300, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DryAir.specificHeatCapacity(401)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> DryAir.thermalConductivity(401)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> DryAir.dynamicViscosity(401)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> DryAir.prandtlNumber(401)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> DryAir.kinematicViscosity(401, p)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> DryAir.dynamicViscosity(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void rangesAndRecordsAreStated() {
        assertThat(DryAir.temperatureRange().contains(293.15)).isTrue();
        assertThat(DryAir.pressureRange().contains(DryAir.STANDARD_PRESSURE_PA)).isTrue();
        assertThat(DryAir.properties()).hasSize(4);
    }
}
