/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.vessel.FilledVessel;

/** One vessel, ready to be run through exposures at any time of the clock; gear is made ready when it is first used. */
record Runs(FilledVessel vessel, VesselModel model, NetworkSolver solver) {

    private static final String VESSEL = "vessel";

    Runs {
        Objects.requireNonNull(vessel, "vessel");
        Objects.requireNonNull(model, "model");
        Objects.requireNonNull(solver, "solver");
    }

    static Runs of(FilledVessel vessel) {
        return new Runs(vessel, VesselModel.lumped(), NetworkSolver.standard());
    }

    Runs with(VesselModel newModel) {
        return new Runs(vessel, newModel, solver);
    }

    Runs with(NetworkSolver newSolver) {
        return new Runs(vessel, model, newSolver);
    }

    Runs from(FilledVessel newVessel) {
        return new Runs(newVessel, model, solver);
    }

    /** A vessel's prediction with the scene that it is from. */
    record SceneRun(ScenePrediction scene, Prediction vessel, List<String> gearIds) {

        SceneRun {
            gearIds = List.copyOf(gearIds);
        }

        /** Ice in all gear at the start [kg]. */
        double iceKg() {
            return iceKg(Duration.ZERO);
        }

        /** Ice that has melted in all gear since it was made ready [kg]; not negative, though ice may grow. */
        double iceMeltedKg(double byS) {
            return Math.max(0, iceKg() - iceKg(Times.duration(byS)));
        }

        private double iceKg(Duration time) {
            return gearIds.stream().mapToDouble(id -> scene.iceKg(id, time)).sum();
        }
    }

    /** Runs the vessel from a time on the clock of the weather through exposures, at least one. */
    Prediction run(Duration origin, List<Exposure> exposures) {
        return runScene(origin, exposures).vessel();
    }

    /** The same with the state of the gear. */
    SceneRun runScene(Duration origin, List<Exposure> exposures) {
        Scene.Builder builder = Scene.builder().startingAfter(origin);
        IdentityHashMap<Surroundings, String> ids = new IdentityHashMap<>();
        Duration time = Duration.ZERO;
        for (Exposure exposure : exposures) {
            if (!ids.containsKey(exposure.surroundings())) {
                ids.put(exposure.surroundings(), "gear " + (ids.size() + 1));
                builder.gear(Objects.requireNonNull(ids.get(exposure.surroundings())), exposure.surroundings(), time);
            }
            String id = Objects.requireNonNull(ids.get(exposure.surroundings()));
            if (time.isZero()) {
                builder.vessel(VESSEL, vessel, id, model, exposure.placement());
            } else {
                builder.move(VESSEL, time, id, exposure.placement());
            }
            time = time.plus(exposure.duration());
        }
        ScenePrediction scene = builder.build().predict(time, solver);
        return new SceneRun(scene, scene.vessel(VESSEL), List.copyOf(ids.values()));
    }
}
