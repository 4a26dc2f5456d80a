/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

/**
 * Reads dates and times of day out of characters, in whatever order and with whatever marks, without making objects. Holds the last time;
 * not thread-safe.
 *
 * <p>Month names are English. A year of two digits is one of 2000 to 2099. Fractions of seconds are read to microseconds; further digits
 * are dropped.
 */
final class TimeCell {
    /** What a cell is. */
    enum Shape {
        /** Date and time. */
        STAMP,
        /** Date alone. */
        DATE,
        /** Time of day or elapsed time with colons. */
        CLOCK,
        /** Neither. */
        NONE
    }

    private static final String MONTHS = "janfebmaraprmayjunjulaugsepoctnovdec";
    private static final String DAYS = "montuewedthufrisatsun";
    private static final long MICROS = 1_000_000;

    private char[] text = new char[0];
    private int at;
    private int to;

    private int number;
    private int digits;

    private int year;
    private int month;
    private int day;
    private boolean orderKnown;
    private long micros;
    private int hour;
    private boolean seconds;
    private boolean meridiem;
    private boolean offset;
    private int offsetS;

    int year() {
        return year;
    }

    /** Month, or the first of the two numbers if {@link #orderKnown()} is false. */
    int month() {
        return month;
    }

    /** Day, or the second of the two numbers if {@link #orderKnown()} is false. */
    int day() {
        return day;
    }

    boolean orderKnown() {
        return orderKnown;
    }

    /** Time of day, or elapsed hours, minutes and seconds [µs]. */
    long micros() {
        return micros;
    }

    /** Hour as written. */
    int hour() {
        return hour;
    }

    /** Whether seconds are written. */
    boolean hasSeconds() {
        return seconds;
    }

    /** Whether am or pm is written. */
    boolean hasMeridiem() {
        return meridiem;
    }

    boolean hasOffset() {
        return offset;
    }

    /** Offset from UTC [s]. */
    int offsetS() {
        return offsetS;
    }

    Shape read(String cell) {
        return read(cell.toCharArray(), 0, cell.length());
    }

    Shape read(char[] characters, int from, int end) {
        text = characters;
        at = from;
        to = end;
        seconds = false;
        meridiem = false;
        offset = false;
        micros = 0;
        if (at == to || !Character.isLetterOrDigit(text[at])) {
            return Shape.NONE;
        }
        skipWeekday();
        int start = at;
        if (date()) {
            if (at == to) {
                return Shape.DATE;
            }
            boolean basic =
                    at == start + 8 && NumberCell.isDigit(text[start + 4]) && NumberCell.isDigit(text[start + 2]);
            return between() && clock(basic) && at == to && hour < 24 ? Shape.STAMP : Shape.NONE;
        }
        at = start;
        return clock(false) && at == to ? Shape.CLOCK : Shape.NONE;
    }

    private boolean between() {
        int start = at;
        if (peek() == ',') {
            at++;
        }
        skipBlanks();
        if (at == start && (peek() == 'T' || peek() == 't' || peek() == '_')) {
            at++;
        }
        return at > start;
    }

    private boolean date() {
        orderKnown = true;
        if (Character.isLetter(peek())) {
            return namedMonth() && gap() && number(2) && setDay(number) && comma() && gap() && number(4) && setYear();
        }
        if (!number(8)) {
            return false;
        }
        int first = number;
        int firstDigits = digits;
        if (firstDigits == 8 && peek() == 'T') {
            year = first / 10_000;
            return setMonth(first / 100 % 100) && setDay(first % 100);
        }
        if (firstDigits > 4 || firstDigits == 3) {
            return false;
        }
        char mark = peek();
        if (mark != '-' && mark != '/' && mark != '.' && mark != ' ') {
            return false;
        }
        at++;
        if (Character.isLetter(peek())) {
            return firstDigits <= 2 && setDay(first) && namedMonth() && gap() && number(4) && setYear();
        }
        if (mark == ' ' || !number(2) || peek() != mark) {
            return false;
        }
        int second = number;
        at++;
        if (!number(4)) {
            return false;
        }
        if (firstDigits == 4 || (digits == 2 && first > 31)) {
            int last = number;
            year = firstDigits == 4 ? first : first + 2000;
            return digits <= 2 && setMonth(second) && setDay(last);
        }
        orderKnown = false;
        month = first;
        day = second;
        return first >= 1 && second >= 1 && Math.max(first, second) <= 31 && Math.min(first, second) <= 12 && setYear();
    }

    private boolean setYear() {
        year = digits == 2 ? number + 2000 : number;
        return digits == 2 || digits == 4;
    }

    private boolean setMonth(int given) {
        month = given;
        return given >= 1 && given <= 12;
    }

    private boolean setDay(int given) {
        day = given;
        return given >= 1 && given <= 31;
    }

    private boolean namedMonth() {
        int found = name(MONTHS);
        return found >= 0 && setMonth(found + 1);
    }

    private void skipWeekday() {
        int start = at;
        if (Character.isLetter(peek()) && name(DAYS) >= 0 && (peek() == ',' || peek() == ' ')) {
            at++;
            skipBlanks();
        } else {
            at = start;
        }
    }

    /** Index of the name whose first three letters stand here; all of the word is passed over. */
    private int name(String names) {
        int start = at;
        while (at < to && (Character.isLetter(text[at]) || (text[at] == '.' && at == start + 3))) {
            at++;
        }
        if (at - start < 3) {
            return -1;
        }
        for (int i = 0; i < names.length(); i += 3) {
            if (lower(text[start]) == names.charAt(i)
                    && lower(text[start + 1]) == names.charAt(i + 1)
                    && lower(text[start + 2]) == names.charAt(i + 2)) {
                return i / 3;
            }
        }
        return -1;
    }

    /** Not {@link Character#toLowerCase}: only these letters count. */
    private static int lower(char c) {
        return c >= 'A' && c <= 'Z' ? c + ('a' - 'A') : c;
    }

    private boolean comma() {
        if (peek() == ',') {
            at++;
        }
        return true;
    }

    private boolean gap() {
        int start = at;
        if (peek() == '-' || peek() == '/' || peek() == '.') {
            at++;
        } else {
            skipBlanks();
        }
        return at > start;
    }

    private boolean clock(boolean basic) {
        if (basic && !(at + 2 < to && text[at + 2] == ':')) {
            if (!number(6) || (digits != 6 && digits != 4)) {
                return false;
            }
            int all = digits == 6 ? number : 100 * number;
            seconds = digits == 6;
            hour = all / 10_000;
            if (all / 100 % 100 > 59 || all % 100 > 59) {
                return false;
            }
            micros = (hour * 3600L + all / 100 % 100 * 60L + all % 100) * MICROS;
        } else {
            if (!number(7) || peek() != ':') {
                return false;
            }
            hour = number;
            at++;
            if (!number(2) || number > 59) {
                return false;
            }
            micros = (hour * 3600L + number * 60L) * MICROS;
            if (peek() == ':') {
                at++;
                if (!number(2) || number > 59) {
                    return false;
                }
                seconds = true;
                micros += number * MICROS;
            }
        }
        if (seconds && (peek() == '.' || peek() == ',')) {
            at++;
            fraction();
        }
        return meridiem() && zone();
    }

    private void fraction() {
        long unit = MICROS / 10;
        for (; at < to && NumberCell.isDigit(text[at]); at++) {
            micros += (text[at] - '0') * unit;
            unit /= 10;
        }
    }

    private boolean meridiem() {
        int start = at;
        skipBlanks();
        int letter = lower(peek());
        if (letter != 'a' && letter != 'p') {
            at = start;
            return true;
        }
        at++;
        comma('.');
        if (lower(peek()) != 'm' || hour < 1 || hour > 12) {
            return false;
        }
        at++;
        comma('.');
        micros += ((letter == 'p' ? 12 : 0) + (hour == 12 ? -12 : 0)) * 3600L * MICROS;
        meridiem = true;
        return true;
    }

    private void comma(char mark) {
        if (peek() == mark) {
            at++;
        }
    }

    /** Z, UTC, GMT, an offset, or both; a region in brackets after it is passed over. */
    private boolean zone() {
        skipBlanks();
        if (at == to) {
            return true;
        }
        if (lower(peek()) == 'z') {
            at++;
            offset = true;
        } else if (at + 3 <= to && (word("utc") || word("gmt"))) {
            at += 3;
            offset = true;
        }
        offsetS = 0;
        char sign = peek();
        if (sign == '+' || sign == '-' || sign == '−') {
            at++;
            if (!number(4) || digits == 3) {
                return false;
            }
            int minutes = digits <= 2 ? 60 * number : number / 100 * 60 + number % 100;
            if (digits <= 2 && peek() == ':') {
                at++;
                if (!number(2) || number > 59) {
                    return false;
                }
                minutes += number;
            }
            if (minutes > 18 * 60) {
                return false;
            }
            offset = true;
            offsetS = sign == '+' ? 60 * minutes : -60 * minutes;
        }
        if (offset && peek() == '[' && text[to - 1] == ']') {
            at = to;
        }
        return offset;
    }

    private boolean word(String lowerCase) {
        for (int i = 0; i < lowerCase.length(); i++) {
            if (lower(text[at + i]) != lowerCase.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** Reads digits, at least one and at most so many. */
    private boolean number(int most) {
        number = 0;
        digits = 0;
        while (at < to && NumberCell.isDigit(text[at])) {
            if (++digits > most) {
                return false;
            }
            number = 10 * number + (text[at++] - '0');
        }
        return digits > 0;
    }

    private void skipBlanks() {
        while (at < to && Separators.isBlank(text[at])) {
            at++;
        }
    }

    private char peek() {
        return at < to ? text[at] : '\0';
    }
}
