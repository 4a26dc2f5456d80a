/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A certificate that has been tampered with is refused, and no certificate passes for a claim that is false. */
class CertificateCheckTest {
    /** Proven by branching: the search has to look at several nodes. */
    private static final ChoiceProblem BRANCHED = branched();

    private static final ChoiceAnswer.Proven PROVEN = (ChoiceAnswer.Proven) RouteChooser.choose(BRANCHED);

    private static ChoiceProblem branched() {
        for (int seed = 1; seed < 400; seed += 2) {
            ChoiceProblem problem = DrawnProblems.shared(seed);
            if (RouteChooser.choose(problem) instanceof ChoiceAnswer.Proven proven
                    && proven.certificate().parts().size() == 1
                    && CertificateCheck.fault(problem, withoutBranches(proven)).isPresent()) {
                return problem;
            }
        }
        throw new AssertionError("no problem needs branches");
    }

    private static ChoiceAnswer withoutBranches(ChoiceAnswer.Proven proven) {
        Certificate.Part part = proven.certificate().parts().get(0);
        List<Certificate.Proof> proofs = new ArrayList<>(part.proofs());
        proofs.set(
                0,
                Certificate.Proof.of(
                        proofs.get(0).costLimits(),
                        new Certificate.Node(root(proven).weights(), List.of())));
        Certificate.Part bare = new Certificate.Part(part.items(), part.outdone(), proofs);
        return new ChoiceAnswer.Proven(proven.choice(), new Certificate(List.of(bare)));
    }

    private static Certificate.Node root(ChoiceAnswer.Proven proven) {
        return proven.certificate().parts().get(0).proofs().get(0).root();
    }

    private static Optional<String> faultWithRoot(Certificate.Node root) {
        Certificate.Part part = PROVEN.certificate().parts().get(0);
        List<Certificate.Proof> proofs = new ArrayList<>(part.proofs());
        proofs.set(0, Certificate.Proof.of(proofs.get(0).costLimits(), root));
        return faultWithPart(new Certificate.Part(part.items(), part.outdone(), proofs));
    }

    private static Optional<String> faultWithPart(Certificate.Part part) {
        return CertificateCheck.fault(
                BRANCHED, new ChoiceAnswer.Proven(PROVEN.choice(), new Certificate(List.of(part))));
    }

    @Test
    void acceptsTheCertificateAsItIs() {
        assertThat(CertificateCheck.fault(BRANCHED, PROVEN)).isEmpty();
        assertThat(faultWithRoot(root(PROVEN))).isEmpty();
    }

    @Test
    void refusesAMissingBranch() {
        Certificate.Node root = root(PROVEN);
        List<Certificate.Branch> fewer =
                root.branches().subList(1, root.branches().size());
        assertThat(faultWithRoot(new Certificate.Node(root.weights(), fewer))).isPresent();
        assertThat(faultWithRoot(new Certificate.Node(root.weights(), List.of())))
                .hasValueSatisfying(fault -> assertThat(fault).contains("left open"));
    }

    @Test
    void refusesBranchesWithoutWeights() {
        Certificate.Node root = root(PROVEN);
        List<Certificate.Branch> bare = root.branches().stream()
                .map(branch -> new Certificate.Branch(
                        branch.item(), branch.routes(), new Certificate.Node(List.of(), List.of())))
                .toList();
        assertThat(faultWithRoot(new Certificate.Node(root.weights(), bare))).isPresent();
    }

    @Test
    void refusesNegativeAndUnknownWeights() {
        Certificate.Weights negative =
                new Certificate.Weights(List.of(new Certificate.OnSlot("gear0", 0, -1)), List.of());
        Certificate.Weights unknown = new Certificate.Weights(List.of(new Certificate.OnSlot("none", 0, 1)), List.of());
        Certificate.Weights twice = new Certificate.Weights(
                List.of(new Certificate.OnSlot("gear0", 0, 1), new Certificate.OnSlot("gear0", 0, 1)), List.of());
        Certificate.Weights huge = new Certificate.Weights(List.of(), List.of(Long.MAX_VALUE));
        Certificate.Weights level = new Certificate.Weights(List.of(), List.of(1L, 1L, 1L, 1L));
        for (Certificate.Weights weights : List.of(negative, unknown, twice, huge, level)) {
            Certificate.Node root = root(PROVEN);
            assertThat(faultWithRoot(new Certificate.Node(List.of(weights), root.branches())))
                    .as("%s", weights)
                    .isPresent();
        }
    }

    @Test
    void refusesOtherItemsAndMadeUpComparisons() {
        Certificate.Part part = PROVEN.certificate().parts().get(0);
        List<String> fewer = part.items().subList(1, part.items().size());
        assertThat(faultWithPart(new Certificate.Part(fewer, List.of(), part.proofs())))
                .isPresent();
        ChoiceItem item = BRANCHED.items().get(0);
        String taken = PROVEN.choice().routeByItem().get(item.id());
        String other = item.routes().stream()
                .map(CandidateRoute::id)
                .filter(id -> !id.equals(taken))
                .findFirst()
                .orElseThrow();
        List<Certificate.Outdone> madeUp = new ArrayList<>();
        madeUp.add(new Certificate.Outdone(item.id(), other, other));
        assertThat(faultWithPart(new Certificate.Part(part.items(), madeUp, part.proofs())))
                .isPresent();
        assertThat(faultWithPart(new Certificate.Part(
                        part.items(), part.outdone(), part.proofs().subList(0, 1))))
                .isPresent();
    }

    @Test
    void refusesAnotherChoiceUnderTheSameCertificate() {
        Map<String, String> routes = new LinkedHashMap<>(PROVEN.choice().routeByItem());
        ChoiceItem item = BRANCHED.items().get(0);
        for (CandidateRoute route : item.routes()) {
            if (!route.id().equals(PROVEN.choice().routeByItem().get(item.id()))) {
                routes.put(item.id(), route.id());
                Choice same = new Choice(routes, PROVEN.choice().costByLevel());
                assertThat(CertificateCheck.fault(BRANCHED, new ChoiceAnswer.Proven(same, PROVEN.certificate())))
                        .isPresent();
            }
        }
    }

    @Test
    void noProofPassesForACostThatCanBeReached() {
        int claims = 0;
        for (int seed = 0; seed < 300; seed++) {
            ChoiceProblem problem = DrawnProblems.small(seed);
            if (RouteChooser.choose(problem) instanceof ChoiceAnswer.Proven proven) {
                for (Certificate.Part part : proven.certificate().parts()) {
                    for (Certificate.Proof proof : part.proofs()) {
                        Certificate.Node changed = changed(proof.root(), new SplitMix(seed));
                        assertRefused(problem, part, lifted(proof, proof.root()), seed);
                        assertRefused(problem, part, lifted(proof, changed), seed);
                        claims++;
                    }
                }
            }
        }
        assertThat(claims).isGreaterThan(500);
    }

    private static void assertRefused(ChoiceProblem problem, Certificate.Part part, Certificate.Proof proof, int seed) {
        ProofCheck check = new ProofCheck(ProofCheck.Known.of(problem), part);
        assertThatThrownBy(() -> check.follow(proof)).as("seed %d", seed).isInstanceOf(ProofCheck.Refused.class);
    }

    /** Claims that even the least cost, that of the choice found, is too little. */
    private static Certificate.Proof lifted(Certificate.Proof proof, Certificate.Node root) {
        List<Long> limits = new ArrayList<>(proof.costLimits());
        limits.set(limits.size() - 1, limits.get(limits.size() - 1) + 1);
        return Certificate.Proof.of(limits, root);
    }

    private static Certificate.Node changed(Certificate.Node node, SplitMix random) {
        List<Certificate.Weights> weights = node.weights().stream()
                .map(of -> new Certificate.Weights(
                        of.onSlots().stream()
                                .map(on ->
                                        new Certificate.OnSlot(on.gearId(), on.slot(), on.weight() * random.below(4)))
                                .toList(),
                        of.onLevels()))
                .toList();
        List<Certificate.Branch> branches = node.branches().stream()
                .map(branch -> new Certificate.Branch(branch.item(), branch.routes(), changed(branch.node(), random)))
                .toList();
        return new Certificate.Node(weights, branches);
    }

    @Test
    void noProofPassesForAChoiceThatIsPossible() {
        int claims = 0;
        for (int seed = 0; seed < 300; seed++) {
            ChoiceProblem problem = DrawnProblems.small(seed);
            if (RouteChooser.choose(problem) instanceof ChoiceAnswer.Infeasible infeasible) {
                List<SharedGear> roomy = problem.gear().stream()
                        .map(gear -> SharedGear.constant(gear.id(), 50, problem.slots()))
                        .toList();
                ChoiceProblem possible = new ChoiceProblem(problem.levels(), problem.slots(), roomy, problem.items());
                assertThat(CertificateCheck.fault(problem, infeasible)).isEmpty();
                assertThat(CertificateCheck.fault(possible, infeasible))
                        .as("seed %d", seed)
                        .isPresent();
                claims++;
            }
        }
        assertThat(claims).isGreaterThan(10);
    }
}
