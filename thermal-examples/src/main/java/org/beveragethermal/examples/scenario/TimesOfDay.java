/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;

/** Reads the times of a scenario. All formats are those of ISO 8601 and depend on no locale. */
final class TimesOfDay {
    private static final int EARLIEST_YEAR = 1970;
    private static final int LATEST_YEAR = 2199;
    private static final Duration LONGEST = Duration.ofDays(2);

    private final Instant startsAt;
    private final ZoneId zone;

    TimesOfDay(Instant startsAt, ZoneId zone) {
        this.startsAt = startsAt;
        this.zone = zone;
    }

    static ZoneId zone(Element element) {
        try {
            return ZoneId.of(Fields.string(element));
        } catch (DateTimeException e) {
            throw element.refusal(
                    "unknown time zone " + element.described() + ": expected a zone such as \"Europe/Vienna\"");
        }
    }

    /** The start; its offset has to be the one that the zone has at that time. */
    static Instant start(Element element, ZoneId zone) {
        OffsetDateTime start = offsetDateTime(element);
        if (start.getYear() < EARLIEST_YEAR || start.getYear() > LATEST_YEAR) {
            throw element.refusal(
                    element.described() + ": expected a year from " + EARLIEST_YEAR + " to " + LATEST_YEAR);
        }
        var offset = zone.getRules().getOffset(start.toInstant());
        if (!offset.equals(start.getOffset())) {
            throw element.refusal(element.described() + ": expected the offset " + offset + " that zone " + zone
                    + " has at that time");
        }
        return start.toInstant();
    }

    private static OffsetDateTime offsetDateTime(Element element) {
        try {
            return OffsetDateTime.parse(Fields.string(element), DateTimeFormatter.ISO_OFFSET_DATE_TIME);
        } catch (DateTimeParseException e) {
            throw element.refusal(element.described()
                    + ": expected a date and time with offset such as \"2027-06-18T17:00:00+02:00\"");
        }
    }

    /**
     * A time of day on the date of the start, or a date and time, in the scenario's zone. Where clocks are put back and
     * the time comes twice, the first is meant.
     */
    Instant local(Element element) {
        LocalDateTime local = localDateTime(element);
        if (zone.getRules().getValidOffsets(local).isEmpty()) {
            throw element.refusal(element.described() + ": expected a time that exists; clocks in " + zone
                    + " are put forward over it");
        }
        return withinReach(element, ZonedDateTime.ofLocal(local, zone, null).toInstant());
    }

    private LocalDateTime localDateTime(Element element) {
        String text = Fields.string(element);
        try {
            return text.indexOf('T') >= 0
                    ? LocalDateTime.parse(text, DateTimeFormatter.ISO_LOCAL_DATE_TIME)
                    : startsAt.atZone(zone)
                            .toLocalDate()
                            .atTime(LocalTime.parse(text, DateTimeFormatter.ISO_LOCAL_TIME));
        } catch (DateTimeParseException e) {
            throw element.refusal(
                    element.described() + ": expected a local time such as \"19:30\" or \"2027-06-19T00:30\"");
        }
    }

    Instant afterStart(int minutes) {
        return startsAt.plus(Duration.ofMinutes(minutes));
    }

    private Instant withinReach(Element element, Instant time) {
        Instant latest = startsAt.plus(LONGEST);
        if (time.isBefore(startsAt) || time.isAfter(latest)) {
            throw element.refusal(element.described() + ": expected a time from the start, " + shown(startsAt) + ", to "
                    + shown(latest) + "; with the date if it is after midnight");
        }
        return time;
    }

    private String shown(Instant time) {
        return time.atZone(zone).toLocalDateTime().toString();
    }

    static int longestMinutes() {
        return (int) LONGEST.toMinutes();
    }
}
