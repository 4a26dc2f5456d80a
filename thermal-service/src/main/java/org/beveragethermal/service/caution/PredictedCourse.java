/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.hazard.FreezingHazard;
import org.beveragethermal.core.hazard.Fullness;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeInRange;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.core.store.FreezingStore;

/** The course of a prediction. Extremes are looked for once; a limit that lies beyond them needs no search. */
final class PredictedCourse implements Course {

    private final Prediction prediction;
    private final Map<Part, TimeInRange.Stays> extremes = new EnumMap<>(Part.class);

    PredictedCourse(Prediction prediction) {
        this.prediction = prediction;
        boolean lumped = prediction.contents().nodes().size() == 1;
        TimeInRange.Stays mean = extremes(prediction, Part.MEAN);
        for (Part part : Part.values()) {
            extremes.put(part, lumped || part == Part.MEAN ? mean : extremes(prediction, part));
        }
    }

    private static TimeInRange.Stays extremes(Prediction prediction, Part part) {
        TimeInRange all = prediction.timeInRangeK(0, Double.POSITIVE_INFINITY, part, 0);
        if (all instanceof TimeInRange.Stays stays) {
            return stays;
        }
        throw new IllegalStateException("a temperature that is neither low nor high: " + all);
    }

    @Override
    public Optional<Span> beyond(Part part, double limitK, int sign, Duration from) {
        if (sign * (extremeK(part, sign) - limitK) < 0) {
            return Optional.empty();
        }
        double fromS = Times.seconds(from);
        TimeInRange answer = sign > 0
                ? prediction.timeInRangeK(limitK + ROUNDING_K, Double.POSITIVE_INFINITY, part, fromS)
                : prediction.timeInRangeK(0, limitK, part, fromS);
        if (answer instanceof TimeInRange.Stays stays) {
            return Optional.of(new Span(stays.enteredAfter(), Optional.empty()));
        }
        return answer instanceof TimeInRange.Leaves leaves
                ? Optional.of(new Span(leaves.enteredAfter(), Optional.of(leaves.leftAfter())))
                : Optional.empty();
    }

    @Override
    public double extremeK(Part part, int sign) {
        TimeInRange.Stays of = Objects.requireNonNull(extremes.get(part));
        return sign > 0 ? of.highestK() : of.lowestK();
    }

    @Override
    public Duration end() {
        return prediction.end();
    }

    @Override
    public Optional<Filling> fullOfIce(ClosedVessel vessel) {
        boolean freezes =
                prediction.contents().nodes().stream().allMatch(node -> node.store() instanceof FreezingStore);
        if (!freezes) {
            return Course.super.fullOfIce(vessel);
        }
        return FreezingHazard.of(prediction, vessel).fullness() instanceof Fullness.Fills fills
                        && fills.iceFraction() > 0
                ? Optional.of(new Filling(fills.after(), fills.meanK()))
                : Optional.empty();
    }

    @Override
    public HoldingTime holding(HoldingClock clock) {
        Optional<FilledStay> stay = FilledStay.first(prediction);
        return stay.map(part -> part.holding(clock))
                .orElseGet(() -> clock.read(TemperatureHistory.of(prediction, Part.WARMEST)));
    }
}
