/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.beveragethermal.testsupport.DocumentParts;
import org.junit.jupiter.api.Test;

/** The table of all rules, left for the page of cautions. */
class CautionTableTest {

    @Test
    void everyRuleHasARow() {
        CautionTable table = Cautions.table();
        assertThat(table.rows())
                .extracting(CautionTable.Row::code)
                .containsExactlyElementsOf(Arrays.stream(CautionRule.values())
                        .map(CautionRule::code)
                        .toList());
        assertThat(table.rows()).allSatisfy(row -> {
            assertThat(row.code()).matches("[a-z]+(-[a-z]+)*");
            assertThat(row.limit()).isNotBlank().doesNotContain("{").doesNotContain("|");
            assertThat(row.sources())
                    .isNotEmpty()
                    .allSatisfy(source -> assertThat(source).doesNotContain("|"));
        });
        DocumentParts.leaveTable(
                "cautions",
                List.of("Code", "Signal words", "Quantity", "Limit", "Sources"),
                table.rows().stream()
                        .map(row -> List.of(
                                "`" + row.code() + "`",
                                row.signals(),
                                row.quantity(),
                                row.limit(),
                                String.join("; ", row.sources())))
                        .toList());
    }

    @Test
    void limitsAreThoseOfTheRules() {
        List<CautionTable.Row> rows = Cautions.table().rows();
        assertThat(row(rows, CautionRule.HELD_COLD_OR_HOT).limit())
                .isEqualTo(
                        "Food Code 5 °C and 57 °C; households in the United States 4.4 °C and 60 °C; England 8 °C and 63 °C");
        assertThat(row(rows, CautionRule.HOLDING_TIME_OVER).limit())
                .isEqualTo(
                        "Food Code 4 h, 6 h if never above 21 °C, 4 h from hot; households in the United States 2 h, 1 h above"
                                + " 32 °C; England once, 4 h, 2 h from hot");
        assertThat(row(rows, CautionRule.THERMAL_SHOCK).limit())
                .isEqualTo(
                        "soda-lime glass and crystal: wary from 35 K, stop at 42 K; borosilicate glass: 95 K, 115 K");
        assertThat(row(rows, CautionRule.HOLDING_TIME_OVER).sources()).hasSize(3);
        assertThat(row(rows, CautionRule.OPENING_UNDER_PRESSURE).limit()).isEqualTo("warmer than 7.2 °C, or shaken");
    }

    private static CautionTable.Row row(List<CautionTable.Row> rows, CautionRule rule) {
        return rows.stream()
                .filter(row -> row.code().equals(rule.code()))
                .findFirst()
                .orElseThrow();
    }
}
