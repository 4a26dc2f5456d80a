/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.internal.Steadiness;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Cooling curves of real vessels in surroundings that never change, read off one run of the engine.
 *
 * <p>Wall, layers and slices soon follow the drink, whatever they started from: after that all courses are one, and the time
 * between two of its mean temperatures is a difference on the master run. A vessel that starts uniform, with wall and
 * headspace as warm or cold as the drink, has to cool or warm them first and is later by about the same time for every
 * target. That lag is taken from runs that start so, and what is then still missed is found by comparing the curve with other
 * such runs: it is part of the curve's error. {@link CoolingCurve#underWay} leaves the lag out.
 *
 * <p>Immutable and thread-safe.
 */
public final class VesselCurve {

    private static final String VESSEL = "vessel";
    private static final String GEAR = "surroundings";

    private final FilledVessel vessel;
    private final Surroundings surroundings;
    private final VesselModel model;
    private final Placement placement;
    private final NetworkSolver solver;
    private final Map<String, Double> multipliers;

    private VesselCurve(
            FilledVessel vessel,
            Surroundings surroundings,
            VesselModel model,
            Placement placement,
            NetworkSolver solver,
            Map<String, Double> multipliers) {
        this.vessel = Objects.requireNonNull(vessel, "vessel");
        this.surroundings = Objects.requireNonNull(surroundings, "surroundings");
        this.model = Objects.requireNonNull(model, "model");
        this.placement = Objects.requireNonNull(placement, "placement");
        this.solver = solver;
        this.multipliers = Map.copyOf(multipliers);
    }

    /**
     * A vessel that stands, lumped, in surroundings.
     *
     * @param vessel the vessel; its temperature does not matter
     * @param surroundings what it is in
     * @return what curves are prepared of
     */
    public static VesselCurve of(FilledVessel vessel, Surroundings surroundings) {
        return new VesselCurve(
                vessel,
                surroundings,
                VesselModel.lumped(),
                Placement.upright(),
                NetworkSolver.standard().withToleranceK(MasterRun.TIGHT_K),
                Map.of());
    }

    /**
     * The same vessel described otherwise.
     *
     * @param newModel the description
     * @return a new one
     */
    public VesselCurve with(VesselModel newModel) {
        return new VesselCurve(vessel, surroundings, newModel, placement, solver, multipliers);
    }

    /**
     * The same vessel placed otherwise.
     *
     * @param newPlacement how it stands or lies, and how deep
     * @return a new one
     */
    public VesselCurve with(Placement newPlacement) {
        return new VesselCurve(vessel, surroundings, model, newPlacement, solver, multipliers);
    }

    /**
     * The same vessel with factors on the laws of heat transfer.
     *
     * @param newMultipliers factor by name, finite, ≥ 0, not modified
     * @return a new one
     * @throws IllegalArgumentException if a factor is negative or not finite
     */
    public VesselCurve withMultipliers(Map<String, Double> newMultipliers) {
        return new VesselCurve(
                vessel, surroundings, model, placement, solver.withMultipliers(newMultipliers), newMultipliers);
    }

    /**
     * Prepares the curve of the mean temperature of the drink between two temperatures, cooling or warming.
     *
     * @param nearest the temperature nearer to where the drink tends to, at least 0.02 K from it
     * @param farthest the temperature farther from it
     * @return the curve for vessels that start uniform
     * @throws IllegalArgumentException if a temperature is outside the range of the liquid, both are not on one side of where the drink
     *     tends to in this order, something in the surroundings varies in time or has a state of its own (a bath that warms, ice
     *     that melts), or the temperature does not run one way
     * @throws org.beveragethermal.core.solver.SolverException if a run fails
     */
    public CoolingCurve prepare(Quantity<Temperature> nearest, Quantity<Temperature> farthest) {
        ValidityRange range = vessel.liquid().temperatureRange();
        double nearestK = SiValues.temperatureK(nearest, "nearest temperature", range.low(), range.high());
        double farthestK = SiValues.temperatureK(farthest, "farthest temperature", range.low(), range.high());
        requireSteady(nearestK);
        MasterRun run = MasterRun.of(this::run, nearestK, farthestK, range);
        TimeTable times = run.table();
        StartLag lag = run.lag(times);
        return CoolingCurve.of(run.equilibriumK(), run.sign(), times, lag, run.uniformErrorS(times, lag));
    }

    private ScenePrediction run(double startK, double horizonS) {
        return Scene.builder()
                .gear(GEAR, surroundings)
                .vessel(VESSEL, vessel.atTemperature(SiValues.celsiusOf(startK)), GEAR, model, placement)
                .build()
                .predict(Duration.ofMillis((long) Math.ceil(1000 * horizonS)), solver);
    }

    private void requireSteady(double temperatureK) {
        ScenePrediction first = run(temperatureK, 1);
        if (!first.gearTemperaturesK(GEAR, Duration.ZERO).isEmpty()) {
            throw new IllegalArgumentException("surroundings with a state of their own, "
                    + first.gearTemperaturesK(GEAR, Duration.ZERO).keySet()
                    + ": one curve holds only where surroundings never change; predict the run itself instead");
        }
        List<Path> paths = first.trajectory().paths(0);
        new Steadiness(paths, NodeRate.STEADY).require(multipliers);
    }
}
