/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the words over a column, or in the lines above, say about it. */
final class HeadWords {
    private static final Pattern UNIT = Pattern.compile(
            "[°º˚\ufffd]\\s?([CFK])\\b|([℃℉])|\\b(?:deg|degrees|grad)[\\s._]?([CFK])\\b|\\b(celsius|fahrenheit|kelvin)\\b"
                    + "|[\\[(/]\\s?([CFK])\\s?(?:[\\])]|$)|[,]\\s?([CFK])$",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    private static final Pattern BARE_UNIT = Pattern.compile("(?i)^(?:t|temp\\w*?)[\\s_]?([CFK])$");
    private static final Pattern NAME_TAIL = Pattern.compile("[\\s,;:/_(\\[]+$");
    private static final Pattern OFFSET =
            Pattern.compile("(?i)\\b(?:UTC|GMT)\\s?([+−-]\\d{1,2}(?::?\\d{2})?)?(?![\\w/])");
    private static final Pattern REGION = Pattern.compile("\\b[A-Z][A-Za-z]+/[A-Z][A-Za-z_]+(?:/[A-Z][A-Za-z_]+)?\\b");
    private static final Set<String> OTHER_QUANTITIES = Set.of(
            "humidity",
            "rh",
            "hum",
            "humid",
            "moisture",
            "battery",
            "batt",
            "voltage",
            "volt",
            "volts",
            "v",
            "mv",
            "pressure",
            "hpa",
            "mbar",
            "pa",
            "kpa",
            "lux",
            "light",
            "co",
            "ppm",
            "index",
            "idx",
            "no",
            "nr",
            "num",
            "number",
            "record",
            "rec",
            "row",
            "sample",
            "count",
            "counter",
            "rssi",
            "dbm",
            "status",
            "event",
            "error",
            "alarm",
            "door",
            "weight",
            "mass",
            "wind");
    private static final Set<String> SENSOR_WORDS = Set.of(
            "sensor",
            "probe",
            "channel",
            "ch",
            "device",
            "id",
            "name",
            "location",
            "place",
            "position",
            "fühler",
            "sonde");
    private static final Set<String> TIME_WORDS = Set.of(
            "time",
            "elapsed",
            "t",
            "date",
            "datetime",
            "timestamp",
            "stamp",
            "epoch",
            "unix",
            "utc",
            "zeit",
            "datum",
            "temps",
            "heure");

    private HeadWords() {}

    static List<String> words(String head) {
        return Arrays.stream(head.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** Unit named in a head or in a cell. */
    static Optional<TemperatureUnit> unit(String head) {
        if (head.length() > Rejected.LONGEST_TEXT) {
            return Optional.empty();
        }
        Matcher full = UNIT.matcher(head);
        if (full.find()) {
            return letter(full);
        }
        Matcher bare = BARE_UNIT.matcher(head);
        return bare.matches() ? letter(bare) : Optional.empty();
    }

    /** Whether a cell holds nothing but a unit. */
    static boolean isUnitAlone(String cell) {
        return cell.length() <= 12
                && (cell.matches("(?i)[(\\[]?[°º˚]?[CFK][)\\]]?")
                        || (unit(cell).isPresent() && words(cell).size() == 1));
    }

    static Optional<TemperatureUnit> unitAlone(String cell) {
        return isUnitAlone(cell) ? unit("(" + cell.replaceAll("[()\\[\\]]", "") + ")") : Optional.empty();
    }

    private static Optional<TemperatureUnit> letter(Matcher found) {
        for (int i = 1; i <= found.groupCount(); i++) {
            String group = found.group(i);
            if (group != null) {
                return Optional.of(
                        switch (group.charAt(0)) {
                            case 'C', 'c', '℃' -> TemperatureUnit.CELSIUS;
                            case 'F', 'f', '℉' -> TemperatureUnit.FAHRENHEIT;
                            default -> TemperatureUnit.KELVIN;
                        });
            }
        }
        return Optional.empty();
    }

    /** The only unit that lines name, if it is the only one. */
    static Optional<TemperatureUnit> onlyUnit(List<String> lines) {
        Set<TemperatureUnit> found = new LinkedHashSet<>();
        lines.forEach(line -> unit(line).ifPresent(found::add));
        return found.size() == 1 ? Optional.of(found.iterator().next()) : Optional.empty();
    }

    /** A head without its unit. */
    static String name(String head) {
        Matcher found = UNIT.matcher(head);
        if (head.length() > Rejected.LONGEST_TEXT || !found.find()) {
            return head;
        }
        String before = NAME_TAIL.matcher(head.substring(0, found.start())).replaceAll("");
        return before.isEmpty() ? head : before;
    }

    static boolean isOtherQuantity(String head) {
        return unit(head).isEmpty()
                && (head.contains("%")
                        || head.strip().equals("#")
                        || words(head).stream().anyMatch(OTHER_QUANTITIES::contains));
    }

    static boolean namesSensors(String head) {
        return words(head).stream().anyMatch(SENSOR_WORDS::contains)
                && unit(head).isEmpty();
    }

    static boolean isTime(String head) {
        return words(head).stream().anyMatch(TIME_WORDS::contains)
                || (unit(head).isEmpty() && countedTime(head).isPresent());
    }

    /** What a number under this head counts. */
    static Optional<TimeForm> countedTime(String head) {
        List<String> words = words(head);
        if (words.contains("epoch") || words.contains("unix")) {
            return Optional.of(
                    words.contains("ms") || words.contains("milliseconds")
                            ? TimeForm.UNIX_MILLISECONDS
                            : TimeForm.UNIX_SECONDS);
        }
        for (String word : words) {
            Optional<TimeForm> counted = counted(word);
            if (counted.isPresent()) {
                return counted;
            }
        }
        return Optional.empty();
    }

    private static Optional<TimeForm> counted(String word) {
        return switch (word) {
            case "ms", "msec", "millis", "milliseconds" -> Optional.of(TimeForm.ELAPSED_MILLISECONDS);
            case "s", "sec", "secs", "second", "seconds", "sekunden" -> Optional.of(TimeForm.ELAPSED_SECONDS);
            case "min", "mins", "minute", "minutes", "minuten" -> Optional.of(TimeForm.ELAPSED_MINUTES);
            case "h", "hr", "hrs", "hour", "hours", "stunden" -> Optional.of(TimeForm.ELAPSED_HOURS);
            case "d", "day", "days", "tage" -> Optional.of(TimeForm.ELAPSED_DAYS);
            default -> Optional.empty();
        };
    }

    /** Whether a head says that a clock reading counts from a start, and in which parts. */
    static Optional<TimeForm> countedClock(String head) {
        String lower = head.toLowerCase(Locale.ROOT);
        if ((lower.contains("mm:ss") && !lower.contains("h:mm"))
                || lower.contains("min:s")
                || (lower.contains("m:ss") && !lower.contains("h:m"))) {
            return Optional.of(TimeForm.ELAPSED_MINUTES_SECONDS);
        }
        List<String> words = words(head);
        return words.contains("elapsed") || words.contains("duration") || words.contains("since")
                ? Optional.of(TimeForm.ELAPSED_HOURS_MINUTES)
                : Optional.empty();
    }

    /** Zone named in a line: UTC or GMT with or without an offset, or a region. */
    static Optional<ZoneId> zone(String line) {
        if (line.length() > Rejected.LONGEST_TEXT) {
            return Optional.empty();
        }
        Matcher region = REGION.matcher(line);
        while (region.find()) {
            if (ZoneId.getAvailableZoneIds().contains(region.group())) {
                return Optional.of(ZoneId.of(region.group()));
            }
        }
        Matcher offset = OFFSET.matcher(line);
        if (!offset.find()) {
            return Optional.empty();
        }
        String sign = offset.group(1);
        try {
            return Optional.of(sign == null ? ZoneOffset.UTC : ZoneOffset.of(padded(sign.replace('−', '-'))));
        } catch (DateTimeException noOffset) {
            return Optional.empty();
        }
    }

    /** −5:30 is not what {@link ZoneOffset} takes, −05:30 is. */
    private static String padded(String offset) {
        int digits = offset.indexOf(':') < 0 ? offset.length() - 1 : offset.indexOf(':') - 1;
        return digits == 1 || digits == 3 ? offset.charAt(0) + "0" + offset.substring(1) : offset;
    }
}
