/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.beveragethermal.service.plan.Forecast.Keeping;
import org.beveragethermal.service.target.ServingTarget;
import org.jspecify.annotations.Nullable;

/**
 * Finds a way for one bottle: first how warm it must be poured and where it is kept while it is drunk, then what brings it
 * there and when to begin.
 */
final class RouteFinder {

    /** Distance kept from the ends of the range when the aim itself does not hold [K]; our choice. */
    private static final double MARGIN_K = 0.3;
    /** Moments are found to this accuracy [s]; they are rounded to minutes afterwards. */
    private static final double TIME_ACCURACY_S = 5;

    private static final int EVALUATIONS = 60;
    private static final double MINUTE_S = 60;

    private final PlanRequest request;
    private final GearBook book;

    RouteFinder(PlanRequest request, GearBook book) {
        this.request = request;
        this.book = book;
    }

    Route find(BottleOrder order) {
        Forecast forecast = new Forecast(request, order);
        if (order.target().contains(forecast.stayingK())
                && forecast.keeping(order.servedIn(), forecast.stayingK(), order)
                                .outsidePart()
                        == 0) {
            return new Route(
                    order,
                    order.startsIn(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    order.servedIn(),
                    forecast.stayingK(),
                    List.of(Reason.of(Reason.Code.STAYS, kelvins(forecast.stayingK()))));
        }
        Keeping keeping = bestKeeping(order, forecast);
        return bestMeans(order, forecast, keeping);
    }

    /** Pouring temperature and keeping place: the least time outside the range, then the least trouble, then the aim. */
    private Keeping bestKeeping(BottleOrder order, Forecast forecast) {
        ServingTarget target = order.target();
        double margin = Math.min(MARGIN_K, 0.25 * (target.highK() - target.lowK()));
        Keeping best = null;
        for (String keeper : keepers(order)) {
            Keeping atAim = forecast.keeping(keeper, target.aimK(), order);
            double[] wishes = {
                target.aimK(), centred(target, atAim, margin), target.lowK() + margin, target.highK() - margin
            };
            for (double wish : wishes) {
                Keeping keeping = wish == target.aimK() ? atAim : forecast.keeping(keeper, wish, order);
                if (best == null || keeping.outsidePart() < best.outsidePart()) {
                    best = keeping;
                }
                if (best.outsidePart() == 0) {
                    return best;
                }
            }
        }
        if (best == null) {
            throw new IllegalStateException("bottle " + order.id() + ": no place to keep it");
        }
        return best;
    }

    /** The pouring temperature from which the bottle goes as near to one end of its range as it was to the other. */
    private static double centred(ServingTarget target, Keeping atAim, double margin) {
        double shift = 0.5 * (target.lowK() - atAim.coldestK() + target.highK() - atAim.warmestK());
        return Math.min(target.highK() - margin, Math.max(target.lowK() + margin, target.aimK() + shift));
    }

    private List<String> keepers(BottleOrder order) {
        List<String> keepers = new ArrayList<>();
        keepers.add(order.servedIn());
        double from = Forecast.seconds(Duration.between(request.startsAt(), order.servedAt()));
        double to = from + Forecast.seconds(order.finishedAfter());
        request.gear().values().stream()
                .filter(gear -> book.fits(gear.id(), from, to, order))
                .sorted(Comparator.comparingInt(gear -> gear.kind().trouble()))
                .forEach(gear -> keepers.add(gear.id()));
        return keepers;
    }

    /** What could bring the bottle to its temperature, least trouble first. */
    private List<String> means(BottleOrder order) {
        List<String> means = new ArrayList<>(request.places().keySet());
        request.gear().values().stream()
                .sorted(Comparator.comparingInt(gear -> gear.kind().trouble()))
                .forEach(gear -> means.add(gear.id()));
        means.remove(order.startsIn());
        return means;
    }

    private Route bestMeans(BottleOrder order, Forecast forecast, Keeping keeping) {
        List<Reason> reasons = new ArrayList<>();
        reasons.add(
                keeping.outsidePart() == 0
                        ? Reason.of(
                                Reason.Code.KEPT_IN,
                                new Argument.Where(keeping.keptIn()),
                                kelvins(keeping.pouredK()),
                                kelvins(keeping.coldestK()),
                                kelvins(keeping.warmestK()))
                        : Reason.of(
                                Reason.Code.KEPT_OUT_OF_RANGE,
                                new Argument.Where(keeping.keptIn()),
                                new Argument.Share(keeping.outsidePart())));
        Route overfull = null;
        Route closest = null;
        for (String means : means(order)) {
            double atOnce = forecast.pouredK(means, 0);
            if (between(keeping.pouredK(), atOnce, forecast.stayingK())) {
                Route route = reached(order, forecast, keeping, means, reasons);
                if (book.fits(means, route.startS().orElse(0), forecast.servedS(), order)) {
                    return route;
                }
                reasons.add(Reason.of(Reason.Code.TAKEN, new Argument.Where(means)));
                overfull = overfull == null ? route : overfull;
            } else {
                reasons.add(Reason.of(Reason.Code.WILL_NOT_DO, new Argument.Where(means), kelvins(atOnce)));
                double miss = Math.abs(atOnce - keeping.pouredK());
                if (closest == null || miss < Math.abs(closest.pouredK() - keeping.pouredK())) {
                    closest = new Route(
                            order,
                            means,
                            OptionalDouble.of(0),
                            OptionalDouble.empty(),
                            keeping.keptIn(),
                            atOnce,
                            List.of());
                }
            }
        }
        return chosen(order, forecast, keeping, overfull, closest, reasons);
    }

    /** No means both does and is free: take an overfull one and let the conflict show, else what comes closest. */
    private Route chosen(
            BottleOrder order,
            Forecast forecast,
            Keeping keeping,
            @Nullable Route overfull,
            @Nullable Route closest,
            List<Reason> reasons) {
        if (overfull != null) {
            return new Route(
                    order,
                    overfull.means(),
                    overfull.startS(),
                    overfull.latestStartS(),
                    overfull.keptIn(),
                    overfull.pouredK(),
                    reasons);
        }
        double stayingMiss = Math.abs(forecast.stayingK() - keeping.pouredK());
        if (closest == null || stayingMiss <= Math.abs(closest.pouredK() - keeping.pouredK())) {
            reasons.add(Reason.of(Reason.Code.NOTHING_BETTER, kelvins(forecast.stayingK())));
            return new Route(
                    order,
                    order.startsIn(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    keeperOfMissed(order, forecast, forecast.stayingK(), keeping),
                    forecast.stayingK(),
                    reasons);
        }
        reasons.add(Reason.of(Reason.Code.CLOSEST, new Argument.Where(closest.means()), kelvins(closest.pouredK())));
        return new Route(
                order,
                closest.means(),
                closest.startS(),
                OptionalDouble.empty(),
                keeperOfMissed(order, forecast, closest.pouredK(), keeping),
                closest.pouredK(),
                reasons);
    }

    /** Where a bottle that is not poured at the temperature wished for is kept: where it stays nearest to its range. */
    private String keeperOfMissed(BottleOrder order, Forecast forecast, double pouredK, Keeping wished) {
        if (!forecast.canBeginAt(pouredK)) {
            return wished.keptIn();
        }
        return keepers(order).stream()
                .map(keeper -> forecast.keeping(keeper, pouredK, order))
                .min(Comparator.comparingDouble(Keeping::outsideByK))
                .orElse(wished)
                .keptIn();
    }

    private Route reached(
            BottleOrder order, Forecast forecast, Keeping keeping, String means, List<Reason> reasonsSoFar) {
        double start = wholeMinute(startFor(forecast, means, keeping.pouredK()));
        double latest = startFor(forecast, means, lastAcceptable(order, forecast, keeping));
        List<Reason> reasons = new ArrayList<>(reasonsSoFar);
        reasons.add(Reason.of(
                Reason.Code.BROUGHT_BY,
                new Argument.Where(means),
                kelvins(forecast.stayingK()),
                kelvins(keeping.pouredK())));
        return new Route(
                order,
                means,
                OptionalDouble.of(start),
                OptionalDouble.of(Math.max(start, wholeMinute(latest))),
                keeping.keptIn(),
                forecast.pouredK(means, start),
                reasons);
    }

    /** The pouring temperature nearest to where the bottle comes from that still lets it stay in range. */
    private static double lastAcceptable(BottleOrder order, Forecast forecast, Keeping keeping) {
        ServingTarget target = order.target();
        boolean cooling = forecast.stayingK() > keeping.pouredK();
        double room = cooling ? target.highK() - keeping.warmestK() : target.lowK() - keeping.coldestK();
        double shift = cooling ? Math.max(0, room) : Math.min(0, room);
        double limit = keeping.pouredK() + reach(order, forecast, keeping, cooling, shift);
        return cooling ? Math.min(limit, forecast.stayingK()) : Math.max(limit, forecast.stayingK());
    }

    /**
     * How far the pouring temperature may be shifted so that the warmest glass, or when warming the coldest, is shifted to the
     * end of the range: by more than the glass, for what is poured nearer to its surroundings changes less. One secant step.
     */
    private static double reach(
            BottleOrder order, Forecast forecast, Keeping keeping, boolean cooling, double glassShiftK) {
        if (glassShiftK == 0) {
            return 0;
        }
        Keeping shifted = forecast.keeping(keeping.keptIn(), keeping.pouredK() + glassShiftK, order);
        double moved = cooling ? shifted.warmestK() - keeping.warmestK() : shifted.coldestK() - keeping.coldestK();
        double factor = moved / glassShiftK > 0 ? glassShiftK / moved : 1;
        double widest = (cooling ? order.target().highK() : order.target().lowK()) - keeping.pouredK();
        return cooling ? Math.min(widest, glassShiftK * factor) : Math.max(widest, glassShiftK * factor);
    }

    /** The moment to begin so that the bottle has a temperature when poured; 0 or the moment of pouring if it is not inside. */
    private static double startFor(Forecast forecast, String means, double pouredK) {
        double atOnce = forecast.pouredK(means, 0) - pouredK;
        double never = forecast.stayingK() - pouredK;
        if (atOnce * never >= 0) {
            return Math.abs(atOnce) < Math.abs(never) ? 0 : forecast.servedS();
        }
        return new BracketingNthOrderBrentSolver(TIME_ACCURACY_S, 5)
                .solve(EVALUATIONS, s -> forecast.pouredK(means, s) - pouredK, 0, forecast.servedS());
    }

    private static double wholeMinute(double seconds) {
        return MINUTE_S * Math.floor(seconds / MINUTE_S);
    }

    private static boolean between(double x, double a, double b) {
        return (x - a) * (x - b) <= 0;
    }

    private static Argument kelvins(double temperatureK) {
        return new Argument.Temperature(temperatureK);
    }
}
