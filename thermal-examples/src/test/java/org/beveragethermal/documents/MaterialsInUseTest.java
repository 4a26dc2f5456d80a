/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.wattsPerKelvin;
import static org.beveragethermal.materials.units.Measures.wattsPerMetreKelvin;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.air.WaterSurface;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Composition;
import org.beveragethermal.materials.liquid.FoodComponent;
import org.beveragethermal.materials.units.Density;
import org.beveragethermal.materials.units.DynamicViscosity;
import org.beveragethermal.materials.units.HeatCapacity;
import org.beveragethermal.materials.units.HeatTransferCoefficient;
import org.beveragethermal.materials.units.Irradiance;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SpecificEnthalpy;
import org.beveragethermal.materials.units.SpecificHeatCapacity;
import org.beveragethermal.materials.units.TemperatureDifference;
import org.beveragethermal.materials.units.ThermalConductance;
import org.beveragethermal.materials.units.ThermalConductivity;
import org.beveragethermal.materials.units.ThermalUnits;
import org.beveragethermal.materials.vessel.InvertedProfile;
import org.beveragethermal.materials.vessel.LyingProfile;
import org.beveragethermal.materials.vessel.NominalVolumes;
import org.beveragethermal.materials.vessel.OuterParts;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Units, drinks by composition and outlines of vessels as a user meets them. */
class MaterialsInUseTest {

    @Test
    void quantitiesCarryTheirKind() {
        Quantity<ThermalConductivity> glass = wattsPerMetreKelvin(1.0);
        Quantity<HeatTransferCoefficient> film = wattsPerSquareMetreKelvin(8);
        Quantity<ThermalConductance> loss = wattsPerKelvin(0.5);
        Quantity<HeatCapacity> bottle = Measures.joulesPerKelvin(3500);
        Quantity<TemperatureDifference> swing = kelvinDifference(5);
        assertThat(glass.getUnit()).isEqualTo(ThermalUnits.WATT_PER_METRE_KELVIN);
        assertThat(film.getUnit()).isEqualTo(ThermalUnits.WATT_PER_SQUARE_METRE_KELVIN);
        assertThat(loss.getUnit()).isEqualTo(ThermalUnits.WATT_PER_KELVIN);
        assertThat(bottle.getUnit()).isEqualTo(ThermalUnits.JOULE_PER_KELVIN);
        // 5 K are 9 °F, and no offset comes in: a difference is no temperature.
        assertThat(swing.to(ThermalUnits.FAHRENHEIT_DIFFERENCE).getValue().doubleValue())
                .isCloseTo(9, within(1e-12));
        assertThat(celsius(5).to(ThermalUnits.FAHRENHEIT).getValue().doubleValue())
                .isCloseTo(41, within(1e-9));
    }

    @Test
    void unitsOfPropertiesAreThoseOfTheSi() {
        Unit<Density> density = ThermalUnits.KILOGRAM_PER_CUBIC_METRE;
        Unit<DynamicViscosity> viscosity = ThermalUnits.PASCAL_SECOND;
        Unit<SpecificHeatCapacity> heatCapacity = ThermalUnits.JOULE_PER_KILOGRAM_KELVIN;
        Unit<SpecificEnthalpy> enthalpy = ThermalUnits.JOULE_PER_KILOGRAM;
        Unit<Irradiance> irradiance = ThermalUnits.WATT_PER_SQUARE_METRE;
        assertThat(List.of(density, viscosity, heatCapacity, enthalpy, irradiance))
                .allSatisfy(unit ->
                        assertThat(unit.getSystemUnit().isCompatible(unit)).isTrue())
                .extracting(unit -> unit.getDimension())
                .doesNotHaveDuplicates();
    }

    @Test
    void aDrinkIsWhatIsInIt() {
        Composition composition = Composition.ofEthanolAndWater(0.10);
        assertThat(composition.ethanol()).isEqualTo(0.10);
        assertThat(composition.water()).isCloseTo(0.90, within(1e-12));
        assertThat(Beverage.of(Beverage.Kind.SPIRIT, composition).composition()).isEqualTo(composition);
        // Fat is lighter than water and takes less heat; ash and protein are heavier.
        assertThat(FoodComponent.FAT.density(293.15)).isLessThan(FoodComponent.WATER.density(293.15));
        assertThat(FoodComponent.FAT.specificHeatCapacity(293.15))
                .isLessThan(FoodComponent.WATER.specificHeatCapacity(293.15));
    }

    @Test
    void overSupercooledWaterThereIsMoreVapourThanOverIce() {
        assertThat(MoistAir.saturationPressure(263.15, WaterSurface.LIQUID))
                .isGreaterThan(MoistAir.saturationPressure(263.15, WaterSurface.ICE));
    }

    @Test
    void aBottleHoldsTheSameInAnyPosture() {
        Profile upright = Vessels.highShouldered750().profile();
        double held = 0.5e-3;
        LyingProfile lying = LyingProfile.of(upright);
        InvertedProfile inverted = InvertedProfile.of(upright);
        assertThat(lying.innerVolumeM3(lying.levelM(held))).isCloseTo(held, within(1e-8));
        assertThat(inverted.innerVolumeM3(inverted.levelM(held))).isCloseTo(held, within(1e-8));
        assertThat(inverted.levelM(held)).isNotCloseTo(lying.levelM(held), within(0.01));
    }

    @Test
    void sizesOfBottlesAreThoseOfTheLaw() {
        // Directive 2007/45/EC, annex, still wine: 750 mL is one of the sizes.
        assertThat(NominalVolumes.STILL_WINE.volumesM3()).contains(0.75e-3);
        assertThat(NominalVolumes.all()).contains(NominalVolumes.STILL_WINE);
    }

    @Test
    void aStemHasMassButHoldsNothing() {
        OuterParts stem = Vessels.of(VesselShape.WHITE_WINE_GLASS, Measures.millilitres(125))
                .outerParts()
                .orElseThrow();
        assertThat(stem.massKg()).isPositive();
        assertThat(stem.heightBelowM()).isPositive();
    }
}
