/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.beveragethermal.materials.provenance.Source;

/** What holds for the range made of any ranges. */
class DecisionProperties {
    private static final DrinkStyle STYLE = new DrinkStyle("any", "any", DrinkFamily.WINE, false, 0, "any");
    private static final Source SOURCE = Source.published("key", "citation");

    @Provide
    Arbitrary<List<ServingRange>> ranges() {
        Arbitrary<Double> low = Arbitraries.doubles().between(270, 300);
        Arbitrary<Double> width = Arbitraries.doubles().between(0, 10);
        return Combinators.combine(low, width)
                .as((lowK, widthK) -> new ServingRange(STYLE, lowK, lowK + widthK, SOURCE))
                .list()
                .ofMinSize(1)
                .ofMaxSize(9);
    }

    @Property(tries = 300, seed = "4711")
    void commonRangeLiesInEveryRangeOrSaysThatThereIsNone(@ForAll("ranges") List<ServingRange> ranges) {
        Decision decision = Decision.of(STYLE, RangePolicy.narrowestCommon(), ranges);
        double middleK = (decision.lowK() + decision.highK()) / 2;
        boolean inAll = ranges.stream().allMatch(range -> range.lowK() <= middleK && middleK <= range.highK());
        boolean somewhere = ranges.stream()
                .anyMatch(candidate -> ranges.stream().allMatch(range -> range.contains(candidate.lowK())));
        assertThat(decision.basis().contains("no range in common")).isEqualTo(!somewhere);
        assertThat(inAll || !somewhere).isTrue();
    }

    @Property(tries = 300, seed = "4712")
    void everyPolicyGivesAnOrderedRangeInsideTheEnvelope(@ForAll("ranges") List<ServingRange> ranges) {
        Decision envelope = Decision.of(STYLE, RangePolicy.envelope(), ranges);
        Decision common = Decision.of(STYLE, RangePolicy.narrowestCommon(), ranges);
        Decision named = Decision.of(STYLE, RangePolicy.source("key"), ranges);
        assertThat(List.of(envelope, common, named)).allSatisfy(decision -> {
            assertThat(decision.highK() - decision.lowK()).isGreaterThanOrEqualTo(Decision.MINIMUM_WIDTH_K - 1e-9);
            assertThat(decision.lowK()).isGreaterThanOrEqualTo(envelope.lowK() - Decision.MINIMUM_WIDTH_K / 2 - 1e-9);
            assertThat(decision.highK()).isLessThanOrEqualTo(envelope.highK() + Decision.MINIMUM_WIDTH_K / 2 + 1e-9);
        });
    }

    @Property(tries = 100, seed = "4713")
    void orderOfTheRangesDoesNotMatter(@ForAll("ranges") List<ServingRange> ranges) {
        List<ServingRange> reversed = new ArrayList<>(ranges);
        Collections.reverse(reversed);
        for (RangePolicy policy : List.of(RangePolicy.narrowestCommon(), RangePolicy.envelope())) {
            Decision one = Decision.of(STYLE, policy, ranges);
            Decision other = Decision.of(STYLE, policy, reversed);
            assertThat(other.lowK()).isCloseTo(one.lowK(), within(0.0));
            assertThat(other.highK()).isCloseTo(one.highK(), within(0.0));
        }
    }
}
