/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Names, ranges, refusals and the facts of single liquids. */
class LiquidTest {
    private static final List<ToDoubleBiFunction<Liquid, Double>> ALL = List.of(
            Liquid::density,
            Liquid::specificHeatCapacity,
            Liquid::thermalConductivity,
            Liquid::dynamicViscosity,
            Liquid::specificEnthalpy,
            Liquid::thermalExpansion,
            Liquid::kinematicViscosity,
            Liquid::thermalDiffusivity,
            Liquid::prandtlNumber);

    private static final List<Liquid> LIQUIDS = List.of(
            Water.liquid(),
            EthanolWater.ofMassFraction(0.1),
            Beverage.water(),
            Beverage.wine(percentByVolume(12.5)),
            Beverage.sparklingWine(percentByVolume(12)));

    @Test
    void everyPropertyIsFiniteAtBothEndsAndRefusedBeyond() {
        for (Liquid liquid : LIQUIDS) {
            ValidityRange range = liquid.temperatureRange();
            for (ToDoubleBiFunction<Liquid, Double> property : ALL) {
                assertThat(property.applyAsDouble(liquid, range.low())).isFinite();
                assertThat(property.applyAsDouble(liquid, range.high())).isFinite();
                assertThatThrownBy(() -> property.applyAsDouble(liquid, range.low() - 0.01))
                        .isInstanceOf(OutOfRangeException.class);
                assertThatThrownBy(() -> property.applyAsDouble(liquid, range.high() + 0.01))
                        .isInstanceOf(OutOfRangeException.class);
                assertThatThrownBy(() -> property.applyAsDouble(liquid, Double.NaN))
                        .isInstanceOf(IllegalArgumentException.class);
                assertThatThrownBy(() -> property.applyAsDouble(liquid, Double.POSITIVE_INFINITY))
                        .isInstanceOf(IllegalArgumentException.class);
            }
        }
    }

    @Test
    void enthalpyIsZeroAtZeroCelsius() {
        for (Liquid liquid : LIQUIDS) {
            assertThat(liquid.specificEnthalpy(273.15)).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void enthalpyOfWaterAgreesWithTheSteamTables() {
        // At 0.1 MPa, counted from 0 °C; the steam tables' own zero lies 0.1 kJ/kg away and is taken off.
        OutsideChecks.fromMemory("water-enthalpy-20-80", "IAPWS-IF97 steam tables, 0.1 MPa: 83.96 and 334.99 kJ/kg")
                .what("enthalpy of water at 80 °C less that at 20 °C")
                .unit("J/kg")
                .expected(251_030)
                .within(100)
                .check(Water.liquid().specificEnthalpy(353.15) - Water.liquid().specificEnthalpy(293.15));
    }

    @Test
    void everyLiquidSaysWhereItsPropertiesComeFrom() {
        for (Liquid liquid : LIQUIDS) {
            assertThat(liquid.name()).isNotBlank();
            assertThat(liquid.properties())
                    .extracting(PropertyRecord::property)
                    .contains("density", "specific heat capacity", "thermal conductivity", "dynamic viscosity");
        }
        assertThat(Beverage.wine(percentByVolume(12.5)).properties())
                .extracting(record -> record.source().key())
                .contains("extract left out", "continued above 40 °C");
    }

    @Test
    void namesAreReadable() {
        assertThat(Beverage.wine(percentByVolume(14.1)).name()).isEqualTo("wine, 14.1 % vol");
        assertThat(Beverage.sparklingWine(percentByVolume(12))).hasToString("sparkling wine, 12 % vol");
        assertThat(Beverage.water().name()).isEqualTo("water");
        assertThat(EthanolWater.ofMassFraction(0.125)).hasToString("ethanol-water, 12.5 % by mass");
    }

    @Test
    void mixturesOutsideTheirRangeAreRefused() {
        assertThatThrownBy(() -> EthanolWater.ofMassFraction(0.61)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> EthanolWater.ofMassFraction(-0.01)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> EthanolWater.ofMassFraction(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> EthanolWater.ofStrength(percentByVolume(70))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> EthanolWater.strengthFromMassFraction(1.01)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> EthanolWater.massFractionFromStrength(-0.01)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> EthanolWater.freezingPoint(0.7)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> EthanolWater.freezingTemperatureK(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Beverage.wine(percentByVolume(25.1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Beverage.sparklingWine(percentByVolume(-1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new FreezingPoint(0, EthanolWaterTables.LANGE))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new FreezingPoint(Double.NaN, EthanolWaterTables.LANGE))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theFreezingCurveIsTheWarmerOfItsSources() {
        for (double w = 0; w <= 0.39; w += 0.001) {
            double inUse = EthanolWater.freezingTemperatureK(w) - 273.15;
            assertThat(inUse).isBetween(EthanolWater.melinderFreezingCelsius(100 * w) - 1e-9, 1e-9);
        }
        assertThat(EthanolWater.freezingTemperatureK(0)).isEqualTo(273.15);
        // At 22.1 % Lange prints -12.2 °C, Melinder's polynomial is colder.
        assertThat(EthanolWater.freezingPoint(0.221).temperatureK()).isCloseTo(260.95, within(1e-9));
        assertThat(EthanolWater.freezingPoint(0.221).source()).isEqualTo(EthanolWaterTables.LANGE);
        assertThat(EthanolWater.freezingPoint(0.5).source()).isEqualTo(EthanolWaterTables.MELINDER);
    }

    @Test
    void wineFreezesWhereTheTradeSaysItDoes() {
        OutsideChecks.commonPractice("wine-freezing-onset")
                .what("freezing onset of wine of 12.5 % vol")
                .unit("°C")
                .between(-7, -4)
                .check(Beverage.wine(percentByVolume(12.5)).freezingOnsetK() - 273.15);
        assertThat(Beverage.water().freezingOnsetK()).isEqualTo(273.15);
    }

    @Test
    void beveragesKnowWhatTheyAre() {
        Beverage wine = Beverage.wine(percentByVolume(12.5));
        assertThat(wine.kind()).isEqualTo(Beverage.Kind.WINE);
        assertThat(wine.strengthByVolume()).isCloseTo(0.125, within(1e-15));
        assertThat(wine)
                .isEqualTo(Beverage.wine(percentByVolume(12.5)))
                .isNotEqualTo(Beverage.wine(percentByVolume(13)));
        assertThat(wine).isNotEqualTo(Beverage.sparklingWine(percentByVolume(12.5)));
        assertThat(wine.hashCode())
                .isEqualTo(Beverage.wine(percentByVolume(12.5)).hashCode());
        EthanolWater mixture = EthanolWater.ofStrength(percentByVolume(12.5));
        assertThat(mixture.strengthByVolume()).isCloseTo(0.125, within(1e-12));
        assertThat(mixture).isEqualTo(EthanolWater.ofMassFraction(mixture.massFraction()));
        assertThat(mixture.hashCode())
                .isEqualTo(EthanolWater.ofMassFraction(mixture.massFraction()).hashCode());
    }

    /** The default of the interface, which the liquids of this package replace by analytic formulas. */
    @Test
    void theDefaultExpansionIsCloseToTheAnalyticOne() {
        Water water = Water.liquid();
        Liquid plain = new DensityOnly(water);
        for (double t : new double[] {253.15, 277, 300, 383.15}) {
            assertThat(plain.thermalExpansion(t)).isCloseTo(water.thermalExpansion(t), within(2e-6));
        }
    }

    private record DensityOnly(Liquid water) implements Liquid {
        @Override
        public String name() {
            return "test";
        }

        @Override
        public double density(double temperatureK) {
            return water.density(temperatureK);
        }

        @Override
        public double specificHeatCapacity(double temperatureK) {
            return water.specificHeatCapacity(temperatureK);
        }

        @Override
        public double thermalConductivity(double temperatureK) {
            return water.thermalConductivity(temperatureK);
        }

        @Override
        public double dynamicViscosity(double temperatureK) {
            return water.dynamicViscosity(temperatureK);
        }

        @Override
        public double specificEnthalpy(double temperatureK) {
            return water.specificEnthalpy(temperatureK);
        }

        @Override
        public ValidityRange temperatureRange() {
            return water.temperatureRange();
        }

        @Override
        public List<PropertyRecord> properties() {
            return List.of();
        }
    }

    @Test
    void everyKindOfLiquidAllocatesNothing() {
        com.sun.management.ThreadMXBean threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        List<Liquid> liquids = List.of(
                Water.liquid(),
                EthanolWater.ofMassFraction(0.1),
                SucroseSolution.ofMassFraction(0.05),
                SucroseSolution.ofMassFraction(0.3),
                Brine.ofMassFraction(0.2));
        for (Liquid liquid : liquids) {
            sweep(liquid, 10_000);
        }
        for (Liquid liquid : liquids) {
            sweep(liquid, 10_000);
            long before = threads.getThreadAllocatedBytes(id);
            double sum = sweep(liquid, 10_000);
            long bytes = threads.getThreadAllocatedBytes(id) - before;
            assertThat(sum).isFinite();
            // A single object per call would be 80 000 objects of at least 16 bytes.
            assertThat(bytes).as(liquid.name()).isLessThan(100_000);
        }
    }

    private static double sweep(Liquid liquid, int calls) {
        double sum = 0;
        for (int i = 0; i < calls; i++) {
            double t = 260 + (liquid.temperatureRange().high() - 260) * i / calls;
            sum += liquid.density(t) + liquid.specificHeatCapacity(t) + liquid.thermalConductivity(t);
            sum += liquid.dynamicViscosity(t) + liquid.specificEnthalpy(t) + liquid.thermalExpansion(t);
            sum += liquid.prandtlNumber(t) + liquid.thermalDiffusivity(t);
        }
        return sum;
    }
}
