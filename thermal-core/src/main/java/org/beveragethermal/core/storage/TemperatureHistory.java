/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.materials.units.SiValues;

/**
 * A temperature against time in straight lines: a log, or a prediction drawn to {@value #DRAWN_WITHIN_K} K; and what it amounts to.
 *
 * <p>Times are counted from the first reading. Immutable and thread-safe.
 */
public final class TemperatureHistory {

    /** How closely the lines follow a prediction where they are compared with it [K]. */
    public static final double DRAWN_WITHIN_K = 1e-3;

    private final Lines lines;
    /** Whether it is drawn from a prediction, which is known at every time between its points. */
    private final boolean drawn;

    private final Optional<Instant> start;

    private TemperatureHistory(Lines lines, boolean drawn, Optional<Instant> start) {
        this.lines = lines;
        this.drawn = drawn;
        this.start = start;
    }

    /**
     * A log.
     *
     * @param readings two or more in ascending order of time, evenly spaced or not, each −60 °C to 80 °C; not modified
     * @return the history
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a temperature is outside its range, as what stands for a missing value is
     * @throws IllegalArgumentException if there are fewer than two readings, one is not later than the one before or more than 73,000 days
     *     (200 years) after the first, or a temperature is not finite
     */
    public static TemperatureHistory logged(List<Reading> readings) {
        return new TemperatureHistory(
                Readings.of(readings), false, Optional.of(readings.get(0).at()));
    }

    /**
     * A history of plain numbers.
     *
     * @param timesS two or more times in strictly ascending order [s], not modified; the history counts from the first
     * @param temperaturesK temperature at each [K], 150 to 500, not modified
     * @return the history
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a temperature is outside its range
     * @throws IllegalArgumentException if there are fewer than two, the lengths differ, the times do not ascend or span more than 73,000
     *     days (200 years), or a number is not finite
     */
    public static TemperatureHistory of(double[] timesS, double[] temperaturesK) {
        return new TemperatureHistory(Readings.of(timesS, temperaturesK), false, Optional.empty());
    }

    /**
     * The mean temperature of contents along a prediction.
     *
     * @param prediction the run
     * @return the history, in lines within {@link #DRAWN_WITHIN_K} of the run's curve
     */
    public static TemperatureHistory of(Prediction prediction) {
        return of(prediction, Part.MEAN);
    }

    /**
     * A temperature of contents along a prediction. Lines are halved until three points within each agree; what lies wholly between such
     * points is missed.
     *
     * @param prediction the run
     * @param part which temperature
     * @return the history, in lines within {@link #DRAWN_WITHIN_K} of the run's curve
     * @throws IllegalArgumentException if the run has no length
     */
    public static TemperatureHistory of(Prediction prediction, Part part) {
        return new TemperatureHistory(Drawing.of(prediction, part, DRAWN_WITHIN_K), true, Optional.empty());
    }

    /**
     * A stretch of time without a reading.
     *
     * @param from when it begins, time since the first reading
     * @param length how long it is
     */
    public record Gap(Duration from, Duration length) {}

    /**
     * A temperature and when it occurs first.
     *
     * @param after time since the first reading
     * @param temperatureK temperature [K]
     */
    public record Extreme(Duration after, double temperatureK) {

        /**
         * The temperature.
         *
         * @return temperature in °C
         */
        public Quantity<Temperature> temperature() {
            return SiValues.celsiusOf(temperatureK);
        }
    }

    /**
     * A change of temperature.
     *
     * @param from when it begins
     * @param over how long it takes
     * @param kelvin by how much the temperature changes [K], negative where it falls
     */
    public record Change(Duration from, Duration over, double kelvin) {

        /**
         * Mean rate of change.
         *
         * @return rate [K/h]
         */
        public double kelvinPerHour() {
            return kelvin * Times.SECONDS_PER_HOUR / Times.seconds(over);
        }
    }

    /**
     * From the first reading to the last.
     *
     * @return how long the history is
     */
    public Duration length() {
        return Times.duration(endS());
    }

    double endS() {
        return lines.endS();
    }

    Lines lines() {
        return lines;
    }

    /**
     * When the first reading was taken.
     *
     * @return the instant; empty for a history of plain numbers or of a prediction
     */
    public Optional<Instant> start() {
        return start;
    }

    /**
     * Times of the readings.
     *
     * @return times since the first [s], a copy
     */
    public double[] timesS() {
        return lines.timesS();
    }

    /**
     * The readings.
     *
     * @return temperatures [K], a copy
     */
    public double[] temperaturesK() {
        return lines.temperaturesK();
    }

    /**
     * The readings as a room's air takes them.
     *
     * @return temperature by time since the first reading
     */
    public SortedMap<Duration, Quantity<Temperature>> byDuration() {
        SortedMap<Duration, Quantity<Temperature>> map = new TreeMap<>();
        for (int i = 0; i < lines.points(); i++) {
            map.put(Times.duration(lines.timeS(i)), SiValues.celsiusOf(lines.temperatureK(i)));
        }
        return map;
    }

    /**
     * Temperature at a time.
     *
     * @param time time since the first reading, within the history
     * @return temperature in °C
     * @throws IllegalArgumentException if the time is not in the history
     */
    public Quantity<Temperature> temperatureAt(Duration time) {
        return SiValues.celsiusOf(temperatureK(within("time", time)));
    }

    double temperatureK(double timeS) {
        return lines.at(timeS);
    }

    /**
     * A part of the history.
     *
     * @param from where to begin, within the history
     * @param to where to end, later than the beginning, within the history
     * @return the history from then on, counted from its own beginning
     * @throws IllegalArgumentException if a time is not in the history or the two are not in ascending order
     */
    public TemperatureHistory between(Duration from, Duration to) {
        if (from.compareTo(to) >= 0) {
            throw new IllegalArgumentException(
                    "part from " + from + " to " + to + ": expected times in ascending order");
        }
        return part(within("from", from), within("to", to));
    }

    TemperatureHistory part(double fromS, double toS) {
        return new TemperatureHistory(lines.part(fromS, toS), drawn, start.map(at -> at.plus(Times.duration(fromS))));
    }

    private double within(String name, Duration time) {
        double timeS = Times.seconds(time);
        if (!(timeS >= 0) || time.compareTo(length()) > 0) {
            throw new IllegalArgumentException(name + " " + time + ": expected PT0S to " + length());
        }
        return Math.min(timeS, endS());
    }

    /**
     * The longest time without a reading.
     *
     * @return the gap, the first of several; one of no length for a prediction, which is known at every time
     */
    public Gap longestGap() {
        int longest = 1;
        for (int i = 2; i < lines.points(); i++) {
            if (lines.spanS(i) > lines.spanS(longest)) {
                longest = i;
            }
        }
        return drawn ? new Gap(Duration.ZERO, Duration.ZERO) : gap(longest);
    }

    /**
     * Times without a reading that are longer than one should be.
     *
     * @param expected how far apart readings should be, above 0
     * @return the longer gaps in order of time, possibly none; none for a prediction
     * @throws IllegalArgumentException if the duration is not above 0
     */
    public List<Gap> gapsLongerThan(Duration expected) {
        return endsOfGaps(expected).stream().map(this::gap).toList();
    }

    /**
     * What lies between the gaps that are longer than one should be: what figures of these parts say rests on readings, and what they lack
     * of the figures of the whole rests on straight lines.
     *
     * @param expected how far apart readings should be, above 0
     * @return parts with two readings or more in order of time, each counted from its own beginning; possibly none
     * @throws IllegalArgumentException if the duration is not above 0
     */
    public List<TemperatureHistory> withoutGapsLongerThan(Duration expected) {
        List<Integer> ends = new ArrayList<>(endsOfGaps(expected));
        ends.add(lines.points());
        List<TemperatureHistory> parts = new ArrayList<>();
        int first = 0;
        for (int end : ends) {
            if (end - first >= 2) {
                parts.add(part(lines.timeS(first), lines.timeS(end - 1)));
            }
            first = end;
        }
        return List.copyOf(parts);
    }

    private List<Integer> endsOfGaps(Duration expected) {
        Times.requirePositive("expected spacing", expected);
        double longest = Times.seconds(expected);
        List<Integer> ends = new ArrayList<>();
        for (int i = 1; i < lines.points(); i++) {
            if (!drawn && lines.spanS(i) > longest) {
                ends.add(i);
            }
        }
        return ends;
    }

    private Gap gap(int end) {
        return new Gap(Times.duration(lines.timeS(end - 1)), Times.duration(lines.spanS(end)));
    }

    /**
     * The lowest temperature.
     *
     * @return temperature and when it first occurs
     */
    public Extreme lowest() {
        return extreme(Changes.extreme(lines, -1));
    }

    /**
     * The highest temperature.
     *
     * @return temperature and when it first occurs
     */
    public Extreme highest() {
        return extreme(Changes.extreme(lines, 1));
    }

    private Extreme extreme(int point) {
        return new Extreme(Times.duration(lines.timeS(point)), lines.temperatureK(point));
    }

    /**
     * Arithmetic mean over time.
     *
     * @return temperature in °C
     */
    public Quantity<Temperature> meanTemperature() {
        return SiValues.celsiusOf(meanK());
    }

    /**
     * Arithmetic mean over time.
     *
     * @return temperature [K]
     */
    public double meanK() {
        return lines.meanK();
    }

    /**
     * Mean kinetic temperature with the activation energy by convention, integrated along the lines.
     *
     * @return temperature in °C, at least the arithmetic mean
     */
    public Quantity<Temperature> meanKineticTemperature() {
        return SiValues.celsiusOf(meanKineticTemperatureK(MeanKineticTemperature.ACTIVATION_ENERGY.value()));
    }

    /**
     * Mean kinetic temperature: {@link MeanKineticTemperature} with the integral along the lines in place of the sum.
     *
     * @param activationEnergy activation energy [J/mol], 1000 to 1 000 000
     * @return temperature [K], at least the arithmetic mean
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the energy is outside its range
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public double meanKineticTemperatureK(double activationEnergy) {
        return MeanKineticTemperature.ofLinesK(lines, activationEnergy);
    }

    /**
     * How long it is warmer than a limit.
     *
     * @param limit the limit
     * @return time above it
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public Duration timeAbove(Quantity<Temperature> limit) {
        return Times.duration(secondsAbove(SiValues.temperatureK(limit, "upper limit"), 1));
    }

    /**
     * How long it is colder than a limit.
     *
     * @param limit the limit
     * @return time below it
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public Duration timeBelow(Quantity<Temperature> limit) {
        return Times.duration(secondsAbove(SiValues.temperatureK(limit, "lower limit"), -1));
    }

    /**
     * How long it is between two limits, ends included.
     *
     * @param low lower limit
     * @param high upper limit, not below the lower
     * @return time within them
     * @throws IllegalArgumentException if a quantity is not a temperature or the limits are reversed
     */
    public Duration timeWithin(Quantity<Temperature> low, Quantity<Temperature> high) {
        double lowK = SiValues.temperatureK(low, "lower limit");
        double highK = SiValues.temperatureK(high, "upper limit");
        requireLimits(lowK, highK);
        return Times.duration(Math.max(0, endS() - secondsAbove(highK, 1) - secondsAbove(lowK, -1)));
    }

    static void requireLimits(double lowK, double highK) {
        if (!(lowK <= highK)) {
            throw new IllegalArgumentException(
                    "limits from " + lowK + " K to " + highK + " K: expected the lower one first");
        }
    }

    /** Time beyond a limit, above for sign 1, below for sign −1 [s]. */
    double secondsAbove(double limitK, int sign) {
        return Beyond.seconds(lines, limitK, sign);
    }

    /**
     * Integral of how far it is above a limit.
     *
     * @param limit the limit
     * @return degree-hours [K h], at least 0
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public double degreeHoursAbove(Quantity<Temperature> limit) {
        return degreeHours(SiValues.temperatureK(limit, "upper limit"), 1);
    }

    /**
     * Integral of how far it is below a limit.
     *
     * @param limit the limit
     * @return degree-hours [K h], at least 0
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public double degreeHoursBelow(Quantity<Temperature> limit) {
        return degreeHours(SiValues.temperatureK(limit, "lower limit"), -1);
    }

    double degreeHours(double limitK, int sign) {
        return Beyond.degreeHours(lines, limitK, sign);
    }

    /**
     * The steepest line. In a log it may be a step of the logger's last digit; {@link #greatestChange} looks over a time of your own.
     *
     * @return the line that changes fastest, up or down
     */
    public Change fastestChange() {
        int end = Changes.steepest(lines);
        return new Change(Times.duration(lines.timeS(end - 1)), Times.duration(lines.spanS(end)), lines.rise(end));
    }

    /**
     * The greatest change between two moments so far apart.
     *
     * @param over how far apart, above 0, at most the history's length
     * @return the greatest change, up or down, and when it begins
     * @throws IllegalArgumentException if the duration is outside its range
     */
    public Change greatestChange(Duration over) {
        Times.requirePositive("time for a change", over);
        double windowS = within("time for a change", over);
        double fromS = Changes.greatestFromS(lines, windowS);
        return new Change(Times.duration(fromS), over, Changes.over(lines, fromS, windowS));
    }

    /**
     * Difference between highest and lowest temperature in each whole stretch of 24 hours from the first reading.
     *
     * @return swings [K] in order; empty if the history is shorter than a day
     */
    public List<Double> dailySwingsK() {
        return Changes.dailySwingsK(lines);
    }

    @Override
    public String toString() {
        return lines.points() + " temperatures over " + length();
    }
}
