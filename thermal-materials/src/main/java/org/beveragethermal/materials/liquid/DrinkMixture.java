/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import java.util.stream.Stream;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * Water or ethanol-water with something dissolved or dispersed in it. The rules are ours and exact in both limits,
 * ethanol-water without sugar and sugar in water without ethanol:
 *
 * <ul>
 *   <li>specific volume: that of the solvent, plus what the sugar would add to as much water, plus that of the other
 *       components;
 *   <li>specific heat capacity and enthalpy: the same by mass;
 *   <li>conductivity: that of the solvent times the ratio sugar solution to water, then side by side with the other
 *       components by volume;
 *   <li>viscosity: that of the solvent times the ratio sugar solution to water, sugar and other extract counted alike,
 *       times the factor of Eilers for dispersed fat and swollen protein.
 * </ul>
 */
final class DrinkMixture implements Liquid {
    private static final ValidityRange RANGE = new ValidityRange("temperature of a drink", 253.15, 353.15, "K");

    private static final FoodComponent[] OTHERS = {
        FoodComponent.PROTEIN, FoodComponent.FAT, FoodComponent.CARBOHYDRATE, FoodComponent.ASH
    };

    // Eilers: relative viscosity (1 + 1.25 f/(1 - f/f_max))² of a dispersion with volume fraction f. The figures for
    // milk, f_max and the volume of swollen protein, are from memory of the dairy literature.
    private static final double EILERS = 1.25;
    static final double HIGHEST_PACKING = 0.79;
    static final double SWOLLEN_PROTEIN_M3_PER_KG = 3.9e-3;

    private static final Source MIXING = new Source(
            "mixing rules for drinks",
            "own mixing rules: additive specific volumes and heat capacities, ratios of sugar solution (ICUMSA SPS-4, Génotelle, sugar"
                    + " trade) to water for conductivity and viscosity; other components by Choi and Okos (ASHRAE Refrigeration, chapter"
                    + " 19); dispersed fat and protein by Eilers' formula",
            Source.Kind.OWN_ASSUMPTION);

    private final String name;
    private final Liquid solvent;
    private final SucroseSolution sugar;
    private final SucroseSolution sugarAndExtract;
    private final double serum;
    private final double solventInSerum;
    private final double[] others;
    private final double fat;
    private final double protein;
    private final List<PropertyRecord> properties;

    private DrinkMixture(String name, Composition composition) {
        this.name = name;
        this.solvent = solvent(composition);
        this.serum = composition.water() + composition.ethanol() + composition.sugar();
        this.solventInSerum = 1 - composition.sugar() / serum;
        this.sugar = SucroseSolution.ofMassFraction(composition.sugar() / serum);
        double extract = composition.sugar() + composition.carbohydrate();
        this.sugarAndExtract = SucroseSolution.ofMassFraction(extract / (serum + composition.carbohydrate()));
        this.others =
                new double[] {composition.protein(), composition.fat(), composition.carbohydrate(), composition.ash()};
        this.fat = composition.fat();
        this.protein = composition.protein();
        this.properties = records(solvent, composition);
    }

    private static Liquid solvent(Composition composition) {
        return composition.ethanol() == 0 ? Water.liquid() : new EthanolWater(composition.ethanolInSolvent());
    }

    /** The liquid of a composition: water and ethanol-water themselves where there is nothing else. */
    static Liquid of(String name, Composition composition) {
        return composition.solids() == 0 ? solvent(composition) : new DrinkMixture(name, composition);
    }

    private static List<PropertyRecord> records(Liquid solvent, Composition composition) {
        // Where fat and protein are dispersed, viscosity depends on how they are; with ethanol, the limits that the
        // rules meet are further off.
        boolean dispersed = composition.fat() + composition.protein() > 0.01;
        double viscosity = dispersed ? 0.4 : 0.15;
        double other = composition.ethanol() > 0 ? 0.03 : 0.02;
        // Choi and Okos's milk is 0.3 to 0.7 % lighter than measured; cream, whose fat sets in the cold, up to 2 %.
        double density = dispersed ? 0.008 + 0.04 * composition.fat() : 0.006;
        Stream<PropertyRecord> own = Stream.of(
                record("density", "kg/m³", density),
                record("specific heat capacity", "J/(kg K)", other),
                record("thermal conductivity", "W/(m K)", 0.04),
                record("dynamic viscosity", "Pa s", viscosity));
        return Stream.concat(solvent.properties().stream(), own).toList();
    }

    private static PropertyRecord record(String property, String unit, double relative) {
        return new PropertyRecord(property, unit, RANGE, Uncertainty.rectangularRelative(relative), MIXING);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public double density(double temperatureK) {
        return 1 / specificVolume(checked(temperatureK));
    }

    private double specificVolume(double temperatureK) {
        Water water = Water.liquid();
        double volume = serum
                * (solventInSerum * (1 / solvent.density(temperatureK) - 1 / water.density(temperatureK))
                        + 1 / sugar.density(temperatureK));
        for (int i = 0; i < others.length; i++) {
            volume += others[i] / OTHERS[i].density(temperatureK);
        }
        return volume;
    }

    @Override
    public double thermalExpansion(double temperatureK) {
        checked(temperatureK);
        Water water = Water.liquid();
        double slope = serum
                * (solventInSerum
                                * (solvent.thermalExpansion(temperatureK) / solvent.density(temperatureK)
                                        - water.thermalExpansion(temperatureK) / water.density(temperatureK))
                        + sugar.thermalExpansion(temperatureK) / sugar.density(temperatureK));
        for (int i = 0; i < others.length; i++) {
            slope += others[i] * OTHERS[i].thermalExpansion(temperatureK) / OTHERS[i].density(temperatureK);
        }
        return slope / specificVolume(temperatureK);
    }

    @Override
    public double specificHeatCapacity(double temperatureK) {
        checked(temperatureK);
        double sum = serum
                * (solventInSerum
                                * (solvent.specificHeatCapacity(temperatureK)
                                        - Water.liquid().specificHeatCapacity(temperatureK))
                        + sugar.specificHeatCapacity(temperatureK));
        for (int i = 0; i < others.length; i++) {
            sum += others[i] * OTHERS[i].specificHeatCapacity(temperatureK);
        }
        return sum;
    }

    @Override
    public double specificEnthalpy(double temperatureK) {
        checked(temperatureK);
        double sum = serum
                * (solventInSerum
                                * (solvent.specificEnthalpy(temperatureK)
                                        - Water.liquid().specificEnthalpy(temperatureK))
                        + sugar.specificEnthalpy(temperatureK));
        for (int i = 0; i < others.length; i++) {
            sum += others[i] * OTHERS[i].specificEnthalpy(temperatureK);
        }
        return sum;
    }

    @Override
    public double thermalConductivity(double temperatureK) {
        double volume = specificVolume(checked(temperatureK));
        double serumVolume = volume;
        double sum = 0;
        for (int i = 0; i < others.length; i++) {
            double part = others[i] / OTHERS[i].density(temperatureK);
            serumVolume -= part;
            sum += part * OTHERS[i].thermalConductivity(temperatureK);
        }
        double ofSerum = solvent.thermalConductivity(temperatureK)
                * sugar.thermalConductivity(temperatureK)
                / Water.liquid().thermalConductivity(temperatureK);
        return (sum + serumVolume * ofSerum) / volume;
    }

    @Override
    public double dynamicViscosity(double temperatureK) {
        checked(temperatureK);
        double ofSerum = solvent.dynamicViscosity(temperatureK)
                * sugarAndExtract.dynamicViscosity(temperatureK)
                / Water.liquid().dynamicViscosity(temperatureK);
        double dispersed = (fat / FoodComponent.FAT.density(temperatureK) + protein * SWOLLEN_PROTEIN_M3_PER_KG)
                / specificVolume(temperatureK);
        double root = 1 + EILERS * dispersed / (1 - dispersed / HIGHEST_PACKING);
        return ofSerum * root * root;
    }

    private static double checked(double temperatureK) {
        return RANGE.require(temperatureK, MIXING);
    }

    @Override
    public ValidityRange temperatureRange() {
        return RANGE;
    }

    @Override
    public List<PropertyRecord> properties() {
        return properties;
    }
}
