/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.compared;

import static org.beveragethermal.materials.units.Measures.celsius;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.beveragethermal.core.prediction.Explanation;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.Resistance;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.testsupport.Band;

/**
 * What a surroundings does to the bottle.
 *
 * @param row the setting
 * @param minutes times of all draws in ascending order [min], infinite for never
 * @param closestC temperature nearest to the target with nothing drawn [°C], where the target is not reached
 * @param atEndC temperature at the end of what is looked at with nothing drawn [°C]
 * @param shares resistances from the drink to the surroundings as parts of their sum, the largest first
 * @param iceMeltedKg ice that melts until the target is reached with nothing drawn [kg], empty without ice or if it is not
 */
record Outcome(
        Case row,
        List<Double> minutes,
        double closestC,
        double atEndC,
        List<Share> shares,
        OptionalDouble iceMeltedKg) {

    static final double PROBABILITY = 0.9;
    /** A law that carries less of what lies side by side is not told. */
    private static final double LEAST_PART = 0.25;

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double MILLIS_PER_SECOND = 1000;
    private static final double MILLIS_PER_MINUTE = 60_000;
    /** Resistances are taken half-way in time, and at this time where there is no half-way. */
    private static final Duration OTHERWISE = Duration.ofHours(1);

    /**
     * A resistance.
     *
     * @param name what it is
     * @param part part of the sum [-]
     * @param laws names of its laws, the one that carries most first; none for the wall
     */
    record Share(String name, double part, List<String> laws) {}

    static Outcome of(Case row, Ensemble ensemble) {
        List<Double> minutes =
                ensemble.run(Doubts.all(), draw -> minutes(row, bottle(row.run(Doubts.of(draw))))).stream()
                        .sorted()
                        .toList();
        ScenePrediction best = row.run(Doubts.none());
        Prediction bottle = bottle(best);
        double reached = minutes(row, bottle);
        boolean isReached = Double.isFinite(reached);
        Duration end = isReached ? duration(reached) : row.looking().horizon();
        double closest = bottle.timeTo(celsius(row.task().targetC())) instanceof TimeToTemperature.NeverReached never
                ? never.closestK() - ZERO_CELSIUS_K
                : row.task().targetC();
        OptionalDouble ice = row.looking().hasIce() && isReached
                ? OptionalDouble.of(
                        best.iceKg(Case.GEAR, Duration.ZERO) + row.added().kgAt(end) - best.iceKg(Case.GEAR, end))
                : OptionalDouble.empty();
        Duration halfWay = isReached ? duration(0.5 * reached) : OTHERWISE;
        return new Outcome(
                row,
                minutes,
                closest,
                bottle.meanTemperatureK(row.looking().horizon().toMillis() / MILLIS_PER_SECOND) - ZERO_CELSIUS_K,
                shares(bottle.explainAt(halfWay), Laws.Law.contact(row.kind())),
                ice);
    }

    private static Prediction bottle(ScenePrediction run) {
        return run.vessel(Case.BOTTLE);
    }

    private static Duration duration(double minutes) {
        return Duration.ofMillis(Math.round(MILLIS_PER_MINUTE * minutes));
    }

    private static double minutes(Case row, Prediction bottle) {
        TimeToTemperature answer = bottle.timeTo(celsius(row.task().targetC()));
        if (answer instanceof TimeToTemperature.Reached reached) {
            return reached.after().toMillis() / MILLIS_PER_MINUTE;
        }
        return answer instanceof TimeToTemperature.ReachedThenLost reached
                ? reached.after().toMillis() / MILLIS_PER_MINUTE
                : Double.POSITIVE_INFINITY;
    }

    /** Time with given factors on laws and nothing else drawn [min]. */
    static double minutes(Case row, Map<String, Double> multipliers) {
        return minutes(row, bottle(row.run(Doubts.none().with(multipliers))));
    }

    double low() {
        return band().low();
    }

    double median() {
        return band().median();
    }

    double high() {
        return band().high();
    }

    private Band band() {
        return Band.of(minutes.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Part of the draws that never get there [-]. */
    double neverPart() {
        return minutes.stream().filter(m -> Double.isInfinite(m)).count() / (double) minutes.size();
    }

    /** Bands of wall side by side, each by its conductance. */
    private static List<Share> shares(Explanation explanation, String contact) {
        double[] parts = new double[3];
        double sum = 0;
        Map<String, Double> inside = new TreeMap<>();
        Map<String, Double> outside = new TreeMap<>();
        for (Explanation.Band band : explanation.bands()) {
            double total = band.kelvinPerWatt();
            double weight = 1 / total;
            List<Resistance> series = band.inSeries();
            Resistance first = series.get(0);
            Resistance last = series.get(series.size() - 1);
            double[] here = {
                first.kelvinPerWatt(), total - first.kelvinPerWatt() - last.kelvinPerWatt(), last.kelvinPerWatt()
            };
            for (int i = 0; i < parts.length; i++) {
                parts[i] += weight * here[i] / total;
            }
            sum += weight;
            inside.merge(first.law(), weight, Double::sum);
            for (Resistance part : band.outside()) {
                outside.merge(law(part, contact), 1 / part.kelvinPerWatt(), Double::sum);
            }
        }
        return List.of(
                        new Share("inside film", parts[0] / sum, strongest(inside)),
                        new Share("wall", parts[1] / sum, List.of()),
                        new Share("outside", parts[2] / sum, strongest(outside)))
                .stream()
                .sorted(Comparator.comparingDouble(Share::part).reversed())
                .toList();
    }

    private static String law(Resistance part, String contact) {
        return part.law().isEmpty()
                        && (part.name().endsWith("conduction") || part.name().endsWith("contact"))
                ? contact
                : part.law();
    }

    /** Laws side by side that carry enough to be told. */
    private static List<String> strongest(Map<String, Double> conductances) {
        double sum = conductances.values().stream().mapToDouble(g -> g).sum();
        return conductances.entrySet().stream()
                .filter(law -> !law.getKey().isEmpty() && law.getValue() >= LEAST_PART * sum)
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .map(Map.Entry::getKey)
                .toList();
    }
}
