/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.Interval;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.PredictionEnsemble;
import org.beveragethermal.core.uncertainty.TimeSpread;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the temperature of one vessel does in one place after another. */
@Command(
        name = "predict",
        description =
                "What the temperature of one vessel does in one place after another. A place is: " + PlaceWords.ALLOWED)
final class PredictCommand implements Question {
    private static final double PROBABILITY = 0.90;
    private static final int ROWS = 12;
    private static final int MOST_ROWS = 2000;
    private static final int MOST_STAYS = 50;
    private static final Duration LONGEST = Duration.ofDays(60);
    private static final double SECONDS_PER_MINUTE = 60;
    private static final long SEED = 20260101L;

    @Mixin
    private final OutputOptions output = new OutputOptions();

    @Mixin
    private final VesselOptions vessel = new VesselOptions();

    @Option(names = "--from", required = true, paramLabel = "T", description = "temperature at the start, such as 22C")
    String from = "";

    @Option(
            names = "--through",
            required = true,
            paramLabel = "PLACE",
            description = "a place for a time, such as \"refrigerator 5C for 2h\"; once for each place, in order")
    List<String> through = new ArrayList<>();

    @Option(
            names = "--until",
            paramLabel = "T",
            description = "ask when this temperature is reached; status 1 if never")
    @Nullable
    String until;

    @Option(names = "--every", paramLabel = "TIME", description = "time between rows; a twelfth of all if not given")
    @Nullable
    String every;

    @Option(names = "--draws", paramLabel = "N", description = "runs for the intervals, 20 to 10000; 100 if not given")
    String draws = "100";

    @Override
    public OutputOptions output() {
        return output;
    }

    @Override
    public Answer answer(Session session) {
        Scale scale = output.scale();
        FilledVessel filled = vessel.filled("--from", from);
        if (through.size() > MOST_STAYS) {
            throw Refusal.usage("--through", through.size() + " times", "at most " + MOST_STAYS);
        }
        List<Exposure> stays =
                through.stream().map(text -> PlaceWords.stay("--through", text)).toList();
        Duration end = stays.stream().map(Exposure::duration).reduce(Duration.ZERO, Duration::plus);
        if (end.compareTo(LONGEST) > 0) {
            throw Refusal.usage("--through", end.toHours() + " h in all", "at most 60 days in all");
        }
        Optional<Quantity<Temperature>> target =
                Optional.ofNullable(until).map(text -> Quantities.temperature("--until", text));
        List<Duration> times = times(stays, end);
        int count = Question.whole("--draws", draws, 20, 10_000);
        Prediction best = run(filled, stays, NetworkSolver.standard().withMonitor(session.watching("predict")));
        PredictionEnsemble runs = PredictionEnsemble.of(
                Ensemble.of(count, SEED).withMonitor(session.watching("predict, draws for the intervals")),
                LawScatter.all(),
                draw -> run(filled, stays, NetworkSolver.standard().withMultipliers(draw.values())));
        List<Answer.Table> tables = new ArrayList<>();
        tables.add(course(scale, stays, times, best, runs));
        String headline = atEnd(scale, best, runs);
        ExitStatus status = ExitStatus.DONE;
        if (target.isPresent()) {
            boolean reached = !(best.timeTo(target.get()) instanceof TimeToTemperature.NeverReached);
            status = reached ? ExitStatus.DONE : ExitStatus.NO;
            TimeSpread spread = runs.timeTo(target.get(), PROBABILITY);
            headline = when(scale, target.get(), best, spread) + " " + headline;
            tables.add(passing(scale, target.get(), best, spread));
        }
        return new Answer("predict", status, headline, tables, notes(best, count));
    }

    private static Prediction run(FilledVessel filled, List<Exposure> stays, NetworkSolver solver) {
        try {
            return Lumped.of(filled).with(solver).expose(stays);
        } catch (IllegalArgumentException e) {
            throw new Refusal(
                    ExitStatus.USAGE, "--through: expected places that this vessel can be in; " + e.getMessage());
        }
    }

    private List<Duration> times(List<Exposure> stays, Duration end) {
        Duration step = every == null
                ? Duration.ofSeconds(Math.max(1, end.toSeconds() / ROWS))
                : Quantities.duration("--every", every);
        if (end.toMillis() / Math.max(1, step.toMillis()) > MOST_ROWS) {
            throw Refusal.usage("--every", String.valueOf(every), "a time that makes at most " + MOST_ROWS + " rows");
        }
        TreeSet<Duration> times = new TreeSet<>();
        for (Duration at = Duration.ZERO; at.compareTo(end) < 0; at = at.plus(step)) {
            times.add(at);
        }
        Duration moved = Duration.ZERO;
        for (Exposure stay : stays) {
            moved = moved.plus(stay.duration());
            times.add(moved);
        }
        return List.copyOf(times);
    }

    private Answer.Table course(
            Scale scale, List<Exposure> stays, List<Duration> times, Prediction best, PredictionEnsemble runs) {
        List<List<Answer.Cell>> rows = new ArrayList<>();
        for (Duration at : times) {
            Interval interval = runs.temperatureK(at, PROBABILITY);
            rows.add(List.of(
                    minutes(at),
                    scale.cell(best.meanTemperatureK(seconds(at))),
                    scale.cell(interval.low()),
                    scale.cell(interval.high()),
                    Answer.Cell.of(placeAt(stays, at))));
        }
        return new Answer.Table(
                "Temperature of the drink, with an interval of 90 %",
                List.of(
                        new Answer.Column("time", "min"),
                        new Answer.Column("temperature", scale.symbol()),
                        new Answer.Column("low", scale.symbol()),
                        new Answer.Column("high", scale.symbol()),
                        Answer.Column.words("until then in")),
                rows);
    }

    private String placeAt(List<Exposure> stays, Duration at) {
        Duration moved = Duration.ZERO;
        for (int i = 0; i < stays.size(); i++) {
            moved = moved.plus(stays.get(i).duration());
            if (at.compareTo(moved) <= 0) {
                return Refusal.oneLine(through.get(i));
            }
        }
        return "";
    }

    private static String atEnd(Scale scale, Prediction best, PredictionEnsemble runs) {
        Interval interval = runs.temperatureK(best.end(), PROBABILITY);
        return String.format(
                Locale.ROOT,
                "At the end, after %s, the drink has %s (90 %%: %s to %s).",
                words(best.end()),
                scale.text(best.meanTemperatureK(seconds(best.end()))),
                scale.text(interval.low()),
                scale.text(interval.high()));
    }

    private static String when(Scale scale, Quantity<Temperature> target, Prediction best, TimeSpread spread) {
        String goal = scale.text(Quantities.kelvins(target));
        return switch (kind(best.timeTo(target))) {
            case "reached" ->
                goal + " is reached after "
                        + words(reachedAfter(best.timeTo(target)).orElseThrow()) + ".";
            case "reached, then lost" ->
                goal + " is reached after "
                        + words(reachedAfter(best.timeTo(target)).orElseThrow()) + " and lost again.";
            default ->
                goal + " is never reached in that time"
                        + (spread.neverPart() < 1 ? ", though in some of the draws it is." : ".");
        };
    }

    private static String kind(TimeToTemperature time) {
        if (time instanceof TimeToTemperature.Reached) {
            return "reached";
        }
        return time instanceof TimeToTemperature.ReachedThenLost ? "reached, then lost" : "never";
    }

    private static Optional<Duration> reachedAfter(TimeToTemperature time) {
        if (time instanceof TimeToTemperature.Reached reached) {
            return Optional.of(reached.after());
        }
        return time instanceof TimeToTemperature.ReachedThenLost lost ? Optional.of(lost.after()) : Optional.empty();
    }

    private static Answer.Table passing(Scale scale, Quantity<Temperature> target, Prediction best, TimeSpread spread) {
        TimeToTemperature time = best.timeTo(target);
        return new Answer.Table(
                "When the temperature is reached, with an interval of 90 % over the draws",
                List.of(
                        new Answer.Column("wanted", scale.symbol()),
                        Answer.Column.words("answer"),
                        new Answer.Column("after", "min"),
                        new Answer.Column("earliest", "min"),
                        new Answer.Column("latest", "min"),
                        new Answer.Column("never in", "% of draws")),
                List.of(List.of(
                        scale.cell(Quantities.kelvins(target)),
                        Answer.Cell.of(kind(time)),
                        reachedAfter(time).map(PredictCommand::minutes).orElse(Answer.Cell.none()),
                        spread.earliest().map(PredictCommand::minutes).orElse(Answer.Cell.none()),
                        spread.latest().map(PredictCommand::minutes).orElse(Answer.Cell.none()),
                        Answer.Cell.of(100 * spread.neverPart(), 0))));
    }

    private List<String> notes(Prediction best, int count) {
        List<String> notes = new ArrayList<>(best.notes());
        if (through.stream().anyMatch(PlaceWords::isBath)) {
            notes.add(PlaceWords.USUAL_BATH);
        }
        notes.add("The intervals are those of " + count
                + " draws of the laws' published or judged scatter; what you state, such as"
                + " temperatures and volumes, is taken as exact. Such intervals are too narrow in practice:"
                + " of runs that others have measured some two thirds lay inside.");
        return notes;
    }

    static Answer.Cell minutes(Duration time) {
        return Answer.Cell.of(seconds(time) / SECONDS_PER_MINUTE, 1);
    }

    static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }

    /** Hours and minutes, rounded to the minute; seconds below two minutes. */
    static String words(Duration time) {
        if (time.toSeconds() < 120) {
            return time.toSeconds() + " s";
        }
        long minutes = Math.round(seconds(time) / SECONDS_PER_MINUTE);
        long hours = minutes / 60;
        return hours == 0 ? minutes + " min" : hours + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
    }
}
