/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.Optional;
import org.beveragethermal.materials.provenance.Source;

/** Whose rules a drink that spoils is held by. Rules are summed up here; the text of the code, as adopted where you are, decides. */
@SuppressWarnings("ImmutableEnumChecker") // sources and rules are immutable
public enum Jurisdiction {
    /**
     * The model code for food businesses of the United States: cold at 5 °C (41 °F), hot at 57 °C (135 °F); 4 h from when it leaves either,
     * 6 h if it left the cold and never comes above 21 °C (70 °F). The time goes on even if it is cooled again.
     */
    US_FOOD_CODE(
            CautionSources.FOOD_CODE,
            new HoldingRule(278.15, 330.15, 4, 6, 294.15, false, 4, HoldingRule.Counting.SINCE_FIRST_LEAVING)),
    /**
     * Advice to households in the United States: 4.4 °C (40 °F), 60 °C (140 °F); 2 h outside in all, 1 h above 32.2 °C (90 °F).
     */
    US_HOUSEHOLD(
            CautionSources.HOUSEHOLD,
            new HoldingRule(277.594, 333.15, 1, 2, 305.372, true, 2, HoldingRule.Counting.TIME_OUTSIDE)),
    /** England: cold at 8 °C, out for service once, less than 4 h; hot at 63 °C, out once, less than 2 h. */
    ENGLAND(
            CautionSources.ENGLAND,
            new HoldingRule(281.15, 336.15, 4, 4, 281.15, false, 2, HoldingRule.Counting.ONE_STAY)),
    /** The European Union: no figure for all its states; national law and the operator's own procedures have them. */
    EUROPEAN_UNION(CautionSources.EUROPEAN_UNION);

    private final Source source;
    private final Optional<HoldingRule> rule;

    Jurisdiction(Source source, HoldingRule rule) {
        this.source = source;
        this.rule = Optional.of(rule);
    }

    Jurisdiction(Source source) {
        this.source = source;
        this.rule = Optional.empty();
    }

    /**
     * Where the rules stand.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    /**
     * The rule in figures.
     *
     * @return the rule; empty where there is no figure for all
     */
    public Optional<HoldingRule> rule() {
        return rule;
    }
}
