/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.beveragethermal.materials.vessel.FilledVessel;

/** The flow tables of a request: one for each kind of bottle in each place or gear, made when it is first asked for. Thread-safe. */
final class FlowTables {

    /** A place whose air makes less difference to a bottle in the time of a probe is the same all the time [K]. */
    private static final double STEADY_K = 0.02;

    /** Room enough that what is made side by side does not wait for one another. */
    private static final int ROOM = 1024;

    private static final double PROBE_S = 20 * 60;
    private static final int PROBES = 4;

    private final Site site;
    private final Kinds kinds;
    private final FilledVessel probe;
    private final double endS;
    private final ConcurrentMap<Key, FlowTable> tables = new ConcurrentHashMap<>(ROOM);
    private final ConcurrentMap<Start, Optional<Strand>> starts = new ConcurrentHashMap<>(ROOM);
    private final ConcurrentMap<String, Boolean> steady = new ConcurrentHashMap<>();

    private record Key(int kind, String where) {}

    private record Start(FilledVessel bottle, String where) {}

    FlowTables(Site site, List<BottleOrder> orders) {
        this.site = site;
        this.kinds = new Kinds(orders);
        this.probe = kinds.of(orders.get(0).bottle()).model();
        this.endS = orders.stream()
                .mapToDouble(order -> site.seconds(order.finishedAt()))
                .max()
                .orElseThrow();
    }

    /** The kind of a bottle of the request, or of what it is decanted into. */
    Kinds.Kind kind(FilledVessel bottle) {
        return kinds.of(bottle);
    }

    /** What a place does to bottles of a kind. */
    Flow of(Kinds.Kind kind, String where) {
        FlowTable table = tables.computeIfAbsent(
                new Key(kind.number(), where), key -> new FlowTable(site, kind.model(), where, isSteady(where)));
        return new Flow(table, kind.pace());
    }

    /**
     * A flow table at the pace of a bottle.
     *
     * @param table the table
     * @param pace how much faster than its model the bottle goes
     */
    record Flow(FlowTable table, double pace) {

        double after(double fromS, double startK, double lastsS) {
            return table.after(fromS, startK, pace * lastsS);
        }
    }

    /** How a bottle goes on where it starts, also if it goes faster than predicted; empty if it cannot stand there. */
    Optional<Strand> start(FilledVessel bottle, String where) {
        return starts.computeIfAbsent(
                new Start(bottle, where),
                key -> Strand.of(site, bottle, where, 0, 0, (1 + Forecaster.SPEED_SIGMA) * endS));
    }

    private boolean isSteady(String where) {
        return steady.computeIfAbsent(where, id -> site.isFilled(id) || isTheSameAllTheTime(id));
    }

    /** A bottle that comes at different times is as warm each time after a while. */
    private boolean isTheSameAllTheTime(String where) {
        double first = Double.NaN;
        for (int i = 0; i < PROBES; i++) {
            double fromS = Math.max(0, endS - PROBE_S) * i / (PROBES - 1);
            Optional<Strand> strand = Strand.of(site, probe, where, fromS, 0, PROBE_S);
            double here = strand.map(run -> run.kelvins(PROBE_S)).orElse(Double.NaN);
            first = i == 0 ? here : first;
            if (!(Math.abs(here - first) < STEADY_K)) {
                return false;
            }
        }
        return true;
    }
}
