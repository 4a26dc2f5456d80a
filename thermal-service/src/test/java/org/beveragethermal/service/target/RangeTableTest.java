/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.tuple;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RangeTableTest {
    private static final String SOURCES = "key,citation,kind\na,\"A, B\",published\n";
    private static final String STYLES = "id,name,family,sparkling,sugar_g_L,reason\nred,red,wine,no,0,Because.\n";
    private static final String RANGES = "style,low_C,high_C,source\nred,10,12,a\n";

    private static final String STORAGE = "for,term,low_C,high_C,source,remark\nwine,long-term,10,12,a,dark\n";

    private static RangeTable table(String sources, String styles, String ranges) {
        return table(sources, styles, ranges, STORAGE);
    }

    private static RangeTable table(String sources, String styles, String ranges, String storage) {
        return RangeTable.of(
                CsvTable.parse("sources", sources),
                CsvTable.parse("styles", styles),
                CsvTable.parse("ranges", ranges),
                CsvTable.parse("storage", storage));
    }

    @Test
    void rowsBecomeRanges() {
        RangeTable table = table(SOURCES, "# comment\n\n" + STYLES, RANGES);
        ServingRange range = table.rangesOf(table.style("red")).get(0);
        assertThat(range.lowK()).isEqualTo(283.15);
        assertThat(range.highK()).isEqualTo(285.15);
        assertThat(range.source().citation()).isEqualTo("A, B");
        assertThat(range.reason()).isEqualTo("Because.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a,x,published           | sources, line 3: \"a\" appears twice",
                "b,x,rumour              | sources, line 3: kind \"rumour\": expected one of",
                "b,x                     | sources, line 3: expected 3 fields, got 2",
                "b,\"x,published         | sources, line 3: column 3: expected a closing quote",
                "b,\"x\"y,published      | sources, line 3: column 6: expected a comma",
            })
    void badSourcesAreRefusedWithTheirLine(String row, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table(SOURCES + row + "\n", STYLES, RANGES))
                .withMessageContaining(message);
    }

    @Test
    void badStylesAreRefusedWithTheirLine() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table(SOURCES, STYLES + "white,white,wine,perhaps,0,Because.\n", RANGES))
                .withMessage("styles, line 3: sparkling \"perhaps\": expected yes or no");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "green,10,12,a  | ranges, line 3: style \"green\": expected one of [red]",
                "red,10,12,z    | ranges, line 3: source \"z\": expected one of [a]",
                "red,ten,12,a   | ranges, line 3: low_C \"ten\": expected a number",
                "red,NaN,12,a   | ranges, line 3: low_C \"NaN\": expected a finite number",
                "red,13,12,a    | 13 °C: expected at most the high end, 12 °C",
            })
    void badRangesAreRefusedWithTheirLine(String row, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table(SOURCES, STYLES, RANGES + row + "\n"))
                .withMessageContaining(message);
    }

    @Test
    void badFamilyIsRefusedWithItsLine() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table(SOURCES, STYLES + "white,white,wien,no,0,Because.\n", RANGES))
                .withMessageStartingWith("styles, line 3: family \"wien\": expected one of [wine, ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "green,long-term,10,12,a,x | storage, line 3: for \"green\": expected a family or a style",
                "wine,for ever,10,12,a,x   | storage, line 3: term \"for ever\": expected one of [long-term, short-term",
                "wine,opened,10,12,z,x     | storage, line 3: source \"z\": expected one of [a]",
                "wine,opened,12,10,a,x     | 12 °C: expected at most the high end, 10 °C",
            })
    void badStorageIsRefusedWithItsLine(String row, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table(SOURCES, STYLES, RANGES, STORAGE + row + "\n"))
                .withMessageContaining(message);
    }

    @Test
    void storageOfAStyleStandsInsteadOfItsFamilysOfTheSameTerm() {
        RangeTable table = table(
                SOURCES,
                STYLES,
                RANGES,
                STORAGE + "wine,opened,2,4,a,x\nred,long-term,14,15,a,x\nred,long-term,13,15,a,x\n");
        assertThat(table.storageOf(table.style("red")))
                .extracting(StorageRange::term, range -> Celsius.text(range.lowK(), range.highK()))
                .containsExactly(
                        tuple(StorageRange.Term.LONG_TERM, "14 to 15 °C"),
                        tuple(StorageRange.Term.LONG_TERM, "13 to 15 °C"),
                        tuple(StorageRange.Term.OPENED, "2 to 4 °C"));
    }

    @Test
    void badTablesAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CsvTable.parse("empty", "# nothing\n"))
                .withMessageContaining("expected a header line");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table(SOURCES.replace("citation", "cited"), STYLES, RANGES))
                .withMessageContaining("column \"citation\" is missing");
        assertThatIllegalStateException().isThrownBy(() -> CsvTable.ofResource("no-such-table.csv"));
    }

    @Test
    void quotesInsideQuotesAreKept() {
        CsvTable.Row row =
                CsvTable.parse("t", "a,b,c\n\"x \"\"y\"\" z\",,\"\"\n").rows().get(0);
        assertThat(row.text("a")).isEqualTo("x \"y\" z");
        assertThat(row.text("b")).isEmpty();
        assertThat(row.text("c")).isEmpty();
    }

    @Test
    void styleWithoutRangesIsRefusedUnlessTheCallerGivesOne() {
        RangeTable table = table(SOURCES, STYLES + "white,white,wine,no,0,Because.\n", RANGES);
        DrinkStyle white = table.style("white");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ServingTarget.of(white, RangePolicy.narrowestCommon(), table.rangesOf(white)))
                .withMessageContaining("no source states a range");
        assertThat(ServingTarget.of(white, new RangePolicy.OwnRange(280, 282), table.rangesOf(white))
                        .aimK())
                .isEqualTo(281);
    }
}
