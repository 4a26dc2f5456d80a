/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.util.Optional;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Predictions for one bottle alone, on the plan's clock [s since its start]; what the planner searches with.
 *
 * <p>Baths are fresh in each prediction; the coupled run of the whole plan has the last word.
 */
final class Forecast {

    /** A bath is filled this long before its first bottle goes in, so that its water is cold by then. */
    static final double FILLED_BEFORE_S = 15 * 60;

    private static final String BOTTLE = "bottle";
    private static final String FIRST = "first";
    private static final String SECOND = "second";
    private static final int SAMPLES = 48;

    private final PlanRequest request;
    private final FilledVessel bottle;
    private final Surroundings start;
    private final double servedS;
    private final Prediction staying;

    Forecast(PlanRequest request, BottleOrder order) {
        this.request = request;
        this.bottle = order.bottle();
        this.start = surroundings(order.startsIn());
        this.servedS = seconds(Duration.between(request.startsAt(), order.servedAt()));
        this.staying = Scene.builder()
                .gear(FIRST, start)
                .vessel(BOTTLE, bottle, FIRST)
                .build()
                .predict(duration(servedS))
                .vessel(BOTTLE);
    }

    private Surroundings surroundings(String id) {
        Place place = request.places().get(id);
        if (place != null) {
            return place.air();
        }
        Gear gear = request.gear().get(id);
        if (gear != null) {
            return gear.surroundings();
        }
        throw new IllegalArgumentException("place or gear " + id + ": unknown");
    }

    private boolean isFilled(String id) {
        Gear gear = request.gear().get(id);
        return gear != null && gear.kind().isFilled();
    }

    double servedS() {
        return servedS;
    }

    /** Temperature when poured if the bottle stays where it is. */
    double stayingK() {
        return staying.meanTemperatureK(servedS);
    }

    /** Temperature when poured if the bottle goes into a means at a time. */
    double pouredK(String means, double startS) {
        double filled = isFilled(means) ? Math.max(0, startS - FILLED_BEFORE_S) : startS;
        if (servedS - filled < 1) {
            return stayingK();
        }
        Optional<FilledVessel> then = anew(staying.meanTemperatureK(filled));
        // A short prediction from then on where the bottle can be started anew, else the long one from the start.
        double from = then.isPresent() ? filled : 0;
        Scene.Builder scene = Scene.builder()
                .startingAfter(duration(from))
                .gear(FIRST, start)
                .gear(SECOND, surroundings(means), duration(filled - from));
        if (startS - from < 1) {
            scene.vessel(BOTTLE, then.orElse(bottle), SECOND);
        } else {
            scene.vessel(BOTTLE, then.orElse(bottle), FIRST).move(BOTTLE, duration(startS - from), SECOND);
        }
        return scene.build().predict(duration(servedS - from)).vessel(BOTTLE).meanTemperatureK(millis(servedS - from));
    }

    /** Whether a prediction can begin with the bottle at a temperature. */
    boolean canBeginAt(double temperatureK) {
        return anew(temperatureK).isPresent();
    }

    /** The bottle at a temperature; empty if it would be frozen hard or so warm that its drink would not fit. */
    private Optional<FilledVessel> anew(double temperatureK) {
        try {
            return Optional.of(bottle.atTemperature(SiValues.celsiusOf(temperatureK)));
        } catch (OutOfRangeException e) {
            // Only the vessel knows what fits into it.
            return Optional.empty();
        }
    }

    /**
     * What happens to a bottle poured at a temperature while it is drunk.
     *
     * @param keptIn where it stands
     * @param pouredK temperature when poured
     * @param coldestK coldest mean temperature
     * @param warmestK warmest mean temperature
     * @param outsidePart part of the time during which it is outside its range
     * @param outsideByK how far it is outside its range, mean over the time; 0 while inside
     */
    record Keeping(
            String keptIn, double pouredK, double coldestK, double warmestK, double outsidePart, double outsideByK) {}

    Keeping keeping(String keptIn, double pouredK, BottleOrder order) {
        double lastS = seconds(order.finishedAfter());
        Scene.Builder scene =
                Scene.builder().startingAfter(duration(servedS)).gear(FIRST, surroundings(order.servedIn()));
        FilledVessel then = bottle.atTemperature(SiValues.celsiusOf(pouredK));
        String keeper = keptIn.equals(order.servedIn()) ? FIRST : SECOND;
        if (keeper.equals(SECOND)) {
            scene.gear(SECOND, surroundings(keptIn));
        }
        scene.vessel(BOTTLE, then, keeper);
        Prediction prediction = scene.build().predict(order.finishedAfter()).vessel(BOTTLE);
        double coldest = pouredK;
        double warmest = pouredK;
        int outside = 0;
        double outsideByK = 0;
        for (int i = 0; i <= SAMPLES; i++) {
            double here = prediction.meanTemperatureK(millis(lastS) * i / SAMPLES);
            coldest = Math.min(coldest, here);
            warmest = Math.max(warmest, here);
            outside += order.target().contains(here) ? 0 : 1;
            outsideByK += Math.max(
                    0, Math.max(here - order.target().highK(), order.target().lowK() - here));
        }
        return new Keeping(
                keptIn, pouredK, coldest, warmest, (double) outside / (SAMPLES + 1), outsideByK / (SAMPLES + 1));
    }

    private static double millis(double seconds) {
        return Math.round(seconds * 1000) / 1000.0;
    }

    static double seconds(Duration duration) {
        return duration.toMillis() / 1000.0;
    }

    static Duration duration(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }
}
