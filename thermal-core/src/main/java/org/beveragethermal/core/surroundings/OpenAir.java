/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.correlation.SkyRadiation;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.materials.air.MoistAir;
import org.jspecify.annotations.Nullable;

/**
 * What comes from above, of air that is not all indoors.
 *
 * @param sunlight the sun, or null for none
 * @param skyK temperature of a stated sky [K], or null
 * @param clearSky whether the sky is clear and its temperature follows from the air
 */
record OpenAir(@Nullable Sunlight sunlight, @Nullable TimeFunction skyK, boolean clearSky) {

    static final OpenAir NONE = new OpenAir(null, null, false);

    static final AirTemperatures SKIES = new AirTemperatures("sky temperature", 193.15, 333.15);

    private static final double STEP_K = 0.01;

    OpenAir with(Sunlight newSunlight) {
        return new OpenAir(newSunlight, skyK, clearSky);
    }

    OpenAir with(TimeFunction newSkyK) {
        return new OpenAir(sunlight, newSkyK, false);
    }

    OpenAir withClearSky() {
        return new OpenAir(sunlight, null, true);
    }

    /** Temperature of the sky over air [K], or null if there is none. */
    @Nullable
    TimeFunction over(TimeFunction airK, double relativeHumidity) {
        return clearSky ? new Clear(airK, relativeHumidity) : skyK;
    }

    /** A clear sky that follows the air below it. */
    private record Clear(TimeFunction airK, double relativeHumidity) implements TimeFunction {

        private double sky(double air) {
            return relativeHumidity > 0
                    ? SkyRadiation.clearSky(air, MoistAir.dewPointK(air, relativeHumidity))
                    : SkyRadiation.swinbank(air);
        }

        @Override
        public double at(double timeS) {
            return sky(airK.at(timeS));
        }

        @Override
        public double rate(double timeS) {
            double rate = airK.rate(timeS);
            double air = airK.at(timeS);
            return rate == 0 ? 0 : rate * (sky(air + STEP_K) - sky(air - STEP_K)) / (2 * STEP_K);
        }

        @Override
        public double[] knots() {
            return airK.knots();
        }
    }
}
