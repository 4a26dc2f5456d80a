/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.time.Duration;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.storage.TemperatureHistory;

/**
 * The first stay of a drink in a vessel that is empty at times, a glass or a jug, looked at {@value #LOOKS} times of the run. What is
 * poured in after it was emptied is another drink.
 *
 * @param fromS when it is seen first [s]
 * @param warmest temperatures of its warmest part since then
 */
record FilledStay(double fromS, TemperatureHistory warmest) {

    private static final int LOOKS = 2000;
    /** There is no gap in what is predicted. */
    private static final Duration NO_GAP = Duration.ofDays(36_500);

    /** The stay; empty if the vessel is filled throughout, or seen filled less than twice. */
    static Optional<FilledStay> first(Prediction prediction) {
        double endS = prediction.trajectory().endS();
        double[] looks = IntStream.rangeClosed(0, LOOKS)
                .mapToDouble(i -> endS * i / LOOKS)
                .toArray();
        double[] filled = DoubleStream.of(looks)
                .dropWhile(timeS -> !prediction.isFilled(timeS))
                .takeWhile(prediction::isFilled)
                .toArray();
        if (filled.length == looks.length || filled.length < 2) {
            return Optional.empty();
        }
        double fromS = filled[0];
        TemperatureHistory warmest = TemperatureHistory.of(
                DoubleStream.of(filled).map(timeS -> timeS - fromS).toArray(),
                DoubleStream.of(filled)
                        .map(timeS -> prediction.temperatureK(Part.WARMEST, timeS))
                        .toArray());
        return Optional.of(new FilledStay(fromS, warmest));
    }

    HoldingTime holding(HoldingClock clock) {
        return later(clock.readWithin(NO_GAP).read(warmest), Times.duration(fromS));
    }

    /** Moments are counted from the start of the run, not of the stay. */
    private static HoldingTime later(HoldingTime ofStay, Duration from) {
        if (ofStay instanceof HoldingTime.Over over) {
            return new HoldingTime.Over(over.after().plus(from), over.allowed());
        }
        return ofStay instanceof HoldingTime.MayBeOver perhaps
                ? new HoldingTime.MayBeOver(perhaps.after().plus(from), perhaps.allowed(), perhaps.surely())
                : ofStay;
    }
}
