/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.beveragethermal.core.film.CondensingFilm;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.core.solver.Trajectory;

/**
 * What moist air left on a vessel in the course of a run: the latent heat of the ledger over that of the surfaces.
 *
 * @param dewKg water [kg]
 * @param frostKg frost [kg]
 * @param fromS when it begins [s], to a part of the run
 * @param toS when it ends [s], alike
 */
record CondensedWater(double dewKg, double frostKg, double fromS, double toS) {

    /**
     * Surfaces are looked at in the middle of so many parts of each stay, which get longer from the first to the last because most
     * condenses soon after a move; the latent heat of water changes by 0.1 % per kelvin.
     */
    private static final int PARTS = 48;

    private static final double GRADING = 3;

    private static final double ZERO_CELSIUS_K = 273.15;
    /** Less than this is no drop worth a note [kg]. */
    private static final double NOTEWORTHY_KG = 1e-4;

    /** Of a vessel that consists of some nodes; empty if nothing condensed. */
    static Optional<CondensedWater> on(List<Node> nodes, List<Double> startsS, Trajectory run) {
        Set<End> own = new HashSet<>(nodes);
        if (startsS.stream().allMatch(start -> condensing(own, run, start).isEmpty())) {
            return Optional.empty();
        }
        double heat = latentHeatJ(own, run);
        double weight = 0;
        double dew = 0;
        double frost = 0;
        double from = 0;
        double to = 0;
        double[] edges = edges(startsS, run.endS());
        for (int part = 0; part + 1 < edges.length; part++) {
            double seconds = edges[part + 1] - edges[part];
            double timeS = edges[part] + 0.5 * seconds;
            double before = weight;
            for (JunctionPath path : condensing(own, run, timeS)) {
                PathEvaluation e = evaluated(path, run, timeS);
                double surfaceK = path.surfaceTemperatureK(e);
                double heatOfPart = seconds * path.heatW(e, linkOf(path));
                double mass = heatOfPart / CondensingFilm.latentHeatJPerKg(surfaceK);
                weight += heatOfPart;
                dew += surfaceK >= ZERO_CELSIUS_K ? mass : 0;
                frost += surfaceK < ZERO_CELSIUS_K ? mass : 0;
            }
            if (weight > before) {
                from = before == 0 ? edges[part] : from;
                to = edges[part + 1];
            }
        }
        return heat > 0 && weight > 0
                ? Optional.of(new CondensedWater(heat * dew / weight, heat * frost / weight, from, to))
                : Optional.empty();
    }

    /** Edges of the parts of all stays, from the first start to the end of the run. */
    private static double[] edges(List<Double> startsS, double endS) {
        List<Double> starts = startsS.stream()
                .filter(start -> start < endS)
                .distinct()
                .sorted()
                .toList();
        double[] edges = new double[starts.size() * PARTS + 1];
        for (int stay = 0; stay < starts.size(); stay++) {
            double start = starts.get(stay);
            double length = (stay + 1 < starts.size() ? starts.get(stay + 1) : endS) - start;
            for (int part = 0; part < PARTS; part++) {
                edges[stay * PARTS + part] = start + length * Math.pow((double) part / PARTS, GRADING);
            }
        }
        edges[starts.size() * PARTS] = endS;
        return edges;
    }

    /** Junctions of the vessel's own surfaces, each of which begins with a node of the vessel, with moist air. */
    private static List<JunctionPath> condensing(Set<End> own, Trajectory run, double timeS) {
        List<JunctionPath> found = new ArrayList<>();
        for (Path path : run.paths(timeS)) {
            if (path instanceof JunctionPath junction
                    && own.contains(junction.ends().get(0))
                    && linkOf(junction) >= 0) {
                found.add(junction);
            }
        }
        return found;
    }

    /** A path alone, without the run's multipliers: they do not matter to a mean, and a whole network is a thousand times the work. */
    private static PathEvaluation evaluated(JunctionPath path, Trajectory run, double timeS) {
        List<Double> temperatures = new ArrayList<>();
        List<Double> amounts = new ArrayList<>();
        for (End end : path.ends()) {
            if (end instanceof Node node) {
                temperatures.add(run.temperatureK(node, timeS));
                for (int i = 0; i < node.store().amountCount(); i++) {
                    amounts.add(run.amount(node, i, timeS));
                }
            } else if (end instanceof Boundary boundary) {
                temperatures.add(boundary.temperatureK().at(timeS));
            }
        }
        PathEvaluation e = new PathEvaluation(path);
        e.evaluate(path, timeS, values(temperatures), values(amounts));
        return e;
    }

    private static double[] values(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Index of the link that brings latent heat, -1 if there is none. */
    private static int linkOf(JunctionPath path) {
        for (int i = 0; i < path.links().size(); i++) {
            if (path.links().get(i).mechanism().equals(CondensingFilm.MECHANISM)) {
                return i;
            }
        }
        return -1;
    }

    /** Latent heat that the vessel received [J]; a junction books from its first link, the vessel, to the others. */
    private static double latentHeatJ(Set<End> own, Trajectory run) {
        Set<String> names = new HashSet<>();
        own.forEach(end -> names.add(end.name()));
        double heat = 0;
        for (LedgerEntry entry : run.ledger(run.endS()).entries()) {
            if (entry.mechanism().equals(CondensingFilm.MECHANISM) && names.contains(entry.from())) {
                heat -= entry.heatJ();
            }
        }
        return heat;
    }

    /** What to tell the user, if there is enough of it. */
    Optional<String> note() {
        double total = dewKg + frostKg;
        if (total < NOTEWORTHY_KG) {
            return Optional.empty();
        }
        String frost = frostKg < NOTEWORTHY_KG
                ? ""
                : String.format(
                        Locale.ROOT,
                        ", %.1f g of it as frost, whose layer would insulate and is left out",
                        1000 * frostKg);
        return Optional.of(String.format(
                Locale.ROOT,
                "%.1f g of water condensed on the vessel from %.0f to %.0f min; it is taken to run off%s",
                1000 * total,
                fromS / 60,
                toS / 60,
                frost));
    }
}
