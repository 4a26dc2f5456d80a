/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
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
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * Vessels and gear under ids, and timed moves of vessels from gear to gear.
 *
 * <p>Immutable. Each vessel is described as its {@link VesselModel} says; gear lives from the moment it is prepared to the end of the run, with vessels in it
 * or not.
 */
public final class Scene {

    private static final Duration FURTHEST_ORIGIN = Duration.ofDays(366);

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
    /** A tenth of a millilitre and a cubic metre [m³]. */
    private static final double LEAST_POURED_M3 = 1e-7;

    private static final double MOST_POURED_M3 = 1;
    /** Walls of empty vessels [K]. */
    private static final double COLDEST_WALL_K = 233.15;

    private static final double HOTTEST_WALL_K = 373.15;

    private final Duration origin;
    private final Map<String, Surroundings> gear;
    private final Map<String, Duration> prepared;
    private final Map<String, FilledVessel> vessels;
    private final Map<Liquid, DrinkFit> drinks;
    private final Map<String, VesselModel> models;
    private final Map<String, TreeMap<Duration, Place>> places;
    private final Map<String, TreeMap<Duration, List<Tending>>> tendings;
    private final Map<String, List<Inserts.Added>> inserts;
    private final Pours pours;

    /** Where a vessel is, and how it stands there. */
    private record Place(String gearId, Placement placement) {
        Posture posture() {
            return placement.posture();
        }
    }

    private Scene(Builder builder) {
        this.pours = Pours.of(builder.vessels, builder.empties, builder.asked);
        this.origin = builder.origin;
        this.gear = new LinkedHashMap<>(builder.gear);
        this.prepared = Map.copyOf(builder.prepared);
        this.vessels = new LinkedHashMap<>();
        builder.models.keySet().forEach(id -> this.vessels.put(id, described(id, builder.vessels)));
        Map<Liquid, DrinkFit> fits = new HashMap<>(builder.known);
        this.vessels.values().forEach(filled -> fits.computeIfAbsent(filled.liquid(), DrinkFit::of));
        this.drinks = Map.copyOf(fits);
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
        this.vessels
                .keySet()
                .forEach(id -> this.inserts.put(id, List.copyOf(builder.inserts.getOrDefault(id, List.of()))));
    }

    private DrinkFit drink(FilledVessel filled) {
        return Objects.requireNonNull(drinks.get(filled.liquid()));
    }

    /** A vessel as it is given or, if it is empty at the start, with what comes into it first. */
    private FilledVessel described(String id, Map<String, FilledVessel> given) {
        FilledVessel filled = given.get(id);
        return filled == null ? pours.fillings(id).orElseThrow().first() : filled;
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
        private final Map<String, Pours.EmptyVessel> empties = new LinkedHashMap<>();
        private final Map<String, VesselModel> models = new LinkedHashMap<>();
        private final Map<String, TreeMap<Duration, Place>> places = new LinkedHashMap<>();
        private final Map<String, TreeMap<Duration, List<Tending>>> tendings = new LinkedHashMap<>();
        private final Map<String, List<Inserts.Added>> inserts = new LinkedHashMap<>();
        private final List<Pours.Asked> asked = new ArrayList<>();
        private final Map<Liquid, DrinkFit> known = new HashMap<>();
        private Duration origin = Duration.ZERO;

        private Builder() {}

        /**
         * Lets the scene start at another time on the clock by which rooms change their temperature.
         *
         * @param newOrigin time on that clock at which the scene starts, at most a year either way; 0 unless said otherwise. Before 0 a
         *     course given by points keeps its first temperature
         * @return this builder
         * @throws IllegalArgumentException if the time is further away
         */
        public Builder startingAfter(Duration newOrigin) {
            if (newOrigin.abs().compareTo(FURTHEST_ORIGIN) > 0) {
                throw new IllegalArgumentException(
                        "start of the scene after " + newOrigin + ": expected at most a year either way");
            }
            origin = newOrigin;
            return this;
        }

        /** Hands in what was fitted before. */
        Builder knowing(Liquid liquid, DrinkFit fit) {
            known.put(liquid, fit);
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
            requireStands(id, Objects.requireNonNull(vessel, "vessel").vessel(), placement);
            requireReach(id, vessel.vessel(), gearId, placement);
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
                throw new IllegalArgumentException("vessel " + vesselId + ": expected one of " + models.keySet());
            }
            requireGear(gearId, after);
            if (after.isNegative() || after.isZero() || timed.containsKey(after)) {
                throw new IllegalArgumentException("move of " + vesselId + " after " + after
                        + ": expected a time after the start at which it is not moved yet");
            }
            Vessel vessel = vesselOf(vesselId);
            requireStands(vesselId, vessel, placement);
            requireReach(vesselId, vessel, gearId, placement);
            timed.put(after, new Place(gearId, placement));
            return this;
        }

        private Vessel vesselOf(String id) {
            FilledVessel filled = vessels.get(id);
            return filled != null
                    ? filled.vessel()
                    : Objects.requireNonNull(empties.get(id)).vessel();
        }

        /**
         * Adds a vessel that stands upright and empty, such as a glass or a decanter into which something is poured later. Until then its
         * wall exchanges heat outside only, and its prediction has no temperature of a drink.
         *
         * @param id its id, not blank, not used before
         * @param vessel the empty vessel
         * @param temperature temperature of its wall at the start, −40 °C to 100 °C
         * @param gearId id of the gear in which it is at the start
         * @return this builder
         * @throws IllegalArgumentException if the id is blank or in use or there is no such gear
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
         */
        public Builder emptyVessel(String id, Vessel vessel, Quantity<Temperature> temperature, String gearId) {
            requireNew(id);
            requireGear(gearId, Duration.ZERO);
            empties.put(
                    id,
                    new Pours.EmptyVessel(
                            Objects.requireNonNull(vessel, "vessel"),
                            SiValues.temperatureK(
                                    temperature, "temperature of vessel " + id, COLDEST_WALL_K, HOTTEST_WALL_K)));
            models.put(id, VesselModel.lumped());
            TreeMap<Duration, Place> timed = new TreeMap<>();
            timed.put(Duration.ZERO, new Place(gearId, Placement.upright()));
            places.put(id, timed);
            return this;
        }

        /**
         * Pours from one vessel into another: the drink comes over at the mean temperature of what it is taken from and mixes with what is
         * there, mass and enthalpy conserved; the wall of the other vessel keeps its temperature and exchanges heat from then on. To fill
         * up a half-full glass is another pour. Several pours at one time follow one another as they were told.
         *
         * <p>Contents of both are lumped and stand upright throughout; that a bottle that has stratified pours its top first is left out, as
         * is what the {@linkplain FallingStream falling stream} gives to the air. Hot drinks scald, and crack cold glasses; the prediction says so too.
         *
         * @param fromId id of the vessel that gives
         * @param after time since the start, ≥ 0
         * @param volume how much, at 20 °C: 0.1 mL to 1000 L
         * @param toId id of the vessel that takes
         * @return this builder
         * @throws IllegalArgumentException if there is no such vessel, both are one, contents are layered or hold pieces, or the time is
         *     negative; {@link #build} refuses what is not in the vessel then, what does not fit the other, and other drinks
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the volume is outside its range
         */
        public Builder pour(String fromId, Duration after, Quantity<Volume> volume, String toId) {
            return ask(Pours.Kind.POUR, fromId, after, after, toId, poured(volume));
        }

        /**
         * Pours all that is in a vessel into another, as when a bottle is decanted.
         *
         * @param fromId id of the vessel that gives
         * @param after time since the start, ≥ 0
         * @param toId id of the vessel that takes
         * @return this builder
         * @throws IllegalArgumentException as {@link #pour}
         * @see #pour
         */
        public Builder pourAll(String fromId, Duration after, String toId) {
            return ask(Pours.Kind.POUR_ALL, fromId, after, after, toId, 0);
        }

        /**
         * Drinks from a vessel, or pours something away: it leaves the run, and the ledger has an account of its enthalpy.
         *
         * @param vesselId id of the vessel
         * @param after time since the start, ≥ 0
         * @param volume how much, at 20 °C: 0.1 mL to 1000 L
         * @return this builder
         * @throws IllegalArgumentException if there is no such vessel, its contents are layered or hold pieces, or the time is negative;
         *     {@link #build} refuses what is not in the vessel then
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the volume is outside its range
         */
        public Builder drink(String vesselId, Duration after, Quantity<Volume> volume) {
            return ask(Pours.Kind.DRINK, vesselId, after, after, "", poured(volume));
        }

        /**
         * Empties a vessel little by little, by sips of at most 12 mL (or of a fortieth of what is drunk) spread evenly over the time.
         * A sip is a part of what is there: what has evaporated from a hot cup is missed in every sip and in what is left.
         *
         * @param vesselId id of the vessel
         * @param from when it begins, since the start, ≥ 0
         * @param until when it ends, after it begins
         * @param downTo volume that is left then, at 20 °C: 0 to less than what is there when it begins
         * @return this builder
         * @throws IllegalArgumentException as {@link #drink}, or if it does not end after it begins
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the volume is outside its range
         */
        public Builder drinkEvenly(String vesselId, Duration from, Duration until, Quantity<Volume> downTo) {
            if (until.compareTo(from) <= 0) {
                throw new IllegalArgumentException("drinking from " + vesselId + " from " + from + " until " + until
                        + ": expected an end after the beginning");
            }
            return ask(
                    Pours.Kind.DRINK_DOWN_TO,
                    vesselId,
                    from,
                    until,
                    "",
                    SiValues.volumeM3(downTo, "volume left", 0, MOST_POURED_M3));
        }

        private static double poured(Quantity<Volume> volume) {
            return SiValues.volumeM3(volume, "volume poured", LEAST_POURED_M3, MOST_POURED_M3);
        }

        private Builder ask(
                Pours.Kind kind, String fromId, Duration after, Duration until, String toId, double volumeM3) {
            if (after.isNegative()) {
                throw new IllegalArgumentException(
                        "pouring from " + fromId + " after " + after + ": expected at least 0");
            }
            requirePours(fromId);
            if (!toId.isEmpty() || kind == Pours.Kind.POUR || kind == Pours.Kind.POUR_ALL) {
                requirePours(toId);
            }
            if (fromId.equals(toId)) {
                throw new IllegalArgumentException("pouring from " + fromId + " into itself: expected two vessels");
            }
            asked.add(new Pours.Asked(kind, after, until, fromId, toId, volumeM3));
            return this;
        }

        private void requirePours(String id) {
            VesselModel model = models.get(id);
            if (model == null) {
                throw new IllegalArgumentException("vessel " + id + ": expected one of " + models.keySet());
            }
            if (!model.isLumped()) {
                throw new IllegalArgumentException(
                        "pouring from or into vessel " + id + ", described as " + model + ": expected lumped contents");
            }
        }

        /** What is poured stands, and nothing is put into it. */
        private void requirePourable() {
            for (Pours.Asked one : asked) {
                for (String id : List.of(one.from(), one.to())) {
                    if (inserts.containsKey(id)) {
                        throw new IllegalArgumentException("pieces in the drink of vessel " + id
                                + ", which is poured into or from: expected one or the other");
                    }
                    TreeMap<Duration, Place> timed = places.get(id);
                    if (timed != null
                            && timed.values().stream().anyMatch(place -> place.posture() != Posture.UPRIGHT)) {
                        throw new IllegalArgumentException(
                                "vessel " + id
                                        + ", which is poured into or from, lies or stands on its mouth: expected upright throughout");
                    }
                }
            }
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
                throw new IllegalArgumentException(
                        "vessel " + vesselId + ": expected one that is filled at the start, of " + vessels.keySet());
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
         * @throws IllegalArgumentException if a vessel that is to be immersed lies in a bucket narrower than it is long, or of vessels that
         *     are poured into or from one is never filled, does not stand upright, holds pieces, gets a second drink, or is emptied of
         *     nothing
         * @throws org.beveragethermal.materials.units.OutOfRangeException if more is poured or drunk than a vessel holds then, or more
         *     into one than it holds to the brim
         */
        public Scene build() {
            if (models.isEmpty()) {
                throw new IllegalStateException("a scene needs at least one vessel: call vessel(…)");
            }
            requirePourable();
            return new Scene(this);
        }

        private void requireNew(String id) {
            if (id.isBlank() || gear.containsKey(id) || models.containsKey(id)) {
                throw new IllegalArgumentException("id '" + id + "': expected one that is not blank and not in use");
            }
        }

        private void requireReach(String id, Vessel vessel, String gearId, Placement placement) {
            if (placement.immersionM().isEmpty()) {
                return;
            }
            double immersion = placement.immersionM().getAsDouble();
            double height = new Occupant(id, vessel, placement).heightM();
            new ValidityRange("immersion of vessel " + id, 0, height, "m").require(immersion, "height of the vessel");
            if (!Objects.requireNonNull(gear.get(gearId)).isBath()) {
                throw new IllegalArgumentException("vessel " + id + " immersed to " + immersion + " m in gear " + gearId
                        + ": it holds no water; expected a bath");
            }
        }

        private static void requireStands(String id, Vessel vessel, Placement placement) {
            Objects.requireNonNull(placement, "placement of vessel " + id);
            Posture posture = placement.posture();
            if (posture != Posture.UPRIGHT && vessel.isOpen()) {
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
     * @param solver tolerance and multipliers; a scene in which a bath is tended may be run up to four times, and from addition to addition
     *     in between, until it is known how high its water stands afterwards, and a monitor is told of all of them
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
        List<Duration> tended = tendingTimes(horizon);
        if (tended.isEmpty()) {
            return predict(horizon, solver, IceLeft.UNKNOWN);
        }
        IceLeft assumed = IceLeft.UNKNOWN;
        IceLeft seen;
        try {
            ScenePrediction run = predict(horizon, solver, assumed);
            seen = iceLeft(horizon, run, assumed);
            if (seen.equals(assumed)) {
                requireDepths(horizon, assumed);
                return run;
            }
            // Nothing was assumed of what happens before the first time at which something is done.
            assumed = seen.before(tended.get(0).plusMillis(1));
        } catch (IllegalArgumentException refused) {
            // As long as it is not known how much has melted all ice is taken to be left: the water stands too low,
            // less ice melts, and
            // an addition that has room seems to have none. What is really refused is refused again below.
            assumed = IceLeft.UNKNOWN;
        }
        assumed = iceLeftStepByStep(tended, solver, assumed);
        for (int pass = 2; ; pass++) {
            ScenePrediction run = predict(horizon, solver, assumed);
            seen = iceLeft(horizon, run, assumed);
            if (pass == MOST_PASSES || seen.equals(assumed)) {
                requireDepths(horizon, assumed);
                return run;
            }
            assumed = seen;
        }
    }

    /** Times before a horizon at which gear is tended. */
    private List<Duration> tendingTimes(Duration horizon) {
        return tendings.values().stream()
                .flatMap(timed -> timed.headMap(horizon).keySet().stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** Ice left at each time, from runs that end there and know what was left at the times before. */
    private IceLeft iceLeftStepByStep(List<Duration> tended, NetworkSolver solver, IceLeft known) {
        IceLeft left = known;
        for (Duration time : tended) {
            List<String> ids = tendings.keySet().stream()
                    .filter(id -> Objects.requireNonNull(tendings.get(id)).containsKey(time))
                    .toList();
            if (!left.at(ids.get(0), time).isPresent()) {
                ScenePrediction run = predict(time, solver, left);
                for (String id : ids) {
                    left = left.with(id, time, run.iceKg(id, time.minusMillis(1)));
                }
            }
        }
        return left;
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
        requireRims(starts, media);
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
                        drink(vessel.filled()).fluid(),
                        vessel.contents().nodes().get(0),
                        Objects.requireNonNull(inserts.get(id)))));
        inDrinks.values().forEach(inDrink -> nodes.addAll(inDrink.nodes()));
        Map<String, Node> contents = new LinkedHashMap<>();
        modelled.forEach(
                (id, vessel) -> contents.put(id, vessel.contents().nodes().get(0)));
        List<Phase> phases = new ArrayList<>();
        for (Duration start : starts) {
            List<StateChange> all = new ArrayList<>(mixings(start, modelled));
            all.addAll(media.changes(start));
            if (!pours.moved(start).isEmpty()) {
                all.add(new PourChange(pours.moved(start), contents));
            }
            List<Path> paths = paths(start, media, modelled);
            inDrinks.values().forEach(inDrink -> paths.addAll(inDrink.paths(start)));
            phases.add(new Phase(seconds(start), Network.of(nodes, paths), all));
        }
        Trajectory trajectory = solver.solve(phases, seconds(horizon));
        Map<String, Prediction> predictions = new LinkedHashMap<>();
        modelled.forEach((id, vessel) -> {
            Prediction whole = Prediction.of(
                    trajectory,
                    vessel.contents(),
                    vessel.heatCapacityJPerK(),
                    vessel.bands(),
                    Stream.of(
                                    notes(id, vessel, starts, media, trajectory),
                                    Objects.requireNonNull(inDrinks.get(id)).notes(trajectory),
                                    PourNotes.of(id, pours, modelled, contents, trajectory))
                            .flatMap(List::stream)
                            .toList(),
                    described(id, vessel, horizon, media));
            predictions.put(
                    id,
                    pours.fillings(id)
                            .map(fillings -> whole.heldOnly(fillings.held(seconds(horizon))))
                            .orElse(whole));
        });
        Map<String, List<Node>> insertNodes = new LinkedHashMap<>();
        inDrinks.forEach((id, inDrink) -> insertNodes.put(id, inDrink.nodes()));
        Map<String, FilledVessel> filled = new LinkedHashMap<>();
        modelled.forEach((id, vessel) -> filled.put(id, vessel.filled()));
        return new ScenePrediction(trajectory, predictions, media.nodes(), insertNodes, filled);
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

    /** An open vessel whose rim is under water or ice would take it in. */
    private void requireRims(List<Duration> starts, LiveGear media) {
        for (String id : vessels.keySet()) {
            for (Duration start : starts) {
                Occupant occupant = occupant(id, start);
                double wetted = wettedHeight(id, start, media);
                if (occupant.vessel().isOpen() && wetted >= occupant.heightM()) {
                    throw new IllegalArgumentException(String.format(
                            Locale.ROOT,
                            "vessel %s, open and %.3f m high, in gear %s after %s: its rim is under what it stands in; expected a"
                                    + " shallower one, an immersion below the rim or a vessel that is closed",
                            id,
                            occupant.heightM(),
                            stay(id, start).gearId(),
                            start));
                }
            }
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
                filled,
                Objects.requireNonNull(models.get(id)).kind(),
                LumpedVessel.insideFilm(filled, area, drink(filled).fluid()),
                stays);
    }

    /** Times at which connections change, the start first. */
    private List<Duration> starts(Duration horizon) {
        return Stream.of(
                        places.values().stream().flatMap(timed -> timed.keySet().stream()),
                        tendings.values().stream().flatMap(timed -> timed.keySet().stream()),
                        prepared.values().stream(),
                        inserts.values().stream().flatMap(List::stream).map(Inserts.Added::from),
                        pours.times().stream())
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
        Optional<Fillings> fillings = pours.fillings(id);
        if (fillings.isPresent()) {
            return new LumpedVessel(id, fillings.get(), drink(filled), waterlines, model.layers(), model.tints());
        }
        return model.isLumped()
                ? new LumpedVessel(
                        id,
                        filled,
                        drink(filled),
                        waterlines,
                        model.layers(),
                        model.tints(),
                        Inserts.melt(Objects.requireNonNull(inserts.get(id))))
                : new RadialVessel(id, filled, drink(filled), waterlines, model);
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
            paths.addAll(
                    vessel.at(start).paths(media.at(gearId, start), occupant(id, start), occupants(gearId, start)));
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
