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
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.Interval;
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
                "What the temperature of one vessel does in one place after another, as the middle of draws of what is not known,"
                        + " with an interval of 90 %%; status 1 if --until is not reached in half of the draws, if the drink begins to freeze"
                        + " in one of twenty or if its closed vessel may burst in any. A place is: "
                        + PlaceWords.ALLOWED)
final class PredictCommand implements Question {
    private static final int ROWS = 12;
    private static final int MOST_ROWS = 2000;
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

    @Option(
            names = "--as-stated",
            description =
                    "take what is not stated as still and dry air, appliances that nothing warms and baths at rest; the"
                            + " intervals are then those of the laws alone")
    boolean asStated;

    @Override
    public OutputOptions output() {
        return output;
    }

    @Override
    public Answer answer(Session session) {
        Scale scale = output.scale();
        FilledVessel filled = vessel.filled("--from", from);
        Route route = Route.of("--through", through);
        Optional<Quantity<Temperature>> target =
                Optional.ofNullable(until).map(text -> Quantities.temperature("--until", text));
        List<Duration> times = times(route);
        int count = Question.whole("--draws", draws, 20, 10_000);
        Outlook outlook = outlook(session, route, filled, count);
        List<Answer.Table> tables = new ArrayList<>();
        tables.add(course(scale, route, times, outlook));
        String headline = atEnd(scale, outlook);
        ExitStatus status = ExitStatus.DONE;
        if (target.isPresent()) {
            Outlook.Passing passing = outlook.passing(target.get());
            status = passing.after().isPresent() ? ExitStatus.DONE : ExitStatus.NO;
            headline = when(scale, target.get(), passing) + " " + headline;
            tables.add(passing(scale, target.get(), passing));
        }
        Harm harm = Harm.of(outlook, filled);
        List<String> notes = new ArrayList<>(harm.cautions());
        notes.addAll(notes(outlook, count));
        if (!harm.isNone()) {
            status = ExitStatus.NO;
            headline = harm.sentence() + " " + headline;
            tables.add(harm.table());
        }
        return new Answer("predict", status, headline, tables, notes);
    }

    private Outlook outlook(Session session, Route route, FilledVessel filled, int count) {
        Ensemble ensemble = Ensemble.of(count, SEED).withMonitor(session.watching("predict, draws"));
        return asStated
                ? Outlook.asStated(
                        route, filled, NetworkSolver.standard().withMonitor(session.watching("predict")), ensemble)
                : Outlook.drawn(route, filled, ensemble);
    }

    private List<Duration> times(Route route) {
        Duration end = route.duration();
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
        times.addAll(route.ends());
        return List.copyOf(times);
    }

    private static Answer.Table course(Scale scale, Route route, List<Duration> times, Outlook outlook) {
        List<List<Answer.Cell>> rows = new ArrayList<>();
        for (Duration at : times) {
            Interval interval = outlook.interval(at);
            rows.add(List.of(
                    minutes(at),
                    scale.cell(outlook.temperatureK(at)),
                    scale.cell(interval.low()),
                    scale.cell(interval.high()),
                    Answer.Cell.of(route.until(at))));
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

    private static String atEnd(Scale scale, Outlook outlook) {
        Interval interval = outlook.interval(outlook.end());
        return String.format(
                Locale.ROOT,
                "At the end, after %s, the drink has %s (90 %%: %s to %s).",
                words(outlook.end()),
                scale.text(outlook.temperatureK(outlook.end())),
                scale.text(interval.low()),
                scale.text(interval.high()));
    }

    private static String when(Scale scale, Quantity<Temperature> target, Outlook.Passing passing) {
        String goal = scale.text(Quantities.kelvins(target));
        TimeSpread spread = passing.spread();
        if (passing.after().isEmpty()) {
            return spread.neverPart() < 1
                    ? String.format(
                            Locale.ROOT,
                            "%s is not reached in that time in %.0f %% of the draws.",
                            goal,
                            100 * spread.neverPart())
                    : goal + " is never reached in that time.";
        }
        String ends = spread.earliest()
                .map(earliest -> " (90 %: " + words(earliest) + " to "
                        + spread.latest().map(PredictCommand::words).orElse("never") + ")")
                .orElse("");
        return goal + " is reached after " + words(passing.after().get()) + ends
                + (passing.lost() ? " and lost again." : ".");
    }

    private static Answer.Table passing(Scale scale, Quantity<Temperature> target, Outlook.Passing passing) {
        TimeSpread spread = passing.spread();
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
                        Answer.Cell.of(passing.kind()),
                        passing.after().map(PredictCommand::minutes).orElse(Answer.Cell.none()),
                        spread.earliest().map(PredictCommand::minutes).orElse(Answer.Cell.none()),
                        spread.latest().map(PredictCommand::minutes).orElse(Answer.Cell.none()),
                        Answer.Cell.of(100 * spread.neverPart(), 0))));
    }

    private List<String> notes(Outlook outlook, int count) {
        List<String> notes = new ArrayList<>(outlook.notes());
        if (through.stream().anyMatch(PlaceWords::isBath)) {
            notes.add(PlaceWords.USUAL_BATH);
        }
        notes.add(
                asStated
                        ? "The intervals are those of " + count
                                + " draws of the laws' published or judged scatter; all else is taken as stated, and what is"
                                + " not stated as still, dry and undisturbed. Such intervals are too narrow in practice: of"
                                + " runs in air that others have measured about half lay inside."
                        : "Answers are the middle, and intervals hold the middle 90 %, of " + count
                                + " draws of the laws' scatter and of what you do not state: draught and humidity of a room, fan,"
                                + " cold plate, shelf, load and door of an appliance, stirring of a bath. What you state is taken"
                                + " as exact; the temperature of an appliance is what it is set to. Intervals may still be too"
                                + " narrow: of runs in air that others have measured two thirds lay inside.");
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
