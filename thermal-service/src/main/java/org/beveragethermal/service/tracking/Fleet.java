/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;

/**
 * Vessels by id, with {@link Tracker} applied to each: a container for one thread. Whoever wants a history keeps the vessels, which are
 * immutable.
 */
public final class Fleet {

    private static final int MOST_SHARDS = 4096;

    private final Tracker tracker;
    private final Map<String, TrackedVessel> vessels = new HashMap<>();

    private Fleet(Tracker tracker) {
        this.tracker = Objects.requireNonNull(tracker, "tracker");
    }

    /**
     * What a batch of events made.
     *
     * @param instructions what to do now, in the order of the events
     * @param alerts what to know, in the order of the events
     * @param notes events that were not used, in their order
     */
    public record Report(List<Instruction> instructions, List<Alert> alerts, List<Note> notes) {

        /**
         * Copies the lists.
         *
         * @param instructions what to do now, not modified
         * @param alerts what to know, not modified
         * @param notes events that were not used, not modified
         */
        public Report {
            instructions = List.copyOf(instructions);
            alerts = List.copyOf(alerts);
            notes = List.copyOf(notes);
        }
    }

    /**
     * An empty fleet.
     *
     * @param tracker kinds of vessels and rules
     * @return a fleet
     */
    public static Fleet of(Tracker tracker) {
        return new Fleet(tracker);
    }

    /**
     * A fleet from storage.
     *
     * @param tracker kinds of vessels and rules
     * @param snapshots one per vessel, not modified
     * @return a fleet
     * @throws IllegalArgumentException if a snapshot cannot be restored
     */
    public static Fleet restore(Tracker tracker, Collection<TrackedSnapshot> snapshots) {
        Fleet fleet = new Fleet(tracker);
        for (TrackedSnapshot snapshot : snapshots) {
            TrackedVessel vessel = snapshot.restore(tracker);
            if (fleet.vessels.put(vessel.id(), vessel) != null) {
                throw new IllegalArgumentException("two snapshots of vessel " + vessel.id() + ": expected one");
            }
        }
        return fleet;
    }

    /**
     * Applies events one after the other.
     *
     * @param events events in the order in which they came, not modified
     * @return what is new
     */
    public Report apply(List<? extends TrackingEvent> events) {
        Gathered gathered = new Gathered();
        for (TrackingEvent event : events) {
            gathered.add(advance(vessels, event));
        }
        return gathered.report();
    }

    /**
     * Applies events in parts side by side, each vessel in one part: what comes of it is the same, whatever the executor. If the executor
     * refuses a part, its exception is thrown and the fleet is as before.
     *
     * @param events events in the order in which they came, not modified
     * @param executor whose threads are used
     * @param shards number of parts, 1 to 4096
     * @return what is new
     * @throws IllegalArgumentException if the number of parts is outside its range
     */
    public Report apply(List<? extends TrackingEvent> events, Executor executor, int shards) {
        Checks.within(shards, 1, MOST_SHARDS, "number of parts", "1");
        List<List<Integer>> parts = new ArrayList<>();
        for (int i = 0; i < shards; i++) {
            parts.add(new ArrayList<>());
        }
        for (int i = 0; i < events.size(); i++) {
            parts.get(Math.floorMod(events.get(i).vesselId().hashCode(), shards))
                    .add(i);
        }
        Outcome[] outcomes = new Outcome[events.size()];
        for (Part part : sideBySide(events, parts, executor)) {
            part.outcomes().forEach((index, outcome) -> outcomes[index] = outcome);
            vessels.putAll(part.vessels());
        }
        Gathered gathered = new Gathered();
        for (Outcome outcome : outcomes) {
            gathered.add(outcome);
        }
        return gathered.report();
    }

    /** The parts read the map, which nobody writes meanwhile, and keep what they change to themselves. */
    private List<Part> sideBySide(List<? extends TrackingEvent> events, List<List<Integer>> parts, Executor executor) {
        List<CompletableFuture<Part>> running = new ArrayList<>();
        try {
            for (List<Integer> part : parts) {
                running.add(CompletableFuture.supplyAsync(() -> run(events, part), executor));
            }
            return running.stream().map(CompletableFuture::join).toList();
        } finally {
            // Also where the executor refuses a part: the others must not read on while the caller goes on.
            running.forEach(future -> future.handle((part, failure) -> true).join());
        }
    }

    private record Part(Map<String, TrackedVessel> vessels, Map<Integer, Outcome> outcomes) {}

    private Part run(List<? extends TrackingEvent> events, List<Integer> indices) {
        Map<String, TrackedVessel> own = new HashMap<>();
        Map<Integer, Outcome> outcomes = new HashMap<>();
        for (int index : indices) {
            TrackingEvent event = events.get(index);
            TrackedVessel known = vessels.get(event.vesselId());
            if (known != null) {
                own.putIfAbsent(event.vesselId(), known);
            }
            outcomes.put(index, advance(own, event));
        }
        return new Part(own, outcomes);
    }

    private Outcome advance(Map<String, TrackedVessel> all, TrackingEvent event) {
        Outcome outcome = tracker.apply(Optional.ofNullable(all.get(event.vesselId())), event);
        outcome.vessel().ifPresent(vessel -> all.put(vessel.id(), vessel));
        return outcome;
    }

    private static final class Gathered {
        private final List<Instruction> instructions = new ArrayList<>();
        private final List<Alert> alerts = new ArrayList<>();
        private final List<Note> notes = new ArrayList<>();

        void add(Outcome outcome) {
            instructions.addAll(outcome.instructions());
            alerts.addAll(outcome.alerts());
            notes.addAll(outcome.notes());
        }

        Report report() {
            return new Report(instructions, alerts, notes);
        }
    }

    /**
     * A vessel.
     *
     * @param vesselId id
     * @return the vessel; empty if it is not tracked
     */
    public Optional<TrackedVessel> vessel(String vesselId) {
        return Optional.ofNullable(vessels.get(vesselId));
    }

    /**
     * All vessels.
     *
     * @return vessels in the order of their ids
     */
    public List<TrackedVessel> vessels() {
        return List.copyOf(new TreeMap<>(vessels).values());
    }

    /**
     * Which vessels a medium holds, for news of it that concerns them all.
     *
     * @param mediumId medium
     * @return ids in order, without those that are finished
     */
    public List<String> in(String mediumId) {
        return vessels.values().stream()
                .filter(vessel -> !vessel.isFinished() && vessel.mediumId().equals(mediumId))
                .map(TrackedVessel::id)
                .sorted()
                .toList();
    }

    /**
     * Lets go of vessels that are finished.
     *
     * @return how many they were
     */
    public int forgetFinished() {
        int before = vessels.size();
        vessels.values().removeIf(TrackedVessel::isFinished);
        return before - vessels.size();
    }

    /**
     * All vessels for storage.
     *
     * @return snapshots in the order of the vessels' ids
     */
    public List<TrackedSnapshot> snapshots() {
        return vessels().stream().map(TrackedVessel::snapshot).toList();
    }
}
