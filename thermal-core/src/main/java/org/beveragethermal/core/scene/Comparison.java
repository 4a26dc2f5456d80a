/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.beveragethermal.core.prediction.ModelAdvice;
import org.beveragethermal.core.prediction.ModelAdvice.Model;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * The same exposures of one vessel by every description of its contents, and which of them is warranted.
 *
 * <pre>{@code
 * Comparison c = Comparison.of(bottle, in(bath, Duration.ofMinutes(30)));
 * System.out.println(c.text());
 * Prediction best = c.prediction(c.advice().model());
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Comparison {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final int SAMPLES = 20;

    private final Map<Model, Prediction> predictions;
    private final ModelAdvice advice;

    private Comparison(Map<Model, Prediction> predictions, ModelAdvice advice) {
        this.predictions = new EnumMap<>(predictions);
        this.advice = advice;
    }

    /**
     * What one description gives at a moment.
     *
     * @param model the description
     * @param meanK mean temperature [K]
     * @param lowestK lowest temperature in the contents [K]
     * @param highestK highest temperature in the contents [K]
     */
    public record Row(Model model, double meanK, double lowestK, double highestK) {}

    /**
     * Runs all descriptions.
     *
     * @param vessel the vessel with its contents at their temperature at the start
     * @param exposures one or more, in order
     * @return the comparison; its advice is that of the exposure that asks for most
     * @throws IllegalArgumentException if there is no exposure
     */
    public static Comparison of(FilledVessel vessel, Exposure... exposures) {
        return of(vessel, List.of(exposures));
    }

    /**
     * Runs all descriptions.
     *
     * @param vessel the vessel with its contents at their temperature at the start
     * @param exposures one or more, in order, not modified
     * @return the comparison; its advice is that of the exposure that asks for most
     * @throws IllegalArgumentException if there is no exposure
     */
    public static Comparison of(FilledVessel vessel, List<Exposure> exposures) {
        Prediction lumped = Lumped.of(vessel).expose(exposures);
        Map<Model, Prediction> all = new EnumMap<>(Model.class);
        all.put(Model.LUMPED, lumped);
        all.put(Model.AXIAL, Layered.axial(vessel).expose(exposures));
        all.put(Model.RADIAL, Layered.radial(vessel).expose(exposures));
        return new Comparison(all, lumped.advice().orElseThrow());
    }

    /**
     * Which description is warranted.
     *
     * @return the advice of the exposure that asks for most; {@link Prediction#stayAdvice} has it for each
     */
    public ModelAdvice advice() {
        return advice;
    }

    /**
     * The prediction by one description.
     *
     * @param model the description
     * @return its prediction
     */
    public Prediction prediction(Model model) {
        return Objects.requireNonNull(predictions.get(model));
    }

    /**
     * What each description gives at a moment.
     *
     * @param time time since the start
     * @return rows in the order lumped, axial, radial
     * @throws IllegalArgumentException if the time is not in the run
     */
    public List<Row> rowsAt(Duration time) {
        return predictions.entrySet().stream()
                .map(entry -> row(entry.getKey(), entry.getValue(), time.toMillis() / 1000.0))
                .toList();
    }

    private static Row row(Model model, Prediction prediction, double timeS) {
        double[] profile = prediction.profileK(timeS);
        return new Row(
                model,
                prediction.meanTemperatureK(timeS),
                Arrays.stream(profile).min().orElseThrow(),
                Arrays.stream(profile).max().orElseThrow());
    }

    /**
     * The largest difference between the means of two descriptions, at twenty times through the run.
     *
     * @param one a description
     * @param other another
     * @return difference [K], ≥ 0
     */
    public double largestDifferenceK(Model one, Model other) {
        double end = prediction(one).end().toMillis() / 1000.0;
        double largest = 0;
        for (int i = 0; i <= SAMPLES; i++) {
            double timeS = end * i / SAMPLES;
            largest = Math.max(
                    largest,
                    Math.abs(prediction(one).meanTemperatureK(timeS)
                            - prediction(other).meanTemperatureK(timeS)));
        }
        return largest;
    }

    /**
     * The comparison in words and numbers, at the end of the run.
     *
     * @return several lines
     */
    public String text() {
        StringBuilder text = new StringBuilder();
        Duration end = prediction(Model.LUMPED).end();
        text.append(String.format(Locale.ROOT, "After %.0f min", end.toMillis() / 60_000.0))
                .append('\n');
        for (Row row : rowsAt(end)) {
            text.append(String.format(
                            Locale.ROOT,
                            "%-7s mean %5.1f °C, from %5.1f to %5.1f °C",
                            row.model().name().toLowerCase(Locale.ROOT),
                            row.meanK() - ZERO_CELSIUS_K,
                            row.lowestK() - ZERO_CELSIUS_K,
                            row.highestK() - ZERO_CELSIUS_K))
                    .append('\n');
        }
        return text.append("advice: ").append(advice.text()).append('\n').toString();
    }
}
