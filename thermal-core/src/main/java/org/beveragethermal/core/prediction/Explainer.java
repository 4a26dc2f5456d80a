/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.beveragethermal.core.film.Film;
import org.beveragethermal.core.film.FilmState;
import org.beveragethermal.core.layered.SliceFilm;
import org.beveragethermal.core.layered.SliceFilms;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.core.solver.Trajectory;

/** Takes a run apart into resistances, heat accounts and advice. */
record Explainer(Trajectory trajectory, Contents contents, double heatCapacityJPerK, List<WallBand> bands) {

    /** Below this a link is not worth a line [W/K]. */
    private static final double NOTHING_W_PER_K = 1e-6;
    /** Below this a temperature difference says nothing about a resistance [K]. */
    private static final double NO_DRIVE_K = 1e-6;
    /** Advice is about moments at which at least this drives heat [K]. */
    private static final double ADVICE_DRIVE_K = 0.5;
    /** Moments in a stay at which advice is taken, as parts of its length. */
    private static final List<Double> ADVICE_MOMENTS = List.of(0.125, 0.5, 0.875);

    List<Explanation.Band> explainedBands(double timeS) {
        return withLiquid().stream()
                .filter(band -> band.slice() < 0
                        ? isWetted(band, timeS)
                        : !films(band, timeS).isEmpty())
                .map(band -> explain(band, timeS))
                .toList();
    }

    /** Whether the contents reach a band then: their level may have fallen. */
    private boolean isWetted(WallBand band, double timeS) {
        return junctions(band, timeS).stream().anyMatch(path -> path.name().equals(band.insidePath()));
    }

    private List<WallBand> withLiquid() {
        return bands.stream()
                .filter(band -> !band.insidePath().isEmpty() || band.slice() >= 0)
                .toList();
    }

    private Explanation.Band explain(WallBand band, double timeS) {
        double outerWall = 0;
        double outerTotal = 0;
        double conductance = 0;
        double weighted = 0;
        double innerWall = 0;
        List<Resistance> parts = new ArrayList<>();
        List<HeatInput> heats = new ArrayList<>();
        List<Resistance> series = new ArrayList<>();
        for (JunctionPath path : junctions(band, timeS)) {
            PathEvaluation e = trajectory.evaluate(path.name(), timeS);
            if (path.name().equals(band.insidePath())) {
                series.add(
                        contents.nodes().size() > 1
                                ? conductionInside(path, e, timeS)
                                : resistance("inside film", path, e, 0));
                innerWall = 1 / path.conductanceWPerK(e, 1);
                continue;
            }
            double face = 0;
            for (int i = 1; i < path.links().size(); i++) {
                JunctionPath.Link link = path.links().get(i);
                String name = link.end().name() + ", " + link.mechanism();
                if (path.bringsHeatOfItsOwn(e, i)) {
                    heats.add(new HeatInput(name, path.heatW(e, i)));
                    continue;
                }
                double g = path.conductanceWPerK(e, i);
                if (g > NOTHING_W_PER_K) {
                    face += g;
                    weighted += g * e.temperatureK(i);
                    parts.add(resistance(name, path, e, i));
                }
            }
            double half = path.conductanceWPerK(e, 0);
            if (face > 0 && half > 0) {
                conductance += face;
                outerWall += half;
                outerTotal += 1 / (1 / half + 1 / face);
            }
        }
        List<SliceFilm> films = band.slice() >= 0 ? films(band, timeS) : List.of();
        if (!films.isEmpty()) {
            innerWall = 1
                    / films.stream()
                            .mapToDouble(film -> 1 / film.wallKelvinPerWatt())
                            .sum();
            series.add(alongWall(films, innerWall));
        }
        boolean joined = outerTotal > 0;
        double outerHalf = band.layers().isEmpty() ? (joined ? 1 / outerWall : 0) : band.outerHalfKelvinPerWatt();
        series.add(new Resistance("wall", innerWall + outerHalf, 0, 0, 0, 0, ""));
        series.addAll(band.layers());
        double outside = joined ? 1 / outerTotal - 1 / outerWall : 1 / NOTHING_W_PER_K;
        series.add(parts.size() == 1 && joined ? parts.get(0) : new Resistance("outside", outside, 0, 0, 0, 0, ""));
        double medium = joined ? weighted / conductance : trajectory.temperatureK(band.wall(), timeS);
        return new Explanation.Band(band.name(), medium, series, parts, films, heats);
    }

    /** The films that run along a band: one beside its own slice, on its mouth perhaps several or none. */
    private List<SliceFilm> films(WallBand band, double timeS) {
        for (Path path : trajectory.paths(timeS)) {
            if (path instanceof SliceFilms films && path.ends().contains(band.wall())) {
                return films.describe(trajectory.evaluate(path.name(), timeS), band.wall());
            }
        }
        return List.of();
    }

    /** Films side by side, each with its part of the inner half of the wall; the numbers are those of the strongest. */
    private static Resistance alongWall(List<SliceFilm> films, double innerWall) {
        SliceFilm strongest = films.stream()
                .max(Comparator.comparingDouble(film -> Math.abs(film.heatW())))
                .orElseThrow();
        double together = 1
                / films.stream()
                        .mapToDouble(film -> 1 / (film.kelvinPerWatt() + film.wallKelvinPerWatt()))
                        .sum();
        return resistance("film along wall", together - innerWall, strongest.state());
    }

    /**
     * From the mean of shells to the wall's inner surface. Where heat and mean difference do not agree, as after a change of
     * surroundings, the value of a cylinder that loses heat evenly, 1/(8 π k L): the mean of the parabola over its flux.
     */
    private Resistance conductionInside(JunctionPath path, PathEvaluation e, double timeS) {
        double shells = contents.nodes().size();
        double difference = contents.meanK(trajectory, timeS) - path.surfaceTemperatureK(e);
        double heat = path.heatW(e, 0);
        if (Math.abs(difference) > NO_DRIVE_K && difference * heat > 0) {
            return new Resistance(
                    "conduction inside", difference / heat, 0, 0, 0, 0, "shells at rest, from their mean to the wall");
        }
        double even = 1 / (4 * path.conductanceWPerK(e, 0) * Math.log(shells / (shells - 0.5)));
        return new Resistance(
                "conduction inside",
                even,
                0,
                0,
                0,
                0,
                "shells at rest; carries no heat along the mean difference now, value for even cooling 1/(8 pi k L)");
    }

    /** The paths of a band at a time, the inside one first if there is one. */
    List<JunctionPath> junctions(WallBand band, double timeS) {
        List<JunctionPath> junctions = new ArrayList<>();
        for (Path path : trajectory.paths(timeS)) {
            if (path instanceof JunctionPath junction
                    && (path.name().equals(band.insidePath()) || path.name().startsWith(band.outsidePath() + ","))) {
                junctions.add(junction);
            }
        }
        return junctions;
    }

    private static Resistance resistance(String name, JunctionPath path, PathEvaluation e, int link) {
        double kelvinPerWatt = 1 / path.conductanceWPerK(e, link);
        return path.links().get(link).law() instanceof Film film
                ? resistance(name, kelvinPerWatt, film.describe(e.temperatureK(link), path.surfaceTemperatureK(e)))
                : new Resistance(name, kelvinPerWatt, 0, 0, 0, 0, "");
    }

    private static Resistance resistance(String name, double kelvinPerWatt, FilmState state) {
        return new Resistance(
                name,
                kelvinPerWatt,
                state.coefficient(),
                state.nusselt(),
                state.rayleigh(),
                state.prandtl(),
                state.law());
    }

    /** The heat of the contents and of the outside of the wall, from the start up to a time. */
    HeatAccount account(double timeS) {
        Set<String> own = new HashSet<>();
        contents.nodes().forEach(node -> own.add(node.name()));
        record Key(String mechanism, String from) {}
        Map<Key, Double> drink = new LinkedHashMap<>();
        Map<Key, Double> wall = new LinkedHashMap<>();
        for (LedgerEntry entry : trajectory.ledger(timeS).entries()) {
            if (own.contains(entry.to()) != own.contains(entry.from())) {
                boolean received = own.contains(entry.to());
                drink.merge(
                        new Key(entry.mechanism(), received ? entry.from() : entry.to()),
                        received ? entry.heatJ() : -entry.heatJ(),
                        Double::sum);
            }
            // A junction books from its first link, the wall, to each of the others.
            if (bands.stream().anyMatch(band -> entry.path().startsWith(band.outsidePath() + ","))) {
                wall.merge(new Key(entry.mechanism(), entry.to()), -entry.heatJ(), Double::sum);
            }
        }
        double stored = contents.nodes().stream()
                .mapToDouble(node -> trajectory.enthalpyJ(node, timeS) - trajectory.enthalpyJ(node, 0))
                .sum();
        List<HeatAccount.Entry> intoDrink = new ArrayList<>();
        drink.forEach((key, heat) -> intoDrink.add(new HeatAccount.Entry(key.mechanism(), key.from(), heat)));
        List<HeatAccount.Entry> intoWall = new ArrayList<>();
        wall.forEach((key, heat) -> intoWall.add(new HeatAccount.Entry(key.mechanism(), key.from(), heat)));
        return new HeatAccount(intoDrink, intoWall, stored);
    }

    /** The advice of a stay: the one that asks for most while something drives heat. */
    StayAdvice advice(Described described, Stay stay) {
        double from = stay.from().toMillis() / 1000.0;
        double length = Math.min(stay.to().toMillis() / 1000.0, trajectory.endS()) - from;
        List<ModelAdvice> driven = new ArrayList<>();
        for (double part : ADVICE_MOMENTS) {
            double timeS = from + part * length;
            List<Explanation.Band> explained = explainedBands(timeS);
            double mean = contents.meanK(trajectory, timeS);
            if (explained.stream().anyMatch(band -> Math.abs(band.mediumK() - mean) > ADVICE_DRIVE_K)) {
                driven.add(advice(described, stay, explained, timeS));
            }
        }
        return new StayAdvice(
                stay,
                driven.stream()
                        .max(Comparator.comparingDouble(ModelAdvice::severity))
                        .orElseGet(() -> advice(described, stay, explainedBands(from), from)));
    }

    private ModelAdvice advice(Described described, Stay stay, List<Explanation.Band> explained, double timeS) {
        double inside = 0;
        double outside = 0;
        for (Explanation.Band band : explained) {
            double first = band.inSeries().get(0).kelvinPerWatt();
            inside += 1 / first;
            outside += 1 / (band.kelvinPerWatt() - first);
        }
        return ModelAdvice.of(
                described.vessel(),
                lumpedConductance(described, timeS).orElse(inside),
                outside,
                heatCapacityJPerK,
                ModelAdvice.isPartly(stay.wettedPart()));
    }

    /** What the lumped law would carry inside, for contents without a film of their own [W/K]. */
    private Optional<Double> lumpedConductance(Described described, double timeS) {
        double mean = contents.meanK(trajectory, timeS);
        double conductance = 0;
        double share = 0;
        for (WallBand band : withLiquid()) {
            for (JunctionPath path : junctions(band, timeS)) {
                if (path.name().equals(band.insidePath())
                        && !(path.links().get(0).law() instanceof Film)) {
                    PathEvaluation e = trajectory.evaluate(path.name(), timeS);
                    double part = path.conductanceWPerK(e, 0);
                    share += part;
                    conductance += part
                            * described
                                    .insideFilm()
                                    .describe(mean, path.surfaceTemperatureK(e))
                                    .coefficient();
                }
            }
        }
        return share > 0 ? Optional.of(conductance / share * described.wettedSideM2()) : Optional.empty();
    }
}
