/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.util.Map;
import java.util.SplittableRandom;
import org.beveragethermal.core.surroundings.Multipliers;

/**
 * What is known roughly of many bottles, drawn for each; the scatter is our own invention. Arrays are not copied and not modified.
 *
 * @param startK temperature at the start [K], 22 ± 1 °C
 * @param airK temperature in the refrigerator [K], 5 ± 0.7 °C
 * @param insideFilm factor on the film in the bottle [-], e^(±0.15)
 * @param airFilm factor on the film in the air [-], e^(±0.15)
 */
@SuppressWarnings("ArrayRecordComponent")
record Draws(double[] startK, double[] airK, double[] insideFilm, double[] airFilm) {

    private static final double START_K = 295.15;
    private static final double START_SD_K = 1;
    private static final double AIR_K = 278.15;
    private static final double AIR_SD_K = 0.7;
    private static final double FILM_LOG_SD = 0.15;
    private static final double MOST_SD = 6;

    /** So many draws; the first of more are the same. */
    static Draws of(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Draws draws = new Draws(new double[count], new double[count], new double[count], new double[count]);
        for (int i = 0; i < count; i++) {
            draws.startK[i] = START_K + START_SD_K * gaussian(random);
            draws.airK[i] = AIR_K + AIR_SD_K * gaussian(random);
            draws.insideFilm[i] = Math.exp(FILM_LOG_SD * gaussian(random));
            draws.airFilm[i] = Math.exp(FILM_LOG_SD * gaussian(random));
        }
        return draws;
    }

    private static double gaussian(SplittableRandom random) {
        return Math.min(MOST_SD, Math.max(-MOST_SD, random.nextGaussian()));
    }

    int count() {
        return startK.length;
    }

    Map<String, Double> films(int sample) {
        return Map.of(Multipliers.INSIDE_FILM, insideFilm[sample], Multipliers.AIR_FILM, airFilm[sample]);
    }
}
