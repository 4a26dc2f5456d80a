/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * The glasses of an evening: how warm each is when it is poured from a bottle that stands on the table, in a sleeve or in a bucket, and how
 * warm its last mouthful is.
 *
 * <p>The bottle is lumped and empties with the pours, so that it changes the faster the less is left; each glass is a fresh one at the
 * temperature that the {@link Serving} states, whatever the hour, and stands where the serving says. All is one run of a scene. Immutable and
 * thread-safe.
 */
public final class LastGlass {

    private static final int MOST_POURS = 40;
    private static final double ROUNDING = 1e-9;
    private static final double VOLUMES_AT_K = 293.15;
    private static final Duration LONGEST = Duration.ofDays(2);
    private static final String BOTTLE = "bottle";

    private final FilledVessel bottle;
    private final Surroundings place;
    private final Serving serving;
    private final NetworkSolver solver;

    private LastGlass(FilledVessel bottle, Surroundings place, Serving serving, NetworkSolver solver) {
        this.bottle = bottle;
        this.place = place;
        this.serving = serving;
        this.solver = solver;
    }

    /**
     * A bottle and the glasses poured from it.
     *
     * @param bottle the bottle with its contents as they are when the evening begins
     * @param place where it stands between the pours
     * @param serving the glass, how much is poured into it, its temperature, where it stands and how long it is drunk
     * @return the question
     * @throws IllegalArgumentException if the serving is of another drink than the bottle
     */
    public static LastGlass of(FilledVessel bottle, Surroundings place, Serving serving) {
        Liquid poured = serving.drink();
        if (!bottle.liquid().equals(poured)) {
            throw new IllegalArgumentException("glasses of " + poured.name() + " from a bottle of "
                    + bottle.liquid().name() + ": expected the same drink");
        }
        return new LastGlass(bottle, Objects.requireNonNull(place, "place"), serving, NetworkSolver.standard());
    }

    /**
     * The same question with another solver, such as one with the multipliers of a draw.
     *
     * @param newSolver tolerance and multipliers
     * @return a new question
     */
    public LastGlass with(NetworkSolver newSolver) {
        return new LastGlass(bottle, place, serving, Objects.requireNonNull(newSolver, "solver"));
    }

    /**
     * One glass.
     *
     * @param poured when it is poured
     * @param pouredK temperature of the drink as it is poured [K]
     * @param lastK temperature of the last mouthful [K]
     * @param meanK mean over the time from pouring to the last mouthful [K]
     */
    public record Glass(Duration poured, double pouredK, double lastK, double meanK) {}

    /**
     * What becomes of the glasses.
     *
     * @param glasses in the order of pouring, at least one
     */
    public record Evening(List<Glass> glasses) implements Answer {

        /**
         * Copies the list.
         *
         * @param glasses in the order of pouring, at least one, not modified
         * @throws IllegalArgumentException if there is none
         */
        public Evening {
            if (glasses.isEmpty()) {
                throw new IllegalArgumentException("no glasses: expected at least one");
            }
            glasses = List.copyOf(glasses);
        }

        /**
         * The first glass.
         *
         * @return the one that is poured first
         */
        public Glass first() {
            return glasses.get(0);
        }

        /**
         * The last glass.
         *
         * @return the one that is poured last
         */
        public Glass last() {
            return glasses.get(glasses.size() - 1);
        }

        @Override
        public String explain() {
            return "Poured and at the last mouthful: "
                    + glasses.stream()
                            .map(glass -> Words.format(
                                    "%s and %s (after %s)",
                                    Words.celsius(glass.pouredK()),
                                    Words.celsius(glass.lastK()),
                                    Words.time(Words.seconds(glass.poured()))))
                            .collect(Collectors.joining(", "))
                    + ".";
        }

        @Override
        public Snapshot snapshot() {
            Map<String, List<Double>> figures = new LinkedHashMap<>();
            figures.put(
                    "pouredS",
                    glasses.stream().map(glass -> Words.seconds(glass.poured())).toList());
            figures.put("pouredK", glasses.stream().map(Glass::pouredK).toList());
            figures.put("lastK", glasses.stream().map(Glass::lastK).toList());
            figures.put("meanK", glasses.stream().map(Glass::meanK).toList());
            return new Snapshot(Snapshot.FORMAT_VERSION, "evening", figures);
        }
    }

    /**
     * Answers.
     *
     * @param times when a glass is poured, since the bottle came to the table: 1 to 40 times, ascending, ≥ 0, at most two days
     * @return how warm the glasses are
     * @throws IllegalArgumentException if the times are not as stated
     * @throws OutOfRangeException if more is poured than the bottle holds
     */
    public Evening pouredAt(List<Duration> times) {
        requireTimes(times);
        requireEnough(times.size());
        Scene.Builder builder = Scene.builder()
                .startingAfter(serving.origin())
                .gear("place", place)
                .gear("cupboard", Air.at(SiValues.celsiusOf(serving.glassK())))
                .vessel(BOTTLE, bottle, "place");
        for (int i = 0; i < times.size(); i++) {
            pour(builder, i, times.get(i));
        }
        Duration end = times.get(times.size() - 1).plus(serving.drinking());
        ScenePrediction run = builder.build().predict(end, solver);
        List<Glass> glasses = new ArrayList<>();
        for (int i = 0; i < times.size(); i++) {
            double pouredS = Words.seconds(times.get(i));
            GlassCourse course =
                    GlassCourse.of(run.vessel(id(i)), pouredS, pouredS + Words.seconds(serving.drinking()));
            glasses.add(new Glass(times.get(i), course.firstK(), course.lastK(), course.meanK()));
        }
        return new Evening(glasses);
    }

    private static String id(int number) {
        return "glass " + (number + 1);
    }

    private void pour(Scene.Builder builder, int number, Duration time) {
        String glass = id(number);
        // Each glass has surroundings of its own: one hand holds one glass.
        builder.gear("with " + glass, serving.around(), time);
        String waits = time.isZero() ? "with " + glass : "cupboard";
        builder.emptyVessel(glass, serving.glass(), SiValues.celsiusOf(serving.glassK()), waits);
        if (!time.isZero()) {
            builder.move(glass, time, "with " + glass);
        }
        builder.pour(BOTTLE, time, Measures.cubicMetres(serving.portionM3()), glass)
                .drinkEvenly(glass, time, time.plus(serving.drinking()), Measures.cubicMetres(0));
    }

    private static void requireTimes(List<Duration> times) {
        if (times.isEmpty() || times.size() > MOST_POURS) {
            throw new IllegalArgumentException(
                    times.size() + " pours: expected 1 to " + MOST_POURS + " times at which a glass is poured");
        }
        Duration before = Duration.ZERO.minusNanos(1);
        for (Duration time : times) {
            if (time.compareTo(before) <= 0 || time.compareTo(LONGEST) > 0) {
                throw new IllegalArgumentException(
                        "pours at " + times + ": expected ascending times from nothing to " + LONGEST);
            }
            before = time;
        }
    }

    private void requireEnough(int pours) {
        double held = bottle.liquidMassKg() / bottle.liquid().density(VOLUMES_AT_K);
        double wantedM3 = pours * serving.portionM3();
        if (wantedM3 > held * (1 + ROUNDING)) {
            throw OutOfRangeException.refusal(
                    "volume of " + pours + " glasses", wantedM3, 0, held, "m³", "what the bottle holds");
        }
    }
}
