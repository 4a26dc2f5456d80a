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
}
