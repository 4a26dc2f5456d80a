/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Places one after the other. Each is a piece of gear of its own, called by the words that describe it.
 *
 * @param where which option they were given for
 * @param given stays as they were typed
 * @param names names of the places, all different
 * @param stays the same stays, read
 */
record Route(String where, List<String> given, List<String> names, List<PlaceWords.Stay> stays) {
    private static final String VESSEL = "vessel";
    private static final int MOST_STAYS = 50;
    private static final Duration LONGEST = Duration.ofDays(30);

    static Route of(String where, List<String> given) {
        if (given.size() > MOST_STAYS) {
            throw Refusal.usage(where, given.size() + " times", "at most " + MOST_STAYS);
        }
        List<PlaceWords.Stay> stays =
                given.stream().map(text -> PlaceWords.stay(where, text)).toList();
        Route route = new Route(where, given, names(given), stays);
        if (route.duration().compareTo(LONGEST) > 0) {
            throw Refusal.usage(where, route.duration().toHours() + " h in all", "at most 30 days in all");
        }
        return route;
    }

    private static List<String> names(List<String> given) {
        Set<String> names = new LinkedHashSet<>();
        for (String text : given) {
            String words = Refusal.oneLine(PlaceWords.placeOf(text)).strip();
            String name = words;
            for (int time = 2; !names.add(name); time++) {
                name = words + " (" + time + ")";
            }
        }
        return List.copyOf(names);
    }

    Duration duration() {
        return stays.stream().map(PlaceWords.Stay::duration).reduce(Duration.ZERO, Duration::plus);
    }

    /** Whether every place is a refrigerator or a freezer. */
    boolean isInAppliances() {
        return stays.stream().allMatch(stay -> stay.place().isAppliance());
    }

    /** Times at which the vessel leaves its places, in order. */
    List<Duration> ends() {
        List<Duration> ends = new ArrayList<>();
        Duration moved = Duration.ZERO;
        for (PlaceWords.Stay stay : stays) {
            moved = moved.plus(stay.duration());
            ends.add(moved);
        }
        return ends;
    }

    /** The stay, as it was typed, in which the vessel is until a time. */
    String until(Duration time) {
        List<Duration> ends = ends();
        for (int i = 0; i < ends.size(); i++) {
            if (time.compareTo(ends.get(i)) <= 0) {
                return Refusal.oneLine(given.get(i));
            }
        }
        return "";
    }

    /** What is not stated is still, dry and left alone. */
    Prediction asStated(FilledVessel filled, NetworkSolver solver) {
        return run(filled, stays.stream().map(PlaceWords.Stay::asStated).toList(), solver);
    }

    /** What is not stated is as it is drawn. */
    Prediction drawn(FilledVessel filled, Draw draw, NetworkSolver solver) {
        List<Duration> ends = ends();
        List<Exposure> drawn = new ArrayList<>();
        for (int i = 0; i < stays.size(); i++) {
            drawn.add(stays.get(i).drawn(draw, i == 0 ? Duration.ZERO : ends.get(i - 1)));
        }
        return run(filled, drawn, solver);
    }

    private Prediction run(FilledVessel filled, List<Exposure> exposures, NetworkSolver solver) {
        try {
            Scene.Builder scene = Scene.builder();
            for (int i = 0; i < exposures.size(); i++) {
                scene.gear(names.get(i), exposures.get(i).surroundings());
            }
            List<Duration> ends = ends();
            scene.vessel(
                    VESSEL,
                    filled,
                    names.get(0),
                    VesselModel.lumped(),
                    exposures.get(0).placement());
            for (int i = 1; i < exposures.size(); i++) {
                scene.move(
                        VESSEL, ends.get(i - 1), names.get(i), exposures.get(i).placement());
            }
            return scene.build().predict(duration(), solver).vessel(VESSEL);
        } catch (IllegalArgumentException e) {
            throw new Refusal(
                    ExitStatus.USAGE, where + ": expected places that this vessel can be in; " + e.getMessage());
        }
    }
}
