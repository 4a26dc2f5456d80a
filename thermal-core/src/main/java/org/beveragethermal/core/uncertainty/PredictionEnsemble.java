/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;

/**
 * Predictions for many draws of what is uncertain. Immutable and thread-safe.
 */
public final class PredictionEnsemble {

    private final List<Prediction> predictions;

    private PredictionEnsemble(List<Prediction> predictions) {
        this.predictions = List.copyOf(predictions);
    }

    /**
     * Predicts once per draw.
     *
     * @param ensemble how many draws, seed and threads
     * @param inputs what is uncertain
     * @param model from a draw to a prediction
     * @return the predictions
     */
    public static PredictionEnsemble of(
            Ensemble ensemble, List<UncertainInput> inputs, Function<Draw, Prediction> model) {
        return new PredictionEnsemble(ensemble.run(inputs, model));
    }

    /**
     * The single predictions.
     *
     * @return one per draw
     */
    public List<Prediction> predictions() {
        return predictions;
    }

    /**
     * Interval of the mean temperature at a time.
     *
     * @param time time since the start
     * @param probability probability inside, between 0 and 1
     * @return interval [K]
     * @throws IllegalArgumentException if the time is not in the run or the probability outside its range
     */
    public Interval temperatureK(Duration time, double probability) {
        double timeS = time.toMillis() / 1000.0;
        return Interval.of(
                predictions.stream().mapToDouble(p -> p.meanTemperatureK(timeS)).toArray(), probability);
    }

    /**
     * Spread of any figure that a prediction answers with: when it leaves a range, how much is ice, where it settles.
     *
     * @param figure from a prediction to the figure, finite; empty where its answer has none
     * @param probability probability inside, between 0 and 1
     * @return the interval, and how many draws have the figure
     * @throws IllegalArgumentException if a figure is not finite or the probability is outside its range
     */
    public Spread spread(Function<Prediction, OptionalDouble> figure, double probability) {
        return Spread.of(predictions, figure, probability);
    }

    /**
     * Spread of the time at which a temperature is first reached.
     *
     * @param target the temperature
     * @param probability probability inside, between 0 and 1
     * @return the spread, with the part of draws that never reach it
     */
    public TimeSpread timeTo(Quantity<Temperature> target, double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("probability " + probability + ": expected between 0 and 1");
        }
        List<Duration> reached = new ArrayList<>();
        for (Prediction prediction : predictions) {
            TimeToTemperature answer = prediction.timeTo(target);
            if (answer instanceof TimeToTemperature.Reached r) {
                reached.add(r.after());
            } else if (answer instanceof TimeToTemperature.ReachedThenLost r) {
                reached.add(r.after());
            }
        }
        Collections.sort(reached);
        double tail = (1 - probability) / 2;
        return new TimeSpread(
                at(reached, tail),
                at(reached, 0.5),
                at(reached, 1 - tail),
                1 - (double) reached.size() / predictions.size(),
                probability);
    }

    /**
     * Probability that the mean temperature lies in a range at a time.
     *
     * @param time time since the start
     * @param lowK lower end [K]
     * @param highK upper end [K]
     * @return part of the draws inside
     */
    public double probabilityInRange(Duration time, double lowK, double highK) {
        double timeS = time.toMillis() / 1000.0;
        long inside = predictions.stream()
                .mapToDouble(p -> p.meanTemperatureK(timeS))
                .filter(t -> t >= lowK && t <= highK)
                .count();
        return (double) inside / predictions.size();
    }

    private Optional<Duration> at(List<Duration> sorted, double p) {
        int place = (int) Math.round(p * (predictions.size() - 1));
        return place < sorted.size() ? Optional.of(sorted.get(place)) : Optional.empty();
    }
}
