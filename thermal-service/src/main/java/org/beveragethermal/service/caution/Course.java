/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.prediction.Part;

/** A course of a drink's temperature, predicted or logged, as the rules look at it. */
interface Course {

    /** A temperature held at a limit is not above it; rounding of a run or a log [K]. */
    double ROUNDING_K = 1e-5;

    /**
     * A time at or beyond a limit.
     *
     * @param from when it begins, time since the start
     * @param until when it ends; empty if not by the end of the course
     */
    record Span(Duration from, Optional<Duration> until) {

        Crossing crossing() {
            return Crossing.at(from, until);
        }
    }

    /**
     * What fills a closed vessel by freezing.
     *
     * @param after when it is full, time since the start
     * @param meanK mean temperature then [K]
     */
    record Filling(Duration after, double meanK) {}

    /** The first time above a limit (sign 1) or at and below it (sign −1), looked at from a time on that lies in the course. */
    Optional<Span> beyond(Part part, double limitK, int sign, Duration from);

    /** As above, from the start. */
    default Optional<Span> beyond(Part part, double limitK, int sign) {
        return beyond(part, limitK, sign, Duration.ZERO);
    }

    /** The highest (sign 1) or lowest (sign −1) temperature [K]. */
    double extremeK(Part part, int sign);

    /** End of the course, time since the start. */
    Duration end();

    /** When the closed vessel is full of ice and drink, as if all that can freeze at a temperature has frozen. */
    default Optional<Filling> fullOfIce(ClosedVessel vessel) {
        OptionalDouble full = ClosedLimits.fullOfIceK(vessel);
        return full.isEmpty()
                ? Optional.empty()
                : beyond(Part.MEAN, full.getAsDouble(), -1).map(span -> new Filling(span.from(), full.getAsDouble()));
    }

    /** What a holding clock says at the end. */
    HoldingTime holding(HoldingClock clock);
}
