/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Proofs written by hand for two bottles and one tub, and what is wrong with each when something in it is changed.
 *
 * <p>One bottle may stand in the tub. Beside it the first costs 3 and the second 5, so the least is 3: with weight 3 on the tub and 1 on the cost
 * either way weighs at least 3 for each, 6 together, but a cost of 2 allows 3 · 1 + 1 · 2 = 5.
 */
class HandmadeProofTest {
    private static final ChoiceItem A = item("a", List.of(0L, 1L), List.of(3L, 0L));
    private static final ChoiceItem B = item("b", List.of(0L, 1L), List.of(5L, 0L));
    private static final ChoiceProblem TWO =
            new ChoiceProblem(List.of("cost", "moves"), 2, List.of(SharedGear.constant("tub", 1, 2)), List.of(A, B));
    private static final ChoiceProblem ONE_LEVEL = new ChoiceProblem(
            List.of("cost"),
            2,
            List.of(SharedGear.constant("tub", 1, 2)),
            List.of(item("a", List.of(0L), List.of(3L)), item("b", List.of(0L), List.of(5L))));

    private static final Certificate.OnSlot TUB = new Certificate.OnSlot("tub", 1, 3);
    private static final Certificate.Node LEAST_IS_3 = node(List.of(TUB), List.of(1L));
    /** Either both levels are least with one in the tub: a move each. Weight 1 on moves, 1 on cost, 3 on the tub. */
    private static final Certificate.Node LEAST_MOVES =
            node(List.of(new Certificate.OnSlot("tub", 0, 5)), List.of(2L, 1L));

    private static ChoiceItem item(String id, List<Long> inside, List<Long> outside) {
        return new ChoiceItem(
                id,
                List.of(
                        new CandidateRoute("in", inside, List.of(new Load("tub", 0, 2, 1))),
                        new CandidateRoute("out", outside, List.of())));
    }

    private static Certificate.Node node(List<Certificate.OnSlot> onSlots, List<Long> onLevels) {
        return new Certificate.Node(List.of(new Certificate.Weights(onSlots, onLevels)), List.of());
    }

    private static Choice choice(String a, String b, Long... costs) {
        Map<String, String> routes = new LinkedHashMap<>();
        routes.put("a", a);
        routes.put("b", b);
        return new Choice(routes, List.of(costs));
    }

    private static Certificate certificate(Certificate.Proof... proofs) {
        return new Certificate(List.of(new Certificate.Part(List.of("a", "b"), List.of(), List.of(proofs))));
    }

    private static Certificate.Proof proof(Certificate.Node root, Long... limits) {
        return Certificate.Proof.of(List.of(limits), root);
    }

    private static void assertHolds(ChoiceProblem problem, ChoiceAnswer answer) {
        assertThat(CertificateCheck.fault(problem, answer)).isEmpty();
    }

    private static void assertRefused(ChoiceProblem problem, ChoiceAnswer answer, String... words) {
        Optional<String> fault = CertificateCheck.fault(problem, answer);
        assertThat(fault).isPresent();
        assertThat(fault.get()).contains(words);
    }

    private static ChoiceAnswer proven(Certificate certificate) {
        return new ChoiceAnswer.Proven(choice("out", "in", 3L), certificate);
    }

    private static ChoiceAnswer provenBy(Certificate.Node root) {
        return proven(certificate(proof(root, 2L)));
    }

    @Test
    void theProofHolds() {
        assertHolds(ONE_LEVEL, provenBy(LEAST_IS_3));
        assertHolds(
                TWO,
                new ChoiceAnswer.Proven(
                        choice("out", "in", 3L, 1L), certificate(proof(LEAST_IS_3, 2L), proof(LEAST_MOVES, 3L, 0L))));
    }

    @Test
    void aCostThatCanBeReachedIsNotTooLittle() {
        assertRefused(ONE_LEVEL, proven(certificate(proof(LEAST_IS_3, 3L))), "a case is left open");
        assertRefused(ONE_LEVEL, proven(certificate(proof(LEAST_IS_3, 1L))), "bound of level 0 is not proven");
        assertRefused(ONE_LEVEL, proven(certificate()), "bound of level 0 is not proven");
    }

    @Test
    void weightsMustBeWhatTheyMayBe() {
        assertRefused(ONE_LEVEL, provenBy(node(List.of(TUB, TUB), List.of(1L))), "negative or given twice");
        assertRefused(
                ONE_LEVEL,
                provenBy(node(List.of(new Certificate.OnSlot("tub", 1, -3)), List.of(1L))),
                "negative or given twice");
        assertRefused(ONE_LEVEL, provenBy(node(List.of(TUB), List.of(-1L))), "a weight is negative");
        assertRefused(ONE_LEVEL, provenBy(node(List.of(TUB), List.of(1L, 0L))), "level without limit");
        assertRefused(
                ONE_LEVEL,
                provenBy(node(List.of(new Certificate.OnSlot("tub", 2, 3)), List.of(1L))),
                "something unknown",
                "tub");
        assertRefused(ONE_LEVEL, provenBy(node(List.of(TUB), List.of(Long.MAX_VALUE))), "too large");
        assertHolds(ONE_LEVEL, provenBy(node(List.of(TUB, new Certificate.OnSlot("tub", 0, 0)), List.of(1L))));
    }

    @Test
    void everyItemBelongsToOnePart() {
        Certificate.Proof right = proof(LEAST_IS_3, 2L);
        Certificate.Part a = new Certificate.Part(List.of("a"), List.of(), List.of());
        Certificate.Part b = new Certificate.Part(List.of("b"), List.of(), List.of());
        Certificate.Part both = new Certificate.Part(List.of("a", "b"), List.of(), List.of(right));
        assertRefused(ONE_LEVEL, proven(new Certificate(List.of(a))), "every item once");
        assertRefused(ONE_LEVEL, proven(new Certificate(List.of(both, b))), "every item once");
        assertRefused(ONE_LEVEL, proven(new Certificate(List.of(a, a))), "every item once");
        assertRefused(
                ONE_LEVEL,
                proven(new Certificate(List.of(new Certificate.Part(List.of("a", "c"), List.of(), List.of(right))))),
                "every item once");
        assertRefused(ONE_LEVEL, proven(new Certificate(List.of(a, b))), "not proven");
        // Apart they cost nothing, which is a bound all the same.
        assertHolds(
                ONE_LEVEL,
                new ChoiceAnswer.Best(choice("out", "in", 3L), List.of(0L), 1, new Certificate(List.of(a, b))));
    }

    @Test
    void aProofHasALimitForEachLevelUpToItsOwn() {
        assertRefused(ONE_LEVEL, proven(certificate(proof(LEAST_IS_3))), "one limit for each level");
        assertRefused(
                ONE_LEVEL,
                proven(certificate(proof(LEAST_IS_3, 2L), proof(LEAST_IS_3, 2L))),
                "more proofs than levels");
        Choice choice = choice("out", "in", 3L, 1L);
        assertRefused(
                TWO,
                new ChoiceAnswer.Proven(choice, certificate(proof(LEAST_IS_3, 2L), proof(LEAST_MOVES, 2L, 0L))),
                "a limit is below the cost of the choice");
        assertRefused(
                TWO,
                new ChoiceAnswer.Proven(choice, certificate(proof(LEAST_IS_3, 2L))),
                "bound of level 1 is not proven");
    }

    @Test
    void aChoiceIsAddedUpAnew() {
        Certificate right = certificate(proof(LEAST_IS_3, 2L));
        assertRefused(ONE_LEVEL, new ChoiceAnswer.Proven(choice("out", "in", 2L), right), "the costs are [3], not [2]");
        assertRefused(
                ONE_LEVEL,
                new ChoiceAnswer.Proven(choice("in", "in", 0L), right),
                "gear tub has 1 places in slot 0, but 2 are taken");
        assertRefused(
                ONE_LEVEL, new ChoiceAnswer.Proven(choice("out", "beside", 3L), right), "item b has no route beside");
        Map<String, String> turned = new LinkedHashMap<>();
        turned.put("b", "in");
        turned.put("a", "out");
        assertRefused(
                ONE_LEVEL, new ChoiceAnswer.Proven(new Choice(turned, List.of(3L)), right), "not those of the problem");
    }

    @Test
    void allFaultsOfAChoiceAreTold() {
        assertThat(AnswerCheck.faults(ONE_LEVEL, choice("in", "in", 1L)))
                .containsExactly(
                        "gear tub has 1 places in slot 0, but 2 are taken",
                        "gear tub has 1 places in slot 1, but 2 are taken",
                        "the costs are [0], not [1]");
        assertThat(AnswerCheck.faults(TWO, choice("out", "in", 3L, 1L))).isEmpty();
    }

    @Test
    void theGapIsThatOfTheFirstLevelThatIsNotProven() {
        Certificate right = certificate(proof(LEAST_IS_3, 2L));
        Choice dearer = choice("in", "out", 5L);
        assertHolds(ONE_LEVEL, new ChoiceAnswer.Best(dearer, List.of(3L), 0.4, right));
        assertRefused(ONE_LEVEL, new ChoiceAnswer.Best(dearer, List.of(3L), 0.41, right), "the gap is not 0.41");
        assertRefused(ONE_LEVEL, new ChoiceAnswer.Best(dearer, List.of(4L), 0.2, right), "level 0 is not proven");
        assertRefused(
                ONE_LEVEL, new ChoiceAnswer.Best(dearer, List.of(3L, 0L), 0.4, right), "one bound for each level");
        assertRefused(
                ONE_LEVEL, new ChoiceAnswer.Best(choice("out", "in", 3L), List.of(3L), 0, right), "no level has a gap");
    }

    @Test
    void belowALevelThatIsNotProvenOnlyTheLeastCostsBound() {
        Certificate moves = certificate(proof(LEAST_IS_3, 2L), proof(LEAST_MOVES, 3L, 0L));
        Choice proven = choice("out", "in", 3L, 1L);
        assertHolds(TWO, new ChoiceAnswer.Best(proven, List.of(3L, 0L), 1, certificate(proof(LEAST_IS_3, 2L))));
        assertHolds(TWO, new ChoiceAnswer.Best(proven, List.of(2L, 0L), 1 / 3.0, moves));
        assertRefused(
                TWO, new ChoiceAnswer.Best(proven, List.of(2L, 1L), 1 / 3.0, moves), "bound of level 1 is not proven");
    }

    /** Both must stand in the tub: weight 1 on its place. */
    private static final ChoiceProblem NO_ROOM = new ChoiceProblem(
            List.of("cost"),
            2,
            List.of(SharedGear.constant("tub", 1, 2)),
            List.of(
                    onlyInside("a"),
                    onlyInside("b"),
                    new ChoiceItem(
                            "c",
                            A.routes().stream()
                                    .map(route -> new CandidateRoute(route.id(), List.of(0L), List.of()))
                                    .toList())));

    private static ChoiceItem onlyInside(String id) {
        return new ChoiceItem(id, List.of(new CandidateRoute("in", List.of(0L), List.of(new Load("tub", 0, 2, 1)))));
    }

    private static ChoiceAnswer infeasible(Certificate certificate, String... items) {
        return new ChoiceAnswer.Infeasible(
                "no room", List.of(items), List.of(new ChoiceAnswer.Span("tub", 0, 2)), certificate);
    }

    @Test
    void thatThereIsNoChoiceIsProvenToo() {
        Certificate.Node full = node(List.of(new Certificate.OnSlot("tub", 0, 1)), List.of());
        Certificate right = certificate(proof(full));
        assertHolds(NO_ROOM, infeasible(right, "a", "b"));
        assertRefused(NO_ROOM, infeasible(right, "a", "c"), "other items are at fault");
        assertRefused(NO_ROOM, infeasible(new Certificate(List.of()), "a", "b"), "other items are at fault");
        assertRefused(
                NO_ROOM,
                infeasible(
                        new Certificate(
                                List.of(right.parts().get(0), right.parts().get(0))),
                        "a",
                        "b"),
                "other items are at fault");
        assertRefused(NO_ROOM, infeasible(certificate(), "a", "b"), "one proof is needed");
        assertRefused(NO_ROOM, infeasible(certificate(proof(full), proof(full)), "a", "b"), "one proof is needed");
        assertRefused(NO_ROOM, infeasible(certificate(proof(full, 5L)), "a", "b"), "only a choice of limited cost");
        assertRefused(ONE_LEVEL, infeasible(right, "a", "b"), "left open");
        Certificate unknown =
                new Certificate(List.of(new Certificate.Part(List.of("a", "z"), List.of(), List.of(proof(full)))));
        assertRefused(NO_ROOM, infeasible(unknown, "a", "z"), "not distinct items of the problem");
        Certificate twice =
                new Certificate(List.of(new Certificate.Part(List.of("a", "a"), List.of(), List.of(proof(full)))));
        assertRefused(NO_ROOM, infeasible(twice, "a", "a"), "not distinct items of the problem");
    }

    @Test
    void aRouteIsOutdoneOnlyByOneThatCostsAndTakesNoMore() {
        ChoiceItem many = new ChoiceItem(
                "a",
                List.of(
                        new CandidateRoute("in", List.of(0L, 1L), List.of(new Load("tub", 0, 2, 1))),
                        new CandidateRoute("longer", List.of(0L, 1L), List.of(new Load("tub", 0, 2, 1))),
                        new CandidateRoute("shorter", List.of(0L, 1L), List.of(new Load("tub", 0, 1, 1))),
                        new CandidateRoute("out", List.of(3L, 0L), List.of()),
                        new CandidateRoute("out and dear", List.of(3L, 1L), List.of())));
        ChoiceProblem problem = new ChoiceProblem(TWO.levels(), 2, TWO.gear(), List.of(many, B));
        for (CandidateRoute worse : many.routes()) {
            for (CandidateRoute better : many.routes()) {
                boolean may = List.of(
                                "in by longer",
                                "in by shorter",
                                "longer by in",
                                "longer by shorter",
                                "out and dear by out")
                        .contains(worse.id() + " by " + better.id());
                Certificate.Outdone outdone = new Certificate.Outdone("a", worse.id(), better.id());
                Certificate certificate =
                        new Certificate(List.of(new Certificate.Part(List.of("a", "b"), List.of(outdone), List.of())));
                ChoiceAnswer answer = new ChoiceAnswer.Best(
                        new Choice(routes("out", "in"), List.of(3L, 1L)), List.of(0L, 0L), 1, certificate);
                Optional<String> fault = CertificateCheck.fault(problem, answer);
                assertThat(fault.isEmpty()).as("%s: %s", outdone, fault).isEqualTo(may);
                if (!may) {
                    assertThat(fault.get()).isEqualTo(better.id() + " does not outdo " + worse.id());
                }
            }
        }
        // What is struck out cannot outdo another afterwards.
        Certificate circle = new Certificate(List.of(new Certificate.Part(
                List.of("a", "b"),
                List.of(new Certificate.Outdone("a", "in", "longer"), new Certificate.Outdone("a", "longer", "in")),
                List.of())));
        assertRefused(
                problem,
                new ChoiceAnswer.Best(new Choice(routes("out", "in"), List.of(3L, 1L)), List.of(0L, 0L), 1, circle),
                "something unknown: in");
    }

    private static Map<String, String> routes(String a, String b) {
        return choice(a, b).routeByItem();
    }

    private static Certificate.Branch branch(String item, String route, Certificate.Node node) {
        return new Certificate.Branch(item, List.of(route), node);
    }

    @Test
    void casesCoverAllRoutesOfOneItem() {
        // Without weights at the root: a stands in the tub and so b does not, or a does not and costs 3.
        Certificate.Node inside = node(List.of(TUB), List.of(1L));
        Certificate.Node outside = node(List.of(), List.of(1L));
        List<Certificate.Branch> cases = List.of(branch("a", "in", inside), branch("a", "out", outside));
        assertHolds(ONE_LEVEL, provenBy(new Certificate.Node(List.of(), cases)));
        assertRefused(
                ONE_LEVEL,
                provenBy(new Certificate.Node(List.of(), cases.subList(0, 1))),
                "routes of a are in no branch");
        assertRefused(
                ONE_LEVEL,
                provenBy(new Certificate.Node(List.of(), List.of(cases.get(0), branch("b", "out", outside)))),
                "several items");
        assertRefused(
                ONE_LEVEL,
                provenBy(new Certificate.Node(
                        List.of(), List.of(cases.get(0), branch("a", "out", node(List.of(), List.of(0L)))))),
                "left open");
    }

    @Test
    void onlyItemsThatAreAlikeMayBeExchanged() {
        // In the second case nobody who is like the first stands beside the tub, as that was the first case; so both
        // stand in it.
        Certificate.Node root = new Certificate.Node(
                List.of(),
                List.of(
                        branch("a", "out", node(List.of(), List.of(1L))),
                        branch("a", "in", node(List.of(new Certificate.OnSlot("tub", 0, 1)), List.of()))));
        assertHolds(withBeside(3), provenBy(root));
        assertRefused(withBeside(4), provenBy(root), "left open");
        // In the first case nobody is left out yet: beside the first that costs 3 the other stands in the tub.
        assertRefused(withBeside(3), proven(certificate(proof(root, 3L))), "left open");
    }

    private static ChoiceProblem withBeside(long cost) {
        return new ChoiceProblem(
                List.of("cost"),
                2,
                List.of(SharedGear.constant("tub", 1, 2)),
                List.of(item("a", List.of(0L), List.of(3L)), item("b", List.of(0L), List.of(cost))));
    }
}
