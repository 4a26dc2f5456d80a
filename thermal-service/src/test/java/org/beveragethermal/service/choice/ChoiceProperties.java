/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class ChoiceProperties {
    private static ChoiceProblem problem(int seed) {
        return seed % 3 == 0 ? DrawnProblems.shared(seed) : DrawnProblems.small(seed);
    }

    private static Optional<List<Long>> costs(ChoiceProblem problem) {
        return RouteChooser.choose(problem).found().map(Choice::costByLevel);
    }

    @Property(tries = 200, seed = "811")
    @Label("the order of items, routes and gear does not change what the best choice costs")
    void orderDoesNotMatter(@ForAll @IntRange(max = 100_000) int seed) {
        ChoiceProblem problem = problem(seed);
        Random random = new Random(seed);
        List<ChoiceItem> items = new ArrayList<>();
        for (ChoiceItem item : problem.items()) {
            items.add(new ChoiceItem(item.id(), shuffled(item.routes(), random)));
        }
        ChoiceProblem other = new ChoiceProblem(
                problem.levels(), problem.slots(), shuffled(problem.gear(), random), shuffled(items, random));
        assertThat(costs(other)).isEqualTo(costs(problem));
    }

    private static <T> List<T> shuffled(List<T> list, Random random) {
        List<T> shuffled = new ArrayList<>(list);
        Collections.shuffle(shuffled, random);
        return shuffled;
    }

    @Property(tries = 200, seed = "812")
    @Label("more capacity, or gear that a new route may use, never makes the best choice worse")
    void moreGearIsNeverWorse(@ForAll @IntRange(max = 100_000) int seed) {
        ChoiceProblem problem = problem(seed);
        SplitMix random = new SplitMix(seed);
        List<SharedGear> gear = new ArrayList<>();
        for (SharedGear one : problem.gear()) {
            gear.add(new SharedGear(
                    one.id(),
                    one.capacityBySlot().stream().map(c -> c + random.below(2)).toList()));
        }
        gear.add(SharedGear.constant("new", 1, problem.slots()));
        List<ChoiceItem> items = new ArrayList<>();
        for (ChoiceItem item : problem.items()) {
            List<CandidateRoute> routes = new ArrayList<>(item.routes());
            if (random.below(2) == 0) {
                List<Load> loads = List.of(new Load("new", 0, problem.slots(), 1));
                routes.add(new CandidateRoute("new", item.routes().get(0).costs(), loads));
            }
            items.add(new ChoiceItem(item.id(), routes));
        }
        Optional<List<Long>> before = costs(problem);
        Optional<List<Long>> after = costs(new ChoiceProblem(problem.levels(), problem.slots(), gear, items));
        if (before.isPresent()) {
            assertThat(BruteForce.compare(after.orElseThrow(), before.get())).isLessThanOrEqualTo(0);
        }
    }

    @Property(tries = 200, seed = "813")
    @Label("no choice overloads any gear in any slot, and its certificate holds")
    void nothingIsOverloaded(@ForAll @IntRange(max = 100_000) int seed) {
        ChoiceProblem problem = problem(seed);
        ChoiceAnswer answer = RouteChooser.choose(problem);
        answer.found()
                .ifPresent(choice ->
                        assertThat(AnswerCheck.faults(problem, choice)).isEmpty());
        assertThat(CertificateCheck.fault(problem, answer)).isEmpty();
    }

    @Property(tries = 100, seed = "814")
    @Label("two searches give the same choice and the same proof")
    void searchesAgree(@ForAll @IntRange(max = 100_000) int seed) {
        ChoiceProblem problem = problem(seed);
        ChoiceAnswer once = RouteChooser.choose(problem);
        ChoiceAnswer again = RouteChooser.choose(problem);
        assertThat(again.found()).isEqualTo(once.found());
        assertThat(roots(again)).isEqualTo(roots(once));
    }

    private static List<Certificate.Node> roots(ChoiceAnswer answer) {
        Certificate certificate = answer instanceof ChoiceAnswer.Proven proven
                ? proven.certificate()
                : ((ChoiceAnswer.Infeasible) answer).certificate();
        return certificate.parts().stream()
                .flatMap(part -> part.proofs().stream())
                .map(Certificate.Proof::root)
                .toList();
    }

    @Property(tries = 200, seed = "815")
    @Label("a search that is cut short gives a choice that fits and bounds that hold")
    void cutShort(
            @ForAll @IntRange(max = 100_000) int seed,
            @ForAll @IntRange(min = 1, max = 60) int ticks,
            @ForAll @IntRange(min = 1, max = 4) int nodes) {
        ChoiceProblem problem = DrawnProblems.shared(seed);
        long[] clock = {0};
        ChoiceLimits limits = ChoiceLimits.within(Duration.ofNanos(ticks * 20L)).withNodes(nodes);
        ChoiceAnswer answer = RouteChooser.choose(problem, limits, ChoiceMonitor.none(), () -> clock[0]++);
        assertThat(CertificateCheck.fault(problem, answer)).isEmpty();
        Optional<List<Long>> least = costs(problem);
        if (answer instanceof ChoiceAnswer.Best best) {
            assertThat(BruteForce.compare(best.lowerBounds(), least.orElseThrow()))
                    .isLessThanOrEqualTo(0);
            assertThat(BruteForce.compare(least.orElseThrow(), best.choice().costByLevel()))
                    .isLessThanOrEqualTo(0);
        } else if (answer instanceof ChoiceAnswer.Undecided undecided && least.isPresent()) {
            assertThat(BruteForce.compare(undecided.lowerBounds(), least.get())).isLessThanOrEqualTo(0);
        } else {
            assertThat(answer.found().map(Choice::costByLevel)).isEqualTo(least);
        }
    }
}
