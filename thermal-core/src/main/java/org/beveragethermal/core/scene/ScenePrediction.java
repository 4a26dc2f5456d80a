/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.solver.Ledger;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.BrineStore;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.core.store.LatentStore;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * What happens in a scene: one prediction per vessel, and the state of the gear.
 *
 * <p>Immutable and thread-safe.
 */
public final class ScenePrediction {

    private final Trajectory trajectory;
    private final Map<String, Prediction> vessels;
    private final Map<String, List<Node>> gear;
    private final Map<String, List<Node>> inserts;
    private final Map<String, FilledVessel> filled;

    ScenePrediction(
            Trajectory trajectory,
            Map<String, Prediction> vessels,
            Map<String, List<Node>> gear,
            Map<String, List<Node>> inserts,
            Map<String, FilledVessel> filled) {
        this.trajectory = trajectory;
        this.vessels = new LinkedHashMap<>(vessels);
        this.gear = new LinkedHashMap<>(gear);
        this.inserts = new LinkedHashMap<>(inserts);
        this.filled = Map.copyOf(filled);
    }

    /**
     * Ids of the vessels.
     *
     * @return ids in the order in which they were added
     */
    public Set<String> vesselIds() {
        return Set.copyOf(vessels.keySet());
    }

    /**
     * The prediction for a vessel.
     *
     * @param id the vessel's id
     * @return its prediction
     * @throws IllegalArgumentException if there is no such vessel
     */
    public Prediction vessel(String id) {
        Prediction prediction = vessels.get(id);
        if (prediction == null) {
            throw new IllegalArgumentException("vessel " + id + ": expected one of " + vessels.keySet());
        }
        return prediction;
    }

    /**
     * Temperatures of a piece of gear's own parts, such as the clear water of an ice bath. A part of which nothing is left, such as
     * melted ice, keeps the temperature that it had last and touches nothing.
     *
     * @param gearId the gear's id
     * @param time time since the start
     * @return temperature [K] by name of the part; empty for gear without parts of its own
     * @throws IllegalArgumentException if there is no such gear or the time is not in the run
     */
    public Map<String, Double> gearTemperaturesK(String gearId, Duration time) {
        Map<String, Double> temperatures = new LinkedHashMap<>();
        for (Node node : nodes(gearId)) {
            temperatures.put(node.name().substring(gearId.length() + 1), trajectory.temperatureK(node, seconds(time)));
        }
        return temperatures;
    }

    /**
     * Ice left in a piece of gear.
     *
     * @param gearId the gear's id
     * @param time time since the start
     * @return mass [kg], 0 once it has melted or if the gear never held any
     * @throws IllegalArgumentException if there is no such gear or the time is not in the run
     */
    public double iceKg(String gearId, Duration time) {
        return iceNode(gearId)
                .map(node -> trajectory.amount(node, IceStore.MASS, seconds(time)))
                .orElse(0.0);
    }

    /**
     * Ice and water in a piece of gear.
     *
     * @param gearId the gear's id
     * @param time time since the start
     * @return mass [kg] of ice and of water whose mass varies, melt water that drained away included; 0 for gear without such parts
     * @throws IllegalArgumentException if there is no such gear or the time is not in the run
     */
    public double gearMassKg(String gearId, Duration time) {
        double sum = 0;
        for (Node node : nodes(gearId)) {
            if (node.store().amountCount() > 0) {
                sum += trajectory.amount(node, 0, seconds(time));
            }
        }
        return sum;
    }

    /**
     * Temperature that the water of a bath would have if it were mixed.
     *
     * @param gearId the gear's id
     * @param time time since the start
     * @return mean temperature of its parts besides ice, weighted by mass where it varies [K]; empty for gear without parts of its own
     * @throws IllegalArgumentException if there is no such gear or the time is not in the run
     */
    public OptionalDouble mixedWaterK(String gearId, Duration time) {
        double sum = 0;
        double weights = 0;
        for (Node node : nodes(gearId)) {
            if (!(node.store() instanceof IceStore)) {
                double weight = node.store().amountCount() > 0 ? trajectory.amount(node, 0, seconds(time)) : 1;
                sum += weight * trajectory.temperatureK(node, seconds(time));
                weights += weight;
            }
        }
        return weights > 0 ? OptionalDouble.of(sum / weights) : OptionalDouble.empty();
    }

    /**
     * Salt dissolved in a piece of gear.
     *
     * @param gearId the gear's id
     * @param time time since the start
     * @return mass [kg], 0 for gear without brine
     * @throws IllegalArgumentException if there is no such gear or the time is not in the run
     */
    public double dissolvedSaltKg(String gearId, Duration time) {
        return saltKg(gearId, time, BrineStore.DISSOLVED);
    }

    /**
     * Salt that lies undissolved in a piece of gear.
     *
     * @param gearId the gear's id
     * @param time time since the start
     * @return mass [kg], 0 for gear without brine
     * @throws IllegalArgumentException if there is no such gear or the time is not in the run
     */
    public double undissolvedSaltKg(String gearId, Duration time) {
        return saltKg(gearId, time, BrineStore.UNDISSOLVED);
    }

    private double saltKg(String gearId, Duration time, int amount) {
        return nodes(gearId).stream()
                .filter(node -> node.store() instanceof BrineStore)
                .mapToDouble(node -> trajectory.amount(node, amount, seconds(time)))
                .sum();
    }

    /**
     * How much of the gel packs of a piece of gear is still frozen.
     *
     * @param gearId the gear's id
     * @param time time since the start
     * @return part of their mass [-], 0 once they are thawed or for gear without packs
     * @throws IllegalArgumentException if there is no such gear or the time is not in the run
     */
    public double frozenFraction(String gearId, Duration time) {
        for (Node node : nodes(gearId)) {
            if (node.store() instanceof LatentStore store) {
                return 1 - store.meltedFraction(trajectory.temperatureK(node, seconds(time)));
            }
        }
        return 0;
    }

    /**
     * Mean temperatures of what was put into a drink.
     *
     * @param vesselId the vessel's id
     * @param time time since the start
     * @return temperature [K] of each insert in the order in which they were added; of ice that has melted, 0 °C or that of its last
     *     moment; none if nothing was added
     * @throws IllegalArgumentException if there is no such vessel or the time is not in the run
     */
    public List<Double> insertTemperaturesK(String vesselId, Duration time) {
        return insertNodes(vesselId).stream()
                .map(node -> trajectory.temperatureK(node, seconds(time)))
                .toList();
    }

    /**
     * Ice that was put into a drink and has not melted.
     *
     * @param vesselId the vessel's id
     * @param time time since the start; before it is added the ice counts too
     * @return mass [kg], 0 if there never was any
     * @throws IllegalArgumentException if there is no such vessel or the time is not in the run
     */
    public double iceInDrinkKg(String vesselId, Duration time) {
        return insertNodes(vesselId).stream()
                .filter(node -> node.store() instanceof IceStore)
                .mapToDouble(node -> trajectory.amount(node, IceStore.MASS, seconds(time)))
                .sum();
    }

    private List<Node> insertNodes(String vesselId) {
        List<Node> nodes = inserts.get(vesselId);
        if (nodes == null) {
            throw new IllegalArgumentException("vessel " + vesselId + ": expected one of " + inserts.keySet());
        }
        return nodes;
    }

    /**
     * What is in a vessel: what was poured into it less what was taken and, where its surface gives vapour to the air, what evaporated.
     *
     * @param vesselId the vessel's id
     * @param time time since the start
     * @return mass [kg], 0 while it is empty; of a vessel that nothing is poured into or from its mass at the start, with the water of
     *     ice in it
     * @throws IllegalArgumentException if there is no such vessel or the time is not in the run
     */
    public double drinkKg(String vesselId, Duration time) {
        Node node = vessel(vesselId).contents().nodes().get(0);
        return node.store().amountCount() > 0
                ? trajectory.amount(node, 0, seconds(time))
                : Objects.requireNonNull(filled.get(vesselId)).liquidMassKg();
    }

    /**
     * Volume of what is in a vessel, at its temperature and as if it were the drink alone.
     *
     * @param vesselId the vessel's id
     * @param time time since the start
     * @return volume; 0 while it is empty
     * @throws IllegalArgumentException if there is no such vessel or the time is not in the run
     */
    public Quantity<Volume> drinkVolume(String vesselId, Duration time) {
        OptionalDouble temperature = vessel(vesselId).drinkTemperatureK(seconds(time));
        return temperature.isEmpty()
                ? Measures.cubicMetres(0)
                : Measures.cubicMetres(drinkKg(vesselId, time)
                        / Objects.requireNonNull(filled.get(vesselId)).liquid().density(temperature.getAsDouble()));
    }

    /**
     * When the ice of a piece of gear is gone for the first time.
     *
     * @param gearId the gear's id
     * @return time since the start, or empty if some is left at the end or there never was any
     * @throws IllegalArgumentException if there is no such gear
     */
    public Optional<Duration> iceGone(String gearId) {
        Optional<Node> ice = iceNode(gearId);
        if (ice.isEmpty()) {
            return Optional.empty();
        }
        double gone = ICE_GONE_PART * ice.get().amounts()[IceStore.SIDE];
        var crossing = trajectory.firstCrossing(0, t -> trajectory.amount(ice.get(), IceStore.SIDE, t) - gone);
        return crossing.isPresent()
                ? Optional.of(Duration.ofMillis(Math.round(1000 * crossing.getAsDouble())))
                : Optional.empty();
    }

    /** Ice counts as gone when a block's side has shrunk to this part of its first side. */
    private static final double ICE_GONE_PART = 1e-3;

    /**
     * The heat balance up to the end.
     *
     * @return accounts and closure
     */
    public Ledger ledger() {
        return trajectory.ledger(trajectory.endS());
    }

    /**
     * The run itself.
     *
     * @return nodes, states and ledger at any time
     */
    public Trajectory trajectory() {
        return trajectory;
    }

    private List<Node> nodes(String gearId) {
        List<Node> nodes = gear.get(gearId);
        if (nodes == null) {
            throw new IllegalArgumentException("gear " + gearId + ": expected one of " + gear.keySet());
        }
        return nodes;
    }

    private Optional<Node> iceNode(String gearId) {
        return nodes(gearId).stream()
                .filter(node -> node.store() instanceof IceStore)
                .findFirst();
    }

    private static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }
}
