/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Short form of a scene for a single vessel: a list of exposures, one after the other.
 *
 * <p>An exposure says how the vessel stands or lies: {@code in(room, Duration.ofHours(1)).lying()}. The same surroundings object
 * named twice is the same piece of gear, which lives on in between. The properties of the drink are fitted once for all runs of a model: where
 * one vessel is run again and again, keep its model, and vary it by {@link #with}. Immutable.
 */
public final class Lumped {

    private static final String VESSEL = "vessel";

    private final FilledVessel vessel;
    private final DrinkFit drink;
    private final NetworkSolver solver;

    private Lumped(FilledVessel vessel, DrinkFit drink, NetworkSolver solver) {
        this.vessel = vessel;
        this.drink = drink;
        this.solver = Objects.requireNonNull(solver, "solver");
    }

    /**
     * A lumped model of a vessel.
     *
     * @param vessel the vessel with its contents at their temperature at the start
     * @return the model
     */
    public static Lumped of(FilledVessel vessel) {
        return new Lumped(vessel, DrinkFit.of(vessel.liquid()), NetworkSolver.standard());
    }

    /**
     * The same model run by another solver.
     *
     * @param newSolver tolerance and multipliers
     * @return a new model
     */
    public Lumped with(NetworkSolver newSolver) {
        return new Lumped(vessel, drink, newSolver);
    }

    /**
     * Predicts the vessel through exposures.
     *
     * @param exposures one or more, in order
     * @return the prediction from the start of the first to the end of the last
     * @throws IllegalArgumentException if there is none
     */
    public Prediction expose(Exposure... exposures) {
        return expose(List.of(exposures));
    }

    /**
     * Predicts the vessel through exposures.
     *
     * @param exposures one or more, in order, not modified
     * @return the prediction from the start of the first to the end of the last
     * @throws IllegalArgumentException if there is none
     */
    public Prediction expose(List<Exposure> exposures) {
        return expose(vessel, drink, VesselModel.lumped(), solver, exposures);
    }

    /** What all short forms share: a scene with one vessel. */
    static Prediction expose(
            FilledVessel vessel, DrinkFit drink, VesselModel model, NetworkSolver solver, List<Exposure> exposures) {
        if (exposures.isEmpty()) {
            throw new IllegalArgumentException("no exposures: expected at least one");
        }
        Scene.Builder builder = Scene.builder().knowing(vessel.liquid(), drink);
        IdentityHashMap<Surroundings, String> ids = new IdentityHashMap<>();
        for (Exposure exposure : exposures) {
            if (!ids.containsKey(exposure.surroundings())) {
                String id = "gear " + (ids.size() + 1);
                ids.put(exposure.surroundings(), id);
                builder.gear(id, exposure.surroundings());
            }
        }
        Duration time = Duration.ZERO;
        for (Exposure exposure : exposures) {
            String id = Objects.requireNonNull(ids.get(exposure.surroundings()));
            if (time.isZero()) {
                builder.vessel(VESSEL, vessel, id, model, exposure.placement());
            } else {
                builder.move(VESSEL, time, id, exposure.placement());
            }
            time = time.plus(exposure.duration());
        }
        return builder.build().predict(time, solver).vessel(VESSEL);
    }
}
