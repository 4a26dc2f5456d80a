/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.beveragethermal.core.storage.TemperatureHistory;
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
                                String.join(" · ", row.sources())))
                        .toList());
    }

    /** Invented courses of milk, by the clock of each jurisdiction. */
    @Test
    void clocksOfJurisdictionsBesideEachOther() {
        Map<String, TemperatureHistory> courses = new LinkedHashMap<>();
        courses.put("from 4 °C straight to 20 °C, and stays", Logs.everyTenMinutes(0, 4, 0.001, 20, 600, 20));
        courses.put("from 4 °C straight to 25 °C, and stays", Logs.everyTenMinutes(0, 4, 0.001, 25, 600, 25));
        courses.put("from 4 °C straight to 33 °C, and stays", Logs.everyTenMinutes(0, 4, 0.001, 33, 600, 33));
        courses.put("at 7 °C", Logs.everyTenMinutes(0, 4, 0.001, 7, 600, 7));
        courses.put(
                "half an hour at 20 °C, cold again, and after two hours once more",
                Logs.everyTenMinutes(
                        0, 4, 0.001, 20, 30, 20, 30.001, 4, 150, 4, 150.001, 20, 180, 20, 180.001, 4, 330, 4));
        courses.put("from 65 °C straight to 50 °C, and stays", Logs.everyTenMinutes(0, 65, 0.001, 50, 600, 50));
        List<List<String>> rows = new ArrayList<>();
        courses.forEach((what, course) -> {
            List<String> row = new ArrayList<>(List.of(what));
            for (Jurisdiction where : Jurisdiction.values()) {
                row.add(words(HoldingClock.of(where).read(course)));
            }
            rows.add(row);
        });
        DocumentParts.leaveTable(
                "cautions-holding",
                List.of("Course", "Food Code", "Households, United States", "England", "European Union"),
                rows);
        assertThat(rows.get(0).subList(1, 5))
                .containsExactly("over after 6.0 h", "over after 2.0 h", "over after 4.0 h", "no figure");
        assertThat(rows.get(4).subList(1, 5))
                .containsExactly("0.5 h left", "1.0 h left", "over after 2.5 h", "no figure");
    }

    private static String words(HoldingTime answer) {
        if (answer instanceof HoldingTime.Over over) {
            return String.format(Locale.ROOT, "over after %.1f h", Times.seconds(over.after()) / 3600);
        }
        return answer instanceof HoldingTime.Within within
                ? String.format(Locale.ROOT, "%.1f h left", Times.seconds(within.left()) / 3600)
                : "no figure";
    }

    @Test
    void scaldTimesForThePage() {
        List<List<String>> rows = IntStream.of(45, 47, 49, 51, 53, 55, 57, 60, 63, 65, 69, 80)
                .mapToObj(celsius -> List.of(
                        celsius + " °C",
                        String.format(
                                Locale.ROOT,
                                "%.0f s",
                                ScaldTime.deepBurnS(celsius + 273.15).orElseThrow())))
                .toList();
        DocumentParts.leaveTable("cautions-scald", List.of("Temperature of the liquid", "Contact"), rows);
        assertThat(rows.get(7)).containsExactly("60 °C", "5 s");
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
