/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.beveragethermal.materials.vessel.FilledVessel;

/** The flow tables of a request: one for each kind of bottle in each place or gear, made when it is first asked for. Thread-safe. */
final class FlowTables {

    /** Temperature at which kinds of bottles are compared. */
    private static final double COMPARED_K = 293.15;
    /** A place whose air makes less difference to a bottle in the time of a probe is the same all the time [K]. */
    private static final double STEADY_K = 0.02;

    private static final double PROBE_S = 20 * 60;
    private static final int PROBES = 4;

    private final Site site;
    private final FilledVessel probe;
    private final double endS;
    private final ConcurrentMap<Key, FlowTable> tables = new ConcurrentHashMap<>();
    private final ConcurrentMap<String, Boolean> steady = new ConcurrentHashMap<>();

    private record Key(FilledVessel kind, String where) {}

    FlowTables(Site site, FilledVessel probe, double endS) {
        this.site = site;
        this.probe = kind(probe);
        this.endS = endS;
    }

    /** What a bottle has in common with all that differ from it in temperature only. */
    static FilledVessel kind(FilledVessel bottle) {
        return Strand.at(bottle, COMPARED_K).orElse(bottle);
    }

    FlowTable of(FilledVessel kind, String where) {
        return tables.computeIfAbsent(new Key(kind, where), key -> new FlowTable(site, kind, where, isSteady(where)));
    }

    private boolean isSteady(String where) {
        return Objects.requireNonNull(
                steady.computeIfAbsent(where, id -> site.isFilled(id) || isTheSameAllTheTime(id)));
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
