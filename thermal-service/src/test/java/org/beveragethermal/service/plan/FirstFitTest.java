/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.beveragethermal.service.choice.CandidateRoute;
import org.beveragethermal.service.choice.ChoiceItem;
import org.beveragethermal.service.choice.ChoiceProblem;
import org.beveragethermal.service.choice.Load;
import org.beveragethermal.service.choice.SharedGear;
import org.junit.jupiter.api.Test;

/** Bottles take routes one after the other; worked out by hand for one place in four stretches of time. */
class FirstFitTest {

    private static final String COLD = "cold";
    private static final int SLOTS = 4;

    private final List<ChoiceItem> items = new ArrayList<>();
    private final Map<BottleOrder, List<Candidate>> candidates = new LinkedHashMap<>();

    /** A bottle whose routes, the cheapest first, load the place from one stretch to before another. */
    private void bottle(String id, int[]... spans) {
        List<CandidateRoute> routes = new ArrayList<>();
        List<Candidate> list = new ArrayList<>();
        for (int[] span : spans) {
            List<Long> costs = List.of((long) routes.size());
            List<Load> loads = span[0] < span[1] ? List.of(new Load(COLD, span[0], span[1], 1)) : List.of();
            routes.add(new CandidateRoute(Integer.toString(routes.size()), costs, loads));
            Route route = Route.of(Route.Kind.STAY, new Leg("room", 0, 60));
            double[] none = {};
            list.add(new Candidate(route, new Forecast(none, none, none, true, 0, none, none), costs));
        }
        items.add(new ChoiceItem(id, routes));
        candidates.put(Evenings.order(id, "white-light", 22, "room", 60, "room"), list);
    }

    private static int[] span(int first, int end) {
        return new int[] {first, end};
    }

    @Test
    void eachTakesTheCheapestThatFitsOrElseTheOneThatLoadsLeast() {
        bottle("takes what it wants", span(0, 2), span(0, 0));
        bottle("takes the second, after it", span(1, 3), span(2, 4), span(0, 0));
        bottle("finds no room and loads least", span(0, 4), span(1, 3), span(1, 4));
        bottle("needs none", span(0, 0), span(0, 1));
        bottle("finds the place still full", span(3, 4), span(0, 0));
        ChoiceProblem problem =
                new ChoiceProblem(List.of("cost"), SLOTS, List.of(SharedGear.constant(COLD, 1, SLOTS)), items);
        Map<BottleOrder, Candidate> chosen = FirstFit.of(problem, candidates);
        assertThat(chosen.keySet()).containsExactlyElementsOf(candidates.keySet());
        assertThat(chosen.values().stream().map(Candidate::costs).flatMap(List::stream))
                .containsExactly(0L, 1L, 1L, 0L, 1L);
    }

    /** What one has taken before is free again after it. */
    @Test
    void oneAfterTheOtherTheyAllFit() {
        Stream.of(span(0, 1), span(1, 2), span(2, 3), span(3, 4))
                .forEach(span -> bottle("at " + span[0], span, span(0, 0)));
        ChoiceProblem problem =
                new ChoiceProblem(List.of("cost"), SLOTS, List.of(SharedGear.constant(COLD, 1, SLOTS)), items);
        assertThat(FirstFit.of(problem, candidates).values())
                .allSatisfy(candidate -> assertThat(candidate.costs()).containsExactly(0L));
    }
}
