/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.beveragethermal.materials.units.Measures.celsius;

import org.junit.jupiter.api.Test;

class HouseRulesTest {
    private static final DrinkStyle RED = Targets.style("red-full");
    private static final DrinkStyle WHITE = Targets.style("white-light");

    private static final HouseRules RULES = HouseRules.builder()
            .forStyle(RED, own(10))
            .forDrink("old", own(11))
            .forGuest("seven", RED, own(12))
            .forGuest("seven", "old", own(13))
            .forGuest("eight", "other", own(14))
            .otherwise(RangePolicy.envelope())
            .build();

    private static RangePolicy own(double lowCelsius) {
        return RangePolicy.own(celsius(lowCelsius), celsius(lowCelsius + 1));
    }

    private static void check(ServingTarget target, double lowCelsius, String basis) {
        assertThat(target.lowK()).isEqualTo(Celsius.toKelvin(lowCelsius));
        assertThat(target.basis()).startsWith(basis);
    }

    @Test
    void nearestRuleDecides() {
        check(Targets.of(RED, RULES), 10, "house rule for style red-full: range given by the caller");
        check(Targets.ofDrink("old", RED, RULES), 11, "house rule for drink old: ");
        check(Targets.of(RED, RULES, "seven"), 12, "rule of guest seven for style red-full: ");
        check(Targets.ofDrink("old", RED, RULES, "seven"), 13, "rule of guest seven for drink old: ");
        check(Targets.ofDrink("other", RED, RULES, "seven"), 12, "rule of guest seven for style red-full: ");
        check(Targets.ofDrink("other", RED, RULES, "eight"), 14, "rule of guest eight for drink other: ");
    }

    @Test
    void whoHasNoRuleGetsWhatEverybodyGets() {
        check(Targets.of(RED, RULES, "nine"), 10, "house rule for style red-full: ");
        check(Targets.of(RED, RULES, "eight"), 10, "house rule for style red-full: ");
        check(Targets.ofDrink("old", RED, RULES, "nine"), 11, "house rule for drink old: ");
        assertThat(Targets.of(WHITE, RULES).basis())
                .isEqualTo(Targets.of(WHITE, RangePolicy.envelope()).basis());
        assertThat(Targets.of(WHITE, HouseRules.none()))
                .hasToString(Targets.of(WHITE).toString());
    }

    @Test
    void sourcesAreStillTold() {
        assertThat(Targets.of(RED, RULES).considered()).isEqualTo(Targets.rangesOf(RED));
        HouseRules paper = HouseRules.builder()
                .forStyle(RED, RangePolicy.source("beverages-2020-6-62"))
                .build();
        ServingTarget target = Targets.of(RED, paper);
        assertThat(target.decidedBy()).hasSize(1);
        assertThat(target.explain())
                .startsWith("red, full: 18 to 22 °C, aim 20 °C.\nCold makes")
                .contains("Range: house rule for style red-full: as stated by Beverages 2020")
                .contains("Stated: 15 to 17.8 °C (a wine education body (quoted second-hand)).");
        assertThat(target.explain().lines()).hasSize(3 + 7);
    }

    @Test
    void rulesThatCannotWorkAreRefusedWhenTheyAreMade() {
        HouseRules.Builder builder = HouseRules.builder().forDrink("old", own(11));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.forStyle(WHITE, RangePolicy.source("no-such-source")))
                .withMessageContaining("no-such-source");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.forDrink("old", own(12)))
                .withMessage("house rule for drink old: expected once, got it twice");
        assertThatIllegalArgumentException().isThrownBy(() -> builder.forDrink(" ", own(12)));
        assertThatIllegalArgumentException().isThrownBy(() -> builder.forGuest("", "old", own(12)));
    }

    @Test
    void builderDoesNotReachIntoWhatItBuilt() {
        HouseRules.Builder builder = HouseRules.builder().forDrink("old", own(11));
        HouseRules before = builder.build();
        builder.forDrink("new", own(12));
        assertThat(before).isNotEqualTo(builder.build());
        assertThat(before)
                .isEqualTo(HouseRules.builder().forDrink("old", own(11)).build())
                .hasSameHashCodeAs(HouseRules.builder().forDrink("old", own(11)).build());
        assertThat(before.toString())
                .startsWith("house rule for drink old: OwnRange")
                .contains("otherwise: Narrowest");
    }
}
