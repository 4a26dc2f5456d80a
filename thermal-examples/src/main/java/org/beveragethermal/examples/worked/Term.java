/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.examples.internal.Html;

/**
 * A formula that knows its value and how it is written, in symbols and with the numbers put in, so that the three cannot differ.
 *
 * <p>Written as MathML, which browsers set without fonts or scripts of their own.
 */
final class Term {

    /** How firmly a formula holds together; what is looser than its place asks for gets brackets. */
    private enum Binding {
        SIGNED,
        SUM,
        PRODUCT,
        POWER,
        ATOM
    }

    private static final String INVISIBLE_TIMES = "<mo>&#x2062;</mo>";
    private static final String TIMES = "<mo>×</mo>";

    private final double value;
    private final String symbols;
    private final String numbers;
    private final Binding binding;
    /** Whether the numbers begin with a minus sign. */
    private final boolean negative;

    private Term(double value, String symbols, String numbers, Binding binding, boolean negative) {
        this.value = value;
        this.symbols = symbols;
        this.numbers = numbers;
        this.binding = binding;
        this.negative = negative;
    }

    /** A number that is part of the formula. */
    static Term number(double value) {
        String digits = "<mn>" + Show.exact(value) + "</mn>";
        return new Term(value, digits, digits, Binding.ATOM, value < 0);
    }

    static Term pi() {
        return new Term(Math.PI, "<mi>π</mi>", "<mi>π</mi>", Binding.ATOM, false);
    }

    /** A quantity with a symbol. */
    static Term of(Value quantity) {
        return new Term(
                quantity.value(),
                symbol(quantity.symbol()),
                "<mn>" + quantity.digits() + "</mn>",
                Binding.ATOM,
                quantity.digits().startsWith(Show.MINUS));
    }

    /** A symbol with what follows the underscore as its index. */
    static String symbol(String name) {
        int index = name.indexOf('_');
        if (index < 0) {
            return "<mi>" + Html.text(name) + "</mi>";
        }
        return "<msub><mi>" + Html.text(name.substring(0, index)) + "</mi><mtext>"
                + Html.text(name.substring(index + 1)) + "</mtext></msub>";
    }

    double value() {
        return value;
    }

    /** The formula in symbols. */
    String symbols() {
        return symbols;
    }

    /** The formula with the numbers put in. */
    String numbers() {
        return numbers;
    }

    Term plus(Term other) {
        return joined(value + other.value, "<mo>+</mo>", "<mo>+</mo>", other, Binding.SUM, Binding.SUM);
    }

    Term minus(Term other) {
        return joined(value - other.value, "<mo>−</mo>", "<mo>−</mo>", other, Binding.SUM, Binding.PRODUCT);
    }

    Term times(Term other) {
        String between = other.symbols.startsWith("<mn>") ? TIMES : INVISIBLE_TIMES;
        return joined(value * other.value, between, TIMES, other, Binding.PRODUCT, Binding.PRODUCT);
    }

    Term over(Term other) {
        return new Term(
                value / other.value,
                "<mfrac>" + row(symbols) + row(other.symbols) + "</mfrac>",
                "<mfrac>" + row(numbers) + row(other.numbers) + "</mfrac>",
                Binding.PRODUCT,
                false);
    }

    Term negated() {
        return new Term(
                -value,
                "<mo>−</mo>" + bracketed(symbols, Binding.PRODUCT),
                "<mo>−</mo>" + (negative ? brackets(numbers) : bracketed(numbers, Binding.PRODUCT)),
                Binding.SIGNED,
                true);
    }

    Term toThe(int power) {
        return raised(power, "<mn>" + power + "</mn>");
    }

    private Term raised(double power, String written) {
        String exponent = row(written);
        return new Term(
                Math.pow(value, power),
                "<msup>" + row(bracketed(symbols, Binding.ATOM)) + exponent + "</msup>",
                "<msup>" + row(negative ? brackets(numbers) : bracketed(numbers, Binding.ATOM)) + exponent + "</msup>",
                Binding.POWER,
                false);
    }

    /** To a power that is a fraction and is written as one. */
    Term toThe(int numerator, int denominator) {
        return raised(numerator / (double) denominator, "<mn>" + numerator + "/" + denominator + "</mn>");
    }

    Term squared() {
        return toThe(2);
    }

    static Term exp(Term of) {
        return new Term(
                Math.exp(of.value),
                "<msup><mi>e</mi>" + row(of.symbols) + "</msup>",
                "<msup><mi>e</mi>" + row(of.numbers) + "</msup>",
                Binding.POWER,
                false);
    }

    static Term ln(Term of) {
        return function("ln", of, Math::log);
    }

    static Term sqrt(Term of) {
        return new Term(
                Math.sqrt(of.value),
                "<msqrt>" + of.symbols + "</msqrt>",
                "<msqrt>" + of.numbers + "</msqrt>",
                Binding.ATOM,
                false);
    }

    static Term function(String name, Term of, DoubleUnaryOperator function) {
        String called = "<mi>" + name + "</mi><mo>&#x2061;</mo>";
        return new Term(
                function.applyAsDouble(of.value),
                called + brackets(of.symbols),
                called + brackets(of.numbers),
                Binding.PRODUCT,
                false);
    }

    private Term joined(
            double result, String inSymbols, String inNumbers, Term other, Binding whole, Binding leastOfOther) {
        String right = other.negative ? brackets(other.numbers) : other.bracketed(other.numbers, leastOfOther);
        return new Term(
                result,
                bracketed(symbols, whole) + inSymbols + other.bracketed(other.symbols, leastOfOther),
                bracketed(numbers, whole) + inNumbers + right,
                whole,
                negative && binding.compareTo(whole) >= 0);
    }

    private String bracketed(String written, Binding least) {
        return binding.compareTo(least) < 0 ? brackets(written) : written;
    }

    private static String brackets(String written) {
        return "<mrow><mo>(</mo>" + written + "<mo>)</mo></mrow>";
    }

    private static String row(String written) {
        return "<mrow>" + written + "</mrow>";
    }
}
