/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.beveragethermal.service.tracking.TrackedVessel.Said;
import org.beveragethermal.service.tracking.TrackingEvent.Goal;

/**
 * A tracked vessel without behaviour, for storage. Times are microseconds since 1970-01-01T00:00Z.
 *
 * @param formatVersion version of this form, {@value #FORMAT_VERSION}
 * @param vesselId id of the vessel
 * @param modelName kind of vessel; the tracker that restores it must know it
 * @param media names of the model's media in its order, by which the figures number them
 * @param folded whether events are older than those kept
 * @param placedIdHash hash of the id of the event that placed it
 * @param before what was believed before the kept events, by name; SI units
 * @param kept the latest events
 * @param said what is wanted and what has been said, by name; what is unknown is absent
 * @param aside the latest reading if it came from too far ahead to be used
 */
public record TrackedSnapshot(
        int formatVersion,
        String vesselId,
        String modelName,
        List<String> media,
        boolean folded,
        long placedIdHash,
        Map<String, Double> before,
        List<KeptEvent> kept,
        Map<String, Long> said,
        Optional<TrackingEvent.Reading> aside) {

    /** Version of the form that this library writes. */
    public static final int FORMAT_VERSION = 1;

    /**
     * An event that is kept for late ones to be put before or after.
     *
     * @param atMicros when it happened
     * @param idHash hash of its id
     * @param kind moved 0, gear changed 1, ice added 2, poured 3, reading 4, finished 5
     * @param value number of the medium, temperature [K] or part left
     * @param sdK standard uncertainty of a temperature that was set [K]
     */
    public record KeptEvent(long atMicros, long idHash, int kind, double value, double sdK) {}

    /**
     * Copies the parts.
     *
     * @param formatVersion version of this form, 1
     * @param vesselId id of the vessel, not blank
     * @param modelName kind of vessel
     * @param media names of the model's media, not modified
     * @param folded whether events are older than those kept
     * @param placedIdHash hash of the id of the event that placed it
     * @param before what was believed, all names and finite figures, not modified
     * @param kept the latest events, not modified
     * @param said what is wanted and what has been said, not modified
     * @param aside the latest reading if it came from too far ahead to be used
     * @throws IllegalArgumentException if the version is another, a figure is missing or not finite
     */
    public TrackedSnapshot {
        Checks.name(vesselId, "vessel");
        if (formatVersion != FORMAT_VERSION) {
            throw new IllegalArgumentException("snapshot of vessel " + vesselId + " in format " + formatVersion
                    + ": expected format " + FORMAT_VERSION);
        }
        for (String name : BeliefFigures.NAMES) {
            Double value = before.get(name);
            if (value == null || !Double.isFinite(value)) {
                throw new IllegalArgumentException(
                        "snapshot of vessel " + vesselId + ": " + name + " is " + value + ", expected a finite figure");
            }
        }
        for (KeptEvent event : kept) {
            if (event.kind() < 0
                    || event.kind() > Kept.FINISHED
                    || !Double.isFinite(event.value())
                    || !Double.isFinite(event.sdK())) {
                throw new IllegalArgumentException(
                        "snapshot of vessel " + vesselId + ": " + event + ", expected a kind from 0 to 5 and figures");
            }
        }
        media = List.copyOf(media);
        before = Map.copyOf(before);
        kept = List.copyOf(kept);
        said = Map.copyOf(said);
    }

    static TrackedSnapshot of(TrackedVessel vessel) {
        List<KeptEvent> events = new ArrayList<>();
        for (int i = 0; i < vessel.kept.size(); i++) {
            Kept.Entry entry = vessel.kept.entry(i);
            events.add(new KeptEvent(entry.atMicros(), entry.idHash(), entry.kind(), entry.value(), entry.sd()));
        }
        return new TrackedSnapshot(
                FORMAT_VERSION,
                vessel.id,
                vessel.model.name(),
                vessel.model.laws().stream().map(MediumLaw::mediumId).toList(),
                vessel.folded,
                vessel.placedIdHash,
                BeliefFigures.of(vessel.base),
                events,
                said(vessel.said),
                Optional.ofNullable(vessel.said.aside()));
    }

    /**
     * The vessel again.
     *
     * @param tracker knows the model and the rules
     * @return a vessel that goes on as the stored one would have
     * @throws IllegalArgumentException if the tracker does not know the model, the model has other media, or a figure is none that tracking
     *     could have come to
     */
    public TrackedVessel restore(Tracker tracker) {
        TrackedModel model = tracker.models().get(modelName);
        if (model == null) {
            throw new IllegalArgumentException("snapshot of vessel " + vesselId + ": model " + modelName
                    + " is unknown, expected one of "
                    + tracker.models().keySet().stream().sorted().toList());
        }
        List<String> known = model.laws().stream().map(MediumLaw::mediumId).toList();
        if (!known.equals(media)) {
            throw new IllegalArgumentException("snapshot of vessel " + vesselId + ": media " + media + " of model "
                    + modelName + ", expected " + known);
        }
        Belief base = new BeliefFigures(before, "snapshot of vessel " + vesselId).belief(model);
        Checks.within(kept.size(), 0, TrackingRules.MOST_KEPT, "events kept in snapshot of vessel " + vesselId, "1");
        Kept all = Kept.NONE;
        for (KeptEvent event : kept) {
            Kept.Entry entry = new Kept.Entry(
                    event.atMicros(), event.idHash(), (byte) event.kind(), event.value(), (float) event.sdK());
            check(event, base.atMicros, known.size());
            all = all.with(entry, all.place(entry));
        }
        Said again = restoredSaid(model);
        TrackedVessel unread =
                new TrackedVessel(vesselId, model, tracker.rules(), base, base, all, folded, placedIdHash, again);
        Belief head = base.copy();
        for (int i = 0; i < all.size(); i++) {
            Tracker.tell(unread, head, all, i);
        }
        return new TrackedVessel(vesselId, model, tracker.rules(), base, head, all, folded, placedIdHash, again);
    }

    /** Holds a kept event to what {@link TrackingEvent} allows. */
    private void check(KeptEvent event, long baseMicros, int media) {
        String of = " of a kept event in snapshot of vessel " + vesselId;
        Checks.time(Checks.instant(event.atMicros()), "time" + of);
        if (event.atMicros() < baseMicros) {
            throw new IllegalArgumentException("time" + of + " is " + Checks.instant(event.atMicros())
                    + ": expected at or after that of the belief before, " + Checks.instant(baseMicros));
        }
        Checks.within(event.sdK(), 0, Checks.MOST_SD_K, "standard uncertainty" + of, "K");
        switch (event.kind()) {
            case Kept.MOVED -> Checks.within(event.value(), 0, media - 1.0, "medium" + of, "1");
            case Kept.POURED -> Checks.within(event.value(), Checks.LEAST_PART, 1, "part left" + of, "1");
            case Kept.GEAR_CHANGED, Kept.READING -> Checks.temperature(event.value(), "temperature" + of);
            default -> {}
        }
    }

    private static Map<String, Long> said(Said said) {
        Map<String, Long> figures = new LinkedHashMap<>();
        Goal goal = said.goal();
        if (goal != null) {
            figures.put("goalLowKBits", Double.doubleToLongBits(goal.lowK()));
            figures.put("goalHighKBits", Double.doubleToLongBits(goal.highK()));
            goal.serveAt().ifPresent(at -> figures.put("serveAtMicros", Checks.micros(at)));
            figures.put("goalMicros", said.goalMicros());
            figures.put("goalIdHash", said.goalIdHash());
        }
        figures.put("openedMicros", said.openedMicros());
        figures.put("nowMicros", said.nowMicros());
        figures.put("refusedMicros", said.refusedMicros());
        figures.put("refusedInRow", (long) said.refusedInRow());
        figures.put("told", (long) said.told());
        figures.put("toldChangeMicros", said.toldChangeMicros());
        if (said.clocked()) {
            figures.put("clocked", 1L);
        }
        return figures;
    }

    private long said(String name) {
        Long value = said.get(name);
        if (value == null) {
            throw new IllegalArgumentException("snapshot of vessel " + vesselId + ": " + name + " is missing");
        }
        return value;
    }

    /** A time, or what stands for none. */
    private long time(String name, long none) {
        long micros = said(name);
        if (micros != none) {
            Checks.time(Checks.instant(micros), name + " in snapshot of vessel " + vesselId);
        }
        return micros;
    }

    private int count(String name) {
        return (int) Checks.within(
                (double) said(name), 0, Integer.MAX_VALUE, name + " in snapshot of vessel " + vesselId, "1");
    }

    private Said restoredSaid(TrackedModel model) {
        String where = " in snapshot of vessel " + vesselId;
        aside.ifPresent(reading -> {
            if (!reading.vesselId().equals(vesselId) || !model.sensor().accepts(reading.temperatureK())) {
                throw new IllegalArgumentException("reading held aside" + where + " is " + reading
                        + ": expected one of the vessel and its sensor");
            }
        });
        Checks.time(Checks.instant(said("nowMicros")), "latest time" + where);
        Said rest = new Said(
                null,
                Long.MIN_VALUE,
                0,
                time("openedMicros", Long.MAX_VALUE),
                said("nowMicros"),
                time("refusedMicros", Long.MIN_VALUE),
                count("refusedInRow"),
                count("told"),
                time("toldChangeMicros", Long.MIN_VALUE),
                said.getOrDefault("clocked", 0L) != 0,
                aside.orElse(null));
        if (!said.containsKey("goalLowKBits")) {
            return rest;
        }
        Goal goal = new Goal(
                Double.longBitsToDouble(said("goalLowKBits")),
                Double.longBitsToDouble(said("goalHighKBits")),
                said.containsKey("serveAtMicros")
                        ? Optional.of(Checks.instant(said("serveAtMicros")))
                        : Optional.empty());
        Checks.time(Checks.instant(said("goalMicros")), "goalMicros" + where);
        return rest.ordered(goal, said("goalMicros"), said("goalIdHash"));
    }
}
