/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.time.Duration;
import java.util.Optional;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.hazard.FreezingHazard;
import org.beveragethermal.core.hazard.Fullness;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeInRange;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.core.store.FreezingStore;

/**
 * The course of a prediction.
 *
 * @param prediction the run
 */
record PredictedCourse(Prediction prediction) implements Course {

    /** A temperature held at a limit is not above it; rounding of a run [K]. */
    private static final double ROUNDING_K = 1e-5;

    @Override
    public Optional<Span> beyond(Part part, double limitK, int sign, Duration from) {
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
        TimeInRange all = prediction.timeInRangeK(0, Double.POSITIVE_INFINITY, part, 0);
        if (!(all instanceof TimeInRange.Stays stays)) {
            throw new IllegalStateException("a temperature that is neither low nor high: " + all);
        }
        return sign > 0 ? stays.highestK() : stays.lowestK();
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
            return LoggedCourse.fullOfIce(this, vessel);
        }
        return FreezingHazard.of(prediction, vessel).fullness() instanceof Fullness.Fills fills
                        && fills.iceFraction() > 0
                ? Optional.of(new Filling(fills.after(), fills.meanK()))
                : Optional.empty();
    }

    @Override
    public HoldingTime holding(HoldingClock clock) {
        return clock.read(TemperatureHistory.of(prediction, Part.WARMEST));
    }
}
