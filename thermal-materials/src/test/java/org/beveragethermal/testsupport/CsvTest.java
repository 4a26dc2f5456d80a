/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.NotEmpty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Source of the expected texts: RFC 4180, section 2, rules 1 to 7. */
class CsvTest {
    @Test
    void quotesOnlyWhereNeeded() {
        assertThat(Csv.line(List.of("aaa", "b\"bb", "c,c", "d\r\nd", "")))
                .isEqualTo("aaa,\"b\"\"bb\",\"c,c\",\"d\r\nd\",\r\n");
    }

    @Test
    void readsBothLineEndsAndAMissingLastOne() {
        assertThat(Csv.parse("a,b\r\nc,d\ne,")).containsExactly(List.of("a", "b"), List.of("c", "d"), List.of("e", ""));
        assertThat(Csv.parse("")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\"b", "\"a\"b", "\"a", "\"a\"\rb"})
    void refusesWhatIsNotWellFormed(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> Csv.parse(text)).withMessageContaining("record 1");
    }

    @Property(seed = "20260101")
    void readsBackWhatItWrote(
            @ForAll @NotEmpty
                    List<@Chars({',', '"', '\r', '\n', ' ', 'é'}) @CharRange(from = 'a', to = 'f') String> fields) {
        assertThat(Csv.parse(Csv.line(fields))).containsExactly(fields);
    }
}
