/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.time.Duration;

/**
 * Answer to "from when until when is it within this range, if it is left where it is?".
 *
 * <p>A bottle warmed in a bath warmer than wanted is ready and later too warm; one cooled in something colder than wanted is ready and
 * later too cold. Times are counted from the start of the run; what happens after its end is not known.
 */
public sealed interface TimeInRange {

    /**
     * The range is not entered in the time that was looked at.
     *
     * @param closestK the temperature nearest to the range that occurred [K]
     * @param closestAfter when it occurred, time since the start
     */
    record NeverEntered(double closestK, Duration closestAfter) implements TimeInRange {}

    /**
     * The range is entered and not left again in the time that was looked at: it may be left where it is.
     *
     * @param enteredAfter when it is first within the range, time since the start
     * @param lowestK lowest temperature from then on [K]
     * @param lowestAfter when it is lowest, time since the start
     * @param highestK highest temperature from then on [K]
     * @param highestAfter when it is highest, time since the start
     */
    record Stays(Duration enteredAfter, double lowestK, Duration lowestAfter, double highestK, Duration highestAfter)
            implements TimeInRange {}

    /**
     * The range is entered and left again: it must be taken out by then.
     *
     * @param enteredAfter when it is first within the range, time since the start
     * @param leftAfter when it first leaves the range after that, time since the start
     * @param tooWarm whether it leaves at the upper end
     * @param kelvinPerSecond rate of change where it leaves [K/s], positive while it warms
     * @param furthestK the temperature furthest beyond that end from then on [K]
     * @param furthestAfter when it is furthest beyond, time since the start
     */
    record Leaves(
            Duration enteredAfter,
            Duration leftAfter,
            boolean tooWarm,
            double kelvinPerSecond,
            double furthestK,
            Duration furthestAfter)
            implements TimeInRange {

        /**
         * Time between ready and too far.
         *
         * @return how long it is within the range
         */
        public Duration leeway() {
            return leftAfter.minus(enteredAfter);
        }
    }
}
