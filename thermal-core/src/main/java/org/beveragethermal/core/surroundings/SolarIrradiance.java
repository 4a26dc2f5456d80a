/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.Irradiance;
import org.beveragethermal.materials.units.SiValues;

/**
 * What comes from sun and sky at one moment.
 *
 * @param beamWPerM2 direct irradiance on a surface that faces the sun [W/m²], 0 to 1100; 0 if the sun is not above the horizon
 * @param diffuseWPerM2 diffuse irradiance on level ground, from the sky without the sun's disc [W/m²], 0 to 700
 * @param elevationRad elevation of the sun above the horizon [rad], −π/2 to π/2
 */
public record SolarIrradiance(double beamWPerM2, double diffuseWPerM2, double elevationRad) {

    private static final double MOST_BEAM = 1100;
    private static final double MOST_DIFFUSE = 700;
    private static final double RIGHT_ANGLE = 90;

    /**
     * Checks the ranges.
     *
     * @param beamWPerM2 direct irradiance on a surface that faces the sun [W/m²]; ignored if the sun is not above the horizon
     * @param diffuseWPerM2 diffuse irradiance on level ground [W/m²]
     * @param elevationRad elevation of the sun [rad]
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a number is outside its range
     */
    public SolarIrradiance {
        new ValidityRange("beam irradiance", 0, MOST_BEAM, "W/m²").require(beamWPerM2, "sunlight");
        new ValidityRange("diffuse irradiance", 0, MOST_DIFFUSE, "W/m²").require(diffuseWPerM2, "sunlight");
        new ValidityRange("elevation of the sun", -Math.PI / 2, Math.PI / 2, "rad").require(elevationRad, "sunlight");
        beamWPerM2 = elevationRad > 0 ? beamWPerM2 : 0;
    }

    /**
     * Irradiance from quantities.
     *
     * @param beam direct irradiance on a surface that faces the sun, 0 to 1100 W/m² (a clear day near sea level gives 800 to 950
     *     W/m²); ignored if the sun is not above the horizon
     * @param diffuse diffuse irradiance on level ground, 0 to 700 W/m² (clear about 100 W/m², bright cloud 400 W/m²)
     * @param elevation elevation of the sun above the horizon, −90° to 90°
     * @return the irradiance
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static SolarIrradiance of(
            Quantity<Irradiance> beam, Quantity<Irradiance> diffuse, Quantity<Angle> elevation) {
        return new SolarIrradiance(
                SiValues.irradianceWPerM2(beam, "beam irradiance", 0, MOST_BEAM),
                SiValues.irradianceWPerM2(diffuse, "diffuse irradiance", 0, MOST_DIFFUSE),
                Math.toRadians(SiValues.angleDegrees(elevation, "elevation of the sun", -RIGHT_ANGLE, RIGHT_ANGLE)));
    }

    /**
     * Night: nothing comes.
     *
     * @return no irradiance, the sun below the horizon
     */
    public static SolarIrradiance none() {
        return new SolarIrradiance(0, 0, -Math.PI / 2);
    }

    /** Where a straight line to another moment crosses the horizon, as a part of the way. */
    double partToHorizon(SolarIrradiance other) {
        return elevationRad / (elevationRad - other.elevationRad);
    }

    /** What comes at that crossing; the beam there is 0. */
    SolarIrradiance atHorizon(SolarIrradiance other) {
        return new SolarIrradiance(0, diffuseWPerM2 + partToHorizon(other) * (other.diffuseWPerM2 - diffuseWPerM2), 0);
    }
}
