/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.beveragethermal.core.film.CondensingFilm;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.core.solver.Trajectory;

/**
 * What moist air left on a vessel in the course of a run: the latent heat of the ledger over that of each surface at its temperature.
 *
 * @param dewKg water [kg]
 * @param frostKg frost [kg]
 * @param fromS when it begins [s], to a part of the run
 * @param toS when it ends [s]
 */
record CondensedWater(double dewKg, double frostKg, double fromS, double toS) {

    /** The run is looked at in so many parts; the latent heat of water changes by 0.1 % per kelvin. */
    private static final int PARTS = 48;

    private static final double ZERO_CELSIUS_K = 273.15;
    /** Less than this is no drop worth a note [kg]. */
    private static final double NOTEWORTHY_KG = 1e-4;

    /** Of a vessel that consists of some nodes; empty if no air with moisture touches it. */
    static Optional<CondensedWater> on(List<Node> nodes, List<Double> startsS, Trajectory run) {
        if (startsS.stream().noneMatch(start -> run.paths(start).stream().anyMatch(CondensedWater::isMoist))) {
            return Optional.empty();
        }
        Set<String> own = new HashSet<>();
        nodes.forEach(node -> own.add(node.name()));
        double dew = 0;
        double frost = 0;
        double from = run.endS();
        double to = 0;
        Map<String, Double> before = Map.of();
        for (int part = 1; part <= PARTS; part++) {
            double startS = run.endS() * (part - 1) / PARTS;
            double endS = run.endS() * part / PARTS;
            Map<String, Double> after = heats(own, run, endS);
            for (Map.Entry<String, Double> path : after.entrySet()) {
                double heat = path.getValue() - before.getOrDefault(path.getKey(), 0.0);
                if (heat > 0) {
                    double surfaceK = surfaceK(path.getKey(), run, 0.5 * (startS + endS));
                    double mass = heat / CondensingFilm.latentHeatJPerKg(surfaceK);
                    dew += surfaceK >= ZERO_CELSIUS_K ? mass : 0;
                    frost += surfaceK < ZERO_CELSIUS_K ? mass : 0;
                    from = Math.min(from, startS);
                    to = endS;
                }
            }
            before = after;
        }
        return Optional.of(new CondensedWater(dew, frost, from, to));
    }

    private static boolean isMoist(Path path) {
        return path.accounts().stream().anyMatch(account -> account.mechanism().equals(CondensingFilm.MECHANISM));
    }

    /** Latent heat that each path brought to the vessel up to a time [J]; a junction books from its first link, the vessel. */
    private static Map<String, Double> heats(Set<String> own, Trajectory run, double timeS) {
        Map<String, Double> heats = new HashMap<>();
        for (LedgerEntry entry : run.ledger(timeS).entries()) {
            if (entry.mechanism().equals(CondensingFilm.MECHANISM) && own.contains(entry.from())) {
                heats.merge(entry.path(), -entry.heatJ(), Double::sum);
            }
        }
        return heats;
    }

    /** Temperature of the surface of a path, which may have been cut just before or after; then 0 °C. */
    private static double surfaceK(String name, Trajectory run, double timeS) {
        for (Path path : run.paths(timeS)) {
            if (path.name().equals(name) && path instanceof JunctionPath junction) {
                return junction.surfaceTemperatureK(run.evaluate(name, timeS));
            }
        }
        return ZERO_CELSIUS_K;
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
