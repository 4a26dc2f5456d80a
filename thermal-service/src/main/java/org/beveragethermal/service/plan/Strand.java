/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.Optional;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;

/** One prediction of one bottle in one place, kept as temperatures at fixed times: every minute of the first hour, then every five. */
final class Strand {

    /** A plan's minutes need no better. */
    private static final NetworkSolver SOLVER = NetworkSolver.standard().withToleranceK(0.05);

    private static final double FINE_S = 60;
    private static final double COARSE_S = 300;
    private static final int FINE_STEPS = 60;
    private static final double FINE_END_S = FINE_S * FINE_STEPS;
    private static final String BOTTLE = "bottle";
    private static final String HERE = "here";
    private static final String BEFORE = "before";

    private final double[] kelvins;

    private Strand(Prediction prediction, double fromS, double lastsS) {
        int coarse = (int) Math.ceil(Math.max(0, lastsS - FINE_END_S) / COARSE_S);
        double[] times = new double[FINE_STEPS + coarse + 1];
        for (int i = 0; i < times.length; i++) {
            double after = i <= FINE_STEPS ? FINE_S * i : FINE_END_S + COARSE_S * (i - FINE_STEPS);
            times[i] = fromS + Math.min(after, lastsS);
        }
        this.kelvins = prediction.meanTemperaturesK(times);
    }

    /**
     * A bottle that comes to a place at a time.
     *
     * @param ageS for how long a bath has been filled then
     * @return empty if it cannot begin at its temperature, or cannot stand there
     */
    static Optional<Strand> of(Site site, FilledVessel bottle, String where, double fromS, double ageS, double lastsS) {
        double span = FINE_END_S + COARSE_S * Math.ceil(Math.max(0, lastsS - FINE_END_S) / COARSE_S);
        Scene.Builder scene = Scene.builder().startingAfter(site.weather(fromS));
        try {
            if (ageS > 0) {
                // Air of its own temperature leaves it as it is while the bath settles.
                scene.gear(BEFORE, Air.at(SiValues.celsiusOf(bottle.temperatureK())))
                        .gear(HERE, site.surroundings(where))
                        .vessel(BOTTLE, bottle, BEFORE)
                        .move(BOTTLE, Site.duration(ageS), HERE);
            } else {
                scene.gear(HERE, site.surroundings(where)).vessel(BOTTLE, bottle, HERE);
            }
            Prediction run =
                    scene.build().predict(Site.duration(ageS + span), SOLVER).vessel(BOTTLE);
            return Optional.of(new Strand(run, ageS, span));
        } catch (IllegalArgumentException e) {
            // Only scenes know what fits into what.
            return Optional.empty();
        }
    }

    /** The bottle at a temperature; empty if it would be frozen hard or so warm that its drink would not fit. */
    static Optional<FilledVessel> at(FilledVessel bottle, double temperatureK) {
        try {
            return Optional.of(bottle.atTemperature(SiValues.celsiusOf(temperatureK)));
        } catch (OutOfRangeException e) {
            // Only the vessel knows what fits into it.
            return Optional.empty();
        }
    }

    /** Mean temperature after a time; after the end as at the end. */
    double kelvins(double afterS) {
        double place = afterS <= FINE_END_S ? afterS / FINE_S : FINE_STEPS + (afterS - FINE_END_S) / COARSE_S;
        int i = (int) Math.min(Math.max(0, place), kelvins.length - 1.0);
        if (i >= kelvins.length - 1) {
            return kelvins[kelvins.length - 1];
        }
        return kelvins[i] + (place - i) * (kelvins[i + 1] - kelvins[i]);
    }
}
