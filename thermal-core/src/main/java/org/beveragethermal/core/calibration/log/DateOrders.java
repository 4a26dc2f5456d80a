/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Which number of a date is the day, told by the whole column. */
final class DateOrders {
    /** How much further apart successive days must be under one order for the other to be believed. */
    private static final int CLEARLY = 10;

    private DateOrders() {}

    /** The order, with a note of how it is known; nothing if all dates tell it themselves. */
    static Optional<DateOrder> find(TimeColumn column, List<RawSeries> series, LogFormat format, ReportNotes notes) {
        if (!column.hasUnknownOrder()) {
            return Optional.empty();
        }
        if (format.dateOrder.isPresent()) {
            return format.dateOrder;
        }
        long dayFirst = column.firstOver12Line();
        long monthFirst = column.secondOver12Line();
        if (dayFirst > 0 && monthFirst > 0) {
            throw ask("line " + dayFirst + " can only be day first, line " + monthFirst + " only month first");
        }
        if (dayFirst > 0 || monthFirst > 0) {
            DateOrder order = dayFirst > 0 ? DateOrder.DAY_FIRST : DateOrder.MONTH_FIRST;
            notes.note(
                    LogNote.Kind.INFERRED, order + ": line " + Math.max(dayFirst, monthFirst) + " allows nothing else");
            return Optional.of(order);
        }
        double days = distance(series, DateOrder.DAY_FIRST);
        double months = distance(series, DateOrder.MONTH_FIRST);
        if (days < 0 && months < 0) {
            return Optional.of(DateOrder.DAY_FIRST);
        }
        if (months > CLEARLY * days || days > CLEARLY * months) {
            DateOrder order = months > days ? DateOrder.DAY_FIRST : DateOrder.MONTH_FIRST;
            notes.note(LogNote.Kind.INFERRED, order + ": days follow one another, in the other order they would jump");
            return Optional.of(order);
        }
        throw ask("no date has a number above 12, and days do not tell by their sequence");
    }

    private static UnclearLogException ask(String reason) {
        return new UnclearLogException(
                UnclearLogException.Question.DATE_ORDER,
                "day or month first: " + reason,
                "dateOrder(DAY_FIRST)",
                "dateOrder(MONTH_FIRST)");
    }

    /** Sum of the steps between successive days; below zero if both orders mean the same days. */
    private static double distance(List<RawSeries> all, DateOrder order) {
        double sum = 0;
        boolean same = true;
        for (RawSeries series : all) {
            long before = Long.MIN_VALUE;
            int beforeKey = -1;
            for (int i = 0; i < series.size(); i++) {
                long code = series.times()[i];
                int key = (TimeColumn.year(code) * 32 + TimeColumn.first(code)) * 32 + TimeColumn.second(code);
                if (key == beforeKey) {
                    continue;
                }
                beforeKey = key;
                same &= TimeColumn.orderKnown(code) || TimeColumn.first(code) == TimeColumn.second(code);
                long day = epochDay(code, order);
                if (day != SerialDays.NONE) {
                    sum += before == Long.MIN_VALUE ? 0 : Math.abs(day - before);
                    before = day;
                }
            }
        }
        return same ? -1 : sum;
    }

    /** Days since 1970-01-01, or {@link SerialDays#NONE} if there is no such day. */
    static long epochDay(long code, DateOrder order) {
        boolean swapped = !TimeColumn.orderKnown(code) && order == DateOrder.DAY_FIRST;
        int month = swapped ? TimeColumn.second(code) : TimeColumn.first(code);
        int day = swapped ? TimeColumn.first(code) : TimeColumn.second(code);
        int year = TimeColumn.year(code);
        if (month > 12
                || month < 1
                || day < 1
                || day > java.time.YearMonth.of(year, month).lengthOfMonth()) {
            return SerialDays.NONE;
        }
        return LocalDate.of(year, month, day).toEpochDay();
    }
}
