/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.beveragethermal.core.calibration.Fit;
import org.beveragethermal.core.calibration.FitException;
import org.beveragethermal.core.calibration.FitResult;
import org.beveragethermal.core.calibration.Observations;
import org.beveragethermal.core.calibration.Parameter;
import org.beveragethermal.core.calibration.Sensed;
import org.beveragethermal.core.calibration.TemperatureModel;
import org.beveragethermal.core.calibration.log.LogFormat;
import org.beveragethermal.core.calibration.log.LogReader;
import org.beveragethermal.core.calibration.log.ReadLog;
import org.beveragethermal.core.calibration.log.SensorSeries;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.examples.plot.Plot;
import org.beveragethermal.examples.internal.WholeFile;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;

/**
 * A researcher's calibration: how much faster or slower than the library's law a refrigerator at 5 °C cools a bottle of 750 mL. Reads a log
 * of one sensor in the bottle, fits, explains, and draws what is to be looked at before the result is believed.
 */
public final class RefrigeratorCalibration {

    private static final int DONE = 0;
    private static final int REFUSED = 2;
    private static final int READINGS = 73;
    private static final int STEP_S = 300;
    private static final long SEED = 20_270_218;
    private static final double TRUE_FACTOR = 1.3;
    private static final double NOISE_K = 0.15;
    private static final double QUANTUM_K = 0.1;
    private static final double PROBABILITY = 0.95;
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final Duration LASTS = Duration.ofHours(6);
    private static final String RUN = "log";
    private static final String START = "start";

    private RefrigeratorCalibration() {}

    /**
     * Runs the calibration and ends the virtual machine with its exit status: 0, or 2 where the log is refused.
     *
     * @param args the folder for plots (by default {@code target/embedding}) and a log of at most six hours (by default an invented one)
     */
    public static void main(String[] args) {
        System.exit(run(
                args,
                new PrintStream(System.out, true, StandardCharsets.UTF_8),
                new PrintStream(System.err, true, StandardCharsets.UTF_8)));
    }

    static int run(String[] args, PrintStream out, PrintStream err) {
        try {
            Path folder = args.length == 0 ? Path.of("target", "embedding") : Path.of(args[0]);
            Files.createDirectories(folder);
            Path log = args.length > 1 ? Path.of(args[1]) : folder.resolve("refrigerator-log.csv");
            if (args.length < 2) {
                WholeFile.write(log, inventedLog());
                out.println("Invented log, made with a factor of " + TRUE_FACTOR + ": " + log);
            }
            ReadLog read = LogReader.read(log, LogFormat.inferred());
            SensorSeries series = read.log().only();
            FitResult result = fit(series);
            out.println(result.explain());
            for (Map.Entry<String, Plot> plot : plots(series, result).entrySet()) {
                Path file = folder.resolve(plot.getKey() + ".svg");
                WholeFile.write(file, plot.getValue().svg());
                out.println("Plot: " + file);
            }
            return DONE;
        } catch (InvalidPathException e) {
            err.println("an argument is not a path: " + e.getReason());
        } catch (FitException | IllegalArgumentException e) {
            err.println("the log is refused: " + e.getMessage());
        } catch (IOException e) {
            err.println("a file cannot be read or written: " + e.getMessage());
        }
        return REFUSED;
    }

    private static Prediction cooling(double startK, NetworkSolver solver) {
        return Lumped.of(Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), kelvins(startK)))
                .with(solver)
                .expose(in(Refrigerator.at(celsius(5)), LASTS));
    }

    static FitResult fit(SensorSeries series) {
        double[] timesS = series.elapsedS();
        double startK = series.temperatureK(0);
        if (timesS[timesS.length - 1] > LASTS.toSeconds()) {
            throw new IllegalArgumentException(
                    "it lasts " + timesS[timesS.length - 1] + " s: expected at most " + LASTS.toSeconds() + " s");
        }
        TemperatureModel model = TemperatureModel.of(
                        timesS,
                        (values, solver) -> Sensed.in(cooling(Objects.requireNonNull(values.get(START)), solver)))
                .multipliers(Multipliers.AIR_FILM)
                .inputs(START);
        return Fit.builder()
                .parameter(Parameter.of(Multipliers.AIR_FILM, 1).between(0.1, 10))
                .parameter(Parameter.of(START, startK).between(startK - 10, startK + 10))
                .run(RUN, model, observed(series))
                .build()
                .run();
    }

    private static Observations observed(SensorSeries series) {
        return Observations.of(series.elapsedS(), series.temperaturesK()).quantised(QUANTUM_K);
    }

    static Map<String, Plot> plots(SensorSeries series, FitResult result) {
        Map<String, Plot> plots = new LinkedHashMap<>();
        plots.put(
                "prediction",
                Plot.prediction(
                        "Bottle of 750 mL in the refrigerator",
                        series.elapsedS(),
                        result.band(RUN, PROBABILITY),
                        observed(series)));
        plots.put("residuals", Plot.residuals("What the fit leaves", result.residuals()));
        plots.put(
                "profile",
                Plot.profile("Factor on the film in the air", result.profile(Multipliers.AIR_FILM, PROBABILITY)));
        return plots;
    }

    /** Readings of the library's own course with another film, noise and a step; our own invention. */
    static String inventedLog() {
        SplittableRandom random = new SplittableRandom(SEED);
        Prediction truth = cooling(
                ZERO_CELSIUS_K + 21.4,
                NetworkSolver.standard().withMultipliers(Map.of(Multipliers.AIR_FILM, TRUE_FACTOR)));
        StringBuilder log = new StringBuilder("elapsed [s],bottle [°C]\n");
        for (int i = 0; i < READINGS; i++) {
            int second = STEP_S * i;
            double reading =
                    truth.meanTemperatureK(second) - ZERO_CELSIUS_K + NOISE_K * random.nextGaussian();
            log.append(second).append(',').append(Math.round(10 * reading) / 10.0).append('\n');
        }
        return log.toString();
    }
}
