/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
        Map<String, Long> said) {

    /** Version of the form that this library writes. */
    public static final int FORMAT_VERSION = 1;

    private static final List<String> NAMES = List.of(
            "atMicros",
            "temperatureK",
            "logFactor",
            "mediumOffsetK",
            "biasK",
            "pTT",
            "pTc",
            "pTa",
            "pTb",
            "pcc",
            "pca",
            "pcb",
            "paa",
            "pab",
            "pbb",
            "medium",
            "previousMedium",
            "finished",
            "part",
            "mediumK",
            "mediumSdK",
            "placedMicros",
            "sumUp",
            "sumDown",
            "strays",
            "changes",
            "changedMicros",
            "changedByK",
            "readMicros",
            "innovationK",
            "innovationVarianceK2");

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
     * @throws IllegalArgumentException if the version is another, a figure is missing or not finite
     */
    public TrackedSnapshot {
        Checks.name(vesselId, "vessel");
        if (formatVersion != FORMAT_VERSION) {
            throw new IllegalArgumentException("snapshot of vessel " + vesselId + " in format " + formatVersion
                    + ": expected format " + FORMAT_VERSION);
        }
        for (String name : NAMES) {
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
                figures(vessel.base),
                events,
                said(vessel.said));
    }

    /**
     * The vessel again.
     *
     * @param tracker knows the model and the rules
     * @return a vessel that goes on as the stored one would have
     * @throws IllegalArgumentException if the tracker does not know the model, or the model has other media
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
        Belief base = belief(model);
        Kept all = Kept.NONE;
        for (KeptEvent event : kept) {
            Kept.Entry entry = new Kept.Entry(
                    event.atMicros(), event.idHash(), (byte) event.kind(), event.value(), (float) event.sdK());
            if (entry.kind() == Kept.MOVED) {
                Checks.within(event.value(), 0, known.size() - 1.0, "medium in snapshot of " + vesselId, "1");
            }
            all = all.with(entry, all.place(entry));
        }
        Said again = restoredSaid();
        TrackedVessel unread =
                new TrackedVessel(vesselId, model, tracker.rules(), base, base, all, folded, placedIdHash, again);
        Belief head = base.copy();
        for (int i = 0; i < all.size(); i++) {
            Tracker.tell(unread, head, all, i);
        }
        return new TrackedVessel(vesselId, model, tracker.rules(), base, head, all, folded, placedIdHash, again);
    }

    private double figure(String name) {
        return Objects.requireNonNull(before.get(name), name);
    }

    private Belief belief(TrackedModel model) {
        Belief belief = Belief.blank();
        belief.atMicros = (long) figure("atMicros");
        belief.t = figure("temperatureK");
        belief.c = figure("logFactor");
        belief.a = figure("mediumOffsetK");
        belief.b = figure("biasK");
        belief.pTT = figure("pTT");
        belief.pTc = figure("pTc");
        belief.pTa = figure("pTa");
        belief.pTb = figure("pTb");
        belief.pcc = figure("pcc");
        belief.pca = figure("pca");
        belief.pcb = figure("pcb");
        belief.paa = figure("paa");
        belief.pab = figure("pab");
        belief.pbb = figure("pbb");
        int last = model.laws().size() - 1;
        belief.medium = (byte) Checks.within(figure("medium"), 0, last, "medium in snapshot of " + vesselId, "1");
        belief.previousMedium = (byte)
                Checks.within(figure("previousMedium"), -1, last, "previous medium in snapshot of " + vesselId, "1");
        belief.finished = figure("finished") != 0;
        belief.part = (float) Checks.within(figure("part"), 0.01, 1, "part left in snapshot of " + vesselId, "1");
        belief.mediumK = figure("mediumK");
        belief.mediumSdK = figure("mediumSdK");
        belief.placedMicros = (long) figure("placedMicros");
        belief.up = figure("sumUp");
        belief.down = figure("sumDown");
        belief.strays = (int) figure("strays");
        belief.changes = (int) figure("changes");
        belief.changedMicros = (long) figure("changedMicros");
        belief.changedByK = figure("changedByK");
        belief.readMicros = (long) figure("readMicros");
        belief.innovationK = figure("innovationK");
        belief.innovationVarianceK2 = figure("innovationVarianceK2");
        return belief;
    }

    private static Map<String, Double> figures(Belief belief) {
        double[] values = {
            belief.atMicros,
            belief.t,
            belief.c,
            belief.a,
            belief.b,
            belief.pTT,
            belief.pTc,
            belief.pTa,
            belief.pTb,
            belief.pcc,
            belief.pca,
            belief.pcb,
            belief.paa,
            belief.pab,
            belief.pbb,
            belief.medium,
            belief.previousMedium,
            belief.finished ? 1 : 0,
            belief.part,
            belief.mediumK,
            belief.mediumSdK,
            belief.placedMicros,
            belief.up,
            belief.down,
            belief.strays,
            belief.changes,
            belief.changedMicros,
            belief.changedByK,
            belief.readMicros,
            belief.innovationK,
            belief.innovationVarianceK2
        };
        Map<String, Double> figures = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i++) {
            figures.put(NAMES.get(i), values[i]);
        }
        return figures;
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
        return figures;
    }

    private long said(String name) {
        Long value = said.get(name);
        if (value == null) {
            throw new IllegalArgumentException("snapshot of vessel " + vesselId + ": " + name + " is missing");
        }
        return value;
    }

    private Said restoredSaid() {
        Said rest = new Said(
                null,
                Long.MIN_VALUE,
                0,
                said("openedMicros"),
                said("nowMicros"),
                said("refusedMicros"),
                (int) said("refusedInRow"),
                (int) said("told"),
                said("toldChangeMicros"));
        if (!said.containsKey("goalLowKBits")) {
            return rest;
        }
        Goal goal = new Goal(
                Double.longBitsToDouble(said("goalLowKBits")),
                Double.longBitsToDouble(said("goalHighKBits")),
                said.containsKey("serveAtMicros")
                        ? Optional.of(Checks.instant(said("serveAtMicros")))
                        : Optional.empty());
        return rest.ordered(goal, said("goalMicros"), said("goalIdHash"));
    }
}
