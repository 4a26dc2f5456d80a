/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

/**
 * Reads the times of rows, codes each in a long, and gathers what the whole column tells: what the codes stand for is decided when all are
 * in.
 *
 * <p>Numbers are coded as the bits of a double; clock readings as microseconds; dates as year, two numbers, microseconds of the day in UTC if
 * an offset is written, and whether one is.
 */
final class TimeColumn {
    static final long DAY = 86_400_000_000L;
    private static final int MICROS_BITS = 38;
    private static final int PART_BITS = 5;
    private static final int YEAR_BITS = 14;

    /** What cells look like. */
    enum Shape {
        STAMP,
        CLOCK,
        NUMBER
    }

    private final Columns columns;
    private final Shape shape;
    private final NumberCell number;
    private final TimeCell cell = new TimeCell();

    private long code;
    private long rows;
    private long withOffset;
    private long firstOver12Line;
    private long secondOver12Line;
    private long unknownOrder;
    private boolean twelveToOne;
    private boolean meridiem;
    private boolean seconds;
    private int lastHour = -1;
    private int lowestHour = Integer.MAX_VALUE;
    private int highestHour;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;
    private boolean fraction;
    private long firstCode;

    TimeColumn(Columns columns, char decimalMark, LogFormat format) {
        this.columns = columns;
        this.number = new NumberCell(decimalMark);
        this.shape = format.timeForm
                .map(form -> form.isNumber() ? Shape.NUMBER : form.isClock() ? Shape.CLOCK : Shape.STAMP)
                .orElse(
                        switch (columns.timeKind()) {
                            case STAMP, DATE -> Shape.STAMP;
                            case CLOCK -> Shape.CLOCK;
                            default -> Shape.NUMBER;
                        });
    }

    /** Reads the time of a row; false if it cannot be read. */
    boolean read(Row row) {
        int time = columns.time();
        boolean good = switch (shape) {
            case NUMBER -> readNumber(row.text(), row.from(time), row.to(time));
            case CLOCK -> cell.read(row.text(), row.from(time), row.to(time)) == TimeCell.Shape.CLOCK && clock(row);
            case STAMP -> stamp(row);
        };
        if (good) {
            firstCode = rows == 0 ? code : firstCode;
            rows++;
        }
        return good;
    }

    private boolean readNumber(char[] text, int from, int to) {
        if (!number.read(text, from, to) || number.end() != to) {
            return false;
        }
        double value = number.value();
        least = Math.min(least, value);
        greatest = Math.max(greatest, value);
        fraction |= value != Math.rint(value);
        code = Double.doubleToRawLongBits(value);
        return true;
    }

    private boolean clock(Row row) {
        code = cell.micros();
        if (cell.hasOffset()) {
            return false;
        }
        twelveToOne |= lastHour == 12 && cell.hour() == 1;
        lastHour = cell.hour();
        lowestHour = Math.min(lowestHour, lastHour);
        highestHour = Math.max(highestHour, lastHour);
        meridiem |= cell.hasMeridiem();
        seconds |= cell.hasSeconds();
        return row.cells() > 0;
    }

    private boolean stamp(Row row) {
        long micros = 0;
        boolean offset = false;
        int offsetS = 0;
        if (columns.clock() >= 0) {
            int clock = columns.clock();
            if (cell.read(row.text(), row.from(clock), row.to(clock)) != TimeCell.Shape.CLOCK || cell.hour() > 23) {
                return false;
            }
            micros = cell.micros();
            offset = cell.hasOffset();
            offsetS = cell.offsetS();
        }
        int time = columns.time();
        TimeCell.Shape found = cell.read(row.text(), row.from(time), row.to(time));
        if (found == TimeCell.Shape.STAMP && columns.clock() < 0) {
            micros = cell.micros();
            offset = cell.hasOffset();
            offsetS = cell.offsetS();
        } else if (found != TimeCell.Shape.DATE) {
            return false;
        }
        if (!cell.orderKnown()) {
            unknownOrder++;
            firstOver12Line = firstOver12Line == 0 && cell.month() > 12 ? row.line() : firstOver12Line;
            secondOver12Line = secondOver12Line == 0 && cell.day() > 12 ? row.line() : secondOver12Line;
        }
        withOffset += offset ? 1 : 0;
        long shifted = micros - (offset ? offsetS * 1_000_000L : 0) + DAY;
        code = (offset ? 1L : 0) << 1 | (cell.orderKnown() ? 1L : 0);
        code = code << YEAR_BITS | cell.year();
        code = code << PART_BITS | cell.month();
        code = code << PART_BITS | cell.day();
        code = code << MICROS_BITS | shifted;
        return true;
    }

    static boolean hasOffset(long code) {
        return code >>> (MICROS_BITS + 2 * PART_BITS + YEAR_BITS + 1) != 0;
    }

    static boolean orderKnown(long code) {
        return (code >>> (MICROS_BITS + 2 * PART_BITS + YEAR_BITS) & 1) != 0;
    }

    static int year(long code) {
        return (int) (code >>> (MICROS_BITS + 2 * PART_BITS)) & ((1 << YEAR_BITS) - 1);
    }

    static int first(long code) {
        return (int) (code >>> (MICROS_BITS + PART_BITS)) & ((1 << PART_BITS) - 1);
    }

    static int second(long code) {
        return (int) (code >>> MICROS_BITS) & ((1 << PART_BITS) - 1);
    }

    /** Microseconds from the beginning of the day: below zero or above a day if an offset reaches into another. */
    static long micros(long code) {
        return (code & ((1L << MICROS_BITS) - 1)) - DAY;
    }

    /** Code of the last time read. */
    long code() {
        return code;
    }

    Shape shape() {
        return shape;
    }

    boolean allHaveOffset() {
        return withOffset == rows;
    }

    boolean hasUnknownOrder() {
        return unknownOrder > 0;
    }

    /** First line whose first number can be no month, or 0. */
    long firstOver12Line() {
        return firstOver12Line;
    }

    /** First line whose second number can be no month, or 0. */
    long secondOver12Line() {
        return secondOver12Line;
    }

    /** Whether hours run from 12 to 1 and none is 0 or above 12, without am and pm. */
    boolean isTwelveHour() {
        return !meridiem && twelveToOne && lowestHour >= 1 && highestHour <= 12;
    }

    boolean hasMeridiem() {
        return meridiem;
    }

    boolean hasSeconds() {
        return seconds;
    }

    int highestHour() {
        return highestHour;
    }

    double least() {
        return least;
    }

    double greatest() {
        return greatest;
    }

    boolean hasFraction() {
        return fraction;
    }

    long firstCode() {
        return firstCode;
    }
}
