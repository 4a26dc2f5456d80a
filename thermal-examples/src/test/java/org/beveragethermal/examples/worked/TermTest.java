/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A formula's value, symbols and numbers belong together. */
class TermTest {

    private static final Term A = Term.of(new Value("a", "first", 7, "1", true));
    private static final Term B = Term.of(new Value("b", "second", -3, "1", true));
    private static final Term C = Term.of(new Value("c", "third", 2, "1", true));

    /** What one reads, without the elements. */
    private static String read(String mathml) {
        return mathml.replaceAll("<[^>]+>", "").replace("&#x2062;", "").replace("&#x2061;", "");
    }

    private static void assertReads(Term term, double value, String symbols, String numbers) {
        assertThat(term.value()).isCloseTo(value, within(1e-12));
        assertThat(read(term.symbols())).isEqualTo(symbols);
        assertThat(read(term.numbers())).isEqualTo(numbers);
    }

    @Test
    void bracketsStandWhereTheyAreNeeded() {
        assertReads(A.plus(C).times(C), 18, "(a+c)c", "(7+2)×2");
        assertReads(A.minus(B.plus(C)), 8, "a−(b+c)", "7−(−3+2)");
        assertReads(A.minus(C.minus(C)), 7, "a−(c−c)", "7−(2−2)");
        assertReads(A.times(C).plus(A), 21, "ac+a", "7×2+7");
        assertReads(A.plus(C).squared(), 81, "(a+c)2", "(7+2)2");
        assertReads(A.times(C).toThe(1, 2), Math.sqrt(14), "(ac)1/2", "(7×2)1/2");
        assertReads(A.over(C).squared(), 12.25, "(ac)2", "(72)2");
    }

    @Test
    void negativeNumbersAreBracketed() {
        assertReads(A.minus(B), 10, "a−b", "7−(−3)");
        assertReads(A.times(B), -21, "ab", "7×(−3)");
        assertReads(B.squared(), 9, "b2", "(−3)2");
        assertReads(B.negated(), 3, "−b", "−(−3)");
        assertReads(A.plus(C.negated()), 5, "a+(−c)", "7+(−2)");
        assertReads(Term.exp(A.over(C).negated()), Math.exp(-3.5), "e−ac", "e−72");
    }

    @Test
    void numbersOfAFormulaAreSetOffFromSymbols() {
        assertReads(Term.number(4).times(A), 28, "4a", "4×7");
        assertReads(A.times(Term.number(3600)), 25_200, "a×3600", "7×3600");
        assertReads(Term.ln(A.over(C)), Math.log(3.5), "ln(ac)", "ln(72)");
    }

    @Test
    void numbersAreWrittenAlikeEverywhere() {
        assertThat(Show.number(1.4e-7)).isEqualTo("1.4 × 10⁻⁷");
        assertThat(Show.number(-0.012345)).isEqualTo("−0.01235");
        assertThat(Show.number(1234567)).isEqualTo("1.235 × 10⁶");
        assertThat(Show.exact(333_400)).isEqualTo("333400");
        assertThat(Show.exact(273.15)).isEqualTo("273.15");
        assertThat(new Value("t", "time", 5400, "s", true).text()).isEqualTo("5400\u00a0s = 90\u00a0min");
        assertThat(new Value("p", "pressure", 6e5, "Pa", true).spoken()).isEqualTo("6\u00a0bar");
    }

    @Test
    void whatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> new Value("t", "time", Double.NaN, "s", false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("t, time, is NaN");
    }
}
