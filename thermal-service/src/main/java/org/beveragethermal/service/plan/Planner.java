/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Plans a service: a way for each bottle, gear given out in order of serving, and a verdict from one coupled run.
 *
 * <p>Deterministic; stateless and thread-safe.
 */
public final class Planner {

    private Planner() {}

    /**
     * Plans a service.
     *
     * @param request what is at hand and what is wanted
     * @return the plan and what comes of it
     */
    public static ServicePlan plan(PlanRequest request) {
        GearBook book = new GearBook(request);
        for (BottleOrder order : request.bottles()) {
            book.add(order.startsIn(), 0, servedS(request, order), order);
        }
        Map<String, Route> routes = new LinkedHashMap<>();
        request.bottles().stream()
                .sorted(Comparator.comparing(BottleOrder::servedAt))
                .forEach(order -> {
                    Route route = new RouteFinder(request, book).find(order);
                    book.remove(order);
                    enter(request, route, book);
                    routes.put(order.id(), route);
                });
        List<Route> inOrder = new ArrayList<>();
        for (BottleOrder order : request.bottles()) {
            Route route = routes.get(order.id());
            if (route != null) {
                inOrder.add(route);
            }
        }
        return new CoupledRun(request, inOrder, book).plan();
    }

    public static ServicePlan plan(PlanRequest request, PlanLimits limits, PlanMonitor monitor) {
        return plan(request);
    }

    private static double servedS(PlanRequest request, BottleOrder order) {
        return Forecast.seconds(java.time.Duration.between(request.startsAt(), order.servedAt()));
    }

    private static void enter(PlanRequest request, Route route, GearBook book) {
        BottleOrder order = route.order();
        double served = servedS(request, order);
        double start = route.startS().orElse(served);
        book.add(order.startsIn(), 0, start, order);
        book.add(route.means(), start, served, order);
        book.add(route.keptIn(), served, served + Forecast.seconds(order.finishedAfter()), order);
    }
}
