/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.List;
import java.util.Objects;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Short form of a scene for a single vessel whose contents are layers: a list of exposures, one after the other.
 *
 * <p>An exposure says how the vessel stands or lies: {@code in(room, Duration.ofHours(1)).lying()}. The same surroundings object
 * named twice is the same piece of gear, which lives on in between. Immutable.
 *
 * <pre>{@code
 * Prediction p = Layered.axial(bottle).expose(in(bath, Duration.ofMinutes(25)), in(room, Duration.ofMinutes(40)));
 * double[] fromTheBaseUpwardsK = p.profileK(1500);
 * }</pre>
 */
public final class Layered {

    private final FilledVessel vessel;
    private final DrinkFit drink;
    private final VesselModel model;
    private final NetworkSolver solver;

    private Layered(FilledVessel vessel, VesselModel model) {
        this(vessel, DrinkFit.of(vessel.liquid()), model, NetworkSolver.standard());
    }

    private Layered(FilledVessel vessel, DrinkFit drink, VesselModel model, NetworkSolver solver) {
        this.vessel = vessel;
        this.drink = drink;
        this.model = Objects.requireNonNull(model, "model");
        this.solver = Objects.requireNonNull(solver, "solver");
    }

    /**
     * Contents as slices stacked along the height, which stratify; see {@link VesselModel#axial()}.
     *
     * @param vessel the vessel with its contents at their temperature at the start
     * @return the model
     */
    public static Layered axial(FilledVessel vessel) {
        return new Layered(vessel, VesselModel.axial());
    }

    /**
     * Contents at rest as shells about the axis, which only conduct; see {@link VesselModel#radial()}.
     *
     * @param vessel the vessel with its contents at their temperature at the start
     * @return the model
     */
    public static Layered radial(FilledVessel vessel) {
        return new Layered(vessel, VesselModel.radial());
    }

    /**
     * Contents as a model says.
     *
     * @param vessel the vessel with its contents at their temperature at the start
     * @param model how finely its contents are described; lumped contents are allowed too
     * @return the model
     */
    public static Layered of(FilledVessel vessel, VesselModel model) {
        return new Layered(vessel, model);
    }

    /**
     * The same model run by another solver.
     *
     * @param newSolver tolerance and multipliers
     * @return a new model
     */
    public Layered with(NetworkSolver newSolver) {
        return new Layered(vessel, drink, model, newSolver);
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
        return Lumped.expose(vessel, drink, model, solver, exposures);
    }
}
