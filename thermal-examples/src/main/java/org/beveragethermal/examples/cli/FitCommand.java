/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.beveragethermal.core.calibration.ConfidenceInterval;
import org.beveragethermal.core.calibration.Estimate;
import org.beveragethermal.core.calibration.Fit;
import org.beveragethermal.core.calibration.FitException;
import org.beveragethermal.core.calibration.FitResult;
import org.beveragethermal.core.calibration.Observations;
import org.beveragethermal.core.calibration.Parameter;
import org.beveragethermal.core.calibration.Sensed;
import org.beveragethermal.core.calibration.TemperatureModel;
import org.beveragethermal.core.calibration.log.DateOrder;
import org.beveragethermal.core.calibration.log.LogFormat;
import org.beveragethermal.core.calibration.log.LogReader;
import org.beveragethermal.core.calibration.log.ReadLog;
import org.beveragethermal.core.calibration.log.SensorSeries;
import org.beveragethermal.core.calibration.log.TemperatureUnit;
import org.beveragethermal.core.calibration.log.UnclearLogException;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Fits one factor of a law and the temperature at the start to a log. */
@Command(
        name = "fit",
        description =
                "Fits one factor of a law of heat transfer and the temperature at the start to a log of one vessel in one place;"
                        + " status 1 if the log does not tell them or contradicts the model")
final class FitCommand implements Question {
    private static final double PROBABILITY = 0.90;
    private static final int FEWEST = 5;
    private static final long LONGEST_BYTES = 64L << 20;
    private static final Map<String, String> FACTORS = new TreeMap<>(Map.of(
            "air-film", Multipliers.AIR_FILM,
            "inside-film", Multipliers.INSIDE_FILM,
            "radiation", Multipliers.RADIATION,
            "water-film", Multipliers.WATER_FILM,
            "ice-film", Multipliers.ICE_FILM,
            "pack-exchange", Multipliers.PACK_EXCHANGE,
            "running-film", Multipliers.RUNNING_FILM));

    @Mixin
    private final OutputOptions output = new OutputOptions();

    @Mixin
    private final VesselOptions vessel = new VesselOptions();

    @Parameters(paramLabel = "LOG", description = "the log: times and temperatures, as CSV")
    String log = "";

    @Option(names = "--in", required = true, paramLabel = "PLACE", description = PlaceWords.ALLOWED)
    String place = "";

    @Option(names = "--sensor", paramLabel = "NAME", description = "which sensor, if the log has several")
    @Nullable
    String sensor;

    @Option(names = "--zone", paramLabel = "ZONE", description = "time zone of the log's clock, such as Europe/Vienna")
    @Nullable
    String zone;

    @Option(names = "--unit", paramLabel = "C|F|K", description = "unit of the log's temperatures, if it says none")
    @Nullable
    String unit;

    @Option(names = "--dates", paramLabel = "ORDER", description = "day-first or month-first, if the log does not tell")
    @Nullable
    String dates;

    @Option(
            names = "--factor",
            paramLabel = "FACTOR",
            description = "which law; the one outside the vessel if not given")
    @Nullable
    String factor;

    @Override
    public OutputOptions output() {
        return output;
    }

    @Override
    public Answer answer(Session session) {
        Scale scale = output.scale();
        String law = factor == null ? PlaceWords.deciding("--in", place) : law(factor);
        PlaceWords.place("--in", place);
        VesselWords.vessel("--vessel", vessel.vessel);
        DrinkWords.drink("--drink", vessel.drink);
        ReadLog read = read();
        SensorSeries series = series(read);
        double[] timesS = series.elapsedS();
        double[] readingsK = series.temperaturesK();
        if (timesS.length < FEWEST) {
            throw badLog("has " + timesS.length + " readings of " + Refusal.quoted(series.sensor())
                    + ": expected at least " + FEWEST);
        }
        FilledVessel filled = vessel.filled("LOG, first reading", readingsK[0] + "K");
        Exposure stay =
                PlaceWords.exposure("--in", place, Duration.ofSeconds((long) Math.ceil(timesS[timesS.length - 1]) + 1));
        FitResult result = fit(session, law, filled, stay, timesS, readingsK);
        return answer(scale, law, result, timesS.length, read);
    }

    private static String law(String given) {
        String law = FACTORS.get(given);
        if (law == null) {
            throw Refusal.usage("--factor", given, "one of " + String.join(", ", FACTORS.keySet()));
        }
        return law;
    }

    private ReadLog read() {
        LogFormat.Builder format = LogFormat.builder();
        if (zone != null) {
            try {
                format = format.zone(ZoneId.of(zone));
            } catch (DateTimeException e) {
                throw Refusal.usage("--zone", zone, "a time zone such as Europe/Vienna or UTC");
            }
        }
        if (unit != null) {
            format =
                    format.unit(TemperatureUnit.valueOf(Scale.of("--unit", unit).name()));
        }
        if (dates != null) {
            format = format.dateOrder(
                    switch (dates) {
                        case "day-first" -> DateOrder.DAY_FIRST;
                        case "month-first" -> DateOrder.MONTH_FIRST;
                        default -> throw Refusal.usage("--dates", dates, "day-first or month-first");
                    });
        }
        Path file = SafeFile.target("LOG", log);
        try {
            if (!Files.isRegularFile(file)) {
                throw badLog(
                        Files.exists(file)
                                ? "is no file: expected a log as CSV"
                                : "does not exist: expected a log as CSV");
            }
            if (Files.size(file) > LONGEST_BYTES) {
                throw badLog("has " + Files.size(file) + " bytes: expected at most " + LONGEST_BYTES);
            }
            return LogReader.read(file, format.build());
        } catch (UnclearLogException e) {
            throw badLog(e.getMessage() + " (--zone, --unit and --dates tell what a log does not)");
        } catch (IllegalArgumentException | IOException e) {
            throw badLog("cannot be read as a log: " + e.getMessage());
        }
    }

    private SensorSeries series(ReadLog read) {
        List<String> sensors = read.log().sensors();
        if (sensor != null) {
            if (!sensors.contains(sensor)) {
                throw Refusal.usage("--sensor", sensor, "one of " + sensors);
            }
            return read.log().series(sensor);
        }
        if (sensors.size() != 1) {
            throw badLog("has the sensors " + sensors + ": expected one, or --sensor");
        }
        return read.log().only();
    }

    private Refusal badLog(String why) {
        return new Refusal(ExitStatus.BAD_INPUT, "LOG " + Refusal.quoted(log) + ": " + why);
    }

    private FitResult fit(
            Session session, String law, FilledVessel filled, Exposure stay, double[] timesS, double[] readingsK) {
        TemperatureModel model = TemperatureModel.of(
                        timesS,
                        (values, solver) -> Sensed.in(Lumped.of(filled.atTemperature(
                                        Measures.kelvins(values.getOrDefault("start", readingsK[0]))))
                                .with(solver)
                                .expose(stay)))
                .multipliers(law)
                .throughLawsAlone()
                .inputs("start")
                .with(NetworkSolver.standard().withMonitor(session.counting("fit")));
        try {
            return Fit.builder()
                    .parameter(Parameter.of(law, 1).between(0.02, 50))
                    .parameter(Parameter.of("start", readingsK[0]).between(readingsK[0] - 20, readingsK[0] + 20))
                    .run("log", model, Observations.of(timesS, readingsK))
                    .build()
                    .run();
        } catch (FitException | IllegalArgumentException e) {
            if (session.isOver()) {
                throw new Refusal(ExitStatus.CANCELLED, "fit: given up as --limit asked, before it was done");
            }
            throw badLog("cannot be fitted: " + e.getMessage());
        }
    }

    private Answer answer(Scale scale, String law, FitResult result, int readings, ReadLog read) {
        boolean told = result.identifiability().isIdentifiable();
        boolean contradicted = result.residuals().rejectsModel();
        List<List<Answer.Cell>> rows = new ArrayList<>();
        for (Estimate estimate : result.estimates()) {
            boolean start = estimate.name().startsWith("start");
            ConfidenceInterval interval = result.interval(estimate.name(), PROBABILITY);
            rows.add(List.of(
                    Answer.Cell.of(start ? "temperature at the start" : "factor on " + law),
                    value(start, scale, OptionalDouble.of(estimate.value())),
                    value(start, scale, interval.low()),
                    value(start, scale, interval.high()),
                    Answer.Cell.of(start ? scale.symbol() : "1"),
                    Answer.Cell.of(estimate.status().toString())));
        }
        Answer.Table parameters = new Answer.Table(
                "Parameters, with an interval of 90 %",
                List.of(
                        Answer.Column.words("parameter"),
                        Answer.Column.words("value"),
                        Answer.Column.words("low"),
                        Answer.Column.words("high"),
                        Answer.Column.words("unit"),
                        Answer.Column.words("status")),
                rows);
        Answer.Table quality = new Answer.Table(
                "Fit",
                List.of(
                        new Answer.Column("readings", "1"),
                        new Answer.Column("scatter about the fit", "K"),
                        Answer.Column.words("converged"),
                        Answer.Column.words("told apart"),
                        Answer.Column.words("residuals are chance")),
                List.of(List.of(
                        Answer.Cell.of(readings, 0),
                        Answer.Cell.significant(result.residualStandardDeviation(), 2),
                        Answer.Cell.of(result.converged() ? "yes" : "no"),
                        Answer.Cell.of(told ? "yes" : "no"),
                        Answer.Cell.of(contradicted ? "no" : "yes"))));
        boolean good = result.converged() && told && !contradicted;
        List<String> notes = new ArrayList<>(result.identifiability().advice());
        if (contradicted) {
            notes.add(
                    "The residuals are not chance: the model or the place as described does not fit the log, and the intervals are"
                            + " too narrow.");
        }
        read.report().notes().forEach(note -> notes.add(Refusal.oneLine(note.toString())));
        notes.add("A factor of 1 is the library's law as published. Intervals are by linearisation.");
        String headline = good
                ? "The log is described by the factor and the start below."
                : "The log does not tell the factor and the start reliably (see below).";
        return new Answer("fit", good ? ExitStatus.DONE : ExitStatus.NO, headline, List.of(parameters, quality), notes);
    }

    private static Answer.Cell value(boolean temperature, Scale scale, OptionalDouble value) {
        if (value.isEmpty()) {
            return Answer.Cell.none();
        }
        double given = value.getAsDouble();
        return temperature ? Answer.Cell.of(scale.value(given), 2) : Answer.Cell.significant(given, 4);
    }
}
