/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.icemaking;

import java.time.Duration;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.ThermalConductance;
import org.beveragethermal.materials.vessel.FilledVessel;

/** What ice is worth by energy alone: bounds to set beside a prediction, which always needs more. */
public final class IceBalance {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double COLDEST_ICE_K = 243.15;
    private static final double WARMEST_K = 373.15;
    private static final int STEPS = 20;

    private IceBalance() {}

    /**
     * Heat to take from a vessel and its contents, wall included, until all of it is as cold as wanted.
     *
     * @param vessel the vessel at its temperature at the start
     * @param toK temperature at the end [K], not below the freezing point of the contents
     * @return heat [J]; 0 if it is that cold already
     * @throws IllegalArgumentException if the temperature is outside the range of the contents
     */
    public static double heatJ(FilledVessel vessel, double toK) {
        return drinkHeatJ(vessel, toK)
                + Math.max(0, vessel.temperatureK() - toK)
                        * vessel.vessel().emptyMassKg()
                        * vessel.vessel().wall().specificHeatCapacity().value();
    }

    /**
     * Heat to take from the contents of a vessel alone.
     *
     * @param vessel the vessel at its temperature at the start
     * @param toK temperature at the end [K], not below the freezing point of the contents
     * @return heat [J]; 0 if they are that cold already
     * @throws IllegalArgumentException if the temperature is outside the range of the contents
     */
    public static double drinkHeatJ(FilledVessel vessel, double toK) {
        double fromK = vessel.temperatureK();
        if (fromK <= toK) {
            return 0;
        }
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            sum += vessel.liquid().specificHeatCapacity(toK + (i + 0.5) / STEPS * (fromK - toK));
        }
        return vessel.liquidMassKg() * (fromK - toK) * sum / STEPS;
    }

    /**
     * Heat that a kilogram of ice takes until it is water of a temperature.
     *
     * @param iceK temperature of the ice [K], 200 to 273.15
     * @param endK temperature of its melt water at the end [K], 273.15 to 373.15
     * @return heat [J/kg]
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a temperature is outside its range
     */
    public static double perKilogramJ(double iceK, double endK) {
        return Water.liquid().specificEnthalpy(endK) - Ice.specificEnthalpy(iceK);
    }

    /**
     * Ice left in a box, bag or bucket by energy alone: what comes in at UA (T − 0 °C) warms the ice to 0 °C and then melts it, and its
     * water stays at 0 °C with it. Real ice melts no faster than that where nothing else is in the box; opening it is not in it.
     *
     * @param ice mass at the start, 0 to 2000 kg
     * @param iceTemperature its temperature at the start, −30 °C to 0 °C
     * @param box conductance of walls and films together, 0.001 to 1000 W/K
     * @param outside temperature outside, 0 °C to 100 °C
     * @param after how long, ≥ 0
     * @return mass left [kg], at least 0
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     * @throws IllegalArgumentException if the time is negative
     */
    public static double leftKg(
            Quantity<Mass> ice,
            Quantity<Temperature> iceTemperature,
            Quantity<ThermalConductance> box,
            Quantity<Temperature> outside,
            Duration after) {
        if (after.isNegative()) {
            throw new IllegalArgumentException("time in the box " + after + ": expected at least 0");
        }
        double kg = SiValues.massKg(ice, "mass of ice carried", 0, 2000);
        double iceK = SiValues.temperatureK(iceTemperature, "temperature of ice", COLDEST_ICE_K, ZERO_CELSIUS_K);
        double outsideK = SiValues.temperatureK(outside, "temperature outside", ZERO_CELSIUS_K, WARMEST_K);
        double conductance = SiValues.conductanceWPerK(box, "conductance of the box", 0.001, 1000);
        double heat = conductance * (outsideK - ZERO_CELSIUS_K) * (after.toMillis() / 1000.0);
        double warming = kg * (Ice.specificEnthalpy(ZERO_CELSIUS_K) - Ice.specificEnthalpy(iceK));
        return Math.max(
                0, kg - Math.max(0, heat - warming) / Ice.latentHeatOfFusion().value());
    }
}
