/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

/**
 * Where the sun stands, by latitude, day of the year and solar time.
 *
 * <p>Solar time is 12 h when the sun is highest; clocks differ from it by up to an hour or two (longitude, equation of time, summer
 * time). Refraction, which lifts the sun by half a degree at the horizon, is left out. Good to half a degree.
 *
 * <p>Theory manual, equation (4.3).
 */
public final class SolarPosition {

    private static final double HOURS_TO_RADIANS = Math.PI / 12;

    private SolarPosition() {}

    /**
     * Declination of the sun, Cooper: δ = 23.45° sin(360° (284 + n)/365).
     *
     * <p>Source: P. I. Cooper, The absorption of radiation in solar stills, Solar Energy 12 (1969) 333-346; as in Duffie and Beckman,
     * Solar Engineering of Thermal Processes, eq. 1.6.1a. Good to half a degree.
     *
     * @param dayOfYear day of the year, 1 to 366
     * @return declination [rad], north positive
     * @throws IllegalArgumentException if the day is outside its range
     */
    public static double declination(int dayOfYear) {
        if (dayOfYear < 1 || dayOfYear > 366) {
            throw new IllegalArgumentException("day of the year " + dayOfYear + ": expected 1 to 366");
        }
        return Math.toRadians(23.45) * Math.sin(2 * Math.PI * (284 + dayOfYear) / 365);
    }

    /**
     * Elevation of the sun's centre above the horizon: sin β = sin φ sin δ + cos φ cos δ cos ω, with ω 15° for each hour from noon.
     *
     * <p>Source: Duffie and Beckman, eq. 1.6.5.
     *
     * @param latitudeRad latitude [rad], north positive, −π/2 to π/2
     * @param declinationRad declination [rad]
     * @param solarTimeH solar time [h], finite; 12 is noon, and 36 noon of the next day
     * @return elevation [rad], negative at night
     * @throws IllegalArgumentException if an argument is not finite or the latitude is outside its range
     */
    public static double elevation(double latitudeRad, double declinationRad, double solarTimeH) {
        if (!(Math.abs(latitudeRad) <= Math.PI / 2) || !Double.isFinite(declinationRad + solarTimeH)) {
            throw new IllegalArgumentException("sun at latitude " + latitudeRad + " rad, declination " + declinationRad
                    + " rad, " + solarTimeH + " h: expected a latitude of at most π/2 and finite numbers");
        }
        double sine = Math.sin(latitudeRad) * Math.sin(declinationRad)
                + Math.cos(latitudeRad) * Math.cos(declinationRad) * Math.cos(HOURS_TO_RADIANS * (solarTimeH - 12));
        return Math.asin(Math.max(-1, Math.min(1, sine)));
    }
}
