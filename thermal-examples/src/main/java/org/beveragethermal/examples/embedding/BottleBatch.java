/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.batch.BatchNetwork;
import org.beveragethermal.core.batch.BatchSamples;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;

/**
 * A real bottle in a refrigerator made ready for a batch: its paths, as the engine has them, followed by laws that are evaluated in
 * arrays.
 *
 * <p>In a path of the engine a film lies in series with half of the wall, so that a factor on the film is not quite a factor on the
 * path's heat. What it is instead is asked of the path itself, midway through the course, for each sample.
 */
final class BottleBatch {

    static final String CONTENTS = "contents";
    private static final String WALL = "wall";
    private static final String AIR = "air";
    private static final double ZERO_CELSIUS_K = 273.15;
    /** Means of contents and wall, of wall and air, and their greatest differences, on the way to 9 °C. */
    private static final double[] INSIDE_K = {ZERO_CELSIUS_K + 5, ZERO_CELSIUS_K + 29, 6};

    private static final double[] OUTSIDE_K = {ZERO_CELSIUS_K + 3, ZERO_CELSIUS_K + 21, 28};
    private static final double MIDWAY_K = ZERO_CELSIUS_K + 14;
    private static final double AIR_K = ZERO_CELSIUS_K + 5;
    private static final double WARM_C = 22;
    private static final double COOL_C = 9;
    private static final double LEAST_FACTOR = 0.35;
    private static final double MOST_FACTOR = 2.9;
    private static final int FACTORS = 33;
    private static final int GRID = 60;

    private final BatchNetwork network;
    private final double contentsJPerK;
    private final double wallJPerK;
    private final DoubleUnaryOperator insideFactor;
    private final DoubleUnaryOperator airFactor;
    private final DoubleUnaryOperator radiationFactor;
    private final double worstLaw;

    private BottleBatch() {
        List<Path> paths =
                course(WARM_C + ZERO_CELSIUS_K, AIR_K, Map.of()).trajectory().paths(0);
        Path inside = path(paths, Multipliers.INSIDE_FILM);
        Path outside = path(paths, Multipliers.AIR_FILM);
        DoubleBinaryOperator film = heat(inside, 0);
        DoubleBinaryOperator convection = heat(outside, 0);
        DoubleBinaryOperator radiation = heat(outside, 1);
        FittedLaw filmLaw = FittedLaw.of(film, INSIDE_K[0], INSIDE_K[1], INSIDE_K[2]);
        FittedLaw convectionLaw = FittedLaw.of(convection, OUTSIDE_K[0], OUTSIDE_K[1], OUTSIDE_K[2]);
        FittedLaw radiationLaw = FittedLaw.of(radiation, OUTSIDE_K[0], OUTSIDE_K[1], OUTSIDE_K[2]);
        worstLaw = Math.max(
                filmLaw.worst(film, GRID),
                Math.max(convectionLaw.worst(convection, GRID), radiationLaw.worst(radiation, GRID)));
        network = BatchNetwork.builder()
                .node(CONTENTS)
                .node(WALL)
                .boundary(AIR)
                .link(Multipliers.INSIDE_FILM, CONTENTS, WALL, filmLaw)
                .link(Multipliers.AIR_FILM, WALL, AIR, convectionLaw)
                .link(Multipliers.RADIATION, WALL, AIR, radiationLaw)
                .build();
        double wallK = new BrentSolver()
                .solve(
                        100,
                        wall -> film.applyAsDouble(MIDWAY_K, wall)
                                - convection.applyAsDouble(wall, AIR_K)
                                - radiation.applyAsDouble(wall, AIR_K),
                        AIR_K,
                        MIDWAY_K);
        insideFactor = factor(inside, 0, Multipliers.INSIDE_FILM, MIDWAY_K, wallK);
        airFactor = factor(outside, 0, Multipliers.AIR_FILM, wallK, AIR_K);
        radiationFactor = factor(outside, 1, Multipliers.AIR_FILM, wallK, AIR_K);
        contentsJPerK = capacityJPerK(0);
        wallJPerK = capacityJPerK(1);
    }

    /** A bottle of 750 mL of wine in a refrigerator. */
    static BottleBatch bottle() {
        return new BottleBatch();
    }

    /** The same as the scene tells it, for a day: what a batch of one sample must agree with. */
    static Prediction course(double startK, double airK, Map<String, Double> films) {
        return Lumped.of(filled(startK))
                .with(NetworkSolver.standard().withMultipliers(films))
                .expose(in(Refrigerator.at(kelvins(airK)), Duration.ofDays(1)));
    }

    private static FilledVessel filled(double startK) {
        return Vessels.highShouldered750()
                .filledWith(Beverage.wine(percentByVolume(12.5)), celsius(WARM_C))
                .atTemperature(kelvins(startK));
    }

    private static Path path(List<Path> paths, String multiplier) {
        return paths.stream()
                .filter(path -> path.multipliers().contains(multiplier))
                .findFirst()
                .orElseThrow();
    }

    /** Heat of one account of a path whose other ends are all at one temperature. */
    private static DoubleBinaryOperator heat(Path path, int account) {
        PathEvaluation evaluation = new PathEvaluation(path);
        return (from, to) -> flow(path, evaluation, account, from, to);
    }

    private static double flow(Path path, PathEvaluation evaluation, int account, double fromK, double toK) {
        double[] endsK = new double[path.ends().size()];
        Arrays.fill(endsK, toK);
        endsK[0] = fromK;
        evaluation.evaluate(path, 0, endsK);
        return evaluation.flowOf(account);
    }

    /** What a factor on a film does to the heat of an account, as a part of what it is without. */
    private static DoubleUnaryOperator factor(Path path, int account, String film, double fromK, double toK) {
        double[] logs = new double[FACTORS];
        double[] ratios = new double[FACTORS];
        double plain = heat(path, account).applyAsDouble(fromK, toK);
        for (int i = 0; i < FACTORS; i++) {
            logs[i] = Math.log(LEAST_FACTOR) + Math.log(MOST_FACTOR / LEAST_FACTOR) * i / (FACTORS - 1);
            PathEvaluation evaluation = new PathEvaluation(path, Map.of(film, Math.exp(logs[i])));
            ratios[i] = flow(path, evaluation, account, fromK, toK) / plain;
        }
        PolynomialSplineFunction spline = new SplineInterpolator().interpolate(logs, ratios);
        return factor -> {
            if (!(factor >= LEAST_FACTOR && factor <= MOST_FACTOR)) {
                throw new IllegalArgumentException(
                        "factor on " + film + " " + factor + ": expected " + LEAST_FACTOR + " to " + MOST_FACTOR);
            }
            return spline.value(Math.min(Math.max(Math.log(factor), logs[0]), logs[FACTORS - 1]));
        };
    }

    /** Mean over the time of the course, as stores have it: here a node has one heat capacity, and cold hours count for more. */
    private static double capacityJPerK(int end) {
        double[] celsius = {WARM_C, 0.5 * (WARM_C + COOL_C), COOL_C};
        double sum = 0;
        double weights = 0;
        for (int i = 0; i + 1 < celsius.length; i++) {
            double weight = Math.log((celsius[i] + ZERO_CELSIUS_K - AIR_K) / (celsius[i + 1] + ZERO_CELSIUS_K - AIR_K));
            double capacity =
                    (enthalpyJ(celsius[i], end) - enthalpyJ(celsius[i + 1], end)) / (celsius[i] - celsius[i + 1]);
            sum += weight * capacity;
            weights += weight;
        }
        return sum / weights;
    }

    private static double enthalpyJ(double celsius, int end) {
        List<Path> paths =
                course(ZERO_CELSIUS_K + celsius, AIR_K, Map.of()).trajectory().paths(0);
        return ((Node) path(paths, Multipliers.INSIDE_FILM).ends().get(end)).enthalpyJ();
    }

    /** Greatest difference of a law of the batch from the path that it follows, as a part of the heat [-]. */
    double worstLaw() {
        return worstLaw;
    }

    /** Samples from what is known of each. */
    BatchSamples samples(Draws draws) {
        return network.samples(draws.count())
                .capacityJPerK(CONTENTS, contentsJPerK)
                .capacityJPerK(WALL, wallJPerK)
                .startK(CONTENTS, draws.startK())
                .startK(WALL, draws.startK())
                .boundaryK(AIR, draws.airK())
                .multiplier(Multipliers.INSIDE_FILM, each(draws.insideFilm(), insideFactor))
                .multiplier(Multipliers.AIR_FILM, each(draws.airFilm(), airFactor))
                .multiplier(Multipliers.RADIATION, each(draws.airFilm(), radiationFactor))
                .build();
    }

    private static double[] each(double[] values, DoubleUnaryOperator function) {
        return Arrays.stream(values).map(function).toArray();
    }
}
