/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

/**
 * Temperature of a black body that radiates downwards as much as a cloudless sky.
 *
 * <p>Clouds radiate almost like a body at the temperature of the air: under an overcast sky the sky is a few kelvins colder than the air
 * and none of these holds.
 *
 * <p>Theory manual, equation (4.2).
 */
public final class SkyRadiation {

    /**
     * Standard deviation of what is exchanged with a clear sky, as a part of it: an emissivity that is 0.03 off (a judgement; formulas of
     * different authors differ by that) changes some 90 W/m² by 12 W/m².
     */
    public static final double RELATIVE_SPREAD = 0.15;

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double LEAST = 0.55;

    private SkyRadiation() {}

    /**
     * Emissivity of a clear sky by the dew point, mean over day and night: ε = 0.711 + 0.56 (t/100) + 0.73 (t/100)², t in °C.
     *
     * <p>Limits: not below 0.55, the least of dry air in older formulas (Brunt 1932), and not above 1. Source: P. Berdahl and M.
     * Martin, Emissivity of clear skies, Solar Energy 32 (1984) 663-664; made for monthly means with dew points of −13 to 24 °C (from
     * memory).
     *
     * @param dewPointK dew point near the ground [K], finite, above 0
     * @return emissivity [-], 0.55 to 1
     * @throws IllegalArgumentException if the dew point is not a temperature
     */
    public static double berdahlMartin(double dewPointK) {
        double hundredths = (requireTemperature(dewPointK) - ZERO_CELSIUS_K) / 100;
        return Math.max(LEAST, Math.min(1, 0.711 + 0.56 * hundredths + 0.73 * hundredths * hundredths));
    }

    /**
     * Temperature of a clear sky by temperature and dew point of the air: T ε^(1/4).
     *
     * @param airK temperature of the air near the ground [K], finite, above 0
     * @param dewPointK its dew point [K], finite, above 0
     * @return temperature [K]
     * @throws IllegalArgumentException if an argument is not a temperature
     */
    public static double clearSky(double airK, double dewPointK) {
        return requireTemperature(airK) * Math.pow(berdahlMartin(dewPointK), 0.25);
    }

    /**
     * Temperature of a clear sky where the humidity is not known: 0.0552 T^1.5.
     *
     * <p>Never above the air, which it would be from 55 °C on. Source: W. C. Swinbank, Long-wave radiation from clear skies, Quart. J.
     * R. Meteorol. Soc. 89 (1963) 339-348; as in Duffie and Beckman, eq. 3.9.1. Night-time measurements between 2 and 29 °C (from
     * memory).
     *
     * @param airK temperature of the air near the ground [K], finite, above 0
     * @return temperature [K]
     * @throws IllegalArgumentException if the argument is not a temperature
     */
    public static double swinbank(double airK) {
        return Math.min(airK, 0.0552 * Math.pow(requireTemperature(airK), 1.5));
    }

    private static double requireTemperature(double kelvin) {
        if (!(kelvin > 0) || Double.isInfinite(kelvin)) {
            throw new IllegalArgumentException("temperature " + kelvin + " K: expected a finite temperature above 0 K");
        }
        return kelvin;
    }
}
