/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Checks what an answer claims against its {@link Certificate}, in whole numbers and without searching. Shares nothing with the search.
 *
 * <p>Theory manual, equation (9.2).
 */
public final class CertificateCheck {
    private CertificateCheck() {}

    /**
     * What is wrong with what an answer claims: the choice, its costs, that none is better or how much better one may be, or that there is none.
     *
     * @param problem the problem
     * @param answer the answer
     * @return the first fault; empty if all claims hold
     */
    public static Optional<String> fault(ChoiceProblem problem, ChoiceAnswer answer) {
        try {
            if (answer instanceof ChoiceAnswer.Proven proven) {
                check(problem, proven.choice(), proven.choice().costByLevel(), proven.certificate());
            } else if (answer instanceof ChoiceAnswer.Best best) {
                check(problem, best.choice(), best.lowerBounds(), best.certificate());
                checkGap(best);
            } else if (answer instanceof ChoiceAnswer.Infeasible infeasible) {
                List<Certificate.Part> parts = infeasible.certificate().parts();
                ProofCheck.require(
                        parts.size() == 1 && parts.get(0).items().equals(infeasible.items()),
                        "other items are at fault");
                ProofCheck.require(parts.get(0).proofs().size() == 1, "one proof is needed");
                Certificate.Proof proof = parts.get(0).proofs().get(0);
                ProofCheck.require(proof.costLimits().isEmpty(), "only a choice of limited cost is excluded");
                new ProofCheck(ProofCheck.Known.of(problem), parts.get(0)).follow(proof);
            }
            return Optional.empty();
        } catch (ProofCheck.Refused refused) {
            return Optional.of(Objects.requireNonNull(refused.getMessage()));
        } catch (ArithmeticException tooLarge) {
            return Optional.of("the weights are too large");
        }
    }

    private static void check(ChoiceProblem problem, Choice choice, List<Long> claimed, Certificate certificate) {
        AnswerCheck.faults(problem, choice).forEach(fault -> ProofCheck.require(false, fault));
        List<String> items = certificate.parts().stream()
                .flatMap(part -> part.items().stream())
                .toList();
        Set<String> all = problem.items().stream().map(ChoiceItem::id).collect(Collectors.toSet());
        ProofCheck.require(
                items.size() == all.size() && all.equals(new HashSet<>(items)),
                "the parts do not hold every item once");
        ProofCheck.require(claimed.size() == problem.levels().size(), "there is not one bound for each level");
        long[] fromSearch = new long[claimed.size()];
        long[] plain = new long[claimed.size()];
        ProofCheck.Known known = ProofCheck.Known.of(problem);
        for (Certificate.Part part : certificate.parts()) {
            ProofCheck check = new ProofCheck(known, part);
            ProofCheck.require(part.proofs().size() <= claimed.size(), "there are more proofs than levels");
            for (int k = 0; k < claimed.size(); k++) {
                long least = check.leastCost(k);
                plain[k] += least;
                fromSearch[k] +=
                        k < part.proofs().size() ? Math.max(least, bound(check, known, part, k, choice)) : least;
            }
        }
        boolean tight = true;
        for (int k = 0; k < claimed.size(); k++) {
            ProofCheck.require(
                    claimed.get(k) <= (tight ? fromSearch[k] : plain[k]), "the bound of level " + k + " is not proven");
            tight &= claimed.get(k).equals(choice.costByLevel().get(k));
        }
    }

    private static void checkGap(ChoiceAnswer.Best best) {
        for (int k = 0; k < best.lowerBounds().size(); k++) {
            long cost = best.choice().costByLevel().get(k);
            long missing = cost - best.lowerBounds().get(k);
            if (missing != 0) {
                ProofCheck.require(best.gap() == (double) missing / cost, "the gap is not " + best.gap());
                return;
            }
        }
        ProofCheck.require(false, "no level has a gap");
    }

    /** What the level costs at the least if the levels before cost no more than they do. */
    private static long bound(
            ProofCheck check, ProofCheck.Known known, Certificate.Part part, int level, Choice choice) {
        Certificate.Proof proof = part.proofs().get(level);
        ProofCheck.require(
                proof.costLimits().size() == level + 1, "a proof has not one limit for each level up to its own");
        for (int k = 0; k < level; k++) {
            long cost = known.cost(part.items(), choice, k);
            ProofCheck.require(proof.costLimits().get(k) >= cost, "a limit is below the cost of the choice");
        }
        check.follow(proof);
        return proof.costLimits().get(level) + 1;
    }
}
