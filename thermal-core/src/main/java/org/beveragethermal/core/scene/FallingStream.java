/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.Radiation;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;

/**
 * How much a stream exchanges with the air while it falls from one vessel into another, as when a bottle is decanted. Scenes leave it out;
 * this says how much that is.
 *
 * <p>A round stream of the flow that is poured leaves the lip at {@value #LIP_SPEED} m/s (own assumption) and falls freely, thinner as it gets
 * faster. Its surface is taken to exchange heat as a cylinder of its diameter across air of its speed (Churchill and Bernstein), which is
 * more than air along it gives, and to radiate. A bottle of wine decanted in a minute through 20 cm loses about 0.3 % of its difference to the
 * air. Evaporation is not in it: at the temperatures of wine that is as much again or less, for a drink near boiling some times as much (own
 * estimate). A stream that breaks into drops or spreads into a sheet over the wall of a decanter exchanges up to some times more.
 * Uncertainty: a factor of three either way (own judgement).
 */
public final class FallingStream {

    private static final double LIP_SPEED = 0.3;
    private static final double LIQUID_EMISSIVITY = 0.96;
    private static final int PARTS = 200;
    private static final ValidityRange AIR = new ValidityRange("air around a stream", 233.15, 373.15, "K");
    private static final ValidityRange SECONDS = new ValidityRange("duration of pouring", 0.1, 3600, "s");

    private FallingStream() {}

    /**
     * Part of the temperature difference to the air that a stream loses while it falls, without evaporation.
     *
     * @param drink what is poured
     * @param drinkK its temperature [K], within the range of the liquid
     * @param airK temperature of the air [K], 233.15 to 373.15
     * @param volume how much is poured, 1 mL to 100 L
     * @param lasting how long it takes, 0.1 s to an hour
     * @param fall how far it falls, 1 mm to 2 m
     * @return part [-], 0 to 1
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a number is outside its range
     */
    public static double exchangedPart(
            Liquid drink,
            double drinkK,
            double airK,
            Quantity<Volume> volume,
            Duration lasting,
            Quantity<Length> fall) {
        drink.temperatureRange().require(drinkK, "falling stream");
        AIR.require(airK, "falling stream");
        double flow = SiValues.volumeM3(volume, "volume poured", 1e-6, 0.1)
                / SECONDS.require(lasting.toMillis() / 1000.0, "falling stream");
        double height = SiValues.lengthM(fall, "height of the fall", 1e-3, 2);
        double filmK = 0.5 * (drinkK + airK);
        double radiative = 4 * LIQUID_EMISSIVITY * Radiation.STEFAN_BOLTZMANN * filmK * filmK * filmK;
        double exponent = 0;
        for (int part = 0; part < PARTS; part++) {
            double fallen = height * (part + 0.5) / PARTS;
            double speed = Math.sqrt(LIP_SPEED * LIP_SPEED + 2 * ConvectiveFilm.GRAVITY * fallen);
            double diameter = Math.sqrt(4 * flow / (Math.PI * speed));
            double reynolds = speed * diameter / DryAir.kinematicViscosity(filmK, DryAir.STANDARD_PRESSURE_PA);
            double coefficient = radiative
                    + DryAir.thermalConductivity(filmK)
                            / diameter
                            * CrossflowCylinder.churchillBernstein(reynolds, DryAir.prandtlNumber(filmK));
            exponent += coefficient * Math.PI * diameter * height / PARTS;
        }
        double capacityFlow = flow * drink.density(drinkK) * drink.specificHeatCapacity(drinkK);
        return -Math.expm1(-exponent / capacityFlow);
    }
}
