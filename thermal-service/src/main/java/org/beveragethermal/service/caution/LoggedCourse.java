/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.storage.TemperatureHistory;

/** The course of a history: one temperature for all parts, in straight lines. */
final class LoggedCourse implements Course {

    private final TemperatureHistory history;
    private final double[] timesS;
    private final double[] temperaturesK;

    LoggedCourse(TemperatureHistory history) {
        this.history = history;
        this.timesS = history.timesS();
        this.temperaturesK = history.temperaturesK();
    }

    @Override
    public Optional<Span> beyond(Part part, double limitK, int sign, Duration from) {
        double strictK = sign > 0 ? limitK + ROUNDING_K : limitK;
        OptionalDouble first = Courses.firstS(timesS, temperaturesK, strictK, sign, Times.seconds(from));
        if (first.isEmpty()) {
            return Optional.empty();
        }
        double backK = strictK - sign * ROUNDING_K;
        OptionalDouble back = Courses.firstS(timesS, temperaturesK, backK, -sign, first.getAsDouble());
        Optional<Duration> until = back.isPresent() && back.getAsDouble() > first.getAsDouble()
                ? Optional.of(Times.duration(back.getAsDouble()))
                : Optional.empty();
        return Optional.of(new Span(Times.duration(first.getAsDouble()), until));
    }

    @Override
    public double extremeK(Part part, int sign) {
        return (sign > 0 ? history.highest() : history.lowest()).temperatureK();
    }

    @Override
    public Duration end() {
        return history.length();
    }

    @Override
    public HoldingTime holding(HoldingClock clock) {
        return clock.read(history);
    }
}
