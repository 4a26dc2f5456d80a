/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * What a place or a piece of gear makes of one kind of bottle in a time, from any temperature at any moment.
 *
 * <p>Predictions begin at temperatures on a grid; between two of them what comes out lies between as what goes in does. Where the air
 * changes they begin at every second hour too. A bath is taken as filled a quarter of an hour before, or just filled, or between. Each prediction
 * is run when it is first asked for. Thread-safe; the order of questions makes no difference.
 */
final class FlowTable {

    private static final double GRID_K = 8;
    private static final double COLDEST_K = 273.15 - 4 * GRID_K;
    private static final int GRID = 13;
    private static final double EDITION_S = 2 * 3600;
    private static final double LONGEST_IN_AIR_S = 6 * 3600;
    private static final double LONGEST_IN_BATH_S = 2 * 3600;
    /** Editions of a bath: just filled, and as it is when its water is cold. */
    private static final int SETTLED = 1;

    private final Site site;
    private final FilledVessel kind;
    private final String where;
    private final boolean filled;
    private final boolean steady;
    private final double longestS;
    private final ConcurrentMap<Integer, Optional<Strand>> strands = new ConcurrentHashMap<>(16 * GRID);

    FlowTable(Site site, FilledVessel kind, String where, boolean steady) {
        this.site = site;
        this.kind = kind;
        this.where = where;
        this.filled = site.isFilled(where);
        this.steady = steady;
        this.longestS = filled ? LONGEST_IN_BATH_S : LONGEST_IN_AIR_S;
    }

    /** Whether such a bottle can stand there at about its own temperature. */
    boolean fits() {
        int below = cell(kind.temperatureK());
        return strand(filled ? SETTLED : 0, below).isPresent()
                || strand(filled ? SETTLED : 0, below + 1).isPresent();
    }

    /**
     * Mean temperature after a stay.
     *
     * @param fromS when it begins on the plan's clock [s]
     * @param startK temperature then
     * @param lastsS how long it lasts [s]
     */
    double after(double fromS, double startK, double lastsS) {
        if (!(lastsS > 0)) {
            return startK;
        }
        if (lastsS > longestS) {
            return after(fromS + longestS, after(fromS, startK, longestS), lastsS - longestS);
        }
        double edition = filled ? Math.min(SETTLED, fromS / Site.FILLED_BEFORE_S) : steady ? 0 : fromS / EDITION_S;
        int first = (int) edition;
        double early = between(first, startK, lastsS);
        double part = edition - first;
        return part == 0 ? early : early + part * (between(first + 1, startK, lastsS) - early);
    }

    private static int cell(double kelvins) {
        return (int) Math.min(GRID - 2.0, Math.max(0, (kelvins - COLDEST_K) / GRID_K));
    }

    private double between(int edition, double startK, double lastsS) {
        int low = cell(startK);
        int high = low + 1;
        // Where the bottle cannot begin so cold or so warm, the nearest two at which it can go on in a straight line.
        while (high < GRID - 1 && strand(edition, low).isEmpty()) {
            low++;
            high++;
        }
        while (low > 0 && strand(edition, high).isEmpty()) {
            low--;
            high--;
        }
        Optional<Strand> below = strand(edition, low);
        Optional<Strand> above = strand(edition, high);
        if (below.isEmpty() || above.isEmpty()) {
            return startK;
        }
        double part = (Math.max(COLDEST_K, startK) - COLDEST_K) / GRID_K - low;
        double fromBelow = below.get().kelvins(lastsS);
        return fromBelow + part * (above.get().kelvins(lastsS) - fromBelow);
    }

    private Optional<Strand> strand(int edition, int node) {
        return strands.computeIfAbsent(GRID * edition + node, key -> predicted(edition, node));
    }

    private Optional<Strand> predicted(int edition, int node) {
        double fromS = filled ? 0 : edition * EDITION_S;
        double ageS = filled && edition == SETTLED ? Site.FILLED_BEFORE_S : 0;
        return Strand.at(kind, COLDEST_K + GRID_K * node)
                .flatMap(bottle -> Strand.of(site, bottle, where, fromS, ageS, longestS));
    }
}
