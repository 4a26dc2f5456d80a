/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import java.util.OptionalDouble;
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
    private static final double HOTTEST_WALL_K = 400;
    private static final double SEARCH_STEP_K = 1;

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
        this.liquidHeightM = fillHeight(vessel, liquidVolumeM3, temperatureK);
    }

    private static double fillHeight(Vessel vessel, double volumeM3, double temperatureK) {
        double brimful = vessel.brimfulVolumeM3(temperatureK);
        if (volumeM3 > brimful) {
            throw OutOfRangeException.refusal(
                    "volume of the expanded liquid", volumeM3, 0, brimful, "m³", "brimful volume of " + vessel.name());
        }
        return vessel.profile().fillHeightM(Math.min(volumeM3, vessel.brimfulVolumeM3()));
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
     * Height of the liquid's surface at this temperature, above the plane the vessel stands on. The profile is that at 20 °C:
     * what its own expansion moves the level, less than a millimetre, is left out here.
     *
     * @return height in m
     */
    public double liquidHeightM() {
        return liquidHeightM;
    }

    /**
     * Height of the liquid's surface when the vessel lies on its side, as if it were closed at the brim.
     *
     * @return height above the plane it lies on, m
     */
    public double lyingSurfaceHeightM() {
        return LyingProfile.of(vessel.profile()).levelM(volumeInProfile());
    }

    /**
     * Height of the liquid's surface when the vessel stands on its mouth, as if it were closed at the brim.
     *
     * @return height above the plane of the brim, m
     */
    public double invertedSurfaceHeightM() {
        return InvertedProfile.of(vessel.profile()).levelM(volumeInProfile());
    }

    /** In the profile as it is at 20 °C. */
    private double volumeInProfile() {
        return Math.min(liquidVolumeM3, vessel.brimfulVolumeM3());
    }

    /**
     * Headspace (ullage): volume between the liquid and the brim at this temperature, with the expansion of the wall; a closure
     * takes some of it.
     *
     * @return volume in m³, at least 0
     */
    public double headspaceM3() {
        return vessel.brimfulVolumeM3(temperatureK) - liquidVolumeM3;
    }

    /**
     * The temperature at which the liquid, warming from its present one, has used up its headspace: above it a full vessel is
     * forced or overflows. A closure that reaches into the neck lowers it.
     *
     * @return temperature in K, or empty if there is headspace up to the end of the liquid's range
     */
    public OptionalDouble brimfulAtK() {
        double high = Math.min(liquid.temperatureRange().high(), HOTTEST_WALL_K);
        double low = temperatureK;
        while (low < high) {
            double next = Math.min(high, low + SEARCH_STEP_K);
            if (spareM3(next) < 0) {
                return OptionalDouble.of(lastWithRoom(low, next));
            }
            low = next;
        }
        return OptionalDouble.empty();
    }

    private double spareM3(double atK) {
        return vessel.brimfulVolumeM3(atK) - liquidMassKg / liquid.density(atK);
    }

    /** Halves the bracket until its ends are neighbours. */
    private double lastWithRoom(double from, double to) {
        double low = from;
        double high = to;
        while (true) {
            double middle = low + (high - low) / 2;
            if (middle <= low || middle >= high) {
                return low;
            }
            if (spareM3(middle) < 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
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
