/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.beveragethermal.materials.units.Measures.cubicMetres;

import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * What is poured and drunk in a scene, in order of time, and what each vessel that takes part holds from when on. Volumes are those at
 * 20 °C, so that masses are known before any temperature is.
 */
final class Pours {

    private static final double VOLUMES_AT_K = 293.15;
    /** Less than this part of what is asked is rounding [-]. */
    private static final double ROUNDING = 1e-9;
    /** What is drunk at once where a glass is emptied bit by bit [m³]: a sip, from memory; one of half or twice that gives the same curve. */
    private static final double SIP_M3 = 12e-6;

    private static final int MOST_SIPS = 40;

    /** What is asked for. */
    enum Kind {
        POUR,
        POUR_ALL,
        DRINK,
        /** A part of what is there, whatever has evaporated. */
        SIP,
        DRINK_ALL,
        DRINK_DOWN_TO
    }

    /**
     * One thing that is asked for.
     *
     * @param kind what
     * @param after when, or when it begins
     * @param until when it ends
     * @param from who gives
     * @param to who takes, empty for whoever drinks
     * @param volumeM3 how much at 20 °C, or what is left
     */
    record Asked(Kind kind, Duration after, Duration until, String from, String to, double volumeM3) {

        String words() {
            return (to.isEmpty() ? "drunk from " + from : "poured from " + from + " into " + to) + " after " + after;
        }
    }

    /** A vessel without contents at the start. */
    record EmptyVessel(Vessel vessel, double temperatureK) {}

    /**
     * A mass that leaves a vessel.
     *
     * @param asked what it belongs to
     * @param massKg mass [kg]
     * @param leftKg mass that stays behind if nothing evaporates [kg], 0 if all is taken
     */
    record Moved(Asked asked, double massKg, double leftKg) {}

    private final Map<String, Fillings> fillings;
    private final Map<Duration, List<Moved>> moved;

    private Pours(Map<String, Fillings> fillings, Map<Duration, List<Moved>> moved) {
        this.fillings = fillings;
        this.moved = moved;
    }

    /** What a vessel holds while the pours are followed. */
    private static final class Held {
        private final Vessel vessel;
        private final Optional<FilledVessel> start;
        private final double wallK;
        private final TreeMap<Duration, Double> kilograms = new TreeMap<>();
        private Optional<FilledVessel> origin;

        private Held(Vessel vessel, Optional<FilledVessel> start, double wallK) {
            this.vessel = vessel;
            this.start = start;
            this.wallK = wallK;
            this.origin = start;
            kilograms.put(Duration.ZERO, start.map(FilledVessel::liquidMassKg).orElse(0.0));
        }

        private double kilograms() {
            return kilograms.lastEntry().getValue();
        }

        private double density() {
            return origin.orElseThrow().liquid().density(VOLUMES_AT_K);
        }
    }

    /** Follows what is asked for; refuses what cannot be. */
    static Pours of(Map<String, FilledVessel> filled, Map<String, EmptyVessel> empty, List<Asked> asked) {
        Map<String, Held> held = new LinkedHashMap<>();
        filled.forEach(
                (id, vessel) -> held.put(id, new Held(vessel.vessel(), Optional.of(vessel), vessel.temperatureK())));
        empty.forEach((id, vessel) -> held.put(id, new Held(vessel.vessel(), Optional.empty(), vessel.temperatureK())));
        TreeMap<Duration, List<Moved>> moved = new TreeMap<>();
        List<Asked> all = new ArrayList<>(asked);
        PriorityQueue<Integer> queue = new PriorityQueue<>(
                Comparator.<Integer, Duration>comparing(i -> all.get(i).after()).thenComparing(i -> i));
        for (int i = 0; i < all.size(); i++) {
            queue.add(i);
        }
        while (!queue.isEmpty()) {
            Asked next = all.get(queue.remove());
            if (next.kind() == Kind.DRINK_DOWN_TO) {
                for (Asked sip : sips(next, Objects.requireNonNull(held.get(next.from())))) {
                    all.add(sip);
                    queue.add(all.size() - 1);
                }
            } else {
                moved.computeIfAbsent(next.after(), when -> new ArrayList<>()).add(move(next, held));
            }
        }
        Set<String> taking = new LinkedHashSet<>();
        all.forEach(a -> {
            taking.add(a.from());
            taking.add(a.to());
        });
        Map<String, Fillings> fillings = new LinkedHashMap<>();
        held.forEach((id, vessel) -> {
            if (vessel.origin.isEmpty()) {
                throw new IllegalArgumentException("vessel " + id
                        + " is empty and nothing is poured into it: expected a pour, or a filled vessel");
            }
            if (taking.contains(id)) {
                fillings.put(id, fillings(vessel));
            }
        });
        return new Pours(fillings, moved);
    }

    /** Sips of equal size in the middle of equal parts of the time, so that on average the volume falls along a straight line. */
    private static List<Asked> sips(Asked asked, Held held) {
        requireDrink(asked, held);
        double here = held.kilograms() / held.density();
        double drunk = here - asked.volumeM3();
        new ValidityRange("volume left in " + asked.from() + " after " + asked.until(), 0, here, "m³")
                .require(asked.volumeM3(), "what it holds at the start");
        int count = (int) Math.min(MOST_SIPS, Math.max(1, Math.ceil(drunk / SIP_M3 * (1 - ROUNDING))));
        if (drunk <= ROUNDING * here) {
            throw new IllegalArgumentException(
                    "nothing " + asked.words() + ": expected less left than it holds at the start");
        }
        Duration length = asked.until().minus(asked.after());
        List<Asked> sips = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Duration when = asked.after().plus(length.multipliedBy(2L * i + 1).dividedBy(2L * count));
            boolean last = i == count - 1 && asked.volumeM3() == 0;
            sips.add(new Asked(
                    last ? Kind.DRINK_ALL : Kind.SIP,
                    when.truncatedTo(ChronoUnit.MILLIS),
                    when,
                    asked.from(),
                    "",
                    drunk / count));
        }
        return sips;
    }

    private static void requireDrink(Asked asked, Held from) {
        if (from.kilograms() == 0) {
            throw new IllegalArgumentException("nothing " + asked.words() + ": " + asked.from() + " is empty then");
        }
    }

    private static Moved move(Asked asked, Map<String, Held> held) {
        Held from = Objects.requireNonNull(held.get(asked.from()));
        requireDrink(asked, from);
        double here = from.kilograms();
        boolean all = asked.kind() == Kind.POUR_ALL || asked.kind() == Kind.DRINK_ALL;
        double mass = all ? here : asked.volumeM3() * from.density();
        if (Math.abs(mass - here) <= ROUNDING * here) {
            mass = here;
        }
        if (mass > here) {
            new ValidityRange("volume " + asked.words(), 0, here / from.density(), "m³")
                    .require(asked.volumeM3(), "what it holds then");
        }
        from.kilograms.put(asked.after(), here - mass);
        if (!asked.to().isEmpty()) {
            add(asked, from, Objects.requireNonNull(held.get(asked.to())), mass);
        }
        return new Moved(asked, mass, here - mass);
    }

    private static void add(Asked asked, Held from, Held to, double mass) {
        FilledVessel source = from.origin.orElseThrow();
        if (to.kilograms() > 0 && !to.origin.orElseThrow().liquid().equals(source.liquid())) {
            throw new IllegalArgumentException(source.liquid().name() + " " + asked.words() + ", which holds "
                    + to.origin.orElseThrow().liquid().name()
                    + ": expected the same drink; mixing drinks is not described");
        }
        if (to.origin.isPresent() && !to.origin.get().liquid().equals(source.liquid())) {
            throw new IllegalArgumentException(source.liquid().name() + " " + asked.words() + ", which held "
                    + to.origin.get().liquid().name() + " before: expected a vessel of its own for each drink");
        }
        double after = to.kilograms() + mass;
        new ValidityRange("volume in " + asked.to() + " after " + asked.after(), 0, to.vessel.brimfulVolumeM3(), "m³")
                .require(after / from.density(), "brimful volume of " + to.vessel.name());
        to.kilograms.put(asked.after(), after);
        if (to.origin.isEmpty()) {
            to.origin = Optional.of(filled(to.vessel, source, mass));
        }
    }

    /** Levels are those that the drink has at the temperature at which it started. */
    private static FilledVessel filled(Vessel vessel, FilledVessel source, double massKg) {
        return vessel.filledWith(
                source.liquid(),
                cubicMetres(Math.min(
                        vessel.brimfulVolumeM3(), massKg / source.liquid().density(VOLUMES_AT_K))),
                SiValues.celsiusOf(source.temperatureK()));
    }

    private static Fillings fillings(Held held) {
        FilledVessel origin = held.origin.orElseThrow();
        TreeMap<Duration, Optional<FilledVessel>> byTime = new TreeMap<>();
        held.kilograms.forEach((time, mass) -> byTime.put(
                time,
                mass == 0
                        ? Optional.empty()
                        : held.start
                                .filter(start -> start.liquidMassKg() == mass)
                                .or(() -> Optional.of(filled(held.vessel, origin, mass)))));
        return new Fillings(byTime, origin, held.start.isPresent(), held.wallK);
    }

    /** What a vessel holds from when on; empty if nothing is poured or drunk from or into it. */
    Optional<Fillings> fillings(String vesselId) {
        return Optional.ofNullable(fillings.get(vesselId));
    }

    /** Times at which something is poured or drunk. */
    Set<Duration> times() {
        return moved.keySet();
    }

    /** What is moved at a time, in the order in which it was asked for. */
    List<Moved> moved(Duration time) {
        return moved.getOrDefault(time, List.of());
    }

    /** Everything that is moved, in order of time. */
    List<Moved> moved() {
        return moved.values().stream().flatMap(List::stream).toList();
    }
}
