/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.Interval;
import org.beveragethermal.core.uncertainty.Spread;
import org.beveragethermal.core.uncertainty.UncertainInput;

/**
 * One question asked anew for each draw of what is uncertain: how likely each kind of answer is, and the interval of each of its figures.
 *
 * <p>Any {@link Answer} can be asked so, those of other packages too; figures are named as in its {@link Snapshot}.
 *
 * <pre>{@code
 * AnswerEnsemble<StartAnswer> asked = AnswerEnsemble.of(Ensemble.of(200, 20260101L), LawScatter.all(), draw -> StartSearch.of(bottle, refrigerator)
 *         .with(NetworkSolver.standard().withMultipliers(draw.values()))
 *         .latestStart(white, Duration.ofHours(5)));
 * Spread latest = asked.spread("latestS", 0.90);      // interval, and how many draws have a latest start at all
 * Chance possible = asked.chance(StartAnswer.Starts.class);
 * }</pre>
 *
 * <p>The interval of a figure is over the draws that have it. A kind of answer that one draw gives and another does not is told by its
 * chance. Draws are those of {@link Ensemble}: seeded, the same on any threads, with progress and cancelling. Immutable and thread-safe if
 * the answers are, as those of this library.
 *
 * @param <A> the answers
 */
public final class AnswerEnsemble<A extends Answer> {

    private final List<A> answers;
    private final List<Snapshot> snapshots;

    private AnswerEnsemble(List<A> answers) {
        this.answers = List.copyOf(answers);
        this.snapshots = answers.stream().map(Answer::snapshot).toList();
    }

    /**
     * Asks once per draw.
     *
     * @param ensemble how many draws, seed and threads
     * @param inputs what is uncertain, names unique, not modified
     * @param question from a draw to an answer; called from the ensemble's threads
     * @param <A> the answers
     * @return the answers
     * @throws IllegalArgumentException if two inputs share a name
     * @throws org.beveragethermal.core.solver.RunCancelledException if the ensemble's monitor says so or the calling thread is interrupted
     * @throws RuntimeException what the question throws, for the first draw that fails
     */
    public static <A extends Answer> AnswerEnsemble<A> of(
            Ensemble ensemble, List<UncertainInput> inputs, Function<Draw, A> question) {
        return new AnswerEnsemble<>(ensemble.run(inputs, question));
    }

    /**
     * The single answers.
     *
     * @return one per draw
     */
    public List<A> answers() {
        return answers;
    }

    /**
     * How likely the answer is of a kind.
     *
     * @param kind the kind, such as {@code StartAnswer.Starts.class}
     * @return part of the draws with such an answer, and how well the number of draws tells it
     */
    public Chance chance(Class<? extends Answer> kind) {
        return Chance.of((int) answers.stream().filter(kind::isInstance).count(), answers.size());
    }

    /**
     * Interval of a figure, or of the first of a list of figures.
     *
     * @param figure its name in the snapshot, such as {@code latestS}
     * @param probability probability inside, between 0 and 1
     * @return the interval and how many draws have the figure: none if no answer has one of that name
     * @throws IllegalArgumentException if the probability is outside its range
     */
    public Spread spread(String figure, double probability) {
        return spread(figure, 0, probability);
    }

    /**
     * Interval of one of a list of figures.
     *
     * @param figure name of the list in the snapshot, such as {@code windowsS}
     * @param place place in the list, 0 for the first
     * @param probability probability inside, between 0 and 1
     * @return the interval and how many draws have so many figures of that name
     * @throws IllegalArgumentException if the place is negative or the probability outside its range
     */
    public Spread spread(String figure, int place, double probability) {
        if (place < 0) {
            throw new IllegalArgumentException("place " + place + " in " + figure + ": expected at least 0");
        }
        return Spread.of(snapshots, snapshot -> figure(snapshot, figure, place), probability);
    }

    private static OptionalDouble figure(Snapshot snapshot, String name, int place) {
        List<Double> values = snapshot.valuesSi().getOrDefault(name, List.of());
        return place < values.size() ? OptionalDouble.of(values.get(place)) : OptionalDouble.empty();
    }

    /**
     * Intervals of all single figures; lists are asked place by place.
     *
     * @param probability probability inside, between 0 and 1
     * @return intervals by name, in the order of the names
     * @throws IllegalArgumentException if the probability is outside its range
     */
    public Map<String, Spread> spreads(double probability) {
        Set<String> names = new TreeSet<>();
        snapshots.forEach(snapshot -> names.addAll(snapshot.valuesSi().keySet()));
        Map<String, Spread> spreads = new LinkedHashMap<>();
        for (String name : names) {
            if (snapshots.stream()
                    .allMatch(snapshot ->
                            snapshot.valuesSi().getOrDefault(name, List.of()).size() <= 1)) {
                spreads.put(name, spread(name, probability));
            }
        }
        return spreads;
    }

    /**
     * Kinds of answers and intervals in words.
     *
     * @param probability probability inside the intervals, between 0 and 1
     * @return a sentence for each kind of answer and one for each figure that differs between draws
     * @throws IllegalArgumentException if the probability is outside its range
     */
    public String explain(double probability) {
        Map<String, Integer> kinds = new TreeMap<>();
        snapshots.forEach(snapshot -> kinds.merge(snapshot.answer(), 1, Integer::sum));
        StringBuilder text = new StringBuilder();
        kinds.forEach((kind, count) -> text.append(Text.format("%s in %d of %d draws. ", kind, count, answers.size())));
        spreads(probability)
                .forEach((name, spread) -> spread.interval()
                        .filter(interval -> interval.low() < interval.high())
                        .ifPresent(interval -> text.append(sentence(name, interval, spread.having()))));
        return text.toString().strip();
    }

    private static String sentence(String name, Interval interval, int having) {
        return Text.format(
                "%s: %s to %s, median %s, with %.0f %% of %d draws inside. ",
                name,
                Text.figure(interval.low(), 4),
                Text.figure(interval.high(), 4),
                Text.figure(interval.median(), 4),
                100 * interval.probability(),
                having);
    }
}
