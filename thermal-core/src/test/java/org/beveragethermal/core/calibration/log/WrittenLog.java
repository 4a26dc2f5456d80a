/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/** A log that is written in a dialect drawn at random, and what it must be read as. */
record WrittenLog(
        String text,
        Charset charset,
        boolean marked,
        LogFormat format,
        char separator,
        List<String> sensors,
        Optional<Instant> start,
        List<Double> elapsedS,
        List<double[]> columnsK) {

    static final LogFormat EVERYTHING_TOLD = LogFormat.builder()
            .zone(ZoneId.of("Europe/Vienna"))
            .dateOrder(DateOrder.DAY_FIRST)
            .unit(TemperatureUnit.CELSIUS)
            .build();

    private static final ZoneId ZONE = ZoneId.of("Asia/Kathmandu");

    private enum Form {
        ISO,
        ISO_LOCAL,
        DAY_FIRST,
        MONTH_FIRST_AM_PM,
        NAMED_MONTH,
        UNIX,
        UNIX_MS,
        SERIAL,
        SECONDS,
        MINUTES,
        CLOCK
    }

    byte[] bytes() {
        return (marked ? "\ufeff" + text : text).getBytes(charset);
    }

    double[] temperaturesK(String sensor) {
        return columnsK.get(sensors.indexOf(sensor));
    }

    static WrittenLog random(Random random) {
        char separator = Separators.ALL.charAt(random.nextInt(4));
        char mark = random.nextBoolean() ? '.' : ',';
        Form form = List.of(Form.values()).get(random.nextInt(Form.values().length));
        TemperatureUnit unit = List.of(TemperatureUnit.values()).get(random.nextInt(3));
        int columns = 1 + random.nextInt(3);
        int rows = 3 + random.nextInt(30);
        int decimals = 1 + random.nextInt(3);
        boolean counted = form == Form.SECONDS || form == Form.MINUTES || form == Form.CLOCK;
        boolean allQuoted = random.nextBoolean();
        long step = 60L * (1 + random.nextInt(50));
        Instant start = Instant.ofEpochSecond(1_600_000_020L + 60L * random.nextInt(2_000_000));
        List<String> lines = new ArrayList<>();
        if (random.nextBoolean()) {
            lines.add("Invented log");
            lines.add("made by a test");
        }
        if (random.nextInt(4) > 0 && form != Form.SERIAL) {
            lines.add("");
        }
        List<String> head = new ArrayList<>(List.of(
                form == Form.SECONDS
                        ? "elapsed (s)"
                        : form == Form.MINUTES ? "elapsed (min)" : form == Form.CLOCK ? "elapsed" : "time"));
        List<String> sensors = new ArrayList<>();
        for (int column = 0; column < columns; column++) {
            sensors.add("probe " + (char) ('p' + column));
            head.add(sensors.get(column) + " (" + unit.symbol() + ")");
        }
        lines.add(row(head, separator, allQuoted));
        List<Double> elapsed = new ArrayList<>();
        List<double[]> kelvin = new ArrayList<>();
        for (int column = 0; column < columns; column++) {
            kelvin.add(new double[rows]);
        }
        for (int i = 0; i < rows; i++) {
            elapsed.add((double) (i * step));
            List<String> cells = new ArrayList<>();
            cells.add(time(form, start.plusSeconds(i * step), i * step, mark));
            for (int column = 0; column < columns; column++) {
                double celsius = -5 + 35 * random.nextDouble();
                String shown = String.format(
                        Locale.ROOT, "%." + decimals + "f", unit.fromKelvin(TemperatureUnit.CELSIUS.toKelvin(celsius)));
                kelvin.get(column)[i] = unit.toKelvin(Double.parseDouble(shown));
                cells.add(shown.replace('.', mark));
            }
            lines.add(row(cells, separator, allQuoted));
        }
        String text = String.join(random.nextBoolean() ? "\r\n" : "\n", lines) + "\n";
        Charset charset = List.of(StandardCharsets.UTF_8, StandardCharsets.ISO_8859_1, StandardCharsets.UTF_16LE)
                .get(random.nextInt(3));
        boolean marked = !charset.equals(StandardCharsets.ISO_8859_1) && random.nextBoolean();
        LogFormat format = LogFormat.builder()
                .zone(ZONE)
                .dateOrder(form == Form.DAY_FIRST ? DateOrder.DAY_FIRST : DateOrder.MONTH_FIRST)
                .build();
        return new WrittenLog(
                text,
                charset,
                marked,
                format,
                separator,
                sensors,
                counted ? Optional.empty() : Optional.of(start),
                elapsed,
                kelvin);
    }

    private static String time(Form form, Instant at, long elapsedS, char mark) {
        LocalDateTime local = LocalDateTime.ofInstant(at, ZONE);
        return switch (form) {
            case ISO -> at.atOffset(ZoneOffset.ofHoursMinutes(-3, -30)).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
            case ISO_LOCAL -> local.truncatedTo(ChronoUnit.SECONDS).toString();
            case DAY_FIRST -> local.format(pattern("dd.MM.uuuu HH:mm:ss"));
            case MONTH_FIRST_AM_PM -> local.format(pattern("M/d/uu h:mm:ss a"));
            case NAMED_MONTH -> local.format(pattern("d MMM uuuu HH:mm"));
            case UNIX -> Long.toString(at.getEpochSecond());
            case UNIX_MS -> Long.toString(at.toEpochMilli());
            case SERIAL ->
                String.format(Locale.ROOT, "%.10f", 25_569 + local.toEpochSecond(ZoneOffset.UTC) / 86_400.0)
                        .replace('.', mark);
            case SECONDS -> Long.toString(elapsedS);
            case MINUTES -> Long.toString(elapsedS / 60);
            case CLOCK ->
                String.format(Locale.ROOT, "%d:%02d:%02d", elapsedS / 3600, elapsedS / 60 % 60, elapsedS % 60);
        };
    }

    private static DateTimeFormatter pattern(String text) {
        return DateTimeFormatter.ofPattern(text, Locale.ROOT);
    }

    private static String row(List<String> cells, char separator, boolean allQuoted) {
        List<String> quoted = new ArrayList<>();
        for (String cell : cells) {
            quoted.add(allQuoted || cell.indexOf(separator) >= 0 ? "\"" + cell + "\"" : cell);
        }
        return String.join(String.valueOf(separator), quoted);
    }
}
