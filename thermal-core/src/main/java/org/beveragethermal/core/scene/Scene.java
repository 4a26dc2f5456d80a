/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Described;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.Stay;
import org.beveragethermal.core.solver.Mixing;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Phase;
import org.beveragethermal.core.solver.StateChange;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.surroundings.BareIce;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.Tending;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Vessels and gear under ids, and timed moves of vessels from gear to gear.
 *
 * <p>Immutable. Each vessel is described as its {@link VesselModel} says; gear lives from the moment it is prepared to the end of the run, with vessels in it
 * or not.
 */
public final class Scene {

    private static final Duration LONGEST = Duration.ofDays(30);
    /** A waterline this close below the top of the liquid or above it counts as full immersion, as a part of the height. */
    private static final double FULLY_IMMERSED = 0.95;
    /** A waterline that is lower than asked by more than this is refused or told; one that is known this closely is known [m]. */
    private static final double SHALLOWER_M = 5e-4;
    /** Ice that is left is known closely enough within this part, or this mass [kg]. */
    private static final double ICE_LEFT_PART = 0.01;

    private static final double ICE_LEFT_KG = 1e-3;
    /** Runs at most, until it is known how high the water stands where baths are tended. */
    private static final int MOST_PASSES = 4;

    private final Duration origin;
    private final Map<String, Surroundings> gear;
    private final Map<String, Duration> prepared;
    private final Map<String, FilledVessel> vessels;
    private final Map<String, VesselModel> models;
    private final Map<String, TreeMap<Duration, Place>> places;
    private final Map<String, TreeMap<Duration, List<Tending>>> tendings;
    private final Map<String, List<Inserts.Added>> inserts;

    /** Where a vessel is, and how it stands there. */
    private record Place(String gearId, Placement placement) {
        Posture posture() {
            return placement.posture();
        }
    }

    private Scene(Builder builder) {
        this.origin = builder.origin;
        this.gear = new LinkedHashMap<>(builder.gear);
        this.prepared = Map.copyOf(builder.prepared);
        this.vessels = new LinkedHashMap<>(builder.vessels);
        this.models = Map.copyOf(builder.models);
        this.places = new LinkedHashMap<>();
        builder.places.forEach((id, timed) -> this.places.put(id, new TreeMap<>(timed)));
        this.tendings = new LinkedHashMap<>();
        builder.tendings.forEach((id, timed) -> {
            TreeMap<Duration, List<Tending>> copy = new TreeMap<>();
            timed.forEach((after, list) -> copy.put(after, List.copyOf(list)));
            this.tendings.put(id, copy);
        });
        requireDepths();
        this.inserts = new LinkedHashMap<>();
        builder.vessels
                .keySet()
                .forEach(id -> this.inserts.put(id, List.copyOf(builder.inserts.getOrDefault(id, List.of()))));
    }

    /**
     * Begins a scene.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /** Collects a scene; each part is checked when it is added. */
    public static final class Builder {

        private final Map<String, Surroundings> gear = new LinkedHashMap<>();
        private final Map<String, Duration> prepared = new LinkedHashMap<>();
        private final Map<String, FilledVessel> vessels = new LinkedHashMap<>();
        private final Map<String, VesselModel> models = new LinkedHashMap<>();
        private final Map<String, TreeMap<Duration, Place>> places = new LinkedHashMap<>();
        private final Map<String, TreeMap<Duration, List<Tending>>> tendings = new LinkedHashMap<>();
        private final Map<String, List<Inserts.Added>> inserts = new LinkedHashMap<>();
        private Duration origin = Duration.ZERO;

        private Builder() {}

        /**
         * Lets the scene start later on the clock by which rooms change their temperature.
         *
         * @param newOrigin time on that clock at which the scene starts, ≥ 0; 0 unless said otherwise
         * @return this builder
         * @throws IllegalArgumentException if the time is negative
         */
        public Builder startingAfter(Duration newOrigin) {
            if (newOrigin.isNegative()) {
                throw new IllegalArgumentException("start of the scene after " + newOrigin + ": expected at least 0");
            }
            origin = newOrigin;
            return this;
        }

        /**
         * Adds a piece of gear.
         *
         * @param id its id, not blank, not used before
         * @param surroundings what it is
         * @return this builder
         * @throws IllegalArgumentException if the id is blank or in use
         */
        public Builder gear(String id, Surroundings surroundings) {
            return gear(id, surroundings, Duration.ZERO);
        }

        /**
         * Adds a piece of gear that is prepared later, such as a bucket that is filled with ice in the course of the evening;
         * before that its contents keep the state they start with.
         *
         * @param id its id, not blank, not used before
         * @param surroundings what it is
         * @param preparedAfter time since the start from which it is there, ≥ 0
         * @return this builder
         * @throws IllegalArgumentException if the id is blank or in use or the time is negative
         */
        public Builder gear(String id, Surroundings surroundings, Duration preparedAfter) {
            requireNew(id);
            if (preparedAfter.isNegative()) {
                throw new IllegalArgumentException(
                        "gear " + id + " prepared after " + preparedAfter + ": expected at least 0");
            }
            gear.put(id, Objects.requireNonNull(surroundings, "surroundings"));
            prepared.put(id, preparedAfter);
            return this;
        }

        /**
         * Adds a vessel that stands upright, its contents lumped.
         *
         * @param id its id, not blank, not used before
         * @param vessel the vessel with its contents at their temperature at the start
         * @param gearId id of the gear in which it is at the start
         * @return this builder
         * @throws IllegalArgumentException if the id is blank or in use or there is no such gear
         */
        public Builder vessel(String id, FilledVessel vessel, String gearId) {
            return vessel(id, vessel, gearId, VesselModel.lumped(), Posture.UPRIGHT);
        }

        /**
         * Adds a vessel.
         *
         * @param id its id, not blank, not used before
         * @param vessel the vessel with its contents at their temperature at the start
         * @param gearId id of the gear in which it is at the start
         * @param model how finely its contents are described
         * @param posture how it stands or lies
         * @return this builder
         * @throws IllegalArgumentException if the id is blank or in use, there is no such gear, or an open vessel lies or stands on its mouth
         */
        public Builder vessel(String id, FilledVessel vessel, String gearId, VesselModel model, Posture posture) {
            return vessel(id, vessel, gearId, model, Placement.of(posture));
        }

        /**
         * Adds a vessel that is put somewhere in a posture and to a depth.
         *
         * @param id its id, not blank, not used before
         * @param vessel the vessel with its contents at their temperature at the start
         * @param gearId id of the gear in which it is at the start
         * @param model how finely its contents are described
         * @param placement how it stands or lies, and how deep
         * @return this builder
         * @throws IllegalArgumentException if the id is blank or in use, there is no such gear, an open vessel lies or stands on its
         *     mouth, or the waterline would be above the vessel or in gear without water
         */
        public Builder vessel(String id, FilledVessel vessel, String gearId, VesselModel model, Placement placement) {
            requireNew(id);
            requireGear(gearId, Duration.ZERO);
            requireStands(id, Objects.requireNonNull(vessel, "vessel"), placement);
            requireReach(id, vessel, gearId, placement);
            vessels.put(id, vessel);
            models.put(id, Objects.requireNonNull(model, "model"));
            TreeMap<Duration, Place> timed = new TreeMap<>();
            timed.put(Duration.ZERO, new Place(gearId, placement));
            places.put(id, timed);
            return this;
        }

        /**
         * Moves a vessel; it stands upright afterwards.
         *
         * @param vesselId id of the vessel
         * @param after time since the start, > 0, no other move of this vessel at that time
         * @param gearId id of the gear it goes to
         * @return this builder
         * @throws IllegalArgumentException if there is no such vessel or gear, the gear is not prepared by then, or the time is
         *     not fit
         */
        public Builder move(String vesselId, Duration after, String gearId) {
            return move(vesselId, after, gearId, Posture.UPRIGHT);
        }

        /**
         * Moves a vessel, or turns it over, lays it down or sets it up where it is. All turning mixes its contents.
         *
         * @param vesselId id of the vessel
         * @param after time since the start, > 0, no other move of this vessel at that time
         * @param gearId id of the gear it goes to
         * @param posture how it stands or lies afterwards
         * @return this builder
         * @throws IllegalArgumentException if there is no such vessel or gear, the gear is not prepared by then, the time is
         *     not fit, or an open vessel is turned over or laid down
         */
        public Builder move(String vesselId, Duration after, String gearId, Posture posture) {
            return move(vesselId, after, gearId, Placement.of(posture));
        }

        /**
         * Moves a vessel to a posture and a depth. All turning mixes its contents; lifting and lowering do not.
         *
         * @param vesselId id of the vessel
         * @param after time since the start, > 0, no other move of this vessel at that time
         * @param gearId id of the gear it goes to
         * @param placement how it stands or lies afterwards, and how deep
         * @return this builder
         * @throws IllegalArgumentException if there is no such vessel or gear, the gear is not prepared by then, the time is
         *     not fit, an open vessel is turned over or laid down, or the waterline would be above the vessel or in gear without water
         */
        public Builder move(String vesselId, Duration after, String gearId, Placement placement) {
            TreeMap<Duration, Place> timed = places.get(vesselId);
            if (timed == null) {
                throw new IllegalArgumentException("vessel " + vesselId + ": expected one of " + vessels.keySet());
            }
            requireGear(gearId, after);
            if (after.isNegative() || after.isZero() || timed.containsKey(after)) {
                throw new IllegalArgumentException("move of " + vesselId + " after " + after
                        + ": expected a time after the start at which it is not moved yet");
            }
            FilledVessel vessel = Objects.requireNonNull(vessels.get(vesselId));
            requireStands(vesselId, vessel, placement);
            requireReach(vesselId, vessel, gearId, placement);
            timed.put(after, new Place(gearId, placement));
            return this;
        }

        /**
         * Adds ice to a bath of ice and water or to bare ice, in blocks as those that it was made of; that stirs the bath. Several things may be done to a
         * bath at one time: they follow one another as they were told. Water that then stands above the rim runs off.
         *
         * @param gearId id of the bath or bucket
         * @param after time since the start, > 0, not before the bath is prepared
         * @param mass mass of ice, 10 g to 2000 kg
         * @param temperature its temperature, −30 °C to 0 °C
         * @return this builder
         * @throws IllegalArgumentException if there is no such gear, it does not take that, or the time is not fit
         * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
         */
        public Builder topUpIce(String gearId, Duration after, Quantity<Mass> mass, Quantity<Temperature> temperature) {
            return tend(gearId, after, Tending.addIce(mass, temperature));
        }

        /**
         * Adds water to a bath of ice and water; that stirs it. Water that then stands above the rim runs off.
         *
         * @param gearId id of the bath or bucket
         * @param after time since the start, > 0, not before the bath is prepared
         * @param mass mass of water, 10 g to 2000 kg
         * @param temperature its temperature, 0 °C to 60 °C
         * @return this builder
         * @throws IllegalArgumentException if there is no such gear, it does not take that, or the time is not fit
         * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
         */
        public Builder topUpWater(
                String gearId, Duration after, Quantity<Mass> mass, Quantity<Temperature> temperature) {
            return tend(gearId, after, Tending.addWater(mass, temperature));
        }

        /**
         * Pours water off a bath of ice and water, which stirs it, or gathered melt water off bare ice. A run refuses more than there is; a
         * bath keeps a tenth of its ice in water.
         *
         * @param gearId id of the bath or bucket
         * @param after time since the start, > 0, not before the bath is prepared
         * @param mass mass of water, 10 g to 2000 kg
         * @return this builder
         * @throws IllegalArgumentException if there is no such gear, it does not take that, or the time is not fit
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the mass is outside its range
         */
        public Builder pourOff(String gearId, Duration after, Quantity<Mass> mass) {
            return tend(gearId, after, Tending.pourOff(mass));
        }

        /**
         * Stirs a bath of ice and water once: its water is mixed and is still again. Stirring now and then is several of these; what
         * moves the water all the time is the bath's own {@link org.beveragethermal.core.surroundings.Agitation}.
         *
         * @param gearId id of the bath or bucket
         * @param after time since the start, > 0, not before the bath is prepared
         * @return this builder
         * @throws IllegalArgumentException if there is no such gear, it does not take that, or the time is not fit
         */
        public Builder stir(String gearId, Duration after) {
            return tend(gearId, after, Tending.stir());
        }

        private Builder tend(String gearId, Duration after, Tending tending) {
            requireGear(gearId, after);
            if (after.isNegative() || after.isZero()) {
                throw new IllegalArgumentException(
                        tending + " of " + gearId + " after " + after + ": expected a time after the start");
            }
            if (!Objects.requireNonNull(gear.get(gearId)).allows(tending)) {
                throw new IllegalArgumentException(tending + " of gear " + gearId
                        + ": that is not described for it, but for baths of ice and water");
            }
            tendings.computeIfAbsent(gearId, id -> new TreeMap<>())
                    .computeIfAbsent(after, time -> new ArrayList<>())
                    .add(tending);
            return this;
        }

        /**
         * Puts ice, stones or other pieces into the drink in a vessel. Until then they keep the temperature they start with, as if
         * nothing touched them; from then on they stay in the drink. A closed vessel is taken to be opened for it and closed again. Ice
         * adds its melt water to the drink: see {@link Prediction#waterAddedKg}.
         *
         * @param vesselId id of the vessel, whose contents are lumped
         * @param after time since the start, ≥ 0
         * @param insert what is put in; it passes the mouth, and with what was put in before it the drink does not overflow
         * @return this builder
         * @throws IllegalArgumentException if there is no such vessel, its contents are layered, or the time is negative
         * @throws org.beveragethermal.materials.units.OutOfRangeException if a piece is wider than the mouth or the drink would overflow
         */
        public Builder addToDrink(String vesselId, Duration after, Insert insert) {
            FilledVessel vessel = vessels.get(vesselId);
            if (vessel == null) {
                throw new IllegalArgumentException("vessel " + vesselId + ": expected one of " + vessels.keySet());
            }
            if (!Objects.requireNonNull(models.get(vesselId)).isLumped()) {
                throw new IllegalArgumentException("pieces in the drink of vessel " + vesselId + ", described as "
                        + models.get(vesselId) + ": expected lumped contents");
            }
            if (after.isNegative()) {
                throw new IllegalArgumentException(
                        "pieces in the drink of " + vesselId + " after " + after + ": expected at least 0");
            }
            List<Inserts.Added> all = inserts.computeIfAbsent(vesselId, id -> new ArrayList<>());
            Inserts.requireRoom(vesselId, vessel, all, insert);
            all.add(new Inserts.Added(after, insert));
            return this;
        }

        /**
         * Makes the scene.
         *
         * @return the scene
         * @throws IllegalStateException if there is no vessel
         * @throws org.beveragethermal.materials.units.OutOfRangeException if a vessel is to be immersed deeper than the water of the bath
         *     stands, with all vessels that are in it then
         * @throws IllegalArgumentException if a vessel that is to be immersed lies in a bucket narrower than it is long
         */
        public Scene build() {
            if (vessels.isEmpty()) {
                throw new IllegalStateException("a scene needs at least one vessel: call vessel(…)");
            }
            return new Scene(this);
        }

        private void requireNew(String id) {
            if (id.isBlank() || gear.containsKey(id) || vessels.containsKey(id)) {
                throw new IllegalArgumentException("id '" + id + "': expected one that is not blank and not in use");
            }
        }

        private void requireReach(String id, FilledVessel vessel, String gearId, Placement placement) {
            if (placement.immersionM().isEmpty()) {
                return;
            }
            double immersion = placement.immersionM().getAsDouble();
            double height = new Occupant(id, vessel.vessel(), placement).heightM();
            new ValidityRange("immersion of vessel " + id, 0, height, "m").require(immersion, "height of the vessel");
            if (!Objects.requireNonNull(gear.get(gearId)).isBath()) {
                throw new IllegalArgumentException("vessel " + id + " immersed to " + immersion + " m in gear " + gearId
                        + ": it holds no water; expected a bath");
            }
        }

        private static void requireStands(String id, FilledVessel vessel, Placement placement) {
            Objects.requireNonNull(placement, "placement of vessel " + id);
            Posture posture = placement.posture();
            if (posture != Posture.UPRIGHT && vessel.vessel().isOpen()) {
                throw new IllegalArgumentException("vessel " + id + " "
                        + (posture == Posture.LYING ? "lying" : "on its mouth")
                        + ": it is open; expected upright, or a vessel closedBy(…)");
            }
        }

        private void requireGear(String gearId, Duration time) {
            Duration from = prepared.get(gearId);
            if (from == null) {
                throw new IllegalArgumentException("gear " + gearId + ": expected one of " + gear.keySet());
            }
            if (time.compareTo(from) < 0) {
                throw new IllegalArgumentException(
                        "gear " + gearId + " after " + time + ": it is prepared after " + from);
            }
        }
    }

    /**
     * Runs the scene with the default solver.
     *
     * @param horizon how long, > 0, at most 30 days
     * @return what happens
     * @throws IllegalArgumentException if the horizon is outside its range or a vessel lies in a bucket narrower than it is long
     */
    public ScenePrediction predict(Duration horizon) {
        return predict(horizon, NetworkSolver.standard());
    }

    /**
     * Runs the scene.
     *
     * @param horizon how long, > 0, at most 30 days; moves after it do not take place
     * @param solver tolerance and multipliers; a scene in which a bath is tended may be run up to four times, until it is known how high
     *     its water stands afterwards, and a monitor is told of all of them
     * @return what happens
     * @throws IllegalArgumentException if the horizon is outside its range or a vessel lies in a bucket narrower than it is long
     * @throws org.beveragethermal.materials.units.OutOfRangeException if more water is poured off a bath than it can spare then, more ice
     *     is added than its bucket holds, or a vessel is put deeper into it than its water stands
     */
    public ScenePrediction predict(Duration horizon, NetworkSolver solver) {
        if (horizon.isNegative() || horizon.isZero() || horizon.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException(
                    "horizon " + horizon + ": expected more than nothing and at most " + LONGEST);
        }
        IceLeft iceLeft = IceLeft.UNKNOWN;
        for (int pass = 1; ; pass++) {
            ScenePrediction run = predict(horizon, solver, iceLeft);
            IceLeft seen = iceLeft(horizon, run, iceLeft);
            if (pass == MOST_PASSES || seen.equals(iceLeft)) {
                if (!tendings.isEmpty()) {
                    requireDepths(horizon, iceLeft);
                }
                return run;
            }
            iceLeft = seen;
        }
    }

    /** What a run found, or what was assumed if that makes no difference. */
    private IceLeft iceLeft(Duration horizon, ScenePrediction run, IceLeft assumed) {
        Map<String, Map<Duration, Double>> left = new LinkedHashMap<>();
        boolean known = true;
        for (String id : tendings.keySet()) {
            for (Duration time :
                    Objects.requireNonNull(tendings.get(id)).headMap(horizon).keySet()) {
                double kg = run.iceKg(id, time.minusMillis(1));
                left.computeIfAbsent(id, gearId -> new LinkedHashMap<>()).put(time, kg);
                // Where ice floats it decides nothing; a pile counts its blocks by it.
                known &= gear.get(id) instanceof IceWaterBath
                        || Math.abs(kg - assumed.at(id, time).orElse(Double.MAX_VALUE))
                                < ICE_LEFT_PART * kg + ICE_LEFT_KG;
            }
        }
        IceLeft seen = new IceLeft(left);
        return known && sameWaterlines(starts(horizon), assumed, seen) ? assumed : seen;
    }

    private boolean sameWaterlines(List<Duration> starts, IceLeft one, IceLeft other) {
        if (tendings.isEmpty()) {
            return true;
        }
        LiveGear before = gear(starts, one);
        LiveGear after = gear(starts, other);
        for (String id : vessels.keySet()) {
            for (Duration start : starts) {
                if (Math.abs(wettedHeight(id, start, before) - wettedHeight(id, start, after)) > SHALLOWER_M) {
                    return false;
                }
            }
        }
        return true;
    }

    private LiveGear gear(List<Duration> starts, IceLeft iceLeft) {
        LiveGear live = new LiveGear();
        gear.forEach((id, surroundings) -> {
            live.open(id, surroundings.open(id, seconds(origin)));
            TreeMap<Duration, List<Tending>> timed = tendings.getOrDefault(id, new TreeMap<>());
            for (Duration start : starts) {
                List<Tending> done = timed.get(start);
                if (done != null) {
                    live.tend(
                            id,
                            start,
                            live.at(id, start)
                                    .tended("after " + start, done, occupants(id, start), iceLeft.at(id, start)));
                }
            }
        });
        return live;
    }

    private ScenePrediction predict(Duration horizon, NetworkSolver solver, IceLeft iceLeft) {
        List<Duration> starts = starts(horizon);
        LiveGear media = gear(starts, iceLeft);
        Map<String, ModelledVessel> modelled = new LinkedHashMap<>();
        vessels.forEach((id, filled) -> modelled.put(id, modelled(id, filled, waterlines(id, starts, media))));
        List<Node> nodes = new ArrayList<>();
        media.nodes().values().forEach(nodes::addAll);
        modelled.values().forEach(vessel -> nodes.addAll(vessel.nodes()));
        Map<String, Inserts> inDrinks = new LinkedHashMap<>();
        modelled.forEach((id, vessel) -> inDrinks.put(
                id,
                new Inserts(
                        id,
                        vessel.filled(),
                        vessel.contents().nodes().get(0),
                        Objects.requireNonNull(inserts.get(id)))));
        inDrinks.values().forEach(inDrink -> nodes.addAll(inDrink.nodes()));
        List<Phase> phases = new ArrayList<>();
        for (Duration start : starts) {
            List<StateChange> all = new ArrayList<>(mixings(start, modelled));
            all.addAll(media.changes(start));
            List<Path> paths = paths(start, media, modelled);
            inDrinks.values().forEach(inDrink -> paths.addAll(inDrink.paths(start)));
            phases.add(new Phase(seconds(start), Network.of(nodes, paths), all));
        }
        Trajectory trajectory = solver.solve(phases, seconds(horizon));
        Map<String, Prediction> predictions = new LinkedHashMap<>();
        modelled.forEach((id, vessel) -> predictions.put(
                id,
                Prediction.of(
                        trajectory,
                        vessel.contents(),
                        vessel.heatCapacityJPerK(),
                        vessel.bands(),
                        Stream.concat(
                                        notes(id, vessel, starts, media, trajectory).stream(),
                                        Objects.requireNonNull(inDrinks.get(id)).notes(trajectory).stream())
                                .toList(),
                        described(id, vessel, horizon, media))));
        Map<String, List<Node>> insertNodes = new LinkedHashMap<>();
        inDrinks.forEach((id, inDrink) -> insertNodes.put(id, inDrink.nodes()));
        return new ScenePrediction(trajectory, predictions, media.nodes(), insertNodes);
    }

    /** Refuses vessels that are put deeper than the water stands that they are put into, as far as that is known before a run. */
    private void requireDepths() {
        LiveGear untended = new LiveGear();
        places.forEach((id, timed) -> timed.forEach((time, place) -> {
            if (place.placement().immersionM().isPresent() && !isTendedBefore(place.gearId(), time)) {
                if (!untended.has(place.gearId())) {
                    untended.open(
                            place.gearId(),
                            Objects.requireNonNull(gear.get(place.gearId())).open(place.gearId(), seconds(origin)));
                }
                requireDepth(id, time, place, untended);
            }
        }));
    }

    /** The same for baths that were tended before. */
    private void requireDepths(Duration horizon, IceLeft iceLeft) {
        LiveGear tended = gear(starts(horizon), iceLeft);
        places.forEach((id, timed) -> timed.headMap(horizon).forEach((time, place) -> {
            if (isTendedBefore(place.gearId(), time)) {
                requireDepth(id, time, place, tended);
            }
        }));
    }

    private boolean isTendedBefore(String gearId, Duration time) {
        TreeMap<Duration, List<Tending>> timed = tendings.get(gearId);
        return timed != null && timed.floorKey(time) != null;
    }

    private void requireDepth(String vesselId, Duration time, Place place, LiveGear media) {
        double asked = place.placement().immersionM().orElse(0);
        double reached = wettedHeight(vesselId, time, media);
        if (asked > reached + SHALLOWER_M) {
            new ValidityRange(
                            "immersion of vessel " + vesselId + " in gear " + place.gearId() + " after " + time,
                            0,
                            reached,
                            "m")
                    .require(asked, "depth of the bath with the vessels in it then");
        }
    }

    private Described described(String id, ModelledVessel vessel, Duration horizon, LiveGear media) {
        List<Stay> stays = new ArrayList<>();
        TreeMap<Duration, Place> timed = Objects.requireNonNull(places.get(id));
        for (Duration from : timed.headMap(horizon).keySet()) {
            Duration next = timed.higherKey(from);
            double wetted = wettedHeight(id, from, media);
            stays.add(new Stay(
                    stay(id, from).gearId(),
                    from,
                    next == null || next.compareTo(horizon) > 0 ? horizon : next,
                    wetted > 0 ? vessel.wettedPart(wetted, stay(id, from).posture()) : 1));
        }
        FilledVessel filled = vessel.filled();
        double area = filled.vessel().profile().innerSideAreaM2(0, filled.liquidHeightM());
        return new Described(
                filled, Objects.requireNonNull(models.get(id)).kind(), LumpedVessel.insideFilm(filled, area), stays);
    }

    /** Times at which connections change, the start first. */
    private List<Duration> starts(Duration horizon) {
        return Stream.of(
                        places.values().stream().flatMap(timed -> timed.keySet().stream()),
                        tendings.values().stream().flatMap(timed -> timed.keySet().stream()),
                        prepared.values().stream(),
                        inserts.values().stream().flatMap(List::stream).map(Inserts.Added::from))
                .flatMap(times -> times)
                .filter(time -> time.compareTo(horizon) < 0)
                .distinct()
                .sorted()
                .toList();
    }

    private ModelledVessel modelled(String id, FilledVessel filled, List<Double> waterlines) {
        VesselModel model = Objects.requireNonNull(models.get(id));
        if (model.slices() > 1) {
            return new AxialVessel(id, filled, model.slices(), waterlines, model.layers(), model.tints(), inverts(id));
        }
        return model.isLumped()
                ? new LumpedVessel(
                        id,
                        filled,
                        waterlines,
                        model.layers(),
                        model.tints(),
                        Inserts.melt(Objects.requireNonNull(inserts.get(id))))
                : new RadialVessel(id, filled, waterlines, model);
    }

    private boolean inverts(String vesselId) {
        return Objects.requireNonNull(places.get(vesselId)).values().stream()
                .anyMatch(stay -> stay.posture() == Posture.INVERTED);
    }

    private Place stay(String vesselId, Duration time) {
        return Objects.requireNonNull(places.get(vesselId)).floorEntry(time).getValue();
    }

    private Occupant occupant(String vesselId, Duration time) {
        return new Occupant(
                vesselId,
                Objects.requireNonNull(vessels.get(vesselId)).vessel(),
                stay(vesselId, time).placement());
    }

    private List<Occupant> occupants(String gearId, Duration time) {
        List<Occupant> occupants = new ArrayList<>();
        for (String id : vessels.keySet()) {
            if (stay(id, time).gearId().equals(gearId)) {
                occupants.add(occupant(id, time));
            }
        }
        return occupants;
    }

    /** Heights above the base at which water stands beside a vessel in the course of the run. */
    private List<Double> waterlines(String vesselId, List<Duration> starts, LiveGear media) {
        List<Double> lines = new ArrayList<>();
        for (Duration start : starts) {
            // Along a vessel that lies the waterline crosses all bands.
            if (stay(vesselId, start).posture() == Posture.LYING) {
                continue;
            }
            lines.add(occupant(vesselId, start).aboveBaseM(wettedHeight(vesselId, start, media)));
        }
        return lines;
    }

    private double wettedHeight(String vesselId, Duration time, LiveGear media) {
        String gearId = stay(vesselId, time).gearId();
        return media.at(gearId, time).wettedHeightM(occupant(vesselId, time), occupants(gearId, time));
    }

    private List<Path> paths(Duration start, LiveGear media, Map<String, ModelledVessel> modelled) {
        List<Path> paths = new ArrayList<>();
        media.ids().forEach(id -> {
            if (Objects.requireNonNull(prepared.get(id)).compareTo(start) <= 0) {
                paths.addAll(media.at(id, start).paths(occupants(id, start)));
            }
        });
        modelled.forEach((id, vessel) -> {
            String gearId = stay(id, start).gearId();
            paths.addAll(vessel.paths(media.at(gearId, start), occupant(id, start), occupants(gearId, start)));
        });
        return paths;
    }

    /** The contents of vessels that are turned over, laid down or set up at a time. */
    private List<Mixing> mixings(Duration start, Map<String, ModelledVessel> modelled) {
        List<Mixing> mixings = new ArrayList<>();
        modelled.forEach((id, vessel) -> {
            TreeMap<Duration, Place> timed = Objects.requireNonNull(places.get(id));
            Map.Entry<Duration, Place> before = timed.lowerEntry(start);
            Place now = timed.get(start);
            boolean turned = before != null && now != null && before.getValue().posture() != now.posture();
            boolean moves = Objects.requireNonNull(models.get(id)).slices() > 1;
            if (turned && moves) {
                mixings.add(
                        new Mixing(vessel.contents().nodes(), vessel.contents().shares()));
            }
        });
        return mixings;
    }

    private List<String> notes(
            String vesselId, ModelledVessel vessel, List<Duration> starts, LiveGear media, Trajectory trajectory) {
        boolean lumped = Objects.requireNonNull(models.get(vesselId)).isLumped();
        List<String> notes = new ArrayList<>();
        for (Duration start : starts) {
            String gearId = stay(vesselId, start).gearId();
            double wetted = wettedHeight(vesselId, start, media);
            if (lumped
                    && wetted > 0
                    && vessel.wettedPart(wetted, stay(vesselId, start).posture()) < FULLY_IMMERSED) {
                String where = gear.get(gearId) instanceof BareIce ? "in the ice" : "under water";
                notes.add(
                        "in " + gearId + " the drink is only partly " + where + "; it stratifies, its upper part stays"
                                + " warmer than the mean given here, and the mean itself is predicted too fast; the axial model shows"
                                + " it");
            }
            if (wetted > 0 && vessel.isWrapped()) {
                notes.add("in " + gearId
                        + " the layers around the wall are taken to displace no water and to let none in");
            }
            double asked = stay(vesselId, start).placement().immersionM().orElse(0);
            if (asked > wetted + SHALLOWER_M) {
                notes.add(String.format(
                        Locale.ROOT,
                        "in %s the water reaches %.0f mm of the vessel, not %.0f mm: it stands on the floor",
                        gearId,
                        1000 * wetted,
                        1000 * asked));
            }
            notes.addAll(media.at(gearId, start).notes(occupants(gearId, start)));
        }
        notes.addAll(vessel.notes(trajectory));
        CondensedWater.on(vessel.nodes(), starts.stream().map(Scene::seconds).toList(), trajectory)
                .flatMap(CondensedWater::note)
                .ifPresent(notes::add);
        return notes.stream().distinct().toList();
    }

    private static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }
}
