/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.beveragethermal.core.internal.Hazards;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.Trajectory;

/** What a user should know of what was poured into or from a vessel in a run. */
final class PourNotes {

    private static final double ZERO_CELSIUS_K = 273.15;

    private PourNotes() {}

    static List<String> of(
            String vesselId,
            Pours pours,
            Map<String, ModelledVessel> modelled,
            Map<String, Node> contents,
            Trajectory run) {
        if (pours.fillings(vesselId).isEmpty()) {
            return List.of();
        }
        Set<String> notes = new LinkedHashSet<>();
        ModelledVessel vessel = Objects.requireNonNull(modelled.get(vesselId));
        notes.add("poured or drunk from: contents are taken as mixed, and what goes over has their mean temperature");
        for (Pours.Moved moved : pours.moved()) {
            double timeS = moved.asked().after().toMillis() / 1000.0;
            if (moved.asked().to().equals(vesselId) && timeS < run.endS()) {
                notes.addAll(cautions(
                        moved,
                        vessel,
                        temperatureBeforeK(
                                run,
                                Objects.requireNonNull(
                                        contents.get(moved.asked().from())),
                                timeS),
                        run,
                        timeS));
            }
        }
        return List.copyOf(notes);
    }

    private static double temperatureBeforeK(Trajectory run, Node from, double timeS) {
        return run.temperatureK(from, timeS == 0 ? 0 : Math.nextDown(timeS));
    }

    private static List<String> cautions(
            Pours.Moved moved, ModelledVessel vessel, double drinkK, Trajectory run, double timeS) {
        List<String> notes = new ArrayList<>();
        if (drinkK > Hazards.SCALDS_K) {
            notes.add(String.format(
                    Locale.ROOT,
                    "a drink of %.0f °C scalds, within seconds at 60 °C; let it cool before it is drunk or handed on, and keep children away",
                    drinkK - ZERO_CELSIUS_K));
        }
        double furthest = 0;
        for (ModelledVessel.Band band : vessel.wall()) {
            furthest = Math.max(
                    furthest, Math.abs(drinkK - run.temperatureK(band.band().wall(), timeS)));
        }
        if (furthest > Hazards.SHOCK_K) {
            notes.add(String.format(
                    Locale.ROOT,
                    "%s: a drink %.0f K from the temperature of the wall may crack glass, thick, scratched or cut glass sooner; warm"
                            + " or cool the vessel first",
                    moved.asked().words(),
                    furthest));
        }
        return notes;
    }
}
