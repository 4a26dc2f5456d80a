/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import java.util.Optional;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * Own rule for a porous solid some of whose air has given way to water. Masses and heat capacities add up. The
 * conductivity is the geometric mean of solid, water and air by their volumes; as the dry solid obeys the same mean,
 * water in place of air raises it by the ratio of the two to the power of the volume of water.
 *
 * <p>How far off: samples of six kinds of brick, dry and soaked (Cabeza-Prieto et al., Materials 15 (2022) 4001), come
 * within 9 %. It fails where grains are good conductors and a little water bridges them: for concrete with 5 % of its
 * mass in water it is 40 % too low (1.16 to 2.71 W/(m K), IEA catalogue of material properties), for saturated sand two
 * thirds (0.24 to 2.5 W/(m K), Moene and van Dam 2014).
 *
 * <p>Uncertainties of the parts add by squares; the sum is stated as a rectangle of that standard uncertainty, as those
 * of the dry solids are, so that no draw turns negative.
 */
final class Wetting {
    /** Half-width, relative, for a solid that no pair of dry and wet was found for. */
    static final double DOUBT = 0.4;

    /** Half-width, relative, for fired clay. */
    static final double DOUBT_OF_FIRED_CLAY = 0.1;

    /** Where the water in the pores is liquid. */
    static final ValidityRange THAWED =
            new ValidityRange("temperature of a wet solid", 273.15, Solid.AMBIENT.high(), "K");

    static final double WATER_DENSITY = 998.2;
    static final double WATER_HEAT = 4184;
    static final double WATER_CONDUCTIVITY = 0.598;
    /** Relative, of the three figures of water (20 °C, IAPWS SR6-08) where it is some other temperature. */
    private static final double WATER_DOUBT = 0.02;

    private static final double AIR_CONDUCTIVITY = DryAir.thermalConductivity(293.15);

    private static final ValidityRange FRACTIONS = new ValidityRange("volume fraction of water", 0.01, 0.95, "1");
    /** Water has 0.96 (lists of emissivities), and a film of it hides what is below. */
    private static final double WET_EMISSIVITY = 0.95;

    private static final double WET_EMISSIVITY_DOUBT = 0.03;
    private static final double HALF_WIDTHS_PER_STANDARD = Math.sqrt(3);

    private Wetting() {}

    private static Source rule(Solid dry, Constant fraction) {
        return new Source(
                "own rule for wet solids",
                "own rule (heat capacity by mass, conductivity by the geometric mean of volumes) from " + dry.name()
                        + " and water at 20 °C (IAPWS SR6-08), volume fraction " + fraction.value() + ": "
                        + fraction.source().citation(),
                Source.Kind.OWN_ASSUMPTION);
    }

    static double conductivity(double dryConductivity, double waterFraction) {
        return dryConductivity * Math.pow(WATER_CONDUCTIVITY / AIR_CONDUCTIVITY, waterFraction);
    }

    static Solid wet(Solid dry, String name, Constant waterFraction, double doubtOfConductivity) {
        double fraction = FRACTIONS.require(waterFraction.value(), waterFraction.source());
        Source source = rule(dry, waterFraction);
        double waterMass = fraction * WATER_DENSITY;
        double waterMassSpread =
                rootOfSquares(waterFraction.standardUncertainty() * WATER_DENSITY, waterMass * WATER_DOUBT);
        return new Solid(
                name,
                density(dry.density(), name, waterMass, waterMassSpread, source),
                conductivity(dry.thermalConductivity(), name, waterFraction, doubtOfConductivity, source),
                specificHeat(dry, name, waterMass, waterMassSpread, source),
                new Constant(
                        "emissivity of " + name,
                        WET_EMISSIVITY,
                        "1",
                        Uncertainty.rectangular(WET_EMISSIVITY_DOUBT),
                        source),
                Optional.empty(),
                THAWED);
    }

    private static Constant density(
            Constant dry, String name, double waterMass, double waterMassSpread, Source source) {
        double spread = rootOfSquares(dry.standardUncertainty(), waterMassSpread);
        return constant("density of " + name, dry.value() + waterMass, "kg/m³", spread, source);
    }

    private static Constant conductivity(Constant dry, String name, Constant fraction, double doubt, Source source) {
        double wet = conductivity(dry.value(), fraction.value());
        double relativeSpread = rootOfSquares(
                dry.standardUncertainty() / dry.value(),
                Math.log(WATER_CONDUCTIVITY / AIR_CONDUCTIVITY) * fraction.standardUncertainty(),
                doubt / HALF_WIDTHS_PER_STANDARD);
        return constant("thermal conductivity of " + name, wet, "W/(m K)", wet * relativeSpread, source);
    }

    private static Constant specificHeat(
            Solid dry, String name, double waterMass, double waterMassSpread, Source source) {
        Constant dryMass = dry.density();
        Constant dryHeat = dry.specificHeatCapacity();
        double mass = dryMass.value() + waterMass;
        double wet = (dryMass.value() * dryHeat.value() + waterMass * WATER_HEAT) / mass;
        double spread = rootOfSquares(
                dryMass.value() / mass * dryHeat.standardUncertainty(),
                waterMass / mass * WATER_HEAT * WATER_DOUBT,
                (dryHeat.value() - wet) / mass * dryMass.standardUncertainty(),
                (WATER_HEAT - wet) / mass * waterMassSpread);
        return constant("specific heat capacity of " + name, wet, "J/(kg K)", spread, source);
    }

    private static Constant constant(
            String name, double value, String unit, double standardUncertainty, Source source) {
        return new Constant(
                name, value, unit, Uncertainty.rectangular(HALF_WIDTHS_PER_STANDARD * standardUncertainty), source);
    }

    private static double rootOfSquares(double... parts) {
        double squares = 0;
        for (double part : parts) {
            squares += part * part;
        }
        return Math.sqrt(squares);
    }
}
