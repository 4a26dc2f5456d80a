/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.beveragethermal.materials.reference.ReferenceTable;
import org.beveragethermal.materials.reference.ReferenceTable.Row;
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

    /**
     * The polynomials rest on tables from 11 % upwards; carried down to 0 % they must meet water within the deviation
     * the documentation states, between 0 and 40 °C.
     */
    @Test
    void mixtureWithoutEthanolMeetsWater() {
        Liquid dry = EthanolWater.ofMassFraction(0);
        for (String property :
                new String[] {"density", "specificHeatCapacity", "thermalConductivity", "dynamicViscosity"}) {
            double tolerance = switch (property) {
                case "density" -> 1e-5;
                case "specificHeatCapacity" -> 0.006;
                case "thermalConductivity" -> 0.011;
                default -> 0.003;
            };
            for (int celsius : new int[] {0, 20, 40}) {
                double kelvins = CELSIUS_ZERO_K + celsius;
                OutsideChecks.published(
                                "ethanol-water-limit-" + property.toLowerCase(Locale.ROOT) + "-" + celsius,
                                "IAPWS SR6-08(2011), water")
                        .what(property + " relative to water, mixture at 0 % ethanol, " + celsius + " °C")
                        .unit("1")
                        .expected(1)
                        .within(tolerance)
                        .check(evaluate(dry, property, kelvins) / evaluate(Water.liquid(), property, kelvins));
            }
        }
    }

    /** The continuation above 40 °C can be held against a reference only where there is no ethanol. */
    @Test
    void continuationAbove40CelsiusFollowsWater() {
        Liquid dry = EthanolWater.ofMassFraction(0);
        Liquid water = Water.liquid();
        for (int celsius : new int[] {50, 60, 70}) {
            double kelvins = CELSIUS_ZERO_K + celsius;
            assertThat(dry.density(kelvins) / water.density(kelvins)).isBetween(0.997, 1.003);
            assertThat(dry.specificHeatCapacity(kelvins) / water.specificHeatCapacity(kelvins))
                    .isBetween(0.97, 1.03);
            assertThat(dry.thermalConductivity(kelvins) / water.thermalConductivity(kelvins))
                    .isBetween(0.95, 1.05);
            assertThat(dry.dynamicViscosity(kelvins) / water.dynamicViscosity(kelvins))
                    .isBetween(0.8, 1.2);
        }
    }
}
