/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.TemperatureDifference;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * What happened to a vessel before now, from one reading of its temperature.
 *
 * <p>Heat conduction forgets: the longer ago, the more pasts lead to the same reading, until it is that of the surroundings and tells
 * nothing. The answer counts what the error of the reading does, and says that the question is ill-posed where a kelvin of the reading
 * stands for more than a bound, the longest time that agrees with the reading is more than four times the shortest, or the reading cannot
 * be told from the surroundings.
 *
 * <pre>{@code
 * PastAnswer when = Past.of(bottle, terrace).takenOut(celsius(6), celsius(9), Duration.ofHours(6));
 * PastAnswer what = Past.of(bottle, terrace).was(celsius(9), Duration.ofMinutes(20), celsius(0), celsius(25));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Past {

    private static final double USUAL_ERROR_K = 0.5;
    private static final double LEAST_ERROR_K = 0.01;
    private static final double MOST_ERROR_K = 5;
    private static final double USUAL_KELVIN_PER_KELVIN = 10;
    /** The longest time that agrees with a reading must not be more than this many times the shortest. */
    private static final double WIDEST_RATIO = 4;

    private static final double SLOPE_STEP_K = 0.25;

    private static final int SCAN_STEPS = 10;
    private static final int MOST_RUNS = 120;
    private static final double ACCURACY_K = 1e-4;

    private final Runs runs;
    private final Surroundings surroundings;
    private final double errorK;
    private final double bound;

    private Past(Runs runs, Surroundings surroundings, double errorK, double bound) {
        this.runs = runs;
        this.surroundings = Objects.requireNonNull(surroundings, "surroundings");
        this.errorK = errorK;
        this.bound = bound;
    }

    /**
     * Asks about an upright vessel with lumped contents. A reading is good to 0.5 K, and a kelvin now may stand for at most 10 K then,
     * unless said otherwise.
     *
     * @param vessel the vessel; the temperature of its contents does not matter
     * @param surroundings where it has been since it was taken out
     * @return the questions
     */
    public static Past of(FilledVessel vessel, Surroundings surroundings) {
        return new Past(Runs.of(vessel), surroundings, USUAL_ERROR_K, USUAL_KELVIN_PER_KELVIN);
    }

    /**
     * The same questions with contents described otherwise.
     *
     * @param model how finely the contents are described
     * @return new questions
     */
    public Past with(VesselModel model) {
        return new Past(runs.with(model), surroundings, errorK, bound);
    }

    /**
     * The same questions run by another solver.
     *
     * @param solver tolerance and multipliers
     * @return new questions
     */
    public Past with(NetworkSolver solver) {
        return new Past(runs.with(solver), surroundings, errorK, bound);
    }

    /**
     * The same questions with another thermometer.
     *
     * @param error how far the reading may be off either way, 0.01 K to 5 K
     * @return new questions
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the error is outside its range
     */
    public Past withReadingError(Quantity<TemperatureDifference> error) {
        return new Past(
                runs,
                surroundings,
                SiValues.temperatureDifferenceK(error, "error of the reading", LEAST_ERROR_K, MOST_ERROR_K),
                bound);
    }

    /**
     * The same questions with another bound beyond which an answer is worth nothing.
     *
     * @param kelvinPerKelvin kelvins then that a kelvin now may stand for [-], finite, at least 1
     * @return new questions
     * @throws IllegalArgumentException if the bound is outside its range
     */
    public Past withBound(double kelvinPerKelvin) {
        if (!(kelvinPerKelvin >= 1 && Double.isFinite(kelvinPerKelvin))) {
            throw new IllegalArgumentException(
                    "bound " + kelvinPerKelvin + " K/K: expected a finite number of at least 1");
        }
        return new Past(runs, surroundings, errorK, kelvinPerKelvin);
    }

    /**
     * When it was taken out at one temperature, if it is at another now.
     *
     * @param then temperature at which it was taken out
     * @param now the reading
     * @param clockNow what the clock of the surroundings' weather shows now; as long ago as that is looked, more than nothing, at most
     *     30 days
     * @return how long ago, or that the reading does not tell
     * @throws IllegalArgumentException if a quantity is no temperature or the time is outside its range
     */
    public PastAnswer takenOut(Quantity<Temperature> then, Quantity<Temperature> now, Duration clockNow) {
        double nowK = SiValues.temperatureK(now, "reading");
        StartSearch search = StartSearch.of(runs.vessel().atTemperature(then), surroundings)
                .with(runs.model())
                .with(runs.solver());
        StartAnswer roughly = search.latestStart(new Wanted(nowK - errorK, nowK + errorK), clockNow);
        if (roughly instanceof StartAnswer.Never never) {
            return new PastAnswer.Impossible(nowK, never.closestK());
        }
        StartAnswer exactly = search.latestStart(new Wanted(nowK, nowK), clockNow);
        List<Window> windows = ((StartAnswer.Starts) roughly).windows();
        List<PastAnswer.TakenOut> times = new ArrayList<>();
        for (Window window : windows) {
            if (window.from().isZero()) {
                return new PastAnswer.IllPosed(
                        Text.format(
                                "It cannot be told when: it would be at %s now, to the error of the reading, whenever it was"
                                        + " taken out more than %s ago, as far back as was looked.",
                                Text.celsius(nowK), Text.time(clockNow.minus(window.to()))),
                        Double.MAX_VALUE,
                        "s/K");
            }
            Duration ago = clockNow.minus(within(window, exactly));
            Duration least = clockNow.minus(window.to());
            Duration most = clockNow.minus(window.from());
            if (!least.isZero() && Times.seconds(most) > WIDEST_RATIO * Times.seconds(least)) {
                return new PastAnswer.IllPosed(
                        Text.format(
                                "It cannot be told when: the error of the reading stands for anything from %s to %s ago.",
                                Text.time(least), Text.time(most)),
                        Times.seconds(window.length()) / (2 * errorK),
                        "s/K");
            }
            times.add(new PastAnswer.TakenOut(ago, least, most));
        }
        return times.size() == 1 ? times.get(0) : new PastAnswer.Several(times);
    }

    /** The start in a window that leads to the reading itself, or nearest to it. */
    private static Duration within(Window window, StartAnswer exactly) {
        if (exactly instanceof StartAnswer.Starts starts) {
            return starts.windows().stream()
                    .map(Window::to)
                    .filter(window::contains)
                    .findFirst()
                    .orElse(window.to());
        }
        Duration closest = ((StartAnswer.Never) exactly).closestStart();
        return window.contains(closest) ? closest : window.to();
    }

    /**
     * How warm it was when it was put where it is, in surroundings at time 0 of whose clock that was.
     *
     * @param now the reading
     * @param ago how long ago it was put there, more than nothing
     * @param low lowest temperature that is thought of
     * @param high highest temperature that is thought of, above the lower
     * @return how warm, or that the reading does not tell
     * @throws IllegalArgumentException if a quantity is no temperature, the range is empty or the time is not positive
     */
    public PastAnswer was(
            Quantity<Temperature> now, Duration ago, Quantity<Temperature> low, Quantity<Temperature> high) {
        double nowK = SiValues.temperatureK(now, "reading");
        double lowK = SiValues.temperatureK(low, "lowest temperature thought of");
        double highK = SiValues.temperatureK(high, "highest temperature thought of");
        if (!(lowK < highK)) {
            throw new IllegalArgumentException(
                    "temperatures from " + lowK + " K to " + highK + " K: expected the upper end above the lower");
        }
        double agoS = Times.positiveS(ago, "time ago");
        DoubleUnaryOperator nowAt = thenK -> temperatureNowK(thenK, ago, agoS);
        LevelSearch search = new LevelSearch(nowAt, lowK, highK, SCAN_STEPS, MOST_RUNS, ACCURACY_K);
        List<double[]> around = search.within(nowK - errorK, nowK + errorK);
        if (around.isEmpty()) {
            double lowest = search.at(lowK);
            double highest = search.at(highK);
            return new PastAnswer.Impossible(
                    nowK, Math.abs(lowest - nowK) < Math.abs(highest - nowK) ? lowest : highest);
        }
        double leastK = around.get(0)[0];
        double mostK = around.get(around.size() - 1)[1];
        List<Double> roots = search.roots(nowK);
        double bestK = roots.isEmpty() ? nearestEnd(nowAt, leastK, mostK, nowK) : roots.get(0);
        double slope = slope(nowAt, bestK, lowK, highK);
        double perKelvin = slope > 1 / Double.MAX_VALUE ? 1 / slope : Double.MAX_VALUE;
        if (perKelvin > bound) {
            return new PastAnswer.IllPosed(
                    Text.format(
                            "It cannot be told what it was %s ago: anything from %s to %s would be at %s now, to the error of the"
                                    + " reading; a kelvin now stands for %.3g K then.",
                            Text.time(ago), Text.celsius(leastK), Text.celsius(mostK), Text.celsius(nowK), perKelvin),
                    perKelvin,
                    "K/K");
        }
        return new PastAnswer.Was(bestK, leastK, mostK, perKelvin);
    }

    private static double nearestEnd(DoubleUnaryOperator nowAt, double leastK, double mostK, double nowK) {
        return Math.abs(nowAt.applyAsDouble(leastK) - nowK) < Math.abs(nowAt.applyAsDouble(mostK) - nowK)
                ? leastK
                : mostK;
    }

    /** Kelvins now for a kelvin then, beside the search, whose runs may be used up. */
    private static double slope(DoubleUnaryOperator nowAt, double thenK, double lowK, double highK) {
        double below = Math.max(lowK, thenK - SLOPE_STEP_K);
        double above = Math.min(highK, thenK + SLOPE_STEP_K);
        return Math.abs(nowAt.applyAsDouble(above) - nowAt.applyAsDouble(below)) / (above - below);
    }

    private double temperatureNowK(double thenK, Duration ago, double agoS) {
        Prediction run = runs.from(runs.vessel().atTemperature(SiValues.celsiusOf(thenK)))
                .run(Duration.ZERO, List.of(new Exposure(surroundings, ago)));
        return run.meanTemperatureK(agoS);
    }
}
