/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.reference.ReferenceTable;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Food components and whole drinks against printed figures. */
class BeverageReferenceTest {
    private static final double ZERO = 273.15;

    @Test
    void foodComponentsReproduceTheHandbooksExample() {
        ReferenceTable.read("liquid/ashrae-food-density.csv")
                .check(row -> FoodComponent.valueOf(row.text("component")).density(ZERO + row.number("celsius")));
    }

    /** The components' water is known to be too light, which is why drinks take water from {@link Water}. */
    @Test
    void theFoodModelsWaterIsTooLight() {
        ReferenceTable.read("liquid/ashrae-food-water.csv")
                .check(row -> FoodComponent.valueOf(row.text("component")).density(ZERO + row.number("celsius")));
        assertThat(FoodComponent.WATER.density(ZERO + 20))
                .isLessThan(0.998 * Water.liquid().density(ZERO + 20));
        for (double celsius = 0; celsius <= 60; celsius += 10) {
            double t = ZERO + celsius;
            assertThat(FoodComponent.WATER.specificHeatCapacity(t)
                            / Water.liquid().specificHeatCapacity(t))
                    .isCloseTo(1, within(0.011));
            assertThat(FoodComponent.WATER.thermalConductivity(t)
                            / Water.liquid().thermalConductivity(t))
                    .isCloseTo(1, within(0.03));
        }
    }

    /** The solids-not-fat are shared out as in milk: 35.2 protein, 49.7 milk sugar, 7.4 minerals (from memory). */
    @Test
    void milkIsAsDenseAsTheTableSays() {
        ReferenceTable.read("liquid/guelph-milk-density.csv").check(row -> {
            double fat = row.number("fat");
            double rest = row.number("solidsNotFat");
            double part = rest / (35.2 + 49.7 + 7.4);
            Composition composition =
                    new Composition(1 - fat - rest, 0, 0, 0, 35.2 * part, fat, 49.7 * part, 7.4 * part, 0);
            return Beverage.of(Beverage.Kind.MILK, composition).density(ZERO + row.number("celsius"));
        });
    }

    @Test
    void milkHasTheHeatCapacityOfTheTables() {
        ReferenceTable.read("liquid/nzifst-milk-specific-heat.csv")
                .check(row -> Beverage.milk(percent(3.6)).specificHeatCapacity(ZERO + row.number("celsius")));
    }

    @Test
    void milkFreezesAndThickensAsMilkDoes() {
        Beverage milk = Beverage.milk(percent(3.6));
        OutsideChecks.fromMemory("milk-freezing", "dairy practice: milk freezes at -0.52 to -0.56 °C")
                .what("freezing onset of whole milk")
                .unit("°C")
                .expected(-0.54)
                .within(0.05)
                .check(milk.freezingOnsetK() - ZERO);
        OutsideChecks.fromMemory(
                        "milk-viscosity-20", "dairy handbooks: whole milk at 20 °C, 1.9 to 2.2 mPa s; 20 % allowed")
                .what("dynamic viscosity of whole milk at 20 °C")
                .unit("Pa s")
                .expected(2.05e-3)
                .within(0.41e-3)
                .check(milk.dynamicViscosity(ZERO + 20));
    }

    /** The table's beer is 92 % water; a beer of 5 % vol and 40 g/L of extract is 92 % water too. */
    @Test
    void beerAndMilkAreAsTheTableSays() {
        Beverage beer = Beverage.beer(percentByVolume(5));
        Beverage milk = Beverage.milk(percent(3.6));
        assertThat(beer.composition().water()).isCloseTo(0.92, within(0.003));
        assertThat(milk.composition().water()).isCloseTo(0.875, within(0.003));
        ReferenceTable.read("liquid/nzifst-beverages.csv").check(row -> {
            Beverage drink = row.text("drink").equals("beer") ? beer : milk;
            return switch (row.property()) {
                case "freezingCelsius" -> drink.freezingOnsetK() - ZERO;
                case "latentHeat" ->
                    drink.composition().water() * Ice.latentHeatOfFusion().value();
                default -> FreezingCurve.of(drink).sensibleHeatCapacity(ZERO + row.number("celsius"));
            };
        });
    }

    @Test
    void juiceFreezesWhereJuicesDo() {
        ReferenceTable.read("liquid/juice-freezing.csv")
                .check(row ->
                        Beverage.juice(percent(row.number("solubleSolids"))).freezingOnsetK() - ZERO);
        for (int solids : new int[] {8, 11, 13}) {
            double water = 1 - solids / 100.0;
            OutsideChecks.published(
                            "juice-freezing-chang-tao-" + solids,
                            "H. D. Chang, L. C. Tao, J. Food Science 46 (1981) 1493: 120.47 + 327.35 x - 176.49 x² K, x mass"
                                    + " fraction of water; 0.3 K allowed, chosen after seeing the deviation")
                    .what("freezing onset of juice of " + solids + " % soluble solids")
                    .unit("°C")
                    .expected(120.47 + 327.35 * water - 176.49 * water * water - ZERO)
                    .within(0.3)
                    .check(Beverage.juice(percent(solids)).freezingOnsetK() - ZERO);
        }
    }

    @Test
    void spiritsFreezeAsTheTableSays() {
        ReferenceTable.read("liquid/spirit-freezing.csv")
                .check(row ->
                        Beverage.spirit(percentByVolume(row.number("strength"))).freezingOnsetK() - ZERO);
    }

    /** Below the onset the liquid that is left must follow the same curves as any mixture of that strength. */
    @Test
    void whatStaysLiquidFollowsLangesTable() {
        FreezingCurve curve = FreezingCurve.of(Beverage.wine(percentByVolume(12.5)));
        double[][] rows = {{-6.1, 13.8}, {-10.6, 20.3}, {-14, 24.2}, {-18.9, 29.9}, {-23.6, 33.8}};
        for (double[] row : rows) {
            // 1.1 K is how far the published curves differ; at 0.7 K per % that is 1.6 % of strength.
            OutsideChecks.published(
                            "wine-remaining-" + row[1],
                            "Lange's Handbook of Chemistry, 15th ed., Table 5.13, ethanol; allowed is 1.1 K, by which the published"
                                    + " curves differ")
                    .what("ethanol in what is liquid in frozen wine at " + row[0] + " °C")
                    .unit("% by mass")
                    .expected(row[1])
                    .within(1.6)
                    .check(100 * EthanolWater.massFractionFromStrength(curve.remainingStrength(ZERO + row[0])));
        }
    }

    /**
     * What leaving out the heat of mixing does: the ethanol's heat of solution at the strength of the liquid that is left,
     * less that at the strength of the drink, at 25 °C, carried to the temperature by the heat capacities of the three liquids.
     */
    @Test
    void theHeatOfMixingLeftOutIsInsideTheStatedUncertainty() {
        for (int tenths : new int[] {50, 125, 150, 200}) {
            FreezingCurve curve = FreezingCurve.of(Beverage.spirit(percentByVolume(tenths / 10.0)));
            double halfWidth = Math.sqrt(3)
                    * curve.properties().stream()
                            .filter(record -> record.property().equals("enthalpy with ice"))
                            .findFirst()
                            .orElseThrow()
                            .uncertainty()
                            .standardUncertainty(1);
            for (int celsius : new int[] {-10, -20}) {
                double t = ZERO + celsius;
                double enthalpy = curve.specificEnthalpyWithIce(t);
                double mixed = enthalpy + heatOfMixingLeftOut(curve, t);
                assertThat(mixed).isGreaterThan(enthalpy);
                OutsideChecks.published(
                                "freezing-heat-of-mixing-" + tenths + "-m" + -celsius,
                                "heats of solution of ethanol in water: 0.1 mol in 4.9 mol of water, -980 J (A. Malijevský, J. P. Novák et"
                                        + " al., Physical Chemistry in Brief, ICT Prague, chapter 6, worked example; authors from memory,"
                                        + " taken as at 25 °C), mole fraction 0.15, -810 J/mol at 25 °C (J. A. Larkin, J. Chem."
                                        + " Thermodynamics 7 (1975) 137-148), between them by the logarithm of the mole fraction; "
                                        + "allowed is our stated uncertainty")
                        .what("enthalpy of ethanol-water of " + tenths / 10.0 + " % vol with its ice at " + celsius
                                + " °C")
                        .unit("J/kg")
                        .expected(mixed)
                        .within(halfWidth * Math.abs(mixed))
                        .check(enthalpy);
            }
        }
        // As the documentation says of wine: 4 % of the heat of freezing at -10 °C, 7 % at -20 °C.
        FreezingCurve wine = FreezingCurve.of(Beverage.wine(percentByVolume(12.5)));
        assertThat(shareOfFreezing(wine, ZERO - 10)).isCloseTo(0.04, within(0.005));
        assertThat(shareOfFreezing(wine, ZERO - 20)).isCloseTo(0.07, within(0.005));
    }

    private static double shareOfFreezing(FreezingCurve curve, double t) {
        double fusion = Water.liquid().specificEnthalpy(t) - Ice.specificEnthalpy(t);
        return heatOfMixingLeftOut(curve, t) / (curve.iceFraction(t) * fusion);
    }

    private static double heatOfMixingLeftOut(FreezingCurve curve, double t) {
        double ethanol = curve.beverage().composition().ethanol();
        double ice = curve.iceFraction(t);
        double remaining = ethanol / (1 - ice);
        double at25 = ethanol / 0.046068 * (heatOfSolution(remaining) - heatOfSolution(ethanol));
        return at25
                + (1 - ice) * warming(EthanolWater.ofMassFraction(remaining), t)
                + ice * warming(Water.liquid(), t)
                - warming(EthanolWater.ofMassFraction(ethanol), t);
    }

    private static double warming(Liquid liquid, double t) {
        return liquid.specificEnthalpy(t) - liquid.specificEnthalpy(ZERO + 25);
    }

    /** Heat of solution of ethanol at 25 °C, J/mol of ethanol. */
    private static double heatOfSolution(double massFraction) {
        double moles = massFraction / 46.068;
        double x = moles / (moles + (1 - massFraction) / 18.015);
        double thin = -980 / 0.1;
        double strong = -810 / 0.15;
        return thin + (strong - thin) * Math.log(x / 0.02) / Math.log(0.15 / 0.02);
    }

    @Test
    void waterGrowsByAnEleventhPartOnFreezing() {
        OutsideChecks.commonPractice("water-expansion-on-freezing")
                .what("growth of water on freezing")
                .unit("1")
                .between(0.085, 0.095)
                .check(FreezingCurve.of(Beverage.water()).expansion(ZERO + 4, ZERO - 2));
    }

    /** Without ethanol the mixture must come out near water above 40 °C, too. */
    @Test
    void theContinuationOfEthanolWaterHoldsForWater() {
        EthanolWater none = EthanolWater.ofMassFraction(0);
        Water water = Water.liquid();
        int continued = 0;
        for (PropertyRecord property : none.properties()) {
            boolean hot =
                    property.unit().equals("K") ? false : property.validity().low() > ZERO + 39;
            continued += hot ? 1 : 0;
            for (double celsius = 50; hot && celsius <= 80; celsius += 10) {
                double t = ZERO + celsius;
                double expected = value(water, property.property(), t);
                OutsideChecks.published(
                                "continuation-" + property.property().replace(' ', '-') + "-" + (int) celsius,
                                "IAPWS SR6-08(2011), water; allowed is our stated uncertainty of the continuation")
                        .what(property.property() + " of ethanol-water without ethanol at " + (int) celsius + " °C")
                        .unit(property.unit())
                        .expected(expected)
                        .within(property.uncertainty().standardUncertainty(expected) * Math.sqrt(3))
                        .check(value(none, property.property(), t));
            }
        }
        assertThat(continued).isEqualTo(4);
    }

    private static double value(Liquid liquid, String property, double temperatureK) {
        return switch (property) {
            case "density" -> liquid.density(temperatureK);
            case "specific heat capacity" -> liquid.specificHeatCapacity(temperatureK);
            case "thermal conductivity" -> liquid.thermalConductivity(temperatureK);
            case "dynamic viscosity" -> liquid.dynamicViscosity(temperatureK);
            default -> throw new IllegalArgumentException(property);
        };
    }

    /**
     * The extract of a dry wine changes its density as the analysis of wine takes it to: 20 g/L are 0.0077 (from
     * memory).
     */
    @Test
    void extractMakesWineDenser() {
        double with = Beverage.wine(percentByVolume(12.5), gramsPerLitre(0)).density(ZERO + 20);
        double without = Beverage.wine(percentByVolume(12.5)).density(ZERO + 20);
        OutsideChecks.fromMemory(
                        "wine-extract-density",
                        "wine analysis: relative density of the residue, 1.0077 for 20 g/L of extract")
                .what("relative density of wine with 20 g/L extract over that without")
                .unit("1")
                .expected(1.0077)
                .within(0.0015)
                .check(with / without);
    }
}
