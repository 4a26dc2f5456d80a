/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class RouteChooserTest {
    private static final ChoiceProblem TIGHT = DrawnProblems.drawn(new SplitMix(1005), 60, 8, true);

    private static ChoiceItem alike(String id, long besideCost) {
        return new ChoiceItem(
                id,
                List.of(
                        new CandidateRoute("bucket", List.of(0L), List.of(new Load("bucket", 1, 3, 1))),
                        new CandidateRoute("beside", List.of(besideCost), List.of())));
    }

    private static ChoiceProblem withBucket(int capacity, List<ChoiceItem> items) {
        return new ChoiceProblem(List.of("discomfort"), 4, List.of(SharedGear.constant("bucket", capacity, 4)), items);
    }

    @Test
    void givesTheGearToWhomItHelpsMost() {
        ChoiceAnswer answer = RouteChooser.choose(withBucket(1, List.of(alike("a", 3), alike("b", 5))));
        assertThat(answer).isInstanceOf(ChoiceAnswer.Proven.class);
        assertThat(answer.found().orElseThrow().costByLevel()).containsExactly(3L);
        assertThat(answer.found().orElseThrow().routeByItem().values()).containsExactly("beside", "bucket");
    }

    @Test
    void anEarlierLevelIsNeverTradedForALaterOne() {
        ChoiceItem item = new ChoiceItem(
                "a",
                List.of(
                        new CandidateRoute("cheap later", List.of(1L, 0L), List.of()),
                        new CandidateRoute("cheap first", List.of(0L, 1_000_000_000L), List.of())));
        ChoiceProblem problem = new ChoiceProblem(List.of("first", "later"), 1, List.of(), List.of(item));
        assertThat(RouteChooser.choose(problem).found().orElseThrow().routeByItem())
                .containsEntry("a", "cheap first");
    }

    @Test
    void nothingToServeCostsNothing() {
        ChoiceAnswer answer = RouteChooser.choose(withBucket(0, List.of()));
        assertThat(answer.found().orElseThrow().costByLevel()).containsExactly(0L);
        assertThat(CertificateCheck.fault(withBucket(0, List.of()), answer)).isEmpty();
    }

    @Test
    void fiveHundredItemsWithOneSmallGearAreRefusedByNamingFew() {
        List<ChoiceItem> items = IntStream.range(0, 500)
                .mapToObj(i -> new ChoiceItem("bottle" + i, alike("", 0, i)))
                .toList();
        ChoiceProblem problem = withBucket(1, items);
        ChoiceAnswer answer = RouteChooser.choose(problem);
        assertThat(answer).isInstanceOfSatisfying(ChoiceAnswer.Infeasible.class, infeasible -> {
            assertThat(infeasible.items()).hasSize(2);
            assertThat(infeasible.spans()).containsExactly(new ChoiceAnswer.Span("bucket", 1, 3));
            assertThat(infeasible.reason())
                    .contains("bucket in slots 1 to 2")
                    .contains(infeasible.items().get(0));
        });
        assertThat(CertificateCheck.fault(problem, answer)).isEmpty();
    }

    private static List<CandidateRoute> alike(String suffix, int cost, int i) {
        return List.of(
                new CandidateRoute("long" + suffix, List.of((long) cost), List.of(new Load("bucket", 1, 3, 1))),
                new CandidateRoute("longer" + suffix, List.of((long) i), List.of(new Load("bucket", 1, 4, 1))));
    }

    @Test
    void fiveHundredItemsThatMayStandAsideAreSolved() {
        List<ChoiceItem> items =
                IntStream.range(0, 500).mapToObj(i -> alike("bottle" + i, i)).toList();
        ChoiceAnswer answer = RouteChooser.choose(withBucket(1, items));
        assertThat(answer).isInstanceOf(ChoiceAnswer.Proven.class);
        long all = LongStream.range(0, 500).sum();
        assertThat(answer.found().orElseThrow().costByLevel()).containsExactly(all - 499);
    }

    @Test
    void greatCostsAndPlacesDoNotOverflow() {
        List<ChoiceItem> items = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            items.add(new ChoiceItem(
                    "item" + i,
                    List.of(
                            new CandidateRoute(
                                    "in",
                                    List.of(0L, CandidateRoute.MOST_COST - i),
                                    List.of(new Load("tank", 0, 1, SharedGear.MOST - i))),
                            new CandidateRoute("out", List.of(CandidateRoute.MOST_COST - 7L * i, 0L), List.of()))));
        }
        ChoiceProblem problem = new ChoiceProblem(
                List.of("first", "second"), 1, List.of(SharedGear.constant("tank", SharedGear.MOST, 1)), items);
        ChoiceAnswer answer = RouteChooser.choose(problem);
        assertThat(answer).isInstanceOf(ChoiceAnswer.Proven.class);
        assertThat(answer.found().orElseThrow().routeByItem()).containsEntry("item0", "in");
        assertThat(CertificateCheck.fault(problem, answer)).isEmpty();
    }

    @Test
    void theTimeLimitEndsTheSearchWithTheGapStated() {
        long[] clock = {0};
        ChoiceAnswer answer = RouteChooser.choose(
                TIGHT, ChoiceLimits.within(Duration.ofNanos(1500)), ChoiceMonitor.none(), () -> clock[0]++);
        assertThat(clock[0]).isLessThan(1600);
        assertThat(answer).isInstanceOfSatisfying(ChoiceAnswer.Best.class, best -> {
            assertThat(best.gap()).isBetween(0.0, 1.0);
            assertThat(AnswerCheck.faults(TIGHT, best.choice())).isEmpty();
        });
        assertThat(CertificateCheck.fault(TIGHT, answer)).isEmpty();
    }

    @Test
    void aGapThatIsAllowedIsKept() {
        ChoiceAnswer answer = RouteChooser.choose(TIGHT, ChoiceLimits.exact().withGap(0.05), ChoiceMonitor.none());
        assertThat(answer.found()).isPresent();
        assertThat(answer)
                .isInstanceOfSatisfying(
                        ChoiceAnswer.Best.class, best -> assertThat(best.gap()).isLessThanOrEqualTo(0.05));
        assertThat(CertificateCheck.fault(TIGHT, answer)).isEmpty();
    }

    @Test
    void aMonitorHearsOfProgressAndMayEndTheSearch() {
        List<Long> heard = new ArrayList<>();
        ChoiceMonitor monitor = new ChoiceMonitor() {
            @Override
            public void progress(int level, long nodes, int openNodes) {
                heard.add(nodes);
            }

            @Override
            public boolean cancelled() {
                return !heard.isEmpty();
            }
        };
        ChoiceAnswer answer = RouteChooser.choose(TIGHT, ChoiceLimits.exact(), monitor);
        assertThat(heard).containsExactly(1L);
        assertThat(answer).isNotInstanceOf(ChoiceAnswer.Proven.class);
        assertThat(CertificateCheck.fault(TIGHT, answer)).isEmpty();
    }

    @Test
    void beingCancelledAtOnceLeavesItUndecided() {
        ChoiceMonitor monitor = new ChoiceMonitor() {
            @Override
            public boolean cancelled() {
                return true;
            }
        };
        assertThat(RouteChooser.choose(TIGHT, ChoiceLimits.exact(), monitor))
                .isInstanceOfSatisfying(
                        ChoiceAnswer.Undecided.class,
                        undecided -> assertThat(undecided.reason()).contains("cancelled"));
    }

    private static List<Long> leastCosts(ChoiceProblem problem) {
        return IntStream.range(0, problem.levels().size())
                .mapToObj(k -> problem.items().stream()
                        .mapToLong(item -> item.routes().stream()
                                .mapToLong(route -> route.costs().get(k))
                                .min()
                                .orElseThrow())
                        .sum())
                .toList();
    }

    @Test
    void whereNothingWasLookedAtTheLeastCostsAreTheBounds() {
        ChoiceMonitor impatient = new ChoiceMonitor() {
            @Override
            public boolean cancelled() {
                return true;
            }
        };
        assertThat(RouteChooser.choose(TIGHT, ChoiceLimits.exact(), impatient))
                .isEqualTo(new ChoiceAnswer.Undecided("the search was cancelled", leastCosts(TIGHT)));
    }

    @Test
    void belowTheFirstLevelThatIsNotProvenTheBoundsAreTheLeastCosts() {
        int seen = 0;
        for (int seed = 1; seed < 100; seed += 2) {
            ChoiceProblem problem = DrawnProblems.shared(seed);
            ChoiceLimits oneNode = ChoiceLimits.exact().withNodes(1);
            ChoiceAnswer answer = RouteChooser.choose(problem, oneNode, ChoiceMonitor.none());
            List<Long> least = leastCosts(problem);
            if (answer instanceof ChoiceAnswer.Best best) {
                List<Long> costs = best.choice().costByLevel();
                int open = 0;
                while (best.lowerBounds().get(open).equals(costs.get(open))) {
                    open++;
                }
                assertThat(best.gap())
                        .isEqualTo(
                                (double) (costs.get(open) - best.lowerBounds().get(open)) / costs.get(open));
                assertThat(best.lowerBounds().get(open)).isGreaterThanOrEqualTo(least.get(open));
                assertThat(best.lowerBounds().subList(open + 1, least.size()))
                        .isEqualTo(least.subList(open + 1, least.size()));
                seen++;
            } else if (answer instanceof ChoiceAnswer.Undecided undecided) {
                assertThat(undecided.reason()).isEqualTo("the node limit was reached before any choice was found");
                assertThat(undecided.lowerBounds().get(0)).isGreaterThanOrEqualTo(least.get(0));
                assertThat(undecided.lowerBounds().subList(1, least.size())).isEqualTo(least.subList(1, least.size()));
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(20);
    }

    /** The same problem once more under other names, which shares nothing with it. */
    private static ChoiceProblem twice(ChoiceProblem problem) {
        List<SharedGear> gear = new ArrayList<>(problem.gear());
        problem.gear().forEach(one -> gear.add(new SharedGear(one.id() + "'", one.capacityBySlot())));
        List<ChoiceItem> items = new ArrayList<>(problem.items());
        for (ChoiceItem item : problem.items()) {
            List<CandidateRoute> routes = new ArrayList<>();
            for (CandidateRoute route : item.routes()) {
                List<Load> loads = route.loads().stream()
                        .map(load -> new Load(load.gearId() + "'", load.firstSlot(), load.endSlot(), load.places()))
                        .toList();
                routes.add(new CandidateRoute(route.id(), route.costs(), loads));
            }
            items.add(new ChoiceItem(item.id() + "'", routes));
        }
        return new ChoiceProblem(problem.levels(), problem.slots(), gear, items);
    }

    @Test
    void partsShareTheNodesEvenlyAndAllTogetherTakeNoMoreThanTheLimit() {
        List<Long> heard = new ArrayList<>();
        ChoiceMonitor monitor = new ChoiceMonitor() {
            @Override
            public void progress(int level, long nodes, int openNodes) {
                heard.add(nodes);
            }
        };
        ChoiceProblem problem = twice(DrawnProblems.shared(153));
        ChoiceAnswer answer = RouteChooser.choose(problem, ChoiceLimits.exact().withNodes(140), monitor);
        assertThat(heard).containsExactly(1L, 65L, 1L, 65L);
        assertThat(CertificateCheck.fault(problem, answer)).isEmpty();
    }

    @Test
    void whatCostsTheSameTwiceCostsTwiceAsMuch() {
        for (int seed = 0; seed < 20; seed++) {
            ChoiceProblem problem = DrawnProblems.shared(seed);
            ChoiceAnswer once = RouteChooser.choose(problem);
            ChoiceAnswer twice = RouteChooser.choose(twice(problem));
            assertThat(twice).isInstanceOf(once.getClass());
            assertThat(twice.found().map(Choice::costByLevel))
                    .isEqualTo(once.found()
                            .map(choice -> choice.costByLevel().stream()
                                    .map(cost -> 2 * cost)
                                    .toList()));
        }
    }
}
