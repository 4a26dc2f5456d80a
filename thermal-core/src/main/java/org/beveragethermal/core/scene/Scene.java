/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Phase;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Vessels and gear under ids, and timed moves of vessels from gear to gear.
 *
 * <p>Immutable. All vessels are lumped; gear lives from the moment it is prepared to the end of the run, with vessels in it
 * or not.
 */
public final class Scene {

    private static final Duration LONGEST = Duration.ofDays(30);
    /** A waterline this close below the top of the liquid or above it counts as full immersion, as a part of the height. */
    private static final double FULLY_IMMERSED = 0.95;

    private final Duration origin;
    private final Map<String, Surroundings> gear;
    private final Map<String, Duration> prepared;
    private final Map<String, FilledVessel> vessels;
    private final Map<String, TreeMap<Duration, String>> places;

    private Scene(Builder builder) {
        this.origin = builder.origin;
        this.gear = new LinkedHashMap<>(builder.gear);
        this.prepared = Map.copyOf(builder.prepared);
        this.vessels = new LinkedHashMap<>(builder.vessels);
        this.places = new LinkedHashMap<>();
        builder.places.forEach((id, timed) -> this.places.put(id, new TreeMap<>(timed)));
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
        private final Map<String, TreeMap<Duration, String>> places = new LinkedHashMap<>();
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
         * Adds a vessel.
         *
         * @param id its id, not blank, not used before
         * @param vessel the vessel with its contents at their temperature at the start
         * @param gearId id of the gear in which it is at the start
         * @return this builder
         * @throws IllegalArgumentException if the id is blank or in use or there is no such gear
         */
        public Builder vessel(String id, FilledVessel vessel, String gearId) {
            requireNew(id);
            requireGear(gearId, Duration.ZERO);
            vessels.put(id, Objects.requireNonNull(vessel, "vessel"));
            TreeMap<Duration, String> timed = new TreeMap<>();
            timed.put(Duration.ZERO, gearId);
            places.put(id, timed);
            return this;
        }

        /**
         * Moves a vessel.
         *
         * @param vesselId id of the vessel
         * @param after time since the start, > 0, no other move of this vessel at that time
         * @param gearId id of the gear it goes to
         * @return this builder
         * @throws IllegalArgumentException if there is no such vessel or gear, the gear is not prepared by then, or the time is
         *     not fit
         */
        public Builder move(String vesselId, Duration after, String gearId) {
            TreeMap<Duration, String> timed = places.get(vesselId);
            if (timed == null) {
                throw new IllegalArgumentException("vessel " + vesselId + ": expected one of " + vessels.keySet());
            }
            requireGear(gearId, after);
            if (after.isNegative() || after.isZero() || timed.containsKey(after)) {
                throw new IllegalArgumentException("move of " + vesselId + " after " + after
                        + ": expected a time after the start at which it is not moved yet");
            }
            timed.put(after, gearId);
            return this;
        }

        /**
         * Makes the scene.
         *
         * @return the scene
         * @throws IllegalStateException if there is no vessel
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
     * @throws IllegalArgumentException if the horizon is outside its range
     */
    public ScenePrediction predict(Duration horizon) {
        return predict(horizon, NetworkSolver.standard());
    }

    /**
     * Runs the scene.
     *
     * @param horizon how long, > 0, at most 30 days; moves after it do not take place
     * @param solver tolerance and multipliers
     * @return what happens
     * @throws IllegalArgumentException if the horizon is outside its range
     */
    public ScenePrediction predict(Duration horizon, NetworkSolver solver) {
        if (horizon.isNegative() || horizon.isZero() || horizon.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException(
                    "horizon " + horizon + ": expected more than nothing and at most " + LONGEST);
        }
        Map<String, Medium> media = new LinkedHashMap<>();
        gear.forEach((id, surroundings) -> media.put(id, surroundings.open(id, seconds(origin))));
        List<Duration> starts = starts(horizon);
        Map<String, LumpedVessel> lumped = new LinkedHashMap<>();
        vessels.forEach((id, filled) -> lumped.put(id, new LumpedVessel(id, filled, waterlines(id, starts, media))));
        List<Node> nodes = new ArrayList<>();
        media.values().forEach(medium -> nodes.addAll(medium.nodes()));
        lumped.values().forEach(vessel -> nodes.addAll(vessel.nodes()));
        List<Phase> phases = new ArrayList<>();
        for (Duration start : starts) {
            phases.add(new Phase(seconds(start), Network.of(nodes, paths(start, media, lumped))));
        }
        Trajectory trajectory = solver.solve(phases, seconds(horizon));
        Map<String, Prediction> predictions = new LinkedHashMap<>();
        lumped.forEach((id, vessel) -> predictions.put(
                id,
                Prediction.of(
                        trajectory,
                        vessel.contents(),
                        vessel.heatCapacityJPerK(),
                        vessel.bands(),
                        notes(id, vessel, starts, media))));
        Map<String, List<Node>> gearNodes = new LinkedHashMap<>();
        media.forEach((id, medium) -> gearNodes.put(id, medium.nodes()));
        return new ScenePrediction(trajectory, predictions, gearNodes);
    }

    /** Times at which connections change, the start first. */
    private List<Duration> starts(Duration horizon) {
        return Stream.concat(
                        places.values().stream().flatMap(timed -> timed.keySet().stream()), prepared.values().stream())
                .filter(time -> time.compareTo(horizon) < 0)
                .distinct()
                .sorted()
                .toList();
    }

    private String place(String vesselId, Duration time) {
        return Objects.requireNonNull(places.get(vesselId)).floorEntry(time).getValue();
    }

    private List<Occupant> occupants(String gearId, Duration time) {
        List<Occupant> occupants = new ArrayList<>();
        vessels.forEach((id, filled) -> {
            if (place(id, time).equals(gearId)) {
                occupants.add(new Occupant(id, filled.vessel()));
            }
        });
        return occupants;
    }

    private List<Double> waterlines(String vesselId, List<Duration> starts, Map<String, Medium> media) {
        List<Double> lines = new ArrayList<>();
        for (Duration start : starts) {
            lines.add(wettedHeight(vesselId, start, media));
        }
        return lines;
    }

    private double wettedHeight(String vesselId, Duration time, Map<String, Medium> media) {
        String gearId = place(vesselId, time);
        Occupant occupant = new Occupant(
                vesselId, Objects.requireNonNull(vessels.get(vesselId)).vessel());
        return Objects.requireNonNull(media.get(gearId)).wettedHeightM(occupant, occupants(gearId, time));
    }

    private List<Path> paths(Duration start, Map<String, Medium> media, Map<String, LumpedVessel> lumped) {
        List<Path> paths = new ArrayList<>();
        media.forEach((id, medium) -> {
            if (Objects.requireNonNull(prepared.get(id)).compareTo(start) <= 0) {
                paths.addAll(medium.paths(occupants(id, start)));
            }
        });
        lumped.forEach((id, vessel) -> {
            String gearId = place(id, start);
            paths.addAll(vessel.paths(Objects.requireNonNull(media.get(gearId)), occupants(gearId, start)));
        });
        return paths;
    }

    private List<String> notes(String vesselId, LumpedVessel vessel, List<Duration> starts, Map<String, Medium> media) {
        List<String> notes = new ArrayList<>();
        for (Duration start : starts) {
            String gearId = place(vesselId, start);
            double wetted = wettedHeight(vesselId, start, media);
            if (wetted > 0 && vessel.wettedPart(wetted) < FULLY_IMMERSED) {
                notes.add(String.format(
                        java.util.Locale.ROOT,
                        "in %s only %.0f %% of the drink's height is under water; the drink stratifies, its upper part stays"
                                + " warmer than the mean given here and the mean itself is predicted too fast",
                        gearId,
                        100 * vessel.wettedPart(wetted)));
            }
            notes.addAll(Objects.requireNonNull(media.get(gearId)).notes(occupants(gearId, start)));
        }
        return notes.stream().distinct().toList();
    }

    private static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }
}
