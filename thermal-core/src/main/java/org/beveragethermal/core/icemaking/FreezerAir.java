/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.icemaking;

import javax.measure.Quantity;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.correlation.FlatPlate;
import org.beveragethermal.core.correlation.Radiation;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.units.SiValues;

/**
 * The air of a freezer around moulds of water: its temperature, which the walls share, and how fast a fan moves it.
 *
 * <p>The film is that of an upright plate (Churchill and Chu 1975), whatever face it lies on, with the stream of a flat plate (Pohlhausen
 * 1921) added by fourth powers, and radiation of an emissivity of 0.9; our choice, known to 25 %. Trays that stand close, frost, and a
 * door that is opened make it less. Immutable.
 *
 * @param temperatureK temperature of air and walls [K], 233.15 to 272.15
 * @param speedMPerS speed of the air [m/s], 0 to 20
 */
public record FreezerAir(double temperatureK, double speedMPerS) {

    private static final double COLDEST_K = 233.15;
    private static final double WARMEST_K = 272.15;
    private static final double FASTEST = 20;
    /** Water, ice, plastic and frost alike; from memory. */
    private static final double EMISSIVITY = 0.9;

    /**
     * Checks the air.
     *
     * @param temperatureK temperature of air and walls [K], 233.15 to 272.15
     * @param speedMPerS speed of the air [m/s], 0 to 20
     * @throws IllegalArgumentException if a number is outside its range
     */
    public FreezerAir {
        if (!(temperatureK >= COLDEST_K && temperatureK <= WARMEST_K)) {
            throw new IllegalArgumentException(
                    "freezer of " + temperatureK + " K: expected " + COLDEST_K + " K to " + WARMEST_K + " K");
        }
        if (!(speedMPerS >= 0 && speedMPerS <= FASTEST)) {
            throw new IllegalArgumentException("air of " + speedMPerS + " m/s: expected 0 to " + FASTEST + " m/s");
        }
    }

    /**
     * Still air.
     *
     * @param temperature −40 °C to −1 °C
     * @return the air
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public static FreezerAir at(Quantity<Temperature> temperature) {
        return new FreezerAir(SiValues.temperatureK(temperature, "freezer temperature", COLDEST_K, WARMEST_K), 0);
    }

    /**
     * The same freezer with a fan.
     *
     * @param speed speed of the air at the moulds, 0 to 20 m/s
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the speed is outside its range
     */
    public FreezerAir withFan(Quantity<Speed> speed) {
        return new FreezerAir(temperatureK, SiValues.speedMPerS(speed, "speed of the air in a freezer", 0, FASTEST));
    }

    /**
     * Heat transfer coefficient of film and radiation.
     *
     * @param lengthM length of the film [m], > 0
     * @param surfaceK temperature of the surface [K], > 0
     * @return coefficient [W/(m² K)]
     * @throws IllegalArgumentException if a number is not finite or not positive
     */
    public double coefficient(double lengthM, double surfaceK) {
        if (!(surfaceK > 0 && surfaceK < Double.MAX_VALUE)) {
            throw new IllegalArgumentException("surface of " + surfaceK + " K: expected a finite value above 0");
        }
        double convection = ConvectiveFilm.free(
                        1, lengthM, Fluid.air(DryAir.STANDARD_PRESSURE_PA), VerticalPlate.CHURCHILL_CHU)
                .withStream(speedMPerS, lengthM, FlatPlate.LAMINAR)
                .describe(temperatureK, surfaceK)
                .coefficient();
        double sum = temperatureK + surfaceK;
        double squares = temperatureK * temperatureK + surfaceK * surfaceK;
        return convection + EMISSIVITY * Radiation.STEFAN_BOLTZMANN * sum * squares;
    }
}
