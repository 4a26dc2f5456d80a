/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.beveragethermal.materials.reference.ReferenceTable;
import org.beveragethermal.materials.reference.ReferenceTable.Row;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Every liquid formula against tables other than the one it was taken from, or its own check values. */
class LiquidReferenceTest {
    private static final double CELSIUS_ZERO_K = 273.15;

    private static double evaluate(Liquid liquid, String property, double temperatureK) {
        return switch (property) {
            case "density" -> liquid.density(temperatureK);
            case "specificHeatCapacity" -> liquid.specificHeatCapacity(temperatureK);
            case "thermalConductivity" -> liquid.thermalConductivity(temperatureK);
            case "dynamicViscosity" -> liquid.dynamicViscosity(temperatureK);
            case "thermalExpansion" -> liquid.thermalExpansion(temperatureK);
            default -> throw new IllegalArgumentException(property);
        };
    }

    private static double water(Row row) {
        return evaluate(Water.liquid(), row.property(), row.number("temperatureK"));
    }

    private static double mixture(Row row) {
        return evaluate(
                new EthanolWater(row.number("massFraction")), row.property(), CELSIUS_ZERO_K + row.number("celsius"));
    }

    /** The density formula covers mixtures up to pure ethanol, further than the other properties. */
    private static double densityOfAnyMixture(double massFraction, double celsius) {
        return Polynomials.value(EthanolWater.densityTerms(massFraction), celsius - 20);
    }

    @Test
    void waterReproducesItsVerificationTable() {
        ReferenceTable.read("liquid/iapws-sr6-08-table-8.csv").check(LiquidReferenceTest::water);
    }

    @Test
    void waterAgreesWithAnIndependentTable() {
        ReferenceTable.read("liquid/london-south-bank-water.csv").check(LiquidReferenceTest::water);
    }

    @Test
    void waterAgreesWithTheScientificFormulation() {
        ReferenceTable.read("liquid/iapws-95-water.csv")
                .check(row -> evaluate(Water.liquid(), row.property(), CELSIUS_ZERO_K + row.number("celsius")));
    }

    /** Ice stands beside the liquids because what freezes out of a drink is ice. */
    @Test
    void iceAndItsMeltingAgreeWithAReferenceLibrary() {
        ReferenceTable.read("liquid/iapws-06-ice.csv").check(row -> {
            double temperatureK = CELSIUS_ZERO_K + row.number("celsius");
            return row.property().equals("density")
                    ? Ice.density(temperatureK)
                    : Ice.specificHeatCapacity(temperatureK);
        });
        ReferenceTable.read("liquid/iapws-fusion.csv")
                .check(row -> Ice.latentHeatOfFusion().value());
    }

    @Test
    void ethanolWaterReproducesTheAlcoholometricTable() {
        ReferenceTable.read("liquid/oiml-r-22-table-1.csv")
                .check(row -> densityOfAnyMixture(row.number("massFraction"), row.number("celsius")));
    }

    @Test
    void ethanolWaterAgreesWithTheStrengthTable() {
        ReferenceTable.read("liquid/oiv-as312-02-table-1.csv")
                .check(row ->
                        densityOfAnyMixture(EthanolWater.massFractionFromStrength(row.number("strengthByVolume")), 20));
    }

    @Test
    void strengthAgreesWithLange() {
        ReferenceTable.read("liquid/lange-strength.csv")
                .check(row -> EthanolWater.strengthFromMassFraction(row.number("massFraction")));
    }

    @Test
    void densityAgreesWithLange() {
        ReferenceTable.read("liquid/lange-density.csv").check(LiquidReferenceTest::mixture);
    }

    /** Melinder's polynomial alone: the curve in use takes the warmer of the two and would agree by construction. */
    @Test
    void melinderFreezingCurveAgreesWithLange() {
        ReferenceTable.read("liquid/lange-freezing.csv")
                .check(row -> EthanolWater.melinderFreezingCelsius(100 * row.number("massFraction")));
    }

    @Test
    void specificHeatCapacityAgreesWithPerry() {
        ReferenceTable.read("liquid/perry-specific-heat.csv").check(LiquidReferenceTest::mixture);
    }

    @Test
    void viscosityAgreesWithBinghamAndJackson() {
        ReferenceTable.read("liquid/bingham-jackson-viscosity.csv").check(LiquidReferenceTest::mixture);
    }

    @Test
    void conductivityReproducesTheTableBehindIt() {
        ReferenceTable.read("liquid/melinder-ethanol-conductivity.csv").check(LiquidReferenceTest::mixture);
    }

    /**
     * The polynomials rest on tables from 11 % upwards; carried down to 0 % they must meet water within the deviation
     * the documentation states, between 0 and 40 °C.
     */
    @Test
    void mixtureWithoutEthanolMeetsWater() {
        ReferenceTable.read("liquid/iapws-95-water-limit.csv").check(LiquidReferenceTest::mixture);
        for (int celsius : new int[] {0, 20, 40}) {
            double kelvins = CELSIUS_ZERO_K + celsius;
            assertThat(EthanolWater.ofMassFraction(0).density(kelvins)
                            / Water.liquid().density(kelvins))
                    .isCloseTo(1, within(1e-5));
        }
    }

    @Test
    void hotViscosityFallsAsBinghamAndJacksonMeasured() {
        ReferenceTable.read("liquid/bingham-jackson-hot-viscosity.csv").check(LiquidReferenceTest::mixture);
    }

    /**
     * K. N. Marsh, A. E. Richards, Aust. J. Chem. 33 (1980) 2121: from 278.15 to 338.15 K the excess volume at a mole
     * fraction of ethanol of 0.082 does not depend on temperature and is -0.420 cm³/mol. With it and the densities of the pure
     * liquids (ethanol: Landolt-Börnstein IV/8G) follows that of the mixture, measured where our formula is only continued.
     */
    @Test
    void hotDensityFollowsFromMeasuredExcessVolumes() {
        double ethanolMole = 0.082 * 46.068;
        double waterMole = 0.918 * 18.015;
        EthanolWater mixture = EthanolWater.ofMassFraction(ethanolMole / (ethanolMole + waterMole));
        for (int celsius : new int[] {5, 25, 45, 55, 65}) {
            double t = CELSIUS_ZERO_K + celsius;
            double ethanol = 1162.39 + t * (-2.25788 + t * (5.30621e-3 - 6.6307e-6 * t));
            double litres = ethanolMole / ethanol + waterMole / waterDensity(celsius) - 0.420e-3;
            OutsideChecks.published(
                            "ethanol-excess-volume-" + celsius,
                            "K. N. Marsh, A. E. Richards, Aust. J. Chem. 33 (1980) 2121-2132: excess volume -0.420 cm3/mol at mole"
                                    + " fraction 0.082; pure ethanol by Landolt-Boernstein IV/8G (2000), water by IAPWS-95; the tolerance"
                                    + " is the uncertainty of the density of ethanol (1 kg/m3, by which its sources differ) in the mixture")
                    .what("density of ethanol-water of 18.6 % by mass at " + celsius + " °C")
                    .unit("kg/m³")
                    .expected((ethanolMole + waterMole) / litres)
                    .within(0.25)
                    .check(mixture.density(t));
        }
    }

    /** IAPWS-95 at 0.1 MPa, kg/m³. */
    private static double waterDensity(int celsius) {
        return switch (celsius) {
            case 5 -> 999.9666;
            case 25 -> 997.0470;
            case 45 -> 990.2132;
            case 55 -> 985.6954;
            case 65 -> 980.5485;
            default -> throw new IllegalArgumentException("no density at " + celsius);
        };
    }

    /**
     * The heat capacity follows from heats of mixing measured at different temperatures: J. A. Larkin, J. Chem.
     * Thermodynamics 7 (1975) 137-148, 298.15 to 383.15 K, x (1 - x) times the sum of (a + b T + c T²) x^n, J/mol. Weaker
     * mixtures are left out: there the coefficients, read at second hand, give heats half as large again as the -9.8 kJ/mol of
     * textbooks.
     */
    @Test
    void hotHeatCapacityFollowsFromMeasuredHeatsOfMixing() {
        for (int percent : new int[] {20, 30, 40, 60}) {
            double w = percent / 100.0;
            double allowed = percent > 30 ? 0.07 : 0.03;
            for (int celsius : new int[] {50, 65, 80}) {
                OutsideChecks.published(
                                "ethanol-hot-heat-capacity-" + percent + "-at-" + celsius,
                                "J. A. Larkin, J. Chem. Thermodynamics 7 (1975) 137-148, slope of the excess enthalpy; pure ethanol by"
                                        + " Perry's Chemical Engineers' Handbook, table 2-196, water by IAPWS; the tolerance is our stated"
                                        + " uncertainty")
                        .what("specific heat capacity of ethanol-water of " + percent + " % by mass at " + celsius
                                + " °C")
                        .unit("J/(kg K)")
                        .expected(heatCapacityFromHeatOfMixing(w, CELSIUS_ZERO_K + celsius))
                        .withinRelative(allowed)
                        .check(EthanolWater.ofMassFraction(w).specificHeatCapacity(CELSIUS_ZERO_K + celsius));
            }
        }
    }

    private static double heatCapacityFromHeatOfMixing(double w, double t) {
        double ethanolMoles = w / 0.046068;
        double moles = ethanolMoles + (1 - w) / 0.018015;
        double x = ethanolMoles / moles;
        double[][] terms = {
            {0, 1838.29, -2.32763},
            {0.5, -4835.86, 6.37228},
            {1.5, 7516.61, -10.1128},
            {2.5, -5894.98, 7.98868},
            {4.5, 1505.57, -2.03127}
        };
        double excess = 0;
        for (double[] term : terms) {
            excess += Math.pow(x, term[0]) * (term[1] + 2 * term[2] * t);
        }
        double ethanol = (102640 + t * (-139.63 + t * (-0.030341 + 0.0020386 * t))) / 46.068;
        return w * ethanol + (1 - w) * Water.liquid().specificHeatCapacity(t) + moles * x * (1 - x) * excess;
    }

    /** Without ethanol the continuation above 40 °C misses water by what the documentation states. */
    @Test
    void continuationAbove40CelsiusFollowsWater() {
        Liquid dry = EthanolWater.ofMassFraction(0);
        Liquid water = Water.liquid();
        for (int celsius : new int[] {50, 60, 70, 80}) {
            double kelvins = CELSIUS_ZERO_K + celsius;
            assertThat(dry.density(kelvins) / water.density(kelvins)).isBetween(0.9991, 1.0009);
            assertThat(dry.specificHeatCapacity(kelvins) / water.specificHeatCapacity(kelvins))
                    .isBetween(0.995, 1.005);
            assertThat(dry.thermalConductivity(kelvins) / water.thermalConductivity(kelvins))
                    .isBetween(0.965, 1.035);
            assertThat(dry.dynamicViscosity(kelvins) / water.dynamicViscosity(kelvins))
                    .isBetween(0.99, 1.01);
        }
    }
}
