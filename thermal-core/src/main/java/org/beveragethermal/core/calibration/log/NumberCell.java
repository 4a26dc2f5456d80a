/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

/**
 * Reads numbers of one decimal mark, with or without marks between thousands, out of characters, without making objects. Holds the last
 * number; not thread-safe.
 */
final class NumberCell {
    /** Beyond this a long cannot take another digit. */
    private static final long FULL = 99_999_999_999_999_999L;
    /** Whole numbers up to here, and powers of ten up to {@link #POWERS}, are exact in doubles: so is their quotient, rounded once. */
    private static final long EXACT = 1L << 53;

    private static final double[] POWERS = new double[23];

    static {
        for (int i = 0; i < POWERS.length; i++) {
            POWERS[i] = Double.parseDouble("1e" + i);
        }
    }

    private final char decimalMark;
    private double value;
    private int decimals;
    private int end;

    NumberCell(char decimalMark) {
        this.decimalMark = decimalMark;
    }

    /** The last number; finite. */
    double value() {
        return value;
    }

    /** Digits after its decimal mark. */
    int decimals() {
        return decimals;
    }

    /** Where it ended: what follows is for the caller to judge. */
    int end() {
        return end;
    }

    /** Reads a number that begins at a character; false if there is none, or one with misplaced marks. */
    boolean read(char[] text, int from, int to) {
        int at = from;
        boolean negative = false;
        if (at < to && (text[at] == '-' || text[at] == '−' || text[at] == '+')) {
            negative = text[at++] != '+';
        }
        int firstDigit = at;
        long mantissa = 0;
        int dropped = 0;
        int group = 0;
        boolean grouped = false;
        while (at < to) {
            char c = text[at];
            if (isDigit(c)) {
                group++;
                if (mantissa > FULL) {
                    dropped++;
                } else {
                    mantissa = 10 * mantissa + (c - '0');
                }
            } else if (isThousandsMark(c) && isGroup(text, at + 1, to)) {
                if (grouped ? group != 3 : group == 0 || group > 3) {
                    return false;
                }
                grouped = true;
                group = 0;
            } else {
                break;
            }
            at++;
        }
        boolean digits = at > firstDigit;
        int scale = dropped;
        decimals = 0;
        if (at < to && text[at] == decimalMark) {
            at++;
            for (; at < to && isDigit(text[at]); at++) {
                decimals++;
                if (mantissa <= FULL) {
                    mantissa = 10 * mantissa + (text[at] - '0');
                    scale--;
                }
            }
        }
        if ((!digits && decimals == 0) || (grouped && group != 3)) {
            return false;
        }
        if (at < to && (text[at] == '.' || text[at] == ',')) {
            return false;
        }
        boolean inexact = mantissa > FULL;
        int mantissaEnd = at;
        if (at + 1 < to && (text[at] == 'e' || text[at] == 'E')) {
            int sign = text[at + 1] == '-' || text[at + 1] == '+' ? 1 : 0;
            int exponent = 0;
            int digit = at + 1 + sign;
            for (; digit < to && isDigit(text[digit]) && exponent < 10_000; digit++) {
                exponent = 10 * exponent + (text[digit] - '0');
            }
            if (digit > at + 1 + sign) {
                scale += text[at + 1] == '-' ? -exponent : exponent;
                at = digit;
            }
        }
        end = at;
        double magnitude = inexact || mantissa > EXACT || Math.abs(scale) >= POWERS.length
                ? slowly(text, firstDigit, mantissaEnd, at)
                : scale < 0 ? mantissa / POWERS[-scale] : mantissa * POWERS[scale];
        value = negative ? -magnitude : magnitude;
        return Double.isFinite(value);
    }

    private double slowly(char[] text, int from, int mantissaEnd, int to) {
        StringBuilder plain = new StringBuilder(to - from);
        for (int i = from; i < to; i++) {
            if (text[i] == decimalMark) {
                plain.append('.');
            } else if (isDigit(text[i]) || i >= mantissaEnd) {
                plain.append(text[i]);
            }
        }
        return Double.parseDouble(plain.toString());
    }

    private boolean isThousandsMark(char c) {
        return c != decimalMark
                && (c == ',' || c == '.' || c == ' ' || c == '\'' || c == '’' || c == '\u00a0' || c == '\u202f');
    }

    private static boolean isGroup(char[] text, int from, int to) {
        return from + 3 <= to
                && isDigit(text[from])
                && isDigit(text[from + 1])
                && isDigit(text[from + 2])
                && (from + 3 == to || !isDigit(text[from + 3]));
    }

    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
