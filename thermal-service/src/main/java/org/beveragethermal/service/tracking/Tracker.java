/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.beveragethermal.service.tracking.TrackedVessel.Said;
import org.beveragethermal.service.tracking.TrackingEvent.Finished;
import org.beveragethermal.service.tracking.TrackingEvent.GearChanged;
import org.beveragethermal.service.tracking.TrackingEvent.IceAdded;
import org.beveragethermal.service.tracking.TrackingEvent.Moved;
import org.beveragethermal.service.tracking.TrackingEvent.Opened;
import org.beveragethermal.service.tracking.TrackingEvent.Ordered;
import org.beveragethermal.service.tracking.TrackingEvent.Placed;
import org.beveragethermal.service.tracking.TrackingEvent.Poured;
import org.beveragethermal.service.tracking.TrackingEvent.Reading;
import org.beveragethermal.service.tracking.TrackingEvent.TimePassed;

/**
 * Tracking as a pure function: a vessel and an event give the next vessel, instructions, alerts and notes. It reads no clock, starts no
 * thread and keeps nothing.
 *
 * <p>An event that is known, too old or of no use changes nothing and leaves a note; nothing that a sensor or a till sends makes it throw.
 *
 * <p>The clocks of sensors may be wrong by years. A reading further ahead of the latest time heard of than {@link TrackingRules#mostAhead}
 * is held aside and noted. It is used as soon as any other event comes from that time, or {@link TrackingEvent.TimePassed} tells it; a
 * second reading from there will do only where no such event has ever told the time. An event from before shows that the clock of the
 * reading was wrong: the reading is let go, which is noted too. Of all events but readings the time is trusted.
 */
public final class Tracker {

    private final Map<String, TrackedModel> models;
    private final TrackingRules rules;

    private Tracker(Map<String, TrackedModel> models, TrackingRules rules) {
        this.models = Map.copyOf(models);
        this.rules = rules;
    }

    /**
     * A tracker of some kinds of vessels.
     *
     * @param models kinds of vessels, not modified
     * @param rules when readings are doubted and when something is said
     * @return the tracker
     * @throws IllegalArgumentException if there is no model or two have one name
     */
    public static Tracker of(List<TrackedModel> models, TrackingRules rules) {
        Map<String, TrackedModel> byName = new HashMap<>();
        for (TrackedModel model : models) {
            if (byName.put(model.name(), model) != null) {
                throw new IllegalArgumentException("two models are named " + model.name() + ": expected one");
            }
        }
        if (byName.isEmpty()) {
            throw new IllegalArgumentException("no model: expected one for each kind of vessel");
        }
        return new Tracker(byName, rules);
    }

    /**
     * Kinds of vessels by name.
     *
     * @return models
     */
    public Map<String, TrackedModel> models() {
        return models;
    }

    /**
     * When readings are doubted and when something is said.
     *
     * @return the rules
     */
    public TrackingRules rules() {
        return rules;
    }

    /**
     * The next state.
     *
     * @param vessel the vessel that the event is about; empty if it is not tracked yet
     * @param event what happened
     * @return what it makes of the vessel
     * @throws IllegalArgumentException if the event is about another vessel
     */
    public Outcome apply(Optional<TrackedVessel> vessel, TrackingEvent event) {
        if (vessel.isEmpty()) {
            return begin(event);
        }
        TrackedVessel known = vessel.get();
        if (!known.id.equals(event.vesselId())) {
            throw new IllegalArgumentException(
                    "event " + event.id() + " is about vessel " + event.vesselId() + ": expected " + known.id);
        }
        boolean reads = event instanceof Reading && !known.head.finished;
        if (reads && isAhead(known, known.said.nowMicros(), event)) {
            return ahead(known, (Reading) event);
        }
        Reading aside = known.said.aside();
        if (aside == null) {
            return used(known, event);
        }
        long micros = Checks.micros(event.at());
        if (!(event instanceof Placed) && !isAhead(known, micros, aside)) {
            return usedAfter(aside, known.with(known.said.now(micros)), event);
        }
        Outcome outcome = used(known, event);
        boolean letGo =
                outcome.vessel().map(after -> after.said.aside() == null).orElse(false);
        return letGo ? outcome.and(Outcome.unchanged(outcome.vessel(), letGo(aside, event))) : outcome;
    }

    /** Whether an event is too far ahead of a time to be used. */
    private static boolean isAhead(TrackedVessel known, long micros, TrackingEvent event) {
        return Checks.micros(event.at()) > micros + known.rules.mostAhead().toNanos() / 1000;
    }

    /** Uses a reading that was held aside, and the event that showed that its time had come. */
    private Outcome usedAfter(Reading aside, TrackedVessel then, TrackingEvent event) {
        Outcome before = used(then, aside);
        return before.and(apply(before.vessel(), event));
    }

    /** A reading ahead of all else: held aside, unless the one before agrees and nobody else tells the time. */
    private Outcome ahead(TrackedVessel known, Reading reading) {
        Optional<TrackedVessel> same = Optional.of(known);
        if (!known.model.sensor().accepts(reading.temperatureK())) {
            return Outcome.unchanged(same, notAReading(known, reading));
        }
        Reading aside = known.said.aside();
        if (aside != null && aside.id().equals(reading.id())) {
            return Outcome.unchanged(same, note(reading, Note.Code.DUPLICATE, ""));
        }
        if (aside != null
                && !known.said.clocked()
                && !isAhead(known, Checks.micros(reading.at()), aside)
                && !isAhead(known, Checks.micros(aside.at()), reading)) {
            return usedAfter(aside, known.with(known.said.now(Checks.micros(aside.at()))), reading);
        }
        String detail =
                reading.at() + ": expected it to be at most " + known.rules.mostAhead() + " after " + known.now();
        Note held = note(reading, Note.Code.AHEAD, detail);
        return new Outcome(
                Optional.of(known.with(known.said.aside(reading))),
                List.of(),
                List.of(),
                aside == null ? List.of(held) : List.of(letGo(aside, reading), held));
    }

    private static Note letGo(Reading aside, TrackingEvent event) {
        return note(
                aside, Note.Code.LET_GO, aside.at() + ": event " + event.id() + " of " + event.at() + " came after it");
    }

    private Outcome used(TrackedVessel known, TrackingEvent event) {
        Optional<TrackedVessel> vessel = Optional.of(known);
        long micros = Checks.micros(event.at());
        if (event instanceof Placed placed) {
            return Outcome.unchanged(vessel, alreadyPlaced(known, placed));
        }
        if (event instanceof TimePassed) {
            Said said = known.said.now(micros);
            return looked(known.with(micros > known.said.nowMicros() ? said.toldTheTime() : said), List.of());
        }
        if (event instanceof Ordered ordered) {
            return ordered(known, ordered, micros);
        }
        if (event instanceof Opened) {
            boolean before = known.said.openedMicros() <= micros;
            return looked(
                    known.with(known.said.opened(micros).now(micros)),
                    before ? List.of(note(event, Note.Code.DUPLICATE, "")) : List.of());
        }
        if (event instanceof Reading reading && !known.model.sensor().accepts(reading.temperatureK())) {
            return refused(known, reading, micros);
        }
        if (event instanceof Moved moved && !known.model.knows(moved.mediumId())) {
            return Outcome.unchanged(
                    vessel, note(event, Note.Code.UNKNOWN_MEDIUM, media(moved.mediumId(), known.model)));
        }
        return kept(known, event, entry(known.model, event, micros));
    }

    private Outcome begin(TrackingEvent event) {
        if (!(event instanceof Placed placed)) {
            return Outcome.unchanged(
                    Optional.empty(), note(event, Note.Code.UNKNOWN_VESSEL, "expected it to be placed first"));
        }
        TrackedModel model = models.get(placed.modelName());
        if (model == null) {
            return Outcome.unchanged(
                    Optional.empty(),
                    note(
                            event,
                            Note.Code.UNKNOWN_MODEL,
                            placed.modelName() + ": expected one of "
                                    + models.keySet().stream().sorted().toList()));
        }
        if (!model.knows(placed.mediumId())) {
            return Outcome.unchanged(
                    Optional.empty(), note(event, Note.Code.UNKNOWN_MEDIUM, media(placed.mediumId(), model)));
        }
        long micros = Checks.micros(placed.at());
        Belief belief =
                Belief.placed(model, model.indexOf(placed.mediumId()), micros, placed.temperatureK(), placed.sdK());
        TrackedVessel vessel = new TrackedVessel(
                placed.vesselId(),
                model,
                rules,
                belief,
                belief,
                Kept.NONE,
                false,
                Kept.hash(placed.id()),
                Said.nothing(micros));
        return looked(vessel, List.of());
    }

    private static String media(String given, TrackedModel model) {
        return given + ": expected one of "
                + model.laws().stream().map(MediumLaw::mediumId).toList();
    }

    private static Note note(TrackingEvent event, Note.Code code, String detail) {
        return new Note(event.id(), event.vesselId(), code, detail);
    }

    private static Note alreadyPlaced(TrackedVessel known, Placed placed) {
        return Kept.hash(placed.id()) == known.placedIdHash
                ? note(placed, Note.Code.DUPLICATE, "")
                : note(placed, Note.Code.ALREADY_PLACED, "expected it to be moved");
    }

    private static Outcome ordered(TrackedVessel known, Ordered event, long micros) {
        Said said = known.said;
        long hash = Kept.hash(event.id());
        if (micros < said.goalMicros() || (micros == said.goalMicros() && hash <= said.goalIdHash())) {
            boolean same = hash == said.goalIdHash();
            return Outcome.unchanged(
                    Optional.of(known),
                    note(event, same ? Note.Code.DUPLICATE : Note.Code.TOO_LATE, "a later order counts"));
        }
        return looked(known.with(said.ordered(event.goal(), micros, hash).now(micros)), List.of());
    }

    private static Note notAReading(TrackedVessel known, Reading reading) {
        Sensor sensor = known.model.sensor();
        String detail = String.format(
                Locale.ROOT,
                "%.2f °C: expected %.1f to %.1f °C and none of %s °C",
                reading.temperatureK() - Checks.ZERO_C_IN_K,
                sensor.coldestK() - Checks.ZERO_C_IN_K,
                sensor.warmestK() - Checks.ZERO_C_IN_K,
                sensor.sentinelsC());
        return note(reading, Note.Code.NOT_A_READING, detail);
    }

    private static Outcome refused(TrackedVessel known, Reading reading, long micros) {
        Note note = notAReading(known, reading);
        Said said = known.said;
        if (micros <= said.refusedMicros()) {
            return Outcome.unchanged(Optional.of(known), note);
        }
        int inRow = known.head.readMicros > said.refusedMicros() ? 1 : said.refusedInRow() + 1;
        return looked(known.with(said.refused(micros, inRow).now(micros)), List.of(note));
    }

    private static Kept.Entry entry(TrackedModel model, TrackingEvent event, long micros) {
        long hash = Kept.hash(event.id());
        if (event instanceof Reading reading) {
            return new Kept.Entry(micros, hash, Kept.READING, reading.temperatureK(), 0);
        }
        if (event instanceof Moved moved) {
            return new Kept.Entry(micros, hash, Kept.MOVED, model.indexOf(moved.mediumId()), 0);
        }
        if (event instanceof Poured poured) {
            return new Kept.Entry(micros, hash, Kept.POURED, poured.partLeft(), 0);
        }
        if (event instanceof GearChanged changed) {
            return new Kept.Entry(micros, hash, Kept.GEAR_CHANGED, changed.mediumK(), (float) changed.sdK());
        }
        if (event instanceof IceAdded) {
            return new Kept.Entry(micros, hash, Kept.ICE_ADDED, 0, 0);
        }
        if (event instanceof Finished) {
            return new Kept.Entry(micros, hash, Kept.FINISHED, 0, 0);
        }
        throw new IllegalStateException("event of another kind " + event);
    }

    /** Puts an event where it belongs in time and makes the belief anew from there. */
    private static Outcome kept(TrackedVessel known, TrackingEvent event, Kept.Entry entry) {
        Optional<TrackedVessel> same = Optional.of(known);
        if (known.kept.holds(entry)) {
            return Outcome.unchanged(same, note(event, Note.Code.DUPLICATE, ""));
        }
        if (entry.atMicros() < known.base.atMicros || (known.folded && entry.atMicros() == known.base.atMicros)) {
            return Outcome.unchanged(
                    same,
                    note(event, Note.Code.TOO_LATE, "expected it to be after " + Checks.instant(known.base.atMicros)));
        }
        if (known.head.finished && entry.atMicros() >= known.head.atMicros) {
            return Outcome.unchanged(same, note(event, Note.Code.FINISHED, ""));
        }
        int place = known.kept.place(entry);
        int size = known.kept.size();
        int dropped = size + 1 > known.rules.kept() ? 1 : 0;
        Kept all = known.kept.with(entry, place);
        Belief base = known.base;
        boolean used = true;
        if (dropped == 1) {
            base = base.copy();
            used = tell(known, base, all, 0) || place > 0;
        }
        Belief head = place == size ? known.head.copy() : base.copy();
        for (int i = place == size ? size : dropped; i <= size; i++) {
            boolean here = tell(known, head, all, i);
            used = i == place ? here : used;
        }
        Kept left = dropped == 1 ? all.withoutFirst() : all;
        Said said = known.said.now(entry.atMicros());
        if (entry.kind() == Kept.READING && entry.atMicros() > said.refusedMicros() && said.refusedInRow() > 0) {
            said = said.refused(said.refusedMicros(), 0);
        }
        if (head.medium != known.head.medium) {
            said = said.told(said.told() & ~Instruction.Code.OF_PLACES, said.toldChangeMicros());
        }
        TrackedVessel next = new TrackedVessel(
                known.id,
                known.model,
                known.rules,
                base,
                head,
                left,
                known.folded || dropped == 1,
                known.placedIdHash,
                said);
        return looked(
                next,
                used
                        ? List.of()
                        : List.of(note(
                                event,
                                Note.Code.STRAY_READING,
                                String.format(
                                        Locale.ROOT,
                                        "%.2f °C is too far from what was expected.",
                                        entry.value() - Checks.ZERO_C_IN_K))));
    }

    /** Tells a belief the kept event of a place; false if it is a reading that was not used. */
    static boolean tell(TrackedVessel vessel, Belief belief, Kept kept, int i) {
        if (belief.finished) {
            return true;
        }
        TrackedModel model = vessel.model;
        belief.predict(model, kept.atMicros(i));
        switch (kept.kind(i)) {
            case Kept.READING -> {
                return belief.read(model, vessel.rules, kept.value(i));
            }
            case Kept.MOVED -> belief.moved(model, (int) kept.value(i));
            case Kept.POURED -> belief.poured(kept.value(i));
            case Kept.GEAR_CHANGED -> belief.gearChanged(kept.value(i), kept.sd(i));
            case Kept.ICE_ADDED -> belief.iceAdded(model);
            default -> belief.finished = true;
        }
        return true;
    }

    private static Outcome looked(TrackedVessel after, List<Note> notes) {
        return new Watch(after).look(notes);
    }
}
