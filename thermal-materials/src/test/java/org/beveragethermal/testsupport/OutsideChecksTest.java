/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.beveragethermal.testsupport.OutsideChecks.Check;
import org.beveragethermal.testsupport.OutsideChecks.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutsideChecksTest {
    @TempDir
    Path directory;

    @Test
    void passingCheckLeavesItsRow() throws IOException {
        begin(CheckRows.startedIn(directory)).expected(20.0).within(0.5).check(20.25);

        assertThat(checks())
                .containsExactly(
                        CheckRows.CHECKS_HEADER,
                        List.of("id-1", "a table", "a figure", "20", "20.25", "0.5", "K", "published", "true"));
    }

    @Test
    void failingCheckLeavesItsRowAndThrows() throws IOException {
        Check check = begin(CheckRows.startedIn(directory)).expected(20.0).within(0.5);

        assertThatThrownBy(() -> check.check(20.6))
                .isInstanceOf(AssertionError.class)
                .hasMessage("id-1: a figure: expected 20 ± 0.5 K (a table), was 20.6 K");
        assertThat(checks().get(1)).endsWith("20.6", "0.5", "K", "published", "false");
    }

    @Test
    void whatIsNotANumberFails() {
        CheckRows rows = CheckRows.startedIn(directory);

        assertThatThrownBy(() -> begin(rows).expected(1.0).within(1.0).check(Double.NaN))
                .isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> begin(rows).between(0.0, 1.0).check(Double.NaN))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void toleranceAndRangeIncludeTheirEnds() {
        CheckRows rows = CheckRows.startedIn(directory);

        assertThatCode(() -> begin(rows).expected(2.0).within(0.5).check(2.5)).doesNotThrowAnyException();
        assertThatCode(() -> begin(rows).between(1.0, 2.0).check(1.0)).doesNotThrowAnyException();
        assertThatThrownBy(() -> begin(rows).between(1.0, 2.0).check(Math.nextDown(1.0)))
                .isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> begin(rows).between(1.0, 2.0).check(Math.nextUp(2.0)))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void relativeToleranceIsWrittenInTheUnitOfTheFigure() throws IOException {
        Check check = begin(CheckRows.startedIn(directory)).expected(-200.0).withinRelative(0.01);

        check.check(-201.9);
        assertThatThrownBy(() -> check.check(-202.1)).isInstanceOf(AssertionError.class);
        assertThat(checks().get(1)).containsSubsequence("-200", "-201.9", "2");
    }

    @Test
    void rangeIsWrittenWithBothEnds() throws IOException {
        begin(CheckRows.startedIn(directory)).between(-2.5, 12.0).check(0.0);

        assertThat(checks().get(1)).containsSubsequence("-2.5..12", "0", "");
    }

    @Test
    void rowsOfAnEarlierRunDoNotSurvive() throws IOException {
        begin(CheckRows.startedIn(directory)).expected(1.0).within(0.0).check(1.0);
        CheckRows second = CheckRows.startedIn(directory);

        assertThat(checks()).containsExactly(CheckRows.CHECKS_HEADER);
        begin(second).expected(2.0).within(0.0).check(2.0);
        assertThat(checks()).hasSize(2);
    }

    @Test
    void rowsFromManyThreadsStayWhole() throws IOException {
        CheckRows rows = CheckRows.startedIn(directory);

        IntStream.range(0, 200)
                .parallel()
                .forEach(i -> begin(rows).expected(i).within(0.0).check(i));

        assertThat(checks()).hasSize(201).allSatisfy(row -> assertThat(row).hasSize(CheckRows.CHECKS_HEADER.size()));
    }

    @Test
    void ruleOfThumbIsRecordedAndNeverFails() throws IOException {
        CheckRows rows = CheckRows.startedIn(directory);

        OutsideChecks.ruleOfThumb(() -> rows, "rule-1", "minutes, \"ice\" water", 20.0, 34.567891, "min", "");

        assertThat(Csv.parse(Files.readString(directory.resolve(CheckRows.RULES_FILE), StandardCharsets.UTF_8)))
                .containsExactly(
                        CheckRows.RULES_HEADER, List.of("rule-1", "minutes, \"ice\" water", "20", "34.568", "min", ""));
    }

    @Test
    void unfinishedOrNonsensicalChecksAreRefused() {
        CheckRows rows = CheckRows.startedIn(directory);

        assertThatIllegalStateException().isThrownBy(() -> begin(rows).check(1.0));
        assertThatIllegalStateException().isThrownBy(() -> begin(rows).within(1.0));
        assertThatIllegalStateException()
                .isThrownBy(() -> begin(rows).expected(1.0).check(1.0));
        assertThatIllegalStateException()
                .isThrownBy(() -> OutsideChecks.begin(() -> rows, Kind.PUBLISHED, "i", "s")
                        .between(0.0, 1.0)
                        .check(0.5));
        assertThatIllegalArgumentException().isThrownBy(() -> begin(rows).between(2.0, 1.0));
        assertThatIllegalArgumentException().isThrownBy(() -> begin(rows).expected(Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> begin(rows).expected(1.0).within(-1.0));
        assertThatIllegalArgumentException().isThrownBy(() -> OutsideChecks.published(" ", "a table"));
        assertThatIllegalArgumentException().isThrownBy(() -> OutsideChecks.published("id-1", ""));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OutsideChecks.ruleOfThumb(() -> rows, "r", "w", 1.0, Double.NaN, "min", ""));
    }

    @Test
    void kindsHaveTheirWords() {
        assertThat(Kind.values())
                .extracting(Kind::label)
                .containsExactly("published", "reference library", "common practice", "from memory");
    }

    private static Check begin(CheckRows rows) {
        return OutsideChecks.begin(() -> rows, Kind.PUBLISHED, "id-1", "a table")
                .what("a figure")
                .unit("K");
    }

    private List<List<String>> checks() throws IOException {
        return Csv.parse(Files.readString(directory.resolve(CheckRows.CHECKS_FILE), StandardCharsets.UTF_8));
    }
}
