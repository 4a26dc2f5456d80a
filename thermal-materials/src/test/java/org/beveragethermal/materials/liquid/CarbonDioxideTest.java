/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import org.beveragethermal.materials.reference.ReferenceTable;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.junit.jupiter.api.Test;

/** Dissolved gas against tables and measured bottles, and the closed vessel against its own balance. */
class CarbonDioxideTest {
    private static final double ZERO = 273.15;
    private static final double BAR = 1e5;
    private static final double MOLAR_VOLUME_L = 22.26;

    private static CarbonDioxide sparkling() {
        return CarbonDioxide.inWine(percentByVolume(12.5), gramsPerLitre(10));
    }

    /** Volume of gas at 0 °C and 1 atm per volume of water under 1 atm. */
    @Test
    void waterTakesUpWhatHandbooksSay() {
        ReferenceTable.read("liquid/handbook-carbon-dioxide-absorption.csv")
                .check(row -> CarbonDioxide.inWater().solubility(ZERO + row.number("celsius"))
                        * 101325
                        / CarbonDioxide.MOLAR_MASS
                        / 1000
                        * MOLAR_VOLUME_L);
    }

    @Test
    void pressureInASealedBottleRisesAsMeasured() {
        double at20 = sparkling().pressure(11.5, 0.033, 293);
        ReferenceTable.read("liquid/sealed-bottle-pressure.csv")
                .check(row -> sparkling().pressure(11.5, row.number("headspacePerLiquid"), ZERO + row.number("celsius"))
                        / at20);
    }

    @Test
    void drinksTakeUpWhatWasPrinted() {
        ReferenceTable.read("liquid/henry-of-drinks.csv").check(row -> {
            CarbonDioxide drink = row.text("drink").equals("beer") ? CarbonDioxide.inBeer() : sparkling();
            return drink.solubility(ZERO + row.number("celsius")) * BAR;
        });
    }

    @Test
    void wineTakesUpWhatTheRegulationSays() {
        ReferenceTable.read("liquid/regulation-2676-90.csv")
                .check(row -> CarbonDioxide.inWine(
                                        percentByVolume(row.number("strengthByVolume")),
                                        gramsPerLitre(row.number("sugar")))
                                .solubility(293.15)
                        * BAR);
    }

    @Test
    void henrysConstantReproducesItsVerificationTable() {
        ReferenceTable.read("liquid/iapws-g7-04-table-6.csv")
                .check(row -> Math.log(1e-9 * CarbonDioxide.henryConstantInWater(row.number("temperatureK"))));
    }

    /** Two published formulas for cold water, of which the one in use agrees better with the handbooks. */
    @Test
    void henrysConstantIsFourPercentOffInTheCold() {
        for (int celsius : new int[] {2, 10, 20, 30, 40}) {
            double t = ZERO + celsius;
            double water = Water.liquid().density(t) / 0.018015;
            double solubility = water * CarbonDioxide.MOLAR_MASS / CarbonDioxide.henryConstantInWater(t);
            assertThat(solubility / CarbonDioxide.inWater().solubility(t)).isBetween(0.955, 1.01);
        }
        assertThatThrownBy(() -> CarbonDioxide.henryConstantInWater(270))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("IAPWS G7-04");
    }

    @Test
    void aGaugeShowsTheExcessOverTheAtmosphere() {
        CarbonDioxide wine = sparkling();
        assertThat(wine.gaugePressure(11.4, 0.033, 293.15))
                .isCloseTo(wine.pressure(11.4, 0.033, 293.15) - 101325, within(1e-6));
        assertThat(wine.gaugePressure(0, 0.033, 293.15)).isEqualTo(-101325);
    }

    /** Weiss's formula for water and the regulation's for wine, carried to 0 % vol, come from different hands. */
    @Test
    void wineWithoutAlcoholIsNearWater() {
        double wine = CarbonDioxide.inWine(percentByVolume(0), gramsPerLitre(0)).solubility(293.15);
        assertThat(wine / CarbonDioxide.inWater().solubility(293.15)).isCloseTo(1, within(0.03));
    }

    @Test
    void contentAndPressureInvertEachOther() {
        for (CarbonDioxide drink : new CarbonDioxide[] {CarbonDioxide.inWater(), CarbonDioxide.inBeer(), sparkling()}) {
            for (double celsius : new double[] {-4, 6, 20, 38}) {
                double pressure = drink.pressure(7, 0.05, ZERO + celsius);
                assertThat(drink.content(pressure, 0.05, ZERO + celsius)).isCloseTo(7, within(1e-12));
            }
        }
        assertThat(sparkling().pressure(0, 0.05, 290)).isZero();
    }

    @Test
    void warmthAndSugarDriveGasOut() {
        for (CarbonDioxide drink : new CarbonDioxide[] {CarbonDioxide.inWater(), CarbonDioxide.inBeer(), sparkling()}) {
            for (double t = 268.15; t < 313; t += 1) {
                assertThat(drink.solubility(t + 1)).isLessThan(drink.solubility(t));
            }
        }
        assertThat(CarbonDioxide.inWine(percentByVolume(12.5), gramsPerLitre(50))
                        .solubility(283.15))
                .isLessThan(sparkling().solubility(283.15));
    }

    /** A larger headspace takes its share of the gas by the law of ideal gases. */
    @Test
    void headspaceHoldsGasToo() {
        double t = 283.15;
        double pressure = 5 * BAR;
        double more = sparkling().content(pressure, 0.1, t) - sparkling().content(pressure, 0, t);
        assertThat(more).isCloseTo(0.1 * pressure * CarbonDioxide.MOLAR_MASS / (8.314462618 * t), within(1e-12));
    }

    @Test
    void theEnthalpyOfSolutionDecidesHowFastPressureRises() {
        double gentle = riseTo30(20_000);
        double steep = riseTo30(25_000);
        assertThat(steep).isGreaterThan(1.05 * gentle);
    }

    private static double riseTo30(double enthalpy) {
        CarbonDioxide wine = CarbonDioxide.inWine(percentByVolume(12), gramsPerLitre(8), enthalpy);
        return wine.pressure(11, 0.03, ZERO + 30) / wine.pressure(11, 0.03, ZERO + 6);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> CarbonDioxide.inWine(percentByVolume(140), gramsPerLitre(0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("140");
        assertThatThrownBy(() -> CarbonDioxide.inWine(percentByVolume(12), gramsPerLitre(-1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("sugar");
        assertThatThrownBy(() -> sparkling().pressure(11, -0.1, 290)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> sparkling().solubility(350)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> sparkling().pressure(Double.NaN, 0, 290)).isInstanceOf(IllegalArgumentException.class);
    }
}
