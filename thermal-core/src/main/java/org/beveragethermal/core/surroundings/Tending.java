/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;

/**
 * What somebody does to a bath of ice and water, or to bare ice, at a moment: adds ice or water, pours water off, stirs.
 *
 * <p>All of it mixes the water of a bath, because poured water and dropped ice stir it; that is our simplification. Masses and enthalpy
 * are conserved: what is added brings its own, what is poured off or runs over the rim takes that of the mixed water along.
 */
public sealed interface Tending {

    /**
     * Ice is added, in blocks of the shape and size that those of the bath had at the start. What is left of the old blocks and the new
     * ones then count as equal blocks that together have the same volume and the same surface.
     *
     * @param massKg mass [kg], 0.01 to 2000
     * @param temperatureK temperature of the ice [K], 243.15 to 273.15
     */
    record AddIce(double massKg, double temperatureK) implements Tending {
        /**
         * Checks the numbers.
         *
         * @param massKg mass [kg]
         * @param temperatureK temperature of the ice [K]
         * @throws org.beveragethermal.materials.units.OutOfRangeException if a number is outside its range
         */
        public AddIce {
            require("mass of ice added", massKg);
            IceWaterBath.ICE_TEMPERATURE.require(temperatureK, IceWaterBath.OWN_CHOICE);
        }
    }

    /**
     * Water is added.
     *
     * @param massKg mass [kg], 0.01 to 2000
     * @param temperatureK temperature of the water [K], 273.15 to 333.15
     */
    record AddWater(double massKg, double temperatureK) implements Tending {
        /**
         * Checks the numbers.
         *
         * @param massKg mass [kg]
         * @param temperatureK temperature of the water [K]
         * @throws org.beveragethermal.materials.units.OutOfRangeException if a number is outside its range
         */
        public AddWater {
            require("mass of water added", massKg);
            IceWaterBath.WATER_TEMPERATURE.require(temperatureK, IceWaterBath.OWN_CHOICE);
        }
    }

    /**
     * Water is poured off, at the temperature of the mixed water.
     *
     * @param massKg mass [kg], 0.01 to 2000
     */
    record PourOff(double massKg) implements Tending {
        /**
         * Checks the number.
         *
         * @param massKg mass [kg]
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the mass is outside its range
         */
        public PourOff {
            require("mass of water poured off", massKg);
        }
    }

    /** The water is mixed, and nothing else. */
    record Stir() implements Tending {}

    private static void require(String what, double massKg) {
        new ValidityRange(what, IceWaterBath.LEAST_ICE_KG, IceWaterBath.MOST_KG, "kg")
                .require(massKg, IceWaterBath.OWN_CHOICE);
    }

    /**
     * Adding ice.
     *
     * @param mass mass, 10 g to 2000 kg
     * @param temperature temperature of the ice, −30 °C to 0 °C
     * @return what is done
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    static Tending addIce(Quantity<Mass> mass, Quantity<Temperature> temperature) {
        return new AddIce(
                SiValues.massKg(mass, "mass of ice added"),
                SiValues.temperatureK(temperature, "temperature of ice added"));
    }

    /**
     * Adding water.
     *
     * @param mass mass, 10 g to 2000 kg
     * @param temperature temperature of the water, 0 °C to 60 °C
     * @return what is done
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    static Tending addWater(Quantity<Mass> mass, Quantity<Temperature> temperature) {
        return new AddWater(
                SiValues.massKg(mass, "mass of water added"),
                SiValues.temperatureK(temperature, "temperature of water added"));
    }

    /**
     * Pouring water off.
     *
     * @param mass mass, 10 g to 2000 kg; a run refuses more than there is then
     * @return what is done
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the mass is outside its range
     */
    static Tending pourOff(Quantity<Mass> mass) {
        return new PourOff(SiValues.massKg(mass, "mass of water poured off"));
    }

    /**
     * Stirring once.
     *
     * @return what is done
     */
    static Tending stir() {
        return new Stir();
    }
}
