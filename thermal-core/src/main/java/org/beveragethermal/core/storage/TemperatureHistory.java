/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;

/**
 * A temperature against time in straight lines: a log, or a prediction drawn to {@value #DRAWN_WITHIN_K} K; and what it amounts to.
 *
 * <p>Times are counted from the first reading. Immutable and thread-safe.
 */
public final class TemperatureHistory {

    /** How closely the lines follow a prediction where they are compared with it [K]. */
    public static final double DRAWN_WITHIN_K = 1e-3;

    private static final double COLDEST_K = 150;
    private static final double HOTTEST_K = 500;
    private static final double COLDEST_READING_K = 213.15;
    private static final double HOTTEST_READING_K = 353.15;
    private static final String MISSING =
            "loggers write −127, 85, ±999 and the like for a missing value: leave such a reading out, the gap is reported";
    private static final double SECONDS_PER_HOUR = 3600;
    private static final double DAY_S = 86_400;
    private static final double NANOS = 1e9;
    private static final int FEWEST_PARTS = 64;
    private static final int MOST_PARTS = 20_000;
    private static final int MOST_HALVINGS = 16;
    private static final double SHORTEST_S = 1e-3;

    private final double[] timesS;
    private final double[] temperaturesK;
    private final Optional<Instant> start;

    private TemperatureHistory(double[] timesS, double[] temperaturesK, Optional<Instant> start) {
        this.timesS = timesS;
        this.temperaturesK = temperaturesK;
        this.start = start;
    }

    /**
     * A log.
     *
     * @param readings two or more in ascending order of time, evenly spaced or not, each −60 °C to 80 °C; not modified
     * @return the history
     * @throws OutOfRangeException if a temperature is outside its range, as what stands for a missing value is
     * @throws IllegalArgumentException if there are fewer than two readings, one is not later than the one before, or a temperature is
     *     not finite
     */
    public static TemperatureHistory logged(List<Reading> readings) {
        requireTwo(readings.size());
        Instant first = readings.get(0).at();
        double[] times = new double[readings.size()];
        double[] temperatures = new double[readings.size()];
        for (int i = 0; i < times.length; i++) {
            Reading reading = readings.get(i);
            if (i > 0 && !reading.at().isAfter(readings.get(i - 1).at())) {
                throw new IllegalArgumentException(
                        "reading " + i + " at " + reading.at() + ": expected later than reading " + (i - 1) + " at "
                                + readings.get(i - 1).at());
            }
            times[i] = seconds(Duration.between(first, reading.at()));
            String name = "temperature of reading " + i + " at " + reading.at();
            temperatures[i] = SiValues.temperatureK(reading.temperature(), name);
            require(name, temperatures[i], COLDEST_READING_K, HOTTEST_READING_K, MISSING);
        }
        return new TemperatureHistory(times, temperatures, Optional.of(first));
    }

    /**
     * A history of plain numbers.
     *
     * @param timesS two or more times in strictly ascending order [s], not modified; the history counts from the first
     * @param temperaturesK temperature at each [K], 150 to 500, not modified
     * @return the history
     * @throws OutOfRangeException if a temperature is outside its range
     * @throws IllegalArgumentException if there are fewer than two, the lengths differ, the times do not ascend, or a number is not finite
     */
    public static TemperatureHistory of(double[] timesS, double[] temperaturesK) {
        requireTwo(timesS.length);
        if (timesS.length != temperaturesK.length) {
            throw new IllegalArgumentException(timesS.length + " times and " + temperaturesK.length
                    + " temperatures: expected as many temperatures as times");
        }
        double[] times = new double[timesS.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = timesS[i] - timesS[0];
            boolean later = i == 0 || timesS[i] > timesS[i - 1];
            if (!Double.isFinite(timesS[i]) || !later) {
                throw new IllegalArgumentException(
                        "time " + i + ", " + timesS[i] + " s: expected a finite number, above the one before");
            }
            require("temperature " + i, temperaturesK[i], COLDEST_K, HOTTEST_K, "");
        }
        return new TemperatureHistory(times, temperaturesK.clone(), Optional.empty());
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
        double end = prediction.trajectory().endS();
        if (!(end > 0)) {
            throw new IllegalArgumentException("prediction of " + end + " s: expected a run of some length");
        }
        int parts = Math.max(
                FEWEST_PARTS, Math.min(MOST_PARTS, prediction.trajectory().steps()));
        SortedMap<Double, Double> points = new TreeMap<>();
        DoubleUnaryOperator curve = t -> prediction.temperatureK(part, t);
        double before = curve.applyAsDouble(0);
        points.put(0.0, before);
        for (int i = 0; i < parts; i++) {
            double toS = end * (i + 1) / parts;
            double after = curve.applyAsDouble(toS);
            draw(curve, end * i / parts, before, toS, after, MOST_HALVINGS, points);
            before = after;
        }
        return new TemperatureHistory(
                points.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                points.values().stream().mapToDouble(Double::doubleValue).toArray(),
                Optional.empty());
    }

    /** Adds the points of a stretch, without its first. */
    private static void draw(
            DoubleUnaryOperator curve,
            double fromS,
            double first,
            double toS,
            double last,
            int halvings,
            SortedMap<Double, Double> points) {
        double length = toS - fromS;
        boolean straight = true;
        for (int quarter = 1; quarter <= 3; quarter++) {
            double line = first + (last - first) * quarter / 4;
            straight &= Math.abs(curve.applyAsDouble(fromS + length * quarter / 4) - line) <= DRAWN_WITHIN_K;
        }
        if (!straight && halvings > 0 && length > 2 * SHORTEST_S) {
            double middleS = fromS + length / 2;
            double middle = curve.applyAsDouble(middleS);
            draw(curve, fromS, first, middleS, middle, halvings - 1, points);
            draw(curve, middleS, middle, toS, last, halvings - 1, points);
        } else {
            points.put(toS, last);
        }
    }

    private static void requireTwo(int readings) {
        if (readings < 2) {
            throw new IllegalArgumentException(
                    "history of " + readings + (readings == 1 ? " reading" : " readings") + ": expected at least 2");
        }
    }

    private static void require(String name, double temperatureK, double low, double high, String reason) {
        if (!OutOfRangeException.admits(temperatureK, low, high)) {
            throw OutOfRangeException.refusal(name, temperatureK, low, high, "K", reason);
        }
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
            return kelvin * SECONDS_PER_HOUR / seconds(over);
        }
    }

    /**
     * From the first reading to the last.
     *
     * @return how long the history is
     */
    public Duration length() {
        return duration(endS());
    }

    double endS() {
        return timesS[timesS.length - 1];
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
        return timesS.clone();
    }

    /**
     * The readings.
     *
     * @return temperatures [K], a copy
     */
    public double[] temperaturesK() {
        return temperaturesK.clone();
    }

    /**
     * The readings as a room's air takes them.
     *
     * @return temperature by time since the first reading
     */
    public SortedMap<Duration, Quantity<Temperature>> byDuration() {
        SortedMap<Duration, Quantity<Temperature>> map = new TreeMap<>();
        for (int i = 0; i < timesS.length; i++) {
            map.put(duration(timesS[i]), SiValues.celsiusOf(temperaturesK[i]));
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
        int found = Arrays.binarySearch(timesS, timeS);
        if (found >= 0) {
            return temperaturesK[found];
        }
        int after = Math.min(timesS.length - 1, Math.max(1, -found - 1));
        double part = (timeS - timesS[after - 1]) / (timesS[after] - timesS[after - 1]);
        return temperaturesK[after - 1] + part * (temperaturesK[after] - temperaturesK[after - 1]);
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
        double[] inside =
                Arrays.stream(timesS).filter(t -> t > fromS && t < toS).toArray();
        double[] times = new double[inside.length + 2];
        double[] temperatures = new double[times.length];
        System.arraycopy(inside, 0, times, 1, inside.length);
        times[0] = fromS;
        times[times.length - 1] = toS;
        for (int i = 0; i < times.length; i++) {
            temperatures[i] = temperatureK(times[i]);
            times[i] -= fromS;
        }
        return new TemperatureHistory(times, temperatures, start.map(at -> at.plus(duration(fromS))));
    }

    private double within(String name, Duration time) {
        double timeS = seconds(time);
        if (!(timeS >= 0) || time.compareTo(length()) > 0) {
            throw new IllegalArgumentException(name + " " + time + ": expected PT0S to " + length());
        }
        return Math.min(timeS, endS());
    }

    /**
     * The longest time without a reading.
     *
     * @return the gap, the first of several
     */
    public Gap longestGap() {
        int longest = 1;
        for (int i = 1; i < timesS.length; i++) {
            if (timesS[i] - timesS[i - 1] > timesS[longest] - timesS[longest - 1]) {
                longest = i;
            }
        }
        return gap(longest);
    }

    /**
     * Times without a reading that are longer than one should be.
     *
     * @param expected how far apart readings should be, above 0
     * @return the longer gaps in order of time, possibly none
     * @throws IllegalArgumentException if the duration is not above 0
     */
    public List<Gap> gapsLongerThan(Duration expected) {
        requirePositive("expected spacing", expected);
        List<Gap> gaps = new ArrayList<>();
        for (int i = 1; i < timesS.length; i++) {
            if (timesS[i] - timesS[i - 1] > seconds(expected)) {
                gaps.add(gap(i));
            }
        }
        return List.copyOf(gaps);
    }

    private Gap gap(int end) {
        return new Gap(duration(timesS[end - 1]), duration(timesS[end] - timesS[end - 1]));
    }

    /**
     * The lowest temperature.
     *
     * @return temperature and when it first occurs
     */
    public Extreme lowest() {
        return extreme(-1);
    }

    /**
     * The highest temperature.
     *
     * @return temperature and when it first occurs
     */
    public Extreme highest() {
        return extreme(1);
    }

    private Extreme extreme(int sign) {
        int best = 0;
        for (int i = 1; i < timesS.length; i++) {
            if (sign * temperaturesK[i] > sign * temperaturesK[best]) {
                best = i;
            }
        }
        return new Extreme(duration(timesS[best]), temperaturesK[best]);
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
        double sum = 0;
        for (int i = 1; i < timesS.length; i++) {
            sum += (timesS[i] - timesS[i - 1]) * 0.5 * (temperaturesK[i] + temperaturesK[i - 1]);
        }
        return sum / endS();
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
     * @throws OutOfRangeException if the energy is outside its range
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public double meanKineticTemperatureK(double activationEnergy) {
        if (!OutOfRangeException.admits(
                activationEnergy, MeanKineticTemperature.LEAST_ENERGY, MeanKineticTemperature.MOST_ENERGY)) {
            throw OutOfRangeException.refusal(
                    "activation energy",
                    activationEnergy,
                    MeanKineticTemperature.LEAST_ENERGY,
                    MeanKineticTemperature.MOST_ENERGY,
                    "J/mol",
                    "");
        }
        double quotientK = activationEnergy / MeanKineticTemperature.GAS_CONSTANT;
        double sum = 0;
        for (int i = 1; i < timesS.length; i++) {
            sum += (timesS[i] - timesS[i - 1]) * meanRate(quotientK, temperaturesK[i - 1], temperaturesK[i]);
        }
        return MeanKineticTemperature.temperatureK(quotientK, sum / endS());
    }

    /** Mean of the rate along a line, which is its mean over the temperatures, cut so that it grows little within a part. */
    private static double meanRate(double quotientK, double fromK, double toK) {
        double exponents = Math.abs(quotientK * (1 / fromK - 1 / toK));
        return Quadrature.mean(
                t -> MeanKineticTemperature.rate(quotientK, t), fromK, toK, 1 + (int) Math.ceil(2 * exponents));
    }

    /**
     * How long it is warmer than a limit.
     *
     * @param limit the limit
     * @return time above it
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public Duration timeAbove(Quantity<Temperature> limit) {
        return duration(secondsAbove(SiValues.temperatureK(limit, "upper limit"), 1));
    }

    /**
     * How long it is colder than a limit.
     *
     * @param limit the limit
     * @return time below it
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public Duration timeBelow(Quantity<Temperature> limit) {
        return duration(secondsAbove(SiValues.temperatureK(limit, "lower limit"), -1));
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
        return duration(Math.max(0, endS() - secondsAbove(highK, 1) - secondsAbove(lowK, -1)));
    }

    static void requireLimits(double lowK, double highK) {
        if (!(lowK <= highK)) {
            throw new IllegalArgumentException(
                    "limits from " + lowK + " K to " + highK + " K: expected the lower one first");
        }
    }

    /** Time beyond a limit, above for sign 1, below for sign −1 [s]. */
    double secondsAbove(double limitK, int sign) {
        double sum = 0;
        for (int i = 1; i < timesS.length; i++) {
            double first = sign * (temperaturesK[i - 1] - limitK);
            double last = sign * (temperaturesK[i] - limitK);
            sum += (timesS[i] - timesS[i - 1]) * partAbove(first, last);
        }
        return sum;
    }

    private static double partAbove(double first, double last) {
        double high = Math.max(first, last);
        double low = Math.min(first, last);
        if (high <= 0) {
            return 0;
        }
        return low >= 0 ? 1 : high / (high - low);
    }

    /** When a temperature that is reached is reached first. */
    Duration firstAtLeast(double temperatureK) {
        int at = 0;
        while (temperaturesK[at] < temperatureK) {
            at++;
        }
        if (at == 0) {
            return Duration.ZERO;
        }
        double part = (temperatureK - temperaturesK[at - 1]) / (temperaturesK[at] - temperaturesK[at - 1]);
        return duration(timesS[at - 1] + part * (timesS[at] - timesS[at - 1]));
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
        double sum = 0;
        for (int i = 1; i < timesS.length; i++) {
            double first = sign * (temperaturesK[i - 1] - limitK);
            double last = sign * (temperaturesK[i] - limitK);
            double part = partAbove(first, last);
            double mean = part == 1 ? 0.5 * (first + last) : 0.5 * part * Math.max(first, last);
            sum += (timesS[i] - timesS[i - 1]) * mean;
        }
        return sum / SECONDS_PER_HOUR;
    }

    /**
     * The steepest line. In a log it may be a step of the logger's last digit; {@link #greatestChange} looks over a time of your own.
     *
     * @return the line that changes fastest, up or down
     */
    public Change fastestChange() {
        int best = 1;
        for (int i = 1; i < timesS.length; i++) {
            if (Math.abs(slope(i)) > Math.abs(slope(best))) {
                best = i;
            }
        }
        return new Change(
                duration(timesS[best - 1]),
                duration(timesS[best] - timesS[best - 1]),
                temperaturesK[best] - temperaturesK[best - 1]);
    }

    private double slope(int end) {
        return (temperaturesK[end] - temperaturesK[end - 1]) / (timesS[end] - timesS[end - 1]);
    }

    /**
     * The greatest change between two moments so far apart.
     *
     * @param over how far apart, above 0, at most the history's length
     * @return the greatest change, up or down, and when it begins
     * @throws IllegalArgumentException if the duration is outside its range
     */
    public Change greatestChange(Duration over) {
        requirePositive("time for a change", over);
        double window = within("time for a change", over);
        TreeSet<Double> begins = new TreeSet<>();
        for (double t : timesS) {
            begins.add(Math.min(t, endS() - window));
            begins.add(Math.max(0, t - window));
        }
        Change best = new Change(Duration.ZERO, over, 0);
        for (double t : begins) {
            double change = temperatureK(Math.min(endS(), t + window)) - temperatureK(t);
            if (Math.abs(change) > Math.abs(best.kelvin())) {
                best = new Change(duration(t), over, change);
            }
        }
        return best;
    }

    /**
     * Difference between highest and lowest temperature in each whole stretch of 24 hours from the first reading.
     *
     * @return swings [K] in order; empty if the history is shorter than a day
     */
    public List<Double> dailySwingsK() {
        List<Double> swings = new ArrayList<>();
        for (int day = 0; (day + 1) * DAY_S <= endS(); day++) {
            TemperatureHistory part = part(day * DAY_S, (day + 1) * DAY_S);
            swings.add(part.highest().temperatureK() - part.lowest().temperatureK());
        }
        return List.copyOf(swings);
    }

    static void requirePositive(String name, Duration duration) {
        if (duration.isNegative() || duration.isZero()) {
            throw new IllegalArgumentException(name + " " + duration + ": expected a duration above 0");
        }
    }

    static double seconds(Duration time) {
        return time.getSeconds() + time.getNano() / NANOS;
    }

    static Duration duration(double timeS) {
        double whole = Math.floor(timeS);
        return Duration.ofSeconds((long) whole, Math.round((timeS - whole) * NANOS));
    }

    @Override
    public String toString() {
        return timesS.length + " temperatures over " + length();
    }
}
