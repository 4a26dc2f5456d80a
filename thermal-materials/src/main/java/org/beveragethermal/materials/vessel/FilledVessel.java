/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;

/**
 * A vessel with a mass of liquid in it, both at one temperature. What stays when the temperature changes is the mass;
 * the fill level follows the liquid's density. Immutable; equal by parts.
 */
public final class FilledVessel {
    private static final double FILLING_TEMPERATURE_K = 293.15;

    private final Vessel vessel;
    private final Liquid liquid;
    private final double liquidMassKg;
    private final double temperatureK;
    private final double liquidVolumeM3;
    private final double liquidHeightM;

    private FilledVessel(Vessel vessel, Liquid liquid, double liquidMassKg, double temperatureK) {
        this.vessel = vessel;
        this.liquid = liquid;
        this.liquidMassKg = liquidMassKg;
        this.temperatureK = temperatureK;
        this.liquidVolumeM3 = liquidMassKg / liquid.density(temperatureK);
        this.liquidHeightM = fillHeight(vessel, liquidVolumeM3);
    }

    private static double fillHeight(Vessel vessel, double volumeM3) {
        double brimful = vessel.brimfulVolumeM3();
        if (volumeM3 > brimful) {
            throw OutOfRangeException.refusal(
                    "volume of the expanded liquid", volumeM3, 0, brimful, "m³", "brimful volume of " + vessel.name());
        }
        return vessel.profile().fillHeightM(volumeM3);
    }

    /** Checked by the caller: the volume is greater than 0 and at most brimful. */
    static FilledVessel withVolumeAt20(
            Vessel vessel, Liquid liquid, double volumeAt20M3, Quantity<Temperature> temperature) {
        double massKg = liquid.density(FILLING_TEMPERATURE_K) * volumeAt20M3;
        return new FilledVessel(vessel, liquid, massKg, liquidTemperatureK(liquid, temperature));
    }

    private static double liquidTemperatureK(Liquid liquid, Quantity<Temperature> temperature) {
        ValidityRange range = liquid.temperatureRange();
        return SiValues.temperatureK(temperature, "temperature of the contents", range.low(), range.high());
    }

    /**
     * The same vessel and contents at another temperature.
     *
     * @param temperature temperature of vessel and contents, within the liquid's range
     * @return the filled vessel
     * @throws OutOfRangeException if the temperature is outside the liquid's range, or the liquid, expanded, is larger
     *     than the vessel
     * @throws IllegalArgumentException if the temperature is null, a difference or not finite
     */
    public FilledVessel atTemperature(Quantity<Temperature> temperature) {
        return new FilledVessel(vessel, liquid, liquidMassKg, liquidTemperatureK(liquid, temperature));
    }

    /**
     * The vessel.
     *
     * @return the empty vessel
     */
    public Vessel vessel() {
        return vessel;
    }

    /**
     * What is in it.
     *
     * @return the liquid
     */
    public Liquid liquid() {
        return liquid;
    }

    /**
     * Mass of the contents.
     *
     * @return mass in kg
     */
    public double liquidMassKg() {
        return liquidMassKg;
    }

    /**
     * Temperature of vessel and contents.
     *
     * @return temperature in K
     */
    public double temperatureK() {
        return temperatureK;
    }

    /**
     * Volume of the contents at this temperature.
     *
     * @return volume in m³
     */
    public double liquidVolumeM3() {
        return liquidVolumeM3;
    }

    /**
     * Height of the liquid's surface at this temperature, above the plane the vessel stands on.
     *
     * @return height in m
     */
    public double liquidHeightM() {
        return liquidHeightM;
    }

    /**
     * Volume between the liquid and the brim at this temperature; a closure takes some of it.
     *
     * @return volume in m³, at least 0
     */
    public double headspaceM3() {
        return vessel.brimfulVolumeM3() - liquidVolumeM3;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FilledVessel that
                && vessel.equals(that.vessel)
                && liquid.equals(that.liquid)
                && Double.compare(liquidMassKg, that.liquidMassKg) == 0
                && Double.compare(temperatureK, that.temperatureK) == 0;
    }

    @Override
    public int hashCode() {
        return ((vessel.hashCode() * 31 + liquid.hashCode()) * 31 + Double.hashCode(liquidMassKg)) * 31
                + Double.hashCode(temperatureK);
    }

    @Override
    public String toString() {
        return vessel.name() + " of " + liquid.name() + " at " + SiValues.celsiusOf(temperatureK);
    }
}
