/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.List;
import org.beveragethermal.core.prediction.Asymptote;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeInRange;

/**
 * Answer to "until when does it keep within a range?". Times are counted from the start of the run.
 */
public sealed interface Holding extends Answer {

    /**
     * Asks a prediction. What it finds is {@link Prediction#timeInRangeK}, begun where it must hold from.
     *
     * @param prediction the prediction, for as long as the question is of interest
     * @param wanted the range
     * @param from from when on it must hold, time since the start of the run
     * @return until when it does
     * @throws IllegalArgumentException if the time is not in the run
     */
    static Holding until(Prediction prediction, Wanted wanted, Duration from) {
        double fromS = Times.seconds(from);
        TimeInRange found = prediction.timeInRangeK(wanted.lowK(), wanted.highK(), Part.MEAN, fromS);
        if (found instanceof TimeInRange.Stays stays && stays.enteredAfter().equals(Times.duration(fromS))) {
            return new Throughout(wanted, prediction.end(), stays.lowestK(), stays.highestK());
        }
        if (found instanceof TimeInRange.Leaves leaves && leaves.enteredAfter().equals(Times.duration(fromS))) {
            return new Until(wanted, leaves.leftAfter(), leaves.tooWarm(), 3600 * leaves.kelvinPerSecond());
        }
        double hereK = prediction.meanTemperatureK(fromS);
        if (found instanceof TimeInRange.Stays stays) {
            return new NotYet(wanted, hereK, stays.enteredAfter());
        }
        return found instanceof TimeInRange.Leaves leaves
                ? new NotYet(wanted, hereK, leaves.enteredAfter())
                : new Never(wanted, hereK, ((TimeInRange.NeverEntered) found).closestK(), prediction.asymptote());
    }

    /**
     * It holds for a while.
     *
     * @param wanted the range
     * @param until when it first leaves the range
     * @param tooWarm whether it leaves at the warm end
     * @param kelvinPerHour rate of change there [K/h], positive while it warms
     */
    record Until(Wanted wanted, Duration until, boolean tooWarm, double kelvinPerHour) implements Holding {

        @Override
        public String explain() {
            return Text.format(
                    "It keeps within %s until %s, when it gets too %s, by then at %.1f K/h.",
                    wanted.text(), Text.time(until), tooWarm ? "warm" : "cold", Math.abs(kelvinPerHour));
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("until")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("untilS", Times.seconds(until))
                    .with("rateKPerS", kelvinPerHour / 3600)
                    .done();
        }
    }

    /**
     * It holds to the end of the run.
     *
     * @param wanted the range
     * @param end end of the run
     * @param lowestK lowest temperature [K]
     * @param highestK highest temperature [K]
     */
    record Throughout(Wanted wanted, Duration end, double lowestK, double highestK) implements Holding {

        @Override
        public String explain() {
            return Text.format(
                    "It keeps within %s for all of the %s looked at, between %s and %s.",
                    wanted.text(), Text.time(end), Text.celsius(lowestK), Text.celsius(highestK));
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("throughout")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("endS", Times.seconds(end))
                    .with("lowestK", lowestK)
                    .with("highestK", highestK)
                    .done();
        }
    }

    /**
     * It is outside the range at the time from which it must hold, and enters it later.
     *
     * @param wanted the range
     * @param temperatureK temperature at that time [K]
     * @param entersAfter when it enters the range
     */
    record NotYet(Wanted wanted, double temperatureK, Duration entersAfter) implements Holding {

        @Override
        public String explain() {
            return Text.format(
                    "It is at %s, outside %s, and enters that at %s.",
                    Text.celsius(temperatureK), wanted.text(), Text.time(entersAfter));
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("notYet")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("temperatureK", temperatureK)
                    .with("entersAfterS", Times.seconds(entersAfter))
                    .done();
        }
    }

    /**
     * It is outside the range from that time to the end of the run.
     *
     * @param wanted the range
     * @param temperatureK temperature at that time [K]
     * @param closestK the temperature nearest to the range from then on [K]
     * @param asymptote what it tends to, as far as this run shows
     */
    record Never(Wanted wanted, double temperatureK, double closestK, Asymptote asymptote) implements Holding {

        @Override
        public String explain() {
            return Text.format(
                    "It is at %s, outside %s, and does not enter that in the time looked at; the nearest is %s. It %s.",
                    Text.celsius(temperatureK), wanted.text(), Text.celsius(closestK), Text.tends(asymptote));
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("never")
                    .with("wantedK", List.of(wanted.lowK(), wanted.highK()))
                    .with("temperatureK", temperatureK)
                    .with("closestK", closestK)
                    .with(asymptote)
                    .done();
        }
    }
}
