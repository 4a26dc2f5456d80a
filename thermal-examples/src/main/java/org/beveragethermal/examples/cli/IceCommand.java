/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.service.ice.IceAnswer;
import org.beveragethermal.service.ice.IceBudget;
import org.beveragethermal.service.ice.TopUp;
import org.beveragethermal.service.ice.VesselCourse;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How much ice keeps so many vessels cold in a bucket of ice and water. */
@Command(
        name = "ice",
        description =
                "How much ice brings so many vessels to a temperature by a time in a bucket of ice and water and keeps them there;"
                        + " status 1 if no amount does")
final class IceCommand implements Question {
    private static final long SEED = 7L;
    /** That of the library where it is not told otherwise. */
    private static final double TOLERANCE_K = 0.02;

    @Mixin
    private final OutputOptions output = new OutputOptions();

    @Mixin
    private final VesselOptions vessel = new VesselOptions();

    @Option(names = "--count", paramLabel = "N", description = "vessels in the bucket, 1 to 1000; 1 if not given")
    String count = "1";

    @Option(names = "--from", required = true, paramLabel = "T", description = "temperature of the drinks at the start")
    String from = "";

    @Option(names = "--low", paramLabel = "T", description = "lowest temperature wanted; 0C if not given")
    String low = "0C";

    @Option(names = "--high", required = true, paramLabel = "T", description = "highest temperature wanted")
    String high = "";

    @Option(names = "--ready", required = true, paramLabel = "TIME", description = "when they have to be in that range")
    String ready = "";

    @Option(names = "--until", required = true, paramLabel = "TIME", description = "until when they have to stay in it")
    String until = "";

    @Option(names = "--air", required = true, paramLabel = "T", description = "temperature of the air about the bucket")
    String air = "";

    @Option(names = "--humidity", paramLabel = "PERCENT", description = "relative humidity of that air, such as 50%%")
    @Nullable
    String humidity;

    @Option(
            names = "--diameter",
            paramLabel = "LENGTH",
            description = "inner diameter of the bucket; 240mm if not given")
    String diameter = "240mm";

    @Option(names = "--height", paramLabel = "LENGTH", description = "inner height of the bucket; 260mm if not given")
    String height = "260mm";

    @Option(names = "--block", paramLabel = "LENGTH", description = "side of a cube of ice; 30mm if not given")
    String block = "30mm";

    @Option(names = "--ice-at", paramLabel = "T", description = "temperature of the ice; -10C if not given")
    String iceAt = "-10C";

    @Option(names = "--water-at", paramLabel = "T", description = "temperature of the water; 15C if not given")
    String waterAt = "15C";

    @Option(names = "--at-hand", paramLabel = "MASS", description = "ice there is, if that is limited")
    @Nullable
    String atHand;

    @Option(names = "--top-ups", paramLabel = "N", description = "times that ice may be added, 0 to 10; 0 if not given")
    String topUps = "0";

    @Option(names = "--draws", paramLabel = "N", description = "searches for the margin, 10 to 1000; 20 if not given")
    String draws = "20";

    @Override
    public OutputOptions output() {
        return output;
    }

    @Override
    public Answer answer(Session session) {
        Scale scale = output.scale();
        IceBudget budget = budget(session);
        IceAnswer answer = budget.answer();
        if (answer instanceof IceAnswer.Enough enough) {
            return enough(scale, enough);
        }
        IceAnswer.Never never = (IceAnswer.Never) answer;
        List<List<Answer.Cell>> rows = new ArrayList<>();
        rows.add(List.of(
                Answer.Cell.of("ice at the start"), Answer.Cell.none(), Answer.Cell.none(), Answer.Cell.none()));
        never.energy().ifPresent(energy -> rows.add(energyRow(energy.everythingKg())));
        return new Answer(
                "ice",
                ExitStatus.NO,
                never.explain(),
                List.of(masses(rows)),
                List.of("What would help: " + never.help()));
    }

    private IceBudget budget(Session session) {
        FilledVessel filled = vessel.filled("--from", from);
        int vessels = Question.whole("--count", count, 1, 1000);
        Duration readyAt = Quantities.duration("--ready", ready);
        Duration end = Quantities.duration("--until", until);
        if (end.compareTo(readyAt) < 0) {
            throw Refusal.usage("--until", until, "a time not before --ready " + ready);
        }
        double lowK = Quantities.kelvins(Quantities.temperature("--low", low));
        if (lowK > Quantities.kelvins(Quantities.temperature("--high", high))) {
            throw Refusal.usage("--high", high, "a temperature not below --low " + low);
        }
        Quantity<javax.measure.quantity.Temperature> room = Quantities.temperature("--air", air);
        int additions = Question.whole("--top-ups", topUps, 0, 10);
        int searches = Question.whole("--draws", draws, 10, 1000);
        try {
            Air around = humidity == null
                    ? Air.at(room)
                    : Air.at(room).withRelativeHumidity(Quantities.percent("--humidity", humidity));
            IceBudget.Builder builder = IceBudget.of(
                            Bucket.of(Quantities.length("--diameter", diameter), Quantities.length("--height", height)),
                            around)
                    .vessels(
                            filled,
                            vessels,
                            Wanted.between(
                                    Quantities.temperature("--low", low), Quantities.temperature("--high", high)))
                    .from(readyAt, end)
                    .blocks(
                            IceBlock.cube(Quantities.length("--block", block)),
                            Quantities.temperature("--ice-at", iceAt))
                    .waterAt(Quantities.temperature("--water-at", waterAt))
                    .solver(NetworkSolver.standard()
                            .withToleranceK(TOLERANCE_K)
                            .withMonitor((reached, runEnd, steps) -> !session.isOver()))
                    .withMargin(Ensemble.of(searches, SEED).withMonitor(session.watching("ice, draws for the margin")));
            if (additions > 0) {
                builder = builder.topUps(additions);
            }
            return (atHand == null ? builder : builder.iceAtHand(Quantities.mass("--at-hand", atHand))).build();
        } catch (IllegalArgumentException e) {
            throw new Refusal(ExitStatus.USAGE, "ice: expected what a bucket can hold and do; " + e.getMessage());
        }
    }

    private static Answer enough(Scale scale, IceAnswer.Enough enough) {
        List<List<Answer.Cell>> rows = new ArrayList<>();
        rows.add(List.of(
                Answer.Cell.of("ice at the start"),
                Answer.Cell.of(enough.iceKg(), 2),
                kilograms(enough.margin().map(m -> m.kg90()).orElse(OptionalDouble.empty())),
                kilograms(enough.margin().map(m -> m.kg95()).orElse(OptionalDouble.empty()))));
        for (TopUp topUp : enough.topUps()) {
            rows.add(List.of(
                    Answer.Cell.of("ice added after " + PredictCommand.words(topUp.after())),
                    Answer.Cell.of(topUp.iceKg(), 2),
                    kilograms(topUp.margin().map(m -> m.kg90()).orElse(OptionalDouble.empty())),
                    kilograms(topUp.margin().map(m -> m.kg95()).orElse(OptionalDouble.empty()))));
        }
        rows.add(plain("ice in all", enough.totalKg()));
        rows.add(plain("water", enough.waterKg()));
        rows.add(plain("ice left at the end", enough.iceLeftKg()));
        rows.add(energyRow(enough.energy().everythingKg()));
        List<List<Answer.Cell>> courses = new ArrayList<>();
        for (VesselCourse course : enough.vessels()) {
            courses.add(List.of(
                    Answer.Cell.of(course.id()),
                    scale.cell(course.readyK()),
                    scale.cell(course.coldestK()),
                    scale.cell(course.warmestK())));
        }
        Answer.Table vessels = new Answer.Table(
                "Drinks, from when they have to be ready",
                List.of(
                        Answer.Column.words("vessel"),
                        new Answer.Column("when ready", scale.symbol()),
                        new Answer.Column("coldest", scale.symbol()),
                        new Answer.Column("warmest", scale.symbol())),
                courses);
        List<String> notes = new ArrayList<>(enough.notes());
        enough.margin()
                .ifPresent(margin -> notes.add("In " + margin.never() + " of " + margin.draws()
                        + " draws of the laws' scatter no amount of ice is enough."));
        notes.add("What you state, such as temperatures and sizes, is taken as exact.");
        return new Answer("ice", ExitStatus.DONE, enough.explain(), List.of(masses(rows), vessels), notes);
    }

    private static Answer.Table masses(List<List<Answer.Cell>> rows) {
        return new Answer.Table(
                "Ice and water",
                List.of(
                        Answer.Column.words("what"),
                        new Answer.Column("mass", "kg"),
                        new Answer.Column("enough in 90 %", "kg"),
                        new Answer.Column("enough in 95 %", "kg")),
                rows);
    }

    private static List<Answer.Cell> plain(String what, double kg) {
        return List.of(Answer.Cell.of(what), Answer.Cell.of(kg, 2), Answer.Cell.none(), Answer.Cell.none());
    }

    private static List<Answer.Cell> energyRow(double kg) {
        return plain("ice by energy alone (a bound that is too small)", kg);
    }

    private static Answer.Cell kilograms(OptionalDouble kg) {
        return kg.isPresent() ? Answer.Cell.of(kg.getAsDouble(), 2) : Answer.Cell.none();
    }
}
