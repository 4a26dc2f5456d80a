/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

/**
 * Irradiance under a cloudless sky by the constants of ASHRAE.
 *
 * <p>Beam on a surface that faces the sun: A exp(−B/sin β); diffuse on level ground: C times that. A, B and C are given for the 21st of
 * each month, for an average atmosphere of the United States near sea level; they are joined by straight lines in between. Haze,
 * mountain air and towns change the beam by 15 % either way (the source's clearness numbers run from 0.85 to 1.15), and the diffuse part
 * by more.
 *
 * <p>South of the equator B and C are those of the same season, half a year apart, and A too but for the sun's distance (own
 * assumption).
 *
 * <p>Source: ASHRAE Handbook of Fundamentals 1985, chapter 27, table 1, in SI units (from memory); method of Threlkeld and Jordan 1958.
 *
 * <p>Theory manual, equation (4.3).
 */
public final class ClearSky {

    /** What haze and height make of the beam, as a part of it; from the source's clearness numbers. */
    public static final double RELATIVE_SPREAD = 0.15;

    /** Day of the year of the 21st of each month. */
    private static final int[] DAYS = {21, 52, 80, 111, 141, 172, 202, 233, 264, 294, 325, 355};

    private static final double[] A = {1230, 1215, 1186, 1136, 1104, 1088, 1085, 1107, 1151, 1192, 1221, 1233};
    private static final double[] B = {
        0.142, 0.144, 0.156, 0.180, 0.196, 0.205, 0.207, 0.201, 0.177, 0.160, 0.149, 0.142
    };
    private static final double[] C = {
        0.058, 0.060, 0.071, 0.097, 0.121, 0.134, 0.136, 0.122, 0.092, 0.073, 0.063, 0.057
    };

    private static final int DAYS_OF_YEAR = 365;
    private static final int HALF_A_YEAR = 182;

    private ClearSky() {}

    /**
     * Beam irradiance on a surface that faces the sun.
     *
     * @param dayOfYear day of the year, 1 to 366
     * @param southern whether it is south of the equator
     * @param elevationRad elevation of the sun [rad]
     * @return beam [W/m²], exactly 0 when the sun is not above the horizon
     * @throws IllegalArgumentException if the day is outside its range or the elevation is not a number
     */
    public static double beam(int dayOfYear, boolean southern, double elevationRad) {
        double sine = requireSine(dayOfYear, elevationRad);
        if (sine <= 0) {
            return 0;
        }
        int season = season(dayOfYear, southern);
        double distance = southern ? sunDistance(dayOfYear) / sunDistance(season) : 1;
        return at(A, season) * distance * Math.exp(-at(B, season) / sine);
    }

    /**
     * Diffuse irradiance on level ground.
     *
     * @param dayOfYear day of the year, 1 to 366
     * @param southern whether it is south of the equator
     * @param elevationRad elevation of the sun [rad]
     * @return diffuse [W/m²], exactly 0 when the sun is not above the horizon
     * @throws IllegalArgumentException if the day is outside its range or the elevation is not a number
     */
    public static double diffuse(int dayOfYear, boolean southern, double elevationRad) {
        return at(C, season(dayOfYear, southern)) * beam(dayOfYear, southern, elevationRad);
    }

    private static double requireSine(int dayOfYear, double elevationRad) {
        if (dayOfYear < 1 || dayOfYear > 366 || !Double.isFinite(elevationRad)) {
            throw new IllegalArgumentException("clear sky on day " + dayOfYear + " with the sun at " + elevationRad
                    + " rad: expected a day of 1 to 366 and a finite elevation");
        }
        return Math.sin(elevationRad);
    }

    private static int season(int dayOfYear, boolean southern) {
        return southern ? (dayOfYear - 1 + HALF_A_YEAR) % DAYS_OF_YEAR + 1 : dayOfYear;
    }

    /** Extraterrestrial irradiance over its mean (Duffie and Beckman, eq. 1.4.1a). */
    private static double sunDistance(int dayOfYear) {
        return 1 + 0.033 * Math.cos(2 * Math.PI * dayOfYear / DAYS_OF_YEAR);
    }

    private static double at(double[] monthly, int dayOfYear) {
        int after = 0;
        while (after < DAYS.length && DAYS[after] < dayOfYear) {
            after++;
        }
        int before = (after + DAYS.length - 1) % DAYS.length;
        int next = after % DAYS.length;
        double length = Math.floorMod(DAYS[next] - DAYS[before], DAYS_OF_YEAR);
        double part = Math.floorMod(dayOfYear - DAYS[before], DAYS_OF_YEAR) / length;
        return monthly[before] + part * (monthly[next] - monthly[before]);
    }
}
