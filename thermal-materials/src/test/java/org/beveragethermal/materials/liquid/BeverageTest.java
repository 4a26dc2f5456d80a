/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.lang.management.ManagementFactory;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Drinks as what they are made of: limits, order, refusals. */
class BeverageTest {
    private static final double ZERO = 273.15;

    /** One of every kind. */
    static List<Beverage> all() {
        return List.of(
                Beverage.water(),
                Beverage.wine(percentByVolume(13), gramsPerLitre(3)),
                Beverage.sparklingWine(percentByVolume(12), gramsPerLitre(8)),
                Beverage.fortifiedWine(percentByVolume(20), gramsPerLitre(100)),
                Beverage.sweetWine(percentByVolume(11), gramsPerLitre(150)),
                Beverage.vermouth(percentByVolume(16), gramsPerLitre(150)),
                Beverage.cider(percentByVolume(5), gramsPerLitre(20)),
                Beverage.beer(percentByVolume(5)),
                Beverage.lowAlcoholWine(percentByVolume(0.3), gramsPerLitre(40)),
                Beverage.lowAlcoholBeer(percentByVolume(0.5), gramsPerLitre(60)),
                Beverage.sake(percentByVolume(15)),
                Beverage.spirit(percentByVolume(40)),
                Beverage.liqueur(percentByVolume(20), gramsPerLitre(300)),
                Beverage.creamLiqueur(percentByVolume(17), gramsPerLitre(200), percent(15)),
                Beverage.softDrink(gramsPerLitre(105)),
                Beverage.juice(percent(11)),
                Beverage.milk(percent(3.6)),
                Beverage.tea(),
                Beverage.coffee(),
                Beverage.mulledWine(percentByVolume(10), gramsPerLitre(80)));
    }

    @Test
    void thereIsAFactoryForEveryKind() {
        Set<Beverage.Kind> kinds = all().stream().map(Beverage::kind).collect(Collectors.toSet());
        assertThat(kinds).isEqualTo(EnumSet.allOf(Beverage.Kind.class));
    }

    @Test
    void everyDrinkIsWhatItsLabelSays() {
        Beverage wine = Beverage.sweetWine(percentByVolume(11), gramsPerLitre(150));
        double density = wine.density(ZERO + 20);
        Composition c = wine.composition();
        assertThat(c.invertSugar() * density).isCloseTo(150, within(1e-9));
        assertThat(c.carbohydrate() * density).isCloseTo(Beverage.SUGAR_FREE_EXTRACT_OF_WINE, within(1e-9));
        // A litre holds 110 mL of ethanol of 789.24 g/L (OIML R 22).
        assertThat(c.ethanol() * density).isCloseTo(0.11 * 789.24, within(1e-3));
        assertThat(wine.name()).isEqualTo("sweet wine, 11 % vol, 150 g/L sugar");
        assertThat(Beverage.beer(percentByVolume(5)).name()).isEqualTo("beer, 5 % vol");
        assertThat(Beverage.milk(percent(3.6)).name()).isEqualTo("milk");
        assertThat(Beverage.beer(percentByVolume(5))).isEqualTo(Beverage.beer(percentByVolume(5), gramsPerLitre(40)));
    }

    @Test
    void strengthAndCompositionAgree() {
        for (Beverage beverage : all()) {
            Beverage again = Beverage.of(beverage.kind(), beverage.composition());
            assertThat(again.strengthByVolume()).isCloseTo(beverage.strengthByVolume(), within(1e-10));
            assertThat(again).isEqualTo(beverage).hasSameHashCodeAs(beverage);
            assertThat(again.name()).isEqualTo(beverage.name());
        }
    }

    @Test
    void withoutSugarADrinkIsEthanolWaterItself() {
        Beverage spirit = Beverage.spirit(percentByVolume(40));
        Beverage liqueur = Beverage.liqueur(percentByVolume(40), gramsPerLitre(0));
        EthanolWater mixture = EthanolWater.ofStrength(percentByVolume(40));
        Beverage soft = Beverage.softDrink(gramsPerLitre(0));
        for (double t = 253.15; t <= 353.15; t += 10) {
            assertThat(spirit.density(t)).isEqualTo(mixture.density(t)).isEqualTo(liqueur.density(t));
            assertThat(spirit.dynamicViscosity(t)).isEqualTo(mixture.dynamicViscosity(t));
            assertThat(soft.specificHeatCapacity(t)).isEqualTo(Water.liquid().specificHeatCapacity(t));
        }
        assertThat(spirit.freezingOnsetK()).isEqualTo(EthanolWater.freezingTemperatureK(mixture.massFraction()));
    }

    /** In the other limit, and for a trace of either, the mixing rules must meet what they are made from. */
    @Test
    void mixingMeetsItsLimits() {
        SucroseSolution solution = SucroseSolution.ofMassFraction(0.2);
        Beverage sweet = Beverage.of(Beverage.Kind.SOFT_DRINK, new Composition(0.8, 0, 0.2, 0, 0, 0, 0, 0, 0));
        double trace = 1e-7;
        EthanolWater mixture = EthanolWater.ofMassFraction(0.1);
        Beverage nearly = Beverage.of(
                Beverage.Kind.WINE, new Composition(0.9 * (1 - trace), 0.1 * (1 - trace), 0, trace, 0, 0, 0, 0, 0));
        for (double t = 253.15; t <= 353.15; t += 10) {
            assertThat(sweet.density(t)).isCloseTo(solution.density(t), within(1e-9));
            assertThat(sweet.specificHeatCapacity(t)).isCloseTo(solution.specificHeatCapacity(t), within(1e-9));
            assertThat(sweet.thermalConductivity(t)).isCloseTo(solution.thermalConductivity(t), within(1e-12));
            assertThat(sweet.dynamicViscosity(t) / solution.dynamicViscosity(t)).isCloseTo(1, within(1e-12));
            assertThat(nearly.density(t) / mixture.density(t)).isCloseTo(1, within(1e-6));
            assertThat(nearly.specificHeatCapacity(t) / mixture.specificHeatCapacity(t))
                    .isCloseTo(1, within(1e-6));
            assertThat(nearly.thermalConductivity(t) / mixture.thermalConductivity(t))
                    .isCloseTo(1, within(1e-6));
            assertThat(nearly.dynamicViscosity(t) / mixture.dynamicViscosity(t)).isCloseTo(1, within(1e-5));
        }
        assertThat(sweet.freezingOnsetK()).isCloseTo(solution.freezingTemperatureK(), within(1e-9));
    }

    @Test
    void wineIsNotWater() {
        Beverage wine = Beverage.wine(percentByVolume(12.5));
        Water water = Water.liquid();
        double t = ZERO + 5;
        assertThat(wine.specificHeatCapacity(t)).isGreaterThan(water.specificHeatCapacity(t));
        assertThat(wine.thermalConductivity(t)).isLessThan(0.95 * water.thermalConductivity(t));
        assertThat(wine.dynamicViscosity(t)).isGreaterThan(1.4 * water.dynamicViscosity(t));
        assertThat(wine.thermalExpansion(t)).isGreaterThan(water.thermalExpansion(t) + 5e-5);
    }

    @Test
    void greatestDensityMovesDownWithStrength() {
        OutsideChecks.published(
                        "wine-greatest-density",
                        "OIML R 22 (1975), general formula, evaluated independently: -0.6 °C at 12.5 % vol (rounded)")
                .what("temperature of greatest density at 12.5 % vol")
                .unit("°C")
                .expected(-0.6)
                .within(0.05)
                .check(greatestDensityCelsius(Beverage.wine(percentByVolume(12.5))));
        OutsideChecks.published(
                        "weak-wine-greatest-density",
                        "OIML R 22 (1975), general formula, evaluated independently: +3.3 °C at 5 % vol (rounded)")
                .what("temperature of greatest density at 5 % vol")
                .unit("°C")
                .expected(3.3)
                .within(0.05)
                .check(greatestDensityCelsius(Beverage.wine(percentByVolume(5))));
        // Extract and sugar push it further down, as any solute does.
        assertThat(greatestDensityCelsius(Beverage.wine(percentByVolume(12.5), gramsPerLitre(5))))
                .isBetween(-2.0, -0.6);
    }

    private static double greatestDensityCelsius(Liquid liquid) {
        double low = ZERO - 15;
        double high = ZERO + 10;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (liquid.thermalExpansion(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low - ZERO;
    }

    @Test
    void gasIsKeptApartFromTheMasses() {
        Beverage flat = Beverage.cider(percentByVolume(5), gramsPerLitre(20));
        Beverage sparkling = flat.withCarbonDioxide(gramsPerLitre(6));
        assertThat(sparkling.density(280)).isEqualTo(flat.density(280));
        assertThat(sparkling).isNotEqualTo(flat);
        assertThat(sparkling.composition().carbonDioxideKgPerM3()).isEqualTo(6);
        assertThat(sparkling.strengthByVolume()).isEqualTo(flat.strengthByVolume());
        assertThat(Beverage.sparklingWine(percentByVolume(12), gramsPerLitre(8), gramsPerLitre(10))
                        .composition()
                        .carbonDioxideKgPerM3())
                .isEqualTo(10);
        assertThat(flat.carbonDioxide().orElseThrow()).hasToString("carbon dioxide in wine");
        assertThat(Beverage.beer(percentByVolume(5)).carbonDioxide().orElseThrow())
                .hasToString("carbon dioxide in beer");
        assertThat(Beverage.softDrink(gramsPerLitre(90)).carbonDioxide().orElseThrow())
                .hasToString("carbon dioxide in water");
        assertThat(Beverage.spirit(percentByVolume(40)).carbonDioxide()).isEmpty();
    }

    /** The legal least excess pressure of sparkling wine is 3 bar at 20 °C (Regulation 1308/2013, annex VII). */
    @Test
    void sparklingWineIsAboveItsLegalPressure() {
        Beverage wine = Beverage.sparklingWine(percentByVolume(12.5), gramsPerLitre(10));
        double gauge = wine.carbonDioxide()
                .orElseThrow()
                .gaugePressure(wine.composition().carbonDioxideKgPerM3(), 0.033, ZERO + 20);
        assertThat(gauge).isBetween(3e5, 8e5);
    }

    @Test
    void everyDrinkNamesItsSources() {
        for (Beverage beverage : all()) {
            Set<String> properties =
                    beverage.properties().stream().map(PropertyRecord::property).collect(Collectors.toSet());
            assertThat(properties)
                    .as(beverage.name())
                    .contains("density", "specific heat capacity", "thermal conductivity", "dynamic viscosity");
        }
        assertThat(Beverage.creamLiqueur(percentByVolume(17), gramsPerLitre(200), percent(15)).properties().stream()
                        .map(record -> record.source().key()))
                .contains("mixing rules for drinks", "continued above 40 °C");
    }

    @Test
    void creamAndProteinThicken() {
        double t = ZERO + 20;
        double plain = Beverage.liqueur(percentByVolume(17), gramsPerLitre(200)).dynamicViscosity(t);
        double lean = Beverage.creamLiqueur(percentByVolume(17), gramsPerLitre(200), percent(5))
                .dynamicViscosity(t);
        double rich = Beverage.creamLiqueur(percentByVolume(17), gramsPerLitre(200), percent(18))
                .dynamicViscosity(t);
        assertThat(plain).isLessThan(lean);
        assertThat(lean).isLessThan(rich);
        // The richest mixture a composition allows is still a liquid.
        Beverage richest = Beverage.of(Beverage.Kind.MILK, new Composition(0.54, 0, 0, 0, 0.06, 0.4, 0, 0, 0));
        assertThat(richest.dynamicViscosity(t)).isPositive().isLessThan(1);
    }

    /**
     * The two wines without sugar, the one of the label alone and the one with its extract, must lie within what the former
     * says it does not know.
     */
    @Test
    void plainAndDryWineAgreeWithinTheStatedUncertainty() {
        for (double strength : new double[] {9, 12.5, 15}) {
            Beverage plain = Beverage.wine(percentByVolume(strength));
            Beverage dry = Beverage.dryWine(percentByVolume(strength));
            assertThat(dry).isEqualTo(Beverage.wine(percentByVolume(strength), gramsPerLitre(0)));
            assertThat(plain.composition().carbohydrate()).isZero();
            assertThat(dry.name()).isEqualTo("dry " + plain.name());
            for (double t = ZERO - 10; t <= ZERO + 80; t += 10) {
                assertAgrees(plain, "density", plain.density(t), dry.density(t));
                assertAgrees(
                        plain, "specific heat capacity", plain.specificHeatCapacity(t), dry.specificHeatCapacity(t));
                assertAgrees(plain, "thermal conductivity", plain.thermalConductivity(t), dry.thermalConductivity(t));
                assertAgrees(plain, "dynamic viscosity", plain.dynamicViscosity(t), dry.dynamicViscosity(t));
            }
            assertAgrees(plain, "freezing temperature", plain.freezingOnsetK(), dry.freezingOnsetK());
            assertThat(dry.freezingOnsetK()).isLessThan(plain.freezingOnsetK());
        }
    }

    private static void assertAgrees(Beverage plain, String property, double without, double with) {
        PropertyRecord leftOut = plain.properties().stream()
                .filter(record -> record.property().equals(property)
                        && record.source().key().equals("extract left out"))
                .findFirst()
                .orElseThrow();
        assertThat(with)
                .as(plain + ", " + property)
                .isCloseTo(without, within(Math.sqrt(3) * leftOut.uncertainty().standardUncertainty(without)));
    }

    /** A refusal names the property, what was given, what is allowed and who says so, in the units of labels. */
    @Test
    void refusalsNameEverything() {
        assertRefused(
                () -> Beverage.wine(percentByVolume(140)),
                "alcoholic strength 140 % vol: expected 0 % vol to 25 % vol (limits of drinks)");
        assertRefused(
                () -> Beverage.sweetWine(percentByVolume(12), gramsPerLitre(-3)),
                "sugar -3 g/L: expected 0 g/L to 400 g/L (limits of drinks)");
        assertRefused(
                () -> Beverage.milk(percent(55)),
                "fat 55 % by mass: expected 0 % by mass to 40 % by mass (limits of drinks)");
        assertRefused(
                () -> CarbonDioxide.inWine(percentByVolume(40), gramsPerLitre(0)),
                "alcoholic strength 40 % vol: expected 0 % vol to 25 % vol (Regulation 2676/90)");
        assertRefused(
                () -> Beverage.wine(percentByVolume(12)).density(400),
                "temperature of ethanol-water 400 K: expected 253.15 K to 353.15 K (continued above 40 °C)");
        assertRefused(
                () -> Beverage.wine(percentByVolume(12)).thermalConductivity(250),
                "temperature of ethanol-water 250 K: expected 253.15 K to 353.15 K (OIML R 22)");
        assertRefused(
                () -> Beverage.water().density(250),
                "water temperature 250 K: expected 253.15 K to 383.15 K (IAPWS SR6-08)");
        assertThatThrownBy(() -> Beverage.spirit(percentByVolume(90)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("Melinder 2010");
        assertThatThrownBy(() -> Beverage.softDrink(gramsPerLitre(Double.NaN)))
                .isInstanceOf(IllegalArgumentException.class);
        // For programs.
        OutOfRangeException refusal =
                catchThrowableOfType(OutOfRangeException.class, () -> Beverage.wine(percentByVolume(140)));
        assertThat(refusal.parameter()).isEqualTo("alcoholic strength");
        assertThat(refusal.given()).isCloseTo(140, within(1e-9));
        assertThat(refusal.high()).isEqualTo(25);
        assertThat(refusal.unit()).isEqualTo("% vol");
    }

    private static void assertRefused(ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(OutOfRangeException.class).hasMessage(message);
    }

    /** The warmer of two published curves begins the freezing, and the answer says which. */
    @Test
    void freezingSaysWhichCurveSetIt() {
        // Lange: 17 % vol (13.8 % by mass) at -6.1 °C, where Melinder's polynomial has -6.6; beyond 39 % by mass Lange
        // ends.
        FreezingPoint fortified = Beverage.spirit(percentByVolume(17)).freezingOnset();
        assertThat(fortified.source().key()).isEqualTo("Lange 5.13");
        assertThat(fortified.temperatureK() - ZERO).isCloseTo(-6.1, within(0.05));
        assertThat(Beverage.spirit(percentByVolume(60)).freezingOnset().source().key())
                .isEqualTo("Melinder 2010");
        assertThat(Beverage.fortifiedWine(percentByVolume(17), gramsPerLitre(80))
                        .freezingOnset()
                        .source()
                        .citation())
                .contains("Lange 5.13")
                .contains("Goff-Hartel");
        assertThat(Beverage.softDrink(gramsPerLitre(100))
                        .freezingOnset()
                        .source()
                        .key())
                .isEqualTo("Goff-Hartel 2013");
        assertThat(FreezingCurve.of(Beverage.spirit(percentByVolume(17))).onset())
                .isEqualTo(fortified);
    }

    /** Everything a program can ask where it comes from. */
    @Test
    void everyTableAndConstantHasItsSource() {
        for (Constant constant : Beverage.usualContents()) {
            assertThat(constant.value()).isPositive();
            assertThat(constant.standardUncertainty()).as(constant.name()).isPositive();
        }
        assertThat(Beverage.usualContents())
                .extracting(Constant::value)
                .contains(
                        Beverage.SUGAR_FREE_EXTRACT_OF_WINE,
                        Beverage.SUGAR_FREE_EXTRACT_OF_CIDER,
                        Beverage.REAL_EXTRACT_OF_BEER,
                        Beverage.EXTRACT_OF_SAKE,
                        Beverage.CARBON_DIOXIDE_OF_SPARKLING_WINE,
                        Beverage.CARBON_DIOXIDE_OF_BEER);
        assertThat(Beverage.usualContents()).extracting(Constant::name).doesNotHaveDuplicates();
        assertThat(FoodComponent.properties())
                .extracting(PropertyRecord::property)
                .containsExactly("density", "specific heat capacity", "thermal conductivity");
        assertThat(Salt.properties())
                .extracting(PropertyRecord::property)
                .contains("density", "specific heat capacity", "solubility");
        assertThat(SucroseSolution.ofMassFraction(0.1).properties())
                .extracting(record -> record.source().key())
                .contains("ideal molar scaling", "Goff-Hartel 2013", "ICUMSA SPS-4", "Génotelle 1978");
        assertThat(Brine.ofMassFraction(0.1).properties())
                .extracting(PropertyRecord::property)
                .contains("freezing temperature", "heat of solution");
        assertThat(CarbonDioxide.inWater().properties())
                .extracting(record -> record.source().key())
                .containsExactly("Weiss 1974", "IAPWS G7-04");
        assertThat(CarbonDioxide.inWine(percentByVolume(12), gramsPerLitre(0)).properties())
                .extracting(record -> record.source().key())
                .containsExactly("Regulation 2676/90", "CO2 enthalpy range");
        for (Beverage beverage : all()) {
            assertThat(beverage.properties())
                    .as(beverage.name())
                    .extracting(PropertyRecord::property)
                    .contains(beverage.equals(Beverage.water()) ? "density" : "freezing temperature");
            for (PropertyRecord record : beverage.properties()) {
                assertThat(record.uncertainty().standardUncertainty(300)).isPositive();
            }
        }
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> Beverage.wine(percentByVolume(140)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("alcoholic strength")
                .hasMessageContaining("140")
                .hasMessageContaining("25");
        assertThatThrownBy(() -> Beverage.wine(percentByVolume(12), gramsPerLitre(-1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("sugar")
                .hasMessageContaining("-1");
        assertThatThrownBy(() -> Beverage.juice(percent(90)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("soluble solids");
        assertThatThrownBy(() -> Beverage.milk(percent(-2)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("fat");
        assertThatThrownBy(() -> Beverage.lowAlcoholBeer(percentByVolume(5), gramsPerLitre(40)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Beverage.lowAlcoholWine(percentByVolume(12), gramsPerLitre(4)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Beverage.spirit(percentByVolume(90))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Beverage.liqueur(percentByVolume(55), gramsPerLitre(500)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Beverage.beer(percentByVolume(5)).withCarbonDioxide(gramsPerLitre(99)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("carbon dioxide");
        assertThatThrownBy(() -> Beverage.sweetWine(percentByVolume(11), gramsPerLitre(150))
                        .density(400))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("temperature of a drink");
    }

    @Test
    void refusesCompositionsThatDoNotAddUp() {
        assertThatThrownBy(() -> new Composition(0.5, 0.1, 0.1, 0, 0, 0, 0, 0, 0))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("sum of the mass fractions")
                .hasMessageContaining("0.7");
        assertThatThrownBy(() -> new Composition(1.1, 0, -0.1, 0, 0, 0, 0, 0, 0))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("water");
        assertThatThrownBy(() -> new Composition(0.9, 0, -0.1, 0.2, 0, 0, 0, 0, 0))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("sucrose");
        assertThatThrownBy(() -> new Composition(0.2, 0.8, 0, 0, 0, 0, 0, 0, 0))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("ethanol");
        assertThatThrownBy(() -> new Composition(0.3, 0, 0.7, 0, 0, 0, 0, 0, 0))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("sugar");
        assertThatThrownBy(() -> new Composition(Double.NaN, 0, 0, 0, 0, 0, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Composition.ofWater().withCarbonDioxide(-1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> FoodComponent.FAT.density(500)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void everyKindOfDrinkAllocatesNothing() {
        com.sun.management.ThreadMXBean threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        List<FreezingCurve> curves = all().stream().map(FreezingCurve::of).toList();
        for (FreezingCurve curve : curves) {
            sweep(curve, 2_000);
        }
        long id = Thread.currentThread().getId();
        for (FreezingCurve curve : curves) {
            sweep(curve, 2_000);
            long before = threads.getThreadAllocatedBytes(id);
            double sum = sweep(curve, 2_000);
            long bytes = threads.getThreadAllocatedBytes(id) - before;
            assertThat(sum).isFinite();
            // A single object per call would be 20 000 objects of at least 16 bytes.
            assertThat(bytes).as(curve.toString()).isLessThan(60_000);
        }
    }

    private static double sweep(FreezingCurve curve, int calls) {
        Beverage drink = curve.beverage();
        double sum = 0;
        for (int i = 0; i < calls; i++) {
            double t = 260 + 80.0 * i / calls;
            sum += drink.density(t) + drink.specificHeatCapacity(t) + drink.thermalConductivity(t);
            sum += drink.dynamicViscosity(t) + drink.specificEnthalpy(t) + drink.thermalExpansion(t);
            double cold = 250 + 15.0 * i / calls;
            sum += curve.iceFraction(cold) + curve.specificEnthalpyWithIce(cold);
            sum += curve.apparentHeatCapacity(cold) + curve.specificVolume(cold);
        }
        return sum;
    }
}
