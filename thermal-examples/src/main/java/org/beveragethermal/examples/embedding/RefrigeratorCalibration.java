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
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.beveragethermal.core.calibration.Estimate;
import org.beveragethermal.core.calibration.Fit;
import org.beveragethermal.core.calibration.FitException;
import org.beveragethermal.core.calibration.FitResult;
import org.beveragethermal.core.calibration.Observations;
import org.beveragethermal.core.calibration.Parameter;
import org.beveragethermal.core.calibration.Sensed;
import org.beveragethermal.core.calibration.TemperatureModel;
import org.beveragethermal.core.calibration.log.LogFormat;
import org.beveragethermal.core.calibration.log.LogReader;
import org.beveragethermal.core.calibration.log.SensorSeries;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.examples.internal.WholeFile;
import org.beveragethermal.examples.plot.Plot;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;

/**
 * A researcher's calibration: how much faster or slower than the library's law a refrigerator cools a bottle of 750 mL of wine. Reads a log
 * of one sensor in the bottle, fits a factor on the film in the air and the temperature at the start, explains, and draws what is to be
 * looked at before the result is believed.
 */
public final class RefrigeratorCalibration {

    private static final int DONE = 0;
    private static final int NOT_BELIEVED = 1;
    private static final int REFUSED = 2;
    private static final int READINGS = 73;
    private static final int STEP_S = 300;
    private static final long SEED = 20_270_218;
    private static final double TRUE_FACTOR = 1.3;
    private static final double NOISE_K = 0.15;
    private static final double QUANTUM_K = 0.1;
    private static final double START_C = 21.4;
    private static final double USUAL_C = 5;
    private static final double WARMEST_C = 10;
    private static final int FEWEST = 8;
    private static final long LONGEST_BYTES = 4_000_000;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final double PROBABILITY = 0.95;
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final Duration LASTS = Duration.ofHours(6);
    private static final String RUN = "log";
    private static final String START = "start";

    private RefrigeratorCalibration() {}

    /**
     * Runs the calibration and ends the virtual machine with its exit status: 0; 1 where the fit is not to be believed, because it
     * ends at a bound, the residuals are not chance or the log does not tell the parameters apart; 2 where an argument or the log is refused.
     *
     * @param args the folder for plots (by default {@code target/embedding}), a log of at most six hours (by default an invented one), and
     *     the temperature in the refrigerator [°C], 0 to 10 (by default 5)
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
            double airC = args.length > 2 ? airC(args[2]) : USUAL_C;
            Files.createDirectories(folder);
            Path log = args.length > 1 ? Path.of(args[1]) : invented(folder, out);
            SensorSeries series = series(log);
            Calibrated calibrated = calibrate(series, airC);
            out.println(calibrated.result().explain());
            out.printf(
                    Locale.ROOT,
                    "time constant: %.0f min fitted, %.0f min by the library's law%n",
                    calibrated.timeConstantS() / SECONDS_PER_MINUTE,
                    calibrated.uncalibratedS() / SECONDS_PER_MINUTE);
            for (Map.Entry<String, Plot> plot :
                    plots(series, calibrated.result()).entrySet()) {
                Path file = folder.resolve(plot.getKey() + ".svg");
                WholeFile.write(file, plot.getValue().svg());
                out.println("plot: " + file);
            }
            return calibrated.isBelieved() ? DONE : NOT_BELIEVED;
        } catch (InvalidPathException e) {
            err.println("an argument is not a path: " + e.getReason());
        } catch (FitException | IllegalArgumentException e) {
            err.println("refused: " + e.getMessage());
        } catch (IOException e) {
            err.println("a file cannot be read or written: " + e);
        }
        return REFUSED;
    }

    private static double airC(String given) {
        try {
            double celsius = Double.parseDouble(given);
            if (celsius >= 0 && celsius <= WARMEST_C) {
                return celsius;
            }
        } catch (NumberFormatException e) {
            // Refused below, as a number out of range is.
        }
        throw new IllegalArgumentException("refrigerator '" + given + "': expected 0 to 10 °C");
    }

    private static Path invented(Path folder, PrintStream out) throws IOException {
        Path log = folder.resolve("refrigerator-log.csv");
        WholeFile.write(log, inventedLog());
        out.println("A log, invented with a factor of " + TRUE_FACTOR + ": " + log);
        return log;
    }

    private static SensorSeries series(Path log) throws IOException {
        if (Files.size(log) > LONGEST_BYTES) {
            throw new IllegalArgumentException(
                    "log " + log + " has " + Files.size(log) + " bytes: expected at most " + LONGEST_BYTES);
        }
        SensorSeries series = LogReader.read(log, LogFormat.inferred()).log().only();
        double[] timesS = series.elapsedS();
        if (timesS.length < FEWEST) {
            throw new IllegalArgumentException(
                    "log " + log + " has " + timesS.length + " readings: expected at least " + FEWEST);
        }
        double lasts = timesS[timesS.length - 1];
        if (lasts > LASTS.toSeconds()) {
            throw new IllegalArgumentException(
                    "log " + log + " lasts " + lasts + " s: expected at most " + LASTS.toSeconds() + " s");
        }
        return series;
    }

    private static Prediction cooling(double startK, double airC, NetworkSolver solver) {
        return Lumped.of(Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), kelvins(startK)))
                .with(solver)
                .expose(in(Refrigerator.at(celsius(airC)), LASTS));
    }

    /**
     * What a calibration found.
     *
     * @param result the fit
     * @param timeConstantS mean time constant over the log's time by the fit [s]
     * @param uncalibratedS the same by the library's law [s]
     */
    record Calibrated(FitResult result, double timeConstantS, double uncalibratedS) {
        boolean isBelieved() {
            return result.converged()
                    && !result.residuals().rejectsModel()
                    && result.identifiability().isIdentifiable()
                    && result.estimates().stream().allMatch(estimate -> estimate.status() == Estimate.Status.ESTIMATED);
        }
    }

    static Calibrated calibrate(SensorSeries series, double airC) {
        double[] timesS = series.elapsedS();
        double startK = series.temperatureK(0);
        TemperatureModel model = TemperatureModel.of(
                        timesS,
                        (values, solver) -> Sensed.in(cooling(Objects.requireNonNull(values.get(START)), airC, solver)))
                .multipliers(Multipliers.AIR_FILM)
                .throughLawsAlone()
                .inputs(START);
        FitResult result = Fit.builder()
                .parameter(Parameter.of(Multipliers.AIR_FILM, 1).between(0.1, 10))
                .parameter(Parameter.of(START, startK).between(startK - 10, startK + 10))
                .run(RUN, model, observed(series))
                .build()
                .run();
        double fittedK = result.estimate(START).value();
        double lastS = timesS[timesS.length - 1];
        return new Calibrated(
                result,
                timeConstantS(
                        fittedK, airC, result.estimate(Multipliers.AIR_FILM).value(), lastS),
                timeConstantS(fittedK, airC, 1, lastS));
    }

    /** Time over the logarithm of what it leaves of the excess. */
    private static double timeConstantS(double startK, double airC, double factor, double afterS) {
        double airK = ZERO_CELSIUS_K + airC;
        double endK = cooling(
                        startK, airC, NetworkSolver.standard().withMultipliers(Map.of(Multipliers.AIR_FILM, factor)))
                .meanTemperatureK(afterS);
        return afterS / Math.log((startK - airK) / (endK - airK));
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
                ZERO_CELSIUS_K + START_C,
                USUAL_C,
                NetworkSolver.standard().withMultipliers(Map.of(Multipliers.AIR_FILM, TRUE_FACTOR)));
        StringBuilder log = new StringBuilder("elapsed [s],bottle [°C]\n");
        for (int i = 0; i < READINGS; i++) {
            int second = STEP_S * i;
            double reading = truth.meanTemperatureK(second) - ZERO_CELSIUS_K + NOISE_K * random.nextGaussian();
            log.append(second)
                    .append(',')
                    .append(Math.round(10 * reading) / 10.0)
                    .append('\n');
        }
        return log.toString();
    }
}
