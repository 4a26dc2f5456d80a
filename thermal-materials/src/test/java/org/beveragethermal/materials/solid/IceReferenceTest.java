/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.beveragethermal.materials.reference.ReferenceTable;
import org.beveragethermal.materials.reference.ReferenceTable.Row;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Ice against the check values of its release, another table, and itself. */
class IceReferenceTest {

    private static double gibbs(Row row) {
        double temperatureK = row.number("temperatureK");
        double pressurePa = row.number("pressurePa");
        return switch (row.property()) {
            case "density" -> IceGibbs.density(temperatureK, pressurePa);
            case "specificHeatCapacity" -> IceGibbs.specificHeatCapacity(temperatureK, pressurePa);
            case "specificEnthalpy" -> IceGibbs.specificEnthalpy(temperatureK, pressurePa);
            default -> throw new IllegalArgumentException(row.property());
        };
    }

    private static double ice(Row row) {
        double temperatureK = 273.15 + row.number("celsius");
        return switch (row.property()) {
            case "density" -> Ice.density(temperatureK);
            case "specificHeatCapacity" -> Ice.specificHeatCapacity(temperatureK);
            case "thermalConductivity" -> Ice.thermalConductivity(temperatureK);
            default -> throw new IllegalArgumentException(row.property());
        };
    }

    @Test
    void reproducesItsVerificationTable() {
        ReferenceTable.read("solid/iapws-r10-06-table-6.csv").check(IceReferenceTest::gibbs);
    }

    @Test
    void agreesWithAFoodEngineeringTable() {
        ReferenceTable.read("solid/nzifst-ice.csv").check(IceReferenceTest::ice);
    }

    @Test
    void latentHeatAgreesWithTheHandbookFigure() {
        OutsideChecks.fromMemory("ice-latent-heat-handbook", "handbook value 333.6 kJ/kg (79.7 cal/g)")
                .what("latent heat of fusion of ice at 0 °C")
                .unit("J/kg")
                .expected(333_600)
                .withinRelative(0.001)
                .check(Ice.latentHeatOfFusion().value());
    }

    @Test
    void enthalpyOfMeltingIceLiesTheLatentHeatBelowWater() {
        assertThat(Ice.specificEnthalpy(273.15))
                .isCloseTo(-Ice.latentHeatOfFusion().value(), within(1e-6));
    }

    @Test
    void enthalpyGrowsByTheHeatCapacity() {
        for (double t = 200.5; t < 273; t += 6) {
            double slope = (Ice.specificEnthalpy(t + 0.05) - Ice.specificEnthalpy(t - 0.05)) / 0.1;
            assertThat(slope).isCloseTo(Ice.specificHeatCapacity(t), within(1e-4));
        }
    }

    @Test
    void temperaturesOutsideTheRangeAreRefused() {
        assertThatThrownBy(() -> Ice.density(199.9)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Ice.density(273.2)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Ice.specificHeatCapacity(280)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Ice.specificEnthalpy(280)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Ice.thermalConductivity(280)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Ice.density(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void everyPropertyHasARecord() {
        assertThat(Ice.properties())
                .extracting(record -> record.property())
                .contains("density", "specific heat capacity", "specific enthalpy", "thermal conductivity");
    }
}
