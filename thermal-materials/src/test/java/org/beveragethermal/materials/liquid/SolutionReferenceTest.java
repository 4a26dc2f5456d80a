/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.beveragethermal.materials.reference.ReferenceTable;
import org.beveragethermal.materials.reference.ReferenceTable.Row;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Salt and sugar in water against handbook tables, and against what must hold whatever the table says. */
class SolutionReferenceTest {
    private static final double CELSIUS_ZERO_K = 273.15;
    private static final double J_PER_CAL = 4.184;
    private static final double SALT_KG_PER_MOL = 0.05844;

    private static double property(Liquid liquid, Row row) {
        double temperatureK = CELSIUS_ZERO_K + row.number("celsius");
        return switch (row.property()) {
            case "density" -> liquid.density(temperatureK);
            case "specificHeatCapacity" -> liquid.specificHeatCapacity(temperatureK);
            case "dynamicViscosity" -> liquid.dynamicViscosity(temperatureK);
            default -> throw new IllegalArgumentException(row.property());
        };
    }

    private static double brine(Row row) {
        return property(Brine.ofMassFraction(row.number("massFraction")), row);
    }

    private static double sucrose(Row row) {
        return property(SucroseSolution.ofMassFraction(row.number("massFraction")), row);
    }

    @Test
    void brineFreezesAsLangeSays() {
        ReferenceTable.read("liquid/lange-brine-freezing.csv")
                .check(row -> Brine.freezingTemperatureK(row.number("massFraction")) - CELSIUS_ZERO_K);
    }

    /** Another formula, from the study of inclusions in minerals, for what is in balance with ice. */
    @Test
    void brineInBalanceWithIceAgreesWithBodnar() {
        ReferenceTable.read("liquid/bodnar-brine-freezing.csv")
                .check(row -> 100
                        * Brine.inBalanceWithIceAt(CELSIUS_ZERO_K + row.number("celsius"))
                                .massFraction());
    }

    @Test
    void brineIsAsDenseAsTheHandbooksSay() {
        ReferenceTable.read("liquid/crc-brine-density.csv").check(SolutionReferenceTest::brine);
        ReferenceTable.read("liquid/poradnik-brine-density.csv").check(SolutionReferenceTest::brine);
    }

    @Test
    void brineHasTheHeatCapacityOfItsTable() {
        ReferenceTable.read("liquid/melinder-brine-specific-heat.csv").check(SolutionReferenceTest::brine);
    }

    @Test
    void dissolvingSaltTakesTheHeatOfAWorkedProblem() {
        OutsideChecks.published(
                        "brine-heat-of-solution-12",
                        "worked problem of physical chemistry: 1 mol NaCl into a 12 % solution at 25 °C takes 700.8 cal; the"
                                + " tolerance, 10 %, was chosen after seeing the deviation")
                .what("heat of solution of salt at 12 % by mass, 25 °C")
                .unit("J/mol")
                .expected(700.8 * J_PER_CAL)
                .within(0.1 * 700.8 * J_PER_CAL)
                .check(Brine.ofMassFraction(0.12).heatOfSolution() * SALT_KG_PER_MOL);
    }

    /** The same problem gives the heat at 20 °C; between the two stand nothing but the heat capacities. */
    @Test
    void dissolvingSaltTakesMoreHeatWhenItIsCold() {
        Brine brine = Brine.ofMassFraction(0.12);
        double brinePerMol = SALT_KG_PER_MOL / 0.12;
        double saltAndWaterPerMolKelvin = 50.5 + 0.88 * brinePerMol * 4182;
        double brineChange = brinePerMol
                * (brine.enthalpyOverWaterAndSalt(CELSIUS_ZERO_K + 25)
                        - brine.enthalpyOverWaterAndSalt(CELSIUS_ZERO_K + 20));
        double change = brineChange - 5 * saltAndWaterPerMolKelvin;
        OutsideChecks.published(
                        "brine-heat-of-solution-slope",
                        "worked problem of physical chemistry: 774.6 cal at 20 °C, 700.8 cal at 25 °C; the tolerance, 10 %, was"
                                + " chosen after seeing the deviation")
                .what("change of the heat of solution at 12 % from 20 to 25 °C")
                .unit("J/mol")
                .expected((700.8 - 774.6) * J_PER_CAL)
                .within(0.1 * 73.8 * J_PER_CAL)
                .check(change);
    }

    @Test
    void brineWithoutSaltIsNearlyWater() {
        Brine none = Brine.ofMassFraction(0);
        Liquid water = Water.liquid();
        for (int celsius : new int[] {0, 20, 40}) {
            double t = CELSIUS_ZERO_K + celsius;
            assertThat(none.density(t) / water.density(t)).isCloseTo(1, within(2e-3));
            assertThat(none.specificHeatCapacity(t) / water.specificHeatCapacity(t))
                    .isCloseTo(1, within(0.01));
            assertThat(none.thermalConductivity(t) / water.thermalConductivity(t))
                    .isCloseTo(1, within(0.03));
            assertThat(none.dynamicViscosity(t) / water.dynamicViscosity(t)).isCloseTo(1, within(0.05));
        }
        assertThat(none.enthalpyOverWaterAndSalt(CELSIUS_ZERO_K)).isCloseTo(0, within(500.0));
        assertThat(none.heatOfSolution() * SALT_KG_PER_MOL).isCloseTo(3880, within(1e-6));
    }

    /**
     * Ice and salt at 0 °C, thrown together without heat from outside, end at the temperature of their brine. By hand, with 333
     * kJ/kg to melt, 2.05 and 3.4 kJ/(kg K) for ice and brine, 50 kJ/kg to dissolve: 30 g of salt on 1 kg of ice reach 21 % salt
     * (-17.8 °C) when 113 g of ice have melted, which takes 37.6 + 1.5 kJ; cooling the rest by 17.8 K gives 41 kJ.
     */
    @Test
    void saltedIceCoolsItself() {
        assertThat(temperatureOfSaltedIceK(0.03) - CELSIUS_ZERO_K).isBetween(-18.3, -16.3);
        // With three times the salt there is not the heat to dissolve it all: the mixture stays at the eutectic.
        assertThat(temperatureOfSaltedIceK(0.1)).isCloseTo(Brine.EUTECTIC_K, within(1e-6));
    }

    private static double temperatureOfSaltedIceK(double saltPerIce) {
        double iceEnthalpy = -Ice.latentHeatOfFusion().value();
        double low = Brine.EUTECTIC_K;
        double high = CELSIUS_ZERO_K;
        for (int i = 0; i < 60; i++) {
            double t = (low + high) / 2;
            Brine brine = Brine.inBalanceWithIceAt(t);
            double melted = Math.min(1, saltPerIce * (1 - brine.massFraction()) / brine.massFraction());
            double coldIce = (1 - melted) * (iceEnthalpy + 2050 * (t - CELSIUS_ZERO_K));
            double after = (melted + saltPerIce) * brine.enthalpyOverWaterAndSalt(t) + coldIce;
            if (after > iceEnthalpy) {
                high = t;
            } else {
                low = t;
            }
        }
        return low;
    }

    @Test
    void asMuchSaltDissolvesAsTheTradeSays() {
        OutsideChecks.fromMemory("salt-solubility-20", "saturated brine holds 26.4 % salt at 20 °C")
                .what("solubility of salt at 20 °C")
                .unit("1")
                .expected(0.264)
                .within(0.0005)
                .check(Salt.solubility(CELSIUS_ZERO_K + 20));
        assertThat(Salt.solubility(CELSIUS_ZERO_K + 40)).isGreaterThan(Salt.solubility(CELSIUS_ZERO_K));
        assertThat(Salt.solubility(CELSIUS_ZERO_K)).isGreaterThan(Brine.EUTECTIC_MASS_FRACTION);
        assertThat(Salt.specificEnthalpy(CELSIUS_ZERO_K)).isZero();
        assertThat(Salt.specificEnthalpy(CELSIUS_ZERO_K + 10))
                .isCloseTo(10 * Salt.specificHeatCapacity().value(), within(1e-9));
        assertThat(Salt.density().value()).isGreaterThan(2000);
        assertThatThrownBy(() -> Salt.solubility(260)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Salt.specificEnthalpy(400)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void balanceWithIceInvertsTheFreezingCurve() {
        for (double w = 0.01; w < 0.23; w += 0.01) {
            assertThat(Brine.inBalanceWithIceAt(Brine.freezingTemperatureK(w)).massFraction())
                    .isCloseTo(w, within(1e-9));
        }
        assertThat(Brine.inBalanceWithIceAt(Brine.EUTECTIC_K).massFraction()).isEqualTo(0.233);
        assertThat(Brine.inBalanceWithIceAt(CELSIUS_ZERO_K).massFraction()).isLessThan(1e-3);
    }

    @Test
    void sucroseIsAsDenseAsTheHandbooksSay() {
        ReferenceTable.read("liquid/nbs-c457-sucrose-density.csv").check(SolutionReferenceTest::sucrose);
        ReferenceTable.read("liquid/crc-sucrose-density.csv").check(SolutionReferenceTest::sucrose);
    }

    @Test
    void sucroseIsAsViscousAsTheHandbookSays() {
        ReferenceTable.read("liquid/crc-sucrose-viscosity.csv").check(SolutionReferenceTest::sucrose);
    }

    @Test
    void sucroseFreezesAsItsTableSays() {
        ReferenceTable.read("liquid/goff-hartel-sucrose-freezing.csv")
                .check(row -> SucroseSolution.freezingTemperatureK(row.number("sucrosePer100Water") / 100, 0)
                        - CELSIUS_ZERO_K);
    }

    @Test
    void withoutSugarTheSolutionIsWater() {
        Liquid none = SucroseSolution.ofMassFraction(0);
        Liquid water = Water.liquid();
        for (double t = 253.15; t <= 353.15; t += 5) {
            assertThat(none.density(t)).isEqualTo(water.density(t));
            assertThat(none.thermalExpansion(t)).isCloseTo(water.thermalExpansion(t), within(1e-15));
            assertThat(none.specificHeatCapacity(t)).isEqualTo(water.specificHeatCapacity(t));
            assertThat(none.specificEnthalpy(t)).isEqualTo(water.specificEnthalpy(t));
            assertThat(none.thermalConductivity(t)).isEqualTo(water.thermalConductivity(t));
            assertThat(none.dynamicViscosity(t)).isCloseTo(water.dynamicViscosity(t), within(1e-15));
        }
    }

    @Test
    void theJoinBelowTenPercentHasNeitherJumpNorKink() {
        double t = CELSIUS_ZERO_K + 10;
        double h = 1e-5;
        double at = Math.log(SucroseSolution.ofMassFraction(0.1).dynamicViscosity(t));
        double below = at - Math.log(SucroseSolution.ofMassFraction(0.1 - h).dynamicViscosity(t));
        double above = Math.log(SucroseSolution.ofMassFraction(0.1 + h).dynamicViscosity(t)) - at;
        assertThat(below).isCloseTo(above, within(1e-3 * above));
    }

    /** Thin solutions of any sugar freeze by the number of molecules: 1.86 K per mol and kilogram of water. */
    @Test
    void thinInvertSugarFreezesIdeally() {
        for (int grams : new int[] {10, 30, 60}) {
            double ideal = 1.86 * grams / 180.16;
            OutsideChecks.published(
                            "invert-sugar-ideal-" + grams,
                            "cryoscopic constant of water, 1.86 K kg/mol (CRC Handbook), molar mass of glucose and fructose 180.16"
                                    + " g/mol; the tolerance is the stated uncertainty of the molar scaling, 12 %, part of which is"
                                    + " that the solution is not ideal")
                    .what("freezing point depression of " + grams + " g invert sugar per kg water")
                    .unit("K")
                    .expected(ideal)
                    .withinRelative(0.12)
                    .check(CELSIUS_ZERO_K - SucroseSolution.freezingTemperatureK(0, grams / 1000.0));
        }
    }

    @Test
    void invertSugarFreezesAsManyMoleculesDo() {
        double sucrose = SucroseSolution.freezingTemperatureK(0.19, 0);
        double invert = SucroseSolution.freezingTemperatureK(0, 0.1);
        assertThat(invert).isCloseTo(sucrose, within(1e-3));
        // Beyond the table the curve goes on straight.
        double slope = SucroseSolution.freezingTemperatureK(1.8, 0) - SucroseSolution.freezingTemperatureK(1.9, 0);
        double next = SucroseSolution.freezingTemperatureK(1.9, 0) - SucroseSolution.freezingTemperatureK(2.0, 0);
        assertThat(next).isCloseTo(slope, within(1e-9)).isPositive();
        assertThat(SucroseSolution.freezingTemperatureK(0, 0)).isEqualTo(CELSIUS_ZERO_K);
    }

    @Test
    void refusesWhatIsNoSolution() {
        assertThatThrownBy(() -> Brine.ofMassFraction(0.3))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("salt")
                .hasMessageContaining("0.233");
        assertThatThrownBy(() -> Brine.inBalanceWithIceAt(250)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SucroseSolution.ofMassFraction(-0.01))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("sucrose");
        assertThatThrownBy(() -> SucroseSolution.freezingTemperatureK(1.5, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SucroseSolution.ofMassFraction(0.1).density(400))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Brine.ofMassFraction(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
