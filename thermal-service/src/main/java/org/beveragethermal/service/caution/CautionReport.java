/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The cautions of a drink.
 *
 * @param cautions what there is to be cautious of, the gravest first, then what comes first
 * @param kept limits that were looked at and are kept, with their margins
 */
public record CautionReport(List<Caution> cautions, List<Caution> kept) {

    private static final Comparator<Caution> ORDER = Comparator.comparing(Caution::signal)
            .reversed()
            .thenComparing(caution ->
                    caution.crossing().time().map(time -> time.toMillis()).orElse(Long.MAX_VALUE))
            .thenComparing(Caution::rule);

    /**
     * Copies the lists.
     *
     * @param cautions what there is to be cautious of, not modified
     * @param kept limits that are kept, not modified
     */
    public CautionReport {
        cautions = List.copyOf(cautions);
        kept = List.copyOf(kept);
    }

    static CautionReport of(List<Caution> all) {
        return new CautionReport(
                all.stream().filter(Caution::isCrossed).sorted(ORDER).toList(),
                all.stream()
                        .filter(caution -> !caution.isCrossed())
                        .sorted(ORDER)
                        .toList());
    }

    /**
     * Whether a limit that must not be crossed is crossed.
     *
     * @return true if there is a caution at the danger level
     */
    public boolean isDanger() {
        return cautions.stream().anyMatch(Caution::isDanger);
    }

    /**
     * The caution by a rule.
     *
     * @param rule which
     * @return the gravest of them; empty if there is nothing to be cautious of by that rule
     */
    public Optional<Caution> find(CautionRule rule) {
        return cautions.stream().filter(caution -> caution.rule() == rule).findFirst();
    }

    /**
     * The limit of a rule that is kept.
     *
     * @param rule which
     * @return the limit with its margin; empty if it was not looked at or is crossed
     */
    public Optional<Caution> findKept(CautionRule rule) {
        return kept.stream().filter(caution -> caution.rule() == rule).findFirst();
    }

    /**
     * The cautions in words, one a line.
     *
     * @param locale language and notation of numbers
     * @return lines; empty if there is no caution
     */
    public String text(Locale locale) {
        CautionTexts texts = CautionTexts.in(locale);
        return cautions.stream().map(texts::of).collect(Collectors.joining("\n"));
    }
}
