/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.solver.EventAnswer;
import org.beveragethermal.core.solver.RunEvent;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.FreezingCurve;

/**
 * Freezing in a closed vessel along a prediction: when ice begins to form, how much there is, when the contents fill the vessel.
 *
 * <p>Each part of the contents has the volume of its ice and of what stays liquid at its own temperature (ice by IAPWS R10-06: water
 * takes 9 % more room as ice), and the vessel the room under its closure at the mean temperature. Supercooling, gas that the ice drives
 * out, and the give of wall and closure are left out: the first may hasten the filling by minutes or delay it by hours. What is
 * counted is equilibrium; where ice sits is not: ice in a neck may burst a vessel that has room elsewhere.
 *
 * <p>Times are counted from the start of the run. Immutable and thread-safe.
 */
public final class FreezingHazard {

    /** Below this the freezing curve goes on as it is there [K]. */
    private static final double CURVE_COLDEST_K = 248.15;

    private static final double SAME_DRINK_K = 1e-6;
    /** A drink that turns to ice at one temperature has more ice than this just below it. */
    private static final double AT_ONCE = 0.5;

    private final Prediction prediction;
    private final ClosedVessel vessel;
    private final Beverage drink;
    private final FreezingCurve curve;
    /** Mass of ice per mass of drink just below the freezing point [-]. */
    private final double iceJustBelow;

    private FreezingHazard(Prediction prediction, ClosedVessel vessel, Beverage drink) {
        this.prediction = Objects.requireNonNull(prediction, "prediction");
        this.vessel = vessel;
        this.drink = drink;
        this.curve = FreezingCurve.of(drink);
        double belowK = Math.nextDown(drink.freezingOnsetK());
        this.iceJustBelow = belowK < CURVE_COLDEST_K ? 0 : curve.iceFraction(belowK);
    }

    /**
     * The hazard of a vessel along its prediction.
     *
     * @param prediction a run of the same vessel
     * @param vessel the vessel that was predicted, closed; its contents must be a beverage
     * @return the hazard
     * @throws IllegalArgumentException if no freezing curve is known for the contents, or the prediction is of a drink that freezes at
     *     another temperature, takes up melt water, or has no freezing in it
     */
    public static FreezingHazard of(Prediction prediction, ClosedVessel vessel) {
        if (!(vessel.filled().liquid() instanceof Beverage drink)) {
            throw new IllegalArgumentException(vessel.filled().liquid().name()
                    + ": expected a beverage; no freezing curve is known of other liquids");
        }
        for (Node node : prediction.contents().nodes()) {
            boolean same = node.store() instanceof FreezingStore store
                    && Math.abs(store.freezingOnsetK() - drink.freezingOnsetK()) < SAME_DRINK_K;
            if (!same) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "%s: expected the prediction of %s, which freezes at %.2f K",
                        node.name(),
                        drink.name(),
                        drink.freezingOnsetK()));
            }
        }
        return new FreezingHazard(prediction, vessel, drink);
    }

    /**
     * When ice begins to form in the first part of the contents.
     *
     * @return when, or that it never does in this run
     */
    public FreezingOnset onset() {
        double first = Double.POSITIVE_INFINITY;
        for (Node node : prediction.contents().nodes()) {
            if (prediction.trajectory().first(RunEvent.freezingStarts(node), 0) instanceof EventAnswer.Reached at) {
                first = Math.min(first, at.timeS());
            }
        }
        if (first <= prediction.trajectory().endS()) {
            return new FreezingOnset.Freezes(
                    duration(first), drink.freezingOnsetK(), prediction.meanTemperatureK(first));
        }
        double coldest = prediction.trajectory().timeOfLargest(0, t -> -prediction.temperatureK(Part.COLDEST, t));
        return new FreezingOnset.NeverFreezes(drink.freezingOnsetK(), prediction.temperatureK(Part.COLDEST, coldest));
    }

    /**
     * How much of the drink is ice.
     *
     * @param time time since the start, 0 to the end of the run
     * @return mass of ice per mass of drink [-], 0 to 1
     * @throws IllegalArgumentException if the time is not in the run
     */
    public double iceFraction(Duration time) {
        return prediction.iceFraction(seconds(time));
    }

    /**
     * Room that drink and ice leave under the closure.
     *
     * @param time time since the start, 0 to the end of the run
     * @return volume [m³]; below 0 where they need more than there is
     * @throws IllegalArgumentException if the time is not in the run
     */
    public double headspaceM3(Duration time) {
        return headspaceM3(seconds(time));
    }

    private double headspaceM3(double timeS) {
        double[] temperatures = prediction.profileK(timeS);
        double[] ice = prediction.iceProfile(timeS);
        List<Double> shares = prediction.contents().shares();
        double perKg = 0;
        for (int i = 0; i < temperatures.length; i++) {
            perKg += shares.get(i) * specificVolume(temperatures[i], ice[i]);
        }
        return vessel.roomM3(prediction.meanTemperatureK(timeS))
                - vessel.filled().liquidMassKg() * perKg;
    }

    /** With solutes the temperature tells the ice; without, ice and liquid of one temperature lie side by side. */
    private double specificVolume(double temperatureK, double iceFraction) {
        double t = Math.max(temperatureK, CURVE_COLDEST_K);
        if (iceJustBelow < AT_ONCE) {
            return curve.specificVolume(t);
        }
        double liquid = curve.specificVolume(Math.max(t, drink.freezingOnsetK()));
        double frozen = curve.specificVolume(Math.min(t, Math.nextDown(drink.freezingOnsetK())));
        return liquid + iceFraction / iceJustBelow * (frozen - liquid);
    }

    /**
     * When drink and ice have taken all the room under the closure, by freezing or by expanding.
     *
     * @return when, or the least room that is left
     */
    public Fullness fullness() {
        if (headspaceM3(0.0) <= 0) {
            return full(0);
        }
        OptionalDouble fills = prediction.trajectory().firstCrossing(0, this::headspaceM3);
        if (fills.isPresent()) {
            return full(fills.getAsDouble());
        }
        double least = prediction.trajectory().timeOfLargest(0, t -> -headspaceM3(t));
        return new Fullness.NeverFills(headspaceM3(least), duration(least));
    }

    private Fullness full(double timeS) {
        return new Fullness.Fills(duration(timeS), prediction.meanTemperatureK(timeS), prediction.iceFraction(timeS));
    }

    /**
     * How much time is left before the vessel is full.
     *
     * @param now time since the start, 0 to the end of the run
     * @return the time left, that it is too late, or that it does not happen in this run
     * @throws IllegalArgumentException if the time is not in the run
     */
    public TimeLeft timeLeft(Duration now) {
        Duration end = prediction.end();
        if (now.isNegative() || now.compareTo(end) > 0) {
            throw new IllegalArgumentException("now " + now + ": expected PT0S to " + end);
        }
        if (fullness() instanceof Fullness.Fills fills) {
            return fills.after().compareTo(now) > 0
                    ? new TimeLeft.Left(fills.after().minus(now))
                    : new TimeLeft.TooLate(now.minus(fills.after()));
        }
        return new TimeLeft.NotInThisRun(end.minus(now));
    }

    /**
     * Onset and fullness in sentences.
     *
     * @return two sentences or more
     */
    public String explain() {
        return onset().explain() + " " + fullness().explain();
    }

    /**
     * The figures as plain SI numbers.
     *
     * @return the snapshot
     */
    public Snapshot snapshot() {
        OptionalDouble onsetS = onset() instanceof FreezingOnset.Freezes freezes
                ? OptionalDouble.of(seconds(freezes.after()))
                : OptionalDouble.empty();
        OptionalDouble fullS = fullness() instanceof Fullness.Fills fills
                ? OptionalDouble.of(seconds(fills.after()))
                : OptionalDouble.empty();
        double end = prediction.trajectory().endS();
        return new Snapshot(
                Snapshot.FORMAT,
                drink.freezingOnsetK(),
                onsetS,
                fullS,
                prediction.iceFraction(end),
                headspaceM3(end),
                end);
    }

    /**
     * Freezing in a closed vessel as plain SI numbers.
     *
     * @param formatVersion version of this record's components
     * @param freezingPointK temperature at which ice begins to form [K]
     * @param onsetS when ice begins to form [s]; empty if it does not
     * @param fullS when the vessel is full [s]; empty if it is not
     * @param iceFractionAtEnd mass of ice per mass of drink at the end of the run [-]
     * @param headspaceAtEndM3 room under the closure at the end [m³], below 0 if it is overfull
     * @param endS end of the run [s]
     */
    public record Snapshot(
            int formatVersion,
            double freezingPointK,
            OptionalDouble onsetS,
            OptionalDouble fullS,
            double iceFractionAtEnd,
            double headspaceAtEndM3,
            double endS) {

        /** The version that this library writes. */
        public static final int FORMAT = 1;
    }

    private static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }

    private static Duration duration(double timeS) {
        return Duration.ofMillis(Math.round(timeS * 1000));
    }
}
