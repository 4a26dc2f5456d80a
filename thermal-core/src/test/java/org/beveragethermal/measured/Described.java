/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import static org.beveragethermal.materials.units.Measures.celsius;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import org.beveragethermal.core.film.CondensingFilm;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Layered;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * A run as far as it is described: from a draw of everything that is not to a prediction.
 *
 * @param vessel from a draw to the vessel
 * @param liquid what is in it
 * @param start temperature of vessel and contents at the start
 * @param setting what it is put into
 * @param reading what the thermometer showed
 * @param pouring how it comes into the vessel and is drunk from there; empty if it is there throughout
 */
record Described(
        Function<Draw, Vessel> vessel,
        Liquid liquid,
        Given start,
        Setting setting,
        Reading reading,
        Optional<Pouring> pouring) {

    /** Something that is in its vessel from the start on. */
    Described(Function<Draw, Vessel> vessel, Liquid liquid, Given start, Setting setting, Reading reading) {
        this(vessel, liquid, start, setting, reading, Optional.empty());
    }

    /** Adds a vessel {@value Pouring#GLASS} to a scene with gear {@value Pouring#ROOM}, and what is poured into it and drunk from it. */
    @FunctionalInterface
    interface Pouring {
        String ROOM = "room";
        String GLASS = "glass";

        Scene.Builder in(Scene.Builder scene, Draw draw, FilledVessel filled);
    }

    private static final double ZERO_CELSIUS_K = 273.15;

    /** A probe that is held into the contents is neither on the floor nor in the neck: parts of the contents below it. */
    private static final double LOWEST_PROBE = 0.2;

    private static final double HIGHEST_PROBE = 0.8;

    /** What a thermometer was put to. */
    enum Reading {
        /** The contents: mixed, as when poured or shaken, in half of the draws, and at one spot in the others. */
        CONTENTS,
        /** The wall, by a thermometer stuck on it. */
        WALL,
        /** What the contents would have risen to by the heat of what condensed until the end of the run, and nothing else. */
        CONDENSATION
    }

    /** One drawn run: what the thermometer shows, in °C, as a function of time in s. */
    record Drawn(Prediction prediction, DoubleUnaryOperator celsiusAt) {

        OptionalDouble firstTimeS(double targetC) {
            return prediction.trajectory().firstCrossing(0, timeS -> celsiusAt.applyAsDouble(timeS) - targetC);
        }
    }

    Drawn run(Draw draw, Duration duration) {
        FilledVessel filled = vessel.apply(draw).filledWith(liquid, celsius(start.in(draw)));
        NetworkSolver solver = NetworkSolver.standard()
                .withToleranceK(setting.means().toleranceK())
                .withMultipliers(multipliers(draw));
        Exposure exposure = setting.placing().expose(draw, filled, duration);
        Prediction prediction = pouring.map(how -> how.in(
                                Scene.builder().gear(Pouring.ROOM, exposure.surroundings()), draw, filled)
                        .build()
                        .predict(duration, solver)
                        .vessel(Pouring.GLASS))
                .orElseGet(
                        () -> Layered.of(filled, setting.model()).with(solver).expose(exposure));
        return new Drawn(
                prediction,
                reading == Reading.CONDENSATION
                        ? timeS -> start.in(draw) + condensedJ(prediction) / capacityJPerK(filled)
                        : thermometer(draw, prediction));
    }

    private static double condensedJ(Prediction prediction) {
        return -prediction.ledger().entries().stream()
                .filter(entry -> entry.mechanism().equals(CondensingFilm.MECHANISM))
                .mapToDouble(LedgerEntry::heatJ)
                .sum();
    }

    private static double capacityJPerK(FilledVessel filled) {
        return filled.liquidMassKg() * filled.liquid().specificHeatCapacity(filled.temperatureK());
    }

    private Map<String, Double> multipliers(Draw draw) {
        Map<String, Double> factors = new HashMap<>(Conditions.multipliers(draw));
        factors.merge(Multipliers.AIR_FILM, setting.airFilm().applyAsDouble(draw), (law, here) -> law * here);
        return factors;
    }

    private DoubleUnaryOperator thermometer(Draw draw, Prediction prediction) {
        if (reading == Reading.WALL) {
            return timeS -> prediction.wallTemperatureK(0, timeS) - ZERO_CELSIUS_K;
        }
        double where = 2 * Conditions.in(draw, Conditions.WHERE_READ) - 1;
        if (where < 0 || setting.model().slices() == 1) {
            return timeS -> prediction.meanTemperatureK(timeS) - ZERO_CELSIUS_K;
        }
        int slice = slice(prediction.profileShares(), LOWEST_PROBE + (HIGHEST_PROBE - LOWEST_PROBE) * where);
        var node = prediction.contents().nodes().get(slice);
        return timeS -> prediction.trajectory().temperatureK(node, timeS) - ZERO_CELSIUS_K;
    }

    private static int slice(double[] shares, double contentsBelow) {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum += shares[i];
            if (sum >= contentsBelow) {
                return i;
            }
        }
        return shares.length - 1;
    }

    /** Part of the excess at the start that is left at a temperature, both counted on the middle of what is not stated. */
    double excess(double temperatureC) {
        double medium = setting.medium().middle();
        return (temperatureC - medium) / (start.middle() - medium);
    }

    /** The temperature at which a part of the excess is left. */
    double celsiusAtExcess(double excess) {
        double medium = setting.medium().middle();
        return medium + excess * (start.middle() - medium);
    }
}
