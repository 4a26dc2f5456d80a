/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.testsupport.Band;

/**
 * A row beside its prediction: minutes for rows about a time, the part of the excess that is left for rows about a temperature.
 *
 * @param row the row
 * @param run how it was run
 * @param measured what was measured
 * @param draws what each draw says
 * @param first what those draws say in which the first of the setting's alternatives holds; all, if there are none
 * @param second what the others say; all, if there are none
 */
record Comparison(MeasuredRow row, Described run, double measured, List<Double> draws, Band first, Band second) {

    /** Of the intervals that the tables show. */
    static final double PROBABILITY = 0.90;

    private static final double SECONDS_PER_MINUTE = 60;

    /** Most times are reached in this part of the time that is looked at; only where one is not, all of it is run. */
    private static final int SOONER = 6;

    /** One draw: whether the first alternative holds in it, and the answer for each row. */
    private record Answers(boolean first, List<Double> values) {}

    /** Compares all rows of some runs, in the order of the file. */
    static List<Comparison> all(List<Mappings.Series> runs, Ensemble ensemble) {
        Map<String, Comparison> byId = new HashMap<>();
        Map<String, MeasuredRow> rows = new HashMap<>();
        MeasuredRow.all().forEach(row -> rows.put(row.id(), row));
        for (Mappings.Series series : runs) {
            List<MeasuredRow> asked =
                    series.ids().stream().map(id -> known(rows, id)).toList();
            of(series, asked, ensemble).forEach(c -> byId.put(c.row().id(), c));
        }
        return MeasuredRow.all().stream()
                .filter(row -> byId.containsKey(row.id()))
                .map(row -> known(byId, row.id()))
                .toList();
    }

    /** Compares rows that one run answers. */
    static List<Comparison> of(Mappings.Series series, List<MeasuredRow> rows, Ensemble ensemble) {
        Duration duration = duration(series, rows);
        List<Answers> answers = ensemble.run(Conditions.all(), draw -> {
            Described.Drawn drawn = run(series, rows, draw, duration);
            return new Answers(
                    series.run().setting().alternatives().isFirst(draw),
                    rows.stream().map(row -> answer(series, row, drawn)).toList());
        });
        boolean divided = series.run().setting().alternatives() != Setting.Alternatives.NONE;
        List<Comparison> comparisons = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            MeasuredRow row = rows.get(i);
            double measured = measured(series, row);
            comparisons.add(new Comparison(
                    row,
                    series.run(),
                    measured,
                    values(answers, i, a -> true),
                    band(values(answers, i, a -> !divided || a.first()), PROBABILITY),
                    band(values(answers, i, a -> !divided || !a.first()), PROBABILITY)));
        }
        return comparisons;
    }

    private static Described.Drawn run(Mappings.Series series, List<MeasuredRow> rows, Draw draw, Duration duration) {
        if (rows.stream().allMatch(row -> row.states() == MeasuredRow.States.TIME)) {
            Described.Drawn soon = series.run().run(draw, duration.dividedBy(SOONER));
            if (rows.stream().allMatch(row -> Double.isFinite(answer(series, row, soon)))) {
                return soon;
            }
        }
        return series.run().run(draw, duration);
    }

    private static List<Double> values(List<Answers> answers, int place, Predicate<Answers> which) {
        return answers.stream().filter(which).map(a -> a.values().get(place)).toList();
    }

    private static Band band(List<Double> values, double probability) {
        return Band.of(values.stream().mapToDouble(Double::doubleValue).toArray(), probability);
    }

    private static Duration duration(Mappings.Series series, List<MeasuredRow> rows) {
        if (rows.stream().anyMatch(MeasuredRow::isAboutTime)) {
            return series.run().setting().horizon();
        }
        double longest =
                rows.stream().mapToDouble(MeasuredRow::statedMinutes).max().orElseThrow();
        return Duration.ofSeconds(Math.round(SECONDS_PER_MINUTE * (longest - series.fromMinutes())));
    }

    private static double measured(Mappings.Series series, MeasuredRow row) {
        return switch (row.states()) {
            case TIME -> row.statedMinutes() - series.fromMinutes();
            case TEMPERATURE -> series.run().excess(endCelsius(series, row));
            case NEVER -> Double.POSITIVE_INFINITY;
        };
    }

    private static double answer(Mappings.Series series, MeasuredRow row, Described.Drawn drawn) {
        if (row.isAboutTime()) {
            OptionalDouble reached = drawn.firstTimeS(endCelsius(series, row));
            return reached.orElse(Double.POSITIVE_INFINITY) / SECONDS_PER_MINUTE;
        }
        double timeS = SECONDS_PER_MINUTE * (row.statedMinutes() - series.fromMinutes());
        return series.run().excess(drawn.celsiusAt().applyAsDouble(timeS));
    }

    private static double endCelsius(Mappings.Series series, MeasuredRow row) {
        return row.endCelsius(series.run().start().middle());
    }

    private static <T> T known(Map<String, T> map, String id) {
        T value = map.get(id);
        if (value == null) {
            throw new IllegalStateException(id + ": expected one of " + map.keySet());
        }
        return value;
    }

    boolean isTime() {
        return row.isAboutTime();
    }

    /** What all draws say. */
    Band predicted() {
        return band(draws, PROBABILITY);
    }

    /** Whether the measured value lies in the interval that the tables show. */
    boolean isInside() {
        return isInside(PROBABILITY);
    }

    /** Whether the measured value lies in an interval of the draws; one that came later than stated may lie anywhere above. */
    boolean isInside(double probability) {
        Band interval = band(draws, probability);
        return (row.isLaterThanStated() || measured >= interval.low()) && measured <= interval.high();
    }

    /** Whether the interval has an upper end. */
    boolean isAlwaysReached() {
        return Double.isFinite(predicted().high());
    }

    /** Upper over lower end; infinite if the lower one is at the temperature of the medium or beyond it. */
    double ratio() {
        Band interval = predicted();
        return interval.low() > 0 ? interval.high() / interval.low() : Double.POSITIVE_INFINITY;
    }

    /** Size of ln(predicted/measured); infinite where the median never reaches the temperature. */
    double logarithmicError() {
        return Math.abs(Math.log(predicted().median() / measured));
    }
}
