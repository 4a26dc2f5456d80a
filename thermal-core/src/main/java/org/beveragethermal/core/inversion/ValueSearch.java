/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.materials.units.SiValues;

/**
 * Which value of something, within a range, makes a temperature be reached at a time: how cold the air, how much ice, how strong the
 * wind.
 *
 * <p>Each value that is looked at is a run. The range is scanned, and a root is searched in each bracket, so that answers that first rise
 * and then fall give all values that do; the number of runs is bounded. {@link RequiredValues} has ready-made questions.
 *
 * <pre>{@code
 * ValueSearch search = ValueSearch.of(
 *         AskedValue.of("air speed", "m/s"), 0, 5, (speed, horizon) -> Lumped.of(bottle)
 *                 .expose(in(room.withSpeed(metresPerSecond(speed)), horizon)));
 * ValueAnswer answer = search.temperatureAt(Duration.ofHours(1), celsius(14));
 * }</pre>
 *
 * <p>Immutable; as thread-safe as its model.
 */
public final class ValueSearch {

    private static final int USUAL_RUNS = 100;
    private static final int LEAST_RUNS = 20;
    private static final int MOST_RUNS = 10_000;
    private static final int SCAN_STEPS = 12;
    /** A value is found to this part of its range. */
    private static final double ACCURACY_PART = 1e-6;
    /** Slopes by differences over this part of the range on either side, well above the tolerance of a run. */
    private static final double SLOPE_PART = 0.01;
    /** Temperatures that are told apart [K]. */
    private static final double SAME_K = 0.01;
    /** Times that are told apart, as a part. */
    private static final double SAME_PART = 0.01;
    /** A run shows "not by then" if it lasts somewhat longer. */
    private static final double BEYOND = 1.5;
    /** A kelvin that moves the value by more than this part of its range says that it hardly depends on it. */
    private static final double ILL_PART = 0.5;

    private static final double S_PER_H = 3600;

    /** From a value to a prediction. */
    @FunctionalInterface
    public interface Model {

        /**
         * Predicts with a value.
         *
         * @param value the value [SI], within the range of the search
         * @param horizon how long the run must be at least; for what the temperature tends to that is twice the time asked for and at
         *     least four days
         * @return the prediction
         */
        Prediction predict(double value, Duration horizon);
    }

    private final AskedValue asked;
    private final double low;
    private final double high;
    private final Model model;
    private final int mostRuns;

    private ValueSearch(AskedValue asked, double low, double high, Model model, int mostRuns) {
        this.asked = Objects.requireNonNull(asked, "asked");
        this.low = low;
        this.high = high;
        this.model = Objects.requireNonNull(model, "model");
        this.mostRuns = mostRuns;
    }

    /**
     * A search.
     *
     * @param asked what the value is
     * @param low lower end of the range [SI], finite
     * @param high upper end [SI], finite, above the lower
     * @param model from a value to a prediction; what it refuses is refused by the search
     * @return the search
     * @throws IllegalArgumentException if the range is empty or an end is not finite
     */
    public static ValueSearch of(AskedValue asked, double low, double high, Model model) {
        if (!(low < high && Double.isFinite(high - low))) {
            throw new IllegalArgumentException(asked.name() + " from " + low + " to " + high
                    + ": expected finite ends, the upper above the lower");
        }
        return new ValueSearch(asked, low, high, model, USUAL_RUNS);
    }

    /**
     * The same search with another bound on what it may cost.
     *
     * @param newMostRuns predictions at most while values are searched, 20 to 10 000; 100 unless said otherwise; three more per value
     *     found are run for its slope
     * @return a new search
     * @throws IllegalArgumentException if the number is outside its range
     */
    public ValueSearch withMostRuns(int newMostRuns) {
        if (newMostRuns < LEAST_RUNS || newMostRuns > MOST_RUNS) {
            throw new IllegalArgumentException("runs " + newMostRuns + ": expected " + LEAST_RUNS + " to " + MOST_RUNS);
        }
        return new ValueSearch(asked, low, high, model, newMostRuns);
    }

    /**
     * Which value makes the mean temperature at a time equal a target.
     *
     * @param time time since the start, more than nothing
     * @param target the temperature
     * @return all values that do, or that none or any does
     * @throws IllegalArgumentException if the time is not positive or the target is no temperature
     */
    public ValueAnswer temperatureAt(Duration time, Quantity<Temperature> target) {
        double timeS = Times.positiveS(time, "time");
        double targetK = SiValues.temperatureK(target, "target temperature");
        String question = "To be at " + Text.celsius(targetK) + " after " + Text.time(time);
        return search(
                new Question(question, time, targetK),
                value -> model.predict(value, time).meanTemperatureK(timeS),
                targetK,
                SAME_K);
    }

    /**
     * Which value makes the mean temperature reach a target for the first time after a time.
     *
     * @param target the temperature
     * @param time time since the start, more than nothing
     * @return all values that do, or that none or any does
     * @throws IllegalArgumentException if the time is not positive or the target is no temperature
     */
    public ValueAnswer timeTo(Quantity<Temperature> target, Duration time) {
        double timeS = Times.positiveS(time, "time");
        double targetK = SiValues.temperatureK(target, "target temperature");
        Duration horizon = Times.duration(BEYOND * timeS);
        String question = "To reach " + Text.celsius(targetK) + " after " + Text.time(time);
        return search(
                new Question(question, time, targetK),
                value -> promptness(model.predict(value, horizon), targetK, timeS),
                0.5,
                0.25 * SAME_PART);
    }

    /**
     * 1 if it is there at the start, a half if it gets there in time, above 0 if it gets there in the run, and below 0, the nearer to it the
     * nearer it comes, if it does not: finite in any case.
     */
    private static double promptness(Prediction prediction, double targetK, double timeS) {
        TimeToTemperature answer = prediction.timeToK(targetK, 0);
        if (answer instanceof TimeToTemperature.NeverReached never) {
            double missedK = Math.abs(never.closestK() - targetK);
            return -missedK / (1 + missedK);
        }
        double afterS = answer instanceof TimeToTemperature.Reached reached
                ? Times.seconds(reached.after())
                : Times.seconds(((TimeToTemperature.ReachedThenLost) answer).after());
        return timeS / (timeS + afterS);
    }

    /** What is asked, in words and figures. */
    private record Question(String text, Duration time, double targetK) {}

    private ValueAnswer search(Question question, DoubleUnaryOperator function, double level, double same) {
        LevelSearch search = new LevelSearch(function, low, high, SCAN_STEPS, mostRuns, ACCURACY_PART * (high - low));
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double closest = low;
        for (int i = 0; i <= SCAN_STEPS; i++) {
            double value = i == SCAN_STEPS ? high : low + (high - low) * i / SCAN_STEPS;
            double here = search.at(value);
            least = Math.min(least, here);
            most = Math.max(most, here);
            closest = Math.abs(here - level) < Math.abs(search.at(closest) - level) ? value : closest;
        }
        if (most - level <= same && level - least <= same) {
            double spreadK = Math.abs(temperatureK(high, question) - temperatureK(low, question));
            return new ValueAnswer.AllDo(question.text(), asked, low, high, spreadK, search.evaluations() + 2);
        }
        List<ValueAnswer.Solution> solutions = new ArrayList<>();
        int extra = 0;
        for (double root : search.roots(level)) {
            boolean rough = search.accuracyReached() > ACCURACY_PART * (high - low);
            // Where the function jumps across the level, such as from "in time" to "never", nothing is reached; what
            // the
            // bound on runs left rough may be off by more.
            if (Math.abs(function.applyAsDouble(root) - level) <= same || rough) {
                solutions.add(solution(root, question, rough));
                extra += 3;
            }
            extra++;
        }
        int runs = search.evaluations() + extra;
        if (solutions.isEmpty()) {
            return never(question, closest, runs);
        }
        return solutions.size() == 1
                ? new ValueAnswer.Reached(question.text(), asked, solutions.get(0), runs)
                : new ValueAnswer.Several(question.text(), asked, solutions, runs);
    }

    private double temperatureK(double value, Question question) {
        return model.predict(value, question.time()).meanTemperatureK(Times.seconds(question.time()));
    }

    private ValueAnswer never(Question question, double closest, int runs) {
        Prediction longer = continued(closest, question);
        double timeS = Times.seconds(question.time());
        String help = closest == low || closest == high
                ? Text.format(
                        "A %s %s than the range allows would come nearer",
                        closest == low ? "lower" : "higher", asked.name())
                : Text.format("It is nearest inside the range: another %s does not help", asked.name());
        return new ValueAnswer.NeverReached(
                question.text(),
                asked,
                closest,
                longer.meanTemperatureK(timeS),
                longer.asymptote(),
                runs + 1,
                help + moreTime(longer, question.targetK(), timeS));
    }

    /** Whether the nearest value gets there later, or what it tends to. */
    private static String moreTime(Prediction longer, double targetK, double timeS) {
        double laterS = longer.trajectory()
                .firstCrossing(timeS, at -> longer.meanTemperatureK(at) - targetK)
                .orElse(0);
        return laterS > timeS
                ? Text.format("; with that nearest, %s more time would do.", Text.time(laterS - timeS))
                : Text.format("; left with that nearest it %s.", Text.tends(longer.asymptote()));
    }

    /** A run with a value that goes on much longer than was asked for. */
    private Prediction continued(double value, Question question) {
        return model.predict(value, Times.duration(Course.continuedS(Times.seconds(question.time()))));
    }

    private ValueAnswer.Solution solution(double value, Question question, boolean rough) {
        double timeS = Times.seconds(question.time());
        Prediction prediction = continued(value, question);
        double step = SLOPE_PART * (high - low);
        double below = Math.max(low, value - step);
        double above = Math.min(high, value + step);
        double differenceK = temperatureK(above, question) - temperatureK(below, question);
        double perKelvin = inRange((above - below) / differenceK, differenceK);
        double ratePerS = Course.rateKPerS(prediction, timeS);
        double thereK = prediction.meanTemperatureK(timeS);
        List<String> warnings = new ArrayList<>();
        if (rough) {
            warnings.add("The bound on runs was reached: the value is a rough one.");
        }
        if (Math.abs(perKelvin) > ILL_PART * (high - low)) {
            warnings.add("The temperature hardly depends on it: a small error of anything else moves the value far.");
        }
        warnings.addAll(Course.condition(
                thereK, timeS, Course.secondsPerKelvin(ratePerS), Optional.of(prediction.asymptote())));
        if (Course.iceS(prediction, timeS).isPresent()) {
            warnings.add("By then a part of the drink has begun to freeze.");
        }
        return new ValueAnswer.Solution(value, perKelvin, thereK, S_PER_H * ratePerS, warnings);
    }

    /** Finite even where nothing depends on the value. */
    private static double inRange(double slope, double differenceK) {
        return differenceK == 0 ? Double.MAX_VALUE : Math.max(-Double.MAX_VALUE, Math.min(Double.MAX_VALUE, slope));
    }
}
